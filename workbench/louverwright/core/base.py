# SPDX-License-Identifier: LGPL-2.1-or-later
"""The base: a frame that sits over the ridge like a saddle, its cladding and its corner boards."""

from __future__ import annotations

import math
from collections.abc import Iterator

from .assembly import HALF_LAP, NOTCH
from .cutting import ENDLESS, Member, Trim
from .feet import cladding_wood, foot
from .geometry import Placement, Plane, dot
from .plan import ENDS, LEFT, RIGHT, above
from .sizes import Sizes
from .spec import Spec

_ANY = (-ENDLESS, ENDLESS)
#: The cut that keeps cladding and corner boards off the roof.
FOOT = "foot, clear of the roof"


def base_members(spec: Spec, at: Sizes) -> Iterator[Member]:
    """Every stick of the base."""
    for side in range(at.plan.sides):
        for end in ENDS:
            yield _leg(spec, at, side, end)
        yield _top_rail(at, side)
        yield from _soles(spec, at, side)
        if spec.bottom_rail_height and at.plan.gable(side):
            yield _bottom_rail(spec, at, side)
        yield from _cladding(spec, at, side)
        for end in ENDS:
            yield _corner_board(spec, at, side, end)


def seat(spec: Spec, at: Sizes) -> tuple[Plane, Plane]:
    """The two planes that legs and soles sit on."""
    return at.roof.slopes(square=-spec.seat_depth)


def _leg(spec: Spec, at: Sizes, side: int, end: int) -> Member:
    base, plan = at.base, at.plan
    trims = (
        Trim("head", (above(base.top),)),
        Trim("foot to the roof", _as_seen(
            at, side, at.roof.slopes(-foot(spec, at, plan.corner(side, end)).wood, -spec.seat_depth)), NOTCH),
        *_over_cap(spec, at, side, "relief over the ridge cap"),
        Trim("corner edge", (at.rule.stop(side, end, base.inner_r, base.frame_r),)),
        Trim("edge to the opening", (plan.short_of(side, end, at.opening(side)),)),
        Trim("half lap for the top rail",
             (plan.inner(side, base.frame_r - base.frame_t / 2.0), above(base.top - base.frame_w)), HALF_LAP, "base.rail.top"),
    )
    return Member(f"base.leg.{at.plan.sort(side)}", side, plan.upright(side), _ANY, (base.inner_r, base.frame_r),
                  trims, end, swapped=end == LEFT)


def _top_rail(at: Sizes, side: int) -> Member:
    return rail(at, "base.rail.top", f"base.leg.{at.plan.sort(side)}", side, at.base.frame_r, at.base.top - at.base.frame_w,
                at.opening(side))


def rail(at: Sizes, kind: str, post_kind: str, side: int, r: float, under: float, opening: float) -> Member:
    """A rail half-lapped into the planks at both ends; ``opening`` is half the clear width between them."""
    base, plan = at.base, at.plan
    t = base.frame_t
    trims = [Trim("end", (at.rule.stop(side, end, r - t, r),)) for end in ENDS]
    trims += [Trim("half lap for the plank", (plan.outer(side, r - t / 2.0), plan.past(side, end, opening)),
                   HALF_LAP, post_kind) for end in ENDS]
    return Member(kind, side, plan.level(side), (under, under + base.frame_w), (r - t, r), tuple(trims))


def _bottom_rail(spec: Spec, at: Sizes, side: int) -> Member:
    base, plan = at.base, at.plan
    opening = at.opening(side)
    low = spec.bottom_rail_height
    trims = tuple(Trim("end against the leg", (plan.past(side, end, opening),)) for end in ENDS)
    return Member("base.rail.bottom", side, plan.level(side), (low, low + base.frame_w),
                  (base.inner_r, base.frame_r), trims)


def _soles(spec: Spec, at: Sizes, side: int) -> Iterator[Member]:
    """Raked pieces on the roof line between the legs: one on each slope that the side's clear width reaches."""
    plan, base = at.plan, at.base
    opening = at.opening(side)
    ridge = Plane((0.0, 1.0, 0.0), at.roof.ridge)
    for slope, over in ((0, ridge.flipped()),) if at.roof.single else ((0, ridge.flipped()), (1, ridge)):
        reach = [-1e6] if at.roof.single else [over.height(plan.point(side, base.frame_r, end * opening, 0.0))
                                               for end in ENDS]
        if min(reach) < -1.0:
            yield _sole(spec, at, side, slope, over, reach)


def _sole(spec: Spec, at: Sizes, side: int, slope: int, over: Plane, reach: list[float]) -> Member:
    plan, base = at.plan, at.base
    opening = at.opening(side)
    bed = seat(spec, at)[slope]
    along = at.roof.rake(plan, side, slope)
    frame = Placement.from_axes(plan.point(side, 0.0, 0.0, 0.0), along, plan.u(side))
    low = _lowest_on(frame, bed, (base.inner_r, base.frame_r))
    trims = [Trim("foot on the roof", (bed,))]
    trims += [Trim("plumb cut at the leg", (plan.past(side, end, opening),)) for end in ENDS]
    if max(reach) > 0.0:
        trims.append(Trim("plumb cut over the ridge", (over,), partner="base.sole"))
    trims += _over_cap(spec, at, side, "relief over the ridge cap")
    end = 0
    if max(reach) > 0.0:
        end = RIGHT if dot(plan.v(side), over.normal) < 0 else LEFT
    return Member(f"base.sole.{at.plan.sort(side)}", side, frame, (low, low + base.frame_w),
                  (base.inner_r, base.frame_r), tuple(trims), end, reversed=end == RIGHT)


