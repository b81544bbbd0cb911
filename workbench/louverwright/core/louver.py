# SPDX-License-Identifier: LGPL-2.1-or-later
"""The louver stage: the frame, a louvered panel in every side, the drip ring, trim and screen."""

from __future__ import annotations

import math
from collections.abc import Iterator

from .assembly import DADO, HALF_LAP
from .base import rail
from .cutting import ENDLESS, Member, Trim
from .geometry import Placement, Plane, scale
from .plan import ENDS, LEFT, Plan, above, below
from .sizes import LouverSize, Sizes
from .spec import Spec

_ANY = (-ENDLESS, ENDLESS)
#: The screen's lower batten is set this far below the sill's upper arris (mm).
BATTEN_DROP = 2.0
#: The thin edge of a sill's bed is left this thick: a feather edge breaks off (mm).
BLUNT = 2.0


def louver_members(spec: Spec, at: Sizes) -> Iterator[Member]:
    """Every stick of the louver stage."""
    louver = at.louver
    for side in range(at.plan.sides):
        sort = at.plan.sort(side)
        opening = at.plan.half(side, louver.frame_r) - at.base.post_face
        for end in ENDS:
            yield _post(at, f"louver.post.{sort}", side, end)
        for kind, under in (("louver.rail.bottom", at.base.top), ("louver.rail.top", louver.rail_under)):
            yield rail(at, kind, f"louver.post.{sort}", side, louver.frame_r, under, opening)
        yield from _panel(spec, at, side)
        yield _ring(at, side)
        for end in ENDS:
            yield _trim(spec, at, f"louver.trim.{sort}", side, end)
        yield _frieze(spec, at, side)
        if spec.screen:
            yield from _screen(at, side)


def _post(at: Sizes, kind: str, side: int, end: int) -> Member:
    louver, plan = at.louver, at.plan
    r0, r1 = louver.frame_r - louver.frame_t, louver.frame_r
    half = plan.inner(side, r1 - louver.frame_t / 2.0)
    trims = (
        Trim("foot", (below(at.base.top),)),
        Trim("head", (above(louver.top),)),
        Trim("corner edge", (at.rule.stop(side, end, r0, r1),)),
        Trim("edge to the opening", (plan.short_of(side, end, plan.half(side, r1) - at.base.post_face),)),
        Trim("half lap for the bottom rail", (half, below(louver.rail_top)), HALF_LAP, "louver.rail.bottom"),
        Trim("half lap for the top rail", (half, above(louver.rail_under)), HALF_LAP, "louver.rail.top"),
    )
    return Member(kind, side, plan.upright(side), _ANY, (r0, r1), trims, end, swapped=end == LEFT)


# ---- one louvered panel


def _panel(spec: Spec, at: Sizes, side: int) -> Iterator[Member]:
    louver = at.louver
    yield _bed(at, side)
    yield _slat(at, side, 0, 0)
    for end in ENDS:
        yield _stile(spec, at, side, end)
    mullion = louver.panel(side).mullion_t > 0.0
    if mullion:
        yield _mullion(spec, at, side)
    for index in range(1, louver.slats + 1):
        for end in ENDS if mullion else (0,):
            yield _slat(at, side, index, end, spec.dado_depth)
    yield _head(at, side)


def slat_plane(at: Sizes, side: int, index: int, upper: bool, r: float, z: float) -> Plane:
    """The plane of a slat's underside (waste below it), or of its upper face (waste above it).

    The sill, slat 0, begins at (r, z).
    """
    louver = at.louver
    top = at.plan.slope_plane(side, louver.slope(index), r, z + index * louver.spacing)
    return top.moved(louver.slat_t) if upper else top.flipped()


def _slat_plane(at: Sizes, side: int, index: int, upper: bool = False) -> Plane:
    return slat_plane(at, side, index, upper, at.louver.frame_r, at.louver.rail_top)


def _depth_trims(at: Sizes, side: int) -> tuple[Trim, Trim]:
    """The two plumb edges of everything that fills the panel's depth."""
    plan, louver = at.plan, at.louver
    return (Trim("plumb outer edge", (plan.outer(side, louver.frame_r),)),
            Trim("plumb inner edge", (plan.inner(side, louver.panel_r),)))


