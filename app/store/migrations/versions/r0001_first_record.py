"""The first record: athletes, plans, prescriptions, runs, their facts, and what is drawn from them."""

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make all tables."""
    _make_what_is_asked()
    _make_runs()
    _make_what_happened()
    _make_what_is_drawn()


def _make_what_is_asked() -> None:
    op.create_table(
        "athlete",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_athlete"),
    )
    op.create_index("ix_athlete_name", "athlete", ["name"])
    op.create_table(
        "plan",
        sa.Column("hash", sa.LargeBinary(32), nullable=False),
        sa.Column("title", sa.String(), nullable=False),
        sa.Column("text", sa.String(), nullable=False),
        sa.PrimaryKeyConstraint("hash", name="pk_plan"),
    )
    op.create_table(
        "prescription",
        sa.Column("hash", sa.LargeBinary(32), nullable=False),
        sa.Column("low", sa.Integer(), nullable=False),
        sa.PrimaryKeyConstraint("hash", name="pk_prescription"),
    )
    op.create_table(
        "prescribed_bout",
        sa.Column("prescription_hash", sa.LargeBinary(32), nullable=False),
        sa.Column("bout", sa.Integer(), nullable=False),
        sa.Column("stage_name", sa.String(), nullable=False),
        sa.Column("stage_kind", sa.String(), nullable=False),
        sa.Column("exercise", sa.String(), nullable=False),
        sa.Column("set_number", sa.Integer(), nullable=False),
        sa.Column("side", sa.String(), nullable=False),
        sa.Column("low", sa.Integer(), nullable=False),
        sa.Column("high", sa.Integer(), nullable=False),
        sa.Column("work_ms", sa.Integer(), nullable=True),
        sa.Column("contacts_per_rep", sa.Integer(), nullable=False),
        sa.Column("load_kg", sa.String(), nullable=True),
        sa.PrimaryKeyConstraint("prescription_hash", "bout", name="pk_prescribed_bout"),
        sa.ForeignKeyConstraint(
            ["prescription_hash"], ["prescription.hash"], name="fk_prescribed_bout_prescription"
        ),
    )


def _make_runs() -> None:
    op.create_table(
        "run",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("athlete_id", sa.LargeBinary(16), nullable=False),
        sa.Column("plan_hash", sa.LargeBinary(32), nullable=False),
        sa.Column("prescription_hash", sa.LargeBinary(32), nullable=False),
        sa.Column("started_at", sa.BigInteger(), nullable=False),
        sa.Column("zone", sa.String(), nullable=False),
        sa.Column("invented", sa.Boolean(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_run"),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name="fk_run_athlete"),
        sa.ForeignKeyConstraint(["plan_hash"], ["plan.hash"], name="fk_run_plan"),
        sa.ForeignKeyConstraint(["prescription_hash"], ["prescription.hash"], name="fk_run_prescription"),
    )
    op.create_index("ix_run_started_at", "run", ["started_at"])
    op.create_index("ix_run_athlete_id_started_at", "run", ["athlete_id", "started_at"])


def _make_what_happened() -> None:
    op.create_table(
        "fact",
        sa.Column("run_id", sa.LargeBinary(16), nullable=False),
        sa.Column("number", sa.Integer(), nullable=False),
        sa.Column("body", sa.LargeBinary(), nullable=False),
        sa.PrimaryKeyConstraint("run_id", "number", name="pk_fact"),
        sa.ForeignKeyConstraint(["run_id"], ["run.id"], name="fk_fact_run"),
        sqlite_with_rowid=False,
    )
    op.create_table(
        "fold",
        sa.Column("run_id", sa.LargeBinary(16), nullable=False),
        sa.Column("first_number", sa.Integer(), nullable=False),
        sa.Column("last_number", sa.Integer(), nullable=False),
        sa.Column("body", sa.LargeBinary(), nullable=False),
        sa.PrimaryKeyConstraint("run_id", "first_number", name="pk_fold"),
        sa.ForeignKeyConstraint(["run_id"], ["run.id"], name="fk_fold_run"),
        sqlite_with_rowid=False,
    )


def _make_what_is_drawn() -> None:
    op.create_table(
        "bout_record",
        sa.Column("run_id", sa.LargeBinary(16), nullable=False),
        sa.Column("bout", sa.Integer(), nullable=False),
        sa.Column("attempt", sa.Integer(), nullable=False),
        sa.Column("outcome", sa.String(), nullable=False),
        sa.Column("began_ms", sa.Integer(), nullable=True),
        sa.Column("ended_ms", sa.Integer(), nullable=False),
        sa.Column("reps_counted", sa.Integer(), nullable=False),
        sa.Column("reps_clean", sa.Integer(), nullable=False),
        sa.Column("reps_stated", sa.Integer(), nullable=True),
        sa.Column("rpe", sa.Integer(), nullable=True),
        sa.Column("pain", sa.Integer(), nullable=True),
        sa.PrimaryKeyConstraint("run_id", "bout", "attempt", name="pk_bout_record"),
        sa.ForeignKeyConstraint(["run_id"], ["run.id"], name="fk_bout_record_run"),
        sqlite_with_rowid=False,
    )
    op.create_table(
        "run_course",
        sa.Column("run_id", sa.LargeBinary(16), nullable=False),
        sa.Column("outcome", sa.String(), nullable=True),
        sa.Column("elapsed_ms", sa.Integer(), nullable=True),
        sa.Column("session_rpe", sa.Integer(), nullable=True),
        sa.Column("lag_ms", sa.Integer(), nullable=True),
        sa.PrimaryKeyConstraint("run_id", name="pk_run_course"),
        sa.ForeignKeyConstraint(["run_id"], ["run.id"], name="fk_run_course_run"),
        sqlite_with_rowid=False,
    )
