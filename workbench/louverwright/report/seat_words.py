# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where slats that are only butted lie on a gable's raking stiles and how they are screwed; where its lookouts stand.

Everything is read off the pieces as they stand: a slat's two faces cut with the stile's marked face.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from ..core.assembly import Assembly, Part, Piece, board_shell, board_solid
from ..core.gable import lookout_lines
from ..core.geometry import Z_AXIS, Placement, Plane, Vec, add, dot, scale, sub, unit
from ..core.saw import end_spans
from ..core.solid import END_A, END_B, FAR_EDGE, MARKED_FACE, REFERENCE_EDGE
from .job import Job, Writer
from .joint_words import JointRow, datum
from .lettered import SAME_POINT

#: How deep a screw reaches into a slat where it has the room, the wood that it leaves before it, and its shank (mm, common
#: practice).
SCREW_HOLD, SCREW_WOOD, SCREW_SHANK = 38.0, 8.0, 4.0
#: Where along a slat's end the two screws stand, as shares of its middle line from either edge: the end slants, and a screw
#: near its acute corner would come out of the slat's edge.
SHARES = ((0.2, 0.5), (0.5, 0.8))


@dataclass(frozen=True)
class SlatEnd:
    """The end of one slat on a stile's marked face, in the stile's board frame.

    ``low`` and ``high`` are the slat's lower and upper faces as planes (waste outside the slat), ``sides`` all its faces but
    the end, ``corners`` its corners on the stile (mm), the two of the lower arris first, each pair from the reference edge to
    the far edge.
    """

    low: Plane
    high: Plane
    sides: tuple[Plane, ...]
    corners: tuple[Vec, ...]

    def lower(self, y: float, thickness: float) -> float:
        """Where the lower arris' line crosses the marked face at ``y`` across (mm along from end A's long point)."""
        a, b, c = self.low.normal
        return (self.low.offset - b * y - c * thickness) / a

    @property
    def into(self) -> Vec:
        """The unit direction of a screw from the stile: along the slat's faces, as square to the stile as these allow."""
        return unit(sub(Z_AXIS, scale(self.high.normal, self.high.normal[2])))

    def middle(self, share: float) -> Vec:
        """A point of the middle line between the arrises, by its share of the way from the reference edge (mm)."""
        a, b, c, d = self.corners
        start, stop = scale(add(a, c), 0.5), scale(add(b, d), 0.5)
        return add(start, scale(sub(stop, start), share))

    def room(self, share: float) -> float:
        """How far a screw that starts there may go before it is too near to a face of the slat ahead of it (mm)."""
        start = self.middle(share)
        return min((-side.height(start) - SCREW_WOOD) / dot(side.normal, self.into) for side in self.sides
                   if dot(side.normal, self.into) > SLANT)

    @property
    def screws(self) -> tuple[float, ...]:
        """Which shares the two screws stand at: those away from the end's acute corner."""
        return max(SHARES, key=lambda shares: min(self.room(share) for share in shares))


#: A face that a screw nears by less than this for each mm is alongside it.
SLANT = 1e-6


def seats(part: Part, assembly: Assembly) -> tuple[SlatEnd, ...]:
    """The slats on a raking stile, from its foot up; none on any other part."""
    if part.kind.id != "roof.gable.stile":
        return ()
    own = part.pieces[0]
    pieces = {piece.id: piece for each in assembly.whole for piece in each.pieces}
    ids = {id for joint in assembly.joints for id in (joint.first, joint.second) if own.id in (joint.first, joint.second)}
    slats = [pieces[id] for id in ids if pieces[id].kind == "roof.gable.slat"]
    return tuple(_seat(part, slat, assembly.part_of(slat.id)) for slat in sorted(slats, key=lambda slat: slat.index))


def _seat(stile: Part, slat: Piece, of: Part) -> SlatEnd:
    place, stands = stile.pieces[0].placement, slat.placement
    up = stands.z
    low, high = (place.local_plane(Plane.through(stands.point((0.0, 0.0, z)), scale(up, way)))
                 for z, way in ((0.0, -1.0), (of.board.thickness, 1.0)))
    points = [place.local_point(stands.point(p)) for p in board_shell(of.board).points]
    on = [p for p in points if abs(p[2] - stile.board.thickness) < SAME_POINT]
    arrises = [sorted((p for p in on if abs(face.height(p)) < SAME_POINT), key=lambda p: p[1]) for face in (low, high)]
    planes = {facet.plane for cell in board_solid(of.board) for facet in cell}
    sides = tuple(place.local_plane(_standing(stands, plane)) for plane in planes)
    return SlatEnd(low, high, sides, tuple(p for arris in arrises for p in (arris[0], arris[-1])))


