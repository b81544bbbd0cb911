# SPDX-License-Identifier: LGPL-2.1-or-later
"""The drawing of one part: on its marked face, on its reference edge, and on end B, with its dimensions."""

from __future__ import annotations

import math
from collections.abc import Iterator

from ..core.assembly import BORE, DADO, GROOVE, Part
from ..core.geometry import Bore, add, dot
from ..core.geometry import scale as mul
from ..core.saw import end_spans
from ..core.solid import END_A, END_B, FAR_EDGE, MARKED_FACE, REFERENCE_EDGE
from .drawing import Arrow, Circle, Dim, Drawing, Item, Label, Line
from .job import Writer
from .joint_words import tick_positions
from .lettered import marked_points
from .seat_words import Seat
from .strokes import fitted
from .views import ON_EDGE, ON_END, ON_FACE, Segment, View, edges_seen

#: Room for the view on the marked face, and for the enlarged view on the end (mm on paper).
ROOM_LONG, ROOM_HIGH, ROOM_END = 118.0, 40.0, 13.0
#: A sheet's part may be drawn higher; nothing is drawn larger than this.
ROOM_SHEET, LARGEST = 72.0, 0.25
#: Between the views, and of dimension lines from the wood (mm on paper).
BETWEEN, AWAY = 6.0, 5.0
SMALL = 6.0


def board_drawing(part: Part, name: str, write: Writer, marks: tuple[Seat, ...] = ()) -> Drawing:
    """The part, called ``name``, at the scale that fits, the end view enlarged; drawn from the board's cells alone, with the
    marks of what is only butted on it."""
    board = part.board
    high = ROOM_SHEET if part.stock.form == "sheet" else ROOM_HIGH
    scale = min(ROOM_LONG / board.length, high / board.width, LARGEST)
    edge_y = -(BETWEEN + 5.0 * len(_below(part)) + board.thickness * scale)
    end_scale = min(ROOM_END / max(board.width, board.thickness), 1.0)
    end_x = board.length * scale + 14.0
    items = [
        *_view(part, ON_FACE, scale, (0.0, 0.0)), *_view(part, ON_EDGE, scale, (0.0, edge_y)),
        *_view(part, ON_END, end_scale, (end_x, 0.0)),
        *_face_dimensions(part, write, scale), *_names(part, write, scale, edge_y, end_x, end_scale),
        *_grain(part, scale, edge_y, bool(marks)), *_marks(marks, scale), *_points(part, write, scale),
        *_ticks(part, write, scale),
        *_section_dimensions(part, write, end_scale, end_x),
    ]
    return fitted(tuple(items), description=f"{part.mark}, {name}: marked face, reference edge and end B.")


def _view(part: Part, view: View, scale: float, at: tuple[float, float]) -> Iterator[Item]:
    visible, hidden = edges_seen(part.board, view)
    for style, segments in (("hidden", hidden), ("outline", visible)):
        yield from (Line(_placed(each, scale, at), style) for each in segments)
    for bore in part.board.bores:
        yield from _bore(bore, view, scale, at)


def _bore(bore: Bore, view: View, scale: float, at: tuple[float, float]) -> Iterator[Item]:
    """A round hole: a circle where the view looks along it, else its two dashed sides and its middle line."""
    stop = add(bore.start, mul(bore.direction, bore.length))
    start = view.flat(bore.start)
    if abs(dot(bore.direction, view.eye)) > 0.999:
        facing = dot(bore.direction, view.eye) < 0.0 or abs(bore.direction[0]) > 0.5
        yield Circle(at[0] + start[0] * scale, at[1] + start[1] * scale, bore.diameter / 2.0 * scale,
                     style="outline" if facing else "hidden")
        return
    end = view.flat(stop)
    long = math.dist(start, end)
    across = ((end[1] - start[1]) / long * bore.diameter / 2.0, (start[0] - end[0]) / long * bore.diameter / 2.0)
    for sense, style in ((1.0, "hidden"), (-1.0, "hidden"), (0.0, "centre")):
        shift = (sense * across[0], sense * across[1])
        yield Line(_placed(((start[0] + shift[0], start[1] + shift[1]), (end[0] + shift[0], end[1] + shift[1])),
                           scale, at), style)


def _placed(segment: Segment, scale: float, at: tuple[float, float]) -> tuple[tuple[float, float], ...]:
    return tuple((at[0] + x * scale, at[1] + y * scale) for x, y in segment)


def _edges(part: Part) -> tuple[tuple[float, float], tuple[float, float]]:
    """Where the marked face begins and ends on the reference edge and on the far edge (mm from end A)."""
    a, b = end_spans(part.board)
    return ((a.at(REFERENCE_EDGE, MARKED_FACE), b.at(REFERENCE_EDGE, MARKED_FACE)),
            (a.at(FAR_EDGE, MARKED_FACE), b.at(FAR_EDGE, MARKED_FACE)))


def _below(part: Part) -> list[tuple[float, float]]:
    """What is dimensioned below the reference edge: its own length, and the overall length if that is another."""
    near, whole = _edges(part)[0], (0.0, part.board.length)
    spans = [near] if _is(near, whole) else [near, whole]
    return [span for span in spans if span[1] - span[0] > 1.0]


def _band(part: Part, write: Writer) -> float:
    """Room above the far edge that running dimensions take (mm on paper): the longest of their texts."""
    edge, stops = tick_positions(part)
    if edge != FAR_EDGE or not stops:
        return 0.0
    return 3.5 + 1.25 * max(len(write.bare(stop)) for stop in stops)


