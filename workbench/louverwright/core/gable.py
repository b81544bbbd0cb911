# SPDX-License-Identifier: LGPL-2.1-or-later
"""The ends of a gable roof: barge boards, and what closes the gables, boards or louvers."""

from __future__ import annotations

import math
from collections.abc import Iterator

from .assembly import NOTCH
from .base import board_edges
from .cutting import ENDLESS, Member, Trim
from .geometry import Z_AXIS, Placement, Plane, add, dot, scale
from .louver import BLUNT, slat_plane
from .plan import ENDS, above, below
from .sizes import CapSize, Sizes
from .spec import Spec

_ANY = (-ENDLESS, ENDLESS)
#: The fascia hangs this far below the soffit, for a drip (mm).
FASCIA_DROP = 6.0
#: The gables' cladding laps this far over the joint of plate and frieze (mm).
GABLE_LAP = 12.0
#: A gable's sill reaches this far beyond the plate's edge where its stock allows (mm).
GABLE_NOSE = 25.0
#: A nose shorter than this does not let water drip clear (mm, common practice).
DRIP_NOSE = 20.0
#: The topmost slat of a gable is this long at least, at its upper inner arris (mm).
LEAST_SLAT = 60.0
#: Gap between the topmost slat of a gable and the peak board over it (mm).
PEAK_GAP = 2.0
#: Barge boards further than this from the gable's rafter are held by lookouts too, which stand this near to each
#: other up the slope (mm, both common practice).
FREE_VERGE, LOOKOUT_BAY = 150.0, 600.0


def fascia_low(cap: CapSize) -> float:
    """Height of the fascia's lower edge."""
    return cap.soffit_top - cap.soffit_t - FASCIA_DROP


def under_sheathing(at: Sizes, side: int) -> Plane:
    """The sheathing's underside on a face; waste above it."""
    cap = at.cap
    return at.plan.slope_plane(side, cap.pitch_of(side), at.real(side, cap.break_r), cap.break_z)


def gable_members(spec: Spec, at: Sizes, side: int) -> Iterator[Member]:
    """Every stick of one gable."""
    for end in ENDS:
        yield _barge(at, side, end)
        yield from _lookouts(spec, at, side, end)
    if spec.gable_end == "boarded":
        yield from _boards(spec, at, side)
    else:
        yield from _louvers(spec, at, side)


def _rising(at: Sizes, side: int, end: int, r: float, marked_outside: bool) -> Placement:
    """X up the slope over the gable's half at ``end``, from the roof's ridge at ``r``; marked face outside, or downward."""
    plan, q = at.plan, math.radians(at.cap.pitch)
    eave = plan.u(plan.neighbour(side, end))
    up = add(scale(eave, -math.cos(q)), scale(Z_AXIS, math.sin(q)))
    down = add(scale(eave, -math.sin(q)), scale(Z_AXIS, -math.cos(q)))
    return Placement.from_axes(plan.point(side, r, 0.0, at.peak), up, plan.u(side) if marked_outside else down)


def barge_width(at: Sizes) -> float:
    """Width of the barge boards that covers the ends of ridge, fascia and soffit, with a lap for a drip (mm)."""
    cap = at.cap
    eave = cap.under(cap.plate_r) - cap.soffit_top + cap.soffit_t
    return max(at.peak - at.ridge_bottom, eave) * math.cos(math.radians(cap.pitch)) + FASCIA_DROP


def _barge(at: Sizes, side: int, end: int) -> Member:
    """On the ends of ridge, fascias and soffits, under the sheathing's edge."""
    cap, plan = at.cap, at.plan
    frame = _rising(at, side, end, cap.verge_r, True)
    wide, upright = barge_width(at), frame.y[2] > 0.0
    trims = (
        Trim("plumb cut at the peak", (plan.short_of(side, end, 0.0),), partner="roof.barge"),
        Trim("plumb cut at the eave", (plan.outer(plan.neighbour(side, end), at.eave(plan.neighbour(side, end))),)),
        Trim("level foot", (below(fascia_low(cap)),)),
    )
    return Member("roof.barge", side, frame, (-wide, 0.0) if upright else (0.0, wide), (0.0, cap.fascia_t), trims, end,
                  swapped=not upright)


def verge_reach(at: Sizes) -> float:
    """How far the sheathing and the barge boards stand out from the gable's rafter, level (mm)."""
    return at.cap.verge_r - at.cap.plate_r


