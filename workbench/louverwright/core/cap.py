# SPDX-License-Identifier: LGPL-2.1-or-later
"""The roof stage: cap plate, king post, rafters, soffit, fascia, sheathing and what carries a mast."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator

from .assembly import GROOVE, HALF_LAP, NOTCH, SHAPED_EDGE
from .cutting import ENDLESS, Member, Trim
from .dimensions import MAST_GAP
from .gable import fascia_low, gable_members, under_sheathing
from .geometry import Z_AXIS, Bore, Placement, Plane, add, cross, dot, scale, sub
from .plan import ENDS, LEFT, RIGHT, above, below
from .sizes import Sizes
from .spec import Spec

_ANY = (-ENDLESS, ENDLESS)
#: Length of a gusset along each of its two plates, and at least half the gap to the next (mm).
GUSSET_LEG, GUSSET_GAP = 180.0, 10.0
#: Gap between the soffit and the trim behind it (mm).
SOFFIT_GAP = 2.0
#: The mast's step: length, depth of the mast's bore, of its drain groove (mm) and the weep hole's diameter.
STEP_LENGTH, STEP_BORE, STEP_GROOVE, WEEP = 160.0, 22.0, 6.0, 8.0


def roof_members(spec: Spec, at: Sizes) -> Iterator[Member]:
    """Every stick of the roof stage.  A hip's side is the number of its corner (between sides k and k + 1)."""
    for side in range(at.plan.sides):
        yield _plate(at, side)
    if at.plan.sides != 4:
        for corner in range(at.plan.sides):
            yield _gusset(at, corner)
    if at.cap.post_flats:
        yield _king_post(at)
    else:
        yield _ridge(at)
    for corner in range(0 if at.cap.gables else at.plan.sides):
        yield _hip(at, corner)
    for side in at.eaves:
        yield from _rafters(at, side)
        yield from _bed_mould(at, side)
        yield _soffit(at, side)
        yield _fascia(at, side)
        yield from _sheathing(spec, at, side)
    for side in at.cap.gables:
        yield from gable_members(spec, at, side)
    if at.cap.mast:
        yield _bearer(at)
        yield _step(at)


def _plate(at: Sizes, side: int) -> Member:
    """Half-lapped at square corners (gable-side plates lie under), mitred over a gusset at all others."""
    cap, plan = at.cap, at.plan
    inner = cap.plate_r - cap.plate_w
    if plan.sides != 4:
        trims = [Trim("mitre at the corner", (plan.mitre(side, end),), partner="roof.plate") for end in ENDS]
    else:
        half = cap.plate_top - cap.plate_t / 2.0
        face = above(half) if plan.through(side) else below(half)
        trims = []
        for end in ENDS:
            next_side = plan.neighbour(side, end)
            trims.append(Trim("end", (plan.outer(next_side, cap.plate_r),)))
            trims.append(Trim("half lap at the corner", (face, plan.inner(next_side, inner).flipped()),
                              HALF_LAP, "roof.plate"))
    return Member("roof.plate", side, plan.flat(side), (-cap.plate_r, -inner),
                  (cap.plate_top - cap.plate_t, cap.plate_top), tuple(trims))


def _gusset(at: Sizes, corner: int) -> Member:
    """A triangle under a mitred corner of the plates, inside the louver frame: it holds them against the hips' thrust."""
    cap, plan, r = at.cap, at.plan, at.gusset_r
    across = plan.across(corner)
    tip = r / math.cos(math.pi / plan.sides)
    leg = min(GUSSET_LEG, plan.half(corner, r) - GUSSET_GAP)
    high = leg * math.sin(math.pi / plan.sides)
    trims = (*(Trim("edge along the louver frame", (plan.outer(side, r),)) for side in (corner, corner + 1)),
             Trim("inner edge", (plan.past_corner(corner, tip - high).flipped(),)))
    under = cap.plate_top - cap.plate_t
    frame = Placement.from_axes((0.0, 0.0, 0.0), across, Z_AXIS)
    return Member("roof.gusset", corner, frame, _ANY, (under - cap.sheathing_t, under), trims, sheet=True)


