"""`consent` and `passphrase`."""

import io
import stat
import sys
from pathlib import Path

import pytest

from app import wiring
from app.__main__ import main
from app.planfile.passphrase import opens
from tests.laptops import RUNS, Laptop, laptop


@pytest.fixture
def one(tmp_path: Path) -> Laptop:
    made = laptop(tmp_path, "one", 1)
    made.lead(RUNS[:2])
    return made


def said(capsys: pytest.CaptureFixture[str], *words: object) -> tuple[int, str, str]:
    status = main([str(word) for word in words])
    out, err = capsys.readouterr()
    return status, out, err


def consent(one: Laptop, capsys: pytest.CaptureFixture[str], *words: str) -> tuple[int, str, str]:
    return said(capsys, "consent", "--athlete", "Hugo", "--database", one.path, *words)


def agreed(one: Laptop) -> list[tuple[str, str | None, str | None]]:
    with one.open() as record:
        return [
            (person.name, None if person.consent_on is None else str(person.consent_on), person.consent_scope)
            for person in record.answers.people()
        ]


def test_consent_is_written_down_with_its_day_and_scope(
    one: Laptop, capsys: pytest.CaptureFixture[str]
) -> None:
    status, out, err = consent(
        one, capsys, "--date", "2026-01-02", "--scope", "training data", "--who", "Maren"
    )
    assert (status, out, err) == (0, "Hugo: consent since 2026-01-02, to: training data\n", "")
    assert agreed(one) == [("Hugo", "2026-01-02", "training data"), ("Ines", None, None)]
    with one.open() as record:
        known = record.corrections.history_about(one.athlete("Hugo"))
    assert {each.change.who for each in known.corrections} == {"Maren"}


def test_withdrawn_it_is_unknown_again_and_its_history_stays(
    one: Laptop, capsys: pytest.CaptureFixture[str]
) -> None:
    consent(one, capsys, "--date", "2026-01-02", "--scope", "training data")
    status, out, _ = consent(one, capsys, "--withdrawn")
    assert (status, "consent is unknown again" in out) == (0, True)
    assert agreed(one)[0] == ("Hugo", None, None)
    with one.open() as record:
        assert len(record.corrections.history_about(one.athlete("Hugo")).corrections) == 4


@pytest.mark.parametrize(
    ("words", "because"),
    [
        (("--date", "2999-01-01"), "a day to come"),
        (("--withdrawn", "--scope", "x"), "--scope does not go with --withdrawn"),
        (
            ("--date", "2026-01-02", "--scope", "x" * 5_000),
            "Nothing was written down: consent_scope is a text",
        ),
        (("--date", "2026-01-02", "--who", " "), "Nothing was written down: who is a text"),
    ],
)
def test_what_cannot_be_written_down_is_said(
    one: Laptop, capsys: pytest.CaptureFixture[str], words: tuple[str, ...], because: str
) -> None:
    status, out, err = consent(one, capsys, *words)
    assert (status, out) == (1, "")
    assert because in err
    assert agreed(one)[0] == ("Hugo", None, None)


def test_nobody_of_that_name_and_no_record_are_said(one: Laptop, capsys: pytest.CaptureFixture[str]) -> None:
    words = ("--withdrawn", "--database", one.path)
    assert said(capsys, "consent", "--athlete", "Nobody", *words)[2].startswith(
        "There is nobody called Nobody"
    )
    missing = one.path.with_name("missing.db")
    assert said(capsys, "consent", "--athlete", "Hugo", "--withdrawn", "--database", missing)[0] == 1
    assert not missing.exists()


def typed(monkeypatch: pytest.MonkeyPatch, *lines: str) -> None:
    monkeypatch.setattr(sys, "stdin", io.StringIO("".join(f"{line}\n" for line in lines)))


def test_a_passphrase_is_set_changed_and_cleared(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    typed(monkeypatch, "sand und see", "sand und see")
    status, out, _ = said(capsys, "passphrase")
    assert status == 0
    assert out.endswith("It is a curtain, not encryption: whoever may read your files may read the record.\n")
    kept = wiring.read_settings().passphrase
    assert kept is not None
    assert opens(kept, "sand und see")
    assert stat.S_IMODE(wiring.settings_file().stat().st_mode) == 0o600
    assert stat.S_IMODE(wiring.settings_file().parent.stat().st_mode) == 0o700
    assert "sand" not in wiring.settings_file().read_text(encoding="utf-8")
    typed(monkeypatch, "sand und see", "other words", "other words")
    assert said(capsys, "passphrase")[0] == 0
    assert opens(wiring.read_settings().passphrase or "", "other words")
    typed(monkeypatch, "other words")
    assert said(capsys, "passphrase", "--clear") == (0, "Review asks for no passphrase.\n", "")
    assert wiring.read_settings().passphrase is None


@pytest.mark.parametrize(
    ("lines", "because"),
    [
        (("wrong", "new words", "new words"), "That is not the passphrase, so nothing was changed."),
        (("sand und see", "new", "new"), "A passphrase has 6 to 1000 characters."),
        (("sand und see", "new words", "new word"), "The two are not the same."),
        ((), "That is not the passphrase"),
    ],
)
def test_a_passphrase_stays_as_it_is_when_something_is_not_right(
    monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], lines: tuple[str, ...], because: str
) -> None:
    typed(monkeypatch, "sand und see", "sand und see")
    said(capsys, "passphrase")
    kept = wiring.read_settings().passphrase
    typed(monkeypatch, *lines)
    status, _, err = said(capsys, "passphrase")
    assert (status, err.startswith(because), wiring.read_settings().passphrase) == (1, True, kept)
