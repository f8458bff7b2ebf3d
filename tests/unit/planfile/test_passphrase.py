"""The passphrase is kept as a hash that only the passphrase opens."""

import argon2
import pytest
from argon2.profiles import RFC_9106_LOW_MEMORY

from app.domain.errors import FileProblemsError
from app.planfile.passphrase import hashed, opens
from app.planfile.settings import parse_settings

KEPT = hashed("läufe im Sand")


def test_only_the_passphrase_opens() -> None:
    assert opens(KEPT, "läufe im Sand")
    for other in ("", "Läufe im Sand", "läufe im Sand ", "x" * 1_000, "\udc80"):
        assert not opens(KEPT, other)


def test_a_hash_says_nothing_of_the_passphrase_and_is_another_each_time() -> None:
    assert "Sand" not in KEPT
    assert hashed("läufe im Sand") != KEPT


def test_what_is_no_hash_opens_to_nothing() -> None:
    assert not opens("", "")
    assert not opens("$argon2id$v=19$m=1,t=1,p=1$", "x")


def test_it_costs_what_the_standard_recommends_where_memory_is_short() -> None:
    # RFC 9106, section 4, second recommended option: 3 passes, 4 lanes, 64 MiB, 128-bit salt, 256-bit tag.
    found = argon2.extract_parameters(KEPT)
    assert found == RFC_9106_LOW_MEMORY
    assert (found.time_cost, found.parallelism, found.memory_cost) == (3, 4, 1 << 16)
    assert (found.salt_len, found.hash_len) == (16, 32)


def test_the_settings_keep_it() -> None:
    settings = parse_settings(f'format = 1\n[practitioner]\npassphrase = "{KEPT}"\n', "s.toml")
    assert settings.passphrase == KEPT
    assert parse_settings("format = 1\n", "s.toml").passphrase is None


@pytest.mark.parametrize("value", ['"open sesame"', "7", '"$argon2id$"', '""'])
def test_a_passphrase_written_in_the_open_is_refused_and_not_repeated(value: str) -> None:
    with pytest.raises(
        FileProblemsError, match="no hash of a passphrase; set one with the command"
    ) as caught:
        parse_settings(f"format = 1\n[practitioner]\npassphrase = {value}\n", "s.toml")
    assert "sesame" not in str(caught.value)
