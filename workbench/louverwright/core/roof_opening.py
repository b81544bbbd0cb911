# SPDX-License-Identifier: LGPL-2.1-or-later
"""The rough opening under a vent: its outline, what of it is left beside a ridge board, and the room to cut out of the roof.

All in the vent's frame (see ``plan``), in mm and mm².  What is left of the outline is kept as convex prisms over the level
z = 0, one mm high, so that their volume is their area in plan; ``shafts`` carries them through the roof.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise

from .geometry import Plane, Vec, scale
from .hull import hull
from .plan import BarnRoof
from .saying import say
from .sizes import Sizes, opening_halves
from .solid import Cell, Solid, box, clip, common, extents, remove, volume_and_centre
from .spec import length_text, most_text

LEFT_STANDING, REFUSED = "left standing", "refused"
RULES = (LEFT_STANDING, REFUSED)
#: How far over the roof's surface an opening reaches (mm): over ribs, battens and ridge caps that are drawn with the roof.
ABOVE = 150.0
#: What is smaller in plan is no opening, but noise of floats (mm²).
LEAST_AREA = 1.0

_SIDE, _TOP, _BOTTOM = "side of the opening", "above the roof", "below the roof"


class OpeningError(ValueError):
    """An opening that cannot be cut; the text says what stands against it, and the cure."""


@dataclass(frozen=True)
class Spared:
    """What must not be cut, by its name: all that lies beyond every one of ``planes``, which are plumb."""

    name: str
    planes: tuple[Plane, ...]


def outline(at: Sizes, margin: float) -> tuple[Vec, ...]:
    """The four corners of the opening in plan, anticlockwise, at z = 0.

    A rectangle along side 0's ``u``, or for plans of more than four sides along the ridge.  Raises OpeningError for a
    ``margin`` (mm, inside the legs) that leaves nothing.
    """
    long, wide = opening_halves(at, margin)
    if min(long, wide) <= 0.0:
        raise OpeningError(say("Opening margin is {margin}: nothing is left of the opening between the legs. Set it below "
                               "{most}.", margin=length_text(margin), most=most_text(min(opening_halves(at, 0.0)))))
    x, y = (at.plan.u(0), at.plan.v(0)) if at.plan.sides == 4 else ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0))
    return tuple((x[0] * a + y[0] * b, x[1] * a + y[1] * b, 0.0)
                 for a, b in ((-long, -wide), (long, -wide), (long, wide), (-long, wide)))


def ridge_board(roof: BarnRoof, thickness: float) -> tuple[Spared, ...]:
    """A ridge board under the ridge, of a thickness (mm); none for 0, and on one slope, which has no ridge."""
    if not thickness or roof.single:
        return ()
    right, left = roof.ridge - thickness / 2.0, roof.ridge + thickness / 2.0
    return (Spared(say("the ridge board"), (Plane((0.0, 1.0, 0.0), right), Plane((0.0, -1.0, 0.0), -left))),)


def shadow(name: str, points: Iterable[Vec]) -> tuple[Spared, ...]:
    """What lies plumb over and under a body with these points (mm), as wide as its outline in plan; none for one without
    any width."""
    corners = [(x, y, 0.0) for x, y in hull((p[0], p[1]) for p in points)]
    if len(corners) < 3:
        return ()
    return (Spared(name, _sides(corners, -1.0)),)


def _sides(corners: Sequence[Vec], way: float) -> tuple[Plane, ...]:
    """The plumb planes along an anticlockwise outline; waste outside for ``way`` 1, inside for −1."""
    return tuple(Plane.through(a, scale((b[1] - a[1], a[0] - b[0], 0.0), way)) for a, b in pairwise((*corners, corners[0])))


def clear_pieces(corners: Sequence[Vec], spared: Iterable[Spared] = (), rule: str = LEFT_STANDING) -> Solid:
    """What of an outline may be cut: convex prisms on z = 0, one mm high.

    Raises OpeningError if nothing is left, or with the rule "refused" if anything spared lies in the outline.
    """
    reach = 1.0 + max(max(abs(p[0]), abs(p[1])) for p in corners)
    whole = common(box((-reach, -reach, 0.0), (reach, reach, 1.0)), _sides(corners, -1.0))
    pieces: Solid = (whole,) if whole else ()
    for each in spared:
        left = tuple(cell for cell in remove(pieces, each.planes, _SIDE) if clear_area((cell,)) > LEAST_AREA)
        lost = clear_area(pieces) - clear_area(left)
        if rule == REFUSED and lost > LEAST_AREA:
            raise OpeningError(say("The opening would cut {name}, over {lost:.0f} cm² in plan, and that is refused. Set a "
                                   "greater opening margin, move the vent, or have it left standing.", name=each.name,
                                   lost=lost / 100.0))
        if not left:
            raise OpeningError(say("Nothing is left of the opening: {name} covers it. Set a thinner board, a smaller opening "
                                   "margin, or a wider vent.", name=each.name))
        pieces = left
    return pieces


def clear_area(pieces: Solid) -> float:
    """Area in plan of what ``clear_pieces`` left (mm²)."""
    return volume_and_centre(pieces)[0] if pieces else 0.0


def shafts(roof: BarnRoof, pieces: Solid, depth: float, above: float = ABOVE) -> tuple[Solid, ...]:
    """The room to cut out under each piece, from ``above`` the roof's surface down to ``depth`` under it, both plumb (mm).

    One or two convex cells for a piece, which meet under the ridge.
    """
    found = []
    for piece in pieces:
        (x0, y0, _), (x1, y1, _) = extents((piece,))
        ends = [roof.height(y) for y in (y0, y1, roof.ridge)]
        tall = box((x0, y0, min(ends) - depth - 1.0), (x1, y1, max(ends) + above + 1.0))
        column = common(tall, [facet.plane.flipped() for facet in piece if abs(facet.plane.normal[2]) < 0.5])
        cells = tuple(cell for half in _halves(roof, column) if (cell := _between(roof, half, depth, above)))
        found.append(cells)
    return tuple(found)


def _halves(roof: BarnRoof, column: Cell | None) -> list[tuple[Cell, int]]:
    """A column parted under the ridge, each half with the number of its slope: 0 left, 1 right."""
    if column is None or roof.single:
        return [(column, 0)] if column else []
    ridge = Plane((0.0, 1.0, 0.0), roof.ridge)
    parted = (clip(column, ridge.flipped(), "under the ridge"), clip(column, ridge, "under the ridge"))
    return [(half, slope) for slope, half in enumerate(parted) if half]


def _between(roof: BarnRoof, half: tuple[Cell, int], depth: float, above: float) -> Cell | None:
    """What of a half lies between the two planes along its slope."""
    cell, slope = half
    top = clip(cell, roof.slopes(raised=above)[slope].flipped(), _TOP)
    return clip(top, roof.slopes(raised=-depth)[slope], _BOTTOM) if top else None


def depth_under(roof: BarnRoof, point: Vec) -> float:
    """How far a point lies plumb under the roof's surface (mm); negative above it."""
    return roof.height(point[1]) - point[2]
