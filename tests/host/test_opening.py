# SPDX-License-Identifier: LGPL-2.1-or-later
"""The opening in a roof that is drawn: what is cut away, what stays, and what becomes of it when vent or roof change.

The roof of ``roofs`` is as thick everywhere, measured plumb (150 mm), so what an opening takes is its area in plan times that.
"""

from __future__ import annotations

import os
import tempfile
from math import cos, radians, tan

import FreeCAD
import Part
import pytest
import roofs
from FreeCAD import Placement, Rotation, Vector
from roofs import LEFT, LONG, RIGHT, SPAN, THICK, TURNED, feature, roof_shape
from vents import errors_in, near, not_settled, part

from louverwright.core.dimensions import sizes
from louverwright.core.figures import figures
from louverwright.core.roof_opening import LEFT_STANDING, REFUSED, OpeningError
from louverwright.core.roof_planes import RoofError
from louverwright.features.model import spec_of
from louverwright.features.opening import delete_opening, make_opening, opening_of
from louverwright.features.roof_reading import RoofPick, read_roof
from louverwright.features.row import make_row
from louverwright.features.seat import stand_free, stand_on
from louverwright.features.standing import container_placement, global_placement
from louverwright.features.vent import delete_vent, make_vent

BOARD = 38.0


def seated(document, *picks, **values):
    vent = make_vent(document, **values)
    stand_on(vent, read_roof(*picks))
    document.recompute()
    return vent


def on(document, root, path="", **values):
    return seated(document, RoofPick(root, (path,) if path else ()), **values)


def plan_area(vent):
    return figures(spec_of(vent))["roof_opening_area"]


def whole(obj):
    """An object's shape where it stands in the whole document."""
    shape = obj.Shape.copy()
    shape.Placement = container_placement(obj).multiply(shape.Placement)
    return shape


def in_vent(vent, shape):
    """A global shape as the vent's frame has it."""
    return shape.transformed(global_placement(vent).inverse().toMatrix())


def taken(before, opening):
    """What the opening has taken out of a global shape."""
    return before.cut(whole(opening))


def passes(vent, shape):
    """Whether a plumb line through the vent, off its axis, meets nothing of a global shape, down to 0.9 m under the ridge."""
    place = global_placement(vent)
    line = Part.makeLine(place.multVec(Vector(30.0, 20.0, 400.0)), place.multVec(Vector(30.0, 20.0, -900.0)))
    return shape.common(line).Length < 1e-6


# ---- what is cut away


@pytest.mark.parametrize("values", [{}, {"facing": "corner"}, {"width": 1000.0, "length": 1500.0},
                                    {"sides": 6, "width": 1000.0}, {"ridge_offset": 60.0, "width": 1200.0},
                                    {"opening_margin": 55.0}], ids=str)
def test_it_takes_area_times_plumb_thickness(document, roof, values) -> None:
    before = roof.Shape.Volume
    vent = on(document, roof, **values)
    opening = make_opening(vent)
    assert before - opening.Shape.Volume == pytest.approx(plan_area(vent) * THICK, rel=1e-6)
    assert roof.Shape.Volume == before
    assert opening.Shape.isValid() and opening.Shape.ShapeType == "Solid"
    assert opening.ClearArea.Value == pytest.approx(plan_area(vent))
    assert opening.LouverArea.Value == pytest.approx(vent.LouverArea.Value)
    assert opening.DepthCut.Value == pytest.approx(THICK + 1.0)
    assert "150 mm thick" in opening.Done
    assert not_settled(document) == []


def test_a_boards_plumb_thickness_is_that_over_the_cosine(document) -> None:
    """One slope of 25°, a slab 120 mm thick: each mm² of plan takes 120 / cos 25° mm³."""
    slab = Part.makeBox(6000.0, 5000.0, 120.0, Vector(0.0, 0.0, -120.0))
    slab.rotate(Vector(), Vector(1, 0, 0), -25.0)
    roof = feature(document, slab)
    document.recompute()
    vent = on(document, roof)
    opening = make_opening(vent, RidgeBoard=BOARD)    # there is no ridge, so no board
    assert roof.Shape.Volume - opening.Shape.Volume == pytest.approx(plan_area(vent) * 120.0 / cos(radians(25.0)), rel=1e-6)


