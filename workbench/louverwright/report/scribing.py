# SPDX-License-Identifier: LGPL-2.1-or-later
"""A twisted roof on paper: the drops that were read, and what to scribe off the legs at each corner."""

from __future__ import annotations

from ..core.assembly import Part
from ..core.feet import Foot, feet, foot, ground
from ..core.geometry import Vec
from ..core.plan import LEFT, RIGHT
from ..core.twist import Readings
from .job import Job

SCRIBE_NOTE = ("All plumb. “Roof lower by” is the most that the roof lies below the slopes in use under that corner's legs; "
               "“wood left” is what they keep below those slopes; of it so much comes off, the least where the roof is lowest "
               "and the most where it is highest.")


def twist_rows(job: Job) -> tuple[tuple[str, str], ...]:
    """The drops as they were read, and how far the roof is twisted; () where none were."""
    found, write, figures = job.sizes.readings, job.writer, job.figures
    if not found:
        return ()
    ends = [("Ridge and slopes", "as low in front as at the back")]
    if round(found.front_lower, 1):
        ends = [(f"Lower {'in front' if found.front_lower > 0.0 else 'at the back'}, both slopes' mean",
                 write.length(abs(found.front_lower)))]
    return (("Drops left, front and back", f"{write.length(found.left_front)} and {write.length(found.left_back)}"),
            ("Drops right, front and back", f"{write.length(found.right_front)} and {write.length(found.right_back)}"),
            ("Twist of the left slope", write.length(figures["twist_left"])),
            ("Twist of the right slope", write.length(figures["twist_right"])), *ends)


def twist_words(job: Job, found: Readings) -> str:
    """Where the drops were read, what follows from them, and what becomes of soles and cladding."""
    write = job.writer
    open_by = write.length(job.spec.cladding_clearance + found.lowest)
    return (f"The slopes follow from four drops below the ridge's highest point, read {write.length(found.along)} along and "
            f"{write.length(found.across)} across the ridge from the axis; front is the vent's +X end. Each slope falls to "
            "the smaller of its two drops, so that the roof lies on it or below it. Every leg is long enough for the lowest "
            "place under its corner. Soles are cut to these slopes: pack them where the roof is lower. There "
            f"the cladding's foot stands up to {open_by} above the covering: let the flashing cover it.")


def scribe_rows(job: Job) -> tuple[tuple[str, ...], ...]:
    """Corner, place of its outer arris, marks of its legs, how far the roof is lower, wood left, and what to scribe off."""
    return tuple(_row(job, each) for each in feet(job.spec, job.sizes))


def _row(job: Job, each: Foot) -> tuple[str, ...]:
    write, arris = job.writer, ground(job.sizes, each.corner)[1]
    off = " to ".join(dict.fromkeys(write.length(mm) for mm in each.off))
    return (corner_name(arris), _place(job, arris), ", ".join(_marks(job, each.corner)), write.length(each.most),
            write.length(each.wood), off)


def foot_text(part: Part, job: Job) -> str:
    """How much wood a leg's foot keeps to be scribed; '' for other parts, and where nothing is left on."""
    if not part.kind.id.startswith("base.leg."):
        return ""
    plan = job.sizes.plan
    wood = {job.writer.length(foot(job.spec, job.sizes, plan.corner(each.side, each.end)).wood) for each in part.pieces}
    if wood == {job.writer.length(0.0)}:
        return ""
    return f"{' or '.join(sorted(wood))} of its length, plumb at the foot, is scribing wood: do not add it again"


def corner_name(point: Vec) -> str:
    """'Front left' and the like: front is +X, left +Y; a corner on the ridge or on the axis has one word."""
    along = "" if abs(point[0]) < 1.0 else "front" if point[0] > 0.0 else "back"
    across = "" if abs(point[1]) < 1.0 else "left" if point[1] > 0.0 else "right"
    return f"{along} {across}".strip().capitalize()


def _place(job: Job, point: Vec) -> str:
    """How far a point stands from the axis along and across the ridge."""
    words = ("front", "back"), ("left", "right")
    return ", ".join(f"{job.writer.length(abs(value))} {plus if value > 0.0 else minus}"
                     for value, (plus, minus) in zip(point[:2], words, strict=True) if abs(value) >= 1.0)


def _marks(job: Job, corner: int) -> list[str]:
    """Marks of a corner's two legs, the one on its left first, as seen from outside."""
    ends = ((corner, RIGHT), (job.sizes.plan.neighbour(corner, RIGHT), LEFT))
    return [part.mark for side, end in ends for part in job.assembly.parts for piece in part.pieces
            if piece.kind.startswith("base.leg.") and (piece.side, piece.end) == (side, end)]
