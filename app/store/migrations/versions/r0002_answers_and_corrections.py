"""Answers, results, notes, devices, settings and corrections; whose and when a run is follows corrections."""

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the new tables, and make `athlete` and `run_course` anew with more columns."""
    _make_athlete_anew()
    _make_run_course_anew()
    _make_device()
    _make_answers()
    _make_results()
    _make_notes()
    _make_corrections()
    _make_settings()


def _make_athlete_anew() -> None:
    op.create_table(
        "athlete_2",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("short_name", sa.String(), nullable=True),
        sa.Column("consent_on", sa.Date(), nullable=True),
        sa.Column("consent_scope", sa.String(), nullable=True),
        sa.PrimaryKeyConstraint("id", name="pk_athlete"),
    )
    op.execute("INSERT INTO athlete_2 (id, name) SELECT id, name FROM athlete")
    op.drop_table("athlete")
    op.rename_table("athlete_2", "athlete")
    op.create_index("ix_athlete_name", "athlete", ["name"])


def _make_run_course_anew() -> None:
    op.create_table(
        "run_course_2",
        sa.Column("run_id", sa.LargeBinary(16), nullable=False),
        sa.Column("athlete_id", sa.LargeBinary(16), nullable=False),
        sa.Column("started_at", sa.BigInteger(), nullable=False),
        sa.Column("zone", sa.String(), nullable=False),
        sa.Column("outcome", sa.String(), nullable=True),
        sa.Column("elapsed_ms", sa.Integer(), nullable=True),
        sa.Column("session_rpe", sa.Integer(), nullable=True),
        sa.Column("lag_ms", sa.Integer(), nullable=True),
        sa.Column("corrected", sa.String(), nullable=True),
        sa.PrimaryKeyConstraint("run_id", name="pk_run_course"),
        sa.ForeignKeyConstraint(["run_id"], ["run.id"], name="fk_run_course_run"),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name="fk_run_course_athlete"),
        sqlite_with_rowid=False,
    )
    op.execute(
        "INSERT INTO run_course_2 "
        "(run_id, athlete_id, started_at, zone, outcome, elapsed_ms, session_rpe, lag_ms) "
        "SELECT run.id, athlete_id, started_at, zone, outcome, elapsed_ms, session_rpe, lag_ms "
        "FROM run_course JOIN run ON run.id = run_course.run_id"
    )
    op.drop_table("run_course")
    op.rename_table("run_course_2", "run_course")
    op.create_index("ix_run_course_started_at", "run_course", ["started_at"])
    op.create_index("ix_run_course_athlete_id_started_at", "run_course", ["athlete_id", "started_at"])
    op.drop_index("ix_run_started_at", "run")
    op.drop_index("ix_run_athlete_id_started_at", "run")


def _make_device() -> None:
    op.create_table(
        "device",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        *_when(),
        sa.PrimaryKeyConstraint("id", name="pk_device"),
    )


def _make_answers() -> None:
    op.create_table(
        "readiness",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("athlete_id", sa.LargeBinary(16), nullable=False),
        sa.Column("run_id", sa.LargeBinary(16), nullable=True),
        *_when(),
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
        sa.PrimaryKeyConstraint("id", name="pk_readiness"),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name="fk_readiness_athlete"),
        sa.ForeignKeyConstraint(["run_id"], ["run.id"], name="fk_readiness_run"),
    )
    op.create_index("ix_readiness_athlete_id_at", "readiness", ["athlete_id", "at"])
    op.create_table(
        "rating",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("run_id", sa.LargeBinary(16), nullable=False),
        sa.Column("kind", sa.String(), nullable=False),
        sa.Column("value", sa.Integer(), nullable=True),
        *_when(),
        sa.Column("place", sa.String(), nullable=True),
        sa.Column("side", sa.String(), nullable=True),
        sa.Column("note", sa.String(), nullable=True),
        sa.PrimaryKeyConstraint("id", name="pk_rating"),
        sa.ForeignKeyConstraint(["run_id"], ["run.id"], name="fk_rating_run"),
    )
    op.create_index("ix_rating_run_id", "rating", ["run_id"])


def _make_results() -> None:
    op.create_table(
        "result",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("athlete_id", sa.LargeBinary(16), nullable=False),
        sa.Column("test", sa.String(), nullable=False),
        sa.Column("value", sa.String(), nullable=False),
        sa.Column("unit", sa.String(), nullable=False),
        *_when(),
        sa.Column("side", sa.String(), nullable=False),
        sa.Column("attempt", sa.Integer(), nullable=False),
        sa.Column("device_id", sa.LargeBinary(16), nullable=True),
        sa.Column("note", sa.String(), nullable=True),
        sa.PrimaryKeyConstraint("id", name="pk_result"),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name="fk_result_athlete"),
        sa.ForeignKeyConstraint(["device_id"], ["device.id"], name="fk_result_device"),
    )
    op.create_index("ix_result_athlete_id_at", "result", ["athlete_id", "at"])


def _make_notes() -> None:
    op.create_table(
        "note",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("athlete_id", sa.LargeBinary(16), nullable=False),
        sa.Column("run_id", sa.LargeBinary(16), nullable=True),
        sa.Column("text", sa.String(), nullable=False),
        sa.Column("who", sa.String(), nullable=False),
        *_when(),
        sa.PrimaryKeyConstraint("id", name="pk_note"),
        sa.ForeignKeyConstraint(["athlete_id"], ["athlete.id"], name="fk_note_athlete"),
        sa.ForeignKeyConstraint(["run_id"], ["run.id"], name="fk_note_run"),
    )
    op.create_index("ix_note_athlete_id_at", "note", ["athlete_id", "at"])


def _make_corrections() -> None:
    op.create_table(
        "correction",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("subject", sa.String(), nullable=False),
        sa.Column("subject_id", sa.LargeBinary(16), nullable=False),
        sa.Column("bout", sa.Integer(), nullable=True),
        sa.Column("attempt", sa.Integer(), nullable=True),
        sa.Column("rep", sa.Integer(), nullable=True),
        sa.Column("side", sa.String(), nullable=True),
        sa.Column("field", sa.String(), nullable=False),
        sa.Column("before", sa.String(), nullable=False),
        sa.Column("after", sa.String(), nullable=False),
        sa.Column("who", sa.String(), nullable=False),
        sa.Column("why", sa.String(), nullable=False),
        *_when(),
        sa.Column("replaces", sa.String(), nullable=False),
        sa.PrimaryKeyConstraint("id", name="pk_correction"),
    )
    op.create_index("ix_correction_subject_id", "correction", ["subject_id"])


def _make_settings() -> None:
    op.create_table(
        "setting",
        sa.Column("id", sa.LargeBinary(16), nullable=False),
        sa.Column("name", sa.String(), nullable=False),
        sa.Column("value", sa.String(), nullable=True),
        *_when(),
        sa.PrimaryKeyConstraint("id", name="pk_setting"),
    )
    op.create_index("ix_setting_name", "setting", ["name"])


def _when() -> tuple[sa.Column[int], sa.Column[str]]:
    return sa.Column("at", sa.BigInteger(), nullable=False), sa.Column("zone", sa.String(), nullable=False)
