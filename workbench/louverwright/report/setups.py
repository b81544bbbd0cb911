# SPDX-License-Identifier: LGPL-2.1-or-later
"""The set-up sheet: the cut list turned round, one row for each setting of the saw."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass

from ..core.assembly import CORNER_CUT, CROSSCUT, RIP, Cut, Part
from ..core.saw import SQUARE, Setting, end_of, setting
from ..core.solid import END_A, END_B
from .blanks import CUT_FREE, RIPPED, count_text, freed_by_bevel, from_sheet, marks_text, width_rows
from .job import Job, Writer
from .joint_words import joint_rows, shaped_rows
from .part_sheet import corner_words, keeps_end, nested, part_sheets
from .saw_words import LEFT, SawRow, rip_words, row_of, saw_row


@dataclass(frozen=True)
class SetupRow:
    """One setting: the scales, how the pieces lie, and every end that shares it."""

    number: str
    bevel: str
    mitre: str
    lie: str
    ends: str
    count: str


@dataclass(frozen=True)
class _End:
    part: Part
    end: str
    row: SawRow
    count: int

    @property
    def text(self) -> str:
        return f"{self.part.mark} {self.part.called(self.end)}\u00a0×{self.count}"


def _ends(job: Job) -> Iterator[_End]:
    """Every sawn end of every part; an end without a cut of its own is square, if anything is left of it."""
    for part in job.assembly.parts:
        if part.stock.form == "mesh":
            continue
        for end in (END_A, END_B):
            cuts = [cut for cut in part.board.cuts if cut.kind == CROSSCUT and end_of(cut) == end]
            square = [row_of(Setting(0.0, 0.0, 0.0), end)] if keeps_end(part, end) and not from_sheet(part) else []
            for row in [saw_row(cut, part.board) for cut in cuts] or square:
                yield _End(part, end, row, job.count(part))


def crosscut_rows(job: Job) -> tuple[SetupRow, ...]:
    """Rows for the ends, the bevel changed before the mitre; square ends of all lies share one row."""
    groups: dict[tuple[object, ...], list[_End]] = {}
    for end in sorted(_ends(job), key=lambda end: end.row.key()):
        row, write = end.row, job.writer
        square = row.mitre < SQUARE and row.bevel < SQUARE
        shown = (write.angle(row.bevel), write.angle(row.mitre), row.turn, row.up, row.fence)
        groups.setdefault(() if square else shown, []).append(end)
    rows = sorted(groups.values(), key=lambda ends: ends[0].row.key())
    order = [part.mark for part in job.assembly.parts]
    return tuple(_row(f"Cross\u00a0{number}", sorted(ends, key=lambda end: (order.index(end.part.mark), end.end)), job.writer)
                 for number, ends in enumerate(rows, start=1))


def _row(number: str, ends: list[_End], write: Writer) -> SetupRow:
    row = ends[0].row
    square = row.mitre < SQUARE and row.bevel < SQUARE
    mitre = "square" if not row.turn else f"{write.angle(row.mitre)}\u00a0{row.turn}"
    bevel = "upright" if row.bevel < SQUARE else write.angle(row.bevel)
    count = str(sum(end.count for end in ends))
    return SetupRow(number, bevel, mitre, "any" if square else _lie(ends), ", ".join(_texts(ends)), count)


def _texts(ends: list[_End]) -> Iterator[str]:
    """The ends by their names; both ends of a part in one word."""
    of_mark: dict[str, list[_End]] = {}
    for end in ends:
        of_mark.setdefault(end.part.mark, []).append(end)
    for mark, own in of_mark.items():
        both = {end.end for end in own} == {END_A, END_B}
        yield f"{mark} both ends\u00a0×{own[0].count}" if both else own[0].text


def _lie(ends: list[_End]) -> str:
    """How the pieces lie, by their own names for face and edge where all in the row have the same."""
    row = ends[0].row
    faces, edges = ({end.part.called(side) for end in ends} for side in (row.up, row.fence))
    words = [f"{faces.pop() if len(faces) == 1 else row.up} up",
             f"{edges.pop() if len(edges) == 1 else row.fence} at the fence"]
    if row.turn:
        words.append(f"long point {'at the fence' if row.turn == LEFT else 'towards you'}")
    if row.mitre >= SQUARE and row.bevel >= SQUARE:
        words.append("compound: cut a test pair from scrap first")
    return "; ".join(words)


def corner_rows(job: Job) -> tuple[tuple[str, str, str, str], ...]:
    """Corner cuts: setting, how the piece lies, mark and cut, number of cuts."""
    groups: dict[tuple[str, str], list[tuple[Part, Cut]]] = {}
    for part in job.assembly.parts:
        for cut in part.board.cuts:
            if cut.kind == CORNER_CUT:
                groups.setdefault(corner_words(cut, part, job.writer), []).append((part, cut))
    return tuple((set_to, lay, ", ".join(_cut_texts(cuts, job)),
                  str(sum(job.count(part) for part, _ in cuts))) for (set_to, lay), cuts in sorted(groups.items()))


def _cut_texts(cuts: list[tuple[Part, Cut]], job: Job) -> Iterator[str]:
    """Marks and cuts with how many; equal cuts of a part in one word."""
    for (mark, name), times in Counter((part.mark, cut.name) for part, cut in cuts).items():
        part = next(part for part, _ in cuts if part.mark == mark)
        yield f"{mark} {name}\u00a0×{times * job.count(part)}"


@dataclass(frozen=True)
class RipRow:
    """One rip setting: bevel, how the piece lies, and the parts with where the cut runs."""

    number: str
    bevel: str
    parts: str
    count: str


def rip_rows(job: Job) -> tuple[RipRow, ...]:
    """Rips to width with the blade upright first, by width; then bevelled rips, by bevel; last what those wait for."""
    write = job.writer
    bevels: dict[str, list[tuple[Part, Cut]]] = {}
    rips = [(part, cut) for part in job.assembly.parts for cut in part.board.cuts if cut.kind == RIP]
    for part, cut in sorted(rips, key=lambda rip: abs(setting(rip[1].planes[0]).bevel)):
        bevels.setdefault(write.angle(abs(setting(cut.planes[0]).bevel)), []).append((part, cut))
    order = [part.mark for part in job.assembly.parts]
    rows = [*_upright_rips(job, RIPPED, "")]
    for bevel, cuts in bevels.items():
        cuts.sort(key=lambda rip: order.index(rip[0].mark))
        texts = dict.fromkeys(_rip_text(part, cut, job) for part, cut in cuts)
        rows.append((bevel, "; ".join(texts), str(sum(job.count(part) for part, _ in cuts))))
    rows += _upright_rips(job, CUT_FREE, ", after the bevel")
    return tuple(RipRow(f"Rip\u00a0{i}", bevel, text, count) for i, (bevel, text, count) in enumerate(rows, start=1))


def _upright_rips(job: Job, how: str, when: str) -> Iterator[tuple[str, str, str]]:
    for width, parts in width_rows(job, how):
        yield "upright", f"{width} wide{when}: {marks_text(parts, job)}", count_text(parts, job)


def _rip_text(part: Part, cut: Cut, job: Job) -> str:
    """The cut with how the piece lies, and the width where the bevel makes it."""
    lie = rip_words(cut, part, job.writer)[1].split("; blade")[0]
    free = f"; off the board, {job.writer.length(part.board.width)} wide" if cut is freed_by_bevel(part) else ""
    return f"{part.mark} {cut.name}\u00a0×{job.count(part)} ({lie}{free})"


@dataclass(frozen=True)
class JointSetup:
    """One setting of dado head, lap or bore: joint, size and the parts."""

    joint: str
    size: str
    parts: str
    count: str


def joint_setups(job: Job) -> tuple[JointSetup, ...]:
    """Dados, laps, grooves and bores that share a setting."""
    groups: dict[tuple[str, str], list[tuple[Part, int]]] = {}
    for part in job.assembly.parts:
        for row in (*shaped_rows(part, job.writer), *joint_rows(part, job.writer)):
            name = "dados, through" if row.name.endswith("dados, through") else row.name
            groups.setdefault((name, row.size), []).append((part, row.count))
    return tuple(JointSetup(name, size, marks_text([p for p, _ in parts], job),
                            str(sum(job.count(p) * each for p, each in parts)))
                 for (name, size), parts in groups.items())


def beyond_rows(job: Job) -> tuple[tuple[str, str], ...]:
    """Marks with what their saw cannot do and the way to do it; equal advice under one row."""
    groups: dict[str, list[str]] = {}
    for sheet in part_sheets(job):
        for sentence in sheet.advice:
            groups.setdefault(sentence, []).append(sheet.mark)
    return tuple((", ".join(marks), sentence) for sentence, marks in groups.items())


def nested_rows(job: Job) -> tuple[tuple[str, str, str, str], ...]:
    """Mark, slope against the fence, mitre and fence height of every part with a nested setting."""
    rows = []
    for part in job.assembly.parts:
        found = nested(part)
        if found:
            slope, mitre, high = found
            rows.append((part.mark, job.writer.angle(slope), job.writer.angle(mitre), job.writer.bare(high)))
    return tuple(rows)
