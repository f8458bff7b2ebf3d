"""The side of each athlete that the other is measured against."""

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the table of the people anew with one more column, in which nobody has chosen yet."""
    kept = "id, name, short_name, consent_on, consent_scope"
    op.create_table(
        "athlete_6",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("short_name", sa.String(), nullable=True),
        sa.Column("consent_on", sa.Date(), nullable=True),
        sa.Column("consent_scope", sa.String(), nullable=True),
        sa.Column("reference_side", sa.String(), nullable=True),
        sa.PrimaryKeyConstraint("id", name="pk_athlete"),
    )
    op.execute(f"INSERT INTO athlete_6 ({kept}) SELECT {kept} FROM athlete")  # noqa: S608 - own words
    op.drop_table("athlete")
    op.rename_table("athlete_6", "athlete")
    op.create_index("ix_athlete_name", "athlete", ["name"])
