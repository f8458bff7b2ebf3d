"""The passphrase before the practitioner's part of a shared machine: a curtain, kept as a hash.

It encrypts nothing: whoever may read the files of this user may read the record. The hash is Argon2id at the
library's own cost, which is the second recommended choice of RFC 9106, section 4.
"""

import re
from dataclasses import dataclass

from app.planfile.kinds import Refuse, Schema

CURTAIN = "It is a curtain, not encryption: whoever may read your files may read the record."
_HASH = re.compile(
    r"\$argon2id\$v=19\$m=[0-9]{1,7},t=[0-9]{1,3},p=[0-9]{1,3}\$[A-Za-z0-9+/]{8,88}\$[A-Za-z0-9+/]{16,128}"
)
_PATTERN = r"^\$argon2id\$"


@dataclass(frozen=True, slots=True)
class PassphraseHash:
    """The hash of a passphrase, in the form that Argon2 writes it."""

    def read(self, value: object, refuse: Refuse) -> str | None:
        """The hash."""
        if isinstance(value, str) and _HASH.fullmatch(value):
            return value
        refuse("this is no hash of a passphrase; set one with the command passphrase, or take the line out")
        return None

    def schema(self) -> Schema:
        """Text that begins as such hashes do."""
        return {"type": "string", "pattern": _PATTERN}


def hashed(passphrase: str) -> str:
    """The hash of a passphrase, other each time."""
    from argon2 import PasswordHasher

    return PasswordHasher().hash(_bytes_of(passphrase))


def opens(kept: str, passphrase: str) -> bool:
    """Whether a passphrase is the one whose hash was kept."""
    from argon2 import PasswordHasher
    from argon2.exceptions import InvalidHashError, VerificationError

    try:
        return PasswordHasher().verify(kept, _bytes_of(passphrase))
    except (VerificationError, InvalidHashError):
        return False


def _bytes_of(passphrase: str) -> bytes:
    return passphrase.encode(errors="surrogatepass")
