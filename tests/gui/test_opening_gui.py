# SPDX-License-Identifier: LGPL-2.1-or-later
"""The opening in a roof in FreeCAD's window: made by its command, seen, undone and deleted in one step each."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle
from PySide import QtGui

sys.path.append(str(Path(__file__).resolve().parents[1] / "host"))
from roofs import THICK, TURNED, feature, roof_shape
from vents import not_settled

from louverwright.core.figures import figures
from louverwright.features.model import spec_of
from louverwright.features.opening import opening_of
from louverwright.features.roof_reading import RoofPick, read_roof
from louverwright.features.seat import stand_on
from louverwright.features.standing import global_placement
from louverwright.features.vent import make_vent

COMMAND = "Louverwright_RoofOpening"
COLOUR = (0.70, 0.35, 0.30)
pytestmark = pytest.mark.usefixtures("in_workbench")


@pytest.fixture
def document():
    found = FreeCAD.newDocument("Barn")
    found.UndoMode = 1
    settle(0.2)
    return found


@pytest.fixture
def roof(document):
    found = feature(document, roof_shape(), place=TURNED)
    found.ViewObject.ShapeColor = COLOUR
    document.recompute()
    return found


@pytest.fixture
def vent(document, roof):
    found = make_vent(document)
    stand_on(found, read_roof(RoofPick(roof)))
    document.recompute()
    return found


def run(name):
    FreeCADGui.runCommand(name, 0)
    settle(0.4)


def select(*objects):
    FreeCADGui.Selection.clearSelection()
    for obj in objects:
        FreeCADGui.Selection.addSelection(obj.Document.Name, obj.Name)
    settle(0.1)


def is_active():
    return FreeCADGui.Command.get(COMMAND).isActive()


def look_down_on(vent, high=2200.0):
    """The 3D view from above, so many mm of it, with the vent's axis in the middle and nothing selected."""
    select()
    view, place = FreeCADGui.activeView(), global_placement(vent).Base
    view.setAnimationEnabled(False)
    view.viewTop()
    FreeCADGui.SendMsgToActiveView("ViewFit")
    camera = view.getCameraNode()
    camera.position.setValue(place.x, place.y, camera.position.getValue()[2])
    camera.height.setValue(high)
    settle(0.7)


def background(image):
    """How many of the pixels round the view's middle, every fourth each way, are as blue as the empty view is."""
    area = FreeCADGui.getMainWindow().centralWidget()
    middle = area.mapToGlobal(area.rect().center())
    colours = [QtGui.QColor.fromRgba(image.pixel(middle.x() + x, middle.y() + y))
               for x in range(-40, 41, 4) for y in range(-40, 41, 4)]
    return sum(colour.blue() > colour.red() + 20 for colour in colours) / len(colours)


def test_it_is_active_for_a_vent_on_a_drawn_roof(document, roof) -> None:
    assert not is_active()
    found = make_vent(document)
    assert not is_active()
    stand_on(found, read_roof(RoofPick(roof)))
    document.recompute()
    assert is_active()
    select(roof, found)
    assert is_active()


def test_the_command_cuts_hides_and_is_one_step(document, roof, vent, shot, said) -> None:
    vent.ViewObject.Visibility = False
    look_down_on(vent)
    assert background(shot("opening_before")) == 0.0
    steps = document.UndoCount
    select(vent)
    run(COMMAND)
    opening = opening_of(vent)
    area = figures(spec_of(vent))["roof_opening_area"]
    assert said == []
    assert roof.Shape.Volume - opening.Shape.Volume == pytest.approx(area * THICK, rel=1e-6)
    assert (roof.ViewObject.Visibility, opening.ViewObject.Visibility) == (False, True)
    assert opening.ViewObject.ShapeColor[:3] == pytest.approx(COLOUR, abs=0.01)
    assert FreeCADGui.Selection.getSelection() == [opening]
    assert Path(opening.ViewObject.Proxy.getIcon()).name == "roof_opening.svg"
    assert opening.ViewObject.claimChildren() == []
    assert document.UndoCount == steps + 1 and document.UndoNames[0] == "Roof opening"
    assert not_settled(document) == []
    look_down_on(vent)
    assert background(shot("opening_cut")) > 0.98    # but for a line of FreeCAD's own
    run("Std_Undo")
    assert opening_of(vent) is None and roof.ViewObject.Visibility and roof.Visibility
    run("Std_Redo")
    document.recompute()
    opening = opening_of(vent)
    assert not roof.ViewObject.Visibility and opening.ViewObject.Visibility
    assert opening.ViewObject.Proxy.__class__.__name__ == "OpeningView"
    assert opening.Shape.Volume == pytest.approx(roof.Shape.Volume - area * THICK, rel=1e-9)


def test_with_the_vent_on_it_and_a_ridge_board_left(document, roof, vent, shot) -> None:
    run(COMMAND)
    opening = opening_of(vent)
    opening.RidgeBoard = 38.0
    document.recompute()
    look_down_on(vent, 12_000.0)
    shot("opening_with_vent")
    vent.ViewObject.Visibility = False
    look_down_on(vent)
    assert 0.3 < background(shot("opening_ridge_board")) < 0.95
    assert len(roof.Shape.cut(opening.Shape).Solids) == 2


def test_deleting_it_shows_the_roof_in_the_same_step(document, roof, vent) -> None:
    run(COMMAND)
    opening, steps = opening_of(vent), document.UndoCount
    select(opening)
    run("Std_Delete")
    assert opening_of(vent) is None and roof.ViewObject.Visibility
    assert document.UndoCount == steps + 1
    run("Std_Undo")
    document.recompute()
    assert opening_of(vent) is not None and not roof.ViewObject.Visibility
    assert opening_of(vent).Hides == [roof]
    assert not_settled(document) == []


def test_a_refusal_is_told_and_leaves_nothing(document, roof, vent, said) -> None:
    run(COMMAND)
    steps, count = document.UndoCount, len(document.Objects)
    select(vent)
    run(COMMAND)
    assert len(said) == 1 and "has its opening already" in said[0]
    assert (document.UndoCount, len(document.Objects)) == (steps, count)


def test_opened_again_it_has_its_view_and_the_roof_stays_hidden(document, roof, vent, tmp_path) -> None:
    run(COMMAND)
    name = opening_of(vent).Name
    document.saveAs(str(tmp_path / "barn.FCStd"))
    path = document.FileName
    FreeCAD.closeDocument(document.Name)
    document = FreeCAD.openDocument(path)
    settle()
    opening = document.getObject(name)
    assert opening.ViewObject.Proxy.__class__.__name__ == "OpeningView"
    assert opening.ViewObject.Visibility and not document.getObject("Roof").ViewObject.Visibility
    assert not_settled(document) == []
    opening.Vent.AlongRidge = 700.0
    document.recompute()
    area = figures(spec_of(opening.Vent))["roof_opening_area"]
    assert opening.Shape.Volume == pytest.approx(roof_shape().Volume - area * THICK, rel=1e-9)
