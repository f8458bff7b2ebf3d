"""What a pack is, and that nothing is taken from one that is not whole and right."""

import json
import random
import stat
import struct
import zipfile
from collections.abc import Callable, Iterable
from hashlib import sha256
from pathlib import Path
from typing import Any

import pytest

from app.domain.errors import PackError
from app.domain.tables import TABLES
from app.store import archive, intake
from app.store.exchange import Wanted
from app.store.pack import FORMAT, MANIFEST, read_pack, write_pack
from tests.laptops import MADE_AT, RUNS, beside, dump, laptop, of_bout

Members = dict[str, bytes]
Lines = list[dict[str, Any]]


@pytest.fixture(scope="module")
def sound(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A pack of a record with one of everything."""
    one = laptop(tmp_path_factory.mktemp("sound"), "one", 1)
    one.lead(RUNS[:2])
    one.keep(*beside(RUNS))
    one.correct(of_bout(RUNS[0]), "pain", 2, "Tomas")
    return one.pack("sound.pwpack")


def members_of(pack: Path) -> Members:
    with zipfile.ZipFile(pack) as opened:
        return {name: opened.read(name) for name in opened.namelist()}


def zipped(path: Path, members: Iterable[tuple[str, bytes]], packing: int = zipfile.ZIP_DEFLATED) -> Path:
    with zipfile.ZipFile(path, "w", packing) as made:
        for name, content in members:
            made.writestr(name, content)
    return path


def resealed(path: Path, contents: Members, **said: object) -> Path:
    """A pack with these members and a manifest that says so."""
    manifest = json.loads(contents[MANIFEST])
    manifest["members"] = [
        {"name": name, "rows": len(content.splitlines()), "sha256": sha256(content).hexdigest()}
        for name, content in contents.items()
        if name != MANIFEST
    ]
    return zipped(path, {**contents, MANIFEST: json.dumps(manifest | said).encode()}.items())


def changed(pack: Path, path: Path, table: str, change: Callable[[Lines], object]) -> Path:
    """A pack whose table of that name was changed, hashes and all."""
    members = members_of(pack)
    lines = [json.loads(line) for line in members[f"{table}.jsonl"].splitlines()]
    change(lines)
    members[f"{table}.jsonl"] = b"".join(json.dumps(line).encode() + b"\n" for line in lines)
    return resealed(path, members)


def refused(pack: Path, because: str) -> None:
    with pytest.raises(PackError, match=because) as caught:
        read_pack(pack)
    assert "nothing was taken from it" in str(caught.value)
    assert "\n" not in str(caught.value)


def test_a_manifest_says_the_format_the_members_their_rows_and_their_hashes(sound: Path) -> None:
    members = members_of(sound)
    manifest = json.loads(members.pop(MANIFEST))
    assert (manifest["format"], manifest["names"], manifest["made_at"]) == (1, True, "2026-11-22T18:00:00Z")
    assert [member["name"] for member in manifest["members"]] == [f"{table.name}.jsonl" for table in TABLES]
    for member in manifest["members"]:
        content = members.pop(member["name"])
        assert member["sha256"] == sha256(content).hexdigest()
        assert member["rows"] == len(content.splitlines()) == content.count(b"\n")
    assert members == {}


def test_a_pack_is_its_owner_s_alone_and_says_nothing_of_who_in_its_name_or_times(sound: Path) -> None:
    assert stat.S_IMODE(sound.stat().st_mode) == 0o600
    with zipfile.ZipFile(sound) as opened:
        assert {member.date_time for member in opened.infolist()} == {(1980, 1, 1, 0, 0, 0)}


def test_the_same_record_gives_the_same_pack(tmp_path: Path) -> None:
    one = laptop(tmp_path, "one", 1)
    one.lead(RUNS)
    assert one.pack("a.pwpack").read_bytes() == one.pack("b.pwpack").read_bytes()


def test_unknown_is_left_out_and_nothing_is_null(sound: Path) -> None:
    for name, content in members_of(sound).items():
        if name != MANIFEST:
            assert all(None not in json.loads(line).values() for line in content.splitlines())


def test_a_pack_that_cannot_be_written_is_said_and_what_stood_there_stays(
    sound: Path, tmp_path: Path
) -> None:
    with pytest.raises(PackError, match="cannot be written"):
        write_pack(tmp_path / "missing" / "a.pwpack", lambda _table: [], MADE_AT, names=True)
    path = tmp_path / "old.pwpack"
    path.write_bytes(sound.read_bytes())
    with pytest.raises(ValueError, match="JSON compliant"):
        write_pack(path, lambda _table: [{"name": float("nan")}], MADE_AT, names=True)
    assert path.read_bytes() == sound.read_bytes()
    assert [other.name for other in tmp_path.iterdir()] == ["old.pwpack"]


def test_what_is_no_pack_is_refused(sound: Path, tmp_path: Path) -> None:
    data = sound.read_bytes()
    for number, content in enumerate((b"", b"no zip", data[: len(data) // 2], data[200:], b"\x00" * 10_000)):
        path = tmp_path / f"{number}.pwpack"
        path.write_bytes(content)
        refused(path, "refused")
    with pytest.raises(PackError, match="cannot be read"):
        read_pack(tmp_path / "missing.pwpack")
    with pytest.raises(PackError, match="cannot be read"):
        read_pack(tmp_path)


def test_a_member_missing_or_too_many_is_refused(sound: Path, tmp_path: Path) -> None:
    members = members_of(sound)
    for name in (MANIFEST, "runs.jsonl"):
        less = {other: content for other, content in members.items() if other != name}
        refused(zipped(tmp_path / "less.pwpack", less.items()), "missing|does not have the members")
    refused(resealed(tmp_path / "more.pwpack", {**members, "more.jsonl": b""}), "does not have the members")


@pytest.mark.parametrize(
    "name",
    [
        "../../runsx.jsonl",
        "/etc/runsxx.jsonl",
        "aa/bbb/runs.jsonl",
        "..\\..\\runsx.jsonl",
        "C:runsxxxxx.jsonl",
        "runs.jsonl\0xx.exe",
        "RUNSXXXXXXX.jsonl",
        "xxxxx.jsonl xxxxx",
        "runs\nxxxxxx.jsonl",
        "läufexxxxxx.jsonl",
    ],
)
def test_a_member_of_a_strange_name_is_refused_and_nothing_is_written_by_it(
    sound: Path, tmp_path: Path, name: str
) -> None:
    members = members_of(sound)
    path = zipped(tmp_path / "strange.pwpack", [*members.items(), ("placeholder.jsonl", b"")])
    path.write_bytes(path.read_bytes().replace(b"placeholder.jsonl", name.encode()[:17]))
    refused(path, "name that no pack gives")
    assert [other.name for other in tmp_path.iterdir()] == ["strange.pwpack"]


def test_two_members_of_one_name_are_refused(sound: Path, tmp_path: Path) -> None:
    members = members_of(sound)
    with pytest.warns(UserWarning, match="Duplicate name"):
        path = zipped(tmp_path / "twice.pwpack", [*members.items(), ("runs.jsonl", b"")])
    refused(path, "two of its members have one name")


def test_a_bomb_is_refused_before_it_is_unpacked(
    sound: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    members = members_of(sound)
    refused(
        resealed(tmp_path / "bomb.pwpack", {**members, "facts.jsonl": b" " * (3 << 20)}),
        "more than 200 times",
    )
    monkeypatch.setattr(archive, "LARGEST_CONTENT", 10_000)
    refused(sound, "would unpack to more than")
    monkeypatch.setattr("app.store.pack.LARGEST_FILE", 1_000)
    refused(sound, "larger than")


def test_a_size_that_the_directory_of_the_zip_lies_about_is_refused(sound: Path, tmp_path: Path) -> None:
    data = bytearray(sound.read_bytes())
    place = data.rindex(b"PK\x01\x02")
    struct.pack_into("<I", data, place + 24, 3)
    path = tmp_path / "lie.pwpack"
    path.write_bytes(bytes(data))
    refused(path, "damaged|not what the manifest says|not JSON")


def test_encrypted_members_and_other_ways_of_packing_are_refused(sound: Path, tmp_path: Path) -> None:
    refused(
        zipped(tmp_path / "lzma.pwpack", members_of(sound).items(), zipfile.ZIP_LZMA), "way that no pack is"
    )
    data = bytearray(sound.read_bytes())
    data[data.index(b"PK\x01\x02") + 8] |= 1
    path = tmp_path / "locked.pwpack"
    path.write_bytes(bytes(data))
    refused(path, "encrypted")


def test_a_changed_byte_is_refused_wherever_it_is(sound: Path, tmp_path: Path) -> None:
    members = members_of(sound)
    for name, content in members.items():
        if name == MANIFEST or not content:
            continue
        middle = len(content) // 2
        other = bytes((content[middle] ^ 1,))
        spoilt = {**members, name: content[:middle] + other + content[middle + 1 :]}
        refused(zipped(tmp_path / "spoilt.pwpack", spoilt.items()), "not what the manifest says|line")


def test_a_newer_format_asks_for_the_newer_version(sound: Path, tmp_path: Path) -> None:
    path = resealed(tmp_path / "newer.pwpack", members_of(sound), format=FORMAT + 1, members=[])
    with pytest.raises(PackError, match=r"newer version of Pacewright\. Install the newer"):
        read_pack(path)


@pytest.mark.parametrize(
    "said",
    [
        {"format": 0},
        {"format": True},
        {"format": "1"},
        {"format": None},
        {"members": None},
        {"members": [1, 2]},
        {"members": [{"name": ["x"], "rows": 1, "sha256": ""}]},
        {"members": [{"name": "runs.jsonl"}]},
        {"members": [{"name": "runs.jsonl", "rows": 0, "sha256": ""}] * 2},
    ],
    ids=str,
)
def test_a_manifest_that_says_something_else_is_refused(
    sound: Path, tmp_path: Path, said: dict[str, object]
) -> None:
    refused(resealed(tmp_path / "other.pwpack", members_of(sound), **said), "manifest")


@pytest.mark.parametrize(
    ("line", "because"),
    [
        (b"[1, 2]", "no JSON object"),
        (b"{}", "id is missing"),
        (b"", "not JSON"),
        (b"\xff\xfe{}", "not UTF-8"),
        (b"[" * 100_000, "not JSON"),
        (b'{"a":' * 50_000, "not JSON"),
        (b'{"id": NaN}', "not JSON"),
        (b'{"id": Infinity}', "not JSON"),
        (b'{"id": ' + b"9" * 5_000 + b"}", "not JSON"),
        (b'{"id": 1e999}', "id must be a UUID"),
        (b'{"id": 7}', "id must be a UUID"),
        (b'{"id": ["x"]}', "id must be a UUID"),
        (b'{"id": {"x": 1}}', "id must be a UUID"),
        (b'{"id": "0190163D-8694-739B-AEA5-966C26F8AD91"}', "id must be a UUID"),
        (b'{"id": "0190163d-8694-739b-aea5-966c26f8ad91", "id": "x"}', "not JSON"),
        (b'{"id": "0190163d-8694-739b-aea5-966c26f8ad91", "weight": 70}', "no column of such a name"),
        (b'{"id": "0190163d-8694-739b-aea5-966c26f8ad91", "name": "\\ud800"}', "name must be text"),
        (b'{"id": "0190163d-8694-739b-aea5-966c26f8ad91", "name": true}', "name must be text"),
        (b'{"id": "0190163d-8694-739b-aea5-966c26f8ad91", "consent_on": "soon"}', "consent_on must be a day"),
    ],
    ids=lambda value: repr(value)[:40],
)
def test_a_line_that_is_no_row_is_refused(sound: Path, tmp_path: Path, line: bytes, because: str) -> None:
    members = members_of(sound)
    members["athletes.jsonl"] += line + b"\n"
    refused(resealed(tmp_path / "line.pwpack", members), f"athletes.jsonl, line 3: .*{because}")


def test_a_line_without_end_is_refused(sound: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(archive, "LONGEST_LINE", 1_000)
    members = members_of(sound)
    members["athletes.jsonl"] += random.Random(1).randbytes(2_000).hex().encode()
    refused(resealed(tmp_path / "long.pwpack", members), "a line is longer")


def first(**cells: object) -> Callable[[Lines], object]:
    return lambda lines: lines[0].update(cells)


def fact(word: str, **cells: object) -> Callable[[Lines], object]:
    return lambda lines: next(line for line in lines if line["fact"] == word).update(cells)


STRANGER = "0190163d-8694-739b-aea5-966c26f8ad91"


@pytest.mark.parametrize(
    ("table", "change", "because"),
    [
        ("athletes", lambda lines: lines.append(dict(lines[0])), "same id as in a row before"),
        ("plans", first(text="other"), "not the one its hash names"),
        ("prescribed", first(low=1), "not those their hash names"),
        ("prescribed", first(low=10**30), "low must be a whole number"),
        ("prescribed", first(low=4.0), "low must be a whole number"),
        ("prescribed", first(side="up"), "side must be one of left, right, both"),
        ("prescribed", lambda lines: lines.clear(), "names a prescription that is not there"),
        ("runs", first(athlete=STRANGER), "names a row of athletes that is not there"),
        ("runs", first(plan="0" * 64), "names a row of plans that is not there"),
        ("runs", first(started_at="2026-03-02 17:30"), "started_at must be a moment"),
        ("runs", first(started_at="9999-03-02T17:30:00Z"), "started_at must be a moment"),
        ("runs", first(invented=1), "invented must be true or false"),
        ("facts", lambda lines: lines.pop(0), "number should be 0"),
        ("facts", lambda lines: lines.pop(3), "number should be 3"),
        ("facts", lambda lines: lines.append(dict(lines[0])), "do not stand together"),
        ("facts", first(run=STRANGER), "number should be 0|names a row of runs"),
        ("facts", first(fact="flew"), "fact must be one of"),
        ("facts", fact("rep_done", at_ms=10**18), "at_ms must be a whole number"),
        ("facts", fact("rep_done", at_ms="soon"), "at_ms must be a whole number"),
        ("facts", fact("rep_done", at_ms=True), "at_ms must be a whole number"),
        ("facts", fact("rep_done", rpe=3), "rpe does not go with rep_done"),
        ("facts", fact("rep_done", side=None), "side is missing"),
        ("facts", fact("bout_rated", rpe=11), "rpe must be a whole number from 0 to 10"),
        ("facts", fact("run_ended", outcome="done"), "outcome must be one of finished, abandoned"),
        ("readiness", first(sleep=8), "sleep must be a whole number from 1 to 7"),
        ("readiness", first(run=STRANGER), "names a row of runs that is not there"),
        ("ratings", first(kind="mood"), "kind must be one of"),
        ("results", first(value="nan"), "value must be a number"),
        ("results", first(device=STRANGER), "names a row of devices that is not there"),
        ("notes", first(text=""), "text must be text of 1 to"),
        ("notes", first(text="a\x1b[31mb"), "text must be text of 1 to"),
        ("corrections", first(subject_id=STRANGER), "of something that is not there"),
        ("corrections", first(field="outcome"), "no correction that can be made"),
        ("corrections", first(after="11"), "no correction that can be made"),
        ("corrections", first(before='"a lot"'), "no correction that can be made"),
        ("corrections", first(after="[" * 20_000), "no correction that can be made"),
        ("corrections", first(replaces='["x"]'), "no correction that can be made"),
        ("corrections", first(replaces="7"), "no correction that can be made"),
        ("corrections", first(attempt=None), "no correction that can be made"),
    ],
)
def test_rows_that_cannot_be_are_refused(
    sound: Path, tmp_path: Path, table: str, change: Callable[[Lines], object], because: str
) -> None:
    refused(changed(sound, tmp_path / "odd.pwpack", table, change), because)


@pytest.mark.parametrize(
    ("cells", "because"),
    [
        ({"facts": "AQ=="}, "hash is not that of the facts"),
        ({"facts": "not base64"}, "facts cannot be read"),
        ({"facts": "AQID"}, "facts cannot be read"),
    ],
)
def test_branches_that_cannot_be_are_refused(
    sound: Path, tmp_path: Path, cells: dict[str, str], because: str
) -> None:
    run = json.loads(members_of(sound)["runs.jsonl"].splitlines()[0])["id"]
    row = {"run": run, "hash": "0" * 64, **cells}
    refused(changed(sound, tmp_path / "odd.pwpack", "branches", lambda lines: lines.append(row)), because)


def test_more_rows_than_a_record_can_have_are_refused(sound: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(intake, "MOST_ROWS", 10)
    refused(sound, "more than 10 rows")
    monkeypatch.undo()
    monkeypatch.setattr(intake, "MOST_FACTS", 10)
    refused(sound, "at most 10 facts")


def test_a_refusal_repeats_nothing_of_what_the_pack_says(sound: Path, tmp_path: Path) -> None:
    path = changed(sound, tmp_path / "odd.pwpack", "athletes", first(consent_on="secret of Wendelin"))
    with pytest.raises(PackError) as caught:
        read_pack(path)
    assert "Wendelin" not in str(caught.value)


@pytest.mark.parametrize("seed", range(6))
def test_a_spoilt_pack_is_refused_or_says_the_same_and_never_breaks_the_program(
    sound: Path, tmp_path: Path, seed: int
) -> None:
    chance, data = random.Random(seed), sound.read_bytes()
    whole = read_pack(sound).rows
    for number in range(120):
        spoilt = bytearray(data)
        for _ in range(chance.randint(1, 3)):
            spoilt[chance.randrange(len(spoilt))] = chance.randrange(256)
        if number % 4 == 0:
            del spoilt[chance.randrange(len(spoilt)) :]
        path = tmp_path / "spoilt.pwpack"
        path.write_bytes(bytes(spoilt))
        try:
            assert read_pack(path).rows == whole
        except PackError:
            continue


def test_nothing_of_a_refused_pack_is_taken(sound: Path, tmp_path: Path) -> None:
    desk = laptop(tmp_path, "desk", 3)
    desk.lead(RUNS[3:])
    before = dump(desk.path)
    with pytest.raises(PackError):
        desk.unpack(changed(sound, tmp_path / "odd.pwpack", "corrections", first(after="11")))
    assert dump(desk.path) == before
    with desk.open() as record, pytest.raises(PackError, match="cannot be written"):
        record.exchange.pack(tmp_path / "missing" / "a.pwpack", Wanted(), MADE_AT)
