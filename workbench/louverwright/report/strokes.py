# SPDX-License-Identifier: LGPL-2.1-or-later
"""Drawings taken apart into strokes, fills, discs and letters, so that every writer draws the same.

All that needs a decision (where a dimension's text goes, which way an arrow head points, where a hatch
line ends) is decided here; a writer only paints, in order. Coordinates are those of `drawing`: mm, y up.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from typing import NamedTuple

from louverwright.report.drawing import (
    INK,
    PENS,
    TONES,
    Area,
    Arrow,
    Circle,
    Dim,
    Drawing,
    Item,
    Label,
    Line,
    Pen,
    Point,
)

POINT_MM = 25.4 / 72.0
"""One typographic point in millimetres."""

LETTER_WIDTH = 0.64
"""Mean width of a character, in the text's size: DejaVu Sans digits, the widest of the fonts in use."""

CAP_HEIGHT = 0.73
"""Height of a capital or a digit, in the text's size."""

HEAD_LENGTH, HEAD_HALF_WIDTH = 1.9, 0.38
LINE_GAP = 0.8          # between the object and its extension line, and between dimension line and text
OVERSHOOT = 1.0         # of an extension line beyond the dimension line
HATCH_SPACING, HATCH_ANGLE = 1.3, math.radians(45.0)


class Stroke(NamedTuple):
    points: tuple[Point, ...]
    pen: Pen


class Fill(NamedTuple):
    """Loops painted by the even-odd rule, then edged with the pen; paint "" or pen None leaves that out."""

    loops: tuple[tuple[Point, ...], ...]
    paint: str
    pen: Pen | None


class Disc(NamedTuple):
    centre: Point
    radius: float
    paint: str
    pen: Pen


class Letters(NamedTuple):
    """Text from the start, middle or end of its base line, turned counter-clockwise; size in mm."""

    at: Point
    text: str
    size: float
    anchor: str
    rotation: float
    ink: str = INK


Primitive = Stroke | Fill | Disc | Letters


def primitives(drawing: Drawing) -> tuple[Primitive, ...]:
    """What to paint, in order."""
    return tuple(painted(drawing.items))


def painted(items: Iterable[Item]) -> Iterator[Primitive]:
    """What to paint for items, in order."""
    for item in items:
        if isinstance(item, Line):
            yield Stroke(item.points, PENS[item.style])
        else:
            yield from _of_item(item)


def _of_item(item: Area | Circle | Label | Arrow | Dim) -> Iterator[Primitive]:
    if isinstance(item, Area):
        yield from _area(item)
    elif isinstance(item, Circle):
        yield Disc((item.x, item.y), item.radius, TONES[item.fill].paint, PENS[item.style])
    elif isinstance(item, Label):
        yield Letters((item.x, item.y), item.text, item.size * POINT_MM, item.anchor, item.rotation)
    elif isinstance(item, Arrow):
        yield from _arrow(item)
    else:
        yield from _dimension(item)


def _area(area: Area) -> Iterator[Primitive]:
    tone = TONES[area.fill]
    pen = PENS[area.style] if area.style else None
    if not tone.hatched:
        yield Fill(area.loops, tone.paint, pen)
        return
    yield Fill(area.loops, tone.paint, None)
    yield from (Stroke(segment, PENS["hatch"]) for segment in hatch_lines(area.loops))
    yield Fill(area.loops, "", pen)


def hatch_lines(loops: tuple[tuple[Point, ...], ...]) -> tuple[tuple[Point, Point], ...]:
    """Segments at HATCH_ANGLE and HATCH_SPACING that lie in the loops by the even-odd rule."""
    turned = [[_turn(point, -HATCH_ANGLE) for point in loop] for loop in loops]
    heights = [y for loop in turned for _, y in loop]
    first, last = math.ceil(min(heights) / HATCH_SPACING), math.floor(max(heights) / HATCH_SPACING)
    segments = []
    for number in range(first, last + 1):
        level = number * HATCH_SPACING
        crossings = sorted(x for loop in turned for x in _crossings(loop, level))
        for start, end in zip(crossings[::2], crossings[1::2], strict=True):
            segments.append((_turn((start, level), HATCH_ANGLE), _turn((end, level), HATCH_ANGLE)))
    return tuple(segments)


def _crossings(loop: list[Point], level: float) -> Iterator[float]:
    """Where the loop's edges cross a level; the half-open test counts a corner once."""
    for (x1, y1), (x2, y2) in zip(loop, loop[1:] + loop[:1], strict=True):
        if (y1 <= level) != (y2 <= level):
            yield x1 + (level - y1) * (x2 - x1) / (y2 - y1)


def _turn(point: Point, angle: float) -> Point:
    cos, sin = math.cos(angle), math.sin(angle)
    return (point[0] * cos - point[1] * sin, point[0] * sin + point[1] * cos)


def _along(point: Point, way: Point, distance: float) -> Point:
    return (point[0] + way[0] * distance, point[1] + way[1] * distance)


def _unit(start: Point, end: Point) -> tuple[Point, float]:
    length = math.dist(start, end)
    return ((end[0] - start[0]) / length, (end[1] - start[1]) / length), length


