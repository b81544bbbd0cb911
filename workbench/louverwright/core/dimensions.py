# SPDX-License-Identifier: LGPL-2.1-or-later
"""The vent's leading dimensions, worked out once from the spec: everything that more than one part needs.

Names in brackets are those of the construction page.  All in mm and degrees.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from functools import lru_cache

from .plan import BarnRoof, CornerRule, Plan, corner_rule
from .sizing import width_from_ridge
from .spec import Spec
from .twist import LEVEL_PITCH, Readings, readings

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


@dataclass(frozen=True)
class BaseSize:
    """Base frame and cladding."""

    width: float          # [W] over the cladding
    frame_t: float        # [t]
    frame_w: float        # [w]
    post_face: float      # [f]
    cladding_t: float     # [tc]
    corner_t: float       # [tcb]
    corner_face: float    # width that a corner board shows on each face
    frame_r: float        # [Af] outer face of the base frame
    top: float            # [Hb]

    @property
    def inner_r(self) -> float:
        """Inner face of the base frame."""
        return self.frame_r - self.frame_t


@dataclass(frozen=True)
class LouverSize:
    """Louver frame, panels, ring and trim."""

    frame_r: float        # [Al]
    frame_t: float
    rail_top: float       # [zr] top of the bottom rail
    rail_under: float     # [zo] underside of the top rail
    top: float            # [zp]
    slat_angle: float     # [a]
    slat_t: float         # [ts]
    depth: float          # [D]
    stile_t: float
    head_under: float     # [zh]
    panel_half: float     # half of a panel's width
    slats: int            # [m]
    spacing: float        # [s]
    mullion_t: float      # 0 for none
    sill_slope: float
    square_edges: bool    # slats' long edges left square
    ring_slope: float
    ring_t: float
    ring_r: float         # outermost arris
    trim_t: float         # [tt]
    trim_lap: float       # over the stiles and the head rail
    trim_inner: float     # trim's edge towards the opening, along the side
    screen_t: float       # 0 for none
    batten_t: float
    batten_w: float

    @property
    def slat_plumb(self) -> float:
        """[tv] a slat's thickness measured plumb."""
        return self.slat_t / math.cos(math.radians(self.slat_angle))

    def slope(self, index: int) -> float:
        """Slope of a slat, or with index 0 of the sill."""
        return self.slat_angle if index else self.sill_slope

    @property
    def sill_plumb(self) -> float:
        """The sill's thickness measured plumb."""
        return self.slat_t / math.cos(math.radians(self.sill_slope))

    @property
    def sill_rise(self) -> float:
        """Rise of the sill over the panel's depth."""
        return self.depth * math.tan(math.radians(self.sill_slope))

    @property
    def slat_edges(self) -> tuple[float, float]:
        """Where a square-edged slat begins and ends up its slope, from the frame's outer face on its underside."""
        a = math.radians(self.slat_angle)
        return self.slat_t * math.tan(a), self.depth / math.cos(a)

    @property
    def rise(self) -> float:
        """Rise of a slat over the panel's depth."""
        return self.depth * math.tan(math.radians(self.slat_angle))

    @property
    def panel_r(self) -> float:
        """Inner face of the panels."""
        return self.frame_r - self.depth

    @property
    def clear_half(self) -> float:
        """Half of the clear width between the stiles."""
        return self.panel_half - self.stile_t

    @property
    def clear_width(self) -> float:
        """Clear width of one panel, a mullion taken off."""
        return 2.0 * self.clear_half - self.mullion_t

    @property
    def gap(self) -> float:
        """Clear gap between two slats, square to them."""
        return self.spacing * math.cos(math.radians(self.slat_angle)) - self.slat_t

    @property
    def batten_r(self) -> float:
        """Inner face of the screen's battens: nothing of a panel reaches further in."""
        return self.panel_r - (self.screen_t + self.batten_t if self.screen_t else 0.0)

    def overlap(self, rain_angle: float) -> float:
        """How far a slat covers the gap above it for rain or sight rising inward at ``rain_angle``."""
        return overlap(self.depth, self.slat_angle, self.slat_t, self.spacing, rain_angle, self.square_edges)

    def slat_under(self, index: int) -> float:
        """Height of a slat's underside at the frame's outer face; slat 0 is the sill."""
        return self.rail_top + index * self.spacing


