# SPDX-License-Identifier: LGPL-2.1-or-later
"""Drawings placed on a sheet: side by side, one below the other, in the middle of what is free.  All mm on paper."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

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

    Their lower sides are level, or with ``level`` their own zero heights.
    """
    width, height = room_of(box)
    lows = [drawing.y0 if level else 0.0 for _, drawing in each]
    tall = max(low + drawing.height for low, (_, drawing) in zip(lows, each, strict=True)) - min(lows)
    spare = width - sum(drawing.width for _, drawing in each)
    if spare < gap * (len(each) - 1) or tall > height:
        return None
    x, foot, between = box[0], box[1] + (height - tall) / 2.0 - min(lows), spare / (len(each) + 1)
    placed = []
    for low, (name, drawing) in zip(lows, each, strict=True):
        x += between
        placed.append(Placed(name, drawing, x, foot + low))
        x += drawing.width
    return tuple(placed)


def in_column(each: Sequence[Named], box: Box, gap: float) -> tuple[Placed, ...] | None:
    """Drawings one below the other, their own middles (x = 0) in line; None where they find no room."""
    width, height = room_of(box)
    left = min(drawing.x0 for _, drawing in each)
    spare = height - sum(drawing.height for _, drawing in each)
    if spare < gap * (len(each) - 1) or max(drawing.x0 + drawing.width for _, drawing in each) - left > width:
        return None
    y, between = box[3], spare / (len(each) + 1)
    placed = []
    for name, drawing in each:
        y -= between + drawing.height
        placed.append(Placed(name, drawing, box[0] + drawing.x0 - left, y))
    return tuple(placed)
