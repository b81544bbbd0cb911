# SPDX-License-Identifier: LGPL-2.1-or-later
"""The vent in a FreeCAD document: one object with all parameters, three stages in it, one object a kind of part.

The vent's own shape is the compound of all pieces, so that others can use the vent as one thing; it reads its own
properties, and from its parts what is wished for them.  Parts read the vent's through a hidden link, which makes no
dependency, so there is no cycle; either touches the other when what that reads has changed.
"""

from __future__ import annotations

import hashlib
from functools import lru_cache
from typing import Any

import FreeCAD
import Part

from ..core.assembly import Assembly
from ..core.checks import checked_spec
from ..core.figures import figures
from ..core.kinds import KINDS, STAGES
from ..core.layout import layout
from ..core.parameters import PARAMETERS
from ..core.part_wish import NO_WISH, NO_WISHES, Wishes
from ..core.roof_planes import RoofError
from ..core.spec import Spec
from ..places import stock_list
from .hooks import announce
from .language import in_user_words, tr
from .model import REFUSALS, WORDS, folder_of_document, keys_of, owned_by
from .one_recompute import forget, parts_in_recompute, spec_in_recompute
from .part_kind import make_part_kind, set_wish
from .properties import ensure, ensure_properties, names_of, result_row, set_results, set_values
from .proxy import Proxy
from .revival import changed_elsewhere
from .seat import ensure_seat_properties, moved_by_hand, read_from_roof, seat_for, take_seat
from .shapes import piece_shapes

GROUP_EXTENSION = "App::GeoFeatureGroupExtensionPython"
#: What a spec is read from; and of these, what makes parts anew.
READ_FROM = names_of(PARAMETERS)
SHAPING = names_of(row for row in PARAMETERS if row.name == "stock_list" or row.name not in WORDS)
STAGE_ROWS = (
    result_row("App::PropertyString", "StageId", "Stage", "The stage, as reports and references call it."),
    result_row("App::PropertyLinkHidden", "Vent", "Stage", "The vent that the stage belongs to.", True),
)
#: The property by which the links to a vent are known.
ROW_NUMBER = "RowNumber"
STAGE_NAMES = {"base": "Base", "louver": "LouverStage", "roof": "RoofStage"}


class Vent(Proxy):
    """The whole vent."""

    def execute(self, obj: FreeCAD.DocumentObject) -> None:
        """Reads the roof, makes shape and results anew.

        What is refused leaves the last good shape and results in place.  Raises one of ``model.REFUSALS``, or RoofError,
        whose text becomes the object's status.
        """
        lost, reading = None, None
        try:
            reading = read_from_roof(obj)
        except RoofError as error:
            lost = error    # the vent is made as it last was; that it has no roof is said at the end
        obj.ValuesKey = values_key(obj)
        try:
            spec = spec_in_recompute(obj)
            place = seat_for(obj, reading, spec) if reading is not None else None
        except (*REFUSALS, RoofError) as refusal:
            # the report view would show the way through the program
            raise in_user_words(refusal).with_traceback(None) from None
        key = keys_of(spec)[""]
        if key != obj.ModelKey:
            obj.Shape = _all_pieces(layout(spec))
            obj.ModelKey = key
        if place is not None:
            take_seat(obj, place)
        set_results(obj, figures(spec))
        touch_stale(obj, spec)
        if lost is not None:
            raise in_user_words(lost).with_traceback(None)

    def onChanged(self, obj: FreeCAD.DocumentObject, name: str) -> None:
        """Has the parts look again when a parameter has changed, so that one recompute does it all.

        FreeCAD sets some properties that have an expression anew each time, with the same value.
        """
        if obj.Document.Restoring or obj.Document.Transacting:
            return
        if name == "Placement":
            moved_by_hand(obj)
        if name in READ_FROM:
            forget(obj)
        if name not in SHAPING:
            return
        if getattr(obj, "ValuesKey", "") != values_key(obj):
            for part in parts_of(obj):
                part.touch()

    def onDocumentRestored(self, obj: FreeCAD.DocumentObject) -> None:
        """Gives a vent of an older document what it lacks; one that was changed while nobody could make it is touched."""
        ensure_all(obj)
        dead = [stage for stage in stages_of(obj) if stage.Proxy is None]
        for stage in dead:    # saved without this add-on; ``revival`` knows no stage while it is read
            stage.Proxy = Stage()
            stage.purgeTouched()
            stage.Proxy.onDocumentRestored(stage)
        if dead and obj.ValuesKey != values_key(obj):
            changed_elsewhere(obj)
        announce(obj)


@lru_cache(maxsize=1)
def _all_pieces(assembly: Assembly) -> Part.Shape:
    """The compound of all pieces; made once for vents that are equal."""
    return Part.Compound([shape for part in assembly.parts for shape in piece_shapes(part)])


