"""Sheets: nothing overlaps, a saw cut between any two, the grain along the sheet, every piece there."""

from __future__ import annotations

import math
import random
from collections import Counter

import pytest
from making import EXAMPLES, job_of

from louverwright.core.buying import Shop, sheets_to_buy
from louverwright.core.geometry import dot
from louverwright.core.hull import hull
from louverwright.core.nesting import TURNS
from louverwright.core.sheet_bound import MOST_LINES, fewest_sheets, least_taken
from louverwright.core.sheet_pieces import sheet_piece
from louverwright.core.sheet_plan import Outline, Sheet, SheetPiece, sheet_plan

KERF = 3.2


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


def piece_of(mark: str, outline: Outline, bevel: float = 0.0, either: bool = False) -> SheetPiece:
    """A piece 12 thick; with a bevel (mm of overhang over the thickness) all its slanting sides lean in upwards."""
    low = list(outline)
    normals = []
    for (ax, ay), (bx, by) in zip(outline, (*outline[1:], outline[0]), strict=True):
        long = math.hypot(bx - ax, by - ay)
        normal = ((by - ay) / long, (ax - bx) / long)
        leans = bevel if min(abs(normal[0]), abs(normal[1])) > 1e-9 else 0.0
        normals.append((normal, normal[0] * ax + normal[1] * ay, leans))
    high = []
    for ((n, c, e), (m, d, f)) in zip((normals[-1], *normals[:-1]), normals, strict=True):
        det = n[0] * m[1] - n[1] * m[0]
        high.append((((c - e) * m[1] - (d - f) * n[1]) / det, (n[0] * (d - f) - m[0] * (c - e)) / det))
    bevels = []
    for n, c, e in normals:
        if e:
            size = math.hypot(1.0, e / 12.0)
            bevels.append(((n[0] / size, n[1] / size, e / 12.0 / size), c / size, True))
    return SheetPiece(mark, (*((x, y, 0.0) for x, y in low), *((x, y, 12.0) for x, y in high)), tuple(bevels), either)


def check(sheets: tuple[Sheet, ...], pieces: list[SheetPiece], long: float, wide: float, kerf: float, step: float = 4.0
          ) -> None:
    made = Counter(laid.mark for sheet in sheets for laid in sheet.laid)
    assert made == Counter(piece.mark for piece in pieces)
    of = {piece.mark: piece for piece in pieces}
    for sheet in sheets:
        for number, laid in enumerate(sheet.laid):
            piece = of[laid.mark]
            assert all(-0.02 <= x <= long + 0.02 and -0.02 <= y <= wide + 0.02 for x, y, _ in laid.points)
            signs = TURNS[laid.turn]
            assert piece.either or signs[2] > 0.0, "the outside face lies up"
            first, begin = laid.points[0], piece.points[0]
            assert all(tuple(a - b for a, b in zip(p, first, strict=True)) == pytest.approx(
                tuple(s * (a - b) for s, a, b in zip(signs, q, begin, strict=True)), abs=1e-6)
                for p, q in zip(laid.points, piece.points, strict=True))
            for other in sheet.laid[:number]:
                for level in ("upper", "lower"):
                    mine, yours = getattr(laid, level), getattr(other, level)
                    points, others = walk(mine, step), walk(yours, step)
                    assert not any(inside(p, yours) for p in points) and not any(inside(p, mine) for p in others)
                    assert min(math.dist(p, q) for p in points for q in others) > kerf - 0.05


def parted(sheets: tuple[Sheet, ...], kerf: float) -> None:
    """Asserts that each strip can be cut from the left in the order of the numbers, each cut straight through it: along
    a side of the piece that comes off or of one that is left, with a saw cut's room."""
    for sheet in sheets:
        for number, laid in enumerate(sheet.laid):
            later = [other for other in sheet.laid[number + 1:] if other.strip == laid.strip]
            cuts = [(normal, offset, [laid], later) for normal, offset, _ in laid.sides]
            cuts += [(normal, offset, later, [laid]) for other in later for normal, offset, _ in other.sides]
            assert not later or any(
                all(dot(normal, p) < offset + 0.02 for each in behind for p in each.points)
                and all(dot(normal, p) > offset + kerf - 0.03 for each in beyond for p in each.points)
                for normal, offset, behind, beyond in cuts), f"{laid.mark} cannot be cut off its strip by one straight cut"


