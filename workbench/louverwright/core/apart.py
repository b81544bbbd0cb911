# SPDX-License-Identifier: LGPL-2.1-or-later
"""A vent taken apart for a picture: how far each piece is moved.  Nothing of the vent itself changes.

All pieces apart: the vent's pieces keep their size and their middles are spread from the foot of its axis, all by one
factor, so that pieces that touch come apart whatever way they lie to each other.  Stages apart: each stage is lifted clear
of all below it.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass

from .geometry import Vec
from .kinds import STAGES
from .outline import Outline

#: With all pieces fully apart, how much further from the foot of the axis each piece's middle is than in its place.
SPREAD = 0.8
#: Between two stages that are fully apart, as a share of the vent's height.
GAP = 0.35
#: Kinds that stand on the axis or cross it: they belong to no side that could be taken away to look in.
INNER = ("roof.kingpost", "roof.ridge", "roof.bearer", "roof.step")


@dataclass(frozen=True)
class _Box:
    """What a piece reaches (mm, assembly frame)."""

    low: Vec
    high: Vec

    @property
    def middle(self) -> Vec:
        a, b = self.low, self.high
        return ((a[0] + b[0]) / 2.0, (a[1] + b[1]) / 2.0, (a[2] + b[2]) / 2.0)


def shifts(pieces: Sequence[Outline], stages_apart: float, pieces_apart: float) -> dict[str, Vec]:
    """How far each piece is moved (mm, assembly frame), by its id.

    Both shares run from 0, in place, to 1, fully apart.
    """
    boxes = {piece.id: _box(piece) for piece in pieces}
    if not boxes:
        return {}
    foot = min(box.low[2] for box in boxes.values())
    height = max(box.high[2] for box in boxes.values()) - foot
    spread = {name: _spread(box, foot, SPREAD * pieces_apart) for name, box in boxes.items()}
    lifts = _lifts(pieces, boxes, spread, GAP * height)
    return {piece.id: (x, y, z + stages_apart * lifts[piece.stage])
            for piece in pieces for x, y, z in (spread[piece.id],)}


def _box(piece: Outline) -> _Box:
    x, y, z = zip(*piece.mesh.points, strict=True)
    return _Box((min(x), min(y), min(z)), (max(x), max(y), max(z)))


def _spread(box: _Box, foot: float, share: float) -> Vec:
    x, y, z = box.middle
    return (share * x, share * y, share * (z - foot))


def _lifts(pieces: Iterable[Outline], boxes: dict[str, _Box], spread: dict[str, Vec], gap: float) -> dict[str, float]:
    """How far each stage is lifted to stand ``gap`` clear of the one below it (mm), the pieces being spread already."""
    reach: dict[str, tuple[float, float]] = {}
    for piece in pieces:
        low, high = (end[2] + spread[piece.id][2] for end in (boxes[piece.id].low, boxes[piece.id].high))
        lowest, highest = reach.get(piece.stage, (low, high))
        reach[piece.stage] = (min(lowest, low), max(highest, high))
    lifts: dict[str, float] = {}
    top: float | None = None
    for stage in (each for each in STAGES if each in reach):
        low, high = reach[stage]
        lifts[stage] = 0.0 if top is None else max(0.0, top + gap - low)
        top = high + lifts[stage]
    return lifts


def without_sides(pieces: Iterable[Outline], sides: Collection[int]) -> tuple[Outline, ...]:
    """The pieces that are left when those of some sides are taken away to look in."""
    return tuple(piece for piece in pieces if piece.side not in sides or piece.kind in INNER)
