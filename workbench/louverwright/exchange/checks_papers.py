# SPDX-License-Identifier: LGPL-2.1-or-later
"""The checks of a job, written to a folder: HTML, PDF and JSON."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from ..report.checks_page import checks_report, to_checks_json
from ..report.html import to_html
from ..report.job import Job
from .papers import write_whole
from .pdf import write_pdf


def write_checks(job: Job, folder: Path) -> list[Path]:
    """Writes the checks into ``folder`` (made if need be) and returns their paths.

    Raises OSError where the folder cannot be written, PdfError where Qt is missing.
    """
    report, paper = checks_report(job), job.spec.paper_size
    makers: dict[str, Callable[[Path], object]] = {
        "checks.html": lambda path: path.write_text(to_html(report, paper), encoding="utf-8"),
        "checks.pdf": lambda path: write_pdf(report, path, paper),
        "checks.json": lambda path: path.write_text(to_checks_json(job), encoding="utf-8"),
    }
    folder.mkdir(parents=True, exist_ok=True)
    return [write_whole(folder / name, make) for name, make in makers.items()]
