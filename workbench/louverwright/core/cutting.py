# SPDX-License-Identifier: LGPL-2.1-or-later
"""From a stick trimmed by the assembly's planes to the blank and the ordered cuts that make it.

No angle is written down here: the planes come from the layout in the assembly
frame, are turned into the board frame, and are only sorted and named.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import NamedTuple

from .assembly import BORE, CORNER_CUT, CROSSCUT, CUT_ORDER, NOTCH, RIP, SHAPED_EDGE, Board, Cut, board_solid
from .geometry import DECIMALS, Bore, Placement, Plane, Vec
from .solid import COINCIDENT, Cell, Solid, box, clip, common, corners, extents, needed_planes, remove

#: Half the length of a stick before anything is cut off it (mm); longer than any stock.
ENDLESS = 50_000.0
#: Corners this near (mm) to an edge of the blank lie on it.
ON_EDGE = 1e-3
#: A cut whose normal leans less than this along the width is square to the length.
SQUARE = 1e-6
#: A plane that takes off less than this (mm) takes off nothing: float noise, far below any saw.
NOTHING = 1e-4


class Trim(NamedTuple):
    """Waste in the assembly frame: what lies beyond all of ``planes``.

    ``kind`` names the joint for a waste of several planes; a waste that is bounded by one plane is a
    saw cut whatever it is called.
    """

    name: str
    planes: tuple[Plane, ...]
    kind: str = ""
    partner: str = ""


@dataclass(frozen=True)
class Member:
    """A stick placed in the assembly and what trims it.

    ``frame`` has X along the grain, Y across the width, Z towards the marked face;
    the stick fills y from ``width[0]`` to ``width[1]`` and z from ``thickness[0]`` to ``thickness[1]`` (mm).
    ``swapped`` tells that the reference edge carries the name of the kind's far edge, ``reversed`` that
    end A carries that of its end B; ``turned`` that its length runs as the kind's width does: ends and edges exchange
    names, end A carrying that of the reference edge and the far edge that of end A; ``sheet`` that
    it is cut from a sheet, whose slanting edges are given by points, not as crosscuts.
    """

    kind: str
    side: int
    frame: Placement
    width: tuple[float, float]
    thickness: tuple[float, float]
    trims: tuple[Trim, ...]
    end: int = 0
    index: int = 0
    bores: tuple[tuple[str, Bore], ...] = ()
    swapped: bool = False
    reversed: bool = False
    turned: bool = False
    sheet: bool = False

    @property
    def id(self) -> str:
        """The piece's stable id: kind, side, end and index."""
        end = {-1: ".left", 0: "", 1: ".right"}[self.end]
        return f"{self.kind}/{self.side}{end}" + (f".{self.index}" if self.index else "")


class LayoutError(RuntimeError):
    """A member that the planes of the assembly leave nothing of, or leave endless: a fault of the layout."""


class Stick(NamedTuple):
    """All that a member's blank and cuts depend on, in its own frame, rounded: equal sticks are cut alike."""

    width: tuple[float, float]
    thickness: tuple[float, float]
    trims: tuple[Trim, ...]
    sheet: bool


def stick_of(member: Member) -> Stick:
    """The stick of a member, the same for every piece that is cut alike and lies alike in its frame."""
    width, thickness = ((round(low, DECIMALS) + 0.0, round(high, DECIMALS) + 0.0)
                        for low, high in (member.width, member.thickness))
    return Stick(width, thickness, tuple(_local(member)), member.sheet)


def board_of(member: Member) -> tuple[Placement, Board]:
    """The blank's placement and the board: the smallest blank and the cuts in the order they are made.

    The blank is as long as the saw's cuts need, which are made before the laps: a mitred end has its long point.

    Raises LayoutError when the planes do not leave one bounded piece.
    """
    try:
        low, board = _cut_from(stick_of(member))
    except LayoutError as error:
        raise LayoutError(f"{member.id}: {error}") from None
    placement = Placement(member.frame.point(low), member.frame.x, member.frame.y, member.frame.z)
    if member.bores:
        bored = (Cut(BORE, name, bore=placement.local_bore(bore)) for name, bore in member.bores)
        board = replace(board, cuts=tuple(sorted((*board.cuts, *bored), key=_turn)))
    return placement, board


