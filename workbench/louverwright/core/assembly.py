# SPDX-License-Identifier: LGPL-2.1-or-later
"""What a vent is made of: boards with their cuts, the pieces made from them, and how they join.

The board frame: X along the length and the grain, from end A (x = 0) to end B;
Y across the width, from the reference edge (y = 0) to the far edge; Z up through
the thickness, from the hidden face (z = 0) to the marked face.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass, field
from functools import cached_property, lru_cache

from .faces import Shell, shell_of
from .geometry import Bore, Placement, Plane, Vec, add, scale, sub
from .kinds import KINDS, Kind, spoken
from .saying import Text
from .solid import Solid, box, remove, volume_and_centre
from .stock import Stock

RIP, CROSSCUT, CORNER_CUT = "rip", "crosscut", "corner cut"
HALF_LAP, DADO, NOTCH, GROOVE, BORE = "half lap", "dado", "notch", "groove", "bore"
#: A long edge sawn to several planes from end to end: like a rip it comes before the ends, for nothing of the edge stays.
SHAPED_EDGE = "shaped edge"

#: The order in which cuts are made, and so what each must wait for.
CUT_ORDER = (RIP, SHAPED_EDGE, CROSSCUT, CORNER_CUT, HALF_LAP, DADO, GROOVE, BORE, NOTCH)

BEARING, GLUED, CLEARANCE, LINE_CONTACT = "bearing", "glued", "clearance", "line contact"


@dataclass(frozen=True)
class Cut:
    """One cut.  The waste is what lies beyond *all* of ``planes`` (board frame), or the bore.

    ``name`` is what it is in the vent ('foot to the roof'); ``partner`` is the id of
    the kind of part that the cut receives or lies against, if it is one.
    """

    kind: str
    name: str
    planes: tuple[Plane, ...] = ()
    bore: Bore | None = None
    partner: str = ""

    def __hash__(self) -> int:
        return self._hash

    @cached_property
    def _hash(self) -> int:
        """Worked out once, as a board's."""
        return hash((self.kind, self.name, self.planes, self.bore, self.partner))


@dataclass(frozen=True)
class Board:
    """A blank (length × width × thickness, mm) and the cuts made in it, in order."""

    length: float
    width: float
    thickness: float
    cuts: tuple[Cut, ...] = ()

    def __hash__(self) -> int:
        return self._hash

    @cached_property
    def _hash(self) -> int:
        """Worked out once: boards are looked up in many places."""
        return hash((self.length, self.width, self.thickness, self.cuts))

    @property
    def size(self) -> Vec:
        """Length, width and thickness of the blank (mm)."""
        return (self.length, self.width, self.thickness)

    @property
    def bores(self) -> tuple[Bore, ...]:
        """The round holes."""
        return tuple(cut.bore for cut in self.cuts if cut.bore)

    def after(self, count: int) -> Solid:
        """The cells of the board when so many of its cuts are made; bores are not part of it."""
        return board_solid(self) if count >= len(self.cuts) else _unfinished(self, count)


@lru_cache(maxsize=1024)
def board_solid(board: Board) -> Solid:
    """The finished board's cells, bores apart."""
    return _sawn((box((0.0, 0.0, 0.0), board.size),), board.cuts)


@lru_cache(maxsize=4096)
def _unfinished(board: Board, count: int) -> Solid:
    """The board when not all of its cuts are made, each state from the one before it."""
    if not count:
        return (box((0.0, 0.0, 0.0), board.size),)
    return _sawn(_unfinished(board, count - 1), board.cuts[count - 1:count])


def _sawn(solid: Solid, cuts: tuple[Cut, ...]) -> Solid:
    for cut in cuts:
        if cut.planes:
            solid = remove(solid, cut.planes, cut.name)
    return solid


@lru_cache(maxsize=1024)
def board_shell(board: Board) -> Shell:
    """The finished board's faces, bores apart."""
    return shell_of(board_solid(board))


