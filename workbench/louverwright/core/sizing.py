# SPDX-License-Identifier: LGPL-2.1-or-later
"""Rules of the trade for the size of a vent, and the air that it lets through."""

from __future__ import annotations

import math

MM_PER_INCH, MM_PER_FOOT = 25.4, 304.8

#: A ridge longer than this takes several vents (48 ft; common practice, no source).
LONGEST_FOR_ONE = 48.0 * MM_PER_FOOT

#: Share of the opening that a mesh leaves free (published multipliers of gross to net area, inverted: JLC field
#: guide to roof ventilation).
SCREEN_FACTORS = {"1/4 in hardware cloth": 1.0, "1/8 in mesh": 0.8, "#16 mesh": 0.5}


def width_from_ridge(ridge: float, rule: float, vents: int = 1) -> float:
    """Width of each vent (mm) on a ridge of ``ridge`` mm: ``rule`` inches for each foot of its share.

    Common practice: 1¼ to 1½ in a foot, 1 in on low roofs.
    """
    return ridge / vents * rule / 12.0


def vents_advised(ridge: float) -> int:
    """How many vents a ridge (mm) takes, none of them serving more than 48 ft (common practice)."""
    return max(1, math.ceil(ridge / LONGEST_FOR_ONE - 1e-9))


def target_area(floor_area: float, ratio: float = 150.0) -> float:
    """Net free area (same unit as the floor's) for one part in ``ratio`` of the floor.

    1/150 is the rule for attics of dwellings (IRC R806.2); a barn that is open to the roof follows agricultural rules.
    """
    return floor_area / ratio


def net_free_area(gap: float, clear_width: float, gaps: int, sides: int, screen_factor: float = 1.0) -> float:
    """Net free area of the louvers (mm²): gap × clear width × gaps × sides × screen factor.

    The definition of AMCA 500-L with head and sill gaps closed: the sum of the least gaps
    between blades times the clear width.
    """
    return gap * clear_width * gaps * sides * screen_factor
