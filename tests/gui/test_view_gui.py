# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a user sees of a vent besides its panel: colours, taking it apart, marks found in the model, the tree's menu."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest
from conftest import settle
from panels import key, press, type_into, widget
from pivy import coin
from PySide import QtCore, QtGui

sys.path.append(str(Path(__file__).resolve().parents[1] / "host"))
from vents import everything, model, not_settled, part

from louverwright.core.kinds import KINDS
from louverwright.features.row import make_row
from louverwright.features.vent import links_of, make_vent, parts_of
from louverwright.view.colours import BY_KIND, BY_STOCK, look_of
from louverwright.view.in_view import graph_of

APART, MARKS = "Louverwright_TakeApart", "Louverwright_PartsAndMarks"
THREE = {"ridge_length": 12_000.0, "vents": 3, "width": 900.0}
pytestmark = pytest.mark.usefixtures("in_workbench")


@pytest.fixture(autouse=True)
def no_panel_left():
    yield
    for box in FreeCADGui.getMainWindow().findChildren(QtGui.QDialogButtonBox):
        if box.isVisible() and box.button(QtGui.QDialogButtonBox.Close):
            press_close()
    FreeCADGui.Control.closeDialog()


def press_close():
    press(QtGui.QDialogButtonBox.Close)


def run(name):
    FreeCADGui.runCommand(name, 0)
    settle(0.4)


def barn(**parameters):
    """A vent in a new document, seen from a corner."""
    vent = make_vent(FreeCAD.newDocument("Barn"), **parameters)
    look_from_the_corner()
    return vent


def look_from_the_corner():
    view = FreeCADGui.activeView()
    view.setAnimationEnabled(False)
    view.viewIsometric()
    FreeCADGui.SendMsgToActiveView("ViewFit")
    settle(0.3)


def colour(obj):
    return tuple(round(each, 2) for each in obj.ViewObject.ShapeColor[:3])


def rounded(look):
    return tuple(round(each, 2) for each in look.colour)


def reach_of_last(document):
    """The least and the greatest corner (mm, global) of what was put into the 3D view last."""
    graph = graph_of(document)
    action = coin.SoGetBoundingBoxAction(coin.SbViewportRegion(100, 100))
    action.apply(graph.getChild(graph.getNumChildren() - 1))
    box = action.getBoundingBox()
    return box.getMin().getValue(), box.getMax().getValue()


def selected():
    """What is selected, each piece as object and element."""
    return {(each.Object.Name, element) for each in FreeCADGui.Selection.getSelectionEx(FreeCAD.ActiveDocument.Name)
            for element in (each.SubElementNames or ("",))}


# ---- colours


def test_parts_are_coloured_by_stock_or_by_kind_at_once(shot):
    vent = barn()
    assert vent.ViewObject.ColourBy == BY_STOCK
    assert vent.ViewObject.getGroupOfProperty("ColourBy") == "Louverwright"
    shot("view_by_stock")
    for way in (BY_KIND, BY_STOCK, BY_KIND):
        vent.ViewObject.ColourBy = way
        assert {each.KindId: colour(each) for each in parts_of(vent)} == {k.id: rounded(look_of(k.id, way)) for k in KINDS}
    shot("view_by_kind")
    assert part(vent, "louver.screen").ViewObject.Transparency > 0
    assert not_settled(vent.Document) == []


def test_a_colour_of_the_users_own_stays():
    vent = barn()
    slats = part(vent, "louver.slat")
    slats.ViewObject.ShapeColor = (0.1, 0.2, 0.3)
    vent.ViewObject.ColourBy = BY_KIND
    vent.ViewObject.ColourBy = BY_STOCK
    assert colour(slats) == (0.1, 0.2, 0.3)
    assert colour(part(vent, "louver.sill")) == rounded(look_of("louver.sill"))


def test_the_choice_of_colours_is_saved(tmp_path):
    vent = barn()
    vent.ViewObject.ColourBy = BY_KIND
    document = vent.Document
    document.saveAs(str(tmp_path / "barn.FCStd"))
    path = document.FileName
    FreeCAD.closeDocument(document.Name)
    document = FreeCAD.openDocument(path)
    settle()
    vent = document.getObject("Vent")
    assert vent.ViewObject.ColourBy == BY_KIND
    assert colour(part(vent, "base.leg.gable")) == rounded(look_of("base.leg.gable", BY_KIND))
    assert not FreeCADGui.getDocument(document.Name).Modified
    vent.ViewObject.ColourBy = BY_STOCK
    assert colour(part(vent, "base.leg.gable")) == rounded(look_of("base.leg.gable"))


