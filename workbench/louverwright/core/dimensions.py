# SPDX-License-Identifier: LGPL-2.1-or-later
"""The vent's leading dimensions, worked out once from the spec: everything that more than one part needs.

All in mm and degrees.
"""

from __future__ import annotations

import math
from dataclasses import replace
from functools import lru_cache

from .plan import BarnRoof, Plan, corner_rule
from .sizes import BaseSize, CapSize, LouverSize, PanelSize, Sizes, overlap
from .sizing import width_from_ridge
from .spec import Spec
from .twist import LEVEL_PITCH, readings

#: A notch may take this share of a rafter's depth (the traditional rule; from memory).
NOTCH_SHARE = 1.0 / 3.0
#: The least wood between two dados (mm).
DADO_WOOD = 12.0
#: The king post hangs this far below the hips' heads (mm), so that all of each head bears on it.
POST_TAIL = 25.0
#: A level king post's arrises stop this far short of the sheathing (mm).
POST_HEADROOM = 1.0
#: Soles and the rails over them keep at least this far apart (mm).
SOLE_ROOM = 5.0
#: The bearer's top arris keeps at least this far from the sheathing (mm, level).
BEARER_GAP = 2.0
#: Wood around the mast's bore (mm).
MAST_WOOD = 20.0
#: Play of the mast in king post and step, and its gap in the sheathing (mm; on the diameter, on the radius).
MAST_PLAY, MAST_GAP = 1.0, 5.0


def slat_height(spec: Spec) -> float:
    """Height of one slat from its underside at the frame's outer face to its upper inner arris (mm)."""
    a, t = math.radians(spec.slat_angle), float(spec.slat_stock.thickness)
    depth = spec.panel_depth - (t * math.sin(a) if spec.slat_edges == "square" else 0.0)
    return float(depth * math.tan(a) + t / math.cos(a))


@lru_cache(maxsize=64)
def sizes(spec: Spec) -> Sizes:
    """The dimensions that follow from a spec; they may still be impossible: see ``checks``."""
    plan = plan_of(spec)
    base = _base(spec, plan)
    louver = _louver(spec, plan, base)
    left, right = (0.0 if pitch < LEVEL_PITCH else pitch for pitch in pitches(spec))
    roof = BarnRoof(left, right, -spec.ridge_offset)
    if spec.seat == "one slope":
        roof = BarnRoof(left, -left, 0.0, single=True)
    return Sizes(plan, corner_rule(plan, spec.corner), roof, base, louver, _cap(spec, plan, louver),
                 readings(spec, plan, base.width))


def pitches(spec: Spec) -> tuple[float, float]:
    """Pitch of the barn's left and right slope in use (degrees): as given, or from the drops at the corners."""
    found = readings(spec, plan_of(spec), square_of(spec))
    return (found.pitch_left, found.pitch_right) if found else (float(spec.pitch_left), float(spec.pitch_right))


def width_of(spec: Spec) -> float:
    """The vent's width: as given, or by the trade's rule from its share of the ridge."""
    if spec.width or not spec.ridge_length:
        return float(spec.width)
    return float(width_from_ridge(spec.ridge_length, spec.width_rule, spec.vents))


def square_of(spec: Spec) -> float:
    """Width of the square that is pulled apart to the vent's outline: the smaller of length and width."""
    return min(width_of(spec), float(spec.length) or math.inf)


def plan_of(spec: Spec) -> Plan:
    """The plan; a length other than the width pulls a square apart."""
    more = (float(spec.length) - width_of(spec)) / 2.0 if spec.length else 0.0
    return Plan(spec.sides, spec.facing == "corner", (max(more, 0.0), max(-more, 0.0)))


def _base(spec: Spec, plan: Plan) -> BaseSize:
    width = square_of(spec)
    frame = spec.frame_stock
    side = width * plan.slope
    usual = frame.width if plan.sides == 4 else min(frame.width, round(0.15 * side))
    return BaseSize(
        width=width, frame_t=frame.thickness, frame_w=frame.width, post_face=spec.post_face or usual,
        cladding_t=spec.cladding_stock.thickness, corner_t=spec.corner_board_stock.thickness,
        corner_face=spec.corner_board_face or min(spec.corner_board_stock.width, 140.0),
        frame_r=width / 2.0 - spec.cladding_stock.thickness,
        top=spec.base_height or max(0.3 * width, 150.0, _least_base(spec)))


def sole_top(spec: Spec) -> float:
    """How far the soles reach above the ridge, where they meet plumb, or on one slope above the axis, uphill (mm)."""
    if spec.seat == "one slope":
        p = math.radians(pitches(spec)[0])
        plan, half = plan_of(spec), square_of(spec) / 2.0
        uphill = max(plan.corner_point(corner, half)[1] for corner in range(spec.sides)) * math.tan(p)
        return float(uphill + (spec.frame_stock.width - spec.seat_depth) / math.cos(p))
    return float(max((spec.frame_stock.width - spec.seat_depth) / math.cos(math.radians(p)) for p in pitches(spec)))


