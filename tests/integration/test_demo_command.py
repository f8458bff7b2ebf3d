"""The invented season: whole, plausible, the same each time, and never among real runs."""

import sqlite3
from collections import defaultdict
from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from app.__main__ import main
from app.analysis.figures_tests import figures_of_tests
from app.analysis.reliability import trusts_of
from app.analysis.tests_catalog import tried_tests
from app.cli.demo import UNTIL, WEEKS
from app.cli.demo_season import AFTER_LANDING, NEWCOMER, SILENT, SORE
from app.domain.planned import DueState
from app.domain.records import BoutOutcome, RepDone, RunBegan, RunHeader, RunOutcome, RunSummary, SkipReason
from app.store.database import Database, open_database

NOW = datetime(2026, 11, 22, 18, tzinfo=UTC)


@pytest.fixture(scope="module")
def season(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Database]:
    """The season as it comes without further words."""
    path = tmp_path_factory.mktemp("demo") / "demo.db"
    assert main(["demo", "--database", str(path)]) == 0
    with open_database(path, read_only=True) as database:
        yield database


@pytest.fixture(scope="module")
def runs(season: Database) -> tuple[RunSummary, ...]:
    return season.queries.run_summaries()


def week_of(run: RunSummary) -> int:
    first = UNTIL - timedelta(days=7 * WEEKS - 1)
    return (run.started_at.date() - first).days // 7


def dump(path: Path) -> list[str]:
    connection = sqlite3.connect(path)
    lines = list(connection.iterdump())
    connection.close()
    return lines


def test_twelve_athletes_train_and_every_run_is_marked_as_invented(runs: tuple[RunSummary, ...]) -> None:
    assert len({run.athlete for run in runs}) == 12
    assert all(run.invented for run in runs)
    assert {run.plan_title for run in runs} == {"Shoulder rotators, week 2", "Landing control, week 3"}


def test_the_season_lasts_twelve_weeks_to_its_last_day_with_one_week_off(
    runs: tuple[RunSummary, ...],
) -> None:
    by_week = defaultdict(list)
    for run in runs:
        by_week[week_of(run)].append(run)
    assert set(by_week) | {7} == set(range(WEEKS))
    assert 7 not in by_week
    assert all(len({run.started_at.date() for run in week}) == 3 for week in by_week.values())


def test_training_is_in_the_evening_by_the_clock_on_the_wall_before_and_after_it_is_put_back(
    runs: tuple[RunSummary, ...],
) -> None:
    walls = [run.started_at.astimezone(ZoneInfo(run.zone)) for run in runs]
    assert all(time(17, 20) < wall.time() < time(19, 10) for wall in walls)
    assert {wall.utcoffset() for wall in walls} == {timedelta(hours=1), timedelta(0)}


def test_everybody_misses_a_session_now_and_then_and_somebody_breaks_one_off(
    runs: tuple[RunSummary, ...],
) -> None:
    asked = 3 * (WEEKS - 1)
    came: dict[str, int] = defaultdict(int)
    for run in runs:
        came[run.athlete] += 1
    assert all(asked / 2 <= times <= asked for times in came.values())
    assert asked * 0.75 < sum(came.values()) / 12 < asked * 0.95
    left = [run for run in runs if run.outcome is RunOutcome.ABANDONED]
    assert 0.01 < len(left) / len(runs) < 0.1
    assert all(run.reps_met < run.reps_prescribed for run in left)


