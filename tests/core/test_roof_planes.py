# SPDX-License-Identifier: LGPL-2.1-or-later
"""Roofs as faces given by their corners: what is read is held against the numbers that they were made from.

A roof is made here in a frame of its own, ridge along X, then turned about the plumb line and moved.
"""

from __future__ import annotations

import json
from collections.abc import Sequence
from itertools import pairwise
from math import atan2, cos, degrees, radians, sin, sqrt, tan

import pytest

from louverwright.core.geometry import (
    IDENTITY,
    Z_AXIS,
    Placement,
    Vec,
    add,
    cross,
    dot,
    length,
    newell,
    scale,
    sub,
    turned,
    unit,
)
from louverwright.core.plan import BarnRoof
from louverwright.core.roof_planes import (
    BACK,
    CROOKED_RIDGE,
    FLAT,
    FRONT,
    LEVEL_RIDGE,
    MIDDLE,
    ONE_SLOPE,
    REACH,
    RIDGE,
    Patch,
    RoofError,
    RoofPlanes,
    merged,
    one_slope,
    slopes_of,
    two_slopes,
)
from louverwright.core.roof_search import RoofLost, alike, find_again, ridge_at, roof_among, signature

CLOSE = 1e-9


def face(corners: Sequence[Vec], number: int = 1, of: int = 0) -> Patch:
    """A convex plane face, its corners anticlockwise as seen from outside."""
    first = corners[0]
    halves = [(scale(add(add(first, a), b), 1.0 / 3.0), length(cross(sub(a, first), sub(b, first))) / 2.0)
              for a, b in pairwise(corners[1:])]
    area = sum(size for _, size in halves)
    centre = (0.0, 0.0, 0.0)
    for point, size in halves:
        centre = add(centre, scale(point, size / area))
    return Patch(unit(newell(tuple(corners))), centre, area, tuple(pairwise((*corners, first))), of, number)


def frame_at(azimuth: float = 0.0, origin: Vec = (0.0, 0.0, 0.0)) -> Placement:
    return Placement.from_axes(origin, turned(azimuth), Z_AXIS)


def gable(left: float, right: float, long: float = 9000.0, span: float = 4000.0, *, frame: Placement = IDENTITY,
          gap: float = 0.0) -> list[Patch]:
    """Two slopes of these pitches, level ``span`` each, from x = 0 to ``long``, with the ridge at y = 0 and z = 0."""
    drop_left, drop_right = (tan(radians(pitch)) for pitch in (left, right))
    faces = [face([(0.0, gap, -gap * drop_left), (long, gap, -gap * drop_left), (long, span, -span * drop_left),
                   (0.0, span, -span * drop_left)], 1),
             face([(long, -gap, -gap * drop_right), (0.0, -gap, -gap * drop_right), (0.0, -span, -span * drop_right),
                   (long, -span, -span * drop_right)], 2)]
    return [each.moved(frame) for each in faces]


def near(a: Vec, b: Vec, within: float = 1e-6) -> bool:
    return length(sub(a, b)) <= within


# ---- a ridge


def test_eight_in_twelve() -> None:
    """8 in 12 is atan(8/12) = 33.690 068°, by arithmetic."""
    left = face([(0.0, 0.0, 8.0), (100.0, 0.0, 8.0), (100.0, 12.0, 0.0), (0.0, 12.0, 0.0)])
    right = face([(100.0, 0.0, 8.0), (0.0, 0.0, 8.0), (0.0, -12.0, 0.0), (100.0, -12.0, 0.0)])
    roof = two_slopes(left, right)
    assert roof.pitch_left == pytest.approx(33.69006752597979, abs=CLOSE)
    assert roof.pitch_right == pytest.approx(33.69006752597979, abs=CLOSE)
    assert (roof.kind, roof.ridge_length, roof.ridge_height, roof.azimuth) == (RIDGE, 100.0, 8.0, 0.0)


