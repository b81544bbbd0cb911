# SPDX-License-Identifier: LGPL-2.1-or-later
"""Solids as convex cells, and their merged faces: against hand-worked volumes and against points asked one by one.

A point belongs to a cut block when it is in the block and in none of the wastes; that needs no cells, so it is the
independent check of everything that splits them.
"""

from __future__ import annotations

import math
import random
from collections.abc import Sequence
from itertools import pairwise

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from making import vent

from louverwright.core.assembly import BORE, CROSSCUT, Board, Cut, board_solid, board_volume_and_centre
from louverwright.core.faces import Shell, shell_of
from louverwright.core.geometry import Bore, Plane, Vec, add, cross, dot, newell, scale, sub, unit
from louverwright.core.solid import (
    END_A,
    END_B,
    FAR_EDGE,
    HIDDEN_FACE,
    MARKED_FACE,
    REFERENCE_EDGE,
    Cell,
    Solid,
    box,
    clip,
    common,
    corners,
    extents,
    needed_planes,
    remove,
    split,
    surface_area,
    volume_and_centre,
    waste_name,
)

SIZE: Vec = (800.0, 140.0, 38.0)
BLOCK = box((0.0, 0.0, 0.0), SIZE)
WHOLE = SIZE[0] * SIZE[1] * SIZE[2]
Waste = tuple[Plane, ...]


def volume(solid: Solid) -> float:
    """Volume, 0 for nothing."""
    return volume_and_centre(solid)[0] if solid else 0.0


def above(axis: int, at: float) -> Plane:
    """Waste above a coordinate."""
    return Plane(tuple(1.0 if i == axis else 0.0 for i in range(3)), at)


def below(axis: int, at: float) -> Plane:
    """Waste below a coordinate."""
    return above(axis, at).flipped()


@st.composite
def planes(draw: st.DrawFn) -> Plane:
    """A plane that may lie in a face, along an edge or through a corner of the block, or anywhere through it."""
    way = draw(st.tuples(*[st.integers(-3, 3)] * 3).filter(any))
    at = tuple(draw(st.integers(-1, 9)) / 8.0 * side for side in SIZE)
    return Plane.through(at, unit((way[0] / 8.0, float(way[1]), float(way[2]))))


wastes = st.lists(planes(), min_size=1, max_size=4).map(tuple)


def within(p: Vec, waste: Waste, margin: float = 0.0) -> bool:
    """Whether a point lies beyond every plane of a waste."""
    return all(plane.height(p) > margin for plane in waste)


def inside(p: Vec, cell: Cell) -> bool:
    """Whether a point lies in a convex cell."""
    return all(facet.plane.height(p) < 0.0 for facet in cell)


def points_off(cut: Sequence[Waste], count: int = 60) -> list[Vec]:
    """Points of the block that lie in no plane of the wastes."""
    chance = random.Random(7)
    found = [(chance.random() * SIZE[0], chance.random() * SIZE[1], chance.random() * SIZE[2]) for _ in range(count)]
    return [p for p in found if all(abs(plane.height(p)) > 1e-3 for waste in cut for plane in waste)]


# ---- blocks and single cuts


def test_a_block_has_six_named_faces_that_look_outward() -> None:
    middle = scale(SIZE, 0.5)
    assert [facet.name for facet in BLOCK] == [END_A, END_B, REFERENCE_EDGE, FAR_EDGE, HIDDEN_FACE, MARKED_FACE]
    for facet in BLOCK:
        assert facet.plane.height(middle) < 0.0
        assert all(facet.plane.height(p) == 0.0 for p in facet.points)
        assert dot(newell(facet.points), facet.plane.normal) == pytest.approx(2.0 * surface_area(facet.points))
    assert volume_and_centre((BLOCK,)) == (pytest.approx(WHOLE), pytest.approx(middle))
    assert extents((BLOCK,)) == ((0.0, 0.0, 0.0), SIZE) and len(corners((BLOCK,))) == 8


# An oblique cut right across a stick leaves the section's area times the length of its axis.
@given(st.floats(-40.0, 40.0), st.floats(-40.0, 40.0), st.floats(300.0, 500.0))
def test_a_compound_crosscut_leaves_section_times_length_of_the_axis(mitre: float, bevel: float, at: float) -> None:
    normal = (1.0, math.tan(math.radians(mitre)), math.tan(math.radians(bevel)))
    cut = clip(BLOCK, Plane.through((at, 70.0, 19.0), normal), "crosscut")
    assert cut is not None
    assert volume((cut,)) == pytest.approx(140.0 * 38.0 * at)
    assert [facet.name for facet in cut].count("crosscut") == 1 and len(cut) == 6


