# SPDX-License-Identifier: LGPL-2.1-or-later
"""Stock as measured in the property editor: solids, stock and weights follow, and a refusal keeps the last model."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD
import pytest

sys.path.append(str(Path(__file__).resolve().parent))
from vents import not_settled

from louverwright.core.parameters import MEASURED, PARAMETERS
from louverwright.core.stock import USES
from louverwright.features.vent import make_vent


@pytest.fixture
def document():
    made = FreeCAD.newDocument("Barn")
    yield made
    FreeCAD.closeDocument(made.Name)


def of_kind(vent, kind):
    """The part of a kind."""
    return next(each for each in vent.Document.Objects if getattr(each, "KindId", "") == kind)


def test_every_measure_is_a_property_of_its_own_group(document) -> None:
    vent = make_vent(document)
    rows = [row for row in PARAMETERS if row.group == MEASURED]
    assert len(rows) > 2 * len(USES) and all(vent.getGroupOfProperty(row.property_name) == MEASURED for row in rows)


def test_solids_follow_the_measured_thickness(document) -> None:
    vent = make_vent(document)
    vent.TrimThickness = "18 mm"
    document.recompute()
    frieze = of_kind(vent, "louver.frieze")
    assert {round(size.z, 6) for size in frieze.Sizes} == {18.0}
    box = frieze.Shape.Solids[0].BoundBox
    assert min(box.XLength, box.YLength) == pytest.approx(18.0)
    assert not_settled(document) == []


def test_weights_follow_the_moisture_though_no_shape_changes(document) -> None:
    vent = make_vent(document)
    before, volume = vent.BaseWeight, vent.Shape.Volume
    vent.FrameMoisture = 19.0
    document.recompute()
    assert vent.BaseWeight > before and vent.Shape.Volume == pytest.approx(volume)
    vent.FrameMoisture = 0.0
    document.recompute()
    assert vent.BaseWeight == pytest.approx(before)


def test_another_stock_is_refused_and_the_last_model_stays(document) -> None:
    vent = make_vent(document)
    volume = vent.Shape.Volume
    vent.SlatThickness = "12 mm"
    document.recompute()
    assert "what differs by more than 25 % is another stock" in vent.getStatusString()
    assert vent.Shape.Volume == pytest.approx(volume)
