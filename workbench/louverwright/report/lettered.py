# SPDX-License-Identifier: LGPL-2.1-or-later
"""The lettered points of notches and corner cuts: what is struck on the board's faces, read off its own corners."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from functools import lru_cache

from ..core.assembly import CORNER_CUT, NOTCH, SHAPED_EDGE, Board, Cut, Part, board_shell
from ..core.faces import Face, Shell, shell_of
from ..core.geometry import Vec
from ..core.marks import letters
from ..core.saw import SQUARE, end_of, setting
from ..core.solid import END_B, HIDDEN_FACE, MARKED_FACE, clip
from .job import Writer

#: Two corners nearer than this (mm) are one point to a tape.
SAME_POINT = 0.05
#: Corners this near (mm) lie at one level.
ON_LEVEL = 1e-3


# ---- notches and shaped edges


def as_sawn(cut: Cut, board: Board) -> Shell:
    """The board that a cut's lines are read off: finished, or for a shaped edge before its ends are cut."""
    if cut.kind != SHAPED_EDGE:
        return board_shell(board)
    return shell_of(board.after(max(i for i, each in enumerate(board.cuts, start=1) if each.kind == SHAPED_EDGE)))


def notch_face(cut: Cut, board: Board) -> str:
    """The face that a notch is marked on: the marked face, or the hidden one where the notch does not reach the other."""
    return MARKED_FACE if left_by(cut, board, board.thickness) else HIDDEN_FACE


def far_level(cut: Cut, board: Board) -> float:
    """How high over the hidden face a notch's other line lies (mm): on the other face, or where its walls end before it."""
    faces = _own(cut, as_sawn(cut, board))
    levels = [p[2] for face in faces for p in as_sawn(cut, board).outline(face)]
    return min(levels) if notch_face(cut, board) == MARKED_FACE else max(levels)


def _own(cut: Cut, shell: Shell) -> list[Face]:
    return [face for face in shell.faces if face.name == cut.name or face.name.startswith(cut.name + "/")]


def left_by(cut: Cut, board: Board, level: float) -> list[tuple[Vec, Vec]]:
    """The edges that a cut leaves at a level over the hidden face (mm), with the face there if there is one."""
    shell = as_sawn(cut, board)
    own = {i for i, face in enumerate(shell.faces) if face in _own(cut, shell)}
    name = MARKED_FACE if level > board.thickness - ON_LEVEL else HIDDEN_FACE if level < ON_LEVEL else ""
    other = {i for i, face in enumerate(shell.faces) if i not in own and name in ("", face.name)}
    found = [(shell.points[a], shell.points[b]) for (a, b), faces in shell.edges.items()
             if own & set(faces) and other & set(faces)]
    return [edge for edge in found if all(abs(p[2] - level) < ON_LEVEL for p in edge)]


def chain(edges: Iterable[tuple[Vec, Vec]]) -> list[list[Vec]]:
    """Edges joined to lines of points, each from its end nearest to end A."""
    rest = list(edges)
    lines: list[list[Vec]] = []
    while rest:
        ends = [p for edge in rest for p in edge]
        here = lines[-1][-1] if lines and lines[-1][-1] in ends else None
        if here is None:
            here = min([p for p in ends if ends.count(p) == 1] or ends)
            lines.append([here])
        edge = next(edge for edge in rest if here in edge)
        rest.remove(edge)
        lines[-1].append(edge[1] if edge[0] == here else edge[0])
    return lines


Lettered = list[tuple[str, Vec]]


@lru_cache(maxsize=512)
def marked_lines(board: Board) -> Mapping[Cut, list[Lettered]]:
    """The lettered points of each corner cut and notch, line by line in the order of cutting; a point has one letter."""
    lines: dict[Cut, list[Lettered]] = {}
    known: Lettered = []
    for cut in board.cuts:
        if cut.kind == CORNER_CUT:
            lines[cut] = [_lettered(corner_points(cut, board)[0], known)]
        elif cut.kind in (NOTCH, SHAPED_EDGE):
            lines[cut] = [_lettered(line, known) for line in notch_lines(cut, board)]
    return lines


def notch_lines(cut: Cut, board: Board) -> list[list[Vec]]:
    """What is struck for a notch on the face that it is marked on."""
    return chain(left_by(cut, board, board.thickness if notch_face(cut, board) == MARKED_FACE else 0.0))