def test_a_view_of_an_older_document_is_given_the_choice():
    from louverwright.features.hooks import announce

    vent = barn()
    vent.ViewObject.setPropertyStatus("ColourBy", "-LockDynamic")
    assert vent.ViewObject.removeProperty("ColourBy")
    for each in parts_of(vent):
        each.ViewObject.ShapeColor = (0.76, 0.60, 0.38)    # as they were coloured before there was a choice
    announce(vent)
    vent.ViewObject.ColourBy = BY_KIND
    assert {colour(each) for each in parts_of(vent)} == {rounded(look_of(kind.id, BY_KIND)) for kind in KINDS}


# ---- the tree


def test_the_tree_names_each_kinds_marks_and_leaves_the_users_words():
    vent = barn()
    legs = part(vent, "base.leg.gable")
    assert legs.Label2 == "B1L ×2, B1R ×2"
    assert part(vent, "roof.step").Label2 == ""
    assert (legs.Label, "Touched" in legs.State) == ("Leg, gable side", False)
    slats = part(vent, "louver.slat")
    slats.Label2 = "cedar"
    legs.Label = "My legs"
    vent.PitchLeft = 20.0
    vent.Document.recompute()
    assert (slats.Label2, legs.Label) == ("cedar", "My legs")
    assert legs.Label2 == ", ".join(legs.Marks) != "B1L ×2, B1R ×2"    # two pitches: no two legs are alike


def test_icons_tell_stages_and_stock_apart():
    vent = barn()
    icons = {Path(each.ViewObject.Proxy.getIcon()).stem for each in everything(vent)}
    assert icons == {"new_vent", "stage_base", "stage_louver", "stage_roof", "part_dimension", "part_board", "part_sheet",
                     "part_mesh", "part_post"}
    assert all(Path(each.ViewObject.Proxy.getIcon()).is_file() for each in everything(vent))


def menu_of(obj):
    menu = QtGui.QMenu()
    obj.ViewObject.Proxy.setupContextMenu(obj.ViewObject, menu)
    return menu, [action for action in menu.actions() if not action.isSeparator()]


def test_the_menu_in_the_tree_has_our_commands():
    vent = barn()
    for obj in (vent, vent.Group[0], part(vent, "louver.slat")):
        menu, actions = menu_of(obj)
        assert [action.text() for action in actions] == ["Edit vent", "Take apart", "Parts and marks", "Cut report"]
        assert [action.text() for action in actions if not action.isEnabled()] == []
        assert [action.text() for action in actions if action.icon().isNull()] == []
        assert FreeCADGui.Selection.getSelection() == [obj]
    actions[2].trigger()
    settle(0.4)
    assert {row_mark(each) for each in chosen_rows()} == set(part(vent, "louver.slat").Marks)
    assert menu is not None


# ---- take apart


def test_a_vent_comes_apart_and_is_put_together_again(shot):
    vent = barn()
    document, before = vent.Document, model(vent)
    switch = vent.ViewObject.SwitchNode
    shown, nodes, steps = switch.whichChild.getValue(), graph_of(document).getNumChildren(), document.UndoCount
    whole = shot("apart_before")
    run(APART)
    assert switch.whichChild.getValue() == -1
    low, high = (end[2] for end in reach_of_last(document))
    widget("StagesApart").setValue(100)
    settle(0.3)
    assert reach_of_last(document)[1][2] - low > 1.5 * (high - low)
    widget("Fit").click()
    shot("apart_stages")
    widget("AllPiecesApart").setValue(60)
    settle(0.3)
    widget("Fit").click()
    shot("apart_all")
    assert model(vent) == before
    press_close()
    assert switch.whichChild.getValue() == shown
    assert graph_of(document).getNumChildren() == nodes
    assert (document.UndoCount, not_settled(document)) == (steps, [])
    look_from_the_corner()
    assert shot("apart_after").size() == whole.size()


def test_escape_puts_it_together_too():
    vent = barn()
    switch = vent.ViewObject.SwitchNode
    shown = switch.whichChild.getValue()
    run(APART)
    widget("StagesApart").setValue(50)
    settle(0.2)
    key(widget("StagesApart"), "", QtCore.Qt.Key_Escape)
    settle(0.3)
    assert FreeCADGui.Control.activeDialog() in (None, False)
    assert switch.whichChild.getValue() == shown


@pytest.mark.parametrize(("sides", "words"), [
    (4, ["gable side +X", "left eave side (+Y)", "gable side −X", "right eave side (−Y)"]), (8, None)])
