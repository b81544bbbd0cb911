# SPDX-License-Identifier: LGPL-2.1-or-later
"""The convex outline of points against scipy's, and of points in a line but for their last decimals."""

from __future__ import annotations

import random

import pytest

from louverwright.core.hull import hull


@pytest.mark.parametrize("number", range(20))
def test_it_is_the_outline_that_scipy_finds(number: int) -> None:
    """scipy.spatial.ConvexHull (Qhull)."""
    from scipy.spatial import ConvexHull

    chance = random.Random(number)
    points = [(chance.uniform(-900.0, 900.0), chance.uniform(-300.0, 300.0)) for _ in range(40)]
    theirs = [points[i] for i in ConvexHull(points).vertices]    # anticlockwise too
    ours = hull(points)
    start = min(range(len(theirs)), key=lambda i: theirs[i])
    turned = theirs[start:] + theirs[:start]
    assert ours == tuple((round(x, 6), round(y, 6)) for x, y in turned)


@pytest.mark.parametrize("number", range(20))
def test_points_of_a_line_come_in_order_whatever_their_last_decimals(number: int) -> None:
    chance = random.Random(number)
    corners = [(954.5057, -786.7042), (1032.2307310728, -786.7042), (1032.2307310728, -658.9338), (954.5057, -658.9338)]
    beside = [(1032.2307310728, y) for y in (-685.87, -700.0, -672.4)] + [(x, -658.9338) for x in (960.0, 1000.0)]
    points = [(x + chance.uniform(-9e-12, 9e-12), y + chance.uniform(-9e-12, 9e-12)) for x, y in corners + beside]
    assert hull(points) == tuple((round(x, 6), round(y, 6)) for x, y in corners)


def test_points_without_width_have_no_outline() -> None:
    assert len(hull([])) < 3
    assert len(hull([(1.0, 2.0)] * 4)) < 3
    assert len(hull([(0.0, 0.0), (100.0, 50.0), (200.0, 100.0), (50.0, 25.0002)])) < 3
