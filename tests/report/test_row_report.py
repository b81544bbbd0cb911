# SPDX-License-Identifier: LGPL-2.1-or-later
"""A job for several vents: what the paper says of one and of all, and that every count reconciles."""

from __future__ import annotations

import csv
import io
import re
import sys
from pathlib import Path

import pytest

sys.path.append(str(Path(__file__).resolve().parent.parent / "core"))
from making import job_of, record_of
from sample_report import strings_of

from louverwright.exchange.papers import job_from_values
from louverwright.report.csv_file import to_csv
from louverwright.report.document import document
from louverwright.report.html import to_html
from louverwright.report.page import Heading, Table, as_cell, walk

EXAMPLE = "three-vents-long-ridge"
ALL = "all 3 vents"


def tables(job) -> dict[str, Table]:
    return {block.caption: block for block in walk(document(job).blocks) if isinstance(block, Table) and block.caption}


def column(table: Table, title: str) -> list[str]:
    place = [each.title for each in table.columns].index(title)
    return [as_cell(row[place]).text for row in table.rows]


def marks_and_counts(table: Table, place: int) -> list[tuple[str, int]]:
    """Mark and number of everything that a set-up's text lists."""
    text = " , ".join(as_cell(row[place]).text for row in table.rows)
    return [(mark, int(count)) for mark, count in re.findall(r"([BLR]\d+[a-z]*[LR]?)\b[^×]*?×(\d+)", text)]


def test_the_paper_says_make_three_of_each() -> None:
    report = document(job_of(EXAMPLE))
    assert report.subtitle == "Cut report of 3 louvered roof vents: make 3 of each"
    assert dict(report.title_block)["Vents"] == "3: make 3 of each"
    assert [text for text in strings_of(report) if text.startswith("Make 3 of each: the 3 vents are alike.")]
    assert "make 3 of each" in to_html(report, "A4")


def test_the_cut_list_counts_one_vent_and_all() -> None:
    job, record = job_of(EXAMPLE), record_of(EXAMPLE)
    one, every = [], []
    for caption in ("Base", "Louver stage", "Roof stage"):
        table = tables(job)[caption]
        assert [each.title for each in table.columns if "ieces" in each.title] == ["Pieces, one vent", f"Pieces, {ALL}"]
        own = list(map(int, column(table, "Pieces, one vent")))
        of_all = list(map(int, column(table, f"Pieces, {ALL}")))
        assert of_all == [3 * count for count in own]
        assert table.note.startswith(f"{sum(own)} pieces, ") and ", for one vent; " in table.note
        assert f"; {sum(of_all)} pieces, " in table.note and table.note.endswith(", for all 3 vents.")
        one += own
        every += of_all
    assert one == [part["count"] for part in record["parts"]]
    assert every == [part["count_for_all"] for part in record["parts"]]
    assert sum(every) == record["counts_for_all"]["pieces"] == 3 * len(job.assembly.pieces)
    told = f"One vent: {sum(one)} pieces under {len(every)} marks in all. All 3 vents: {sum(every)} pieces."
    assert told in strings_of(document(job))


def test_the_set_up_sheet_counts_all() -> None:
    job, alone = job_of(EXAMPLE), job_for(1)
    of_one = tables(alone)
    for caption, table in tables(job).items():
        counted = [each.title for each in table.columns if each.title.split(",")[0] in ("Cuts", "Joints")]
        for title in counted:
            assert title.endswith(f", {ALL}"), caption
            assert column(table, title) == [str(3 * int(count)) for count in column(of_one[caption], title.split(",")[0])]
    marks = {part.mark: 3 * part.count for part in job.assembly.parts}
    for caption, place in (("Crosscuts", 4), ("Rips", 2), ("Dados, laps, notches and bores", 2)):
        found = marks_and_counts(tables(job)[caption], place)
        assert len(found) > 3
        assert [(mark, count) for mark, count in found if marks[mark] != count] == [], caption


def job_for(vents: int):
    """The example's vent as one of so many, the width given so that each is the same."""
    values = dict(job_of(EXAMPLE).spec.values)
    values = {name: getattr(value, "name", value) for name, value in values.items()}
    return job_from_values({**values, "vents": vents, "end_distance": 0.0, "width": job_of(EXAMPLE).sizes.base.width})


def test_parts_say_how_many_for_each() -> None:
    job = job_of(EXAMPLE)
    titles = [block.text for block in walk(document(job).blocks) if isinstance(block, Heading)
              and block.anchor.startswith("part-")]
    assert len(titles) == len(job.assembly.parts)
    for title, part in zip(titles, job.assembly.parts, strict=True):
        assert title.endswith(f" · {3 * part.count} pieces: {part.count} for each of 3 vents")


def test_csv_counts_one_vent_and_all() -> None:
    rows = list(csv.reader(io.StringIO(to_csv(job_of(EXAMPLE))[1:], newline="")))
    head = rows[0]
    assert rows[1][head.index("pieces"):head.index("pieces") + 3] == ["for one vent", "3", "make 3 of each"]
    told = {row[0]: tuple(int(row[head.index(name)]) for name in ("pieces", "vents", "pieces for all vents"))
            for row in rows[2:]}
    assert told == {part["mark"]: (part["count"], 3, part["count_for_all"]) for part in record_of(EXAMPLE)["parts"]}


def test_json_tells_vents_places_and_totals() -> None:
    record, job = record_of(EXAMPLE), job_of(EXAMPLE)
    assert record["vents"] == 3
    assert record["positions"] == pytest.approx([18 * 304.8, 60 * 304.8, 102 * 304.8])
    assert record["counts_for_all"]["weight"] == pytest.approx(3.0 * job.figures["total_weight"])
    assert record["results"]["total_weight"] == pytest.approx(job.figures["total_weight"])
    assert record["counts_for_all"]["pieces"] == record["results"]["pieces_of_all_vents"] == 3 * record["counts"]["pieces"]


def test_one_vents_paper_says_nothing_of_several() -> None:
    job = job_for(1)
    words = " ".join(strings_of(document(job)))
    assert "of each:" not in words and "all 1 vent" not in words and "one vent" not in words
    assert "Vents" not in dict(document(job).title_block)
    assert [each.title for each in tables(job)["Base"].columns][2] == "Pieces"
