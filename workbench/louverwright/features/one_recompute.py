# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a vent's parts all ask for in one recompute of a document: its spec, read from the properties once.

Outside a recompute nothing is kept: an expression may give another value at any time, and nobody is told.
"""

from __future__ import annotations

import FreeCAD

from ..core.spec import Spec
from .model import REFUSALS, spec_of

#: By document, while it is being recomputed: each vent's spec by its name, None where it is refused.
_specs: dict[str, dict[str, Spec | None]] = {}


class _Recomputes:
    """A document observer."""

    def slotBeforeRecomputeDocument(self, document: FreeCAD.Document) -> None:
        """FreeCAD calls this before it recomputes a document."""
        _specs[document.Name] = {}

    def slotRecomputedDocument(self, document: FreeCAD.Document) -> None:
        """And this when it has done so."""
        _specs.pop(document.Name, None)

    def slotDeletedDocument(self, document: FreeCAD.Document) -> None:
        """And this when a document is closed."""
        _specs.pop(document.Name, None)


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
