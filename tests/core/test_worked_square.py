# SPDX-License-Identifier: LGPL-2.1-or-later
"""The worked square: one vent of plain metric sizes whose leading dimensions were worked out by hand beforehand.

W 900 over the cladding, barn 33.69° both ways, base 330 above the ridge, louver stage 560, slats at 45° in panels
76 deep, 19 mm boards, 38 × 89 frame, roof 35°, overhang 110.  Lengths to 0.05 mm, angles to 0.005°.
"""

from __future__ import annotations

from itertools import pairwise
from math import atan2, cos, degrees, hypot, radians, tan

import pytest
from making import cuts_named, only, spec_of

from louverwright.core.assembly import board_shell
from louverwright.core.dimensions import sizes
from louverwright.core.figures import figures
from louverwright.core.joints import missing, undeclared
from louverwright.core.layout import layout
from louverwright.core.saw import end_spans, setting
from louverwright.core.stock import Stock, StockList

LENGTH, ANGLE = 0.05, 0.005

FRAME = Stock("38x89", "dimension", 38.0, 89.0, (2400.0, 3600.0), "softwood", 450.0)
BOARD = Stock("19x140", "board", 19.0, 140.0, (2400.0, 3600.0), "softwood", 400.0)
STILE = Stock("19x89", "board", 19.0, 89.0, (2400.0, 3600.0), "softwood", 400.0)
POST = Stock("89x89", "post", 89.0, 89.0, (2400.0,), "softwood", 450.0)
SHEET = Stock("sheet 19", "sheet", 19.0, 1220.0, (2440.0,), "plywood", 560.0)
THIN = Stock("sheet 12", "sheet", 12.0, 1220.0, (2440.0,), "plywood", 560.0)
MESH = Stock("mesh", "mesh", 1.0, 900.0, (10000.0,), "wire", 800.0)
STRIP = Stock("strip", "board", 9.5, 19.0, (2400.0,), "softwood", 400.0)
USUAL = {
    **dict.fromkeys(("frame_stock", "rafter_stock", "plate_stock"), FRAME.name),
    **dict.fromkeys(("slat_stock", "ring_stock", "trim_stock", "fascia_stock"), BOARD.name),
    **dict.fromkeys(("stile_stock", "corner_board_stock"), STILE.name),
    "king_post_stock": POST.name, "cladding_stock": SHEET.name, "sheathing_stock": THIN.name,
    "soffit_stock": THIN.name, "screen_stock": MESH.name, "batten_stock": STRIP.name,
}
LIST = StockList("worked", "Stock of the worked square",
                 (FRAME, BOARD, STILE, POST, SHEET, THIN, MESH, STRIP), USUAL)
SPEC = spec_of(LIST, width=900.0, pitch_left=33.69, pitch_right=33.69, base_height=330.0, louver_height=560.0,
               slat_angle=45.0, panel_depth=76.0, roof_pitch=35.0, overhang=110.0)
AT, VENT = sizes(SPEC), layout(SPEC)


def mm(value: float):
    """A length to 0.05 mm."""
    return pytest.approx(value, abs=LENGTH)


def deg(value: float):
    """An angle to 0.005°."""
    return pytest.approx(value, abs=ANGLE)


def arrises(kind: str) -> list[float]:
    """Lengths of the four long arrises of a kind's first part, longest first."""
    a, b = end_spans(VENT.of_kind(kind)[0].board)
    return sorted((stop - start for start, stop in zip(a.positions, b.positions, strict=True)), reverse=True)


def test_frames() -> None:
    assert AT.base.frame_r == mm(431.0)
    assert AT.louver.frame_r == mm(429.0)


@pytest.mark.parametrize(("kind", "long", "short"), [
    ("base.leg.gable", 617.3, 558.0), ("base.leg.eave", 617.3, 592.0)])
def test_legs(kind: str, long: float, short: float) -> None:
    """Heights of the roof under the leg's outer and inner faces, from the base's top."""
    assert len(VENT.of_kind(kind)) == (2 if "gable" in kind else 1)
    lengths = arrises(kind)
    assert (lengths[0], lengths[-1]) == (mm(long), mm(short))
    foot = setting(cuts_named(VENT.of_kind(kind)[0], "foot")[0].planes[0])
    mitre, bevel = (33.69, 0.0) if "gable" in kind else (0.0, 33.69)
    assert (abs(foot.mitre), abs(foot.bevel)) == (deg(mitre), deg(bevel))


def test_rails() -> None:
    for kind, less in (("base.rail.top", 0.0), ("louver.rail.bottom", 4.0), ("louver.rail.top", 4.0)):
        assert sorted(part.board.length for part in VENT.of_kind(kind)) == [mm(786.0 - less), mm(862.0 - less)]
    assert AT.louver.rail_top == mm(419.0)


