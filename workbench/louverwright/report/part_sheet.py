# SPDX-License-Identifier: LGPL-2.1-or-later
"""One part in rows: everything that the report, the CSV and the JSON say of it, said once."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass, replace
from functools import lru_cache

from ..core.assembly import (
    CORNER_CUT,
    CROSSCUT,
    RIP,
    Assembly,
    Cut,
    Part,
    Piece,
    board_shell,
    board_volume_and_centre,
)
from ..core.geometry import Z_AXIS, Vec, cross, dot
from ..core.kinds import BASE
from ..core.marks import mirrors_itself, turns_of
from ..core.saw import SQUARE, EndSpan, end_of, end_spans, setting, span_at
from ..core.solid import END_A, END_B, FAR_EDGE, HIDDEN_FACE, MARKED_FACE, REFERENCE_EDGE
from ..core.spec import Spec
from ..core.units import format_pitch
from .blanks import (
    BEVELLED,
    CUT_FREE,
    BlankStep,
    blank_steps,
    first_words,
    freed_by_bevel,
    from_sheet,
    rip_advice,
    ripped_to_width,
    step_words,
)
from .finish import finish_text
from .job import Job, Writer
from .joint_words import JointRow, corner_face, corner_text, joint_rows
from .saw_words import angles_text, beyond_saw, lay_text, rip_words, row_of, saw_row, too_big, with_complement
from .scribing import foot_text
from .twins import twin_text

#: Planes and lengths this near to level or plumb (sine of the angle) are level or plumb.
LEVEL = 1e-9


@dataclass(frozen=True)
class CutRow:
    """One saw cut: its place in the order, where, the two scales, how the piece lies, and where to mark it."""

    number: str
    where: str
    name: str
    set_to: str
    lay: str
    mark_at: str

    @property
    def title(self) -> str:
        """Where and what, without saying the place twice."""
        return self.name if self.name.startswith(self.where) else f"{self.where}: {self.name}"


@dataclass(frozen=True)
class PartSheet:
    """All strings of one part."""

    part: Part
    mark: str
    name: str
    count: str
    stock: str
    finished: str
    blank: str
    points: str
    grain: str
    outside: str
    hand: str
    where: str
    weight: str
    finish: str
    cuts: tuple[CutRow, ...]
    joints: tuple[JointRow, ...]
    order: str
    meets: str
    nested: str
    twin: str
    rafter: str
    scribe: str
    advice: tuple[str, ...]

    @property
    def facts(self) -> tuple[tuple[str, str], ...]:
        """Label and value pairs for the part's block."""
        rows = [("Stock", self.stock), ("Blank L × W × T", self.blank), ("Arrises", self.points),
                ("Grain", self.grain), ("Faces", self.outside), ("Where", self.where), ("Hand", self.hand),
                ("Order of cuts", self.order), ("Same piece", self.twin), ("Nested setting", self.nested),
                ("Along the top", self.rafter), ("To scribe", self.scribe), ("Meets", self.meets), ("Finish", self.finish)]
        return tuple((label, value) for label, value in rows if value)


@lru_cache(maxsize=8)
def part_sheets(job: Job) -> tuple[PartSheet, ...]:
    """Every part of the job's assembly, in the order of its kinds."""
    meets = _meetings(job.assembly, job.writer)
    return tuple(_sheet(part, job, meets.get(part.mark, "")) for part in job.assembly.parts)


def _sheet(part: Part, job: Job, meets: str) -> PartSheet:
    write, board, spec = job.writer, part.board, job.spec
    return PartSheet(
        part=part, mark=part.mark, name=part_name(part, job), count=str(part.count), stock=stock_text(part, write),
        finished=_finished(part, write), blank=write.size(*board.size),
        points=_points(part, write), grain=grain_text(part),
        outside=_outside(part), hand=_hand(part), where=_where(part, job),
        weight=write.weight(part.weight), finish=finish_text(part, job.assembly), cuts=tuple(_cut_rows(part, write)),
        joints=tuple(joint_rows(part, write)), order=_order(part), meets=meets, nested=nested_text(part, write),
        twin=twin_text(part, job.assembly),
        rafter=_rafter_text(part, job), scribe=foot_text(part, job),
        advice=tuple(_advice(part, spec, write)))


# ---- facts


