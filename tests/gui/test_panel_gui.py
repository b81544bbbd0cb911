# SPDX-License-Identifier: LGPL-2.1-or-later
"""The panel of a vent in FreeCAD's window: typed into, dragged, cancelled, accepted, undone."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle
from panels import key, press_cancel, press_ok, type_into, widget
from PySide import QtCore, QtGui

sys.path.append(str(Path(__file__).resolve().parents[1] / "host"))
from vents import model, not_settled

from louverwright.commands.edit_vent import change_vent, edit
from louverwright.features.preferences import GROUP, preferred
from louverwright.features.vent import make_vent
from louverwright.panels.preferences_page import PreferencesPage
from louverwright.view.in_view import graph_of

NEW, EDIT = "Louverwright_NewVent", "Louverwright_EditVent"
pytestmark = pytest.mark.usefixtures("in_workbench", "no_panel_left")


def run(name):
    FreeCADGui.runCommand(name, 0)
    settle(0.4)


def opened():
    """The panel of a new vent in a new document, and the document."""
    document = FreeCAD.newDocument("Barn")
    settle(0.3)
    run(NEW)
    return document


def words(name):
    return widget(name).text()


def test_new_vent_shows_a_picture_before_there_is_a_vent(shot):
    document = FreeCAD.newDocument("Barn")
    settle(0.3)
    nodes = graph_of(document).getNumChildren()
    run(NEW)
    assert document.Objects == []
    assert graph_of(document).getNumChildren() == nodes + 1
    picture = graph_of(document).getChild(nodes)
    shot("panel_new")
    press_ok()
    vent = document.getObject("Vent")
    assert vent is not None
    assert graph_of(document).findChild(picture) < 0
    assert document.UndoNames == ["New vent"]
    assert not_settled(document) == []


def test_cancel_leaves_nothing_not_even_a_document():
    assert FreeCAD.ActiveDocument is None
    run(NEW)
    assert FreeCAD.ActiveDocument is not None
    press_cancel()
    assert list(FreeCAD.listDocuments()) == []


def test_cancel_and_escape_leave_a_document_as_it_was():
    document = opened()
    nodes = graph_of(document).getNumChildren()
    type_into("Width", "1200")
    press_cancel()
    assert (document.Objects, document.UndoNames) == ([], [])
    assert graph_of(document).getNumChildren() == nodes - 1
    run(NEW)
    key(widget("Width").edit, "", QtCore.Qt.Key_Escape)
    settle(0.3)
    assert FreeCADGui.Control.activeDialog() in (None, False)
    assert document.Objects == []


@pytest.mark.parametrize(("typed", "wanted"), [("1200", 1200.0), ("4 ft 1/2 in", 1231.9), ("3'-6 1/2\"", 1079.5),
                                               ("1,05 m", 1050.0)])
def test_lengths_are_read_as_the_trade_writes_them(typed, wanted):
    document = opened()
    type_into("Width", typed)
    press_ok()
    assert document.Vent.Width.Value == pytest.approx(wanted, abs=1e-9)


def test_a_pitch_is_read_as_rise_in_run():
    document = opened()
    type_into("PitchLeft", "8:12")
    press_ok()
    assert document.Vent.PitchLeft.Value == pytest.approx(33.690067525979785, abs=1e-9)    # atan(8/12)


def test_what_cannot_be_is_said_at_once_and_keeps_the_panel_open(shot):
    document = opened()
    type_into("SlatAngle", "75")
    assert "Slat angle is 75.00°" in words("Findings")
    press_ok()
    assert document.Objects == []
    type_into("SlatAngle", "what")
    assert "Go there" in words("Findings")
    shot("panel_refusing")
    type_into("SlatAngle", "40")
    assert not [each for each in FreeCADGui.getMainWindow().findChildren(QtGui.QLabel, "Findings") if each.isVisible()]
    press_ok()
    assert document.Vent.SlatAngle.Value == 40.0


def test_figures_follow_while_typing():
    opened()
    before = words("Figures")
    type_into("Width", "1300")
    assert words("Figures") != before
    assert "1300" in words("Figures")


def test_the_ridge_suggests_a_width_and_says_why():
    document = opened()
    type_into("RidgeLength", "12 m")
    type_into("Width", "")
    assert "12000 mm" in words("Figures")
    assert "1250 mm" in words("Figures")    # 12 m / 12 · 1.25, the trade's rule
    press_ok()
    assert document.Vent.OverallWidth.Value == pytest.approx(1250.0)


def test_dragging_moves_the_picture(shot):
    opened()
    FreeCADGui.activeView().viewIsometric()
    FreeCADGui.SendMsgToActiveView("ViewFit")
    before = shot("panel_before_drag")
    slider = widget("Width").slider
    for value in range(slider.value(), slider.value() + 40, 4):
        slider.setValue(value)
        settle(0.02)
    assert shot("panel_after_drag") != before


def test_arrow_keys_step():
    opened()
    line = widget("Width").edit
    key(line, "", QtCore.Qt.Key_Up)
    assert line.text() == "905 mm"
    key(line, "", QtCore.Qt.Key_PageDown)
    assert line.text() == "855 mm"


def test_readings_on_the_roof_become_pitches():
    document = opened()
    widget("Measured on the roof").set_open(True)
    settle(0.2)
    widget("SurveyWay").setCurrentIndex(1)
    type_into("Survey_ridge_angle", "100")
    assert "both slopes" in words("SurveyWords")
    press_ok()
    vent = document.Vent
    assert (vent.PitchLeft.Value, vent.PitchRight.Value) == (40.0, 40.0)    # 90° less half the angle
    assert "Included angle" in vent.SurveyNote


def test_a_text_that_is_no_value_is_forgiven_where_it_is_asked_for_no_more():
    document = opened()
    form = widget("RoofForm").box
    for choice in ("flared hip", "hip"):
        form.setCurrentIndex(form.findData(choice))
        form.activated.emit(form.currentIndex())
        settle(0.4)
        if choice == "flared hip":
            widget("Vent roof").set_open(True)
            type_into("FlarePitch", "steep")
            assert "Go there" in words("Findings")
    settle(0.5)
    press_ok()
    assert document.getObject("Vent") is not None


def test_only_what_the_vent_has_a_use_for_is_asked():
    opened()
    widget("Vent roof").set_open(True)
    settle(0.2)
    shown = {each.objectName() for each in FreeCADGui.getMainWindow().findChildren(QtGui.QWidget) if each.isVisible()}
    assert "HeelHeight" in shown and not {"FlarePitch", "GableRidge", "Verge"} & shown
    form = widget("RoofForm").box
    form.setCurrentIndex(form.findData("gable"))
    form.activated.emit(form.currentIndex())
    settle(0.3)
    assert widget("GableRidge").isVisible() and widget("Verge").isVisible()


# ---- editing


def test_edit_changes_the_vent_in_one_step_that_can_be_undone():
    document = FreeCAD.newDocument("Barn")
    vent = make_vent(document)
    made = model(vent)
    run(EDIT)
    type_into("Width", "1100")
    assert vent.Width.Value == 900.0
    press_ok()
    assert vent.Width.Value == 1100.0
    assert document.UndoNames == ["Edit vent"]
    changed = model(vent)
    run("Std_Undo")
    assert model(vent) == made
    run("Std_Redo")
    document.recompute()
    assert model(vent) == changed


def test_while_it_is_edited_only_the_picture_is_seen_and_cancel_brings_the_vent_back():
    document = FreeCAD.newDocument("Barn")
    vent = make_vent(document)
    switch = vent.ViewObject.SwitchNode
    shown = switch.whichChild.getValue()
    run(EDIT)
    assert switch.whichChild.getValue() == -1
    assert vent.ViewObject.Visibility
    press_cancel()
    assert switch.whichChild.getValue() == shown
    assert document.UndoNames == []
    assert "Touched" not in vent.State


@pytest.mark.parametrize("gone", ["vent", "document"])
def test_the_panel_closes_with_its_vent(gone):
    document = FreeCAD.newDocument("Barn")
    vent = make_vent(document)
    run(EDIT)
    if gone == "vent":
        document.removeObject(vent.Name)
    else:
        FreeCAD.closeDocument(document.Name)
    settle(0.4)
    assert not FreeCADGui.Control.activeDialog()


def test_a_double_click_opens_the_panel():
    document = FreeCAD.newDocument("Barn")
    vent = make_vent(document)
    assert vent.ViewObject.Proxy.doubleClicked(vent.ViewObject)
    settle(0.3)
    assert widget("Width").edit.text() == "900 mm"


def test_a_value_driven_by_an_expression_is_locked_and_kept():
    document = FreeCAD.newDocument("Barn")
    vent = make_vent(document)
    vent.setExpression("Width", "1000 mm + 50 mm")
    document.recompute()
    edit(vent)
    settle(0.3)
    assert not widget("Width").isEnabled()
    assert "1000mm+50mm" in widget("Width").toolTip().replace(" ", "")    # and it still says so after the check
    type_into("RoofPitch", "30")
    press_ok()
    assert vent.ExpressionEngine != []
    assert (vent.Width.Value, vent.RoofPitch.Value) == (1050.0, 30.0)


def test_values_that_were_not_touched_stay_to_the_last_figure():
    document = FreeCAD.newDocument("Barn")
    vent = make_vent(document, pitch_left=33.123456789, width=912.3456789)
    run(EDIT)
    widget("PitchLeft").edit.setFocus()
    widget("Width").edit.setFocus()
    type_into("RoofPitch", "30")
    press_ok()
    assert (vent.PitchLeft.Value, vent.Width.Value) == (33.123456789, 912.3456789)


def test_inches_are_shown_when_the_paper_is_in_inches(shot):
    document = FreeCAD.newDocument("Barn")
    make_vent(document, paper_units="in", width=914.4)
    run(EDIT)
    assert widget("Width").edit.text() == '36"'
    shot("panel_inches")


def test_a_vent_in_a_moved_part_has_its_picture_there():
    document = FreeCAD.newDocument("Barn")
    holder = document.addObject("App::Part", "Building")
    holder.Placement.Base = FreeCAD.Vector(1000, 2000, 3000)
    vent = make_vent(document)
    holder.addObject(vent)
    vent.Placement.Base = FreeCAD.Vector(10, 20, 30)
    document.recompute()
    panel = edit(vent)
    assert panel.placement.Base == FreeCAD.Vector(1010, 2020, 3030)


def test_a_change_that_is_refused_is_taken_back():
    from louverwright.core.spec import SpecError

    document = FreeCAD.newDocument("Barn")
    vent = make_vent(document)
    with pytest.raises(SpecError):
        change_vent(vent, {"vents": 3, "width": 900.0})    # no ridge to stand on
    assert vent.Vents == 1


# ---- preferences


@pytest.fixture
def fresh_preferences():
    group = FreeCAD.ParamGet(GROUP)
    group.Clear()
    yield group
    group.Clear()


def test_new_vents_begin_with_what_is_preferred(fresh_preferences):
    page = PreferencesPage()
    page.loadSettings()
    page.page.fields["paper_units"].changed.emit("in")
    page.page.fields["saw_tilt"].changed.emit(47.0)
    page.page.fields["inch_fraction"].changed.emit(32)
    page.page.fields["inch_fraction"].changed.emit(33)
    assert "Inch fraction is 33" in page.page.wrong.text()
    page.saveSettings()
    document = opened()
    assert widget("Width").edit.text() == '35 7/16"'
    press_ok()
    vent = document.Vent
    assert (vent.PaperUnits, vent.SawTilt.Value, vent.InchFraction) == ("in", 47.0, 32)
    page = PreferencesPage()
    page.loadSettings()
    page.page.fields["paper_units"].changed.emit("mm")
    page.saveSettings()
    assert (vent.PaperUnits, preferred()) == ("in", {"saw_tilt": 47.0, "inch_fraction": 32})


def test_a_preference_that_cannot_be_is_told_of_and_left_out(fresh_preferences):
    fresh_preferences.SetFloat("saw_tilt", 300.0)
    fresh_preferences.SetString("paper_units", "cubit")
    assert preferred() == {}


def test_the_preferences_page_is_among_freecads_own(fresh_preferences, shot):
    seen = []

    def look():
        dialog = QtGui.QApplication.activeModalWidget()
        if dialog is None:
            return
        timer.stop()
        seen.extend(each.objectName() for each in dialog.findChildren(QtGui.QWidget) if each.objectName() == "SawKerf")
        shot("preferences")
        dialog.reject()

    timer = QtCore.QTimer()
    timer.timeout.connect(look)
    timer.start(300)
    FreeCADGui.showPreferences("Louverwright", 0) if hasattr(FreeCADGui, "showPreferences") else run("Std_DlgPreferences")
    assert seen == ["SawKerf"]