@lru_cache(maxsize=512)
def far_lines(board: Board) -> Mapping[Cut, list[Lettered]]:
    """The lettered points of each notch with a bevelled wall where its walls end: each line the same way as on the near face.

    Letters go on from those of ``marked_lines``.
    """
    known = list({letter: (letter, p) for lines in marked_lines(board).values() for line in lines
                  for letter, p in line}.values())
    found: dict[Cut, list[Lettered]] = {}
    for cut in board.cuts:
        if cut.kind in (NOTCH, SHAPED_EDGE) and bevelled(cut):
            near = notch_lines(cut, board)
            far = chain(left_by(cut, board, far_level(cut, board)))
            found[cut] = [_lettered(_same_way(line, near), known) for line in far]
    return found


def bevelled(cut: Cut) -> bool:
    """True for a notch that has a wall which is not square to the faces."""
    return any(abs(setting(plane).bevel) >= SQUARE for plane in cut.planes)


def _same_way(line: list[Vec], near: list[list[Vec]]) -> list[Vec]:
    """A line turned so that it runs as the nearest of those on the near face."""
    def apart(points: list[Vec], other: list[Vec]) -> float:
        return math.dist(points[0][:2], other[0][:2]) + math.dist(points[-1][:2], other[-1][:2])

    return min((points for points in (line, line[::-1])), key=lambda points: min(apart(points, each) for each in near))


def _lettered(points: list[Vec], known: Lettered) -> Lettered:
    found: Lettered = []
    for p in points:
        letter = next((name for name, q in known if math.dist(p[:2], q[:2]) < SAME_POINT), "")
        if not letter:
            letter = letters(len(known))
            known.append((letter, p))
        found.append((letter, p))
    return found


def marked_points(board: Board) -> Lettered:
    """All lettered points of a board, each once."""
    lines = [*marked_lines(board).values(), *far_lines(board).values()]
    return list(dict.fromkeys(point for each in lines for line in each for point in line))


def line_text(lines: list[Lettered], write: Writer) -> str:
    """Lettered points on a face, each as along | across; several lines apart."""
    return "; ".join(" → ".join(f"{letter}\u00a0({write.bare(p[0])}\u00a0|\u00a0{write.bare(p[1])})" for letter, p in line)
                     for line in lines)


# ---- corner cuts


@lru_cache(maxsize=512)
def corner_face(cut: Cut, board: Board) -> str:
    """The face that lies up for a corner cut: the shorter one, or where the blade is upright one that has the line.

    Of two that have it the marked face; on a board with a shaped edge the one that puts the reference edge at the fence.
    """
    bevel = setting(cut.planes[0]).bevel
    if abs(bevel) >= SQUARE:
        return MARKED_FACE if bevel > 0.0 else HIDDEN_FACE
    faces = [MARKED_FACE, HIDDEN_FACE]
    if shaped(board) and end_of(cut) == END_B:
        faces.reverse()
    return next((face for face in faces if len(_line_on(cut, board, face)) >= 2), HIDDEN_FACE)


def shaped(board: Board) -> bool:
    """True for a board with an edge that is sawn to several planes: none that can lie along a fence."""
    return any(cut.kind == SHAPED_EDGE for cut in board.cuts)


def _line_on(cut: Cut, board: Board, face: str) -> list[Vec]:
    """Where a cut crosses a face, on the board as it stands when the cut's turn comes."""
    solid = board.after(board.cuts.index(cut))
    made = [p for cell in solid for facet in clip(cell, cut.planes[0], "this cut") or () if facet.name == "this cut"
            for p in facet.points]
    if face == MIDDLE:
        return made
    level = board.thickness if face == MARKED_FACE else 0.0
    return [p for p in made if abs(p[2] - level) < ON_LEVEL]


@lru_cache(maxsize=512)
def corner_points(cut: Cut, board: Board) -> tuple[list[Vec], str]:
    """The two points of a corner cut on the face that lies up, or on the other where that has no line, and its name."""
    up = corner_face(cut, board)
    for face in (up, HIDDEN_FACE if up == MARKED_FACE else MARKED_FACE, MIDDLE):
        points = _line_on(cut, board, face)
        if len(points) >= 2:
            return [min(points), max(points)], face
    raise ValueError(f"“{cut.name}” meets no face.")


#: Where a cut meets neither face in a line: a hip's tail between its cheeks.
MIDDLE = "middle line of the ends and edges"


def corner_text(cut: Cut, part: Part, write: Writer) -> str:
    """Where a corner cut runs: two points on the marked face."""
    assert cut.kind == CORNER_CUT
    face = corner_points(cut, part.board)[1]
    name = face if face == MIDDLE else part.called(face)
    return f"on the {name}: " + line_text(marked_lines(part.board)[cut], write)
