# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a vent and its parts ask for again and again in one recompute of a document: the vent's spec, read from the
properties once, and which parts belong to which vent.

Outside a recompute nothing is kept: an expression may give another value at any time, and nobody is told.
"""

from __future__ import annotations

import FreeCAD

from ..core.spec import Spec
from .model import REFUSALS, owned_by, spec_of

#: By document, while it is being recomputed: each vent's spec by its name, or why it is refused.
_specs: dict[str, dict[str, Spec | Exception]] = {}
#: By document, while it is being recomputed: each vent's parts by its name, once one has asked for its own.
_parts: dict[str, dict[str, list[FreeCAD.DocumentObject]]] = {}


class _Recomputes:
    """A document observer: what was read for a recompute goes when the next begins, when it ends, and with its document.

    FreeCAD 1.1 does not tell of the first.
    """

    def slotBeforeRecomputeDocument(self, document: FreeCAD.Document) -> None:
        """FreeCAD calls this before it recomputes a document, this when it has done so, and this when one is closed."""
        _specs.pop(document.Name, None)
        _parts.pop(document.Name, None)

    slotRecomputedDocument = slotDeletedDocument = slotBeforeRecomputeDocument


FreeCAD.addDocumentObserver(_Recomputes())


def spec_in_recompute(vent: FreeCAD.DocumentObject) -> Spec:
    """The spec of a vent, for itself and its parts.  Raises one of ``REFUSALS``, as the vent's values are refused."""
    document = vent.Document
    if not document.Recomputing:
        return spec_of(vent)
    known = _specs.setdefault(document.Name, {})
    found = known.get(vent.Name)
    if found is None:
        try:
            found = spec_of(vent)
        except REFUSALS as refusal:
            found = refusal
        known[vent.Name] = found
    if isinstance(found, Spec):
        return found
    raise found.with_traceback(None)


def forget(vent: FreeCAD.DocumentObject) -> None:
    """Has the next who asks read a vent's properties again: one of them or a part's wish has changed, as those with
    expressions do in their own object's turn, and what is read from the roof in the vent's."""
    _specs.get(vent.Document.Name, {}).pop(vent.Name, None)


def parts_in_recompute(vent: FreeCAD.DocumentObject) -> list[FreeCAD.DocumentObject]:
    """The objects of a vent's kinds of part; in a recompute the document is searched once for all of its vents."""
    document = vent.Document
    if not document.Recomputing:
        return owned_by(vent, "KindId")
    if document.Name not in _parts:
        found = _parts[document.Name] = {}
        for obj in document.Objects:
            owner = getattr(obj, "Vent", None)
            if owner is not None and hasattr(obj, "KindId"):
                found.setdefault(owner.Name, []).append(obj)
    return _parts[document.Name].get(vent.Name, [])
