# SPDX-License-Identifier: LGPL-2.1-or-later
"""Drawings placed on a sheet: side by side, one below the other, in the middle of what is free.  All mm on paper."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from .drawing import Drawing

Box = tuple[float, float, float, float]
Named = tuple[str, Drawing]


@dataclass(frozen=True)
class Placed:
    """A drawing under a name with its lower left corner on the sheet."""

    name: str
    drawing: Drawing
    x: float
    y: float


def room_of(box: Box) -> tuple[float, float]:
    """Width and height of a box."""
    return box[2] - box[0], box[3] - box[1]


def centred(name: str, drawing: Drawing, box: Box) -> Placed:
    """A drawing in the middle of a box."""
    return Placed(name, drawing, (box[0] + box[2] - drawing.width) / 2.0, (box[1] + box[3] - drawing.height) / 2.0)


def in_row(each: Sequence[Named], box: Box, gap: float, level: bool = False) -> tuple[Placed, ...] | None:
    """Drawings side by side, the room that is left shared out; None where they find no room.

    Their lower sides are level, or with ``level`` their own zero heights.  All come out equally high, with their middles in
    line: TechDraw would draw them to each other's middles where those are nearly in line.
    """
    width, height = room_of(box)
    lows = [drawing.y0 if level else 0.0 for _, drawing in each]
    tall = max(low + drawing.height for low, (_, drawing) in zip(lows, each, strict=True)) - min(lows)
    spare = width - sum(drawing.width for _, drawing in each)
    if spare < gap * (len(each) - 1) or tall > height:
        return None
    x, y, between = box[0], box[1] + (height - tall) / 2.0, spare / (len(each) + 1)
    placed = []
    for low, (name, drawing) in zip(lows, each, strict=True):
        x += between
        placed.append(Placed(name, replace(drawing, y0=drawing.y0 - low + min(lows), height=tall), x, y))
        x += drawing.width
    return tuple(placed)


def in_column(each: Sequence[Named], box: Box, gap: float) -> tuple[Placed, ...] | None:
    """Drawings one below the other, their own zeros in line, equally wide; None where they find no room."""
    width, height = room_of(box)
    left = min(drawing.x0 for _, drawing in each)
    spare = height - sum(drawing.height for _, drawing in each)
    wide = max(drawing.x0 + drawing.width for _, drawing in each) - left
    if spare < gap * (len(each) - 1) or wide > width:
        return None
    y, between = box[3], spare / (len(each) + 1)
    placed = []
    for name, drawing in each:
        y -= between + drawing.height
        placed.append(Placed(name, replace(drawing, x0=left, width=wide), box[0], y))
    return tuple(placed)