def _face_dimensions(part: Part, write: Writer, scale: float) -> Iterator[Item]:
    """The length of each edge of the marked face on its own side, the overall length, the width."""
    near, far = _edges(part)
    width = part.board.width * scale
    for row, (start, stop) in enumerate(_below(part)):
        yield Dim((start * scale, 0.0), (stop * scale, 0.0), -AWAY - 5.0 * row, write.bare(stop - start), SMALL)
    if not _is(far, near) and far[1] - far[0] > 1.0:
        yield Dim((far[0] * scale, width), (far[1] * scale, width), AWAY + _band(part, write), write.bare(far[1] - far[0]),
                  SMALL)
    yield Dim((0.0, 0.0), (0.0, width), AWAY, write.bare(part.board.width), SMALL)


def _is(a: tuple[float, float], b: tuple[float, float]) -> bool:
    return abs(a[0] - b[0]) < 0.01 and abs(a[1] - b[1]) < 0.01


def _section_dimensions(part: Part, write: Writer, scale: float, x: float) -> Iterator[Item]:
    board = part.board
    right = x + board.width * scale
    yield Dim((right, 0.0), (right, board.thickness * scale), -3.5, write.bare(board.thickness), SMALL)


def _names(part: Part, write: Writer, scale: float, edge_y: float, end_x: float, end_scale: float) -> Iterator[Item]:
    """What the six sides are in the vent, each word at its side."""
    board = part.board
    long, width = board.length * scale, board.width * scale
    over = edge_y + board.thickness * scale + 1.2
    wide = long > 70.0
    yield Label(0.0, over, f"◄ end A: {part.called(END_A)}", SMALL)
    yield Label(long, over, f"end B: {part.called(END_B)} ►", SMALL, "end" if wide else "start")
    yield Label(long / 2.0, over if wide else edge_y - 3.2, f"reference edge: {part.called(REFERENCE_EDGE)}", SMALL,
                "middle")
    yield Label(long / 2.0, width + 1.2 + _band(part, write), f"far edge: {part.called(FAR_EDGE)}", SMALL, "middle")
    yield Label(end_x, board.thickness * end_scale + 2.0, "on end B", SMALL)


def _grain(part: Part, scale: float, edge_y: float, marked: bool) -> Iterator[Item]:
    """An arrow along the grain on the marked face, where no lettered point lies; below the views where joints fill it."""
    if part.stock.form == "mesh":
        return
    board = part.board
    half = min(12.0, board.length * scale / 5.0)
    full = marked or any(cut.kind in (DADO, GROOVE, BORE) for cut in board.cuts) or board.width * scale < 7.0
    x, y = (board.length * scale / 2.0, edge_y - 6.5) if full else _free_spot(part, scale, half)
    yield Arrow(x - half, y, x + half, y, both=True, style="grain")
    yield Label(x, y + 1.0, "grain", SMALL - 0.5, "middle")
    yield Label(x, y - 2.8, part.called(MARKED_FACE), SMALL - 0.5, "middle")


def _marks(marks: tuple[Seat, ...], scale: float) -> Iterator[Item]:
    """The outlines of slats that are butted on the marked face."""
    for seat in marks:
        a, b, c, d = ((x * scale, y * scale) for x, y, _ in seat.corners)
        yield Line((a, b), "thin")
        yield Line((c, d), "thin")


def _free_spot(part: Part, scale: float, half: float) -> tuple[float, float]:
    """The first of a few places on the face that keeps clear of every lettered point."""
    board = part.board
    points = [(p[0] * scale, p[1] * scale) for _, p in marked_points(part)]
    spots = [(board.length * scale * a, board.width * scale * b) for a, b in
             ((0.5, 0.5), (0.62, 0.5), (0.7, 0.5), (0.7, 0.25), (0.7, 0.75), (0.4, 0.75))]
    clear = (spot for spot in spots
             if all(abs(x - spot[0]) > half + 2.5 or abs(y - spot[1]) > 4.0 for x, y in points))
    return next(clear, spots[0])


def _points(part: Part, write: Writer, scale: float) -> Iterator[Item]:
    """The lettered points of notches and corner cuts, each letter a little way off its point, away from the others."""
    points = marked_points(part)
    if not points:
        return
    middle = [sum(p[i] for _, p in points) / len(points) for i in (0, 1)]
    for letter, p in points:
        way = (p[0] - middle[0], p[1] - middle[1])
        reach = math.hypot(*way) or 1.0
        x, y = p[0] * scale + 2.0 * way[0] / reach, p[1] * scale + 2.0 * way[1] / reach
        yield Circle(p[0] * scale, p[1] * scale, 0.45, style="thin")
        yield Label(x, y - 0.8, letter, SMALL, "middle")


def _ticks(part: Part, write: Writer, scale: float) -> Iterator[Item]:
    """Positions of dados and laps along the edge that they are measured on, each from end A's long point."""
    edge, stops = tick_positions(part)
    top = edge == FAR_EDGE
    y = part.board.width * scale if top else 0.0
    for stop in stops:
        x = stop * scale
        yield Line(((x, y), (x, y + (2.0 if top else -2.0))), "thin")
        yield Label(x + 0.8, y + (2.6 if top else -9.0), write.bare(stop), SMALL - 0.5, "start", 90.0)