def _king_post(at: Sizes) -> Member:
    """Square stock turned so that its flats meet the hips; further flats are ripped where the plan asks for them."""
    cap, plan = at.cap, at.plan
    z = plan.toward(0)
    frame = Placement.from_axes((0.0, 0.0, 0.0), Z_AXIS, z)
    ways = [plan.toward(k) for k in range(plan.sides)]
    if cap.post_flats > plan.sides:
        ways += [plan.u(k) for k in range(plan.sides)]
    flats = [Trim("flat for a rafter", (Plane(way, cap.post_apothem),)) for way in ways]
    bores: tuple[tuple[str, Bore], ...] = ()
    if cap.mast:
        hole = Bore((0.0, 0.0, cap.post_bottom), Z_AXIS, cap.post_top - cap.post_bottom, cap.mast)
        bores = (("bore for the mast, right through", hole),)
    trims = (Trim("foot", (below(cap.post_bottom),)), Trim("head", (above(cap.post_top),)), *flats)
    a = cap.post_apothem
    return Member("roof.kingpost", 0, frame, (-a, a), (-a, a), trims, bores=bores)


def _ridge(at: Sizes) -> Member:
    """Between the hipped ends, or out to the barge boards; bevelled to the faces and as deep as the rafters' plumb cuts."""
    cap, plan = at.cap, at.plan
    side = next(side for side in at.eaves if cap.gables or plan.long(side))
    trims = [Trim("top edge to the roof's slope" if cap.gables or plan.long(each) else "corner under the end face",
                  (under_sheathing(at, each),), partner="roof.sheathing") for each in at.eaves]
    for end in ENDS:
        next_side = plan.neighbour(side, end)
        trims.append(Trim("end for the barge boards", (plan.outer(next_side, cap.verge_r),), partner="roof.barge")
                     if cap.gables else
                     Trim("end for the common", (plan.outer(next_side, at.ridge_r(next_side) + cap.head_r),),
                          partner="roof.common"))
    middle = at.ridge_r(side)
    return Member("roof.ridge", side, plan.level(side), (at.ridge_bottom, ENDLESS),
                  (middle - cap.head_r, middle + cap.head_r), tuple(trims))


def _hip(at: Sizes, corner: int) -> Member:
    cap, plan = at.cap, at.plan
    out = at.hip_toward(corner)
    across = cross(Z_AXIS, out)
    sides = (corner, corner + 1)
    slope = math.radians(cap.hip_slope)
    along = add(scale(out, -math.cos(slope)), scale(Z_AXIS, math.sin(slope)))
    peak = at.hip_point(corner, cap.break_r, cap.break_z)
    frame = Placement.from_axes(peak, along, across)
    tip = Plane.through(plan.corner_point(corner, cap.plate_r), scale(out, -1.0))
    trims = (
        *(_top(at, side, name) for side, name in zip(sides, ("left backing", "right backing"), strict=True)),
        *_hip_head(at, corner),
        *(Trim("tail, plumb cheek", (plan.outer(side, at.tail(side)),), partner="roof.fascia") for side in sides),
        Trim("level tail for the soffit", (below(cap.soffit_top),), partner="roof.soffit"),
        Trim("seat on the plate", (below(cap.plate_top), tip), NOTCH, "roof.plate"),
    )
    half = cap.rafter_t / 2.0
    return Member("roof.hip", corner, frame, (-cap.rafter_d, _upper(at)), (-half, half), trims)


def _upper(at: Sizes) -> float:
    """How far a rafter's blank reaches above the faces' pitch: to wherever a flared eave's trims leave it."""
    return ENDLESS if at.cap.flared else 0.0


def _top(at: Sizes, side: int, name: str) -> Trim:
    """The waste over a rafter: above the face, or above both pitches of a flared one."""
    if not at.cap.flared:
        return Trim(name, (under_sheathing(at, side),), partner="roof.sheathing")
    return Trim(f"{name} to both pitches", (under_sheathing(at, side), _under_eave(at, side)), SHAPED_EDGE, "roof.sheathing")


