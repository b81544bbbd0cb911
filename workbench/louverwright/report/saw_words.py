# SPDX-License-Identifier: LGPL-2.1-or-later
"""A saw setting in words that a person at the saw can follow; never a bare plus or minus.

How every crosscut is described: you stand before the saw with the fence behind the piece.  The piece you keep lies to
the left of the blade, the waste to the right.  The face that is shorter after the cut lies up, so that a
tilted blade leans left, over the piece you keep.  So two cuts with the same row are made alike.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from ..core.assembly import CORNER_CUT, CROSSCUT, RIP, Board, Cut, Part, board_shell
from ..core.geometry import Vec
from ..core.saw import SQUARE, Setting, edge_of, end_of, end_spans, line_of, setting
from ..core.solid import END_A, END_B, FAR_EDGE, HIDDEN_FACE, MARKED_FACE, REFERENCE_EDGE, extents
from ..core.spec import Spec
from .job import Writer

LEFT, RIGHT = "left", "right"
#: Planes and lengths this near to level or plumb (sine of the angle) are level or plumb.
LEVEL = 1e-9


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


def saw_row(cut: Cut, board: Board) -> SawRow:
    """How a crosscut is made: where either face may lie up, the marked one, unless the edge at the fence would be cut away."""
    angles, end = setting(cut.planes[0]), end_of(cut)
    row, turned_over = row_of(angles, end), row_of(angles, end, HIDDEN_FACE)
    left = _edge_left(board, row.fence)
    return turned_over if left < LEAST_AT_FENCE and left < _edge_left(board, turned_over.fence) else row


def corner_cut_row(cut: Cut, board: Board, face: str) -> SawRow:
    """How a corner of narrow stock is cut, ``face`` up where either may be: turned over where a sawn-off edge would lie at the
    fence."""
    angles, end = setting(cut.planes[0]), end_of(cut)
    row, turned_over = (row_of(angles, end, up) for up in (face, HIDDEN_FACE if face == MARKED_FACE else MARKED_FACE))
    left = {each.name for each in board_shell(board).faces}
    return turned_over if row.fence not in left and turned_over.fence in left else row


#: A piece with less of an edge than this lies at the fence on a point (mm).
LEAST_AT_FENCE = 50.0


def _edge_left(board: Board, edge: str) -> float:
    """How much of an edge the saw's cuts leave on both faces (mm)."""
    a, b = end_spans(board)
    return min(b.at(edge, face) - a.at(edge, face) for face in (MARKED_FACE, HIDDEN_FACE))


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


def rip_mark(cut: Cut, part: Part, write: Writer) -> str:
    """Where a rip's plane meets the blank: across on each face from the reference edge, at both ends where it tapers, or
    where it misses a face on the edge."""
    plane, board = cut.planes[0], part.board
    a, b, c = plane.normal
    if abs(b) < LEVEL:
        return ""
    tapers = abs(setting(plane).taper) >= SQUARE
    texts = []
    for face, z in ((MARKED_FACE, board.thickness), (HIDDEN_FACE, 0.0)):
        ends = [(end, (plane.offset - c * z - a * x) / b) for end, x in ((END_A, 0.0), (END_B, board.length))]
        ends = ends if tapers else ends[:1]
        if all(-0.01 <= y <= board.width + 0.01 for _, y in ends):
            told = ", ".join(f"{write.bare(max(0.0, y))} across" + (f" at the {part.called(end)}" if tapers else "")
                             for end, y in ends)
            texts.append(f"{told} on the {part.called(face)}")
    if len(texts) < 2 and abs(c) > LEVEL and not tapers:
        edges = [(edge, (plane.offset - b * y) / c) for edge, y in ((REFERENCE_EDGE, 0.0), (FAR_EDGE, board.width))]
        texts += [f"on the {part.called(edge)} {write.bare(board.thickness - z)} from the {part.called(MARKED_FACE)}"
                  for edge, z in edges if 0.01 < z < board.thickness - 0.01]
    return "; ".join(texts)


def beyond_saw(cut: Cut, part: Part, spec: Spec, write: Writer, nested: bool) -> list[str]:
    """For a saw cut that the saw cannot make as it stands: sentences that say how to make it.

    ``nested`` tells that the part has a nested setting.
    """
    angles = setting(cut.planes[0])
    narrow = cut.kind == CROSSCUT or (cut.kind == CORNER_CUT and part.stock.form not in ("sheet", "mesh"))
    mitre = abs(angles.mitre) if narrow else 0.0
    bevel = abs(angles.bevel)
    advice = too_deep(part, bevel, spec, write) if cut.kind != RIP else []
    if bevel > spec.saw_tilt + SQUARE:
        advice.append(f"The bevel {write.angle(bevel)} is beyond the blade's {write.angle(spec.saw_tilt)}: "
                      + _steep(cut, part, spec, write))
    if mitre > spec.saw_mitre + SQUARE:
        advice.append(f"The mitre {write.angle(mitre)} is beyond the gauge's {write.angle(spec.saw_mitre)}: mark both "
                      "points and cut with a guided hand-held saw or a jig.")
    elif bevel > SQUARE and mitre > spec.saw_compound and bevel > compound_limit(mitre, spec) + SQUARE:
        advice.append(f"At a mitre of {write.angle(mitre)} this saw tilts to {write.angle(compound_limit(mitre, spec))}"
                      f" only: {'use the nested setting, or' if nested else 'cut by hand to lines on both faces, or with'} "
                      "a jig.")
    return advice