@pytest.mark.parametrize("azimuth", [0.0, 17.3, 90.0, 180.0, 213.7, 359.0])
@pytest.mark.parametrize(("left", "right"), [(33.69, 33.69), (40.0, 18.0), (5.0, 60.0), (0.0, 30.0), (12.0, 0.0)])
def test_pitches_ridge_and_direction_of_a_turned_roof(left: float, right: float, azimuth: float) -> None:
    frame = frame_at(azimuth, (12000.0, -4000.0, 5432.1))
    roof = two_slopes(*gable(left, right, frame=frame))
    assert roof.pitch_left == pytest.approx(left, abs=1e-6)
    assert roof.pitch_right == pytest.approx(right, abs=1e-6)
    assert near(roof.ridge[0], frame.origin)
    assert near(roof.ridge[1], frame.point((9000.0, 0.0, 0.0)))
    assert roof.azimuth == pytest.approx(azimuth, abs=1e-6)
    assert roof.ridge_height == pytest.approx(5432.1, abs=1e-6)


def test_the_slopes_are_those_of_the_vents_own_roof() -> None:
    """In the vent's frame the planes read are those that its parts are trimmed by."""
    planes = two_slopes(*gable(40.0, 18.0, frame=frame_at(77.0, (1.0, 2.0, 3000.0))))
    for offset in (0.0, 130.0, -250.0):
        place = planes.place(700.0, BACK, offset)
        built = BarnRoof(planes.pitch_left, planes.pitch_right, -offset).slopes()
        for patch, plane in zip(planes.slopes, built, strict=True):
            assert near(place.local_direction(patch.normal), scale(plane.normal, -1.0), CLOSE)    # waste lies below
            assert plane.height(place.local_point(patch.centre)) == pytest.approx(0.0, abs=1e-6)


def test_one_slope_is_that_of_the_vents_own_roof() -> None:
    slope = gable(25.0, 25.0, frame=frame_at(31.0))[1]
    planes = one_slope(slope)
    for offset in (0.0, 400.0, -400.0):
        place = planes.place(100.0, MIDDLE, offset)
        plane = BarnRoof(planes.pitch_left, planes.pitch_right, single=True).slopes()[0]
        assert near(place.local_direction(slope.normal), scale(plane.normal, -1.0), CLOSE)
        assert slope.height(place.origin) == pytest.approx(0.0, abs=1e-6)


def test_the_order_of_the_slopes_settles_which_is_left() -> None:
    first, second = gable(40.0, 18.0)
    ahead, back = two_slopes(first, second), two_slopes(second, first)
    assert (ahead.pitch_left, back.pitch_left) == (pytest.approx(40.0), pytest.approx(18.0))
    assert (ahead.azimuth, back.azimuth) == (pytest.approx(0.0), pytest.approx(180.0))
    assert ahead.turned() == back


def test_places_along_the_ridge() -> None:
    roof = two_slopes(*gable(30.0, 30.0, frame=frame_at(90.0, (0.0, 0.0, 2500.0))))
    assert near(roof.place().origin, (0.0, 4500.0, 2500.0))
    assert near(roof.place(1000.0, BACK).origin, (0.0, 1000.0, 2500.0))
    assert near(roof.place(1000.0, FRONT).origin, (0.0, 8000.0, 2500.0))
    assert near(roof.place(-500.0).origin, (0.0, 4000.0, 2500.0))
    assert near(roof.place(0.0, BACK, 120.0).origin, (-120.0, 0.0, 2500.0))    # left of +Y is −X
    place = roof.place()
    assert near(place.x, (0.0, 1.0, 0.0), CLOSE) and near(place.z, Z_AXIS, CLOSE)
    assert near(place.y, cross(place.z, place.x), CLOSE)


@pytest.mark.parametrize(("along", "end", "past"), [(9200.0, BACK, "200 mm"), (-70.0, FRONT, "70 mm"),
                                                    (4600.0, MIDDLE, "100 mm")])
def test_a_place_past_the_end_is_refused(along: float, end: str, past: str) -> None:
    with pytest.raises(RoofError, match=f"{past} past the end of the ridge, which is 9000 mm"):
        two_slopes(*gable(30.0, 30.0)).place(along, end)


# ---- how long it really is


def test_the_ridge_is_what_both_slopes_have() -> None:
    left, right = gable(30.0, 30.0)[0], gable(30.0, 30.0, 5000.0)[1]
    assert two_slopes(left, right).ridge_length == pytest.approx(5000.0)


def hip_roof() -> list[Patch]:
    """12 m by 8 m, all four slopes at 30°, so that the ridge is 12 − 8 = 4 m (by arithmetic)."""
    high = 4000.0 * tan(radians(30.0))
    a, b, c, d = (0.0, 0.0, 0.0), (12000.0, 0.0, 0.0), (12000.0, 8000.0, 0.0), (0.0, 8000.0, 0.0)
    e, f = (4000.0, 4000.0, high), (8000.0, 4000.0, high)
    return [face([a, b, f, e], 1), face([b, c, f], 2), face([c, d, e, f], 3), face([d, a, e], 4)]


