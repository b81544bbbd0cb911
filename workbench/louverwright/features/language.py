# SPDX-License-Identifier: LGPL-2.1-or-later
"""The user's language: every visible text goes through ``tr``, which asks FreeCAD for its translation."""

from __future__ import annotations

from typing import Any

from FreeCAD import Qt

#: The one context of our texts in the translation files.
CONTEXT = "Louverwright"


def tr(text: str, /, **values: Any) -> str:
    """The text in the user's language, English where there is none; ``{name}`` stands for a value."""
    told = str(Qt.translate(CONTEXT, text))
    return told.format(**values) if values else told
