# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cut list as a spreadsheet in the document: the same rows as the CSV, and what the user writes beside them stays."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD
import pytest

sys.path.append(str(Path(__file__).resolve().parent))
from vents import model, not_settled

from louverwright.exchange.papers import job_from_values
from louverwright.features.cut_list import GONE, NOTES, CutList, cut_list_of, update_cut_list
from louverwright.features.model import wishes_of
from louverwright.features.properties import values_of
from louverwright.features.vent import delete_vent, make_vent
from louverwright.report.csv_file import COUNT_COLUMNS, HEAD, HEAD_ROWS, KEY_COLUMNS, cut_list_rows

NOTE, MORE = "X", "Y"    # the columns right of ours
FORMULA = "=danger <b>"


@pytest.fixture
def document():
    made = FreeCAD.newDocument("Barn")
    name = made.Name
    made.UndoMode = 1
    yield made
    if name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)


@pytest.fixture
def vent(document):
    return make_vent(document, project=FORMULA)


def listed(vent) -> CutList:
    job = job_from_values(values_of(vent), vent.Revision, parts=wishes_of(vent))
    return CutList(cut_list_rows(job), HEAD_ROWS, KEY_COLUMNS, COUNT_COLUMNS)


def update(vent):
    """As the command does it."""
    vent.Document.openTransaction("Cut list")
    sheet = update_cut_list(vent, listed(vent))
    vent.Document.commitTransaction()
    vent.Document.recompute()
    return sheet


def text(sheet, cell) -> str:
    """What a cell shows; '' for an empty one."""
    return str(sheet.get(cell)) if cell in sheet.PropertiesList else ""


def row_of(sheet, mark: str, what: str = "") -> int:
    """The first row of a mark, or of one of its cuts."""
    return next(row for row in range(3, 400) if text(sheet, f"A{row}") == mark and what in text(sheet, f"T{row}"))


def test_it_has_the_rows_of_the_csv_as_text(vent) -> None:
    sheet = update(vent)
    rows = listed(vent).rows
    assert len(HEAD) == 23 and len(rows) > 100
    for number, row in enumerate(rows, 1):
        assert [text(sheet, f"{chr(65 + column)}{number}") for column in range(len(HEAD))] == list(row)
    assert text(sheet, f"A{len(rows) + 1}") == "" and text(sheet, f"{NOTE}1") == NOTES
    assert sheet.get("B2") == FORMULA and sheet.getTypeIdOfProperty("B2") == "App::PropertyString"
    assert isinstance(sheet.get("C3"), int), "a count can be reckoned with"
    assert not_settled(vent.Document) == []


def test_what_the_user_writes_stays_with_its_cut(vent) -> None:
    sheet = update(vent)
    slat = row_of(sheet, "L9", "square")
    sheet.set(f"{NOTE}{slat}", "'=from the dry stack")
    sheet.set(f"{MORE}{slat}", f"=C{slat} * 2")
    sheet.set(f"{NOTE}{row_of(sheet, 'L1')}", "first plank")
    sheet.set(f"{NOTE}{row_of(sheet, 'B1L')}", "first leg")
    sheet.set(f"{MORE}1", "paid")
    assert not vent.OutList.count(sheet) and not sheet.OutList
    vent.PitchLeft = 30.0    # further marks of the base
    vent.Document.recompute()
    assert update(vent) == sheet == cut_list_of(vent)
    moved = row_of(sheet, "L9", "square")
    assert moved > slat
    assert (text(sheet, f"{NOTE}{moved}"), sheet.get(f"{MORE}{moved}")) == ("=from the dry stack", 2 * sheet.get(f"C{moved}"))
    assert sheet.getContents(f"{MORE}{moved}").replace(" ", "") == f"=C{moved}*2"
    assert text(sheet, f"{NOTE}{row_of(sheet, 'L1')}") == "first plank" and text(sheet, f"{MORE}1") == "paid"
    last = len(listed(vent).rows)
    assert "B1L" not in {row[0] for row in listed(vent).rows}, "the legs are B1aL, B1aR … now"
    notes = [row for row in range(2, 400) if text(sheet, f"{NOTE}{row}")]
    assert notes == [row_of(sheet, "L1"), moved, last + 2], "nothing is written twice"
    assert (text(sheet, f"A{last + 2}"), text(sheet, f"{NOTE}{last + 2}")) == ("B1L", "first leg")


