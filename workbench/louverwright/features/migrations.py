# SPDX-License-Identifier: LGPL-2.1-or-later
"""The schema number of a vent's properties, and the one-way steps from one number to the next.

A step is never changed or removed once it has been released: documents of every age go through them in turn.
"""

from __future__ import annotations

from collections.abc import Callable

import FreeCAD

from ..core.saying import say

#: What this program writes.
SCHEMA = 1

#: From a schema number to the step that takes a vent from it to the next one.
STEPS: dict[int, Callable[[FreeCAD.DocumentObject], None]] = {}


class NewerDocument(ValueError):
    """A vent that a later release of the add-on has written; the text says what to do."""


def migrate(obj: FreeCAD.DocumentObject) -> None:
    """Takes ``obj`` from its own schema to the present one; does nothing to a newer one."""
    while obj.Schema < SCHEMA:
        STEPS[obj.Schema](obj)
        obj.Schema += 1


def refuse_newer(obj: FreeCAD.DocumentObject) -> None:
    """Raises NewerDocument for a vent that this release does not know how to read."""
    if obj.Schema > SCHEMA:
        raise NewerDocument(say("“{name}” was written by a newer Louverwright (schema {its}; this one knows "
                                "{ours}). It keeps its last shape; install the newer Louverwright to change it.",
                                name=obj.Label, its=obj.Schema, ours=SCHEMA))
