"""The edges of fields and ticks, seen on any ground."""

from PySide6.QtGui import QColor, QPalette
from PySide6.QtWidgets import QAbstractSpinBox, QCheckBox, QLineEdit, QListWidget, QTextEdit, QWidget

from app.views.theme import Scheme

DARKENED = 140
"""The style draws edges in the colour of the window, darkened by so many percent."""
FIELDS = (QLineEdit, QAbstractSpinBox, QCheckBox, QTextEdit, QListWidget)


def outline_fields(root: QWidget, scheme: Scheme) -> None:
    """Give fields, ticks and lists below a widget a quiet edge; on a dark ground theirs would not be seen."""
    edge = QPalette()
    edge.setColor(QPalette.ColorRole.Window, QColor(scheme.quiet).lighter(DARKENED))
    for kind in FIELDS:
        for field in root.findChildren(kind):
            field.setPalette(edge)
