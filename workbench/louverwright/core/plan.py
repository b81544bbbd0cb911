# SPDX-License-Identifier: LGPL-2.1-or-later
"""The planes of the assembly that parts are trimmed by: the plan's sides and corners, and the barn's roof.

Assembly frame: origin at the ridge under the vent's axis, +X along the ridge, +Y across it, +Z up.
On side ``k``: ``r`` is the distance outward from the axis along ``u``, ``l`` the distance along the
side to the right as seen from outside, along ``v``.  A rectangle is a square pulled apart: it has an axis for each of its
ends, and a side's ``r`` counts from the nearest.  In every plane returned the waste lies beyond it.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

from .geometry import Z_AXIS, Placement, Plane, Vec, add, cross, dot, scale, turned, unit

LEFT, RIGHT = -1, 1
ENDS = (LEFT, RIGHT)


@lru_cache(maxsize=16)
def _directions(sides: int, corner_first: bool) -> tuple[Vec, ...]:
    """Outward normals of all sides of a regular plan, level."""
    return tuple(turned(360.0 / sides * (side + (0.5 if corner_first else 0.0))) for side in range(sides))


@dataclass(frozen=True)
class Plan:
    """A regular plan of ``sides`` sides; side 0 faces along +X, or with ``turned`` the corner before it does.

    ``pull`` is how far a square's even and odd sides are pulled outward to make a rectangle (mm; one of them is 0).
    """

    sides: int
    turned: bool = False
    pull: tuple[float, float] = (0.0, 0.0)

    @property
    def step(self) -> float:
        """Plan angle of one side at the axis (degrees)."""
        return 360.0 / self.sides

    @property
    def slope(self) -> float:
        """T = tan(180°/n): half length of a side for each millimetre of its distance from the axis."""
        return math.tan(math.pi / self.sides)

    @property
    def rectangle(self) -> bool:
        """True for a square that is pulled apart."""
        return any(self.pull)

    def out(self, side: int) -> float:
        """Distance of a side's own axis from the vent's, along ``u`` (mm)."""
        return self.pull[side % 2]

    def long(self, side: int) -> bool:
        """True for the long sides of a rectangle, over which the ridge of its roof lies."""
        return self.pull[(side + 1) % 2] > 0.0

    def half(self, side: int, r: float) -> float:
        """Half the length of a side at ``r`` (mm)."""
        return r * self.slope + self.pull[(side + 1) % 2]

    def area(self, r: float) -> float:
        """Area of the plan inside ``r`` (mm²)."""
        return sum(self.half(side, r) * (r + self.out(side)) for side in range(self.sides))

    def u(self, side: int) -> Vec:
        """Outward normal of a side, level."""
        return _directions(self.sides, self.turned)[side % self.sides]

    def v(self, side: int) -> Vec:
        """Direction along a side, to the right as seen from outside."""
        x, y, z = self.u(side)
        return (-y, x, z)

    def point(self, side: int, r: float, along: float, z: float) -> Vec:
        """The point at (r, l, z) of a side (mm)."""
        (x, y, _), out = self.u(side), r + self.out(side)
        return (x * out - y * along, y * out + x * along, z)

    def gable(self, side: int) -> bool:
        """True for a side that faces along the ridge and so straddles it or stands square to it."""
        return abs(dot(self.u(side), (1.0, 0.0, 0.0))) > 0.999

    def eave(self, side: int) -> bool:
        """True for a side that faces across the ridge."""
        return abs(dot(self.u(side), (0.0, 1.0, 0.0))) > 0.999

    def through(self, side: int) -> bool:
        """True for a side of a square plan whose slabs run through at butted corners: every second one."""
        return side % 2 == 0

    def sort(self, side: int) -> str:
        """'gable' or 'eave': the family of parts a side's belong to.

        On a square plan the sides that run through are the gable ones; on others those that face along the ridge.
        """
        gable = self.through(side) if self.sides == 4 else self.gable(side)
        return "gable" if gable else "eave"

    def neighbour(self, side: int, end: int) -> int:
        """The side next to this one at its left (−1) or right (+1) end."""
        return (side + end) % self.sides

    # ---- planes

    def outer(self, side: int, r: float) -> Plane:
        """Waste outside the distance ``r`` from the axis."""
        return Plane(self.u(side), r + self.out(side))

    def inner(self, side: int, r: float) -> Plane:
        """Waste inside the distance ``r`` from the axis."""
        return self.outer(side, r).flipped()

    def past(self, side: int, end: int, along: float) -> Plane:
        """Waste further from the middle of the side than ``along`` (mm, positive), towards ``end``."""
        return Plane(scale(self.v(side), float(end)), along)

    def short_of(self, side: int, end: int, along: float) -> Plane:
        """Waste nearer to the middle of the side, and beyond it, than ``along`` on the half at ``end``."""
        return self.past(side, end, along).flipped()

    def mitre(self, side: int, end: int) -> Plane:
        """The vertical plane through the axis and the corner at ``end``; waste outside the side's sector."""
        corner = self.corner(side, end)
        return Plane.through(self.axis(corner), scale(self.across(corner), float(end)))

    def corner(self, side: int, end: int) -> int:
        """The number of the corner at an end of a side: corner k lies between sides k and k + 1."""
        return side if end == RIGHT else (side - 1) % self.sides

    def axis(self, corner: int) -> Vec:
        """The foot of the axis that a corner's mitre plane passes through (mm)."""
        return self.apart(corner, 0.0, 0.0)

    def apart(self, corner: int, first: float, second: float) -> Vec:
        """A rectangle's corner where its two sides are at different ``r``: first that of side ``corner`` (mm)."""
        if self.sides != 4:
            return self.corner_point(corner, first)
        return add(scale(self.u(corner), first + self.out(corner)), scale(self.u(corner + 1), second + self.out(corner + 1)))

    def corner_point(self, corner: int, r: float, z: float = 0.0) -> Vec:
        """The corner of the plan at ``r`` (mm)."""
        return self.point(corner, r, self.half(corner, r), z)

    def past_corner(self, corner: int, distance: float) -> Plane:
        """Square to a corner's direction, waste further from its axis than ``distance`` (mm)."""
        toward = self.toward(corner)
        return Plane(toward, dot(toward, self.axis(corner)) + distance)

    def toward(self, corner: int) -> Vec:
        """Level direction from the axis to a corner."""
        return turned(self.step * (corner + (1.0 if self.turned else 0.5)))

    def across(self, corner: int) -> Vec:
        """Level direction square to a corner's, anticlockwise: towards side ``corner + 1``."""
        return cross(Z_AXIS, self.toward(corner))

    # ---- frames for sticks

    def upright(self, side: int) -> Placement:
        """X up, marked face outside; the reference edge lies to the right."""
        return Placement.from_axes(self.point(side, 0.0, 0.0, 0.0), Z_AXIS, self.u(side))

    def level(self, side: int) -> Placement:
        """X along the side to the right, marked face outside; the reference edge lies below."""
        return Placement.from_axes(self.point(side, 0.0, 0.0, 0.0), self.v(side), self.u(side))

    def flat(self, side: int) -> Placement:
        """X along the side to the right, marked face up; the reference edge lies outside."""
        return Placement.from_axes(self.point(side, 0.0, 0.0, 0.0), self.v(side), Z_AXIS)

    def sloping(self, side: int, degrees: float, r: float, z: float) -> Placement:
        """X along the side, marked face up on a slope that falls outward; its origin at (r, z)."""
        tilt = math.radians(degrees)
        normal = add(scale(self.u(side), math.sin(tilt)), scale(Z_AXIS, math.cos(tilt)))
        return Placement.from_axes(self.point(side, r, 0.0, z), self.v(side), normal)

    def slope_plane(self, side: int, degrees: float, r: float, z: float) -> Plane:
        """The plane through (r, z) that falls outward by ``degrees``; waste above it."""
        return Plane.through(self.point(side, r, 0.0, z), self.sloping(side, degrees, r, z).z)


