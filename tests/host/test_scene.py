# SPDX-License-Identifier: LGPL-2.1-or-later
"""The picture that follows a hand: whatever was drawn before, it comes to what a fresh picture comes to."""

from __future__ import annotations

from typing import Any

import pytest

from louverwright.core.outline import outlines
from louverwright.core.spec import make_spec
from louverwright.places import stock_list
from louverwright.view.scene import Scene

CHANGES: dict[str, tuple[dict[str, Any], dict[str, Any]]] = {
    "corners only": ({"width": 900.0}, {"width": 905.0}),
    "another number of slats": ({"slat_count": 5}, {"slat_count": 7}),
    "other sides": ({}, {"sides": 8, "width": 1400.0, "king_post_stock": "6x6"}),
    "a kind that goes": ({"screen": True}, {"screen": False}),
    "a kind that comes": ({"screen": False}, {"screen": True}),
}


def drawn(scene: Scene) -> dict[str, tuple[Any, Any, Any]]:
    """Corners, faces and lines by kind, of the kinds that have any."""
    return {kind: (tuple(point.getValue() for point in each.points.point.getValues()),
                   tuple(each.faces.coordIndex.getValues()), tuple(each.lines.coordIndex.getValues()))
            for kind, each in scene._kinds.items() if each.points.point.getNum()}


@pytest.mark.parametrize("name", CHANGES)
def test_a_changed_picture_is_as_a_fresh_one(name: str) -> None:
    before, after = (outlines(make_spec(values, stock_list("us"))) for values in CHANGES[name])
    scene, fresh = Scene(), Scene()
    scene.show(before)
    was = drawn(scene)
    scene.show(after)
    fresh.show(after)
    assert drawn(scene) == drawn(fresh) != was
    scene.show(before)
    assert drawn(scene) == was


def test_every_edge_is_one_line() -> None:
    """Of a piece each edge of its faces is drawn once, though two faces end in it."""
    pieces = outlines(make_spec({}, stock_list("us")))
    scene = Scene()
    scene.show(pieces)
    for kind, each in scene._kinds.items():
        told = list(each.lines.coordIndex.getValues())
        lines = [tuple(sorted(pair)) for pair in zip(told[::3], told[1::3], strict=True)]
        assert set(told[2::3]) == {-1} and len(set(lines)) == len(lines)
        first, wanted = 0, set()
        for mesh in (piece.mesh for piece in pieces if piece.kind == kind):
            wanted |= {tuple(sorted((first + loop[i - 1], first + loop[i]))) for loop in mesh.loops for i in range(len(loop))}
            first += len(mesh.points)
        assert set(lines) == wanted
