# SPDX-License-Identifier: LGPL-2.1-or-later
"""A twisted roof on paper: the drops that were read, and what to scribe off the legs at each corner."""

from __future__ import annotations

from ..core.assembly import Part, Piece
from ..core.base import FOOT
from ..core.feet import Foot, feet, foot, ground
from ..core.geometry import Plane, Vec, scale
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
    return (f"The slopes follow from four drops below the ridge's highest point, read {write.length(found.along)} along and "
            f"{write.length(found.across)} across the ridge from the axis; front is the vent's +X end. Each slope falls to "
            "the smaller of its two drops, so that the roof lies on it or below it. Every leg is long enough for the lowest "
            "place under its corner. Soles are cut to these slopes: pack them where the roof is lower. Cladding and "
            "corner boards are long enough for the lowest place under them as well: scribe their feet to stand "
            f"{write.length(job.spec.cladding_clearance)} clear of the covering.")


def scribe_rows(job: Job) -> tuple[tuple[str, ...], ...]:
    """Corner, place of its outer arris, marks of its legs, how far the roof is lower, wood left, and what to scribe off."""
    return tuple(_row(job, each) for each in feet(job.spec, job.sizes))


def _row(job: Job, each: Foot) -> tuple[str, ...]:
    write, arris = job.writer, ground(job.sizes, each.corner)[1]
    off = " to ".join(dict.fromkeys(write.length(mm) for mm in each.off))
    return (corner_name(arris), _place(job, arris), ", ".join(_marks(job, each.corner)), write.length(each.most),
            write.length(each.wood), off)


def foot_text(part: Part, job: Job) -> str:
    """How much wood a foot keeps to be scribed; '' for parts without feet, and where nothing is left on."""
    if part.kind.id.startswith(("base.cladding.", "base.corner.")):
        return _cladding_text(part, job)
    if not part.kind.id.startswith("base.leg."):
        return ""
    plan = job.sizes.plan
    wood = {job.writer.length(foot(job.spec, job.sizes, plan.corner(each.side, each.end)).wood) for each in part.pieces}
    if wood == {job.writer.length(0.0)}:
        return ""
    return f"{' or '.join(sorted(wood))} of its length, plumb at the foot, is scribing wood: do not add it again"


def _cladding_text(part: Part, job: Job) -> str:
    planes = [plane for cut in part.board.cuts if cut.name == FOOT for plane in cut.planes]
    wood = {job.writer.length(_below_clearance(planes[0], piece, job)) for piece in part.pieces if planes}
    if not job.sizes.readings or not wood or wood == {job.writer.length(0.0)}:
        return ""
    return (f"{' or '.join(sorted(wood))} of its length, plumb at the foot, is scribing wood: do not add it again; scribe the "
            f"foot to stand {job.writer.length(job.spec.cladding_clearance)} clear of the covering")


def _below_clearance(plane: Plane, piece: Piece, job: Job) -> float:
    """How far a board's foot was lowered from its clearance over the slopes in use (mm), read off a plane of the foot."""
    place, ridge = piece.placement, job.sizes.roof.ridge
    normal, point = place.direction(plane.normal), place.point(scale(plane.normal, plane.offset))
    over_ridge = point[2] + (normal[0] * point[0] + normal[1] * (point[1] - ridge)) / normal[2]
    return float(job.spec.cladding_clearance) - over_ridge


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
