# SPDX-License-Identifier: LGPL-2.1-or-later
"""Every set of papers that a job can be printed as, in one table: what makes it, and what it is called.

A set is one errand: to the saw, to the yard, to the bench, to the roof.  Sets know nothing of each other.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path

from ..report.assembly_book import assembly_book
from ..report.bench import bench_report
from ..report.job import Job
from ..report.lift import lift_report
from ..report.page import Report
from ..report.take_offs import take_offs
from .buying import write_buying
from .checks_papers import write_checks
from .drawings import write_drawings
from .labels import write_labels
from .papers import write_pages, write_papers
from .templates import write_templates


@dataclass(frozen=True)
class PaperSet:
    """A set by its name on the command line, what it is in words, and what writes it into a folder."""

    name: str
    words: str
    write: Callable[[Job, Path], list[Path]]


def pages(name: str, make: Callable[[Job], Report]) -> Callable[[Job, Path], list[Path]]:
    """A writer of one report as ``name``.html and ``name``.pdf."""
    return lambda job, folder: write_pages(make(job), name, folder, job.spec.paper_size)


#: In the order in which they are needed.
SETS = (
    PaperSet("cuts", "the cut report: every part, its cuts and joints, set-ups for the saw", write_papers),
    PaperSet("buying", "the buying list: what to buy, and what is cut from each stick and sheet", write_buying),
    PaperSet("drawings", "shop drawings: general arrangement, a sheet a stage, sheets of parts", write_drawings),
    PaperSet("bench", "the bench sheet: dados and story sticks, laps, rips by stock, holes, test pairs, order of cuts",
             pages("bench", bench_report)),
    PaperSet("templates", "full-size templates: sheets to print and glue together, and each as a DXF file", write_templates),
    PaperSet("labels", "labels to cut out, one a piece: mark, name, stage, hand, face, up, edge to the gauge", write_labels),
    PaperSet("assembly", "the assembly book: steps with pictures, fastening plan, bench blocks, fixing to the roof",
             pages("assembly-book", assembly_book)),
    PaperSet("take-offs", "take-offs: primer and paint, screen, screws, covering, sealant, flashing, mast",
             pages("take-offs", take_offs)),
    PaperSet("lift", "the lift plan: weights, centres, people, slings, wind", pages("lift-plan", lift_report)),
    PaperSet("checks", "the checks: dry fit, rain, air, movement of the wood, what errors at the saw do", write_checks),
)
BY_NAME = {each.name: each for each in SETS}


def write_sets(job: Job, folder: Path, names: Iterable[str] = tuple(BY_NAME)) -> list[Path]:
    """Writes the sets named into ``folder`` and returns their papers.

    Raises KeyError for a name that is none, OSError where the folder cannot be written, PdfError where Qt is missing.
    """
    return [path for name in names for path in BY_NAME[name].write(job, folder)]
