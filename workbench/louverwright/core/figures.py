# SPDX-License-Identifier: LGPL-2.1-or-later
"""What follows from a vent: sizes, air, weights.  One table of outputs, as the parameters have theirs."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cached_property, lru_cache
from typing import Any

from .assembly import Assembly, Part, board_volume_and_centre
from .cap import rafter_lines
from .dimensions import sizes
from .feet import feet
from .gable import gable_half, gable_slats
from .geometry import Vec, add, scale
from .kinds import BASE, LOUVER, ROOF
from .layout import layout
from .row import spacing, vents_alike
from .saying import Text, joined, say
from .sizes import Sizes, opening_halves
from .sizing import AirReport, net_free_area, target_area, target_from_building
from .spec import Spec
from .survey import opening_at_foot
from .twist import reach

LENGTH, AREA, WEIGHT, ANGLE, COUNT, TEXT = "length", "area", "weight", "angle", "count", "text"


@dataclass(frozen=True)
class Output:
    """One row: mm, mm², kg, degrees; ``section`` says under which head the report prints it.

    An ``optional`` one is left out of the report where it is 0.
    """

    name: str
    kind: str
    doc: str
    section: str = "size"
    optional: bool = False

    @cached_property
    def property_name(self) -> str:
        """The name as a FreeCAD property; results do not share names with parameters."""
        return "".join(word.capitalize() for word in self.name.split("_"))

    @property
    def label(self) -> str:
        """The name in plain words."""
        return self.name.replace("_", " ")

    @property
    def tooltip(self) -> Text:
        """The doc, with the unit where the property itself has none: FreeCAD has one of mass only since 1.0."""
        return joined(" ", (say(self.doc), say("In kg."))) if self.kind == WEIGHT else say(self.doc)


OUTPUTS: tuple[Output, ...] = (
    Output("overall_width", LENGTH, "Width of the vent over the cladding."),
    Output("overall_length", LENGTH, "Length of the vent over the cladding, along the ridge; as the width but on a "
           "rectangle."),
    Output("overall_height", LENGTH, "From the ridge to the roof's peak."),
    Output("base_top", LENGTH, "Top of the base above the ridge."),
    Output("stage_height", LENGTH, "Height of the louver stage's frame."),
    Output("eave_width", LENGTH, "Width of the vent's roof over the fascia; of a rectangle's the smaller."),
    Output("slats", COUNT, "Slats in one panel, without the sill."),
    Output("slat_spacing", LENGTH, "From slat to slat, plumb."),
    Output("slat_gap", LENGTH, "Clear gap between slats, square to them."),
    Output("rain_overlap", LENGTH, "How far slats overlap at the rain angle."),
    Output("face_pitch", ANGLE, "Pitch of the vent's roof faces, which is not the slope of its hips."),
    Output("hip_slope", ANGLE, "Slope of the hips, which is not the pitch of the faces; 0 for a gable roof.",
           optional=True),
    Output("end_face_pitch", ANGLE, "Pitch of a rectangle's end faces, where it differs; else 0.", optional=True),
    Output("kicked_pitch", ANGLE, "Pitch of the faces below the break of a flared roof; 0 where it is not flared.",
           optional=True),
    Output("kicked_hip_slope", ANGLE, "Slope of the hips below the break of a flared roof; 0 where it is not flared.",
           optional=True),
    Output("gable_slats", COUNT, "Slats in each gable end, without the sill.", optional=True),
    Output("rafters_each_side", COUNT, "Jacks and commons on each side with an eave; of a rectangle on its long sides."),
    Output("heel", LENGTH, "Sheathing's underside above the plate's outer edge, plumb."),
    Output("opening_left", LENGTH, "What the pitch's error opens up at the foot, left slope.", "survey"),
    Output("opening_right", LENGTH, "What the pitch's error opens up at the foot, right slope.", "survey"),
    Output("pitch_in_use_left", ANGLE, "Pitch of the barn's left slope that the vent is made to.", "survey"),
    Output("pitch_in_use_right", ANGLE, "Pitch of the barn's right slope that the vent is made to.", "survey"),
    Output("reading_along", LENGTH, "Where drops are read: from the vent's axis along the ridge.", "survey"),
    Output("reading_across", LENGTH, "Where drops are read: from the vent's axis square to the ridge.", "survey"),
    Output("twist_left", LENGTH, "How much further the left slope drops at one end than at the other.", "survey"),
    Output("twist_right", LENGTH, "How much further the right slope drops at one end than at the other.", "survey"),
    Output("front_lower", LENGTH, "How far the roof lies lower at the vent's +X end than at its −X end, both slopes' mean; "
           "negative where the −X end is lower.", "survey"),
    Output("most_to_scribe", LENGTH, "Most wood left on a leg's foot below the slopes in use, plumb.", "survey"),
    Output("louver_area", AREA, "Net free area of the louvers: head and sill gaps are closed, screen taken off.", "air"),
    Output("throat_area", AREA, "Clear area inside the base frame and the panels.", "air"),
    Output("roof_opening_side", LENGTH, "Side of the opening to cut in the roof, level; across the ridge.", "air"),
    Output("roof_opening_length", LENGTH, "Length of the opening along the ridge, level; as its side but on a rectangle.",
           "air"),
    Output("roof_opening_area", AREA, "Area of the opening in the roof, level; ridge board and rafters that stay "
           "take from it.", "air"),
    Output("free_area", AREA, "The least of louvers, throat and roof opening.", "air"),
    Output("narrowest", TEXT, "Which of the three is the least.", "air"),
    Output("wanted_area", AREA, "Free area wanted from this vent; 0 where no target is set.", "air", True),
    Output("base_weight", WEIGHT, "Weight of the base.", "weight"),
    Output("louver_weight", WEIGHT, "Weight of the louver stage.", "weight"),
    Output("roof_weight", WEIGHT, "Weight of the roof stage, without its covering.", "weight"),
    Output("total_weight", WEIGHT, "Weight of the vent, without covering, flashing and paint.", "weight"),
    Output("weight_left_out", WEIGHT, "Weight of the parts that are left out, as drawn; no other weight has it.", "weight",
           optional=True),
    Output("centre_height", LENGTH, "Height of the centre of gravity above the ridge.", "weight"),
    Output("roof_covering", AREA, "Area of the vent's roof to be covered.", "take-off"),
    Output("hip_length", LENGTH, "Length of one hip of the covering, eave to peak; 0 for a gable roof.", "take-off",
           optional=True),
    Output("verge_length", LENGTH, "Length of all verges of a gable roof together, up the slope.", "take-off",
           optional=True),
    Output("eave_length", LENGTH, "Length of all eaves together, verges apart.", "take-off"),
    Output("ridge_run", LENGTH, "Length of the vent's own ridge in the covering; 0 where the hips meet in a point.",
           "take-off", optional=True),
    Output("pieces", COUNT, "Pieces to cut.", "count"),
    Output("marks", COUNT, "Different marks.", "count"),
    Output("pieces_left_out", COUNT, "Pieces of the parts that are left out: not made here, and in no other count.", "count",
           optional=True),
    Output("vent_spacing", LENGTH, "From axis to axis of the vents along the ridge; 0 for one vent.", "row"),
    Output("pieces_of_all_vents", COUNT, "Pieces to cut for all vents on the ridge.", "row"),
    Output("weight_of_all_vents", WEIGHT, "Weight of all vents on the ridge together.", "row"),
)


@lru_cache(maxsize=32)
def figures(spec: Spec) -> Mapping[str, Any]:
    """Every output of ``OUTPUTS`` by its name (mm, mm², kg, degrees)."""
    at, assembly = sizes(spec), layout(spec)
    one = {**_sizes(spec, at), **_openings(spec, at), **_roof(spec, at), **_air(spec, at),
           **_weights(assembly), **_take_off(at), "pieces": len(assembly.pieces), "marks": len(assembly.parts),
           "pieces_left_out": sum(part.count for part in assembly.left_out)}
    vents = vents_alike(spec)
    return {**one, "vent_spacing": spacing(spec), "pieces_of_all_vents": vents * one["pieces"],
            "weight_of_all_vents": vents * one["total_weight"]}


def _sizes(spec: Spec, at: Sizes) -> dict[str, Any]:
    louver, cap = at.louver, at.cap
    peak = at.peak + cap.sheathing_t / math.cos(math.radians(cap.pitch))
    return {
        "overall_width": at.base.width + 2.0 * at.plan.out(1), "overall_length": at.base.width + 2.0 * at.plan.out(0),
        "overall_height": peak, "base_top": at.base.top,
        "stage_height": louver.top - at.base.top, "slats": louver.slats,
        "eave_width": 2.0 * min(at.roof_reach(0), at.roof_reach(1)),
        "slat_spacing": louver.spacing, "slat_gap": louver.gap, "rain_overlap": louver.overlap(spec.rain_angle),
        "face_pitch": cap.pitch, "hip_slope": 0.0 if cap.gables else cap.hip_slope,
        "end_face_pitch": 0.0 if cap.runs == (1.0, 1.0) else at.end_pitch,
        "kicked_pitch": cap.eave_pitch if cap.flared else 0.0,
        "kicked_hip_slope": _kicked_hip(at) if cap.flared else 0.0,
        "gable_slats": gable_slats(at) if cap.gables and spec.gable_end == "louvered" else 0,
        "rafters_each_side": max(len(rafter_lines(at, side)) for side in at.eaves), "heel": cap.heel,
    }


def _openings(spec: Spec, at: Sizes) -> dict[str, Any]:
    """What the pitch's error opens at the far foot of each slope; 0 on a level roof."""
    def opens(pitch: float, half: float) -> float:
        return float(opening_at_foot(half, pitch, spec.pitch_error))

    half = at.base.width / 2.0 + at.plan.out(1)
    if at.roof.single:
        return {"opening_left": opens(at.roof.left, half), "opening_right": 0.0}
    return {"opening_left": opens(at.roof.left, half - at.roof.ridge),
            "opening_right": opens(at.roof.right, half + at.roof.ridge)}


