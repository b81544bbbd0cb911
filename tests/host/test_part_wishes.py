"""Wishes for single kinds of part in a document: own stock, note, left out."""

from __future__ import annotations

import json
import sys
from pathlib import Path

import FreeCAD
import Part
import pytest

sys.path.append(str(Path(__file__).resolve().parent))
from vents import assembly_of, errors_in, everything, model, not_settled, part

from louverwright.commands.cut_report import job_of
from louverwright.core.part_wish import PartWish
from louverwright.core.spec import SpecError
from louverwright.features.model import wishes_of
from louverwright.features.part_kind import LEFT_OUT_WORDS, ROWS, WISH_ROWS, ensure_part_properties
from louverwright.features.row import links_of, make_row, row_shape
from louverwright.features.vent import make_vent, parts_of
from louverwright.report.json_file import cuts_record

WISHES = ("OwnStock", "Note", "LeftOut")
LEG, SCREEN, STEP = "base.leg.gable", "louver.screen", "roof.step"


@pytest.fixture
def document(tmp_path):
    made = FreeCAD.newDocument("Barn")
    made.UndoMode = 1
    kept = set(FreeCAD.listDocuments()) - {made.Name}
    yield made
    for name in set(FreeCAD.listDocuments()) - kept:    # the test may have opened others
        FreeCAD.closeDocument(name)


@pytest.fixture
def vent(document):
    return make_vent(document)


@pytest.fixture
def oak(tmp_path):
    """A stock list of the user's own with oak of the frame's section; its path."""
    path = tmp_path / "own.json"
    path.write_text(json.dumps({"name": "own", "base": "us", "items": [{
        "name": "oak 2x4", "form": "dimension", "thickness": 38.1, "width": 88.9, "lengths": [3_000], "density": 900,
        "material": "oak"}]}), encoding="utf-8")
    return str(path)


def check_whole(vent):
    """Vent, parts and results agree with what the core lays out."""
    assembly = assembly_of(vent)
    assert not_settled(vent.Document) == []
    assert len(vent.Shape.Solids) == vent.Pieces == sum(each.Count for each in parts_of(vent)) == len(assembly.pieces)
    assert vent.Shape.Volume == pytest.approx(sum(each.Shape.Volume for each in parts_of(vent)), rel=1e-9)
    assert vent.PiecesLeftOut == sum(each.count for each in assembly.left_out)
    for each in parts_of(vent):
        made = assembly.of_kind(each.KindId)
        assert each.Count == len(each.Shape.Solids) == sum(one.count for one in made), each.KindId
        assert each.Visibility == bool(made)


def recompute(vent):
    """One recompute, after which nothing is left to do."""
    vent.Document.recompute()
    check_whole(vent)


def test_wishes_are_to_be_set_and_all_else_is_to_be_read(vent) -> None:
    for obj in parts_of(vent):
        assert [name for name in WISHES if obj.getEditorMode(name)] == []
        assert [row.name for row in ROWS if "ReadOnly" not in obj.getEditorMode(row.name)
                and "Hidden" not in obj.getEditorMode(row.name)] == []
        assert {obj.getGroupOfProperty(name) for name in WISHES} == {"Part, yours to set"}
        assert all(obj.getDocumentationOfProperty(name).endswith(".") for name in WISHES)
        assert [row.name for row in WISH_ROWS] == list(WISHES)
        assert (obj.OwnStock, obj.Note, obj.LeftOut) == ("", "", False)


def test_a_kind_is_left_out_and_made_again_in_one_recompute_each(vent) -> None:
    before, weight = model(vent), vent.TotalWeight
    screen = part(vent, SCREEN)
    screen.LeftOut = True
    recompute(vent)
    assert (screen.Count, screen.Visibility, list(screen.Marks), screen.Label2) == (0, False, [], LEFT_OUT_WORDS)
    assert vent.TotalWeight + vent.WeightLeftOut == pytest.approx(weight) and vent.WeightLeftOut > 0.0
    others = {kind: told for kind, told in model(vent)[1].items() if kind != SCREEN}
    assert others == {kind: told for kind, told in before[1].items() if kind != SCREEN}
    screen.LeftOut = False
    recompute(vent)
    assert model(vent) == before and screen.Label2 == "L15 ×4"


def test_only_what_changes_is_made_anew(vent, document, monkeypatch) -> None:
    from louverwright.core.layout import layout
    from louverwright.features import part_kind

    filled, fill = [], part_kind.fill
    monkeypatch.setattr(part_kind, "fill", lambda obj, of: (filled.append(obj.KindId), fill(obj, of)))
    part(vent, SCREEN).LeftOut = True
    recompute(vent)
    assert filled == [SCREEN]
    laid_out = layout.cache_info().misses
    part(vent, LEG).Note = "Pick clear wood."
    recompute(vent)
    assert filled == [SCREEN] and layout.cache_info().misses == laid_out, "a note lays nothing out anew"
    assert job_of(vent).spec.parts[LEG].note == "Pick clear wood."


