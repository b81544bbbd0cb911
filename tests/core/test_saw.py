# SPDX-License-Identifier: LGPL-2.1-or-later
"""Settings of the saw and where a cut lies, on boards small enough to work out by hand: signs, ends, edges, faces."""

from __future__ import annotations

import math

import pytest
from making import spec_of

from louverwright.core.assembly import CROSSCUT, RIP, Board, Cut
from louverwright.core.geometry import Plane, unit
from louverwright.core.layout import layout
from louverwright.core.saw import ARRISES, edge_of, end_of, end_spans, line_of, setting, span_at
from louverwright.core.solid import END_A, END_B, FAR_EDGE, MARKED_FACE, REFERENCE_EDGE, corners

LENGTH, WIDTH, THICK = 1_000.0, 100.0, 20.0
#: How a compound cut leans: x = 900 − 0.3 y − 0.2 z at end B, x = 50 + 0.3 y + 0.2 z at end A.
ACROSS, UP = 0.3, 0.2


def crosscut(end: str, across: float, up: float) -> Cut:
    way, at = (1.0, 900.0) if end == END_B else (-1.0, 50.0)
    return Cut(CROSSCUT, f"cut at {end}", (Plane.through((at, 0.0, 0.0), unit((way, across, up))),))


def rip(edge: str, narrower: float) -> Cut:
    way, at = (1.0, 80.0) if edge == FAR_EDGE else (-1.0, 20.0)
    return Cut(RIP, f"rip of {edge}", (Plane.through((0.0, at, 0.0), unit((narrower, way, 0.0))),))


def board(*cuts: Cut) -> Board:
    return Board(LENGTH, WIDTH, THICK, cuts)


@pytest.mark.parametrize("end", [END_A, END_B])
def test_a_mitre_above_nought_has_its_long_point_on_the_reference_edge(end: str) -> None:
    cut = crosscut(end, math.tan(math.radians(30.0)), 0.0)
    assert setting(cut.planes[0]).mitre == pytest.approx(30.0) and end_of(cut) == end
    span = end_spans(board(cut))[end == END_B]
    near, far = span.at(REFERENCE_EDGE, MARKED_FACE), span.at(FAR_EDGE, MARKED_FACE)
    assert far - near == pytest.approx((1.0 if end == END_A else -1.0) * WIDTH * math.tan(math.radians(30.0)))
    assert line_of(board(cut), cut) == pytest.approx(WIDTH / math.cos(math.radians(30.0)))


@pytest.mark.parametrize("end", [END_A, END_B])
def test_a_bevel_above_nought_has_its_marked_face_short(end: str) -> None:
    cut = crosscut(end, 0.0, math.tan(math.radians(20.0)))
    assert setting(cut.planes[0]).bevel == pytest.approx(20.0)
    whole = board(crosscut(END_A, 0.0, 0.0)) if end == END_B else board(crosscut(END_B, 0.0, 0.0))
    a, b = end_spans(Board(LENGTH, WIDTH, THICK, (*whole.cuts, cut)))
    lengths = {face: b.at(REFERENCE_EDGE, face) - a.at(REFERENCE_EDGE, face) for _, face in ARRISES}
    assert min(lengths, key=lambda face: lengths[face]) == MARKED_FACE
    assert max(lengths.values()) - min(lengths.values()) == pytest.approx(THICK * math.tan(math.radians(20.0)))


@pytest.mark.parametrize("edge", [REFERENCE_EDGE, FAR_EDGE])
def test_a_taper_above_nought_grows_narrower_towards_end_b(edge: str) -> None:
    cut = rip(edge, 0.02)
    assert setting(cut.planes[0]).taper == pytest.approx(math.degrees(math.atan(0.02))) and edge_of(cut) == edge
    points = corners(board(cut).after(1))
    wide = {x: max(p[1] for p in points if p[0] == x) - min(p[1] for p in points if p[0] == x) for x in (0.0, LENGTH)}
    assert wide == {0.0: pytest.approx(80.0), LENGTH: pytest.approx(60.0)}


def test_a_compound_cut_is_marked_on_each_arris_where_it_meets_it() -> None:
    first, last = crosscut(END_A, ACROSS, UP), crosscut(END_B, ACROSS, UP)
    made = board(first, last)
    for number, (edge, face) in enumerate(ARRISES):
        off = ACROSS * (WIDTH if edge == FAR_EDGE else 0.0) + UP * (THICK if face == MARKED_FACE else 0.0)
        for spans in (end_spans(made), (span_at(made, first), span_at(made, last))):
            assert spans[0].at(edge, face) == pytest.approx(50.0 + off), (edge, face)
            assert spans[1].at(edge, face) == pytest.approx(900.0 - off), (edge, face)
        assert span_at(made, first).on_cut[number] and span_at(made, last).on_cut[number]


def test_end_a_is_cut_before_end_b() -> None:
    """The order on paper: nobody turns the stick back to an end that was done."""
    for part in layout(spec_of()).parts:
        ends = [end_of(cut) for cut in part.board.cuts if cut.kind == CROSSCUT]
        assert ends == sorted(ends, key=(END_A, END_B).index), part.mark