def test_a_hip_roofs_ridge_is_its_upper_edge_and_not_as_long_as_its_eaves() -> None:
    roof = roof_among(hip_roof())
    assert roof.ridge_length == pytest.approx(4000.0, abs=1e-6)
    assert {each.number for each in roof.slopes} == {1, 3}
    assert roof.pitch_left == pytest.approx(30.0, abs=1e-9)


def test_the_hip_itself_is_refused() -> None:
    faces = hip_roof()
    slope = degrees(atan2(tan(radians(30.0)), sqrt(2.0)))    # on equal pitches the hip runs at 45° in plan
    with pytest.raises(RoofError, match=f"slopes {slope:.1f}°: that is a hip or a valley"):
        two_slopes(faces[0], faces[1])


def test_faces_of_one_plane_are_one_slope() -> None:
    whole = gable(35.0, 20.0)
    high = -4000.0 * tan(radians(35.0))
    cut = [face([(0.0, 0.0, 0.0), (3000.0, 0.0, 0.0), (3000.0, 4000.0, high), (0.0, 4000.0, high)], 7),
           face([(3000.0, 0.0, 0.0), (9000.0, 0.0, 0.0), (9000.0, 2000.0, high / 2), (3000.0, 2000.0, high / 2)], 3),
           face([(3000.0, 2000.0, high / 2), (9000.0, 2000.0, high / 2), (9000.0, 4000.0, high), (3000.0, 4000.0, high)], 5)]
    slopes = slopes_of([*cut, whole[1]])
    assert [each.number for each in slopes] == [2, 3]
    roof = two_slopes(slopes[1], slopes[0])
    assert near(slopes[1].centre, whole[0].centre)
    assert slopes[1].area == pytest.approx(whole[0].area)
    assert roof.ridge_length == pytest.approx(9000.0)


def test_faces_of_two_objects_are_not_merged() -> None:
    first = gable(35.0, 20.0)[0]
    assert len(merged([first, Patch(first.normal, first.centre, first.area, first.edges, 1, 1)])) == 2


def test_a_broken_ridge_is_its_longest_run_or_the_one_that_is_meant() -> None:
    left, right = gable(30.0, 30.0)
    low = -4000.0 * tan(radians(30.0))
    parts = [face([(x, 0.0, 0.0), (y, 0.0, 0.0), (y, 4000.0, low), (x, 4000.0, low)], number)
             for number, (x, y) in enumerate([(0.0, 2500.0), (3000.0, 9000.0)])]
    (broken,) = merged(parts)
    assert two_slopes(broken, right).ridge_length == pytest.approx(6000.0)
    assert two_slopes(broken, right, (1000.0, 0.0, 0.0)).ridge_length == pytest.approx(2500.0)
    assert two_slopes(left, right).ridge_length == pytest.approx(9000.0)


def test_slopes_that_end_short_of_the_ridge_still_have_one() -> None:
    pitch = 45.0
    roof = two_slopes(*gable(pitch, pitch, gap=0.9 * REACH * cos(radians(pitch))))
    assert near(roof.ridge[0], (0.0, 0.0, 0.0)) and roof.ridge_length == pytest.approx(9000.0)
    with pytest.raises(RoofError, match="do not reach each other"):
        two_slopes(*gable(pitch, pitch, gap=1.1 * REACH * cos(radians(pitch))))


# ---- what is no ridge


def test_a_valley_is_refused() -> None:
    left, right = gable(30.0, 20.0)
    first = face([(0.0, 0.0, 0.0), (9000.0, 0.0, 0.0), (9000.0, 4000.0, 2000.0), (0.0, 4000.0, 2000.0)])
    second = face([(9000.0, 0.0, 0.0), (0.0, 0.0, 0.0), (0.0, -4000.0, 1500.0), (9000.0, -4000.0, 1500.0)])
    with pytest.raises(RoofError, match="they meet in a valley"):
        two_slopes(first, second)
    with pytest.raises(RoofError, match="do not meet in a ridge"):
        two_slopes(left.moved(frame_at(0.0, (0.0, -5000.0, 0.0))), right)
    assert two_slopes(left, right).kind == RIDGE


