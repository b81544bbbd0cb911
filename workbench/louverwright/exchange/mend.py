# SPDX-License-Identifier: LGPL-2.1-or-later
"""A part that came out wrong: what the user writes of it read, and the answer's papers written."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path

from ..core.mend import SIZE_NAMES, MendError, Wrong, mend
from ..core.units import ReadError, parse_length
from ..report.html import to_html
from ..report.job import Job
from ..report.mend import mending_report, to_mend_json
from ..report.mend_words import Repair
from .papers import write_together

#: File name → what it holds, in the order of writing.
PAPERS = {"mend.html": "what can be done about the part, for a browser", "mend.json": "its exact numbers"}


def repair_of(job: Job, mark: str, sizes: Mapping[str, str], count: int = 0, lost: bool = False, cut: str = "") -> Repair:
    """The answer to what a user tells: sizes as texts by their names (a bare number in the paper's unit), '' for as drawn.

    ``count`` 0 stands for all pieces of the mark; ``cut`` is a list of marks with commas.  Raises MendError with every
    finding.
    """
    unit = "mm" if job.spec.paper_units == "mm" else "in"
    real: list[float | None] = []
    findings: list[tuple[str, str]] = []
    for name in SIZE_NAMES:
        text = sizes.get(name, "").strip()
        try:
            real.append(parse_length(text, unit) if text else None)
        except ReadError as error:
            real.append(None)
            findings.append((name, error.args[0]))
    if findings:
        raise MendError(findings)
    length, width, thickness = real
    marks = tuple(each.strip() for each in cut.split(",") if each.strip())
    return Repair(job, mend(job.spec, Wrong(mark.strip(), count, (length, width, thickness), lost, marks)))


def write_mending(repair: Repair, folder: Path) -> list[Path]:
    """Writes ``mend.html`` and ``mend.json`` into ``folder`` (made if need be).  Raises OSError."""
    makers: dict[str, Callable[[Path], object]] = {
        "mend.html": lambda path: path.write_text(to_html(mending_report(repair), repair.job.spec.paper_size),
                                                  encoding="utf-8"),
        "mend.json": lambda path: path.write_text(to_mend_json(repair), encoding="utf-8"),
    }
    return write_together(folder, {name: makers[name] for name in PAPERS})
