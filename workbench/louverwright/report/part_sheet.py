# SPDX-License-Identifier: LGPL-2.1-or-later
"""One part in rows: everything that the report, the CSV and the JSON say of it, said once."""

from __future__ import annotations

import math
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
    board_shell,
)
from ..core.geometry import Vec, dot
from ..core.marks import mirrors_itself
from ..core.parameters import BY_NAME
from ..core.saw import SQUARE, EndSpan, end_of, end_spans, setting, span_at
from ..core.saying import Text, joined, say
from ..core.solid import END_A, END_B, FAR_EDGE, HIDDEN_FACE, MARKED_FACE, REFERENCE_EDGE
from ..core.spec import Spec
from .blanks import (
    BEVELLED,
    CUT_FREE,
    BlankStep,
    blank_steps,
    freed_by_bevel,
    from_sheet,
    rip_advice,
    ripped_to_width,
    sort_of,
    step_words,
)
from .finish import finish_text
from .job import Job, Writer
from .joint_words import JointRow, joint_rows, shaped_rows
from .lettered import corner_face, corner_text, shaped
from .place_words import part_name, where_text
from .saw_words import (
    LEVEL,
    angles_text,
    beyond_saw,
    corner_cut_row,
    lay_text,
    rip_mark,
    rip_words,
    row_of,
    saw_row,
    too_deep,
    too_long,
    with_complement,
)
from .scribing import foot_text
from .seat_words import seat_rows
from .twins import twin_text


@dataclass(frozen=True)
class CutRow:
    """One saw cut: its place in the order, where, the two scales, how the piece lies, and where to mark it."""

    number: str
    where: str
    name: str
    set_to: str
    lay: str
    mark_at: str
    sort: str

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
    own_stock: str
    note: str
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
        rows = [("Note", self.note), ("Stock", self.stock), ("Own stock", self.own_stock),
                ("Blank L × W × T", self.blank), ("Arrises", self.points),
                ("Grain", self.grain), ("Faces", self.outside), ("Where", self.where), ("Hand", self.hand),
                ("Order of cuts", self.order), ("Same piece", self.twin), ("Nested setting", self.nested),
                ("Along the top", self.rafter), ("To scribe", self.scribe), ("Meets", self.meets),
                ("Held", self.part.kind.held), ("Finish", self.finish)]
        return tuple((label, value) for label, value in rows if value)


@lru_cache(maxsize=8)
def part_sheets(job: Job) -> tuple[PartSheet, ...]:
    """Every part of the job's assembly, in the order of its kinds."""
    return _sheets(job.assembly.parts, job)


@lru_cache(maxsize=8)
def left_out_sheets(job: Job) -> tuple[PartSheet, ...]:
    """Every part that is left out, in the order of its kinds, as it would have to be made."""
    return _sheets(job.assembly.left_out, job)


def _sheets(parts: Iterable[Part], job: Job) -> tuple[PartSheet, ...]:
    meets = _meetings(job.assembly, job.writer)
    return tuple(_sheet(part, job, meets.get(part.mark, "")) for part in parts)


def _sheet(part: Part, job: Job, meets: str) -> PartSheet:
    write, board, spec = job.writer, part.board, job.spec
    cuts, joints = tuple(_cut_rows(part, write)), (
        *joint_rows(part, write), *(replace(row, sort="marks") for row in seat_rows(part, job)))
    return PartSheet(
        part=part, mark=part.mark, name=part_name(part, job), count=str(part.count), stock=stock_text(part, write),
        own_stock=own_stock_text(part, spec), note=spec.wish(part.kind).note,
        finished=_finished(part, write), blank=write.size(*board.size),
        points=_points(part, write), grain=grain_text(part),
        outside=_outside(part), hand=_hand(part), where=where_text(part, job),
        weight=write.weight(part.weight), finish=finish_text(part, job.assembly), cuts=cuts,
        joints=joints, order=_order((*cuts, *joints)), meets=meets, nested=nested_text(part, write),
        twin=twin_text(part, job.assembly),
        rafter=_rafter_text(part, job), scribe=foot_text(part, job),
        advice=tuple(_advice(part, spec, write)))


