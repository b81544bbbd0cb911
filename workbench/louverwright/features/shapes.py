# SPDX-License-Identifier: LGPL-2.1-or-later
"""Core boards and placements as FreeCAD shapes: faces straight from the core, a boolean only for round holes."""

from __future__ import annotations

from functools import lru_cache

import FreeCAD
import Part

from ..core.assembly import Board, board_shell
from ..core.assembly import Part as VentPart
from ..core.faces import Shell
from ..core.geometry import Placement, Vec
from .brep import brep_text


def vector(p: Vec) -> FreeCAD.Vector:
    """A core point or direction as a FreeCAD vector."""
    return FreeCAD.Vector(*p)


def freecad_placement(placement: Placement) -> FreeCAD.Placement:
    """A core placement as FreeCAD's."""
    x, y, z, o = placement.x, placement.y, placement.z, placement.origin
    return FreeCAD.Placement(FreeCAD.Matrix(
        x[0], y[0], z[0], o[0],
        x[1], y[1], z[1], o[1],
        x[2], y[2], z[2], o[2],
        0.0, 0.0, 0.0, 1.0))


def shell_shape(shell: Shell) -> Part.Shape:
    """The solid inside a core shell, its faces in the shell's order; sewn only where more than two faces share an edge."""
    told = brep_text(shell)
    if told is None:
        return _sewn(shell)
    shape = Part.Shape()
    shape.importBrepFromString(told)
    return shape.Solids[0]


def _sewn(shell: Shell) -> Part.Shape:
    """The solid inside a core shell, put together by the kernel."""
    points = [vector(p) for p in shell.points]
    faces = []
    for face in shell.faces:
        wires = [Part.makePolygon([*(points[i] for i in loop), points[loop[0]]]) for loop in face.loops]
        faces.append(Part.Face(wires) if len(wires) > 1 else Part.Face(wires[0]))
    return Part.Solid(Part.Shell(faces))


@lru_cache(maxsize=512)
def board_shape(board: Board) -> Part.Shape:
    """The solid of a board, in the board frame.  Shared by all its pieces: copy before changing it."""
    solid = shell_shape(board_shell(board))
    for bore in board.bores:
        hole = Part.makeCylinder(bore.diameter / 2.0, bore.length, vector(bore.start), vector(bore.direction))
        solid = solid.cut(hole).Solids[0]
    return solid


@lru_cache(maxsize=256)
def piece_shapes(part: VentPart) -> tuple[Part.Shape, ...]:
    """The solids of a part's pieces, placed in the assembly frame; they share one board's geometry: copy before changing.

    The part's object and the whole vent ask for the same ones, one after the other.
    """
    shape = board_shape(part.board)
    return tuple(shape.transformed(freecad_placement(piece.placement).toMatrix()) for piece in part.pieces)
