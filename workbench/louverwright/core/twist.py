# SPDX-License-Identifier: LGPL-2.1-or-later
"""A barn's roof that is twisted, or whose ridge sags: drops read at four corners.

The corners are those of the rectangle round the vent's plan, over the cladding, along and across the ridge; a drop
is plumb, from the level of the ridge's highest point under the vent down to the covering.  The *nominal* slopes fall
from that level to the smaller drop of each slope, so that they touch the roof where it is highest and lie above it
elsewhere.  Between the corners the roof is taken to lie below them as straight lines from corner to corner give it.
All in mm and degrees.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from .geometry import Vec
from .plan import Plan
from .spec import Spec

#: A roof flatter than this (degrees) is level: less than a hair over any vent.
LEVEL_PITCH = 0.01
#: The parameters that hold the drops, by (slope, end): +1 is the left slope, and the front, which is the vent's +X end.
DROPS = {(1, 1): "drop_left_front", (1, -1): "drop_left_back", (-1, 1): "drop_right_front", (-1, -1): "drop_right_back"}


@dataclass(frozen=True)
class Readings:
    """The four drops and where they are read: ``along`` and ``across`` the ridge from the axis; the ridge at y = ``ridge``."""

    along: float
    across: float
    ridge: float
    left_front: float
    left_back: float
    right_front: float
    right_back: float

    @property
    def pitch_left(self) -> float:
        """Pitch of the nominal left slope."""
        return _pitch(min(self.left_front, self.left_back), self.across - self.ridge)

    @property
    def pitch_right(self) -> float:
        """Pitch of the nominal right slope."""
        return _pitch(min(self.right_front, self.right_back), self.across + self.ridge)

    @property
    def twist_left(self) -> float:
        """How much further the left slope drops at one end than at the other; never negative."""
        return abs(self.left_front - self.left_back)

    @property
    def twist_right(self) -> float:
        """How much further the right slope drops at one end than at the other; never negative."""
        return abs(self.right_front - self.right_back)

    @property
    def front_lower(self) -> float:
        """How far the roof lies lower in front than at the back, both slopes' mean; negative where the back is lower."""
        return (self.left_front + self.right_front - self.left_back - self.right_back) / 2.0

    @property
    def lowest(self) -> float:
        """The most that the roof lies below the nominal slopes anywhere under the vent: at one of the corners."""
        return max(self.below(x, y) for x in (self.along, -self.along) for y in (self.across, -self.across))

    def below(self, x: float, y: float) -> float:
        """How far the roof lies below the nominal slopes at a point of the plan, plumb."""
        left = (self.across - self.ridge) * math.tan(math.radians(self.pitch_left))
        right = (self.across + self.ridge) * math.tan(math.radians(self.pitch_right))
        front, toward_left = (1.0 + x / self.along) / 2.0, (1.0 + y / self.across) / 2.0
        on_left = front * self.left_front + (1.0 - front) * self.left_back - left
        on_right = front * self.right_front + (1.0 - front) * self.right_back - right
        return toward_left * on_left + (1.0 - toward_left) * on_right

    def span(self, outline: Sequence[Vec]) -> tuple[float, float]:
        """The least and the most that the roof lies below the nominal slopes inside an outline (plan points in order).

        Along a straight edge it is a parabola, and inside it has neither top nor bottom, for what it gains one way it
        loses the other: so corners and the edges' turning points are all that count.
        """
        found = [self.below(p[0], p[1]) for p in outline]
        for number, p in enumerate(outline):
            q = outline[(number + 1) % len(outline)]
            first, middle, last = (self.below(p[0] + share * (q[0] - p[0]), p[1] + share * (q[1] - p[1]))
                                   for share in (0.0, 0.5, 1.0))
            bend, start = 2.0 * (first - 2.0 * middle + last), 4.0 * middle - 3.0 * first - last
            if abs(bend) > 1e-9 and 0.0 < -start / (2.0 * bend) < 1.0:
                found.append(first - start * start / (4.0 * bend))
        return min(found), max(found)


def _pitch(drop: float, run: float) -> float:
    pitch = math.degrees(math.atan2(drop, run))
    return 0.0 if pitch < LEVEL_PITCH else pitch


def reach(plan: Plan, width: float) -> tuple[float, float]:
    """Half the sides of the rectangle round the plan, along and across the ridge: on a square half the width each way."""
    half = width / 2.0
    points = [plan.corner_point(corner, half) for corner in range(plan.sides)]
    return max(p[0] for p in points), max(p[1] for p in points)


def drops(spec: Spec) -> dict[str, float]:
    """The drops that are given, by their parameters."""
    every = {"drop_left_front": spec.drop_left_front, "drop_left_back": spec.drop_left_back,
             "drop_right_front": spec.drop_right_front, "drop_right_back": spec.drop_right_back}
    return {name: float(drop) for name, drop in every.items() if drop}


def readings(spec: Spec, plan: Plan, width: float) -> Readings | None:
    """The readings; None unless all four are given for a vent astride a ridge that runs under it."""
    along, across = reach(plan, width)
    given = drops(spec)
    if len(given) < len(DROPS) or spec.seat == "one slope" or abs(spec.ridge_offset) >= across:
        return None
    return Readings(along, across, -float(spec.ridge_offset), given["drop_left_front"], given["drop_left_back"],
                    given["drop_right_front"], given["drop_right_back"])
