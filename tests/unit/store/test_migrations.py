"""Each step from an empty file to today's schema; a step without a test of its own fails here."""

import re
import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.config import Config
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import create_engine, text

from app.domain.errors import StoreError
from app.store import migration
from app.store.exchange_rows import ErasedRow
from app.store.group_rows import GroupMemberRow
from app.store.later_rows import CorrectionRow
from app.store.link import Link
from app.store.migration import SCRIPTS, migrate
from app.store.planned_rows import PlannedRow
from app.store.rows import Row
from app.store.schema import APPLICATION_ID, SCHEMA_VERSION, revision_of


@pytest.fixture
def link(tmp_path: Path) -> Iterator[Link]:
    """An empty file."""
    path = tmp_path / "record.db"
    path.touch()
    opened = Link(path, read_only=False, wait_s=0)
    yield opened
    opened.close()


for beside in (CorrectionRow, ErasedRow, GroupMemberRow, PlannedRow):
    assert beside.metadata is Row.metadata, "the tables of all modules make the schema"


def revisions() -> list[str]:
    config = Config()
    config.set_main_option("script_location", str(SCRIPTS))
    return [step.revision for step in ScriptDirectory.from_config(config).walk_revisions()][::-1]


def asked(link: Link, statement: str) -> object:
    with link.reading() as connection:
        return connection.execute(text(statement)).scalar()


def test_revisions_are_numbered_without_a_gap_up_to_the_schema_of_today() -> None:
    assert revisions() == [revision_of(number) for number in range(1, SCHEMA_VERSION + 1)]


def test_every_revision_has_a_test_of_its_own() -> None:
    tested = set(re.findall(r"^def test_revision_(\d{4})_", Path(__file__).read_text(), re.MULTILINE))
    assert set(revisions()) == tested


def test_revision_0001_makes_the_tables_of_the_first_record(link: Link) -> None:
    migrate(link, 1)
    with sqlite3.connect(link.path) as raw:
        tables = {name for (name,) in raw.execute("SELECT name FROM sqlite_schema WHERE type = 'table'")}
        raw.execute("PRAGMA foreign_keys = ON")
        with pytest.raises(sqlite3.IntegrityError, match="FOREIGN KEY"):
            raw.execute("INSERT INTO fact VALUES (x'00', 0, x'01')")
    raw.close()
    assert tables == {
        "alembic_version",
        "athlete",
        "plan",
        "prescription",
        "prescribed_bout",
        "run",
        "fact",
        "fold",
        "bout_record",
        "run_course",
    }


def test_revision_0002_adds_answers_and_corrections_and_keeps_what_was_there(link: Link) -> None:
    migrate(link, 1)
    with sqlite3.connect(link.path) as raw:
        raw.execute("INSERT INTO athlete VALUES (x'0a', 'Ines')")
        raw.execute("INSERT INTO plan VALUES (x'0b', 'Landing', 'text')")
        raw.execute("INSERT INTO prescription VALUES (x'0c', 3)")
        raw.execute("INSERT INTO run VALUES (x'01', x'0a', x'0b', x'0c', 1772472600000000, 'UTC', 0)")
        raw.execute("INSERT INTO run VALUES (x'02', x'0a', x'0b', x'0c', 1772472600000001, 'UTC', 0)")
        raw.execute("INSERT INTO fact VALUES (x'01', 0, x'01')")
        raw.execute("INSERT INTO run_course VALUES (x'01', 'finished', 70000, 6, 5000)")
    raw.close()
    migrate(link, 2)
    with sqlite3.connect(link.path) as raw:
        raw.execute("PRAGMA foreign_keys = ON")
        assert raw.execute("SELECT * FROM athlete").fetchall() == [(b"\x0a", "Ines", None, None, None)]
        course = (b"\x01", b"\x0a", 1772472600000000, "UTC", "finished", 70000, 6, 5000, None)
        assert raw.execute("SELECT * FROM run_course").fetchall() == [course]
        assert raw.execute("SELECT count(*) FROM run JOIN fact ON run_id = run.id").fetchone() == (1,)
        tables = {name for (name,) in raw.execute("SELECT name FROM sqlite_schema WHERE type = 'table'")}
        with pytest.raises(sqlite3.IntegrityError, match="FOREIGN KEY"):
            raw.execute(
                "INSERT INTO rating VALUES (x'03', x'04', 'next_morning_pain', 2, 0, 'UTC', '', '', '')"
            )
        with pytest.raises(sqlite3.IntegrityError, match="FOREIGN KEY"):
            raw.execute("DELETE FROM athlete")
    raw.close()
    new = {"device", "readiness", "rating", "result", "note", "correction", "setting"}
    assert new <= tables


