# SPDX-License-Identifier: LGPL-2.1-or-later
"""The quick picture of a vent shows the pieces that the layout makes: same ids, same places, same volumes."""

from __future__ import annotations

import pytest
from making import EXAMPLES, job_of

from louverwright.core.assembly import board_shell, board_volume_and_centre
from louverwright.core.geometry import cross, dot
from louverwright.core.layout import layout
from louverwright.core.outline import Outline, outlines


def volume(piece: Outline) -> float:
    """Of closed cells together (mm³): their faces as fans of tetrahedra from the origin."""
    return sum(dot(a, cross(b, c)) for face in piece.faces for a, b, c in
               ((face[0], face[i], face[i + 1]) for i in range(1, len(face) - 1))) / 6.0


@pytest.mark.parametrize("name", EXAMPLES)
def test_the_picture_is_of_the_pieces_that_are_cut(name: str) -> None:
    spec = job_of(name).spec
    assembly, drawn = layout(spec), {piece.id: piece for piece in outlines(spec)}
    assert set(drawn) == {piece.id for piece in assembly.pieces}
    for part in assembly.parts:
        bored = sum(3.141592653589793 * (bore.diameter / 2.0) ** 2 * bore.length for bore in part.board.bores)
        wanted = board_volume_and_centre(part.board)[0] + bored
        for piece in part.pieces:
            outline = drawn[piece.id]
            assert (outline.kind, outline.side) == (part.kind.id, piece.side)
            assert volume(outline) == pytest.approx(wanted, rel=1e-6), piece.id
            corners = [piece.placement.point(p) for p in board_shell(part.board).points]
            points = [p for face in outline.faces for p in face]
            for axis in range(3):
                assert min(p[axis] for p in points) == pytest.approx(min(p[axis] for p in corners), abs=1e-6)
                assert max(p[axis] for p in points) == pytest.approx(max(p[axis] for p in corners), abs=1e-6)


def test_the_measure_of_volume_itself() -> None:
    """A unit cube has 1 mm³."""
    quads = (((0, 0, 0), (0, 1, 0), (1, 1, 0), (1, 0, 0)), ((0, 0, 1), (1, 0, 1), (1, 1, 1), (0, 1, 1)),
             ((0, 0, 0), (1, 0, 0), (1, 0, 1), (0, 0, 1)), ((0, 1, 0), (0, 1, 1), (1, 1, 1), (1, 1, 0)),
             ((0, 0, 0), (0, 0, 1), (0, 1, 1), (0, 1, 0)), ((1, 0, 0), (1, 1, 0), (1, 1, 1), (1, 0, 1)))
    cube = Outline("", "", "", 0, tuple(tuple((float(x), float(y), float(z)) for x, y, z in quad) for quad in quads))
    assert volume(cube) == pytest.approx(1.0)
