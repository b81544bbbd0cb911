# SPDX-License-Identifier: LGPL-2.1-or-later
"""All that can be measured on a part, each under a key, so that two states can be compared measure by measure."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, replace

from .assembly import BORE, CORNER_CUT, CROSSCUT, DADO, NOTCH, RIP, SHAPED_EDGE, Board, Cut, Part
from .geometry import Bore, Placement, Plane, dot
from .marks import turns
from .saw import ARRISES, SQUARE, edge_of, end_of, end_spans, setting
from .solid import FAR_EDGE, HIDDEN_FACE, MARKED_FACE, REFERENCE_EDGE, box, common, extents
from .stock import Stock

LENGTH, ANGLE, TEXT = "length", "angle", "text"
#: Lengths that differ by less than this (mm) are told apart by no saw and no rule.
SAME_LENGTH = 1e-3
#: A plane that leans less than this along an axis (sine) does not cross it within the board.
ALONG = 1e-3
#: Kinds of measure that belong to no cut.
BLANK, ARRIS, STOCK = "blank", "arris", "stock"

#: Kind of measure or cut, the cut's name, the board frame's side or sides, which of several such cuts (from 1), what.
Key = tuple[str, str, str, int, str]


@dataclass(frozen=True)
class Measure:
    """A length (mm), an angle (degrees) or a text; mitre, bevel and taper are signed as in ``saw``."""

    unit: str
    value: float | str

    def same(self, other: Measure) -> bool:
        """True where no saw and no rule tells the two apart."""
        if isinstance(self.value, str) or isinstance(other.value, str):
            return self.value == other.value
        return abs(self.value - other.value) < (SAME_LENGTH if self.unit == LENGTH else SQUARE)


@dataclass(frozen=True)
class Change:
    """One measure that differs; None where the cut that it belongs to is not there."""

    kind: str
    cut: str
    where: str
    number: int
    what: str
    unit: str
    old: float | str | None
    new: float | str | None

    @property
    def one_sided(self) -> bool:
        """True where the cut is in one state only."""
        return self.old is None or self.new is None


def stock_text(stock: Stock) -> str:
    """What makes two pieces be of one stock: its name and form, its dressed size, its material."""
    return f"{stock.name}, {stock.form}, {stock.width:g} × {stock.thickness:g} mm, {stock.material}".removesuffix(", ")


def same_stock(first: Stock, other: Stock) -> bool:
    """Whether wood of one can serve as the other; lengths sold and density do not matter."""
    return stock_text(first) == stock_text(other)


def measures(board: Board, stock: Stock) -> dict[Key, Measure]:
    """Every measure of a board, in the order of the paper."""
    found: dict[Key, Measure] = {(STOCK, "", "", 1, "stock"): Measure(TEXT, stock_text(stock))}
    for what, size in zip(("length", "width", "thickness"), board.size, strict=True):
        found[BLANK, "", "", 1, what] = Measure(LENGTH, size)
    a, b = end_spans(board)
    for edge, face in ARRISES:
        start = a.at(edge, face)
        found[ARRIS, "", f"{edge}, {face}", 1, "length"] = Measure(LENGTH, b.at(edge, face) - start)
        found[ARRIS, "", f"{edge}, {face}", 1, "starts at"] = Measure(LENGTH, start)
    seen: Counter[tuple[str, str, str]] = Counter()
    for cut in board.cuts:
        own = (cut.kind, cut.name, place_of(cut))
        seen[own] += 1
        found.update({(*own, seen[own], what): Measure(unit, value) for what, unit, value in _of_cut(cut, board)})
    return found


def place_of(cut: Cut) -> str:
    """The end or the edge that a saw cut belongs to, the face that a joint is cut from; '' where there is no one side."""
    if cut.kind in (CROSSCUT, CORNER_CUT):
        return end_of(cut)
    if cut.kind == RIP:
        return edge_of(cut)
    if cut.kind in (BORE, NOTCH, SHAPED_EDGE):
        return ""
    return MARKED_FACE if _floor(cut).normal[2] > 0.0 else HIDDEN_FACE


_Row = tuple[str, str, float]


def _of_cut(cut: Cut, board: Board) -> Iterator[_Row]:
    if cut.bore:
        yield from _of_bore(cut.bore)
    elif cut.kind == CROSSCUT:
        yield from _of_saw(cut, "mitre")
    elif cut.kind == RIP:
        yield from _of_saw(cut, "taper")
        yield from _of_rip(cut.planes[0], board)
    elif cut.kind == CORNER_CUT:
        yield from _of_saw(cut, "mitre")
        yield from _reach(cut, board)
    elif cut.kind == DADO and len(cut.planes) == 3:
        yield from _of_dado(cut, board)
    else:
        yield from _of_joint(cut, board)


def _of_saw(cut: Cut, across: str) -> Iterator[_Row]:
    angles = setting(cut.planes[0])
    yield across, ANGLE, angles.mitre if across == "mitre" else angles.taper
    yield "bevel", ANGLE, angles.bevel


def _of_rip(plane: Plane, board: Board) -> Iterator[_Row]:
    """Where a rip meets the faces at end A, from the reference edge, if it does so within the blank."""
    if abs(plane.normal[1]) < ALONG:
        return
    for face, z in ((MARKED_FACE, board.thickness), (HIDDEN_FACE, 0.0)):
        y = (plane.offset - plane.normal[2] * z) / plane.normal[1]
        if -0.01 <= y <= board.width + 0.01:
            yield f"across on the {face}", LENGTH, max(0.0, y)


def _of_bore(bore: Bore) -> Iterator[_Row]:
    yield "diameter", LENGTH, bore.diameter
    yield "depth", LENGTH, bore.length
    for what, value in zip(("along", "across", "up from the hidden face"), bore.start, strict=True):
        yield what, LENGTH, value
    for axis, value in zip("XYZ", bore.direction, strict=True):
        yield f"tilt from {axis}", ANGLE, math.degrees(math.acos(max(-1.0, min(1.0, value))))


def _floor(cut: Cut) -> Plane:
    """The plane that a cut's bottom lies in: the one most square to the faces."""
    return max(cut.planes, key=lambda plane: abs(plane.normal[2]))


