"""The guard of exported text: a spreadsheet must not take a written word for a formula."""

FORMULA_SIGNS = frozenset("=+-@\t\r\0")
GUARD = "'"


def guarded(text: str) -> str:
    """Text for a field of a CSV file: an apostrophe goes before a first sign that would begin a formula.

    The rule is that of OWASP ASVS 1.2.10 (CWE-1236). Numbers are not text and stay as they are. A text that
    looks guarded already gets one more apostrophe, so that `unguarded` gives back every text as it was.
    """
    return f"{GUARD}{text}" if _begins_a_formula(text.lstrip(GUARD)) else text


def unguarded(text: str) -> str:
    """The text that `guarded` was given."""
    bare = text.startswith(GUARD) and _begins_a_formula(text.lstrip(GUARD))
    return text.removeprefix(GUARD) if bare else text


def _begins_a_formula(text: str) -> bool:
    return text[:1] in FORMULA_SIGNS and text != ""