def part_name(part: Part, job: Job) -> str:
    """The part's name; in the base of a roof with two pitches with the slope that it stands on."""
    roof, plan = job.sizes.roof, job.sizes.plan
    name = part.name
    if not any(plan.gable(piece.side) or plan.eave(piece.side) for piece in part.pieces):
        name = name.replace("eave side", "diagonal side").replace("gable side", "diagonal side")
    elif plan.turned or plan.sides > 4:
        name = name.replace("gable side", "side") if not all(plan.gable(piece.side) for piece in part.pieces) else name
        name = name.replace("eave side", "side") if not all(plan.eave(piece.side) for piece in part.pieces) else name
    if part.kind.stage != BASE or roof.single or abs(roof.left - roof.right) < 0.01:
        return name
    centre = board_volume_and_centre(part.board)[1]
    away = [piece.placement.point(centre)[1] - roof.ridge for piece in part.pieces]
    if min(away) > 1.0:
        return f"{name}, {format_pitch(roof.left)} slope"
    return f"{name}, {format_pitch(roof.right)} slope" if max(away) < -1.0 else name


def stock_text(part: Part, write: Writer) -> str:
    """The stock with its dressed size, and what is ripped or planed off it."""
    stock, board = part.stock, part.board
    text = f"{stock.name} ({write.size(stock.width, stock.thickness)})"
    if ripped_to_width(part):
        text += f", ripped to {write.length(board.width)}"
    if board.thickness < stock.thickness - 0.01:
        text += f", thicknessed to {write.length(board.thickness)}"
    return text


def _points(part: Part, write: Writer) -> str:
    """The longest and the shortest of the four long arrises, where they differ."""
    a, b = end_spans(part.board)
    spans = [right - left for left, right in zip(a.positions, b.positions, strict=True)]
    if max(spans) - min(spans) < 0.01 or any(cut.kind == CORNER_CUT for cut in part.board.cuts):
        return ""
    return f"longest {write.bare(max(spans))}, shortest {write.length(max(0.0, min(spans)))}"


def _finished(part: Part, write: Writer) -> str:
    """Overall size, with the longest and shortest arris where they differ."""
    return "; ".join(filter(None, (write.size(*part.board.size), _points(part, write))))


def grain_text(part: Part) -> str:
    """Which way the grain runs, in the board and in the vent."""
    x = part.pieces[0].placement.x
    slope = math.degrees(math.asin(min(1.0, abs(x[2]))))
    way = "plumb" if slope > 89.9 else "level" if slope < 0.1 else f"on the slope, {slope:.1f}°"
    if part.stock.form == "mesh":
        return "no grain; length along the roll"
    kind = "face grain" if part.stock.form == "sheet" else "grain"
    return f"{kind} ↔ along the length, {way} in the vent"


def _outside(part: Part) -> str:
    """The marked face and what it is in the vent; the edges too where they are told apart."""
    return (f"marked: {part.called(MARKED_FACE)}; reference edge: {part.called(REFERENCE_EDGE)}; "
            f"end A: {part.called(END_A)}")


def _hand(part: Part) -> str:
    if not part.hand:
        return "" if mirrors_itself(part.board) else "the only one of its hand: never cut it mirrored"
    other = part.mark[:-1] + ("R" if part.hand == "left" else "L")
    return f"{part.hand}; {other} is its mirror image"


def side_name(job: Job, side: int) -> str:
    """A side of the plan in words."""
    u = job.sizes.plan.u(side)
    if abs(u[0]) > 0.999:
        return "gable side +X" if u[0] > 0 else "gable side −X"
    if abs(u[1]) > 0.999:
        return "left eave side (+Y)" if u[1] > 0 else "right eave side (−Y)"
    across = "left" if u[1] > 0 else "right"
    return f"diagonal side {'+X' if u[0] > 0 else '−X'} {across} ({'+Y' if u[1] > 0 else '−Y'})"


def turned_over(part: Part, job: Job) -> dict[str, int]:
    """How many pieces lie otherwise than the first as seen from their own sides, by the turn that they are given."""
    at = job.sizes

    def lie(piece: Piece) -> tuple[tuple[float, ...], ...]:
        own = at.hip_toward(piece.side) if part.kind.id == "roof.hip" else (
            at.plan.toward(piece.side) if part.kind.id == "roof.gusset" else at.plan.u(piece.side))
        return tuple((dot(axis, own), dot(axis, cross(Z_AXIS, own)), axis[2])
                     for axis in (piece.placement.x, piece.placement.z))

    first, found = lie(part.pieces[0]), Counter[str]()
    for piece in part.pieces:
        length, face = (_same_way(mine, theirs) for mine, theirs in zip(lie(piece), first, strict=True))
        found[_TURNS[length, face]] += 1
    return {turn: count for turn, count in found.items() if turn}


