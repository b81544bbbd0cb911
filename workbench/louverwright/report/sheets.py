# SPDX-License-Identifier: LGPL-2.1-or-later
"""Whole pages that are drawn rather than set: a drawing that is as large as the paper, with the page's name."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from .drawing import Drawing

PAPERS: Mapping[str, tuple[float, float]] = MappingProxyType({"A4": (210.0, 297.0), "Letter": (215.9, 279.4)})
"""Width and height, upright, in millimetres."""
#: What drawn pages may be on: the papers of reports, and the next larger (ISO 216; ANSI/ASME Y14.1 B).
SHEETS: Mapping[str, tuple[float, float]] = MappingProxyType({**PAPERS, "A3": (297.0, 420.0), "Tabloid": (279.4, 431.8)})
#: The next larger paper, for drawings.
LARGER: Mapping[str, str] = MappingProxyType({"A4": "A3", "Letter": "Tabloid"})


@dataclass(frozen=True)
class Sheet:
    """One page: its name in the set, and a drawing that covers the paper from corner to corner, at full size."""

    name: str
    drawing: Drawing


@dataclass(frozen=True)
class SheetSet:
    """Sheets of one paper, all lying: the file's title, the paper's name, and the sheets in order."""

    title: str
    paper: str
    sheets: tuple[Sheet, ...]


def lying(paper: str) -> tuple[float, float]:
    """Width and height of a paper laid on its long side (mm).  Raises ValueError for one that is not in SHEETS."""
    if paper not in SHEETS:
        raise ValueError(f"Paper {paper!r} is not one of {', '.join(SHEETS)}.")
    short, long = SHEETS[paper]
    return long, short
