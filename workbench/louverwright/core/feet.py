# SPDX-License-Identifier: LGPL-2.1-or-later
"""Feet on a twisted roof: what ground a corner's two legs cover, or a piece of cladding, and the wood left to scribe (mm)."""

from __future__ import annotations

from dataclasses import dataclass

from .geometry import Vec
from .plan import RIGHT
from .sizes import Sizes
from .spec import Spec


@dataclass(frozen=True)
class Foot:
    """One corner's feet, plumb measures: how far the roof lies below the nominal slopes, and the wood left.

    ``least`` and ``most`` are of the whole ground that the corner's legs cover; ``allowance`` is the scribing
    allowance that every leg has.
    """

    corner: int
    least: float
    most: float
    allowance: float

    @property
    def wood(self) -> float:
        """Wood left below the nominal slopes: enough for the lowest place, and the allowance besides."""
        return self.allowance + self.most

    @property
    def off(self) -> tuple[float, float]:
        """The least and the most to scribe off, where the roof lies lowest and highest under the corner."""
        return self.allowance, self.wood - self.least


def ground(at: Sizes, corner: int) -> tuple[Vec, ...]:
    """The outline in plan of both legs at a corner, in order round it."""
    base, plan = at.base, at.plan
    left, right = corner, plan.neighbour(corner, RIGHT)
    mine, other = at.opening(left), at.opening(right)
    return (plan.point(left, base.frame_r, mine, 0.0), plan.corner_point(corner, base.frame_r),
            plan.point(right, base.frame_r, -other, 0.0), plan.point(right, base.inner_r, -other, 0.0),
            plan.corner_point(corner, base.inner_r), plan.point(left, base.inner_r, mine, 0.0))


def foot(spec: Spec, at: Sizes, corner: int) -> Foot:
    """The feet at a corner; corner k lies between sides k and k + 1."""
    least, most = at.readings.span(ground(at, corner)) if at.readings else (0.0, 0.0)
    return Foot(corner, least, most, float(spec.scribe_allowance))


def cladding_wood(at: Sizes, side: int, span: tuple[float, float], r: tuple[float, float]) -> float:
    """Wood left on a cladding or corner board's foot, plumb: the most that the roof lies below the nominal slopes under it.

    ``span`` is how far it reaches along the side at its outer face, ``r`` how far its faces lie from the axis (mm); at a
    mitred corner it counts as square.  Its clearance comes on top, and is what it is scribed to.
    """
    if not at.readings:
        return 0.0
    (left, right), (inner, outer) = span, r
    corners = ((outer, left), (outer, right), (inner, right), (inner, left))
    return max(0.0, at.readings.span([at.plan.point(side, far, along, 0.0) for far, along in corners])[1])


def feet(spec: Spec, at: Sizes) -> tuple[Foot, ...]:
    """The feet at every corner, anticlockwise."""
    return tuple(foot(spec, at, corner) for corner in range(at.plan.sides))
