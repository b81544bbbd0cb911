# SPDX-License-Identifier: LGPL-2.1-or-later
"""The smallest convex outline round points in a plane."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence

Point = tuple[float, float]

#: Points nearer than this to the line of their neighbours are no corners (mm).
ON_LINE = 1e-3


def hull(points: Iterable[Point]) -> tuple[Point, ...]:
    """The corners, anticlockwise (mm, rounded to a nanometre); fewer than three for points without any width.

    Monotone chain (Andrew, 1979; from memory).  Points are rounded before they are put in order: of those that lie above
    one another but for the last decimal none may come before its turn.
    """
    ordered = sorted({(round(x, 6), round(y, 6)) for x, y in points})
    return (*_chain(ordered), *_chain(ordered[::-1]))


def _chain(ordered: Sequence[Point]) -> list[Point]:
    """The corners on one side, the last left out."""
    out: list[Point] = []
    for p in ordered:
        while len(out) > 1 and _beside(out[-2], out[-1], p) <= ON_LINE:
            out.pop()
        out.append(p)
    return out[:-1]


def _beside(a: Point, b: Point, p: Point) -> float:
    """How far the line from ``a`` to ``p`` passes to the left of ``b`` (mm)."""
    twice_the_area = (b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0])
    return twice_the_area / math.dist(a, p)
