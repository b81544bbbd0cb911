# SPDX-License-Identifier: LGPL-2.1-or-later
"""A barn's roof as it is drawn: from plane faces to two slopes, the ridge they meet in, and a vent's place on it.

All in mm and degrees, in the drawing's own frame, in which +Z is up.  Left and right are the vent's: +X runs along the
ridge, +Y across it, and the left slope is the one that falls towards +Y, on your left as you look along +X.  So the left
slope settles which way +X runs, and the vent keeps its sense however the building is turned.  Which slope is left is the
caller's to say, by the order in which slopes are handed over.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from .geometry import Z_AXIS, Placement, Vec, add, cross, dot, length, scale, sub, unit
from .saying import say
from .survey import STEEPEST
from .twist import LEVEL_PITCH

RIDGE, ONE_SLOPE, FLAT = "ridge", "one slope", "flat"
BACK, FRONT, MIDDLE = "back", "front", "middle"

#: A ridge that slopes no more (degrees) is level: 1.6 mm over a vent of 900 mm, which is what a tape's reading is off by.
LEVEL_RIDGE = 0.1
#: A ridge that slopes no more (degrees) sags or was built crooked, and can be scribed to; what slopes more is no ridge.
CROOKED_RIDGE = 1.5
#: Faces whose normals turn no more (degrees), and that lie no further apart (mm), are one plane.
SAME_TURN, SAME_HEIGHT = 0.01, 0.5
#: How far from the line that the planes meet in a slope may end (mm): slabs with square ends, a ridge board, a vent slot.
REACH = 300.0
#: What is no further apart than this touches (mm).
JOINED = 1.0
#: A ridge that is broken for no longer than this is unbroken: so far apart may the ribs of a covering stand (mm).
RIBS = 350.0

Edge = tuple[Vec, Vec]
Run = tuple[float, float]


class RoofError(ValueError):
    """A pick that is no roof to stand a vent on; the text says what was picked, what is needed, and the cure."""


class RoofLost(RoofError):
    """A roof that was read once and is not there any more; the text asks to pick again."""


@dataclass(frozen=True)
class Patch:
    """A plane face: unit outward normal, centre of area, area (mm²), straight edges, its object's number and its own.

    Edges that are not straight are left out: none of them is a ridge.
    """

    normal: Vec
    centre: Vec
    area: float
    edges: tuple[Edge, ...]
    of: int = 0
    number: int = 0

    @property
    def pitch(self) -> float:
        """Angle from the level: 0 for a face that looks up, 90 plumb, 180 for one that looks down (degrees)."""
        return math.degrees(math.atan2(math.hypot(self.normal[0], self.normal[1]), self.normal[2]))

    @property
    def level(self) -> bool:
        """Whether it is level, for all that a vent would notice."""
        return self.pitch < LEVEL_PITCH

    @property
    def fall(self) -> Vec:
        """Level unit vector to where it falls.  Raises ZeroDivisionError for one that is exactly level."""
        return unit((self.normal[0], self.normal[1], 0.0))

    def height(self, point: Vec) -> float:
        """How far a point lies outside the plane (mm)."""
        return dot(self.normal, sub(point, self.centre))

    def same_plane(self, other: Patch) -> bool:
        """Whether both lie in one plane and look the same way."""
        return (dot(self.normal, other.normal) > 0.9999    # a quick no for most
                and angle_between(self.normal, other.normal) <= SAME_TURN
                and abs(self.height(other.centre)) <= SAME_HEIGHT)

    def moved(self, frame: Placement) -> Patch:
        """The same face in the frame around ``frame``."""
        return replace(self, normal=frame.direction(self.normal), centre=frame.point(self.centre),
                       edges=tuple((frame.point(a), frame.point(b)) for a, b in self.edges))

    def lifted(self, point: Vec) -> Vec:
        """The point of the plane plumb over or under ``point``."""
        return (point[0], point[1], point[2] - self.height(point) / self.normal[2])


@dataclass(frozen=True)
class RoofPlanes:
    """A roof as a vent needs it: its slopes, and the line that vents stand on, in the drawing's frame.

    ``ridge`` runs from back to front, which is along the vent's +X: as far as both slopes really reach along it.  With
    kind "one slope" it is the level line through the middle of the slope, which falls to the left and has no other beside
    it; with kind "flat" a line through the middle, along the longest edge.
    """

    kind: str
    left: Patch
    right: Patch | None
    ridge: Edge

    @property
    def pitch_left(self) -> float:
        """Pitch of the left slope (degrees)."""
        return self.left.pitch

    @property
    def pitch_right(self) -> float:
        """Pitch of the right slope; where there is none, as the spec has it, minus the left one's (degrees)."""
        return self.right.pitch if self.right else -self.left.pitch

    @property
    def ridge_length(self) -> float:
        """Length of unbroken ridge (mm)."""
        return length(sub(self.ridge[1], self.ridge[0]))

    @property
    def ridge_height(self) -> float:
        """Height of the ridge's middle (mm)."""
        return (self.ridge[0][2] + self.ridge[1][2]) / 2.0

    @property
    def along(self) -> Vec:
        """Level unit vector along the vent's +X."""
        line = sub(self.ridge[1], self.ridge[0])
        return unit((line[0], line[1], 0.0))

    @property
    def azimuth(self) -> float:
        """Direction of the vent's +X, anticlockwise from the drawing's +X as seen from above (degrees, 0 to under 360)."""
        return math.degrees(math.atan2(self.along[1], self.along[0])) % 360.0

    @property
    def slopes(self) -> tuple[Patch, ...]:
        """Left slope, and right if there is one."""
        return (self.left, self.right) if self.right else (self.left,)

    def turned(self) -> RoofPlanes:
        """The same roof with left and right, back and front exchanged; one slope can only fall to the left."""
        if self.kind == ONE_SLOPE:
            return self
        left = self.right or self.left
        return replace(self, left=left, right=self.left if self.right else None, ridge=(self.ridge[1], self.ridge[0]))

    def place(self, along: float = 0.0, end: str = MIDDLE, left: float = 0.0) -> Placement:
        """A vent's frame: its axis so far along the ridge from an end, and so far to the left of the ridge (mm).

        From "back" and "middle" ``along`` counts towards the front, from "front" towards the back.  Over a ridge the
        origin is at the ridge's height, wherever the axis stands (``BarnRoof.ridge`` says where the ridge is); on one
        slope it is on the covering.  Raises RoofError for a place past the end of the ridge.
        """
        total = self.ridge_length
        at = {BACK: along, FRONT: total - along, MIDDLE: total / 2.0 + along}[end]
        if not -JOINED <= at <= total + JOINED:
            past = -at if at < 0.0 else at - total
            raise RoofError(say("The vent's axis would stand {past:.0f} mm past the end of the ridge, which is "
                                "{total:.0f} mm long. Enter a distance from the {end} that stays on the ridge.", past=past,
                                total=total, end=say(end)))
        point = add(self.ridge[0], scale(unit(sub(self.ridge[1], self.ridge[0])), at))
        origin = add(point, scale(cross(Z_AXIS, self.along), left))
        return Placement.from_axes(origin if self.right else self.left.lifted(origin), self.along, Z_AXIS)


