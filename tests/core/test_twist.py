# SPDX-License-Identifier: LGPL-2.1-or-later
"""A twisted roof: every leg reaches it, and none is longer than the roof and the allowance ask.

The roof is worked out here from the four drops alone: its corners, and between them straight lines along the ridge and
then across it, less the slopes from the ridge to the smaller drop of each side.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import pairwise
from math import atan, degrees, hypot, radians, sqrt, tan
from typing import Any

import pytest
from making import spec_of, vent

from louverwright.core.assembly import Assembly, board_shell, board_solid
from louverwright.core.checks import check
from louverwright.core.checks_roof import MOST_TWIST
from louverwright.core.dimensions import pitches, sizes
from louverwright.core.feet import feet, ground
from louverwright.core.figures import figures
from louverwright.core.geometry import Vec
from louverwright.core.joints import missing, undeclared
from louverwright.core.spec import make_spec
from louverwright.core.twist import Readings
from louverwright.places import stock_list

DROPS = ("drop_left_front", "drop_left_back", "drop_right_front", "drop_right_back")
#: Values, and half of the rectangle round the plan, along and across the ridge.
VENTS: dict[str, tuple[dict[str, Any], float, float]] = {
    "square": ({"width": 900.0}, 450.0, 450.0),
    "square, with an allowance": ({"width": 900.0, "scribe_allowance": 12.0}, 450.0, 450.0),
    "square, mitred": ({"width": 900.0, "corner": "mitred"}, 450.0, 450.0),
    "square, off the ridge": ({"width": 900.0, "ridge_offset": 130.0}, 450.0, 450.0),
    "square, corner first": ({"width": 900.0, "facing": "corner"}, 450.0 * sqrt(2.0), 450.0 * sqrt(2.0)),
    "hexagon": ({"width": 1_100.0, "sides": 6}, 550.0, 1_100.0 / sqrt(3.0)),
    "hexagon, corner first": ({"width": 1_100.0, "sides": 6, "facing": "corner", "scribe_allowance": 5.0},
                              1_100.0 / sqrt(3.0), 550.0),
    "octagon, off the ridge": ({"width": 1_200.0, "sides": 8, "king_post_stock": "6x6", "ridge_offset": -60.0}, 600.0, 600.0),
}
#: Roofs as they are read: left front, left back, right front, right back.
ROOFS: dict[str, tuple[float, float, float, float]] = {
    "true": (300.0, 300.0, 300.0, 300.0), "one corner low": (340.0, 300.0, 300.0, 300.0),
    "front sags": (325.0, 300.0, 325.0, 300.0), "wound": (330.0, 300.0, 300.0, 330.0),
    "unequal, all different": (330.0, 311.0, 160.0, 187.0),
}
CASES = [(name, roof) for name in VENTS for roof in ROOFS]


def values_of(name: str, roof: str) -> dict[str, Any]:
    return {"ridge_cap_height": 0.0, **VENTS[name][0], **dict(zip(DROPS, ROOFS[roof], strict=True))}


def roof_height(name: str, roof: str, x: float, y: float) -> float:
    """Height of the twisted roof over a point of the plan."""
    values, along, across = VENTS[name]
    ridge = -values.get("ridge_offset", 0.0)
    left_front, left_back, right_front, right_back = ROOFS[roof]
    to_left, to_right = min(left_front, left_back), min(right_front, right_back)
    low_left = left_back + (left_front - left_back) * (x + along) / (2.0 * along) - to_left
    low_right = right_back + (right_front - right_back) * (x + along) / (2.0 * along) - to_right
    low = low_right + (low_left - low_right) * (y + across) / (2.0 * across)
    slope = to_left * (y - ridge) / (across - ridge) if y > ridge else to_right * (ridge - y) / (across + ridge)
    return -slope - low


def feet_points(assembly: Assembly) -> Iterator[tuple[int, Vec]]:
    """Points all over every leg's foot, where it stands in the vent, with the corner that the leg stands at."""
    count = assembly_sides(assembly)
    for part in assembly.parts:
        if not part.kind.id.startswith("base.leg."):
            continue
        shell = board_shell(part.board)
        soles = [tuple(shell.outline(face)) for face in shell.faces if face.name.startswith("foot to the roof")]
        assert soles
        for piece in part.pieces:
            corner = piece.side if piece.end > 0 else (piece.side - 1) % count
            for points in soles:
                yield from ((corner, piece.placement.point(p)) for p in spread(points))


