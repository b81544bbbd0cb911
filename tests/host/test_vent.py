"""A vent in a document: made, changed, refused, saved, moved, undone, copied, deleted."""

from __future__ import annotations

import sys
from pathlib import Path

import FreeCAD
import pytest

sys.path.append(str(Path(__file__).resolve().parent))
from vents import assembly_of, errors_in, everything, global_centre, model, near, not_settled, part

from louverwright.core.assembly import board_volume_and_centre
from louverwright.core.kinds import KINDS
from louverwright.core.parameters import PARAMETERS
from louverwright.core.spec import SpecError
from louverwright.features.vent import delete_vent, make_vent, parts_of, stages_of, vent_of

ABSENT = ("base.rail.bottom", "louver.mullion", "roof.bearer", "roof.step")
TURNED = FreeCAD.Placement(FreeCAD.Vector(1000.0, -200.0, 300.0), FreeCAD.Rotation(FreeCAD.Vector(1, 2, 3), 40.0))


@pytest.fixture
def document():
    made = FreeCAD.newDocument("Barn")
    name = made.Name
    made.UndoMode = 1
    yield made
    if name in FreeCAD.listDocuments():    # the test may have closed it
        FreeCAD.closeDocument(name)


@pytest.fixture
def vent(document):
    return make_vent(document)


@pytest.fixture
def reopen(tmp_path):
    """Saves a document, closes it and opens it again; closes what it opened."""
    opened = []

    def again(document):
        path = str(tmp_path / "barn.FCStd")
        document.saveAs(path)
        FreeCAD.closeDocument(document.Name)
        document = FreeCAD.openDocument(path)
        opened.append(document.Name)
        return document

    yield again
    for name in opened:
        if name in FreeCAD.listDocuments():
            FreeCAD.closeDocument(name)


# ---- what is made


def test_a_vent_has_three_stages_and_every_kind(vent, document) -> None:
    assert [stage.Label for stage in stages_of(vent)] == ["Base", "Louver stage", "Roof stage"]
    assert [each.KindId for each in parts_of(vent)] == [kind.id for kind in KINDS]
    assert len(document.Objects) == 1 + 3 + len(KINDS)
    assert vent.Label == "Louvered vent"
    assert part(vent, "base.leg.gable").Label == "Leg, gable side"
    assert not_settled(document) == []


def test_parts_have_the_pieces_of_the_layout(vent) -> None:
    assembly = assembly_of(vent)
    assert len(vent.Shape.Solids) == len(assembly.pieces) == vent.Pieces
    for each in parts_of(vent):
        pieces = [(mine, piece) for mine in assembly.of_kind(each.KindId) for piece in mine.pieces]
        assert each.Count == len(each.Shape.Solids) == len(pieces)
        assert list(each.Pieces) == [piece.id for _, piece in pieces]
        assert list(each.Marks) == [mine.mark for mine, _ in pieces]
        assert len(each.Placements) == len(each.Sizes) == len(pieces)


def test_every_piece_is_a_valid_closed_solid_of_its_boards_volume(vent) -> None:
    assembly = assembly_of(vent)
    for each in parts_of(vent):
        for piece, solid in zip(each.Pieces, each.Shape.Solids, strict=True):
            assert solid.isValid() and solid.isClosed(), piece
            board = assembly.part_of(piece).board
            assert solid.Volume == pytest.approx(board_volume_and_centre(board)[0], rel=1e-9), piece


def test_a_piece_stands_in_its_placement(vent) -> None:
    leg = part(vent, "base.leg.gable")
    board = assembly_of(vent).part_of(leg.Pieces[2]).board
    centre = FreeCAD.Vector(*board_volume_and_centre(board)[1])
    assert near(leg.Placements[2].multVec(centre), leg.Shape.Solids[2].CenterOfMass, 1e-4)
    assert tuple(leg.Sizes[2]) == pytest.approx(board.size)


def test_pieces_that_are_only_moved_move(vent) -> None:
    """A higher base cuts no rafter anew, but all of them stand higher."""
    vent.BaseHeight = vent.BaseTop.Value + 50.0
    vent.Document.recompute()
    assembly = assembly_of(vent)
    for each in parts_of(vent):
        for name, solid in zip(each.Pieces, each.Shape.Solids, strict=True):
            mine = assembly.part_of(name)
            (piece,) = [piece for piece in mine.pieces if piece.id == name]
            middle = piece.placement.point(board_volume_and_centre(mine.board)[1])
            assert mine.board.bores or near(solid.CenterOfMass, middle, 1e-4), name
    assert not_settled(vent.Document) == []


def test_an_absent_kind_is_empty_and_hidden(vent) -> None:
    for kind_id in ABSENT:
        absent = part(vent, kind_id)
        assert (absent.Count, absent.Visibility, len(absent.Shape.Solids)) == (0, False, 0)
    assert part(vent, "louver.slat").Visibility


