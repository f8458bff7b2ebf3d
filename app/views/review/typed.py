"""Words as they are typed or pasted into the entries of Review."""

LONGEST = 1_000


def plain(text: str) -> str:
    """Words as they were typed or pasted, without what cannot be shown."""
    return "".join(letter for letter in text if letter.isprintable()).strip()
