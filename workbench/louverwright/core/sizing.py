# SPDX-License-Identifier: LGPL-2.1-or-later
"""Rules of the trade for the size of a vent, and the air that it lets through."""

from __future__ import annotations

import math
from dataclasses import dataclass

MM_PER_INCH, MM_PER_FOOT = 25.4, 304.8

#: A ridge longer than this takes several vents (48 ft; common practice, no source).
LONGEST_FOR_ONE = 48.0 * MM_PER_FOOT

#: Share of the opening that a mesh leaves free: one over the gross area that is needed for 1 of net area (JLC field
#: guide to roof ventilation). That guide's multipliers for wood louvers are left out: they count the louver once
#: more, and here its gaps are measured.
SCREEN_FACTORS = {"1/4 in hardware cloth": 1.0, "1/8 in mesh": 0.8, "#16 mesh": 0.5}

#: Floor area to one part of net free area (IRC R806.2 for attics of dwellings). The smaller share holds only where
#: the code's conditions are met, which differ between editions.
USUAL_RATIO, LEAST_RATIO = 150.0, 300.0

#: Opening at the ridge for each unit of building width: 2 in for 10 ft (extension advice on barn ventilation).
RIDGE_SLOT = 2.0 / 120.0


def width_from_ridge(ridge: float, rule: float, vents: int = 1) -> float:
    """Width of each vent (mm) on a ridge of ``ridge`` mm: ``rule`` inches for each foot of its share.

    Common practice: 1¼ to 1½ in a foot, 1 in on low roofs.  Raises ValueError for what is not above 0.
    """
    _above_nought("length of ridge", ridge, "mm")
    _above_nought("width rule", rule, "in for each foot")
    _above_nought("number of vents", vents, "")
    return ridge / vents * rule / 12.0


def vents_advised(ridge: float) -> int:
    """How many vents a ridge (mm) takes, none of them serving more than 48 ft (common practice).

    Raises ValueError for a ridge that is not above 0.
    """
    _above_nought("length of ridge", ridge, "mm")
    return math.ceil(ridge / LONGEST_FOR_ONE - 1e-9)


def target_area(floor_area: float, ratio: float = USUAL_RATIO) -> float:
    """Net free area (same unit as the floor's) for one part in ``ratio`` of the floor.

    1/150 is the rule for attics of dwellings, and 1/300 under its conditions (IRC R806.2); a barn that is open to the
    roof follows agricultural rules (``target_from_building``).  Raises ValueError for what is not above 0.
    """
    _above_nought("floor area", floor_area, "")
    _above_nought("ratio", ratio, "")
    return floor_area / ratio


def target_from_building(width: float, ridge: float, vents: int = 1) -> float:
    """Free area of each vent (mm²) that equals an open ridge: 2 in of slot for 10 ft of building width.

    ``width`` is the building's and ``ridge`` the length of the ridge that the vents share (mm).  Extension advice on
    barn ventilation.  Raises ValueError for what is not above 0.
    """
    _above_nought("width of the building", width, "mm")
    _above_nought("length of ridge", ridge, "mm")
    _above_nought("number of vents", vents, "")
    return RIDGE_SLOT * width * ridge / vents


def net_free_area(gap: float, clear_width: float, gaps: int, sides: int, screen_factor: float = 1.0) -> float:
    """Net free area of the louvers (mm²): gap × clear width × gaps × sides × screen factor; lengths in mm.

    The definition of AMCA 500-L with head and sill gaps closed: the sum of the least gaps between blades times the
    clear width.  A gap or width of 0 or less lets nothing through.

    Raises ValueError for counts under 0 and for a screen factor that is not above 0 and at most 1.
    """
    if gaps < 0 or sides < 0:
        raise ValueError(f"There are {gaps} gaps on {sides} sides; neither may be under 0. Count them again.")
    if not 0.0 < screen_factor <= 1.0:
        raise ValueError(f"The screen factor is {screen_factor:g}; it must be above 0 and at most 1. Take one from "
                         "the list of screens.")
    return max(0.0, gap) * max(0.0, clear_width) * gaps * sides * screen_factor


@dataclass(frozen=True)
class AirReport:
    """Areas that the air passes one after another (mm²), and the area wanted; a ``target`` of 0 is none.

    Openings in series count as the smallest (AMCA 500-L on combined louvers).
    """

    louvers: float
    throat: float
    roof_opening: float
    target: float = 0.0

    @property
    def least(self) -> float:
        """The smallest of the three: what the vent is worth."""
        return min(self.louvers, self.throat, self.roof_opening)

    @property
    def narrowest(self) -> str:
        """Which of them is the smallest: 'louvers', 'throat' or 'roof opening'; of equals the first."""
        areas = {"louvers": self.louvers, "throat": self.throat, "roof opening": self.roof_opening}
        return min(areas, key=lambda name: areas[name])

    @property
    def missing(self) -> float:
        """How much the target is missed by; 0 if it is met or there is none."""
        return max(0.0, self.target - self.least)

    @property
    def meets_target(self) -> bool:
        """Whether the target is met; true where there is none."""
        return self.least >= self.target


def _above_nought(name: str, value: float, unit: str) -> None:
    if not (math.isfinite(value) and value > 0.0):
        raise ValueError(f"The {name} is {f'{value:g} {unit}'.rstrip()}; it must be above 0. Give it as measured.")
