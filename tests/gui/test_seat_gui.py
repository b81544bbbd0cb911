# SPDX-License-Identifier: LGPL-2.1-or-later
"""A vent on a roof that is drawn, in FreeCAD's window: picked, seated and sized, moved along the ridge, lost, picked again."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle
from panels import press_cancel, press_ok, type_into, widget

sys.path.append(str(Path(__file__).resolve().parents[1] / "host"))
import roofs
from roofs import LEFT, LONG, RIGHT, TURNED, face_names, feature, roof_shape
from vents import near, not_settled

from louverwright.features.roof_reading import RoofPick, read_roof
from louverwright.features.seat import stand_on
from louverwright.features.standing import global_placement
from louverwright.features.vent import make_vent

NEW, EDIT = "Louverwright_NewVent", "Louverwright_EditVent"
pytestmark = pytest.mark.usefixtures("in_workbench", "no_panel_left")


@pytest.fixture
def document():
    found = FreeCAD.newDocument("Barn")
    settle(0.2)
    return found


@pytest.fixture
def roof(document):
    found = feature(document, roof_shape(), place=TURNED)
    document.recompute()
    return found


def run(name):
    FreeCADGui.runCommand(name, 0)
    settle(0.4)


def pick(obj, *subs):
    FreeCADGui.Selection.clearSelection()
    for sub in subs or ("",):
        FreeCADGui.Selection.addSelection(obj.Document.Name, obj.Name, sub)
    settle(0.1)


def pitches(vent):
    return sorted([vent.PitchLeft.Value, vent.PitchRight.Value])


def on(frame, x):
    return frame.multVec(FreeCAD.Vector(x, 0.0, 0.0))


def words(name):
    return widget(name).text()


@pytest.mark.parametrize("what", ["whole", "two slopes", "ridge"])
def test_new_vent_on_what_is_selected(document, roof, what, shot):
    left, right = face_names(roof, "", TURNED, LEFT, 1)[0], face_names(roof, "", TURNED, RIGHT, -1)[0]
    ridge = next(f"Edge{i + 1}" for i, edge in enumerate(roof.Shape.Edges)
                 if all(abs(TURNED.inverse().multVec(v.Point).z) < 1e-6 for v in edge.Vertexes)
                 and edge.Length > 1000 and all(abs(TURNED.inverse().multVec(v.Point).y) < 1e-6 for v in edge.Vertexes))
    pick(roof, *{"whole": (), "two slopes": (left, right), "ridge": (ridge,)}[what])
    run(NEW)
    FreeCADGui.activeView().viewIsometric()
    FreeCADGui.SendMsgToActiveView("ViewFit")
    assert f"{LONG:.0f} mm" in words("RoofWords")
    assert not widget("PitchLeft").isEnabled()
    shot(f"seat_new_{what.replace(' ', '_')}")
    press_ok()
    vent = document.getObject("Vent")
    assert pitches(vent) == pytest.approx([RIGHT, LEFT])
    assert vent.OverallWidth.Value == pytest.approx(LONG / 12.0 * 1.25)    # sized by the trade's rule
    assert near(global_placement(vent).Base, on(TURNED, LONG / 2.0))
    assert document.UndoNames == ["New vent"]
    assert not_settled(document) == []


def test_the_place_follows_slider_and_number(document, roof, shot):
    pick(roof)
    run(NEW)
    slider = widget("AlongRidgeSlider")
    slider.setValue(0)
    settle(0.3)
    assert words("AlongRidge") == f"-{LONG / 2.0:.0f} mm"
    widget("FromEnd").setCurrentIndex(1)
    widget("FromEnd").activated.emit(1)
    settle(0.2)
    assert words("AlongRidge") == "0 mm"
    type_into("AlongRidge", "2 m")
    shot("seat_two_metres")
    press_ok()
    vent = document.getObject("Vent")
    assert (vent.AlongRidge.Value, vent.FromEnd) == (2000.0, "back")
    assert any(near(global_placement(vent).Base, on(TURNED, x)) for x in (2000.0, LONG - 2000.0))


def test_a_place_past_the_ridge_is_told_and_not_taken(document, roof):
    pick(roof)
    run(NEW)
    type_into("AlongRidge", "99 m")    # on the way "99" is typed, which is 99 mm
    assert "past the end of the ridge" in words("RoofWords")
    press_ok()
    assert document.getObject("Vent").AlongRidge.Value == 99.0


def test_another_unit_is_taken_over_by_the_roofs_own_fields(document, roof):
    pick(roof)
    run(NEW)
    box = widget("PaperUnits").box
    box.setCurrentIndex(box.findData("in"))
    box.activated.emit(box.currentIndex())
    settle(0.3)
    assert words("AlongRidge") == '0"'
    assert "mm" not in words("RoofWords")


def test_a_pick_that_is_no_roof_is_told_and_another_can_be_made(document, roof, shot):
    mesh = document.addObject("Mesh::Feature", "Scan")
    pick(mesh)
    run(NEW)
    assert "mesh" in words("RoofWords").lower()
    shot("seat_refused")
    pick(roof)
    widget("RoofPick").click()
    settle(0.4)
    assert "40.00°" in words("RoofWords")
    press_ok()
    assert pitches(document.getObject("Vent")) == pytest.approx([RIGHT, LEFT])


def test_cancel_after_a_pick_leaves_nothing(document, roof):
    pick(roof)
    run(NEW)
    press_cancel()
    assert document.Objects == [roof]
    assert document.UndoNames == []


def test_left_and_right_are_exchanged_where_it_stands(document, roof):
    vent = make_vent(document)
    stand_on(vent, read_roof(RoofPick(roof)), 2000.0, "back")
    document.recompute()
    place, left = global_placement(vent), vent.PitchLeft.Value
    run(EDIT)
    widget("RoofTurn").click()
    settle(0.3)
    press_ok()
    assert vent.PitchRight.Value == pytest.approx(left)
    assert near(global_placement(vent).Base, place.Base)
    assert not_settled(document) == []


def test_a_lost_roof_is_told_in_the_panel_and_picked_again(document, roof, shot):
    vent = make_vent(document)
    stand_on(vent, read_roof(RoofPick(roof)))
    document.recompute()
    document.removeObject(roof.Name)
    document.recompute()
    other = feature(document, roof_shape(30.0, 25.0), "Other")
    document.recompute()
    run(EDIT)
    assert "ick the roof again" in words("RoofWords")
    shot("seat_lost")
    pick(other)
    widget("RoofPick").click()
    settle(0.3)
    press_ok()
    assert pitches(vent) == pytest.approx([25.0, 30.0])
    assert not_settled(document) == []


def test_it_can_stand_free_again(document, roof):
    vent = make_vent(document)
    stand_on(vent, read_roof(RoofPick(roof)))
    document.recompute()
    place = global_placement(vent)
    run(EDIT)
    widget("RoofFree").click()
    settle(0.3)
    assert widget("PitchLeft").isEnabled()
    press_ok()
    assert vent.RoofSignature == ""
    assert near(global_placement(vent).Base, place.Base)


def test_a_long_ridge_is_given_several_vents(document, shot):
    roof = feature(document, roofs.prism(roofs.section(), 0.0, 30_000.0))
    document.recompute()
    pick(roof)
    run(NEW)
    FreeCADGui.activeView().viewIsometric()
    FreeCADGui.SendMsgToActiveView("ViewFit")
    shot("seat_row_of_three")
    assert widget("Vents").edit.text() == "3"    # 30 m: 98 ft, at most 48 ft each
    press_ok()
    vent = document.getObject("Vent")
    assert vent.Vents == 3
    assert near(global_placement(vent).Base, FreeCAD.Vector(5000.0, 0.0, 0.0)) or near(
        global_placement(vent).Base, FreeCAD.Vector(25_000.0, 0.0, 0.0))


def test_in_a_moved_part_the_picture_and_the_vent_stand_on_the_roof(document):
    site, path, _ = roofs.nested(document)
    document.recompute()
    pick(site, path)
    run(NEW)
    press_ok()
    vent = document.getObject("Vent")
    assert near(global_placement(vent).Base, on(TURNED, LONG / 2.0), 1e-3)
    site.Placement = FreeCAD.Placement(FreeCAD.Vector(0, 0, 500.0), FreeCAD.Rotation()).multiply(site.Placement)
    document.recompute()
    assert near(global_placement(vent).Base, on(TURNED, LONG / 2.0) + FreeCAD.Vector(0, 0, 500.0), 1e-3)
