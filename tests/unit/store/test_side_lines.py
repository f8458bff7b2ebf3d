"""Lines of a side file say again what was written, and a line that was changed or cut off is none."""

import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from app.domain.records import BoutPrescribed, Fact, RunBegan, RunHeader
from app.store.side_lines import KeptRun, facts_line, read_lines, run_line
from tests.strategies import any_fact, headers, prescribed_bouts

RUN = "0190163d-8694-739b-aea5-966c26f8ad91"


@settings(max_examples=60)
@given(headers(), prescribed_bouts(), st.lists(any_fact(), min_size=1, max_size=8), st.data())
def test_whatever_a_run_tells_is_read_back(
    header: RunHeader, prescribed: tuple[BoutPrescribed, ...], facts: list[Fact], data: st.DataObject
) -> None:
    cut = data.draw(st.integers(0, len(facts) - 1))
    lines = [run_line(header, prescribed), facts_line(header.run_id, cut, facts[cut:])]
    lines += [facts_line(header.run_id, 0, facts[:cut])] if cut else []
    runs, unread = read_lines(b"".join(lines + lines[::-1]))
    (run,) = runs.values()
    assert unread == 0
    assert (run.header, run.prescribed) == (header, prescribed)
    assert list(run.stretches()) == [(0, facts)]


def test_each_line_is_json_by_itself() -> None:
    checksum, said = json.loads(facts_line(RUN, 3, [RunBegan()]))
    assert isinstance(checksum, int)
    assert (said["format"], said["run_id"], said["first"]) == (1, RUN, 3)


@given(st.data())
def test_a_line_in_which_any_byte_was_changed_is_not_taken_for_what_was_written(data: st.DataObject) -> None:
    line = bytearray(facts_line(RUN, 3, [RunBegan()]))
    place = data.draw(st.integers(0, len(line) - 2))
    line[place] ^= 1 << data.draw(st.integers(0, 7))
    runs, unread = read_lines(bytes(line))
    same = runs.get(RUN) is not None and list(runs[RUN].stretches()) == [(3, [RunBegan()])]
    assert unread > 0 or same  # another way to write the same is no change


@pytest.mark.parametrize("end", range(2, 60, 7))
def test_a_line_that_was_cut_off_is_counted_and_those_before_it_stay(end: int) -> None:
    whole = facts_line(RUN, 0, [RunBegan()])
    runs, unread = read_lines(whole + facts_line(RUN, 1, [RunBegan()])[:-end])
    assert list(runs[RUN].stretches()) == [(0, [RunBegan()])]
    assert unread == 1


@pytest.mark.parametrize(
    "line", [b"[]", b"[1, 2]", b"7", b"null", b"{}", b"\xff\xfe", b'[0,{"format":1}]', b"x" * 5_000]
)
def test_what_is_no_line_is_counted(line: bytes) -> None:
    assert read_lines(line + b"\n\n") == ({}, 1)


def test_a_number_told_before_is_left_as_it_is_and_gaps_divide() -> None:
    run = KeptRun(RUN)
    run.add(0, [RunBegan(0), RunBegan(1)])
    run.add(1, [RunBegan(9)])
    run.add(5, [RunBegan(5)])
    assert list(run.stretches()) == [(0, [RunBegan(0), RunBegan(1)]), (5, [RunBegan(5)])]
    assert list(KeptRun(RUN).stretches()) == []
