# SPDX-License-Identifier: LGPL-2.1-or-later
"""cuts.json against its schema, its strings against those of HTML and CSV; what users write stays text."""

from __future__ import annotations

import copy
import csv
import io
import json
import math
import re
import sys
from collections.abc import Iterator
from html import escape
from html.parser import HTMLParser
from math import asin, atan2, degrees
from pathlib import Path
from typing import Any

import pytest

sys.path.append(str(Path(__file__).resolve().parent.parent / "core"))
from making import EXAMPLES, ROOT, job_of, record_of, scenario_of

from louverwright.core.saw import setting
from louverwright.exchange.papers import job_from_values
from louverwright.report.csv_file import HEAD, to_csv
from louverwright.report.document import document
from louverwright.report.html import to_html
from louverwright.report.job import Job
from louverwright.report.json_file import to_json
from louverwright.report.part_sheet import part_sheets

jsonschema = pytest.importorskip("jsonschema")

SCHEMA = json.loads((ROOT / "resources" / "cuts.schema.json").read_text(encoding="utf-8"))
HOSTILE = ("<b>&", "</style><script>alert(1)</script>", "\"quoted\" & 'single'", "--><img src=x onerror=alert(1)>")
#: Columns of the CSV that hold a fact of the part's block.
SHARED = {"hand": "Hand", "stock": "Stock", "blank": "Blank L × W × T", "grain": "Grain", "meets": "Meets",
          "order of cuts": "Order of cuts", "nested setting": "Nested setting", "faces out": "Faces", "where": "Where"}
#: Rows for what is done to the stock to have the blank; the file's blank has them already.
OF_THE_BLANK = ("square end", "square", "rip to width", "rip to width, free of the board", "cut from the sheet",
                "cut from the roll", "thickness")
FORMULAS = ("=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1")


def check(record: Any) -> list[str]:
    """What the schema finds wrong."""
    return [error.message for error in jsonschema.Draft202012Validator(SCHEMA).iter_errors(record)]


# ---- the schema


def test_the_schema_is_one() -> None:
    jsonschema.Draft202012Validator.check_schema(SCHEMA)
    assert SCHEMA["$schema"].endswith("2020-12/schema")


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_example_fits_the_schema(name: str) -> None:
    assert check(record_of(name)) == []


def objects(schema: Any, path: str = "") -> Iterator[tuple[str, dict[str, Any]]]:
    """Every object type of the schema with its path."""
    if isinstance(schema, dict):
        if "properties" in schema and schema.get("type") == "object":
            yield path, schema
        for key, value in schema.items():
            yield from objects(value, f"{path}/{key}")
    elif isinstance(schema, list):
        for index, value in enumerate(schema):
            yield from objects(value, f"{path}/{index}")


def test_everything_is_described_and_nothing_else_is_allowed() -> None:
    found = dict(objects(SCHEMA))
    assert len(found) > 15
    for path, each in found.items():
        assert each["additionalProperties"] is False, path
        assert set(each["required"]) == set(each["properties"]), path
        for key, value in each["properties"].items():
            told = value.get("description") or value.get("const") or "$ref" in value
            assert told, f"{path}: {key}"


def test_a_stranger_is_told_what_is_needed() -> None:
    """Frames, waste, cylinder, placement and signs: the words that rebuilding hangs on."""
    text = json.dumps(SCHEMA, ensure_ascii=False)
    for words in ("from end A (x = 0) to end B (x = L)", "reference edge (y = 0", "hidden face (z = 0",
                  "normal·p > offset", "EVERY half-space", "right circular cylinder",
                  "p_assembly = origin + x·X + y·Y + z·Z",
                  "asin(n_z)", "atan2(n_y, |n_x|)", "atan2(n_x, |n_y|)", "millimetres, degrees"):
        assert words.lower() in text.lower(), words


def broken(change) -> list[str]:
    """What the schema says of the first example after a change."""
    record = copy.deepcopy(record_of(EXAMPLES[0]))
    change(record)
    return check(record)


