# SPDX-License-Identifier: LGPL-2.1-or-later
"""The records of the vent's leading dimensions, and what is read off them; ``dimensions`` works them out from a spec.

Names in brackets are those of the construction page.  All in mm and degrees.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from .geometry import Z_AXIS, Plane, Vec, add, cross, scale, sub, unit
from .plan import BarnRoof, CornerRule, Plan
from .twist import Readings


@dataclass(frozen=True)
class BaseSize:
    """Base frame and cladding."""

    width: float          # [W] over the cladding; of a rectangle's short sides
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
class PanelSize:
    """What differs from a rectangle's long sides to its short ones: the panel's measures along the side."""

    half: float           # half of a panel's width
    stile_t: float
    mullion_t: float      # 0 for none
    trim_lap: float       # over the stiles and the head rail

    @property
    def clear_half(self) -> float:
        """Half of the clear width between the stiles."""
        return self.half - self.stile_t

    @property
    def clear_width(self) -> float:
        """Clear width of one panel, a mullion taken off."""
        return 2.0 * self.clear_half - self.mullion_t

    @property
    def trim_inner(self) -> float:
        """The trim's edge towards the opening, along the side."""
        return self.half - self.trim_lap


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
    panels: tuple[PanelSize, PanelSize]  # in the even sides, in the odd ones
    slats: int            # [m]
    spacing: float        # [s]
    sill_slope: float
    square_edges: bool    # slats' long edges left square
    ring_slope: float
    ring_t: float
    ring_r: float         # outermost arris
    trim_t: float         # [tt]
    trim_lap: float       # over the stiles and the head rail
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

    def panel(self, side: int) -> PanelSize:
        """The panel in a side."""
        return self.panels[side % 2]

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
    break_r: float        # where a flared roof breaks to its eave pitch; the plate's edge where it is not flared
    break_z: float        # height of the sheathing's underside there
    eave_pitch: float     # of a flared roof below the break; else that of the faces
    rafter_t: float
    rafter_d: float
    rafters: int          # a side, between the hips (of a rectangle: on its short sides) or between the gables' rafters
    ridge_commons: int    # commons on each long side of a rectangle between those at the ridge's ends
    gables: tuple[int, ...]  # the sides that end in a gable
    verge_r: float        # back of the barge boards
    runs: tuple[float, float]  # run of the even and the odd sides' faces for each mm of r; 1 but where an end pitch differs
    tail_r: float         # [Rp + o]
    soffit_top: float
    soffit_t: float
    fascia_t: float
    sheathing_t: float
    post_apothem: float
    post_flats: int       # 0 for no king post, where a ridge takes its place
    post_top: float
    post_bottom: float
    mast: float           # diameter of the bore, 0 for none
    bearer_half: float    # half the length of the mast's bearer

    def pitch_of(self, side: int) -> float:
        """Pitch of the face over a side."""
        return _eased(self.pitch, self.runs[side % 2])

    def eave_pitch_of(self, side: int) -> float:
        """Pitch of a face below the break of a flared roof; else that of the face."""
        return _eased(self.eave_pitch, self.runs[side % 2])

    @property
    def head_r(self) -> float:
        """Where commons end: the flats of the king post, or the faces and ends of the ridge."""
        return self.post_apothem if self.post_flats else self.rafter_t / 2.0

    @property
    def flared(self) -> bool:
        """True for a roof with two pitches a face."""
        return self.eave_pitch < self.pitch

    def under(self, r: float) -> float:
        """Height of the sheathing's underside on a face, ``r`` from the axis, as on a face whose run is 1."""
        pitch = self.pitch if r <= self.break_r else self.eave_pitch
        return self.break_z + (self.break_r - r) * math.tan(math.radians(pitch))

    def reach(self, z: float) -> float:
        """How far from the axis the sheathing's underside is ``z`` high."""
        pitch = self.pitch if z >= self.break_z else self.eave_pitch
        return self.break_r + (self.break_z - z) / math.tan(math.radians(pitch))

    def kick(self, r: float) -> float:
        """How far a flared face lies above the faces' pitch carried on, plumb."""
        return self.under(r) - self.break_z - (self.break_r - r) * math.tan(math.radians(self.pitch))

    def notch(self, slope: float) -> float:
        """Depth of the notch over the plate in a rafter of a ``slope`` (radians), square to it."""
        return self.rafter_d - (self.heel - self.kick(self.plate_r)) * math.cos(slope)


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

    def real(self, side: int, r: float) -> float:
        """Where a face of the roof has what one with a run of 1 has at ``r``, as the plan's ``r``: the same over the plate."""
        return self.cap.plate_r + (r - self.cap.plate_r) * self.cap.runs[side % 2]

    def tail(self, side: int) -> float:
        """The rafters' tails over a side, and the back of its fascia."""
        return self.real(side, self.cap.tail_r)

    def eave(self, side: int) -> float:
        """Outer face of the fascia, where the sheathing ends."""
        return self.tail(side) + self.cap.fascia_t

    @property
    def end_pitch(self) -> float:
        """Pitch of a rectangle's end faces; of all faces where there are none."""
        return self.cap.pitch_of(0 if self.plan.long(1) else 1)

    def ridge_r(self, side: int) -> float:
        """Where the roof's face over a side ends at the top, as its ``r``: on the side's own axis, or under a gable roof on
        the vent's."""
        return -self.plan.out(side) if self.cap.gables else self.real(side, 0.0)

    def ridge_half(self, side: int) -> float:
        """Half the length of the ridge over a rectangle's long side under a hip roof; 0 over others."""
        return self.plan.half(side, 0.0) + self.real(side + 1, 0.0) if self.plan.long(side) else 0.0

    def hip_foot(self, corner: int) -> Vec:
        """The point of the plan under a hip's upper end: under the roof's peak or the end of its ridge."""
        plan = self.plan
        return plan.apart(corner, self.real(corner, 0.0), self.real(corner + 1, 0.0))

    def hip_point(self, corner: int, r: float, z: float) -> Vec:
        """The point of a hip's middle plane at ``r`` of the faces."""
        foot = self.hip_foot(corner)
        run = sub(self.plan.corner_point(corner, self.cap.plate_r), foot)
        return add(add(foot, scale(run, r / self.cap.plate_r)), (0.0, 0.0, z))

    def hip_toward(self, corner: int) -> Vec:
        """Level direction of a hip, outward."""
        return unit(sub(self.plan.corner_point(corner, self.cap.plate_r), self.hip_foot(corner)))

    def hip_plane(self, side: int, end: int, r: float | None = None) -> Plane:
        """The vertical plane along the hip at an end of a side, or at ``r`` the one that halves the plan's corner there;
        waste outside the side."""
        corner = self.plan.corner(side, end)
        across = cross(Z_AXIS, self.hip_toward(corner)) if r is None else self.plan.across(corner)
        return Plane.through(self.hip_point(corner, self.cap.plate_r if r is None else r, 0.0), scale(across, float(end)))

    @property
    def eaves(self) -> tuple[int, ...]:
        """The sides with an eave: all but the gables."""
        return tuple(side for side in range(self.plan.sides) if side not in self.cap.gables)

    def roof_half(self, side: int) -> float:
        """Half the length of the roof over its eave or verge along a side, outside of everything (mm)."""
        plan, cap = self.plan, self.cap
        if plan.sides != 4:
            return plan.half(side, self.eave(side))
        verge = cap.gables and side not in cap.gables
        return plan.out(side + 1) + (cap.verge_r + cap.fascia_t if verge else self.eave(side + 1))

    def roof_reach(self, side: int) -> float:
        """How far the roof reaches from the vent's middle over a side's eave or verge, outside of everything (mm)."""
        return self.eave(side) if self.plan.sides != 4 else self.roof_half((side + 1) % 4)

    def roof_corner(self, corner: int) -> Vec:
        """The corner of the roof in plan (mm)."""
        cap = self.cap
        reach = cap.verge_r + cap.fascia_t if corner in cap.gables else self.eave(corner)
        return self.plan.point(corner, reach, self.roof_half(corner), 0.0)

    @property
    def gusset_r(self) -> float:
        """Outer edges of the plate's gussets, clear of the louver frame that they drop into."""
        return self.louver.frame_r - self.louver.frame_t - (self.base.frame_r - self.louver.frame_r)

    @property
    def peak(self) -> float:
        """Height of the sheathing's underside at the roof's peak or ridge."""
        return max(self.cap.under(-self.plan.out(side) if self.cap.gables else 0.0) for side in self.eaves)

    @property
    def ridge_bottom(self) -> float:
        """Lower edge of a ridge, where the plumb cuts of the rafters on it end."""
        cap, fall = self.cap, math.radians(self.cap.pitch)
        return self.peak - cap.head_r * math.tan(fall) - cap.rafter_d / math.cos(fall)

    def opening(self, side: int) -> float:
        """Half the clear width between the legs of a side of the base (mm)."""
        return self.plan.half(side, self.base.frame_r) - self.base.post_face


def _eased(degrees: float, run: float) -> float:
    return math.degrees(math.atan(math.tan(math.radians(degrees)) / run))


def opening_halves(at: Sizes, margin: float) -> tuple[float, float]:
    """Half the length and half the width of the opening in the roof (along u of side 0, and of side 1), ``margin`` mm inside
    the base's legs; square but for a rectangle; may be negative."""
    if at.plan.sides == 4:
        return at.opening(1) - margin, at.opening(0) - margin
    half = (at.base.inner_r - margin) / math.sqrt(2.0)
    return half, half


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
