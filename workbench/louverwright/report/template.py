# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a full-size template shows of a part: its marked face's outline, what of the far face lies beside it, its marks.

All in the board frame, seen on the marked face: x along from end A, y across from the reference edge (mm, full size).
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise

from ..core.assembly import DADO, NOTCH, SHAPED_EDGE, Part, board_shell
from ..core.geometry import add, scale
from ..core.marks import turn_between
from ..core.solid import END_A, HIDDEN_FACE, MARKED_FACE, REFERENCE_EDGE
from .drawing import Point
from .job import Job
from .lettered import ON_LEVEL, SAME_POINT, marked_points
from .place_words import part_name
from .seat_words import seats

Segment = tuple[Point, Point]

#: The cuts that are marked out from a template rather than from two figures at the saw.
TEMPLATED = (NOTCH, SHAPED_EDGE, DADO)
#: Points nearer than this on paper are one (mm).
SAME = 1e-4


@dataclass(frozen=True)
class Template:
    """One template: the part it is drawn from, its name, the mark of its other hand if the same template turned over
    serves that, loops of the marked face, stretches of the far face that are not under those, marks, holes (centre and
    diameter) and lettered points."""

    part: Part
    name: str
    turned_for: str
    outline: tuple[tuple[Point, ...], ...]
    far: tuple[Segment, ...]
    marks: tuple[Segment, ...]
    holes: tuple[tuple[Point, float], ...]
    letters: tuple[tuple[str, Point], ...]

    @property
    def marked_segments(self) -> tuple[Segment, ...]:
        """The outline's edges."""
        return tuple(edge for loop in self.outline for edge in pairwise((*loop, loop[0])))

    @property
    def segments(self) -> tuple[Segment, ...]:
        """Every straight line of the template."""
        return (*self.marked_segments, *self.far, *self.marks)

    @property
    def extent(self) -> tuple[float, float, float, float]:
        """Left, lower, right and upper end of all that is drawn (mm)."""
        xs, ys = zip(*(p for segment in self.segments for p in segment), strict=True)
        return min(xs), min(ys), max(xs), max(ys)


def templates(job: Job) -> tuple[Template, ...]:
    """A template for each part that has what is marked out from one; one for both hands where it can be turned over."""
    wanted = [part for part in job.assembly.parts if _wants(part, job)]
    found: list[Template] = []
    for part in wanted:
        if any(each.turned_for == part.mark for each in found):
            continue
        other = next((each for each in wanted if each is not part and _turns_over(part, each)), None)
        found.append(template(part, job, other.mark if other else ""))
    return tuple(found)


def _wants(part: Part, job: Job) -> bool:
    return any(cut.kind in TEMPLATED for cut in part.board.cuts) or bool(seats(part, job.assembly))


def _turns_over(part: Part, other: Part) -> bool:
    """Whether the other part is the first one's mirror image with the marked faces alike, so that the paper turned over
    lies on its marked face."""
    if part.kind is not other.kind or part.hand != "left" or other.hand != "right":
        return False
    turn = turn_between(part.board, other.board, mirrored=True)
    return turn is not None and turn.z[2] > 0.5


def template(part: Part, job: Job, turned_for: str = "") -> Template:
    """What a part's template shows."""
    outline = tuple(tuple(loop) for loop in _loops(part, MARKED_FACE))
    marked = [edge for loop in outline for edge in pairwise((*loop, loop[0]))]
    marks = tuple(stroke for seat in seats(part, job.assembly) for stroke in _seat_lines(seat.corners))
    far = tuple(_beside(_level_edges(part), marked))
    return Template(part, part_name(part, job), turned_for, outline, far, marks, tuple(_holes(part)),
                    _letters(part, [*marked, *far]))


def _letters(part: Part, drawn: list[Segment]) -> tuple[tuple[str, Point], ...]:
    """The lettered points of the part's sheet, each once; without those that are sawn away once they have served."""
    points = {letter: (p[0], p[1]) for letter, p in reversed(marked_points(part.board))}
    return tuple((letter, p) for letter, p in sorted(points.items(), key=lambda each: (len(each[0]), each[0]))
                 if any(_off(p, line) < SAME_POINT for line in drawn))


