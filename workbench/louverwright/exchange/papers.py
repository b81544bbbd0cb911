# SPDX-License-Identifier: LGPL-2.1-or-later
"""The four papers of a job, written to a folder: whole or not at all."""

from __future__ import annotations

import errno
import tempfile
from collections.abc import Callable, Iterable, Mapping
from datetime import date
from pathlib import Path
from typing import Any

from .. import __version__
from ..core.checks import checked_spec
from ..core.part_wish import NO_WISHES, Wishes
from ..core.spec import REVISION, SpecError, text_finding
from ..core.texts import LONGEST_REVISION
from ..places import stock_list
from ..report.csv_file import to_csv
from ..report.document import document
from ..report.html import to_html
from ..report.job import Job
from ..report.json_file import to_json
from ..report.page import Report
from .pdf import write_pdf

#: File name → what it holds, in the order of writing.
PAPERS = {"report.html": "the report for a browser", "report.pdf": "the report for a printer",
          "cuts.csv": "the cut list for a spreadsheet", "cuts.json": "the exact numbers"}


def job_from_values(values: Mapping[str, Any], revision: str = "1", folder: Path | None = None,
                    on: date | None = None, parts: Wishes = NO_WISHES) -> Job:
    """A job from parameter values (mm, degrees) and wishes for single kinds, checked.

    Raises SpecError or StockListError with every finding.
    """
    wrong = text_finding(REVISION, revision, LONGEST_REVISION)
    if wrong:
        raise SpecError((wrong,))
    stock = stock_list(values.get("stock_list", "us") or "us", folder)
    spec = checked_spec(values, stock, parts)
    return Job(spec, (on or date.today()).isoformat(), revision, __version__)


def write_papers(job: Job, folder: Path, names: Iterable[str] = tuple(PAPERS)) -> list[Path]:
    """Writes the papers named into ``folder`` (made if need be) and returns their paths.

    All of them or none: papers of two states beside each other would have a joiner cut by one and set out by the other.
    Raises OSError where the folder cannot be written, PdfError where Qt is missing.
    """
    report = document(job)
    paper = job.spec.paper_size
    makers: dict[str, Callable[[Path], object]] = {
        "report.html": lambda path: path.write_text(to_html(report, paper), encoding="utf-8"),
        "report.pdf": lambda path: write_pdf(report, path, paper),
        "cuts.csv": lambda path: path.write_bytes(to_csv(job).encode("utf-8")),
        "cuts.json": lambda path: path.write_text(to_json(job), encoding="utf-8"),
    }
    return write_together(folder, {name: makers[name] for name in names})


def write_pages(report: Report, name: str, folder: Path, paper: str) -> list[Path]:
    """Writes a report as ``name``.html and ``name``.pdf into ``folder`` (made if need be).  Raises as ``write_papers``."""
    return write_together(folder, {
        f"{name}.html": lambda path: path.write_text(to_html(report, paper), encoding="utf-8"),
        f"{name}.pdf": lambda path: write_pdf(report, path, paper)})


def write_together(folder: Path, makers: Mapping[str, Callable[[Path], object]]) -> list[Path]:
    """Lets each maker write a file of its name, and moves them into ``folder`` (made if need be) once all are whole.

    They are written in a folder of their own in there that nobody else can read.  Files that are there already stay as they
    are when a maker fails.
    """
    folder.mkdir(parents=True, exist_ok=True)
    taken = next((folder / name for name in makers if (folder / name).is_dir()), None)
    if taken is not None:
        raise IsADirectoryError(errno.EISDIR, "a folder of that name is in the way", str(taken))
    with tempfile.TemporaryDirectory(prefix=".unfinished-", dir=folder) as beside:
        unfinished = [Path(beside) / name for name in makers]
        for path, make in zip(unfinished, makers.values(), strict=True):
            make(path)
        missing = [path.name for path in unfinished if not path.is_file()]
        if missing:
            raise FileNotFoundError(errno.ENOENT, "nothing was written", missing[0])
        return [path.replace(folder / path.name) for path in unfinished]


def write_whole(path: Path, make: Callable[[Path], object]) -> Path:
    """``write_together`` for one file."""
    return write_together(path.parent, {path.name: make})[0]
