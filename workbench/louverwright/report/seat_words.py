# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where slats that are only butted lie on a gable's raking stiles, and how they are screwed: marks along the piece.

Everything is read off the pieces as they stand: a slat's two faces cut with the stile's marked face.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from ..core.assembly import Assembly, Part, Piece, board_shell
from ..core.geometry import Plane, scale
from ..core.saw import end_spans
from ..core.solid import END_A, END_B, FAR_EDGE, MARKED_FACE, REFERENCE_EDGE
from .job import Writer
from .joint_words import SAME_POINT, JointRow, datum

#: How deep a screw reaches into a slat, and its shank (mm, common practice).
SCREW_HOLD, SCREW_SHANK = 38.0, 4.0
#: Screws through the stile into each slat's end.
SCREWS = 2


@dataclass(frozen=True)
class Seat:
    """The end of one slat on a stile's marked face, in the stile's board frame.

    ``low`` and ``high`` are the slat's lower and upper faces as planes (waste outside the slat), ``corners`` its corners
    on the face (mm), the two of the lower arris first, each pair from the reference edge to the far edge.
    """

    low: Plane
    high: Plane
    corners: tuple[tuple[float, float], ...]

    def lower(self, y: float, thickness: float) -> float:
        """Where the lower arris' line crosses the marked face at ``y`` across (mm along from end A's long point)."""
        a, b, c = self.low.normal
        return (self.low.offset - b * y - c * thickness) / a

    @property
    def middle(self) -> tuple[float, float]:
        """How far across the middle line between the arrises begins and ends (mm)."""
        (_, a), (_, b), (_, c), (_, d) = self.corners
        return (a + c) / 2.0, (b + d) / 2.0


def seats(part: Part, assembly: Assembly) -> tuple[Seat, ...]:
    """The slats on a raking stile, from its foot up; none on any other part."""
    if part.kind.id != "roof.gable.stile":
        return ()
    own = part.pieces[0]
    pieces = {piece.id: piece for piece in assembly.pieces}
    ids = {id for joint in assembly.joints for id in (joint.first, joint.second) if own.id in (joint.first, joint.second)}
    slats = [pieces[id] for id in ids if pieces[id].kind == "roof.gable.slat"]
    return tuple(_seat(part, slat, assembly.part_of(slat.id)) for slat in sorted(slats, key=lambda slat: slat.index))


def _seat(stile: Part, slat: Piece, of: Part) -> Seat:
    place, stands = stile.pieces[0].placement, slat.placement
    up = stands.z
    low, high = (place.local_plane(Plane.through(stands.point((0.0, 0.0, z)), scale(up, way)))
                 for z, way in ((0.0, -1.0), (of.board.thickness, 1.0)))
    points = [place.local_point(stands.point(p)) for p in board_shell(of.board).points]
    on = [p for p in points if abs(p[2] - stile.board.thickness) < SAME_POINT]
    arrises = [sorted((p for p in on if abs(face.height(p)) < SAME_POINT), key=lambda p: p[1]) for face in (low, high)]
    return Seat(low, high, tuple((p[0], p[1]) for arris in arrises for p in (arris[0], arris[-1])))


def seat_rows(part: Part, assembly: Assembly, write: Writer) -> list[JointRow]:
    """A stile's marks for its slats, and the screws that hold them."""
    found = seats(part, assembly)
    return [_marks(found, part, write), _screws(found, part, write)] if found else []


def _marks(found: tuple[Seat, ...], part: Part, write: Writer) -> JointRow:
    board, seat = part.board, found[0]
    across = seat.lower(board.width, board.thickness) - seat.lower(0.0, board.thickness)
    lean = math.degrees(math.atan2(abs(across), board.width))
    a, b = (REFERENCE_EDGE, FAR_EDGE) if across > 0.0 else (FAR_EDGE, REFERENCE_EDGE)
    thick = abs(seat.high.offset + seat.low.offset) / abs(seat.low.normal[0])
    size = (f"lines {write.angle(lean)} from square, from the {part.called(a)} up towards the {part.called(END_B)} at the "
            f"{part.called(b)}; each slat {write.bare(thick)} along the edge. The slats are butted, not housed")
    places = "; ".join(f"on the {part.called(edge)} " + ", ".join(_place(each, edge, part, write) for each in found)
                       for edge in (REFERENCE_EDGE, FAR_EDGE))
    return JointRow(f"marks for {len(found)} slats", part.called(MARKED_FACE), size,
                    f"lower arris of each slat, from {datum(part)}: {places}", len(found))


def _place(seat: Seat, edge: str, part: Part, write: Writer) -> str:
    board = part.board
    x = seat.lower(0.0 if edge == REFERENCE_EDGE else board.width, board.thickness)
    a, b = (span.at(edge, MARKED_FACE) for span in end_spans(board))
    return write.bare(x) if a - SAME_POINT < x < b + SAME_POINT else "off the wood"


def _screws(found: tuple[Seat, ...], part: Part, write: Writer) -> JointRow:
    """A screw runs along the slat's faces, square to its marks: from a third of the end's breadth it stays in the slat."""
    board, seat = part.board, found[0]
    normal = seat.high.normal
    lean = math.asin(min(1.0, abs(normal[2])))
    towards = part.called(END_B if normal[2] * normal[0] > 0.0 else END_A)
    length = board.thickness / math.cos(lean) + SCREW_HOLD
    start, stop = seat.middle
    places = " and ".join(write.bare(start + (stop - start) * k / (SCREWS + 1)) for k in range(1, SCREWS + 1))
    return JointRow(
        f"{SCREWS} screws into each slat, {SCREWS * len(found)} in all", f"bored from the {part.called(MARKED_FACE)}",
        f"Ø {write.bare(SCREW_SHANK)} right through, square to the marks and leaning {write.angle(math.degrees(lean))} from "
        f"square to the face, the bit's point towards the {towards}: so it runs along the slat, which is bored for the "
        f"thread. Screws {write.length(length)} or longer, driven and sunk from the other face; waterproof glue or sealant on "
        "the slats' ends",
        f"half-way between each slat's two arrises, {places} across from the {part.called(REFERENCE_EDGE)}",
        SCREWS * len(found))
