# SPDX-License-Identifier: LGPL-2.1-or-later
"""The lettered points of notches and corner cuts: what is struck on the board's faces, read off its own corners."""

from __future__ import annotations

import math
from collections.abc import Iterable

from ..core.assembly import CORNER_CUT, NOTCH, Board, Cut, Part, board_shell
from ..core.geometry import Vec
from ..core.marks import letters
from ..core.saw import SQUARE, setting
from ..core.solid import HIDDEN_FACE, MARKED_FACE, clip
from .job import Writer

#: Two corners nearer than this (mm) are one point to a tape.
SAME_POINT = 0.05


# ---- notches


def notch_face(cut: Cut, board: Board) -> str:
    """The face that a notch is marked on: the marked face, or the hidden one where the notch does not reach the other."""
    return MARKED_FACE if left_by(cut, board, MARKED_FACE) else HIDDEN_FACE


def left_by(cut: Cut, board: Board, on: str) -> list[tuple[Vec, Vec]]:
    """The edges that a cut leaves on a face of the finished board, as pairs of corners."""
    shell = board_shell(board)
    own = {i for i, face in enumerate(shell.faces) if face.name == cut.name or face.name.startswith(cut.name + "/")}
    top = {i for i, face in enumerate(shell.faces) if face.name == on}
    found = []
    for (a, b), faces in shell.edges().items():
        if own & set(faces) and top & set(faces):
            found.append((shell.points[a], shell.points[b]))
    return found


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


def marked_lines(part: Part) -> dict[Cut, list[Lettered]]:
    """The lettered points of each corner cut and notch, line by line in the order of cutting; a point has one letter."""
    lines: dict[Cut, list[Lettered]] = {}
    known: Lettered = []
    for cut in part.board.cuts:
        if cut.kind == CORNER_CUT:
            lines[cut] = [_lettered(corner_points(cut, part.board)[0], known)]
        elif cut.kind == NOTCH:
            lines[cut] = [_lettered(line, known) for line in chain(left_by(cut, part.board, notch_face(cut, part.board)))]
    return lines


def _lettered(points: list[Vec], known: Lettered) -> Lettered:
    found: Lettered = []
    for p in points:
        letter = next((name for name, q in known if math.dist(p[:2], q[:2]) < SAME_POINT), "")
        if not letter:
            letter = letters(len(known))
            known.append((letter, p))
        found.append((letter, p))
    return found


def marked_points(part: Part) -> Lettered:
    """All lettered points of a part, each once."""
    return list(dict.fromkeys(point for lines in marked_lines(part).values() for line in lines for point in line))


def line_text(lines: list[Lettered], write: Writer) -> str:
    """Lettered points on a face, each as along | across; several lines apart."""
    return "; ".join(" → ".join(f"{letter} ({write.bare(p[0])} | {write.bare(p[1])})" for letter, p in line)
                     for line in lines)


# ---- corner cuts


def corner_face(cut: Cut, board: Board) -> str:
    """The face that lies up for a corner cut: the shorter one, or where the blade is upright one that has the line."""
    bevel = setting(cut.planes[0]).bevel
    if abs(bevel) >= SQUARE:
        return MARKED_FACE if bevel > 0.0 else HIDDEN_FACE
    return MARKED_FACE if len(_line_on(cut, board, MARKED_FACE)) >= 2 else HIDDEN_FACE


def _line_on(cut: Cut, board: Board, face: str) -> list[Vec]:
    """Where a cut crosses a face, on the board as it stands when the cut's turn comes."""
    solid = board.after(board.cuts.index(cut))
    done = clip(solid[0], cut.planes[0], "this cut") or ()
    made = next(facet for facet in done if facet.name == "this cut")
    if face == MIDDLE:
        return list(made.points)
    level = board.thickness if face == MARKED_FACE else 0.0
    return [p for p in made.points if abs(p[2] - level) < 1e-3]


def corner_points(cut: Cut, board: Board) -> tuple[list[Vec], str]:
    """The two points of a corner cut on the face that lies up, or on the other where that has no line, and its name."""
    up = corner_face(cut, board)
    for face in (up, HIDDEN_FACE if up == MARKED_FACE else MARKED_FACE, MIDDLE):
        points = _line_on(cut, board, face)
        if len(points) >= 2:
            return [min(points), max(points)], face
    raise ValueError(f"“{cut.name}” meets no face.")


#: Where a cut meets neither face in a line: a hip's tail between its cheeks.
MIDDLE = "middle of the thickness"


def corner_text(cut: Cut, part: Part, write: Writer) -> str:
    """Where a corner cut runs: two points on the marked face."""
    assert cut.kind == CORNER_CUT
    face = corner_points(cut, part.board)[1]
    name = face if face == MIDDLE else part.called(face)
    return f"on the {name}: " + line_text(marked_lines(part)[cut], write)
