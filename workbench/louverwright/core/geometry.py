# SPDX-License-Identifier: LGPL-2.1-or-later
"""Points, planes and placements: the few pieces of geometry that everything else is said in.

A vector is a tuple of three floats (millimetres, or no unit for a direction).  A
plane's normal always points to the waste: what lies beyond it is cut away.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise
from typing import NamedTuple

Vec = tuple[float, float, float]

X_AXIS: Vec = (1.0, 0.0, 0.0)
Y_AXIS: Vec = (0.0, 1.0, 0.0)
Z_AXIS: Vec = (0.0, 0.0, 1.0)

#: Decimals that directions and lengths (mm) are rounded to where equal things are to be found equal: above the noise of
#: floats, far below a saw's error.
DIRECTION_DECIMALS, DECIMALS = 12, 9


def rounded(a: Vec, decimals: int = DECIMALS) -> Vec:
    """A vector rounded, with no negative zeros."""
    return (round(a[0], decimals) + 0.0, round(a[1], decimals) + 0.0, round(a[2], decimals) + 0.0)


def add(a: Vec, b: Vec) -> Vec:
    """a + b."""
    return (a[0] + b[0], a[1] + b[1], a[2] + b[2])


def sub(a: Vec, b: Vec) -> Vec:
    """a − b."""
    return (a[0] - b[0], a[1] - b[1], a[2] - b[2])


def scale(a: Vec, factor: float) -> Vec:
    """a multiplied by a number."""
    return (a[0] * factor, a[1] * factor, a[2] * factor)


def dot(a: Vec, b: Vec) -> float:
    """Scalar product."""
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def cross(a: Vec, b: Vec) -> Vec:
    """Vector product a × b."""
    return (
        a[1] * b[2] - a[2] * b[1],
        a[2] * b[0] - a[0] * b[2],
        a[0] * b[1] - a[1] * b[0],
    )


def length(a: Vec) -> float:
    """Length of a vector."""
    return math.sqrt(dot(a, a))


def unit(a: Vec) -> Vec:
    """The vector of length 1 along ``a``.  Raises ZeroDivisionError for a zero vector."""
    return scale(a, 1.0 / length(a))


def turned(degrees: float) -> Vec:
    """The level unit vector ``degrees`` anticlockwise (seen from above) from +X."""
    angle = math.radians(degrees)
    return (math.cos(angle), math.sin(angle), 0.0)


class Plane(NamedTuple):
    """The points p with normal·p = offset (mm).  Waste is where normal·p > offset."""

    normal: Vec
    offset: float

    @staticmethod
    def through(point: Vec, normal: Vec) -> Plane:
        """The plane through ``point`` whose waste lies on the side that ``normal`` points to."""
        n = unit(normal)
        return Plane(n, dot(n, point))

    def height(self, point: Vec) -> float:
        """How far ``point`` lies inside the waste (mm); negative on the side that is kept."""
        return dot(self.normal, point) - self.offset

    def moved(self, distance: float) -> Plane:
        """The parallel plane ``distance`` mm further along the normal, so that more is kept."""
        return Plane(self.normal, self.offset + distance)

    def flipped(self) -> Plane:
        """The same plane with waste and kept side exchanged."""
        x, y, z = self.normal
        return Plane((-x, -y, -z), -self.offset)

    def rounded(self) -> Plane:
        """The plane as near as floats of other sides of the vent can be told apart."""
        return Plane(rounded(self.normal, DIRECTION_DECIMALS), round(self.offset, DECIMALS) + 0.0)


@dataclass(frozen=True)
class Bore:
    """A round hole: ``start`` on its axis (mm), unit ``direction``, ``length`` and ``diameter`` (mm)."""

    start: Vec
    direction: Vec
    length: float
    diameter: float


class Placement(NamedTuple):
    """A right-handed frame: the point (x, y, z) of a board stands at origin + x·X + y·Y + z·Z."""

    origin: Vec
    x: Vec
    y: Vec
    z: Vec

    @staticmethod
    def from_axes(origin: Vec, x: Vec, z: Vec) -> Placement:
        """The frame with the given X and Z axes (square to each other); Y = Z × X."""
        return Placement(origin, x, cross(z, x), z)

    def point(self, p: Vec) -> Vec:
        """A board's point in the frame around it."""
        (a, b, c), o, x, y, z = p, self.origin, self.x, self.y, self.z
        return (o[0] + a * x[0] + b * y[0] + c * z[0], o[1] + a * x[1] + b * y[1] + c * z[1],
                o[2] + a * x[2] + b * y[2] + c * z[2])

    def direction(self, v: Vec) -> Vec:
        """A board's direction in the frame around it."""
        (a, b, c), x, y, z = v, self.x, self.y, self.z
        return (a * x[0] + b * y[0] + c * z[0], a * x[1] + b * y[1] + c * z[1], a * x[2] + b * y[2] + c * z[2])

    def local_point(self, p: Vec) -> Vec:
        """A point of the frame around, in the board's own coordinates."""
        return self.local_direction(sub(p, self.origin))

    def local_direction(self, v: Vec) -> Vec:
        """A direction of the frame around, in the board's own coordinates."""
        return (dot(v, self.x), dot(v, self.y), dot(v, self.z))

    def local_plane(self, plane: Plane) -> Plane:
        """A plane of the frame around, in the board's own coordinates."""
        (a, b, c), (u, v, w), x, y, z = plane.normal, self.origin, self.x, self.y, self.z
        return Plane((a * x[0] + b * x[1] + c * x[2], a * y[0] + b * y[1] + c * y[2], a * z[0] + b * z[1] + c * z[2]),
                     plane.offset - (a * u + b * v + c * w))

    def local_bore(self, bore: Bore) -> Bore:
        """A bore of the frame around, in the board's own coordinates."""
        return Bore(
            self.local_point(bore.start), self.local_direction(bore.direction), bore.length, bore.diameter
        )

    def local_frame(self, other: Placement) -> Placement:
        """A frame that stands in the frame around, in the board's own coordinates."""
        return Placement(self.local_point(other.origin), self.local_direction(other.x), self.local_direction(other.y),
                         self.local_direction(other.z))

    def rounded(self) -> Placement:
        """The placement as near as floats of other sides of the vent can be told apart."""
        return Placement(rounded(self.origin), rounded(self.x, DIRECTION_DECIMALS), rounded(self.y, DIRECTION_DECIMALS),
                         rounded(self.z, DIRECTION_DECIMALS))

    def then(self, inner: Placement) -> Placement:
        """The placement that first moves by ``inner`` and then by this one."""
        return Placement(
            self.point(inner.origin),
            self.direction(inner.x),
            self.direction(inner.y),
            self.direction(inner.z),
        )


IDENTITY = Placement((0.0, 0.0, 0.0), X_AXIS, Y_AXIS, Z_AXIS)


def newell(points: tuple[Vec, ...]) -> Vec:
    """Twice the area vector of a closed plane polygon (Newell's sum); its length is twice the area."""
    total = (0.0, 0.0, 0.0)
    origin = points[0]
    for a, b in pairwise((*points, origin)):
        total = add(total, cross(sub(a, origin), sub(b, origin)))
    return total
