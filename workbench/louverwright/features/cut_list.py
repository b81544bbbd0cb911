# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cut list as a spreadsheet in the document, with room for the user's notes right of it.

The sheet belongs to a vent through a hidden link, which makes no dependency, and is brought up to date when it is asked
for.  Rows are known by their mark and what is done, so that what the user has written stands by the same cut afterwards; of
a row that the cut list has no more, notes go to the bottom with it.  Cells of ours are text that runs as no formula.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from difflib import SequenceMatcher

import FreeCAD

from .language import tr
from .model import owned_by
from .properties import ensure, result_row

#: The number of the arrangement of the properties.
SCHEMA = 1
#: The property by which a vent's cut list is known.
CUT_LIST = "CutList"
ROWS = (
    result_row("App::PropertyInteger", CUT_LIST, "Louverwright", "Number of the arrangement of these properties.", True),
    result_row("App::PropertyLinkHidden", "Vent", "Louverwright", "The vent whose cut list this is.", True),
)
#: In the papers' language, as all that is in the sheet.
NOTES, GONE = "your notes", "No longer in the cut list:"
_CELL = re.compile(r"([A-Z]{1,2})([1-9][0-9]*)\Z")

#: Mark, what is done, and how many such rows stand above.
Key = tuple[str, ...]


@dataclass(frozen=True)
class CutList:
    """Rows of texts: the first ``head_rows`` are no parts; ``key_columns`` tell which row it is, ``count_columns`` hold whole
    numbers (columns counted from 0)."""

    rows: tuple[tuple[str, ...], ...]
    head_rows: int
    key_columns: tuple[int, ...]
    count_columns: tuple[int, ...]

    @property
    def width(self) -> int:
        """How many columns it takes."""
        return len(self.rows[0])


def cut_list_of(vent: FreeCAD.DocumentObject) -> FreeCAD.DocumentObject | None:
    """The vent's cut list; None if there is none."""
    return next(iter(owned_by(vent, CUT_LIST)), None)


def update_cut_list(vent: FreeCAD.DocumentObject, listed: CutList) -> FreeCAD.DocumentObject:
    """Writes the rows into the vent's cut list, which is made if there is none, and recomputes it; returns the sheet."""
    sheet = cut_list_of(vent) or _make(vent, listed)
    sheet.recompute()    # what was typed last is a property only then
    there = _there(sheet, listed)
    final = _final_rows(there, listed)
    _move_rows(sheet, there, list(final), listed.head_rows)
    for number, row in enumerate(listed.rows[:listed.head_rows], 1):
        _write(sheet, number, row, listed.count_columns)
    for number, row in enumerate(final.values(), listed.head_rows + 1):
        _write(sheet, number, row, listed.count_columns)
    if not sheet.getContents(f"{_letters(listed.width)}1"):
        sheet.set(f"{_letters(listed.width)}1", f"'{NOTES}")
    sheet.recompute()
    return sheet


def _make(vent: FreeCAD.DocumentObject, listed: CutList) -> FreeCAD.DocumentObject:
    sheet = vent.Document.addObject("Spreadsheet::Sheet", "CutList")
    sheet.Label = tr("Cut list of {vent}", vent=vent.Label)
    for row in ROWS:
        ensure(sheet, row)
    setattr(sheet, CUT_LIST, SCHEMA)
    sheet.Vent = vent
    last = _letters(listed.width)
    sheet.setStyle(f"A1:{last}1", "bold", "add")
    sheet.setColumnWidth(last, 260)
    return sheet


# ---- what is there


@dataclass(frozen=True)
class _Row:
    """A row of the sheet before it is brought up to date: our texts, and what the user has right of them, by column."""

    texts: tuple[str, ...]
    users: Mapping[str, str]