def _least_base(spec: Spec) -> float:
    """The least whole height of the base that keeps its top rail above the soles."""
    return float(math.ceil(sole_top(spec) + SOLE_ROOM + spec.frame_stock.width))


def _louver(spec: Spec, plan: Plan, base: BaseSize) -> LouverSize:
    frame_r = base.frame_r - spec.stage_clearance
    rail_top = base.top + base.frame_w
    top = base.top + (spec.louver_height or 0.6 * base.width)
    rail_under = top - base.frame_w
    stile_t = spec.stile_stock.thickness
    head_under = rail_under - spec.panel_clearance - stile_t
    room = head_under - rail_top
    slats = int(spec.slat_count) or slats_needed(spec, room)
    spacing = (room - slat_height(spec)) / slats
    lap = spec.trim_lap or max(10.0, stile_t - spec.dado_depth + 1.0)
    even, odd = (_panel(spec, plan.half(side, frame_r) - base.post_face - spec.panel_clearance, lap) for side in (0, 1))
    return LouverSize(
        frame_r=frame_r, frame_t=base.frame_t, rail_top=rail_top, rail_under=rail_under, top=top,
        slat_angle=spec.slat_angle, slat_t=spec.slat_stock.thickness, depth=spec.panel_depth, stile_t=stile_t,
        head_under=head_under, panels=(even, odd), slats=slats, spacing=spacing,
        sill_slope=spec.sill_slope or spec.slat_angle, square_edges=spec.slat_edges == "square",
        ring_slope=spec.ring_slope or min(spec.slat_angle, 45.0),
        ring_t=spec.ring_stock.thickness, ring_r=base.width / 2.0 + base.corner_t + spec.ring_projection,
        trim_t=spec.trim_stock.thickness, trim_lap=lap,
        screen_t=spec.screen_stock.thickness if spec.screen else 0.0,
        batten_t=spec.batten_stock.thickness, batten_w=spec.batten_stock.width)


def _panel(spec: Spec, half: float, lap: float) -> PanelSize:
    stile_t = spec.stile_stock.thickness
    middle = spec.mullion == "always" or (spec.mullion == "automatic" and 2.0 * (half - stile_t) > spec.slat_span)
    return PanelSize(half, stile_t, spec.frame_stock.thickness if middle else 0.0, lap)


def slats_needed(spec: Spec, room: float) -> int:
    """The fewest slats that hide the sky at the rain angle and keep the spacing, ``room`` being sill bed to head (mm)."""
    left = room - slat_height(spec)
    widest = overlap(spec.panel_depth, spec.slat_angle, spec.slat_stock.thickness, 0.0, spec.rain_angle,
                     spec.slat_edges == "square")
    if spec.widest_spacing:
        widest = min(widest, float(spec.widest_spacing))
    if left <= 0.0 or widest <= 0.0:
        return 1
    return max(1, math.ceil(left / widest - 1e-9))


