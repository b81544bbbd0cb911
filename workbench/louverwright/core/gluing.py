# SPDX-License-Identifier: LGPL-2.1-or-later
"""Where glue goes: which faces of each part its glued joints lie on, read off the pieces as they stand."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache

from .assembly import GLUED, Assembly, Board, Part, board_solid
from .geometry import IDENTITY, Placement, Vec, dot, length, newell
from .joints import GAP_ERROR, LEAST_CONTACT, shared_polygon
from .solid import Facet

#: Directions whose cosine is nearer than this to −1 look at each other.
OPPOSITE = 1e-9
#: A face that lies in a joint by more than this share has all of it in there.
WHOLE = 0.98


@dataclass(frozen=True)
class GluedFace:
    """A face of a part's board that is glued, by the name of what made it.

    ``partners`` are the marks of the parts that it is glued to, in the order of the marks; ``whole`` tells that no
    wood of the face is left outside the joints; ``mates`` are the names of the partners' own faces there.
    """

    name: str
    partners: tuple[str, ...]
    whole: bool
    mates: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class _Patch:
    name: str
    normal: Vec
    offset: float
    corners: tuple[Vec, ...]


@lru_cache(maxsize=8)
def glued_faces(assembly: Assembly) -> Mapping[str, tuple[GluedFace, ...]]:
    """The glued faces of every part that has any, by its mark, in the order of the board's faces."""
    pieces = {piece.id: piece for part in assembly.whole for piece in part.pieces}
    touched: dict[str, dict[str, dict[str, float]]] = defaultdict(lambda: defaultdict(lambda: defaultdict(float)))
    mates: dict[str, dict[str, dict[tuple[str, str], None]]] = defaultdict(lambda: defaultdict(dict))
    for joint in (joint for joint in assembly.joints if joint.kind == GLUED):
        first, second = (assembly.part_of(each) for each in (joint.first, joint.second))
        at, there = (pieces[each].placement for each in (joint.first, joint.second))
        for mine, theirs, area in _contacts(first.board, second.board, at.local_frame(there).rounded()):
            for part, piece, face, other, mate in ((first, joint.first, mine, second, theirs),
                                                   (second, joint.second, theirs, first, mine)):
                touched[part.mark][face][piece] += area
                mates[part.mark][face][other.mark, mate] = None
    order = [part.mark for part in assembly.whole]
    return {part.mark: tuple(_face(part, name, max(of_pieces.values()), tuple(mates[part.mark][name]), order)
                             for name, of_pieces in touched[part.mark].items())
            for part in assembly.whole if part.mark in touched}


def _face(part: Part, name: str, area: float, mates: tuple[tuple[str, str], ...], order: list[str]) -> GluedFace:
    all_of_it = sum(length(newell(facet.points)) / 2.0 for cell in board_solid(part.board) for facet in cell
                    if facet.name == name)
    partners = tuple(sorted({mark for mark, _ in mates}, key=order.index))
    return GluedFace(name, partners, area > WHOLE * all_of_it, mates)


@lru_cache(maxsize=1 << 12)
def _contacts(a: Board, b: Board, there: Placement) -> list[tuple[str, str, float]]:
    """Names of the two faces and the area (mm²) of each contact of a board with one that stands at ``there`` in its own frame;
    traces of one are left out.  Remembered: most joints of a vent are the same joint on another side."""
    theirs = _patches(b, there)
    found: dict[tuple[str, str], float] = defaultdict(float)
    for mine in _patches(a, IDENTITY):
        for other in theirs:
            if dot(mine.normal, other.normal) < OPPOSITE - 1.0 and abs(mine.offset + other.offset) < GAP_ERROR:
                shared = shared_polygon(mine.corners, other.corners, mine.normal)
                found[mine.name, other.name] += length(newell(shared)) / 2.0 if shared else 0.0
    return [(*names, area) for names, area in found.items() if area > LEAST_CONTACT]


def _patches(board: Board, place: Placement) -> list[_Patch]:
    return [_patch(facet, place) for cell in board_solid(board) for facet in cell]


def _patch(facet: Facet, place: Placement) -> _Patch:
    normal = place.direction(facet.plane.normal)
    corners = tuple(map(place.point, facet.points))
    return _Patch(facet.name, normal, dot(normal, corners[0]), corners)
