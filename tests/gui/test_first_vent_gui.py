# SPDX-License-Identifier: LGPL-2.1-or-later
"""The way of a new user, from somebody's barn model to a printed report, with a picture of each step.

``resources/documentation/first-vent.sh`` keeps the pictures for the guide.
"""

from __future__ import annotations

import sys
from math import atan, degrees
from pathlib import Path

import FreeCAD
import FreeCADGui
import Part
import pytest
from conftest import settle
from FreeCAD import Placement, Rotation, Vector
from panels import press, press_ok, type_into, widget
from PySide import QtCore, QtGui

sys.path.append(str(Path(__file__).resolve().parents[1] / "host"))
from roofs import face_names, prism
from vents import near, not_settled

from louverwright.features.standing import global_placement

#: A barn of our own: 12.4 m long, 7.2 m wide, 9 in 12 on both sides, somewhere on a site plan.
LONG, HALF, EAVE, PITCH, THICK = 12_400.0, 3_600.0, 3_000.0, degrees(atan(0.75)), 180.0
PLACE = Placement(Vector(8_000.0, 5_000.0, EAVE + HALF * 0.75), Rotation(Vector(0, 0, 1), 25.0))
pytestmark = pytest.mark.usefixtures("in_workbench")


def somebodys_barn(folder):
    """A barn as others draw it: walls and a thick roof in a part, saved and closed."""
    document = FreeCAD.newDocument("SomebodysBarn")
    barn = document.addObject("App::Part", "Barn")
    rise = HALF * 0.75
    over, fall = HALF + 400.0, (HALF + 400.0) * 0.75
    roof = document.addObject("Part::Feature", "Roof")
    roof.Shape = prism([(over, -fall), (0.0, 0.0), (-over, -fall), (-over, -fall - THICK), (0.0, -THICK),
                        (over, -fall - THICK)], 0.0, LONG)
    walls = document.addObject("Part::Feature", "Walls")
    outside = prism([(HALF, -rise - EAVE), (HALF, -rise - THICK), (0.0, -THICK), (-HALF, -rise - THICK),
                     (-HALF, -rise - EAVE)], 300.0, LONG - 300.0)
    inside = prism([(HALF - 200, -rise - EAVE), (HALF - 200, -rise - THICK), (0.0, -THICK - 100),
                    (-HALF + 200, -rise - THICK), (-HALF + 200, -rise - EAVE)], 500.0, LONG - 500.0)
    walls.Shape = outside.cut(inside).cut(Part.makeBox(400, 3_000, 2_800, Vector(LONG - 600, -1_500, -rise - EAVE)))
    barn.addObjects([roof, walls])
    barn.Placement = PLACE
    document.recompute()
    roof.ViewObject.ShapeColor, walls.ViewObject.ShapeColor = (0.45, 0.47, 0.5), (0.8, 0.75, 0.65)
    path = folder / "somebodys-barn.FCStd"
    document.saveAs(str(path))
    FreeCAD.closeDocument(document.Name)
    return path


def look(*obj):
    """Seen from a corner, near enough."""
    view = FreeCADGui.activeView()
    view.setAnimationEnabled(False)
    view.viewIsometric()
    FreeCADGui.Selection.clearSelection()
    for each in obj:
        FreeCADGui.Selection.addSelection(each)
    FreeCADGui.SendMsgToActiveView("ViewSelection" if obj else "ViewFit")
    FreeCADGui.Selection.clearSelection()
    settle(0.2)


@pytest.fixture
def tidy_window():
    """The window as for a picture, without consoles; afterwards with them."""
    window = FreeCADGui.getMainWindow()
    docks = window.findChildren(QtGui.QDockWidget)
    consoles = [dock for dock in docks if dock.isVisible() and dock.objectName() in ("Python console", "Report view")]
    for dock in consoles:
        dock.hide()
    settle(0.3)
    yield
    for dock in consoles:
        dock.show()
    settle(0.2)


