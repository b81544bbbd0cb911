# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the report says of the gable ends: measured on the pieces as they stand in the vent, not by a formula of their own."""

from __future__ import annotations

import math
import sys
from itertools import pairwise
from pathlib import Path
from typing import Any

import pytest

sys.path.append(str(Path(__file__).resolve().parents[1] / "core"))
from making import cuts_named, job_of, only, spec_of, standing

from louverwright.core.assembly import Assembly, Part, board_shell, board_solid
from louverwright.core.dimensions import sizes
from louverwright.core.gable import DRIP_NOSE, LOOKOUT_BAY, nose
from louverwright.core.geometry import add, dot, scale
from louverwright.core.layout import layout
from louverwright.exchange.papers import job_from_values
from louverwright.report.part_sheet import PartSheet, part_sheets
from louverwright.report.seat_words import SCREW_HOLD, seats
from louverwright.report.words import advice_lines

SHED = "cart-shed-gable"
#: The shed's gable, and flatter and steeper ones whose slats have plumb and square edges.
LOUVERED: dict[str, dict[str, Any]] = {
    "shallow": {"width": 1_300.0, "roof_pitch": 27.0, "screen_stock": "hardware cloth 36"},
    "steep": {"width": 1_000.0, "roof_pitch": 42.0, "ridge_stock": "2x8"},
    "square edges": {"width": 1_000.0, "slat_edges": "square"},
    "narrow panel": {"width": 1_000.0, "panel_depth": 50.0},
}


def sheet_of(kind: str, name: str = SHED) -> PartSheet:
    """The first sheet of a kind."""
    return next(sheet for sheet in part_sheets(job_of(name)) if sheet.part.kind.id == kind)


def gabled(values: dict[str, Any]) -> Assembly:
    """A vent with louvered gables."""
    return layout(spec_of(roof_form="gable", gable_end="louvered", **values))


def stiles(assembly: Assembly) -> list[Part]:
    """The raking stiles, left and right."""
    found = list(assembly.of_kind("roof.gable.stile"))
    assert found
    return found


@pytest.mark.parametrize("values", LOUVERED.values(), ids=list(LOUVERED))
def test_a_stile_is_marked_where_its_slats_stand(values: dict[str, Any]) -> None:
    """Put back into the vent, a mark lies on the slat's lower face, and every slat that meets the stile has one."""
    assembly = gabled(values)
    slats = {piece.id: (part, piece) for part in assembly.of_kind("roof.gable.slat") for piece in part.pieces}
    for part in stiles(assembly):
        place, side = part.pieces[0].placement, part.pieces[0].side
        own = sorted((s for s in slats.values() if s[1].side == side), key=lambda s: s[1].index)
        found = seats(part, assembly)
        assert len(found) == len(own) >= 2
        for seat, (_, slat) in zip(found, own, strict=True):
            for y in (0.0, part.board.width):
                point = place.point((seat.lower(y, part.board.thickness), y, part.board.thickness))
                assert dot(slat.placement.z, point) == pytest.approx(dot(slat.placement.z, slat.placement.origin), abs=1e-6)
            middle = place.point(seat.corners[0])
            assert any(math.dist(middle, slat.placement.point(p)) < 1e-3 for p in board_shell(
                assembly.part_of(slat.id).board).points)


@pytest.mark.parametrize("values", LOUVERED.values(), ids=list(LOUVERED))
def test_a_screw_stays_in_its_slat(values: dict[str, Any]) -> None:
    """As long as the sheet says it ends inside the slat, at least 5 mm from every face of it, and far enough in to hold."""
    assembly = gabled(values)
    for part in stiles(assembly):
        place, side = part.pieces[0].placement, part.pieces[0].side
        slats = sorted((piece for of in assembly.of_kind("roof.gable.slat") for piece in of.pieces if piece.side == side),
                       key=lambda piece: piece.index)
        found = seats(part, assembly)
        hold = min(SCREW_HOLD, *(seat.room(share) for seat in found for share in seat.screws))
        assert hold > 15.0
        for seat, slat in zip(found, slats, strict=True):
            for share in seat.screws:
                start = seat.middle(share)
                tip = slat.placement.local_point(place.point(add(start, scale(seat.into, hold))))
                (cell,) = board_solid(assembly.part_of(slat.id).board)
                assert all(facet.plane.height(tip) < -5.0 for facet in cell)


