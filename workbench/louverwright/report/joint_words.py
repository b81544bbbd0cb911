# SPDX-License-Identifier: LGPL-2.1-or-later
"""Dados, laps, notches, grooves and bores in words: face, angle, size, and positions from a stated datum.

Positions are read off the cut's planes and the finished board's own corners; nothing is worked out anew.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache
from itertools import pairwise

from ..core.assembly import BORE, DADO, GROOVE, HALF_LAP, NOTCH, SHAPED_EDGE, Board, Cut, Part
from ..core.geometry import Plane, Vec
from ..core.housing import Housing, depth_of, floor_of, housings, open_face
from ..core.saw import SQUARE, end_spans, setting
from ..core.solid import (
    END_A,
    END_B,
    FAR_EDGE,
    HIDDEN_FACE,
    MARKED_FACE,
    REFERENCE_EDGE,
    box,
    common,
    extents,
)
from .job import Writer
from .lettered import MIDDLE, SAME_POINT, Lettered, bevelled, far_level, far_lines, line_text, marked_lines, notch_face


@dataclass(frozen=True)
class JointRow:
    """One joint or several alike: what it is, its face, its angle and size, and where it lies."""

    name: str
    face: str
    size: str
    position: str
    count: int = 1
    sort: str = ""


def datum(part: Part) -> str:
    """What lengths are measured from: end A, or its long point where it is not square."""
    points = end_spans(part.board)[0].positions
    end = part.called(END_A)
    return f"the {end}" if max(points) - min(points) < SAME_POINT else f"the {end}'s long point"


def joint_rows(part: Part, write: Writer) -> list[JointRow]:
    """Every cut that is made after the saw's, dados of one housing pattern gathered in one row."""
    rows: list[JointRow] = []
    of_face = {each.face: each for each in housings(part)}
    for cut in part.board.cuts:
        if cut.kind == DADO:
            housing = of_face.pop(open_face(floor_of(cut)), None)
            rows.extend([replace(_dados(housing, part, write), sort=SORTS[DADO])] if housing else [])
        elif len(cut.planes) != 1 and cut.kind != SHAPED_EDGE:
            rows.append(replace(_single(cut, part, write), sort=SORTS[cut.kind]))
    return rows


#: What steps of one kind are called in the order of cuts.
SORTS = {SHAPED_EDGE: "shaped edges", HALF_LAP: "half laps", DADO: "dados", GROOVE: "grooves", BORE: "bores", NOTCH: "notches"}


def _single(cut: Cut, part: Part, write: Writer) -> JointRow:
    if cut.kind == BORE:
        return _bore(cut, part, write)
    if cut.kind in (HALF_LAP, GROOVE):
        return _lap(cut, part, write)
    return _notch(cut, part, write)


# ---- dados


def dado_positions(part: Part) -> tuple[str, list[float]] | None:
    """The edge that dados are measured on, and their lower walls' distances from end A's long point."""
    found = housings(part)
    return (found[0].edge, list(dict.fromkeys(round(low, 6) for each in found for low, _ in each.places))) if found else None


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


def _dados(housing: Housing, part: Part, write: Writer) -> JointRow:
    edge, other = part.called(housing.edge), part.called(housing.other_edge)
    low, high = housing.places[0]
    return JointRow(
        f"{len(housing.places)} dados, through", part.called(housing.face),
        f"{write.angle(abs(housing.climb))} from square, from the {edge} {'up' if housing.climb > 0.0 else 'down'} towards "
        f"the {part.called(END_B)} at the {other}; {write.fine.bare(housing.width)} wide square to the dado (fit it to an "
        f"offcut of the slat), {write.bare(high - low)} along the edge; {write.bare(housing.depth)} deep",
        f"lower wall on the {edge}, from {datum(part)}: " + ", ".join(write.bare(low) for low, _ in housing.places),
        len(housing.places))


# ---- laps, grooves


@lru_cache(maxsize=2048)
def waste_box(cut: Cut, board: Board) -> tuple[Vec, Vec]:
    """Lowest and highest x, y, z of the wood that a cut of planes takes out of the blank (mm)."""
    waste = common(box((0.0, 0.0, 0.0), board.size), cut.planes)
    if waste is None:
        raise ValueError(f"“{cut.name}” takes nothing off its blank.")
    return extents((waste,))


def _lap(cut: Cut, part: Part, write: Writer) -> JointRow:
    board = part.board
    floor = floor_of(cut)
    low, high = waste_box(cut, board)
    if high[0] > board.length - SAME_POINT and low[0] > SAME_POINT:
        place = f"from {write.bare(low[0])} to the {part.called(END_B)}"
    else:
        place = f"from {write.bare(low[0])} to {write.bare(high[0])}"
    whole = high[1] - low[1] > board.width - SAME_POINT
    breadth = "across the whole width" if whole else f"{write.bare(low[1])} to {write.bare(high[1])} across"
    return JointRow(cut.name, part.called(open_face(floor)),
                    f"{write.bare(high[0] - low[0])} long, {breadth}, {write.bare(depth_of(floor, board))} deep",
                    f"{place}, along from {datum(part)}")