class Stage(Proxy):
    """Base, louver stage or roof stage: the group of its parts."""

    def onDocumentRestored(self, obj: FreeCAD.DocumentObject) -> None:
        """Gives a stage of an older document what it lacks."""
        ensure_stage_properties(obj)
        announce(obj)


def ensure_all(vent: FreeCAD.DocumentObject) -> None:
    """Every property of a vent, new or reopened; one that was not touched is not touched afterwards."""
    touched = "Touched" in vent.State
    ensure_properties(vent)
    ensure_seat_properties(vent)
    if not touched:
        vent.purgeTouched()


def ensure_stage_properties(obj: FreeCAD.DocumentObject) -> None:
    """Every property of a stage, new or reopened."""
    touched = "Touched" in obj.State
    for row in STAGE_ROWS:
        ensure(obj, row)
    obj.setEditorMode("Placement", ["ReadOnly"])  # it goes where the vent goes
    if not touched:
        obj.purgeTouched()


# ---- what belongs to a vent


def is_vent(obj: FreeCAD.DocumentObject) -> bool:
    """Whether an object is a whole vent."""
    return isinstance(getattr(obj, "Proxy", None), Vent)


def parts_of(vent: FreeCAD.DocumentObject) -> list[FreeCAD.DocumentObject]:
    """The objects of the vent's kinds of part, absent ones too."""
    return owned_by(vent, "KindId")


def stages_of(vent: FreeCAD.DocumentObject) -> list[FreeCAD.DocumentObject]:
    """The objects of the vent's stages."""
    return owned_by(vent, "StageId")


def links_of(vent: FreeCAD.DocumentObject) -> list[FreeCAD.DocumentObject]:
    """The links that stand for the other vents of the row, in their order."""
    return sorted(owned_by(vent, ROW_NUMBER), key=lambda link: link.RowNumber)


def vent_of(obj: FreeCAD.DocumentObject) -> FreeCAD.DocumentObject | None:
    """The vent that an object is, or belongs to."""
    if is_vent(obj):
        return obj
    owner = getattr(obj, "Vent", None)
    return owner if owner is not None and is_vent(owner) else None


def values_key(vent: FreeCAD.DocumentObject) -> str:
    """A digest of the properties that shape a vent, right or wrong."""
    told = [str(getattr(vent, name, None)) for name in sorted(SHAPING)]
    return hashlib.sha256("\n".join(told).encode("utf-8")).hexdigest()[:16]


def touch_stale(vent: FreeCAD.DocumentObject, spec: Spec) -> None:
    """Has parts look again that were made from something else, as after a change in the user's stock list."""
    keys = keys_of(spec)
    for part in parts_in_recompute(vent):
        if part.ContentKey != keys[part.KindId]:
            part.touch()


# ---- making and deleting


def make_vent(document: FreeCAD.Document, parts: Wishes = NO_WISHES, **parameters: Any) -> FreeCAD.DocumentObject:
    """A new vent with the given parameters (mm, degrees; the others at their defaults) and wishes for parts, recomputed.

    Raises SpecError or StockListError, before anything is made, with every reason why it cannot be built; an
    unknown parameter is one.
    """
    folder = folder_of_document(document)
    checked_spec(parameters, stock_list(parameters.get("stock_list") or "us", folder), parts)
    vent = document.addObject("Part::FeaturePython", "Vent")
    vent.addExtension(GROUP_EXTENSION)
    vent.Label = tr("Louvered vent")
    ensure_all(vent)
    set_values(vent, parameters)
    vent.Proxy = Vent()
    made = [vent, *_make_stages(vent)]
    for part in parts_of(vent):
        set_wish(part, parts.get(part.KindId, NO_WISH))
    for obj in made:
        announce(obj)
    document.recompute()
    return vent


def _make_stages(vent: FreeCAD.DocumentObject) -> list[FreeCAD.DocumentObject]:
    """The stages with all their parts."""
    made = []
    for stage_id, (_, label) in STAGES.items():
        stage = vent.Document.addObject("App::GeometryPython", STAGE_NAMES[stage_id])
        stage.addExtension(GROUP_EXTENSION)
        stage.Proxy = Stage()
        ensure_stage_properties(stage)
        stage.StageId, stage.Vent, stage.Label = stage_id, vent, tr(label)
        vent.addObject(stage)
        made += [stage, *(make_part_kind(stage, vent, kind) for kind in KINDS if kind.stage == stage_id)]
    return made


def delete_parts(vent: FreeCAD.DocumentObject) -> None:
    """Deletes all that belongs to a vent, but not the vent, nor what the user has put into it."""
    for obj in [*links_of(vent), *parts_of(vent), *stages_of(vent)]:
        vent.Document.removeObject(obj.Name)


def delete_vent(vent: FreeCAD.DocumentObject) -> None:
    """Deletes a vent with all that belongs to it."""
    delete_parts(vent)
    vent.Document.removeObject(vent.Name)
