# SPDX-License-Identifier: LGPL-2.1-or-later
"""The fastening plan in words: rows of screws that are driven alike, with their lines along the seams."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise

from ..core.fastening import Driven, Fastened, Size, fastening_of
from ..core.fixings import PILOT, PLUG, SCREW, STAPLE, Fixing
from ..core.geometry import dot
from .job import Job, Writer
from .page import Column
from .place_words import called_as_it_lies

#: Gauge of a wood screw by its diameter (mm).
GAUGES = {3.5: 6, 4.2: 8, 4.8: 10}
COLUMNS = (Column("Through → into", 2.5), Column("No.", 0.5, "right"), Column("Size", 1.5), Column("How", 2.2),
           Column("Line along the seam", 2.6))


@dataclass(frozen=True)
class _Alike:
    row: Fixing
    size: Size
    slant: int
    plugged: bool


def plan_of(job: Job) -> tuple[Fastened, ...]:
    """The fastening plan of the job's vent."""
    return fastening_of(job.spec, job.assembly)


def size_text(size: Size, write: Writer) -> str:
    """What to buy: kind, diameter and length."""
    if size.fastener == STAPLE:
        return f"staple, legs {write.length(size.length)}"
    if size.fastener == SCREW and write.style.system != "mm":
        return f"screw No.\u00a0{GAUGES[size.shank]} × {write.length(size.length)}"
    shank = f"{size.shank:g}" if write.style.system == "mm" else f"{size.shank / 25.4:.3f}\u00a0in"
    return f"{size.fastener} {shank} × {write.length(size.length)}"


def rows(job: Job, plan: Iterable[Fastened]) -> tuple[tuple[str, ...], ...]:
    """A row for all that is driven alike, in the cells of ``COLUMNS``."""
    groups: dict[_Alike, list[tuple[Fastened, Driven | None]]] = {}
    for each in plan:
        if each.row.fastener == STAPLE:
            groups.setdefault(_Alike(each.row, Size(STAPLE, 0.0, 12.0), 0, False), []).append((each, None))
        for driven in each.driven:
            alike = _Alike(each.row, Size(each.row.fastener, driven.shank, driven.length), round(driven.slant),
                           driven.counterbore > 0.0)
            groups.setdefault(alike, []).append((each, driven))
    return tuple((_marks(job, found), str(_number(found)), size_text(alike.size, job.writer), _how(alike, found, job),
                  _line(alike, found, job.writer)) for alike, found in groups.items())


def _number(found: list[tuple[Fastened, Driven | None]]) -> int:
    return sum(each.wanted if driven is None else 1 for each, driven in found)


def _marks(job: Job, found: list[tuple[Fastened, Driven | None]]) -> str:
    """The marks driven through and those driven into."""
    sides: tuple[dict[str, None], dict[str, None]] = ({}, {})
    for each, driven in found:
        ends = (each.second, each.first) if driven is not None and driven.back else (each.first, each.second)
        for marks, piece in zip(sides, ends, strict=True):
            marks[job.assembly.part_of(piece).mark] = None
    return " → ".join(", ".join(sorted(marks)) for marks in sides)


def _how(alike: _Alike, found: list[tuple[Fastened, Driven | None]], job: Job) -> str:
    words = [alike.row.words] if alike.row.words else []
    if alike.size.fastener != STAPLE:
        slant = f"slanted {alike.slant}° from square to the seam" if alike.slant else "square to the seam"
        words.append(f"from the {_faces(found, job)}, {slant}")
    if alike.plugged:
        deep = next(driven.counterbore for _, driven in found if driven is not None)
        words.append(f"counterbored {job.writer.fine.length(deep)}, plugged")
    return "; ".join(words)


