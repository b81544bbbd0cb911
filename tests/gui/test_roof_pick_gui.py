# SPDX-License-Identifier: LGPL-2.1-or-later
"""Roofs picked in FreeCAD's window: what its selection tells of them is understood, whatever they stand in."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD
import FreeCADGui
import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "host"))
from roofs import KINDS, LEFT, LONG, RIGHT, edge_names, face_names
from vents import near

from louverwright.features.roof_reading import picks_of, read_roof

pytestmark = pytest.mark.usefixtures("in_workbench")


def read_selected(root, names):
    """The roof of these elements, selected one after the other as by hand."""
    FreeCADGui.Selection.clearSelection()
    for name in names:
        assert FreeCADGui.Selection.addSelection(root.Document.Name, root.Name, name) is not False
    return read_roof(*picks_of(FreeCADGui.Selection.getSelectionEx("", 0))).planes


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.__name__)
def test_selected_slopes_ridge_and_whole(kind) -> None:
    document = FreeCAD.newDocument("Roofs")
    root, path, frame = kind(document)
    document.recompute()
    left, right = (face_names(root, path, frame, pitch, hand)[0] for pitch, hand in ((LEFT, 1), (RIGHT, -1)))
    (ridge, *_) = edge_names(root, path, frame.Base, frame.multVec(FreeCAD.Vector(LONG, 0, 0)))
    for names, first in (((left, right), LEFT), ((right, left), RIGHT), ((left,), LEFT), ((right,), RIGHT),
                         ((ridge,), None), ((path,), None)):
        planes = read_selected(root, names)
        assert sorted((planes.pitch_left, planes.pitch_right)) == pytest.approx([RIGHT, LEFT], abs=1e-6)
        assert first is None or planes.pitch_left == pytest.approx(first, abs=1e-6)
        assert {round(end[2], 6) for end in planes.ridge} == {round(frame.Base.z, 6)}
        assert min(FreeCAD.Vector(*end).distanceToPoint(frame.Base) for end in planes.ridge) < 1e-6
        assert near(FreeCAD.Vector(*planes.ridge[0]), frame.Base) is (planes.pitch_left > planes.pitch_right)
