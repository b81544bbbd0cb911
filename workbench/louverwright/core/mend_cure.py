# SPDX-License-Identifier: LGPL-2.1-or-later
"""The cure at the bench: what a piece that is too small leaves open and what fills it, what to take off one too large."""

from __future__ import annotations

from dataclasses import dataclass

from .assembly import BEARING, CLEARANCE, DADO, GLUED, Assembly, Cut, Part, Piece
from .contacts import SIDES, Contact, contacts, side_of_cut
from .joints import matches
from .solid import box, common, extents

#: What opens by less than this (mm) is left to paint, caulk or glue; by more than the other, it wants a new piece and no
#: packing (common practice).
LEAST_PACKING, MOST_PACKING = 0.5, 12.0
#: A face narrower than this (mm) bears nothing worth a packing.
LEAST_FACE = 3.0
#: A dado or lap may lose this share of its hold; more, and the piece is packed or made again (common practice).
MOST_LOST = 0.5
#: A face square to an axis within this (cosine) does not open along it.
_ALONG = 0.05
#: Corners this near (mm) to an end are at it.
_AT = 0.05
#: Parts that lie over a joint and cover it.
_COVERS = "louver.trim louver.frieze base.corner roof.fascia roof.bedmould"


@dataclass(frozen=True)
class Opening:
    """What a piece too small by ``lost`` mm does to its joint with ``other``, if all of it falls to one side.

    ``other`` is None for the barn's roof under a foot.

    ``gap`` is the joint's own, ``opens`` what is added to it, square to the joint's faces (0 where only hold is lost);
    ``long`` × ``wide`` the face that opens; ``hold`` how deep the piece sits in a dado or lap there, 0 for neither; all in mm.
    """

    other: Part | None
    kind: str
    gap: float
    opens: float
    long: float
    wide: float
    hold: float
    lost: float

    @property
    def left(self) -> float:
        """What is left of the hold (mm) where all of the loss falls to this side; not below 0."""
        return max(0.0, self.hold - self.lost)

    @property
    def holds(self) -> bool:
        """Whether it sits in a dado or lap that keeps enough of its hold."""
        return self.hold > 0.0 and self.lost <= MOST_LOST * self.hold + 1e-9

    @property
    def stays(self) -> bool:
        """Whether nothing need be done: a clearance that grows, a joint that keeps its hold, less than can be packed."""
        if self.hold:
            return self.holds
        return self.kind == CLEARANCE or self.opens < LEAST_PACKING or self.wide < LEAST_FACE

    @property
    def packed(self) -> bool:
        """Whether a packing as thick as it opens makes it good."""
        return not self.stays and LEAST_PACKING <= self.opens <= MOST_PACKING


@dataclass(frozen=True)
class Side:
    """One end, edge or face, as the board frame calls it.

    ``openings`` are those of a piece too small, ``covers`` the marks of parts that lie over that side and hide it;
    ``cuts`` the saw cuts that make the side, to be made again further in on a piece too large, and ``joints`` the names
    of those cut there, which are shortened with it.
    """

    name: str
    openings: tuple[Opening, ...]
    covers: tuple[str, ...]
    cuts: tuple[Cut, ...]
    joints: tuple[str, ...]

    @property
    def stays(self) -> bool:
        """Whether the loss may be left at this side as it is."""
        return all(opening.stays for opening in self.openings)

    @property
    def packings(self) -> tuple[Opening, ...]:
        """The joints that want a packing as thick as they open."""
        return tuple(opening for opening in self.openings if opening.packed)

    @property
    def fails(self) -> bool:
        """Whether a joint here can neither stay nor be packed, so that the piece is to be made again."""
        return any(not opening.stays and not opening.packed for opening in self.openings)


@dataclass(frozen=True)
class Cure:
    """The cure for one size: ``axis`` 0 length, 1 width, 2 thickness; ``off`` real less drawn (mm).

    ``places`` are the ids of the pieces that the wrong ones do least harm as; ``sides`` where the loss or the
    excess can go, the better one first.
    """

    axis: int
    off: float
    places: tuple[str, ...]
    sides: tuple[Side, Side]

    @property
    def best(self) -> Side:
        """Where the loss is best left, or the excess best taken off."""
        return self.sides[0]

    @property
    def shared(self) -> float:
        """The least hold that is left (mm) where the loss is shared by two sides that both hold; 0 where they do not."""
        held = [[each for each in side.openings if each.opens and each.hold] for side in self.sides]
        if self.off > 0.0 or not all(held):
            return 0.0
        return max(0.0, min(each.hold - each.lost / 2.0 for side in held for each in side))

    @property
    def stays(self) -> bool:
        """Whether a piece too small may stay as it is."""
        return self.off < 0.0 and self.best.stays


def cure(assembly: Assembly, part: Part, axis: int, off: float, count: int) -> Cure:
    """What to do at the bench about ``count`` pieces of a part that are off (mm, real less drawn) along an axis."""
    ranked = sorted(((_sides(assembly, part, piece, axis, off), piece) for piece in part.pieces),
                    key=lambda pair: _harm(pair[0][0], off))
    sides, _ = ranked[count - 1]
    return Cure(axis, off, tuple(piece.id for _, piece in ranked[:count]), sides)


