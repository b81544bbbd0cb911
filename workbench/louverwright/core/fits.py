# SPDX-License-Identifier: LGPL-2.1-or-later
"""Whether one finished board can be cut from another: the new one lies within the old one, its grain along the old grain.

A sure test: it may fail to find a way that there is, and never finds one that there is not (to ``SLACK``).
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache
from itertools import product

from .assembly import Board, board_solid, board_volume_and_centre
from .geometry import Bore, Placement, Plane, Vec, add, cross, dot, scale, sub, unit
from .marks import ALIKE, turns
from .solid import box, common, corners

#: How far (mm) the new board may stand out of the old one: far below any saw, above float noise.
SLACK = ALIKE
#: A plane whose normal leans less than this along the length does not end a board.
_LEVEL = 1e-9


@lru_cache(maxsize=4096)
def fit(old: Board, new: Board) -> Placement | None:
    """Where the new board lies within the old one (new board frame → old board frame), or None if none is found."""
    if board_volume_and_centre(new)[0] > board_volume_and_centre(old)[0] + 1.0 or _larger(new, old):
        return None
    for turn in turns(new.size):
        for place in _places(old, new, turn):
            if lies_within(old, new, place):
                return place
    return None


def _larger(new: Board, old: Board) -> bool:
    return any(a > b + SLACK for a, b in zip(new.size, old.size, strict=True))


def _places(old: Board, new: Board, turn: Placement) -> Iterator[Placement]:
    """Ways to lay the turned new board into the old blank: against either edge and face, and along where ends allow."""
    room = sub(old.size, new.size)
    across = [(0.0,) if abs(room[i]) < SLACK else (0.0, room[i]) for i in (1, 2)]
    for y, z in product(*across):
        laid = Placement(add(turn.origin, (0.0, y, z)), turn.x, turn.y, turn.z)
        for x in _along(old, new, laid):
            yield Placement(add(laid.origin, (x, 0.0, 0.0)), turn.x, turn.y, turn.z)


def _along(old: Board, new: Board, laid: Placement) -> list[float]:
    """How far to move along the length: as far as single saw cuts allow either way, between, and joint on joint."""
    points = [laid.point(p) for p in corners(board_solid(new))]
    low, high = -SLACK / 2.0, old.length - new.length + SLACK / 2.0
    for cut in old.cuts:
        if len(cut.planes) != 1 or abs(cut.planes[0].normal[0]) < _LEVEL:
            continue
        plane = cut.planes[0]
        most = (SLACK / 2.0 - max(plane.height(p) for p in points)) / plane.normal[0]
        low, high = (low, min(high, most)) if plane.normal[0] > 0.0 else (max(low, most), high)
    if low > high:
        return []
    wanted = [0.0, old.length - new.length, low, high, (low + high) / 2.0, *_joint_on_joint(old, new, laid)]
    return list(dict.fromkeys(x for x in wanted if low - _LEVEL <= x <= high + _LEVEL))


def _joint_on_joint(old: Board, new: Board, laid: Placement) -> Iterator[float]:
    """Moves that bring a joint's end onto the end of one of the old board's joints (the outermost of many)."""
    theirs, ours = _joint_ends(old, None), _joint_ends(new, laid)
    for a, b in product(sorted(theirs)[:2] + sorted(theirs)[-2:], sorted(ours)[:2] + sorted(ours)[-2:]):
        yield a - b


def _joint_ends(board: Board, laid: Placement | None) -> set[float]:
    ends: set[float] = set()
    for cut in board.cuts:
        waste = common(box((0.0, 0.0, 0.0), board.size), cut.planes) if len(cut.planes) > 1 else None
        if waste is not None:
            points = corners((waste,))
            along = [laid.point(p)[0] if laid else p[0] for p in points]
            ends |= {min(along), max(along)}
    return ends


def lies_within(old: Board, new: Board, place: Placement) -> bool:
    """True when no waste and no bore of the old board reaches into the new one, placed in the old board's frame."""
    cells = board_solid(new)
    points = [place.point(p) for p in corners(cells)]
    if any(not -SLACK <= p[i] <= old.size[i] + SLACK for p in points for i in range(3)):
        return False
    wastes = [[place.local_plane(plane).moved(SLACK) for plane in cut.planes] for cut in old.cuts if cut.planes]
    if any(common(cell, waste) is not None for cell in cells for waste in wastes):
        return False
    open_bores = [bore for bore in map(place.local_bore, old.bores) if not any(_holds(own, bore) for own in new.bores)]
    return not any(common(cell, _around(bore)) is not None for cell in cells for bore in open_bores)


def _holds(own: Bore, old: Bore) -> bool:
    """Whether an old bore lies within one that the new board has anyway."""
    return old.diameter <= own.diameter + SLACK and all(
        _in_bore(own, add(old.start, scale(old.direction, t)), (own.diameter - old.diameter) / 2.0) for t in (0.0, old.length))


def _in_bore(bore: Bore, p: Vec, off: float) -> bool:
    """Whether a point lies within ``off`` of a bore's axis, between its ends."""
    from_start = sub(p, bore.start)
    along = dot(from_start, bore.direction)
    aside = sub(from_start, scale(bore.direction, along))
    return -SLACK <= along <= bore.length + SLACK and dot(aside, aside) <= (max(0.0, off) + SLACK) ** 2


def _around(bore: Bore) -> list[Plane]:
    """The square prism around a bore, as the waste of six planes."""
    x = bore.direction
    least = min(range(3), key=lambda i: abs(x[i]))
    y = unit(cross(x, ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0))[least]))
    z = cross(x, y)
    middle = add(bore.start, scale(x, bore.length / 2.0))
    sides = [(x, bore.length / 2.0), (y, bore.diameter / 2.0), (z, bore.diameter / 2.0)]
    return [Plane.through(add(middle, scale(n, sign * half)), scale(n, -sign)) for n, half in sides for sign in (1.0, -1.0)]
