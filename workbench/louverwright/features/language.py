# SPDX-License-Identifier: LGPL-2.1-or-later
"""The user's language: every visible text goes through here, and FreeCAD is asked for its translation."""

from __future__ import annotations

from typing import Any, TypeVar

from FreeCAD import Qt

from ..core.saying import Text, say

#: The context of our texts in the translation files.
CONTEXT = "Louverwright"

_Error = TypeVar("_Error", bound=Exception)


def tr(text: str, /, **values: Any) -> str:
    """The text in the user's language, English where there is none; ``{name}`` stands for a value."""
    return translated(say(text, **values) if values else text)


def translated(text: str | Exception) -> str:
    """A sentence that the core has said, or that an error of ours carries, in the user's language."""
    if isinstance(text, Exception):
        text = text.args[0] if text.args and isinstance(text.args[0], str) else str(text)
    return text.told(_look_up) if isinstance(text, Text) else _look_up(text)


def in_user_words(error: _Error) -> _Error:
    """The same error with its text in the user's language: for FreeCAD, which shows it as an object's status."""
    error.args = (translated(error),)
    return error


def _look_up(text: str) -> str:
    return str(Qt.translate(CONTEXT, text)) if text else ""