# ---- notches


def shaped_rows(part: Part, write: Writer) -> list[JointRow]:
    """The edges that are sawn to several planes before the ends are cut."""
    return [replace(_notch(cut, part, write), sort=SORTS[SHAPED_EDGE]) for cut in part.board.cuts if cut.kind == SHAPED_EDGE]


def _notch(cut: Cut, part: Part, write: Writer) -> JointRow:
    """Its walls with length, bevel and lean, and its points: where a wall is bevelled, on both faces."""
    board = part.board
    near, lettered = notch_face(cut, board), marked_lines(board)[cut]
    walls = _notch_walls(cut, lettered)
    if not bevelled(cut):
        text = ", ".join(_wall(cut, part, plane, a, b, write) for plane, a, b in walls)
        return JointRow(cut.name, part.called(near), f"walls square; {text}", line_text(lettered, write))
    place = [f"on the {part.called(near)}: {line_text(lettered, write)}"]
    far = far_lines(board)[cut]
    seen = [plane for plane, _, _ in walls]
    walls += [wall for wall in _notch_walls(cut, far) if wall[0] not in seen]
    if far:
        place.append(f"on the {_level_name(far_level(cut, board), part, write)}: {line_text(far, write)}")
    text = "; ".join(_wall(cut, part, plane, a, b, write) for plane, a, b in walls)
    return JointRow(cut.name, f"{part.called(near)}, and through", text, "; ".join(place))


_Wall = tuple[Plane, tuple[str, Vec], tuple[str, Vec]]


def _notch_walls(cut: Cut, lines: list[Lettered]) -> list[_Wall]:
    """The walls of a notch that lines on one face show: each plane with the two lettered points of its line."""
    return [(next(p for p in cut.planes if abs(p.height(a[1])) < SAME_POINT and abs(p.height(b[1])) < SAME_POINT), a, b)
            for line in lines for a, b in pairwise(line) if math.dist(a[1][:2], b[1][:2]) > SAME_POINT]


def _wall(cut: Cut, part: Part, plane: Plane, a: tuple[str, Vec], b: tuple[str, Vec], write: Writer) -> str:
    """A wall of a notch: plumb, level or neither as it sits in the vent, its length, bevel and which face keeps more wood."""
    up = abs(part.pieces[0].placement.direction(plane.normal)[2])
    word = "level " if up > 1.0 - 1e-9 else "plumb " if up < 1e-9 else "side "
    text = word + write.bare(math.dist(a[1][:2], b[1][:2]))
    if not bevelled(cut):
        return text
    bevel = setting(plane).bevel
    if abs(bevel) < SQUARE:
        return f"{a[0]}–{b[0]} {text}, square"
    longer = part.called(HIDDEN_FACE if bevel > 0.0 else MARKED_FACE)
    return f"{a[0]}–{b[0]} {text}, bevel {write.angle(abs(bevel))}, more wood left on the {longer}"


def _level_name(level: float, part: Part, write: Writer) -> str:
    """A face by its name, or how deep under the marked face a level inside the board lies."""
    board = part.board
    if level < SAME_POINT:
        return part.called(HIDDEN_FACE)
    if level > board.thickness - SAME_POINT:
        return part.called(MARKED_FACE)
    if abs(level - board.thickness / 2.0) < SAME_POINT:
        return MIDDLE
    return f"line {write.bare(board.thickness - level)} in from the {part.called(MARKED_FACE)}"


# ---- bores


@dataclass(frozen=True)
class Hole:
    """A round hole: diameter, depth in words, the face it is bored from, and where its centre is."""

    diameter: str
    depth: str
    face: str
    place: str


def hole(cut: Cut, part: Part, write: Writer) -> Hole:
    """A bore in words."""
    assert cut.bore is not None
    bore, board = cut.bore, part.board
    axis = max(range(3), key=lambda i: abs(bore.direction[i]))
    through = bore.length > board.size[axis] - SAME_POINT
    first = bore.direction[axis] > 0.0
    face = ((END_A, END_B), (REFERENCE_EDGE, FAR_EDGE), (HIDDEN_FACE, MARKED_FACE))[axis][0 if first else 1]
    if axis == 0:
        place = (f"centre {write.bare(bore.start[1])} from the {part.called(REFERENCE_EDGE)}, "
                 f"{write.bare(bore.start[2])} from the {part.called(HIDDEN_FACE)}")
    else:
        place = (f"centre {write.bare(bore.start[0])} along from {datum(part)}, "
                 f"{write.bare(bore.start[1])} across from the {part.called(REFERENCE_EDGE)}")
    inside = SAME_POINT < bore.start[axis] < board.size[axis] - SAME_POINT
    return Hole(f"Ø {write.bare(bore.diameter)}", "right through" if through else f"{write.bare(bore.length)} deep",
                "the floor of the bore before it" if inside else part.called(face), place)


def _bore(cut: Cut, part: Part, write: Writer) -> JointRow:
    each = hole(cut, part, write)
    return JointRow(cut.name, each.face, f"{each.diameter}, {each.depth}, square to the face", each.place)
