# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is lifted to the roof: each stage's weight, size and centre, the people it takes, slings, and the wind on it.

Pieces that are left out of the vent are not lifted with it.  Figures for planning only: what holds the vent in wind, and
any lifting gear, is for those who are licensed for it.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass

from .assembly import Assembly, Part, board_shell
from .figures import weight_and_centre
from .geometry import Vec
from .kinds import STAGES
from .sizes import Sizes
from .spec import Spec

INCH, POUND, GRAVITY = 25.4, 0.45359237, 9.80665
#: The load constant of the lifting equation: 51 lb (23 kg), under the best of conditions.
LOAD_CONSTANT = 51.0 * POUND
#: How a stage is lifted by hand where nothing else is said (mm): held 15 in before the ankles, from 30 in up by 30 in.
HELD_AT, LIFTED_FROM, LIFTED_BY = 15.0 * INCH, 30.0 * INCH, 30.0 * INCH
#: As many people as can stand round a stage and hold it (common practice).
MOST_PEOPLE = 4
#: Slings stand this steep from the level (degrees), and of four legs two are taken to carry (common practice).
SLING_ANGLE, CARRYING_LEGS = 60.0, 2
#: Wind on a rooftop structure: force coefficients, lateral and uplift, and what stands for exposure C at 30 ft (all others 1).
LATERAL, UPLIFT, EXPOSURE, DIRECTION = 1.9, 1.5, 0.98, 0.85
#: Pressure of wind of 1 m/s (N/m²): half the density of standard air.
PRESSURE = 0.613
#: Stock whose parts can be brought up by themselves and put on at the roof.
LOOSE = ("cladding_stock", "corner_board_stock", "slat_stock", "stile_stock", "screen_stock", "sheathing_stock", "trim_stock")


@dataclass(frozen=True)
class Load:
    """A stage, or the whole: weight (kg), size along, across and up (mm), and centre of gravity (mm, assembly frame).

    ``low`` is the height of its lowest point over the ridge (mm); ``loose`` what of its weight can be brought up by itself
    (kg).
    """

    name: str
    weight: float
    size: Vec
    centre: Vec
    low: float
    loose: float

    @property
    def off_axis(self) -> float:
        """How far the centre of gravity lies from the vent's axis, level (mm)."""
        return math.hypot(self.centre[0], self.centre[1])


def loads(assembly: Assembly) -> tuple[Load, ...]:
    """The stages from below, and the whole; a stage of which nothing is made is missing."""
    stages = [(name.capitalize(), [part for part in assembly.parts if part.kind.stage == stage])
              for stage, (_, name) in STAGES.items()]
    return tuple(_load(name, parts) for name, parts in (*stages, ("The whole vent", list(assembly.parts))) if parts)


def _load(name: str, parts: list[Part]) -> Load:
    weight, centre = weight_and_centre(parts)
    low, high = _extents(parts)
    size = (high[0] - low[0], high[1] - low[1], high[2] - low[2])
    loose = weight_and_centre(part for part in parts if part.kind.stock in LOOSE)[0]
    return Load(name, weight, size, centre, low[2], loose)


def _extents(parts: Iterable[Part]) -> tuple[Vec, Vec]:
    points = [piece.placement.point(p) for part in parts for p in board_shell(part.board).points for piece in part.pieces]
    return ((min(p[0] for p in points), min(p[1] for p in points), min(p[2] for p in points)),
            (max(p[0] for p in points), max(p[1] for p in points), max(p[2] for p in points)))


def recommended_weight(held: float, start: float, lift: float, turned: float = 0.0) -> float:
    """What one person may lift (kg) by the lifting equation, seldom and with good handles (their multipliers 1).

    ``held``: from the ankles to the hands, level; ``start``: height of the hands; ``lift``: how far up (mm); ``turned``:
    how far the body is turned (degrees).  RWL = LC · HM · VM · DM · AM, NIOSH 94-110.  Multipliers are never above 1; 0 where
    the equation allows no lift: held beyond 25 in, from above 70 in, lifted by more than 70 in, or turned beyond 135°.
    """
    h, v, d = held / INCH, start / INCH, lift / INCH
    if h > 25.0 or not 0.0 <= v <= 70.0 or d > 70.0 or not 0.0 <= turned <= 135.0:
        return 0.0
    level, height = 10.0 / max(h, 10.0), 1.0 - 0.0075 * abs(v - 30.0)
    way = min(1.0, 0.82 + 1.8 / max(d, 10.0))
    return LOAD_CONSTANT * level * height * way * (1.0 - 0.0032 * turned)


def each_lifts(spec: Spec) -> float:
    """What each person lifts (kg): as given, or by the lifting equation for a stage held before one."""
    return float(spec.lift_limit) or recommended_weight(HELD_AT, LIFTED_FROM, LIFTED_BY)


def people(weight: float, each: float) -> int:
    """How many it takes to lift a weight (kg) at ``each`` kg: two at least for anything as large as a stage."""
    return max(2, math.ceil(weight / each - 1e-9))


def sling_force(load: Load, spread: float) -> float:
    """Tension in the heavier sling leg (N), from lifting points ``spread`` mm apart: W · (1 + 2e / s) / (n · sin θ).

    Statics: n legs carry, θ is their slope from the level, and a centre e off the axis loads the near legs more.
    """
    near = 1.0 + 2.0 * load.off_axis / spread
    return load.weight * GRAVITY * near / (CARRYING_LEGS * math.sin(math.radians(SLING_ANGLE)))


def passes(load: Load, opening: float) -> bool:
    """Whether a stage goes upright through an opening so wide (mm), or between rails so far apart."""
    return min(load.size[0], load.size[1]) <= opening


def velocity_pressure(speed: float) -> float:
    """qh (N/m²) at a wind speed (m/s): 0.613 · Kz · Kzt · Kd · Ke · V², ASCE 7; Kz 0.98, Kd 0.85, the others 1."""
    return PRESSURE * EXPOSURE * DIRECTION * speed * speed


def wind_forces(at: Sizes, whole: Load, speed: float) -> tuple[float, float]:
    """Lateral force on the vent above the ridge, and uplift on its roof (N): F = qh · (GCr) · A, for information only."""
    side = max(whole.size[0], whole.size[1]) * (whole.low + whole.size[2]) * 1e-6
    roof = sum(at.roof_half(side) * at.roof_reach(side) for side in range(at.plan.sides)) * 1e-6
    return velocity_pressure(speed) * LATERAL * side, velocity_pressure(speed) * UPLIFT * roof
