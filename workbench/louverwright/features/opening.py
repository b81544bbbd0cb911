# SPDX-License-Identifier: LGPL-2.1-or-later
"""The opening in a roof that is drawn: an object whose shape is the roof with the rough opening of a vent cut into it.

It depends on the vent alone, which depends on the roof; so it makes no cycle wherever the vent may be.  The roof's own
object stays as it is; it is hidden when the opening is made, and shown again when that is deleted.  A second vent's opening
in the same roof is cut into the first one's result.
"""

from __future__ import annotations

from typing import Any

import FreeCAD
import Part

from ..core.roof_opening import RULES, OpeningError
from ..core.saying import say
from .hooks import announce
from .language import in_user_words, tr, translated
from .model import REFUSALS, spec_of
from .properties import PLAIN, Row, ensure, result_row
from .proxy import Proxy
from .roof_cut import HowToCut, RoofCut, cut_roof
from .roof_link import is_linked, linked_picks
from .roof_reading import RoofError, RoofLost, RoofPick, roof_shapes
from .roof_watch import OPENING, watch
from .standing import container_placement, same_place
from .vent import is_vent

#: The number of the arrangement of the properties.
SCHEMA = 1
GROUP, RESULT = "Opening", "Result"
ROWS = (
    result_row("App::PropertyInteger", OPENING, "Louverwright", "Number of the arrangement of these properties.", True),
    Row("App::PropertyLinkGlobal", "Vent", GROUP, "The vent that the opening is cut for, with all others of its row."),
    Row("App::PropertyLength", "RidgeBoard", GROUP, "Thickness of the ridge board under the opening, which is never cut. 0: "
        "none. A vent on one slope has none."),
    Row("App::PropertyEnumeration", "RidgeBoardRule", GROUP, "Whether the ridge board and the boards of RidgeBoards are left "
        "standing in the opening, or an opening that would cut one is refused."),
    Row("App::PropertyLinkListGlobal", "RidgeBoards", GROUP, "Ridge boards, rafters and others that are drawn and must not be "
        "cut: each takes away what lies plumb over or under it."),
    Row("App::PropertyLength", "Depth", GROUP, "How deep the opening is cut under the roof's surface, plumb. 0: through the "
        "roof's own thickness, 600 mm at most."),
    Row("App::PropertyLinkGlobal", "After", GROUP, "The opening of another vent that was cut into the same roof before this "
        "one.", PLAIN, True),
    Row("App::PropertyLinkListHidden", "Hides", GROUP, "What was hidden when the opening was made.", PLAIN, True, True),
    result_row("App::PropertyArea", "ClearArea", RESULT, "Area of the opening in plan, without what is left standing; of one "
               "vent, and of several the least."),
    result_row("App::PropertyArea", "LouverArea", RESULT, "Free area of one vent's louvers."),
    result_row("App::PropertyLength", "DepthCut", RESULT, "How deep the opening is cut, plumb."),
    result_row("App::PropertyString", "Narrowest", RESULT, "The clear opening against the louvers."),
    result_row("App::PropertyString", "Done", RESULT, "How the opening was cut."),
)


class RoofOpening(Proxy):
    """A roof with an opening."""

    def execute(self, obj: FreeCAD.DocumentObject) -> None:
        """Cuts the roof anew.

        What is refused leaves the last good shape and results in place.  Raises one of ``model.REFUSALS``, RoofError or
        OpeningError, whose text, in the user's language, becomes the object's status.
        """
        try:
            left_out = _drop_cycles(obj)
            cut = _cut(obj.Vent, how_to_cut(obj), obj.After)
        except (*REFUSALS, RoofError, OpeningError) as refusal:
            raise in_user_words(refusal).with_traceback(None) from None
        place = container_placement(obj).inverse().multiply(cut.shape.Placement)
        obj.Shape = cut.shape    # in a recompute FreeCAD gives it the object's placement; before that changes, for undo
        if not same_place(place, obj.Placement):
            obj.Placement = place
        results = {"ClearArea": cut.clear_area, "LouverArea": cut.louver_area, "DepthCut": cut.depth,
                   "Narrowest": translated(cut.compared), "Done": " ".join((translated(cut.done), *left_out))}
        for name, value in results.items():
            now = getattr(obj, name)
            if getattr(now, "Value", now) != value:
                setattr(obj, name, value)

    def onDocumentRestored(self, obj: FreeCAD.DocumentObject) -> None:
        """Gives an opening of an older document what it lacks."""
        ensure_opening_properties(obj)
        watch()
        announce(obj)