def test_own_stock_changes_weight_and_no_shape(vent, document, oak) -> None:
    vent.StockList = oak
    recompute(vent)
    before, weight = model(vent), vent.BaseWeight
    leg = part(vent, LEG)
    leg.OwnStock = "oak 2x4"
    recompute(vent)
    assert leg.Stock == "oak 2x4" and part(vent, "base.leg.eave").Stock == "2x4"
    assert model(vent)[1:] == before[1:] and vent.BaseWeight > weight
    leg.OwnStock = ""
    recompute(vent)
    assert model(vent) == before and leg.Stock == "2x4"


def test_stock_of_another_size_is_refused_and_the_last_model_stays(vent, document) -> None:
    before = model(vent)[1:]
    part(vent, LEG).OwnStock = "2x6"
    document.recompute()
    assert vent.getStatusString().startswith("Own stock of B1 (Leg, gable side) is “2x6”: it is a dimension, ")
    assert "change the vent's frame stock instead" in vent.getStatusString()
    assert model(vent)[1:] == before and not_settled(document) == [vent.Name]
    with pytest.raises(SpecError):
        job_of(vent)
    vent.FrameStock = "2x6"    # the same section now, and the vent's own
    vent.BaseHeight = 500.0
    document.recompute()
    assert "Own stock" not in vent.getStatusString()
    part(vent, LEG).OwnStock = ""
    vent.FrameStock, vent.BaseHeight = "", 0.0
    recompute(vent)
    assert model(vent)[1:] == before


def test_a_wish_outlives_parameters_and_the_kind_s_absence(vent, document) -> None:
    step, screen = part(vent, STEP), part(vent, SCREEN)
    step.LeftOut, step.Note, step.OwnStock = True, "from the old mast", "no such stock"
    screen.LeftOut, screen.Note = True, "bought"
    recompute(vent)    # there is no step yet, so the stock that there is not does not matter
    assert step.Label2 == "" and screen.Label2 == LEFT_OUT_WORDS
    step.OwnStock = ""
    for values in ({"MastDiameter": 30.0, "Width": 1_000.0}, {"Screen": False}, {"Screen": True, "MastDiameter": 0.0},
                   {"RoofForm": "gable"}, {"RoofForm": "hip", "MastDiameter": 30.0}):
        for name, value in values.items():
            setattr(vent, name, value)
        recompute(vent)
        left = {kind.kind.id for kind in assembly_of(vent).left_out}
        assert left == {kind for kind, there in ((STEP, vent.MastDiameter.Value), (SCREEN, vent.Screen)) if there}
        assert (step.LeftOut, step.Note, screen.LeftOut, screen.Note) == (True, "from the old mast", True, "bought")
    assert step.Label2 == LEFT_OUT_WORDS
    step.LeftOut = screen.LeftOut = False
    recompute(vent)
    assert step.Count and screen.Count


def test_wishes_are_saved(vent, document, tmp_path, capfd, oak) -> None:
    vent.StockList = oak
    leg, screen = part(vent, LEG), part(vent, SCREEN)
    leg.OwnStock, leg.Note, screen.LeftOut = "oak 2x4", "clear wood", True
    recompute(vent)
    before, name, wishes = model(vent), vent.Name, wishes_of(vent)
    path = str(tmp_path / "barn.FCStd")
    document.saveAs(path)
    FreeCAD.closeDocument(document.Name)
    capfd.readouterr()
    vent = FreeCAD.openDocument(path).getObject(name)
    check_whole(vent)
    assert model(vent) == before and wishes_of(vent) == wishes == {
        LEG: PartWish("oak 2x4", "clear wood"), SCREEN: PartWish(left_out=True)}
    for obj in everything(vent):
        obj.touch()
    recompute(vent)
    assert model(vent) == before and errors_in("".join(capfd.readouterr())) == []
    part(vent, SCREEN).LeftOut = False
    recompute(vent)


def test_wishes_are_undone_and_redone(vent, document) -> None:
    before = model(vent)
    document.openTransaction("Wish")
    part(vent, SCREEN).LeftOut, part(vent, LEG).Note = True, "clear wood"
    document.recompute()
    document.commitTransaction()
    after = model(vent)
    assert after != before
    for _ in range(2):
        document.undo()
        assert model(vent) == before and wishes_of(vent) == {}
        recompute(vent)
        assert model(vent) == before
        document.redo()
        assert model(vent) == after and wishes_of(vent) == {SCREEN: PartWish(left_out=True), LEG: PartWish(note="clear wood")}
        recompute(vent)
        assert model(vent) == after