def _faces(found: list[tuple[Fastened, Driven | None]], job: Job) -> str:
    """The faces that screws start from, as they are called in the vent."""
    names: dict[str, None] = {}
    for each, driven in found:
        if driven is not None:
            name = each.second if driven.back else each.first
            part = job.assembly.part_of(name)
            piece = next(piece for piece in part.pieces if piece.id == name)
            names[called_as_it_lies(part, piece, driven.face, job)] = None
    return " or the ".join(sorted(names))


def _line(alike: _Alike, found: list[tuple[Fastened, Driven | None]], write: Writer) -> str:
    """How many to a joint, how far from the seam's ends and edge, and how far apart."""
    joints = {id(each): each for each, _ in found}.values()
    if alike.size.fastener == STAPLE:
        return f"every {write.length(alike.row.spacing)}"
    counts = sorted({len([d for e, d in found if e is each]) for each in joints})
    ends, apart, edges = [], [], []
    for each in joints:
        stations = sorted(dot(each.contact.along, d.seam) for e, d in found if e is each and d is not None)
        low, high = each.contact.span(each.contact.along)
        ends.append(min(stations[0] - low, high - stations[-1]))
        apart += [b - a for a, b in pairwise(stations)]
        edges += [_edge(each, d) for e, d in found if e is each and d is not None]
    words = [f"{_range([float(c) for c in counts], None)} a joint"]
    if apart and max(apart) > 1.0:
        words.append(f"{_range([min(apart), max(apart)], write)} apart")
    least = f"{write.bare(max(0.0, min(ends)))} from the ends, {write.bare(min(edges))} from the edge at least"
    return f"{', '.join(words)}; {least}"


def _edge(each: Fastened, driven: Driven) -> float:
    """How far a screw stands from the nearer long edge of its seam (mm)."""
    chord = each.contact.chord(dot(each.contact.along, driven.seam))
    over = dot(each.contact.across, driven.seam)
    return max(0.0, min(over - chord[0], chord[1] - over)) if chord else 0.0


def _range(values: list[float], write: Writer | None) -> str:
    low, high = ((f"{each:.0f}" if write is None else write.bare(each)) for each in (min(values), max(values)))
    return low if low == high else f"{low} to {high}"


def drill_rows(job: Job, sizes: Iterable[Size]) -> Iterator[tuple[str, str, str, str]]:
    """For each diameter of screw in use: its name, the hole in the first part, the pilot in the second."""
    write = job.writer
    for shank in sorted({size.shank for size in sizes if size.fastener == SCREW}):
        name = f"No. {GAUGES[shank]}" if write.style.system != "mm" else f"{shank:g} mm (No. {GAUGES[shank]})"
        yield name, _bit(shank, write), _bit(PILOT * shank, write), f"as the head; {_bit(PLUG, write)} where it is plugged"


def _bit(mm: float, write: Writer) -> str:
    return f"{mm:.1f}\u00a0mm" if write.style.system == "mm" else write.fine.length(mm)


def unheld(plan: Iterable[Fastened]) -> tuple[Fastened, ...]:
    """Joints that want a screw and have none: no driver reaches one, or there is no wood for it."""
    return tuple(each for each in plan if not each.held)


def lost_words(job: Job, plan: Iterable[Fastened]) -> list[str]:
    """What to do about joints that nothing holds, a sentence for all between the same marks for the same reason."""
    mark = {piece.id: part.mark for part in job.assembly.parts for piece in part.pieces}
    lost = Counter((mark[each.first], mark[each.second], mark.get(each.blocked, "")) for each in unheld(plan))
    return [f"{first} to {second}, {_joints(number)}: "
            + (f"{blocked} is in the driver's way. Drive it before that piece is on, use a shorter or right-angle driver, or "
               if blocked else "there is no wood for a screw that is sold. Use a bolt or an angle of metal, or ")
            + "glue it and clamp it until the glue has set." for (first, second, blocked), number in sorted(lost.items())]


def _joints(number: int) -> str:
    return f"{number} joints" if number > 1 else "1 joint"
