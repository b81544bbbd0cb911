# SPDX-License-Identifier: LGPL-2.1-or-later
"""One document object for each kind of part: the compound of all its pieces, and what they are.

``Solid1`` of the shape is the first of ``Pieces``, ``Marks``, ``Sizes`` and ``Placements``, and so on.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

import FreeCAD
import Part

from ..core.assembly import Assembly
from ..core.kinds import KINDS, Kind, spoken
from ..core.layout import layout
from ..core.part_wish import PartWish
from ..core.saying import say
from .hooks import announce
from .language import tr
from .model import REFUSALS, keys_of
from .one_recompute import forget, spec_in_recompute
from .properties import Row, ensure, result_row
from .proxy import Proxy
from .shapes import freecad_placement, piece_shapes

GROUP, WISH_GROUP = "Part", "Part, yours to set"
#: What stands beside a left-out kind in the tree, where others have their marks.
LEFT_OUT_WORDS = say("left out")
#: What the user may set; they outlive every rebuild, and times when the vent does not have the kind.
WISH_ROWS: tuple[Row, ...] = (
    Row("App::PropertyString", "OwnStock", WISH_GROUP, "Stock for this kind of part alone, by its name in the vent's stock "
        "list: another wood or length of the form and the size of the vent's own. Empty: the vent's."),
    Row("App::PropertyString", "Note", WISH_GROUP, "A note for the shop, printed on the part's sheet and in the cut list."),
    Row("App::PropertyBool", "LeftOut", WISH_GROUP, "Not made here: bought, used again, or not wanted. Its pieces are in no "
        "model, count or weight, the report lists it as left out, and its neighbours stay as they are."),
)
WISH_NAMES = frozenset(row.name for row in WISH_ROWS)
ROWS: tuple[Row, ...] = (
    result_row("App::PropertyString", "KindId", GROUP, "The kind of part, as reports and references call it."),
    result_row("App::PropertyInteger", "Number", GROUP, "The kind's number in its stage's marks."),
    result_row("App::PropertyInteger", "Count", GROUP, "How many pieces the vent has; 0 if it has none."),
    result_row("App::PropertyString", "Stock", GROUP, "Stock that the pieces are cut from."),
    result_row("App::PropertyStringList", "Marks", GROUP, "The mark of each piece."),
    result_row("App::PropertyStringList", "Pieces", GROUP, "The name of each piece, in the order of the shape's solids."),
    result_row("App::PropertyVectorList", "Sizes", GROUP, "Length, width and thickness of each piece's blank, in mm."),
    result_row("App::PropertyPlacementList", "Placements", GROUP, "Where each piece's board frame stands in the vent."),
    result_row("App::PropertyLinkHidden", "Vent", GROUP, "The vent that the part belongs to.", True),
    result_row("App::PropertyString", "ContentKey", GROUP, "What the shape was made from.", True),
    result_row("App::PropertyString", "DescribedAs", GROUP, "The description in the tree that the last recompute wrote.",
               True),
)


class LostPart(RuntimeError):
    """A part whose vent is gone; the text is for the user."""


class PartKind(Proxy):
    """All pieces of one kind of part.

    A changed wish touches the part, and with it the vent, which holds it and so is recomputed after it.
    """

    def execute(self, obj: FreeCAD.DocumentObject) -> None:
        """Makes the pieces anew if anything about them has changed.

        Where the vent refuses its parameters, it says so itself; its parts keep the last good shape.
        """
        if obj.Vent is None:
            raise LostPart(tr("“{name}” belongs to no vent any more and keeps its last shape. Delete it, or copy whole "
                               "vents only.", name=obj.Label))
        try:
            spec = spec_in_recompute(obj.Vent)
        except REFUSALS:
            return
        key = keys_of(spec)[obj.KindId]
        if key != obj.ContentKey:
            fill(obj, layout(spec))
            obj.ContentKey = key

    def onChanged(self, obj: FreeCAD.DocumentObject, name: str) -> None:
        """A changed wish changes what the vent is made from."""
        if name in WISH_NAMES and getattr(obj, "Vent", None) is not None:
            forget(obj.Vent)

    def onDocumentRestored(self, obj: FreeCAD.DocumentObject) -> None:
        """Gives a part of an older document what it lacks."""
        ensure_part_properties(obj)
        announce(obj)


def ensure_part_properties(obj: FreeCAD.DocumentObject) -> None:
    """Every property of a part, new or reopened.  An object that was not touched is not touched afterwards."""
    touched = "Touched" in obj.State
    for row in (*ROWS, *WISH_ROWS):
        ensure(obj, row)
    obj.setEditorMode("Placement", ["ReadOnly"])  # it goes where the vent goes
    if not obj.Label2:
        obj.Label2 = marks_text(obj.Marks)    # of a document from before it was said there
    if not touched:
        obj.purgeTouched()


def marks_text(marks: Sequence[str]) -> str:
    """The marks of a kind's pieces with their numbers: 'B1L ×2, B1R ×2'."""
    return ", ".join(f"{mark} ×{count}" if count > 1 else mark for mark, count in Counter(marks).items())