def _hip_head(at: Sizes, corner: int) -> list[Trim]:
    """At the king post one plumb cut; at the end of a ridge two cheeks between the commons that meet there."""
    cap, plan = at.cap, at.plan
    if cap.post_flats:
        return [Trim("plumb cut at the king post", (plan.past_corner(corner, cap.post_apothem).flipped(),),
                     partner="roof.kingpost")]
    return [Trim("plumb cheek against the common", (plan.inner(side, at.ridge_r(side) + cap.head_r),), partner="roof.common")
            for side in (corner, corner + 1)]


def _under_eave(at: Sizes, side: int) -> Plane:
    """The sheathing's underside at the eave, which is the face's where the roof is not flared; waste above it."""
    cap = at.cap
    return at.plan.slope_plane(side, cap.eave_pitch_of(side), at.real(side, cap.break_r), cap.break_z)


def rafter_lines(at: Sizes, side: int) -> list[float]:
    """Where along a side its jacks and commons stand (mm): evenly between the plate's corners.

    On a rectangle's long side what stands in the square is pulled apart to the ends of the ridge, and commons stand
    evenly between.  Under a gable roof the first and the last stand flush with the plate's ends.
    """
    cap, ridge = at.cap, at.ridge_half(side)
    if cap.gables:
        reach = at.plan.half(side, cap.plate_r) - cap.rafter_t / 2.0
        return [2.0 * reach * i / (cap.rafters + 1) - reach for i in range(cap.rafters + 2)]
    half = cap.plate_r * at.plan.slope
    bay = 2.0 * half / (cap.rafters + 1)
    lines = [bay * (i + 1) - half for i in range(cap.rafters)]
    if not ridge:
        return lines
    step = 2.0 * ridge / (cap.ridge_commons + 1)
    run = cap.runs[(side + 1) % 2]
    return [*(run * line - ridge for line in lines if line < -1e-6),
            *(step * i - ridge for i in range(cap.ridge_commons + 2)),
            *(run * line + ridge for line in lines if line > 1e-6)]


def _hip_side(at: Sizes, side: int, end: int) -> Plane:
    """The cheek of the hip at an end of a side that faces the side's middle; waste beyond it."""
    return at.hip_plane(side, end).moved(-at.cap.rafter_t / 2.0)


def _rafters(at: Sizes, side: int) -> Iterator[Member]:
    cap, plan = at.cap, at.plan
    q = math.radians(cap.pitch_of(side))
    up = add(scale(plan.u(side), -math.cos(q)), scale(Z_AXIS, math.sin(q)))
    for index, along in enumerate(rafter_lines(at, side), start=1):
        common = bool(cap.gables) or abs(along) < at.ridge_half(side) + 1e-6
        end = 0 if abs(along) < 1e-6 else (RIGHT if along > 0 else LEFT)
        frame = Placement.from_axes(plan.point(side, at.real(side, cap.break_r), along, cap.break_z), up, plan.v(side))
        head = plan.inner(side, at.ridge_r(side) + cap.head_r) if common else _hip_side(at, side, end)
        bears_on = "roof.hip" if not common else "roof.kingpost" if cap.post_flats else "roof.ridge"
        trims = (
            *([_top(at, side, "top edge")] if cap.flared else []),
            *_corners(at, side, along),
            Trim(_HEADS[bears_on], (head,), partner=bears_on),
            Trim("plumb tail", (plan.outer(side, at.tail(side)),), partner="roof.fascia"),
            Trim("level tail for the soffit", (below(cap.soffit_top),), partner="roof.soffit"),
            Trim("seat on the plate", (below(cap.plate_top), plan.inner(side, cap.plate_r)), NOTCH, "roof.plate"),
        )
        half = cap.rafter_t / 2.0
        yield Member("roof.common" if common else "roof.jack", side, frame, (-cap.rafter_d, _upper(at)),
                     (-half, half), trims, end, index)


def _corners(at: Sizes, side: int, along: float) -> list[Trim]:
    """What the next faces take off a common at the end of a ridge, where their pitch is another."""
    if abs(abs(along) - at.ridge_half(side)) > 1e-6:
        return []
    return _under_next(at, side, under_sheathing)