def test_clean_reps_become_more_frequent(season: Database, runs: tuple[RunSummary, ...]) -> None:
    clean: dict[int, int] = defaultdict(int)
    all_reps: dict[int, int] = defaultdict(int)
    for run in runs:
        for _, record in season.queries.bouts_of(run.run_id):
            if record is not None:
                clean[week_of(run) // 3] += sum(rep.clean for rep in record.reps)
                all_reps[week_of(run) // 3] += len(record.reps)
    shares = [clean[third] / all_reps[third] for third in sorted(all_reps)]
    assert all(later > earlier for earlier, later in pairwise(shares))
    assert 0.6 < shares[0] < 0.8 < shares[-1] < 0.95


def test_what_was_not_answered_is_unknown(runs: tuple[RunSummary, ...]) -> None:
    unknown = defaultdict(list)
    for run in runs:
        unknown[run.athlete].append(run.session_rpe is None)
    shares = {athlete: sum(asked) / len(asked) for athlete, asked in unknown.items()}
    assert shares.pop(SILENT) > 0.6
    assert 0 < sum(shares.values()) / len(shares) < 0.25
    assert {run.session_rpe for run in runs if run.session_rpe is not None} <= set(range(11))


def test_a_shoulder_hurts_more_and_more_ends_an_exercise_and_settles(
    season: Database, runs: tuple[RunSummary, ...]
) -> None:
    worst_of = {
        name: max(run.pain or 0 for run in runs if run.athlete == name)
        for name in {run.athlete for run in runs}
    }
    assert {name for name, worst in worst_of.items() if worst > 2} == {SORE, AFTER_LANDING}
    pain = [run.pain for run in runs if run.athlete == SORE and run.pain]
    assert pain[0] == pain[-1] == 1
    assert max(pain) == 6
    worst = next(run for run in runs if run.pain == 6)
    bouts = [record for _, record in season.queries.bouts_of(worst.run_id) if record is not None]
    skipped = [record for record in bouts if record.outcome is BoutOutcome.SKIPPED]
    assert [record.reason for record in skipped] == [SkipReason.PAIN] * len(skipped)
    assert skipped
    assert any(record.pain == 6 and record.note for record in bouts)


def test_every_run_is_a_possible_one(season: Database, runs: tuple[RunSummary, ...]) -> None:
    for run in runs[::10]:
        facts = season.queries.facts_of(run.run_id)
        assert facts[0] == RunBegan()
        reps = [fact for fact in facts if isinstance(fact, RepDone)]
        named = {(rep.bout, rep.attempt, rep.side, rep.rep) for rep in reps}
        assert len(named) == len(reps)
        assert all(rep.start_ms < rep.at_ms and 0 <= rep.late_ms < 100 for rep in reps)
        assert run.elapsed_ms is not None
        assert 5 * 60_000 < run.elapsed_ms < 60 * 60_000


def test_what_was_planned_was_done_or_missed_or_excused_and_some_is_still_to_come(season: Database) -> None:
    squad = {each.record.athlete: each for each in season.reviewing.squad(NOW, UNTIL, WEEKS)}
    states = {name: [due.state for due in each.record.due] for name, each in squad.items()}
    whole = states.pop(NEWCOMER)
    assert 0 < len(whole) < 3 * WEEKS
    assert {len(each) for each in states.values()} == {3 * WEEKS}
    assert {each.count(DueState.EXCUSED) for name, each in states.items() if name != SORE} == {3}
    assert states[SORE].count(DueState.EXCUSED) > 3
    assert states[SORE].count(DueState.MISSED) == 0
    assert all(each.count(DueState.DONE) > WEEKS for each in states.values())
    done = sum(each.count(DueState.DONE) for each in (*states.values(), whole))
    assert done == len(season.queries.run_summaries())
    following = season.reviewing.athlete(SORE, UNTIL + timedelta(days=1), UNTIL + timedelta(days=7), UNTIL)
    assert [due.state for due in following.due] == [DueState.NOT_DUE] * 3


def test_most_say_how_they_feel_before_and_the_morning_after(season: Database) -> None:
    days = season.reviewing.athlete(SORE, UNTIL - timedelta(days=7 * WEEKS - 1), UNTIL, UNTIL)
    assert len(days.readiness) > len(days.sessions) / 2
    assert {each.total for each in days.readiness} <= set(range(4, 29))
    mornings = [each.pain_next_morning for each in days.sessions if each.next_morning_asked]
    assert len(mornings) > len(days.sessions) / 2
    assert max(pain for pain in mornings if pain is not None) == 5


def test_everybody_is_tested_now_and_then_so_that_tests_are_trusted_and_two_sides_lag(
    season: Database,
) -> None:
    first, today = UNTIL - timedelta(days=7 * WEEKS - 1), UNTIL + timedelta(days=1)
    behind = set()
    for name in {run.athlete for run in season.queries.run_summaries()}:
        record = season.reviewing.athlete(name, first, UNTIL, today)
        trusts = trusts_of(record.tries)
        assert trusts["single_hop"].pairs >= 80
        assert trusts["drop_jump_flight"].error is not None
        assert {result.note for result in record.results} == {"invented"}
        assert len({test.key for test in tried_tests(record.results)}) == 10
        behind |= {
            (name, figure.name.partition(": ")[0])
            for figure in figures_of_tests(record)
            if ("against its error", "beyond_error") in figure.inputs and figure.name.endswith("of the sides")
        }
    assert {(SORE, "Shoulder external rotation, force"), (AFTER_LANDING, "Single hop for distance")} <= behind


def test_the_same_words_give_the_same_database(tmp_path: Path) -> None:
    for name in ("one.db", "two.db"):
        words = ["demo", "--weeks", "1", "--until", "2026-05-31", "--database", str(tmp_path / name)]
        assert main(words) == 0
    assert dump(tmp_path / "one.db") == dump(tmp_path / "two.db")


def test_a_second_time_changes_nothing_and_says_so(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "demo.db"
    words = ["demo", "--weeks", "1", "--database", str(path)]
    assert main(words) == 0
    before = dump(path)
    first = capsys.readouterr().out
    assert main(words) == 0
    assert dump(path) == before
    number = first.removeprefix(f"{path}: ").split()[0]
    assert first.endswith("in the week to 2026-11-22\n")
    assert capsys.readouterr().out == first.replace("\n", f", {number} of them there before\n")


def test_the_last_day_may_be_chosen(tmp_path: Path) -> None:
    path = tmp_path / "demo.db"
    assert main(["demo", "--weeks", "1", "--until", "2026-05-31", "--database", str(path)]) == 0
    with open_database(path) as database:
        days = {run.started_at.date() for run in database.queries.run_summaries()}
    assert days == {date(2026, 5, 25), date(2026, 5, 27), date(2026, 5, 29)}


def test_nothing_invented_is_written_among_real_runs(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "record.db"
    name = "0190163d-8694-739b-aea5-966c26f8ad91"
    with open_database(path) as database:
        real = RunHeader(name, "Somebody", "Landing", "", datetime(2026, 3, 2, tzinfo=UTC), "UTC")
        database.journal.open_run(real, ())
    before = dump(path)
    assert main(["demo", "--database", str(path)]) == 1
    said = capsys.readouterr().err
    assert "holds runs of real people" in said
    assert "--database" in said
    assert dump(path) == before


@pytest.mark.parametrize("words", [["--weeks", "0"], ["--weeks", "105"], ["--until", "0001-01-01"]])
def test_a_season_that_cannot_be_is_refused_in_plain_words(
    words: list[str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path = tmp_path / "demo.db"
    assert main(["demo", "--database", str(path), *words]) == 1
    assert capsys.readouterr().err.startswith(words[0])
    assert not path.exists()


def test_a_last_day_that_is_no_day_does_not_parse(tmp_path: Path) -> None:
    with pytest.raises(SystemExit) as stopped:
        main(["demo", "--database", str(tmp_path / "demo.db"), "--until", "soon"])
    assert stopped.value.code == 2