def test_the_legs_stand_outside_by_the_margin(document, roof) -> None:
    vent = on(document, roof, opening_margin=35.0)
    opening = make_opening(vent)
    hole = in_vent(vent, taken(roof.Shape, opening)).BoundBox
    at = sizes(spec_of(vent))
    for kind, along in (("base.leg.gable", "Y"), ("base.leg.eave", "X")):
        for solid in part(vent, kind).Shape.Solids:
            box = solid.BoundBox
            low, high = getattr(box, f"{along}Min"), getattr(box, f"{along}Max")
            gap = low - getattr(hole, f"{along}Max") if low > 0 else getattr(hole, f"{along}Min") - high
            # At butted corners an eave leg stands between the gable legs, a frame's thickness further in.
            assert gap == pytest.approx(35.0, abs=1e-6) or gap == pytest.approx(35.0 + at.base.post_face - at.base.frame_t)
    assert min(hole.XLength, hole.YLength) == pytest.approx(2.0 * (at.opening(0) - 35.0), abs=1e-6)
    assert vent.Shape.copy().common(taken(roof.Shape, opening)).Volume < 1.0


def test_nothing_of_the_ridge_board_is_cut(document, roof) -> None:
    vent = on(document, roof)
    opening = make_opening(vent, RidgeBoard=BOARD)
    board = TURNED.multiply(Placement(Vector(0.0, -BOARD / 2.0, -900.0), Rotation()))
    strip = Part.makeBox(LONG, BOARD, 1800.0)
    strip.Placement = board
    hole = taken(roof.Shape, opening)
    assert hole.common(strip).Volume < 1e-3
    assert len(hole.Solids) == 2
    half = sizes(spec_of(vent)).opening(0) - vent.OpeningMargin.Value
    assert opening.ClearArea.Value == pytest.approx(2.0 * half * (2.0 * half - BOARD))
    assert hole.Volume == pytest.approx(opening.ClearArea.Value * THICK, rel=1e-6)
    assert opening.Shape.isValid()


def test_a_ridge_board_can_be_a_reason_to_refuse(document, roof) -> None:
    vent = on(document, roof)
    count = len(document.Objects)
    with pytest.raises(OpeningError, match="would cut the ridge board"):
        make_opening(vent, RidgeBoard=BOARD, RidgeBoardRule=REFUSED)
    assert len(document.Objects) == count
    assert roof.Visibility
    opening = make_opening(vent, RidgeBoard=BOARD)
    volume = opening.Shape.Volume
    opening.RidgeBoardRule = REFUSED
    document.recompute()
    assert "would cut the ridge board" in opening.getStatusString()
    assert opening.Shape.Volume == pytest.approx(volume)
    opening.RidgeBoardRule = LEFT_STANDING
    document.recompute()
    assert not_settled(document) == []


def rafter(document, x, name="Rafter", wide=50.0, hand=1):
    """A rafter under one slope, from the ridge down, its sides at ``x`` and ``x + wide`` along the ridge."""
    shape = roofs.slab(hand, LEFT if hand > 0 else RIGHT)
    keep = Part.makeBox(wide, 20_000.0, 20_000.0, Vector(x, -10_000.0, -10_000.0))
    shape = shape.common(keep)
    shape.translate(Vector(0.0, 0.0, -THICK - 50.0))
    return feature(document, Part.Compound([shape]), name, TURNED)


def test_drawn_rafters_stay_and_are_followed(document, roof) -> None:
    vent = on(document, roof)
    one = rafter(document, LONG / 2.0 + 50.0)
    document.recompute()
    opening = make_opening(vent, RidgeBoards=[one])
    half = sizes(spec_of(vent)).opening(0) - vent.OpeningMargin.Value
    past = THICK * abs(tan(radians(LEFT))) * cos(radians(LEFT))    # a slab's square end reaches so far past the ridge
    assert opening.ClearArea.Value == pytest.approx(plan_area(vent) - 50.0 * (half + past), rel=1e-6)
    assert taken(roof.Shape, opening).Volume == pytest.approx(opening.ClearArea.Value * THICK, rel=1e-6)
    one.Placement = Placement(Vector(0.0, 0.0, 0.0), Rotation())    # away
    document.recompute()
    assert opening.ClearArea.Value == pytest.approx(plan_area(vent))
    assert not_settled(document) == []
    empty = document.addObject("App::FeaturePython", "Nothing")
    opening.RidgeBoards = [empty]
    document.recompute()
    assert "“Nothing”, which is not to be cut, has no faces" in opening.getStatusString()


