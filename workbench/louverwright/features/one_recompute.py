# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a vent and its parts ask for again and again in one recompute of a document: the vent's spec, read from the
properties once, and which parts belong to which vent.

Outside a recompute nothing is kept: an expression may give another value at any time, and nobody is told.
"""

from __future__ import annotations

import FreeCAD

from ..core.spec import Spec
from .model import REFUSALS, owned_by, spec_of

#: By document, while it is being recomputed: each vent's spec by its name, None where it is refused.
_specs: dict[str, dict[str, Spec | None]] = {}
#: By document, while it is being recomputed: each vent's parts by its name, once one has asked for its own.
_parts: dict[str, dict[str, list[FreeCAD.DocumentObject]]] = {}


class _Recomputes:
    """A document observer."""

    def slotBeforeRecomputeDocument(self, document: FreeCAD.Document) -> None:
        """FreeCAD calls this before it recomputes a document."""
        _specs[document.Name] = {}
        _parts.pop(document.Name, None)

    def slotRecomputedDocument(self, document: FreeCAD.Document) -> None:
        """And this when it has done so."""
        self.slotDeletedDocument(document)

    def slotDeletedDocument(self, document: FreeCAD.Document) -> None:
        """And this when a document is closed."""
        _specs.pop(document.Name, None)
        _parts.pop(document.Name, None)


FreeCAD.addDocumentObserver(_Recomputes())


def spec_for_parts(vent: FreeCAD.DocumentObject) -> Spec | None:
    """The spec of a vent as its parts need it, None where the vent refuses: it says so itself."""
    known = _specs.get(vent.Document.Name)
    if known is not None and vent.Name in known:
        return known[vent.Name]
    try:
        spec = spec_of(vent)
    except REFUSALS:
        spec = None
    if known is not None:
        known[vent.Name] = spec
    return spec


def forget(vent: FreeCAD.DocumentObject) -> None:
    """Has the next part read a vent's properties again: one has changed, as the roof's do in the vent's own turn."""
    _specs.get(vent.Document.Name, {}).pop(vent.Name, None)


def parts_in_recompute(vent: FreeCAD.DocumentObject) -> list[FreeCAD.DocumentObject]:
    """The objects of a vent's kinds of part; in a recompute the document is searched once for all of its vents."""
    document = vent.Document
    if document.Name not in _specs:
        return owned_by(vent, "KindId")
    if document.Name not in _parts:
        found = _parts[document.Name] = {}
        for obj in document.Objects:
            if hasattr(obj, "KindId") and obj.Vent is not None:
                found.setdefault(obj.Vent.Name, []).append(obj)
    return _parts[document.Name].get(vent.Name, [])
