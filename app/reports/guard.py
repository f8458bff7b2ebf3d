"""The guard of exported text: a spreadsheet must not take a written word for a formula."""

FORMULA_SIGNS = frozenset("=+-@\t\r\0")


def guarded(text: str) -> str:
    """Text for a field of a CSV file: an apostrophe goes before a first sign that would begin a formula.

    The rule is that of OWASP ASVS 1.2.10 (CWE-1236). Numbers are not text and stay as they are.
    """
    return f"'{text}" if text[:1] in FORMULA_SIGNS and text else text
