# SPDX-License-Identifier: LGPL-2.1-or-later
"""A picture at full size, and putting it on paper: lines to scale, dimensions in rows beside it, marks in balloons."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from itertools import combinations

from .drawing import Area, Circle, Dim, Drawing, Item, Label, Line, Point
from .strokes import HEAD_LENGTH, POINT_MM, fitted, text_width
from .views import Segment

#: Points of the dimensions' figures, of the marks and of the caption.
FIGURE, MARK, CAPTION = 6.5, 6.5, 8.0
#: From the picture to the first row of dimensions, and from row to row (mm on paper).
AWAY, ROW = 6.0, 5.5
#: From the picture to the middles of the balloons, and between two balloons (mm on paper).
BALLOON_AWAY, BALLOON_GAP = 9.0, 1.2
#: Radius of the dot that a leader ends in (mm on paper).
DOT = 0.55

LEFT, RIGHT, BELOW, ABOVE = "left", "right", "below", "above"


@dataclass(frozen=True)
class Span:
    """A dimension beside a picture: from where to where (mm, along u below and above, along v left and right)."""

    where: str
    start: float
    stop: float


@dataclass(frozen=True)
class Picture:
    """What is shown: a name of its own, a caption, lines with their pens, loops of cut wood for each piece, dimensions
    (the inner rows first), and marks with the points that they point at.  All mm at full size."""

    name: str
    caption: str
    lines: tuple[tuple[str, Segment], ...]
    wood: tuple[tuple[tuple[Point, ...], ...], ...] = ()
    spans: tuple[Span, ...] = ()
    marks: tuple[tuple[str, Point], ...] = ()

    @property
    def box(self) -> tuple[float, float, float, float]:
        """Left, bottom, right and top of its lines."""
        xs, ys = zip(*(p for _, segment in self.lines for p in segment), strict=True)
        return min(xs), min(ys), max(xs), max(ys)


Write = Callable[[float], str]


def drawn(picture: Picture, scale: float, write: Write) -> Drawing:
    """The picture on paper at a scale (0.1 is 1:10), its dimensions written by ``write``."""
    def at(p: Point) -> Point:
        return (p[0] * scale, p[1] * scale)

    left, low, right, high = (scale * each for each in picture.box)
    items: list[Item] = [Area(tuple(tuple(map(at, loop)) for loop in loops), "waste", "") for loops in picture.wood]
    items += [Line(tuple(map(at, segment)), style) for style, segment in picture.lines]
    items += dimensions(picture.spans, scale, (left, low, right, high), write)
    items += balloons([(mark, at(p)) for mark, p in picture.marks], (left, low, right, high))
    below = fitted(tuple(items), 0.0).y0
    items.append(Label((left + right) / 2.0, below - 5.0, picture.caption, CAPTION, "middle"))
    return fitted(tuple(items), 0.5, f"{picture.caption}.")


def dimensions(spans: Iterable[Span], scale: float, box: tuple[float, float, float, float], write: Write) -> list[Item]:
    """Dimension lines in rows outward from the picture's box, each in the first row where line and figure have room."""
    rows: dict[str, list[list[tuple[float, float]]]] = {}
    return [_dim(span, scale, box, _row(span, scale, rows.setdefault(span.where, []), write), write) for span in spans]


def _row(span: Span, scale: float, rows: list[list[tuple[float, float]]], write: Write) -> int:
    """The number of the row that a dimension goes in, which it then takes up."""
    low, high = _taken(span, scale, write)
    for number, row in enumerate(rows):
        if all(high <= other[0] + 0.01 or low >= other[1] - 0.01 for other in row):
            row.append((low, high))
            return number
    rows.append([(low, high)])
    return len(rows) - 1


def _taken(span: Span, scale: float, write: Write) -> tuple[float, float]:
    """What a dimension takes up of its row: the figure stands beyond the end where it has no room between (``strokes``)."""
    low, high = span.start * scale, span.stop * scale
    needed = text_width(write(span.stop - span.start), FIGURE * POINT_MM)
    if high - low >= needed + 0.6 and high - low >= 2.4 * HEAD_LENGTH:
        return low, high
    return low - 2.0 * HEAD_LENGTH, high + 2.0 * HEAD_LENGTH + needed + 1.0


def _dim(span: Span, scale: float, box: tuple[float, float, float, float], row: int, write: Write) -> Dim:
    left, low, right, high = box
    start, stop, away = span.start * scale, span.stop * scale, AWAY + ROW * row
    text = write(span.stop - span.start)
    if span.where in (BELOW, ABOVE):
        y, offset = (low, -away) if span.where == BELOW else (high, away)
        return Dim((start, y), (stop, y), offset, text, FIGURE)
    x, offset = (right, -away) if span.where == RIGHT else (left, away)
    return Dim((x, start), (x, stop), offset, text, FIGURE)


# ---- balloons


def balloons(marks: Sequence[tuple[str, Point]], box: tuple[float, float, float, float]) -> list[Item]:
    """Marks in circles in two columns beside the picture, with leaders that end in dots and do not cross each other."""
    if not marks:
        return []
    radius = max(text_width(mark, MARK * POINT_MM) for mark, _ in marks) / 2.0 + 0.7
    ordered = sorted(marks, key=lambda each: each[1][0])
    half = len(ordered) // 2
    items: list[Item] = []
    for column, x, out in ((ordered[:half], box[0] - BALLOON_AWAY, -1.0), (ordered[half:], box[2] + BALLOON_AWAY, 1.0)):
        for (mark, point), y in _uncrossed(column, x, radius, box):
            items += _balloon(mark, point, (x + out * radius, y), radius)
    return items


def _uncrossed(column: Sequence[tuple[str, Point]], x: float, radius: float,
               box: tuple[float, float, float, float]) -> list[tuple[tuple[str, Point], float]]:
    """The marks of a column with their heights: in the points' order, then swapped until no two leaders cross."""
    pitch = 2.0 * radius + BALLOON_GAP
    room = max(box[3] - box[1], pitch * (len(column) - 1))
    step = room / max(1, len(column) - 1)
    middle = (box[1] + box[3]) / 2.0
    heights = [middle + (i - (len(column) - 1) / 2.0) * step for i in range(len(column))]
    order = sorted(column, key=lambda each: each[1][1])
    for _ in range(len(order) ** 2):
        pair = next(((i, j) for i, j in combinations(range(len(order)), 2)
                     if _cross((x, heights[i]), order[i][1], (x, heights[j]), order[j][1])), None)
        if pair is None:
            break
        order[pair[0]], order[pair[1]] = order[pair[1]], order[pair[0]]
    return list(zip(order, heights, strict=True))


def _cross(a: Point, b: Point, c: Point, d: Point) -> bool:
    """Whether two stretches cross."""
    def turn(p: Point, q: Point, r: Point) -> float:
        return (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])

    return turn(a, b, c) * turn(a, b, d) < 0.0 and turn(c, d, a) * turn(c, d, b) < 0.0


def _balloon(mark: str, point: Point, middle: Point, radius: float) -> list[Item]:
    long = math.dist(point, middle)
    edge = (middle[0] + (point[0] - middle[0]) * radius / long, middle[1] + (point[1] - middle[1]) * radius / long)
    return [Line((edge, point), "thin"), Circle(*point, DOT, "ink", "thin"), Circle(*middle, radius, "face", "thin"),
            Label(middle[0], middle[1] - 0.8, mark, MARK, "middle")]
