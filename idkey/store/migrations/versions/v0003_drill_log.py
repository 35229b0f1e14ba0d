"""What people answered in drills."""

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Add the drill log."""
    op.create_table(
        "drill_trials",
        sa.Column("person", sa.Text, primary_key=True),
        sa.Column("number", sa.BigInteger, primary_key=True, autoincrement=False),
        sa.Column("key", sa.Text, nullable=False),
        sa.Column("content", sa.Text, nullable=False),
        sa.Column("digest", sa.Text, nullable=False),
    )