def _roof(spec: Spec, at: Sizes) -> dict[str, Any]:
    """The barn's slopes in use, where they are read, and what a twist asks of the legs; 0 where none was read."""
    along, across = reach(at.plan, at.base.width)
    found = at.readings
    return {
        "pitch_in_use_left": at.roof.left, "pitch_in_use_right": 0.0 if at.roof.single else at.roof.right,
        "reading_along": along, "reading_across": across, "twist_left": found.twist_left if found else 0.0,
        "twist_right": found.twist_right if found else 0.0, "front_lower": found.front_lower if found else 0.0,
        "most_to_scribe": max(each.wood for each in feet(spec, at))}


def wanted_area(spec: Spec) -> float:
    """The free area wanted from one vent (mm²): as given, by the floor, or by the building's width; 0 for none."""
    if spec.air_target:
        return float(spec.air_target) * 1e6
    if spec.floor_area:
        return float(target_area(spec.floor_area * 1e6, spec.floor_ratio)) / int(spec.vents)
    if spec.building_width and spec.ridge_length:
        return float(target_from_building(spec.building_width, spec.ridge_length, spec.vents))
    return 0.0


def air_report(spec: Spec) -> AirReport:
    """What the air passes one after another, against the target.

    The plate's ring is above the louvers and so not in the air's way: the throat is what base frame and panels leave.
    """
    at = sizes(spec)
    louver, base, plan = at.louver, at.base, at.plan
    louvers = sum(float(net_free_area(louver.gap, louver.panel(side).clear_width, louver.slats, 1, spec.screen_factor))
                  for side in range(plan.sides)) + _gable_area(spec, at)
    throat = plan.area(min(base.inner_r, louver.batten_r))
    long, wide = _opening(spec, at)
    return AirReport(louvers, throat, long * wide, wanted_area(spec))