def _same_way(mine: tuple[float, ...], theirs: tuple[float, ...]) -> bool:
    """Whether two directions keep their way: up or down where they are not level, else the way along the side."""
    if min(abs(mine[2]), abs(theirs[2])) > LEVEL:
        return mine[2] * theirs[2] > 0.0
    return sum(a * b for a, b in zip(mine, theirs, strict=True)) > 0.0


#: What is done to a piece by whether its length and its face keep their ways.
_TURNS = {(True, True): "", (False, True): "end for end, the same face out",
          (True, False): "face for face, the same end first", (False, False): "end for end and face for face"}


def _where(part: Part, job: Job) -> str:
    """On which sides the pieces stand, and how many of them turned in which way."""
    turned = turned_over(part, job) if _tells(part) else {}
    notes = [f"{count} of {part.count} lie turned {turn}" for turn, count in turned.items()]
    return "; ".join([_sides(part, job), *notes])


def _tells(part: Part) -> bool:
    """True for a part that is not the same every way round: its cuts tell faces or ends apart."""
    return len(turns_of(part.board)) < 4


def _sides(part: Part, job: Job) -> str:
    if part.kind.id in ("roof.hip", "roof.gusset"):
        return _corners(part, job)
    sides = sorted({piece.side for piece in part.pieces})
    if len(sides) == job.sizes.plan.sides:
        each = part.count // len(sides)
        return f"{each} on every side" if each * len(sides) == part.count else "on every side"
    if part.kind.id in ("roof.kingpost", "roof.bearer", "roof.step"):
        return "on the axis"
    if part.kind.id == "roof.ridge":
        return "under the ridge"
    if all(job.sizes.plan.gable(side) for side in sides) and len(sides) == 2:
        return "both gable sides"
    if len(sides) == 2 and job.sizes.plan.sides == 4 and not any(job.sizes.plan.gable(side) for side in sides):
        return "both eave sides"
    return ", ".join(side_name(job, side) for side in sides)


def _corners(part: Part, job: Job) -> str:
    """The corners that pieces stand at."""
    if part.count == job.sizes.plan.sides:
        return "one at each corner"
    points = [job.sizes.plan.corner_point(piece.side, 1.0) for piece in part.pieces]
    names = [f"{'+X' if x > 0.0 else '−X'} {'left' if y > 0.0 else 'right'}" for x, y, _ in points]
    return "at the corners " + " and ".join(names)


def _meetings(assembly: Assembly, write: Writer) -> dict[str, str]:
    """For each mark the marks it joins, by the kind of joint."""
    found: dict[str, dict[tuple[str, float], set[str]]] = {}
    for joint in assembly.joints:
        a, b = assembly.part_of(joint.first).mark, assembly.part_of(joint.second).mark
        for mine, other in ((a, b), (b, a)):
            found.setdefault(mine, {}).setdefault((joint.kind, joint.gap), set()).add(other)
    order = {part.mark: i for i, part in enumerate(assembly.parts)}
    words = {"bearing": "bears on", "glued": "glued to", "clearance": "clear of", "line contact": "just meets"}
    out = {}
    for mark, groups in found.items():
        texts = []
        for (kind, gap), others in sorted(groups.items()):
            by = f" by {write.length(gap)}" if gap else ""
            texts.append(f"{words[kind]} {', '.join(sorted(others, key=order.__getitem__))}{by}")
        out[mark] = "; ".join(texts)
    return out


# ---- saw cuts


def _cut_rows(part: Part, write: Writer) -> Iterable[CutRow]:
    """Rips, then ends, then corner cuts, numbered as they are made."""
    rows = [*_blank_rows(part, write), *_rips(part, write), *_ends(part, write),
            *(_corner_row(cut, part, write) for cut in part.board.cuts if cut.kind == CORNER_CUT)]
    return [replace(row, number=str(number)) for number, row in enumerate(rows, start=1)]


def _blank_rows(part: Part, write: Writer) -> list[CutRow]:
    """What makes the blank, but for a strip that is cut free after its bevels."""
    return [_blank_row(step, part, write) for step in blank_steps(part) if step.how not in (BEVELLED, CUT_FREE)]


def _blank_row(step: BlankStep, part: Part, write: Writer) -> CutRow:
    what, set_to, lay, sizes = step_words(step, part, write)
    return CutRow("", "rip" if what.startswith("rip") else "blank", what, set_to, lay, sizes)


def _rips(part: Part, write: Writer) -> Iterable[CutRow]:
    freed = freed_by_bevel(part)
    for cut in part.board.cuts:
        if cut.kind == RIP:
            set_to, lay = rip_words(cut, part, write)
            free = f"; it frees the strip, {write.bare(part.board.width)} wide" if cut is freed else ""
            yield CutRow("", "rip", cut.name, with_complement(set_to, setting(cut.planes[0]), write, rip=True), lay,
                         _rip_mark(cut, part, write) + free)
    yield from (_blank_row(step, part, write) for step in blank_steps(part) if step.how == CUT_FREE)


