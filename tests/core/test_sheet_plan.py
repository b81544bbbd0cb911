"""Sheets: nothing overlaps, a saw cut between any two, the grain along the sheet, every piece there."""

from __future__ import annotations

import math
import random
from collections import Counter

import pytest

from louverwright.core.sheet_plan import Outline, Sheet, SheetPiece, apart, area, hull, sheet_plan

KERF = 3.2
SQUARE: Outline = ((0.0, 0.0), (10.0, 0.0), (10.0, 10.0), (0.0, 10.0))


def moved(shape: Outline, x: float, y: float) -> Outline:
    return tuple((a + x, b + y) for a, b in shape)


def inside(p: tuple[float, float], shape: Outline) -> bool:
    """By the number of edges that a ray to the right crosses: another way than the plan's own."""
    crossed = False
    for (ax, ay), (bx, by) in zip(shape, (*shape[1:], shape[0]), strict=True):
        if (ay > p[1]) != (by > p[1]) and p[0] < ax + (p[1] - ay) / (by - ay) * (bx - ax):
            crossed = not crossed
    return crossed


def walk(shape: Outline, step: float) -> list[tuple[float, float]]:
    """Points along an outline, no further than ``step`` from one to the next."""
    out = []
    for a, b in zip(shape, (*shape[1:], shape[0]), strict=True):
        many = max(1, math.ceil(math.dist(a, b) / step))
        out += [(a[0] + (b[0] - a[0]) * i / many, a[1] + (b[1] - a[1]) * i / many) for i in range(many)]
    return out


def check(sheets: tuple[Sheet, ...], pieces: list[SheetPiece], long: float, wide: float, kerf: float) -> None:
    made = Counter(laid.mark for sheet in sheets for laid in sheet.laid)
    assert made == Counter(piece.mark for piece in pieces)
    of = {piece.mark: piece for piece in pieces}
    for sheet in sheets:
        for number, laid in enumerate(sheet.laid):
            piece = of[laid.mark]
            assert all(-0.02 <= x <= long + 0.02 and -0.02 <= y <= wide + 0.02 for x, y in laid.outline)
            turn = -1.0 if laid.turned else 1.0
            first, begin = laid.outline[0], piece.outline[0]
            assert all((x - first[0], y - first[1]) == pytest.approx((turn * (a - begin[0]), turn * (b - begin[1])), abs=1e-6)
                       for (x, y), (a, b) in zip(laid.outline, piece.outline, strict=True))
            for other in sheet.laid[:number]:
                points, others = walk(laid.outline, 4.0), walk(other.outline, 4.0)
                assert not any(inside(p, other.outline) for p in points) and not any(inside(p, laid.outline) for p in others)
                assert min(math.dist(p, q) for p in points for q in others) > kerf - 0.05


def some_pieces(seed: int) -> list[SheetPiece]:
    """Rectangles, triangles and trapezia, some of them alike."""
    chance = random.Random(seed)
    out = []
    for number in range(chance.randint(1, 4)):
        long, wide = chance.uniform(80.0, 500.0), chance.uniform(40.0, 300.0)
        top = chance.choice((0.0, 0.4, 1.0)) * long
        shape = hull([(0.0, 0.0), (long, 0.0), (long / 2.0 + top / 2.0, wide), (long / 2.0 - top / 2.0, wide)])
        out += [SheetPiece(f"P{number}", shape)] * chance.randint(1, 3)
    return out


@pytest.mark.parametrize("seed", range(25))
def test_nothing_overlaps_and_a_saw_cut_lies_between(seed: int) -> None:
    pieces = some_pieces(seed)
    check(sheet_plan(pieces, 800.0, 400.0, KERF), pieces, 800.0, 400.0, KERF)


@pytest.mark.parametrize(("x", "y", "distance"), [(12.0, 0.0, 2.0), (13.0, 14.0, 5.0), (5.0, 5.0, 0.0), (10.0, 0.0, 0.0),
                                                  (2.0, 30.0, 20.0)])
def test_the_distance_of_two_outlines(x: float, y: float, distance: float) -> None:
    assert apart(SQUARE, moved(SQUARE, x, y)) == pytest.approx(distance)


def test_triangles_lie_head_to_tail() -> None:
    """Three triangles 100 long and 80 high need 300 side by side, but turned by turn 200 and two slanting saw cuts."""
    triangle = SheetPiece("T", hull([(0.0, 0.0), (100.0, 0.0), (50.0, 80.0)]))
    sheets = sheet_plan([triangle] * 3, 210.0, 80.0, KERF)
    assert len(sheets) == 1 and [laid.turned for laid in sheets[0].laid] == [False, True, False]
    slant = KERF * math.hypot(50.0, 80.0) / 80.0
    assert max(x for laid in sheets[0].laid for x, _ in laid.outline) == pytest.approx(200.0 + 2.0 * slant, abs=0.05)


def test_eight_squares_on_a_sheet_with_its_saw_cuts() -> None:
    """4 × 8 ft and squares of 23 7/8 in at a saw cut of 1/8 in: eight, computed from the row of four and three cuts."""
    side = 23.875 * 25.4
    pieces = [SheetPiece("S", ((0.0, 0.0), (side, 0.0), (side, side), (0.0, side)))] * 8
    assert len(sheet_plan(pieces, 2438.4, 1219.2, 3.175)) == 1


def test_a_piece_is_never_turned_across_the_grain() -> None:
    with pytest.raises(ValueError, match="larger than the sheet"):
        sheet_plan([SheetPiece("X", ((0.0, 0.0), (50.0, 0.0), (50.0, 300.0), (0.0, 300.0)))], 400.0, 200.0, KERF)


def test_the_area_of_a_hull() -> None:
    assert area(hull([(0.0, 0.0), (4.0, 0.0), (2.0, 1.0), (4.0, 3.0), (0.0, 3.0), (2.0, 3.0)])) == pytest.approx(12.0)