def angle_between(a: Vec, b: Vec) -> float:
    """Angle between two directions (degrees), exact for small ones too."""
    return math.degrees(math.atan2(length(cross(a, b)), dot(a, b)))


# ---- from faces to slopes


def merged(patches: Iterable[Patch]) -> list[Patch]:
    """Faces of one object that lie in one plane as one, in the order of their lowest numbers.

    The plane is that of the largest face, so that a sliver turns nothing.
    """
    groups: list[list[Patch]] = []
    for patch in sorted(patches, key=lambda each: -each.area):
        mine = next((group for group in groups if group[0].of == patch.of and group[0].same_plane(patch)), None)
        if mine is None:
            groups.append([patch])
        else:
            mine.append(patch)
    return sorted((_as_one(group) for group in groups), key=lambda each: (each.of, each.number))


def _as_one(group: Sequence[Patch]) -> Patch:
    """The faces of one plane as one, with the first one's normal."""
    first, area = group[0], sum(each.area for each in group)
    middle = (0.0, 0.0, 0.0)
    for each in group:
        middle = add(middle, scale(each.centre, each.area / area))
    middle = sub(middle, scale(first.normal, first.height(middle)))
    return replace(first, centre=middle, area=area, edges=tuple(edge for each in group for edge in each.edges),
                   number=min(each.number for each in group))


