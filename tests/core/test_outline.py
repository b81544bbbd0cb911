# SPDX-License-Identifier: LGPL-2.1-or-later
"""The quick picture of a vent shows the pieces that the layout makes: same ids, same places, same volumes."""

from __future__ import annotations

import pytest
from making import EXAMPLES, job_of

from louverwright.core.assembly import board_shell, board_volume_and_centre
from louverwright.core.checks import checked_spec
from louverwright.core.cutting import Stick, stick_of
from louverwright.core.dimensions import sizes
from louverwright.core.geometry import cross, dot
from louverwright.core.layout import layout, members
from louverwright.core.outline import Mesh, Outline, outlines
from louverwright.places import stock_list


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
    corners = tuple((float(x), float(y), float(z)) for x in (0, 1) for y in (0, 1) for z in (0, 1))
    loops = ((0, 2, 6, 4), (1, 5, 7, 3), (0, 4, 5, 1), (2, 3, 7, 6), (0, 1, 3, 2), (4, 6, 7, 5))
    assert volume(Outline("", "", "", 0, Mesh(corners, loops))) == pytest.approx(1.0)


@pytest.mark.parametrize("name", EXAMPLES)
def test_a_mesh_holds_no_corner_that_no_face_has(name: str) -> None:
    for piece in outlines(job_of(name).spec):
        assert len(piece.mesh.points) < sum(map(len, piece.mesh.loops)) / 2, "corners are shared"
        assert {i for loop in piece.mesh.loops for i in loop} == set(range(len(piece.mesh.points))), piece.id


def test_half_a_turn_round_the_vent_an_equal_roof_gives_equal_sticks() -> None:
    """So each is cut once for both sides; a saltbox has no such pairs at the feet."""
    def sticks(pitch_right: float) -> dict[str, Stick]:
        spec = checked_spec({"pitch_left": 30.0, "pitch_right": pitch_right}, stock_list("us"))
        return {member.id: stick_of(member) for member in members(spec, sizes(spec))}

    equal, saltbox = sticks(30.0), sticks(40.0)
    across = {name: name.replace("/0", "/2").replace("/1", "/3") for name in equal if "/0" in name or "/1" in name}
    feet = [name for name in across if name.startswith(("base.leg.", "base.sole.", "base.cladding.", "base.corner."))]
    assert len(feet) > 8 and all(equal[name] == equal[across[name]] for name in across if across[name] in equal)
    assert all(saltbox[name] != saltbox[across[name]] for name in feet)
