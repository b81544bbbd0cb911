# SPDX-License-Identifier: LGPL-2.1-or-later
"""Wishes for single kinds of part on paper: notes, own stock, and the list of what is left out."""

from __future__ import annotations

import csv
import io
import json
import sys
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

sys.path.append(str(Path(__file__).resolve().parent.parent / "core"))
from making import ROOT
from records import jsonschema, says_everything

from louverwright.core.checks import checked_spec
from louverwright.core.part_wish import PartWish
from louverwright.core.stock import StockList
from louverwright.places import stock_list
from louverwright.report.compare import comparison_record, comparison_report, screen_lines
from louverwright.report.compare_words import Pair
from louverwright.report.csv_file import HEAD, LEFT_OUT, to_csv
from louverwright.report.document import document
from louverwright.report.html import to_html
from louverwright.report.job import Job
from louverwright.report.json_file import to_json
from louverwright.report.left_out import left_out_words, marks_left_out, wish_rows
from louverwright.report.part_sheet import left_out_sheets, part_sheets

US = stock_list("us")
OAK = replace(US.find("2x4"), name="oak 2x4", density=900.0)
LIST = StockList(US.name, US.title, (*US.items, OAK), US.usual)
LEG, SCREEN, BARGE = "base.leg.gable", "louver.screen", "roof.barge"
NOTE = "=clear <b>wood</b> & no knots"
WISHES = {LEG: PartWish("oak 2x4", NOTE), SCREEN: PartWish(left_out=True, note="bought"), BARGE: PartWish(note="later")}


def job(wishes: dict[str, PartWish], **values: Any) -> Job:
    """A job of the default vent with wishes."""
    return Job(checked_spec(values, LIST, wishes), "2026-01-02", "A", "0")


def html(of: Job) -> str:
    """Its page."""
    return to_html(document(of), "A4")


def test_the_part_s_sheet_says_note_and_own_stock() -> None:
    sheets = {sheet.mark: sheet for sheet in part_sheets(job(WISHES))}
    facts = dict(sheets["B1L"].facts)
    assert facts["Note"] == NOTE and facts["Stock"].startswith("oak 2x4 (")
    assert facts["Own stock"] == "chosen for this part alone; the vent's frame stock is 2x4"
    assert not {"Note", "Own stock"} & set(dict(sheets["B2"].facts))


def test_the_page_lists_what_is_left_out_and_makes_no_sheet_of_it() -> None:
    of = job(WISHES)
    page, plain = html(of), html(job({}))
    assert 'id="left-out"' in page and 'id="left-out"' not in plain
    mark = marks_left_out(of)
    assert mark == "L15" and f'id="part-{mark}"' not in page and f'id="part-{mark}"' in plain
    (row,) = left_out_sheets(of)
    assert (row.mark, row.count, row.note) == ("L15", "4", "bought")
    assert f"Left out, not made here: {mark}." in page and "bought" in page
    assert "&lt;b&gt;wood&lt;/b&gt;" in page and "<b>wood</b>" not in page
    assert all(part.mark != mark for part in of.assembly.parts)


def test_words_of_the_screen_stand_only_where_it_is_left_out() -> None:
    words = " ".join(left_out_words(job(WISHES)))
    assert "screen factor to 1" in words and "lift and mount no vent" in words
    assert "screen factor" not in " ".join(left_out_words(job({LEG: PartWish(left_out=True)})))
    assert left_out_words(job({})) == ()


def test_a_wish_for_an_absent_kind_is_said() -> None:
    rows = wish_rows(job(WISHES))
    assert rows[0] == ("B1 leg, gable side (base.leg.gable)", "oak 2x4", "", NOTE)
    assert [row[2:] for row in rows[1:]] == [("left out", "bought"), ("not in this vent: kept for when it is", "later")]
    assert "not in this vent: kept for when it is" in html(job(WISHES))


def test_several_vents_count_what_is_left_out_for_all() -> None:
    of = job({SCREEN: PartWish(left_out=True)}, ridge_length=30_000.0, vents=3, width=1_000.0)
    (row,) = [line for line in csv.reader(io.StringIO(to_csv(of)[1:])) if line[0] == "L15"]
    assert row[HEAD.index("pieces for all vents")] == "12" and "All 3 vents:" in html(of)


def test_the_csv_has_notes_and_a_row_for_what_is_left_out() -> None:
    rows = [dict(zip(HEAD, row, strict=True)) for row in csv.reader(io.StringIO(to_csv(job(WISHES))[1:]))]
    assert {row["note"] for row in rows if row["mark"] == "B1L"} == {f"'{NOTE}"}
    (screen,) = [row for row in rows if row["mark"] == "L15"]
    assert (screen["what"], screen["pieces"], screen["note"]) == (LEFT_OUT, "4", "bought") and rows[-1] == screen


def test_the_json_fits_its_schema_and_has_it_all() -> None:
    schema = json.loads((ROOT / "resources" / "cuts.schema.json").read_text(encoding="utf-8"))
    record = json.loads(to_json(job(WISHES)))
    assert [error.message for error in jsonschema.Draft202012Validator(schema).iter_errors(record)] == []
    (left,) = record["left_out"]
    assert (left["kind"], left["count"], left["note"]) == (SCREEN, 4, "bought")
    known = {piece["id"] for part in (*record["parts"], left) for piece in part["pieces"]}
    assert {joint[end] for joint in record["joints"] for end in ("first", "second")} <= known
    assert record["part_wishes"][LEG]["stock"]["name"] == "oak 2x4" and set(record["part_wishes"]) == set(WISHES)
    assert record["counts"]["pieces"] == sum(part["count"] for part in record["parts"]) == record["results"]["pieces"]


@pytest.mark.parametrize("turned", [False, True])
def test_the_comparison_says_left_out_now_and_made_again(turned: bool) -> None:
    schema = json.loads((ROOT / "resources" / "compare.schema.json").read_text(encoding="utf-8"))
    says_everything(schema)
    states = (job(WISHES), job({})) if turned else (job({}), job(WISHES))
    pair = Pair(*states)
    record = json.loads(json.dumps(comparison_record(pair)))
    assert [error.message for error in jsonschema.Draft202012Validator(schema).iter_errors(record)] == []
    own, other = ("made_again", "left_out") if turned else ("left_out", "made_again")
    assert [group["mark"] for group in record[own]] == ["L15"] and record[other] == []
    words = "Made again" if turned else "Left out now"
    assert words in to_html(comparison_report(pair), "A4")
    assert f"{words.lower()}: L15" in screen_lines(pair)
    assert [row["kind"] for row in record["part_wishes"]] == [LEG, SCREEN, BARGE]
