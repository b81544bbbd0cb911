# SPDX-License-Identifier: LGPL-2.1-or-later
"""The vent's pieces as bodies to draw: where they stand, moved apart, or cut open by a plane."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache

from ..core.assembly import Board, Part, Piece, board_shell, board_solid
from ..core.faces import Shell, shell_of
from ..core.geometry import Placement, Plane, Vec, add
from ..core.outline import Outline, mesh_of
from ..core.solid import Cell, Facet, Solid, clip
from .hidden_lines import Body, Edge

#: The name of the faces that a section leaves.
SECTION = "section"
NOWHERE: Vec = (0.0, 0.0, 0.0)


@dataclass(frozen=True)
class Cut:
    """Loops of wood that a section plane cuts through, of one piece (mm, assembly frame)."""

    name: str
    loops: tuple[tuple[Vec, ...], ...]


def body(part: Part, piece: Piece, shift: Vec = NOWHERE) -> Body:
    """A piece where it stands, moved by ``shift`` (mm)."""
    place = piece.placement
    moved = Placement(add(place.origin, shift), place.x, place.y, place.z)
    return _body(piece.id, board_solid(part.board), board_shell(part.board), moved)


def _body(name: str, solid: Solid, shell: Shell, place: Placement) -> Body:
    cells = tuple(tuple(_facet(facet, place) for facet in cell) for cell in solid)
    points = [place.point(p) for p in shell.points]
    sides: dict[tuple[int, int], list[tuple[Vec, Vec]]] = {}
    for a, b, face, inward in shell.sides:
        sides.setdefault((min(a, b), max(a, b)), []).append((place.direction(face.plane.normal), place.direction(inward)))
    return Body(name, cells, tuple(Edge(points[a], points[b], tuple(each)) for (a, b), each in sides.items()))


def _facet(facet: Facet, place: Placement) -> Facet:
    points = tuple(place.point(p) for p in facet.points)
    return Facet(Plane.through(points[0], place.direction(facet.plane.normal)), facet.name, points)


def bodies(pieces: Iterable[tuple[Part, Piece]], shifts: Mapping[str, Vec] | None = None) -> tuple[Body, ...]:
    """Pieces as bodies, each moved by its shift."""
    return tuple(body(part, piece, (shifts or {}).get(piece.id, NOWHERE)) for part, piece in pieces)


def cut_open(pieces: Iterable[tuple[Part, Piece]], plane: Plane) -> tuple[tuple[Body, ...], tuple[Cut, ...]]:
    """What stands on the kept side of a plane, and the wood that the plane goes through."""
    kept: list[Body] = []
    cuts: list[Cut] = []
    for part, piece in pieces:
        solid, shell = _clipped(part.board, piece.placement.local_plane(plane))
        if not solid:
            continue
        kept.append(_body(piece.id, solid, shell, piece.placement))
        loops = tuple(tuple(piece.placement.point(shell.points[i]) for i in loop)
                      for face in shell.faces if face.name == SECTION for loop in face.loops)
        if loops:
            cuts.append(Cut(piece.id, loops))
    return tuple(kept), tuple(cuts)


@lru_cache(maxsize=2048)
def _clipped(board: Board, plane: Plane) -> tuple[Solid, Shell]:
    whole = board_solid(board)
    solid: tuple[Cell, ...] = tuple(cell for cell in (clip(each, plane, SECTION) for each in whole) if cell)
    return (whole, board_shell(board)) if solid == whole else (solid, shell_of(solid))


def outline(part: Part, piece: Piece) -> Outline:
    """A piece as ``core.apart`` moves it."""
    faces = tuple(tuple(piece.placement.point(p) for p in facet.points) for cell in board_solid(part.board) for facet in cell)
    return Outline(piece.id, part.kind.id, part.kind.stage, piece.side, mesh_of(faces))
