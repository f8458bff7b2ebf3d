"""The page of the coach's keys, on F1."""

from PySide6.QtCore import Qt

from app.views.translation import message

SIGNS = {
    Qt.Key.Key_Space: " ",
    Qt.Key.Key_Return: "\r",
    Qt.Key.Key_Enter: "\r",
    Qt.Key.Key_Escape: "\x1b",
    Qt.Key.Key_Left: "<",
    Qt.Key.Key_PageUp: "<",
    Qt.Key.Key_Right: ">",
    Qt.Key.Key_PageDown: ">",
}
KEY_PAGE: tuple[tuple[str, str], ...] = (
    (message("Space"), message("begin, pause, go on")),
    (message("digit or letter, ↑ ↓"), message("choose somebody; then one of these:")),
    (message("1 to 9"), message("… the fault with that number")),
    (message("F, M"), message("… a fault without a name, a missed rep")),
    (message("O, Y"), message("… sits out the exercise, a note")),
    (message("Enter, L"), message("… is here, leaves for good (L twice)")),
    (message("H"), message("… at stations: their tempo is heard, or no longer")),
    (message("/"), message("find a name, before the session")),
    (message("Enter"), message("one rep for all, at one's own pace")),
    (message("T, N"), message("15 s more rest, begin now")),
    (message("E, A"), message("end this bout, do it again")),
    (message("K"), message("leave out this exercise for all; at stations, this window")),
    (message("←, →"), message("back, on: by a bout or a window")),
    (message("+, -, V"), message("louder, softer, sound off or on")),
    (message("S twice"), message("stop for everybody")),
    (message("F9"), message("gym screen")),
    (message("Esc"), message("out of a choice; out of the session, which is asked")),
)
