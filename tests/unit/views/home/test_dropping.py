"""What can be dropped on the window."""

from pathlib import Path

import pytest

from app.views.home.dropping import dropped_plan


def test_one_toml_file_is_a_plan_whatever_the_case_of_its_name(tmp_path: Path) -> None:
    plan = tmp_path / "Plan.TOML"
    plan.touch()
    assert dropped_plan([str(plan)]) == plan


@pytest.mark.parametrize(
    "dropped", [[], [""], ["a.toml", "b.toml"], ["/etc/hostname"], ["/nowhere/plan.toml"], ["/"]]
)
def test_anything_else_is_answered_with_what_can_be_dropped(dropped: list[str]) -> None:
    said = dropped_plan(dropped)
    assert isinstance(said, str)
    assert ".toml" in said
