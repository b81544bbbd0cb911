# SPDX-License-Identifier: LGPL-2.1-or-later
"""Single sums of the layout, each worked out another way: from where the pieces stand, or by the trade's own rule."""

from __future__ import annotations

import math
from itertools import pairwise

import pytest
from making import only, spec_of, standing, vent
from pytest import approx

from louverwright.core.assembly import HALF_LAP, board_shell
from louverwright.core.base import board_edges
from louverwright.core.cap import rafter_lines
from louverwright.core.dimensions import sizes
from louverwright.core.figures import figures, wanted_area
from louverwright.core.geometry import dot
from louverwright.core.louver import BATTEN_DROP

RECTANGLE = {"width": 1_000.0, "length": 1_900.0}


def test_boards_that_fill_a_side_with_their_gaps_are_no_more_than_needed() -> None:
    """Three boards of 100 with two gaps of 5 are 310: a fourth board is one too many, and at 311 one too few is three."""
    assert board_edges(310.0, 100.0, 5.0) == [(0.0, 100.0), (105.0, 205.0), (210.0, 310.0)]
    assert len(board_edges(311.0, 100.0, 5.0)) == 4


@pytest.mark.parametrize("sides", [4, 6, 8])
def test_a_hip_rises_as_much_as_its_face_on_a_longer_run(sides: int) -> None:
    """From the middle of a side to its corner the run grows by 1 / cos(180°/n) and the rise does not: common practice."""
    cap = sizes(spec_of(sides=sides, width=1_150.0, king_post_stock="6x6", roof_pitch=40.0)).cap
    run = 1.0 / math.cos(math.pi / sides)
    assert math.tan(math.radians(cap.hip_slope)) == approx(math.tan(math.radians(cap.pitch)) / run, rel=1e-9)


@pytest.mark.parametrize("length", [1_300.0, 1_600.0, 1_900.0])
def test_commons_along_a_ridge_are_as_few_as_the_sheathing_spans(length: float) -> None:
    spec = spec_of(**{**RECTANGLE, "length": length})
    at = sizes(spec)
    side = next(side for side in range(4) if at.plan.long(side))
    ridge, thick = 2.0 * at.ridge_half(side), at.cap.rafter_t
    lines = [line for line in rafter_lines(at, side) if abs(line) < ridge / 2.0 + 1e-6]
    bays = [b - a for a, b in pairwise(lines)]
    assert max(bays) - thick <= spec.sheathing_span + 1e-6
    assert len(bays) == 1 or ridge / (len(bays) - 1) - thick > spec.sheathing_span, "a bay less would do"


def test_the_level_batten_hides_under_the_sills_inner_arris() -> None:
    assembly = vent()
    top = max(p[2] for p in standing(only(assembly, "louver.sill")))
    (low, _) = sorted({max(p[2] for p in standing(part, number)) for part in assembly.of_kind("louver.batten.level")
                       for number in range(part.count)})
    assert low == approx(top - BATTEN_DROP)


def test_the_plates_that_run_through_lie_under() -> None:
    """At a half lap the plates of the gable sides keep their lower half, those that are let down on them their upper."""
    for part in vent().of_kind("roof.plate"):
        for piece in part.pieces:
            ups = [piece.placement.direction(plane.normal)[2] for cut in part.board.cuts if cut.kind == HALF_LAP
                   for plane in cut.planes]
            levels = {round(up) for up in ups if abs(up) > 0.5}
            assert levels == {1 if piece.side % 2 == 0 else -1}, piece.id


# ---- figures


def test_eaves_go_all_round_a_hip_and_along_two_sides_of_a_gable_roof() -> None:
    hip = figures(spec_of())
    assert hip["eave_length"] == approx(4.0 * hip["eave_width"])
    gable = spec_of(roof_form="gable")
    assert figures(gable)["eave_length"] == approx(sum(2.0 * sizes(gable).roof_half(side) for side in (1, 3)))


def test_vents_share_the_floors_target() -> None:
    row = {"floor_area": 120.0, "ridge_length": 12_000.0}
    one, two = (wanted_area(spec_of(**row, vents=vents, width=900.0)) for vents in (1, 2))
    assert one == approx(2.0 * two) and one > 0.0


@pytest.mark.parametrize("offset", [0.0, 120.0, -120.0])
def test_a_wrong_pitch_opens_more_at_the_foot_that_is_further_from_the_ridge(offset: float) -> None:
    """The axis stands ``offset`` left of the ridge: the left foot is further from it by so much, and the right one nearer."""
    spec = spec_of(ridge_offset=offset, pitch_left=30.0, pitch_right=30.0, pitch_error=1.0)
    opens, half = math.tan(math.radians(31.0)) - math.tan(math.radians(30.0)), sizes(spec).base.width / 2.0
    found = figures(spec)
    assert found["opening_left"] == approx((half + offset) * opens)
    assert found["opening_right"] == approx((half - offset) * opens)


def test_the_throat_is_as_wide_as_the_narrowest_that_stands_round_it() -> None:
    """Half the clear width, from the inner faces of all that stands on a side below the head rails."""
    spec = spec_of()
    at, assembly = sizes(spec), vent()
    inner = min(dot(at.plan.u(0), piece.placement.point(p)) for part in assembly.parts if part.kind.stage != "roof"
                for piece in part.pieces if piece.side == 0 for p in board_shell(part.board).points)
    assert figures(spec)["throat_area"] == approx((2.0 * inner) ** 2)
