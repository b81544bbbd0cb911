# SPDX-License-Identifier: LGPL-2.1-or-later
"""Several vents on one ridge in a document: a vent and links to it, which follow it; and the whole row as files."""

from __future__ import annotations

import json
import sys
from pathlib import Path

import FreeCAD
import Part
import pytest

sys.path.append(str(Path(__file__).resolve().parent))
sys.path.append(str(Path(__file__).resolve().parent.parent / "core"))
from making import job_of, scenario_of
from vents import errors_in, everything, model, near, not_settled

from louverwright.core.spec import SpecError
from louverwright.exchange.build import write_all
from louverwright.features.generations import UNDOES_LINKS
from louverwright.features.row import make_row, row_shape, update_row
from louverwright.features.vent import delete_vent, is_vent, links_of, make_vent, vent_of

THREE = {"ridge_length": 36_000.0, "vents": 3, "width": 900.0}
TURNED = FreeCAD.Placement(FreeCAD.Vector(1_000.0, -200.0, 300.0), FreeCAD.Rotation(FreeCAD.Vector(0, 0, 1), 90.0))


@pytest.fixture
def document():
    made = FreeCAD.newDocument("Barn")
    name = made.Name
    made.UndoMode = 1
    yield made
    if name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)


@pytest.fixture
def vent(document):
    return make_row(document, **THREE)


def along(vent) -> list[float]:
    """How far along the vent's own +X each link stands; each must stand as the vent does, only moved along."""
    out = []
    for link in links_of(vent):
        moved = vent.Placement.inverse().multiply(link.Placement)
        assert moved.Rotation.Angle == pytest.approx(0.0, abs=1e-9)
        assert (moved.Base.y, moved.Base.z) == pytest.approx((0.0, 0.0), abs=1e-6)
        out.append(moved.Base.x)
    return out


# ---- made


def test_a_row_is_one_vent_and_links_to_it(vent, document) -> None:
    links = links_of(vent)
    assert [(link.TypeId, link.RowNumber) for link in links] == [("App::Link", 2), ("App::Link", 3)]
    assert all(link.LinkedObject == vent and vent_of(link) == vent and not is_vent(link) for link in links)
    assert [obj.Name for obj in document.Objects if is_vent(obj)] == [vent.Name]
    assert len(document.Objects) == len(everything(vent)) + 2
    assert along(vent) == pytest.approx([12_000.0, 24_000.0])
    assert not_settled(document) == []


def test_every_link_has_every_piece(vent) -> None:
    for link, place in zip(links_of(vent), along(vent), strict=True):
        shape = Part.getShape(link)
        assert len(shape.Solids) == vent.Pieces
        assert shape.Volume == pytest.approx(vent.Shape.Volume, rel=1e-9)
        moved = vent.Shape.Solids[0].CenterOfMass + FreeCAD.Vector(place, 0.0, 0.0)
        assert near(shape.Solids[0].CenterOfMass, moved, 1e-4)
    assert len(row_shape(vent).Solids) == 3 * vent.Pieces == vent.PiecesOfAllVents


def test_one_vent_has_no_links(document) -> None:
    assert links_of(make_row(document, width=900.0)) == []


def test_a_row_that_cannot_be_built_is_refused_before_anything_is_made(document) -> None:
    with pytest.raises(SpecError, match="Ridge length is not given"):
        make_row(document, vents=3)
    assert document.Objects == []


# ---- changed


def test_links_follow_parameters_and_place_in_one_recompute(vent, document) -> None:
    vent.EndDistance, vent.Placement = 3_000.0, TURNED
    document.recompute()
    assert along(vent) == pytest.approx([15_000.0, 30_000.0])
    assert near(links_of(vent)[0].Placement.Base, FreeCAD.Vector(1_000.0, 14_800.0, 300.0))
    vent.Width, vent.Screen = 1_000.0, False
    document.recompute()
    assert len(Part.getShape(links_of(vent)[1]).Solids) == vent.Pieces
    assert not_settled(document) == []


def test_a_recompute_makes_and_deletes_nothing(vent, document) -> None:
    names = [obj.Name for obj in document.Objects]
    for count in (5, 1, 3):
        vent.Vents = count
        document.recompute()
        assert [obj.Name for obj in document.Objects] == names
        assert not_settled(document) == []


@pytest.mark.parametrize("count", [1, 2, 3, 5])
def test_the_row_is_updated_when_asked(vent, document, count) -> None:
    kept = links_of(vent)[:count - 1]
    vent.Vents = count
    document.recompute()
    assert update_row(vent) is (count != 3)
    assert links_of(vent)[:len(kept)] == kept
    assert [link.RowNumber for link in links_of(vent)] == list(range(2, count + 1))
    assert along(vent) == pytest.approx([36_000.0 / count * number for number in range(1, count)])
    assert update_row(vent) is False
    assert not_settled(document) == []


def test_a_link_that_was_deleted_comes_back(vent, document) -> None:
    document.removeObject(links_of(vent)[0].Name)
    assert update_row(vent)
    assert along(vent) == pytest.approx([12_000.0, 24_000.0])


def test_a_copy_of_a_link_goes(vent, document) -> None:
    links = links_of(vent)
    copied = document.copyObject(links[0], False)
    assert len(links_of(vent)) == 3 and copied in links_of(vent)
    assert update_row(vent)
    assert [link.RowNumber for link in links_of(vent)] == [2, 3]
    assert not_settled(document) == []


def test_a_refused_row_is_left_as_it_is(vent, document) -> None:
    vent.Vents, vent.RidgeLength = 4, 0.0
    document.recompute()
    with pytest.raises(SpecError, match="4 vents share the ridge"):
        update_row(vent)
    assert along(vent) == pytest.approx([12_000.0, 24_000.0])


