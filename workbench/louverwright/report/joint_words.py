# SPDX-License-Identifier: LGPL-2.1-or-later
"""Dados, laps, notches, grooves and bores in words: face, angle, size, and positions from a stated datum.

Positions are read off the cut's planes and the finished board's own corners; nothing is worked out anew.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from itertools import pairwise

from ..core.assembly import BORE, CORNER_CUT, DADO, GROOVE, HALF_LAP, Board, Cut, Part, board_shell
from ..core.geometry import Plane, Vec
from ..core.saw import SQUARE, setting
from ..core.solid import (
    END_A,
    END_B,
    FAR_EDGE,
    HIDDEN_FACE,
    MARKED_FACE,
    REFERENCE_EDGE,
    Solid,
    box,
    clip,
    common,
    extents,
)
from .job import Writer

#: Two corners nearer than this (mm) are one point to a tape.
SAME_POINT = 0.05


@dataclass(frozen=True)
class JointRow:
    """One joint or several alike: what it is, its face, its angle and size, and where it lies."""

    name: str
    face: str
    size: str
    position: str


def joint_rows(part: Part, write: Writer) -> list[JointRow]:
    """Every cut of a board that is not a plain saw cut, dados of one housing pattern gathered in one row."""
    rows: list[JointRow] = []
    cuts = [cut for cut in part.board.cuts if len(cut.planes) != 1]
    for group in _alike(cuts):
        if group[0].kind == DADO:
            rows.append(_dados(group, part, write))
        else:
            rows.extend(_single(cut, part, write) for cut in group)
    return rows


def _alike(cuts: list[Cut]) -> list[list[Cut]]:
    """Cuts in order, dados into the same floor together."""
    groups: list[list[Cut]] = []
    for cut in cuts:
        if groups and cut.kind == DADO == groups[-1][0].kind and cut.planes[0] == groups[-1][0].planes[0]:
            groups[-1].append(cut)
        else:
            groups.append([cut])
    return groups


def _single(cut: Cut, part: Part, write: Writer) -> JointRow:
    if cut.kind == BORE:
        return _bore(cut, part, write)
    if cut.kind in (HALF_LAP, GROOVE):
        return _lap(cut, part, write)
    return _notch(cut, part, write)


# ---- dados


def _floor(cut: Cut) -> Plane:
    """The plane that a cut's bottom lies in: the one most square to the faces."""
    return max(cut.planes, key=lambda plane: abs(plane.normal[2]))


def _open_face(plane: Plane) -> str:
    return MARKED_FACE if plane.normal[2] > 0.0 else HIDDEN_FACE


def _depth(plane: Plane, board: Board) -> float:
    return board.thickness - plane.offset if plane.normal[2] > 0.0 else -plane.offset


def _walls(cut: Cut) -> list[Plane]:
    floor = _floor(cut)
    return [plane for plane in cut.planes if plane is not floor]


def long_edge(board: Board) -> str:
    """The edge on which end A's long point lies; the reference edge where the end is square."""
    points = [p for p in board_shell(board).points if p[0] < SAME_POINT]
    return FAR_EDGE if points and min(p[1] for p in points) > board.width / 2.0 else REFERENCE_EDGE


def _across(wall: Plane, y: float) -> float:
    return (wall.offset - wall.normal[1] * y) / wall.normal[0]


def _dados(cuts: list[Cut], part: Part, write: Writer) -> JointRow:
    board = part.board
    floor = _floor(cuts[0])
    edge = long_edge(board)
    y = 0.0 if edge == REFERENCE_EDGE else board.width
    lower = [min(_walls(cut), key=lambda wall: _across(wall, y)) for cut in cuts]
    normal = lower[0].normal
    lean = math.degrees(math.atan2(normal[1], normal[0]))
    lean = (lean + 90.0) % 180.0 - 90.0
    rises = lean * (1.0 if edge == FAR_EDGE else -1.0) > 0.0
    upper = [max(_walls(cut), key=lambda wall: _across(wall, y)) for cut in cuts]
    width = abs(_across(upper[0], y) - _across(lower[0], y)) * abs(normal[0])
    along = abs(_across(upper[0], y) - _across(lower[0], y))
    other = part.called(FAR_EDGE if edge == REFERENCE_EDGE else REFERENCE_EDGE)
    way = f"from the {part.called(edge)} {'up' if rises else 'down'} towards the {part.called(END_B)} at the {other}"
    return JointRow(
        f"{len(cuts)} dados, through", part.called(_open_face(floor)),
        f"{write.angle(abs(lean))} from square, {way}; {write.bare(width)} wide square to the dado, "
        f"{write.bare(along)} along the edge; {write.bare(_depth(floor, board))} deep",
        f"lower wall on the {part.called(edge)}, from the {part.called(END_A)}'s long point: "
        + ", ".join(write.bare(_across(wall, y)) for wall in lower))


# ---- laps, grooves


def waste_box(cut: Cut, board: Board) -> tuple[Vec, Vec]:
    """Lowest and highest x, y, z of the wood that a cut of planes takes out of the blank (mm)."""
    waste = common(box((0.0, 0.0, 0.0), board.size), cut.planes)
    if waste is None:
        raise ValueError(f"“{cut.name}” takes nothing off its blank.")
    return extents((waste,))


