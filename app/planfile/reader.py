"""Plan files to plans: everything wrong with a file is said at once, each thing with its line and column."""

from pathlib import Path

from app.domain.length import session_ms
from app.domain.plan import (
    LONGEST_SESSION_MS,
    Exercise,
    First,
    Level,
    Plan,
    Sides,
    Stage,
    StageKind,
    StageOrder,
    Words,
)
from app.domain.units import clock_text
from app.planfile.doses import FORMS
from app.planfile.form import PLAN
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
    parsed = parse_toml(text.replace("\r\n", "\n"))
    report = Report(file, lambda: Positions(parsed.text), parsed.problems, parsed.broken)
    values = None if parsed.document is None else PLAN.read(parsed.document, report.refuse)
    if values is not None and folder is not None:
        _check_pictures(values, folder, report)
    if values is None or not report.clean:
        raise report.error()
    plan = _plan(values)
    length = session_ms(plan)
    if length > LONGEST_SESSION_MS:
        most = clock_text(LONGEST_SESSION_MS)
        report.refuse(f"the session lasts {clock_text(length)}; shorten it to {most} at most, or split it")
        raise report.error()
    return plan


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


def _plan(values: Values) -> Plan:
    lengths = {
        f"{name}_ms": values[name]
        for name in ("lead_in", "changeover", "side_change", "fast")
        if name in values
    }
    return Plan(
        title=values["title"],
        stages=tuple(_stage(stage) for stage in values["stage"]),
        author=values.get("author"),
        level=Level(values.get("level", Level.BEGINNER)),
        order=StageOrder(values.get("order", StageOrder.LOCKED)),
        **lengths,
    )


def _stage(values: Values) -> Stage:
    exercises = tuple(_exercise(exercise) for exercise in values["exercise"])
    return Stage(values["name"], StageKind(values["kind"]), exercises)


def _exercise(values: Values) -> Exercise:
    same = (
        "sets",
        "contacts",
        "load_kg",
        "superset",
        "setup",
        "target",
        "picture",
        "cues",
        "faults",
        "stop_if",
    )
    given = {name: values[name] for name in same if name in values}
    if "rest" in values:
        given["rest_ms"] = values["rest"]
    form = next(form for form in FORMS if form.marker in values)
    return Exercise(
        name=values["name"],
        dose=form.build(values),
        sides=Sides(values.get("sides", Sides.BOTH)),
        first=First(values.get("first", First.LEFT)),
        words=Words(**values.get("words", {})),
        **given,
    )