def test_sides_are_taken_away_to_look_in(shot, sides, words):
    barn(sides=sides, width=1200.0, king_post_stock="6x6" if sides == 8 else "")
    run(APART)
    boxes = [widget(f"Side{number}") for number in range(sides)]
    assert words is None or [box.text() for box in boxes] == words
    assert len({box.text() for box in boxes}) == sides
    before = shot(f"apart_sides_{sides}_before")
    boxes[0].setChecked(True)
    boxes[sides - sides // 4].setChecked(True)
    settle(0.3)
    assert shot(f"apart_sides_{sides}") != before


def test_of_a_row_the_chosen_one_comes_apart(shot):
    document = FreeCAD.newDocument("Barn")
    vent = make_row(document, **THREE)
    link = links_of(vent)[0]
    look_from_the_corner()
    FreeCADGui.Selection.addSelection(document.Name, link.Name, f"{vent.Group[0].Name}.{vent.Group[0].Group[0].Name}.Face1")
    run(APART)
    FreeCADGui.Selection.clearSelection()
    assert widget("WhichVent").text() == link.Label == "Louvered vent, number 2"
    widget("StagesApart").setValue(100)
    settle(0.3)
    shot("apart_row")
    assert link.ViewObject.SwitchNode.whichChild.getValue() == -1
    assert vent.ViewObject.SwitchNode.whichChild.getValue() != -1
    low, high = reach_of_last(document)
    assert (low[0] + high[0]) / 2.0 == pytest.approx(4_000.0, abs=1.0)
    press_close()
    assert link.ViewObject.SwitchNode.whichChild.getValue() != -1


def test_colours_of_the_users_own_are_seen_in_the_picture():
    from louverwright.view.painting import seen_in

    vent = barn()
    part(vent, "louver.slat").ViewObject.ShapeColor = (0.1, 0.2, 0.3)
    assert seen_in(vent)("louver.slat").colour == pytest.approx((0.1, 0.2, 0.3), abs=0.01)
    assert seen_in(vent)("louver.sill").colour == pytest.approx(look_of("louver.sill").colour, abs=0.01)


# ---- parts and marks


def table():
    return widget("MarkTable")


def chosen_rows():
    return sorted(index.row() for index in table().selectionModel().selectedRows())


def row_mark(row):
    return table().item(row, 0).text()


def row_of(mark):
    (row,) = [row for row in range(table().rowCount()) if row_mark(row) == mark]
    return row


def solids_with(vent, mark):
    return {(each.Name, f"Solid{number}") for each in parts_of(vent) for number, own in enumerate(each.Marks, 1)
            if own == mark}


def test_every_mark_of_the_report_finds_its_pieces(shot):
    vent = barn()
    run(MARKS)
    marks = {mark for each in parts_of(vent) for mark in each.Marks}
    assert {row_mark(row) for row in range(table().rowCount())} == marks
    for row in range(table().rowCount()):
        table().selectRow(row)
        assert selected() == solids_with(vent, row_mark(row))
        assert table().item(row, 2).text() == str(len(selected()))
    table().selectRow(row_of("B1L"))
    shot("marks_b1l")


def test_a_mark_typed_from_paper_is_found_by_return(shot):
    vent = barn()
    run(MARKS)
    type_into("MarkFilter", "l9", 0.2)
    assert table().rowCount() == 1
    widget("MarkFilter").returnPressed.emit()
    settle(0.2)
    assert selected() == solids_with(vent, "L9")
    shot("marks_l9")
    type_into("MarkFilter", "top rail", 0.2)
    assert 0 < table().rowCount() < 8
    assert all("Top rail" in table().item(row, 1).text() for row in range(table().rowCount()))


def test_what_is_chosen_is_brought_into_view_on_request():
    vent = barn()
    run(MARKS)
    camera = FreeCADGui.activeView().getCamera
    before = camera()
    table().selectRow(row_of("R2"))
    settle(0.3)
    assert camera() == before
    widget("FitChosen").setChecked(True)
    settle(0.5)
    assert camera() != before
    before = camera()
    table().selectRow(row_of("B1L"))
    settle(0.5)
    assert camera() != before
    assert not_settled(vent.Document) == []


@pytest.mark.parametrize("element", ["Solid", "Face", "Edge", "Vertex"])
def test_a_piece_picked_in_the_view_marks_its_row(element):
    vent = barn()
    run(MARKS)
    legs = part(vent, "base.leg.gable")
    of_solids = {"Solid": "Solids", "Face": "Faces", "Edge": "Edges", "Vertex": "Vertexes"}[element]
    last, count = legs.Marks[-1], len(getattr(legs.Shape, of_solids))
    type_into("MarkFilter", "slat", 0.2)
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(vent.Document.Name, vent.Name, f"{vent.Group[0].Name}.{legs.Name}.{element}{count}")
    settle(0.2)
    assert [row_mark(row) for row in chosen_rows()] == [last]
    assert selected() == {(legs.Name, f"{element}{count}")}    # what was picked stays as it was picked
    FreeCADGui.Selection.clearSelection()
    settle(0.2)
    assert chosen_rows() == []


def test_a_kind_chosen_in_the_tree_marks_all_its_rows():
    vent = barn()
    run(MARKS)
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(part(vent, "base.leg.gable"))
    settle(0.2)
    assert {row_mark(row) for row in chosen_rows()} == set(part(vent, "base.leg.gable").Marks)


def test_pieces_of_a_vent_in_a_moved_part_are_selected_where_they_stand(shot):
    document = FreeCAD.newDocument("Barn")
    holder = document.addObject("App::Part", "Building")
    holder.Placement = FreeCAD.Placement(FreeCAD.Vector(20_000, 5_000, 0), FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), 30))
    vent = make_vent(document)
    holder.addObject(vent)
    make_vent(document)
    document.recompute()
    look_from_the_corner()
    FreeCADGui.Selection.addSelection(vent)
    run(MARKS)
    table().selectRow(row_of("B1R"))
    assert selected() == solids_with(vent, "B1R")
    (whole,) = FreeCADGui.Selection.getSelectionEx(document.Name, 0)
    assert whole.Object == holder
    for path in whole.SubElementNames:
        place = holder.getSubObject(path).CenterOfMass
        assert place.distanceToPoint(holder.Placement.Base) < 2_000.0
    for end in reach_of_last(document):
        assert abs(end[0] - 20_000.0) < 1_000.0 and abs(end[1] - 5_000.0) < 1_000.0
    widget("FitChosen").setChecked(True)
    settle(0.5)
    shot("marks_moved")
    aim = FreeCADGui.activeView().getCameraNode()
    focus = aim.position.getValue() + aim.orientation.getValue().multVec(coin.SbVec3f(0, 0, -1)) * aim.focalDistance.getValue()
    assert abs(focus[0] - 20_000.0) < 1_500.0 and abs(focus[1] - 5_000.0) < 1_500.0


