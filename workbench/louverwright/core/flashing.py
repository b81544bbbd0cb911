# SPDX-License-Identifier: LGPL-2.1-or-later
"""The metal round a vent's base: which piece goes where on the roof, how it is bent, how long and how wide it is cut.

Sizes are common practice where no source is named; the roofing's maker's instructions and local code go before them.  All in
mm and degrees.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from .geometry import Vec, dot
from .plan import ENDS
from .sizes import Sizes
from .spec import Spec

APRON, STEP, SIDE_PAN, BACK_PAN, SADDLE, COUNTER = ("apron", "step flashing", "side pan", "back pan", "ridge saddle",
                                                   "counter-flashing")
#: From the lowest to the last.
ORDER = (APRON, STEP, SIDE_PAN, BACK_PAN, SADDLE, COUNTER)
#: Up the wall and out on the roof: 4 in each (IRC R905.2.8.3, step flashing; from memory); an apron covers 6 in of the roof.
UP, OUT, APRON_OUT = 101.6, 101.6, 152.4
#: A back pan reaches so far up the slope; a saddle so far down either slope from the ridge.
BACK_OUT, SADDLE_DOWN = 305.0, 203.0
#: Ends and lengths lap by so much, steps lap the one below by that much; edges are hemmed.
LAP, STEP_LAP, HEM = 101.6, 50.8, 12.7
#: Counter-flashing: what shows, and what goes into the kerf or under the bead.
COUNTER_FACE, COUNTER_IN = 50.8, 12.7
#: A joint line that leans less than this from the eave's direction, or from the fall, counts as that (cosine).
SQUARE_ON = 0.35


@dataclass(frozen=True)
class Flashing:
    """Pieces of one kind on one side: how many, the length of each, the two legs and the angle between them.

    ``up`` lies on the wall and ``out`` on the roof; the angle is the open one (90° on a level roof).  For a step, ``length``
    is up the slope.
    """

    name: str
    side: int
    count: int
    length: float
    up: float
    out: float
    angle: float

    @property
    def girth(self) -> float:
        """Width of the metal before it is bent, a hem along the outer edge of what lies on the roof."""
        return self.up + self.out + (HEM if self.out else 0.0)


@dataclass(frozen=True)
class FootLine:
    """A side's foot on one slope: its length up or along the slope, how it lies to the fall and to the roof."""

    side: int
    slope: int
    length: float
    falls: float
    angle: float


def foot_lines(at: Sizes) -> tuple[FootLine, ...]:
    """Where the cladding meets the roof, side by side, each parted under the ridge.

    ``falls`` is 1 where the side looks down the slope, −1 where it looks up it, 0 where it runs up and down.
    """
    return tuple(line for side in range(at.plan.sides) for line in _foot_lines(at, side))


def _foot_lines(at: Sizes, side: int) -> Iterator[FootLine]:
    r = at.base.width / 2.0 + at.base.corner_t
    ends = sorted((at.plan.corner_point(at.plan.corner(side, end), r) for end in ENDS), key=lambda p: p[1])
    stops = [ends[0], ends[1]]
    ridge = at.roof.ridge
    if not at.roof.single and ends[0][1] < ridge - 1.0 and ends[1][1] > ridge + 1.0:
        share = (ridge - ends[0][1]) / (ends[1][1] - ends[0][1])
        stops.insert(1, (ends[0][0] + share * (ends[1][0] - ends[0][0]), ridge, 0.0))
    for a, b in pairwise(stops):
        left = at.roof.single or (a[1] + b[1]) / 2.0 > ridge
        fall = (0.0, 1.0, 0.0) if left else (0.0, -1.0, 0.0)
        pitch = math.radians(at.roof.left if left else at.roof.right)
        up: Vec = (0.0, fall[1] * math.sin(pitch), math.cos(pitch))
        rise = (b[1] - a[1]) * math.tan(pitch)
        yield FootLine(side, 0 if left else 1, math.hypot(math.dist(a[:2], b[:2]), rise), dot(at.plan.u(side), fall),
                       90.0 + math.degrees(math.asin(dot(at.plan.u(side), up))))


def flashings(spec: Spec, at: Sizes) -> tuple[Flashing, ...]:
    """Every piece, in the order in which it is laid: lowest first."""
    found = [piece for line in foot_lines(at) for piece in _pieces(spec, line)]
    if not at.roof.single:
        found += [Flashing(SADDLE, side, 1, 2.0 * SADDLE_DOWN, UP, OUT, 90.0) for side in range(at.plan.sides)
                  if len([line for line in foot_lines(at) if line.side == side]) > 1]
    return tuple(sorted(found, key=lambda piece: (ORDER.index(piece.name), piece.side)))


def _pieces(spec: Spec, line: FootLine) -> Iterator[Flashing]:
    """What lies along one foot line: below it an apron, beside it steps or a pan, above it a back pan; and its cover."""
    if line.falls > SQUARE_ON:
        yield Flashing(APRON, line.side, 1, line.length + 2.0 * LAP, UP, APRON_OUT, line.angle)
    elif line.falls < -SQUARE_ON:
        yield Flashing(BACK_PAN, line.side, 1, line.length + 2.0 * LAP, UP, BACK_OUT, line.angle)
    elif spec.course_exposure:
        exposure = float(spec.course_exposure)
        yield Flashing(STEP, line.side, math.ceil(line.length / exposure) + 1, exposure + STEP_LAP, UP, OUT, line.angle)
    else:
        yield Flashing(SIDE_PAN, line.side, 1, line.length + 2.0 * LAP, UP, OUT, line.angle)
    yield Flashing(COUNTER, line.side, 1, line.length + LAP, COUNTER_FACE + COUNTER_IN, 0.0, line.angle)
