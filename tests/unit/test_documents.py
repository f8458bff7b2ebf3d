"""The documents tell the truth: the commands, the pictures and the files they name are there."""

import re
from dataclasses import fields, replace
from pathlib import Path

import pytest

from app.cli.doors import DOORS
from app.domain.thresholds import DEFAULT
from app.planfile.keys import EXERCISE_KEYS, PLAN_KEYS, STAGE_KEYS, WORD_KEYS
from app.planfile.reader import parse_plan
from app.planfile.roster import parse_roster, parse_roster_csv
from app.planfile.settings import Settings, parse_settings
from app.views.athlete.keys import KEY_PAGE

ROOT = Path(__file__).parents[2]
README = (ROOT / "README.md").read_text(encoding="utf-8")
DEVELOPERS = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
COMMANDS = ["bash resources/start.sh", "bash tests/run.sh"]
CAUTIONS = ["no medical device", "Pain above 5 of 10", "Nothing advances by itself", "never as zero"]


def paragraphs(text: str) -> list[str]:
    """The blocks of a page, as blank lines divide them."""
    return [block.strip() for block in text.split("\n\n") if block.strip()]


def test_the_readme_begins_with_the_job_in_one_paragraph() -> None:
    title, job, *_ = paragraphs(README)
    assert title == "# Pacewright"
    assert job.startswith("Pacewright leads")
    assert len(job.split()) < 120


def test_the_two_commands_come_right_after_the_job() -> None:
    block = paragraphs(README)[2]
    assert block.startswith("```")
    assert [line.split("#")[0].strip() for line in block.splitlines()[1:-1]] == COMMANDS


def test_the_readme_has_a_line_for_each_command_and_for_no_other() -> None:
    section = README.split("## Commands")[1].split("\n## ")[0]
    assert sorted(re.findall(r"^\| `(\w+)` \|", section, re.MULTILINE)) == sorted(DOORS)


@pytest.mark.parametrize(("key", "does"), KEY_PAGE)
def test_the_readme_names_every_key_of_a_session(key: str, does: str) -> None:
    assert f"\n| {key} | {does} |\n" in README


def blocks(language: str) -> list[str]:
    """The code blocks of the README in one language."""
    return re.findall(rf"^```{language}\n(.*?)^```$", README, re.MULTILINE | re.DOTALL)


def test_the_plan_of_the_readme_is_a_plan() -> None:
    plan = parse_plan(blocks("toml")[0], "README.md", None)
    assert plan.stages[0].exercises[0].name == "Side-lying external rotation"


@pytest.mark.parametrize("key", [key.name for key in (*PLAN_KEYS, *STAGE_KEYS, *EXERCISE_KEYS, *WORD_KEYS)])
def test_the_readme_explains_every_key_of_a_plan(key: str) -> None:
    section = README.split("\n## The plan file\n")[1].split("### Checking a plan")[0]
    assert f"`{key}`" in section or f"`{key} = " in section


def test_the_two_rosters_of_the_readme_say_the_same() -> None:
    assert parse_roster(blocks("toml")[1], "README.md") == parse_roster_csv(blocks("csv")[0], "README.md")


def test_the_settings_of_the_readme_are_the_ones_one_has_without_a_file() -> None:
    written = parse_settings(blocks("toml")[2], "README.md")
    without = replace(Settings(), device="Hall speakers", thresholds=written.thresholds)
    assert written == without
    for field in fields(DEFAULT):
        assert getattr(written.thresholds, field.name).value == getattr(DEFAULT, field.name).value
        assert f"\n{field.name} = " in blocks("toml")[2]


@pytest.mark.parametrize("caution", CAUTIONS)
def test_the_readme_has_the_cautions(caution: str) -> None:
    assert caution in README


@pytest.mark.parametrize("page", [README, DEVELOPERS], ids=["README", "DEVELOPERS"])
def test_every_file_a_page_links_to_is_there(page: str) -> None:
    targets = [target for target in re.findall(r"\]\(([^)]+)\)", page) if "://" not in target]
    assert targets
    assert [target for target in targets if not (ROOT / target.split("#")[0]).exists()] == []


@pytest.mark.parametrize("page", [README, DEVELOPERS], ids=["README", "DEVELOPERS"])
def test_every_path_a_page_names_is_there(page: str) -> None:
    named = re.findall(r"`((?!app/_)(?:app|resources|tests|demo_data)/[\w./]*)", page)
    assert named
    assert [name for name in named if not (ROOT / name).exists()] == []


@pytest.mark.parametrize("heading", ["## How to work here", "## The layers", "## Decisions", "## Changes"])
def test_the_developers_page_has_its_sections(heading: str) -> None:
    assert f"\n{heading}\n" in DEVELOPERS


@pytest.mark.parametrize(
    "part", ["**Question**", "**Decision**", "**Reasons**", "**Alternatives**", "**Status**"]
)
def test_every_decision_says_its_five_parts(part: str) -> None:
    section = DEVELOPERS.split("\n## Decisions\n")[1].split("\n## ")[0]
    decisions = section.split("\n### ")[1:]
    assert len(decisions) >= 12
    assert [decision.splitlines()[0] for decision in decisions if part not in decision] == []
