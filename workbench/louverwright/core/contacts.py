# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where a piece meets its neighbours, told by the sides of its own board: what a piece that came out wrong leaves open."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from .assembly import CORNER_CUT, CROSSCUT, RIP, Assembly, Cut, Joint, Part, Piece, board_solid
from .geometry import Vec, cross, dot, newell, sub, unit
from .joints import GAP_ERROR, LEAST_CONTACT, shared_polygon
from .saw import edge_of, end_of
from .solid import END_A, END_B, FAR_EDGE, HIDDEN_FACE, MARKED_FACE, REFERENCE_EDGE, Facet

#: The sides of a board that bound its length, width and thickness: the lower one, the upper one.
SIDES = ((END_A, END_B), (REFERENCE_EDGE, FAR_EDGE), (HIDDEN_FACE, MARKED_FACE))
#: Directions that differ by less than this (of a unit vector) face each other.
_FACING = 1e-6


@dataclass(frozen=True)
class Contact:
    """One side of a piece's board, or a face of a joint cut in it (side ''), at a neighbour.

    ``normal`` points out of the piece; ``points`` are the corners of all that the two share; both in the piece's board
    frame (mm).  The joint's gap (mm) lies between them.
    """

    joint: Joint
    other: str
    side: str
    normal: Vec
    points: tuple[Vec, ...]

    def reach(self, axis: int) -> tuple[float, float]:
        """From where to where it lies along an axis of the board (mm)."""
        values = [p[axis] for p in self.points]
        return min(values), max(values)

    @property
    def size(self) -> tuple[float, float]:
        """Its extents in its own plane (mm), along the board's width as far as that goes and square to it; longer first."""
        along = cross(self.normal, (0.0, 0.0, 1.0))
        first = unit(along if dot(along, along) > 1e-6 else (1.0, 0.0, 0.0))
        spans = []
        for axis in (first, cross(self.normal, first)):
            values = [dot(p, axis) for p in self.points]
            spans.append(max(values) - min(values))
        return max(spans), min(spans)


@dataclass(frozen=True)
class _Face:
    side: str
    normal: Vec
    offset: float
    points: tuple[Vec, ...]


@lru_cache(maxsize=4096)
def _faces(part: Part, piece: Piece) -> tuple[_Face, ...]:
    """The convex faces of a piece in the assembly frame, with the side of the board that each belongs to."""
    place = piece.placement
    return tuple(_Face(_side_of(part, facet), normal, dot(normal, points[0]), points)
                 for cell in board_solid(part.board) for facet in cell
                 for normal in (place.direction(facet.plane.normal),)
                 for points in (tuple(place.point(p) for p in facet.points),))


def _side_of(part: Part, facet: Facet) -> str:
    """The side of the board that a face belongs to; '' for a face of a joint.  Cuts of one name are told by their planes."""
    if any(facet.name in pair for pair in SIDES):
        return facet.name
    return next((side for cut in part.board.cuts if cut.name == facet.name and (side := side_of_cut(cut))
                 and dot(cut.planes[0].normal, facet.plane.normal) > 1.0 - _FACING), "")


def side_of_cut(cut: Cut) -> str:
    """The end or the edge that a saw cut makes; '' for a joint."""
    return end_of(cut) if cut.kind in (CROSSCUT, CORNER_CUT) else edge_of(cut) if cut.kind == RIP else ""


def contacts(assembly: Assembly, piece: Piece) -> tuple[Contact, ...]:
    """All contacts of a piece's joints; faces that share a side, a neighbour and a direction are one."""
    return tuple(contact for joint in assembly.joints if piece.id in (joint.first, joint.second)
                 for contact in _of_joint(assembly, piece, joint))


def _of_joint(assembly: Assembly, piece: Piece, joint: Joint) -> Iterator[Contact]:
    other_id = joint.second if joint.first == piece.id else joint.first
    part, other = assembly.part_of(piece.id), assembly.part_of(other_id)
    place = piece.placement
    found: dict[tuple[str, tuple[float, ...]], list[tuple[Vec, ...]]] = {}
    normals: dict[tuple[str, tuple[float, ...]], Vec] = {}
    for mine in _faces(part, piece):
        for theirs in _faces(other, next(each for each in other.pieces if each.id == other_id)):
            if dot(mine.normal, theirs.normal) > _FACING - 1.0 or abs(-theirs.offset - mine.offset - joint.gap) > GAP_ERROR:
                continue
            shared = shared_polygon(mine.points, theirs.points, mine.normal)
            if shared and abs(dot(newell(shared), mine.normal)) / 2.0 > LEAST_CONTACT:
                normal = place.local_direction(mine.normal)
                key = (mine.side, tuple(round(value, 5) + 0.0 for value in normal))
                normals[key] = normal
                found.setdefault(key, []).append(tuple(place.local_direction(sub(p, place.origin)) for p in shared))
    for key, polygons in found.items():
        yield Contact(joint, other_id, key[0], normals[key], tuple(p for polygon in polygons for p in polygon))
