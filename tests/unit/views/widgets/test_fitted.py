"""Words that keep to their place, however many they are."""

import pytest
from PySide6.QtCore import QRect, Qt
from PySide6.QtGui import QFontMetrics
from PySide6.QtWidgets import QHBoxLayout, QLabel, QWidget
from pytestqt.qtbot import QtBot

from app.views.lettering import type_scale
from app.views.theme import Look, Place, choose
from app.views.widgets.fitted import FittedLabel

LOOK = Look(choose(Place.TRAINING), "Inter", type_scale(16))
WORDS = "Elbow stays down on the towel while the forearm turns up to the ceiling and the wrist is straight. "


def shown(qtbot: QtBot, text: str, width: int, lines: int = 1) -> FittedLabel:
    made = FittedLabel(LOOK, pixels=LOOK.sizes.title, lines=lines)
    qtbot.addWidget(made)
    made.setText(text)
    made.resize(width, made.heightForWidth(width) if made.hasHeightForWidth() else made.sizeHint().height())
    made.show()
    return made


def keeps_to_its_place(label: FittedLabel) -> bool:
    font, text = label.fitted()
    room = label.contentsRect()
    bounds = QFontMetrics(font).boundingRect(
        QRect(0, 0, room.width(), 10_000), Qt.TextFlag.TextWordWrap, text
    )
    return bounds.width() <= room.width() and bounds.height() <= room.height()


def test_a_short_text_has_its_full_size_on_one_line(qtbot: QtBot) -> None:
    label = shown(qtbot, "Tall", 600)
    font, text = label.fitted()
    assert (font.pixelSize(), text, label.toolTip()) == (LOOK.sizes.title, "Tall", "")


def test_a_longer_text_is_smaller_and_whole(qtbot: QtBot) -> None:
    label = shown(qtbot, WORDS.strip(), 800)
    font, text = label.fitted()
    assert LOOK.sizes.body <= font.pixelSize() < LOOK.sizes.title
    assert text == WORDS.strip()
    assert keeps_to_its_place(label)


@pytest.mark.parametrize("text", [WORDS * 6, "W" * 500, "Short and " + "l" * 490])
@pytest.mark.parametrize(("width", "lines"), [(800, 1), (300, 2), (700, 2)])
def test_a_text_without_end_is_cut_with_an_ellipsis_and_whole_in_the_tooltip(
    text: str, width: int, lines: int, qtbot: QtBot
) -> None:
    label = shown(qtbot, text, width, lines)
    font, cut = label.fitted()
    assert font.pixelSize() == LOOK.sizes.body
    assert cut.endswith("…")
    assert text.startswith(cut[:-1])
    assert label.toolTip() == text
    assert keeps_to_its_place(label)


def test_lines_are_taken_as_they_are_needed_up_to_the_most_allowed(qtbot: QtBot) -> None:
    one, two, most, more = (
        shown(qtbot, text, 800, lines=3).height() for text in ("Tall", WORDS, WORDS * 2, WORDS * 9)
    )
    assert one < two < most == more
    assert two - one == most - two


def test_it_widens_nothing_around_it(qtbot: QtBot) -> None:
    frame = QWidget()
    qtbot.addWidget(frame)
    row = QHBoxLayout(frame)
    label = FittedLabel(LOOK, pixels=LOOK.sizes.title)
    label.setText(WORDS * 6)
    row.addWidget(label, 1)
    row.addWidget(QLabel("next"))
    assert frame.minimumSizeHint().width() < 200


def test_words_that_change_are_fitted_anew(qtbot: QtBot) -> None:
    label = shown(qtbot, WORDS * 6, 800)
    label.fitted()
    label.setText("Tall")
    assert label.fitted()[1] == "Tall"