def lookout_lines(at: Sizes) -> list[float]:
    """Where the middles of a barge board's lookouts lie down the slope from the ridge's axis, in the sheathing's
    underside (mm); none for a narrow verge.

    The lowest stands over the plate, the others evenly between it and the ridge: the ridge holds the barge board at the
    peak and the fascia at the eave.
    """
    cap, fall = at.cap, math.radians(at.cap.pitch)
    if verge_reach(at) <= FREE_VERGE:
        return []
    over_plate = (at.peak - cap.plate_top - cap.rafter_d * math.cos(fall)) / math.sin(fall)
    low = over_plate - cap.rafter_t / 2.0
    head = cap.head_r / math.cos(fall) + cap.rafter_t / 2.0
    count = max(1, math.ceil((low - head) / LOOKOUT_BAY))
    return [head + (low - head) * (k + 1) / count for k in range(count)]


def _lookouts(spec: Spec, at: Sizes, side: int, end: int) -> Iterator[Member]:
    """Short pieces of rafter stock from the gable's rafter, or its cladding, to the barge board, under the sheathing."""
    cap, plan = at.cap, at.plan
    boarded = spec.gable_end == "boarded"
    inner = cap.plate_r + (spec.cladding_stock.thickness if boarded else 0.0)
    trims = (Trim(f"end against the {'cladding' if boarded else 'rafter'}", (plan.inner(side, inner),),
                  partner="roof.gable.board" if boarded else "roof.common"),
             Trim("end against the barge board", (plan.outer(side, cap.verge_r),), partner="roof.barge"))
    up = _rising(at, side, end, 0.0, True).x
    along = scale(plan.u(side), float(end))
    for index, down in enumerate(lookout_lines(at), start=1):
        frame = Placement.from_axes(add(plan.point(side, 0.0, 0.0, at.peak), scale(up, -down)), along, up)
        half = cap.rafter_t / 2.0
        yield Member("roof.lookout", side, frame, (-cap.rafter_d, 0.0), (-half, half), trims, end, index,
                     reversed=end < 0)


def _boards(spec: Spec, at: Sizes, side: int) -> Iterator[Member]:
    """One sheet, equal sheets, or upright boards, over the gable's rafters and the plate's edge, notched for the ridge."""
    cap, plan = at.cap, at.plan
    half = plan.half(side, cap.plate_r)
    common = (
        Trim("foot", (below(at.louver.top - GABLE_LAP),)),
        *(Trim("head to the roof's slope", (under_sheathing(at, eave),), partner="roof.sheathing") for eave in at.eaves),
        Trim("notch for the ridge", (above(at.ridge_bottom),
                                     *(plan.short_of(side, end, cap.head_r) for end in ENDS)), NOTCH, "roof.ridge"),
    )
    thick = (cap.plate_r, cap.plate_r + spec.cladding_stock.thickness)
    v, sheet = plan.v(side), spec.cladding == "sheet"
    boards = board_edges(2.0 * half, spec.cladding_stock.width, spec.board_gap)
    for index, (left, right) in enumerate(boards):
        edges = (Plane(v, right - half), Plane(v, left - half).flipped())
        trims = (*common, *(Trim("edge", (plane,)) for plane in edges))
        yield Member("roof.gable.board", side, plan.upright(side), _ANY, thick, trims, index=index, sheet=sheet)


# ---- louvers in a gable


def _under_rafter(at: Sizes, side: int, end: int, less: float = 0.0) -> Plane:
    """The lower edge of the gable's rafter at ``end``, or a plane ``less`` mm below it; waste above it."""
    return under_sheathing(at, at.plan.neighbour(side, end)).moved(-at.cap.rafter_d - less)


def gable_half(at: Sizes, z: float) -> float:
    """Half the clear width between a gable's stiles at a height (mm); negative above their peak."""
    fall = math.radians(at.cap.pitch)
    peak = at.peak - (at.cap.rafter_d + at.louver.stile_t) / math.cos(fall)
    return (peak - z) / math.tan(fall)