def _sides(assembly: Assembly, part: Part, piece: Piece, axis: int, off: float) -> tuple[Side, Side]:
    found = contacts(assembly, piece) if off < 0.0 else ()
    first, other = (_side(assembly, part, found, axis, end, off) for end in (0, 1))
    return (other, first) if _harm(other, off) < _harm(first, off) else (first, other)


def _harm(side: Side, off: float) -> tuple[float, ...]:
    """Fewer packings and less opened are better; of ends to cut again those without joints and with one plain cut."""
    if off < 0.0:
        joints = [each for each in side.openings if each.kind != CLEARANCE]
        return (side.fails, not side.stays, len(side.packings), len(joints), sum(each.opens for each in side.openings))
    return (len(side.joints), len(side.cuts) > 1, len(side.cuts), side.name == SIDES[2][1])


def _side(assembly: Assembly, part: Part, found: tuple[Contact, ...], axis: int, end: int, off: float) -> Side:
    name = SIDES[axis][end]
    cuts = tuple(cut for cut in part.board.cuts if side_of_cut(cut) == name and abs(cut.planes[0].normal[axis]) > _ALONG)
    neighbours = list(dict.fromkeys(contact.other for contact in found))
    openings = tuple(opening for other in neighbours
                     if (opening := _opening(assembly, part, [c for c in found if c.other == other], axis, end, -off)))
    if off < 0.0 and _on_roof(part, name):
        openings += (_over_roof(part, axis, cuts, -off),)
    covers = tuple(dict.fromkeys(assembly.part_of(c.other).mark for c in found
                                 if matches(assembly.part_of(c.other).kind.id, _COVERS) and c.side != name
                                 and _at_end(c, part, axis, end)))
    return Side(name, openings, covers, cuts, tuple(_joints_at(part, axis, end)))


def _opening(assembly: Assembly, part: Part, own: list[Contact], axis: int, end: int, lost: float) -> Opening | None:
    """What becomes of the joint with one neighbour; None where it neither opens nor loses hold."""
    open_faces = [c for c in own if c.side == SIDES[axis][end] and abs(c.normal[axis]) > _ALONG]
    held = [high - low for c in own if abs(c.normal[axis]) <= _ALONG and _at_end(c, part, axis, end)
            for low, high in (c.reach(axis),) if high - low < part.board.size[axis] / 2.0]
    if axis == 2 and not open_faces and _housed(part, assembly.part_of(own[0].other)):
        open_faces = [c for c in own if c.side == SIDES[axis][1 - end]]    # the dado's other wall grows as far away
    joint = own[0].joint
    hold = max(held, default=0.0) if joint.kind == GLUED else 0.0
    if not open_faces and not hold:
        return None
    face = max(open_faces, key=lambda c: c.size, default=None)
    long, wide = face.size if face else (0.0, 0.0)
    return Opening(assembly.part_of(own[0].other), joint.kind, joint.gap, lost * abs(face.normal[axis]) if face else 0.0,
                   long, wide, hold, lost)


def _housed(part: Part, other: Part) -> bool:
    """Whether pieces of a part sit in dados of another, between two walls."""
    return any(cut.kind == DADO and cut.partner == part.kind.id for cut in other.board.cuts)


def _on_roof(part: Part, side: str) -> bool:
    """Whether a side stands on the barn's roof, which is no part of the vent."""
    where = part.called(side)
    return (matches(part.kind.id, "base.leg") and where == "foot") or (
        matches(part.kind.id, "base.sole") and where == "lower edge")


def _over_roof(part: Part, axis: int, cuts: tuple[Cut, ...], lost: float) -> Opening:
    """The gap under a foot or a sole; its face as long as the board's own."""
    lean = abs(cuts[0].planes[0].normal[axis]) if cuts else 1.0
    sizes = sorted((size for i, size in enumerate(part.board.size) if i != axis), reverse=True)
    return Opening(None, BEARING, 0.0, lost * lean, sizes[0] / (lean if axis == 0 else 1.0), sizes[1], 0.0, lost)


def _at_end(contact: Contact, part: Part, axis: int, end: int) -> bool:
    """Whether a contact reaches to the low (0) or the high (1) end of the board's axis, and not to both."""
    low, high = contact.reach(axis)
    ends = (low < _AT, high > part.board.size[axis] - _AT)
    return ends[end] and not ends[1 - end]


def _joints_at(part: Part, axis: int, end: int) -> list[str]:
    """Names of the joints cut into one end, edge or face and not through to the other."""
    names = []
    for cut in part.board.cuts:
        waste = common(box((0.0, 0.0, 0.0), part.board.size), cut.planes) if len(cut.planes) > 1 else None
        if waste is not None:
            low, high = extents((waste,))
            ends = (low[axis] < _AT, high[axis] > part.board.size[axis] - _AT)
            if ends[end] and not ends[1 - end]:
                names.append(cut.name)
    return list(dict.fromkeys(names))
