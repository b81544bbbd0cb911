# SPDX-License-Identifier: LGPL-2.1-or-later
"""A saw setting in words that a person at the saw can follow; never a bare plus or minus.

How every crosscut is described: you stand before the saw with the fence behind the piece.  The piece you keep lies to
the left of the blade, the waste to the right.  The face that is shorter after the cut lies up, so that a
tilted blade leans left, over the piece you keep.  So two cuts with the same row are made alike.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from ..core.assembly import CORNER_CUT, CROSSCUT, RIP, Cut, Part
from ..core.saw import SQUARE, Setting, edge_of, end_of, setting
from ..core.solid import END_A, FAR_EDGE, HIDDEN_FACE, MARKED_FACE, REFERENCE_EDGE
from ..core.spec import Spec
from .job import Writer

LEFT, RIGHT = "left", "right"


@dataclass(frozen=True)
class SawRow:
    """A crosscut as it is made: angles without sign, and how the piece lies.

    ``turn`` is where the gauge turns ('left': the saw's handle swings left, and the long point lies at the fence).
    ``up`` and ``fence`` are the board frame's names of face and edge.
    """

    mitre: float
    bevel: float
    turn: str
    up: str
    fence: str

    def key(self) -> tuple[float, float, str, str, str]:
        """What rows of the set-up sheet are sorted and joined by: bevel before mitre, to 0.01°."""
        return (round(self.bevel, 2), round(self.mitre, 2), self.turn, self.up, self.fence)


def saw_row(cut: Cut) -> SawRow:
    """How a crosscut is made."""
    return row_of(setting(cut.planes[0]), end_of(cut))


def row_of(angles: Setting, end: str, face: str = MARKED_FACE) -> SawRow:
    """How an end with the given angles is cut; ``face`` is the one that lies up where the blade is upright.

    Derivation: with the fence behind, the kept piece to the left and the marked face up, end A
    has the reference edge at the fence and end B the far edge; turning the piece over exchanges them.
    """
    up = face if abs(angles.bevel) < SQUARE else MARKED_FACE if angles.bevel > 0.0 else HIDDEN_FACE
    fence = REFERENCE_EDGE if (end == END_A) == (up == MARKED_FACE) else FAR_EDGE
    long_edge = REFERENCE_EDGE if angles.mitre > 0.0 else FAR_EDGE
    turn = "" if abs(angles.mitre) < SQUARE else LEFT if long_edge == fence else RIGHT
    return SawRow(abs(angles.mitre), abs(angles.bevel), turn, up, fence)


def angles_text(row: SawRow, write: Writer) -> str:
    """The two scales: 'mitre 33.7° left, bevel 30.0°'; what is not named stands square or upright."""
    words = [f"mitre {write.angle(row.mitre)} {row.turn}"] if row.turn else []
    if row.bevel >= SQUARE:
        words.append(f"bevel {write.angle(row.bevel)}")
    return ", ".join(words) or "square"


def lay_text(row: SawRow, part: Part) -> str:
    """How the piece lies: face up, edge at the fence, long point, blade."""
    words = [f"{part.called(row.up)} up", f"{part.called(row.fence)} at the fence"]
    if row.turn:
        words.append(f"long point {'at the fence' if row.turn == LEFT else 'towards you'}")
    if row.bevel >= SQUARE:
        words.append("blade leans left over the piece")
    return "; ".join(words)


def with_complement(text: str, angles: Setting, write: Writer, rip: bool = False) -> str:
    """A cut's setting with its own complements, for scales that count from the edge or from the table.

    A rip has no mitre: its bevel alone has one.
    """
    parts = []
    if abs(angles.mitre) >= SQUARE and not rip:
        parts.append(f"{write.angle(90.0 - abs(angles.mitre))} from the edge")
    if abs(angles.bevel) >= SQUARE:
        parts.append(f"{write.angle(90.0 - abs(angles.bevel))} from the table")
    return f"{text} ({', '.join(parts)})" if parts else text


def rip_words(cut: Cut, part: Part, write: Writer) -> tuple[str, str]:
    """Setting and lie of a rip: the wider face up, so that the blade leans away from the fence."""
    angles = setting(cut.planes[0])
    up = HIDDEN_FACE if angles.bevel > 0.0 else MARKED_FACE
    fence = REFERENCE_EDGE if edge_of(cut) == FAR_EDGE else FAR_EDGE
    words = [f"bevel {write.angle(abs(angles.bevel))}" if abs(angles.bevel) >= SQUARE else "blade upright"]
    if abs(angles.taper) >= SQUARE:
        words.append(f"taper {write.angle(abs(angles.taper))} in the length")
    lie = f"{part.called(up)} up; {part.called(fence)} at the rip fence"
    if abs(angles.bevel) >= SQUARE:
        lie += "; blade leans away from the fence"
    return ", ".join(words), lie


def beyond_saw(cut: Cut, part: Part, spec: Spec, write: Writer) -> list[str]:
    """For a saw cut that the saw cannot make as it stands: sentences that say how to make it."""
    angles = setting(cut.planes[0])
    narrow = cut.kind == CROSSCUT or (cut.kind == CORNER_CUT and part.stock.form not in ("sheet", "mesh"))
    mitre = abs(angles.mitre) if narrow else 0.0
    bevel = abs(angles.bevel)
    advice: list[str] = []
    if bevel > spec.saw_tilt + SQUARE:
        advice.append(f"The bevel {write.angle(bevel)} is beyond the blade's {write.angle(spec.saw_tilt)}: stand the "
                      f"piece on edge against a tall fence or in a jig and tilt the blade "
                      f"{write.angle(90.0 - bevel)}.")
    if mitre > spec.saw_mitre + SQUARE:
        advice.append(f"The mitre {write.angle(mitre)} is beyond the gauge's {write.angle(spec.saw_mitre)}: mark both "
                      "points and cut with a guided hand-held saw or a jig.")
    elif bevel > SQUARE and mitre > spec.saw_compound and bevel > compound_limit(mitre, spec) + SQUARE:
        advice.append(f"At a mitre of {write.angle(mitre)} this saw tilts to {write.angle(compound_limit(mitre, spec))}"
                      " only: use the nested setting if one is given, or a jig.")
    if cut.kind != RIP:
        advice += too_big(part, mitre, bevel, spec, write)
    return advice


def compound_limit(mitre: float, spec: Spec) -> float:
    """The tilt that the saw still allows at a mitre (degrees): full to ``saw_compound``, nothing at ``saw_mitre``."""
    room = spec.saw_mitre - spec.saw_compound
    if mitre <= spec.saw_compound or room <= 0.0:
        return float(spec.saw_tilt)
    return float(max(0.0, spec.saw_tilt * (spec.saw_mitre - mitre) / room))


def too_big(part: Part, mitre: float, bevel: float, spec: Spec, write: Writer) -> list[str]:
    """Sentences for a piece that is too thick or too wide for the saw at these angles."""
    board = part.board
    advice = []
    deep = spec.saw_depth * math.cos(math.radians(bevel))
    if board.thickness > deep:
        advice.append(f"{write.length(board.thickness)} is thicker than the saw cuts here ({write.length(deep)}): carry "
                      "the line round and cut from both faces, or finish with a handsaw.")
    across = board.width / math.cos(math.radians(min(mitre, 85.0)))
    if across > spec.saw_crosscut:
        advice.append(f"{write.length(across)} across is wider than the saw's {write.length(spec.saw_crosscut)}: use a "
                      "guided hand-held saw along a clamped fence.")
    return advice