@lru_cache(maxsize=1024)
def board_volume_and_centre(board: Board) -> tuple[float, Vec]:
    """Volume (mm³) and centre of gravity (mm, board frame) of a finished board, bores taken off."""
    whole, centre = volume_and_centre(board_solid(board))
    moment, volume = scale(centre, whole), whole
    for bore in board.bores:
        hole = math.pi * (bore.diameter / 2.0) ** 2 * bore.length
        middle = add(bore.start, scale(bore.direction, bore.length / 2.0))
        volume, moment = volume - hole, sub(moment, scale(middle, hole))
    return volume, scale(moment, 1.0 / volume)


@dataclass(frozen=True)
class Piece:
    """One piece of wood in the vent.

    ``side`` counts the vent's sides anticlockwise from the one that faces +X; ``end``
    is −1 for left, +1 for right as seen from outside, 0 where there is no such thing.
    ``placement`` takes the board frame to the assembly frame.
    """

    id: str
    kind: str
    side: int
    end: int
    index: int
    placement: Placement


@dataclass(frozen=True)
class Part:
    """All pieces that are cut alike, under one mark.

    ``names`` says what the six sides of the board are in the vent, by the board
    frame's names.  ``hand`` is 'left', 'right' or '' for a part that is its own mirror image
    or whose mirror image the vent has no need of.
    """

    mark: str
    kind: Kind
    hand: str
    board: Board
    stock: Stock
    names: tuple[tuple[str, str], ...]
    pieces: tuple[Piece, ...]

    @property
    def name(self) -> Text:
        """The kind's name with the hand: 'Stile, left'."""
        return spoken(f"{self.kind.name}, {self.hand}" if self.hand else self.kind.name)

    @property
    def count(self) -> int:
        """How many to cut."""
        return len(self.pieces)

    @property
    def weight(self) -> float:
        """Weight of one piece in kg, at the stock's density."""
        return board_volume_and_centre(self.board)[0] * 1e-9 * self.stock.density

    def called(self, side: str) -> str:
        """What the board frame's ``side`` is in the vent."""
        return dict(self.names)[side]


@dataclass(frozen=True)
class Joint:
    """Where two pieces meet: the ids of both, the kind of joint and its gap (mm)."""

    first: str
    second: str
    kind: str
    gap: float


@dataclass(frozen=True, eq=False)
class Assembly:
    """The whole vent: the parts that are made, the joints of all parts, and the parts that are left out: not made here.

    The joints may be given as what finds them, when they are first asked for: solids are made without them.
    """

    parts: tuple[Part, ...]
    _joints: tuple[Joint, ...] | Callable[[], tuple[Joint, ...]] = field(repr=False)
    left_out: tuple[Part, ...] = ()

    @cached_property
    def joints(self) -> tuple[Joint, ...]:
        """Where pieces meet, those of the parts that are left out too."""
        return self._joints() if callable(self._joints) else self._joints

    @cached_property
    def _of_piece(self) -> dict[str, Part]:
        return {piece.id: part for part in self.whole for piece in part.pieces}

    @cached_property
    def _hash(self) -> int:
        """Worked out once, and without the joints."""
        return hash((self.parts, self.left_out))

    def __hash__(self) -> int:
        return self._hash

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Assembly) and (self.parts, self.left_out) == (other.parts, other.left_out) \
            and self.joints == other.joints

    @property
    def whole(self) -> tuple[Part, ...]:
        """The parts that are made and those left out, in the order of the kind table."""
        if not self.left_out:
            return self.parts
        order = {kind.id: number for number, kind in enumerate(KINDS)}
        return tuple(sorted((*self.parts, *self.left_out), key=lambda part: order[part.kind.id]))

    def part_of(self, piece_id: str) -> Part:
        """The part that a piece is one of, left out or not."""
        return self._of_piece[piece_id]

    @property
    def pieces(self) -> tuple[Piece, ...]:
        """Every piece that is made, in the parts' order."""
        return tuple(piece for part in self.parts for piece in part.pieces)

    def of_kind(self, kind_id: str) -> tuple[Part, ...]:
        """The parts of one kind; () where it is left out."""
        return tuple(part for part in self.parts if part.kind.id == kind_id)