@dataclass(frozen=True)
class CapSize:
    """Cap plate, rafters, king post, eave."""

    plate_r: float        # [Rp]
    plate_w: float
    plate_t: float
    plate_top: float
    heel: float           # [hz]
    pitch: float          # [q] of the faces
    hip_slope: float
    rafter_t: float
    rafter_d: float
    rafters: int          # a side, between the hips
    tail_r: float         # [Rp + o]
    soffit_top: float
    soffit_t: float
    fascia_t: float
    sheathing_t: float
    post_apothem: float
    post_flats: int
    post_top: float
    post_bottom: float
    mast: float           # diameter of the bore, 0 for none
    bearer_half: float    # half the length of the mast's bearer

    @property
    def eave_r(self) -> float:
        """Outer face of the fascia, where the sheathing ends."""
        return self.tail_r + self.fascia_t

    def under(self, r: float) -> float:
        """Height of the sheathing's underside on a face, ``r`` from the axis."""
        return self.plate_top + self.heel + (self.plate_r - r) * math.tan(math.radians(self.pitch))


@dataclass(frozen=True)
class Sizes:
    """All leading dimensions, with the plan, the corner rule, the barn's roof and, if it was read, how it is twisted."""

    plan: Plan
    rule: CornerRule
    roof: BarnRoof
    base: BaseSize
    louver: LouverSize
    cap: CapSize
    readings: Readings | None = None


def opening_half(at: Sizes, margin: float) -> float:
    """Half the side of the square opening that fits inside the base's legs, ``margin`` mm from them; may be negative."""
    base = at.base
    if at.plan.sides == 4:
        return base.frame_r * at.plan.slope - base.post_face - margin
    return (base.inner_r - margin) / math.sqrt(2.0)


def overlap(depth: float, slope: float, t: float, spacing: float, rain: float, square: bool) -> float:
    """How far slats cover each other for what rises inward at ``rain`` (mm); not negative where they hide everything.

    Edges ripped plumb: D (tan a − tan e) + tv − s.  Square edges, width w on the slope: w (sin a − cos a · tan e)
    + t (cos a + sin a · tan e) − s.
    """
    a, e = math.radians(slope), math.tan(math.radians(rain))
    if not square:
        return depth * (math.tan(a) - e) + t / math.cos(a) - spacing
    width = (depth - t * math.sin(a)) / math.cos(a)
    return width * (math.sin(a) - math.cos(a) * e) + t * (math.cos(a) + math.sin(a) * e) - spacing


def slat_height(spec: Spec) -> float:
    """Height of one slat from its underside at the frame's outer face to its upper inner arris (mm)."""
    a, t = math.radians(spec.slat_angle), float(spec.slat_stock.thickness)
    depth = spec.panel_depth - (t * math.sin(a) if spec.slat_edges == "square" else 0.0)
    return float(depth * math.tan(a) + t / math.cos(a))


@lru_cache(maxsize=64)
def sizes(spec: Spec) -> Sizes:
    """The dimensions that follow from a spec; they may still be impossible: see ``checks``."""
    plan = Plan(spec.sides, spec.facing == "corner")
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
    found = readings(spec, Plan(spec.sides, spec.facing == "corner"), width_of(spec))
    return (found.pitch_left, found.pitch_right) if found else (float(spec.pitch_left), float(spec.pitch_right))


def width_of(spec: Spec) -> float:
    """The vent's width: as given, or by the trade's rule from its share of the ridge."""
    if spec.width or not spec.ridge_length:
        return float(spec.width)
    return float(width_from_ridge(spec.ridge_length, spec.width_rule, spec.vents))


