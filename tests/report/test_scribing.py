# SPDX-License-Identifier: LGPL-2.1-or-later
"""A twisted roof on paper: the drops, the slopes in use, and the table of what to scribe off."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

import pytest

sys.path.append(str(Path(__file__).resolve().parent.parent / "core"))
from making import job_of
from sample_report import strings_of

from louverwright.exchange.papers import job_from_values
from louverwright.report.document import document, parameter_text, survey_rows
from louverwright.report.html import to_html
from louverwright.report.job import Job
from louverwright.report.page import Table, as_cell, walk
from louverwright.report.part_sheet import part_sheets

EXAMPLE = "twisted-roof-sagging-ridge"
DROPS = {"drop_left_front": 340.0, "drop_left_back": 300.0, "drop_right_front": 300.0, "drop_right_back": 300.0}


def job(**values: Any) -> Job:
    return job_from_values({"width": 900.0, **values}, "1", Path())


def table(of: Job) -> list[dict[str, str]]:
    """The scribing table's rows by their columns' titles; [] where it is not printed."""
    return [{column.title: as_cell(cell).text.replace("\u00a0", " ") for column, cell in zip(block.columns, row, strict=True)}
            for block in walk(document(of).blocks) if isinstance(block, Table) and block.caption == "Scribe at the roof"
            for row in block.rows]


def test_a_row_for_each_corner_with_its_legs_and_wood() -> None:
    """Only the front left corner is 40 low, 450 out each way; the frame stands 430.95 out and its legs 88.9 along.

    Under that corner the roof lies lowest at its outer arris, 40 · (880.95 / 900)², and highest where the legs end inside:
    40 · (880.95 − 88.9) / 900 · (880.95 − 38.1) / 900.
    """
    rows = table(job(**DROPS, scribe_allowance=10.0))
    assert [row["Corner"] for row in rows] == ["Front left", "Back left", "Back right", "Front right"]
    assert rows[0]["From the axis, level"] == "431 mm front, 431 mm left"
    low, high = 40.0 * (880.95 / 900.0) ** 2, 40.0 * 792.05 / 900.0 * 842.85 / 900.0
    assert (low, high) == (pytest.approx(38.32, abs=0.01), pytest.approx(32.97, abs=0.01))
    assert (rows[0]["Roof lower by"], rows[0]["Wood left"], rows[0]["To scribe off"]) == (
        "38.5 mm", "48.5 mm", "10 mm to 15.5 mm")
    assert rows[2]["Roof lower by"] == "0.5 mm"


def test_the_marks_in_the_table_are_all_legs_each_as_often_as_it_is_cut() -> None:
    of = job_of(EXAMPLE)
    legs = [mark for row in table(of) for mark in row["Legs"].split(", ")]
    counted = {part.mark: part.count for part in of.assembly.parts if part.kind.id.startswith("base.leg.")}
    assert {mark: legs.count(mark) for mark in legs} == counted and len(legs) == 8


@pytest.mark.parametrize("more", [{"sides": 6, "width": 1_100.0}, {"sides": 8, "width": 1_200.0, "king_post_stock": "6x6"},
                                  {"sides": 6, "width": 1_100.0, "facing": "corner"}, {"facing": "corner"}])
def test_corners_of_other_plans_are_told_apart(more: dict[str, Any]) -> None:
    rows = table(job(**{**DROPS, **more}))
    assert len({row["From the axis, level"] for row in rows}) == len(rows) == more.get("sides", 4)
    assert all(row["Corner"] for row in rows)


def test_the_survey_says_the_slopes_in_use_the_drops_and_the_twist() -> None:
    of = job(**{**DROPS, "drop_right_back": 320.0}, pitch_left=10.0)
    rows = {label: text.replace("\u00a0", " ") for label, text in survey_rows(of)}
    assert rows["Left slope"].startswith("33.7°") and rows["Right slope"].startswith("33.7°")
    assert rows["Drops left, front and back"] == "340 mm and 300 mm"
    assert (rows["Twist of the left slope"], rows["Twist of the right slope"]) == ("40 mm", "20 mm")
    assert rows["Lower in front, both slopes' mean"] == "10 mm"
    assert parameter_text(of, "pitch_left") == "10.00° (left aside: the drops give the slope)"
    back = {label for label, _ in survey_rows(job(**{**DROPS, "drop_left_front": 300.0, "drop_left_back": 310.0}))}
    assert "Lower at the back, both slopes' mean" in back
    level = dict(survey_rows(job(**dict.fromkeys(DROPS, 300.0))))
    assert level["Ridge and slopes"] == "as low in front as at the back"


def test_the_paper_says_what_becomes_of_the_soles() -> None:
    of = job_of(EXAMPLE)
    (words,) = [text for text in strings_of(document(of)) if "Soles are cut to these slopes: pack them" in text]
    assert "500\u00a0mm along and 500\u00a0mm across" in words
    assert "Cladding and corner boards are long enough" in words and "to stand 13\u00a0mm clear of the covering" in words
    assert "Scribe at the roof" in to_html(document(of), "A4")


def test_a_legs_block_says_how_much_its_foot_keeps() -> None:
    kept = {sheet.mark: dict(sheet.facts).get("To scribe", "") for sheet in part_sheets(job_of(EXAMPLE))}
    wood = {mark: row["Wood left"] for row in table(job_of(EXAMPLE)) for mark in row["Legs"].split(", ")}
    assert {mark: text.replace("\u00a0", " ") for mark, text in kept.items() if text and mark in wood} == {
        mark: f"{text} of its length, plumb at the foot, is scribing wood: do not add it again" for mark, text in wood.items()}


def test_a_boards_block_says_how_much_longer_its_blank_is_than_on_the_slopes_in_use() -> None:
    """The scribing wood of cladding and corner boards is what the blank has more than on a true roof of the same slopes."""
    of = job(**DROPS, scribe_allowance=10.0, ridge_cap_height=0.0)
    true = job(**dict.fromkeys(DROPS, 300.0), scribe_allowance=10.0, ridge_cap_height=0.0)
    plain = {piece.id: part.board.length for part in true.assembly.parts for piece in part.pieces}
    seen = set()
    for sheet in (sheet for sheet in part_sheets(of) if sheet.part.kind.id.startswith(("base.cladding.", "base.corner."))):
        for piece in sheet.part.pieces:
            more = of.writer.length(sheet.part.board.length - plain[piece.id])
            told = dict(sheet.facts).get("To scribe", "")
            if more == of.writer.length(0.0):
                assert not told
            else:
                assert told == (f"{more} of its length, plumb at the foot, is scribing wood: do not add it again; "
                                f"scribe the foot to stand {of.writer.length(13.0)} clear of the covering")
                seen.add(sheet.part.kind.id)
    assert seen == {"base.cladding.gable", "base.cladding.eave", "base.corner.gable", "base.corner.eave"}


def test_a_roof_that_was_not_read_prints_no_table() -> None:
    plain, scribed = job(), job(scribe_allowance=20.0)
    assert table(plain) == table(scribed) == []
    assert not [label for label, _ in survey_rows(plain) if "wist" in label or "Drops" in label]
    assert parameter_text(plain, "drop_left_front") == "not measured"
    assert not [sheet for sheet in part_sheets(plain) if sheet.scribe]
    assert {sheet.scribe.replace("\u00a0", " ") for sheet in part_sheets(scribed) if sheet.scribe} == {
        "20 mm of its length, plumb at the foot, is scribing wood: do not add it again"}


def test_a_leg_that_has_no_mirror_image_says_so() -> None:
    """On a roof that is lower at every corner by something else, no leg at a gable side has a mate."""
    alone = "the only one of its hand: never cut it mirrored"
    gable = {sheet.mark: sheet.hand for sheet in part_sheets(job_of(EXAMPLE)) if sheet.part.kind.id == "base.leg.gable"}
    assert set(gable.values()) == {alone} and len(gable) == 4
    plain = [sheet for sheet in part_sheets(job()) if sheet.hand == alone]
    assert plain == [], "a true roof has none"