def set_wish(obj: FreeCAD.DocumentObject, wish: PartWish) -> None:
    """Writes a wish into the properties of a kind's object."""
    obj.OwnStock, obj.Note, obj.LeftOut = wish.stock_name, wish.note, wish.left_out


def fill(obj: FreeCAD.DocumentObject, assembly: Assembly) -> None:
    """Writes the shape and the list properties; an absent or left-out kind is hidden, one that comes back is shown.

    The tree's description names the marks, or says that the kind is left out, unless the user has written something else
    there.
    """
    made = _made(assembly, obj.KindId)
    if bool(made.ids) != bool(obj.Count):
        obj.Visibility = bool(made.ids)
    if obj.Label2 in (obj.DescribedAs or marks_text(obj.Marks), LEFT_OUT_WORDS):
        _put(obj, "Label2", tr(LEFT_OUT_WORDS) if made.left_out else marks_text(made.marks))
        _put(obj, "DescribedAs", obj.Label2)
    _put(obj, "Stock", made.stock)
    _put(obj, "Marks", made.marks)
    _put(obj, "Pieces", made.ids)
    if made.ids or obj.Count or obj.Shape.isNull():
        obj.Sizes, obj.Placements, obj.Shape = made.sizes, made.placements, made.shape
    _put(obj, "Count", len(made.ids))


@dataclass(frozen=True)
class _Made:
    """What the object of one kind shows: of each piece mark, id, size and place, and the compound of all."""

    stock: str
    left_out: bool
    marks: list[str]
    ids: list[str]
    sizes: list[FreeCAD.Vector]
    placements: list[FreeCAD.Placement]
    shape: Part.Shape


@lru_cache(maxsize=len(KINDS))    # of one vent: to compare vents costs more than to make this
def _made(assembly: Assembly, kind_id: str) -> _Made:
    """Made once for vents that are equal."""
    parts = assembly.of_kind(kind_id)
    pieces = [(part, piece) for part in parts for piece in part.pieces]
    return _Made(parts[0].stock.name if parts else "", any(part.kind.id == kind_id for part in assembly.left_out),
                 [part.mark for part, _ in pieces], [piece.id for _, piece in pieces],
                 [FreeCAD.Vector(*part.board.size) for part, _ in pieces],
                 [freecad_placement(piece.placement) for _, piece in pieces],
                 Part.Compound([shape for part in parts for shape in piece_shapes(part)]))


def _put(obj: FreeCAD.DocumentObject, name: str, value: Any) -> None:
    """Writes a property that is not so already: all who watch the document hear of each writing."""
    if getattr(obj, name) != value:
        setattr(obj, name, value)


def make_part_kind(stage: FreeCAD.DocumentObject, vent: FreeCAD.DocumentObject, kind: Kind) -> FreeCAD.DocumentObject:
    """The object of one kind in its stage; empty and hidden until it is first recomputed."""
    name = "".join(word.capitalize() for word in kind.id.split("."))
    obj = stage.Document.addObject("Part::FeaturePython", name)
    obj.Proxy = PartKind()
    ensure_part_properties(obj)
    obj.KindId, obj.Number, obj.Vent = kind.id, kind.number, vent
    obj.Label = tr(spoken(kind.name))
    obj.Visibility = False
    stage.addObject(obj)
    return obj


