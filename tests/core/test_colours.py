# SPDX-License-Identifier: LGPL-2.1-or-later
"""The colours of parts are told apart by everyone: measured for the three kinds of missing cones.

Simulation: Machado, Oliveira and Fernandes, "A physiologically-based model for simulation of color vision deficiency",
IEEE Transactions on Visualization and Computer Graphics 15 (2009), its matrices for severity 1.0, which act on linear RGB
(entered from memory, then found alike in several public programs).  sRGB to linear and to XYZ: IEC 61966-2-1; Lab and its
difference: CIE 1976, white D65.  From memory: a difference of 2.3 is just noticeable.
"""

from __future__ import annotations

from itertools import combinations

import pytest

from louverwright.core.kinds import KINDS
from louverwright.view.colours import BY_KIND, BY_STOCK, STOCK_LOOKS, WAYS, is_ours, look_of

Rows = tuple[tuple[float, float, float], ...]

EYES: dict[str, Rows] = {
    "all cones": ((1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0)),
    "protanopia": ((0.152286, 1.052583, -0.204868), (0.114503, 0.786281, 0.099216), (-0.003882, -0.048116, 1.051998)),
    "deuteranopia": ((0.367322, 0.860646, -0.227968), (0.280085, 0.672501, 0.047413), (-0.011820, 0.042940, 0.968881)),
    "tritanopia": ((1.255528, -0.076749, -0.178779), (-0.078411, 0.930809, 0.147602), (0.004733, 0.691367, 0.303900)),
}
XYZ: Rows = ((0.4124, 0.3576, 0.1805), (0.2126, 0.7152, 0.0722), (0.0193, 0.1192, 0.9505))
#: What is asked for, in Lab: any two stocks; any two kinds that follow each other, or with one between.
STOCKS, NEIGHBOURS = 20.0, 35.0


def times(rows: Rows, v: tuple[float, ...]) -> tuple[float, float, float]:
    a, b, c = (sum(row[i] * v[i] for i in range(3)) for row in rows)
    return a, b, c


def linear(value: float) -> float:
    return value / 12.92 if value <= 0.04045 else ((value + 0.055) / 1.055) ** 2.4


def lab(colour: tuple[float, ...], eyes: str) -> tuple[float, float, float]:
    """A colour as these eyes see it."""
    seen = tuple(min(1.0, max(0.0, each)) for each in times(EYES[eyes], tuple(map(linear, colour))))
    white = times(XYZ, (1.0, 1.0, 1.0))
    x, y, z = (root(each / full) for each, full in zip(times(XYZ, seen), white, strict=True))
    return 116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)


def root(t: float) -> float:
    return t ** (1.0 / 3.0) if t > (6.0 / 29.0) ** 3 else t / (3.0 * (6.0 / 29.0) ** 2) + 4.0 / 29.0


def difference(one: tuple[float, ...], other: tuple[float, ...], eyes: str) -> float:
    return sum((a - b) ** 2 for a, b in zip(lab(one, eyes), lab(other, eyes), strict=True)) ** 0.5


@pytest.mark.parametrize("eyes", EYES)
def test_any_two_stocks_are_told_apart(eyes: str) -> None:
    least = min(difference(a.colour, b.colour, eyes) for a, b in combinations(STOCK_LOOKS, 2))
    assert least >= STOCKS, f"{least:.1f}"
    assert {look_of(kind.id, BY_STOCK) for kind in KINDS} == set(STOCK_LOOKS)


@pytest.mark.parametrize("eyes", EYES)
@pytest.mark.parametrize("away", [1, 2])
def test_kinds_near_each_other_are_told_apart(eyes: str, away: int) -> None:
    colours = [look_of(kind.id, BY_KIND).colour for kind in KINDS]
    least = min(difference(a, b, eyes) for a, b in zip(colours, colours[away:], strict=False))
    assert least >= NEIGHBOURS, f"{least:.1f}"


def test_the_measure_itself() -> None:
    """White to black is 100; red and green lie far apart for all cones, and not for those without one of two."""
    assert difference((1.0, 1.0, 1.0), (0.0, 0.0, 0.0), "all cones") == pytest.approx(100.0, abs=1e-3)
    red, green = (0.75, 0.35, 0.20), (0.45, 0.52, 0.20)
    assert difference(red, green, "all cones") > 45.0
    assert difference(red, green, "deuteranopia") < 12.0
    assert all(sum(row) == pytest.approx(1.0, abs=2e-6) for rows in EYES.values() for row in rows)    # greys stay grey


def test_a_screen_is_seen_through_however_it_is_coloured() -> None:
    assert all(look_of("louver.screen", way).transparency > 0 for way in WAYS)


@pytest.mark.parametrize("way", WAYS)
def test_our_colours_are_known_again_as_freecad_keeps_them(way: str) -> None:
    for kind in KINDS:
        kept = tuple(round(each * 255) / 255 for each in look_of(kind.id, way).colour)
        assert is_ours(kind.id, kept)
    assert not is_ours("louver.slat", (0.1, 0.2, 0.3))
