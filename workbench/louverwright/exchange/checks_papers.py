# SPDX-License-Identifier: LGPL-2.1-or-later
"""The checks of a job, written to a folder: HTML, PDF and JSON."""

from __future__ import annotations

from pathlib import Path

from ..report.checks_page import checks_report, to_checks_json
from ..report.job import Job
from .papers import write_pages, write_whole


def write_checks(job: Job, folder: Path) -> list[Path]:
    """Writes the checks into ``folder`` (made if need be) and returns their paths.

    Raises OSError where the folder cannot be written, PdfError where Qt is missing.
    """
    written = write_pages(checks_report(job), "checks", folder, job.spec.paper_size)
    record = to_checks_json(job)
    return [*written, write_whole(folder / "checks.json", lambda path: path.write_text(record, encoding="utf-8"))]
