# SPDX-License-Identifier: LGPL-2.1-or-later
"""The set-up sheet: the cut list turned round, one row for each setting of the saw."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from ..core.assembly import CORNER_CUT, CROSSCUT, RIP, Cut, Part
from ..core.saw import SQUARE, Setting, end_of, setting
from ..core.solid import END_A, END_B
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
        return f"{self.part.mark} {self.part.called(self.end)} ×{self.count}"


def _ends(job: Job) -> Iterator[_End]:
    """Every sawn end of every part; an end without a cut of its own is square, if anything is left of it."""
    for part in job.assembly.parts:
        if part.stock.form == "mesh":
            continue
        for end in (END_A, END_B):
            cuts = [cut for cut in part.board.cuts if cut.kind == CROSSCUT and end_of(cut) == end]
            square = [row_of(Setting(0.0, 0.0, 0.0), end)] if keeps_end(part, end) else []
            for row in [saw_row(cut, part.board) for cut in cuts] or square:
                yield _End(part, end, row, job.count(part))


def crosscut_rows(job: Job) -> tuple[SetupRow, ...]:
    """Rows for the ends, the bevel changed before the mitre; square ends of all lies share one row."""
    groups: dict[tuple[object, ...], list[_End]] = {}
    for end in _ends(job):
        square = end.row.mitre < SQUARE and end.row.bevel < SQUARE
        groups.setdefault((0.0, 0.0) if square else end.row.key(), []).append(end)
    keys = sorted(groups, key=lambda key: (key[0], key[1], key[2:]))
    return tuple(_row(f"Cross {number}", groups[key], job.writer) for number, key in enumerate(keys, start=1))


def _row(number: str, ends: list[_End], write: Writer) -> SetupRow:
    row = ends[0].row
    square = row.mitre < SQUARE and row.bevel < SQUARE
    mitre = "square" if not row.turn else f"{write.angle(row.mitre)} {row.turn}"
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
        yield f"{mark} both ends ×{own[0].count}" if both else own[0].text


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
    return tuple((set_to, lay, ", ".join(f"{part.mark} {cut.name} ×{job.count(part)}" for part, cut in cuts),
                  str(sum(job.count(part) for part, _ in cuts))) for (set_to, lay), cuts in sorted(groups.items()))


@dataclass(frozen=True)
class RipRow:
    """One rip setting: bevel, how the piece lies, and the parts with where the cut runs."""

    number: str
    bevel: str
    parts: str
    count: str


def rip_rows(job: Job) -> tuple[RipRow, ...]:
    """Rips to width with the blade upright first, by width; then bevelled rips, by bevel."""
    write = job.writer
    widths: dict[float, list[Part]] = {}
    bevels: dict[float, list[tuple[Part, Cut]]] = {}
    for part in job.assembly.parts:
        if part.stock.form not in ("sheet", "mesh") and part.board.width < part.stock.width - 0.01:
            widths.setdefault(round(part.board.width, 2), []).append(part)
        for cut in part.board.cuts:
            if cut.kind == RIP:
                bevels.setdefault(round(abs(setting(cut.planes[0]).bevel), 2), []).append((part, cut))
    rows = [("upright", f"{write.length(width)} wide: " + ", ".join(f"{p.mark} ×{job.count(p)}" for p in parts),
             sum(job.count(p) for p in parts)) for width, parts in sorted(widths.items())]
    for bevel, cuts in sorted(bevels.items()):
        rows.append((write.angle(bevel), "; ".join(dict.fromkeys(_rip_text(p, c, job) for p, c in cuts)),
                     sum(job.count(p) for p, _ in cuts)))
    return tuple(RipRow(f"Rip {i}", bevel, text, str(count)) for i, (bevel, text, count) in enumerate(rows, start=1))


def _rip_text(part: Part, cut: Cut, job: Job) -> str:
    return f"{part.mark} {cut.name} ×{job.count(part)} ({rip_words(cut, part, job.writer)[1].split('; blade')[0]})"


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
    return tuple(JointSetup(name, size, ", ".join(dict.fromkeys(f"{p.mark} ×{job.count(p)}" for p, _ in parts)),
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
