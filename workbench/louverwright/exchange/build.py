# SPDX-License-Identifier: LGPL-2.1-or-later
"""The main job without a window: a scenario in, the model and its papers out."""

from __future__ import annotations

import zipfile
from collections.abc import Callable
from pathlib import Path
from typing import Any

from ..places import SHIPPED
from ..report.job import Job
from .papers import write_papers, write_together
from .scenario import Scenario

Say = Callable[[str], None]


class ModelError(RuntimeError):
    """The model could not be made or written; the text is a sentence for the user."""


def write_model(job: Job, scenario: Scenario, folder: Path, say: Say) -> list[Path]:
    """Makes the vent, or the row of them, in a new document and writes ``model.FCStd`` and ``model.step``.

    Raises ModelError where the model does not come out as laid out or FreeCAD cannot write it, OSError for a folder that
    cannot be written.
    """
    import FreeCAD

    from ..features.row import make_row, row_shape

    document = FreeCAD.newDocument("Vent")
    try:
        say("building the model")
        shape = row_shape(make_row(document, scenario.parts, **_with_stock_path(scenario)))
        count, wanted = len(shape.Solids), int(job.figures["pieces_of_all_vents"])
        if count != wanted:
            raise ModelError(f"The model has {count} solids for {wanted} pieces.")
        say(f"writing model.FCStd ({count} pieces)")
        return write_together(folder, {"model.FCStd": lambda path: _save(document, path),
                                       "model.step": lambda path: _export(shape, path, say)})
    except FreeCAD.Base.FreeCADError as error:
        raise ModelError(f"FreeCAD could not make the model: {error}.") from error
    finally:
        FreeCAD.closeDocument(document.Name)


def _save(document: Any, path: Path) -> None:
    """Saves a copy.  FreeCAD does not notice a disk that is full, so the archive is read again; raises ModelError."""
    document.saveCopy(str(path))
    try:
        with zipfile.ZipFile(path) as archive:
            whole = archive.testzip() is None and "Document.xml" in archive.namelist()
    except zipfile.BadZipFile:
        whole = False
    if not whole:
        raise ModelError(_cut_short(path))


def _export(shape: Any, path: Path, say: Say) -> None:
    """Writes STEP.  Raises ModelError if the file has no end."""
    import FreeCAD

    say("writing model.step")
    try:
        shape.exportStep(str(path))
    except FreeCAD.Base.FreeCADError as error:
        raise ModelError(_cut_short(path)) from error
    with path.open("rb") as stream:
        stream.seek(max(0, path.stat().st_size - 200))
        if b"END-ISO-10303-21;" not in stream.read():
            raise ModelError(_cut_short(path))


def _cut_short(path: Path) -> str:
    return f"{path.name} could not be written whole. Is the disk full? What was there before is as it was."


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
