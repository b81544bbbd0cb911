# SPDX-License-Identifier: LGPL-2.1-or-later
"""The vent put together dry: how far apart the faces of each joint really are, and whether pieces share wood.

Measured on the cells of the pieces as they stand, with no rule asked but the joint's own kind and gap.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import combinations

from .assembly import LINE_CONTACT, Assembly, Joint, Piece, board_solid
from .geometry import Plane, dot
from .joints import Stands, all_standing, distance, facing, near, shared_area
from .solid import Cell, Facet, clip, volume_and_centre

#: Pieces may share this much (mm³); the host's tests let the kernel's solids share as much.
OVERLAP_LIMIT = 1.0
#: A joint's faces may be off their gap by this (mm), and have at least this much in common (mm²).
GAP_LIMIT, CONTACT_LIMIT = 0.01, 1.0


@dataclass(frozen=True)
class KindFit:
    """All joints of a kind: how many, the one that is furthest off its gap (mm), the least area in common (mm²).

    The area is 0 for line contacts, which have none.
    """

    kind: str
    count: int
    worst: float
    worst_joint: Joint
    least_area: float

    @property
    def good(self) -> bool:
        """Whether gaps and areas keep the limits."""
        return self.worst <= GAP_LIMIT and (self.kind == LINE_CONTACT or self.least_area >= CONTACT_LIMIT)


@dataclass(frozen=True)
class Overlap:
    """Two pieces, by their ids, and the wood that they share (mm³)."""

    first: str
    second: str
    volume: float


def joint_fits(assembly: Assembly) -> tuple[KindFit, ...]:
    """Every joint measured, one record for each kind of joint, in the order in which the joints come."""
    found = {each.piece.id: each for each in all_standing(assembly.parts)}
    measured: dict[str, list[tuple[float, float, Joint]]] = {}
    for joint in assembly.joints:
        off, area = _measured(joint, found[joint.first], found[joint.second])
        measured.setdefault(joint.kind, []).append((off, area, joint))
    fits = []
    for kind, each in measured.items():
        worst = max(each, key=lambda m: m[0])
        fits.append(KindFit(kind, len(each), worst[0], worst[2], min(area for _, area, _ in each)))
    return tuple(fits)


def _measured(joint: Joint, a: Stands, b: Stands) -> tuple[float, float]:
    """How far a joint is off its gap (mm) and the area (mm²) over which its faces look at each other there."""
    if joint.kind == LINE_CONTACT:
        return abs(b.low[2] - a.high[2]), 0.0
    met = [(distance(one, other), area) for one, other in facing(a.patches, b.patches)
           if (area := shared_area(one.corners, other.corners, one.normal)) > CONTACT_LIMIT]
    if not met:
        return float("inf"), 0.0
    off = min(abs(gap - joint.gap) for gap, _ in met)
    return off, sum(area for gap, area in met if abs(gap - joint.gap) <= off + GAP_LIMIT)


def overlaps(assembly: Assembly) -> tuple[Overlap, ...]:
    """Pairs of pieces that share wood, the most first; () where none does."""
    pieces = all_standing(assembly.parts)
    solids = {each.piece.id: standing_cells(assembly, each.piece) for each in pieces}
    found = [Overlap(a.piece.id, b.piece.id, volume) for a, b in combinations(pieces, 2) if near(a, b, 0.0)
             and (volume := _shared_volume(solids[a.piece.id], solids[b.piece.id])) > 0.0]
    return tuple(sorted(found, key=lambda each: -each.volume))


def standing_cells(assembly: Assembly, piece: Piece) -> tuple[Cell, ...]:
    """The cells of a piece in the assembly frame; bores are not part of them."""
    place = piece.placement

    def moved(facet: Facet) -> Facet:
        points = tuple(place.point(p) for p in facet.points)
        return Facet(Plane.through(points[0], place.direction(facet.plane.normal)), facet.name, points)

    return tuple(tuple(moved(facet) for facet in cell) for cell in board_solid(assembly.part_of(piece.id).board))


def _shared_volume(first: tuple[Cell, ...], second: tuple[Cell, ...]) -> float:
    return sum(_common_volume(a, b) for a in first for b in second if not _apart(a, b) and not _apart(b, a))


def _apart(a: Cell, b: Cell) -> bool:
    """True where a face of ``a`` has all of ``b`` on its far side, or but a thousandth of a millimetre of it behind it."""
    points = {p for facet in b for p in facet.points}
    return any(min(dot(facet.plane.normal, p) for p in points) > facet.plane.offset - 1e-3 for facet in a)


def _common_volume(a: Cell, b: Cell) -> float:
    rest: Cell | None = a
    for facet in b:
        if rest is None:
            return 0.0
        rest = clip(rest, facet.plane, facet.name)
    return volume_and_centre((rest,))[0] if rest is not None else 0.0