def test_revision_0003_adds_what_comes_from_elsewhere_and_keeps_what_was_there(link: Link) -> None:
    migrate(link, 2)
    with sqlite3.connect(link.path) as raw:
        raw.execute("INSERT INTO athlete VALUES (x'0a', 'Ines', NULL, NULL, NULL)")
    raw.close()
    migrate(link, 3)
    with sqlite3.connect(link.path) as raw:
        raw.execute("PRAGMA foreign_keys = ON")
        assert raw.execute("SELECT id, name FROM athlete").fetchall() == [(b"\x0a", "Ines")]
        for strange in ("imported VALUES (x'01')", "branch VALUES (x'01', x'02', x'03')"):
            with pytest.raises(sqlite3.IntegrityError, match="FOREIGN KEY"):
                raw.execute(f"INSERT INTO {strange}")
        raw.execute("INSERT INTO erased VALUES (x'01', 0)")
    raw.close()


def test_revision_0004_adds_what_is_planned_and_keeps_what_was_there(link: Link) -> None:
    migrate(link, 3)
    with sqlite3.connect(link.path) as raw:
        raw.executescript(_OF_0003)
        before = {table: rows_of(raw, table) for table in _MADE_ANEW}
    raw.close()
    migrate(link, 4)
    migrate(link)  # sums are drawn at the last step, whichever that is
    with sqlite3.connect(link.path) as raw:
        raw.execute("PRAGMA foreign_keys = ON")
        for table, rows in before.items():
            (after,) = rows_of(raw, table)
            assert after[: len(rows[0])] == rows[0]
        sums = "SELECT reps_met, reps_done, tempo_known, tempo_kept, run_course.pain FROM run_course"
        assert raw.execute(sums).fetchone() == (3, 4, 0, 0, 0)
        with pytest.raises(sqlite3.IntegrityError, match="FOREIGN KEY"):
            raw.execute(
                "INSERT INTO planned VALUES (x'03', x'0d', 'T', '2026-01-05', NULL, NULL, NULL, 0, 'UTC')"
            )
    raw.close()


def test_revision_0005_adds_groups_and_keeps_what_was_there(link: Link) -> None:
    migrate(link, 4)
    with sqlite3.connect(link.path) as raw:
        raw.execute("INSERT INTO athlete VALUES (x'0a', 'Ines', NULL, NULL, NULL)")
    raw.close()
    migrate(link, 5)
    with sqlite3.connect(link.path) as raw:
        raw.execute("PRAGMA foreign_keys = ON")
        assert raw.execute("SELECT id, name FROM athlete").fetchall() == [(b"\x0a", "Ines")]
        raw.execute("INSERT INTO group_session VALUES (x'01', 'waves', '{}', 0, 'UTC')")
        member = "INSERT INTO group_member VALUES (x'02', x'{}', x'{}', x'07', 0, '{{}}', 0, 'UTC')"
        raw.execute(member.format("01", "0a"))
        for group, athlete in (("03", "0a"), ("01", "0b")):
            with pytest.raises(sqlite3.IntegrityError, match="FOREIGN KEY"):
                raw.execute(member.format(group, athlete).replace("x'02'", "x'04'"))
    raw.close()


def test_revision_0006_adds_the_reference_side_and_keeps_what_was_there(link: Link) -> None:
    migrate(link, 5)
    with sqlite3.connect(link.path) as raw:
        raw.execute("INSERT INTO athlete VALUES (x'0a', 'Ines', 'In', '2026-03-01', 'training data')")
        raw.execute(
            "INSERT INTO note (id, athlete_id, text, who, at, zone) "
            "VALUES (x'01', x'0a', 'n', 'Tomas', 0, 'UTC')"
        )
    raw.close()
    migrate(link, 6)
    with sqlite3.connect(link.path) as raw:
        raw.execute("PRAGMA foreign_keys = ON")
        kept = (b"\x0a", "Ines", "In", "2026-03-01", "training data", None)
        assert raw.execute("SELECT * FROM athlete").fetchall() == [kept]
        with pytest.raises(sqlite3.IntegrityError, match="FOREIGN KEY"):
            raw.execute("DELETE FROM athlete")
    raw.close()


def rows_of(raw: sqlite3.Connection, table: str) -> list[tuple[object, ...]]:
    """All rows of a table."""
    return raw.execute(f"SELECT * FROM {table}").fetchall()  # noqa: S608 - one of ours


_OF_0003 = """
    INSERT INTO athlete VALUES (x'0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a0a', 'Ines', NULL, NULL, NULL);
    INSERT INTO plan VALUES (x'0b', 'Landing', 'text');
    INSERT INTO prescription VALUES (x'0c', 3);
    INSERT INTO prescribed_bout VALUES
        (x'0c', 0, 'Catch', 'stability', 'Step-down', 1, 'left', 3, 4, NULL, 1, '2.5');
    INSERT INTO run SELECT x'01010101010101010101010101010101', id, x'0b', x'0c', 0, 'UTC', 0 FROM athlete;
    INSERT INTO bout_record SELECT id, 0, 1, 'done', 5000, 9000, 4, 3, NULL, 6, 0 FROM run;
    INSERT INTO run_course SELECT id, athlete_id, 0, 'UTC', 'finished', 70000, 6, 5000, 'pain' FROM run;
    INSERT INTO readiness
        SELECT x'02', id, NULL, 0, 'UTC', 1, 2, 3, 4, 0, NULL, NULL, 0, 0, 'well' FROM athlete;
"""
_MADE_ANEW = ("readiness", "prescribed_bout", "bout_record", "run_course")