def _there(sheet: FreeCAD.DocumentObject, listed: CutList) -> dict[Key, _Row]:
    """The rows under the head, down to the last that has a mark, in their order."""
    used: dict[int, dict[str, str]] = {}
    for letters, number in (match.groups() for match in map(_CELL.match, sheet.PropertiesList) if match):
        used.setdefault(int(number), {})[letters] = _content(sheet, f"{letters}{number}")
    ours = [_letters(column) for column in range(listed.width)]
    last = max((number for number, cells in used.items() if cells.get("A")), default=0)
    found = []
    for number in range(listed.head_rows + 1, last + 1):
        cells = used.get(number, {})
        texts = tuple(cells.get(letters, "").removeprefix("'") for letters in ours)
        found.append(_Row(texts, {letters: text for letters, text in cells.items() if letters not in ours}))
    return dict(zip(_keys((row.texts for row in found), listed.key_columns), found, strict=True))


def _content(sheet: FreeCAD.DocumentObject, cell: str) -> str:
    """What a cell holds, as ``set`` takes it: text with an apostrophe before it, which FreeCAD 0.20 does not tell."""
    content = str(sheet.getContents(cell))
    if sheet.getTypeIdOfProperty(cell) != "App::PropertyString":
        return content
    value = sheet.get(cell)
    return f"'{value}" if content in (value, f"'{value}") else content


def _keys(rows: Iterable[Sequence[str]], columns: tuple[int, ...]) -> list[Key]:
    """A key for each row; of rows that say the same the second has another than the first."""
    seen: dict[Key, int] = {}
    keys = []
    for row in rows:
        key = tuple(row[column] for column in columns)
        seen[key] = seen.get(key, 0) + 1
        keys.append((*key, str(seen[key])))
    return keys


# ---- bringing it up to date


def _final_rows(there: Mapping[Key, _Row], listed: CutList) -> dict[Key, tuple[str, ...]]:
    """The rows as they are to stand under the head: the list's, then those that are gone and have something of the user's."""
    rows = listed.rows[listed.head_rows:]
    final = dict(zip(_keys(rows, listed.key_columns), rows, strict=True))
    line = (GONE, *[""] * (listed.width - 1))
    (separator,) = _keys([line], listed.key_columns)
    gone = {key: row.texts for key, row in there.items() if row.users and key not in final and key != separator}
    if gone or (separator in there and there[separator].users):
        final |= {separator: line, **gone}
    return final


def _move_rows(sheet: FreeCAD.DocumentObject, there: Mapping[Key, _Row], final: list[Key], head_rows: int) -> None:
    """Takes rows out and puts rows in, so that FreeCAD moves what the user has along, formulas and names too.

    What has to change its place among the others is written anew where it belongs.
    """
    old = list(there)
    steps = SequenceMatcher(None, old, final, autojunk=False).get_opcodes()
    stayed: set[Key] = set()
    for what, old_from, old_to, new_from, new_to in reversed(steps):    # from the bottom: what is above stays where it is
        if what == "equal":
            stayed |= set(old[old_from:old_to])
            continue
        row = str(head_rows + 1 + old_from)
        if old_to > old_from:
            sheet.removeRows(row, old_to - old_from)
        if new_to > new_from:
            sheet.insertRows(row, new_to - new_from)
    for number, key in enumerate(final, head_rows + 1):
        if key in there and key not in stayed:
            for letters, content in there[key].users.items():
                sheet.set(f"{letters}{number}", content)


def _write(sheet: FreeCAD.DocumentObject, number: int, row: Sequence[str], count_columns: tuple[int, ...]) -> None:
    """Our cells of one row: whole numbers as such, all else as text."""
    for column, text in enumerate(row):
        counts = column in count_columns and text.isascii() and text.isdigit()
        sheet.set(f"{_letters(column)}{number}", text if counts or not text else f"'{text}")


def _letters(column: int) -> str:
    """A column's name, counted from 0: A … Z, AA …"""
    return chr(65 + column) if column < 26 else chr(64 + column // 26) + chr(65 + column % 26)
