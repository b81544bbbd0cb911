# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which edges of plain boards are drawn as seen and which as hidden; those of every part against FreeCAD's kernel are in
tests/host/test_drawings.py."""

from __future__ import annotations

import math

import pytest

from louverwright.core.assembly import DADO, Board, Cut
from louverwright.core.geometry import Plane
from louverwright.report.views import ON_EDGE, ON_END, ON_FACE, Segment, edges_seen

LOW, HIGH, DEEP = Plane((1.0, 0.0, 0.0), 300.0), Plane((-1.0, 0.0, 0.0), -320.0), Plane((0.0, 0.0, -1.0), -10.0)


def tidy(lines: list[Segment]) -> list[tuple[float, ...]]:
    """Each line from its left or lower end, in order."""
    return sorted(tuple(round(x, 6) + 0.0 for p in sorted(line) for x in p) for line in lines)


def test_a_plain_board_is_a_rectangle_from_every_side() -> None:
    board = Board(1000.0, 100.0, 40.0)
    for view, size in ((ON_FACE, (1000.0, 100.0)), (ON_EDGE, (1000.0, 40.0)), (ON_END, (100.0, 40.0))):
        visible, hidden = edges_seen(board, view)
        assert not hidden and len(visible) == 4
        assert sorted(math.dist(*line) for line in visible) == pytest.approx(sorted(2 * size))


@pytest.mark.parametrize("planes", [(LOW, HIGH, DEEP), (HIGH, LOW, DEEP), (DEEP, LOW, HIGH)], ids=range(3))
def test_a_dado_in_the_hidden_face_is_dashed_from_above_and_open_from_the_edge(planes: tuple[Plane, ...]) -> None:
    """10 deep, from 300 to 320, whichever of its planes parts the wood above it first."""
    board = Board(1000.0, 100.0, 40.0, (Cut(DADO, "dado", planes),))
    visible, hidden = edges_seen(board, ON_FACE)
    assert tidy(visible) == [(0, 0, 0, 100), (0, 0, 1000, 0), (0, 100, 1000, 100), (1000, 0, 1000, 100)]
    assert tidy(hidden) == [(300, 0, 300, 100), (320, 0, 320, 100)]
    visible, hidden = edges_seen(board, ON_EDGE)
    assert tidy(visible) == [(0, 0, 0, 40), (0, 0, 300, 0), (0, 40, 1000, 40), (300, 0, 300, 10), (300, 10, 320, 10),
                             (320, 0, 320, 10), (320, 0, 1000, 0), (1000, 0, 1000, 40)]
    assert not hidden
    visible, hidden = edges_seen(board, ON_END)
    assert len(visible) == 4 and tidy(hidden) == [(0, 10, 100, 10)]