# ---- facts


def stock_text(part: Part, write: Writer) -> Text:
    """The stock with its dressed size, and what is ripped or planed off it."""
    stock, board = part.stock, part.board
    words = [f"{stock.name} ({write.size(stock.width, stock.thickness)})"]
    if ripped_to_width(part):
        words.append(say("ripped to {width}", width=write.length(board.width)))
    if board.thickness < stock.thickness - 0.01:
        words.append(say("thicknessed to {thickness}", thickness=write.length(board.thickness)))
    return joined(", ", words)


def own_stock_text(part: Part, spec: Spec) -> str:
    """That the stock was chosen for this kind alone, and what the vent has there; '' for the vent's."""
    if not spec.wish(part.kind).stock_name:
        return ""
    return f"chosen for this part alone; the vent's {BY_NAME[part.kind.stock].label} is {spec.values[part.kind.stock].name}"


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


def _meetings(assembly: Assembly, write: Writer) -> dict[str, str]:
    """For each mark the marks it joins, by the kind of joint."""
    found: dict[str, dict[tuple[str, float], set[str]]] = {}
    for joint in assembly.joints:
        a, b = assembly.part_of(joint.first).mark, assembly.part_of(joint.second).mark
        for mine, other in ((a, b), (b, a)):
            found.setdefault(mine, {}).setdefault((joint.kind, joint.gap), set()).add(other)
    order = {part.mark: i for i, part in enumerate(assembly.whole)}
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
    """What makes the blank, rips, shaped edges, ends, corner cuts, numbered as they are made."""
    rows = [*_blank_rows(part, write), *_rips(part, write), *_shaped(part, write), *_ends(part, write),
            *(_corner_row(cut, part, write) for cut in part.board.cuts if cut.kind == CORNER_CUT)]
    return [replace(row, number=str(number)) for number, row in enumerate(rows, start=1)]


def _shaped(part: Part, write: Writer) -> Iterable[CutRow]:
    """Edges that are sawn to several planes: before the ends, with lines from end to end of the blank."""
    for row in shaped_rows(part, write):
        yield CutRow("", part.called(FAR_EDGE), row.name, row.size, row.face, row.position, row.sort)


def _blank_rows(part: Part, write: Writer) -> list[CutRow]:
    """What makes the blank, but for a strip that is cut free after its bevels."""
    return [_blank_row(step, part, write) for step in blank_steps(part) if step.how not in (BEVELLED, CUT_FREE)]


def _blank_row(step: BlankStep, part: Part, write: Writer) -> CutRow:
    what, set_to, lay, sizes = step_words(step, part, write)
    return CutRow("", "rip" if what.startswith("rip") else "blank", what, set_to, lay, sizes, sort_of(step))


def _rips(part: Part, write: Writer) -> Iterable[CutRow]:
    freed = freed_by_bevel(part)
    for cut in part.board.cuts:
        if cut.kind == RIP:
            set_to, lay = rip_words(cut, part, write)
            free = f"; it frees the strip, {write.bare(part.board.width)} wide" if cut is freed else ""
            yield CutRow("", "rip", cut.name, with_complement(set_to, setting(cut.planes[0]), write, rip=True), lay,
                         rip_mark(cut, part, write) + free, "rips")
    yield from (_blank_row(step, part, write) for step in blank_steps(part) if step.how == CUT_FREE)


def _ends(part: Part, write: Writer) -> Iterable[CutRow]:
    """Each end's cuts; two plain square ends in one row."""
    cuts = {end: [cut for cut in part.board.cuts if cut.kind == CROSSCUT and end_of(cut) == end] for end in (END_A, END_B)}
    square = [end for end in (END_A, END_B) if not cuts[end] and keeps_end(part, end) and not from_sheet(part)]
    if len(square) == 2:
        yield CutRow("", "both ends", "square", "square", "either way", f"{write.bare(part.board.length)} long", "both ends")
        return
    for end in (END_A, END_B):
        for cut in cuts[end]:
            row = saw_row(cut, part.board)
            yield CutRow("", part.called(end), cut.name,
                         with_complement(angles_text(row, write), setting(cut.planes[0]), write), lay_text(row, part),
                         _end_mark(cut, row.up, part, write), "ends")
        if end in square:
            at = "start here (0)" if end == END_A else f"at {write.bare(part.board.length)}"
            yield CutRow("", part.called(end), "square end", "square", "either way", at, "ends")


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


