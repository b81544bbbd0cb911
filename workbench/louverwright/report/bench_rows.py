# SPDX-License-Identifier: LGPL-2.1-or-later
"""The rows of the bench sheet: dados, story sticks, half laps, rips, holes and test pairs, all read off the job's cuts."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from ..core.assembly import BORE, CROSSCUT, HALF_LAP, RIP, Cut, Part
from ..core.housing import Housing, covered_edge, depth_of, floor_of, housings, open_face
from ..core.saw import SQUARE, edge_of, end_spans, setting
from ..core.solid import END_A, END_B, FAR_EDGE, REFERENCE_EDGE, corners
from ..core.trial import closing, is_compound
from .blanks import CUT_FREE, RIPPED, bevelled_on_the_board, bored_on_the_stick, freed_by_bevel, marks_text, width_rows
from .job import Job, Writer
from .joint_words import datum, hole, waste_box
from .lettered import SAME_POINT
from .part_sheet import corner_words, part_sheets
from .saw_words import LEVEL, angles_text, rip_words, saw_row
from .seat_words import screw_holes, seat_rows
from .setups import crosscut_rows

#: How far the blade of a common sliding bevel reaches over the wood (mm, common practice for a blade of 250 mm or 10 in).
BLADE_REACH = 180.0
#: How long an offcut of a slat is handy for trying dados (mm, common practice).
TEST_SLAT = 200.0
#: A scrap for a test pair need be no wider than this (mm, common practice).
SCRAP_WIDE = 90.0

Row = tuple[str, ...]


# ---- dados


def gauge_rows(job: Job) -> tuple[Row, ...]:
    """Mark, edge for the gauge's stock, the gauge from edge and from square, where its blade leans, reach, where to finish."""
    return tuple(_gauge_row(part, each, job) for part in job.assembly.parts for each in housings(part))


def _gauge_row(part: Part, each: Housing, job: Job) -> Row:
    write, lean = job.writer, abs(each.climb)
    towards = part.called(END_B if each.climb > 0.0 else END_A)
    leans = "square" if lean < SQUARE else f"from there towards the {towards}"
    reach = write.length(each.line)
    if each.line > BLADE_REACH:
        reach += f", further than a blade of {write.length(BLADE_REACH)}: go on from the {part.called(each.other_edge)}"
    return (f"{part.mark}\u00a0×{job.count(part)}", part.called(each.face), part.called(each.edge), gauge_text(lean, write),
            leans, reach, finish_text(part, job))


def gauge_text(lean: float, write: Writer) -> str:
    """A bevel gauge by its angle from the edge, with what it reads on its other side and from square."""
    if lean < SQUARE:
        return "square"
    return f"{write.angle(90.0 - lean)} (other side {write.angle(90.0 + lean)}; from square {write.angle(lean)})"


def finish_text(part: Part, job: Job) -> str:
    """The edge at which a cut across leaves the wood: the one that is hidden in the vent."""
    hidden = covered_edge(part, job.assembly)
    if not hidden:
        return "either edge"
    seen = REFERENCE_EDGE if hidden == FAR_EDGE else FAR_EDGE
    return f"from the {part.called(seen)}, out at the {part.called(hidden)}"


def slat_rows(job: Job) -> tuple[Row, ...]:
    """Dados by what they hold: marks, the slat's mark, the test slat's size, the dado's width, play and depth."""
    groups: dict[tuple[str, ...], list[Part]] = {}
    for part in job.assembly.parts:
        for each in housings(part):
            groups.setdefault(_slat_words(part, each, job), []).append(part)
    return tuple((marks_text(list(dict.fromkeys(parts)), job), *words) for words, parts in groups.items())


def _slat_words(part: Part, each: Housing, job: Job) -> tuple[str, ...]:
    write = job.writer
    slats = [slat for slat in job.assembly.whole if slat.kind.id == each.partner]
    thick = slats[0].board.thickness
    width = slats[0].board.width
    return (", ".join(slat.mark for slat in slats), write.size(TEST_SLAT, width, thick), write.fine.length(each.width),
            write.fine.length(each.width - thick), write.length(each.depth))


# ---- story sticks


@dataclass(frozen=True)
class StoryStick:
    """Parts that are ganged and struck together: their marks, the edge they are measured on, what from, and every place
    with its distances from there and from the other end ('' where that is not square)."""

    parts: tuple[Part, ...]
    marks: str
    edge: str
    start: str
    end: str
    rows: tuple[Row, ...]
    places: tuple[float, ...]
    length: float


def story_sticks(job: Job) -> tuple[StoryStick, ...]:
    """One stick for all parts whose dados stand at the same places on the same edge, whatever their hand and face."""
    groups: dict[tuple[object, ...], list[tuple[Part, Housing]]] = {}
    for part in job.assembly.parts:
        for each in housings(part)[:1]:
            places = tuple(round(x, 3) for pair in each.places for x in pair)
            key = (part.called(each.edge), datum(part), round(part.board.length, 3), places)
            groups.setdefault(key, []).append((part, each))
    return tuple(_stick(parts, job) for parts in groups.values())