def give_the_panel_room():
    """Pulls the panel as wide as a user would."""
    window = FreeCADGui.getMainWindow()
    side = [dock for dock in window.findChildren(QtGui.QDockWidget)
            if dock.isVisible() and window.dockWidgetArea(dock) == QtCore.Qt.LeftDockWidgetArea]
    window.resizeDocks(side[:1], [430], QtCore.Qt.Horizontal)
    settle(0.3)


def run(name):
    assert FreeCADGui.Command.get(name).isActive(), f"{name} cannot be used here"
    FreeCADGui.runCommand(name, 0)
    settle(0.5)


def test_from_somebodys_barn_to_the_paper(tidy_window, tmp_path, shot, monkeypatch) -> None:
    # 1. open the model that is there
    document = FreeCAD.openDocument(str(somebodys_barn(tmp_path)))
    FreeCADGui.activateWorkbench("LouverwrightWorkbench")
    settle(0.5)
    look()
    shot("first_1_barn")
    barn = document.getObject("Barn")
    before = barn.Placement, document.Roof.Shape.Volume

    # 2. select the roof's two slopes, and "New vent"
    left, right = (face_names(barn, "Roof.", PLACE, PITCH, hand)[0] for hand in (1, -1))
    for face in (left, right):
        FreeCADGui.Selection.addSelection(document.Name, "Barn", face)
    settle(0.3)
    shot("first_2_slopes")
    run("Louverwright_NewVent")
    give_the_panel_room()
    assert "36.87° left, 36.87° right" in widget("RoofWords").text()
    shot("first_3_panel")

    # 3. say where and how large
    widget("FromEnd").setCurrentIndex(1)
    widget("FromEnd").activated.emit(1)
    type_into("AlongRidge", "6200")
    type_into("Width", "1100")
    type_into("SlatAngle", "40")
    FreeCADGui.SendMsgToActiveView("ViewFit")
    shot("first_4_sized")
    press_ok()
    vent = document.getObject("Vent")
    assert near(global_placement(vent).Base, PLACE.multVec(Vector(6_200.0, 0.0, 0.0)), 1e-3)
    assert (document.Roof.Shape.Volume, barn.Placement) == (before[1], before[0])
    assert not_settled(document) == []
    look(vent)
    shot("first_5_vent")

    # 4. cut the opening into the roof
    FreeCADGui.Selection.addSelection(vent)
    run("Louverwright_RoofOpening")
    assert not_settled(document) == []
    vent.ViewObject.Visibility = False
    look()
    shot("first_6_opening")
    vent.ViewObject.Visibility = True

    # 5. find a mark, look inside
    FreeCADGui.Selection.addSelection(vent)
    run("Louverwright_PartsAndMarks")
    look(vent)
    type_into("MarkFilter", "L9", 0.2)
    widget("MarkTable").selectRow(0)
    settle(0.4)
    shot("first_7_marks")
    press(QtGui.QDialogButtonBox.Close)
    FreeCADGui.Selection.addSelection(vent)
    run("Louverwright_TakeApart")
    widget("StagesApart").setValue(60)
    settle(0.3)
    look(vent)
    shot("first_8_apart")
    press(QtGui.QDialogButtonBox.Close)

    # 6. print
    from louverwright.commands import cut_report

    opened = []
    monkeypatch.setattr(cut_report, "ask_folder", lambda start: tmp_path)
    monkeypatch.setattr(cut_report, "open_in_viewer", lambda path: opened.append(path.name) or True)
    FreeCADGui.Selection.addSelection(vent)
    run("Louverwright_CutReport")
    assert opened == ["report.html"]
    assert {"report.html", "report.pdf", "cuts.csv", "cuts.json"} <= {path.name for path in tmp_path.iterdir()}
    assert (tmp_path / "report.pdf").stat().st_size > 50_000

    # 7. the barn changes, the vent follows
    barn.Placement = Placement(Vector(0.0, 0.0, 250.0), Rotation()).multiply(barn.Placement)
    document.recompute()
    assert near(global_placement(vent).Base, PLACE.multVec(Vector(6_200.0, 0.0, 0.0)) + Vector(0.0, 0.0, 250.0), 1e-3)
    assert not_settled(document) == []
