# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a small error at the saw does at a joint: the cut is made wrong by that much, and the opening measured on the wood."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

from .assembly import CROSSCUT, Assembly, Board, Cut, Part
from .geometry import Plane, Vec, add, cross, scale, unit
from .sizes import Sizes

#: The errors that are tried: degrees, mm.
ANGLE_ERROR, LENGTH_ERROR = 0.5, 1.0
MITRE, BEVEL, LENGTH, SPACING = "mitre", "bevel", "length", "spacing"
#: Joints may open this far (mm): 1/16 in for trim, 1/8 in for framing, common practice.
TRIM_LIMIT, FRAME_LIMIT = 1.5875, 3.175


@dataclass(frozen=True)
class JointSort:
    """A sort of joint to try: the kind of part, a word of its cut's name (any cut where ''), pieces that share the
    error, the opening that passes (mm), which dimension to hold and which to trim."""

    name: str
    kind: str
    cut: str
    pieces: int
    limit: float
    hold: str
    trim: str


SORTS = (
    JointSort("Leg foot on the roof", "base.leg", "foot", 1, FRAME_LIMIT, "the length from the top to the foot's long point",
              "the foot, scribed to the roof as it is"),
    JointSort("Corner of the base frame's top rail", "base.rail.top", "", 2, FRAME_LIMIT,
              "the length between long points, all alike",
              "the ends, both by the same shaving"),
    JointSort("Mitre of the cap plate", "roof.plate", "", 2, FRAME_LIMIT,
              "the length between long points, all alike",
              "the ends, both by the same shaving"),
    JointSort("Mitre of the drip ring", "louver.ring", "", 2, TRIM_LIMIT, "the length between long points, all alike",
              "the last board, to fit between its neighbours"),
    JointSort("Head of the hip rafter", "roof.hip", "king post", 1, FRAME_LIMIT,
              "the distance from the seat over the plate to the head",
              "the tail, to a line struck along the eave"),
    JointSort("Mitre of the fascia", "roof.fascia", "", 2, TRIM_LIMIT, "the angle: it is seen",
              "the length of the last board"),
)


@dataclass(frozen=True)
class Opening:
    """What an error opens: ``error`` in degrees (mitre, bevel) or mm (length, spacing), ``opens`` in mm, at the worst part."""

    sort: JointSort
    part: Part
    what: str
    error: float
    opens: float

    @property
    def good(self) -> bool:
        """Whether so much may be left open."""
        return self.opens <= self.sort.limit


def openings(assembly: Assembly, at: Sizes) -> tuple[Opening, ...]:
    """Every sort of joint that the vent has, with each error that its cut can have; of several parts the worst."""
    found: list[Opening] = []
    for sort in SORTS:
        for what in (MITRE, BEVEL, LENGTH):
            tried = [Opening(sort, part, what, LENGTH_ERROR if what == LENGTH else ANGLE_ERROR,
                             sort.pieces * opening(part.board, index, what))
                     for part in assembly.parts if part.kind.id == sort.kind or part.kind.id.startswith(sort.kind + ".")
                     for index in _cuts(part.board, sort)]
            if tried:
                found.append(max(tried, key=lambda each: each.opens))
    return (*found, *_dados(assembly, at))


def _cuts(board: Board, sort: JointSort) -> Iterator[int]:
    return (index for index, cut in enumerate(board.cuts)
            if cut.kind == CROSSCUT and len(cut.planes) == 1 and sort.cut in cut.name)


def opening(board: Board, index: int, what: str, error: float | None = None) -> float:
    """How far (mm) a joint opens where a crosscut of a board is wrong by ``error`` (degrees, or mm for the length).

    The piece is pushed up to its neighbour until it touches: with an angle wrong it touches at one side and stands open at
    the other; too short, it stands off by the error as it lies square to the cut.
    """
    cut = board.cuts[index]
    plane = cut.planes[0]
    if what == LENGTH:
        return abs(plane.normal[0]) * (LENGTH_ERROR if error is None else error)
    wrong = _turned(plane, what, ANGLE_ERROR if error is None else error, _middle(board, cut))
    cuts = (*board.cuts[:index], replace(cut, planes=(wrong,)), *board.cuts[index + 1:])
    made = replace(board, cuts=cuts).after(len(cuts))
    heights = [plane.height(p) for cell in made for facet in cell
               if facet.name == cut.name and facet.plane == wrong for p in facet.points]
    return max(heights) - min(heights) if heights else 0.0


def _middle(board: Board, cut: Cut) -> Vec:
    points = [p for cell in board.after(len(board.cuts)) for facet in cell
              if facet.name == cut.name and facet.plane == cut.planes[0] for p in facet.points]
    if not points:
        return scale(cut.planes[0].normal, cut.planes[0].offset)
    return (sum(p[0] for p in points) / len(points), sum(p[1] for p in points) / len(points),
            sum(p[2] for p in points) / len(points))


def _turned(plane: Plane, what: str, degrees: float, about: Vec) -> Plane:
    """The plane a saw makes that is set wrong: turned on the table for the mitre, tilted for the bevel."""
    z = (0.0, 0.0, 1.0)
    axis = z if what == MITRE else unit(cross(z, plane.normal))
    angle = math.radians(degrees)
    normal = add(scale(plane.normal, math.cos(angle)), scale(cross(axis, plane.normal), math.sin(angle)))
    along = axis[0] * plane.normal[0] + axis[1] * plane.normal[1] + axis[2] * plane.normal[2]
    return Plane.through(about, unit(add(normal, scale(axis, along * (1.0 - math.cos(angle))))))


def _dados(assembly: Assembly, at: Sizes) -> Iterator[Opening]:
    """Dados struck one from the other: each wrong by the error, the last by all of them; its gap under the head changes."""
    stiles = assembly.of_kind("louver.stile")
    if stiles:
        sort = JointSort("Spacing of the dados, stepped off one from the other", "louver.stile", "", 1, TRIM_LIMIT,
                         "every dado from the foot, off one story stick",
                         "the head rail's height, if the last slat asks for it")
        yield Opening(sort, stiles[0], SPACING, LENGTH_ERROR, LENGTH_ERROR * at.louver.slats)