def _depth(plane: Plane, board: Board) -> float:
    return board.thickness - plane.offset if plane.normal[2] > 0.0 else -plane.offset


def _of_dado(cut: Cut, board: Board) -> Iterator[_Row]:
    """As the paper has it: the lean from square, width square to it, lower wall on both edges, depth."""
    floor = _floor(cut)
    walls = [plane for plane in cut.planes if plane is not floor]
    if any(abs(wall.normal[0]) < ALONG for wall in walls):
        yield from _of_joint(cut, board)
        return
    for edge, y in ((REFERENCE_EDGE, 0.0), (FAR_EDGE, board.width)):
        low, high = sorted((wall.offset - wall.normal[1] * y) / wall.normal[0] for wall in walls)
        yield f"lower wall on the {edge}", LENGTH, low
        if edge == REFERENCE_EDGE:
            normal = walls[0].normal
            yield "lean from square", ANGLE, (math.degrees(math.atan2(normal[1], normal[0])) + 90.0) % 180.0 - 90.0
            yield "width", LENGTH, (high - low) * abs(normal[0])
    yield "depth", LENGTH, _depth(floor, board)


def _of_joint(cut: Cut, board: Board) -> Iterator[_Row]:
    """Where the waste of several planes lies in the blank; its depth, or the lie of its walls."""
    yield from _reach(cut, board)
    if cut.kind not in (NOTCH, SHAPED_EDGE):
        yield "depth", LENGTH, _depth(_floor(cut), board)
        return
    for number, plane in enumerate(sorted(cut.planes, key=_way), start=1):
        angles = setting(plane)
        yield f"wall {number} from square", ANGLE, angles.mitre
        yield f"wall {number} bevel", ANGLE, angles.bevel


def _way(plane: Plane) -> float:
    """Where a wall's normal points about Z, from the reference edge anticlockwise (radians, noise apart)."""
    return round(math.atan2(plane.normal[0], -plane.normal[1]), 6) % math.tau


def _reach(cut: Cut, board: Board) -> Iterator[_Row]:
    waste = common(box((0.0, 0.0, 0.0), board.size), cut.planes)
    if waste is None:
        return
    low, high = extents((waste,))
    for what, axis in (("along", 0), ("across", 1)):
        yield f"{what}, from", LENGTH, low[axis]
        yield f"{what}, to", LENGTH, high[axis]


# ---- comparing


def turned(board: Board, turn: Placement) -> Board:
    """The same board in the frame that a turn of its blank (``marks.turns``) takes it to."""
    return replace(board, cuts=tuple(_turned_cut(cut, turn) for cut in board.cuts))


def _turned_cut(cut: Cut, turn: Placement) -> Cut:
    planes = tuple(_turned_plane(plane, turn) for plane in cut.planes)
    bore = cut.bore and replace(cut.bore, start=turn.point(cut.bore.start), direction=turn.direction(cut.bore.direction))
    return replace(cut, planes=planes, bore=bore)


def _turned_plane(plane: Plane, turn: Placement) -> Plane:
    normal = turn.direction(plane.normal)
    return Plane(normal, plane.offset + dot(normal, turn.origin))


def changes_between(old: Part, new: Part) -> tuple[bool, tuple[Change, ...]]:
    """What differs, in the new part's frame, and whether the old board was turned for it.

    Of the turns of the old blank the one that leaves the fewest differences is taken: which end is called A
    is no change.
    """
    wanted = measures(new.board, new.stock)
    best: tuple[bool, tuple[Change, ...]] | None = None
    for number, turn in enumerate(turns(old.board.size)):
        board = turned(old.board, turn) if number else old.board
        found = tuple(_changes(measures(board, old.stock), wanted))
        if best is None or len(found) < len(best[1]):
            best = number > 0, found
    assert best is not None
    return best


def _changes(old: dict[Key, Measure], new: dict[Key, Measure]) -> Iterator[Change]:
    for key in dict.fromkeys([*new, *old]):
        a, b = old.get(key), new.get(key)
        known = a or b
        if known is not None and (a is None or b is None or not a.same(b)):
            yield Change(*key, known.unit, None if a is None else a.value, None if b is None else b.value)
