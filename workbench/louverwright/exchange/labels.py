# SPDX-License-Identifier: LGPL-2.1-or-later
"""Labels for the pieces written to a folder: a PDF of lying pages to cut up."""

from __future__ import annotations

from pathlib import Path

from ..report.job import Job
from ..report.labels import label_sheets
from .papers import write_whole
from .pdf import write_sheets

PDF = "labels.pdf"


def write_labels(job: Job, folder: Path) -> list[Path]:
    """Writes ``labels.pdf`` into ``folder`` (made if need be) and returns its path.

    Raises OSError where the folder cannot be written, PdfError where Qt is missing.
    """
    folder.mkdir(parents=True, exist_ok=True)
    return [write_whole(folder / PDF, lambda path: write_sheets(label_sheets(job), path))]