def _ends(part: Part, write: Writer) -> Iterable[CutRow]:
    """Each end's cuts; two plain square ends in one row."""
    cuts = {end: [cut for cut in part.board.cuts if cut.kind == CROSSCUT and end_of(cut) == end] for end in (END_A, END_B)}
    square = [end for end in (END_A, END_B) if not cuts[end] and keeps_end(part, end) and not from_sheet(part)]
    if len(square) == 2:
        yield CutRow("", "both ends", "square", "square", "either way", f"{write.bare(part.board.length)} long")
        return
    for end in (END_A, END_B):
        for cut in cuts[end]:
            row = saw_row(cut)
            yield CutRow("", part.called(end), cut.name,
                         with_complement(angles_text(row, write), setting(cut.planes[0]), write), lay_text(row, part),
                         _end_mark(cut, row.up, part, write))
        if end in square:
            at = "start here (0)" if end == END_A else f"at {write.bare(part.board.length)}"
            yield CutRow("", part.called(end), "square end", "square", "either way", at)


def keeps_end(part: Part, end: str) -> bool:
    """True when some of the blank's own square end is left on the finished part."""
    return any(face.name == end for face in board_shell(part.board).faces)


def _end_mark(cut: Cut, up: str, part: Part, write: Writer) -> str:
    """Where an end lies when its turn comes, first on the face that lies up: one length where it is square across.

    A face is left out where the cut's line runs off it, as long as the other has the whole of it.
    """
    span = span_at(part.board, cut)
    down = HIDDEN_FACE if up == MARKED_FACE else MARKED_FACE
    whole = [face for face in (up, down) if all(span.meets(edge, face) for edge in (REFERENCE_EDGE, FAR_EDGE))]
    if len(whole) == 2 and all(abs(span.at(edge, up) - span.at(edge, down)) < 0.01 for edge in (REFERENCE_EDGE, FAR_EDGE)):
        return _face_mark(span, up, part, write)
    return "; ".join(f"on the {part.called(face)}: {_face_mark(span, face, part, write)}" for face in whole or (up, down))


def _face_mark(span: EndSpan, face: str, part: Part, write: Writer) -> str:
    """Positions on one face: one where both edges agree; of an edge that the line does not reach it says so."""
    near, far = span.at(REFERENCE_EDGE, face), span.at(FAR_EDGE, face)
    if abs(near - far) < 0.01:
        return write.bare(near)
    told = [f"{write.bare(span.at(edge, face))} at the {part.called(edge)}" if span.meets(edge, face)
            else f"off the wood at the {part.called(edge)}" for edge in (REFERENCE_EDGE, FAR_EDGE)]
    return ", ".join(told)


def _rip_mark(cut: Cut, part: Part, write: Writer) -> str:
    """Where a rip's plane meets the two faces, measured from the reference edge of the blank."""
    plane, board = cut.planes[0], part.board
    if abs(plane.normal[1]) < LEVEL:
        return ""
    at = [(plane.offset - plane.normal[2] * z) / plane.normal[1] for z in (board.thickness, 0.0)]
    inside = [(face, y) for face, y in zip((MARKED_FACE, HIDDEN_FACE), at, strict=True)
              if -0.01 <= y <= board.width + 0.01]
    return "; ".join(f"{write.bare(max(0.0, y))} across on the {part.called(face)}" for face, y in inside)


def _corner_row(cut: Cut, part: Part, write: Writer) -> CutRow:
    set_to, lay = corner_words(cut, part, write)
    return CutRow("", f"corner at the {part.called(end_of(cut))}", cut.name,
                  with_complement(set_to, setting(cut.planes[0]), write), lay, corner_text(cut, part, write))


def corner_words(cut: Cut, part: Part, write: Writer) -> tuple[str, str]:
    """Setting and lie of a corner cut: as a crosscut on narrow stock, by its angle from square on a sheet."""
    angles = setting(cut.planes[0])
    up = corner_face(cut, part.board)
    if not from_sheet(part):
        row = row_of(angles, end_of(cut), up)
        return angles_text(row, write), lay_text(row, part)
    text = f"{write.angle(abs(angles.mitre))} from square"
    lay = f"{part.called(up)} up"
    if abs(angles.bevel) < SQUARE:
        return text, lay
    return f"{text}, bevel {write.angle(abs(angles.bevel))}", f"{lay}; blade leans over the piece"