def _gable_area(spec: Spec, at: Sizes) -> float:
    """Free area of both gables' louvers: each gap by the clear width at the slat above it, where it is narrower."""
    if not at.cap.gables or spec.gable_end != "louvered":
        return 0.0
    louver = at.louver
    widths = (2.0 * gable_half(at, at.cap.plate_top + index * louver.spacing) for index in range(1, gable_slats(at) + 1))
    return len(at.cap.gables) * sum(float(net_free_area(louver.gap, width, 1, 1, spec.screen_factor)) for width in widths)


def _kicked_hip(at: Sizes) -> float:
    """Slope of the hips below the break: as much flatter than above it as the faces are (tangents; degrees)."""
    hip, face, eave = (math.tan(math.radians(angle)) for angle in (at.cap.hip_slope, at.cap.pitch, at.cap.eave_pitch))
    return math.degrees(math.atan(hip * eave / face))


def _opening(spec: Spec, at: Sizes) -> tuple[float, float]:
    """Length and width of the opening in the roof."""
    long, wide = opening_halves(at, float(spec.opening_margin))
    return 2.0 * max(0.0, long), 2.0 * max(0.0, wide)


def _air(spec: Spec, at: Sizes) -> dict[str, Any]:
    air = air_report(spec)
    long, wide = _opening(spec, at)
    return {"louver_area": air.louvers, "throat_area": air.throat, "roof_opening_side": wide,
            "roof_opening_length": long,
            "roof_opening_area": air.roof_opening, "free_area": air.least, "narrowest": air.narrowest,
            "wanted_area": air.target}