def test_a_break_of_the_slope_is_refused() -> None:
    upper = gable(25.0, 25.0)[0]
    low = upper.edges[2][0][2]
    lower = face([(0.0, 4000.0, low), (9000.0, 4000.0, low), (9000.0, 5000.0, low - 2000.0), (0.0, 5000.0, low - 2000.0)])
    with pytest.raises(RoofError, match="fall the same way"):
        two_slopes(upper, lower)


def test_parallel_and_level_planes_are_refused() -> None:
    slope = gable(25.0, 25.0)[0]
    up = frame_at(0.0, (0.0, 0.0, 500.0))
    with pytest.raises(RoofError, match=rf"parallel, at 25.0°, {500.0 * cos(radians(25.0)):.0f} mm apart"):
        two_slopes(slope, slope.moved(up))
    with pytest.raises(RoofError, match="in one plane"):
        two_slopes(slope, slope)
    level = gable(0.0, 0.0)[0]
    with pytest.raises(RoofError, match="both level, 500 mm apart"):
        two_slopes(level, level.moved(up))


def tilted(degrees_along: float) -> list[Patch]:
    """A gable roof whose ridge rises along +X."""
    x = (cos(radians(degrees_along)), 0.0, sin(radians(degrees_along)))
    frame = Placement.from_axes((0.0, 0.0, 0.0), x, cross(x, (0.0, 1.0, 0.0)))
    return gable(35.0, 25.0, frame=frame)


def test_a_ridge_that_is_not_level() -> None:
    roof = two_slopes(*tilted(0.9 * LEVEL_RIDGE))
    assert roof.ridge[1][2] == pytest.approx(9000.0 * sin(radians(0.9 * LEVEL_RIDGE)))
    assert roof.place().x[2] == 0.0
    with pytest.raises(RoofError, match=r"The ridge slopes 0.50° along.*enter the drops"):
        two_slopes(*tilted(0.5))
    with pytest.raises(RoofError, match=r"enter the drops"):
        two_slopes(*tilted(0.99 * CROOKED_RIDGE))
    with pytest.raises(RoofError, match=r"slopes 4.0°: that is a hip or a valley"):
        two_slopes(*tilted(4.0))


# ---- one slope and flat


@pytest.mark.parametrize("azimuth", [0.0, 41.0, 270.0])
def test_one_slope_falls_to_the_left(azimuth: float) -> None:
    frame = frame_at(azimuth, (500.0, 600.0, 700.0))
    slope = gable(22.0, 10.0, frame=frame)[0]
    roof = roof_among([slope])
    assert (roof.kind, roof.right) == (ONE_SLOPE, None)
    assert (roof.pitch_left, roof.pitch_right) == (pytest.approx(22.0, abs=1e-6), pytest.approx(-22.0, abs=1e-6))
    assert roof.azimuth == pytest.approx(azimuth, abs=1e-6)
    assert roof.ridge_length == pytest.approx(9000.0, abs=1e-6)
    assert near(roof.place().origin, slope.centre)
    assert dot(cross(Z_AXIS, roof.along), slope.fall) == pytest.approx(1.0)
    assert roof.turned() == roof


def test_a_flat_roof_lies_along_its_longest_edge_or_as_it_is_told() -> None:
    slope = gable(0.0, 0.0, frame=frame_at(30.0, (0.0, 0.0, 3000.0)))[0]
    roof = one_slope(slope)
    assert (roof.kind, roof.pitch_left, roof.ridge_height) == (FLAT, pytest.approx(0.0, abs=1e-6), pytest.approx(3000.0))
    assert roof.azimuth % 180.0 == pytest.approx(30.0)
    assert roof.turned().azimuth == pytest.approx((roof.azimuth + 180.0) % 360.0)
    assert one_slope(slope, turned(210.0)).azimuth == pytest.approx(210.0)
    assert one_slope(slope, turned(120.0)).ridge_length == pytest.approx(4000.0)


# ---- which of many