def _corner_row(cut: Cut, part: Part, write: Writer) -> CutRow:
    end = end_of(cut)
    alone = sum(each.kind in (CROSSCUT, CORNER_CUT) and end_of(each) == end for each in part.board.cuts) == 1
    where = part.called(end) if alone and not keeps_end(part, end) else f"corner at the {part.called(end)}"
    set_to, lay = corner_words(cut, part, write)
    return CutRow("", where, cut.name, with_complement(set_to, setting(cut.planes[0]), write), lay,
                  corner_text(cut, part, write), "corner cuts")


def corner_words(cut: Cut, part: Part, write: Writer) -> tuple[str, str]:
    """Setting and lie of a corner cut: as a crosscut on narrow stock, by its angle from square on a sheet."""
    angles = setting(cut.planes[0])
    up = corner_face(cut, part.board)
    if not from_sheet(part):
        row = corner_cut_row(cut, part.board, up)
        return angles_text(row, write), lay_text(row, part)
    text = f"{write.angle(abs(angles.mitre))} from square"
    lay = f"{part.called(up)} up"
    if abs(angles.bevel) < SQUARE:
        return text, lay
    return f"{text}, bevel {write.angle(abs(angles.bevel))}", f"{lay}; blade leans over the piece"


def _order(rows: Iterable[CutRow | JointRow]) -> str:
    """The listed steps by their sorts, each with the numbers of its rows: 'rip 1 → ends 2–3 → half laps 4–5'."""
    sorts: dict[str, list[int]] = {}
    for number, row in enumerate(rows, start=1):
        sorts.setdefault(row.sort, []).append(number)
    return " → ".join(f"{sort} {steps[0]}–{steps[-1]}" if len(steps) > 1 else f"{ONE.get(sort, sort)} {steps[0]}"
                      for sort, steps in sorts.items())


#: What a sort of steps is called where there is but one of it.
ONE = {"rips": "rip", "ends": "end", "corner cuts": "corner cut", "half laps": "half lap", "grooves": "groove",
       "bores": "bore", "notches": "notch", "shaped edges": "shaped edge", "marks": "mark"}


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
            out += beyond_saw(cut, part, spec, write, nested(part) is not None)
    square_end = not from_sheet(part) and any(keeps_end(part, end) for end in (END_A, END_B))
    out += too_deep(part, 0.0, spec, write) if square_end else []
    out += too_long(part, square_end, spec, write)
    out += _shaped_advice(part)
    if part.board.length < spec.shortest_piece and part.stock.form not in ("sheet", "mesh"):
        out.append(f"It is shorter than {write.length(spec.shortest_piece)}: cut it from a longer stick, held by a clamp, "
                   "never by hand beside the blade.")
    out += rip_advice(part)
    return list(dict.fromkeys(out))


def _shaped_advice(part: Part) -> list[str]:
    """Where a shaped edge would lie at the fence, for its piece lies askew along it or rocks."""
    cuts = [cut.name for cut in part.board.cuts if cut.kind == CORNER_CUT
            and row_of(setting(cut.planes[0]), end_of(cut), corner_face(cut, part.board)).fence == FAR_EDGE]
    if not cuts or not shaped(part.board):
        return []
    names = "” and “".join(dict.fromkeys(cuts))
    return [f"At the cut “{names}” the shaped {part.called(FAR_EDGE)} comes to the fence: pack it out "
            f"parallel to the {part.called(REFERENCE_EDGE)}, or cut to the line with a guided hand-held saw."]