@lru_cache(maxsize=4096)
def _cut_from(stick: Stick) -> tuple[Vec, Board]:
    """Where in the stick's frame its blank has its corner, and the board, bores apart.

    Sticks are remembered: what a change of one value leaves as it was is not cut again.
    """
    convex, singles, wastes = _trimmed(stick)
    singles = _that_count(stick, singles)
    wastes = [trim for number, trim in enumerate(wastes) if not _swallowed(trim, wastes[number + 1:], convex)]
    sawn: Solid = (convex,)
    for trim in (trim for trim in wastes if trim.kind in (NOTCH, SHAPED_EDGE)):
        sawn = remove(sawn, trim.planes, trim.name)
    if not sawn:
        raise LayoutError("nothing is left of it.")
    low, high = extents(sawn)
    if min(low) <= -ENDLESS or max(high) >= ENDLESS:
        raise LayoutError("no plane ends it.")
    size = (high[0] - low[0], high[1] - low[1], high[2] - low[2])
    moved = [_moved(trim, low) for trim in (*singles, *wastes)]
    board = Board(*size, tuple(sorted(_ordered(size, moved, stick.sheet), key=_turn)))
    if not board_solid(board):
        raise LayoutError("nothing is left of it.")
    return low, board


def _turn(cut: Cut) -> int:
    """When it is a cut's turn."""
    return CUT_ORDER.index(cut.kind)


def faces_of(stick: Stick) -> tuple[tuple[Vec, ...], ...]:
    """The faces of a trimmed stick in its own frame, bores apart: a shape to look at, no cuts; () where nothing is left.

    Raises LayoutError when a single plane takes all of it.
    """
    convex, _, wastes = _trimmed(stick, (NOTCH, SHAPED_EDGE))    # what else there is has only planes that it needs
    body: Solid = (convex,)
    for trim in wastes:
        body = remove(body, trim.planes, trim.name)
    return tuple(facet.points for cell in body for facet in cell)


def _local(member: Member) -> list[Trim]:
    """What trims a stick, in its own frame, rounded."""
    return [Trim(trim.name, tuple(member.frame.local_plane(p).rounded() for p in trim.planes), trim.kind, trim.partner)
            for trim in member.trims]


def _trimmed(stick: Stick, looked_at: tuple[str, ...] = CUT_ORDER) -> tuple[Cell, list[Trim], list[Trim]]:
    """The convex stick after every single plane; those planes; and the wastes that need several planes.

    Whether a waste needs all its planes is found out for the kinds that are ``looked_at``.
    """
    singles = [trim for trim in stick.trims if len(trim.planes) == 1]
    wastes = [trim for trim in stick.trims if len(trim.planes) > 1]
    body = _sawn(stick, singles)
    while True:
        simpler = [trim._replace(planes=needed_planes(body, trim.planes)) if trim.kind in looked_at else trim
                   for trim in wastes]
        wastes = [trim for trim in simpler if len(trim.planes) > 1]
        ready = [trim for trim in simpler if len(trim.planes) == 1]
        if not ready:
            return body, singles, wastes
        body = _clipped(body, ready)
        singles += ready


def _block(stick: Stick, singles: Iterable[Trim]) -> Cell:
    """The endless stick after those single planes that are square to its frame: still a block, so nothing is worked out."""
    (y0, y1), (z0, z1) = stick.width, stick.thickness
    low, high = [-ENDLESS, y0, z0], [ENDLESS, y1, z1]
    for trim in singles:
        axis = _axis(trim.planes[0])
        if axis is None:
            continue
        offset = trim.planes[0].offset
        if trim.planes[0].normal[axis] > 0.0:
            high[axis] = min(high[axis], offset)
        else:
            low[axis] = max(low[axis], -offset)
        if high[axis] - low[axis] <= COINCIDENT:
            raise _nothing_left(trim)
    return box((low[0], low[1], low[2]), (high[0], high[1], high[2]))


def _axis(plane: Plane) -> int | None:
    """The axis that a rounded plane is square to, if there is one."""
    return next((i for i, n in enumerate(plane.normal) if abs(n) == 1.0), None)