def gable_slats(at: Sizes) -> int:
    """Slats in each gable without the sill: as many as the panels' spacing puts under its peak; 0 where it is too low."""
    louver = at.louver
    room = at.ridge_bottom - at.cap.plate_top
    top = min(room, room + (gable_half(at, at.ridge_bottom) - LEAST_SLAT / 2.0) * math.tan(math.radians(at.cap.pitch)))
    return max(0, math.floor((top - louver.rise - louver.slat_plumb) / louver.spacing + 1e-9))


def nose(spec: Spec, at: Sizes) -> float:
    """How far a gable's sill reaches beyond the plate's edge (mm): what its stock allows."""
    slope = math.radians(at.louver.sill_slope)
    most = (spec.slat_stock.width - at.louver.slat_t * math.tan(slope)) * math.cos(slope) - at.louver.depth
    return float(max(0.0, min(GABLE_NOSE, most)))


def _louvers(spec: Spec, at: Sizes, side: int) -> Iterator[Member]:
    """Sill on its bed, stiles under the rafters, slats between them, a board in the peak, and the screen."""
    yield _bed(at, side)
    yield _sill(spec, at, side)
    yield _apron(spec, at, side)
    for end in ENDS:
        yield _stile(at, side, end)
    for index in range(1, gable_slats(at) + 1):
        yield _slat(at, side, index)
    yield _peak(spec, at, side)
    if spec.screen:
        yield _screen(at, side)
        yield from _battens(at, side)


def _plane(at: Sizes, side: int, index: int, upper: bool = False) -> Plane:
    return slat_plane(at, side, index, upper, at.cap.plate_r, at.cap.plate_top)


def _under_rafters(at: Sizes, side: int, partner: str, less: float = 0.0) -> tuple[Trim, ...]:
    name = "end under the rafter" if partner == "roof.common" else "end against the stile"
    return tuple(Trim(name, (_under_rafter(at, side, end, less),), partner=partner) for end in ENDS)


def _bed(at: Sizes, side: int) -> Member:
    """A strip between plate and sill, its thin edge outside left blunt; its marked face lies below."""
    louver, cap, plan = at.louver, at.cap, at.plan
    slope = math.tan(math.radians(louver.sill_slope))
    deep = min(louver.frame_t, louver.frame_t / slope, louver.depth)
    trims = (Trim("slope of the sill", (_plane(at, side, 0).flipped(),)), *_under_rafters(at, side, "roof.common"))
    frame = Placement.from_axes(plan.point(side, 0.0, 0.0, 0.0), plan.v(side), (0.0, 0.0, -1.0))
    return Member("roof.gable.bed", side, frame, (cap.plate_r - deep, cap.plate_r - BLUNT / slope),
                  (-cap.plate_top - deep * slope, -cap.plate_top), trims)


def _sill(spec: Spec, at: Sizes, side: int) -> Member:
    """Like a panel's, with a nose over the plate's edge."""
    louver, cap, plan = at.louver, at.cap, at.plan
    trims = (Trim("plumb outer edge", (plan.outer(side, cap.plate_r + nose(spec, at)),)),
             Trim("plumb inner edge", (plan.inner(side, cap.plate_r - louver.depth),)),
             *_under_rafters(at, side, "roof.common"))
    frame = plan.sloping(side, louver.sill_slope, cap.plate_r, cap.plate_top)
    return Member("roof.gable.sill", side, frame, _ANY, (0.0, louver.slat_t), trims)


def _apron(spec: Spec, at: Sizes, side: int) -> Member:
    """On the plate's edge under the sill's nose, over the joint of plate and frieze, its upper edge to the sill's slope."""
    cap, plan = at.cap, at.plan
    half = plan.half(side, cap.plate_r)
    trims = (Trim("top edge to the sill's slope", (_plane(at, side, 0).flipped(),), partner="roof.gable.sill"),
             *(Trim("end", (plan.past(side, end, half),)) for end in ENDS))
    return Member("roof.gable.apron", side, plan.level(side), (at.louver.top - GABLE_LAP, ENDLESS),
                  (cap.plate_r, cap.plate_r + spec.trim_stock.thickness), trims)


