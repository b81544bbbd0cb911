# SPDX-License-Identifier: LGPL-2.1-or-later
"""All marks of a vent as a list to look in, in the report's own words; and looking in it."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import astuple, dataclass

from ..core.saying import say
from .job import Job
from .part_sheet import stock_text
from .place_words import part_name

#: What the columns are called.
HEADS = (say("Mark"), say("Part"), say("Pieces"), say("Stock"), say("Length × width × thickness"))


@dataclass(frozen=True)
class MarkRow:
    """One mark: what it is, how many pieces of one vent carry it, what they are cut from, and the size of the blank."""

    mark: str
    name: str
    pieces: str
    stock: str
    size: str

    @property
    def cells(self) -> tuple[str, ...]:
        """The texts in the order of ``HEADS``."""
        return astuple(self)


def mark_rows(job: Job) -> tuple[MarkRow, ...]:
    """A row for each mark, in the order of the report."""
    write = job.writer
    return tuple(MarkRow(part.mark, part_name(part, job), str(part.count), stock_text(part, write),
                         write.size(*part.board.size)) for part in job.assembly.parts)


def matching(rows: Iterable[MarkRow], text: str) -> tuple[MarkRow, ...]:
    """The rows that have every word of ``text`` in them, small and capital letters alike.

    A text that is a mark finds that mark alone.
    """
    listed = tuple(rows)
    words = text.lower().split()
    exact = tuple(row for row in listed if words == [row.mark.lower()])
    return exact or tuple(row for row in listed if all(word in " ".join(row.cells).lower() for word in words))
