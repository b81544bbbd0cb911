# SPDX-License-Identifier: LGPL-2.1-or-later
"""What ties a vent to a roof that is drawn: where the roof is, how to find it again, and what makes the vent look again.

Three properties, the outcome of trials with eleven kinds of link in FreeCAD 0.20.2, 1.0.0 and 1.1.3, alike in all three:

- ``Roof`` (PropertyLinkSubListHidden): root objects with dotted paths that end at the object, not at a face.  It makes no
  dependency and knows no scope, so the root may be the part that the vent itself stands in.  It follows renaming, copying
  and undo.  A link with dependency to the root is a cycle as soon as the vent stands in that part, whatever its kind.
- ``RoofFollows`` (PropertyLinkListGlobal): every object on these paths, save those that the vent stands in.  A move of any
  or a change of shape then recomputes the vent once, without a warning of scope.  A link to the innermost object alone
  misses the moves of parts and links above it.  The parts that hold both need no link: they move roof and vent alike.
- ``RoofSignature`` (PropertyString): the planes, so that the roof is found again when its faces have other numbers.

A vent that is dragged into the roof's part closes a cycle through ``RoofFollows``.  FreeCAD says once that the graph must be
a DAG, recomputes all the same, and ``follow``, called in ``execute``, drops the link, so that the next recompute is clean.
FreeCAD itself drags the vent there when a Part cut of the roof with the vent is put into that part.  What no link can carry
is told by ``unfollowed``, and seen to by ``roof_watch``.
"""

from __future__ import annotations

from collections.abc import Iterable

import FreeCAD

from ..core.roof_search import alike
from ..core.saying import say
from .properties import PLAIN, Row, ensure, result_row
from .roof_reading import RoofError, RoofPick, RoofReading, read_again
from .standing import containers

GROUP = "Barn roof"
WHERE, FOLLOWS, SIGNATURE, TAKEN = "Roof", "RoofFollows", "RoofSignature", "SeatTaken"
#: The links are no results: a change of them, as when the roof is deleted, has to touch the vent.
ROWS = (
    Row("App::PropertyLinkSubListHidden", WHERE, GROUP, "The objects that the roof is read from.", PLAIN, True, True),
    Row("App::PropertyLinkListGlobal", FOLLOWS, GROUP, "The roof is read again when one of these changes.", PLAIN, True, True),
    result_row("App::PropertyString", SIGNATURE, GROUP, "The roof's planes and ridge, by which it is found again.", True),
    result_row("App::PropertyPlacement", TAKEN, GROUP, "Where the vent stood when it last took its seat.", True),
)


def ensure_roof_properties(vent: FreeCAD.DocumentObject) -> None:
    """The properties of a vent that may stand on a roof that is drawn."""
    for row in ROWS:
        ensure(vent, row)


def is_linked(vent: FreeCAD.DocumentObject) -> bool:
    """Whether a vent stands on a roof that is drawn, be it there still or lost."""
    return bool(getattr(vent, SIGNATURE, ""))


def link_to(vent: FreeCAD.DocumentObject, reading: RoofReading) -> None:
    """Ties a vent to the roof that was read.

    Raises RoofError, before anything is changed, for a roof in another document, or one that is made from the vent.
    """
    for root in (pick.object for pick in reading.where):
        if root.Document != vent.Document:
            raise RoofError(say("“{name}” is in the document “{document}”, and the vent is not. Put a link to it into the "
                                "vent's document, and pick that, or make the vent there.", name=root.Label,
                                document=root.Document.Label))
    dependent, around = set(vent.InListRecursive), containers(vent)
    for obj in _on_paths(reading.where):
        if obj == vent or (obj in dependent and obj not in around and not obj.hasExtension("App::GroupExtension")):
            raise RoofError(say("“{name}” is made from the vent “{vent}” or shows it, so the vent cannot follow it. "
                                "Pick the roof as it is without the vent, before the opening is cut into it.",
                                name=obj.Label, vent=vent.Label))
    ensure_roof_properties(vent)
    setattr(vent, WHERE, [(pick.object, path) for pick in reading.where for path in pick.subpaths or ("",)])
    setattr(vent, SIGNATURE, reading.signature)
    _set_follows(vent)


def unlink(vent: FreeCAD.DocumentObject) -> None:
    """Sets a vent free of its roof; it stays where it is."""
    for name, nothing in ((WHERE, []), (FOLLOWS, []), (SIGNATURE, "")):
        setattr(vent, name, nothing)


def linked_picks(vent: FreeCAD.DocumentObject) -> tuple[RoofPick, ...]:
    """The objects that a vent's roof is read from; those that are deleted are missing."""
    return tuple(RoofPick(root, tuple(paths)) for root, paths in getattr(vent, WHERE, ()))


def follow(vent: FreeCAD.DocumentObject) -> RoofReading | None:
    """The roof as it is now, for a vent that is tied to one; to be called in ``execute``.

    Brings the vent's links up to date, and its signature if the roof has changed.  Raises RoofLost if it is gone, RoofError
    if it is no roof to stand on any more; the vent's signature then stays, so that an undone change mends all.
    """
    if not is_linked(vent):
        return None
    _set_follows(vent)
    picks, old = linked_picks(vent), getattr(vent, SIGNATURE)
    try:
        reading = read_again(picks, old)
    except RoofError as error:
        raise type(error)(say("“{vent}” stands on a roof that was read before. {error}", vent=vent.Label,
                              error=error.args[0])) from None
    if not alike(reading.signature, old):
        setattr(vent, SIGNATURE, reading.signature)
    return reading


def unfollowed(vent: FreeCAD.DocumentObject) -> list[FreeCAD.DocumentObject]:
    """The objects whose moves change the vent's place on its roof, but do not make FreeCAD recompute it.

    These are the parts that hold the vent but not the roof, and those that hold the roof and something that is made from
    the vent, but not the vent.  After such a move the vent has to be recomputed by hand, or put into the roof's part.
    """
    around, paths = containers(vent), _on_paths(linked_picks(vent))
    above_roots = [obj for pick in linked_picks(vent) for obj in containers(pick.object)]
    holding = [*paths, *above_roots]
    missed = [obj for obj in around if obj not in holding]
    return [*missed, *(obj for obj in _unique(holding) if obj not in around and obj not in getattr(vent, FOLLOWS))]


def _set_follows(vent: FreeCAD.DocumentObject) -> None:
    """Links the vent to all on its roof's paths, and in the parts above, that does not itself depend on the vent."""
    dependent = set(vent.InListRecursive)
    picks = linked_picks(vent)
    above_roots = [obj for pick in picks for obj in reversed(containers(pick.object))]
    wanted = [obj for obj in _unique([*above_roots, *_on_paths(picks)]) if obj not in dependent]
    if list(getattr(vent, FOLLOWS)) != wanted:
        setattr(vent, FOLLOWS, wanted)


def _on_paths(picks: Iterable[RoofPick]) -> list[FreeCAD.DocumentObject]:
    """The objects from roots to roofs, each once, of the root's document only."""
    found = []
    for pick in picks:
        for path in pick.subpaths or ("",):
            if pick.object.getSubObject(path, retType=1) is not None:
                found += [obj for obj in pick.object.getSubObjectList(path) if obj.Document == pick.object.Document]
    return _unique(found)


def _unique(objects: Iterable[FreeCAD.DocumentObject]) -> list[FreeCAD.DocumentObject]:
    found: list[FreeCAD.DocumentObject] = []
    for obj in objects:
        if obj not in found:
            found.append(obj)
    return found