def ensure_opening_properties(obj: FreeCAD.DocumentObject) -> None:
    """Every property of an opening, new or reopened; one that was not touched is not touched afterwards."""
    touched = "Touched" in obj.State
    for row in ROWS:
        if not ensure(obj, row):
            continue
        if row.name == OPENING:
            setattr(obj, OPENING, SCHEMA)
        elif row.name == "RidgeBoardRule":
            obj.RidgeBoardRule = list(RULES)
    obj.setEditorMode("Placement", ["ReadOnly"])    # it lies where the roof lies
    if not touched:
        obj.purgeTouched()


def is_opening(obj: FreeCAD.DocumentObject) -> bool:
    """Whether an object is an opening in a roof."""
    return isinstance(getattr(obj, "Proxy", None), RoofOpening)


def openings_in(document: FreeCAD.Document) -> list[FreeCAD.DocumentObject]:
    """All openings of a document."""
    return [obj for obj in document.Objects if is_opening(obj)]


def opening_of(vent: FreeCAD.DocumentObject) -> FreeCAD.DocumentObject | None:
    """The opening that was cut for a vent; None if there is none."""
    return next((each for each in openings_in(vent.Document) if each.Vent == vent), None)


def how_to_cut(obj: FreeCAD.DocumentObject) -> HowToCut:
    """What an opening's properties ask for.  Raises OpeningError for one that a later release has written."""
    if getattr(obj, OPENING) > SCHEMA:
        raise OpeningError(say("“{name}” was written by a newer Louverwright. It keeps its last shape; install the newer "
                               "Louverwright to change it.", name=obj.Label))
    return HowToCut(obj.RidgeBoard.Value, obj.RidgeBoardRule, tuple(obj.RidgeBoards), obj.Depth.Value)


def _drop_cycles(obj: FreeCAD.DocumentObject) -> list[str]:
    """Takes off the opening's list what is made from the opening itself, or holds it; a sentence for each."""
    dependent = {obj, *obj.InListRecursive}
    dropped = [board for board in obj.RidgeBoards if board in dependent]
    if dropped:
        obj.RidgeBoards = [board for board in obj.RidgeBoards if board not in dependent]
    if obj.After is not None and obj.After in dependent:
        obj.After = None
    return [tr("“{name}” was taken off RidgeBoards: it is made from this opening, or holds it.", name=board.Label)
            for board in dropped]


def _cut(vent: FreeCAD.DocumentObject | None, how: HowToCut, before: FreeCAD.DocumentObject | None) -> RoofCut:
    """The roof of a vent with its opening, cut into the result of the opening before.  Raises as ``execute`` does."""
    if vent is None or not is_vent(vent):
        raise OpeningError(say("The vent of this opening is gone; the opening keeps its last shape. Choose another vent in "
                               "the property Vent, or delete the opening, and the roof is shown whole again."))
    if not is_linked(vent):
        raise OpeningError(say("“{name}” stands free, so there is no roof to cut. Pick a roof for it with Edit vent, or "
                               "delete the opening.", name=vent.Label))
    return cut_roof(vent, spec_of(vent), _roofs(vent, before), how)


def _roofs(vent: FreeCAD.DocumentObject, before: FreeCAD.DocumentObject | None) -> list[Part.Shape]:
    """The shapes to cut, in global coordinates: those of the vent's roof, cut already where another opening is."""
    cut, shapes = set(), []
    if before is not None and is_opening(before) and before.Vent is not None:
        cut = _covered(before)
        shape = before.Shape.copy()
        shape.Placement = container_placement(before).multiply(shape.Placement)
        shapes.append(shape)
    fresh = [pick for pick in _single(vent) if _name(pick) not in cut]
    if not shapes and not fresh:
        raise RoofLost(say("The roof, or what it stands in, is gone. Pick the roof again with Edit vent."))
    return shapes + roof_shapes(fresh)


def _single(vent: FreeCAD.DocumentObject) -> list[RoofPick]:
    """The objects that a vent's roof is read from, each a pick of its own."""
    return [RoofPick(pick.object, (path,)) for pick in linked_picks(vent) for path in pick.subpaths or ("",)]


def _name(pick: RoofPick) -> tuple[str, str]:
    return pick.object.Name, pick.subpaths[0]


