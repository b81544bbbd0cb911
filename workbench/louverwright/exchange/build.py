# SPDX-License-Identifier: LGPL-2.1-or-later
"""The main job without a window: a scenario in, the model and its papers out."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path
from typing import Any

from ..places import SHIPPED
from ..report.job import Job
from .papers import write_papers, write_whole
from .scenario import Scenario

Say = Callable[[str], None]


def write_model(job: Job, scenario: Scenario, folder: Path, say: Say) -> list[Path]:
    """Makes the vent, or the row of them, in a new document and writes ``model.FCStd`` and ``model.step``.

    Raises what FreeCAD raises, RuntimeError where the model does not come out as laid out.
    """
    import FreeCAD

    from ..features.row import make_row, row_shape

    document = FreeCAD.newDocument("Vent")
    try:
        say("building the model")
        shape = row_shape(make_row(document, scenario.parts, **_with_stock_path(scenario)))
        count, wanted = len(shape.Solids), int(job.figures["pieces_of_all_vents"])
        if count != wanted:
            raise RuntimeError(f"The model has {count} solids for {wanted} pieces.")
        folder.mkdir(parents=True, exist_ok=True)
        say(f"writing model.FCStd ({count} pieces)")
        model = write_whole(folder / "model.FCStd", lambda path: document.saveCopy(str(path)))
        say("writing model.step")
        step = write_whole(folder / "model.step", lambda path: shape.exportStep(str(path)))
        return [model, step]
    finally:
        FreeCAD.closeDocument(document.Name)


def _with_stock_path(scenario: Scenario) -> dict[str, Any]:
    """The scenario's values, a stock list of the user's own by its whole path: the document has no folder yet."""
    values = dict(scenario.values)
    name = values.get("stock_list", "")
    if name and name not in SHIPPED:
        values["stock_list"] = str((scenario.folder / name).resolve())
    return values


def write_all(job: Job, scenario: Scenario, folder: Path, say: Say) -> list[Path]:
    """The model and the four papers."""
    written = write_model(job, scenario, folder, say)
    say("writing the report: HTML, PDF, CSV, JSON")
    return [*written, *write_papers(job, folder)]