@pytest.mark.parametrize("change", [
    lambda r: r.pop("counts"),
    lambda r: r.update(extra=1),
    lambda r: r.update(format_version=2),
    lambda r: r["units"].update(length="in"),
    lambda r: r["parts"][0].update(blank=[1.0, 2.0]),
    lambda r: r["parts"][0].update(blank=[1.0, 2.0, 0.0]),
    lambda r: r["parts"][0].update(hand="up"),
    lambda r: r["parts"][0].update(count=0),
    lambda r: r["parts"][0]["arrises"].pop(),
    lambda r: r["parts"][0]["cuts"][0].pop("waste"),
    lambda r: r["parts"][0]["cuts"][0].update(waste=[]),
    lambda r: r["parts"][0]["cuts"][0].update(kind="shave"),
    lambda r: r["parts"][0]["cuts"][0].pop("mitre"),
    lambda r: r["parts"][0]["cuts"][0].update(taper=0.0),
    lambda r: r["parts"][0]["cuts"][0]["waste"].append(r["parts"][0]["cuts"][0]["waste"][0]),
    lambda r: r["parts"][0]["cuts"][1]["waste"].pop(),
    lambda r: r["parts"][0]["cuts"][0]["waste"][0].update(normal=[2.0, 0.0, 0.0]),
    lambda r: r["parts"][0]["pieces"][0]["placement"].pop("z"),
    lambda r: r["parts"][0]["pieces"][0].update(id="leg"),
    lambda r: r["joints"][0].update(kind="nailed"),
    lambda r: r["joints"][0].update(gap=-1.0),
    lambda r: r["results"].update(pieces=None),
])
def test_a_record_that_is_wrong_does_not_fit(change) -> None:
    assert broken(lambda r: None) == []
    assert broken(change)


# ---- what the schema promises beyond shapes


@pytest.mark.parametrize("name", EXAMPLES)
def test_counts(name: str) -> None:
    record, job = record_of(name), job_of(name)
    assert record["counts"] == {"parts": len(record["parts"]), "pieces": sum(p["count"] for p in record["parts"])}
    assert all(part["count"] == len(part["pieces"]) for part in record["parts"])
    ids = [piece["id"] for part in record["parts"] for piece in part["pieces"]]
    assert len(ids) == len(set(ids)) == len(job.assembly.pieces)
    assert {end for joint in record["joints"] for end in (joint["first"], joint["second"])} <= set(ids)
    assert len({part["mark"] for part in record["parts"]}) == len(record["parts"])
    assert [part["mark"] for part in record["parts"]] == [part.mark for part in job.assembly.parts]


@pytest.mark.parametrize("name", EXAMPLES)
def test_angles_follow_from_the_normals_as_described(name: str) -> None:
    for part in record_of(name)["parts"]:
        for cut in part["cuts"]:
            for space in cut.get("waste", ()):
                assert sum(n * n for n in space["normal"]) == pytest.approx(1.0, abs=1e-9)
            if "bevel" not in cut:
                continue
            x, y, z = cut["waste"][0]["normal"]
            assert cut["bevel"] == pytest.approx(degrees(asin(z)), abs=1e-6)
            if cut["kind"] == "rip":
                assert cut["taper"] == pytest.approx(degrees(atan2(x, abs(y))), abs=1e-6)
                assert cut["edge"] == ("far edge" if y > 0 else "reference edge")
            else:
                assert cut["mitre"] == pytest.approx(degrees(atan2(y, abs(x))), abs=1e-6)
                assert cut["end"] == ("end B" if x > 0 else "end A")


@pytest.mark.parametrize("name", EXAMPLES)
def test_planes_are_the_cores_to_the_last_digit(name: str) -> None:
    """Nothing is rounded on the way into the file."""
    for part, record in zip(job_of(name).assembly.parts, record_of(name)["parts"], strict=True):
        assert tuple(record["blank"]) == part.board.size
        for cut, told in zip(part.board.cuts, record["cuts"], strict=True):
            assert [(tuple(s["normal"]), s["offset"]) for s in told.get("waste", ())] == [
                (plane.normal, plane.offset) for plane in cut.planes]
            if "bevel" in told:
                assert told["bevel"] == setting(cut.planes[0]).bevel


# ---- the same strings everywhere