def slopes_of(patches: Iterable[Patch]) -> list[Patch]:
    """The planes that look up and are no steeper than a roof: walls, gables and undersides are left out."""
    return merged(each for each in patches if each.pitch < STEEPEST)


# ---- two slopes


def two_slopes(left: Patch, right: Patch, near: Vec | None = None) -> RoofPlanes:
    """The roof of two slopes that meet in a level ridge; of a broken ridge the longest run, or the one ``near`` is on.

    Raises RoofError for slopes that are parallel, fall the same way, meet in a valley or a hip, slope along the ridge
    by more than ``LEVEL_RIDGE``, or do not reach each other.
    """
    point, line = _meeting(left, right)
    tilt = math.degrees(math.asin(min(1.0, abs(line[2]))))
    if tilt > CROOKED_RIDGE:
        raise RoofError(say("The two slopes meet in a line that slopes {tilt:.1f}°: that is a hip or a valley, and a vent "
                            "needs a level ridge. Pick the slopes on both sides of the ridge.", tilt=tilt))
    across = unit(cross(Z_AXIS, line))
    _judge_sense([dot(each.normal, across) if not each.level else 0.0 for each in (left, right)],
                 [dot(sub(each.centre, point), across) for each in (left, right)])
    if tilt > LEVEL_RIDGE:
        raise RoofError(say("The ridge slopes {tilt:.2f}° along its length; up to {level_ridge:g}° counts as level. Set "
                            "the vent on by hand and enter the drops at its four corners, so that its feet are scribed to "
                            "the roof.", tilt=tilt, level_ridge=LEVEL_RIDGE))
    if dot(cross(Z_AXIS, line), sub(left.centre, point)) < 0.0:
        line = scale(line, -1.0)
    start, end = _shared_run(left, right, point, line, near)
    return RoofPlanes(RIDGE, left, right, (add(point, scale(line, start)), add(point, scale(line, end))))


def _meeting(left: Patch, right: Patch) -> tuple[Vec, Vec]:
    """A point of the line that two planes meet in, near both, and its unit direction.  Raises RoofError."""
    if angle_between(left.normal, right.normal) <= SAME_TURN:
        apart = abs(left.height(right.centre))
        what = say("both level") if left.level else say("parallel, at {pitch:.1f}°", pitch=left.pitch)
        where = say("{apart:.0f} mm apart", apart=apart) if apart > SAME_HEIGHT else say("in one plane")
        raise RoofError(say("The two slopes are {what}, {where}: they meet in no ridge. Pick a slope on each side of the "
                            "ridge, or one face alone for a vent on one slope or on a flat roof.", what=what, where=where))
    line = cross(left.normal, right.normal)
    size = dot(line, line)
    middle = scale(add(left.centre, right.centre), 0.5)
    a, b = left.height(middle), right.height(middle)
    # The point nearest to ``middle`` whose height over both planes is 0.
    step = add(scale(cross(right.normal, line), a), scale(cross(line, left.normal), b))
    return sub(middle, scale(step, 1.0 / size)), unit(line)


def _judge_sense(falls: Sequence[float], sides: Sequence[float]) -> None:
    """Raises RoofError unless both slopes lie on their own sides of the line and fall away from it."""
    if falls[0] * falls[1] > 0.0:
        raise RoofError(say("The two slopes fall the same way, so that they meet in a break of the slope and not in a "
                            "ridge. Pick the slopes on both sides of the ridge."))
    away = [fall * side for fall, side in zip(falls, sides, strict=True)]
    if sides[0] * sides[1] < 0.0 and min(away) >= 0.0:
        return
    if sides[0] * sides[1] < 0.0 and max(away) <= 0.0:
        raise RoofError(say("The two slopes fall towards each other: they meet in a valley, and a vent there would dam "
                            "the water. Pick two slopes that fall away from a ridge."))
    raise RoofError(say("The two slopes do not meet in a ridge: at least one of them lies beyond the line that their "
                        "planes meet in. Pick the two slopes of one roof."))