def above(z: float) -> Plane:
    """Waste above the level ``z``."""
    return Plane(Z_AXIS, z)


def below(z: float) -> Plane:
    """Waste below the level ``z``."""
    return above(z).flipped()


@dataclass(frozen=True)
class BarnRoof:
    """The two slopes of the barn, met in a level ridge along X at y = ``ridge`` and z = 0 (mm, degrees).

    With ``single`` the roof is one slope through the origin, which falls to the left: then right is −left.
    """

    left: float
    right: float
    ridge: float = 0.0
    single: bool = False

    def slopes(self, raised: float = 0.0, square: float = 0.0) -> tuple[Plane, Plane]:
        """Left (+Y) and right slope, waste below; what lies below both is under the roof.

        ``raised`` lifts the surface plumb, ``square`` lifts it square to the slope (mm).
        """
        planes = []
        for pitch, hand in ((self.left, 1.0), (self.right, -1.0)):
            p = math.radians(pitch)
            plane = Plane.through((0.0, self.ridge, raised), (0.0, -hand * math.sin(p), -math.cos(p)))
            planes.append(plane.moved(-square))
        return planes[0], planes[1]

    def height(self, y: float) -> float:
        """Height of the covering at ``y`` (mm; 0 at the ridge, negative elsewhere)."""
        away = y - self.ridge
        return -abs(away) * math.tan(math.radians(self.left if away > 0 else self.right))

    def cap(self, height: float, width: float, clearance: float = 0.0) -> tuple[Plane, ...]:
        """The waste that clears a ridge cap: ``height`` plumb over the covering, ``width`` level, both slopes together."""
        left, right = self.slopes(height + clearance)
        half = width / 2.0
        return (left, right, Plane((0.0, 1.0, 0.0), self.ridge - half), Plane((0.0, -1.0, 0.0), -self.ridge - half))

    def rake(self, plan: Plan, side: int, slope: int) -> Vec:
        """Direction of the roof line on a side's outer face, towards +l: 0 the left slope, 1 the right."""
        normal = self.slopes()[slope].normal
        line = cross(normal, plan.u(side))
        return unit(line if dot(line, plan.v(side)) > 0 else scale(line, -1.0))


@dataclass(frozen=True)
class ButtCorner:
    """Gable-side slabs run through; eave-side slabs stop against their backs."""

    plan: Plan

    def stop(self, side: int, end: int, r_inner: float, r_outer: float) -> Plane:
        """The plane that ends a slab between two distances from the axis at one end."""
        through = self.plan.through(side)
        return self.plan.outer(self.plan.neighbour(side, end), r_outer if through else r_inner)


@dataclass(frozen=True)
class MitredCorner:
    """Both slabs stop on the mitre plane."""

    plan: Plan

    def stop(self, side: int, end: int, r_inner: float, r_outer: float) -> Plane:
        """The plane that ends a slab at one end; it does not depend on the slab."""
        return self.plan.mitre(side, end)


CornerRule = ButtCorner | MitredCorner


def corner_rule(plan: Plan, corner: str) -> CornerRule:
    """The corner rule by its name in the parameter table; a plan that is not square is always mitred."""
    return ButtCorner(plan) if corner == "butt" and plan.sides == 4 else MitredCorner(plan)
