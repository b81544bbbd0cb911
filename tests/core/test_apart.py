# SPDX-License-Identifier: LGPL-2.1-or-later
"""A vent taken apart: nothing moves at 0, stages clear each other at 1, pieces go outward and never into each other."""

from __future__ import annotations

from itertools import combinations, pairwise

import pytest
from making import EXAMPLES, job_of

from louverwright.core.apart import GAP, INNER, shifts, without_sides
from louverwright.core.geometry import Vec, dot, sub
from louverwright.core.kinds import KINDS, STAGES
from louverwright.core.outline import Outline, outlines


def pieces_of(name: str) -> tuple[Outline, ...]:
    return outlines(job_of(name).spec)


def points(piece: Outline, by: Vec = (0.0, 0.0, 0.0)) -> list[Vec]:
    return [(x + by[0], y + by[1], z + by[2]) for face in piece.faces for x, y, z in face]


def middle(piece: Outline, by: Vec = (0.0, 0.0, 0.0)) -> Vec:
    x, y, z = ((min(each) + max(each)) / 2.0 for each in zip(*points(piece, by), strict=True))
    return x, y, z


def reach(pieces: tuple[Outline, ...], by: dict[str, Vec], stage: str) -> tuple[float, float]:
    heights = [p[2] for piece in pieces if piece.stage == stage for p in points(piece, by[piece.id])]
    return min(heights), max(heights)


@pytest.mark.parametrize("name", EXAMPLES)
def test_nothing_moves_at_first(name: str) -> None:
    pieces = pieces_of(name)
    assert shifts(pieces, 0.0, 0.0) == {piece.id: (0.0, 0.0, 0.0) for piece in pieces}


@pytest.mark.parametrize("name", EXAMPLES)
@pytest.mark.parametrize("apart", [0.0, 0.5, 1.0])
def test_stages_apart_share_no_height(name: str, apart: float) -> None:
    pieces = pieces_of(name)
    together = shifts(pieces, 0.0, apart)
    by = shifts(pieces, 1.0, apart)
    if not apart:
        base, louver = reach(pieces, together, "base"), reach(pieces, together, "louver")
        assert louver[0] < base[1]    # in place they do share some
    heights = [reach(pieces, by, stage) for stage in STAGES]
    whole = [p[2] for piece in pieces for p in points(piece)]
    for below, above in pairwise(heights):
        assert above[0] - below[1] >= GAP * (max(whole) - min(whole)) - 1e-6
    assert all(by[piece.id] == together[piece.id] for piece in pieces if piece.stage == "base")
    for piece in pieces:
        assert sub(by[piece.id], together[piece.id])[:2] == (0.0, 0.0)


@pytest.mark.parametrize("name", EXAMPLES)
def test_pieces_apart_move_outward_and_with_their_stage(name: str) -> None:
    pieces = pieces_of(name)
    by, stages = shifts(pieces, 1.0, 1.0), shifts(pieces, 1.0, 0.0)
    for piece in pieces:
        before, after = middle(piece), middle(piece, by[piece.id])
        out, moved = (before[0], before[1], 0.0), (by[piece.id][0], by[piece.id][1], 0.0)
        if dot(out, out) > 1.0:    # the others stand on the axis
            assert dot(out, moved) > 0.0, piece.id
            assert abs(out[0] * moved[1] - out[1] * moved[0]) < 1e-6 * dot(out, moved)    # straight away from it
        assert after[2] >= before[2] + stages[piece.id][2] - 1e-6


def between(one: Outline, other: Outline, normal: Vec, by: dict[str, Vec]) -> float:
    """How far ``other`` lies beyond ``one`` along a direction (mm, negative where they reach over each other)."""
    first = max(dot(normal, p) for p in points(one, by[one.id]))
    return min(dot(normal, p) for p in points(other, by[other.id])) - first


def test_pieces_on_each_other_come_apart() -> None:
    """Cladding from legs, slat from slat: along the way they lie on each other, the gap grows with the share."""
    pieces = pieces_of("hay-barn-28ft")
    slats = sorted((p for p in pieces if p.kind == "louver.slat" and p.side == 0), key=lambda p: middle(p)[2])
    walls = [p for p in pieces if p.kind == "base.cladding.gable" and p.side == 0]
    legs = [p for p in pieces if p.kind == "base.leg.gable" and p.side == 0]
    pairs = [(a, b, (0.0, 0.0, 1.0)) for a, b in pairwise(slats)] + [(legs[0], walls[0], (1.0, 0.0, 0.0))]
    assert len(slats) > 2
    for one, other, normal in pairs:
        gaps = [between(one, other, normal, shifts(pieces, 0.0, share)) for share in (0.0, 0.25, 0.5, 1.0)]
        assert all(b > a + 1.0 for a, b in pairwise(gaps))


def test_no_two_pieces_come_nearer() -> None:
    """The middles of all pieces of a vent move away from each other, or stay as far."""
    pieces = pieces_of("hay-barn-28ft")
    by = shifts(pieces, 0.0, 1.0)
    for one, other in combinations(pieces, 2):
        apart = sub(middle(other), middle(one))
        assert dot(apart, sub(by[other.id], by[one.id])) >= -1e-6


@pytest.mark.parametrize("name", EXAMPLES)
def test_sides_are_taken_away_but_what_stands_on_the_axis_stays(name: str) -> None:
    pieces = pieces_of(name)
    assert without_sides(pieces, ()) == pieces
    left = without_sides(pieces, {0})
    gone = {piece.id for piece in pieces} - {piece.id for piece in left}
    assert gone
    assert all(piece.side == 0 for piece in pieces if piece.id in gone)
    assert all(piece.kind in INNER for piece in left if piece.side == 0)
    everything = without_sides(pieces, range(job_of(name).sizes.plan.sides))
    assert {piece.kind for piece in everything} <= set(INNER)


def test_the_kinds_on_the_axis_are_kinds() -> None:
    assert set(INNER) <= {kind.id for kind in KINDS}