def _stile(at: Sizes, side: int, end: int) -> Member:
    """Flat under the rafter's lower edge; the slats are screwed to it through its upper face before it goes in."""
    louver, cap, plan = at.louver, at.cap, at.plan
    frame = _rising(at, side, end, cap.plate_r, False)
    outward = dot(frame.y, plan.u(side)) > 0.0
    trims = (
        Trim("foot on the sill", (_plane(at, side, 0, upper=True).flipped(),), partner="roof.gable.sill"),
        Trim("plumb cut at the peak", (plan.short_of(side, end, 0.0),), partner="roof.gable.stile"),
        Trim("level cut under the ridge", (above(at.ridge_bottom),), partner="roof.ridge"),
    )
    return Member("roof.gable.stile", side, frame, (-louver.depth, 0.0) if outward else (0.0, louver.depth),
                  (cap.rafter_d, cap.rafter_d + louver.stile_t), trims, end, swapped=not outward)


def _slat(at: Sizes, side: int, index: int) -> Member:
    louver, cap, plan = at.louver, at.cap, at.plan
    trims = [*_under_rafters(at, side, "roof.gable.stile", louver.stile_t)]
    if not louver.square_edges:
        trims += [Trim("plumb outer edge", (plan.outer(side, cap.plate_r),)),
                  Trim("plumb inner edge", (plan.inner(side, cap.plate_r - louver.depth),))]
    frame = plan.sloping(side, louver.slat_angle, cap.plate_r, cap.plate_top + index * louver.spacing)
    width = louver.slat_edges if louver.square_edges else _ANY
    return Member("roof.gable.slat", side, frame, width, (0.0, louver.slat_t), tuple(trims), index=index)


def _peak(spec: Spec, at: Sizes, side: int) -> Member:
    """Closes the peak over the topmost slat, where no further slat has room."""
    louver, cap, plan = at.louver, at.cap, at.plan
    slats, thick = gable_slats(at), spec.trim_stock.thickness
    over = slats * louver.spacing + louver.slat_plumb + thick * math.tan(math.radians(louver.slat_angle)) + PEAK_GAP
    low = cap.plate_top + max((slats + 1) * louver.spacing, over)
    trims = (Trim("lower edge", (below(low),)), *_under_rafters(at, side, "roof.gable.stile", louver.stile_t),
             Trim("level cut under the ridge", (above(at.ridge_bottom),), partner="roof.ridge"))
    return Member("roof.gable.peak", side, plan.level(side), _ANY, (cap.plate_r - thick, cap.plate_r), trims)


def _mesh_r(at: Sizes) -> float:
    """The inner edges of a gable's sill and stiles, which the mesh lies on."""
    return at.cap.plate_r - at.louver.depth


def _mesh_low(at: Sizes) -> float:
    """Height of the mesh's lower edge: at the lower arris of the sill's inner edge."""
    return at.cap.plate_top + at.louver.sill_rise


def _screen(at: Sizes, side: int) -> Member:
    """Mesh stapled to the inner edges of sill and stiles."""
    inner = _mesh_r(at)
    trims = (Trim("lower edge", (below(_mesh_low(at)),)), Trim("upper edge", (above(at.ridge_bottom),)),
             *(Trim("edge along the stile", (_under_rafter(at, side, end),), partner="roof.gable.stile") for end in ENDS))
    return Member("roof.gable.screen", side, at.plan.level(side), _ANY, (inner - at.louver.screen_t, inner), trims, sheet=True)


def _battens(at: Sizes, side: int) -> Iterator[Member]:
    """Over the mesh's edges: one along the sill, and one up each stile to the peak."""
    louver, cap, plan = at.louver, at.cap, at.plan
    outer, low = _mesh_r(at) - louver.screen_t, _mesh_low(at)
    high = low + louver.batten_w
    yield Member("roof.gable.batten.level", side, plan.level(side), (low, high), (outer - louver.batten_t, outer),
                 tuple(Trim("end along the stile", (_under_rafter(at, side, end),)) for end in ENDS))
    for end in ENDS:
        frame = _rising(at, side, end, outer, True)
        near, far = cap.rafter_d, cap.rafter_d + louver.batten_w
        trims = (Trim("foot on the level batten", (below(high),), partner="roof.gable.batten.level"),
                 Trim("plumb cut at the peak", (plan.short_of(side, end, 0.0),), partner="roof.gable.batten.rake"),
                 Trim("level cut under the ridge", (above(at.ridge_bottom),), partner="roof.ridge"))
        upright = frame.y[2] > 0.0
        yield Member("roof.gable.batten.rake", side, frame, (-far, -near) if upright else (near, far),
                     (-louver.batten_t, 0.0), trims, end, swapped=not upright)