def test_boards_that_would_make_a_cycle_are_dropped(document, roof, capfd) -> None:
    vent = on(document, roof)
    opening = make_opening(vent)
    made = document.addObject("Part::Mirroring", "Mirror")
    made.Source = opening
    document.recompute()
    capfd.readouterr()
    one = rafter(document, 0.0)
    opening.RidgeBoards = [one, made]
    document.recompute()
    assert opening.RidgeBoards == [one]
    assert "“Mirror” was taken off RidgeBoards" in opening.Done
    capfd.readouterr()    # FreeCAD says once that it is a cycle
    opening.touch()
    document.recompute()
    out, told = capfd.readouterr()
    assert errors_in(out + told) == []
    assert not_settled(document) == []


# ---- kinds of roof


def volume_of(shape):
    return sum(abs(solid.Volume) for solid in shape.Solids)


#: The kinds whose roof is not as thick everywhere; each has a test of its own.
OTHERWISE = (roofs.bare_faces, roofs.slabs, roofs.whole_barn)


@pytest.mark.parametrize("kind", [kind for kind in roofs.KINDS if kind not in OTHERWISE], ids=lambda kind: kind.__name__)
def test_every_kind_of_roof_can_be_opened(document, kind, capfd) -> None:
    root, path, _ = kind(document)
    document.recompute()
    vent = on(document, root, path)
    capfd.readouterr()
    opening = make_opening(vent)
    before, after = roofs.global_shape(root, path), whole(opening)
    assert abs(before.Volume) - after.Volume == pytest.approx(plan_area(vent) * THICK, rel=1e-5)
    assert after.isValid()
    assert passes(vent, after) and (not passes(vent, before) or kind is roofs.inside_out)
    assert not_settled(document) == []
    out, told = capfd.readouterr()
    assert errors_in(out + told) == []


def test_a_hollow_barn_is_opened_through_its_roof_and_not_its_floor(document) -> None:
    root, _, _ = roofs.whole_barn(document)
    document.recompute()
    vent = on(document, root)
    opening = make_opening(vent)
    assert opening.Shape.isValid()
    assert 300.0 < opening.DepthCut.Value < 600.0
    floor = Part.makeBox(LONG, 2.0 * SPAN, 400.0, Vector(0.0, -SPAN, -6100.0))
    floor.Placement = TURNED
    assert opening.Shape.common(floor).Volume == pytest.approx(root.Shape.common(floor).Volume, rel=1e-9)


def test_a_solid_barn_is_opened_to_600_and_says_so(document) -> None:
    root = feature(document, roofs.prism(roofs.section(barn=True)), place=TURNED)
    document.recompute()
    vent = on(document, root)
    opening = make_opening(vent)
    assert root.Shape.Volume - opening.Shape.Volume == pytest.approx(plan_area(vent) * 600.0, rel=1e-6)
    assert "goes on for more than 600 mm" in opening.Done
    opening.Depth = 250.0
    document.recompute()
    assert root.Shape.Volume - opening.Shape.Volume == pytest.approx(plan_area(vent) * 250.0, rel=1e-6)
    assert opening.Done == "Cut 250 mm deep, plumb, as Depth says."


def test_faces_without_thickness_lose_area_over_the_cosine(document) -> None:
    root, path, _ = roofs.bare_faces(document)
    document.recompute()
    vent = on(document, root, path)
    opening = make_opening(vent)
    lost = plan_area(vent) / 2.0 * (1.0 / cos(radians(LEFT)) + 1.0 / cos(radians(RIGHT)))
    assert root.Shape.Area - opening.Shape.Area == pytest.approx(lost, rel=1e-6)
    assert "without a thickness" in opening.Done