def test_unknown_and_bad_parameters_are_refused_before_anything_is_made(document) -> None:
    with pytest.raises(SpecError, match="“wdith” is not a parameter") as error:
        make_vent(document, wdith=900.0, slat_angle=80.0)
    assert "Slat angle is 80" in str(error.value)
    with pytest.raises(SpecError, match="at least 300 mm"):
        make_vent(document, width=-5.0)    # FreeCAD's property would have made it 0, which means automatic
    assert document.Objects == []


# ---- what is changed


def test_a_count_adds_and_removes_pieces_but_no_object(vent, document) -> None:
    names = [obj.Name for obj in document.Objects]
    slats = part(vent, "louver.slat")
    before, whole = slats.Count, vent.Pieces
    vent.SlatCount = before // 4 + 1
    document.recompute()
    assert (slats.Count, vent.Pieces) == (before + 4, whole + 4)
    vent.SlatCount = 0
    document.recompute()
    assert (slats.Count, len(slats.Shape.Solids), len(vent.Shape.Solids)) == (before, before, whole)
    assert [obj.Name for obj in document.Objects] == names
    assert not_settled(document) == []


def test_a_kind_comes_and_goes(vent, document) -> None:
    step, screen = part(vent, "roof.step"), part(vent, "louver.screen")
    vent.MastDiameter, vent.Screen = 30.0, False
    document.recompute()
    assert (step.Count > 0, step.Visibility, screen.Count, screen.Visibility) == (True, True, 0, False)
    vent.MastDiameter, vent.Screen = 0.0, True
    document.recompute()
    assert (step.Count, step.Visibility, screen.Count, screen.Visibility) == (0, False, 4, True)


def test_only_parts_that_change_are_made_anew(vent, document, monkeypatch) -> None:
    from louverwright.features import part_kind

    filled = []
    fill = part_kind.fill
    monkeypatch.setattr(part_kind, "fill", lambda obj, parts: (filled.append(obj.KindId), fill(obj, parts)))
    vent.TailDepth = vent.TailDepth.Value + 5.0
    document.recompute()
    assert "roof.fascia" in filled
    assert not [kind_id for kind_id in filled if not kind_id.startswith("roof.")]
    filled.clear()
    vent.Project, vent.PaperUnits = "Hay barn", "in"
    document.recompute()
    assert filled == []


def test_a_paper_parameter_lays_nothing_out_anew_but_must_be_right(vent, document) -> None:
    from louverwright.core.layout import layout

    laid_out = layout.cache_info().misses
    vent.PaperUnits, vent.Notes = "ft-in", "Bring the long ladder."
    document.recompute()
    assert layout.cache_info().misses == laid_out
    vent.InchFraction = 7
    document.recompute()
    assert "Inch fraction is 7" in vent.getStatusString()


@pytest.mark.parametrize("changes", [
    {"Width": 1200.0}, {"PitchLeft": 40.0}, {"Corner": "mitred"}, {"Cladding": "boards", "CladdingStock": "1x8"},
    {"StockList": "eu"}, {"Screen": False}, {"MastDiameter": 30.0}, {"RaftersPerSide": 2}, {"RidgeOffset": -40.0},
], ids=lambda changes: ",".join(changes))
def test_one_recompute_brings_vent_and_parts_together(vent, document, changes) -> None:
    before = vent.Shape.Volume
    for name, value in changes.items():
        setattr(vent, name, value)
    document.recompute()
    assert not_settled(document) == []
    assert vent.Shape.Volume != pytest.approx(before, rel=1e-6)
    assert vent.Shape.Volume == pytest.approx(sum(each.Shape.Volume for each in parts_of(vent)), rel=1e-9)
    assert vent.Pieces == sum(each.Count for each in parts_of(vent)) == len(assembly_of(vent).pieces)


# ---- what is refused


def test_a_refused_value_keeps_the_last_good_model(vent, document) -> None:
    before = model(vent)[1:]
    vent.Width = 5000.0
    document.recompute()
    assert "Invalid" in vent.State
    assert vent.getStatusString().startswith("Width is 5000 mm: it must be at least 300 mm and at most 3600 mm")
    assert model(vent)[1:] == before
    assert not_settled(document) == [vent.Name]    # the parts are no errors themselves


def test_the_cure_brings_the_right_model(vent, document) -> None:
    vent.SlatCount = 40
    document.recompute()
    assert "Slat count is 40" in vent.getStatusString()
    vent.Width = 1000.0    # still refused, for the slats
    document.recompute()
    assert "Invalid" in vent.State
    vent.SlatCount = 0
    document.recompute()
    assert not_settled(document) == []
    fresh = make_vent(FreeCAD.newDocument("Fresh"), width=1000.0)
    try:
        assert model(vent) == model(fresh)
    finally:
        FreeCAD.closeDocument(fresh.Document.Name)


def test_all_that_is_wrong_is_said_at_once(vent, document) -> None:
    vent.Width, vent.RoofPitch = 5000.0, 89.0
    document.recompute()
    assert [line.split(" is ")[0] for line in vent.getStatusString().splitlines()] == ["Width", "Roof pitch"]


# ---- saved and opened again


