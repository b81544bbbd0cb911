# SPDX-License-Identifier: LGPL-2.1-or-later
"""The report's fixed sentences, and those that a job's own figures call for."""

from __future__ import annotations

from ..core.figures import air_report
from ..core.gable import DRIP_NOSE, nose
from ..core.kinds import STAGES
from ..core.sizing import vents_advised
from ..core.units import rounded
from .job import Job
from .left_out import marks_left_out
from .part_sheet import part_sheets

CAUTIONS = (
    "Roofs and ladders: work from a scaffold or with fall protection, never alone, never on a wet or icy roof. "
    "A stage is lifted by tackle or by enough people; see the weights.",
    "Fastening to the building, wind and snow: this report gives weights, areas and centres of gravity, not a "
    "structural design. Follow your local code and ask a licensed engineer.",
    "Check the pitch with a test piece on the roof before cutting feet, and one compound pair from scrap before "
    "cutting good boards.",
)

SAW_CAUTIONS = (
    "Eye and ear protection; guards on, push blocks and hold-downs in use; unplug the saw before changing blade or dado head.",
    "Short pieces, steep bevels and dado heads kick back: clamp the piece, keep hands well clear, and cut short "
    "pieces from a long stick.",
    "Pressure-treated wood: dust mask, gloves, and no burning of offcuts.",
)

HOW_TO_READ = (
    "Mitre is measured from a square cut across the board, bevel as the blade's tilt from upright. Tables that count "
    "from the edge or from the table give the complement, printed in brackets behind its cut. The gauge stands square and the "
    "blade upright where no mitre or bevel is named.",
    "A board lies with its marked face up: end A to the left, reference edge towards you in the drawings. Write both "
    "on the blank first. Lengths run from end A's long point. A point (120 | 35) lies 120 along from there and 35 "
    "across from the reference edge.",
    "An open circle with a letter in a drawing is a point to mark; the part's table gives its two measures. Dashed lines are "
    "edges that lie behind, a circle without a letter is a round hole.",
    "Left and right are as seen from outside. The vent's +X end looks along the ridge; left and right slopes are as "
    "seen looking that way.",
    "Finish: each part's block names the faces that stay bare for glue; all others are primed before assembly.",
    "The slope of a hip is not the pitch of the roof's faces: never set one for the other.",
)


def how_to_read(job: Job) -> tuple[str, ...]:
    """How the report is to be read, with your own saw's kerf, and what a gable roof needs besides."""
    kerf = job.writer.fine.length(job.spec.saw_kerf)
    told = (*HOW_TO_READ, "The blank is the smallest piece that the part can be cut from. Its length carries no allowance for "
            f"squaring, nor for what the saw takes between two pieces, {kerf} with yours.")
    if not job.sizes.cap.gables:
        return told
    return (*told, "Gable sides and eave sides are the barn's: a gable side faces along its ridge. The gables of the "
            "vent's own roof are called gable ends.")


def several_words(vents: int) -> str:
    """What the summary says of a job for several vents."""
    return (f"Make {vents} of each: the {vents} vents are alike. Sizes, areas and weights are one vent's, and so are "
            f"pieces and their places, unless all {vents} vents are named.")


def setup_words(vents: int) -> str:
    """What the set-up sheet says of its counts."""
    return f"All counts on this sheet, those behind a mark as well, are for all {vents} vents: set up once, cut for all."


def advice_lines(job: Job) -> tuple[str, ...]:
    """What is allowed but worth a look: overlap, air, pitch, cladding."""
    spec, at, write = job.spec, job.sizes, job.writer
    lines = []
    steepest = max(at.roof.left, at.roof.right)
    if at.cap.pitch < min(at.roof.left, at.roof.right) - 1e-6:
        lines.append(f"The vent's roof ({write.angle(at.cap.pitch)}) is flatter than the barn's "
                     f"({write.angle(steepest)}); most are as steep or steeper.")
    air = air_report(spec)
    if not air.target:
        lines.append("No target for the free area is set.")
    elif air.meets_target:
        lines.append(f"Free area {write.area(air.least)} meets the target of {write.area(air.target)}.")
    else:
        lines.append(f"Free area {write.area(air.least)}, held by the {air.narrowest}, misses the target of "
                     f"{write.area(air.target)} by {write.area(air.missing)}.")
    if spec.ridge_length and spec.vents < vents_advised(spec.ridge_length):
        lines.append(f"A ridge of {write.length(spec.ridge_length)} usually takes {vents_advised(spec.ridge_length)} vents.")
    worst = max(job.figures["opening_left"], job.figures["opening_right"])
    if worst > spec.cladding_clearance > 0.0:
        lines.append(f"If the pitch is off by {write.angle(spec.pitch_error)} the foot opens {write.length(worst)}, "
                     f"more than the cladding's clearance of {write.length(spec.cladding_clearance)}: measure again.")
    lines += _nose_advice(job)
    if job.assembly.left_out:
        lines.append(f"Left out, not made here: {marks_left_out(job)}. See “Left out” after the cut list.")
    lines.append("The base stands on its soles; flash it to the covering at least "
                 f"{write.length(100.0 if write.style.system == 'mm' else 101.6)} up the cladding.")
    return tuple(lines)


def _nose_advice(job: Job) -> list[str]:
    """Of a louvered gable's sill whose stock leaves its nose too short for a drip."""
    reach = nose(job.spec, job.sizes)
    if not job.sizes.cap.gables or job.spec.gable_end != "louvered" or reach >= DRIP_NOSE:
        return []
    return [f"The gable ends' sills reach {job.writer.length(reach)} beyond the plate, less than the "
            f"{job.writer.length(DRIP_NOSE)} that make a drip: the aprons under them carry the water off, so bed their upper "
            "edges in sealant, or take wider slat stock."]


def holding_lines(job: Job) -> tuple[str, ...]:
    """Rings of parts whose rounded lengths no longer sum to the whole, with what to hold and what to trim.

    A ring's rounding is what the printed lengths of its parts differ from the exact ones, all added up.
    """
    lines = []
    write = job.writer.fine
    for stage, (_, name) in STAGES.items():
        for kind in {s.part.kind.id: s.part.kind for s in part_sheets(job) if s.part.kind.stage == stage}.values():
            parts = job.assembly.of_kind(kind.id)
            count = sum(part.count for part in parts)
            if count < job.sizes.plan.sides or kind.id not in RINGS:
                continue
            moved = sum(part.count * abs(rounded(part.board.length, job.writer.style) - part.board.length)
                        for part in parts)
            if moved > 0.5:
                lines.append(f"{kind.name} ({name.lower()}): rounding moves its {count} lengths by "
                             f"{write.length(moved)} in all. {RINGS[kind.id]}")
    return tuple(lines)


#: Kinds that close a ring round the vent → what to hold and what to trim.
RINGS = {
    "base.rail.top": "Hold the frame: cut these to the line.",
    "louver.rail.bottom": "Hold the frame: cut these to the line.",
    "louver.rail.top": "Hold the frame: cut these to the line.",
    "louver.ring": "Fit the ring's last board to the gap.",
    "roof.plate": "Hold the plate: cut these to the line.",
    "roof.soffit": "Fit the last board to the gap.",
    "roof.fascia": "Fit the last board to the gap.",
}
