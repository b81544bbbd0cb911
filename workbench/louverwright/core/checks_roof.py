# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the barn's roof asks of a vent: drops that go together, and legs that are not too long for their thickness."""

from __future__ import annotations

import math
from collections.abc import Iterator

from .dimensions import pitches, plan_of, square_of
from .feet import foot, ground
from .plan import RIGHT
from .saying import say
from .sizes import Sizes
from .spec import Finding, Spec, length_text, most_text
from .twist import DROPS, drops, readings

#: A slope may drop so much further at one end of the vent than at the other (mm; common practice: more is no twist to
#: scribe away but a roof to be put right).
MOST_TWIST = 50.0
#: A roof this steep is none to stand a vent on (degrees; the limit of the pitches themselves).
STEEPEST = 75.0
#: A leg may stand free so many times its thickness (the limit of timber codes for a post that is held at its ends
#: only; from memory).
MOST_SLENDER = 50.0


def readings_findings(spec: Spec) -> Iterator[Finding]:
    """Drops that do not go together, or give no roof to stand a vent on."""
    given = drops(spec)
    if given and spec.seat == "one slope":
        name = next(iter(given))
        yield Finding("drops", name, length_text(given[name]),
                      say("drops are read from a ridge, and the vent sits on one slope"),
                      say("Set all four to 0 and give the pitch, or seat the vent on the ridge."))
        return
    if given and len(given) < len(DROPS):
        for name in (name for name in DROPS.values() if name not in given):
            yield Finding("drops", name, length_text(0.0), say("it is not measured, and the drops at the other corners "
                                                               "mean nothing without it"),
                          say("Give all four, or set all four to 0."))
        return
    found = readings(spec, plan_of(spec), square_of(spec))
    if not found:
        return
    for hand, pitch, twist in ((1, found.pitch_left, found.twist_left), (-1, found.pitch_right, found.twist_right)):
        high, low = sorted((DROPS[hand, end] for end in (1, -1)), key=lambda name: given[name])
        if pitch >= STEEPEST:
            yield Finding("drops", high, length_text(given[high]),
                          say("it makes a slope of {pitch:.1f}°, and a slope must be less than {steepest:g}°", pitch=pitch,
                              steepest=STEEPEST), say("Measure again, plumb, at the corner of the vent."))
        if twist > MOST_TWIST:
            yield Finding("twist", low, length_text(given[low]),
                          say("the slope drops {twist} further there than at its other end, and a twist may be "
                              "{most_twist} at most", twist=length_text(twist), most_twist=length_text(MOST_TWIST)),
                          say("Level the seat first, or measure again."))


def steeper_field(spec: Spec, at: Sizes) -> tuple[str, str]:
    """The parameter that the steeper slope comes from, and its value."""
    left = at.roof.left >= at.roof.right
    if not at.readings:
        return ("pitch_left" if left else "pitch_right"), f"{max(pitches(spec)):.1f}°"
    given = drops(spec)
    name = min((DROPS[1 if left else -1, end] for end in (1, -1)), key=lambda each: given[each])
    return name, length_text(given[name])


def _slender(spec: Spec, at: Sizes) -> Iterator[Finding]:
    """No leg stands free, from its foot to its lowest rail, for too many times its thickness."""
    base = at.base
    free = max(_free(spec, at, corner) for corner in range(at.plan.sides))
    most = MOST_SLENDER * base.frame_t
    rail = at.plan.sides == 4 and not at.plan.turned and not spec.bottom_rail_height
    if free > most:
        yield Finding("slender leg", "base_height", length_text(base.top),
                      say("a leg would stand {free} below its lowest rail, and {frame_t} thick it may stand {most}",
                          free=length_text(free), frame_t=length_text(base.frame_t), most=most_text(most)),
                      say("Lower the base, make the vent narrower, or choose thicker frame stock, or give the gable sides a "
                          "second rail.") if rail else
                      say("Lower the base, make the vent narrower, or choose thicker frame stock."))


def _free(spec: Spec, at: Sizes, corner: int) -> float:
    """From the lowest point of a corner's feet to the lowest rail that holds one of its legs (mm)."""
    base, plan = at.base, at.plan
    rail = base.top - base.frame_w
    if spec.bottom_rail_height and (plan.gable(corner) or plan.gable(plan.neighbour(corner, RIGHT))):
        rail = min(rail, float(spec.bottom_rail_height))
    ys = [point[1] for point in ground(at, corner)]
    return rail - min(seat_height(spec, at, y) for y in ys) + foot(spec, at, corner).wood


def seat_height(spec: Spec, at: Sizes, y: float) -> float:
    """Height of the nominal seat at ``y`` (mm): below the covering by the seat's depth, square to the slope."""
    away = y - at.roof.ridge
    pitch = math.radians(at.roof.left if away > 0 else at.roof.right)
    return at.roof.height(y) - float(spec.seat_depth) / math.cos(pitch)


CHECKS = (_slender,)
