# SPDX-License-Identifier: LGPL-2.1-or-later
"""A drawing on paper: lines, areas, labels and dimensions, and the pens they are drawn with.

Coordinates are millimetres on the paper, x to the right and **y upward**, so that a board frame needs only
a scale. Angles are degrees, counter-clockwise. Text sizes are points. A drawing covers `width` by `height`
from its lower left corner (`x0`, `y0`); nothing is clipped, so use `strokes.fitted` to size it to its items.

The pens and fills are told apart without colour: by width, dashes, hatching and lightness.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

Point = tuple[float, float]

TEXT_ANCHORS = ("start", "middle", "end")


@dataclass(frozen=True)
class Pen:
    """Line width and dash lengths (stroke, gap, …) in millimetres; the ink as #rrggbb."""

    width: float
    ink: str
    dashes: tuple[float, ...] = ()


@dataclass(frozen=True)
class Tone:
    """The paint of an area as #rrggbb ("" for none), and whether it is hatched."""

    paint: str = ""
    hatched: bool = False


INK = "#1b1b1b"
SOFT_INK = "#555555"

PENS: Mapping[str, Pen] = MappingProxyType({
    "outline": Pen(0.45, INK),
    "edge": Pen(0.25, INK),
    "hidden": Pen(0.25, INK, (1.8, 1.1)),
    "thin": Pen(0.18, INK),
    "centre": Pen(0.18, INK, (6.0, 1.2, 1.0, 1.2)),
    "grain": Pen(0.30, SOFT_INK),
    "hatch": Pen(0.13, SOFT_INK),
})

TONES: Mapping[str, Tone] = MappingProxyType({
    "none": Tone(),
    "wood": Tone("#f2ece1"),
    "face": Tone("#ffffff"),
    "shade": Tone("#d3d1cc"),
    "ink": Tone(INK),
    "waste": Tone("#ffffff", hatched=True),
})


def _check(kind: str, name: str, known: Mapping[str, object]) -> None:
    if name not in known:
        raise ValueError(f"{kind} {name!r} is not one of {', '.join(known)}.")


@dataclass(frozen=True)
class Line:
    """An open line through two points or more."""

    points: tuple[Point, ...]
    style: str = "outline"

    def __post_init__(self) -> None:
        _check("Line style", self.style, PENS)
        if len(self.points) < 2:
            raise ValueError(f"A line needs two points, not {len(self.points)}.")


@dataclass(frozen=True)
class Area:
    """A polygon: loops closed by themselves, a loop within a loop being a hole. Style "" has no edge."""

    loops: tuple[tuple[Point, ...], ...]
    fill: str = "none"
    style: str = "outline"

    def __post_init__(self) -> None:
        _check("Fill", self.fill, TONES)
        if self.style:
            _check("Line style", self.style, PENS)
        if not self.loops or any(len(loop) < 3 for loop in self.loops):
            raise ValueError("An area needs loops of three points or more.")


@dataclass(frozen=True)
class Circle:
    x: float
    y: float
    radius: float
    fill: str = "none"
    style: str = "outline"

    def __post_init__(self) -> None:
        _check("Fill", self.fill, TONES)
        _check("Line style", self.style, PENS)


@dataclass(frozen=True)
class Label:
    """One line of text; (x, y) is the start, middle or end of its base line, as `anchor` says."""

    x: float
    y: float
    text: str
    size: float = 7.5
    anchor: str = "start"
    rotation: float = 0.0

    def __post_init__(self) -> None:
        if self.anchor not in TEXT_ANCHORS:
            raise ValueError(f"Label anchor {self.anchor!r} is not one of {', '.join(TEXT_ANCHORS)}.")


@dataclass(frozen=True)
class Arrow:
    """A line with a head at (x2, y2), and with `both` a head at (x1, y1) as well."""

    x1: float
    y1: float
    x2: float
    y2: float
    both: bool = False
    style: str = "thin"

    def __post_init__(self) -> None:
        _check("Line style", self.style, PENS)
        if (self.x1, self.y1) == (self.x2, self.y2):
            raise ValueError("An arrow needs two different ends.")


@dataclass(frozen=True)
class Dim:
    """A dimension of the distance from p1 to p2, along the line between them.

    The dimension line lies `offset` millimetres to the left of the way from p1 to p2 (negative: to the
    right). The text stands over the line where it fits; otherwise beyond p2 (swap the points and the sign of
    the offset to have it on the other side). It reads from below or from the right.
    """

    p1: Point
    p2: Point
    offset: float
    text: str
    size: float = 7.5

    def __post_init__(self) -> None:
        if self.p1 == self.p2:
            raise ValueError(f"The dimension {self.text!r} needs two different points.")


Item = Line | Area | Circle | Label | Arrow | Dim


def moved(item: Item, x: float, y: float) -> Item:
    """An item moved on the paper (mm)."""
    def at(point: Point) -> Point:
        return (point[0] + x, point[1] + y)

    if isinstance(item, Line):
        return replace(item, points=tuple(map(at, item.points)))
    if isinstance(item, Area):
        return replace(item, loops=tuple(tuple(map(at, loop)) for loop in item.loops))
    if isinstance(item, Arrow):
        return replace(item, x1=item.x1 + x, y1=item.y1 + y, x2=item.x2 + x, y2=item.y2 + y)
    if isinstance(item, Dim):
        return replace(item, p1=at(item.p1), p2=at(item.p2))
    return replace(item, x=item.x + x, y=item.y + y)


@dataclass(frozen=True)
class Drawing:
    """Items in drawing order. `description` tells a reader who cannot see it what the drawing shows."""

    width: float
    height: float
    items: tuple[Item, ...]
    x0: float = 0.0
    y0: float = 0.0
    description: str = ""

    def __post_init__(self) -> None:
        if not (self.width > 0 and self.height > 0):
            raise ValueError(f"A drawing of {self.width} × {self.height} mm has no area.")

    def placed(self, x: float, y: float) -> tuple[Item, ...]:
        """Its items where its lower left corner is at (x, y) of another drawing (mm)."""
        return tuple(moved(item, x - self.x0, y - self.y0) for item in self.items)
