# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cut list as CSV (RFC 4180, with a byte order mark so that spreadsheets read its signs): one row a cut or joint.

A part that is left out has one row, after all others.
"""

from __future__ import annotations

import csv
import io

from .job import Job
from .part_sheet import PartSheet, left_out_sheets, part_sheets

HEAD = ("mark", "part", "pieces", "vents", "pieces for all vents", "hand", "stock", "blank", "finished", "grain",
        "faces out", "where", "weight each", "order of cuts", "meets", "nested setting", "advice", "note", "step", "what",
        "set or face", "lay or size", "mark at")

#: What stands in place of a cut in the one row of a part that is left out.
LEFT_OUT = "left out: not made here"

#: How many of the rows are no parts; by which columns a row is known; and which columns hold whole numbers.
HEAD_ROWS = 2
KEY_COLUMNS = (HEAD.index("mark"), HEAD.index("what"))
COUNT_COLUMNS = tuple(HEAD.index(name) for name in ("pieces", "vents", "pieces for all vents", "step"))

#: A spreadsheet takes a cell that begins with one of these for a formula.
_FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n")


def to_csv(job: Job) -> str:
    """The whole file as text; lengths in the report's unit, which the second line names."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    for row in cut_list_rows(job):
        writer.writerow([safe(cell) for cell in row])
    return "\ufeff" + out.getvalue()


def cut_list_rows(job: Job) -> tuple[tuple[str, ...], ...]:
    """``HEAD``, the line of the job, then a row for each cut or joint, as the texts are; its writer makes them safe."""
    head = ["", job.title, "for one vent", str(job.vents),
            f"make {job.vents} of each" if job.vents > 1 else "", "", job.writer.unit, f"fingerprint {job.fingerprint}",
            f"revision {job.revision}", job.date]
    rows = [HEAD, (*head, *[""] * (len(HEAD) - len(head)))]
    for sheet in part_sheets(job):
        rows += _rows(sheet, job)
    rows += [(*_head(sheet, job), "", LEFT_OUT, "", "", "") for sheet in left_out_sheets(job)]
    return tuple(rows)


def _rows(sheet: PartSheet, job: Job) -> list[tuple[str, ...]]:
    head = _head(sheet, job)
    steps = [(row.number, row.title, row.set_to, row.lay, row.mark_at) for row in sheet.cuts]
    steps += [("", row.name, row.face, row.size, row.position) for row in sheet.joints]
    return [(*head, *step) for step in steps]


def _head(sheet: PartSheet, job: Job) -> tuple[str, ...]:
    """What each row of a part begins with."""
    return (sheet.mark, sheet.name, sheet.count, str(job.vents), str(job.count(sheet.part)), sheet.hand, sheet.stock,
            sheet.blank, sheet.finished, sheet.grain, sheet.outside, sheet.where, sheet.weight, sheet.order, sheet.meets,
            sheet.nested, " ".join(sheet.advice), sheet.note)


def safe(cell: str) -> str:
    """A user's text that a spreadsheet would run as a formula gets an apostrophe before it."""
    return f"'{cell}" if cell.startswith(_FORMULA) else cell
