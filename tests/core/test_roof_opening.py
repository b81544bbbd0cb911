# SPDX-License-Identifier: LGPL-2.1-or-later
"""The rough opening: outline, clear area and the room cut out of the roof, by arithmetic on paper."""

from __future__ import annotations

import math

import pytest
from making import spec_of

from louverwright.core.dimensions import sizes
from louverwright.core.faces import shell_of
from louverwright.core.figures import figures
from louverwright.core.plan import BarnRoof
from louverwright.core.roof_opening import (
    ABOVE,
    REFUSED,
    OpeningError,
    clear_area,
    clear_pieces,
    depth_under,
    outline,
    ridge_board,
    shadow,
    shafts,
)
from louverwright.core.solid import corners, volume_and_centre

PLANS = [{}, {"facing": "corner"}, {"width": 1200.0, "length": 2000.0}, {"sides": 6, "width": 1200.0},
         {"sides": 8, "width": 1200.0, "king_post_stock": "6x6"},
         {"sides": 8, "width": 1200.0, "facing": "corner", "king_post_stock": "6x6"},
         {"seat": "one slope", "pitch_left": 25.0}, {"ridge_offset": 60.0, "width": 1200.0}]
SQUARE = ((-300.0, -200.0, 0.0), (300.0, -200.0, 0.0), (300.0, 200.0, 0.0), (-300.0, 200.0, 0.0))
ROOF = BarnRoof(45.0, 30.0)


def area_of(points):
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(points, (*points[1:], points[0]), strict=True)) / 2.0


@pytest.mark.parametrize("values", PLANS, ids=str)
def test_the_outline_is_that_of_the_figures_and_lies_inside_the_base(values) -> None:
    spec = spec_of(**values)
    at, told = sizes(spec), figures(spec)
    corners_ = outline(at, spec.opening_margin)
    assert area_of(corners_) == pytest.approx(told["roof_opening_area"])
    assert math.dist(corners_[0], corners_[1]) == pytest.approx(told["roof_opening_length"])
    assert math.dist(corners_[1], corners_[2]) == pytest.approx(told["roof_opening_side"])
    for side in range(at.plan.sides):
        u = at.plan.u(side)
        inside = at.base.inner_r + at.plan.out(side) - spec.opening_margin
        assert max(p[0] * u[0] + p[1] * u[1] for p in corners_) <= inside + 1e-9


def test_a_square_of_900_by_hand() -> None:
    """The clear width between the legs is 2 × opening(0); the margin comes off twice."""
    at = sizes(spec_of(opening_margin=35.0))
    half = at.opening(0) - 35.0
    assert outline(at, 35.0)[2] == pytest.approx((half, half, 0.0))
    turned = sizes(spec_of(opening_margin=35.0, facing="corner"))
    half = turned.opening(0) - 35.0
    reach = max(p[1] for p in outline(turned, 35.0))
    assert reach == pytest.approx(half * math.sqrt(2.0))    # its corner, over the ridge
    assert [abs(p[0]) < 1e-9 or abs(p[1]) < 1e-9 for p in outline(turned, 35.0)] == 4 * [True]


def test_a_margin_that_leaves_nothing_is_refused() -> None:
    at = sizes(spec_of())
    with pytest.raises(OpeningError, match=r"Opening margin is .* mm: nothing is left .* Set it below"):
        outline(at, at.opening(0) + 1.0)


def test_a_ridge_board_of_38_splits_the_opening() -> None:
    """600 × 400 less a strip of 600 × 38 over the middle: 2 × 600 × 181."""
    pieces = clear_pieces(SQUARE, ridge_board(ROOF, 38.0))
    assert sorted(clear_area((piece,)) for piece in pieces) == pytest.approx([108_600.0, 108_600.0])
    assert all(abs(p[1]) >= 19.0 - 1e-9 for p in corners(pieces))


def test_a_ridge_board_off_the_middle_and_one_past_the_edge() -> None:
    """Ridge 190 off: the strip of 38 sticks out by 9 over the edge at 200, and 600 × 371 is left; at 260 it misses."""
    pieces = clear_pieces(SQUARE, ridge_board(BarnRoof(45.0, 30.0, 190.0), 38.0))
    assert clear_area(pieces) == pytest.approx(600.0 * 371.0)
    assert len(pieces) == 1
    missed = clear_pieces(SQUARE, ridge_board(BarnRoof(45.0, 30.0, 260.0), 38.0), REFUSED)
    assert clear_area(missed) == pytest.approx(240_000.0)