def _stick(group: list[tuple[Part, Housing]], job: Job) -> StoryStick:
    write, (part, housing) = job.writer, group[0]
    length, square = part.board.length, squared(part, END_B)
    marks = [("0", datum(part).removeprefix("the "), 0.0)]
    for number, (low, high) in enumerate(housing.places, start=1):
        marks += [(str(number), f"dado {number}, lower wall", low), ("", f"dado {number}, upper wall", high)]
    marks += [(part.called(END_B), part.called(END_B), length)]
    rows = tuple((what, write.bare(x), write.bare(length - x) if square else "") for _, what, x in marks)
    parts = tuple(each for each, _ in group)
    return StoryStick(parts, marks_text(parts, job), part.called(housing.edge), datum(part), part.called(END_B), rows,
                      tuple(x for _, _, x in marks), length)


def squared(part: Part, end: str) -> bool:
    """Whether an end is square to the length."""
    points = end_spans(part.board)[0 if end == END_A else 1].positions
    return max(points) - min(points) < SAME_POINT


def raking_rows(job: Job) -> tuple[Row, ...]:
    """Marks for slats that are only butted, on a gable's raking stiles: mark, face, angle, places."""
    return tuple((f"{part.mark}\u00a0×{job.count(part)}", row.face, row.size, row.position)
                 for part in job.assembly.parts if part.kind.id == "roof.gable.stile" for row in seat_rows(part, job)[:1])


# ---- half laps


def lap_rows(job: Job) -> tuple[Row, ...]:
    """Half laps by depth, the deepest last: depth, what is left, marks, lap, face, from where to where, number."""
    found: dict[tuple[str, ...], list[Part]] = {}
    own = [(part, cut) for part in job.assembly.parts for cut in part.board.cuts if cut.kind == HALF_LAP]
    for part, cut in sorted(own, key=lambda each: depth_of(floor_of(each[1]), each[0].board)):
        found.setdefault(_lap_words(part, cut, job.writer), []).append(part)
    return tuple((depth, left, marks_text(parts, job), name, face, place, str(sum(job.count(part) for part in parts)))
                 for (depth, left, name, face, place), parts in found.items())


def _lap_words(part: Part, cut: Cut, write: Writer) -> tuple[str, str, str, str, str]:
    floor = floor_of(cut)
    depth = depth_of(floor, part.board)
    low, high = waste_box(cut, part.board)
    words = [f"{write.bare(low[0])} to {write.bare(high[0])} from {datum(part)}"]
    if high[1] - low[1] < part.board.width - SAME_POINT:
        words.append(f"{write.bare(low[1])} to {write.bare(high[1])} across")
    return (write.length(depth), write.length(part.board.thickness - depth), cut.name, part.called(open_face(floor)),
            ", ".join(words))


# ---- rips


def rip_setups(job: Job) -> tuple[tuple[str, tuple[Row, ...]], ...]:
    """For each stock its rips in their order: blade, fence, edge at the fence with the face up, parts, pieces."""
    rows: dict[str, dict[tuple[str, str, str], list[Part]]] = {}
    for part, words in (*_upright(job, RIPPED, "either edge"), *_bevelled(job), *_upright(job, CUT_FREE, "after the bevel")):
        rows.setdefault(part.stock.name, {}).setdefault(words, []).append(part)
    return tuple((stock, tuple((str(number), *words, marks_text(parts, job), str(sum(job.count(part) for part in parts)))
                               for number, (words, parts) in enumerate(setups.items(), start=1)))
                 for stock, setups in rows.items())


def _upright(job: Job, how: str, lie: str) -> Iterator[tuple[Part, tuple[str, str, str]]]:
    for width, parts in width_rows(job, how):
        yield from ((part, ("upright", width, lie)) for part in parts)


def _bevelled(job: Job) -> Iterator[tuple[Part, tuple[str, str, str]]]:
    """Rips of all parts, the least bevel first; but none before those of its part that come first."""
    own = []
    for part in job.assembly.parts:
        waits = 0.0
        for cut in part.board.cuts:
            if cut.kind == RIP:
                waits = max(waits, round(abs(setting(cut.planes[0]).bevel), 3))
                own.append((waits, part, cut))
    for _, part, cut in sorted(own, key=lambda rip: rip[0]):
        set_to, lie = rip_words(cut, part, job.writer)
        yield part, (set_to, fence_text(cut, part, job.writer), lie.removesuffix("; blade leans away from the fence"))