def test_the_stiles_sheet_gives_marks_and_screws() -> None:
    """Three slats: six places, evenly spaced on both edges, and six screws."""
    sheet = sheet_of("roof.gable.stile")
    marks, screws = sheet.joints
    assert marks.name == "marks for 3 slats" and screws.name == "2 screws into each slat, 6 in all"
    assert "the foot's long point" in marks.position and "off the wood" not in marks.position
    assert "bored" in screws.face and "Screws" in screws.face and "two screws" in sheet_of("roof.gable.slat").part.kind.held
    found = seats(sheet.part, job_of(SHED).assembly)
    steps = [b.lower(0.0, 0.0) - a.lower(0.0, 0.0) for a, b in pairwise(found)]
    assert steps == pytest.approx([job_of(SHED).sizes.louver.spacing / 0.6] * 2, rel=1e-6)    # a rise of 3 in a slope of 5


def test_no_nested_setting_is_named_where_there_is_none() -> None:
    for name in (SHED, "hay-barn-28ft", "hexagon-corner-first"):
        for sheet in part_sheets(job_of(name)):
            if not sheet.nested:
                assert not any("nested" in text for text in sheet.advice), sheet.mark


def test_a_steep_bevel_is_a_mitre_on_edge_or_is_sawn_by_hand() -> None:
    """The bed's two ends stand on its one flat edge; the stile is higher than the saw cuts."""
    bed, stile = sheet_of("roof.gable.bed"), sheet_of("roof.gable.stile")
    turned = [text for text in bed.advice if "turn the piece on edge, inner edge down, lower face against the fence" in text]
    assert len(turned) == 2 and all("mitre 53.1°, blade upright" in text for text in turned)
    assert "left end the handle left, keep to the left" in turned[0]
    assert "right end the handle right, keep to the right" in turned[1]
    assert any("saw it by hand" in text for text in stile.advice) and not any("on edge" in text for text in stile.advice)


def test_no_piece_lies_at_the_fence_on_a_point() -> None:
    """The peak board comes to a point above: both its ends are cut with the lower edge at the fence."""
    sheet = sheet_of("roof.gable.peak")
    ends = [row for row in sheet.cuts if "end" in row.where]
    assert len(ends) == 2 and all("lower edge at the fence; long point at the fence" in row.lay for row in ends)
    assert {row.set_to for row in ends} == {"mitre 53.1° left (36.9° from the edge)"}


def test_a_ridges_corners_are_cut_with_its_flat_edge_at_the_fence() -> None:
    """Its upper edge is bevelled to a crest by then."""
    rows = [row for row in sheet_of("roof.ridge", "hay-store-rectangle").cuts if "corner" in row.where]
    assert len(rows) == 2 and all("lower edge at the fence" in row.lay for row in rows)


def test_the_beds_thin_edge_is_blunt() -> None:
    """2 mm of its outer edge are left, and the sheet says where the rip meets it."""
    for assembly in (job_of(SHED).assembly, *(gabled(values) for values in LOUVERED.values())):
        board = only(assembly, "roof.gable.bed").board
        outer = [p[2] for p in board_shell(board).points if abs(p[1] - board.width) < 1e-6]
        assert max(outer) - min(outer) == pytest.approx(2.0, abs=1e-6)
    assert any("on the outer edge" in row.mark_at for row in sheet_of("roof.gable.bed").cuts)


def test_cuts_name_what_they_meet() -> None:
    ridges = [only(job_of(name).assembly, "roof.ridge") for name in (SHED, "hay-store-rectangle")]
    assert not any(cuts_named(ridge, "backing") for ridge in ridges)
    assert len(cuts_named(ridges[1], "corner under the end face")) == 2
    assert not cuts_named(only(job_of(SHED).assembly, "roof.gable.screen"), "rafter")
    moulds = [cut for part in job_of("hay-barn-28ft").assembly.of_kind("roof.bedmould") for cut in part.board.cuts]
    assert moulds and all(cut.partner == ("roof.hip" if "hip" in cut.name else "") for cut in moulds)
    assert any("hip" in cut.name for cut in moulds)


