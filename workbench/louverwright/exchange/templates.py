# SPDX-License-Identifier: LGPL-2.1-or-later
"""Full-size templates written to a folder: a PDF of lying pages, and a DXF file for each template."""

from __future__ import annotations

from pathlib import Path

from ..report.dxf import to_dxf
from ..report.job import Job
from ..report.template import templates
from ..report.template_pages import template_sheets
from .papers import write_whole
from .pdf import write_sheets

PDF, FOLDER = "templates.pdf", "templates"


def write_templates(job: Job, folder: Path) -> list[Path]:
    """Writes ``templates.pdf`` and ``templates/MARK.dxf`` into ``folder`` and returns their paths.

    Raises OSError where the folder cannot be written, PdfError where Qt is missing.
    """
    inside = folder / FOLDER
    inside.mkdir(parents=True, exist_ok=True)
    written = [write_whole(folder / PDF, lambda path: write_sheets(template_sheets(job), path))]
    inches = job.spec.paper_units != "mm"
    for each in templates(job):
        text = to_dxf(each, inches)
        written.append(write_whole(inside / f"{each.part.mark}.dxf", lambda path, text=text: path.write_text(text, "ascii")))
    return written