def _standing(place: Placement, plane: Plane) -> Plane:
    """A board's plane in the frame around it."""
    return Plane.through(place.point(scale(plane.normal, plane.offset)), place.direction(plane.normal))


def seat_rows(part: Part, job: Job) -> list[JointRow]:
    """A stile's marks for its slats and the screws that hold them; where the lookouts stand."""
    write = job.writer
    if part.kind.id == "roof.lookout":
        places = ", ".join(write.bare(place) for place in lookout_lines(job.sizes))
        return [JointRow("where they stand", "behind each barge board", "upper edge to the sheathing",
                         f"middle, down the barge board's upper edge from its peak: {places}", part.count)]
    holes = screw_holes(part, job)
    return [_marks(seats(part, job.assembly), part, write), _screws(holes)] if holes else []


def _marks(found: tuple[SlatEnd, ...], part: Part, write: Writer) -> JointRow:
    board, seat = part.board, found[0]
    across = seat.lower(board.width, board.thickness) - seat.lower(0.0, board.thickness)
    lean = math.degrees(math.atan2(abs(across), board.width))
    a, b = (REFERENCE_EDGE, FAR_EDGE) if across > 0.0 else (FAR_EDGE, REFERENCE_EDGE)
    thick = abs(seat.high.offset + seat.low.offset) / abs(seat.low.normal[0])
    size = f"{write.angle(lean)} from square; each slat {write.bare(thick)} along the edge"
    face = (f"{part.called(MARKED_FACE)}: lines from the {part.called(a)} up towards the {part.called(END_B)} at the "
            f"{part.called(b)}; the slats lie on the {part.called(END_B)}'s side of them, butted, not housed")
    places = "; ".join(f"on the {part.called(edge)} " + ", ".join(_place(each, edge, part, write) for each in found)
                       for edge in (REFERENCE_EDGE, FAR_EDGE))
    return JointRow(f"marks for {len(found)} slats", face, size,
                    f"lower arris of each slat, from {datum(part)}: {places}", len(found))


def _place(seat: SlatEnd, edge: str, part: Part, write: Writer) -> str:
    board = part.board
    x = seat.lower(0.0 if edge == REFERENCE_EDGE else board.width, board.thickness)
    a, b = (span.at(edge, MARKED_FACE) for span in end_spans(board))
    return write.bare(x) if a - SAME_POINT < x < b + SAME_POINT else "off the wood"


@dataclass(frozen=True)
class ScrewHoles:
    """The holes for the screws of a raking stile's slats: how many to a slat and in all, the bit, how it leans, the screws'
    length and the places, in words."""

    each: int
    number: int
    bit: str
    lean: str
    screw: str
    place: str


def screw_holes(part: Part, job: Job) -> ScrewHoles | None:
    """A raking stile's holes; None for any other part.  A screw runs along the slat's faces and square to its marks, no deeper
    than it stays in the slat."""
    found, write = seats(part, job.assembly), job.writer
    if not found:
        return None
    board, seat = part.board, found[0]
    normal = seat.high.normal
    lean = math.asin(min(1.0, abs(normal[2])))
    towards = part.called(END_B if normal[2] * normal[0] > 0.0 else END_A)
    hold = min(SCREW_HOLD, *(each.room(share) for each in found for share in seat.screws))
    places = " and ".join(write.bare(seat.middle(share)[1]) for share in seat.screws)
    count = len(seat.screws)
    return ScrewHoles(
        count, count * len(found), f"Ø {write.bare(SCREW_SHANK)}",
        f"the {part.called(MARKED_FACE)}, square to the marks, the bit leaning {write.angle(math.degrees(lean))} "
        f"with its point towards the {towards}", write.length(board.thickness / math.cos(lean) + hold),
        f"half-way between each slat's two arrises, {places} across from the {part.called(REFERENCE_EDGE)}")


def _screws(holes: ScrewHoles) -> JointRow:
    return JointRow(
        f"{holes.each} screws into each slat, {holes.number} in all",
        f"bored from {holes.lean}: so it runs along the slat, which is bored for the thread. Screws driven and "
        "sunk from the other face; waterproof glue or sealant on the slats' ends",
        f"{holes.bit} right through; screws {holes.screw} long", holes.place, holes.number)