def test_links_go_into_the_vents_part(vent, document) -> None:
    part = document.addObject("App::Part", "Roof")
    part.addObject(vent)
    assert update_row(vent)
    assert [link.getParentGeoFeatureGroup() for link in links_of(vent)] == [part, part]
    part.Placement = TURNED
    document.recompute()
    assert not_settled(document) == []
    centre = part.getSubObject(f"{links_of(vent)[0].Name}.Solid1").CenterOfMass
    here = vent.Shape.Solids[0].CenterOfMass + FreeCAD.Vector(12_000.0, 0.0, 0.0)
    assert near(centre, TURNED.multVec(here), 1e-4)


@pytest.mark.skipif(not UNDOES_LINKS, reason="this FreeCAD cannot undo links to older objects")
def test_undo_takes_the_row_back(vent, document) -> None:
    before, names = model(vent), [obj.Name for obj in document.Objects]
    document.openTransaction("Row")
    vent.Vents = 5
    document.recompute()
    update_row(vent)
    document.commitTransaction()
    assert len(links_of(vent)) == 4
    document.undo()
    document.recompute()
    assert [obj.Name for obj in document.Objects] == names
    assert model(vent) == before
    assert along(vent) == pytest.approx([12_000.0, 24_000.0])
    document.redo()
    document.recompute()
    assert along(vent) == pytest.approx([7_200.0 * number for number in range(1, 5)])
    assert not_settled(document) == []


def test_making_a_row_is_undone_whole(document) -> None:
    document.openTransaction("New vent")
    made = make_row(document, **THREE)
    names, before = [obj.Name for obj in document.Objects], model(made)
    document.commitTransaction()
    for _ in range(2):
        document.undo()
        assert document.Objects == []
        document.redo()
        document.recompute()
        vent = document.getObject("Vent")
        assert sorted(obj.Name for obj in document.Objects) == sorted(names)
        assert model(vent) == before
        assert along(vent) == pytest.approx([12_000.0, 24_000.0])


# ---- deleted, saved


def test_deleting_the_vent_deletes_its_links_alone(vent, document) -> None:
    other = make_vent(document, width=1_000.0)
    link = document.addObject("App::Link", "Own")
    link.LinkedObject = other
    delete_vent(vent)
    document.recompute()
    assert {obj.Name for obj in document.Objects} == {obj.Name for obj in everything(other)} | {"Own"}


def test_deleting_a_row_is_undone_and_done_again(vent, document) -> None:
    name, names, before = vent.Name, sorted(obj.Name for obj in document.Objects), model(vent)
    document.openTransaction("Delete")
    delete_vent(vent)
    document.commitTransaction()
    for _ in range(2):
        assert document.Objects == []
        document.undo()
        document.recompute()
        vent = document.getObject(name)
        assert sorted(obj.Name for obj in document.Objects) == names
        assert model(vent) == before
        assert along(vent) == pytest.approx([12_000.0, 24_000.0])
        if not UNDOES_LINKS:
            return    # nor can it delete them again
        document.redo()


def test_two_rows_do_not_disturb_each_other(vent, document) -> None:
    second = make_row(document, ridge_length=20_000.0, vents=2, width=1_000.0)
    assert (along(vent), along(second)) == (pytest.approx([12_000.0, 24_000.0]), pytest.approx([10_000.0]))
    vent.Vents = 2
    document.recompute()
    update_row(vent)
    assert (along(vent), along(second)) == (pytest.approx([18_000.0]), pytest.approx([10_000.0]))


def test_a_saved_row_comes_back_as_it_was(vent, document, tmp_path, capfd) -> None:
    vent.Placement = TURNED
    document.recompute()
    before, name, path = model(vent), vent.Name, str(tmp_path / "barn.FCStd")
    document.saveAs(path)
    FreeCAD.closeDocument(document.Name)
    capfd.readouterr()
    document = FreeCAD.openDocument(path)
    try:
        vent = document.getObject(name)
        assert not_settled(document) == []
        assert model(vent) == before
        assert along(vent) == pytest.approx([12_000.0, 24_000.0])
        vent.RidgeLength = 30_000.0
        document.recompute()
        assert along(vent) == pytest.approx([10_000.0, 20_000.0])
        assert errors_in("".join(capfd.readouterr())) == []
    finally:
        FreeCAD.closeDocument(document.Name)


# ---- built without a window


def test_model_and_papers_of_a_row_reconcile(tmp_path) -> None:
    name = "three-vents-long-ridge"
    job = job_of(name)
    said: list[str] = []
    write_all(job, scenario_of(name), tmp_path, said.append)
    record = json.loads((tmp_path / "cuts.json").read_text(encoding="utf-8"))
    wanted = record["counts_for_all"]["pieces"]
    assert wanted == 3 * len(job.assembly.pieces) == sum(part["count_for_all"] for part in record["parts"])
    assert f"All 3 vents: {wanted} pieces." in (tmp_path / "report.html").read_text(encoding="utf-8")
    assert f"writing model.FCStd ({wanted} pieces)" in said
    document = FreeCAD.openDocument(str(tmp_path / "model.FCStd"))
    try:
        (vent,) = [obj for obj in document.Objects if is_vent(obj)]
        assert len(row_shape(vent).Solids) == wanted
        first = record["positions"][0]
        assert along(vent) == pytest.approx([place - first for place in record["positions"][1:]])
        # What the file says its solids are, without reading 20 MB back into the kernel.
        step = (tmp_path / "model.step").read_text(encoding="utf-8", errors="replace")
        assert step.count("MANIFOLD_SOLID_BREP(") == wanted
    finally:
        FreeCAD.closeDocument(document.Name)