def _covered(opening: FreeCAD.DocumentObject | None) -> set[tuple[str, str]]:
    """The roof objects that are in the result of an opening."""
    found: set[tuple[str, str]] = set()
    while opening is not None and is_opening(opening) and opening.Vent is not None:
        found |= {_name(pick) for pick in _single(opening.Vent)}
        opening = opening.After
    return found


# ---- making and deleting


def make_opening(vent: FreeCAD.DocumentObject, **properties: Any) -> FreeCAD.DocumentObject:
    """A new opening for a vent, in the part that the vent stands in, recomputed; the roof is hidden.

    ``properties`` are ``RidgeBoard`` (mm), ``RidgeBoardRule``, ``RidgeBoards`` and ``Depth`` (mm).  Raises OpeningError,
    RoofError or one of ``model.REFUSALS``, before anything is made.
    """
    there = opening_of(vent)
    if there is not None:
        raise OpeningError(say("“{name}” has its opening already: “{opening}”. Change the properties of that, or delete it "
                               "first.", name=vent.Label, opening=there.Label))
    before = _last_in(vent)
    how = HowToCut(float(properties.get("RidgeBoard", 0.0)), properties.get("RidgeBoardRule", RULES[0]),
                    tuple(properties.get("RidgeBoards", ())), float(properties.get("Depth", 0.0)))
    _cut(vent, how, before)
    obj = vent.Document.addObject("Part::FeaturePython", "RoofOpening")
    obj.Label = tr("Roof opening")
    ensure_opening_properties(obj)
    for name, value in {**properties, "Vent": vent, "After": before}.items():
        setattr(obj, name, value)
    obj.Proxy = RoofOpening()
    holder = vent.getParentGeoFeatureGroup()
    if holder is not None:
        holder.addObject(obj)
    _hide_roof(obj)
    watch()
    vent.Document.recompute()
    announce(obj)
    return obj


def delete_opening(obj: FreeCAD.DocumentObject) -> None:
    """Deletes an opening and shows its roof again."""
    show_roof(obj)
    obj.Document.removeObject(obj.Name)


def _last_in(vent: FreeCAD.DocumentObject) -> FreeCAD.DocumentObject | None:
    """The last opening that was cut into any object of a vent's roof."""
    wanted = {_name(pick) for pick in _single(vent)}
    there = [each for each in openings_in(vent.Document) if _covered(each) & wanted and vent not in each.OutListRecursive]
    return next((each for each in there if not any(other.After == each for other in there)), None)


def _hide_roof(obj: FreeCAD.DocumentObject) -> None:
    """Hides what the opening is cut from, and remembers what it hid."""
    shown = [obj.After] if obj.After is not None else []
    shown += [leaf for pick in _single(obj.Vent) if (leaf := _to_hide(pick)) is not None]
    hidden = [each for each in shown if each.Visibility]
    for each in hidden:
        each.Visibility = False
    obj.Hides = hidden


def cut_from(obj: FreeCAD.DocumentObject) -> FreeCAD.DocumentObject | None:
    """The object, not a link, whose looks an opening has: the roof, or the first of its objects; None if that is gone."""
    picks = _single(obj.Vent) if obj.Vent is not None else []
    leaf = picks[0].object.getSubObject(picks[0].subpaths[0], retType=1) if picks else None
    return leaf.getLinkedObject(True) if leaf is not None else None


def _to_hide(pick: RoofPick) -> FreeCAD.DocumentObject | None:
    """The object that shows a roof alone; None for one that is seen through a link to the part that holds it, for hiding
    that would hide more."""
    path = [each for each in pick.object.getSubObjectList(pick.subpaths[0]) if each is not None]
    if not path or any(each.isDerivedFrom("App::Link") for each in path[:-1]):
        return None
    return path[-1]


def show_roof(obj: FreeCAD.DocumentObject) -> None:
    """Before an opening is deleted: shows what it hid, or leaves that to the opening that was cut into its result."""
    others = [each for each in openings_in(obj.Document) if each != obj]
    heirs = [each for each in others if each.After == obj]
    for heir in heirs:
        heir.After = obj.After
        heir.Hides = [each for each in dict.fromkeys([*heir.Hides, *obj.Hides]) if each != obj]
    kept = {hidden for each in others for hidden in each.Hides}
    for each in obj.Hides:
        if each not in kept:
            each.Visibility = True
