# SPDX-License-Identifier: LGPL-2.1-or-later
"""Sticks at the least cost: published instances, and small ones against HiGHS (SciPy's milp) over every way to cut a stick."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from sticks_exact import by_highs, room_of

from louverwright.core.stick_relaxed import SCALE, Nest, Pieces, Stick, Table, relaxed
from louverwright.core.stick_solver import Solution, Wanted, solve

#: Paper rolls cut from 5600 mm: the encyclopedia's example of the cutting-stock problem (73 rolls: from memory).
PAPER = "1380x22 1520x25 1560x12 1710x14 1820x18 1880x18 1930x20 2000x10 2050x12 2100x14 2140x16 2150x18 2200x20"
#: Raws of 100, Chvátal, Linear Programming, chapter 13 (453 from memory; the fractions cost 452.25).
RAWS = "45x97 36x610 31x395 14x211"
#: OR-Library, binpack1, u120_00: 120 items in bins of 150; the file's head says 48.
U120 = """42 69 67 57 93 90 38 36 45 42 33 79 27 57 44 84 86 92 46 38 85 33 82 73 49 70 59 23 57 72 74 69 33 42 28 46 30 64 29
74 41 49 55 98 80 32 25 38 82 30 35 39 57 84 62 50 55 27 30 36 20 78 47 26 45 41 58 98 91 96 73 84 37 93 91 43 73 85 81 79
71 80 76 83 41 78 70 23 42 87 43 84 60 55 49 78 73 62 36 44 94 69 32 96 70 84 58 78 25 80 58 66 83 24 98 60 42 43 43 39"""

PUBLISHED = {"paper": (PAPER, 5600, 73), "raws": (RAWS, 100, 453), "u120_00": (U120, 150, 48)}


def pieces_of(text: str) -> list[Wanted]:
    counts: Counter[int] = Counter()
    for word in text.split():
        size, _, count = word.partition("x")
        counts[int(size)] += int(count or 1)
    return [Wanted(size, count) for size, count in counts.items()]


def holds(solution: Solution, pieces: Sequence[Wanted], sticks: Sequence[Stick]) -> None:
    """Asserts that a plan cuts every piece once, out of sticks that are long enough and that there are, at its cost."""
    for i, each in enumerate(pieces):
        assert sum(way[i] for _, way in solution.plan) == each.count
    for stick, way in solution.plan:
        assert any(way) and room_of(pieces, way) <= sticks[stick].size
    used = Counter(stick for stick, _ in solution.plan)
    assert all(stick.limit is None or used[j] <= stick.limit for j, stick in enumerate(sticks))
    assert solution.cost == sum(sticks[j].cost for j, _ in solution.plan) >= solution.least


@pytest.mark.parametrize("name", PUBLISHED)
def test_published_instances_are_cut_at_their_optimum(name: str) -> None:
    text, size, optimum = PUBLISHED[name]
    pieces, sticks = pieces_of(text), [Stick(size, 1)]
    solution = solve(pieces, sticks)
    holds(solution, pieces, sticks)
    assert solution.cost == optimum and solution.proven and solution.fewest


def test_fractions_of_the_raws_cost_what_is_published() -> None:
    pieces = sorted(pieces_of(RAWS), key=lambda each: -each.size)
    made = Pieces(tuple(p.size for p in pieces), tuple(p.count for p in pieces), (None,) * len(pieces))
    told = relaxed(made, [Stick(100, 1)])
    assert 452.249 < told.least / SCALE <= 452.25


@st.composite
def instances(draw: st.DrawFn) -> tuple[list[Wanted], list[Stick]]:
    lengths = draw(st.lists(st.integers(40, 90), min_size=1, max_size=3, unique=True))
    by_length = draw(st.booleans())
    sticks = [Stick(size, size if by_length else draw(st.integers(1, 9))) for size in lengths]
    sizes = draw(st.lists(st.integers(7, max(lengths)), min_size=1, max_size=4, unique=True))
    offcuts = draw(st.lists(st.integers(5, 60), max_size=2, unique=True))
    nests = [None, Nest("chain", draw(st.integers(1, 6))), Nest("pair", draw(st.integers(1, 6)), pairs=True)]
    return ([Wanted(size, draw(st.integers(1, 3)), draw(st.sampled_from(nests))) for size in sizes],
            [*sticks, *(Stick(size, 0, draw(st.integers(1, 2))) for size in offcuts)])


@settings(max_examples=150, deadline=None)
@given(instances())
def test_small_jobs_come_out_as_by_highs(job: tuple[list[Wanted], list[Stick]]) -> None:
    pieces, sticks = job
    solution = solve(pieces, sticks)
    holds(solution, pieces, sticks)
    cost, bought = by_highs(pieces, sticks)
    assert solution.least <= cost <= solution.cost
    assert solution.proven and solution.cost == cost, "small jobs are always proven"
    own = sum(1 for stick, _ in solution.plan if sticks[stick].limit is None)
    assert own >= bought and (own == bought or not solution.fewest)


@settings(max_examples=60, deadline=None)
@given(instances(), st.lists(st.integers(0, 50), min_size=4, max_size=4), st.sampled_from((7, 31, 200)))
def test_the_table_is_never_below_what_a_stick_can_bring(job: tuple[list[Wanted], list[Stick]], prices: list[int],
                                                         cells: int) -> None:
    """Exact where each cell is one unit of room; the pieces' order puts nests together."""
    pieces = sorted(job[0], key=lambda each: each.nest.name if each.nest else "")
    made = Pieces(tuple(p.size for p in pieces), tuple(p.count for p in pieces), tuple(p.nest for p in pieces))
    table = Table(made, prices[:len(pieces)], 90, cells)
    for room in (30, 61, 90):
        most = max(sum(n * price for n, price in zip(way, prices, strict=False))
                   for way in product(*(range(each.count + 1) for each in pieces)) if room_of(pieces, way) <= room)
        assert table.bound(0, room) >= most and table.best(room, -1)[0] == most
        assert table.bound(0, room) == most or table.grid > 1


def test_pieces_point_to_heel_take_less() -> None:
    """Three of 40 that save 10 each behind the first: 100 in all, where side by side they need 120; as pairs 110."""
    for nest, size, sticks in ((Nest("a", 10), 100, 1), (None, 100, 2), (Nest("b", 10, pairs=True), 100, 2),
                               (Nest("b", 10, pairs=True), 110, 1)):
        solution = solve([Wanted(40, 3, nest)], [Stick(size, 1)])
        assert (solution.cost, solution.proven) == (sticks, True)


def test_a_piece_that_no_stick_takes_is_refused() -> None:
    with pytest.raises(ValueError, match="fits no stick"):
        solve([Wanted(11, 1)], [Stick(10, 1), Stick(20, 0, 1)])


def test_nothing_to_cut_costs_nothing() -> None:
    assert solve([], [Stick(10, 1)]) == Solution((), 0, 0, True)


def test_the_same_job_gets_the_same_plan() -> None:
    pieces, sticks = pieces_of(U120)[:20], [Stick(150, 15), Stick(120, 12), Stick(70, 0, 4)]
    assert solve(pieces, sticks) == solve(pieces, sticks)
