# SPDX-License-Identifier: LGPL-2.1-or-later
"""Pieces drawn straight into the 3D view, without document objects: a picture that goes with what shows it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from itertools import pairwise
from typing import Any

import FreeCAD
from pivy import coin

from ..core.geometry import Vec
from ..core.outline import Mesh, Outline
from .colours import Look, look_of


def no_shift(_: Outline) -> Vec:
    """Every piece where it stands."""
    return (0.0, 0.0, 0.0)


class Scene:
    """The pieces of one vent under one node; ``show`` may be called as often as a hand moves."""

    def __init__(self, look: Callable[[str], Look] = look_of) -> None:
        self.look = look
        self.root = coin.SoSeparator()
        self.copies = coin.SoMultipleCopy()
        pick = coin.SoPickStyle()
        pick.style = coin.SoPickStyle.UNPICKABLE
        hints = coin.SoShapeHints()
        hints.vertexOrdering = coin.SoShapeHints.COUNTERCLOCKWISE
        hints.shapeType = coin.SoShapeHints.SOLID
        for node in (pick, hints, self.copies):
            self.root.addChild(node)
        self._kinds: dict[str, _Faces] = {}

    def move(self, *placements: FreeCAD.Placement) -> None:
        """Puts the vent in its place (global), or in several: it is drawn once in each."""
        self.copies.matrix.setNum(len(placements))
        for number, placement in enumerate(placements):
            matrix = coin.SbMatrix()
            turn = coin.SbRotation(*placement.Rotation.Q)
            matrix.setTransform(coin.SbVec3f(*placement.Base), turn, coin.SbVec3f(1.0, 1.0, 1.0))
            self.copies.matrix.set1Value(number, matrix)

    def show(self, pieces: Iterable[Outline], shift: Callable[[Outline], Vec] = no_shift) -> None:
        """Draws these pieces, each moved by its ``shift`` (mm, assembly frame), and no others."""
        by_kind: dict[str, list[Outline]] = {}
        for piece in pieces:
            by_kind.setdefault(piece.kind, []).append(piece)
        for kind in {*by_kind, *self._kinds}:
            if kind not in self._kinds:
                self._kinds[kind] = _Faces(self.look(kind))
                self.copies.addChild(self._kinds[kind].root)
            self._kinds[kind].show(by_kind.get(kind, []), shift)


class _Faces:
    """The faces of one kind: one node for all its pieces, so that a frame costs few calls."""

    def __init__(self, look: Look) -> None:
        self.root = coin.SoSeparator()
        material = coin.SoMaterial()
        material.diffuseColor.setValue(*look.colour)
        material.transparency.setValue(look.transparency / 100.0)
        self.points, self.faces, self.lines = coin.SoCoordinate3(), coin.SoIndexedFaceSet(), coin.SoIndexedLineSet()
        self.shown: list[tuple[Mesh, Vec]] = []
        self.build: list[tuple[int, tuple[tuple[int, ...], ...]]] = []
        drawn = coin.SoBaseColor()
        drawn.rgb.setValue(*(0.45 * part for part in look.colour))
        for node in (self.points, material, self.faces, drawn, self.lines):
            self.root.addChild(node)

    def show(self, pieces: Sequence[Outline], shift: Callable[[Outline], Vec]) -> None:
        wanted = [(piece.mesh, shift(piece)) for piece in pieces]
        if wanted == self.shown:
            return
        self.shown = wanted
        _fill(self.points.point, [(x + dx, y + dy, z + dz) for mesh, (dx, dy, dz) in wanted for x, y, z in mesh.points])
        build = [(len(mesh.points), mesh.loops) for mesh, _ in wanted]
        if build != self.build:    # most often a hand moves corners only
            self.build = build
            self._index()

    def _index(self) -> None:
        """Which corners make faces and lines."""
        faces: list[int] = []
        lines: list[int] = []
        first = 0
        for corners, loops in self.build:
            edges: dict[tuple[int, int], None] = {}    # one that several faces end in is one line
            for loop in loops:
                ring = [first + i for i in loop]
                faces += (*ring, -1)
                edges.update(dict.fromkeys((min(a, b), max(a, b)) for a, b in pairwise((*ring, ring[0]))))
            for a, b in edges:
                lines += (a, b, -1)
            first += corners
        _fill(self.faces.coordIndex, faces)
        _fill(self.lines.coordIndex, lines)


class Edges:
    """Edges of pieces of one vent, drawn through whatever stands before them; they are not to be picked."""

    def __init__(self, colour: tuple[float, float, float]) -> None:
        self.root, self.place = coin.SoSeparator(), coin.SoTransform()
        pick, through, drawn, style = coin.SoPickStyle(), coin.SoDepthBuffer(), coin.SoBaseColor(), coin.SoDrawStyle()
        pick.style = coin.SoPickStyle.UNPICKABLE
        through.test = False
        drawn.rgb.setValue(*colour)
        style.lineWidth = 2.0
        self.points, self.lines = coin.SoCoordinate3(), coin.SoIndexedLineSet()
        for node in (pick, through, drawn, style, self.place, self.points, self.lines):
            self.root.addChild(node)

    def move(self, placement: FreeCAD.Placement) -> None:
        """Puts the vent in its place (global)."""
        _put(self.place, placement)

    def show(self, pieces: Iterable[Outline]) -> None:
        """Draws the edges of these pieces and of no others."""
        points: list[Vec] = []
        lines: list[int] = []
        for face in (face for piece in pieces for face in piece.faces):
            first = len(points)
            points.extend(face)
            lines.extend((*range(first, len(points)), first, -1))
        _fill(self.points.point, points)
        _fill(self.lines.coordIndex, lines)


def _put(transform: Any, placement: FreeCAD.Placement) -> None:
    transform.translation.setValue(*placement.Base)
    transform.rotation.setValue(*placement.Rotation.Q)


def _fill(many: Any, values: Sequence[Any]) -> None:
    """All values of a Coin field of many values."""
    many.setNum(len(values))
    if values:
        many.setValues(0, len(values), values)
