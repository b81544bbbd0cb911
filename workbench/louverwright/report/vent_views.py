# SPDX-License-Identifier: LGPL-2.1-or-later
"""The vent and its stages as pictures: what is seen from a side or from above, cut open, or pulled apart.

Pictures are at full size (mm), u to the right and v up on the paper; ``picture`` puts them to scale.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from itertools import pairwise

from ..core.apart import shifts
from ..core.assembly import Part, Piece
from ..core.geometry import Plane, Vec, dot, newell
from ..core.kinds import BASE, LOUVER, ROOF, STAGES
from ..core.sizes import Sizes
from .bodies import bodies, cut_open, outline
from .drawing import Point
from .hidden_lines import Body, is_seen, shadow_of, visible_edges
from .job import Job
from .picture import Picture, Span
from .vent_spans import (
    base_spans,
    framing_spans,
    level_spans,
    louver_spans,
    plan_spans,
    roof_spans,
    section_spans,
    vent_spans,
)
from .views import Segment, View

Pieces = Sequence[tuple[Part, Piece]]

X, Y, Z = (1.0, 0.0, 0.0), (0.0, 1.0, 0.0), (0.0, 0.0, 1.0)
#: Along the barn's ridge from its +X end, across it from −Y, from above with the near side of the first below, and from a
#: corner, each axis alike.
ALONG, ACROSS, ABOVE = View(Y, Z, X), View(X, Z, (0.0, -1.0, 0.0)), View(Y, (-1.0, 0.0, 0.0), Z)
_ONE, _HALF = 1.0 / math.sqrt(3.0), 1.0 / math.sqrt(2.0)
CORNER = View((_HALF, _HALF, 0.0), (-_ONE * _HALF, _ONE * _HALF, 2.0 * _ONE * _HALF), (_ONE, -_ONE, _ONE))
#: What covers the rafters, and is left off in the framing plan.
COVERING = ("roof.sheathing", "roof.sheathing.eave")
#: How far the barn's roof is drawn beyond the vent, as a share of half the vent's roof.
ROOF_BEYOND = 0.08


def pieces_of(job: Job, stage: str = "") -> Pieces:
    """The pieces that are made, all or those of a stage."""
    return [(part, piece) for part in job.assembly.parts if stage in ("", part.kind.stage) for piece in part.pieces]


def elevations(job: Job) -> tuple[Picture, Picture]:
    """The whole vent along the barn's ridge and across it, with the barn's roof."""
    whole = bodies(pieces_of(job))
    low, _ = heights(whole)
    along, across = ((vent_spans(job, view, low), barn(job.sizes, view)) for view in (ALONG, ACROSS))
    return (_seen("along", "Elevation along the ridge", whole, ALONG, *along),
            _seen("across", "Elevation across the ridge", whole, ACROSS, *across))


def vertical_section(job: Job) -> Picture:
    """The vent cut plumb beside its axis, clear of a mullion: across the ridge, where a side of the vent faces that way."""
    at = job.sizes
    across = any(abs(at.plan.u(side)[1]) > 0.999 for side in range(at.plan.sides))
    view = ALONG if across else ACROSS
    side = next(side for side in range(at.plan.sides) if dot(at.plan.u(side), view.right) > 0.999)
    off = 0.75 * at.louver.panel(side).mullion_t
    return _cut("section", "Section " + ("across" if across else "along") + " the ridge", pieces_of(job),
                Plane(view.eye, off), view, section_spans(job, side), barn(at, view))


def roof_plan(job: Job) -> Picture:
    """The vent from above."""
    return _seen("plan", "Plan", bodies(pieces_of(job)), ABOVE, plan_spans(job, ABOVE), barn(job.sizes, ABOVE))


def stage_views(job: Job, stage: str) -> tuple[Picture, Picture]:
    """A stage's elevation along the ridge, and it from above: the base's frame, the louver stage cut level, the framing of
    the roof."""
    own = pieces_of(job, stage)
    whole = bodies(own)
    side = {BASE: base_spans, LOUVER: louver_spans, ROOF: roof_spans}[stage](job, *heights(whole))
    elevation = _seen(f"{stage}-along", "Elevation along the ridge", whole, ALONG, side)
    if stage == BASE:
        return elevation, _seen("base-plan", "Plan", whole, ABOVE, plan_spans(job, ABOVE, stage), barn(job.sizes, ABOVE))
    if stage == ROOF:
        bare = bodies((part, piece) for part, piece in own if part.kind.id not in COVERING)
        return elevation, _seen("roof-plan", "Framing plan, sheathing left off", bare, ABOVE, framing_spans(job, ABOVE),
                                barn(job.sizes, ABOVE))
    middle = Plane(Z, level_of(job.sizes))
    return elevation, _cut("louver-plan", "Level section through the panels", own, middle, ABOVE, level_spans(job, ABOVE),
                           barn(job.sizes, ABOVE))


def level_of(at: Sizes) -> float:
    """Where the louver stage is cut level: through the middle of its panels (mm above the ridge)."""
    return (at.louver.rail_top + at.louver.head_under) / 2.0


def exploded(job: Job, stage: str) -> Picture:
    """A stage pulled apart, seen from a corner, each mark pointing at one of its pieces."""
    own = pieces_of(job, stage)
    apart = shifts([outline(part, piece) for part, piece in own], 0.0, 1.0)
    pulled = bodies(own, apart)
    lines = visible_edges(pulled, CORNER)
    marks = _marked(own, pulled, CORNER, lines)
    unseen = [part.mark for part in dict.fromkeys(part for part, _ in own) if part.mark not in dict(marks)]
    caption = f"{STAGES[stage][1]} pulled apart, not to scale" + (f"; not seen: {', '.join(unseen)}" if unseen else "")
    return Picture(f"{stage}-apart", caption, tuple(("edge", segment) for _, segment in lines), marks=marks)


def heights(whole: Iterable[Body]) -> tuple[float, float]:
    """The lowest and the highest point of bodies (mm above the ridge)."""
    reach = [p[2] for body in whole for edge in body.edges for p in (edge.start, edge.stop)]
    return min(reach), max(reach)


def barn(at: Sizes, view: View) -> tuple[tuple[str, Segment], ...]:
    """The barn's roof with the vent: its two slopes, or its ridge as a chain line."""
    half = max(abs(dot(at.roof_corner(corner), view.right)) for corner in range(at.plan.sides))
    reach = half * (1.0 + ROOF_BEYOND)
    if view is ACROSS:
        return (("centre", ((-reach, 0.0), (reach, 0.0))),)
    if view is ABOVE:
        long = (1.0 + ROOF_BEYOND) * max(abs(dot(at.roof_corner(corner), view.up)) for corner in range(at.plan.sides))
        return (("centre", ((at.roof.ridge, -long), (at.roof.ridge, long))),)
    stops = sorted({-reach, min(max(at.roof.ridge, -reach), reach), reach})
    points = [(y, at.roof.height(y)) for y in stops]
    return tuple(("thin", pair) for pair in pairwise(points))


