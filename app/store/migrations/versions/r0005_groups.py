"""Group sessions, and who was to come to them."""

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the two tables of groups."""
    op.create_table(
        "group_session",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("form", sa.String(), nullable=False),
        sa.Column("choices", sa.String(), nullable=False),
        sa.Column("started_at", sa.BigInteger(), nullable=False),
        sa.Column("zone", sa.String(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_group_session"),
    )
    op.create_table(
        "group_member",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("group_id", sa.LargeBinary(16), nullable=False),
        sa.Column("athlete_id", sa.LargeBinary(16), nullable=False),
        sa.Column("run_id", sa.LargeBinary(16), nullable=False),
        sa.Column("place", sa.Integer(), nullable=False),
        sa.Column("choices", sa.String(), nullable=False),
        sa.Column("at", sa.BigInteger(), nullable=False),
        sa.Column("zone", sa.String(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_group_member"),
        sa.ForeignKeyConstraint(["group_id"], ["group_session.id"], name="fk_group_member_group_session"),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name="fk_group_member_athlete"),
    )
    op.create_index("ix_group_member_group_id", "group_member", ["group_id"])
    op.create_index("ix_group_member_run_id", "group_member", ["run_id"])
