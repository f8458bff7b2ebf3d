"""Plan files to plans: everything wrong with a file is said at once, each thing with its line and column."""

from pathlib import Path

from app.domain.plan import LONGEST_SESSION_MS, Plan
from app.domain.units import clock_text, exact_clock_text
from app.planfile.building import build_plan
from app.planfile.form import PLAN
from app.planfile.known_length import known_length
from app.planfile.positions import Positions
from app.planfile.report import Report
from app.planfile.source import read_text
from app.planfile.syntax import parse_toml
from app.planfile.tables import Values


def read_plan(path: Path) -> Plan:
    """The plan in a file. Raises FileProblemsError with every problem of the file."""
    return parse_plan(read_text(path), str(path), path.parent)


def parse_plan(text: str, file: str, folder: Path | None) -> Plan:
    """The plan in a text, `file` being its name in messages and `folder` where its pictures are.

    Raises FileProblemsError with every problem of the text.
    """
    parsed = parse_toml(text.replace("\r\n", "\n"), PLAN)
    report = Report(file, lambda: Positions(parsed.text), parsed.problems, parsed.broken)
    values = None if parsed.document is None else PLAN.read(parsed.document, report.refuse)
    if values is not None and folder is not None:
        _check_pictures(values, folder, report)
    if parsed.document is not None and values is not None:
        _check_length(parsed.document, values, report)
    if values is None or not report.clean:
        raise report.error()
    return build_plan(values)


def _check_length(document: dict[str, object], values: Values, report: Report) -> None:
    """Refuse a session that is too long, as far as its length can be known beside other problems."""
    known = known_length(document, values)
    if known.ms > LONGEST_SESSION_MS:
        lasts = exact_clock_text(known.ms) if known.whole else f"at least {exact_clock_text(known.ms)}"
        most = clock_text(LONGEST_SESSION_MS)
        report.refuse(f"the session lasts {lasts}; shorten it to {most} at most, or split it")


def _check_pictures(values: Values, folder: Path, report: Report) -> None:
    """Refuse pictures that a link takes out of the folder; the path itself is sound by then."""
    for number, stage in enumerate(values.get("stage", ())):
        for index, exercise in enumerate(stage.get("exercise", ())):
            picture = exercise.get("picture")
            if picture is not None and not _inside(folder, picture):
                message = "the picture is a link out of the plan's folder; put the picture itself there"
                report.refuse(message, "stage", number, "exercise", index, "picture")


def _inside(folder: Path, picture: str) -> bool:
    try:
        return (folder / picture).resolve().is_relative_to(folder.resolve())
    except (OSError, RuntimeError):
        return False
