# SPDX-License-Identifier: LGPL-2.1-or-later
"""A record as JSON (RFC 8259) that is easy to compare: a line for each entry of each of its lists and records."""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping
from typing import Any


def json_text(record: Mapping[str, Any]) -> str:
    """The whole file as text.  Raises ValueError for a number that JSON cannot say."""
    return _block("{", (f"{_line(key)}: {_entries(value)}" for key, value in record.items()), "}", "") + "\n"


def _entries(value: Any) -> str:
    if isinstance(value, Mapping) and value:
        return _block("{", (f"{_line(key)}: {_line(each)}" for key, each in value.items()), "}", " ")
    if isinstance(value, list) and value:
        return _block("[", map(_line, value), "]", " ")
    return _line(value)


def _block(opened: str, lines: Iterable[str], closed: str, margin: str) -> str:
    return f"{opened}\n{margin} " + f",\n{margin} ".join(lines) + f"\n{margin}{closed}"


def _line(value: Any) -> str:
    return json.dumps(value, ensure_ascii=False, allow_nan=False)
