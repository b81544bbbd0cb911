# SPDX-License-Identifier: LGPL-2.1-or-later
"""Papers for the shop and the cut list in a spreadsheet, in FreeCAD's window."""

from __future__ import annotations

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle
from panels import press, widget, window
from PySide import QtGui

from louverwright.commands import papers
from louverwright.commands.new_vent import new_vent
from louverwright.exchange.paper_sets import SETS
from louverwright.features.cut_list import cut_list_of

pytestmark = pytest.mark.usefixtures("in_workbench", "no_panel_left")


@pytest.fixture
def vent():
    return new_vent(FreeCAD.newDocument("Barn"))


@pytest.fixture
def opened(monkeypatch):
    paths = []
    monkeypatch.setattr(papers, "open_in_viewer", lambda path: paths.append(path) or True)
    return paths


def open_panel(folder, *names):
    """Opens the panel with these sets ticked."""
    FreeCADGui.runCommand("Louverwright_Papers", 0)
    settle(0.3)
    widget("PapersFolder").setText(str(folder))
    for each in SETS:
        widget(f"Papers_{each.name}").setChecked(each.name in names)


def listed():
    files = widget("PapersWritten")
    return [files.item(row).text() for row in range(files.count())]


def test_the_sets_that_are_ticked_are_written_and_listed(vent, opened, tmp_path, shot) -> None:
    steps = vent.Document.UndoCount
    open_panel(tmp_path / "papers", "lift", "checks")
    widget("WritePapers").click()
    settle(1.0)
    assert listed() == ["lift-plan.html", "lift-plan.pdf", "checks.html", "checks.pdf", "checks.json"]
    assert sorted(path.name for path in (tmp_path / "papers").iterdir()) == sorted(listed())
    assert widget("PapersSaid").text().startswith("5 files are written.")
    shot("papers")
    widget("PapersWritten").itemActivated.emit(widget("PapersWritten").item(0))
    widget("OpenPapersFolder").click()
    assert opened == [tmp_path / "papers" / "lift-plan.html", tmp_path / "papers"]
    assert vent.Document.UndoCount == steps, "nothing in the document is changed"
    press(QtGui.QDialogButtonBox.Close)
    assert not FreeCADGui.Control.activeDialog()


def test_it_stops_between_two_sets(vent, tmp_path) -> None:
    open_panel(tmp_path, "lift", "checks")
    write, stop = widget("WritePapers"), widget("StopPapers")
    widget("PapersProgress").valueChanged.connect(lambda value: stop.click() if value == 1 else None)
    write.click()
    settle(1.0)
    assert listed() == ["lift-plan.html", "lift-plan.pdf"]
    assert widget("PapersSaid").text().startswith("Stopped.") and write.isEnabled() and not stop.isEnabled()


def test_it_says_why_it_cannot(vent, tmp_path) -> None:
    (tmp_path / "file").write_text("no folder", encoding="utf-8")
    open_panel(tmp_path / "file", "lift")
    widget("WritePapers").click()
    settle(0.6)
    assert "could not be written to the folder" in widget("PapersSaid").text() and listed() == []
    vent.Width = 5000.0
    widget("WritePapers").click()
    settle(0.3)
    assert "Width is 5000 mm" in widget("PapersSaid").text()
    for each in SETS:
        widget(f"Papers_{each.name}").setChecked(False)
    assert not widget("WritePapers").isEnabled()


def test_the_cut_list_opens_in_a_sheet_and_is_brought_up_to_date(vent, said, shot) -> None:
    steps = vent.Document.UndoCount
    FreeCADGui.runCommand("Louverwright_CutList", 0)
    settle(0.5)
    sheet = cut_list_of(vent)
    assert vent.Document.UndoCount == steps + 1 and sheet.get("A3") == "B1L"
    titles = [each.windowTitle() for each in window().findChild(QtGui.QMdiArea).subWindowList()]
    assert any(sheet.Label in title for title in titles)
    shot("cut_list")
    sheet.set("X1", "mine")
    vent.PitchLeft = 30.0
    vent.Document.recompute()
    before = sheet.get("H2")
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(sheet)
    FreeCADGui.runCommand("Louverwright_CutList", 0)
    settle(0.3)
    assert cut_list_of(vent) == sheet and sheet.get("X1") == "mine" and sheet.get("H2") != before
    vent.Width = 5000.0
    FreeCADGui.runCommand("Louverwright_CutList", 0)
    assert len(said) == 1 and "Width is 5000 mm" in said[0] and sheet.get("X1") == "mine"