def test_pieces_of_the_chosen_vent_of_a_row():
    document = FreeCAD.newDocument("Barn")
    vent = make_row(document, **THREE)
    link = links_of(vent)[1]
    FreeCADGui.Selection.addSelection(link)
    run(MARKS)
    table().selectRow(row_of("L9"))
    (whole,) = FreeCADGui.Selection.getSelectionEx(document.Name, 0)
    assert whole.Object == link
    assert len(whole.SubElementNames) == len(solids_with(vent, "L9"))


def test_closing_leaves_the_view_as_it_was():
    vent = barn()
    nodes = graph_of(vent.Document).getNumChildren()
    run(MARKS)
    table().selectRow(0)
    assert graph_of(vent.Document).getNumChildren() == nodes + 1
    press_close()
    assert graph_of(vent.Document).getNumChildren() == nodes
    FreeCADGui.Selection.clearSelection()
    FreeCADGui.Selection.addSelection(part(vent, "louver.slat"))    # nobody listens any more
    settle(0.2)


@pytest.mark.parametrize("name", [APART, MARKS])
@pytest.mark.parametrize("ending", ["document", "vent"])
def test_a_panel_closes_with_its_vent(name, ending):
    vent = barn()
    document = vent.Document
    run(name)
    assert FreeCADGui.Control.activeDialog()
    if ending == "document":
        FreeCAD.closeDocument(document.Name)
    else:
        document.removeObject(vent.Name)
    settle(0.4)
    assert FreeCADGui.Control.activeDialog() in (None, False)


@pytest.mark.parametrize("name", [APART, MARKS])
def test_a_vent_that_cannot_be_built_is_told_of(monkeypatch, name):
    from louverwright.commands import parts_and_marks, take_apart

    texts = []
    monkeypatch.setattr(take_apart, "tell", texts.append)
    monkeypatch.setattr(parts_and_marks, "tell", texts.append)
    vent = barn()
    vent.Width = 5000.0
    run(name)
    assert len(texts) == 1 and "Width is 5000 mm" in texts[0]
    assert FreeCADGui.Control.activeDialog() in (None, False)
