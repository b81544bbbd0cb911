# SPDX-License-Identifier: LGPL-2.1-or-later
"""What vents and their parts read in a recompute, and what they write."""

from __future__ import annotations

import sys
from collections import Counter
from pathlib import Path

import FreeCAD
import pytest

sys.path.append(str(Path(__file__).resolve().parent))
from vents import everything, model, not_settled, part

from louverwright.features import one_recompute
from louverwright.features.one_recompute import parts_in_recompute
from louverwright.features.vent import make_vent, parts_of

LEG, SCREEN = "base.leg.gable", "louver.screen"


@pytest.fixture
def document():
    made = FreeCAD.newDocument("Barn")
    yield made
    FreeCAD.closeDocument(made.Name)


@pytest.fixture
def vent(document):
    return make_vent(document)


@pytest.fixture
def reading(monkeypatch):
    """Counts how often each vent's properties are read."""
    counted: Counter[str] = Counter()
    real = one_recompute.spec_of

    def counting(vent):
        counted[vent.Name] += 1
        return real(vent)

    monkeypatch.setattr(one_recompute, "spec_of", counting)
    return counted


class Written:
    """A document observer that notes what is written into an object."""

    def __init__(self, obj) -> None:
        self.obj, self.names = obj, set()

    def slotChangedObject(self, obj, name) -> None:
        if obj == self.obj:
            self.names.add(name)


def test_each_vent_is_read_once_a_recompute(vent, document, reading) -> None:
    other = make_vent(document, width=1_200.0)
    reading.clear()
    for each in (vent, other):
        each.SlatAngle = 40.0
    document.recompute()
    assert reading == {vent.Name: 1, other.Name: 1}
    assert not_settled(document) == []


def test_a_refused_vent_is_read_once_and_its_sentence_told(vent, document, reading) -> None:
    vent.Width = 5_000.0
    document.recompute()
    assert reading == {vent.Name: 1}
    assert vent.getStatusString().startswith("Width is 5000 mm")


def test_a_vent_whose_value_comes_late_is_read_again(vent, document, reading) -> None:
    """Its parts do not wait for the spreadsheet that its width comes from; the vent does."""
    sheet = document.addObject("Spreadsheet::Sheet", "Sizes")
    for width in (1_000.0, 1_150.0):
        sheet.set("A1", f"={width} mm")
        document.recompute()
        vent.setExpression("Width", "Sizes.A1")
        document.recompute()
        document.recompute()
        assert vent.Width.Value == width and not_settled(document) == []
    fresh = make_vent(document, width=1_150.0)
    assert model(vent) == model(fresh)


def test_a_wish_that_comes_late_is_read_again(vent, document) -> None:
    screen = part(vent, SCREEN)
    screen.setExpression("LeftOut", f"{part(vent, LEG).Name}.LeftOut")
    part(vent, LEG).LeftOut = True
    document.recompute()
    document.recompute()
    assert screen.Count == part(vent, LEG).Count == 0 and not_settled(document) == []
    assert vent.Pieces == sum(each.Count for each in parts_of(vent))


def test_outside_a_recompute_nothing_is_remembered(vent, document) -> None:
    """A spreadsheet changes the width, and nobody is told; nor is used what a recompute read that never came to its end."""
    sheet = document.addObject("Spreadsheet::Sheet", "Sizes")
    sheet.set("A1", "=900 mm")
    document.recompute()
    vent.setExpression("Width", "Sizes.A1")
    document.recompute()
    assert not {document.Name} & {*one_recompute._specs, *one_recompute._parts}
    one_recompute._specs[document.Name] = {vent.Name: one_recompute.spec_of(vent)}
    sheet.set("A1", "=1000 mm")
    sheet.recompute()
    assert one_recompute.spec_in_recompute(vent).width == 1_000.0


def test_every_part_is_found_by_its_vent_in_a_recompute_too(vent, document, monkeypatch) -> None:
    other = make_vent(document)
    stray = document.copyObject(part(vent, LEG))
    found = {}

    def touch(of, spec):
        found[of.Name] = {each.Name for each in parts_in_recompute(of)}

    from louverwright.features import vent as vent_module
    monkeypatch.setattr(vent_module, "touch_stale", touch)
    for obj in (*everything(vent), *everything(other)):
        obj.touch()
    document.recompute()
    assert found == {each.Name: {one.Name for one in parts_of(each)} for each in (vent, other)}
    assert (stray.Name in found[vent.Name]) == (stray.Vent == vent)


def test_what_is_the_same_is_not_written_again(vent, document) -> None:
    """Other slats in the same panels: their object is written, but not the marks, ids and stock, which stay."""
    slats, absent = part(vent, "louver.slat"), part(vent, "roof.bearer")
    watches = [Written(slats), Written(absent)]
    for each in watches:
        FreeCAD.addDocumentObserver(each)
    vent.SlatAngle = vent.SlatAngle.Value + 0.05
    absent.ContentKey = ""
    absent.touch()
    document.recompute()
    for each in watches:
        FreeCAD.removeDocumentObserver(each)
    assert {"Shape", "Sizes", "Placements", "ContentKey"} <= watches[0].names
    assert not {"Marks", "Pieces", "Stock", "Count", "Label2"} & watches[0].names
    assert watches[1].names == {"ContentKey"}
    assert not_settled(document) == []
