# SPDX-License-Identifier: LGPL-2.1-or-later
"""A vent's seat on a roof that is drawn: its pitches and ridge are read from there, and it stands where it is told to.

The vent reads the roof each time it is recomputed, so it follows.  A roof that is lost leaves the vent as it was; the
sentence that says so becomes the vent's status.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Any

import FreeCAD

from ..core.parameters import BY_NAME
from ..core.roof_planes import BACK, FRONT, MIDDLE, RIDGE, RoofPlanes
from ..core.row import end_distance
from ..core.spec import Spec
from .properties import Row, ensure
from .roof_link import (
    GROUP,
    SIGNATURE,
    TAKEN,
    ensure_roof_properties,
    follow,
    is_linked,
    link_to,
    linked_picks,
    unlink,
)
from .roof_reading import RoofReading, placement_on, read_again, turned
from .roof_watch import watch
from .standing import in_container, same_place

ALONG, END = "AlongRidge", "FromEnd"
ENDS = (MIDDLE, BACK, FRONT)
ROWS = (
    Row("App::PropertyDistance", ALONG, GROUP, "On a roof that is drawn: how far along the ridge the vent's axis stands from "
        "the end that FromEnd names. Several vents stand by EndDistance."),
    Row("App::PropertyEnumeration", END, GROUP, "Where AlongRidge counts from: the middle of the ridge (towards the front), "
        "its back end, or its front end, which the vent's +X axis looks at."),
)
#: The parameters that are read from the roof, and so not entered while there is one.
READ = ("seat", "pitch_left", "pitch_right", "ridge_length")
#: Values nearer than this are the same (mm, degrees): below what a reading is worth.
SAME = 1e-9


@dataclass(frozen=True)
class Seat:
    """A roof that was read, and how far along its ridge from which end a vent stands (mm)."""

    reading: RoofReading
    along: float = 0.0
    end: str = MIDDLE

    @property
    def limits(self) -> tuple[float, float]:
        """The least and the most that ``along`` may be, the axis on the ridge (mm)."""
        return limits(self.reading.planes.ridge_length, self.end)

    def held(self) -> Seat:
        """The same with its axis on the ridge."""
        low, high = self.limits
        return replace(self, along=min(max(self.along, low), high))

    def counted_from(self, end: str) -> Seat:
        """The same place, counted from another end."""
        total = self.reading.planes.ridge_length
        back = {BACK: self.along, FRONT: total - self.along, MIDDLE: total / 2.0 + self.along}[self.end]
        return replace(self, end=end, along={BACK: back, FRONT: total - back, MIDDLE: back - total / 2.0}[end])

    def turned(self) -> Seat:
        """The same place, left and right exchanged, and with them back and front."""
        back = self.counted_from(FRONT).along
        return Seat(turned(self.reading), back, BACK).counted_from(self.end)


def ensure_seat_properties(vent: FreeCAD.DocumentObject) -> None:
    """The properties of a vent, new or reopened, that may stand on a roof that is drawn."""
    ensure_roof_properties(vent)
    for row in ROWS:
        if ensure(vent, row) and row.name == END:
            setattr(vent, END, list(ENDS))
    show_what_is_read(vent)
    if is_linked(vent):
        watch()


def show_what_is_read(vent: FreeCAD.DocumentObject) -> None:
    """Lets the property editor show, but not take, what the roof says."""
    mode = ["ReadOnly"] if is_linked(vent) else []
    for name in READ:
        vent.setEditorMode(BY_NAME[name].property_name, mode)


def values_read(planes: RoofPlanes) -> dict[str, Any]:
    """The parameters (mm, degrees) that a roof gives; those that it does not, such as a ridge's length on one slope, are
    missing."""
    if planes.kind != RIDGE:
        return {"seat": "one slope", "pitch_left": planes.pitch_left}
    return {"seat": "ridge", "pitch_left": planes.pitch_left, "pitch_right": planes.pitch_right,
            "ridge_length": planes.ridge_length}


def stand_on(vent: FreeCAD.DocumentObject, reading: RoofReading, along: float = 0.0, end: str = MIDDLE) -> None:
    """Has a vent stand on a roof from now on; it goes there when it is recomputed.

    Raises RoofError, before anything is changed, for a roof that the vent cannot follow, or a place past the ridge's end.
    """
    placement_on(reading.planes, along, end)
    link_to(vent, reading)
    setattr(vent, ALONG, along)
    setattr(vent, END, end)
    show_what_is_read(vent)
    watch()
    vent.touch()


def stand_free(vent: FreeCAD.DocumentObject) -> None:
    """Sets a vent free of its roof: it stays where it is, and its pitches are entered again."""
    unlink(vent)
    show_what_is_read(vent)


def read_from_roof(vent: FreeCAD.DocumentObject) -> RoofReading | None:
    """In ``execute``: takes over what the roof says now; None for a vent that stands free.

    A parameter that an expression drives is left to it.  Raises RoofError for a roof that is lost or has become none.
    """
    reading = follow(vent)
    if reading is None:
        return None
    driven = {path.lstrip(".") for path, _ in vent.ExpressionEngine}
    for name, value in values_read(reading.planes).items():
        name = BY_NAME[name].property_name
        if name not in driven:
            _put(vent, name, value)
    return reading


def seat_of(vent: FreeCAD.DocumentObject) -> Seat | None:
    """The seat that a vent has; None for one that stands free.  Raises RoofError for a roof that is lost."""
    if not is_linked(vent):
        return None
    reading = read_again(linked_picks(vent), getattr(vent, SIGNATURE))
    return Seat(reading, getattr(vent, ALONG).Value, getattr(vent, END))


def _put(vent: FreeCAD.DocumentObject, name: str, value: Any) -> None:
    now = getattr(vent, name)
    now = getattr(now, "Value", now)
    if now != value if isinstance(value, str) else abs(now - value) > SAME:
        setattr(vent, name, value)


def place_of(planes: RoofPlanes, along: float, end: str, spec: Spec) -> FreeCAD.Placement:
    """The global place of a vent, or of the first of a row: several stand by their distance from the ridge's back end.

    Raises RoofError for a place past the ridge's end.
    """
    if spec.vents > 1:
        along, end = end_distance(spec), BACK
    return placement_on(planes, along, end, spec.ridge_offset if planes.kind == RIDGE else 0.0)


def seat_for(vent: FreeCAD.DocumentObject, reading: RoofReading, spec: Spec) -> FreeCAD.Placement:
    """A vent's place on the roof in the frame that its own placement counts in.  Raises as ``place_of``."""
    return in_container(vent, place_of(reading.planes, getattr(vent, ALONG).Value, getattr(vent, END), spec))