def _ends(plan: Plan, side: int, half: float, name: str) -> tuple[Trim, ...]:
    return tuple(Trim(name, (plan.past(side, end, half),)) for end in ENDS)


def _bed(at: Sizes, side: int) -> Member:
    """A strip between rail and sill, as deep as the rail where its height allows, its thin edge outside left blunt; its marked
    face lies below."""
    louver, plan = at.louver, at.plan
    slope = math.tan(math.radians(louver.sill_slope))
    deep = min(louver.frame_t, louver.frame_t / slope, louver.depth)
    under_sill = _slat_plane(at, side, 0).flipped()
    trims = (Trim("slope of the sill", (under_sill,)), *_ends(plan, side, louver.panel(side).half, "end"))
    frame = Placement.from_axes(plan.point(side, 0.0, 0.0, 0.0), plan.v(side), (0.0, 0.0, -1.0))
    return Member("louver.bed", side, frame, (louver.frame_r - deep, louver.frame_r - BLUNT / slope),
                  (-louver.rail_top - deep * slope, -louver.rail_top), trims)


def _slat(at: Sizes, side: int, index: int, end: int, dado: float = 0.0) -> Member:
    """A slat, or with index 0 the sill, which runs under the stiles; ``end`` tells the halves at a mullion."""
    louver, plan, panel = at.louver, at.plan, at.louver.panel(side)
    square = index > 0 and louver.square_edges
    trims = [] if square else [*_depth_trims(at, side)]
    if index == 0:
        trims += _ends(plan, side, panel.half, "end")
    elif end == 0:
        trims += _ends(plan, side, panel.clear_half + dado, "end in the dado")
    else:
        trims += [Trim("end in the dado", (plan.past(side, end, panel.clear_half + dado),)),
                  Trim("end in the dado", (plan.short_of(side, end, panel.mullion_t / 2.0 - dado),))]
    frame = plan.sloping(side, louver.slope(index), louver.frame_r, louver.slat_under(index))
    width = louver.slat_edges if square else _ANY
    return Member("louver.slat" if index else "louver.sill", side, frame, width, (0.0, louver.slat_t), tuple(trims), end,
                  index)


def _dados(spec: Spec, at: Sizes, side: int, floor: Plane) -> list[Trim]:
    """Housings for the slats: floor, lower wall on the slat's underside, upper wall with the fit."""
    return [Trim(f"dado {i} for the slat",
                 (floor, _slat_plane(at, side, i).flipped(),
                  _slat_plane(at, side, i, upper=True).flipped().moved(-spec.dado_fit)),
                 DADO, "louver.slat")
            for i in range(1, at.louver.slats + 1)]


def _stile(spec: Spec, at: Sizes, side: int, end: int) -> Member:
    louver, plan, panel = at.louver, at.plan, at.louver.panel(side)
    face = scale(plan.v(side), -float(end))
    frame = Placement.from_axes((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), face)
    floor = plan.short_of(side, end, panel.clear_half).moved(-spec.dado_depth)
    trims = (
        Trim("foot on the sill", (_slat_plane(at, side, 0, upper=True).flipped(),), partner="louver.sill"),
        Trim("head", (above(louver.rail_under - spec.panel_clearance),)),
        *_depth_trims(at, side),
        *_dados(spec, at, side, floor),
    )
    return Member("louver.stile", side, frame, _ANY, (-panel.half, -panel.clear_half), trims, end,
                  swapped=end != LEFT)


def _mullion(spec: Spec, at: Sizes, side: int) -> Member:
    louver, plan = at.louver, at.plan
    half = louver.panel(side).mullion_t / 2.0
    frame = Placement.from_axes((0.0, 0.0, 0.0), (0.0, 0.0, 1.0), plan.v(side))
    trims = [Trim("foot on the sill", (_slat_plane(at, side, 0, upper=True).flipped(),), partner="louver.sill"),
             Trim("head under the head rail", (above(louver.head_under),)), *_depth_trims(at, side)]
    for end in ENDS:
        trims += _dados(spec, at, side, plan.past(side, end, half).moved(-spec.dado_depth))
    return Member("louver.mullion", side, frame, _ANY, (-half, half), tuple(trims))


