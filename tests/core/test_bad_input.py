# SPDX-License-Identifier: LGPL-2.1-or-later
"""Bad input, one table: whatever a scenario, a stock list or a report holds is answered with sentences and status 2.

What is asked of each case is in ``refusal``.  What happens to files and to the machine (full disks, kills, limits of time and
memory) is in ``test_bad_days.py``, what happens to properties and roofs in ``tests/host/test_bad_properties.py``.
"""

from __future__ import annotations

import copy
import json
import math
import re
from collections.abc import Iterator
from functools import lru_cache
from pathlib import Path
from typing import Any

import pytest
from making import EXAMPLES, ROOT, record_of

from louverwright import __main__ as command_line
from louverwright.__main__ import BAD_SCENARIO, main
from louverwright.core.parameters import (
    ANGLE,
    CHOICE,
    COUNT,
    LENGTH,
    NUMBER,
    PARAMETERS,
    STOCK,
    SWITCH,
    TEXT,
    Parameter,
)
from louverwright.core.stock import ITEM_KEYS, MOST_ITEMS, NEEDED_KEYS, USES
from louverwright.core.texts import LONGEST_NOTE, LONGEST_REVISION
from louverwright.places import DEEPEST, MOST_BYTES

EXAMPLE = (ROOT / "resources" / "examples" / f"{EXAMPLES[0]}.json").read_bytes()
#: Longer than any sentence of ours but one that lists a whole stock list, or every kind of part.
LONGEST_SENTENCE = 1_500
SCRIPT, FORMULA, PATH = "<script>alert(1)</script>", '=HYPERLINK("http://a.example")', "../../../etc/passwd"
ESCAPE, NUL, LONG = "\x1b[2J\x1b[H", "a\x00b", "A" * 100_000

#: Of no kind that a number is written in, whatever it is a number of.
NO_NUMBER: list[Any] = [
    None, True, [], {}, [900], {"mm": 900}, math.nan, math.inf, -math.inf, 10**400, -(10**400), 1e300, -1e12, 1e16, "", "  ",
    "wide",
    "NaN", "inf", "1e5", "0x10", "--5", "1/0", "1_000", "٣٣٣", "9" * 5_000, SCRIPT, FORMULA, PATH, ESCAPE, NUL, LONG, "900 kg",
    "3 parsecs", "1,250", "12 mm 3 mm 4 mm", "1.2.3", "=1+1", "@SUM(1)", "$(reboot)", "`reboot`", "%s%s%n", "{0.__class__}",
    "__import__('os')", "900 mm; drop", "½ ½", "\u202e009"]
BAD: dict[str, list[Any]] = {
    LENGTH: [*NO_NUMBER, 1e12, "1e12 mm", "35°", "8:12", "50 %", "-1e3", "1000 m2"],
    ANGLE: [*NO_NUMBER, 1e12, "900 mm", "1 in", "8:0", "-89°", "400°", "1e12"],
    COUNT: [*NO_NUMBER, 1e12, 0.5, 1e-9, "3 pieces", "2.5", "900 mm", "-3"],
    NUMBER: [*NO_NUMBER, 1e12, "3 mm", "10 %", "5/4", "900 mm"],
    CHOICE: [None, True, 0, [], {}, math.nan, "", "wide", SCRIPT, FORMULA, PATH, ESCAPE, NUL, LONG, "BUTT", "1"],
    SWITCH: [None, [], {}, math.nan, "", "maybe", 2, -5, SCRIPT, ESCAPE, LONG, "yesno"],
    TEXT: [None, True, 0, [], {}, math.nan, ESCAPE, NUL, LONG, "\x7f", "a\x85b", "\ufffe"],
    STOCK: [None, True, 5, [], {}, math.nan, "nothing", SCRIPT, FORMULA, PATH, ESCAPE, NUL, LONG, "2x4 ", "us"]}
#: Where a scenario may have been cut short.
CUT_AT = [round(len(EXAMPLE) * share / 25) for share in range(25)]