def _off(p: Point, line: Segment) -> float:
    """How far a point lies from a segment (mm)."""
    (x, y), (u, v) = line
    whole = (u - x) ** 2 + (v - y) ** 2
    share = min(1.0, max(0.0, ((p[0] - x) * (u - x) + (p[1] - y) * (v - y)) / whole))
    return math.dist(p, (x + share * (u - x), y + share * (v - y)))


def _loops(part: Part, name: str) -> Iterator[list[Point]]:
    shell = board_shell(part.board)
    for face in shell.faces:
        if face.name == name:
            yield from ([shell.points[i][:2] for i in loop] for loop in face.loops)


def _seat_lines(corners: tuple[tuple[float, float, float], ...]) -> tuple[Segment, Segment]:
    a, b, c, d = (p[:2] for p in corners)
    return (a, b), (c, d)


def _level_edges(part: Part) -> Iterator[Segment]:
    """Edges below the marked face that run parallel to it: of the hidden face, of floors, where bevels meet."""
    shell, top = board_shell(part.board), part.board.thickness
    hidden = {number for number, face in enumerate(shell.faces) if face.name == HIDDEN_FACE}
    of_edge = shell.edges
    for a, b in sorted(shell.edges, key=lambda edge: not set(of_edge[edge]) & hidden):
        p, q = shell.points[a], shell.points[b]
        if abs(p[2] - q[2]) < ON_LEVEL and p[2] < top - ON_LEVEL:
            yield p[:2], q[:2]


def _holes(part: Part) -> Iterator[tuple[Point, float]]:
    """Bores that come through the marked face."""
    top = part.board.thickness
    for bore in part.board.bores:
        ends = (bore.start, add(bore.start, scale(bore.direction, bore.length)))
        if abs(bore.direction[2]) > 0.999 and max(p[2] for p in ends) > top - ON_LEVEL:
            yield bore.start[:2], bore.diameter


def _beside(edges: Iterable[Segment], drawn: Iterable[Segment]) -> Iterator[Segment]:
    """What of the edges does not lie under lines that are drawn already, or under an earlier one of their own."""
    known = list(drawn)
    for edge in edges:
        if math.dist(*edge) < SAME:
            continue
        yield from uncovered(edge, known)
        known.append(edge)


def uncovered(edge: Segment, known: Iterable[Segment]) -> list[Segment]:
    """The stretches of an edge that no known one lies on (mm)."""
    whole = math.dist(*edge)
    way = ((edge[1][0] - edge[0][0]) / whole, (edge[1][1] - edge[0][1]) / whole)
    stretches = [(0.0, whole)]
    for other in known:
        spans = [_along(edge[0], way, p) for p in other]
        if max(abs(off) for _, off in spans) < ON_LEVEL:
            low, high = sorted(at for at, _ in spans)
            stretches = [part for span in stretches for part in _less(span, low, high)]
    return [((edge[0][0] + a * way[0], edge[0][1] + a * way[1]), (edge[0][0] + b * way[0], edge[0][1] + b * way[1]))
            for a, b in stretches]


def _along(start: Point, way: Point, p: Point) -> tuple[float, float]:
    """How far a point lies along a line and beside it."""
    x, y = p[0] - start[0], p[1] - start[1]
    return x * way[0] + y * way[1], y * way[0] - x * way[1]


def _less(span: tuple[float, float], low: float, high: float) -> list[tuple[float, float]]:
    """A stretch without what lies from ``low`` to ``high``; crumbs are dropped."""
    parts = [(span[0], min(span[1], low)), (max(span[0], high), span[1])]
    return [(a, b) for a, b in parts if b - a > ON_LEVEL]


def words(template: Template, unit: str) -> tuple[str, ...]:
    """What stands on a template: what it is, how it lies on the wood, its other hand, its unit."""
    part = template.part
    first = (f"{part.mark}  {template.name}", f"marked face up: {part.called(MARKED_FACE)}",
             f"reference edge below: {part.called(REFERENCE_EDGE)}; end A at the left: {part.called(END_A)}")
    turned = (f"turn over for {template.turned_for}",) if template.turned_for else ()
    return (*first, *turned, f"full size, {unit}; grain along the length")