def test_a_copy_in_another_document_has_the_wishes_as_its_own(vent, document) -> None:
    part(vent, SCREEN).LeftOut, part(vent, LEG).Note = True, "clear wood"
    recompute(vent)
    other = FreeCAD.newDocument("Other")
    other.copyObject(everything(vent), False)
    (copy,) = [obj for obj in other.Objects if "RoofPitch" in obj.PropertiesList]
    for obj in other.Objects:
        obj.touch()
    recompute(copy)
    assert wishes_of(copy) == wishes_of(vent) and model(copy)[1] == model(vent)[1]
    part(copy, SCREEN).LeftOut = False
    recompute(copy)
    assert part(copy, SCREEN).Count == 4 and part(vent, SCREEN).Count == 0 and not_settled(document) == []


def test_each_vent_of_a_document_has_its_own_wishes(vent, document) -> None:
    second = make_vent(document, {SCREEN: PartWish(left_out=True)}, width=1_000.0)
    before = model(vent)
    check_whole(second)
    part(second, LEG).LeftOut = True
    recompute(second)
    assert model(vent) == before and set(wishes_of(second)) == {SCREEN, LEG} and wishes_of(vent) == {}


def test_a_vent_that_cannot_have_its_wishes_is_not_made(document) -> None:
    with pytest.raises(SpecError):
        make_vent(document, {LEG: PartWish("2x6")})
    with pytest.raises(SpecError):
        make_vent(document, {"base.leg": PartWish(note="which?")})
    assert document.Objects == []


def test_the_links_of_a_row_follow(document) -> None:
    vent = make_row(document, {SCREEN: PartWish(left_out=True)}, ridge_length=20_000.0, vents=2, width=1_000.0)
    (link,) = links_of(vent)
    assert len(Part.getShape(link).Solids) == len(vent.Shape.Solids) == vent.Pieces == vent.PiecesOfAllVents // 2
    part(vent, SCREEN).LeftOut = False
    recompute(vent)
    assert len(Part.getShape(link).Solids) == len(vent.Shape.Solids) and len(row_shape(vent).Solids) == vent.PiecesOfAllVents


def test_an_expression_may_say_whether_a_kind_is_left_out(vent, document) -> None:
    screen = part(vent, SCREEN)
    screen.setExpression("LeftOut", f"{part(vent, LEG).Name}.LeftOut")
    recompute(vent)
    for left_out in (True, False):
        part(vent, LEG).LeftOut = left_out
        recompute(vent)
        assert (screen.Count == 0) is left_out
    document.recompute()
    assert not_settled(document) == []


def test_a_part_that_is_recomputed_by_itself_reads_the_vent_as_it_is_now(vent, document) -> None:
    """What a recompute of the document has read is gone with it: a spreadsheet changes the width, and nobody is told."""
    sheet = document.addObject("Spreadsheet::Sheet", "Sizes")
    sheet.set("A1", "=900 mm")
    document.recompute()
    vent.setExpression("Width", "Sizes.A1")
    document.recompute()
    rail = part(vent, "base.rail.top")
    before = rail.Sizes[0].x
    for width in (1_000.0, 1_100.0):
        sheet.set("A1", f"={width} mm")
        sheet.recompute()
        rail.touch()
        rail.recompute()
        assert rail.Sizes[0].x == pytest.approx(before + width - 900.0)


def test_the_report_has_what_the_document_says(vent, document, oak) -> None:
    vent.StockList = oak
    leg, screen = part(vent, LEG), part(vent, SCREEN)
    leg.OwnStock, leg.Note, screen.LeftOut, screen.Note = "oak 2x4", "clear wood", True, "bought"
    recompute(vent)
    record = cuts_record(job_of(vent))
    (left,) = record["left_out"]
    assert (left["kind"], left["note"], left["count"]) == (SCREEN, "bought", 4)
    legs = {(each["stock"]["name"], each["note"]) for each in record["parts"] if each["kind"] == LEG}
    assert legs == {("oak 2x4", "clear wood")}
    assert record["counts"]["pieces"] == vent.Pieces and record["results"]["total_weight"] == pytest.approx(vent.TotalWeight)


def test_a_part_of_an_older_document_gets_what_it_lacks(vent, document) -> None:
    before, leg = model(vent), part(vent, LEG)
    for name in WISHES:
        leg.setPropertyStatus(name, "-LockDynamic")
        assert leg.removeProperty(name)
    assert wishes_of(vent) == {}
    ensure_part_properties(leg)
    assert (leg.OwnStock, leg.Note, leg.LeftOut) == ("", "", False)
    recompute(vent)
    assert model(vent) == before
    leg.LeftOut = True
    recompute(vent)
    assert leg.Count == 0
