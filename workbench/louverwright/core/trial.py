# SPDX-License-Identifier: LGPL-2.1-or-later
"""What two offcuts close to that are sawn at one compound setting.

A stick with square edges is cut through at the setting, and its offcut rolled half round about its length: so it is the mirror
image, in the cut, of the piece that was kept.  Held cut on cut, the two show both scales: the angle between their faces the
bevel, with the angle between their lengths the mitre.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from .assembly import CORNER_CUT, CROSSCUT, Cut
from .geometry import X_AXIS, Z_AXIS, Plane, Vec, dot, scale, sub
from .saw import SQUARE, setting


@dataclass(frozen=True)
class Closing:
    """The angles of a closed pair in degrees, 180 for a straight line.

    ``faces``: between the two longer faces through the wood, and so between the two shorter ones over the air, square to their
    joint.  ``lengths``: between the arrises that meet at a corner of the joint.
    """

    faces: float
    lengths: float


def closing(plane: Plane) -> Closing:
    """What the pair closes to that is cut at ``plane`` (board frame)."""
    return Closing(180.0 - _turned_by_mirror(Z_AXIS, plane), _turned_by_mirror(X_AXIS, plane))


def _turned_by_mirror(way: Vec, plane: Plane) -> float:
    """The angle between a direction and its mirror image in a plane (degrees)."""
    image = sub(way, scale(plane.normal, 2.0 * dot(way, plane.normal)))
    return math.degrees(math.acos(max(-1.0, min(1.0, dot(way, image)))))


def is_compound(cut: Cut) -> bool:
    """True for a crosscut or a corner cut with both scales off their zero."""
    if cut.kind not in (CROSSCUT, CORNER_CUT):
        return False
    angles = setting(cut.planes[0])
    return abs(angles.mitre) >= SQUARE and abs(angles.bevel) >= SQUARE