def _seen(name: str, caption: str, whole: Sequence[Body], view: View, spans: Iterable[Span],
          extra: Iterable[tuple[str, Segment]] = ()) -> Picture:
    lines = [("edge", segment) for _, segment in visible_edges(whole, view)]
    return Picture(name, caption, (*lines, *extra), spans=tuple(spans))


def _cut(name: str, caption: str, own: Pieces, plane: Plane, view: View, spans: Iterable[Span],
         extra: Iterable[tuple[str, Segment]] = ()) -> Picture:
    """What is left behind a plane that looks at the eye, and the wood in the plane."""
    kept, cuts = cut_open(own, plane)
    seen = _seen(name, caption, kept, view, spans, extra)
    wood = tuple(tuple(tuple(view.flat(p) for p in loop) for loop in cut.loops) for cut in cuts)
    return Picture(name, caption, seen.lines, wood, seen.spans)


def _marked(own: Pieces, whole: Sequence[Body], view: View, lines: Iterable[tuple[str, Segment]]
            ) -> tuple[tuple[str, Point], ...]:
    """For each mark a point that is seen of one of its pieces: on the largest face whose middle is seen, else on its longest
    line."""
    shadows = [shadow for body in whole for cell in body.cells for shadow in [shadow_of(cell, view)] if shadow]
    faces: dict[str, list[tuple[float, Vec]]] = {}
    for (part, _), body in zip(own, whole, strict=True):
        faces.setdefault(part.mark, []).extend(_faces(body, view))
    found = []
    mark_of = {piece.id: part.mark for part, piece in own}
    for mark, each in faces.items():
        point = _first(sorted(each, reverse=True), lambda p: is_seen(p, view, shadows))
        own_lines = [segment for name, segment in lines if mark_of[name] == mark]
        if point is not None:
            found.append((mark, view.flat(point)))
        elif own_lines:
            (a, b), (c, d) = max(own_lines, key=lambda segment: math.dist(*segment))
            found.append((mark, ((a + c) / 2.0, (b + d) / 2.0)))
    return tuple(found)


def _faces(body: Body, view: View) -> list[tuple[float, Vec]]:
    """The faces that look at the eye: area on paper, and middle."""
    out = []
    for facet in (facet for cell in body.cells for facet in cell):
        area = dot(newell(facet.points), view.eye) / 2.0
        if area > 1.0:
            count = float(len(facet.points))
            x, y, z = (sum(p[axis] for p in facet.points) / count for axis in (0, 1, 2))
            out.append((area, (x, y, z)))
    return out


def _first(faces: Iterable[tuple[float, Vec]], seen: Callable[[Vec], bool]) -> Vec | None:
    return next((middle for _, middle in faces if seen(middle)), None)

