"""The start script: what it makes, what it leaves alone, what it says."""

from pathlib import Path

import pytest

from tests.checkouts import BASH, Checkout, make_checkout

SUDO = """#!{bash}
[[ $1 == -n ]] && shift
exec "$@"
"""
APT_CACHE = """#!{bash}
[[ $2 == python3.12-venv ]] && echo "  Candidate: 3.12.3"
exit 0
"""
APT_GET = """#!{bash}
[[ " $* " == *" install "* ]] || exit 0
echo "apt install ${{*##*--no-install-recommends }}" >>"{calls}"
cp "{kept}" "{commands}/python3.12"
"""


@pytest.fixture
def checkout(tmp_path: Path) -> Checkout:
    return make_checkout(tmp_path)


def test_the_first_start_makes_the_environment_and_runs_the_command(checkout: Checkout) -> None:
    done = checkout.start("check", "my plan.toml")
    assert done.returncode == 0, done.stderr
    assert checkout.called() == [
        "venv",
        f"install {checkout.root}",
        f"app [check][my plan.toml] in {checkout.root}",
    ]


def test_a_second_start_only_runs_the_command_and_says_nothing(checkout: Checkout) -> None:
    checkout.start("check")
    checkout.called()
    done = checkout.start("check")
    assert checkout.called() == [f"app [check] in {checkout.root}"]
    assert (done.stdout, done.stderr.count("making")) == ("said by the program\n", 0)


def test_the_exit_status_is_that_of_the_program(checkout: Checkout) -> None:
    assert checkout.start("check", STATUS="7").returncode == 7


def test_paths_are_those_of_the_folder_it_was_called_from(checkout: Checkout, tmp_path: Path) -> None:
    elsewhere = tmp_path / "elsewhere"
    elsewhere.mkdir()
    checkout.start("check", "my.toml", cwd=elsewhere)
    assert checkout.called()[-1] == f"app [check][my.toml] in {elsewhere}"


def test_it_can_be_called_by_a_link(checkout: Checkout, tmp_path: Path) -> None:
    link = tmp_path / "pace"
    link.symlink_to(checkout.root / "resources/start.sh")
    assert checkout.start("--version", script=link, cwd=tmp_path).returncode == 0
    assert (checkout.root / ".venv/pyvenv.cfg").exists()


def test_a_changed_pyproject_installs_again_into_the_same_environment(checkout: Checkout) -> None:
    checkout.start("check")
    checkout.called()
    with (checkout.root / "pyproject.toml").open("a", encoding="utf-8") as file:
        file.write("# changed\n")
    checkout.start("check")
    assert checkout.called()[:-1] == [f"install {checkout.root}"]


def test_a_moved_checkout_installs_again(checkout: Checkout, tmp_path: Path) -> None:
    checkout.start("check")
    checkout.called()
    moved = checkout.root.rename(tmp_path / "moved")
    checkout.start("check", script=moved / "resources/start.sh", cwd=tmp_path)
    assert checkout.called()[:-1] == [f"install {moved}"]


def test_an_installation_that_failed_is_taken_up_again(checkout: Checkout) -> None:
    checkout.broken.write_text("ERROR: Could not find a version (connection refused)\n", encoding="utf-8")
    done = checkout.start("check")
    assert done.returncode == 1
    assert "no network?" in done.stderr
    checkout.called()
    checkout.broken.unlink()
    assert checkout.start("check").returncode == 0
    assert checkout.called() == [f"install {checkout.root}", f"app [check] in {checkout.root}"]


def test_an_environment_left_half_made_is_made_anew(checkout: Checkout) -> None:
    (checkout.root / ".venv/bin").mkdir(parents=True)
    (checkout.root / ".venv/.begun").touch()
    assert checkout.start("check").returncode == 0
    assert checkout.called()[0] == "venv"


def test_a_folder_that_is_no_environment_is_left_alone(checkout: Checkout, tmp_path: Path) -> None:
    precious = tmp_path / "precious"
    precious.mkdir()
    (precious / "notes.txt").write_text("mine", encoding="utf-8")
    done = checkout.start("check", PACEWRIGHT_VENV=str(precious))
    assert done.returncode == 1
    assert "no Python environment" in done.stderr
    assert [path.name for path in precious.iterdir()] == ["notes.txt"]


def test_the_environment_can_stand_elsewhere(checkout: Checkout, tmp_path: Path) -> None:
    checkout.start("check", PACEWRIGHT_VENV=str(tmp_path / "far" / "environment"))
    assert (tmp_path / "far/environment/pyvenv.cfg").exists()
    assert not (checkout.root / ".venv").exists()


def test_without_python_it_says_so(checkout: Checkout) -> None:
    (checkout.commands / "python3.12").unlink()
    done = checkout.start("check")
    assert done.returncode == 1
    assert "no Python 3.11 or newer" in done.stderr


def test_without_words_and_with_a_display_it_opens_the_demo_session(checkout: Checkout) -> None:
    checkout.start(DISPLAY=":7")
    assert checkout.called()[-1].startswith("app [open][--demo] ")


def test_without_words_and_display_it_rehearses_and_names_the_picture(
    checkout: Checkout, tmp_path: Path
) -> None:
    done = checkout.start(TMPDIR=str(tmp_path))
    *_, rehearsal, picture = checkout.called()
    assert rehearsal.startswith(
        f"app [rehearse][{checkout.root}/demo_data/shoulder_rotators.toml][--speed][0]"
    )
    named = picture.split("[")[3].split("]")[0]
    assert picture.startswith("app [picture][-o]")
    assert named in done.stderr
    assert "no display" in done.stderr


def test_sound_takes_its_second_way_where_the_first_cannot_be_built(checkout: Checkout) -> None:
    checkout.broken.write_text("Failed to build simpleaudio-patched\n", encoding="utf-8")
    done = checkout.start("check")
    assert done.returncode == 0, done.stderr
    assert "goes through miniaudio" in done.stderr
    requirements = checkout.root / ".venv/requirements.txt"
    assert requirements.read_text(encoding="utf-8") == "a-requirement\n"
    assert checkout.called()[1:-1] == [
        f"install {checkout.root}",
        f"install {checkout.root}",
        f"install {requirements}",
    ]


def test_a_missing_python_is_brought_by_apt(checkout: Checkout, tmp_path: Path) -> None:
    kept = (checkout.commands / "python3.12").rename(tmp_path / "kept")
    for name, text in {"sudo": SUDO, "apt-cache": APT_CACHE, "apt-get": APT_GET}.items():
        command = checkout.commands / name
        filled = text.format(bash=BASH, calls=checkout.calls, kept=kept, commands=checkout.commands)
        command.write_text(filled, encoding="utf-8")
        command.chmod(0o755)
    done = checkout.start("check")
    assert done.returncode == 0, done.stderr
    installed = checkout.called()[0]
    assert installed.startswith("apt install ")
    assert {"python3.12", "python3.12-venv", "python3.12-dev"} <= set(installed.split())
