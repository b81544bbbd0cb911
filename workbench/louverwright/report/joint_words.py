# SPDX-License-Identifier: LGPL-2.1-or-later
"""Dados, laps, notches, grooves and bores in words: face, angle, size, and positions from a stated datum.

Positions are read off the cut's planes and the finished board's own corners; nothing is worked out anew.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from itertools import pairwise

from ..core.assembly import BORE, CORNER_CUT, DADO, GROOVE, HALF_LAP, NOTCH, Board, Cut, Part, board_shell
from ..core.geometry import Plane, Vec
from ..core.marks import letters
from ..core.saw import SQUARE, end_spans, setting
from ..core.solid import (
    END_A,
    END_B,
    FAR_EDGE,
    HIDDEN_FACE,
    MARKED_FACE,
    REFERENCE_EDGE,
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
    count: int = 1


def datum(part: Part) -> str:
    """What lengths are measured from: end A, or its long point where it is not square."""
    points = end_spans(part.board)[0].positions
    end = part.called(END_A)
    return f"the {end}" if max(points) - min(points) < SAME_POINT else f"the {end}'s long point"


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


def _wall_span(cut: Cut, y: float) -> tuple[Plane, float, float]:
    """The lower wall of a dado, and where both walls meet the line at ``y`` (lower, upper; mm from end A)."""
    lower, upper = sorted(_walls(cut), key=lambda wall: _across(wall, y))
    return lower, _across(lower, y), _across(upper, y)


def dado_positions(part: Part) -> tuple[str, list[float]] | None:
    """The edge that dados are measured on, and their lower walls' distances from end A's long point."""
    cuts = [cut for cut in part.board.cuts if cut.kind == DADO]
    if not cuts:
        return None
    edge = long_edge(part.board)
    y = 0.0 if edge == REFERENCE_EDGE else part.board.width
    return edge, list(dict.fromkeys(round(_wall_span(cut, y)[1], 6) for cut in cuts))


def tick_positions(part: Part) -> tuple[str, list[float]]:
    """The edge to measure on, and where dados, laps and grooves begin or end inside the board (mm from end A)."""
    found = dado_positions(part)
    if found:
        return found
    board = part.board
    ends = [x for cut in board.cuts if cut.kind in (HALF_LAP, GROOVE) for x in _along(cut, board)]
    return FAR_EDGE, sorted({round(x, 6) for x in ends if SAME_POINT < x < board.length - SAME_POINT})


def _along(cut: Cut, board: Board) -> tuple[float, float]:
    low, high = waste_box(cut, board)
    return low[0], high[0]


def _dados(cuts: list[Cut], part: Part, write: Writer) -> JointRow:
    board = part.board
    floor = _floor(cuts[0])
    edge = long_edge(board)
    y = 0.0 if edge == REFERENCE_EDGE else board.width
    wall, low, high = _wall_span(cuts[0], y)
    normal = wall.normal
    lean = (math.degrees(math.atan2(normal[1], normal[0])) + 90.0) % 180.0 - 90.0
    rises = lean * (1.0 if edge == FAR_EDGE else -1.0) > 0.0
    along = high - low
    width = along * abs(normal[0])
    other = part.called(FAR_EDGE if edge == REFERENCE_EDGE else REFERENCE_EDGE)
    way = f"from the {part.called(edge)} {'up' if rises else 'down'} towards the {part.called(END_B)} at the {other}"
    return JointRow(
        f"{len(cuts)} dados, through", part.called(_open_face(floor)),
        f"{write.angle(abs(lean))} from square, {way}; {write.fine.bare(width)} wide square to the dado (fit it to an "
        f"offcut of the slat), {write.bare(along)} along the edge; {write.bare(_depth(floor, board))} deep",
        f"lower wall on the {part.called(edge)}, from {datum(part)}: "
        + ", ".join(write.bare(_wall_span(cut, y)[1]) for cut in cuts), len(cuts))


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
                    f"{place}, along from {datum(part)}")


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
    return "; ".join(" → ".join(f"{letter}\u00a0({write.bare(p[0])}\u00a0|\u00a0{write.bare(p[1])})" for letter, p in line)
                     for line in lines)


def _side_words(cut: Cut, part: Part, a: Vec, b: Vec, write: Writer) -> str:
    """A side of a notch: plumb, level or neither as it sits in the vent, and its length."""
    plane = next(p for p in cut.planes if abs(p.height(a)) < SAME_POINT and abs(p.height(b)) < SAME_POINT)
    up = abs(part.pieces[0].placement.direction(plane.normal)[2])
    word = "level " if up > 1.0 - 1e-9 else "plumb " if up < 1e-9 else "side "
    return word + write.bare(math.dist(a[:2], b[:2]))


def _notch(cut: Cut, part: Part, write: Writer) -> JointRow:
    lettered = marked_lines(part)[cut]
    leans = [abs(setting(plane).bevel) for plane in cut.planes]
    walls = "walls square" if max(leans) < SQUARE else "walls bevelled " + " and ".join(
        sorted({write.angle(lean) for lean in leans if lean >= SQUARE}))
    return JointRow(
        cut.name, part.called(notch_face(cut, part.board)),
        f"{walls}; " + ", ".join(_side_words(cut, part, a, b, write) for line in lettered
                                 for (_, a), (_, b) in pairwise(line) if math.dist(a[:2], b[:2]) > SAME_POINT),
        line_text(lettered, write))


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
        place = (f"centre {write.bare(bore.start[0])} along from {datum(part)}, "
                 f"{write.bare(bore.start[1])} across from the {part.called(REFERENCE_EDGE)}")
    inside = SAME_POINT < bore.start[axis] < board.size[axis] - SAME_POINT
    where = "the floor of the bore before it" if inside else part.called(face)
    return JointRow(cut.name, where, f"Ø {write.bare(bore.diameter)}, {depth}, square to the face", place)


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