def test_slats() -> None:
    louver = AT.louver
    assert (louver.slats, louver.spacing, louver.gap) == (5, mm(51.73), mm(17.58))
    slat = only(VENT, "louver.slat")
    assert slat.count == 20
    assert slat.board.size == (mm(655.0), mm(126.5), mm(19.0))
    assert face_widths(slat.board) == [mm(107.5), mm(107.5)]
    assert all(abs(setting(cut.planes[0]).bevel) == deg(45.0) for cut in slat.board.cuts)


def face_widths(board) -> list[float]:
    """Widths of the board's two wide faces."""
    shell = board_shell(board)
    outlines = [shell.outline(face) for face in shell.faces if abs(face.plane.normal[2]) > 0.999]
    return [max(p[1] for p in points) - min(p[1] for p in points) for points in outlines]


def test_spacing_is_measured_between_slats_that_stand_in_the_vent() -> None:
    slat = only(VENT, "louver.slat")
    heights = sorted(piece.placement.origin[2] for piece in slat.pieces if piece.side == 0)
    assert [b - a for a, b in pairwise(heights)] == [mm(51.73)] * 4


def test_sill_stile_and_head() -> None:
    assert only(VENT, "louver.sill").board.length == mm(677.0)
    stiles = VENT.of_kind("louver.stile")
    assert [(part.hand, part.count) for part in stiles] == [("left", 4), ("right", 4)]
    assert all(part.board.size == (mm(353.6), mm(76.0), mm(19.0)) for part in stiles)
    assert only(VENT, "louver.head").board.length == mm(639.0)


def test_ring_board() -> None:
    lengths = arrises("louver.ring")
    assert (lengths[0], only(VENT, "louver.ring").board.length) == (mm(988.0), mm(988.0))
    assert lengths[-1] == mm(858.0)
    ends = [setting(cut.planes[0]) for cut in cuts_named(only(VENT, "louver.ring"), "mitre")]
    assert [(abs(each.mitre), abs(each.bevel)) for each in ends] == [(deg(35.264), deg(30.0))] * 2


def test_plate_hip_and_notch() -> None:
    assert AT.cap.plate_r == mm(448.0)
    assert AT.cap.hip_slope == deg(26.34)
    hip = only(VENT, "roof.hip")
    x = hip.pieces[0].placement.x
    assert degrees(atan2(x[2], hypot(x[0], x[1]))) == deg(26.34)
    assert notch_depth() == mm(29.0)
    assert notch_depth() < 89.0 / 3.0 == mm(29.7)


def notch_depth() -> float:
    """How far the hip's notch reaches into its depth, square to its lower edge."""
    (seat,) = cuts_named(only(VENT, "roof.hip"), "seat")
    level, plumb = seat.planes
    (a, b, _), (c, d, _) = level.normal, plumb.normal
    return (a * plumb.offset - c * level.offset) / (a * d - b * c)


#: Pieces of the three tables of the construction page on a square plan without mast, bottom rail and mullion.
TABLES = {
    "base.leg.gable": 4, "base.leg.eave": 4, "base.rail.top": 4, "base.sole.gable": 4, "base.cladding.gable": 2,
    "base.cladding.eave": 2, "base.corner.gable": 4, "base.corner.eave": 4,
    "louver.post.gable": 4, "louver.post.eave": 4, "louver.rail.bottom": 4, "louver.rail.top": 4, "louver.bed": 4,
    "louver.sill": 4, "louver.stile": 8, "louver.slat": 20, "louver.head": 4, "louver.ring": 4,
    "louver.trim.gable": 4, "louver.trim.eave": 4, "louver.frieze": 4,
    "roof.plate": 4, "roof.kingpost": 1, "roof.hip": 4, "roof.soffit": 4, "roof.fascia": 4, "roof.sheathing": 4,
}
#: Pieces that the tables do not count: eave soles, screens with their battens, bed moulds.
MORE = {"base.sole.eave": 2, "louver.screen": 4, "louver.batten.upright": 8, "louver.batten.level": 8,
        "roof.bedmould": 4}


def test_pieces() -> None:
    counts: dict[str, int] = {}
    for piece in VENT.pieces:
        counts[piece.kind] = counts.get(piece.kind, 0) + 1
    assert sum(TABLES.values()) == 121
    assert counts == {**TABLES, **MORE}
    assert figures(SPEC)["pieces"] == 121 + sum(MORE.values())


def test_it_goes_together() -> None:
    assert undeclared(VENT) == []
    assert missing(VENT, SPEC) == []


def test_what_follows_from_the_same_numbers_by_hand() -> None:
    """The hand calculation once more, in this file's own words, so that a wrong constant here is noticed."""
    slope, tv, zh = tan(radians(33.69)), 19.0 / cos(radians(45.0)), 330.0 + 560.0 - 89.0 - 1.5 - 19.0
    assert (330.0 + 431.0 * slope, 330.0 + (431.0 - 89.0) * slope, 330.0 + (431.0 - 38.0) * slope) == (
        mm(617.3), mm(558.0), mm(592.0))
    assert (zh - 419.0 - 76.0 - tv) / 5.0 == mm(51.73)
    assert 76.0 / cos(radians(45.0)) + 19.0 == mm(126.5)
    assert AT.louver.head_under == mm(zh)
