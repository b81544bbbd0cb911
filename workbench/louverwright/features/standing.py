# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where an object stands in the whole document, through all containers round it."""

from __future__ import annotations

import FreeCAD


def containers(obj: FreeCAD.DocumentObject) -> list[FreeCAD.DocumentObject]:
    """The parts, bodies and other containers with a placement that an object stands in, innermost first."""
    found = []
    group = obj.getParentGeoFeatureGroup()
    while group is not None:
        found.append(group)
        group = group.getParentGeoFeatureGroup()
    return found


def container_placement(obj: FreeCAD.DocumentObject) -> FreeCAD.Placement:
    """The global placement of the frame that an object's own placement counts in.

    Multiplied up here, for FreeCAD's own question is deprecated, and not to be asked while a document is recomputed.
    """
    place = FreeCAD.Placement()
    for group in containers(obj):
        place = group.Placement.multiply(place)
    return place


def in_container(obj: FreeCAD.DocumentObject, place: FreeCAD.Placement) -> FreeCAD.Placement:
    """A global placement as an object's own has to be, for the containers that it stands in."""
    return container_placement(obj).inverse().multiply(place)


def global_placement(obj: FreeCAD.DocumentObject) -> FreeCAD.Placement:
    """Where an object stands in the whole document."""
    return container_placement(obj).multiply(obj.Placement)


def same_place(a: FreeCAD.Placement, b: FreeCAD.Placement, within: float = 1e-9) -> bool:
    """Whether two placements are one: points within so many mm, turns within so many radians.

    Copies are asked: FreeCAD takes some questions to a property's own placement for changes of it.
    """
    a, b = FreeCAD.Placement(a), FreeCAD.Placement(b)
    return bool(a.Base.distanceToPoint(b.Base) <= within and a.Rotation.isSame(b.Rotation, within))
