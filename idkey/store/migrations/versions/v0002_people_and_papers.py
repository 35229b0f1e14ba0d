"""People, suppliers, intakes, second opinions, rationales handed out, pictures."""

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the tables that cases, sales and the chain did without."""
    op.create_table("people", _key("initials"), _text("name"), _text("note"), _number("active"))
    op.create_table("suppliers", _key("words"), _text("name"), _text("note"))
    op.create_table("intakes", _case(), _text("number"), _entry())
    op.create_index("ix_intakes_number", "intakes", ["number"])
    op.create_table(
        "opinions",
        _case(),
        sa.Column("of_case", sa.Text, sa.ForeignKey("cases.id"), nullable=False),
        _entry(),
    )
    op.create_index("ix_opinions_of_case", "opinions", ["of_case"])
    op.create_table(
        "rationales", _key("digest"), _text("case_id"), _number("revision"), _text("sale"), _entry()
    )
    op.create_index("ix_rationales_case_id", "rationales", ["case_id"])
    op.create_table(
        "pictures",
        _key("id"),
        _text("media_type"),
        sa.Column("content", sa.LargeBinary, nullable=False),
        _text("note"),
    )


def _key(name: str) -> "sa.Column[str]":
    return sa.Column(name, sa.Text, primary_key=True)


def _text(name: str) -> "sa.Column[str]":
    return sa.Column(name, sa.Text, nullable=False)


def _number(name: str) -> "sa.Column[int]":
    return sa.Column(name, sa.Integer, nullable=False)


def _entry() -> "sa.Column[int]":
    return sa.Column("entry", sa.BigInteger, nullable=False)


def _case() -> "sa.Column[str]":
    return sa.Column("case_id", sa.Text, sa.ForeignKey("cases.id"), primary_key=True)