def some_pieces(seed: int) -> list[SheetPiece]:
    """Rectangles, triangles and trapezia, some of them alike, some bevelled, some with either face outside."""
    chance = random.Random(seed)
    out = []
    for number in range(chance.randint(1, 4)):
        long, wide = chance.uniform(80.0, 500.0), chance.uniform(60.0, 300.0)
        top = chance.choice((0.4, 0.7, 1.0)) * long
        shape = hull([(0.0, 0.0), (long, 0.0), (long / 2.0 + top / 2.0, wide), (long / 2.0 - top / 2.0, wide)])
        out += [piece_of(f"P{number}", shape, chance.choice((0.0, 5.0)), chance.random() < 0.5)] * chance.randint(1, 3)
    return out


@pytest.mark.parametrize("seed", range(25))
def test_nothing_overlaps_and_a_saw_cut_lies_between(seed: int) -> None:
    pieces = some_pieces(seed)
    sheets = sheet_plan(pieces, 800.0, 400.0, KERF)
    check(sheets, pieces, 800.0, 400.0, KERF)
    parted(sheets, KERF)
    assert fewest_sheets(pieces, sum(map(middle_area, pieces)), 800.0, 400.0, KERF) <= len(sheets)


def middle_area(piece: SheetPiece) -> float:
    """The area half way between both faces (mm²), by cross products."""
    laid = piece.ways[0]
    shape = [((a[0] + b[0]) / 2.0, (a[1] + b[1]) / 2.0) for a, b in zip(laid.upper, laid.lower, strict=True)]
    return abs(sum(a[0] * b[1] - a[1] * b[0] for a, b in zip(shape, (*shape[1:], shape[0]), strict=True))) / 2.0


@pytest.mark.parametrize("seed", range(12))
def test_a_piece_takes_of_lines_what_the_bound_says_or_more(seed: int) -> None:
    """Laid by chance, in any turn that it may have; lines measured in steps of a millimetre, by counting what lies inside."""
    chance = random.Random(seed)
    piece = chance.choice(some_pieces(seed))
    long, wide = piece.long * chance.uniform(1.0, 2.2), piece.wide * chance.uniform(1.0, 2.2)
    for axis, room, extent in ((1, wide, long), (0, long, wide)):
        for lines in range(1, MOST_LINES + 1):
            upper = chance.random() < 0.5
            told = least_taken(piece, upper, lines, room, 0.0, axis)
            for _ in range(12):
                laid = chance.choice(piece.ways).moved(chance.uniform(0.0, long - piece.long),
                                                       chance.uniform(0.0, wide - piece.wide), False)
                shape = laid.upper if upper else laid.lower
                at = [room * number / (lines + 1) for number in range(1, lines + 1)]
                measured = sum(inside((along, line) if axis else (line, along), shape)
                               for line in at for along in range(math.ceil(extent) + 1))
                assert measured >= told - 2.0 * lines


def test_pieces_wider_than_half_a_sheet_need_its_length() -> None:
    """Four of 634 × 889 cover 76 % of 2440 × 1219, but each crosses the middle, and four lengths are 2536."""
    pieces = [piece_of("C", ((0.0, 0.0), (634.0, 0.0), (634.0, 889.0), (0.0, 889.0)))] * 4
    assert fewest_sheets(pieces, 4 * 634.0 * 889.0, 2440.0, 1219.0, KERF) == 2
    assert fewest_sheets(pieces, 4 * 634.0 * 889.0, 2536.0 + 3.0 * KERF, 1219.0, KERF) == 1
    assert fewest_sheets(pieces, 4 * 634.0 * 889.0, 2536.0 + 2.9 * KERF, 1219.0, KERF) == 2


def test_long_triangles_need_a_sheets_width() -> None:
    """Computed by hand for 1500 × 900 on 2400 × 1200: of the lines x = 800 and 1600, 2400 together, a triangle takes 840 where
    both meet it, and as much or more where one does; three take 2520, though they cover but 70 % of the sheet."""
    triangle = piece_of("T", ((0.0, 0.0), (1500.0, 0.0), (750.0, 900.0)), either=True)
    assert least_taken(triangle, True, 2, 2400.0, 0.0, 0) == pytest.approx(840.0)
    assert [fewest_sheets([triangle] * many, many * 675_000.0, 2400.0, 1200.0, KERF) for many in (2, 3)] == [1, 2]