#: An edge or a face that a piece stands on or is held by is flat for this much at least (mm).
LEAST_FLAT = 10.0


def _steep(cut: Cut, part: Part, spec: Spec, write: Writer) -> str:
    """How a bevel beyond the blade's tilt is made: a rip on edge; an end turned on edge, where it is a mitre; or by hand."""
    angles = setting(cut.planes[0])
    bevel = abs(angles.bevel)
    if cut.kind == RIP:
        return ("stand the piece on edge against a tall fence or in a jig and tilt the blade "
                f"{write.angle(90.0 - bevel)}.")
    held = held_on_edge(cut, part, spec)
    if held is None:
        return "mark it on both faces and round the edges, and saw it by hand, or with the piece on end in a jig."
    down, face = held
    keep_left = (end_of(cut) == END_A) == ((face == MARKED_FACE) == (down == REFERENCE_EDGE))
    long_at_fence = face == (HIDDEN_FACE if angles.bevel > 0.0 else MARKED_FACE)
    keep, handle = (LEFT if keep_left else RIGHT), (LEFT if long_at_fence == keep_left else RIGHT)
    return (f"turn the piece on edge, {part.called(down)} down, {part.called(face)} against the fence; for the "
            f"{part.called(end_of(cut))} the handle {handle}, keep to the {keep}: mitre {write.angle(bevel)}, blade upright.")


def held_on_edge(cut: Cut, part: Part, spec: Spec) -> tuple[str, str] | None:
    """The edge that a piece stands on and the face that lies at the fence, so that an end's bevel becomes a mitre.

    None where it would be a compound cut all the same, where the mitre or the height is beyond the saw, or where the ripped
    section has no flat edge and face.
    """
    angles, board = setting(cut.planes[0]), part.board
    if cut.kind != CROSSCUT or abs(angles.mitre) > SQUARE or abs(angles.bevel) > spec.saw_mitre + SQUARE:
        return None
    if board.width > spec.saw_depth:
        return None
    section = board.after(sum(1 for each in board.cuts if each.kind == RIP))
    flat = {facet.name: extents(((facet,),)) for cell in section for facet in cell}
    edges = [edge for edge in (REFERENCE_EDGE, FAR_EDGE) if edge in flat and _breadth(flat[edge], 2) >= LEAST_FLAT]
    faces = [face for face in (MARKED_FACE, HIDDEN_FACE) if face in flat and _breadth(flat[face], 1) >= LEAST_FLAT]
    return (edges[0], faces[0]) if edges and faces else None


def _breadth(box: tuple[Vec, Vec], axis: int) -> float:
    return box[1][axis] - box[0][axis]


def compound_limit(mitre: float, spec: Spec) -> float:
    """The tilt that the saw still allows at a mitre (degrees): full to ``saw_compound``, nothing at ``saw_mitre``."""
    room = spec.saw_mitre - spec.saw_compound
    if mitre <= spec.saw_compound or room <= 0.0:
        return float(spec.saw_tilt)
    return float(max(0.0, spec.saw_tilt * (spec.saw_mitre - mitre) / room))


def too_deep(part: Part, bevel: float, spec: Spec, write: Writer) -> list[str]:
    """A sentence for a piece that is too thick for the blade at its bevel (degrees)."""
    thick, deep = part.board.thickness, spec.saw_depth * math.cos(math.radians(bevel))
    if thick <= deep:
        return []
    return [f"{write.length(thick)} is thicker than the saw cuts here ({write.length(deep)}): carry the line round and cut "
            "from both faces, or finish with a handsaw."]


def too_long(part: Part, square_end: bool, spec: Spec, write: Writer) -> list[str]:
    """A sentence that names cuts whose lines are longer than the saw crosscuts; with ``square_end`` there is one besides."""
    board = part.board
    lines = [(cut.name, line_of(board, cut)) for cut in board.cuts if cut.kind in (CROSSCUT, CORNER_CUT)]
    lines += [("square end", board.width)] if square_end else []
    over = [(name, long) for name, long in lines if long > spec.saw_crosscut]
    if not over:
        return []
    names = list(dict.fromkeys(f"“{name}”" for name, _ in over))
    run = f"The cut {names[0]} runs" if len(over) == 1 else f"The cuts {' and '.join(names)} run up to"
    return [f"{run} {write.length(max(long for _, long in over))} across, more than the saw's "
            f"{write.length(spec.saw_crosscut)}: use a guided hand-held saw along a clamped fence."]
