# SPDX-License-Identifier: LGPL-2.1-or-later
"""Several vents on one ridge: where their axes stand, and what keeps them from standing there.

Distances run along the unbroken ridge in mm, as a tape hooked over its −X end reads them: 0 is that end.
"""

from __future__ import annotations

import math
from collections.abc import Iterator

from .plan import Plan
from .saying import say
from .sizes import Sizes
from .spec import Finding, Spec, least_text, length_text, most_text

#: Ridge to stay between the walls of two vents, so that covering and flashing can be laid (mm; common practice).
LEAST_BETWEEN = 300.0
_NOISE = 1e-6


def vents_alike(spec: Spec) -> int:
    """How many vents are made by this spec."""
    return int(spec.vents)


def end_distance(spec: Spec) -> float:
    """From each end of the ridge to the axis of the nearest vent (mm): as given, or half a vent's share.

    One vent stands in the middle.  0 where no ridge length is given.
    """
    if spec.end_distance and spec.vents > 1 and spec.ridge_length:
        return float(spec.end_distance)
    return float(spec.ridge_length) / (2.0 * vents_alike(spec))


def spacing(spec: Spec) -> float:
    """From axis to axis (mm); 0 for one vent, and where no ridge length is given."""
    gaps = vents_alike(spec) - 1
    return (float(spec.ridge_length) - 2.0 * end_distance(spec)) / gaps if gaps else 0.0


def positions(spec: Spec) -> tuple[float, ...]:
    """The vents' axes (mm, 0 at the ridge's −X end), evenly spaced; () where no ridge length is given."""
    if not spec.ridge_length:
        return ()
    first, step = end_distance(spec), spacing(spec)
    return tuple(first + number * step for number in range(vents_alike(spec)))


def reach_along(plan: Plan, r: float) -> float:
    """How far a plan whose sides are ``r`` from the axis reaches along the ridge from there (mm)."""
    return max(abs(plan.corner_point(number, r)[0]) for number in range(plan.sides))


def row_findings(spec: Spec, at: Sizes) -> Iterator[Finding]:
    """Why several vents cannot stand on the ridge as they are wanted."""
    count, ridge = vents_alike(spec), float(spec.ridge_length)
    if count == 1:
        return
    if not ridge:
        yield Finding("row", "ridge_length", say("not given"),
                      say("{count} vents share the ridge and are spaced along it", count=count),
                      say("Give the length of unbroken ridge, or make one vent."))
        return
    roof = max(abs(at.roof_corner(number)[0]) for number in range(at.plan.sides))
    least = max(2.0 * reach_along(at.plan, at.base.width / 2.0) + LEAST_BETWEEN, 2.0 * roof)
    if spec.end_distance:
        yield from _given(spec, roof, least)
    elif spacing(spec) < least - _NOISE:
        yield _too_many(spec, least, ridge / least)


def _given(spec: Spec, roof: float, least: float) -> Iterator[Finding]:
    """Findings about an end distance that was given; ``roof`` is half the roof, ``least`` the least spacing."""
    count, ridge, end = vents_alike(spec), float(spec.ridge_length), float(spec.end_distance)
    most = (ridge - (count - 1) * least) / 2.0
    fits = most >= roof
    if end < roof - _NOISE:
        cure = (say("Set it to {least} or more.", least=least_text(roof)) if fits else
                say("Make fewer vents, or narrower ones."))
        yield Finding("end distance", "end_distance", length_text(end),
                      say("the vent's roof reaches {roof} from its axis and would stand out over the end of the ridge",
                          roof=least_text(roof)), cure)
    elif end >= ridge / 2.0:
        cure = (say("Set it to {most} or less.", most=most_text(most)) if fits else
                say("Make it smaller, and make fewer or narrower vents."))
        yield Finding("end distance", "end_distance", length_text(end),
                      say("it reaches the middle of the ridge, {ridge} from each end, and {count} vents stand between",
                          ridge=length_text(ridge / 2.0), count=count), cure)
    elif spacing(spec) < least - _NOISE and fits:
        yield Finding("spacing", "end_distance", length_text(end),
                      say("the {count} vents would stand {spacing} from axis to axis and need {least}", count=count,
                          spacing=length_text(spacing(spec)), least=least_text(least)),
                      say("Set it to {most} or less.", most=most_text(most)))
    elif spacing(spec) < least - _NOISE:
        yield _too_many(spec, least, (ridge - 2.0 * end) / least + 1.0)


def _too_many(spec: Spec, least: float, fit: float) -> Finding:
    """More vents than the ridge holds; ``fit`` of their width would go on it."""
    number = math.floor(fit + _NOISE)
    cure = (say("Set it to {most} or less, or make the vents narrower.", most=number) if spec.width and number else
            say("Make fewer vents, or narrower ones."))
    return Finding("spacing", "vents", str(vents_alike(spec)),
                   say("they would stand {spacing} from axis to axis and need {least}, for their width with 300 mm "
                       "between and for their roofs", spacing=length_text(spacing(spec)), least=least_text(least)), cure)