TRAPEZIUM: Outline = ((0.0, 0.0), (200.0, 0.0), (140.0, 120.0), (60.0, 120.0))


def test_triangles_lie_head_to_tail_and_one_cut_makes_both_sides() -> None:
    """Three triangles 100 long and 80 high need 300 side by side, but turned by turn 200 and two slanting saw cuts."""
    triangle = piece_of("T", ((0.0, 0.0), (100.0, 0.0), (50.0, 80.0)))
    (sheet,) = sheet_plan([triangle] * 3, 210.0, 80.0, KERF)
    assert [laid.turn for laid in sheet.laid] == ["", "turned", ""]
    assert [laid.shared for laid in sheet.laid] == [False, True, True]
    slant = KERF * math.hypot(50.0, 80.0) / 80.0
    assert max(laid.end for laid in sheet.laid) == pytest.approx(200.0 + 2.0 * slant, abs=0.05)


@pytest.mark.parametrize("either", [True, False])
def test_bevelled_sides_are_opposites_only_face_up_beside_face_down(either: bool) -> None:
    """Turned in the plane the lower edges are a saw cut apart and each side has a cut of its own; face down one cut, whose
    kerf is measured square to the bevel, makes both sides, and the edges of one face stand over the other's."""
    pieces = [piece_of("T", TRAPEZIUM, bevel=6.0, either=either)] * 2
    (sheet,) = sheet_plan(pieces, 800.0, 130.0, KERF)
    check((sheet,), pieces, 800.0, 130.0, KERF)
    assert [laid.turn for laid in sheet.laid] == ["", "face down" if either else "turned"]
    assert sheet.laid[1].shared == either
    lean, over = math.hypot(60.0, 120.0) / 120.0, math.hypot(1.0, 6.0 / 12.0)
    side_by_side = 340.0 + KERF * lean
    nested = 340.0 + KERF * lean * over - 6.0 * lean
    assert sheet.laid[1].end == pytest.approx(nested if either else side_by_side, abs=0.01)


def test_eight_squares_on_a_sheet_with_its_saw_cuts() -> None:
    """4 × 8 ft and squares of 23 7/8 in at a saw cut of 1/8 in: eight, computed from the row of four and three cuts."""
    side = 23.875 * 25.4
    pieces = [piece_of("S", ((0.0, 0.0), (side, 0.0), (side, side), (0.0, side)))] * 8
    assert len(sheet_plan(pieces, 2438.4, 1219.2, 3.175)) == 1


def test_a_piece_is_never_turned_across_the_grain() -> None:
    with pytest.raises(ValueError, match="larger than the sheet"):
        sheet_plan([piece_of("X", ((0.0, 0.0), (50.0, 0.0), (50.0, 300.0), (0.0, 300.0)))], 400.0, 200.0, KERF)


@pytest.mark.parametrize("name", EXAMPLES)
def test_every_cut_runs_through_its_strip(name: str) -> None:
    """On the flared cap the cut between two of its triangles once ran through a corner of the third."""
    job = job_of(name)
    for buy in sheets_to_buy([(part, job.count(part)) for part in job.assembly.parts], Shop(KERF)):
        parted(tuple(sheet for sheet, _ in buy.sheets), 0.0 if buy.stock.form == "mesh" else KERF)


@pytest.mark.parametrize("name", [name for name in ("hay-barn-28ft", "octagon-dairy") if name in EXAMPLES])
def test_the_examples_sheets(name: str) -> None:
    job = job_of(name)
    of = {part.mark: sheet_piece(part) for part in job.assembly.parts if part.stock.form == "sheet"}
    wanted = [(part, job.count(part)) for part in job.assembly.parts]
    for buy in sheets_to_buy(wanted, Shop(KERF)):
        if buy.stock.form == "sheet":
            pieces = [of[part.mark] for part, many in wanted for _ in range(many) if part.stock == buy.stock]
            sheets = tuple(sheet for sheet, many in buy.sheets for _ in range(many))
            check(sheets, pieces, buy.length, buy.stock.width, KERF, 12.0)
            assert buy.least <= buy.count
    sheathing = [laid for buy in sheets_to_buy(wanted, Shop(KERF)) for sheet, _ in buy.sheets for laid in sheet.laid
                 if laid.mark.startswith("R9")]
    assert any(laid.turn == "face down" and laid.shared for laid in sheathing)
