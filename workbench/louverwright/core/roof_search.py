# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which of a building's many slopes are meant: by the whole, by an edge, or by what was written down of them before.

All in mm and degrees, in the drawing's own frame, in which +Z is up.  Slopes are in the order of their objects and faces,
and where nothing else says so the first one is left.
"""

from __future__ import annotations

import json
import math
from collections.abc import Sequence
from dataclasses import replace
from itertools import combinations

from .geometry import Placement, Vec, add, cross, dot, length, scale, sub, unit
from .roof_planes import (
    CROOKED_RIDGE,
    JOINED,
    REACH,
    SAME_TURN,
    Edge,
    Patch,
    RoofError,
    RoofLost,
    RoofPlanes,
    angle_between,
    one_slope,
    overlaps,
    runs_along,
    two_slopes,
)
from .saying import say
from .survey import STEEPEST

#: A plane that is narrower on the average, square to the ridge (mm), is the end of a slab, a ledge or a capping.
NARROW = 300.0
#: Of the largest plane's area: what a slope has at least, so that not every rib of a covering is tried against each other.
LEAST_SLOPE = 0.02
#: Of the largest plane's area: what a roof of one slope has at least, so that no ledge is taken for it.
LEAST_SHARE = 0.25
#: How far a slope may have turned about the plumb line to be found again (degrees).
FOUND_TURN = 45.0
#: Signatures whose numbers differ by less are of the same roof (mm, and lengths of 1).
ALIKE = 1e-5

# ---- which of many


def ridges_among(slopes: Sequence[Patch], first: Patch | None = None) -> list[RoofPlanes]:
    """Every ridge that two of the slopes meet in (with ``first``: that it has part in, as the left one), best first.

    Slopes that touch go before slopes that end short of the ridge, then the longest ridge.  A level or a narrow plane has
    no part in any, nor has a pair that ``two_slopes`` refuses.
    """
    least = LEAST_SLOPE * max((each.area for each in slopes), default=0.0)
    large = [each for each in slopes if each.area >= least and not each.level]
    pairs = [(first, each) for each in large if each is not first] if first else combinations(large, 2)
    found = []
    for left, right in pairs:
        if dot(left.fall, right.fall) > 0.0:
            continue
        try:
            ridge = two_slopes(left, right)
        except RoofError:    # most pairs of planes are no ridge
            continue
        if not any(_narrow(each, ridge.ridge_length) for each in ridge.slopes):
            found.append(ridge)
    return sorted(found, key=lambda roof: (gap_at_ridge(roof) > JOINED, -roof.ridge_length))


def _narrow(slope: Patch, along: float) -> bool:
    return slope.area < NARROW * along


def gap_at_ridge(roof: RoofPlanes) -> float:
    """How far short of the ridge the slope that ends lower ends (mm)."""
    start, line = roof.ridge[0], unit(sub(roof.ridge[1], roof.ridge[0]))
    gaps = []
    for slope in roof.slopes:
        lines = [edge for edge in slope.edges if runs_along(replace(slope, edges=(edge,)), start, line)]
        gaps.append(min(max(length(cross(sub(p, start), line)) for p in edge) for edge in lines))
    return max(gaps)


def roof_among(slopes: Sequence[Patch]) -> RoofPlanes:
    """The roof of a whole object: its longest ridge, or else its highest large slope.

    Of layers, and of the crests and troughs of a ribbed covering, the upper planes are taken.
    Raises RoofError if nothing looks up, or if two ridges are equally long.
    """
    if not slopes:
        raise RoofError(say("Nothing of what was picked looks up at a pitch of less than {steepest:g}°: there is no roof "
                            "to stand a vent on. Pick the roof, one of its slopes, or its ridge.", steepest=STEEPEST))
    ridges = ridges_among(slopes)
    skins = [each for each in ridges if _same_roof(each, ridges[0])]
    rivals = [each for each in ridges if each not in skins and ridges[0].ridge_length - each.ridge_length <= JOINED]
    if any(gap_at_ridge(each) <= JOINED or gap_at_ridge(ridges[0]) > JOINED for each in rivals):
        raise RoofError(say("The roof has more than one ridge of {ridge_length:.0f} mm. Pick the ridge, or the slopes on "
                            "both sides of it.", ridge_length=ridges[0].ridge_length))
    if skins:
        return max(skins, key=lambda each: each.ridge_height)
    large = max(each.area for each in slopes) * LEAST_SHARE
    return one_slope(max((each for each in slopes if each.area >= large), key=lambda each: each.centre[2]))


def _same_roof(one: RoofPlanes, other: RoofPlanes) -> bool:
    """Whether two ridges are those of two layers of one roof."""
    start, line = other.ridge[0], unit(sub(other.ridge[1], other.ridge[0]))
    close = length(cross(sub(one.ridge[0], start), line)) <= REACH
    return close and any(all(angle_between(a.normal, b.normal) <= SAME_TURN for a, b in zip(slopes, other.slopes, strict=True))
                         for slopes in (one.slopes, one.slopes[::-1]))


def ridge_at(edge: Edge, slopes: Sequence[Patch]) -> RoofPlanes:
    """The roof that has its ridge at an edge.  Raises RoofError for an eave, a verge, a hip, a valley or a break."""
    start, line = edge[0], unit(sub(edge[1], edge[0]))
    size, middle = length(sub(edge[1], edge[0])), scale(add(*edge), 0.5)
    beside = [each for each in slopes if not _narrow(each, size) and any(
        overlaps(runs_along(replace(each, edges=(side,)), start, line), [(0.0, size)])
        and max(length(cross(sub(p, start), line)) for p in side) <= JOINED for side in each.edges)]
    tilt = math.degrees(math.asin(min(1.0, abs(line[2]))))
    if len(beside) == 2:
        return two_slopes(beside[0], beside[1], middle)
    if len(beside) > 2:
        raise RoofError(say("More than two slopes meet at the edge picked. Pick the two slopes of the ridge instead."))
    ridges = [found for found in ridges_among(slopes, beside[0]) if _ends_at(beside[0], edge, found)] if beside else []
    if ridges:
        left, right = sorted(ridges[0].slopes, key=lambda each: (each.of, each.number))
        return two_slopes(left, right, middle)
    what = say("slopes {tilt:.1f}°, as a verge does", tilt=tilt) if tilt > CROOKED_RIDGE else say("is level, as an eave is")
    raise RoofError(say("The edge picked {what}, and has {slope} beside it that looks up: it is no ridge. Pick the ridge, "
                        "or the slopes on both sides of it.", what=what,
                        slope=say("one slope") if beside else say("no slope")))


def _ends_at(slope: Patch, edge: Edge, roof: RoofPlanes) -> bool:
    """Whether a slope ends towards a ridge in this edge, short of it."""
    start, line = roof.ridge[0], unit(sub(roof.ridge[1], roof.ridge[0]))
    return bool(runs_along(replace(slope, edges=(edge,)), start, line))


# ---- found again


def signature(roof: RoofPlanes, frames: Sequence[Placement]) -> str:
    """JSON by which the roof is found again: planes and ridge in the frames of their objects, by the objects' numbers.

    The ridge is told in the frame of the left slope's object.
    """
    slopes = []
    for each in roof.slopes:
        frame = frames[each.of]
        slopes.append([each.of, _rounded(frame.local_direction(each.normal), 9), _rounded(frame.local_point(each.centre), 6)])
    home = frames[roof.left.of]
    return json.dumps({"kind": roof.kind, "slopes": slopes, "ridge": [_rounded(home.local_point(p), 6) for p in roof.ridge]},
                      separators=(",", ":"))


def _rounded(v: Vec, digits: int) -> list[float]:
    return [round(x, digits) + 0.0 for x in v]


def alike(first: str, second: str) -> bool:
    """Whether two signatures are of the same roof, but for the last figures."""
    a, b = _numbers(first), _numbers(second)
    return len(a) == len(b) and all(abs(x - y) < ALIKE for x, y in zip(a, b, strict=True))


def _numbers(text: str) -> list[float]:
    """All numbers of a signature."""
    told = json.loads(text)
    return [*(x for of, normal, point in told["slopes"] for x in (of, *normal, *point)),
            *(x for point in told["ridge"] for x in point)]


def find_again(text: str, slopes: Sequence[Patch], frames: Sequence[Placement]) -> RoofPlanes:
    """The roof of a signature among the slopes that are there now, with its left and right.

    Slopes in the same planes of their objects are taken; where one is not there any more, of all ridges (or slopes) on
    the same objects the nearest.  Raises RoofLost if none is near, RoofError if what is there is no ridge any more.
    """
    told = json.loads(text)
    old = [Patch(frames[of].direction(_vec(normal)), frames[of].point(_vec(point)), 0.0, (), of)
           for of, normal, point in told["slopes"]]
    ridge = [frames[old[0].of].point(_vec(point)) for point in told["ridge"]]
    same = [next((each for each in slopes if each.of == was.of and was.same_plane(each)), None) for was in old]
    if len(old) == 1:
        return one_slope(same[0] or _nearest(old[0], slopes), sub(ridge[1], ridge[0]))
    middle = scale(add(ridge[0], ridge[1]), 0.5)
    if same[0] and same[1]:
        return two_slopes(same[0], same[1], middle)
    return _nearest_ridge(old, slopes, middle)


def _vec(numbers: Sequence[float]) -> Vec:
    x, y, z = numbers
    return (float(x), float(y), float(z))


def _nearest_ridge(old: Sequence[Patch], slopes: Sequence[Patch], middle: Vec) -> RoofPlanes:
    """The ridge whose slopes are nearest to the old ones'."""
    found: list[tuple[float, Patch, Patch]] = []
    for ridge in ridges_among(slopes):
        pair = ridge.slopes
        for left, right in (pair, pair[::-1]):
            far = _change(old[0], left), _change(old[1], right)
            if None not in far:
                found.append((sum(each for each in far if each is not None), left, right))
    if not found:
        raise RoofLost(say("The two slopes that the vent stands on are not there any more, nor any ridge like theirs. "
                           "Pick the roof again."))
    _, left, right = min(found, key=lambda each: each[0])
    return two_slopes(left, right, middle)


def _nearest(old: Patch, slopes: Sequence[Patch]) -> Patch:
    """The slope nearest to an old one.  Raises RoofLost."""
    near = [(change, number) for number, each in enumerate(slopes)
            if (change := _change(old, each)) is not None and each.level == old.level]
    if not near:
        raise RoofLost(say("The slope that the vent stands on is not there any more, nor any like it. Pick the roof again."))
    return slopes[min(near)[1]]


def _change(old: Patch, new: Patch) -> float | None:
    """How far a slope is from an old one, where one degree turned counts as much as 100 mm moved; None if too far."""
    if old.of != new.of or (not old.level and not new.level and angle_between(old.fall, new.fall) > FOUND_TURN):
        return None
    return angle_between(old.normal, new.normal) + abs(new.height(old.centre)) / 100.0