def _order(part: Part) -> str:
    """Rips and backing before ends; ends before laps; laps before dados; notches last."""
    names = {"rip": "rips", "crosscut": "ends", "corner cut": "corner cuts", "half lap": "half laps", "dado": "dados",
             "groove": "grooves", "bore": "bores", "notch": "notches"}
    kinds = list(dict.fromkeys(cut.kind for cut in part.board.cuts))
    if ripped_to_width(part) and RIP not in kinds:
        kinds.insert(0, RIP)
    if CROSSCUT not in kinds and not from_sheet(part):
        kinds.insert(1 if RIP in kinds else 0, CROSSCUT)
    return " → ".join([*first_words(part), *(names[kind] for kind in kinds)])


# ---- nested setting and what the saw cannot do


def nested(part: Part) -> tuple[float, float, float] | None:
    """Slope of the piece against the fence, mitre, and least height of the fence (degrees, degrees, mm).

    Only where it is true: the length lies level in the vent, both ends are single plumb
    planes with a bevel, so that with the piece stood as installed the blade stays upright.
    """
    placement = part.pieces[0].placement
    ends = [cut for cut in part.board.cuts if cut.kind == CROSSCUT]
    if len(ends) != 2 or end_of(ends[0]) == end_of(ends[1]) or abs(placement.x[2]) > LEVEL:
        return None
    mitres = []
    for cut in ends:
        normal = placement.direction(cut.planes[0].normal)
        if abs(normal[2]) > LEVEL or abs(setting(cut.planes[0]).bevel) < SQUARE:
            return None
        mitres.append(math.degrees(math.acos(min(1.0, abs(dot(normal, placement.x))))))
    if abs(mitres[0] - mitres[1]) > SQUARE:
        return None
    return _slope(placement.z), mitres[0], _stood_height(part)


def _slope(normal: Vec) -> float:
    return math.degrees(math.acos(min(1.0, abs(normal[2]))))


def _stood_height(part: Part) -> float:
    place, board = part.pieces[0].placement, part.board
    return abs(place.y[2]) * board.width + abs(place.z[2]) * board.thickness


def _rafter_text(part: Part, job: Job) -> str:
    """A hip's length along its top centre line, what ends it at the top, and its tail; '' for others."""
    if part.kind.id != "roof.hip":
        return ""
    at, write = job.sizes, job.writer
    cap, slope = at.cap, math.cos(math.radians(at.cap.hip_slope))
    run = math.dist(at.hip_foot(0), at.plan.corner_point(0, cap.plate_r)) * (cap.tail_r / cap.plate_r - 1.0)
    tail = math.hypot(run, cap.under(cap.plate_r) - cap.under(cap.tail_r))
    head = (f"shortened {write.bare(cap.post_apothem / slope)} at the king post" if cap.post_flats
            else "its head fits between the two commons at the ridge's end")
    end = f"tail {write.length(tail)} beyond the plate's corner"
    if cap.flared:
        return (f"{write.angle(cap.hip_slope)} above the break and {write.angle(job.figures['kicked_hip_slope'])} below it: "
                f"saw the top to the lettered line, one side's bevel after the other's; {head}; {end}")
    top = [p[0] for p in board_shell(part.board).points if abs(p[1] - part.board.width) < 0.01]
    return f"centre line {write.bare(max(top) - min(top))}; {head}; {end}"


def nested_text(part: Part, write: Writer) -> str:
    """The nested setting in words, or ''."""
    found = nested(part)
    if found is None:
        return ""
    slope, mitre, high = found
    return (f"stood at {write.angle(slope)} from the table as it sits in the vent, its outside towards you, fence at least "
            f"{write.length(high)} high: mitre {write.angle(mitre)}, blade upright. {part.called(END_A).capitalize()}: handle "
            f"left, keep to the right; {part.called(END_B)}: handle right, keep to the left")


def _advice(part: Part, spec: Spec, write: Writer) -> list[str]:
    out: list[str] = []
    if part.stock.form == "mesh":
        return out
    for cut in part.board.cuts:
        if len(cut.planes) == 1:
            out += beyond_saw(cut, part, spec, write)
    if not any(cut.kind == CROSSCUT for cut in part.board.cuts):
        out += too_big(part, 0.0, 0.0, spec, write)
    if part.board.length < spec.shortest_piece and part.stock.form not in ("sheet", "mesh"):
        out.append(f"It is shorter than {write.length(spec.shortest_piece)}: cut it from a longer stick, held by a clamp, "
                   "never by hand beside the blade.")
    out += rip_advice(part)
    return list(dict.fromkeys(out))