@pytest.fixture(autouse=True, scope="module")
def one_parser() -> Iterator[None]:
    """The parser of the command line made once: to make it takes longer than most cases."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(command_line, "_parser", lru_cache(command_line._parser))
        yield


def refusal(path: Path, capsys: pytest.CaptureFixture[str], *command: str) -> list[str]:
    """The sentences that a file is refused with; '' first if the answer is not what every refusal must be."""
    before = sorted(path.parent.iterdir())
    status = main([*(command or ("check",)), str(path)])
    printed = capsys.readouterr()
    head, *lines = printed.err.splitlines() or [""]
    sentences = [line.removeprefix("  - ") for line in lines]
    good = (status == BAD_SCENARIO and head.endswith(":") and sentences and "Traceback" not in printed.err
            and all(line.startswith("  - ") and ": " in line and line.endswith(".") for line in lines)
            and all(len(line) <= LONGEST_SENTENCE or "Choose one of" in line for line in lines)
            and all(character.isprintable() or character.isspace() for character in printed.err)
            and "\r" not in printed.err and "It can be built" not in printed.out
            and sorted(path.parent.iterdir()) == before)
    return sentences if good else ["", f"status {status}: {printed.err[:300]}"]


def written(folder: Path, content: Any, name: str = "vent.json") -> Path:
    """A file of bytes as they are, or of what JSON makes of them (NaN and halves of characters too)."""
    path = folder / name
    path.write_bytes(content if isinstance(content, bytes) else json.dumps(content).encode("ascii"))
    return path


def of_row(row: Parameter) -> list[Any]:
    """Bad values of a parameter, its limits' other sides among them."""
    beyond: list[Any] = []
    if row.kind in (LENGTH, ANGLE, COUNT, NUMBER) and row.low is not None and row.high is not None:
        beyond = [row.high * 1.001 + 1, row.low - 1 if row.low else -1e-9] if not (row.auto and row.low == 1) else []
        beyond += [1e-9] if row.low > 0 and row.kind != COUNT else []
    return [*BAD[row.kind], *beyond]


# ---- every parameter


@pytest.mark.parametrize("row", PARAMETERS, ids=lambda row: row.name)
def test_a_bad_value_of_any_parameter_is_told_with_its_key(row: Parameter, tmp_path: Path,
                                                           capsys: pytest.CaptureFixture[str]) -> None:
    wrong = []
    for value in of_row(row):
        path = written(tmp_path, {"louverwright": 1, "parameters": {row.name: value}})
        told = refusal(path, capsys)
        if not any(line.startswith((f"parameters.{row.name}: ", "stock_list: ")) for line in told):
            wrong.append(f"{value!r:.40}: {told}")
    assert not wrong, "\n".join(wrong)


def test_a_value_out_of_its_limits_is_told_with_value_limits_and_cure(tmp_path: Path,
                                                                      capsys: pytest.CaptureFixture[str]) -> None:
    rows = [row for row in PARAMETERS if row.kind in (LENGTH, ANGLE, NUMBER) and row.high is not None]
    path = written(tmp_path, {"louverwright": 1, "parameters": {row.name: 999_999.0 for row in rows}})
    told = refusal(path, capsys)
    assert len(told) == len(rows) > 80
    for row, line in zip(rows, told, strict=True):
        assert re.fullmatch(rf"parameters\.{row.name}: .+ is 999999\D.*: it must be at least .+ and (at most|less than) .+\. "
                            r"Set it (to|below) .+\.", line), line


# ---- the file as a whole


