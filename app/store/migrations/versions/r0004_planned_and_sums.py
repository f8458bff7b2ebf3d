"""Planned sessions; loads used, tempo, time under tension and sums; what was decided before a session.

The new figures of runs are drawn from their facts once the tables are there.
"""

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the tables of planning, and four others anew with more columns."""
    _make_planned()
    _make_planned_change()
    _make_readiness_anew()
    _make_prescribed_bout_anew()
    _make_bout_record_anew()
    _make_run_course_anew()


def _make_readiness_anew() -> None:
    kept = (
        "id, athlete_id, run_id, at, zone, sleep, fatigue, stress, soreness, pain, pain_place, pain_side, "
        "changed, red_flag, note"
    )
    op.create_table(
        "readiness_4",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("athlete_id", sa.LargeBinary(16), nullable=False),
        sa.Column("run_id", sa.LargeBinary(16), nullable=True),
        sa.Column("at", sa.BigInteger(), nullable=False),
        sa.Column("zone", sa.String(), nullable=False),
        sa.Column("sleep", sa.Integer(), nullable=True),
        sa.Column("fatigue", sa.Integer(), nullable=True),
        sa.Column("stress", sa.Integer(), nullable=True),
        sa.Column("soreness", sa.Integer(), nullable=True),
        sa.Column("pain", sa.Integer(), nullable=True),
        sa.Column("pain_place", sa.String(), nullable=True),
        sa.Column("pain_side", sa.String(), nullable=True),
        sa.Column("changed", sa.Boolean(), nullable=True),
        sa.Column("red_flag", sa.Boolean(), nullable=True),
        sa.Column("note", sa.String(), nullable=True),
        sa.Column("decision", sa.String(), nullable=True),
        sa.PrimaryKeyConstraint("id", name="pk_readiness"),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name="fk_readiness_athlete"),
        sa.ForeignKeyConstraint(["run_id"], ["run.id"], name="fk_readiness_run"),
    )
    _put_in_place("readiness", kept, kept)
    op.create_index("ix_readiness_athlete_id_at", "readiness", ["athlete_id", "at"])


def _make_prescribed_bout_anew() -> None:
    kept = (
        "prescription_hash, bout, stage_name, stage_kind, exercise, set_number, side, low, high, work_ms, "
        "contacts_per_rep, load_kg"
    )
    op.create_table(
        "prescribed_bout_4",
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
        sa.Column("dose", sa.String(), nullable=True),
        sa.Column("rep_tut_ms", sa.Integer(), nullable=True),
        sa.PrimaryKeyConstraint("prescription_hash", "bout", name="pk_prescribed_bout"),
        sa.ForeignKeyConstraint(
            ["prescription_hash"], ["prescription.hash"], name="fk_prescribed_bout_prescription"
        ),
    )
    _put_in_place("prescribed_bout", kept, kept)


def _make_bout_record_anew() -> None:
    kept = (
        "run_id, bout, attempt, outcome, began_ms, ended_ms, reps_counted, reps_clean, reps_stated, rpe, pain"
    )
    op.create_table(
        "bout_record_4",
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
        sa.Column("load_kg", sa.String(), nullable=True),
        sa.Column("reps_missed", sa.Integer(), nullable=False),
        sa.Column("tempo_known", sa.Integer(), nullable=False),
        sa.Column("tempo_kept", sa.Integer(), nullable=False),
        sa.Column("tut_ms", sa.Integer(), nullable=True),
        sa.PrimaryKeyConstraint("run_id", "bout", "attempt", name="pk_bout_record"),
        sa.ForeignKeyConstraint(["run_id"], ["run.id"], name="fk_bout_record_run"),
        sqlite_with_rowid=False,
    )
    _put_in_place("bout_record", f"{kept}, reps_missed, tempo_known, tempo_kept", f"{kept}, 0, 0, 0")


def _make_run_course_anew() -> None:
    kept = "run_id, athlete_id, started_at, zone, outcome, elapsed_ms, session_rpe, lag_ms, corrected"
    op.create_table(
        "run_course_4",
        sa.Column("run_id", sa.LargeBinary(16), nullable=False),
        sa.Column("athlete_id", sa.LargeBinary(16), nullable=False),
        sa.Column("started_at", sa.BigInteger(), nullable=False),
        sa.Column("zone", sa.String(), nullable=False),
        sa.Column("outcome", sa.String(), nullable=True),
        sa.Column("elapsed_ms", sa.Integer(), nullable=True),
        sa.Column("session_rpe", sa.Integer(), nullable=True),
        sa.Column("lag_ms", sa.Integer(), nullable=True),
        sa.Column("corrected", sa.String(), nullable=True),
        sa.Column("reps_met", sa.Integer(), nullable=True),
        sa.Column("reps_done", sa.Integer(), nullable=True),
        sa.Column("tempo_known", sa.Integer(), nullable=True),
        sa.Column("tempo_kept", sa.Integer(), nullable=True),
        sa.Column("pain", sa.Integer(), nullable=True),
        sa.PrimaryKeyConstraint("run_id", name="pk_run_course"),
        sa.ForeignKeyConstraint(["run_id"], ["run.id"], name="fk_run_course_run"),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name="fk_run_course_athlete"),
        sqlite_with_rowid=False,
    )
    _put_in_place("run_course", kept, kept)
    op.create_index("ix_run_course_started_at", "run_course", ["started_at"])
    op.create_index("ix_run_course_athlete_id_started_at", "run_course", ["athlete_id", "started_at"])


def _put_in_place(table: str, columns: str, values: str) -> None:
    """Move what a table holds to the one made anew, which takes its name."""
    op.execute(f"INSERT INTO {table}_4 ({columns}) SELECT {values} FROM {table}")  # noqa: S608 - own words
    op.drop_table(table)
    op.rename_table(f"{table}_4", table)


def _make_planned() -> None:
    op.create_table(
        "planned",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("athlete_id", sa.LargeBinary(16), nullable=False),
        sa.Column("plan_title", sa.String(), nullable=False),
        sa.Column("day", sa.Date(), nullable=False),
        sa.Column("clock", sa.String(), nullable=True),
        sa.Column("until", sa.Date(), nullable=True),
        sa.Column("plan_file", sa.String(), nullable=True),
        sa.Column("at", sa.BigInteger(), nullable=False),
        sa.Column("zone", sa.String(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_planned"),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name="fk_planned_athlete"),
    )
    op.create_index("ix_planned_athlete_id_day", "planned", ["athlete_id", "day"])


def _make_planned_change() -> None:
    op.create_table(
        "planned_change",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("planned_id", sa.LargeBinary(16), nullable=False),
        sa.Column("athlete_id", sa.LargeBinary(16), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("day", sa.Date(), nullable=False),
        sa.Column("to_day", sa.Date(), nullable=True),
        sa.Column("reason", sa.String(), nullable=True),
        sa.Column("at", sa.BigInteger(), nullable=False),
        sa.Column("zone", sa.String(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_planned_change"),
        sa.ForeignKeyConstraint(["planned_id"], ["planned.id"], name="fk_planned_change_planned"),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name="fk_planned_change_athlete"),
    )
    op.create_index("ix_planned_change_planned_id", "planned_change", ["planned_id"])