def test_a_corner_that_is_cut_off_is_a_pyramid() -> None:
    plane = Plane.through((0.0, 0.0, 8.0), (1.0 / 30.0, 1.0 / 20.0, 1.0 / 8.0)).flipped()
    cut = clip(BLOCK, plane, "corner")
    assert cut is not None and len(cut) == 7
    assert volume((cut,)) == pytest.approx(WHOLE - 30.0 * 20.0 * 8.0 / 6.0)


def test_a_plane_that_misses_or_touches_leaves_all_or_nothing() -> None:
    for at in (800.0, 801.0):
        assert clip(BLOCK, above(0, at), "cut") is BLOCK
        assert clip(BLOCK, above(0, at).flipped(), "cut") is None
    for at in (0.0, -1.0):
        assert clip(BLOCK, above(0, at), "cut") is None
    assert remove((BLOCK,), (above(0, -1.0),), "all") == ()
    assert remove((BLOCK,), (above(0, 900.0), above(1, 20.0)), "miss") == (BLOCK,)


def test_the_faces_of_a_joint_are_numbered_and_that_of_a_saw_cut_is_not() -> None:
    assert (waste_name("rip", 0, 1), waste_name("seat", 1, 2)) == ("rip", "seat/2")
    names = {facet.name for cell in remove((BLOCK,), (above(0, 700.0), above(2, 19.0)), "lap") for facet in cell}
    assert {"lap/1", "lap/2"} <= names


# ---- joints, by hand


JOINTS: dict[str, tuple[Waste, float]] = {
    "half lap": ((above(0, 711.0), above(2, 19.0)), 89.0 * 140.0 * 19.0),
    "dado": ((above(2, 30.0), above(0, 300.0), below(0, 319.2)), 19.2 * 140.0 * 8.0),
    "groove": ((below(2, 6.0), above(1, 64.0), below(1, 76.0)), 12.0 * 800.0 * 6.0),
    "pocket": ((above(2, 20.0), above(0, 100.0), below(0, 160.0), above(1, 50.0), below(1, 90.0)), 60.0 * 40.0 * 18.0),
    "hole": ((above(0, 100.0), below(0, 160.0), above(1, 50.0), below(1, 90.0)), 60.0 * 40.0 * 38.0),
}


@pytest.mark.parametrize("name", JOINTS)
def test_joints_take_away_what_they_should(name: str) -> None:
    waste, taken = JOINTS[name]
    cut = remove((BLOCK,), waste, name)
    assert volume(cut) == pytest.approx(WHOLE - taken)
    assert needed_planes(BLOCK, waste) == waste
    assert_closed(shell_of(cut), volume(cut))


# A bird's mouth in a stick at slope s, depth square to its edge d: a right triangle of area d²·(tan s + cot s)/2.
@pytest.mark.parametrize("slope", [15.0, 26.34, 35.0, 45.0])
def test_a_birds_mouth_is_a_right_triangle(slope: float) -> None:
    s, depth = math.radians(slope), 29.0
    heel = (400.0, depth, 0.0)
    level = Plane.through(heel, (-math.sin(s), -math.cos(s), 0.0))
    plumb = Plane.through(heel, (math.cos(s), -math.sin(s), 0.0))
    cut = remove((BLOCK,), (level, plumb), "seat")
    assert WHOLE - volume(cut) == pytest.approx(depth**2 * (math.tan(s) + 1.0 / math.tan(s)) / 2.0 * 38.0)


def test_faces_are_merged_whatever_the_cells_are() -> None:
    counts = {name: len(shell_of(remove((BLOCK,), waste, name)).faces) for name, (waste, _) in JOINTS.items()}
    assert counts == {"half lap": 8, "dado": 10, "groove": 10, "pocket": 11, "hole": 10}


def test_a_pocket_is_a_hole_in_one_face_and_a_hole_in_two() -> None:
    for name, holed in (("pocket", {MARKED_FACE}), ("hole", {MARKED_FACE, HIDDEN_FACE})):
        shell = shell_of(remove((BLOCK,), JOINTS[name][0], name))
        assert {face.name for face in shell.faces if len(face.loops) == 2} == holed
        for face in shell.faces:
            for number, loop in enumerate(face.loops):
                turn = dot(newell(tuple(shell.points[i] for i in loop)), face.plane.normal)
                assert (turn > 0.0) == (number == 0), "outlines turn to the left, holes to the right"