def test_notes_on_what_is_gone_go_to_the_bottom_and_come_back(vent) -> None:
    sheet = update(vent)
    last = len(listed(vent).rows)
    screen = row_of(sheet, "L15")
    kept = text(sheet, f"B{screen}"), text(sheet, f"T{screen}")
    sheet.set(f"{NOTE}{screen}", "ask for copper")
    sheet.set(f"{MORE}{screen}", "'12'")
    vent.Screen = False
    vent.Document.recompute()
    for _ in range(2):    # once more changes nothing
        update(vent)
        count = len(listed(vent).rows)
        assert count < last and text(sheet, f"A{count + 1}") == GONE
        assert [text(sheet, f"{letters}{count + 2}") for letters in ("A", "B", "T", NOTE, MORE)] == [
            "L15", *kept, "ask for copper", "12'"]
        assert text(sheet, f"A{count + 3}") == ""
    vent.Screen = True
    vent.Document.recompute()
    update(vent)
    assert text(sheet, f"{NOTE}{screen}") == "ask for copper" and text(sheet, f"A{last + 1}") == ""
    assert not_settled(vent.Document) == []


def test_it_is_one_step_to_undo(vent) -> None:
    document = vent.Document
    before, steps = model(vent), document.UndoCount
    sheet = update(vent)
    assert document.UndoCount == steps + 1
    sheet.set(f"{NOTE}3", "mine")
    sheet.recompute()
    vent.PitchLeft = 30.0
    document.recompute()
    rows = len(listed(vent).rows)
    update(vent)
    assert text(sheet, f"A{rows}")
    document.undo()
    document.recompute()
    assert not text(sheet, f"A{rows}") and text(sheet, f"{NOTE}3") == "mine"
    document.undo()
    assert cut_list_of(vent) is None
    vent.PitchLeft = before[0]["PitchLeft"].split()[0] + " deg"
    document.recompute()
    assert model(vent) == before and not_settled(document) == []


def test_a_vent_may_be_driven_by_spreadsheets_even_by_this_one(vent, tmp_path) -> None:
    document = vent.Document
    sizes = document.addObject("Spreadsheet::Sheet", "Sizes")
    sizes.set("A1", "=950 mm")
    document.recompute()
    vent.setExpression("Width", "Sizes.A1")
    sheet = update(vent)
    sheet.set("Z1", "=30 deg")
    document.recompute()
    vent.setExpression("PitchLeft", f"{sheet.Name}.Z1")
    document.recompute()
    update(vent)
    sizes.set("A1", "=1000 mm")
    document.recompute()
    assert (vent.Width.Value, vent.PitchLeft.Value) == pytest.approx((1000.0, 30.0))
    update(vent)
    assert not_settled(document) == [] and f"fingerprint {listed(vent).rows[1][7][12:]}" == text(sheet, "H2")
    sheet.set(f"{NOTE}3", "mine")
    document.recompute()
    document.saveAs(str(tmp_path / "barn.FCStd"))
    FreeCAD.closeDocument(document.Name)
    again = FreeCAD.openDocument(str(tmp_path / "barn.FCStd"))
    try:
        opened = again.getObject("Vent")
        assert text(cut_list_of(opened), f"{NOTE}3") == "mine"
        assert text(update(opened), f"{NOTE}3") == "mine"
        delete_vent(opened)
        assert text(again.getObject("CutList"), f"{NOTE}3") == "mine", "what the user has written is not deleted with the vent"
    finally:
        FreeCAD.closeDocument(again.Name)
