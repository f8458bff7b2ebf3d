"""Which language the screens speak, and how a number is written in it."""

import pytest

from app.views import translation
from app.views.translation import language_of, message, pointed, translated


class Computer:
    """A computer that is set to languages, the one wanted most first."""

    def __init__(self, *tags: str) -> None:
        self.tags = list(tags)

    def system(self) -> "Computer":
        return self

    def uiLanguages(self) -> list[str]:  # noqa: N802 - Qt's own name
        return self.tags


@pytest.mark.parametrize(
    ("tags", "expected"),
    [
        (("de-AT", "de"), "de"),
        (("de-Latn-DE", "en-GB"), "de"),
        (("en-GB", "de"), "en"),
        (("fr-FR", "de-CH", "en"), "de"),
        (("fr-FR", "pl"), "en"),
        ((), "en"),
    ],
)
def test_the_first_language_of_the_computer_that_the_screens_speak_is_theirs(
    tags: tuple[str, ...], expected: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(translation, "QLocale", Computer(*tags))
    assert language_of("system") == expected
    assert language_of("de") == "de"


def test_a_marked_text_is_itself_until_it_is_shown() -> None:
    assert message("Paused") == "Paused"
    assert translated({1: message("Paused"), 2: "Hall speakers"}) == {1: "Paused", 2: "Hall speakers"}
    assert pointed("1.5") == "1.5"