FILES: dict[str, bytes] = {
    "empty": b"", "blank": b"  \n\t ", "NUL bytes": b"\0" * 100, "one brace": b"{", "two documents": b"{}{}",
    "a comment": b'{"louverwright": 1} // mine', "single quotes": b"{'louverwright': 1}",
    "a comma at the end": b'{"louverwright": 1,}',
    "no quotes": b"{louverwright: 1}", "XML": b"<?xml version='1.0'?><vent/>", "YAML": b"louverwright: 1\nwidth: 900\n",
    "HTML": SCRIPT.encode(), "a formula": FORMULA.encode(), "a pickle": b"\x80\x04cos\nsystem\n.",
    "a ZIP": b"PK\x03\x04" + bytes(40),
    "a picture": b"\x89PNG\r\n\x1a\n" + bytes(40), "PDF": b"%PDF-1.4\n%\xe2\xe3", "UTF-16": EXAMPLE.decode().encode("utf-16"),
    "UTF-16 without a mark": EXAMPLE.decode().encode("utf-16-le"), "UTF-32": EXAMPLE.decode().encode("utf-32"),
    "Latin-1": '{"louverwright": 1, "remark": "Gärtnerei"}'.encode("latin-1"), "EBCDIC": EXAMPLE.decode().encode("cp500"),
    "UTF-7": '{"louverwright": 1, "remark": "ü", "x": 1}'.encode("utf-7"), "two marks": b"\xef\xbb\xbf" * 2 + EXAMPLE,
    "half a character": b'{"louverwright": 1, "remark": "\\ud800"}', "half a key": b'{"louverwright": 1, "\\udfff": 1}',
    "an overlong slash": b'{"louverwright": 1, "remark": "\xc0\xaf"}',
    "a line end in a text": b'{"louverwright": 1, "remark": "a\nb"}',
    "a key twice": b'{"louverwright": 1, "units": "mm", "units": "in"}',
    "a parameter twice": b'{"louverwright": 1, "parameters": {"width": 900, "width": 1200}}',
    "a parameter twice, alike": b'{"louverwright": 1, "parameters": {"width": 900, "width": 900}}',
    "a reading twice": b'{"louverwright": 1, "survey": {"slope_left": 30, "slope_left": 31}}',
    "deep lists": b"[" * 200_000, "deep objects": b'{"a":' * 100_000, "deep and closed": b"[" * 900 + b"]" * 900,
    "deeper than any of ours": b'{"louverwright": 1, "remark": ' + b"[" * (DEEPEST + 1) + b"]" * (DEEPEST + 1) + b"}",
    "an endless figure": b'{"louverwright": 1, "parameters": {"width": ' + b"9" * 10_000 + b"}}",
    "an endless exponent": b'{"louverwright": 1, "parameters": {"width": 1e999999999}}',
    "NaN": b'{"louverwright": 1, "parameters": {"width": NaN}}',
    "infinity": b'{"louverwright": 1, "parameters": {"width": -Infinity}}',
    "larger than any of ours": b'{"louverwright": 1, "remark": "' + b"A" * MOST_BYTES + b'"}',
    "many keys": b"{" + b",".join(b'"%d": 1' % i for i in range(3_000)) + b"}",
    "many lists": b"[" + b"[]," * 1_000_000 + b"[]]", "a list": b"[1, 2]", "a text": b'"vent"', "a number": b"3",
    "null": b"null",
    "no version": b"{}", "a later version": b'{"louverwright": 2}', "true for 1": b'{"louverwright": true}',
    "a text for 1": b'{"louverwright": "1"}', "a long key": b'{"louverwright": 1, "' + b"k" * 100_000 + b'": 1}',
    "a key that clears the screen": b'{"louverwright": 1, "\\u001b[2J": 1}',
    "markup for a key": b'{"louverwright": 1, "<script>": 1}',
    "a path for a key": b'{"louverwright": 1, "../../x": 1}', "__proto__": b'{"louverwright": 1, "__proto__": {"a": 1}}'}


