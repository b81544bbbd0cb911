# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where words go in a drawing so that they lie on no line and on no other word.  All in millimetres on paper, y up."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from itertools import pairwise

from .drawing import Item, Label, Point
from .strokes import Box, Disc, Letters, Stroke, bounds, extent, painted

#: How far a letter stands from its point, the nearest first (mm), and in how many directions it is tried.
REACHES, WAYS = (2.0, 2.5, 3.0, 3.6, 4.3, 5.2, 6.2, 7.5), 24
#: A text's box may be entered this far, since the estimate of its size is on the safe side (mm).
SLACK = 0.1


class Taken:
    """What the items of a drawing cover: boxes of texts and circles, and lines."""

    def __init__(self, items: Iterable[Item]) -> None:
        self.boxes: list[Box] = []
        self.lines: list[tuple[Point, Point]] = []
        self.add(items)

    def add(self, items: Iterable[Item]) -> None:
        """More items."""
        for part in painted(items):
            if isinstance(part, Stroke):
                self.lines += pairwise(part.points)
            elif isinstance(part, Letters):
                self.boxes.append(_shrunk(bounds(part)))
            elif isinstance(part, Disc):
                self.boxes.append(bounds(part))

    def clashes(self, box: Box) -> int:
        """How many texts, circles and lines a box lies on."""
        return (sum(1 for other in self.boxes if overlap(box, other))
                + sum(1 for line in self.lines if crosses(line, box)))


def _shrunk(box: Box) -> Box:
    return (box[0] + SLACK, box[1] + SLACK, box[2] - SLACK, box[3] - SLACK)


def text_box(label: Label) -> Box:
    """The box of a text, by its estimate: left, bottom, right, top."""
    return _shrunk(extent((label,)))


def overlap(a: Box, b: Box) -> bool:
    """Whether two boxes share an area."""
    return min(a[2], b[2]) > max(a[0], b[0]) and min(a[3], b[3]) > max(a[1], b[1])


def crosses(line: tuple[Point, Point], box: Box) -> bool:
    """Whether some of a line lies inside a box."""
    (x, y), (u, v) = line
    if (x <= box[0] and u <= box[0]) or (x >= box[2] and u >= box[2]) or (y <= box[1] and v <= box[1]) or (
            y >= box[3] and v >= box[3]):
        return False
    first, last = 0.0, 1.0
    for axis in (0, 1):
        start, way = line[0][axis], line[1][axis] - line[0][axis]
        low, high = box[axis], box[axis + 2]
        if abs(way) < 1e-9:
            if not low < start < high:
                return False
            continue
        enter, leave = sorted(((low - start) / way, (high - start) / way))
        first, last = max(first, enter), min(last, leave)
    return last - first > 1e-9


def lettered(points: Sequence[tuple[str, Point]], size: float, taken: Taken) -> list[Label]:
    """A label for each lettered point: outward of all of them where that is free, else the nearest free place around it."""
    middle = [sum(p[i] for _, p in points) / len(points) for i in (0, 1)]
    labels: list[Label] = []
    for letter, p in points:
        out = math.atan2(p[1] - middle[1], p[0] - middle[0])
        others = [q for _, q in points if q != p]
        label = _best(_places(letter, p, out, size), p, others, taken)
        labels.append(label)
        taken.add((label,))
    return labels


def _best(places: Iterable[tuple[float, Label]], own: Point, others: Sequence[Point], taken: Taken) -> Label:
    """The first of the places with the least against it; once places have more against them by themselves none is tried."""
    best, least = None, math.inf
    for against, label in places:
        if against >= least:
            break
        if (cost := _cost(label, against, own, others, taken)) < least:
            best, least = label, cost
    assert best is not None
    return best


def _ways() -> Iterator[tuple[float, float, float]]:
    for rank, reach in enumerate(REACHES):
        for step in range(WAYS):
            turn = (step + 1) // 2 * (-1) ** step * 2.0 * math.pi / WAYS
            yield 0.6 * rank + abs(turn) / 10.0, reach, turn


#: What is against a letter's place (distance first, then the turn away from outward), its reach and its turn; least first.
_WAYS = sorted(_ways(), key=lambda way: way[0])


def _places(letter: str, p: Point, out: float, size: float) -> Iterator[tuple[float, Label]]:
    """Labels around a point with what is against each beside clashes, least first."""
    for against, reach, turn in _WAYS:
        x, y = p[0] + reach * math.cos(out + turn), p[1] + reach * math.sin(out + turn)
        yield against, Label(x, y - 0.75, letter, size, "middle")


def _cost(label: Label, against: float, own: Point, others: Sequence[Point], taken: Taken) -> float:
    """Ten for each clash, eight where another point lies nearer than the letter's own, and what is against the place."""
    centre = (label.x, label.y + 0.75)
    nearer = any(math.dist(centre, q) < math.dist(centre, own) + 0.3 for q in others)
    return 10.0 * taken.clashes(text_box(label)) + 8.0 * nearer + against