def spread(points: tuple[Vec, ...]) -> Iterator[Vec]:
    """A face's corners, and points between its first corner and its edges."""
    yield from points
    for a, b in pairwise((*points, points[0])):
        for i in range(13):
            edge = tuple(a[k] + (b[k] - a[k]) * i / 12.0 for k in range(3))
            for j in range(1, 7):
                yield tuple(points[0][k] + (edge[k] - points[0][k]) * j / 6.0 for k in range(3))  # type: ignore[misc]


def assembly_sides(assembly: Assembly) -> int:
    return len({piece.side for piece in assembly.pieces})


@pytest.mark.parametrize(("name", "roof"), CASES)
def test_every_foot_reaches_the_twisted_roof_and_keeps_just_the_allowance(name: str, roof: str) -> None:
    values = values_of(name, roof)
    allowance = values.get("scribe_allowance", 0.0)
    gaps: dict[int, list[float]] = {}
    for corner, (x, y, z) in feet_points(vent(**values)):
        gaps.setdefault(corner, []).append(roof_height(name, roof, x, y) - z)
    assert len(gaps) == values.get("sides", 4)
    for corner, found in gaps.items():
        assert min(found) > allowance - 1e-6, f"corner {corner} does not reach the roof"
        assert min(found) < allowance + 0.01, f"corner {corner} keeps more than it needs"


@pytest.mark.parametrize("more", [{}, {"cladding": "boards", "cladding_stock": "1x6"}])
@pytest.mark.parametrize(("name", "roof"), CASES)
def test_cladding_and_corner_boards_reach_down_to_their_clearance_over_the_twisted_roof(
        name: str, roof: str, more: dict[str, Any]) -> None:
    """Every foot can be scribed to stand at its clearance; at square corners no foot under which the roof is lower keeps more.

    At mitred corners a board counts as long as its outer face, and so may keep a little more.
    """
    values = {**values_of(name, roof), **more, "cladding_clearance": 20.0}
    mitred = values.get("sides", 4) != 4 or values.get("corner") == "mitred"
    seen = 0
    for piece, points in board_feet(vent(**values)):
        least = min(roof_height(name, roof, x, y) + 20.0 - z for x, y, z in points)
        assert least > -1e-6, f"{piece} is too short"
        lower = max(-roof_height(name, roof, x, y) - nominal_drop(name, roof, y) for x, y, _ in points)
        assert least < (2.0 if mitred else 0.01) + max(0.0, -lower), f"{piece} is longer than it need be"
        seen += 1
    assert seen >= 3 * values.get("sides", 4)


def nominal_drop(name: str, roof: str, y: float) -> float:
    """How far the slopes in use lie below the ridge."""
    values, _, across = VENTS[name]
    ridge = -values.get("ridge_offset", 0.0)
    left_front, left_back, right_front, right_back = ROOFS[roof]
    left, right = min(left_front, left_back) / (across - ridge), min(right_front, right_back) / (across + ridge)
    return max((y - ridge) * left, (ridge - y) * right)


def board_feet(assembly: Assembly) -> Iterator[tuple[str, list[Vec]]]:
    """Points all over the foot of every piece of cladding and every corner board, where it stands in the vent."""
    for part in assembly.parts:
        if not part.kind.id.startswith(("base.cladding.", "base.corner.")):
            continue
        shell = board_shell(part.board)
        feet = [shell.outline(face) for face in shell.faces if face.name.startswith("foot, clear of the roof")]
        assert feet
        for piece in part.pieces:
            yield piece.id, [piece.placement.point(p) for outline in feet for p in spread(outline)]


@pytest.mark.parametrize(("name", "roof"), CASES)
def test_what_the_report_says_comes_off_is_what_stands_below_the_roof(name: str, roof: str) -> None:
    values = values_of(name, roof)
    spec = spec_of(**values)
    gaps: dict[int, list[float]] = {}
    for corner, (x, y, z) in feet_points(vent(**values)):
        gaps.setdefault(corner, []).append(roof_height(name, roof, x, y) - z)
    for foot in feet(spec, sizes(spec)):
        least, most = foot.off
        assert (least, most) == (pytest.approx(min(gaps[foot.corner]), abs=0.01),
                                 pytest.approx(max(gaps[foot.corner]), abs=0.01))


