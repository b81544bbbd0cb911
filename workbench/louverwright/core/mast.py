# SPDX-License-Identifier: LGPL-2.1-or-later
"""The mast through a vent's roof: the bores that hold it, from above, and the length that stands in them (mm)."""

from __future__ import annotations

from dataclasses import dataclass

from .assembly import Assembly
from .geometry import add, scale

#: Bores whose axis leans less than this from plumb (cosine) hold the mast; others drain.
PLUMB = 0.999


@dataclass(frozen=True)
class MastBore:
    """A bore on the mast's way: the part's mark and name, its diameter, and the heights of its ends over the ridge (mm)."""

    mark: str
    name: str
    diameter: float
    low: float
    high: float


def mast_bores(assembly: Assembly) -> tuple[MastBore, ...]:
    """Every plumb bore on the vent's axis as wide as the mast's, the highest first; () for a vent without a mast."""
    found = []
    for part in assembly.parts:
        for piece in part.pieces:
            for bore in part.board.bores:
                way = piece.placement.direction(bore.direction)
                start = piece.placement.point(bore.start)
                stop = add(start, scale(way, bore.length))
                if abs(way[2]) > PLUMB:
                    heights = sorted((start[2], stop[2]))
                    found.append(MastBore(part.mark, str(part.name), bore.diameter, heights[0], heights[1]))
    widest = max((each.diameter for each in found), default=0.0)
    wide = [each for each in found if each.diameter > 0.9 * widest]
    return tuple(sorted(wide, key=lambda each: -each.high))