def _head(at: Sizes, side: int) -> Member:
    louver, plan = at.louver, at.plan
    trims = (*_depth_trims(at, side), *_ends(plan, side, louver.panel(side).clear_half, "end against the stile"))
    return Member("louver.head", side, plan.flat(side), _ANY,
                  (louver.head_under, louver.head_under + louver.stile_t), trims)


# ---- what goes round the frame


def _ring(at: Sizes, side: int) -> Member:
    louver, plan = at.louver, at.plan
    frame = plan.sloping(side, louver.ring_slope, louver.frame_r, louver.rail_top)
    tilt = math.radians(louver.ring_slope)
    nose = -((louver.ring_r - louver.frame_r) - louver.ring_t * math.sin(tilt)) / math.cos(tilt)
    trims = [Trim("plumb inner edge", (plan.inner(side, louver.frame_r),))]
    trims += [Trim("mitre at the corner", (plan.mitre(side, end),), partner="louver.ring") for end in ENDS]
    return Member("louver.ring", side, frame, (nose, ENDLESS), (0.0, louver.ring_t), tuple(trims))


def ring_top(louver: LouverSize, plan: Plan, side: int) -> Plane:
    """The ring's upper face; waste above it."""
    return plan.slope_plane(side, louver.ring_slope, louver.frame_r, louver.rail_top).moved(louver.ring_t)


def _trim(spec: Spec, at: Sizes, kind: str, side: int, end: int) -> Member:
    louver, plan = at.louver, at.plan
    r0, r1 = louver.frame_r, louver.frame_r + louver.trim_t
    foot = ring_top(louver, plan, side).moved(spec.trim_clearance).flipped()
    trims = (
        Trim("foot over the drip ring", (foot,), partner="louver.ring"),
        Trim("head", (above(louver.top),)),
        Trim("corner edge", (at.rule.stop(side, end, r0, r1),)),
        Trim("edge to the opening", (plan.short_of(side, end, louver.panel(side).trim_inner),)),
    )
    return Member(kind, side, plan.upright(side), _ANY, (r0, r1), trims, end, swapped=end == LEFT)


def _frieze(spec: Spec, at: Sizes, side: int) -> Member:
    louver, plan = at.louver, at.plan
    low = louver.rail_under - spec.panel_clearance - louver.trim_lap
    return Member("louver.frieze", side, plan.level(side), (low, louver.top),
                  (louver.frame_r, louver.frame_r + louver.trim_t),
                  _ends(plan, side, louver.panel(side).trim_inner, "end against the trim"))


# ---- the screen behind the panel


def screen_heights(louver: LouverSize) -> tuple[float, float]:
    """Lower and upper edge of the mesh: it laps the sill's inner edge and the head rail's."""
    sill = louver.rail_top + louver.sill_rise + louver.sill_plumb - BATTEN_DROP
    return sill - louver.batten_w, louver.head_under + louver.stile_t


def _screen(at: Sizes, side: int) -> Iterator[Member]:
    louver, plan = at.louver, at.plan
    low, high = screen_heights(louver)
    r1 = louver.panel_r
    r0 = r1 - louver.screen_t
    heads = (Trim("lower edge", (below(low),)), Trim("upper edge", (above(high),)))
    half = louver.panel(side).half
    yield Member("louver.screen", side, plan.level(side), (low, high), (r0, r1),
                 _ends(plan, side, half, "end"), sheet=True)
    strip = (louver.batten_r, r0)
    for end in ENDS:
        edge = (half - louver.batten_w, half)
        across = (-edge[1], -edge[0]) if end > 0 else edge
        yield Member("louver.batten.upright", side, plan.upright(side), across, strip, heads, end)
    if louver.panel(side).mullion_t:
        across = (-louver.batten_w / 2.0, louver.batten_w / 2.0)
        between = (Trim("foot on the level batten", (below(low + louver.batten_w),), partner="louver.batten.level"),
                   Trim("head under the level batten", (above(high - louver.batten_w),), partner="louver.batten.level"))
        yield Member("louver.batten.upright", side, plan.upright(side), across, strip, between)
    for index, z in enumerate((low, high - louver.batten_w), start=1):
        yield Member("louver.batten.level", side, plan.level(side), (z, z + louver.batten_w), strip,
                     _ends(plan, side, half - louver.batten_w, "end against the upright"), index=index)