def test_an_empty_file_migrated_is_the_schema_of_the_models(link: Link) -> None:
    migrate(link)
    with link.reading() as connection:
        context = MigrationContext.configure(
            connection, opts={"compare_type": True, "compare_server_default": True}
        )
        assert compare_metadata(context, Row.metadata) == []


def test_migration_and_models_also_agree_on_what_a_comparison_of_metadata_does_not_see(
    link: Link, tmp_path: Path
) -> None:
    migrate(link)
    engine = create_engine(f"sqlite:///{tmp_path / 'models.db'}")
    Row.metadata.create_all(engine)
    engine.dispose()
    made = []
    for path in (link.path, tmp_path / "models.db"):
        with sqlite3.connect(path) as raw:
            statements = raw.execute("SELECT name, sql FROM sqlite_schema WHERE sql IS NOT NULL")
            made.append({name: _clauses(sql) for name, sql in statements if name != "alembic_version"})
        raw.close()
    assert made[0] == made[1]


def _clauses(statement: str) -> list[str]:
    """The clauses of a statement in no order."""
    # A table that was made anew under another name and then renamed has its name in quotation marks.
    lines = (line.strip().rstrip(",") for line in statement.replace('"', "").splitlines())
    return sorted(re.sub(r"\s+", " ", line) for line in lines if line)


def test_the_header_of_the_file_and_the_version_table_say_the_same(link: Link) -> None:
    migrate(link)
    assert asked(link, "PRAGMA user_version") == SCHEMA_VERSION
    assert asked(link, "PRAGMA application_id") == APPLICATION_ID
    assert asked(link, "SELECT version_num FROM alembic_version") == revision_of(SCHEMA_VERSION)


def test_the_marks_stand_where_the_file_format_puts_them(link: Link) -> None:
    # https://www.sqlite.org/fileformat2.html, section 1.3: user version at offset 60, application id at 68.
    migrate(link)
    head = link.path.read_bytes()[:100]
    assert int.from_bytes(head[60:64], "big") == SCHEMA_VERSION
    assert head[68:72] == b"Pcwr"


def test_migrating_twice_changes_nothing(link: Link) -> None:
    migrate(link)
    before = link.path.read_bytes()
    migrate(link)
    assert link.path.read_bytes() == before


def test_a_step_that_fails_leaves_the_file_as_it_was(link: Link, monkeypatch: pytest.MonkeyPatch) -> None:
    upgrade = migration._upgrade

    def fail_at_the_end(*arguments: object) -> None:
        upgrade(*arguments)  # type: ignore[arg-type]
        raise RuntimeError("the plug was pulled")

    monkeypatch.setattr(migration, "_upgrade", fail_at_the_end)
    with pytest.raises(RuntimeError):
        migrate(link)
    assert asked(link, "SELECT count(*) FROM sqlite_schema") == 0
    assert asked(link, "PRAGMA user_version") == 0
    assert asked(link, "PRAGMA foreign_keys") == 1


def test_a_step_that_breaks_a_reference_is_taken_back(link: Link, monkeypatch: pytest.MonkeyPatch) -> None:
    upgrade = migration._upgrade

    def orphan(connection: object, version: int) -> None:
        upgrade(connection, version)  # type: ignore[arg-type]
        connection.exec_driver_sql("INSERT INTO fact VALUES (x'00', 0, x'01')")  # type: ignore[attr-defined]

    monkeypatch.setattr(migration, "_upgrade", orphan)
    with pytest.raises(StoreError, match="damaged"):
        migrate(link)
    assert asked(link, "PRAGMA user_version") == 0


def test_foreign_keys_are_off_during_a_step_and_on_after_it(
    link: Link, monkeypatch: pytest.MonkeyPatch
) -> None:
    upgrade = migration._upgrade
    seen = []

    def look(connection: object, version: int) -> None:
        seen.append(connection.exec_driver_sql("PRAGMA foreign_keys").scalar())  # type: ignore[attr-defined]
        upgrade(connection, version)  # type: ignore[arg-type]

    monkeypatch.setattr(migration, "_upgrade", look)
    migrate(link)
    assert seen == [0] * SCHEMA_VERSION
    assert asked(link, "PRAGMA foreign_keys") == 1


def test_alembic_is_loaded_to_make_a_file_and_not_to_open_it_again(tmp_path: Path) -> None:
    script = (
        "import sys; from pathlib import Path; from app.store.database import open_database; "
        "open_database(Path(sys.argv[1])).close(); print('alembic' in sys.modules)"
    )
    said = [
        subprocess.run(
            [sys.executable, "-c", script, str(tmp_path / "record.db")],
            capture_output=True,
            text=True,
            check=True,
            cwd=Path(__file__).parents[3],
        ).stdout.strip()
        for _ in range(2)
    ]
    assert said == ["True", "False"]