def fence_text(cut: Cut, part: Part, write: Writer) -> str:
    """What to set the fence to: from the fence to the blade where it comes through the table."""
    if bevelled_on_the_board(part) and cut is not freed_by_bevel(part):
        return "on the wide board"
    ends = fence_distances(cut, part)
    if ends is None:
        return "by its lines"
    first, last = (write.length(mm) for mm in ends)
    return first if first == last else f"{first} at the {part.called(END_A)}, {last} at the {part.called(END_B)}"


def fence_distances(cut: Cut, part: Part) -> tuple[float, float] | None:
    """From the outermost wood at the fence to the cut on the face that lies on the table, at both ends (mm).

    None for a rip that meets that face nowhere.
    """
    plane, board = cut.planes[0], part.board
    a, b, c = plane.normal
    if abs(b) < LEVEL:
        return None
    table = board.thickness if setting(plane).bevel > 0.0 else 0.0
    across = [p[1] for p in corners(board.after(board.cuts.index(cut)))]
    fence = min(across) if edge_of(cut) == FAR_EDGE else max(across)
    start, stop = (abs((plane.offset - c * table - a * x) / b - fence) for x in (0.0, board.length))
    return start, stop


# ---- holes


def drill_rows(job: Job) -> tuple[Row, ...]:
    """Every round hole, the widest bit first: bit, depth, mark, what it is, face, place, number of holes."""
    own = [(part, cut) for part in job.assembly.parts for cut in part.board.cuts if cut.kind == BORE]
    rows = []
    for part, cut in sorted(own, key=lambda each: -each[1].bore.diameter if each[1].bore else 0.0):
        each = hole(cut, part, job.writer)
        when = "; before the piece is cut off its stick" if bored_on_the_stick(part) else ""
        rows.append((each.diameter, each.depth, part.mark, f"{cut.name}{when}", each.face, each.place, str(job.count(part))))
    for part in job.assembly.parts:
        holes = screw_holes(part, job)
        if holes:
            rows.append((holes.bit, "right through", part.mark, f"for screws into the slats, {holes.each} each", holes.lean,
                         holes.place, str(holes.number * job.count(part))))
    return tuple(rows)


# ---- test pairs


def pair_rows(job: Job) -> tuple[Row, ...]:
    """Every compound setting: number on the set-up sheet, setting, scraps, what faces and lengths close to, cuts."""
    groups: dict[Row, list[tuple[Part, Cut]]] = {}
    for part in job.assembly.parts:
        for cut in part.board.cuts:
            if is_compound(cut):
                groups.setdefault(_pair_words(cut, part, job), []).append((part, cut))
    rows = [(number, set_to, _scraps([part for part, _ in own], job.writer), faces, lengths,
             "; ".join(dict.fromkeys(f"{part.mark} {cut.name}" for part, cut in own)))
            for (number, set_to, faces, lengths), own in groups.items()]
    order = [each.number for each in crosscut_rows(job)]
    return tuple(sorted(rows, key=lambda row: order.index(row[0]) if row[0] in order else len(order)))


def _pair_words(cut: Cut, part: Part, job: Job) -> tuple[str, str, str, str]:
    write, angles = job.writer, closing(cut.planes[0])
    number, set_to = "corner cut", ""
    if cut.kind == CROSSCUT:
        row = saw_row(cut, part.board)
        set_to, scales = angles_text(row, write), (write.angle(row.bevel), f"{write.angle(row.mitre)}\u00a0{row.turn}")
        number = next(each.number for each in crosscut_rows(job) if (each.bevel, each.mitre) == scales)
    set_to = set_to or corner_words(cut, part, write)[0]
    return number, set_to, _checked(angles.faces, write), _checked(angles.lengths, write)


def _scraps(parts: Iterable[Part], write: Writer) -> str:
    """Sections of scrap to try a setting on: no wider than is handy, as thick as the parts."""
    sizes = dict.fromkeys(write.size(min(part.board.width, SCRAP_WIDE), part.board.thickness) for part in parts)
    return " or ".join(sizes)


def _checked(degrees: float, write: Writer) -> str:
    """An angle with what it is tried by."""
    return f"{write.angle(degrees)}: {'try square' if abs(degrees - 90.0) < 0.05 else 'bevel gauge'}"


# ---- order


def order_rows(job: Job) -> tuple[Row, ...]:
    """Mark, part, and its steps in order, numbered as in its block of the cut report."""
    return tuple((f"{sheet.mark}\u00a0×{job.count(sheet.part)}", sheet.name,
                  _steps([row.title for row in sheet.cuts] + [row.name for row in sheet.joints]))
                 for sheet in part_sheets(job))


def _steps(names: Iterable[str]) -> str:
    """Names with their numbers, steps that bear one name together."""
    steps: list[tuple[str, int, int]] = []
    for number, name in enumerate(names, start=1):
        if steps and steps[-1][0] == name:
            steps[-1] = (name, steps[-1][1], number)
        else:
            steps.append((name, number, number))
    return " → ".join(f"{first if first == last else f'{first}–{last}'}.\u00a0{name}" for name, first, last in steps)