def test_a_saved_vent_comes_back_as_it_was(document, reopen, capfd) -> None:
    vent = make_vent(document, width=1000.0, slat_angle=40.0, corner="mitred", screen=False, project="Hay barn")
    before, name = model(vent), vent.Name
    capfd.readouterr()
    document = reopen(document)
    vent = document.getObject(name)
    assert errors_in("".join(capfd.readouterr())) == []
    assert not_settled(document) == []
    assert model(vent) == before
    document.recompute()
    for obj in everything(vent):
        obj.touch()
    document.recompute()
    assert not_settled(document) == []
    assert model(vent) == before
    assert errors_in("".join(capfd.readouterr())) == []
    vent.Screen = True
    document.recompute()
    assert part(vent, "louver.screen").Count == 4


def test_properties_stay_as_they_are_meant_after_reopening(vent, document, reopen) -> None:
    name = vent.Name
    vent = reopen(document).getObject(name)
    for obj in (vent, part(vent, "louver.slat")):
        ours = [each for each in obj.PropertiesList if obj.getGroupOfProperty(each) not in ("Base", "")]
        assert len(ours) >= 8
        assert [each for each in ours if "LockDynamic" not in obj.getPropertyStatus(each)] == []
    assert "ReadOnly" in vent.getEditorMode("TotalWeight")
    assert "Hidden" in vent.getEditorMode("Schema")
    assert part(vent, "louver.slat").getEditorMode("Placement") == ["ReadOnly"]
    assert [name for name in (row.property_name for row in PARAMETERS) if vent.getEditorMode(name)] == []


# ---- undone


def test_undo_and_redo_are_exact(vent, document) -> None:
    before = model(vent)
    document.openTransaction("Change")
    vent.Width, vent.Screen, vent.MastDiameter = 1100.0, False, 30.0
    document.recompute()
    document.commitTransaction()
    after = model(vent)
    assert after != before
    for _ in range(2):
        document.undo()
        assert model(vent) == before
        document.recompute()
        assert model(vent) == before
        document.redo()
        assert model(vent) == after
        document.recompute()
        assert model(vent) == after
    assert not_settled(document) == []


def test_making_a_vent_is_undone_whole(document) -> None:
    document.openTransaction("New vent")
    made = model(make_vent(document))
    document.commitTransaction()
    document.undo()
    assert document.Objects == []
    document.redo()
    document.recompute()
    assert model(document.getObject("Vent")) == made


# ---- deleted


def test_deleting_a_vent_leaves_what_is_not_its_own(document) -> None:
    first, second = make_vent(document), make_vent(document, width=1000.0)
    box = document.addObject("Part::Box", "Box")
    first.addObject(box)
    kept = model(second)
    document.openTransaction("Delete")
    delete_vent(first)
    document.commitTransaction()
    document.recompute()
    assert {obj.Name for obj in document.Objects} == {obj.Name for obj in everything(second)} | {"Box"}
    assert model(second) == kept
    document.undo()
    assert len(document.Objects) == 2 * len(everything(second)) + 1


def test_a_part_that_has_lost_its_vent_says_so(vent, document) -> None:
    leg = part(vent, "base.leg.gable")
    volume = leg.Shape.Volume
    document.removeObject(vent.Name)
    leg.touch()
    document.recompute()
    assert "belongs to no vent any more" in leg.getStatusString()
    assert leg.Shape.Volume == pytest.approx(volume)
    assert vent_of(leg) is None


def test_a_vent_lives_on_without_a_part(vent, document) -> None:
    document.removeObject(part(vent, "louver.frieze").Name)
    vent.Width = 1000.0
    document.recompute()
    assert not_settled(document) == []
    assert len(vent.Shape.Solids) == vent.Pieces == len(assembly_of(vent).pieces)


# ---- moved


def test_moving_the_vent_moves_every_piece_and_makes_nothing_anew(vent, document, monkeypatch) -> None:
    from louverwright.features import part_kind

    monkeypatch.setattr(part_kind, "fill", lambda obj, parts: pytest.fail(f"{obj.Name} was made anew"))
    paths = [f"{stage.Name}.{each.Name}.Solid1" for stage in stages_of(vent) for each in stage.Group if each.Count]
    before = {path: global_centre(vent, path) for path in paths}
    whole = vent.Shape.Solids[0].CenterOfMass
    vent.Placement = TURNED
    document.recompute()
    assert len(paths) > 20
    for path in paths:
        assert near(global_centre(vent, path), TURNED.multVec(before[path])), path
    assert near(vent.Shape.Solids[0].CenterOfMass, TURNED.multVec(whole))
    monkeypatch.undo()
    vent.Width = 1000.0
    document.recompute()
    first = part(vent, vent.Document.getObject(paths[0].split(".")[1]).KindId)
    assert near(global_centre(vent, paths[0]), TURNED.multVec(first.Shape.Solids[0].CenterOfMass))
    assert near(vent.Shape.Solids[0].CenterOfMass, global_centre(vent, paths[0]))
    assert near(vent.Placement.Base, TURNED.Base) and vent.Placement.Rotation.isSame(TURNED.Rotation, 1e-9)