def test_boards_that_overlap_and_two_objects(document) -> None:
    """Two slabs, in one compound and as two objects: cut apart in both, each by what of it lies in the opening."""
    root, path, _ = roofs.slabs(document)
    left, right = (feature(document, Part.Compound([roofs.slab(hand, pitch)]), "Slab", TURNED)
                   for hand, pitch in ((1, LEFT), (-1, RIGHT)))
    document.recompute()
    first = on(document, root, path)
    names = [roofs.face_names(obj, "", TURNED, pitch, hand)[0] for obj, pitch, hand in ((left, LEFT, 1), (right, RIGHT, -1))]
    second = seated(document, RoofPick(left, (names[0],)), RoofPick(right, (names[1],)))
    one, two = make_opening(first), make_opening(second)
    side = plan_area(first) ** 0.5
    shaft = Part.makeBox(side, side, 3000.0, Vector((LONG - side) / 2.0, -side / 2.0, -1500.0))
    shaft.Placement = TURNED
    lost = sum(each.Shape.common(shaft).Volume for each in (left, right))
    for before, opening in ((volume_of(root.Shape), one), (left.Shape.Volume + right.Shape.Volume, two)):
        assert before - volume_of(opening.Shape) == pytest.approx(lost, rel=1e-6)
        assert opening.Shape.isValid()
        assert len(opening.Shape.Solids) == 2
    assert two.Hides == [left, right] and not left.Visibility and not right.Visibility
    assert one.Visibility


def test_one_opening_for_a_row(document, roof) -> None:
    vent = make_row(document, ridge_length=6000.0, vents=3, width=700.0)
    stand_on(vent, read_roof(RoofPick(roof)))
    document.recompute()
    opening = make_opening(vent, RidgeBoard=BOARD)
    hole = taken(roof.Shape, opening)
    assert len(hole.Solids) == 6
    assert hole.Volume == pytest.approx(3.0 * opening.ClearArea.Value * THICK, rel=1e-6)
    vent.Vents = 2
    document.recompute()
    assert taken(roof.Shape, opening).Volume == pytest.approx(2.0 * opening.ClearArea.Value * THICK, rel=1e-6)


def test_two_vents_on_one_roof_have_two_openings_in_it(document, roof) -> None:
    """The second is cut into the first one's result; they may go in any order."""
    one, two = on(document, roof, width=700.0), on(document, roof, width=700.0)
    one.AlongRidge, two.AlongRidge = -2000.0, 2000.0
    document.recompute()
    first, second = make_opening(one), make_opening(two)
    assert second.After == first
    area = plan_area(one)
    assert taken(roof.Shape, second).Volume == pytest.approx(2.0 * area * THICK, rel=1e-6)
    assert (roof.Visibility, first.Visibility, second.Visibility) == (False, False, True)
    one.AlongRidge = -1500.0
    document.recompute()
    assert not_settled(document) == []
    assert taken(roof.Shape, second).Volume == pytest.approx(2.0 * area * THICK, rel=1e-6)
    delete_opening(first)
    document.recompute()
    assert (second.After, second.Hides, roof.Visibility) == (None, [roof], False)
    assert taken(roof.Shape, second).Volume == pytest.approx(area * THICK, rel=1e-6)
    delete_opening(second)
    assert roof.Visibility


# ---- following, and being refused


def test_it_follows_vent_and_roof_without_a_word(document, roof, capfd) -> None:
    vent = on(document, roof)
    opening = make_opening(vent)
    capfd.readouterr()
    vent.AlongRidge, vent.OpeningMargin = 1500.0, 45.0
    document.recompute()
    hole = in_vent(vent, taken(roof.Shape, opening)).BoundBox
    assert abs(hole.XMin + hole.XMax) < 1e-6
    assert roof.Shape.Volume - opening.Shape.Volume == pytest.approx(plan_area(vent) * THICK, rel=1e-6)
    roof.Shape = roofs.prism(roofs.section(35.0, 22.0), 0.0, 7000.0)
    roof.Placement = Placement(Vector(1000.0, 2000.0, 500.0), Rotation(Vector(0, 0, 1), -20.0))
    document.recompute()
    assert roof.Shape.Volume - opening.Shape.Volume == pytest.approx(plan_area(vent) * THICK, rel=1e-6)
    assert opening.Shape.isValid()
    assert not_settled(document) == []
    out, told = capfd.readouterr()
    assert errors_in(out + told) == []


