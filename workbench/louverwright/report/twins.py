# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pieces of two kinds that are cut alike: each kind keeps its mark, and the paper says to cut them together."""

from __future__ import annotations

from ..core.assembly import Assembly, Part
from ..core.marks import same_pieces


def twin_text(part: Part, assembly: Assembly) -> str:
    """The other marks of the same piece, in words; '' where there are none."""
    marks = same_pieces(assembly).get(part.mark, ())
    return f"as {', '.join(marks)}: cut them together" if marks else ""


def twins_line(assembly: Assembly) -> str:
    """One sentence for the set-up sheet: which marks are the same piece; '' where none are."""
    found = same_pieces(assembly)
    groups = dict.fromkeys(tuple(sorted((mark, *others), key=[p.mark for p in assembly.parts].index))
                           for mark, others in found.items())
    told = "; ".join("\u00a0= ".join(group) for group in groups)
    return f"The same piece under two marks, for two places; cut them together and mark them apart: {told}." if told else ""
