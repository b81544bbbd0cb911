# SPDX-License-Identifier: LGPL-2.1-or-later
"""A vent seated on a roof that is drawn: it reads the roof, follows it, can be dragged along it, and survives its loss."""

from __future__ import annotations

import FreeCAD
import pytest
import roofs
from FreeCAD import Placement, Vector
from roofs import LEFT, LONG, RIGHT, TURNED, feature, roof_shape
from vents import errors_in, near, not_settled

from louverwright.core.parameters import BY_NAME
from louverwright.core.roof_planes import BACK, FRONT, MIDDLE, RoofError
from louverwright.features.roof_reading import RoofPick, read_roof
from louverwright.features.row import make_row, update_row
from louverwright.features.seat import READ, Seat, stand_free, stand_on
from louverwright.features.standing import global_placement, same_place
from louverwright.features.vent import links_of, make_vent, parts_of


def seated(document, root, along=0.0, end=MIDDLE, path="", **values):
    vent = make_vent(document, **values)
    stand_on(vent, read_roof(RoofPick(root, (path,) if path else ())), along, end)
    document.recompute()
    return vent


def base(vent):
    return global_placement(vent).Base


def stands_dry(vent, roof):
    """Whether the vent touches the roof and shares no wood with it; what lies above the roof's top can do neither."""
    top = roof.Shape.BoundBox.ZMax + 1.0
    low = [solid for solid in vent.Shape.Solids if solid.BoundBox.ZMin < top]
    return (any(solid.distToShape(roof.Shape)[0] < 1e-3 for solid in low)
            and sum(solid.common(roof.Shape).Volume for solid in low) < 1.0)


def pitches(vent):
    """Both pitches, the smaller first."""
    return sorted([vent.PitchLeft.Value, vent.PitchRight.Value])


def on(frame, x):
    """The point ``x`` along the ridge of a roof in its frame."""
    return frame.multVec(Vector(x, 0.0, 0.0))


def test_it_reads_pitches_and_ridge_and_stands_there(document, roof) -> None:
    vent = seated(document, roof, 2000.0, BACK)
    assert pitches(vent) == pytest.approx([RIGHT, LEFT])
    assert vent.RidgeLength.Value == pytest.approx(LONG)
    assert vent.Seat == "ridge"
    assert near(base(vent), on(TURNED, 2000.0)) or near(base(vent), on(TURNED, LONG - 2000.0))
    assert not_settled(document) == []
    assert vent.Shape.Volume == pytest.approx(sum(part.Shape.Volume for part in parts_of(vent)), rel=1e-9)


def test_its_feet_stand_on_the_roof(document, roof) -> None:
    vent = seated(document, roof)
    assert stands_dry(vent, roof)


def test_a_place_is_the_same_from_whichever_end_it_is_told(roof) -> None:
    reading = read_roof(RoofPick(roof, ()))
    for seat in (Seat(reading, 1500.0, BACK), Seat(reading, 2500.0, FRONT), Seat(reading, -700.0, MIDDLE)):
        stands = reading.planes.place(seat.along, seat.end).origin
        for end in (BACK, FRONT, MIDDLE):
            other = seat.counted_from(end)
            assert other.end == end and other.counted_from(seat.end).along == pytest.approx(seat.along)
            assert near(Vector(*reading.planes.place(other.along, end).origin), Vector(*stands))
        back = seat.turned()
        assert near(Vector(*back.reading.planes.place(back.along, back.end).origin), Vector(*stands))


@pytest.mark.parametrize("offset", [80.0, -80.0])
def test_beside_the_ridge_it_stands_where_the_offset_says(document, roof, offset) -> None:
    vent = seated(document, roof, 2000.0, BACK, ridge_offset=offset)
    left = vent.Placement.Rotation.multVec(Vector(0.0, 1.0, 0.0))
    beside = [base(vent) - left * offset - on(TURNED, x) for x in (2000.0, LONG - 2000.0)]
    assert min(each.Length for each in beside) < 1e-6
    assert stands_dry(vent, roof)


def test_sized_by_the_ridge_it_has_just_read(document, roof) -> None:
    vent = seated(document, roof, width=0.0, ridge_length=9600.0)
    assert vent.OverallWidth.Value == pytest.approx(LONG / 12.0 * 1.25)    # 1.25 in for each foot of ridge
    assert vent.Shape.BoundBox.DiagonalLength > 0.0


def test_what_is_read_cannot_be_entered_until_it_stands_free(document, roof) -> None:
    vent = seated(document, roof)
    names = [BY_NAME[name].property_name for name in READ]
    assert all("ReadOnly" in vent.getEditorMode(name) for name in names)
    place = FreeCAD.Placement(vent.Placement)
    stand_free(vent)
    document.recompute()
    assert not any("ReadOnly" in vent.getEditorMode(name) for name in names)
    assert same_place(vent.Placement, place)
    vent.PitchLeft = 30.0
    roof.Placement = Placement()
    document.recompute()
    assert vent.PitchLeft.Value == 30.0
    assert same_place(vent.Placement, place)


