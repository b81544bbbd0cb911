# SPDX-License-Identifier: LGPL-2.1-or-later
"""Reading the add-on's own data files, and the user's.  Standard library and the core only.

Any room but core and report may come here: those two are handed what they need.
"""

from __future__ import annotations

import json
import re
from collections import Counter
from functools import lru_cache
from pathlib import Path
from typing import Any

from .core.saying import Text, say
from .core.stock import StockList, StockListError, merged, read_stock_list
from .core.texts import brief
from .folders import RESOURCES

#: The stock lists that come with the add-on.
SHIPPED = ("us", "eu")
#: No file of ours is larger than this (bytes), or nested deeper: the exact numbers of a report are some 0.3 MB, 7 deep.
MOST_BYTES, DEEPEST = 8_000_000, 40
_HALF = re.compile("[\ud800-\udfff]")


class FileFault(ValueError):
    """A file that cannot be used as it is; the text is a sentence without its full stop."""


class NotJson(FileFault):
    """A file whose content is not JSON; the text says where."""


def read_json(path: Path) -> Any:
    """A JSON file's content: UTF-8 with or without the mark that some editors set before it, no key twice in one object.

    Raises OSError as the library does, and FileFault for what is no file, no JSON, or larger or deeper than any of ours.
    """
    if path.exists() and not (path.is_file() or path.is_dir()):    # a pipe would be waited for, a device might never end
        raise FileFault(say("it is a pipe or a device; give a file"))
    with path.open("rb") as stream:
        content = stream.read(MOST_BYTES + 1)
    if len(content) > MOST_BYTES:
        raise FileFault(say("it is larger than {most} MB", most=MOST_BYTES // 1_000_000))
    try:
        data = json.loads(content.decode("utf-8-sig"), object_pairs_hook=_object)
    except UnicodeDecodeError as error:
        raise FileFault(say("it is not written in UTF-8; save it in that encoding")) from error
    except FileFault:
        raise
    except (ValueError, RecursionError) as error:
        raise NotJson(str(error)) from error
    _require_plain(data)
    return data


def _object(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    """An object of JSON; of two values under one key nobody can tell which is meant."""
    found = dict(pairs)
    if len(found) < len(pairs):
        twice = next(key for key, times in Counter(key for key, _ in pairs).items() if times > 1)
        raise FileFault(say("the key “{key}” stands twice in one object; keep one", key=brief(twice)))
    return found


def _require_plain(data: Any) -> None:
    """Raises FileFault for values that nothing of ours is nested deep enough for, and for texts that no file can hold."""
    layer, depth = [data], 0
    while layer:
        if depth > DEEPEST:
            raise FileFault(say("it is nested more than {most} deep", most=DEEPEST))
        texts = [each for each in layer if isinstance(each, str)]
        texts += [key for each in layer if isinstance(each, dict) for key in each]
        if any(not text.isascii() and _HALF.search(text) for text in texts):
            raise FileFault(say("a text in it has half of a character (\\ud800 to \\udfff); take that out"))
        layer = [inner for each in layer if isinstance(each, (dict, list))
                 for inner in (each.values() if isinstance(each, dict) else each)]
        depth += 1


def why_unread(error: OSError | FileFault) -> Text:
    """The sentence for a file that was not read."""
    if isinstance(error, OSError):
        return say("The file cannot be read: {error}.", error=error.strerror or error)
    if isinstance(error, NotJson):
        return say("It is not JSON: {error}.", error=error.args[0])
    return say("The file cannot be read: {error}.", error=error.args[0])


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
    try:
        data = read_json(_path_of(name, folder))
    except (OSError, ValueError) as error:
        why = error.strerror or error if isinstance(error, OSError) else error
        raise StockListError([("stock_list", say("The stock list “{name}” cannot be read: {error}. Give us, eu, or the "
                                                 "path of a list of your own.", name=brief(name), error=why))]) from error
    base = data.get("base", "us") if isinstance(data, dict) else "us"
    return merged(_shipped(base if base in SHIPPED else "us"), read_stock_list(data))


def _path_of(name: str, folder: Path | None) -> Path:
    """The path of a list of the user's own.

    Raises FileFault for one on another machine: a document from a stranger must not make this one call there.
    """
    if name.replace("\\", "/").startswith("//"):
        raise FileFault(say("it lies on another machine, and nothing is fetched from a network; copy it beside your file"))
    return (folder or Path.cwd()) / name
