"""The table of thresholds and its settings."""

from dataclasses import fields
from decimal import Decimal

import pytest

from app.domain.errors import PacewrightError
from app.domain.thresholds import DEFAULT, Standing, Threshold, ThresholdError, Thresholds, thresholds_from


@pytest.mark.parametrize("name", [field.name for field in fields(Thresholds)])
def test_every_threshold_has_a_source_a_standing_and_a_unit(name: str) -> None:
    threshold: Threshold = getattr(DEFAULT, name)
    assert threshold.basis.source
    assert threshold.unit
    assert threshold.value > 0
    if threshold.basis.standing is Standing.GUIDELINE:
        assert "no source" not in threshold.basis.source


def test_no_settings_leave_the_table_as_it_is() -> None:
    assert thresholds_from({}) == DEFAULT


def test_a_setting_replaces_the_number_and_is_the_persons_own_choice() -> None:
    table = thresholds_from({"session_minutes": 60, "explosive_rest_ratio": Decimal("7.5")})
    assert (table.session_minutes.value, table.explosive_rest_ratio.value) == (60, 7.5)
    assert table.session_minutes.basis.standing is Standing.CHOICE
    assert table.session_minutes.basis.source == "your own setting; the program's is 90 minutes"
    assert table.contacts_beginner == DEFAULT.contacts_beginner


@pytest.mark.parametrize("value", ["60", True, None, float("nan"), float("inf"), -1, [60]])
def test_a_setting_that_is_no_number_from_nought_up_is_refused(value: object) -> None:
    with pytest.raises(ThresholdError, match=r"session_minutes: .* write a number from 0 up, such as 90"):
        thresholds_from({"session_minutes": value})


def test_nought_is_a_setting() -> None:
    assert thresholds_from({"side_difference_percent": 0}).side_difference_percent.value == 0


def test_every_problem_is_told_at_once_with_the_nearest_name() -> None:
    with pytest.raises(ThresholdError) as caught:
        thresholds_from({"session_minute": 60, "contacts_advanced": "many", "zzz": 1})
    assert isinstance(caught.value, PacewrightError)
    assert [key for key, _ in caught.value.problems] == ["session_minute", "contacts_advanced", "zzz"]
    first, _, last = str(caught.value).splitlines()
    assert first == "session_minute: there is no such threshold; did you mean session_minutes?"
    assert "there are contacts_beginner" in last


def test_a_threshold_reads_as_number_and_unit() -> None:
    assert str(DEFAULT.session_minutes) == "90 minutes"