def test_a_corner_to_the_ridge_leaves_two_triangles() -> None:
    """|x| + |y| ≤ a√2: the strip takes 2√2·a·t − t²/2, a = 200, t = 40: 21 827.4 of 160 000 mm²."""
    half = 200.0 * math.sqrt(2.0)
    diamond = ((half, 0.0, 0.0), (0.0, half, 0.0), (-half, 0.0, 0.0), (0.0, -half, 0.0))
    pieces = clear_pieces(diamond, ridge_board(ROOF, 40.0))
    assert clear_area(pieces) == pytest.approx(160_000.0 - (2.0 * math.sqrt(2.0) * 200.0 * 40.0 - 40.0 ** 2 / 2.0))
    assert len(pieces) == 2


def test_on_one_slope_there_is_no_ridge_board() -> None:
    assert ridge_board(BarnRoof(25.0, -25.0, 0.0, single=True), 38.0) == ()
    assert ridge_board(ROOF, 0.0) == ()


def test_a_board_that_must_not_be_cut_is_refused_by_name() -> None:
    """38 × 600 is 228 cm²."""
    with pytest.raises(OpeningError, match="would cut the ridge board, over 228 cm²"):
        clear_pieces(SQUARE, ridge_board(ROOF, 38.0), REFUSED)


def test_a_board_over_all_of_it_leaves_nothing() -> None:
    with pytest.raises(OpeningError, match="Nothing is left of the opening: the ridge board covers it"):
        clear_pieces(SQUARE, ridge_board(ROOF, 400.0))


def test_rafters_stand_in_their_shadows() -> None:
    """Two rafters of 50 across, staggered: 2 × 50 × 200 of 240 000 mm²; a flat face has no shadow."""
    left = shadow("A", [(0.0, 0.0, -5.0), (50.0, 0.0, 3.0), (50.0, 900.0, -900.0), (0.0, 900.0, 8.0), (25.0, 400.0, 0.0)])
    right = shadow("B", [(50.0, 0.0, 0.0), (100.0, 0.0, 0.0), (100.0, -900.0, 0.0), (50.0, -900.0, 0.0)])
    assert clear_area(clear_pieces(SQUARE, [*left, *right])) == pytest.approx(220_000.0)
    assert shadow("C", [(0.0, 0.0, 0.0), (100.0, 0.0, 0.0), (50.0, 0.0, -500.0)]) == ()


def test_a_skew_board_takes_its_parallelogram() -> None:
    """A strip 40 wide at 60° to the ridge right across 400: 40 / sin 60° × 400 mm²."""
    c, s = math.cos(math.radians(60.0)), math.sin(math.radians(60.0))
    ends = [(c * x - s * y, s * x + c * y, 0.0) for x in (-490.0, 490.0) for y in (-20.0, 20.0)]
    assert clear_area(clear_pieces(SQUARE, shadow("the brace", ends))) == pytest.approx(240_000.0 - 40.0 / s * 400.0)


@pytest.mark.parametrize("roof", [ROOF, BarnRoof(45.0, 30.0, 120.0), BarnRoof(20.0, -20.0, 0.0, single=True),
                                  BarnRoof(0.0, 0.0, 0.0, single=True), BarnRoof(45.0, 30.0, 500.0)], ids=str)
@pytest.mark.parametrize("board", [0.0, 38.0])
def test_shafts_are_as_high_everywhere(roof, board) -> None:
    """Both planes run along the slopes, so volume = area × (depth + above); and every corner is on one of the two."""
    pieces = clear_pieces(SQUARE, ridge_board(roof, board))
    found = shafts(roof, pieces, 180.0)
    assert len(found) == len(pieces)
    assert sum(volume_and_centre(solid)[0] for solid in found) == pytest.approx(clear_area(pieces) * (180.0 + ABOVE))
    for p in (p for solid in found for p in corners(solid)):
        assert min(abs(depth_under(roof, p) - 180.0), abs(depth_under(roof, p) + ABOVE)) < 1e-6
    for solid in found:
        shell = shell_of(solid)
        assert all(len(faces) == 2 for faces in shell.edges.values())    # closed


def test_a_piece_astride_the_ridge_is_one_solid_of_eight_faces() -> None:
    """Four sides, two above, two below: the two halves' common wall is gone."""
    (solid,) = shafts(ROOF, clear_pieces(SQUARE), 180.0)
    assert (len(solid), len(shell_of(solid).faces)) == (2, 8)
