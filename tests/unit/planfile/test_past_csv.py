"""Past training from a CSV file: every problem at once with its place, and unknown stays unknown."""

from datetime import date
from pathlib import Path

import pytest

from app.domain.errors import FileProblemsError
from app.domain.past import PastSession
from app.planfile import past_csv
from app.planfile.past_csv import parse_past, read_past

TODAY = date(2026, 11, 22)
HEAD = "date,session,minutes,RPE\n"


def parsed(text: str, *, athlete: bool = False) -> tuple[PastSession, ...]:
    return parse_past(text, "p.csv", TODAY, athlete=athlete)


def problems(text: str, *, athlete: bool = False) -> list[str]:
    with pytest.raises(FileProblemsError) as caught:
        parsed(text, athlete=athlete)
    return str(caught.value).splitlines()


def test_a_session_has_its_day_title_length_and_effort() -> None:
    assert parsed(HEAD + "2026-03-02,Beach run,45,6\n") == (
        PastSession(date(2026, 3, 2), "Beach run", 45 * 60_000, 6),
    )


def test_what_is_left_open_is_unknown_and_an_effort_of_nought_is_nought() -> None:
    first, second, third = parsed(HEAD + "2026-03-02,Run,,\n2026-03-03,Run,30.5,0\n2026-03-04,Run\n")
    assert (first.ms, first.rpe) == (None, None)
    assert (second.ms, second.rpe) == (1_830_000, 0)
    assert (third.ms, third.rpe) == (None, None)


def test_columns_stand_in_any_order_and_only_the_day_and_the_session_must_be_there() -> None:
    (session,) = parsed("Session,Date\nSwim,2026-03-02\n")
    assert session == PastSession(date(2026, 3, 2), "Swim")


def test_semicolons_with_decimal_commas_and_tabs_are_understood() -> None:
    (session,) = parsed("date;session;minutes;RPE\n2026-03-02;Swim;30,5;4\n")
    assert session.ms == 1_830_000
    (session,) = parsed("date\tsession\tminutes\n2026-03-02\tRun, easy\t30\n")
    assert session.title == "Run, easy"


def test_a_file_may_say_whose_each_session_is() -> None:
    first, second = parsed("athlete,date,session\nInes,2026-03-02,Swim\nHugo,2026-03-02,Swim\n", athlete=True)
    assert (first.athlete, second.athlete) == ("Ines", "Hugo")
    assert problems("athlete,date,session\n,2026-03-02,Swim\n", athlete=True) == [
        "p.csv:2:1: the row has no athlete; write one"
    ]
    assert problems(HEAD + "2026-03-02,Swim,,\n", athlete=True) == [
        "p.csv:1:1: the first line has no column athlete; or name the athlete with --athlete"
    ]


def test_every_problem_is_said_at_once_with_its_place() -> None:
    text = (
        HEAD + "2026-13-02,,45x,16\n2.3.2026,Run,0,5.5\n2027-01-01,Run,1441,-1\n1949-12-31,R\u202eun,10,3,9\n"
    )
    assert problems(text) == [
        'p.csv:2:1: "2026-13-02" is no day; write it as 2026-03-02',
        "p.csv:2:12: the row has no session; write one",
        'p.csv:2:13: "45x" are no minutes; write up to 1440, or nothing when unknown',
        'p.csv:2:17: "16" is no RPE; write a whole number from 0 to 10, or nothing when unknown',
        'p.csv:3:1: "2.3.2026" is no day; write it as 2026-03-02',
        'p.csv:3:14: "0" are no minutes; write up to 1440, or nothing when unknown',
        'p.csv:3:16: "5.5" is no RPE; write a whole number from 0 to 10, or nothing when unknown',
        "p.csv:4:1: 2027-01-01 is not a day of the past; check the year",
        'p.csv:4:16: "1441" are no minutes; write up to 1440, or nothing when unknown',
        'p.csv:4:21: "-1" is no RPE; write a whole number from 0 to 10, or nothing when unknown',
        "p.csv:5:1: 1949-12-31 is not a day of the past; check the year",
        "p.csv:5:12: write a session of at most 500 characters that can all be seen",
        "p.csv:5:22: the row has more than 4 cells; put text with commas in quotes",
    ]


@pytest.mark.parametrize(
    ("text", "problem"),
    [
        ("", "p.csv:1:1: the first line has no column date and no column session"),
        (HEAD, "p.csv:1:1: there is no session in the sheet; write a row for each"),
        ("date,sesion\n2026-03-02,Run\n", 'p.csv:1:6: unknown column "sesion"; did you mean "session"?'),
        (
            "date,session,date\n2026-03-02,Run,\n",
            "p.csv:1:14: the column date stands here twice; keep one of them",
        ),
        (HEAD + '2026-03-02,"Run,45,6\n', "p.csv:2:1: this row cannot be read"),
    ],
)
def test_a_file_of_another_form_is_said(text: str, problem: str) -> None:
    assert any(line.startswith(problem) for line in problems(text))


def test_rows_without_end_are_not_read_to_their_end(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(past_csv, "MOST_ROWS", 3)
    assert problems(HEAD + "2026-03-02,Run,,\n" * 9) == [
        "p.csv:5:1: there are more than 3 rows; check that it is the right file"
    ]


def test_empty_rows_are_passed_over() -> None:
    assert len(parsed(HEAD + "\n,,,\n2026-03-02,Run,,\n\n")) == 1


def test_a_file_is_read_and_one_that_is_not_there_is_said(tmp_path: Path) -> None:
    path = tmp_path / "p.csv"
    path.write_text("\ufeff" + HEAD.replace("\n", "\r\n") + "2026-03-02,Läufe,45,6\r\n", encoding="utf-8")
    assert read_past(path, TODAY, athlete=False)[0].title == "Läufe"
    with pytest.raises(FileProblemsError, match="there is no such file"):
        read_past(tmp_path / "missing.csv", TODAY, athlete=False)