def _cap(spec: Spec, plan: Plan, louver: LouverSize) -> CapSize:
    half_angle = math.pi / plan.sides
    q = face_pitch(spec, half_angle)
    ends = math.tan(q) / math.tan(math.radians(spec.end_pitch)) if spec.end_pitch and plan.rectangle else 1.0
    runs = (ends, 1.0) if plan.long(1) else (1.0, ends)
    hip = math.atan(math.tan(q) * math.cos(half_angle) if ends == 1.0 else math.tan(q) / math.hypot(1.0, ends))
    rafter = spec.rafter_stock
    plate_r = louver.frame_r + louver.trim_t
    plate_top = louver.top + spec.plate_stock.thickness
    gables = gables_of(spec)
    rafters = int(spec.rafters_per_side) if spec.rafters_per_side >= 0 else rafters_between(spec, plan, plate_r)
    tail_r = plate_r + spec.overhang
    break_r, eave = _flare(spec, q, tail_r)
    depth = rafter.width - (tail_r - break_r) * (math.tan(q) - math.tan(eave)) * math.cos(hip)
    kick = max(0.0, plate_r - break_r) * (math.tan(q) - math.tan(eave))
    steep = math.atan(math.tan(q) / ends) if ends < 1.0 else q
    heel = spec.heel_height or math.ceil(_heel(depth, q if gables else hip, steep if rafters else hip) + kick)
    break_z = plate_top + heel + (plate_r - break_r) * math.tan(eave if break_r < plate_r else q)
    flats = 0 if plan.rectangle or gables else plan.sides * (2 if rafters % 2 else 1)
    apothem = min(spec.king_post_stock.width, spec.king_post_stock.thickness) / 2.0
    if flats % 4:  # two of its corners reach further than its flats, and must come out of the square too
        apothem *= math.cos(math.pi / flats)
    cap = CapSize(
        plate_r=plate_r, plate_w=spec.plate_stock.width, plate_t=spec.plate_stock.thickness, plate_top=plate_top,
        heel=heel, pitch=math.degrees(q), hip_slope=math.degrees(hip), rafter_t=rafter.thickness,
        break_r=break_r, break_z=break_z, eave_pitch=math.degrees(eave), rafter_d=depth, rafters=rafters,
        ridge_commons=max(0, math.ceil(2.0 * max(plan.pull) / (spec.sheathing_span + rafter.thickness) - 1e-9) - 1),
        gables=gables, runs=runs, verge_r=plate_r + spec.cladding_stock.thickness + (spec.verge or spec.overhang / 2.0),
        tail_r=tail_r,
        soffit_top=break_z + (break_r - tail_r) * math.tan(eave) - spec.tail_depth,
        soffit_t=spec.soffit_stock.thickness, fascia_t=spec.fascia_stock.thickness,
        sheathing_t=spec.sheathing_stock.thickness, post_apothem=apothem, post_flats=flats,
        post_top=0.0, post_bottom=0.0, mast=spec.mast_diameter + MAST_PLAY if spec.mast_diameter else 0.0,
        bearer_half=0.0)
    return _with_heights(cap, plan, spec.frame_stock.width)


def gables_of(spec: Spec) -> tuple[int, ...]:
    """The sides that end in gables: under a ridge along the barn's those that face along it."""
    if spec.roof_form != "gable":
        return ()
    return (0, 2) if spec.gable_ridge == "along" else (1, 3)


def _flare(spec: Spec, q: float, tail_r: float) -> tuple[float, float]:
    """Where the faces break and their pitch below it (radians); the plate's edge and ``q`` for a plain roof."""
    if spec.roof_form != "flared hip":
        return tail_r - float(spec.overhang), q
    return tail_r - float(spec.flare_reach or spec.overhang), math.radians(spec.flare_pitch) or q / 2.0


def face_pitch(spec: Spec, half_angle: float) -> float:
    """Pitch of the roof's faces (radians): as given, or from the hips' slope: tan hip = tan face · cos(180°/n)."""
    if not spec.hip_rafter_slope:
        return math.radians(spec.roof_pitch)
    return math.atan(math.tan(math.radians(spec.hip_rafter_slope)) / math.cos(half_angle))


def _with_heights(cap: CapSize, plan: Plan, bearer_depth: float) -> CapSize:
    """The cap with what follows from its roof faces: king post and bearer, if there is a king post."""
    if not cap.post_flats:
        return cap
    corner = math.cos(math.pi / plan.sides)
    arris = cap.post_apothem / corner if cap.post_flats == plan.sides else cap.post_apothem
    head = cap.under(cap.post_apothem * corner)
    return replace(
        cap, post_top=cap.under(arris) - POST_HEADROOM,
        post_bottom=head - cap.rafter_d / math.cos(math.radians(cap.hip_slope)) - POST_TAIL,
        bearer_half=math.floor(min(cap.plate_r, cap.reach(cap.plate_top + bearer_depth)) - BEARER_GAP))


def _heel(depth: float, *slopes: float) -> float:
    """The least whole height of the heel that keeps every notch within its share of the rafter's depth."""
    return float(math.ceil(max((1.0 - NOTCH_SHARE) * depth / math.cos(slope) for slope in slopes) - 1e-9))


def rafters_between(spec: Spec, plan: Plan, plate_r: float) -> int:
    """Jacks a side, an even number, so that no clear bay is wider than the sheathing spans.

    On a rectangle an odd one: a common stands at each end of the ridge.  Under a gable roof the commons between the gables'.
    """
    if gables_of(spec):
        t = spec.rafter_stock.thickness
        whole = 2.0 * max(plan.half(side, plate_r) for side in range(4) if side not in gables_of(spec)) - t
        return max(0, math.ceil(float(whole / (spec.sheathing_span + t)) - 1e-9) - 1)
    count = 1 if plan.rectangle else 0
    while _widest_bay(spec, plan, plate_r, count) > spec.sheathing_span and count < 12:
        count += 2
    return count


def _widest_bay(spec: Spec, plan: Plan, plate_r: float, count: int) -> float:
    t = spec.rafter_stock.thickness
    whole = 2.0 * plate_r * plan.slope - t / math.cos(math.pi / plan.sides)
    return float((whole - count * t) / (count + 1))