@pytest.mark.parametrize("place", ["vent in site", "vent in barn", "vent outside", "opening taken out", "opening put in"])
def test_it_lies_on_the_roof_whatever_holds_it(document, place, capfd) -> None:
    site, path, _ = roofs.nested(document)
    document.recompute()
    vent = on(document, site, path)
    holder = {"vent in site": site, "vent in barn": document.getObject("Barn"), "opening taken out": site}.get(place)
    if holder is not None:
        holder.addObject(vent)
        document.recompute()
        document.recompute()
    capfd.readouterr()
    opening = make_opening(vent)
    assert opening.getParentGeoFeatureGroup() == holder
    if place == "opening taken out":
        site.removeObject(opening)
    if place == "opening put in":
        document.getObject("Barn").addObject(opening)
        document.recompute()    # FreeCAD says once that this is a cycle, and the vent's link is dropped
        capfd.readouterr()
        vent.touch()
    document.recompute()
    for moved in (site, document.getObject("Barn")):
        moved.Placement = Placement(Vector(0.0, 70.0, 777.0), Rotation(Vector(0, 0, 1), 9.0)).multiply(moved.Placement)
        document.recompute()
        before, after = roofs.global_shape(site, path), whole(opening)
        assert before.Volume - after.Volume == pytest.approx(plan_area(vent) * THICK, rel=1e-6)
        corners = [vertex.Point for vertex in after.Vertexes]
        assert all(any(near(vertex.Point, corner, 1e-5) for corner in corners) for vertex in before.Vertexes)
        assert passes(vent, after) and not passes(vent, before)
        assert not_settled(document) == []
    out, told = capfd.readouterr()
    assert errors_in(out + told) == []


def test_a_vent_that_stands_free_is_told(document, roof) -> None:
    vent = make_vent(document)
    with pytest.raises(OpeningError, match="stands free, so there is no roof to cut"):
        make_opening(vent)
    stand_on(vent, read_roof(RoofPick(roof)))
    document.recompute()
    opening = make_opening(vent)
    volume = opening.Shape.Volume
    stand_free(vent)
    document.recompute()
    assert "stands free" in opening.getStatusString()
    assert opening.Shape.Volume == pytest.approx(volume)


def test_a_lost_roof_leaves_the_last_shape(document, roof) -> None:
    vent = on(document, roof)
    opening = make_opening(vent)
    volume = opening.Shape.Volume
    document.removeObject(roof.Name)
    document.recompute()
    assert "ick the roof again" in vent.getStatusString()
    opening.touch()
    opening.recompute()
    assert "Pick the roof again" in opening.getStatusString()
    assert opening.Shape.Volume == pytest.approx(volume)
    other = feature(document, roof_shape(30.0, 30.0), "Other")
    document.recompute()
    stand_on(vent, read_roof(RoofPick(other)))
    document.recompute()
    assert not_settled(document) == []
    assert other.Shape.Volume - opening.Shape.Volume == pytest.approx(plan_area(vent) * THICK, rel=1e-6)


def test_what_cannot_be_cut_is_told(document, roof) -> None:
    vent = on(document, roof, width=700.0)
    with pytest.raises(OpeningError, match="Nothing is left of the opening: the ridge board covers it"):
        make_opening(vent, RidgeBoard=2000.0)
    opening = make_opening(vent)
    volume = opening.Shape.Volume
    vent.OpeningMargin = 299.0    # the vent itself is refused, with the sentence of its own check
    document.recompute()
    assert "Opening margin is 299 mm" in vent.getStatusString()
    assert opening.Shape.Volume == pytest.approx(volume)
    vent.OpeningMargin = 20.0
    document.recompute()
    assert not_settled(document) == []
    with pytest.raises(OpeningError, match="has its opening already: “Roof opening”"):
        make_opening(vent)


def test_a_roof_with_a_hole_has_nothing_to_cut(document) -> None:
    """A vent on one slope stands in its middle, over the hole."""
    slab = Part.makeBox(6000.0, 5000.0, 120.0, Vector(0.0, 0.0, -120.0))
    slab = slab.cut(Part.makeBox(1500.0, 1500.0, 500.0, Vector(2250.0, 1750.0, -300.0)))
    slab.rotate(Vector(), Vector(1, 0, 0), -25.0)
    root = feature(document, Part.Compound([slab]))
    document.recompute()
    vent = on(document, root)
    with pytest.raises(OpeningError, match="The opening cuts nothing: there is no roof inside the vent's legs"):
        make_opening(vent)
    assert opening_of(vent) is None and root.Visibility


def test_a_roof_that_would_be_gone_is_told(document) -> None:
    """A slope of 0.3 m each way under a vent whose opening is wider."""
    root = feature(document, Part.makeBox(300.0, 300.0, 50.0))
    document.recompute()
    vent = on(document, root)
    with pytest.raises(OpeningError, match="would leave nothing of the roof"):
        make_opening(vent)