def _lowest_on(frame: Placement, bed: Plane, depths: tuple[float, float]) -> float:
    """The lowest y (board frame) at which a plane parallel to the frame's X crosses a slab."""
    local = frame.local_plane(bed)
    return min((local.offset - local.normal[2] * z) / local.normal[1] for z in depths)


def _clearances(spec: Spec, at: Sizes, side: int, wood: float) -> list[Trim]:
    """What keeps cladding off the roof, less the wood to scribe where it is twisted, and off its ridge cap."""
    foot = Trim(FOOT, _as_seen(at, side, at.roof.slopes(raised=spec.cladding_clearance - wood)), NOTCH)
    return [foot, *_over_cap(spec, at, side, "clear of the ridge cap", spec.cladding_clearance)]


def _over_cap(spec: Spec, at: Sizes, side: int, name: str, clearance: float = 0.0) -> list[Trim]:
    """The waste that clears the barn's ridge cap; none where there is no ridge or no cap."""
    if at.roof.single or not spec.ridge_cap_height:
        return []
    return [Trim(name, _as_seen(at, side, at.roof.cap(spec.ridge_cap_height, spec.ridge_cap_width, clearance)), NOTCH)]


def _as_seen(at: Sizes, side: int, planes: tuple[Plane, ...]) -> tuple[Plane, ...]:
    """A waste's planes in the order in which a side has them: half a turn round the vent, an equal roof gives equal sticks."""
    v, u = at.plan.v(side), at.plan.u(side)
    return tuple(sorted(planes, key=lambda plane: (round(dot(plane.normal, v), 6), round(dot(plane.normal, u), 6))))


def _under_rings(spec: Spec, at: Sizes, side: int) -> tuple[Trim, ...]:
    """Heads of cladding and corner boards: clear of the ring above, and of the neighbours' where they run past a corner."""
    louver, plan = at.louver, at.plan
    names = ((side, "head, to the drip ring's slope"),
             *((plan.neighbour(side, end), "clip under the next ring board") for end in ENDS))
    return tuple(
        Trim(name, (plan.slope_plane(k, louver.ring_slope, louver.frame_r, louver.rail_top)
                    .moved(-spec.ring_clearance),)) for k, name in names)


def _cladding(spec: Spec, at: Sizes, side: int) -> Iterator[Member]:
    """One sheet, equal sheets where one is not wide enough, or upright boards of equal width."""
    base, plan = at.base, at.plan
    r0, r1 = base.frame_r, base.frame_r + base.cladding_t
    kind = f"base.cladding.{at.plan.sort(side)}"
    ends = [at.rule.stop(side, end, r0, r1) for end in ENDS]
    common = (*_under_rings(spec, at, side), *(Trim("edge at the corner", (plane,)) for plane in ends))
    sheet = spec.cladding == "sheet"
    half = _reach_along(at, side, ends[1], r1)
    boards = board_edges(2.0 * half, spec.cladding_stock.width, spec.board_gap)
    feet = [_clearances(spec, at, side, cladding_wood(at, side, (left - half, right - half), (r0, r1)))
            for left, right in boards]
    if sheet and len(boards) == 1:
        yield Member(kind, side, plan.upright(side), _ANY, (r0, r1), (*feet[0], *common), sheet=True)
        return
    for index, (left, right) in enumerate(boards):
        edges = (Plane(plan.v(side), right - half), Plane(plan.v(side), left - half).flipped())
        trims = (*feet[index], *common, *(Trim("edge", (plane,)) for plane in edges))
        yield Member(kind, side, plan.upright(side), _ANY, (r0, r1), trims, index=index, sheet=sheet)


def _reach_along(at: Sizes, side: int, stop: Plane, r: float) -> float:
    """How far along the side, at distance ``r`` from the axis, a stop plane lets a slab run (mm)."""
    return -stop.height(at.plan.point(side, r, 0.0, 0.0)) / dot(stop.normal, at.plan.v(side))


def board_edges(whole: float, widest: float, gap: float) -> list[tuple[float, float]]:
    """Left and right edges of equal boards that fill ``whole`` (mm) with gaps, none wider than ``widest``."""
    count = math.ceil((whole + gap) / (widest + gap) - 1e-9)
    width = (whole - (count - 1) * gap) / count
    return [(i * (width + gap), i * (width + gap) + width) for i in range(count)]


def _corner_board(spec: Spec, at: Sizes, side: int, end: int) -> Member:
    base, plan = at.base, at.plan
    r0 = base.frame_r + base.cladding_t
    r1 = r0 + base.corner_t
    stop, edge = at.rule.stop(side, end, r0, r1), plan.half(side, r1) - base.corner_face
    span = (end * edge, end * abs(_reach_along(at, side, stop, r1)))
    trims = (
        *_clearances(spec, at, side, cladding_wood(at, side, (min(span), max(span)), (r0, r1))),
        *_under_rings(spec, at, side),
        Trim("corner edge", (stop,)),
        Trim("edge", (plan.short_of(side, end, edge),)),
    )
    return Member(f"base.corner.{at.plan.sort(side)}", side, plan.upright(side), _ANY, (r0, r1), trims, end,
                  swapped=end == LEFT)