def weight_and_centre(parts: Iterable[Part]) -> tuple[float, Vec]:
    """Weight (kg) and centre of gravity (mm, assembly frame) of parts; (0, origin) for none."""
    total, moment = 0.0, (0.0, 0.0, 0.0)
    for part in parts:
        centre = board_volume_and_centre(part.board)[1]
        for piece in part.pieces:
            total += part.weight
            moment = add(moment, scale(piece.placement.point(centre), part.weight))
    return total, scale(moment, 1.0 / total) if total else moment


def _weights(assembly: Assembly) -> dict[str, Any]:
    stages = {stage: weight_and_centre(p for p in assembly.parts if p.kind.stage == stage)[0]
              for stage in (BASE, LOUVER, ROOF)}
    total, centre = weight_and_centre(assembly.parts)
    return {"base_weight": stages[BASE], "louver_weight": stages[LOUVER], "roof_weight": stages[ROOF],
            "total_weight": total, "centre_height": centre[2],
            "weight_left_out": weight_and_centre(assembly.left_out)[0]}


def _take_off(at: Sizes) -> dict[str, Any]:
    cap, plan = at.cap, at.plan
    eaves = sum(2.0 * at.roof_half(side) for side in at.eaves)
    ridge = max(at.roof_half(side) if cap.gables else at.ridge_half(side) for side in at.eaves)
    covering = sum(face_area(at, side) for side in at.eaves)
    verges = 0.0
    if cap.gables:
        side = at.eaves[0]
        verges = 4.0 * (at.eave(side) + plan.out(side)) / math.cos(math.radians(cap.pitch))
    return {"roof_covering": covering, "ridge_run": 2.0 * ridge, "eave_length": eaves, "verge_length": verges,
            "hip_length": 0.0 if cap.gables else _hip_length(at)}


def face_area(at: Sizes, side: int) -> float:
    """Area of a face, from eave to ridge or peak."""
    cap = at.cap
    half, top = at.roof_half(side), at.roof_half(side) if cap.gables else at.ridge_half(side)
    whole = at.eave(side) - at.ridge_r(side)
    low = (at.eave(side) - at.real(side, cap.break_r)) if cap.flared else 0.0
    middle = half + (top - half) * low / whole
    upper = (top + middle) * (whole - low) / math.cos(math.radians(cap.pitch_of(side)))
    return upper + (middle + half) * low / math.cos(math.radians(cap.eave_pitch_of(side)))


def _hip_length(at: Sizes) -> float:
    """Length of the hip at the first corner along the underside of the covering's bed, eave to peak or ridge."""
    cap = at.cap
    run = math.dist(at.roof_corner(0), at.hip_foot(0))
    share = at.cap.break_r / (cap.tail_r + cap.fascia_t) if cap.flared else 1.0
    upper, lower = run * share, run * (1.0 - share)
    return math.hypot(upper, cap.under(0.0) - cap.under(share * (cap.tail_r + cap.fascia_t))) + math.hypot(
        lower, cap.under(cap.break_r) - cap.under(cap.tail_r + cap.fascia_t) if cap.flared else 0.0)