def test_an_apron_covers_the_joint_under_the_gables_sill() -> None:
    """From under the sill's nose, which it meets, to below the plate's foot; its upper edge falls outward."""
    assembly, at = job_of(SHED).assembly, job_of(SHED).sizes
    points = standing(only(assembly, "roof.gable.apron"))
    assert min(p[2] for p in points) == pytest.approx(at.cap.plate_top - at.cap.plate_t - 12.0, abs=1e-6)
    out = [abs(dot(p, at.plan.u(at.cap.gables[0]))) for p in points]
    top = {round(r, 3): max(p[2] for p, q in zip(points, out, strict=True) if abs(q - r) < 1e-3) for r in out}
    near, far = min(top), max(top)
    assert top[near] == pytest.approx(at.cap.plate_top, abs=1e-3) and top[far] < top[near] - 10.0


def test_a_short_nose_is_told() -> None:
    job = job_of(SHED)
    assert nose(job.spec, job.sizes) < DRIP_NOSE
    assert any("make a drip" in line for line in advice_lines(job))
    assert not any("make a drip" in line for line in advice_lines(job_of("hay-barn-28ft")))


def test_lookouts_hold_a_wide_verge_and_only_that() -> None:
    """From the gable's rafter to the barge board, no further apart up the slope than the bay, nor from ridge and plate."""
    assert not job_of(SHED).assembly.of_kind("roof.lookout")
    for width, values in ((900.0, {}), (1_700.0, {"sheathing_stock": "plywood 1/2", "screen": False, "ridge_stock": "2x8"})):
        spec = spec_of(roof_form="gable", verge=250.0, width=width, roof_pitch=30.0, **values)
        assembly, at = layout(spec), sizes(spec)
        part = only(assembly, "roof.lookout")
        assert part.board.length == pytest.approx(250.0)
        one = [i for i, piece in enumerate(part.pieces) if piece.side == part.pieces[0].side and piece.end > 0]
        across = at.plan.v(part.pieces[0].side)
        places = sorted(sum(abs(dot(p, across)) for p in standing(part, i)) / 8.0 for i in one)
        rungs = [0.0, *places, at.cap.plate_r]
        assert all(b - a < LOOKOUT_BAY * math.cos(math.radians(30.0)) + 45.0 for a, b in pairwise(rungs))
        assert len(places) == (1 if width < 1_000.0 else 2)


def test_a_lookouts_sheet_says_where_it_stands() -> None:
    """Measured from the peak of the barge boards to the middle of each lookout's upper edge."""
    job = job_from_values({"stock_list": "us", "roof_form": "gable", "verge": 250.0, "roof_pitch": 30.0}, "A", None)
    sheet = next(sheet for sheet in part_sheets(job) if sheet.part.kind.id == "roof.lookout")
    peak = max((p for p in standing(only(job.assembly, "roof.barge"))), key=lambda p: p[2])
    one = [i for i, piece in enumerate(sheet.part.pieces) if (piece.side, piece.end) == (0, 1)]
    assert len(one) == 1
    points = standing(sheet.part, one[0])
    across, height = (sum(abs(p[i]) for p in points) / 8.0 for i in (1, 2))
    along = across * math.cos(math.radians(30.0)) + (peak[2] - height) * math.sin(math.radians(30.0))
    assert sheet.joints[0].position.endswith(f": {job.writer.bare(along)}")


def test_battens_lie_over_the_meshs_edges() -> None:
    """On the gables along the sill and up both stiles, face to the mesh; and up the mullion of a wide panel."""
    assembly = job_of(SHED).assembly
    assert only(assembly, "roof.gable.batten.level").count == 2 and only(assembly, "roof.gable.batten.rake").count == 4
    wide = job_of("hay-store-rectangle").assembly
    (mullion,) = wide.of_kind("louver.mullion")
    middles = [piece for part in wide.of_kind("louver.batten.upright") for piece in part.pieces if piece.end == 0]
    assert len(middles) == mullion.count
    assert {piece.side for piece in middles} == {piece.side for piece in mullion.pieces}
