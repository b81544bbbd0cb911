# SPDX-License-Identifier: LGPL-2.1-or-later
"""The four papers of a job, written to a folder: whole or not at all."""

from __future__ import annotations

import tempfile
from collections.abc import Callable, Iterable, Mapping
from datetime import date
from pathlib import Path
from typing import Any

from .. import __version__
from ..core.checks import checked_spec
from ..core.part_wish import NO_WISHES, Wishes
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
    stock = stock_list(values.get("stock_list", "us") or "us", folder)
    spec = checked_spec(values, stock, parts)
    return Job(spec, (on or date.today()).isoformat(), revision, __version__)


def write_papers(job: Job, folder: Path, names: Iterable[str] = tuple(PAPERS)) -> list[Path]:
    """Writes the papers named into ``folder`` (made if need be) and returns their paths.

    Each is first written beside its place and then moved there.  Raises OSError where the folder cannot be
    written, PdfError where Qt is missing.
    """
    report = document(job)
    paper = job.spec.paper_size
    makers: dict[str, Callable[[Path], object]] = {
        "report.html": lambda path: path.write_text(to_html(report, paper), encoding="utf-8"),
        "report.pdf": lambda path: write_pdf(report, path, paper),
        "cuts.csv": lambda path: path.write_bytes(to_csv(job).encode("utf-8")),
        "cuts.json": lambda path: path.write_text(to_json(job), encoding="utf-8"),
    }
    folder.mkdir(parents=True, exist_ok=True)
    return [write_whole(folder / name, makers[name]) for name in names]


def write_pages(report: Report, name: str, folder: Path, paper: str) -> list[Path]:
    """Writes a report as ``name``.html and ``name``.pdf into ``folder`` (made if need be).  Raises as ``write_papers``."""
    folder.mkdir(parents=True, exist_ok=True)
    return [write_whole(folder / f"{name}.html", lambda path: path.write_text(to_html(report, paper), encoding="utf-8")),
            write_whole(folder / f"{name}.pdf", lambda path: write_pdf(report, path, paper))]


def write_whole(path: Path, make: Callable[[Path], object]) -> Path:
    """Lets ``make`` write a file of that name in a folder beside it, and moves it into place once it is whole.

    A file that is there already stays as it is when ``make`` fails.
    """
    with tempfile.TemporaryDirectory(prefix=".unfinished-", dir=path.parent) as folder:
        unfinished = Path(folder) / path.name
        make(unfinished)
        unfinished.replace(path)
    return path