def _under_next(at: Sizes, side: int, face: Callable[[Sizes, int], Plane]) -> list[Trim]:
    """What rises above the faces next to a side's where their pitch is another; nothing where it is the same."""
    if at.cap.runs == (1.0, 1.0):
        return []
    return [Trim("corner under the next face", (face(at, at.plan.neighbour(side, end)),)) for end in ENDS]


#: What a rafter's head is called by what it bears on.
_HEADS = {"roof.hip": "cut against the hip", "roof.kingpost": "plumb cut at the king post",
          "roof.ridge": "plumb cut at the ridge"}


def _bed_mould(at: Sizes, side: int) -> Iterator[Member]:
    """Between the rafters, on the plate's edge: the soffit's nailer and the bed through which the stage is screwed."""
    cap, plan = at.cap, at.plan
    half = cap.rafter_t / 2.0
    lines = rafter_lines(at, side)
    v = plan.v(side)
    left_ends = [Plane(v, line + half).flipped() for line in lines]
    right_ends = [Plane(v, line - half) for line in lines]
    if cap.gables:
        left_ends, right_ends = left_ends[:-1], right_ends[1:]
    else:
        left_ends, right_ends = [_hip_side(at, side, LEFT), *left_ends], [*right_ends, _hip_side(at, side, RIGHT)]
    for index, stops in enumerate(zip(left_ends, right_ends, strict=True)):
        trims = tuple(Trim(f"end against the {'hip' if hip else 'rafter'}", (stop,), partner="roof.hip" if hip else "")
                      for stop in stops for hip in [abs(dot(stop.normal, v)) < 1.0 - 1e-9])
        yield Member("roof.bedmould", side, plan.level(side), (cap.soffit_top, cap.plate_top),
                     (cap.plate_r, cap.plate_r + cap.fascia_t), trims, index=index)


def _eave_ends(at: Sizes, side: int, partner: str, r: float | None = None) -> tuple[Trim, ...]:
    """What ends soffit and fascia: at a hipped corner the plane along the hip, or at ``r`` the corner's mitre; at a gable
    the barge board."""
    if at.cap.gables:
        return tuple(Trim("end against the barge board", (at.plan.outer(at.plan.neighbour(side, end), at.cap.verge_r),),
                          partner="roof.barge") for end in ENDS)
    return tuple(Trim("mitre at the corner", (at.hip_plane(side, end, r),), partner=partner) for end in ENDS)


def _soffit(at: Sizes, side: int) -> Member:
    cap, plan = at.cap, at.plan
    return Member("roof.soffit", side, plan.flat(side), (-at.tail(side), -cap.plate_r - SOFFIT_GAP),
                  (cap.soffit_top - cap.soffit_t, cap.soffit_top), _eave_ends(at, side, "roof.soffit"))


def _fascia(at: Sizes, side: int) -> Member:
    cap, plan = at.cap, at.plan
    low = fascia_low(cap)
    trims = (Trim("top edge to the roof's slope", (_under_eave(at, side),), partner=_EAVE[cap.flared]),
             *_under_next(at, side, _under_eave), *_eave_ends(at, side, "roof.fascia", cap.tail_r))
    return Member("roof.fascia", side, plan.level(side), (low, ENDLESS), (at.tail(side), at.eave(side)), trims)


#: The kind of part that covers the eave: of a plain roof, and of a flared one.
_EAVE = ("roof.sheathing", "roof.sheathing.eave")


