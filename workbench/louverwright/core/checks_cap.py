# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the roof stage's sizes set each other; see ``checks``."""

from __future__ import annotations

import math
from collections.abc import Iterator

from .cap import STEP_BORE, rafter_lines
from .dimensions import MAST_WOOD, NOTCH_SHARE
from .gable import LEAST_SLAT, barge_width, fascia_low, gable_slats
from .saying import say
from .sizes import Sizes
from .spec import Finding, Spec, least_text, length_text, most_text

#: Least width of a bearing on the plate, of the plate on the frame, and of a seat (mm).
LEAST_BEARING = 20.0
#: A bed mould narrower than this holds no screw (mm).
LEAST_NAILER = 20.0
#: A bay between rafters narrower than this leaves no room to nail (mm, centre to centre).
LEAST_BAY = 120.0
#: Room for a hand's width of nailing between the two commons at a short ridge (mm).
LEAST_RIDGE = 20.0
#: Fewer slats are no louvers.
LEAST_GABLE_SLATS = 2
#: Two pitches that differ by less (degrees) are one roof with a crease.
LEAST_BREAK = 5.0
#: A rafter sawn to two pitches keeps this depth above the break (mm).
LEAST_RAFTER = 60.0
#: A king post shorter than this does not hold the hips' heads (mm).
LEAST_POST = 60.0


def _slopes(at: Sizes) -> list[tuple[str, float]]:
    """The rafters there are, with their slopes in radians."""
    if at.cap.gables:
        return [(say("the common"), math.radians(at.cap.pitch))]
    hip: list[tuple[str, float]] = [(say("the hip"), math.radians(at.cap.hip_slope))]
    pitches = sorted({at.cap.pitch_of(side) for side in at.eaves})
    return hip + ([(say("the jack or common"), math.radians(pitch)) for pitch in pitches] if at.cap.rafters else [])


def _notch(spec: Spec, at: Sizes) -> Iterator[Finding]:
    cap = at.cap
    for rafter, slope in _slopes(at):
        notch = cap.notch(slope)
        most = NOTCH_SHARE * cap.rafter_d
        if notch > most + 1e-6:
            need = math.ceil((cap.rafter_d - most) / math.cos(slope) + cap.kick(cap.plate_r))
            yield Finding("notch", "heel_height", length_text(cap.heel),
                          say("{rafter} is notched {notch}, deeper than a third of its depth, {most}", rafter=rafter,
                              notch=length_text(notch), most=length_text(most)),
                          say("Raise it to {need} or more, or take deeper rafters.", need=length_text(need)))
        elif notch < LEAST_BEARING * math.sin(slope):
            yield Finding("seat", "heel_height", length_text(cap.heel),
                          say("{rafter} has less than {least_bearing} of seat on the plate", rafter=rafter,
                              least_bearing=length_text(LEAST_BEARING)),
                          say("Lower it below {most}.", most=most_text(
                              cap.kick(cap.plate_r) + cap.rafter_d / math.cos(slope) - LEAST_BEARING * math.tan(slope))))


def _tail(spec: Spec, at: Sizes) -> Iterator[Finding]:
    cap = at.cap
    deepest = min(cap.rafter_d / math.cos(slope) for _, slope in _slopes(at)) + cap.kick(cap.tail_r) - 2.0
    if spec.tail_depth > deepest:
        yield Finding("tail", "tail_depth", length_text(spec.tail_depth),
                      say("the rafters are only {deepest} deep plumb and would not reach the soffit",
                          deepest=length_text(deepest)), say("Set it to {most} or less, or take deeper rafters.",
                                                             most=most_text(deepest)))


def _eave(spec: Spec, at: Sizes) -> Iterator[Finding]:
    cap, louver = at.cap, at.louver
    nailer = cap.plate_top - cap.soffit_top
    if nailer < LEAST_NAILER:
        yield Finding("soffit", "overhang", length_text(spec.overhang),
                      say("the soffit would lie {nailer} below the plate's top and leave no nailer",
                          nailer=length_text(nailer)), say("Make the overhang wider, the roof steeper, or the tails deeper."))
    low = fascia_low(cap)
    open_to = louver.rail_under - spec.panel_clearance - louver.trim_lap
    if low < open_to:
        yield Finding("soffit", "overhang", length_text(spec.overhang),
                      say("the fascia would hang {low} below the top of the louvers and hide them",
                          low=length_text(open_to - low)),
                      say("Make the overhang narrower, the roof flatter, the heel higher or the tails thinner."))
    if nailer > spec.fascia_stock.width:
        yield Finding("bed mould", "fascia_stock", say("“{name}”", name=spec.fascia_stock.name),
                      say("the bed mould is {nailer} wide and the stock {width}", nailer=length_text(nailer),
                          width=length_text(spec.fascia_stock.width)),
                      say("Choose wider fascia stock, or a narrower overhang."))