@pytest.mark.parametrize("name", VENTS)
@pytest.mark.parametrize("seat_depth", [0.0, 18.0])
def test_soles_lie_on_the_slopes_to_the_smaller_drops(name: str, seat_depth: float) -> None:
    """The lowest of the seat on the left, against the line from the ridge to the smaller drop."""
    values = values_of(name, "unequal, all different")
    _, _, across = VENTS[name]
    ridge = -values.get("ridge_offset", 0.0)
    assembly = vent(**values, seat_depth=seat_depth)
    rise = {True: 311.0 / (across - ridge), False: 160.0 / (across + ridge)}
    seen = set()
    for part in (part for part in assembly.parts if part.kind.id.startswith("base.sole.")):
        for facet in (facet for cell in board_solid(part.board) for facet in cell if facet.name == "foot on the roof"):
            for point in (piece.placement.point(p) for piece in part.pieces for p in facet.points):
                left = point[1] > ridge
                plumb = seat_depth * hypot(1.0, rise[left])
                assert point[2] == pytest.approx(-abs(point[1] - ridge) * rise[left] - plumb, abs=1e-6)
                seen.add(left)
    assert seen == {True, False}


def test_the_roof_never_lies_above_the_slopes_in_use() -> None:
    for name, roof in CASES:
        _, along, across = VENTS[name]
        readings = sizes(spec_of(**values_of(name, roof))).readings
        assert readings is not None
        at_corners = [readings.below(x, y) for x in (along, -along) for y in (across, -across)]
        assert min(at_corners) == pytest.approx(0.0, abs=1e-9)
        assert readings.lowest == pytest.approx(max(at_corners))
        assert all(readings.below(along * i / 10.0, across * j / 10.0) > -1e-9 for i in range(-10, 11) for j in range(-10, 11))


def test_pitches_follow_from_the_smaller_drops() -> None:
    spec = spec_of(**values_of("square, off the ridge", "unequal, all different"), pitch_left=10.0, pitch_right=60.0)
    left, right = degrees(atan(311.0 / 580.0)), degrees(atan(160.0 / 320.0))
    assert pitches(spec) == (pytest.approx(left), pytest.approx(right))
    roof, out = sizes(spec).roof, figures(spec)
    assert (roof.left, roof.right) == (pytest.approx(left), pytest.approx(right))
    assert (out["pitch_in_use_left"], out["pitch_in_use_right"]) == (pytest.approx(left), pytest.approx(right))
    assert (out["twist_left"], out["twist_right"], out["front_lower"]) == (19.0, 27.0, -4.0)
    assert (out["reading_along"], out["reading_across"]) == (pytest.approx(450.0), pytest.approx(450.0))


def test_a_true_roof_read_at_its_corners_is_the_same_vent_as_one_with_its_pitch() -> None:
    read = vent(**values_of("square", "true"))
    plain = vent(width=900.0, ridge_cap_height=0.0, pitch_left=degrees(atan(300.0 / 450.0)),
                 pitch_right=degrees(atan(300.0 / 450.0)))
    assert [(part.mark, part.count) for part in read.parts] == [(part.mark, part.count) for part in plain.parts]
    for one, other in zip(read.parts, plain.parts, strict=True):
        assert one.board.size == tuple(pytest.approx(size, abs=1e-6) for size in other.board.size)


def test_without_drops_every_leg_keeps_the_allowance_and_nothing_is_twisted() -> None:
    spec = spec_of(scribe_allowance=30.0, pitch_left=25.0)
    out = figures(spec)
    assert sizes(spec).readings is None and pitches(spec) == (25.0, 33.69)
    assert (out["twist_left"], out["twist_right"], out["front_lower"], out["most_to_scribe"]) == (0.0, 0.0, 0.0, 30.0)
    assert {(foot.wood, foot.off) for foot in feet(spec, sizes(spec))} == {(30.0, (30.0, 30.0))}


def legs(assembly: Assembly) -> dict[str, list[tuple[str, str, int]]]:
    """Kind of leg → mark, hand and count of its parts."""
    return {kind: [(part.mark, part.hand, part.count) for part in assembly.of_kind(kind)]
            for kind in ("base.leg.gable", "base.leg.eave")}