def test_it_follows_pitch_place_and_length(document, roof) -> None:
    vent = seated(document, roof, 0.0, MIDDLE)
    roof.Shape = roofs.prism(roofs.section(35.0, 22.0), 0.0, 7000.0)
    roof.Placement = moved = Placement(Vector(1000.0, 2000.0, 500.0), FreeCAD.Rotation(Vector(0, 0, 1), -20.0))
    document.recompute()
    assert pitches(vent) == pytest.approx([22.0, 35.0])
    assert vent.RidgeLength.Value == pytest.approx(7000.0)
    assert near(base(vent), on(moved, 3500.0))
    assert not_settled(document) == []
    assert vent.Shape.Volume == pytest.approx(sum(part.Shape.Volume for part in parts_of(vent)), rel=1e-9)


@pytest.mark.parametrize("kind", ["site", "barn"])
def test_it_follows_a_moved_part_from_inside_and_outside(document, kind) -> None:
    site, path, _ = roofs.nested(document)
    document.recompute()
    vent = seated(document, site, 1000.0, BACK, path)
    within = document.getObject("Barn") if kind == "barn" else site
    within.addObject(vent)
    document.recompute()
    document.recompute()
    before = base(vent)
    site.Placement = Placement(Vector(0.0, 0.0, 777.0), FreeCAD.Rotation()).multiply(site.Placement)
    document.recompute()
    assert near(base(vent), before + Vector(0.0, 0.0, 777.0))
    assert not_settled(document) == []


def test_a_number_from_either_end_moves_it(document, roof) -> None:
    vent = seated(document, roof, 2500.0, BACK)
    there = base(vent)
    vent.FromEnd, vent.AlongRidge = FRONT, LONG - 2500.0
    document.recompute()
    assert near(base(vent), there)
    vent.FromEnd, vent.AlongRidge = MIDDLE, 0.0
    document.recompute()
    assert near(base(vent), on(TURNED, LONG / 2.0))


@pytest.mark.parametrize(("end", "sign"), [(BACK, 1.0), (FRONT, -1.0), (MIDDLE, 1.0)])
def test_dragged_along_the_ridge_it_keeps_the_distance_and_nothing_else(document, roof, end, sign) -> None:
    start = 0.0 if end == MIDDLE else 3000.0
    vent = seated(document, roof, start, end)
    along = vent.Placement.Rotation.multVec(Vector(1.0, 0.0, 0.0))
    place, there = Placement(vent.Placement), base(vent)
    place.Base = place.Base + along * 750.0 + Vector(0.0, 0.0, 400.0)
    vent.Placement = place
    document.recompute()
    assert vent.AlongRidge.Value == pytest.approx(start + sign * 750.0)
    assert near(base(vent), there + along * 750.0)
    assert not_settled(document) == []


def test_taking_a_seat_says_nothing_in_the_log(document, roof, capfd) -> None:
    """FreeCAD writes there what goes wrong in an observer or when a property changes, and goes on."""
    vent = seated(document, roof, 3000.0, BACK)
    vent.Placement.Base = vent.Placement.Base + vent.Placement.Rotation.multVec(Vector(500.0, 0.0, 0.0))
    document.recompute()
    out, told = capfd.readouterr()
    assert errors_in(out + told) == []


def test_dragged_past_the_end_it_stops_there(document, roof) -> None:
    vent = seated(document, roof, 3000.0, BACK)
    place = Placement(vent.Placement)
    place.Base = place.Base + vent.Placement.Rotation.multVec(Vector(1.0, 0.0, 0.0)) * 1e6
    vent.Placement = place
    document.recompute()
    assert vent.AlongRidge.Value == pytest.approx(LONG)


def test_a_distance_past_the_end_is_told_and_the_vent_stays(document, roof) -> None:
    vent = seated(document, roof, 3000.0, BACK)
    there = base(vent)
    vent.AlongRidge = 10 * LONG
    document.recompute()
    assert "past the end of the ridge" in vent.getStatusString()
    assert near(base(vent), there)
    vent.AlongRidge = 3000.0
    document.recompute()
    assert not_settled(document) == []