def _plate(spec: Spec, at: Sizes) -> Iterator[Finding]:
    cap, louver = at.cap, at.louver
    bearing = louver.frame_r - (cap.plate_r - cap.plate_w)
    if bearing < LEAST_BEARING:
        yield Finding("plate", "plate_stock", say("“{name}”", name=spec.plate_stock.name),
                      say("it bears on {bearing} of the frame and needs {least_bearing}",
                          bearing=length_text(max(0.0, bearing)), least_bearing=length_text(LEAST_BEARING)),
                      say("Choose wider plate stock, or thinner trim."))


def _gussets(spec: Spec, at: Sizes) -> Iterator[Finding]:
    """The gussets under mitred plates hold on to them inside the frame, and leave their top rail the room it has."""
    if at.plan.sides == 4:
        return
    hold = at.gusset_r - (at.cap.plate_r - at.cap.plate_w)
    if hold < LEAST_BEARING:
        yield Finding("gusset", "plate_stock", say("“{name}”", name=spec.plate_stock.name),
                      say("inside the frame it leaves {hold} for the gussets of its corners, and they need {least_bearing}",
                          hold=length_text(max(0.0, hold)), least_bearing=length_text(LEAST_BEARING)),
                      say("Choose wider plate stock, or thinner trim."))


def _king_post(spec: Spec, at: Sizes) -> Iterator[Finding]:
    cap, plan = at.cap, at.plan
    if not cap.post_flats:
        return
    name, has = say("“{name}”", name=spec.king_post_stock.name), length_text(2.0 * cap.post_apothem)
    need = cap.rafter_t / (2.0 * plan.slope)
    if cap.post_flats > plan.sides:
        need = cap.rafter_t / (2.0 * math.tan(math.pi / (2.0 * plan.sides)))
    if cap.post_apothem < need:
        why = say("hips and commons") if cap.post_flats > plan.sides else say("hips")
        yield Finding("king post", "king_post_stock", name, say("{why} would collide on a post {has} thick; it must be "
                                                                "{need}", why=why, has=has, need=length_text(2.0 * need)),
                      say("Choose a thicker post, or an even number of rafters a side.") if why != "hips" else
                      say("Choose a thicker post."))
    if cap.mast and cap.post_apothem < cap.mast / 2.0 + MAST_WOOD:
        yield Finding("mast", "mast_diameter", length_text(spec.mast_diameter),
                      say("a post {has} thick must keep {mast_wood} of wood around the bore", has=has,
                          mast_wood=length_text(MAST_WOOD)), say("Choose a thinner mast, or a thicker post."))
    if cap.post_top - cap.post_bottom < LEAST_POST:
        yield Finding("king post", "roof_pitch", f"{cap.pitch:g}°",
                      say("the king post would be {length} long",
                          length=length_text(max(0.0, cap.post_top - cap.post_bottom))),
                      say("Make the roof flatter, or the rafters deeper."))


def _mast(spec: Spec, at: Sizes) -> Iterator[Finding]:
    cap, base = at.cap, at.base
    if cap.mast and not cap.post_flats:
        yield Finding("mast", "mast_diameter", length_text(spec.mast_diameter),
                      say("there is no king post under a ridge to carry it"),
                      say("Set it to 0 for none, or make the vent square."))
    if not cap.mast or not cap.post_flats:
        return
    if cap.rafters % 2:
        yield Finding("mast", "rafters_per_side", str(cap.rafters),
                      say("a common at mid-side stands where the mast's bearer lies"),
                      say("Set an even number of rafters, or −1 for automatic."))
    if cap.bearer_half - (cap.plate_r - cap.plate_w) < LEAST_BEARING:
        yield Finding("mast", "heel_height", length_text(cap.heel),
                      say("the sheathing leaves the mast's bearer less than {least_bearing} of plate",
                          least_bearing=length_text(LEAST_BEARING)), say("Raise the heel, or take a shallower frame stock."))
    if cap.mast > base.frame_w - 30.0 or base.frame_t < STEP_BORE + 14.0:
        yield Finding("mast", "mast_diameter", length_text(spec.mast_diameter),
                      say("its step is cut from frame stock {frame_w} × {frame_t}", frame_w=length_text(base.frame_w),
                          frame_t=length_text(base.frame_t)), say("Choose a thinner mast, or larger frame stock."))
    if cap.post_bottom < cap.plate_top + base.frame_w + base.frame_t + 10.0:
        yield Finding("mast", "roof_pitch", f"{cap.pitch:g}°",
                      say("there is no room for bearer and step under the king post"),
                      say("Make the roof steeper, or leave the mast out."))


