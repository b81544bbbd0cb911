# SPDX-License-Identifier: LGPL-2.1-or-later
"""Rain at the vent's own solids: what a line of sight gets through, where water runs, and which end grain it stands on."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from .assembly import Assembly, Part, Piece
from .contacts import side_of_cut
from .dry_fit import standing_cells
from .geometry import Z_AXIS, Vec, add, dot, scale
from .sight import stretch_in
from .sizes import Sizes
from .solid import END_A, END_B, Cell, Facet, surface_area

#: Where across the clear width the panel is looked through, as fractions of its half.
ACROSS = (-0.98, -0.75, -0.5, -0.25, -0.02, 0.02, 0.25, 0.5, 0.75, 0.98)
#: Steps from the level to the rain angle.
STEPS = 6
#: What lets less than this through (mm) is shut: rounding of floats.
SHUT = 1e-6
#: The steepest ray that is looked for (degrees).
STEEPEST = 89
#: An end looks up where it leans this far from plumb or less (degrees), and lies open where this much of it does (mm²).
LOOKS_UP, OPEN_AREA = 80.0, 1.0
#: Kinds that a covering lies on: roofing or a mast's flashing, which are not modelled.
COVERED = ("roof.sheathing",)


@dataclass(frozen=True)
class Sight:
    """Rays that rise inward at ``angle`` (degrees) through a panel: the height (mm) of the widest bundle that gets through."""

    angle: float
    open: float


def sight_lines(assembly: Assembly, at: Sizes, side: int, rain_angle: float) -> tuple[Sight, ...]:
    """The panel of a side looked through from outside, level and up to the rain angle, at all heights at once.

    In each of the planes square to the panel at ``ACROSS``, each solid shades an interval of heights for rays of one angle;
    what the intervals leave open, sill to head, is what gets through.
    """
    cuts = _sections(assembly, at, side)
    return tuple(Sight(angle, _widest(cuts, angle)) for angle in (rain_angle * step / STEPS for step in range(STEPS + 1)))


def steepest_shut(assembly: Assembly, at: Sizes, side: int) -> float:
    """The steepest ray, rising inward (degrees), up to which the panel lets nothing through; −1 where it is open level.

    Looked for degree by degree, for much steeper rays are shut out again by the frame; then halved.
    """
    cuts = _sections(assembly, at, side)
    opens = next((angle for angle in range(STEEPEST + 1) if _widest(cuts, angle) > SHUT), None)
    if not opens:
        return float(STEEPEST) if opens is None else -1.0
    low, high = opens - 1.0, float(opens)
    while high - low > 1e-4:
        middle = (low + high) / 2.0
        low, high = (middle, high) if _widest(cuts, middle) <= SHUT else (low, middle)
    return low


Section = list[list[tuple[float, float]]]


def _sections(assembly: Assembly, at: Sizes, side: int) -> list[Section]:
    """For each plane across the panel the outlines of all that stands in it, as points (r outward, z)."""
    panel, out, along = at.louver.panel(side), at.plan.u(side), at.plan.v(side)
    solids = [cell for piece in assembly.pieces if piece.side == side and _stops_rays(assembly.part_of(piece.id))
              for cell in standing_cells(assembly, piece)]
    return [[outline for cell in solids if (outline := _outline(cell, along, share * panel.clear_half, out))]
            for share in ACROSS if abs(share) * panel.clear_half >= panel.mullion_t / 2.0]


def _stops_rays(part: Part) -> bool:
    """Wood of the panel and what holds it; a mesh stops no rain."""
    return part.kind.id in ("louver.slat", "louver.sill", "louver.bed", "louver.head", "louver.rail.top", "louver.rail.bottom",
                            "louver.frieze")


def _outline(cell: Cell, along: Vec, place: float, out: Vec) -> list[tuple[float, float]]:
    """Corners (r, z) of a convex cell's section by the plane along·p = place; [] where it misses."""
    found = []
    for facet in cell:
        for i, p in enumerate(facet.points):
            q = facet.points[(i + 1) % len(facet.points)]
            hp, hq = dot(along, p) - place, dot(along, q) - place
            if hp * hq < 0.0:
                share = hp / (hp - hq)
                point = add(scale(p, 1.0 - share), scale(q, share))
                found.append((dot(out, point), point[2]))
    return found


def _widest(cuts: list[Section], angle: float) -> float:
    """The widest open interval (mm of height at the axis) between the lowest and the highest solid, over all planes."""
    rise = math.tan(math.radians(angle))
    return max((_open([_shade(outline, rise) for outline in cut]) for cut in cuts), default=0.0)


def _shade(outline: list[tuple[float, float]], rise: float) -> tuple[float, float]:
    heights = [z + r * rise for r, z in outline]    # where the ray through the point meets the axis
    return min(heights), max(heights)


def _open(shades: Iterable[tuple[float, float]]) -> float:
    top, widest = -math.inf, 0.0
    for low, high in sorted(shades):
        if top > -math.inf:
            widest = max(widest, low - top)
        top = max(top, high)
    return widest


