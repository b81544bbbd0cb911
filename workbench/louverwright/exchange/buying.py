# SPDX-License-Identifier: LGPL-2.1-or-later
"""The buying list and cutting diagrams of a job, written to a folder."""

from __future__ import annotations

from pathlib import Path

from ..report.buying import buying_csv, buying_list
from ..report.html import to_html
from ..report.job import Job
from .papers import write_together
from .pdf import write_pdf


def write_buying(job: Job, folder: Path) -> list[Path]:
    """Writes buying.html, buying.pdf and buying.csv and returns their paths.

    Raises OSError where the folder cannot be written, PdfError where Qt is missing.
    """
    report, paper = buying_list(job), job.spec.paper_size
    return write_together(folder, {
        "buying.html": lambda path: path.write_text(to_html(report, paper), encoding="utf-8"),
        "buying.pdf": lambda path: write_pdf(report, path, paper),
        "buying.csv": lambda path: path.write_bytes(buying_csv(job).encode("utf-8"))})