def _base(spec: Spec, plan: Plan) -> BaseSize:
    width = width_of(spec)
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
        uphill = width_of(spec) / 2.0 / math.cos(math.pi / spec.sides) * math.tan(p)
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
    panel_half = frame_r * plan.slope - base.post_face - spec.panel_clearance
    room = head_under - rail_top
    slats = int(spec.slat_count) or slats_needed(spec, room)
    spacing = (room - slat_height(spec)) / slats
    clear = 2.0 * (panel_half - stile_t)
    lap = spec.trim_lap or max(10.0, stile_t - spec.dado_depth + 1.0)
    middle = spec.mullion == "always" or (spec.mullion == "automatic" and clear > spec.slat_span)
    return LouverSize(
        frame_r=frame_r, frame_t=base.frame_t, rail_top=rail_top, rail_under=rail_under, top=top,
        slat_angle=spec.slat_angle, slat_t=spec.slat_stock.thickness, depth=spec.panel_depth, stile_t=stile_t,
        head_under=head_under, panel_half=panel_half, slats=slats, spacing=spacing,
        sill_slope=spec.sill_slope or spec.slat_angle, square_edges=spec.slat_edges == "square",
        mullion_t=base.frame_t if middle else 0.0, ring_slope=spec.ring_slope or min(spec.slat_angle, 45.0),
        ring_t=spec.ring_stock.thickness, ring_r=base.width / 2.0 + base.corner_t + spec.ring_projection,
        trim_t=spec.trim_stock.thickness, trim_lap=lap, trim_inner=panel_half - lap,
        screen_t=spec.screen_stock.thickness if spec.screen else 0.0,
        batten_t=spec.batten_stock.thickness, batten_w=spec.batten_stock.width)


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
    hip = math.atan(math.tan(q) * math.cos(half_angle))
    rafter = spec.rafter_stock
    plate_r = louver.frame_r + louver.trim_t
    plate_top = louver.top + spec.plate_stock.thickness
    rafters = int(spec.rafters_per_side) if spec.rafters_per_side >= 0 else rafters_between(spec, plan, plate_r)
    heel = spec.heel_height or _heel(rafter.width, hip, q if rafters else hip)
    tail_r = plate_r + spec.overhang
    flats = plan.sides * (2 if rafters % 2 else 1)
    apothem = min(spec.king_post_stock.width, spec.king_post_stock.thickness) / 2.0
    if flats % 4:  # two of its corners reach further than its flats, and must come out of the square too
        apothem *= math.cos(math.pi / flats)
    cap = CapSize(
        plate_r=plate_r, plate_w=spec.plate_stock.width, plate_t=spec.plate_stock.thickness, plate_top=plate_top,
        heel=heel, pitch=math.degrees(q), hip_slope=math.degrees(hip), rafter_t=rafter.thickness,
        rafter_d=rafter.width, rafters=rafters, tail_r=tail_r,
        soffit_top=plate_top + heel - spec.overhang * math.tan(q) - spec.tail_depth,
        soffit_t=spec.soffit_stock.thickness, fascia_t=spec.fascia_stock.thickness,
        sheathing_t=spec.sheathing_stock.thickness, post_apothem=apothem, post_flats=flats,
        post_top=0.0, post_bottom=0.0, mast=spec.mast_diameter + MAST_PLAY if spec.mast_diameter else 0.0,
        bearer_half=0.0)
    return _with_heights(cap, plan, spec.frame_stock.width)


def face_pitch(spec: Spec, half_angle: float) -> float:
    """Pitch of the roof's faces (radians): as given, or from the hips' slope: tan hip = tan face · cos(180°/n)."""
    if not spec.hip_rafter_slope:
        return math.radians(spec.roof_pitch)
    return math.atan(math.tan(math.radians(spec.hip_rafter_slope)) / math.cos(half_angle))


def _with_heights(cap: CapSize, plan: Plan, bearer_depth: float) -> CapSize:
    """The cap with what follows from its roof faces: king post and bearer."""
    corner = math.cos(math.pi / plan.sides)
    arris = cap.post_apothem / corner if cap.post_flats == plan.sides else cap.post_apothem
    head = cap.under(cap.post_apothem * corner)
    inset = max(0.0, (bearer_depth - cap.heel) / math.tan(math.radians(cap.pitch)))
    return replace(
        cap, post_top=cap.under(arris) - POST_HEADROOM,
        post_bottom=head - cap.rafter_d / math.cos(math.radians(cap.hip_slope)) - POST_TAIL,
        bearer_half=math.floor(cap.plate_r - inset - BEARER_GAP))


def _heel(depth: float, *slopes: float) -> float:
    """The least whole height of the heel that keeps every notch within its share of the rafter's depth."""
    return float(math.ceil(max((1.0 - NOTCH_SHARE) * depth / math.cos(slope) for slope in slopes) - 1e-9))


def rafters_between(spec: Spec, plan: Plan, plate_r: float) -> int:
    """Jacks a side, an even number, so that no clear bay is wider than the sheathing spans."""
    count = 0
    while _widest_bay(spec, plan, plate_r, count) > spec.sheathing_span and count < 12:
        count += 2
    return count


def _widest_bay(spec: Spec, plan: Plan, plate_r: float, count: int) -> float:
    t = spec.rafter_stock.thickness
    whole = 2.0 * plate_r * plan.slope - t / math.cos(math.pi / plan.sides)
    return float((whole - count * t) / (count + 1))