def _head(tip: Point, way: Point, ink: str, size: float = 1.0) -> Fill:
    """A filled arrow head with its tip at `tip`, pointing along `way`."""
    tail, left = _along(tip, way, -HEAD_LENGTH * size), (-way[1], way[0])
    half = HEAD_HALF_WIDTH * size
    return Fill(((tip, _along(tail, left, half), _along(tail, left, -half)),), ink, None)


def _arrow(arrow: Arrow) -> Iterator[Primitive]:
    """The line, which ends within the heads; a short arrow has small heads."""
    start, end, pen = (arrow.x1, arrow.y1), (arrow.x2, arrow.y2), PENS[arrow.style]
    way, length = _unit(start, end)
    size = min(1.0, 0.4 * length / HEAD_LENGTH)
    inset = size * HEAD_LENGTH / 2
    yield Stroke((_along(start, way, inset if arrow.both else 0.0), _along(end, way, -inset)), pen)
    yield _head(end, way, pen.ink, size)
    if arrow.both:
        yield _head(start, (-way[0], -way[1]), pen.ink, size)


def text_width(text: str, size: float) -> float:
    """An estimate on the safe side, in the unit of the size."""
    return len(text) * LETTER_WIDTH * size


def _dimension(dim: Dim) -> Iterator[Primitive]:
    pen = PENS["thin"]
    way, length = _unit(dim.p1, dim.p2)
    side = (-way[1], way[0])
    ends = (_along(dim.p1, side, dim.offset), _along(dim.p2, side, dim.offset))
    outward = math.copysign(1.0, dim.offset)
    if abs(dim.offset) > LINE_GAP:
        for point, end in zip((dim.p1, dim.p2), ends, strict=True):
            start = _along(point, side, outward * LINE_GAP)
            yield Stroke((start, _along(end, side, outward * OVERSHOOT)), pen)
    yield from _dimension_line(dim, ends, way, length)


def _dimension_line(dim: Dim, ends: tuple[Point, Point], way: Point, length: float) -> Iterator[Primitive]:
    """The line, its heads and its text: heads turned outside when short, text beyond p2 when too wide."""
    size = dim.size * POINT_MM
    needed = text_width(dim.text, size)
    over, heads_inside = length >= needed + 0.6, length >= 2.4 * HEAD_LENGTH
    before = 0.0 if heads_inside else 2 * HEAD_LENGTH
    beyond = before if over else max(before, HEAD_LENGTH) + needed + LINE_GAP
    backward = (-way[0], -way[1])
    yield Stroke((_along(ends[0], way, -before), _along(ends[1], way, beyond)), PENS["thin"])
    yield _head(ends[0], backward if heads_inside else way, INK)
    yield _head(ends[1], way if heads_inside else backward, INK)
    along = length / 2 if over else length + beyond - needed / 2
    yield _text_over(_along(ends[0], way, along), way, dim.text, size)


def _text_over(middle: Point, way: Point, text: str, size: float) -> Letters:
    """Text centred over a line at `middle`, upright or turned so that it reads from the right."""
    if way[0] < -1e-9 or (abs(way[0]) <= 1e-9 and way[1] < 0):
        way = (-way[0], -way[1])
    place = _along(middle, (-way[1], way[0]), LINE_GAP)
    return Letters(place, text, size, "middle", math.degrees(math.atan2(way[1], way[0])))


Box = tuple[float, float, float, float]
"""Left, bottom, right and top on paper (mm)."""


def extent(items: tuple[Item, ...]) -> Box:
    """The box of all that is painted, text by estimate. ValueError without items."""
    boxes = [bounds(primitive) for primitive in painted(items)]
    if not boxes:
        raise ValueError("A drawing without items has no extent.")
    lefts, lows, rights, highs = zip(*boxes, strict=True)
    return min(lefts), min(lows), max(rights), max(highs)


def fitted(items: tuple[Item, ...], margin: float = 1.5, description: str = "") -> Drawing:
    """A drawing just large enough for its items and a margin around them."""
    left, bottom, right, top = extent(items)
    return Drawing(right - left + 2 * margin, top - bottom + 2 * margin, items, left - margin, bottom - margin, description)


def bounds(primitive: Primitive) -> Box:
    """The box of one primitive, text by estimate."""
    if isinstance(primitive, Letters):
        return _text_bounds(primitive)
    if isinstance(primitive, Disc):
        (x, y), r = primitive.centre, primitive.radius
        return (x - r, y - r, x + r, y + r)
    points = primitive.points if isinstance(primitive, Stroke) else [p for loop in primitive.loops for p in loop]
    xs, ys = [p[0] for p in points], [p[1] for p in points]
    return min(xs), min(ys), max(xs), max(ys)


def _text_bounds(letters: Letters) -> Box:
    (x, y), width = letters.at, text_width(letters.text, letters.size)
    left = {"start": 0.0, "middle": -width / 2, "end": -width}[letters.anchor]
    right, low, high = left + width, -0.25 * letters.size, CAP_HEIGHT * letters.size
    if not letters.rotation:
        return (x + left, y + low, x + right, y + high)
    turn = math.radians(letters.rotation)
    corners = [_turn((u, v), turn) for u in (left, right) for v in (low, high)]
    us, vs = [p[0] for p in corners], [p[1] for p in corners]
    return (x + min(us), y + min(vs), x + max(us), y + max(vs))