def test_of_a_whole_building_the_longest_ridge() -> None:
    main = gable(35.0, 35.0)
    wing = [Patch(each.normal, each.centre, each.area, each.edges, 0, each.number + 10)
            for each in gable(40.0, 40.0, 3000.0, 1500.0, frame=frame_at(90.0, (2000.0, 4000.0, -1000.0)))]
    floor = face([(0.0, -4000.0, -9000.0), (9000.0, -4000.0, -9000.0), (9000.0, 4000.0, -9000.0), (0.0, 4000.0, -9000.0)], 30)
    roof = roof_among(slopes_of([*wing, floor, *main]))
    assert {each.number for each in roof.slopes} == {1, 2}
    assert roof.left.number == 1


def test_two_ridges_of_one_length_are_not_guessed_between() -> None:
    twins = [*gable(30.0, 30.0), *(Patch(each.normal, each.centre, each.area, each.edges, 0, each.number + 2)
                                   for each in gable(30.0, 30.0, frame=frame_at(0.0, (0.0, 8000.0, 0.0))))]
    with pytest.raises(RoofError, match="more than one ridge of 9000 mm"):
        roof_among(twins)


def test_a_gambrel_has_its_ridge_between_the_upper_slopes() -> None:
    upper = gable(25.0, 25.0, span=2000.0)
    low = -2000.0 * tan(radians(25.0))
    eave = low - 2000.0
    lower = [face([(0.0, 2000.0, low), (9000.0, 2000.0, low), (9000.0, 3200.0, eave), (0.0, 3200.0, eave)], 3),
             face([(9000.0, -2000.0, low), (0.0, -2000.0, low), (0.0, -3200.0, eave), (9000.0, -3200.0, eave)], 4)]
    assert {each.number for each in roof_among([*lower, *upper]).slopes} == {1, 2}


def test_nothing_that_looks_up() -> None:
    with pytest.raises(RoofError, match="no roof to stand a vent on"):
        roof_among([])


def test_edges() -> None:
    faces = hip_roof()
    ridge = faces[0].edges[2]
    assert ridge_at(ridge, faces).ridge_length == pytest.approx(4000.0)
    with pytest.raises(RoofError, match="is level, as an eave is, and has one slope beside it"):
        ridge_at(faces[0].edges[0], faces)
    with pytest.raises(RoofError, match="hip or a valley"):
        ridge_at(faces[0].edges[1], faces)
    with pytest.raises(RoofError, match="as a verge does"):
        ridge_at(gable(30.0, 30.0)[0].edges[1], gable(30.0, 30.0))
    with pytest.raises(RoofError, match="no slope beside it"):
        ridge_at(((0.0, 0.0, -9000.0), (100.0, 0.0, -9000.0)), faces)


def test_the_edge_of_a_slab_that_ends_short_of_the_ridge() -> None:
    faces = gable(30.0, 30.0, gap=60.0)
    for each in faces:
        roof = ridge_at(each.edges[0], faces)
        assert near(roof.ridge[0], (0.0, 0.0, 0.0)) and roof.left.number == 1


# ---- found again


def numbered(faces: Sequence[Patch], *numbers: int) -> list[Patch]:
    return [Patch(each.normal, each.centre, each.area, each.edges, each.of, number)
            for each, number in zip(faces, numbers, strict=True)]


def kept(roof: RoofPlanes, frame: Placement = IDENTITY) -> str:
    return signature(roof, [frame])


def test_found_again_under_other_numbers_and_in_another_place() -> None:
    old = two_slopes(*gable(40.0, 18.0)[::-1])
    text = kept(old)
    moved = frame_at(123.0, (7000.0, 8000.0, 900.0))
    now = find_again(text, slopes_of(numbered(gable(40.0, 18.0, frame=moved), 9, 4)), [moved])
    assert now.left.number == 4
    assert now.pitch_left == pytest.approx(18.0, abs=1e-6)
    assert now.azimuth == pytest.approx(303.0, abs=1e-6)
    assert near(now.ridge[0], moved.point(old.ridge[0])) and near(now.ridge[1], moved.point(old.ridge[1]))


def test_found_again_after_both_pitches_and_the_height_have_changed() -> None:
    text = kept(two_slopes(*gable(40.0, 18.0)))
    up = frame_at(0.0, (0.0, 0.0, 300.0))
    dormer = numbered(gable(45.0, 45.0, 1500.0, 700.0, frame=frame_at(90.0, (4000.0, 500.0, -200.0))), 20, 21)
    now = find_again(text, slopes_of([*dormer, *numbered(gable(36.0, 25.0, frame=up), 6, 5)]), [IDENTITY])
    assert (now.pitch_left, now.pitch_right) == (pytest.approx(36.0), pytest.approx(25.0))
    assert near(now.ridge[0], (0.0, 0.0, 300.0))