def test_legs_that_differ_get_marks_of_their_own_and_mirror_images_stay_hands() -> None:
    assert [count for *_, count in legs(vent(**values_of("square", "true")))["base.leg.gable"]] == [2, 2]
    sags = legs(vent(**values_of("square", "front sags")))
    assert [(hand, count) for _, hand, count in sags["base.leg.gable"]] == [("left", 1), ("right", 1)] * 2
    assert sorted(count for *_, count in sags["base.leg.eave"]) == [2, 2]
    wound = legs(vent(**values_of("square", "wound")))
    assert [(hand, count) for _, hand, count in wound["base.leg.gable"]] == [("", 2), ("", 2)], "half a turn apart"
    different = legs(vent(**values_of("square", "unequal, all different")))
    assert [count for *_, count in different["base.leg.gable"]] == [1] * 4
    assert [count for *_, count in different["base.leg.eave"]] == [1] * 4


@pytest.mark.parametrize("name", VENTS)
def test_every_contact_has_its_rule(name: str) -> None:
    spec = spec_of(**values_of(name, "unequal, all different"))
    assembly = vent(**values_of(name, "unequal, all different"))
    assert undeclared(assembly) == [] and missing(assembly, spec) == []


@pytest.mark.parametrize(("edge", "turns"), [(((-100.0, -300.0, 0.0), (400.0, 150.0, 0.0)), "most"),
                                             (((-100.0, 300.0, 0.0), (400.0, -150.0, 0.0)), "least")])
def test_least_and_most_under_an_outline_against_a_fine_grid(edge: tuple[Vec, Vec], turns: str) -> None:
    """On a wound roof the extremes may lie in the middle of a skew edge."""
    readings = Readings(500.0, 400.0, 0.0, 260.0, 300.0, 310.0, 260.0)
    outline = (*edge, (50.0, 0.0, 0.0))
    grid = [readings.below(*(sum(w * p[k] for w, p in zip((a, b, 400 - a - b), outline, strict=True)) / 400.0
                             for k in (0, 1)))
            for a in range(401) for b in range(401 - a)]
    least, most = readings.span(outline)
    corners = [readings.below(p[0], p[1]) for p in outline]
    assert (least, most) == (pytest.approx(min(grid), abs=1e-3), pytest.approx(max(grid), abs=1e-3))
    assert most > max(corners) + 0.5 if turns == "most" else least < min(corners) - 0.5


def test_a_corners_ground_is_what_its_legs_cover() -> None:
    for name in VENTS:
        values = values_of(name, "true")
        at, covered = sizes(spec_of(**values)), {}
        for corner, (x, y, _) in feet_points(vent(**values)):
            covered.setdefault(corner, []).append((x, y))
        for corner, points in covered.items():
            for axis in (0, 1):
                own = [p[axis] for p in ground(at, corner)]
                assert (min(own), max(own)) == (pytest.approx(min(p[axis] for p in points)),
                                                pytest.approx(max(p[axis] for p in points)))


def test_a_twist_at_its_limit_is_accepted() -> None:
    drops = dict.fromkeys(DROPS, 300.0)
    assert figures(spec_of(**{**drops, "drop_left_back": 300.0 + MOST_TWIST}))["twist_left"] == MOST_TWIST


#: 1600 wide at 43°, a frame of 2x4 behind 1 in boards.
STEEP = {"width": 1_600.0, "pitch_left": 43.0, "pitch_right": 43.0, "cladding": "boards", "cladding_stock": "1x12"}


def slender(**values: Any) -> list[str]:
    """The sentences on slender legs that values provoke."""
    return [each.sentence for each in check(make_spec({**STEEP, **values}, stock_list("us"))) if each.code == "slender leg"]


def test_a_leg_may_stand_free_fifty_times_its_thickness_from_its_foot_to_its_lowest_rail() -> None:
    """Its outer face stands 800 less the boards' 19.05 from the ridge; 38.1 × 50 is 1905; the rail is 88.9 deep."""
    below_ridge = (800.0 - 19.05) * tan(radians(43.0))
    limit = 1_905.0 - below_ridge + 88.9
    assert slender(base_height=limit - 0.1) == [] and len(slender(base_height=limit + 0.1)) == 1
    assert len(slender(base_height=limit - 9.9, scribe_allowance=10.0)) == 1
    assert slender(base_height=limit - 10.1, scribe_allowance=10.0) == []
    rail = 1_905.0 - below_ridge
    assert slender(base_height=limit + 300.0, bottom_rail_height=rail - 0.1) == []
    assert len(slender(base_height=limit + 300.0, bottom_rail_height=rail + 0.1)) == 1
