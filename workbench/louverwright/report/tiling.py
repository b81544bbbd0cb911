# SPDX-License-Identifier: LGPL-2.1-or-later
"""How a full-size drawing is divided among sheets of paper that lap over each other, and what of it lies on each.

The drawing is in the board frame (mm); a tile's window is the part of the board that its sheet shows.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from ..core.units_write import INCH
from .drawing import Point
from .sheets import lying
from .template import Segment

#: From the paper's edges to the window (mm): what printers leave white, and room for the rulers and the head.
LEFT, RIGHT, BELOW, ABOVE = 17.0, 8.0, 17.0, 23.0
#: How far two sheets lie over each other, and the white before the drawing begins (mm).
LAP, LEAD = 20.0, 10.0


@dataclass(frozen=True)
class Tile:
    """One sheet of a template by its row and column from the lower left, its window's corners (mm, board frame)."""

    row: int
    column: int
    left: float
    low: float
    right: float
    high: float

    @property
    def name(self) -> str:
        """A1, A2 … along the reference edge, B1 … above."""
        return f"{chr(ord('A') + self.row)}{self.column + 1}"

    def holds(self, p: Point) -> bool:
        """Whether a point of the board is on this sheet."""
        return self.left <= p[0] <= self.right and self.low <= p[1] <= self.high

    def placed(self, p: Point) -> Point:
        """A point of the board on the paper (mm from its lower left corner)."""
        return (LEFT + p[0] - self.left, BELOW + p[1] - self.low)


@dataclass(frozen=True)
class Tiling:
    """A drawing from ``start`` to ``stop`` (mm, board frame) on lying sheets; steps from one to the next in whole
    centimetres or inches."""

    paper: str
    inches: bool
    start: Point
    stop: Point

    @property
    def unit(self) -> float:
        """What the rulers count in (mm)."""
        return float(INCH) if self.inches else 10.0

    @property
    def step(self) -> Point:
        """How far one sheet's window lies from the next one's, along and across (mm)."""
        width, height = lying(self.paper)
        return (math.floor((width - LEFT - RIGHT - LAP) / self.unit) * self.unit,
                math.floor((height - BELOW - ABOVE - LAP) / self.unit) * self.unit)

    @property
    def window(self) -> Point:
        """Width and height of what a sheet shows (mm)."""
        return (self.step[0] + LAP, self.step[1] + LAP)

    @property
    def columns(self) -> int:
        return self._count(0)

    @property
    def rows(self) -> int:
        return self._count(1)

    def _count(self, axis: int) -> int:
        whole = self.stop[axis] - self.start[axis] + 2.0 * LEAD
        return max(1, math.ceil((whole - LAP) / self.step[axis] - 1e-9))

    def tiles(self) -> Iterator[Tile]:
        """Every sheet, from the lower left along each row."""
        for row in range(self.rows):
            for column in range(self.columns):
                left, low = (self.start[i] - LEAD + n * self.step[i] for i, n in ((0, column), (1, row)))
                yield Tile(row, column, left, low, left + self.window[0], low + self.window[1])

    def with_lines(self, segments: Iterable[Segment]) -> list[Tile]:
        """The sheets on which some of the drawing lies."""
        lines = list(segments)
        return [tile for tile in self.tiles() if any(clipped(line, tile) for line in lines)]

    def with_corners(self, segments: Iterable[Segment]) -> list[Tile]:
        """The sheets on which more than straight lines lie."""
        points = {p for segment in segments for p in segment}
        return [tile for tile in self.tiles() if any(tile.holds(p) for p in points)]


def clipped(segment: Segment, tile: Tile) -> Segment | None:
    """What of a segment lies in the tile's window; None if nothing does."""
    (x, y), (u, v) = segment
    first, last = 0.0, 1.0
    for at, way, low, high in ((x, u - x, tile.left, tile.right), (y, v - y, tile.low, tile.high)):
        if abs(way) < 1e-12:
            if not low <= at <= high:
                return None
            continue
        enter, leave = sorted(((low - at) / way, (high - at) / way))
        first, last = max(first, enter), min(last, leave)
    if last - first < 1e-9:
        return None
    return ((x + first * (u - x), y + first * (v - y)), (x + last * (u - x), y + last * (v - y)))