def _clipped(body: Cell, trims: Iterable[Trim]) -> Cell:
    for trim in trims:
        cut = clip(body, trim.planes[0], trim.name)
        if cut is None:
            raise _nothing_left(trim)
        body = cut
    return body


def _nothing_left(trim: Trim) -> LayoutError:
    return LayoutError(f"“{trim.name}” takes all of it.")


def _that_count(stick: Stick, singles: list[Trim]) -> list[Trim]:
    """The saw cuts less those that a notch of one plane takes whole: a foot under which all is relieved over a ridge cap."""
    kept = singles
    for trim in singles:
        others = [each for each in kept if each is not trim]
        if any(each.kind == NOTCH for each in others) and not _bites((_sawn(stick, others),), trim.planes[0]):
            kept = others
    return kept


def _sawn(stick: Stick, singles: list[Trim]) -> Cell:
    """The endless stick after these single planes."""
    return _clipped(_block(stick, singles), (trim for trim in singles if _axis(trim.planes[0]) is None))


def _swallowed(trim: Trim, later: list[Trim], convex: Cell) -> bool:
    """True for a notch that later ones take whole: a foot on the roof where it is relieved over the ridge cap all along."""
    body = _cut_off((convex,), [each for each in later if each.kind == NOTCH == trim.kind])
    return trim.kind == NOTCH and not any(common(cell, trim.planes) for cell in body)


def _moved(trim: Trim, origin: Vec) -> Trim:
    return trim._replace(planes=tuple(Plane(p.normal, -p.height(origin)) for p in trim.planes))


def _ordered(size: Vec, trims: list[Trim], sheet: bool) -> tuple[Cut, ...]:
    """The cuts of a blank: each saw cut classed by what it meets when its turn comes, after rips and shaped edges."""
    blank: Solid = (box((0.0, 0.0, 0.0), size),)
    saw = [t for t in trims if len(t.planes) == 1 and _bites(blank, t.planes[0])]
    rips = [t for t in saw if _meets(blank, t.planes[0], 0)]
    shaped = [t for t in trims if len(t.planes) > 1 and t.kind == SHAPED_EDGE]
    body = _cut_off(blank, (*rips, *shaped))
    across = [t for t in saw if t not in rips and _meets(body, t.planes[0], 1)
              and not (sheet and abs(t.planes[0].normal[1]) > SQUARE)]
    across.sort(key=_end)
    others = [t for t in saw if t not in rips and t not in across]
    rest = sorted(others, key=_end)
    cuts = [*(_cut(RIP, t) for t in rips), *(_cut(SHAPED_EDGE, t) for t in shaped), *(_cut(CROSSCUT, t) for t in across),
            *(_cut(CORNER_CUT, t) for t in rest)]
    cuts = _that_bite(blank, cuts)
    cuts += [_cut(t.kind, t) for t in trims if len(t.planes) > 1 and t.kind != SHAPED_EDGE]
    return tuple(cuts)


def _end(trim: Trim) -> bool:
    """False for end A, True for end B."""
    return trim.planes[0].normal[0] > 0


def _cut(kind: str, trim: Trim) -> Cut:
    return Cut(kind, trim.name, trim.planes, partner=trim.partner)


def _bites(solid: Solid, plane: Plane) -> bool:
    return max(plane.height(p) for p in corners(solid)) > NOTHING


def _meets(solid: Solid, plane: Plane, axis: int) -> bool:
    """True when the cut by ``plane`` reaches from one side of the solid to the other along ``axis``."""
    reach = [p[axis] for cell in solid for facet in clip(cell, plane, "this cut") or () if facet.name == "this cut"
             for p in facet.points]
    if not reach:
        return False
    low, high = extents(solid)
    return min(reach) < low[axis] + ON_EDGE and max(reach) > high[axis] - ON_EDGE


def _cut_off(solid: Solid, trims: Iterable[Trim]) -> Solid:
    for trim in trims:
        solid = remove(solid, trim.planes, trim.name)
    return solid


def _that_bite(blank: Solid, cuts: list[Cut]) -> list[Cut]:
    """The cuts that still take something off when their turn comes."""
    kept: list[Cut] = []
    body = blank
    for cut in cuts:
        if len(cut.planes) > 1 or _bites(body, cut.planes[0]):
            kept.append(cut)
            body = remove(body, cut.planes, cut.name)
    return kept
