"""A vent beside other objects of a document: parts, copies, links, cutters, exports."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD
import Part
import pytest

sys.path.append(str(Path(__file__).resolve().parent))
from vents import everything, global_centre, model, near, not_settled, part

from louverwright.features.vent import delete_vent, is_vent, make_vent, parts_of, stages_of

TURNED = FreeCAD.Placement(FreeCAD.Vector(1000.0, -200.0, 300.0), FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), 90.0))


@pytest.fixture
def document():
    made = FreeCAD.newDocument("Barn")
    name = made.Name
    made.UndoMode = 1
    yield made
    FreeCAD.closeDocument(name)


@pytest.fixture
def other():
    made = FreeCAD.newDocument("Other")
    name = made.Name
    yield made
    FreeCAD.closeDocument(name)


@pytest.fixture
def vent(document):
    return make_vent(document)


class Cutter:
    """Downstream of a vent: notes what it sees of it."""

    def execute(self, obj):
        obj.Seen = obj.Source.Shape.Volume

    def dumps(self):
        return None

    def loads(self, state):
        return None


# ---- in the user's own part


def test_a_vent_in_a_moved_part_goes_with_it(vent, document) -> None:
    holder = document.addObject("App::Part", "Building")
    holder.addObject(vent)
    slats = part(vent, "louver.slat")
    path = f"{vent.Name}.LouverStage.{slats.Name}.Solid3"
    local = slats.Shape.Solids[2].CenterOfMass
    holder.Placement = TURNED
    vent.Placement = FreeCAD.Placement(FreeCAD.Vector(0, 0, 50), FreeCAD.Rotation())
    document.recompute()
    assert not_settled(document) == []
    wanted = TURNED.multVec(vent.Placement.multVec(local))
    assert near(global_centre(holder, path), wanted)
    assert near(slats.getGlobalPlacement().multVec(local), wanted)
    vent.Width = 1000.0
    document.recompute()
    assert not_settled(document) == []
    assert vent.Shape.Volume == pytest.approx(sum(each.Shape.Volume for each in parts_of(vent)), rel=1e-9)


def test_a_part_around_a_vent_counts_each_piece_once(vent, document) -> None:
    holder = document.addObject("App::Part", "Building")
    holder.addObject(vent)
    document.recompute()
    assert len(Part.getShape(holder).Solids) == vent.Pieces


# ---- copies, and two vents


def test_two_vents_do_not_disturb_each_other(vent, document) -> None:
    second = make_vent(document, width=1000.0)
    kept = model(second)
    vent.SlatAngle = 40.0
    document.recompute()
    assert model(second) == kept
    assert not_settled(document) == []
    assert {each.Name for each in everything(vent)}.isdisjoint(each.Name for each in everything(second))


def test_a_copy_in_the_document_lives_by_itself(vent, document) -> None:
    kept = model(vent)
    copied = document.copyObject(vent, True)
    copy = next(each for each in copied if is_vent(each)) if isinstance(copied, (list, tuple)) else copied
    document.recompute()
    assert len(document.Objects) == 2 * len(everything(vent))
    assert len(parts_of(copy)) == len(parts_of(vent))
    assert model(copy) == kept
    copy.Width = 1000.0
    document.recompute()
    assert model(vent) == kept
    assert copy.Shape.Volume == pytest.approx(sum(each.Shape.Volume for each in parts_of(copy)), rel=1e-9)
    assert not_settled(document) == []
    delete_vent(copy)
    assert model(vent) == kept
    assert len(document.Objects) == len(everything(vent))


def test_a_copy_in_another_document_lives_by_itself(vent, document, other) -> None:
    kept = model(vent)
    other.copyObject(vent, True)
    other.recompute()
    (copy,) = [each for each in other.Objects if is_vent(each)]
    assert model(copy) == kept
    assert [each.Label for each in stages_of(copy)] == [each.Label for each in stages_of(vent)]
    delete_vent(vent)
    copy.Width = 1000.0
    other.recompute()
    assert not_settled(other) == []
    assert copy.OverallWidth.Value == pytest.approx(1000.0)
    assert copy.Shape.Volume == pytest.approx(sum(each.Shape.Volume for each in parts_of(copy)), rel=1e-9)


# ---- links and what is made from the vent


def test_a_link_to_the_whole_vent_has_every_piece(vent, document) -> None:
    link = document.addObject("App::Link", "Second")
    link.LinkedObject = vent
    link.Placement = TURNED
    document.recompute()
    assert len(Part.getShape(link).Solids) == vent.Pieces
    slats = part(vent, "louver.slat")
    path = f"LouverStage.{slats.Name}.Solid3"
    assert near(global_centre(link, path), TURNED.multVec(global_centre(vent, path)))
    vent.Width = 1000.0
    document.recompute()
    assert Part.getShape(link).Volume == pytest.approx(vent.Shape.Volume, rel=1e-9)
    assert not_settled(document) == []


@pytest.mark.parametrize("first", ["cutter", "vent"])
def test_what_is_made_from_the_vent_sees_its_present_shape(document, first) -> None:
    cutter = document.addObject("Part::FeaturePython", "Cutter") if first == "cutter" else None
    vent = make_vent(document)
    cutter = cutter or document.addObject("Part::FeaturePython", "Cutter")
    cutter.addProperty("App::PropertyLink", "Source")
    cutter.addProperty("App::PropertyFloat", "Seen")
    cutter.Proxy = Cutter()
    cutter.Source = vent
    document.recompute()
    assert cutter.Seen == vent.Shape.Volume
    for change in ({"Width": 1000.0}, {"Screen": False}, {"SlatAngle": 40.0}):
        for name, value in change.items():
            setattr(vent, name, value)
        document.recompute()
        assert cutter.Seen == vent.Shape.Volume
        assert cutter.Seen == pytest.approx(sum(each.Shape.Volume for each in parts_of(vent)), rel=1e-9)
        assert not_settled(document) == []
    vent.setExpression("Width", "900 mm")
    document.recompute()
    assert cutter.Seen == vent.Shape.Volume


def test_a_boolean_with_the_vent_follows_it(vent, document) -> None:
    box = document.addObject("Part::Box", "Attic")
    box.Length = box.Width = box.Height = 3000.0
    box.Placement.Base = FreeCAD.Vector(-1500.0, -1500.0, -1500.0)
    cut = document.addObject("Part::Cut", "Air")
    cut.Base, cut.Tool = box, part(vent, "roof.kingpost")
    document.recompute()
    assert cut.Shape.Volume == pytest.approx(3000.0**3 - part(vent, "roof.kingpost").Shape.Volume, rel=1e-9)
    vent.RoofPitch = 45.0
    document.recompute()
    assert cut.Shape.Volume == pytest.approx(3000.0**3 - part(vent, "roof.kingpost").Shape.Volume, rel=1e-9)


def test_step_has_every_piece_once(vent, document, tmp_path) -> None:
    path = tmp_path / "vent.step"
    vent.Shape.exportStep(str(path))
    text = path.read_text(encoding="utf-8", errors="replace")
    solids = text.count("MANIFOLD_SOLID_BREP(") + text.count("BREP_WITH_VOIDS(")
    boards = len({(mark, tuple(size)) for each in parts_of(vent) for mark, size in zip(each.Marks, each.Sizes, strict=True)})
    assert solids in (vent.Pieces, boards)    # one each, or one a board with its places
    assert Part.read(str(path)).Volume == pytest.approx(vent.Shape.Volume, rel=1e-6)
    assert len(Part.read(str(path)).Solids) == vent.Pieces