class Cells(HTMLParser):
    """The text of each part's block: cells, definitions and paragraphs, by the block's anchor."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.blocks: dict[str, list[str]] = {}
        self._anchor, self._open = "", False

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        if tag.startswith("h") and tag[1:].isdigit():
            self._anchor = dict(attrs).get("id") or ""
        self._open = tag in ("td", "th", "dt", "dd", "p")
        if self._open:
            self.blocks.setdefault(self._anchor, []).append("")

    def handle_endtag(self, tag: str) -> None:
        if tag in ("td", "th", "dt", "dd", "p"):
            self._open = False

    def handle_data(self, data: str) -> None:
        if self._open:
            self.blocks[self._anchor][-1] += data


def html_blocks(job: Job) -> dict[str, list[str]]:
    parser = Cells()
    parser.feed(to_html(document(job), job.spec.paper_size))
    return parser.blocks


def holds(cells: list[str], row: list[str]) -> bool:
    """True when the cells of a row follow each other."""
    return any(cells[i:i + len(row)] == row for i, cell in enumerate(cells) if cell == row[0])


@pytest.mark.parametrize("name", EXAMPLES)
def test_html_shows_the_same_strings(name: str) -> None:
    blocks = html_blocks(job_of(name))
    for part in record_of(name)["parts"]:
        cells, shown = blocks[f"part-{part['mark']}"], part["shown"]
        for label, value in shown["facts"].items():
            assert holds(cells, [label, value]), (part["mark"], label)
        for row in shown["cuts"]:
            title = row["name"] if row["name"].startswith(row["where"]) else f"{row['where']}: {row['name']}"
            assert holds(cells, [row["step"], title, row["set"], row["lay"], row["mark_at"]]), (part["mark"], row)
        for number, row in enumerate(shown["joints"], start=len(shown["cuts"]) + 1):
            cut = [str(number), row["name"], row["size"], row["face"], row["position"]]
            assert holds(cells, cut), (part["mark"], row)
        assert not shown["advice"] or " ".join(shown["advice"]) in cells


def csv_rows(job: Job) -> list[dict[str, str]]:
    """The rows of the CSV by its head, the line about the job left out."""
    text = to_csv(job)
    assert text.startswith("\ufeff")
    rows = list(csv.reader(io.StringIO(text[1:], newline="")))
    assert rows[0] == list(HEAD) and all(len(row) == len(HEAD) for row in rows)
    return [dict(zip(HEAD, row, strict=True)) for row in rows[2:]]


@pytest.mark.parametrize("name", EXAMPLES)
def test_csv_shows_the_same_strings(name: str) -> None:
    rows = csv_rows(job_of(name))
    for part in record_of(name)["parts"]:
        own = [row for row in rows if row["mark"] == part["mark"]]
        shown, facts = part["shown"], part["shown"]["facts"]
        assert len(own) == len(shown["cuts"]) + len(shown["joints"])
        for row in own:
            assert (row["part"], row["pieces"]) == (part["name"], str(part["count"]))
            told = {head: row[head] for head in SHARED}
            assert told == {head: facts.get(label, "") for head, label in SHARED.items()}
        cuts = [(cut["step"], cut["set"], cut["lay"], cut["mark_at"]) for cut in shown["cuts"]]
        joints = [("", joint["face"], joint["size"], joint["position"]) for joint in shown["joints"]]
        assert [(r["step"], r["set or face"], r["lay or size"], r["mark at"]) for r in own] == cuts + joints
    assert [row["mark"] for row in rows] == [p["mark"] for p in record_of(name)["parts"]
                                             for _ in (*p["shown"]["cuts"], *p["shown"]["joints"])]


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_file_shows_what_the_part_sheets_say(name: str) -> None:
    for sheet, part in zip(part_sheets(job_of(name)), record_of(name)["parts"], strict=True):
        assert part["shown"]["facts"] == dict(sheet.facts)
        assert [list(row.values()) for row in part["shown"]["cuts"]] == [
            [r.number, r.where, r.name, r.set_to, r.lay, r.mark_at] for r in sheet.cuts]
        assert [list(row.values()) for row in part["shown"]["joints"]] == [
            [r.name, r.face, r.size, r.position] for r in sheet.joints]
        assert part["shown"]["advice"] == list(sheet.advice)


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_saw_cut_has_a_row(name: str) -> None:
    """As many rows as saw cuts besides those that make the blank; an angle shown is the exact one rounded."""
    for part in record_of(name)["parts"]:
        saw = [cut for cut in part["cuts"] if "bevel" in cut or cut["kind"] == "shaped edge"]
        rows = part["shown"]["cuts"]
        assert len([row for row in rows if row["name"] not in OF_THE_BLANK]) == len(saw), part["mark"]
        ripped = [row["name"] for row in rows if row["name"].startswith("rip to width") or "frees the strip" in row["mark_at"]]
        assert len(ripped) == ("ripped to" in part["shown"]["facts"]["Stock"]), part["mark"]
        exact = [abs(cut[key]) for cut in saw for key in ("mitre", "bevel", "taper") if key in cut]
        exact += [math.degrees(math.asin(abs(plane["normal"][2])))
                  for cut in saw if "bevel" not in cut for plane in cut["waste"]]
        shaped = {cut["name"] for cut in saw if cut["kind"] == "shaped edge"}    # told wall by wall, as notches are
        for row in rows:
            scales, _, complements = row["set"].partition(" (")
            for text in re.findall(r"(\d+\.\d)°", scales):
                assert any(abs(float(text) - angle) <= 0.0501 for angle in exact), (part["mark"], row)
            if row["name"] in shaped:
                continue
            own = [float(text) for text in re.findall(r"(?:mitre|bevel) (\d+\.\d)°|(\d+\.\d)° from square", scales)
                   for text in text if text]
            assert [float(text) for text in re.findall(r"(\d+\.\d)°", complements)] == pytest.approx(
                [90.0 - angle for angle in own], abs=0.101), (part["mark"], row)


# ---- what users write


def job_with(**words: str) -> Job:
    """The first example with words of the user's."""
    return job_from_values({**scenario_of(EXAMPLES[0]).values, **words}, revision=words.get("project", "A"))


