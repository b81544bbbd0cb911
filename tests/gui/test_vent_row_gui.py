# SPDX-License-Identifier: LGPL-2.1-or-later
"""Vents along the ridge in FreeCAD's window: the command, its undo step, the picture, and deleting."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle
from PySide import QtCore, QtGui

sys.path.append(str(Path(__file__).resolve().parents[1] / "host"))
from vents import not_settled

from louverwright.commands.new_vent import new_vent
from louverwright.features.generations import UNDOES_LINKS
from louverwright.features.row import make_row
from louverwright.features.vent import links_of, make_vent

ROW = "Louverwright_VentsAlongRidge"
THREE = {"ridge_length": 12_000.0, "vents": 3, "width": 900.0}


pytestmark = pytest.mark.usefixtures("in_workbench")


@pytest.fixture
def agreeing():
    """Says yes to FreeCAD's own question whether to delete what others refer to."""
    seen = []

    def agree():
        box = QtGui.QApplication.activeModalWidget()
        if box is not None:
            seen.append(box.text() if hasattr(box, "text") else box.windowTitle())
            box.accept() if not hasattr(box, "button") else box.button(QtGui.QMessageBox.Yes).click()

    timer = QtCore.QTimer()
    timer.timeout.connect(agree)
    timer.start(200)
    yield seen
    timer.stop()


def run(name):
    FreeCADGui.runCommand(name, 0)
    settle(0.2)


def select(*objects):
    FreeCADGui.Selection.clearSelection()
    for obj in objects:
        FreeCADGui.Selection.addSelection(obj.Document.Name, obj.Name)
    settle(0.1)


def test_the_command_makes_and_takes_away_links_in_one_step_each(said) -> None:
    document = FreeCAD.newDocument("Barn")
    vent = make_vent(document, width=900.0)
    run(ROW)
    assert len(said) == 1 and said[0].startswith("Vents is 1, so the vent stands alone.")
    said.clear()
    vent.Vents, vent.RidgeLength = 3, 12_000.0
    document.recompute()
    steps = document.UndoCount
    run(ROW)
    assert (len(links_of(vent)), document.UndoCount) == (2, steps + UNDOES_LINKS)
    if UNDOES_LINKS:
        run("Std_Undo")
        assert links_of(vent) == []
        run("Std_Redo")
        document.recompute()
    assert [round(link.Placement.Base.x) for link in links_of(vent)] == [4_000, 8_000]
    vent.Vents = 1
    document.recompute()
    run(ROW)
    assert links_of(vent) == [] and not_settled(document) == []
    assert said == []


def test_a_refusal_is_told(said) -> None:
    vent = make_vent(FreeCAD.newDocument("Barn"), width=900.0)
    vent.Vents = 3
    vent.Document.recompute()
    run(ROW)
    assert said == [vent.getStatusString()]
    assert said[0].startswith("Ridge length is not given: 3 vents share the ridge")


def test_the_row_is_made_by_new_vent_in_one_step_and_is_seen(shot) -> None:
    document = FreeCAD.newDocument("Barn")
    vent = new_vent(document, **THREE)
    FreeCADGui.activeView().viewIsometric()
    FreeCADGui.SendMsgToActiveView("ViewFit")
    settle(0.7)
    shot("row")
    assert (len(links_of(vent)), document.UndoCount) == (2, 1)
    assert all(link.ViewObject.Visibility for link in links_of(vent))
    run("Std_Undo")
    assert document.Objects == []


def test_a_link_that_is_selected_stands_for_the_vent(said) -> None:
    document = FreeCAD.newDocument("Barn")
    first, second = make_row(document, **THREE), make_row(document, **THREE)
    assert not FreeCADGui.Command.get(ROW).isActive()
    second.Vents = 2
    document.recompute()
    select(links_of(second)[1])
    run(ROW)
    assert (len(links_of(first)), len(links_of(second))) == (2, 1)


def test_deleting_the_vent_deletes_its_links(agreeing) -> None:
    document = FreeCAD.newDocument("Barn")
    vent = make_row(document, **THREE)
    box = document.addObject("Part::Box", "Box")
    select(vent)
    run("Std_Delete")
    settle(0.3)
    assert document.Objects == [box]
    run("Std_Undo")
    document.recompute()
    assert len(links_of(document.getObject("Vent"))) == 2
    if UNDOES_LINKS:
        run("Std_Redo")
        assert document.Objects == [box]


def test_a_link_alone_can_be_deleted_and_comes_back(said, agreeing) -> None:
    vent = make_row(FreeCAD.newDocument("Barn"), **THREE)
    select(links_of(vent)[0])
    run("Std_Delete")
    assert [link.RowNumber for link in links_of(vent)] == [3]
    run(ROW)
    assert [link.RowNumber for link in links_of(vent)] == [2, 3]
