# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where the add-on's own data files lie, and reading them.  Standard library and the core only.

Any room but core and report may come here: those two are handed what they need.
"""

from __future__ import annotations

import json
from functools import lru_cache
from pathlib import Path
from typing import Any

from .core.saying import say
from .core.stock import StockList, StockListError, merged, read_stock_list

#: The add-on's folder, which holds workbench, icons and resources.
ADDON = Path(__file__).resolve().parents[2]
RESOURCES = ADDON / "resources"
ICONS = ADDON / "icons"
#: Sheets for TechDraw, by their papers' names.
TEMPLATES = RESOURCES / "templates"
#: Where FreeCAD finds our texts in other languages.
TRANSLATIONS = RESOURCES / "translations"
#: The stock lists that come with the add-on.
SHIPPED = ("us", "eu")


def read_json(path: Path) -> Any:
    """A JSON file's content.  Raises OSError or ValueError (with line and column) as the library does."""
    return json.loads(path.read_text(encoding="utf-8"))


@lru_cache(maxsize=8)
def _shipped(name: str) -> StockList:
    return read_stock_list(read_json(RESOURCES / "stock" / f"{name}.json"))


def stock_list(name: str, folder: Path | None = None) -> StockList:
    """The stock list ``us`` or ``eu``, or the user's own list in a file, laid over the shipped one it names.

    A relative path is taken from ``folder``.  Raises StockListError with a sentence for a file that
    cannot be read, and with every finding for one that is wrong.
    """
    if name in SHIPPED:
        return _shipped(name)
    path = (folder or Path.cwd()) / name
    try:
        data = read_json(path)
    except (OSError, ValueError) as error:
        raise StockListError([("stock_list", say("The stock list “{name}” cannot be read: {error}. Give us, eu, or the "
                                                 "path of a list of your own.", name=name, error=error))]) from error
    base = data.get("base", "us") if isinstance(data, dict) else "us"
    return merged(_shipped(base if base in SHIPPED else "us"), read_stock_list(data))