@dataclass(frozen=True)
class Shed:
    """The widest face of a part that looks up: its fall outward (degrees from level; negative where it falls inward)."""

    part: Part
    fall: float


def sheds(assembly: Assembly, at: Sizes, kinds: Iterable[str]) -> tuple[Shed, ...]:
    """How the pieces of the given kinds shed water, as they stand; the flattest of each part."""
    found = []
    for kind in kinds:
        for part in assembly.of_kind(kind):
            falls = [_fall(assembly, piece, at) for piece in part.pieces]
            found.append(Shed(part, min(falls)))
    return tuple(found)


def _fall(assembly: Assembly, piece: Piece, at: Sizes) -> float:
    up = [facet for cell in standing_cells(assembly, piece) for facet in cell if facet.plane.normal[2] > 1e-3]
    normal = max(up, key=lambda facet: surface_area(facet.points)).plane.normal
    return math.degrees(math.atan2(dot(normal, at.plan.u(piece.side)), normal[2]))


def reach_beyond(assembly: Assembly, at: Sizes, kind: str, family: str) -> float | None:
    """How far (mm) pieces of a kind reach out beyond those of a family on the same side, at the least; None where none is."""
    outer = _reaches(assembly, at, kind)
    inner = _reaches(assembly, at, family)
    return min((outer[side] - inner[side] for side in outer if side in inner), default=None)


def _reaches(assembly: Assembly, at: Sizes, family: str) -> dict[int, float]:
    found: dict[int, float] = {}
    for piece in assembly.pieces:
        if piece.kind == family or piece.kind.startswith(family + "."):
            out = at.plan.u(piece.side)
            reach = max(dot(out, p) for cell in standing_cells(assembly, piece) for facet in cell for p in facet.points)
            found[piece.side] = max(found.get(piece.side, -math.inf), reach)
    return found


@dataclass(frozen=True)
class EndGrain:
    """An end that looks up under open sky: the part, the end by its name in the vent, its lean from level, how many."""

    part: Part
    end: str
    lean: float
    count: int


def end_grain_up(assembly: Assembly) -> tuple[EndGrain, ...]:
    """Parts with an end that rain stands on: it looks up, and nothing of the vent is plumb above some of it.

    Sheet goods count as wood, for their edges drink as ends do; mesh does not, nor what a covering lies on.
    """
    solids = {piece.id: standing_cells(assembly, piece) for piece in assembly.pieces}
    tall = {name: max(p[2] for cell in cells for facet in cell for p in facet.points) for name, cells in solids.items()}
    found = []
    for part in assembly.parts:
        if part.stock.form == "mesh" or part.kind.id.startswith(COVERED):
            continue
        for end in (END_A, END_B):
            leans = [lean for piece in part.pieces
                     if (lean := _open_lean(solids, tall, piece.id, _end_facets(part, end, solids[piece.id]))) is not None]
            if leans:
                found.append(EndGrain(part, part.called(end), min(leans), len(leans)))
    return tuple(found)


def _end_facets(part: Part, end: str, cells: tuple[Cell, ...]) -> Iterator[Facet]:
    """The faces that lie in an end: the blank's own, and those of cuts across the grain at that end."""
    names = {end, *(cut.name for cut in part.board.cuts if len(cut.planes) == 1 and side_of_cut(cut) == end)}
    return (facet for cell in cells for facet in cell if facet.name in names)


def _open_lean(solids: dict[str, tuple[Cell, ...]], tall: dict[str, float], name: str,
               facets: Iterable[Facet]) -> float | None:
    """The lean from level (degrees) of the flattest face that looks up to open sky; None for none."""
    leans = []
    for facet in facets:
        z = facet.plane.normal[2]
        if z > math.cos(math.radians(LOOKS_UP)) and surface_area(facet.points) > OPEN_AREA and any(
                _sky(solids, tall, name, point) for point in _inside(facet)):
            leans.append(math.degrees(math.acos(min(1.0, z))))
    return min(leans, default=None)


def _inside(facet: Facet) -> Iterator[Vec]:
    """The middle of a face and points near its corners."""
    middle = scale((sum(p[0] for p in facet.points), sum(p[1] for p in facet.points), sum(p[2] for p in facet.points)),
                   1.0 / len(facet.points))
    yield middle
    yield from (add(scale(p, 0.9), scale(middle, 0.1)) for p in facet.points)


def _sky(solids: dict[str, tuple[Cell, ...]], tall: dict[str, float], name: str, point: Vec) -> bool:
    """Whether nothing is plumb above a point, the piece's own other cells among it."""
    start = add(point, (0.0, 0.0, 0.01))
    return not any(_above(cell, start) for each, cells in solids.items() if tall[each] > start[2] for cell in cells)


def _above(cell: Cell, start: Vec) -> bool:
    stretch = stretch_in(cell, start, Z_AXIS)
    return stretch is not None and stretch[1] - max(0.0, stretch[0]) > 1e-6