@pytest.mark.parametrize("word", HOSTILE)
def test_what_users_write_is_escaped_in_html(word: str) -> None:
    job = job_with(project=word, notes=f"note {word}", survey_note=f"survey {word}")
    text = to_html(document(job), "A4")
    plain = to_html(document(job_with(project="X", notes="note X", survey_note="survey X")), "A4")
    assert escape(f"note {word}", quote=False) in text
    assert escape(f"survey {word}", quote=False) in text
    assert re.findall(r"<(/?\w+)", text) == re.findall(r"<(/?\w+)", plain)
    assert text.lower().count("<script") == 1, "the report's own"
    assert f"<title>{escape(word, quote=False)}</title>" in text


@pytest.mark.parametrize("word", HOSTILE + FORMULAS)
def test_what_users_write_comes_back_from_json(word: str) -> None:
    record = json.loads(to_json(job_with(project=word, notes=word)))
    assert check(record) == []
    assert (record["parameters"]["project"], record["title_block"]["Project"]) == (word, word)
    assert record["parameters"]["notes"] == word


@pytest.mark.parametrize("word", FORMULAS)
def test_a_formula_is_neutralised_in_csv(word: str) -> None:
    rows = list(csv.reader(io.StringIO(to_csv(job_with(project=word))[1:], newline="")))
    assert rows[1][1] == f"'{word}"
    assert not [cell for row in rows for cell in row if cell.startswith(("=", "+", "-", "@", "\t", "\r"))]


def test_stock_names_of_the_users_own_are_neutralised_and_escaped(tmp_path: Path) -> None:
    item = {"name": "=<b>1x6</b>", "form": "board", "thickness": "3/4 in", "width": "5 1/2 in", "lengths": ["8 ft"],
            "material": "pine", "density": 400}
    own = {"base": "us", "name": "own", "items": [item], "usual": {"slat_stock": item["name"]}}
    (tmp_path / "own.json").write_text(json.dumps(own), encoding="utf-8")
    values = {**scenario_of(EXAMPLES[0]).values, "stock_list": "own.json"}
    job = job_from_values(values, folder=tmp_path)
    stocks = {row["stock"] for row in csv_rows(job) if row["mark"] == "L9"}
    assert len(stocks) == 1 and stocks.pop().startswith("'=<b>1x6</b> (")
    text = to_html(document(job), "A4")
    assert "<b>1x6" not in text and "=&lt;b&gt;1x6&lt;/b&gt;" in text
    assert check(json.loads(to_json(job))) == []


def test_a_csv_reader_gets_commas_quotes_and_lines_whole() -> None:
    word = 'Barn, "north"\nsecond line'
    rows = list(csv.reader(io.StringIO(to_csv(job_with(project=word))[1:], newline="")))
    assert rows[1][1] == word
    assert to_csv(job_with(project="X")).count("\r\n") == len(rows)
