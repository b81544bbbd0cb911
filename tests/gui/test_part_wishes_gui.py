# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is wished for a kind of part, set where the user sets it: in the property editor of the part that is chosen."""

from __future__ import annotations

import json
import sys
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle
from PySide import QtCore, QtGui

sys.path.append(str(Path(__file__).resolve().parents[1] / "host"))
from vents import model, not_settled, part

from louverwright.features.model import spec_of
from louverwright.features.vent import make_vent

LEG, CLADDING = "base.leg.gable", "base.cladding.gable"
pytestmark = pytest.mark.usefixtures("in_workbench")


@pytest.fixture
def vent(tmp_path):
    """A vent whose list has oak of the frame's section, seen from a corner, with undo as in the window."""
    path = tmp_path / "own.json"
    path.write_text(json.dumps({"name": "own", "base": "us", "items": [{
        "name": "oak 2x4", "form": "dimension", "thickness": 38.1, "width": 88.9, "lengths": [3_000], "density": 900,
        "material": "oak"}]}), encoding="utf-8")
    document = FreeCAD.newDocument("Barn")
    made = make_vent(document, stock_list=str(path))
    document.clearUndos()
    view = FreeCADGui.activeView()
    view.setAnimationEnabled(False)
    view.viewIsometric()
    FreeCADGui.SendMsgToActiveView("ViewFit")
    settle(0.5)
    return made


@pytest.fixture(autouse=True)
def editor():
    """The property editor of an object's data, in a side bar that is shown for the test."""
    found = [each for each in FreeCADGui.getMainWindow().findChildren(QtGui.QTreeView)
             if each.metaObject().className() == "Gui::PropertyEditor::PropertyEditor"]
    bars = [bar for bar in FreeCADGui.getMainWindow().findChildren(QtGui.QDockWidget)
            if any(bar.isAncestorOf(each) for each in found) and not bar.isVisible()]
    for bar in bars:
        bar.show()
    settle()
    yield found
    for bar in bars:
        bar.hide()


def rows(table, parent=None):
    """Every row of a property editor: its name's index and its value's."""
    parent = parent or QtCore.QModelIndex()
    for number in range(table.rowCount(parent)):
        name = table.index(number, 0, parent)
        yield name, table.index(number, 1, parent)
        yield from rows(table, name)


def write(editor, obj, name, value):
    """Chooses the object and writes a value into the property editor's row; one step to undo."""
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(obj)
    settle(0.6)
    (table, cell), = [(each.model(), cell) for each in editor if each.model() is not None
                      for title, cell in rows(each.model()) if title.data().replace(" ", "") == name]
    obj.Document.openTransaction(name)
    assert table.setData(cell, value, QtCore.Qt.EditRole)
    obj.Document.recompute()
    obj.Document.commitTransaction()
    FreeCADGui.Selection.clearSelection()
    settle(0.3)


def view_shown(path):
    """What the 3D view shows, drawn apart from the window and its bars; saved as a picture."""
    settle(0.1)
    FreeCADGui.activeView().saveImage(str(path), 800, 600, "White")
    return QtGui.QImage(str(path))


def differs(one, other):
    """How many pixels, of each ninth, of two pictures are not the same."""
    assert one.size() == other.size() and one.width() == 800
    return sum(one.pixel(x, y) != other.pixel(x, y) for x in range(0, one.width(), 3) for y in range(0, one.height(), 3))


def test_a_part_is_left_out_in_the_property_editor_and_made_again_by_undo(vent, editor, shots):
    document, cladding = vent.Document, part(vent, CLADDING)
    before, shown = model(vent), view_shown(shots / "wish_before.png")
    assert cladding.ViewObject.isVisible() and cladding.Count
    write(editor, cladding, "LeftOut", True)
    assert cladding.LeftOut and cladding.Count == 0 and not cladding.ViewObject.isVisible() and not_settled(document) == []
    assert vent.PiecesLeftOut > 0
    gone = view_shown(shots / "wish_left_out.png")
    assert differs(shown, gone) > 100
    document.undo()
    settle()
    assert not cladding.LeftOut and cladding.ViewObject.isVisible() and model(vent) == before
    document.recompute()
    assert model(vent) == before and not_settled(document) == []
    back = view_shown(shots / "wish_made_again.png")
    assert differs(shown, back) < differs(shown, gone) / 10
    document.redo()
    settle()
    assert cladding.Count == 0 and not cladding.ViewObject.isVisible()
    write(editor, cladding, "LeftOut", False)
    assert cladding.ViewObject.isVisible() and model(vent) == before and not_settled(document) == []


def test_own_stock_is_written_in_the_property_editor_refused_in_words_and_undone(vent, editor):
    document, leg = vent.Document, part(vent, LEG)
    before, weight = model(vent), vent.TotalWeight
    write(editor, leg, "OwnStock", "oak 2x4")
    assert leg.Stock == "oak 2x4" and vent.TotalWeight > weight and not_settled(document) == []
    assert {kind for kind, wish in spec_of(vent).parts.items() if wish.stock_name} == {LEG}
    document.undo()
    settle()
    assert leg.OwnStock == "" and model(vent) == before and vent.TotalWeight == pytest.approx(weight)
    write(editor, leg, "OwnStock", "2x6")
    assert not vent.isValid() and "the vent is laid out from" in vent.getStatusString()
    document.undo()
    document.recompute()
    settle()
    assert vent.isValid() and leg.OwnStock == "" and model(vent) == before