@pytest.mark.parametrize("name", FILES)
def test_a_file_that_is_no_scenario_is_refused(name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = written(tmp_path, FILES[name])
    told = refusal(path, capsys)
    assert told[0], told[1:]
    assert path.read_bytes() == FILES[name]


def test_a_scenario_that_was_cut_short_is_refused_wherever_that_was(tmp_path: Path,
                                                                    capsys: pytest.CaptureFixture[str]) -> None:
    wrong = [told for at in CUT_AT if not (told := refusal(written(tmp_path, EXAMPLE[:at]), capsys))[0]]
    assert not wrong
    assert len(CUT_AT) == 25


UNITS = (None, 1, [], {}, "", "MM", "yd", SCRIPT, ESCAPE, LONG, math.nan)
REVISIONS = (None, True, 1.5, [], {}, "R" * (LONGEST_REVISION + 1), NUL, ESCAPE)
NAMES = ("", " ", "Width", "width ", SCRIPT, FORMULA, PATH, ESCAPE, NUL, LONG, "__class__", "values", "parts")
READINGS = (None, True, [], {}, math.nan, math.inf, 10**400, -1, 1e12, "", "steep", SCRIPT, ESCAPE, LONG)
KINDS = ("", "nothing", SCRIPT, FORMULA, PATH, ESCAPE, NUL, LONG)
WISHES: dict[str, tuple[Any, ...]] = {
    "stock": (None, 1, [], "nothing", SCRIPT, ESCAPE, LONG, NUL, "plywood 1/2"), "left_out": (None, 1, "yes", [], NUL),
    "note": (None, 1, [], ESCAPE, NUL, "n" * (LONGEST_NOTE + 1)), SCRIPT: (1,), LONG: (1,)}
KEYS: dict[str, dict[str, Any]] = {
    **{f"units {value!r:.20}": {"units": value} for value in UNITS},
    **{f"revision {value!r:.20}": {"revision": value} for value in REVISIONS},
    **{f"{key} {value!r:.20}": {key: value} for key in ("parameters", "parts", "survey")
       for value in (5, True, [], "x", [[]], [{}])},
    **{f"parameter {name!r:.20}": {"parameters": {name: 1}} for name in NAMES},
    **{f"reading {key} {value!r:.20}": {"survey": {key: value}} for value in READINGS
       for key in ("slope_left", "ridge_angle", "error", "rise_left", "run_left", "nothing", SCRIPT, ESCAPE)},
    **{f"part {name!r:.20}": {"parts": {name: {"left_out": True}}} for name in KINDS},
    **{f"wish {key!r:.20} {value!r:.20}": {"parts": {"base.leg.gable": {key: value}}}
       for key, values in WISHES.items() for value in values},
    **{f"wish {value!r:.20}": {"parts": {"base.leg.gable": value}} for value in (None, 1, [], "x", True)}}


@pytest.mark.parametrize("name", KEYS)
def test_a_bad_key_of_a_scenario_is_refused(name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    told = refusal(written(tmp_path, {"louverwright": 1, **KEYS[name]}), capsys)
    assert told[0], told[1:]


# ---- stock lists


CEDAR: dict[str, Any] = {"name": "cedar", "form": "board", "thickness": 19, "width": 140, "lengths": [2400], "density": 360}
SIZES = [None, True, [], {}, math.nan, math.inf, 0, -1, 1e-9, 1e12, 10**400, "", "wide", "1/2", "35°", "900 kg", SCRIPT,
         FORMULA, ESCAPE, LONG]
TEXTS = [None, True, 5, [], {}, NUL, ESCAPE, LONG]
ITEM_BAD: dict[str, list[Any]] = {
    "name": [*TEXTS, "", "  "], "form": [*TEXTS, "", "plank", SCRIPT], "thickness": [*SIZES, 1, 301],
    "width": [*SIZES, 7, 3001],
    "lengths": [None, True, 5, {}, "8 ft", [], [[]], *([size] for size in SIZES), [2400, -1], [2400] * 101],
    "density": [None, True, "360", [], {}, math.nan, math.inf, 0, -1, 1e-9, 1e12, 10**400, SCRIPT, ESCAPE, LONG],
    "moisture": [None, True, "12", [], {}, math.nan, math.inf, -1, 41, 1e12, 10**400, ESCAPE, LONG],
    "material": TEXTS, "source": TEXTS, SCRIPT: [1], ESCAPE: [1], LONG: [1]}
LISTS: list[Any] = [
    None, 5, "us", [], {}, {"items": {}}, {"items": "x"}, {"items": [None]}, {"items": [5, []]}, {"items": [[]]},
    {"items": [{}]},
    {"items": [CEDAR, CEDAR]}, {"items": [CEDAR] * (MOST_ITEMS + 1)},
    *({"items": [CEDAR], key: value} for key in ("name", "title") for value in TEXTS),
    *({"items": [CEDAR], "base": value} for value in (None, 5, [], {}, "", "fr", PATH, SCRIPT, ESCAPE, LONG)),
    *({"items": [CEDAR], "usual": value} for value in (None, 5, [], "x", {"nothing": "cedar"}, {SCRIPT: "cedar"},
                                                       {ESCAPE: "cedar"}, {LONG: "x"})),
    *({"items": [CEDAR], "usual": {use: value}} for use in USES[:3] for value in (None, 5, [], {}, "", "nothing", SCRIPT,
                                                                                  ESCAPE, LONG)),
    *({"items": [CEDAR], key: 1} for key in (SCRIPT, ESCAPE, LONG, "prices")),
    b"", b"{", b"\xff\xfe{\x00}\x00", '{"items": [], "title": "Gärtner"}'.encode("latin-1"), b'{"items": [], "items": []}',
    b"[" * 100_000,
    b'{"items": [], "name": "\\ud800"}', b'{"items": [' + b"1," * 2_000_000 + b"1]}", b" " * (MOST_BYTES + 1), SCRIPT.encode()]


def refused_list(folder: Path, content: Any, capsys: pytest.CaptureFixture[str]) -> list[str]:
    """What a scenario is told whose stock list holds this."""
    written(folder, content, "yard.json")
    return refusal(written(folder, {"louverwright": 1, "parameters": {"stock_list": "yard.json"}}), capsys)


@pytest.mark.parametrize("key", ITEM_BAD, ids=lambda key: repr(key)[:20])
def test_a_bad_item_of_a_stock_list_is_refused_with_its_place(key: str, tmp_path: Path,
                                                              capsys: pytest.CaptureFixture[str]) -> None:
    wrong = []
    for value in ITEM_BAD[key]:
        told = refused_list(tmp_path, {"items": [CEDAR | {"name": "first"}, CEDAR | {key: value}]}, capsys)
        if not told[0].startswith("items[1]."):
            wrong.append(f"{value!r:.40}: {told}")
    assert not wrong, "\n".join(wrong)


@pytest.mark.parametrize("key", NEEDED_KEYS)
def test_an_item_without_a_key_is_refused(key: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert refused_list(tmp_path, {"items": [{k: v for k, v in CEDAR.items() if k != key}]},
                        capsys)[0].startswith(f"items[0].{key}: ")


def test_a_bad_stock_list_is_refused(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    wrong = [f"{content!r:.60}: {told}" for content in LISTS if not (told := refused_list(tmp_path, content, capsys))[0]]
    assert not wrong, "\n".join(wrong)


@pytest.mark.parametrize("name", [PATH, "/", ".", "..", "nowhere.json", "/dev/zero", "/dev/null", "/dev/stdin",
                                  "//server/share/us.json",
                                  "\\\\server\\share\\us.json", "\\/server/x", "http://a.example/us.json",
                                  "file:///etc/passwd", "~/us.json",
                                  "US", "us.json", "vent.json", "a" * 900, "%2e%2e/us", "CON", SCRIPT, FORMULA, "yard.json\n",
                                  "|ls"])
def test_a_path_of_a_stock_list_that_leads_to_none_is_refused(name: str, tmp_path: Path,
                                                              capsys: pytest.CaptureFixture[str]) -> None:
    told = refusal(written(tmp_path, {"louverwright": 1, "parameters": {"stock_list": name}}), capsys)
    assert told[0], told[1:]
    assert not any("root:" in line for line in told), "the content of a file that is no stock list is not told"


# ---- reports of earlier states


RECORD = record_of(EXAMPLES[0])
STOCK_KEYS = tuple(RECORD["parameters"]["slat_stock"])
REPORT_BAD: dict[str, tuple[tuple[str, ...], list[Any]]] = {
    **{key: ((key,), [None, 5, [], {}, "x"]) for key in ("format", "format_version", "fingerprint", "parameters", "parts")},
    "date": (("date",), [None, 5, [], NUL, LONG]), "revision": (("revision",), [None, 5, [], NUL, LONG]),
    "part_wishes": (("part_wishes",), [5, [], "x", {"nothing": {}}, {"base.leg.gable": {"stock": {"name": "x"}}}]),
    "width": (("parameters", "width"), [None, True, [], {}, "900", 901, math.nan, 1e300, -1]),
    "slat_stock": (("parameters", "slat_stock"), [None, 5, [], {}, "1x6", {"name": "x"}]),
    **{f"slat_stock {key}": (("parameters", "slat_stock", key), [None, True, [], {}, "x", math.nan, math.inf, -1, 1e300,
                                                                 [None]])
       for key in STOCK_KEYS if key not in ("name", "material")},
    "unknown": (("parameters", SCRIPT), [1]), "unknown, long": (("parameters", LONG), [1])}


@pytest.mark.parametrize("name", REPORT_BAD)
def test_a_report_that_was_meddled_with_is_refused(name: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    way, values = REPORT_BAD[name]
    wrong = []
    for value in values:
        record = copy.deepcopy(RECORD)
        inner = record
        for key in way[:-1]:
            inner = inner[key]
        inner[way[-1]] = value
        told = refusal(written(tmp_path, record, "cuts.json"), capsys, "mend", "--part", "L9", "--lost")
        if not told[0]:
            wrong.append(f"{value!r:.40}: {told}")
    assert not wrong, "\n".join(wrong)


# ---- what a part that came out wrong is told by


@pytest.mark.parametrize("words", [
    ["--part", ""], ["--part", "X99"], ["--part", SCRIPT], ["--part", ESCAPE], ["--part", LONG], ["--part", "L9"],
    ["--part", "L9", "--length", "long"], ["--part", "L9", "--length", "-1"], ["--part", "L9", "--length", "1e12 mm"],
    ["--part", "L9", "--width", "nan"], ["--part", "L9", "--thickness", LONG], ["--part", "L9", "--lost", "--count", "9999"],
    ["--part", "L9", "--lost", "--count", "-1"], ["--part", "L9", "--lost", "--cut", "X1,,<script>"],
    ["--part", "L9", "--lost", "--cut", LONG]], ids=lambda words: " ".join(words)[:30])
def test_a_mending_that_makes_no_sense_is_refused(words: list[str], tmp_path: Path,
                                                  capsys: pytest.CaptureFixture[str]) -> None:
    told = refusal(written(tmp_path, EXAMPLE), capsys, "mend", *words)
    assert told[0], told[1:]


# ---- what may look bad and is good


@pytest.mark.parametrize("content", [
    b"\xef\xbb\xbf" + EXAMPLE, EXAMPLE.replace(b"\n", b"\r\n"), b"\n\n\t " + EXAMPLE + b"\n\n",
    {"louverwright": 1, "remark": SCRIPT}, {"louverwright": 1, "revision": FORMULA},
    {"louverwright": 1, "parameters": {"project": SCRIPT}}, {"louverwright": 1.0, "parameters": {"width": "900"}},
    {"louverwright": 1, "parameters": {"notes": f"{FORMULA}\n{PATH}\t{'n' * 3_000}"}},
    {"louverwright": 1, "parts": {"base.leg.gable": {"note": FORMULA}}},
    {"louverwright": 1, "parameters": {"project": "Gärtnerei 🐄 農場"}}], ids=range(10))
def test_what_only_looks_bad_is_built(content: Any, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check", str(written(tmp_path, content))]) == 0
    assert capsys.readouterr().err == ""


def test_a_stock_list_may_begin_with_the_mark_that_some_editors_set(tmp_path: Path,
                                                                    capsys: pytest.CaptureFixture[str]) -> None:
    written(tmp_path, b"\xef\xbb\xbf" + json.dumps({"items": [CEDAR]}).encode(), "yard.json")
    assert main(["check", str(written(tmp_path, {"louverwright": 1, "parameters": {"stock_list": "yard.json"}}))]) == 0
    assert capsys.readouterr().err == ""


def test_there_are_as_many_cases_as_were_promised() -> None:
    counts = {"parameters": sum(len(of_row(row)) for row in PARAMETERS), "files": len(FILES) + len(CUT_AT), "keys": len(KEYS),
              "stock lists": sum(map(len, ITEM_BAD.values())) + len(LISTS),
              "reports": sum(len(values) for _, values in REPORT_BAD.values())}
    assert sum(counts.values()) > 5_000 and min(counts.values()) > 75, counts
    assert set(ITEM_KEYS) <= set(ITEM_BAD)
