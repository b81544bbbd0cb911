# SPDX-License-Identifier: LGPL-2.1-or-later
"""Drawings of the bench sheet: the story stick, and the bevel gauge on the boards that are struck from it."""

from __future__ import annotations

import math
from collections.abc import Iterator

from ..core.assembly import Part
from ..core.housing import Housing, housings
from ..core.solid import MARKED_FACE, REFERENCE_EDGE
from .bench_rows import StoryStick
from .drawing import Area, Drawing, Item, Label, Line, Point
from .job import Job
from .strokes import fitted
from .template import template

#: How long a board is drawn, and between two boards (mm on paper).
LONG, BETWEEN = 140.0, 13.0
#: The gauge's stock beside the edge, and its blade beyond the board (mm on paper).
STOCK_LONG, STOCK_DEEP, BEYOND = 20.0, 4.0, 4.0
SMALL = 6.5
#: Ticks stand at least this far apart for two figures side by side (mm on paper).
CLOSE = 3.0


def stick_drawing(stick: StoryStick) -> Drawing:
    """The stick with a tick for each place and, across it, what stands there; the lower walls are numbered."""
    scale = LONG / stick.length
    items: list[Item] = [Area((((0.0, 0.0), (LONG, 0.0), (LONG, 5.0), (0.0, 5.0)),), "wood", "outline")]
    items += (Line(((x * scale, 0.0), (x * scale, 5.0)), "thin") for x in stick.places)
    last = -CLOSE
    for (what, from_start, _), x in zip(stick.rows, stick.places, strict=True):
        at = max(x * scale, last + CLOSE)
        last = at
        items.append(Label(at + 0.9, 6.5, from_start, SMALL, rotation=90.0))
        items += [Label(x * scale + 0.8, 1.6, what.split(",")[0].split()[-1], SMALL)] if "lower wall" in what else []
    return fitted(tuple(items), description=f"Story stick for {stick.marks}.")


def gauge_drawing(stick: StoryStick, job: Job) -> Drawing:
    """One board of each hand with its dados and the gauge at the first of them, all from one end."""
    items: list[Item] = []
    top = 0.0
    for part in stick.parts:
        scale = LONG / part.board.length
        drawn = [*_board(part, job, scale, top)]
        for housing in housings(part)[:1]:
            drawn += _gauge(part, housing, scale, top, job)
        items += drawn
        top -= part.board.width * scale + BETWEEN + 2.0 * STOCK_DEEP
    return fitted(tuple(items), description=f"The bevel gauge on {stick.marks}.")


def _board(part: Part, job: Job, scale: float, top: float) -> Iterator[Item]:
    low = top - part.board.width * scale
    shown = template(part, job)
    for style, segments in (("hidden", shown.far), ("outline", shown.marked_segments)):
        yield from (Line(tuple((x * scale, low + y * scale) for x, y in segment), style) for segment in segments)
    yield Label(LONG + 3.0, low + part.board.width * scale / 2.0, part.mark, 9.0)
    yield Label(LONG + 3.0, low + part.board.width * scale / 2.0 - 4.0, part.called(MARKED_FACE), SMALL)


def _gauge(part: Part, housing: Housing, scale: float, top: float, job: Job) -> Iterator[Item]:
    """The gauge's stock against the edge and its blade along the first dado's lower wall, both a little beyond."""
    wide = part.board.width * scale
    out = -1.0 if housing.edge == REFERENCE_EDGE else 1.0
    edge = top - wide if out < 0.0 else top
    x = housing.places[0][0] * scale
    slant = math.tan(math.radians(housing.climb))

    def on_blade(inward: float) -> Point:
        return (x + inward * slant, edge - out * inward)

    yield Line((on_blade(-STOCK_DEEP), on_blade(wide + BEYOND)), "centre")
    low, high = sorted((edge, edge + out * STOCK_DEEP))
    left, right = x - STOCK_LONG / 2.0, x + STOCK_LONG / 2.0
    yield Area((((left, low), (right, low), (right, high), (left, high)),), "shade", "thin")
    lean = abs(housing.climb)
    text = f"{part.called(housing.edge)}: gauge at {job.writer.angle(90.0 - lean)}"
    yield Label(right + 2.0, (low + high) / 2.0 - 0.8, text, SMALL)
