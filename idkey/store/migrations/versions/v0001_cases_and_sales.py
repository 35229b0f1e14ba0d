"""Cases, their chain of revisions, sales, drafts, settings and the word index."""

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def _text(name: str) -> "sa.Column[str]":
    return sa.Column(name, sa.Text, nullable=False)


def upgrade() -> None:
    """Make the tables of an empty book."""
    _chain()
    _cases()
    op.create_table(
        "sales",
        sa.Column("case_id", sa.Text, sa.ForeignKey("cases.id"), primary_key=True),
        sa.Column("number", sa.Text, primary_key=True),
        sa.Column("entry", sa.BigInteger, nullable=False),
        _text("buyer"),
        _text("salt"),
    )
    op.create_index("ix_sales_number", "sales", ["number"])
    for table in ("drafts", "settings"):
        op.create_table(
            table,
            sa.Column("station", sa.Text, primary_key=True),
            sa.Column("name", sa.Text, primary_key=True),
            _text("value"),
        )
    if op.get_bind().dialect.name == "sqlite":
        op.execute(
            "CREATE VIRTUAL TABLE case_words USING fts5(label, name, supplier, rest, "
            "tokenize = 'unicode61 remove_diacritics 0', prefix = '1 2 3')"
        )
    else:
        op.execute("CREATE TABLE case_words (touched bigint PRIMARY KEY, words tsvector NOT NULL)")
        op.execute("CREATE INDEX ix_case_words ON case_words USING gin (words)")


def _chain() -> None:
    op.create_table(
        "chain",
        sa.Column("entry", sa.BigInteger, primary_key=True, autoincrement=False),
        _text("kind"),
        _text("case_id"),
        sa.Column("number", sa.Integer, nullable=False),
        _text("at"),
        _text("by"),
        _text("content"),
        _text("content_digest"),
        _text("previous"),
        _text("digest"),
        sa.UniqueConstraint("case_id", "kind", "number", name="uq_chain_case"),
    )
    end = op.create_table(
        "chain_end",
        sa.Column("one", sa.Integer, primary_key=True, autoincrement=False),
        sa.Column("entry", sa.BigInteger, nullable=False),
        _text("digest"),
    )
    op.bulk_insert(end, [{"one": 1, "entry": 0, "digest": "0" * 64}])


def _cases() -> None:
    op.create_table(
        "cases",
        sa.Column("id", sa.Text, primary_key=True),
        sa.Column("revision", sa.Integer, nullable=False),
        sa.Column("entry", sa.BigInteger, nullable=False),
        sa.Column("touched", sa.BigInteger, nullable=False),
        *map(_text, ("key", "label", "label_id", "supplier", "day")),
        *map(_text, ("kind", "level", "name", "cautions")),
        sa.Column("findings", sa.Integer, nullable=False),
        *map(_text, ("by", "at")),
    )
    op.create_index("ix_cases_touched", "cases", ["touched"], unique=True)
    op.create_index("ix_cases_label_id", "cases", ["label_id", "level"])
    op.create_index("ix_cases_day", "cases", ["day"])
    op.create_index("ix_cases_kind", "cases", ["kind", "touched"])
    op.create_table(
        "case_taxa",
        sa.Column("case_id", sa.Text, sa.ForeignKey("cases.id"), primary_key=True),
        sa.Column("taxon", sa.Text, primary_key=True),
    )
    op.create_index("ix_case_taxa_taxon", "case_taxa", ["taxon"])