def test_a_lost_roof_leaves_the_vent_and_says_pick_again(document, roof) -> None:
    vent = seated(document, roof, 3000.0, BACK)
    there, volume = base(vent), vent.Shape.Volume
    document.removeObject(roof.Name)
    document.recompute()
    assert "ick the roof again" in vent.getStatusString()
    assert near(base(vent), there)
    assert vent.Shape.Volume == pytest.approx(volume)
    vent.Width = 1100.0
    document.recompute()
    assert vent.OverallWidth.Value == pytest.approx(1100.0)    # it can still be changed
    assert "ick the roof again" in vent.getStatusString()
    other = feature(document, roof_shape(30.0, 30.0), "Other")
    document.recompute()
    stand_on(vent, read_roof(RoofPick(other)))
    document.recompute()
    assert (vent.PitchLeft.Value, vent.PitchRight.Value) == (pytest.approx(30.0), pytest.approx(30.0))
    assert not_settled(document) == []


def test_a_row_is_spaced_on_the_ridge_that_is_read(document, roof) -> None:
    vent = make_row(document, ridge_length=6000.0, vents=3, width=700.0)
    stand_on(vent, read_roof(RoofPick(roof)))
    document.recompute()
    update_row(vent)
    places = [base(vent), *(link.Placement.Base for link in links_of(vent))]
    wanted = [on(TURNED, LONG * (2 * i + 1) / 6.0) for i in range(3)]
    assert all(any(near(place, want, 1e-3) for want in wanted) for place in places)
    assert not_settled(document) == []


def test_what_a_part_has_read_before_the_roof_was_read_is_not_used(document, roof) -> None:
    """Parts and roof change in one recompute: the parts' turn comes first, and the roof's pitches with the vent's own."""
    vent = seated(document, roof)
    roof.Shape = roof_shape(22.0, 35.0)
    for part in parts_of(vent):
        part.touch()
    document.recompute()
    assert stands_dry(vent, roof)
    document.recompute()
    assert not_settled(document) == []
    assert vent.Shape.Volume == pytest.approx(sum(part.Shape.Volume for part in parts_of(vent)), rel=1e-9)


@pytest.mark.parametrize(("pitch", "seat"), [(20.0, "one slope"), (0.0, "one slope")])
def test_on_one_slope_it_is_a_curb(document, pitch, seat) -> None:
    from math import radians, tan

    fall = 6000.0 * tan(radians(pitch))
    roof = feature(document, roofs.prism([(6000.0, -fall), (0.0, 0.0), (0.0, -200.0), (6000.0, -fall - 200.0)]))
    document.recompute()
    vent = seated(document, roof)
    assert (vent.Seat, vent.PitchLeft.Value) == (seat, pytest.approx(pitch, abs=1e-9))
    assert stands_dry(vent, roof)


def test_an_expression_wins_over_the_roof(document, roof) -> None:
    vent = make_vent(document)
    vent.setExpression("PitchLeft", "31 deg")
    stand_on(vent, read_roof(RoofPick(roof)))
    document.recompute()
    assert vent.PitchLeft.Value == pytest.approx(31.0)


def test_saved_and_reopened_it_still_follows_and_nothing_is_touched(document, roof, tmp_path) -> None:
    vent = seated(document, roof, 2000.0, BACK)
    there = base(vent)
    document.saveAs(str(tmp_path / "barn.FCStd"))
    FreeCAD.closeDocument(document.Name)
    again = FreeCAD.openDocument(str(tmp_path / "barn.FCStd"))
    vent, roof = again.getObject("Vent"), again.getObject("Roof")
    assert [obj.Name for obj in again.Objects if "Touched" in obj.State] == []
    assert "ReadOnly" in vent.getEditorMode("PitchLeft")
    roof.Placement.Base.z += 100.0
    again.recompute()
    assert near(base(vent), there + Vector(0.0, 0.0, 100.0))


@pytest.mark.parametrize("number", range(4))
def test_undo_and_redo_of_taking_a_seat(document, roof, number) -> None:
    """FreeCAD brings properties back in an order that changes with how many they are: 1 to 12 own ones have shown it all."""
    vent = make_vent(document)
    for own in range(4 * number):
        vent.addProperty("App::PropertyLength", f"Own{own}", "Mine")
    document.openTransaction("Stand on the roof")
    for own in range(4 * number):
        setattr(vent, f"Own{own}", 1.0)
    stand_on(vent, read_roof(RoofPick(roof)), 2000.0, BACK)
    document.recompute()
    document.commitTransaction()
    seat = base(vent)
    document.undo()
    assert near(base(vent), Vector())
    assert vent.PitchLeft.Value == pytest.approx(33.69)
    document.redo()
    assert near(base(vent), seat)
    document.recompute()
    assert near(base(vent), seat)
    assert not_settled(document) == []


def test_a_place_past_the_ridge_is_refused_before_anything_is_changed(document, roof) -> None:
    vent = make_vent(document)
    with pytest.raises(RoofError, match="past the end of the ridge"):
        stand_on(vent, read_roof(RoofPick(roof)), -1.0e5, BACK)
    assert vent.RoofSignature == ""
