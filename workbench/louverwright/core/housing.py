# SPDX-License-Identifier: LGPL-2.1-or-later
"""Dados gathered by face: where each begins and ends on the edge that they are measured on, how they lean, wide and deep."""

from __future__ import annotations

import math
from dataclasses import dataclass

from .assembly import DADO, Assembly, Board, Cut, Part, board_shell
from .contacts import contacts
from .geometry import Plane
from .solid import FAR_EDGE, HIDDEN_FACE, MARKED_FACE, REFERENCE_EDGE

#: Points this near (mm) to a board's end lie on it.
_AT_END = 0.01


def floor_of(cut: Cut) -> Plane:
    """The plane that a joint's bottom lies in: the one most square to the faces."""
    return max(cut.planes, key=lambda plane: abs(plane.normal[2]))


def open_face(floor: Plane) -> str:
    """The face that a joint with this floor is cut from."""
    return MARKED_FACE if floor.normal[2] > 0.0 else HIDDEN_FACE


def depth_of(floor: Plane, board: Board) -> float:
    """How deep a joint's floor lies under the face that it is cut from (mm)."""
    return board.thickness - floor.offset if floor.normal[2] > 0.0 else -floor.offset


def long_edge(board: Board) -> str:
    """The edge on which end A's long point lies; the reference edge where the end is square."""
    points = [p for p in board_shell(board).points if p[0] < _AT_END]
    return FAR_EDGE if points and min(p[1] for p in points) > board.width / 2.0 else REFERENCE_EDGE


@dataclass(frozen=True)
class Housing:
    """Dados of one face with one floor.

    ``edge`` is the edge that they are measured on, ``places`` where the lower and the upper wall of each meet it (mm from end
    A's long point).  ``climb`` is how the dado runs on from there to the other edge: degrees from square across, above 0
    towards end B.  ``width`` is square to the walls, ``line`` how long a wall is across the board (mm).
    """

    face: str
    edge: str
    places: tuple[tuple[float, float], ...]
    climb: float
    width: float
    depth: float
    line: float
    partner: str

    @property
    def other_edge(self) -> str:
        """The edge that the dados run to."""
        return REFERENCE_EDGE if self.edge == FAR_EDGE else FAR_EDGE


def housings(part: Part) -> tuple[Housing, ...]:
    """A part's dados, those with one floor together, in the order of its cuts."""
    groups: dict[Plane, list[Cut]] = {}
    for cut in part.board.cuts:
        if cut.kind == DADO:
            groups.setdefault(floor_of(cut), []).append(cut)
    return tuple(_housing(floor, cuts, part.board) for floor, cuts in groups.items())


def _housing(floor: Plane, cuts: list[Cut], board: Board) -> Housing:
    edge = long_edge(board)
    y = 0.0 if edge == REFERENCE_EDGE else board.width
    wall = next(plane for plane in cuts[0].planes if plane != floor)
    places = tuple(_span(cut, floor, y) for cut in cuts)
    lean = (math.degrees(math.atan2(wall.normal[1], wall.normal[0])) + 90.0) % 180.0 - 90.0
    low, high = places[0]
    return Housing(open_face(floor), edge, places, lean if edge == FAR_EDGE else -lean,
                   (high - low) * abs(wall.normal[0]), depth_of(floor, board),
                   board.width / math.cos(math.radians(lean)), cuts[0].partner)


def _span(cut: Cut, floor: Plane, y: float) -> tuple[float, float]:
    """Where both walls of a dado meet the line at ``y`` across (lower, upper; mm along)."""
    low, high = sorted((wall.offset - wall.normal[1] * y) / wall.normal[0] for wall in cut.planes if wall != floor)
    return low, high


def covered_edge(part: Part, assembly: Assembly) -> str:
    """The long edge of a part that its neighbours hide more of: wood before wire; '' where neither is hidden."""
    hidden = {edge: [0.0, 0.0] for edge in (REFERENCE_EDGE, FAR_EDGE)}
    for contact in contacts(assembly, part.pieces[0]):
        if contact.side in hidden:
            long, short = contact.size
            hidden[contact.side][assembly.part_of(contact.other).stock.form == "mesh"] += long * short
    most = max(hidden, key=lambda edge: hidden[edge])
    return most if any(hidden[most]) else ""