def _ridge(spec: Spec, at: Sizes) -> Iterator[Finding]:
    """What a ridge asks for, and a rectangle's hip roof."""
    cap = at.cap
    if spec.end_pitch and (cap.post_flats or cap.gables):
        yield Finding("end pitch", "end_pitch", f"{spec.end_pitch:g}°", say("only the hip roof of a rectangle has end faces"),
                      say("Set it to 0, or take a rectangle and a hip roof."))
    if cap.post_flats:
        return
    deep = at.peak - at.ridge_bottom
    if deep > spec.ridge_stock.width:
        yield Finding("ridge", "ridge_stock", say("“{name}”", name=spec.ridge_stock.name),
                      say("to cover the rafters' plumb cuts the ridge must be {deep} deep, and the stock is {width} wide",
                          deep=least_text(deep), width=most_text(spec.ridge_stock.width)),
                      say("Choose wider stock, or make the rafters shallower or the roof flatter."))
    if cap.gables:
        return
    if cap.rafters % 2 == 0:
        yield Finding("ridge", "rafters_per_side", str(cap.rafters),
                      say("a common must stand at mid-side of a rectangle's short sides, to meet the ridge's end"),
                      say("Set an odd number of rafters, or −1 for automatic."))
    length = 2.0 * max(at.ridge_half(side) for side in at.eaves)
    if length < cap.rafter_t + LEAST_RIDGE:
        least = least_text(cap.rafter_t + LEAST_RIDGE)
        if spec.end_pitch:
            yield Finding("ridge", "end_pitch", f"{spec.end_pitch:g}°",
                          say("it leaves a ridge of {length}, and two commons side by side need {least}",
                              length=length_text(max(0.0, length)), least=least), say("Make it steeper, or the vent longer."))
            return
        yield Finding("ridge", "length", length_text(spec.length),
                      say("its roof's ridge would be {length} long, and two commons side by side need {least}",
                          length=length_text(length), least=least),
                      say("Make it and the width differ by {least} or more, or set it to 0 for a square.", least=least))


def _gable(spec: Spec, at: Sizes) -> Iterator[Finding]:
    """The barge boards cover what ends on them, and there is room for slats."""
    plan = at.plan
    if spec.roof_form != "gable":
        return
    if plan.sides != 4:
        yield Finding("gable", "roof_form", say("“gable”"), say("only a plan of 4 sides can have gables, and this has "
                                                                "{sides}", sides=plan.sides),
                      say("Choose a hip roof, or 4 sides."))
        return
    need = barge_width(at)
    if need > spec.fascia_stock.width:
        yield Finding("barge board", "fascia_stock", say("“{name}”", name=spec.fascia_stock.name),
                      say("barge boards must be {need} wide to cover the ends of ridge and eaves, and the stock is {width}",
                          need=least_text(need), width=most_text(spec.fascia_stock.width)),
                      say("Choose wider fascia stock, or a narrower overhang."))
    if spec.gable_end == "louvered" and gable_slats(at) < LEAST_GABLE_SLATS:
        yield Finding("gable louvers", "gable_end", say("“louvered”"),
                      say("there is room for {gable_slats} slats of {least_slat} or more under the peak; "
                          "{least_gable_slats} are the least", gable_slats=gable_slats(at),
                          least_slat=length_text(LEAST_SLAT), least_gable_slats=LEAST_GABLE_SLATS),
                      say("Make the roof steeper or the vent wider, or board the gables."))


def _flare(spec: Spec, at: Sizes) -> Iterator[Finding]:
    """The break of a flared roof lies on the rafters, and they keep their depth above it."""
    cap = at.cap
    if spec.roof_form != "flared hip":
        return
    if cap.eave_pitch > cap.pitch - LEAST_BREAK:
        yield Finding("flare", "flare_pitch", f"{cap.eave_pitch:g}°",
                      say("the eave of a flared roof must be {least_break:g}° flatter than its faces at {pitch:.1f}°",
                          least_break=LEAST_BREAK, pitch=cap.pitch),
                      say("Set it to {most:g}° or less, or take a plain hip roof.",
                          most=math.floor(cap.pitch - LEAST_BREAK)))
    highest = cap.plate_r / 2.0
    if cap.break_r < highest:
        yield Finding("flare", "flare_reach", length_text(cap.tail_r - cap.break_r),
                      say("the break must lie below the middle of the rafters"),
                      say("Set it to {most} or less.", most=most_text(cap.tail_r - highest)))
    if cap.rafter_d < LEAST_RAFTER:
        yield Finding("flare", "rafter_stock", say("“{name}”", name=spec.rafter_stock.name),
                      say("sawn to both pitches the rafters keep {rafter_d} of their depth above the break and must keep "
                          "{least_rafter}", rafter_d=length_text(max(0.0, cap.rafter_d)),
                          least_rafter=length_text(LEAST_RAFTER)),
                      say("Choose wider stock, or make the flare shorter or steeper."))


def _bays(spec: Spec, at: Sizes) -> Iterator[Finding]:
    cap = at.cap
    if not rafter_lines(at, at.eaves[0]):
        return
    along = 2.0 * cap.plate_r * at.plan.slope
    if cap.gables:
        along = 2.0 * at.plan.half(at.eaves[0], cap.plate_r) - cap.rafter_t
    bay = along / (cap.rafters + 1)
    if bay < LEAST_BAY:
        yield Finding("rafters", "rafters_per_side", str(cap.rafters),
                      say("they would stand {bay} apart; {least_bay} is the least", bay=length_text(bay),
                          least_bay=length_text(LEAST_BAY)),
                      say("Take {most} or fewer.", most=max(0, math.floor(along / LEAST_BAY) - 1)))


CHECKS = (_notch, _tail, _eave, _plate, _gussets, _king_post, _ridge, _gable, _flare, _mast, _bays)
