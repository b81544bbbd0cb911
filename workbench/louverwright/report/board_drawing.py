# SPDX-License-Identifier: LGPL-2.1-or-later
"""The drawing of one part: on its marked face, on its reference edge, and on end B, with its dimensions."""

from __future__ import annotations

import math
from collections.abc import Iterator

from ..core.assembly import Part
from ..core.geometry import Bore, add, dot
from ..core.geometry import scale as mul
from ..core.saw import end_spans
from ..core.solid import END_A, END_B, FAR_EDGE, MARKED_FACE, REFERENCE_EDGE
from .drawing import Arrow, Circle, Dim, Drawing, Item, Label, Line
from .job import Writer
from .joint_words import tick_positions
from .lettered import marked_points
from .lettering import Taken, lettered
from .seat_words import SlatEnd
from .strokes import POINT_MM, Box, extent, fitted, text_width
from .views import ON_EDGE, ON_END, ON_FACE, Segment, View, edges_seen

#: Room for the view on the marked face, and for the enlarged view on the end (mm on paper).
ROOM_LONG, ROOM_HIGH, ROOM_END = 118.0, 40.0, 13.0
#: A sheet's part may be drawn higher; nothing is drawn larger than this.
ROOM_SHEET, LARGEST = 72.0, 0.25
#: Between the views, and of dimension lines from the wood (mm on paper).
BETWEEN, AWAY = 6.0, 5.0
SMALL = 6.0


def board_drawing(part: Part, name: str, write: Writer, marks: tuple[SlatEnd, ...] = ()) -> Drawing:
    """The part, called ``name``, at the scale that fits, the end view enlarged; drawn from the board's cells alone, with the
    marks of what is only butted on it."""
    board = part.board
    high = ROOM_SHEET if part.stock.form == "sheet" else ROOM_HIGH
    scale = min(ROOM_LONG / board.length, high / board.width, LARGEST)
    edge_y = -(BETWEEN + _band(part, write, REFERENCE_EDGE) + 5.0 * len(_below(part)) + board.thickness * scale)
    end_scale = min(ROOM_END / max(board.width, board.thickness), 1.0)
    end_x = board.length * scale + 14.0
    points = [(letter, (p[0] * scale, p[1] * scale)) for letter, p in marked_points(board)]
    items = [
        *_view(part, ON_FACE, scale, (0.0, 0.0)), *_view(part, ON_EDGE, scale, (0.0, edge_y)),
        *_view(part, ON_END, end_scale, (end_x, 0.0)),
        *_face_dimensions(part, write, scale), *_names(part, write, scale, edge_y, end_x, end_scale),
        *_ticks(part, write, scale), *_section_dimensions(part, write, end_scale, end_x), *_marks(marks, scale),
        *(Circle(x, y, 0.45, style="thin") for _, (x, y) in points),
    ]
    taken = Taken(items)
    grain = _grain(part, scale, edge_y, taken)
    taken.add(grain)
    items += [*grain, *(lettered(points, SMALL, taken) if points else ())]
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


def _band(part: Part, write: Writer, on: str) -> float:
    """Room beyond an edge that running dimensions take (mm on paper): the longest of their texts."""
    edge, stops = tick_positions(part)
    if edge != on or not stops:
        return 0.0
    return 3.5 + 1.25 * max(len(write.bare(stop)) for stop in stops)


def _face_dimensions(part: Part, write: Writer, scale: float) -> Iterator[Item]:
    """The length of each edge of the marked face on its own side, the overall length, the width."""
    far = _edges(part)[1]
    width = part.board.width * scale
    below = AWAY + _band(part, write, REFERENCE_EDGE)
    for row, (start, stop) in enumerate(_below(part)):
        yield Dim((start * scale, 0.0), (stop * scale, 0.0), -below - 5.0 * row, write.bare(stop - start), SMALL)
    if _far_dimension(part):
        above = AWAY + _band(part, write, FAR_EDGE)
        yield Dim((far[0] * scale, width), (far[1] * scale, width), above, write.bare(far[1] - far[0]), SMALL)
    yield Dim((0.0, 0.0), (0.0, width), AWAY, write.bare(part.board.width), SMALL)


def _far_dimension(part: Part) -> bool:
    """Whether the far edge has a dimension of its own."""
    near, far = _edges(part)
    return not _is(far, near) and far[1] - far[0] > 1.0


def _is(a: tuple[float, float], b: tuple[float, float]) -> bool:
    return abs(a[0] - b[0]) < 0.01 and abs(a[1] - b[1]) < 0.01