def take_seat(vent: FreeCAD.DocumentObject, place: FreeCAD.Placement) -> None:
    """In ``execute``, once the shape is made: puts a vent in its place.

    The shape must be written first.  What FreeCAD keeps of it for undo is placed as the vent was then, and whichever of
    shape and placement it brings back last decides.
    """
    if not same_place(place, getattr(vent, TAKEN)) or not same_place(place, vent.Placement):
        setattr(vent, TAKEN, place)
        vent.Placement = place


def moved_by_hand(vent: FreeCAD.DocumentObject) -> None:
    """When a seated vent's placement has changed: what it was dragged along the ridge is kept, all else it will take back."""
    if TAKEN not in vent.PropertiesList or not is_linked(vent) or same_place(vent.Placement, getattr(vent, TAKEN)):
        return
    taken, now = FreeCAD.Placement(getattr(vent, TAKEN)), FreeCAD.Placement(vent.Placement)
    way = taken.Rotation.multVec(FreeCAD.Vector(1.0, 0.0, 0.0)) * (now.Base - taken.Base)
    along = getattr(vent, ALONG).Value + (-way if getattr(vent, END) == FRONT else way)
    setattr(vent, ALONG, _on_the_ridge(vent, along))


def _on_the_ridge(vent: FreeCAD.DocumentObject, along: float) -> float:
    """A distance held within the ridge's length, where that is known."""
    total = vent.RidgeLength.Value
    low, high = limits(total, getattr(vent, END))
    return min(max(along, low), high) if total else along


def limits(total: float, end: str) -> tuple[float, float]:
    """The least and the most distance from an end (mm) that keep a vent's axis on a ridge so long."""
    return (-total / 2.0, total / 2.0) if end == MIDDLE else (0.0, total)

