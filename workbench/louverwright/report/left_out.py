# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is wished for single kinds of part, in words: own stock, notes, and the parts that are left out."""

from __future__ import annotations

from ..core.kinds import BY_ID, Kind
from ..core.layout import wishes_in_use
from .job import Job
from .part_sheet import PartSheet, left_out_sheets

#: Kinds that hold back air themselves, which the free area allows for by the screen factor.
SCREENS = ("louver.screen", "roof.gable.screen")


def marks_left_out(job: Job) -> str:
    """The marks of what is left out, with commas."""
    return ", ".join(part.mark for part in job.assembly.left_out)


def left_out_words(job: Job) -> tuple[str, ...]:
    """What the list of left-out parts says of itself; () where none are."""
    parts, write = job.assembly.left_out, job.writer
    if not parts:
        return ()
    lines = ["These parts are drawn but not made here: they are in no model, count or weight of this report. Sizes, marks, "
             "joints and free area are those of the vent with them in place. With them it weighs "
             f"{write.weight(job.figures['total_weight'] + job.figures['weight_left_out'])}, if they weigh what is drawn."]
    if any(part.kind.id in SCREENS for part in parts):
        lines.append("The free area allows for the screen that is left out: if the vent is to stay without one, set its "
                     "screen factor to 1; if another comes, to that one's.")
    lines.append("Parts may hold or stiffen others: lift and mount no vent before what is left out is in its place, unless "
                 "someone licensed to judge it says that it holds without.")
    return tuple(lines)


def left_out_row(sheet: PartSheet, job: Job) -> tuple[str, ...]:
    """A left-out part as the cut list has parts: where there are several vents, its pieces for one and for all."""
    counts = (sheet.count,) if job.vents == 1 else (sheet.count, str(job.count(sheet.part)))
    return (sheet.mark, sheet.name, *counts, sheet.stock, sheet.finished, sheet.weight, sheet.note)


def left_out_rows(job: Job) -> tuple[tuple[str, ...], ...]:
    """Every left-out part."""
    return tuple(left_out_row(sheet, job) for sheet in left_out_sheets(job))


def kind_text(kind: Kind) -> str:
    """A kind with its number and id: 'B1 leg, gable side (base.leg.gable)'."""
    return f"{kind.mark} {kind.name[0].lower()}{kind.name[1:]} ({kind.id})"


def wish_rows(job: Job) -> tuple[tuple[str, str, str, str], ...]:
    """Kind, own stock, whether it is left out or not in this vent, and note, of everything that is wished."""
    there = wishes_in_use(job.spec)
    rows = []
    for kind in (kind for kind in BY_ID.values() if kind.id in job.spec.parts):
        wish = job.spec.wish(kind)
        state = "; ".join(filter(None, ("left out" if wish.left_out else "",
                                        "" if kind.id in there else "not in this vent: kept for when it is")))
        rows.append((kind_text(kind), wish.stock_name, state, wish.note))
    return tuple(rows)
