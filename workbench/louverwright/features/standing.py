# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where an object stands in the whole document, through all containers round it."""

from __future__ import annotations

import FreeCAD


def global_placement(obj: FreeCAD.DocumentObject) -> FreeCAD.Placement:
    """An object's placement, times those of all groups with a place of their own that it is in.

    FreeCAD's own question has another name in each generation, and is not to be asked while recomputing.
    """
    placement = obj.Placement
    parent = obj.getParentGeoFeatureGroup()
    while parent is not None:
        placement = parent.Placement.multiply(placement)
        parent = parent.getParentGeoFeatureGroup()
    return placement