def _sheathing(spec: Spec, at: Sizes, side: int) -> Iterator[Member]:
    """One sheet a face; on a flared roof a second one below the break."""
    cap, plan = at.cap, at.plan
    if cap.gables:
        verge = cap.verge_r + cap.fascia_t
        trims = [Trim("verge edge", (plan.outer(plan.neighbour(side, end), verge),)) for end in ENDS]
    else:
        trims = [Trim("hip edge", (_hip_edge(at, side, end, under_sheathing),), partner="roof.sheathing") for end in ENDS]
    top = list(trims)
    if cap.gables or plan.long(side):
        top.append(Trim("upper edge at the ridge", (plan.inner(side, at.ridge_r(side)),), partner="roof.sheathing"))
    if cap.mast:
        top.append(Trim("clear of the mast", (plan.inner(side, cap.mast / 2.0 + MAST_GAP),)))
    eave = Trim("plumb eave edge", (plan.outer(side, at.eave(side)),))
    faces = [("roof.sheathing", cap.pitch_of(side), [eave, *top])]
    if cap.flared:
        halves = _break(at, side)
        low = [Trim("hip edge", (_hip_edge(at, side, end, _under_eave),), partner=_EAVE[1]) for end in ENDS]
        faces = [("roof.sheathing", cap.pitch_of(side), [Trim("lower edge at the break", (halves,), partner=_EAVE[1]), *top]),
                 (_EAVE[1], cap.eave_pitch_of(side), [eave, Trim("upper edge at the break", (halves.flipped(),),
                                                                 partner="roof.sheathing"), *low])]
    for kind, pitch, planes in faces:
        frame = plan.sloping(side, pitch, at.real(side, cap.break_r), cap.break_z)
        if spec.sheathing_grain == "up the slope":
            frame = Placement.from_axes(frame.origin, frame.y, frame.z)
        yield Member(kind, side, frame, _ANY, (0.0, cap.sheathing_t), tuple(planes), sheet=True,
                     turned=spec.sheathing_grain == "up the slope")


def _hip_edge(at: Sizes, side: int, end: int, face: Callable[[Sizes, int], Plane]) -> Plane:
    """The plane that halves the angle between two faces at a hip: plumb where their pitches are equal; waste outside."""
    other = at.plan.neighbour(side, end)
    on_hip = at.hip_point(at.plan.corner(side, end), at.cap.break_r, at.cap.break_z)
    return Plane.through(on_hip, sub(face(at, other).normal, face(at, side).normal))


def _break(at: Sizes, side: int) -> Plane:
    """The plane that halves the angle between a face's two pitches; waste below the break."""
    cap, plan = at.cap, at.plan
    face, eave = under_sheathing(at, side), _under_eave(at, side)
    return Plane.through(plan.point(side, at.real(side, cap.break_r), 0.0, cap.break_z), sub(face.normal, eave.normal))


def _bearer(at: Sizes) -> Member:
    """On edge over the plates of the two gable sides, at mid-side."""
    cap, plan = at.cap, at.plan
    half = at.base.frame_t / 2.0
    trims = tuple(Trim("end", (plan.outer(side, cap.bearer_half),)) for side in (0, plan.sides // 2))
    frame = Placement.from_axes((0.0, 0.0, cap.plate_top), plan.u(0), cross(plan.u(0), Z_AXIS))
    return Member("roof.bearer", 0, frame, (0.0, at.base.frame_w), (-half, half), trims)


def _step(at: Sizes) -> Member:
    """A flat block on the bearer; the mast stands in a blind bore that drains through its floor to a groove."""
    cap, base, plan = at.cap, at.base, at.plan
    low = cap.plate_top + base.frame_w
    top = low + base.frame_t
    floor = top - STEP_BORE
    bores = (
        ("blind bore for the mast", Bore((0.0, 0.0, top), (0.0, 0.0, -1.0), STEP_BORE, cap.mast)),
        ("weep hole from its floor", Bore((0.0, 0.0, floor), (0.0, 0.0, -1.0), floor - low - STEP_GROOVE, WEEP)),
    )
    u = plan.u(0)
    wide = 0.75 * WEEP
    groove = (below(low + STEP_GROOVE), Plane(u, -wide), Plane(scale(u, -1.0), -wide))
    trims = (*(Trim("end", (plan.outer(side, STEP_LENGTH / 2.0),)) for side in (0, plan.sides // 2)),
             Trim("drain groove across the underside", groove, GROOVE))
    half = base.frame_w / 2.0
    frame = Placement.from_axes((0.0, 0.0, 0.0), u, Z_AXIS)
    return Member("roof.step", 0, frame, (-half, half), (low, top), trims, bores=bores)
