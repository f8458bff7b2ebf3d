"""What a row that was found says of itself."""

from hashlib import sha256

import pytest

from app.domain.records import RunBegan
from app.store.agreement import agrees
from app.store.encoding import encode

ONE, TWO = encode([RunBegan()]), encode([RunBegan(), RunBegan(5)])
HASH = sha256(b"Landing\ntext").digest()


@pytest.mark.parametrize(
    ("table", "row", "verdict"),
    [
        ("fact", {"number": 0, "body": ONE}, True),
        ("fact", {"number": 0, "body": TWO}, False),
        ("fact", {"number": 0, "body": b"\1\xff"}, False),
        ("fold", {"first_number": 3, "last_number": 4, "body": TWO}, True),
        ("fold", {"first_number": 3, "last_number": 5, "body": TWO}, False),
        ("fold", {"first_number": 4, "last_number": 3, "body": b"\1"}, False),
        ("plan", {"hash": HASH, "title": "Landing", "text": "text"}, True),
        ("plan", {"hash": HASH, "title": "Landing", "text": "other"}, False),
        ("erased", {"hash": HASH, "at": 1_767_000_000_000_000}, True),
        ("erased", {"hash": HASH, "at": 12}, False),
        ("athlete", {"id": b"", "name": ""}, None),
    ],
)
def test_a_row_is_asked_what_rows_of_its_table_can_be_asked(
    table: str, row: dict[str, object], verdict: bool | None
) -> None:
    assert agrees(table, row) is verdict
