"""Runs of past training, runs that were led on in two places, and who was erased."""

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the three tables."""
    op.create_table(
        "imported",
        sa.Column("run_id", sa.LargeBinary(16), nullable=False),
        sa.PrimaryKeyConstraint("run_id", name="pk_imported"),
        sa.ForeignKeyConstraint(["run_id"], ["run.id"], name="fk_imported_run"),
        sqlite_with_rowid=False,
    )
    op.create_table(
        "branch",
        sa.Column("run_id", sa.LargeBinary(16), nullable=False),
        sa.Column("hash", sa.LargeBinary(32), nullable=False),
        sa.Column("body", sa.LargeBinary(), nullable=False),
        sa.PrimaryKeyConstraint("run_id", "hash", name="pk_branch"),
        sa.ForeignKeyConstraint(["run_id"], ["run.id"], name="fk_branch_run"),
        sqlite_with_rowid=False,
    )
    op.create_table(
        "erased",
        sa.Column("hash", sa.LargeBinary(32), nullable=False),
        sa.Column("at", sa.BigInteger(), nullable=False),
        sa.PrimaryKeyConstraint("hash", name="pk_erased"),
        sqlite_with_rowid=False,
    )