def test_two_faces_in_one_plane_that_look_opposite_ways_stay_two() -> None:
    solid = remove((BLOCK,), (above(0, 500.0), above(2, 19.0)), "upper lap")
    solid = remove(solid, (below(0, 300.0), below(2, 19.0)), "lower lap")
    shell = shell_of(solid)
    assert_closed(shell, WHOLE - (300.0 + 300.0) * 140.0 * 19.0)
    level = {face.name: face.plane.normal[2] for face in shell.faces if face.name.endswith("lap/2")}
    assert level == {"upper lap/2": 1.0, "lower lap/2": -1.0}


def test_a_round_hole_is_taken_off_volume_and_centre() -> None:
    bore = Bore((200.0, 70.0, 38.0), (0.0, 0.0, -1.0), 20.0, 30.0)
    board = Board(*SIZE, (Cut(BORE, "bore", bore=bore),))
    hole = math.pi * 15.0**2 * 20.0
    whole, centre = board_volume_and_centre(board)
    assert whole == pytest.approx(WHOLE - hole)
    assert scale(centre, whole) == pytest.approx(sub(scale(SIZE, WHOLE / 2.0), scale((200.0, 70.0, 28.0), hole)))


def test_a_board_is_what_is_left_after_each_of_its_cuts() -> None:
    cuts = (Cut(CROSSCUT, "one", (above(0, 700.0),)), Cut(CROSSCUT, "other", (below(0, 100.0),)))
    board = Board(*SIZE, cuts)
    assert [volume(board.after(count)) / (140.0 * 38.0) for count in range(3)] == pytest.approx([800.0, 700.0, 600.0])
    assert board_solid(board) == board.after(2)


# ---- any wastes


@given(st.lists(wastes, min_size=1, max_size=3))
def test_a_point_is_in_one_cell_unless_a_waste_has_it(cut: list[Waste]) -> None:
    solid: Solid = (BLOCK,)
    for waste in cut:
        solid = remove(solid, waste, "waste")
    for p in points_off(cut):
        left = not any(within(p, waste) for waste in cut)
        assert sum(inside(p, cell) for cell in solid if all(abs(f.plane.height(p)) > 1e-9 for f in cell)) == left


@given(wastes)
def test_what_is_left_and_what_is_taken_make_the_whole(waste: Waste) -> None:
    taken = common(BLOCK, waste)
    assert volume(remove((BLOCK,), waste, "waste")) + volume((taken,) if taken else ()) == pytest.approx(WHOLE)


@given(wastes, wastes)
def test_two_wastes_take_each_and_what_they_share_once(one: Waste, other: Waste) -> None:
    both = remove(remove((BLOCK,), one, "one"), other, "other")
    a, b, shared = (common(BLOCK, planes) for planes in (one, other, (*one, *other)))
    taken = [volume((cell,) if cell else ()) for cell in (a, b, shared)]
    assert volume(both) == pytest.approx(WHOLE - taken[0] - taken[1] + taken[2], abs=1e-3)
    assert volume(remove(remove((BLOCK,), other, "other"), one, "one")) == pytest.approx(volume(both), abs=1e-3)


@given(wastes)
def test_a_split_cell_is_its_two_parts_and_they_share_their_corners(waste: Waste) -> None:
    for plane in waste:
        kept, beyond = split(BLOCK, plane, "cut")
        assert kept == clip(BLOCK, plane, "cut")
        assert volume((kept,) if kept else ()) + volume((beyond,) if beyond else ()) == pytest.approx(WHOLE)
        if kept and beyond:
            cuts = [[set(facet.points) for facet in cell if facet.name == "cut"] for cell in (kept, beyond)]
            assert cuts[0] == cuts[1] and len(cuts[0]) == 1


@given(wastes)
def test_the_needed_planes_take_the_same_and_none_is_idle(waste: Waste) -> None:
    needed = needed_planes(BLOCK, waste)
    assert set(needed) <= set(waste)
    taken = WHOLE - volume(remove((BLOCK,), waste, "all"))
    if not needed:
        assert taken == pytest.approx(0.0, abs=1e-3)
        return
    assert WHOLE - volume(remove((BLOCK,), needed, "needed")) == pytest.approx(taken, abs=1e-3)
    for idle in needed:
        rest = tuple(plane for plane in needed if plane is not idle)
        if rest:
            assert WHOLE - volume(remove((BLOCK,), rest, "rest")) > taken + 1e-6


