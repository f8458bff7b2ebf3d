"""A report as a PDF: tagged, and by PDF/UA-1 wherever every letter of it is in a font at hand."""

import json
import re
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Any

from app.reports.report_chart import chart_svg
from app.reports.report_parts import Block, Charts, ReportContent

if TYPE_CHECKING:
    from typst import Compiler

FORM = Path(__file__).with_name("report.typ")
UNIVERSAL = "ua-1"
"""PDF/UA-1, ISO 14289-1, as the compiler names it."""
_CONTROL = re.compile(r"[\x00-\x1f\x7f-\x9f]")
_PAGES = re.compile(rb"/Type\s*/Pages\s*/Count\s+(\d+)")
_NO_LETTER = "could not be displayed"
LETTERS_MISSING = (
    "Some letters of the report are in none of the fonts here and stand as empty boxes. "
    "Install a font for their script and make it again."
)


@dataclass(frozen=True, slots=True)
class Rendered:
    """A PDF, and a sentence about what could not be done, None where all could."""

    pdf: bytes
    notice: str | None

    @property
    def pages(self) -> int:
        """How many pages it has, by the tree of pages, which typst writes uncompressed."""
        return max(map(int, _PAGES.findall(self.pdf)), default=1)


def render_report(content: ReportContent, fonts: Path) -> Rendered:
    """The report in the fonts of a folder; those of the system stand in for letters these do not have.

    No word of the content is read as source, whatever is in it.
    """
    from typst import TypstError

    for ignore_system in (True, False):
        try:
            return Rendered(_pdf(_compiler(content, fonts, ignore_system=ignore_system), [UNIVERSAL]), None)
        except TypstError as error:
            if _NO_LETTER not in error.message:
                raise
    return Rendered(_pdf(_compiler(content, fonts, ignore_system=False), []), LETTERS_MISSING)


def as_plain(content: ReportContent) -> dict[str, Any]:
    """The report as values for JSON: each block with its `kind`, each chart as SVG with title and `alt`."""
    told = asdict(content)
    told["blocks"] = [_block(block) for block in content.blocks]
    return told


def _block(block: Block) -> dict[str, Any]:
    kind = {"kind": type(block).__name__}
    if isinstance(block, Charts):
        charts = [{"title": chart.title, "alt": chart.alt, "svg": chart_svg(chart)} for chart in block.charts]
        return {**kind, "charts": charts}
    return {**kind, **asdict(block)}


def _printable(told: Any) -> Any:  # noqa: ANN401 - whatever JSON can hold
    """The same with a space for each character that moves the carriage or rings the bell."""
    if isinstance(told, str):
        return _CONTROL.sub(" ", told)
    if isinstance(told, dict):
        return {name: _printable(value) for name, value in told.items()}
    return [_printable(each) for each in told] if isinstance(told, list | tuple) else told


def _compiler(content: ReportContent, fonts: Path, *, ignore_system: bool) -> "Compiler":
    from typst import Compiler

    return Compiler(  # type: ignore[misc]  # its stub leaves the kind of a place open
        FORM.read_bytes(),
        font_paths=[str(fonts)],
        ignore_system_fonts=ignore_system,
        sys_inputs={"content": json.dumps(_printable(as_plain(content)), ensure_ascii=False)},
    )


def _pdf(compiler: "Compiler", standards: list[Any]) -> bytes:
    made = compiler.compile(format="pdf", pdf_standards=standards)
    if not isinstance(made, bytes):
        raise TypeError("one PDF was asked for")
    return made