def test_lost() -> None:
    text = kept(two_slopes(*gable(40.0, 18.0)))
    with pytest.raises(RoofLost, match="Pick the roof again"):
        find_again(text, slopes_of(gable(40.0, 18.0, frame=frame_at(90.0))), [IDENTITY])
    with pytest.raises(RoofLost, match="Pick the roof again"):
        find_again(text, [], [IDENTITY])
    with pytest.raises(RoofLost, match="Pick the roof again"):
        find_again(kept(roof_among(gable(20.0, 20.0)[:1])), [], [IDENTITY])


def test_one_slope_and_flat_found_again() -> None:
    slope = gable(20.0, 20.0)[0]
    now = find_again(kept(one_slope(slope)), gable(23.0, 20.0), [IDENTITY])
    assert (now.kind, now.pitch_left) == (ONE_SLOPE, pytest.approx(23.0))
    level = gable(0.0, 0.0)[0]
    text = kept(one_slope(level, (0.0, -1.0, 0.0)))
    moved = frame_at(30.0)
    assert find_again(text, [level.moved(moved)], [moved]).azimuth == pytest.approx(300.0)


def test_the_signature_is_short_and_plain() -> None:
    text = kept(two_slopes(*gable(33.69, 33.69)))
    assert len(text) < 400
    told = json.loads(text)
    assert told["kind"] == RIDGE and len(told["slopes"]) == 2 and len(told["ridge"]) == 2


def test_the_end_of_a_slab_is_no_slope() -> None:
    """A board's end, cut square, looks up as well, and meets its face in an arris as long as the ridge."""
    faces = gable(40.0, 40.0)
    end = face([(9000.0, 0.0, 0.0), (0.0, 0.0, 0.0), (0.0, -100.0, -120.0), (9000.0, -100.0, -120.0)], 9)
    assert roof_among([end, *faces]).slopes == tuple(faces)
    assert ridge_at(faces[0].edges[0], [end, *faces]).slopes == tuple(faces)
    with pytest.raises(RoofError, match="is level, as an eave is, and has one slope beside it"):
        ridge_at(faces[0].edges[0], [end, faces[0]])


def test_signatures_that_differ_in_the_last_figures_are_alike() -> None:
    first = two_slopes(*gable(40.0, 18.0))
    for origin, same in (((0.0, 0.0, 1e-6), True), ((0.0, 0.0, 1e-3), False)):
        second = two_slopes(*gable(40.0, 18.0, frame=frame_at(0.0, origin)))
        assert alike(kept(first), kept(second)) is same
    assert not alike(kept(first), kept(first.turned()))
    assert not alike(kept(first), kept(one_slope(first.left)))


def test_of_two_layers_the_upper_is_the_roof() -> None:
    """Deck and covering in one drawing: equally long ridges, one over the other."""
    covering, deck = gable(35.0, 20.0), numbered(gable(35.0, 20.0, frame=frame_at(0.0, (0.0, 0.0, -60.0))), 3, 4)
    assert {each.number for each in roof_among([*deck, *covering]).slopes} == {1, 2}


def ribbed(count: int) -> list[Patch]:
    """Sheets with ribs 40 mm high and 250 mm apart: crests of 40 mm, troughs of 170 mm, and their sides left out."""
    crests, troughs = frame_at(0.0, (0.0, 0.0, 40.0)), IDENTITY
    found = []
    for start, wide, level in ((0.0, 170.0, troughs), (190.0, 40.0, crests)):
        for rib in range(count):
            at = Placement.from_axes(add(level.origin, (start + 250.0 * rib, 0.0, 0.0)), (1.0, 0.0, 0.0), Z_AXIS)
            number = 10 * rib + (5 if level is crests else 0)
            found += numbered(gable(35.0, 20.0, wide, frame=at), number + 1, number + 2)
    return found


def test_a_vent_stands_on_the_crests_of_a_ribbed_covering() -> None:
    slopes = slopes_of(ribbed(30))
    assert len(slopes) == 4
    roof = roof_among(slopes)
    assert roof.ridge_height == pytest.approx(40.0)
    assert roof.ridge_length == pytest.approx(29 * 250.0 + 40.0)
