# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where two pieces meet: the contact of every joint as plane polygons in the vent, and points to drive a screw through.

All in mm and mm², in the assembly frame.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property, lru_cache

from .assembly import LINE_CONTACT, Assembly, Joint
from .geometry import Vec, add, cross, dot, length, newell, scale, sub, unit
from .joints import GAP_ERROR, LEAST_CONTACT, Stands, all_standing, distance, facing, shared_polygon, way_of

Polygon = tuple[Vec, ...]
#: Stretches of a chord that are nearer than this are one (mm): cells of one board meet there.
SAME_STRETCH = 0.01


@dataclass(frozen=True)
class Contact:
    """One plane in which two pieces meet: convex polygons in the first piece's face, which looks along ``normal``."""

    normal: Vec
    polygons: tuple[Polygon, ...]
    area: float

    @cached_property
    def along(self) -> Vec:
        """Direction of the contact's longest edge."""
        edges = (sub(b, a) for polygon in self.polygons for a, b in _edges(polygon))
        return unit(max(edges, key=length))

    @cached_property
    def across(self) -> Vec:
        """Direction in the contact square to ``along``."""
        return cross(self.normal, self.along)

    def span(self, way: Vec) -> tuple[float, float]:
        """Least and greatest distance of the contact's corners along a unit vector."""
        reach = [dot(way, p) for polygon in self.polygons for p in polygon]
        return min(reach), max(reach)

    @property
    def length(self) -> float:
        """How long the contact is along its longest edge."""
        low, high = self.span(self.along)
        return high - low

    @property
    def width(self) -> float:
        """How wide it is square to that."""
        low, high = self.span(self.across)
        return high - low

    def chord(self, station: float) -> tuple[float, float] | None:
        """The longest stretch of the contact square to ``along`` at a distance along it; None where there is none."""
        stretches = sorted(stretch for polygon in self.polygons
                           if (stretch := _stretch(polygon, self.along, self.across, station)))
        joined: list[tuple[float, float]] = []
        for low, high in stretches:
            if joined and low <= joined[-1][1] + SAME_STRETCH:
                joined[-1] = (joined[-1][0], max(high, joined[-1][1]))
            else:
                joined.append((low, high))
        return max(joined, key=lambda each: each[1] - each[0], default=None)

    def point(self, station: float, over: float) -> Vec:
        """The contact's point at distances along ``along`` and ``across``."""
        height = dot(self.normal, self.polygons[0][0])
        return add(add(scale(self.along, station), scale(self.across, over)), scale(self.normal, height))


@dataclass(frozen=True)
class Seam:
    """A joint with its contacts, the greatest first."""

    joint: Joint
    contacts: tuple[Contact, ...]

    @property
    def main(self) -> Contact:
        """The greatest contact: what screws go through, and what a bead of sealant follows."""
        return self.contacts[0]

    @property
    def area(self) -> float:
        """All contacts together."""
        return sum(contact.area for contact in self.contacts)


def _edges(polygon: Polygon) -> Iterator[tuple[Vec, Vec]]:
    return zip(polygon, (*polygon[1:], polygon[0]), strict=True)


def _stretch(polygon: Polygon, along: Vec, across: Vec, station: float) -> tuple[float, float] | None:
    """Where the line at a station crosses a convex polygon, as distances along ``across``."""
    hits = []
    for a, b in _edges(polygon):
        first, second = dot(along, a) - station, dot(along, b) - station
        if (first > 0.0) != (second > 0.0):
            share = first / (first - second)
            hits.append(dot(across, add(a, scale(sub(b, a), share))))
    return (min(hits), max(hits)) if len(hits) > 1 else None


@lru_cache(maxsize=8)
def seams(assembly: Assembly) -> tuple[Seam, ...]:
    """The seam of every joint of pieces that are made, line contacts apart, in the joints' order."""
    standing = {each.piece.id: each for each in all_standing(assembly.parts)}
    found = []
    for joint in assembly.joints:
        if joint.kind != LINE_CONTACT and joint.first in standing and joint.second in standing:
            contacts = tuple(contacts_of(standing[joint.first], standing[joint.second], joint.gap))
            if contacts:
                found.append(Seam(joint, contacts))
    return tuple(found)


def contacts_of(a: Stands, b: Stands, gap: float) -> Sequence[Contact]:
    """Every plane in which two pieces look at each other across ``gap``, the greatest first; traces are left out."""
    planes: dict[tuple[Vec, float], list[Polygon]] = {}
    for one, other in facing(a.patches, b.patches):
        if abs(distance(one, other) - gap) < GAP_ERROR and (
                shared := shared_polygon(one.corners, other.corners, one.normal)):
            planes.setdefault((way_of(one.normal), round(one.offset, 2)), []).append(shared)
    contacts = [Contact(unit(way), tuple(polygons), sum(length(newell(each)) / 2.0 for each in polygons))
                for (way, _), polygons in planes.items()]
    return sorted((each for each in contacts if each.area > LEAST_CONTACT), key=lambda each: -each.area)
