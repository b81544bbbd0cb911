# SPDX-License-Identifier: LGPL-2.1-or-later
"""Sentences for the user that can be told in another language.

A ``Text`` is its English self, a ``str`` like any other, and remembers the template and the values that it was put
together from.  Whoever knows the user's language hands ``told`` a function that looks templates up.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping

#: From a template in English to the same in another language; one that is not known comes back as it is.
LookUp = Callable[[str], str]


class Text(str):
    """A sentence or a part of one in English.  Made by ``say`` and ``joined``; what is done to it as a ``str`` is English."""

    template: str
    values: Mapping[str, object]
    parts: tuple[str, ...] | None    # of what was joined

    def __new__(cls, english: str, template: str = "", values: Mapping[str, object] | None = None,
                parts: Iterable[str] | None = None) -> Text:
        self = super().__new__(cls, english)
        self.template, self.values = template, dict(values or {})
        self.parts = None if parts is None else tuple(parts)
        return self

    def told(self, look_up: LookUp) -> str:
        """The same in another language, its values and parts too, as far as they are Texts themselves."""
        template = look_up(self.template) if self.template else ""
        if self.parts is not None:
            return template.join(part.told(look_up) if isinstance(part, Text) else part for part in self.parts)
        values = {name: value.told(look_up) if isinstance(value, Text) else value for name, value in self.values.items()}
        return template.format(**values) if values else template


def say(template: str, /, **values: object) -> Text:
    """The template with its values, as ``str.format`` puts them in; without values it stands as it is, braces and all.

    A Text without values comes back as it is.  Raises KeyError for a name in the template that has no value.
    """
    if isinstance(template, Text) and not values:
        return template
    return Text(template.format(**values) if values else template, template, values)


def joined(between: str, parts: Iterable[str]) -> Text:
    """Texts one after the other with something between them; '' for none."""
    told = tuple(parts)
    return Text(between.join(told), between, parts=told)