def test_a_saddle_is_a_v_for_what_straddles_it_and_one_plane_for_what_does_not() -> None:
    left, right = (Plane.through((400.0, 0.0, 30.0), (hand * 0.2, 0.0, -1.0)) for hand in (1.0, -1.0))
    assert needed_planes(BLOCK, (left, right)) == (left, right)
    assert needed_planes(box((0.0, 0.0, 0.0), (350.0, 140.0, 38.0)), (left, right)) == (left,)
    assert needed_planes(box((450.0, 0.0, 0.0), (800.0, 140.0, 38.0)), (left, right)) == (right,)
    assert needed_planes(box((0.0, 0.0, 31.0), (800.0, 140.0, 38.0)), (left, right)) == ()


# ---- shells


def assert_closed(shell: Shell, volume_of_cells: float) -> None:
    """Every edge has two faces that run along it in opposite ways, and the faces enclose the cells' volume."""
    assert all(len(faces) == 2 for faces in shell.edges.values())
    runs = [edge for face in shell.faces for loop in face.loops for edge in pairwise((*loop, loop[0]))]
    assert len(set(runs)) == len(runs) and {(b, a) for a, b in runs} == set(runs)
    assert enclosed(shell) == pytest.approx(volume_of_cells, rel=1e-9, abs=1e-3)
    for face in shell.faces:
        assert all(abs(face.plane.height(shell.points[i])) < 1e-3 for loop in face.loops for i in loop)
        assert dot(newell(shell.outline(face)), face.plane.normal) > 0.0, "the plane faces outward as its outline does"


def enclosed(shell: Shell) -> float:
    """Volume by the divergence theorem over the shell's loops."""
    total = 0.0
    for face in shell.faces:
        for loop in face.loops:
            area = newell(tuple(shell.points[i] for i in loop))
            total += dot(shell.points[loop[0]], area) / 6.0
    return total


@settings(max_examples=80)
@given(st.lists(wastes, min_size=1, max_size=2))
def test_the_shell_of_any_cut_block_closes_on_its_volume(cut: list[Waste]) -> None:
    solid: Solid = (BLOCK,)
    for waste in cut:
        solid = remove(solid, waste, "waste")
    assume(solid and all(volume((cell,)) > 1.0 for cell in solid))
    shell = shell_of(solid)
    assert all(len(faces) % 2 == 0 for faces in shell.edges.values())    # four where two corners touch along an edge
    assert enclosed(shell) == pytest.approx(volume(solid), rel=1e-6, abs=1.0)


@given(wastes)
def test_a_convex_shell_keeps_eulers_count(cut: Waste) -> None:
    cell: Cell | None = BLOCK
    for plane in cut:
        cell = clip(cell, plane, "cut") if cell else None
    assume(cell is not None and volume((cell,)) > 1.0)
    assert cell is not None
    shell = shell_of((cell,))
    assert len(shell.points) - len(shell.edges) + len(shell.faces) == 2
    assert_closed(shell, volume((cell,)))


def test_every_board_of_a_vent_is_a_closed_shell_inside_its_blank() -> None:
    for part in vent(mast_diameter=25.0, mullion="always", width=1_000.0, ridge_offset=100.0).parts:
        solid = board_solid(part.board)
        shell = shell_of(solid)
        assert_closed(shell, volume(solid))
        low, high = extents(solid)
        assert low == pytest.approx((0.0, 0.0, 0.0), abs=1e-6), part.mark
        assert high == pytest.approx(part.board.size, abs=1e-6), part.mark


def test_areas_of_polygons() -> None:
    hexagon = tuple((math.cos(k * math.pi / 3.0), math.sin(k * math.pi / 3.0), 5.0) for k in range(6))
    assert surface_area(hexagon) == pytest.approx(1.5 * math.sqrt(3.0))
    square = ((1.0, 0.0, 0.0), (0.0, 0.8, -0.6), (-1.0, 0.0, 0.0), (0.0, -0.8, 0.6))
    tilted = tuple(add(scale(cross((0.0, 0.6, 0.8), p), 2.0), (7.0, 8.0, 9.0)) for p in square)
    assert surface_area(tilted) == pytest.approx(8.0)


def test_faces_that_touch_in_a_corner_keep_to_themselves() -> None:
    """Two blocks corner to corner on a slab: their tops are two squares, not one loop that crosses itself."""
    blocks = (box((0.0, 0.0, 0.0), (2.0, 2.0, 1.0)), box((0.0, 0.0, 1.0), (1.0, 1.0, 2.0)),
              box((1.0, 1.0, 1.0), (2.0, 2.0, 2.0)))
    shell = shell_of(blocks)
    tops = [face for face in shell.faces if face.plane.normal[2] > 0.5 and face.plane.offset == 2.0]
    assert sorted(len(loop) for face in tops for loop in face.loops) == [4, 4]
