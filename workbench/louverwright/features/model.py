# SPDX-License-Identifier: LGPL-2.1-or-later
"""From a vent object to what it asks for: its spec, and keys that tell when a shape must be made anew."""

from __future__ import annotations

import hashlib
from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import lru_cache
from pathlib import Path
from typing import Any

import FreeCAD

from ..core.assembly import Part as VentPart
from ..core.checks import checked_spec
from ..core.kinds import KINDS
from ..core.layout import layout
from ..core.parameters import PAPER, PARAMETERS, TEXT
from ..core.part_wish import LEFT_OUT, NO_WISH, PartWish, Wishes
from ..core.spec import Spec, SpecError, make_spec
from ..core.stock import StockList, StockListError
from ..places import stock_list
from .migrations import NewerDocument, refuse_newer
from .properties import values_of
from .unswept import unswept

#: Part of every key: to be raised when shapes come to be made otherwise from the same boards.
SHAPE_FORMAT = 2

#: Parameters that make no difference to any shape or figure, at their defaults; a stock list acts by its stock.
WORDS = {row.name: row.default for row in PARAMETERS if row.scope == PAPER or row.kind == TEXT}

#: Why a vent can have no spec; the text of each is for the user.
REFUSALS = (SpecError, StockListError, NewerDocument)


def folder_of_document(document: FreeCAD.Document) -> Path | None:
    """The folder that a stock list's relative path starts from; None for a document that was never saved."""
    return Path(document.FileName).parent if document.FileName else None


def owned_by(vent: FreeCAD.DocumentObject, mark: str) -> list[FreeCAD.DocumentObject]:
    """The objects with property ``mark`` that belong to the vent."""
    return [obj for obj in vent.Document.Objects if getattr(obj, "Vent", None) == vent and hasattr(obj, mark)]


def wishes_of(vent: FreeCAD.DocumentObject) -> Wishes:
    """What the user wishes for single kinds of the vent's parts; of copies of a part the first counts."""
    found: dict[str, PartWish] = {}
    for part in _kinds_of(vent):
        found.setdefault(part.KindId, wish_of(part))
    return {kind: wish for kind, wish in found.items() if wish != NO_WISH}


def _kinds_of(vent: FreeCAD.DocumentObject) -> list[FreeCAD.DocumentObject]:
    """The objects of the vent's kinds; looked for in its stages, and in the whole document only if one is not there."""
    at_home = [part for stage in vent.Group for part in getattr(stage, "Group", ())
               if hasattr(part, "KindId") and part.Vent == vent]
    return at_home if len({part.KindId for part in at_home}) == len(KINDS) else owned_by(vent, "KindId")


def wish_of(part: FreeCAD.DocumentObject) -> PartWish:
    """What the user wishes for one kind; one of a document from before there were wishes has none."""
    return PartWish(getattr(part, "OwnStock", "").strip(), getattr(part, "Note", "").strip(), getattr(part, "LeftOut", False))


def spec_of(vent: FreeCAD.DocumentObject) -> Spec:
    """The checked spec of a vent's properties and of its parts' wishes, all that only stands on paper at its default.

    So a change of such a value lays nothing out anew; but each must be right by itself.  Raises one of ``REFUSALS``.
    """
    refuse_newer(vent)
    values = values_of(vent)
    stock = stock_list(values["stock_list"] or "us", folder_of_document(vent.Document))
    wishes = {kind: replace(wish, note="") for kind, wish in wishes_of(vent).items()}
    found = _answer(_Asked(tuple(values.items()), stock, tuple(wishes.items())))
    if isinstance(found, SpecError):
        raise SpecError(found.findings)
    return found


@dataclass(frozen=True)
class _Asked:
    """All that a spec is made from; every part of a vent asks for the same one in a recompute."""

    values: tuple[tuple[str, Any], ...]
    stock: StockList
    wishes: tuple[tuple[str, PartWish], ...]

    def __hash__(self) -> int:
        return hash(self.values)


@lru_cache(maxsize=32)
def _answer(asked: _Asked) -> Spec | SpecError:
    """The spec, or why there is none."""
    values = dict(asked.values)
    try:
        make_spec(values, asked.stock)
        with unswept():
            return checked_spec({**values, **WORDS}, asked.stock, dict(asked.wishes))
    except SpecError as refusal:
        return refusal


def content_key(parts: Iterable[VentPart], left_out: bool = False) -> str:
    """A digest of all that shape and properties of these parts are made from; ``left_out`` tells why there are none."""
    told = [(part.mark, part.stock.name, part.board, [(piece.id, piece.placement) for piece in part.pieces])
            for part in parts]
    made_from = (SHAPE_FORMAT, told, LEFT_OUT) if left_out else (SHAPE_FORMAT, told)
    return hashlib.sha256(repr(made_from).encode("utf-8")).hexdigest()[:16]


@lru_cache(maxsize=16)
def keys_of(spec: Spec) -> dict[str, str]:
    """The content key of every kind, by its id; under "" that of the whole vent."""
    assembly = layout(spec)
    left_out = {part.kind.id for part in assembly.left_out}
    keys = {kind.id: content_key(assembly.of_kind(kind.id), kind.id in left_out) for kind in KINDS}
    return {**keys, "": hashlib.sha256("".join(keys.values()).encode("ascii")).hexdigest()[:16]}
