"""The keys of the first page, shown on F1."""

from app.views.translation import message

HOME_KEYS: tuple[tuple[str, str], ...] = (
    (message("Enter or Space"), message("begin what is most likely, as the button says")),
    (message("letters"), message("look for a name")),
    (message("↑ and ↓"), message("choose who trains; in the plans, choose a plan")),
    (message("Tab"), message("go on to the plans, the answers owed, the other pages")),
    (message("Ctrl+O"), message("open a plan")),
    (message("F2"), message("give the first answer that is owed; then 0-9, Enter keeps it")),
    (message("Ctrl+,"), message("how the screens look")),
    (message("F11"), message("full screen")),
    (message("F1"), message("this page")),
)
