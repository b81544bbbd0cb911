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

#: A spreadsheet takes a cell that begins with one of these for a formula.
_FORMULA = ("=", "+", "-", "@", "\t", "\r")


def to_csv(job: Job) -> str:
    """The whole file as text; lengths in the report's unit, which the second line names."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow(HEAD)
    head = ["", safe(f"{job.spec.project or 'Louvered roof vent'}"), "for one vent", str(job.vents),
            f"make {job.vents} of each" if job.vents > 1 else "", "", job.writer.unit, f"fingerprint {job.fingerprint}",
            f"revision {job.revision}", job.date]
    writer.writerow(head + [""] * (len(HEAD) - len(head)))
    for sheet in part_sheets(job):
        for row in _rows(sheet, job):
            writer.writerow([safe(cell) for cell in row])
    for sheet in left_out_sheets(job):
        writer.writerow([safe(cell) for cell in (*_head(sheet, job), "", LEFT_OUT, "", "", "")])
    return "\ufeff" + out.getvalue()


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