def _shared_run(left: Patch, right: Patch, point: Vec, line: Vec, near: Vec | None) -> Run:
    """From where to where both slopes reach along the line (mm from ``point``).  Raises RoofError."""
    both = overlaps(runs_along(left, point, line), runs_along(right, point, line))
    runs = [(start, end) for start, end in both if end - start > JOINED]
    if not runs:
        raise RoofError(say("The two slopes do not reach each other: along the line that their planes meet in, no stretch "
                            "has an edge of both within {reach:g} mm. Pick the two slopes of one ridge.", reach=REACH))
    if near is not None:
        at = dot(sub(near, point), line)
        return min(runs, key=lambda run: max(run[0] - at, at - run[1], 0.0))
    return max(runs, key=lambda run: run[1] - run[0])


def runs_along(slope: Patch, point: Vec, line: Vec) -> list[Run]:
    """The stretches of the line that the slope's nearest edges run along, in order (mm from ``point``)."""
    found: list[tuple[float, Run]] = []
    for a, b in slope.edges:
        from_a, from_b = sub(a, point), sub(b, point)
        gap = max(length(cross(from_a, line)), length(cross(from_b, line)))
        size = length(sub(b, a))
        skew = length(cross(sub(b, a), line))
        if gap <= REACH and skew <= math.sin(math.radians(LEVEL_RIDGE)) * size:
            ends = sorted((dot(from_a, line), dot(from_b, line)))
            found.append((gap, (ends[0], ends[1])))
    nearest = min((gap for gap, _ in found), default=0.0)
    runs: list[Run] = []
    for start, end in sorted(run for gap, run in found if gap <= nearest + JOINED):
        if runs and start <= runs[-1][1] + RIBS:
            runs[-1] = (runs[-1][0], max(runs[-1][1], end))
        else:
            runs.append((start, end))
    return runs


def overlaps(first: Sequence[Run], second: Sequence[Run]) -> list[Run]:
    """What two rows of stretches have in common."""
    return [(max(a[0], b[0]), min(a[1], b[1])) for a in first for b in second if max(a[0], b[0]) < min(a[1], b[1])]


# ---- one slope


def one_slope(slope: Patch, along: Vec | None = None) -> RoofPlanes:
    """The roof of one slope, or flat.  On a flat one +X runs like ``along``, or else along the longest edge.

    Which way it runs along that edge the caller has to say by ``along``.
    """
    direction = _level_direction(slope, along) if slope.level else cross(slope.fall, Z_AXIS)
    reach = _chord(slope, direction)
    ends = (add(slope.centre, scale(direction, reach[0])), add(slope.centre, scale(direction, reach[1])))
    return RoofPlanes(FLAT if slope.level else ONE_SLOPE, slope, None, ends)


def longest_edge(slope: Patch) -> Vec:
    """Unit direction of the longest straight edge; +X for a face without one."""
    lines = sorted((sub(b, a) for a, b in slope.edges), key=length)
    return unit(lines[-1]) if lines else (1.0, 0.0, 0.0)


def _level_direction(slope: Patch, along: Vec | None) -> Vec:
    line = longest_edge(slope)
    if along is not None and length((along[0], along[1], 0.0)) > 1e-6:
        line = along
    return unit((line[0], line[1], 0.0))


def _chord(slope: Patch, direction: Vec) -> Run:
    """How far the outline reaches each way along a level line through the slope's centre (mm).

    A face with curved edges may have none that the line crosses on one side; there it ends at the centre.
    """
    across = cross(slope.normal, direction)
    at = []
    for a, b in slope.edges:
        side_a, side_b = (dot(sub(p, slope.centre), across) for p in (a, b))
        if (side_a < 0.0) != (side_b < 0.0):
            share = side_a / (side_a - side_b)
            at.append(dot(sub(add(a, scale(sub(b, a), share)), slope.centre), direction))
    return (max((x for x in at if x < 0.0), default=0.0), min((x for x in at if x > 0.0), default=0.0))