def _lap(cut: Cut, part: Part, write: Writer) -> JointRow:
    board = part.board
    floor = _floor(cut)
    low, high = waste_box(cut, board)
    if high[0] > board.length - SAME_POINT and low[0] > SAME_POINT:
        place = f"from {write.bare(low[0])} to the {part.called(END_B)}"
    else:
        place = f"from {write.bare(low[0])} to {write.bare(high[0])}"
    whole = high[1] - low[1] > board.width - SAME_POINT
    breadth = "across the whole width" if whole else f"{write.bare(low[1])} to {write.bare(high[1])} across"
    return JointRow(cut.name, part.called(_open_face(floor)),
                    f"{write.bare(high[0] - low[0])} long, {breadth}, {write.bare(_depth(floor, board))} deep",
                    f"{place}, along from the {part.called(END_A)}'s long point")


# ---- notches


def left_by(cut: Cut, board: Board) -> list[tuple[Vec, Vec]]:
    """The edges that a cut leaves on the marked face of the finished board, as pairs of corners."""
    shell = board_shell(board)
    own = {i for i, face in enumerate(shell.faces) if face.name == cut.name or face.name.startswith(cut.name + "/")}
    top = {i for i, face in enumerate(shell.faces) if face.name == MARKED_FACE}
    found = []
    for (a, b), faces in shell.edges().items():
        if own & set(faces) and top & set(faces):
            found.append((shell.points[a], shell.points[b]))
    return found


def chain(edges: Iterable[tuple[Vec, Vec]]) -> list[Vec]:
    """Edges joined to one line of points, from its end nearest to end A; several lines one after another."""
    rest = list(edges)
    line: list[Vec] = []
    while rest:
        ends = [p for edge in rest for p in edge]
        free = [p for p in ends if ends.count(p) == 1] or ends
        here = line[-1] if line and line[-1] in ends else min(free)
        edge = next(edge for edge in rest if here in edge)
        rest.remove(edge)
        if not line or line[-1] != here:
            line.append(here)
        line.append(edge[1] if edge[0] == here else edge[0])
    return line


def point_text(p: Vec, write: Writer) -> str:
    """A point on a face: along / across."""
    return f"({write.bare(p[0])} | {write.bare(p[1])})"


def _notch(cut: Cut, part: Part, write: Writer) -> JointRow:
    line = chain(left_by(cut, part.board))
    leans = [abs(setting(plane).bevel) for plane in cut.planes]
    walls = "walls square" if max(leans) < SQUARE else "walls bevelled " + " and ".join(
        sorted({write.angle(lean) for lean in leans if lean >= SQUARE}))
    sides = [math.dist(a[:2], b[:2]) for a, b in pairwise(line)]
    return JointRow(
        cut.name, part.called(MARKED_FACE),
        f"{walls}; sides " + ", ".join(write.bare(side) for side in sides if side > SAME_POINT),
        f"along from the {part.called(END_A)}'s long point | across from the {part.called(REFERENCE_EDGE)}: "
        + " → ".join(point_text(p, write) for p in line))


# ---- bores


def _bore(cut: Cut, part: Part, write: Writer) -> JointRow:
    assert cut.bore is not None
    bore, board = cut.bore, part.board
    axis = max(range(3), key=lambda i: abs(bore.direction[i]))
    through = bore.length > board.size[axis] - SAME_POINT
    first = bore.direction[axis] > 0.0
    face = ((END_A, END_B), (REFERENCE_EDGE, FAR_EDGE), (HIDDEN_FACE, MARKED_FACE))[axis][0 if first else 1]
    depth = "right through" if through else f"{write.bare(bore.length)} deep"
    if axis == 0:
        place = (f"centre {write.bare(bore.start[1])} from the {part.called(REFERENCE_EDGE)}, "
                 f"{write.bare(bore.start[2])} from the {part.called(HIDDEN_FACE)}")
    else:
        place = (f"centre {write.bare(bore.start[0])} along from the {part.called(END_A)}'s long point, "
                 f"{write.bare(bore.start[1])} across from the {part.called(REFERENCE_EDGE)}")
    return JointRow(cut.name, part.called(face), f"Ø {write.bare(bore.diameter)}, {depth}, square to the face", place)


# ---- corner cuts


def corner_points(cut: Cut, board: Board) -> tuple[list[Vec], str]:
    """The two points of a corner cut on the face where it is marked out, and that face's name.

    They are taken where the cut's turn comes: on the board as it then is.
    """
    before = [c for c in board.cuts if len(c.planes) == 1]
    solid: Solid = (box((0.0, 0.0, 0.0), board.size),)
    for each in before[:before.index(cut)]:
        rest = clip(solid[0], each.planes[0], each.name)
        assert rest is not None
        solid = (rest,)
    done = clip(solid[0], cut.planes[0], "this cut") or ()
    face = next(facet for facet in done if facet.name == "this cut")
    top = [p for p in face.points if p[2] > board.thickness - 1e-3]
    if len(top) >= 2:
        return [min(top), max(top)], MARKED_FACE
    return [min(face.points), max(face.points)], "middle line"


def corner_text(cut: Cut, part: Part, write: Writer) -> str:
    """Where a corner cut runs: two points on the marked face."""
    assert cut.kind == CORNER_CUT
    points, face = corner_points(cut, part.board)
    name = part.called(face) if face == MARKED_FACE else face
    return (f"on the {name}, along | across: " + " to ".join(point_text(p, write) for p in points))