def _section_dimensions(part: Part, write: Writer, scale: float, x: float) -> Iterator[Item]:
    board = part.board
    right = x + board.width * scale
    yield Dim((right, 0.0), (right, board.thickness * scale), -3.5, write.bare(board.thickness), SMALL)


def _names(part: Part, write: Writer, scale: float, edge_y: float, end_x: float, end_scale: float) -> Iterator[Item]:
    """What the six sides are in the vent, each word at its side."""
    board = part.board
    long = board.length * scale
    over = edge_y + board.thickness * scale + 1.2
    texts = (f"◄ end A: {part.called(END_A)}", f"reference edge: {part.called(REFERENCE_EDGE)}",
             f"end B: {part.called(END_B)} ►")
    first, middle, last = (text_width(text, SMALL * POINT_MM) for text in texts)
    between = max(first, last) + middle / 2.0 + 1.0 < long / 2.0
    yield Label(0.0, over, texts[0], SMALL)
    yield Label(long, over, texts[2], SMALL, "end" if first + last + 2.0 < long else "start")
    yield Label(long / 2.0, over if between else edge_y - 3.2, texts[1], SMALL, "middle")
    yield _far_name(part, write, scale)
    yield Label(end_x, board.thickness * end_scale + 2.0, "on end B", SMALL)


def _far_name(part: Part, write: Writer, scale: float) -> Label:
    """The far edge's name: close to it where no running dimension stands, else above those, and above its own dimension
    where it is shorter than its name."""
    text, (start, stop) = f"far edge: {part.called(FAR_EDGE)}", _edges(part)[1]
    y, half = part.board.width * scale, text_width(text, SMALL * POINT_MM) / 2.0 + 1.0
    edge, ticks = tick_positions(part)
    taken = [tick * scale for tick in ticks] if edge == FAR_EDGE else []
    for share in (0.5, 0.35, 0.65):
        x = (start + share * (stop - start)) * scale
        if start * scale < x - half and x + half < stop * scale and all(abs(x - tick) > half + 2.5 for tick in taken):
            return Label(x, y + 1.2, text, SMALL, "middle")
    over = AWAY + 3.6 if _far_dimension(part) else 1.2
    return Label((start + stop) / 2.0 * scale, y + over + _band(part, write, FAR_EDGE), text, SMALL, "middle")


def _grain(part: Part, scale: float, edge_y: float, taken: Taken) -> list[Item]:
    """An arrow along the grain with the marked face's name, in a free place on that face, else below the views."""
    if part.stock.form == "mesh":
        return []
    board = part.board
    long, high, half = board.length * scale, board.width * scale, min(12.0, board.length * scale / 5.0)
    below = _grain_at(long / 2.0, edge_y - 6.5, half, part)
    spots = (_grain_at(long * a, high * b, half, part) for a, b in SPOTS)
    return next((spot for spot in spots if high > 7.0 and not any(taken.clashes(box) for box in _boxes(spot))), below)


def _marks(marks: tuple[SlatEnd, ...], scale: float) -> Iterator[Item]:
    """The outlines of slats that are butted on the marked face."""
    for seat in marks:
        a, b, c, d = ((x * scale, y * scale) for x, y, _ in seat.corners)
        yield Line((a, b), "thin")
        yield Line((c, d), "thin")


#: Where the grain's arrow is tried, as shares of length and width.
SPOTS = tuple((a, b) for b in (0.5, 0.7, 0.3) for a in (0.5, 0.62, 0.38, 0.72, 0.28))


def _grain_at(x: float, y: float, half: float, part: Part) -> list[Item]:
    return [Arrow(x - half, y, x + half, y, both=True, style="grain"), Label(x, y + 1.0, "grain", SMALL - 0.5, "middle"),
            Label(x, y - 2.8, part.called(MARKED_FACE), SMALL - 0.5, "middle")]


def _boxes(items: list[Item]) -> list[Box]:
    """The boxes that the arrow and its words take, with a little room."""
    return [(left - 0.5, low - 0.3, right + 0.5, high + 0.3) for left, low, right, high in (extent((item,)) for item in items)]


def _ticks(part: Part, write: Writer, scale: float) -> Iterator[Item]:
    """Positions of dados and laps along the edge that they are measured on, each from end A's long point."""
    edge, stops = tick_positions(part)
    top = edge == FAR_EDGE
    y = part.board.width * scale if top else 0.0
    for stop in stops:
        x = stop * scale
        yield Line(((x, y), (x, y + (2.0 if top else -2.0))), "thin")
        yield Label(x + 0.8, y + (2.6 if top else -2.6), write.bare(stop), SMALL - 0.5, "start" if top else "end", 90.0)
