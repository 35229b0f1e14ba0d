"""Pictures lie in their folder, not in the book."""

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Take away the table of pictures, which nothing ever filled; one that holds any stays."""
    if not op.get_bind().execute(sa.text("SELECT count(*) FROM pictures")).scalar():
        op.drop_table("pictures")
