# SPDX-License-Identifier: LGPL-2.1-or-later
"""Several vents on one ridge: the vent itself is the first, the others are links to it.

A link's placement is an expression of the vent's placement and spacing, so links follow every change of the vent's
parameters and place.  How many there are is settled by ``update_row`` alone: a recompute makes and deletes nothing.
"""

from __future__ import annotations

from typing import Any

import FreeCAD
import Part

from ..core.part_wish import NO_WISHES, Wishes
from ..core.row import vents_alike
from .hooks import announce
from .language import tr
from .model import spec_of
from .properties import ensure, result_row
from .vent import ROW_NUMBER, links_of, make_vent

GROUP = "Row"
ROWS = (
    result_row("App::PropertyInteger", ROW_NUMBER, GROUP, "Which vent of the row this is, counted from the ridge's −X end."),
    result_row("App::PropertyLinkHidden", "Vent", GROUP, "The vent that this one is alike to, the first of the row.", True),
)


def make_row(document: FreeCAD.Document, parts: Wishes = NO_WISHES, **parameters: Any) -> FreeCAD.DocumentObject:
    """A new vent with links for the others that ``vents`` asks for, recomputed; returns the vent.

    Raises SpecError or StockListError, before anything is made, with every reason why it cannot be built.
    """
    vent = make_vent(document, parts, **parameters)
    update_row(vent)
    return vent


def update_row(vent: FreeCAD.DocumentObject) -> bool:
    """Makes and deletes links until there is one for each further vent, in the vent's own part; True if any changed.

    Raises one of ``model.REFUSALS``, before anything is changed, for a vent that cannot be built.
    """
    wanted = vents_alike(spec_of(vent))
    links = links_of(vent)
    there = {link.RowNumber: link for link in reversed(links)}    # of copies that the user has made, the first
    extra = [link for link in links if link.RowNumber > wanted or there[link.RowNumber] != link]
    for link in extra:
        vent.Document.removeObject(link.Name)
    missing = [number for number in range(2, wanted + 1) if number not in there]
    made = [_make_link(vent, number) for number in missing]
    moved = [link for link in links_of(vent) if _put_beside(link, vent)]
    vent.Document.recompute()
    return bool(extra or made or moved)


def _make_link(vent: FreeCAD.DocumentObject, number: int) -> FreeCAD.DocumentObject:
    link = vent.Document.addObject("App::Link", f"{vent.Name}Number{number}")
    for row in ROWS:
        ensure(link, row)
    link.Label = tr("{vent}, number {number}", vent=vent.Label, number=number)
    link.Vent, link.RowNumber = vent, number
    link.LinkedObject = vent
    link.LinkTransform = False    # the expression has the vent's own placement in it
    link.setExpression("Placement", place_in_row(vent, number))
    announce(link)
    return link


def place_in_row(vent: FreeCAD.DocumentObject, number: int) -> str:
    """The expression of a vent's place in the row: so many spacings along the first one's +X.

    Written with ``create``, which FreeCAD 0.20 knows as well.
    """
    along = f"{vent.Name}.VentSpacing / 1 mm * {number - 1}"
    return (f"{vent.Name}.Placement * create(<<placement>>; create(<<vector>>; {along}; 0; 0); "
            "create(<<rotation>>; 0; 0; 0))")


def _put_beside(link: FreeCAD.DocumentObject, vent: FreeCAD.DocumentObject) -> bool:
    """Moves a link into the part that the vent stands in, or out of one; True if it had to."""
    here, there = link.getParentGeoFeatureGroup(), vent.getParentGeoFeatureGroup()
    if here == there:
        return False
    if here is not None:
        here.removeObject(link)
    if there is not None:
        there.addObject(link)
    return True


def row_shape(vent: FreeCAD.DocumentObject) -> Part.Shape:
    """All pieces of all vents of the row, each where it stands, as one compound."""
    return Part.Compound([vent.Shape, *(Part.getShape(link) for link in links_of(vent))])