def test_its_result_is_no_roof_for_its_own_vent(document, roof) -> None:
    vent = on(document, roof)
    opening = make_opening(vent)
    with pytest.raises(RoofError, match=r"is made from the vent .* before the opening is cut into it"):
        stand_on(vent, read_roof(RoofPick(opening)))
    assert not_settled(document) == []


# ---- hidden, shown, undone, saved, copied, deleted


def test_the_roof_is_hidden_and_shown_again(document, roof) -> None:
    vent = on(document, roof)
    document.openTransaction("make")
    opening = make_opening(vent)
    document.commitTransaction()
    assert not roof.Visibility
    document.openTransaction("delete")
    delete_opening(opening)
    document.commitTransaction()
    assert roof.Visibility
    document.undo()    # without a window FreeCAD does not undo visibility; with one see test_opening_gui
    document.recompute()
    opening = opening_of(vent)
    assert opening.Hides == [roof]
    assert roof.Shape.Volume - opening.Shape.Volume == pytest.approx(plan_area(vent) * THICK, rel=1e-6)
    document.undo()
    assert opening_of(vent) is None
    document.redo()
    document.recompute()
    assert opening_of(vent).Shape.Volume == pytest.approx(roof.Shape.Volume - plan_area(vent) * THICK, rel=1e-9)
    assert not_settled(document) == []


def test_what_a_link_to_a_part_shows_stays_shown(document) -> None:
    root, path, _ = roofs.link_to_a_part(document)
    document.recompute()
    opening = make_opening(on(document, root, path))
    assert opening.Hides == []
    assert document.getObject("Roof").Visibility and document.getObject("Twin").Visibility


def test_saved_and_opened_it_is_the_same_and_not_touched(document, roof, capfd) -> None:
    vent = on(document, roof)
    opening = make_opening(vent, RidgeBoard=BOARD, RidgeBoards=[rafter(document, 0.0)])
    document.recompute()
    volume, done, name = opening.Shape.Volume, opening.Done, opening.Name
    with tempfile.TemporaryDirectory() as folder:
        path = os.path.join(folder, "barn.FCStd")
        document.saveAs(path)
        FreeCAD.closeDocument(document.Name)
        capfd.readouterr()
        document = FreeCAD.openDocument(path)
    opening = document.getObject(name)
    assert not_settled(document) == []
    assert opening.Shape.Volume == pytest.approx(volume)
    opening.Vent.AlongRidge = 500.0
    document.recompute()
    assert opening.Shape.Volume == pytest.approx(volume)
    assert not near(opening.Shape.CenterOfMass, Vector()) and opening.Done == done
    assert not document.getObject("Roof").Visibility
    out, told = capfd.readouterr()
    assert errors_in(out + told) == []


def test_a_copy_with_its_vent_lives_by_itself(document, roof) -> None:
    vent = on(document, roof)
    opening = make_opening(vent)
    copy = document.copyObject(opening, True)
    copy = copy if not isinstance(copy, (list, tuple)) else next(each for each in copy if each.Name.startswith("RoofOpening"))
    document.recompute()
    assert copy.Vent != vent and copy.Shape.Volume == pytest.approx(opening.Shape.Volume)
    delete_opening(copy)
    document.recompute()
    assert not roof.Visibility    # the first opening still hides it
    assert not_settled(document) == []


def test_deleting_the_vent_first_leaves_the_opening_as_it_was(document, roof) -> None:
    vent = on(document, roof)
    opening = make_opening(vent)
    volume = opening.Shape.Volume
    delete_vent(vent)
    document.recompute()
    assert "The vent of this opening is gone" in opening.getStatusString()
    assert opening.Shape.Volume == pytest.approx(volume)
    delete_opening(opening)
    document.recompute()
    assert roof.Visibility and not_settled(document) == []


def test_deleting_the_opening_first_leaves_the_vent(document, roof) -> None:
    vent = on(document, roof)
    delete_opening(make_opening(vent))
    document.recompute()
    assert roof.Visibility and not_settled(document) == []
    assert make_opening(vent).Shape.isValid()


def test_it_says_what_holds_the_air_back(document, roof) -> None:
    vent = on(document, roof)
    opening = make_opening(vent)
    assert opening.ClearArea.Value > opening.LouverArea.Value
    assert "is no narrower than the louvers" in opening.Narrowest
    opening.RidgeBoard = 500.0
    document.recompute()
    assert opening.ClearArea.Value < opening.LouverArea.Value
    assert "holds the air back" in opening.Narrowest
