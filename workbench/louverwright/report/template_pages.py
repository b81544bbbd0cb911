# SPDX-License-Identifier: LGPL-2.1-or-later
"""The pages of full-size templates: a page that says how to use them, then each template on its sheets."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import pairwise
from textwrap import wrap

from ..core.solid import END_A, END_B, MARKED_FACE, REFERENCE_EDGE
from .drawing import Area, Arrow, Circle, Drawing, Item, Label, Line, Point
from .job import Job
from .lettering import Taken, lettered, text_box
from .sheets import Sheet, SheetSet, lying
from .template import Segment, Template, templates, words
from .tiling import BELOW, LAP, LEFT, Tile, Tiling, clipped

#: Sides of the check square (mm), by whether the rulers count inches.
CHECK = {False: (100.0, "100 mm"), True: (101.6, "4 in")}
#: Half a joint mark (mm), and where along a joint they stand as shares of it.
HALF_MARK, MARKS_AT = 3.0, (0.2, 0.5, 0.8)
BIG, SMALL, TINY = 11.0, 7.5, 6.0
#: Room to either side of the middle of the words on the wood (mm).
HALF_TOLD = 26.0
#: Room that an end's name needs to the left of its end (mm); nearer to the sheet's left side it stands to the right of it.
NAME_LONG = 40.0
#: Letters in a line of the first page.
LINE_LETTERS = 130


@dataclass(frozen=True)
class Leaf:
    """A template with its tiling: what its sheets are drawn from."""

    template: Template
    tiling: Tiling

    @property
    def tiles(self) -> list[Tile]:
        """The sheets that are printed: of a panel, which may be as large as a wall, only those that hold a corner."""
        segments = self.template.segments
        panel = self.template.part.stock.form == "sheet"
        return self.tiling.with_corners(segments) if panel else self.tiling.with_lines(segments)


def template_sheets(job: Job) -> SheetSet:
    """The whole set; only the page of words where no part has anything to be marked out from a template."""
    leaves = [_leaf(each, job) for each in templates(job)]
    sheets = [Sheet(f"{leaf.template.part.mark} {tile.name}", _sheet(leaf, tile, job))
              for leaf in leaves for tile in leaf.tiles]
    return SheetSet(f"Full-size templates: {job.title}", job.spec.paper_size,
                    (Sheet("how to use", _first(leaves, job)), *sheets))


def _leaf(template: Template, job: Job) -> Leaf:
    left, low, right, high = template.extent
    inches = job.spec.paper_units != "mm"
    return Leaf(template, Tiling(job.spec.paper_size, inches, (left, low), (right, high)))


def _page(items: Iterable[Item], job: Job, description: str) -> Drawing:
    return Drawing(*lying(job.spec.paper_size), tuple(items), description=description)


# ---- a sheet


def _sheet(leaf: Leaf, tile: Tile, job: Job) -> Drawing:
    drawn = [*_wood(leaf.template, tile), *_frame(leaf, tile), *_check(leaf, tile)]
    names = [*_edge_names(leaf.template, tile), *_head(leaf, tile, job)]
    taken = Taken([*drawn, *names])
    points = [(letter, tile.placed(p)) for letter, p in leaf.template.letters if tile.holds(p)]
    circles = [Circle(*p, 0.8, style="thin") for _, p in points]
    taken.add(circles)
    letters = lettered(points, BIG, taken) if points else []
    told = _told(leaf.template, tile, taken)
    items = (*drawn, *names, *circles, *letters, *told, *_ruler(leaf.tiling, tile, 0), *_ruler(leaf.tiling, tile, 1))
    return _page(items, job, f"Template of {leaf.template.part.mark}, {leaf.template.name}, page {tile.name}, full size.")


def _wood(template: Template, tile: Tile) -> Iterator[Item]:
    for style, segments in (("hidden", template.far), ("thin", template.marks), ("outline", template.marked_segments)):
        yield from _lines(segments, tile, style)
    for centre, diameter in template.holes:
        yield from _lines(_round(centre, diameter / 2.0), tile, "outline")


def _lines(segments: Iterable[Segment], tile: Tile, style: str) -> Iterator[Line]:
    for segment in segments:
        part = clipped(segment, tile)
        if part is not None:
            yield Line((tile.placed(part[0]), tile.placed(part[1])), style)


def _round(centre: Point, radius: float) -> Iterator[Segment]:
    points = [(centre[0] + radius * math.cos(turn), centre[1] + radius * math.sin(turn))
              for turn in (math.radians(5.0 * step) for step in range(73))]
    yield from pairwise(points)


# ---- rulers, joints, check square


def _ruler(tiling: Tiling, tile: Tile, axis: int) -> Iterator[Item]:
    """A ruler along the window's lower or left side; it counts from end A, or from the reference edge."""
    fine = 8 if tiling.inches else 10
    low, high = ((tile.left, tile.right), (tile.low, tile.high))[axis]
    for count in range(math.ceil(low / tiling.unit * fine - 1e-9), math.floor(high / tiling.unit * fine + 1e-9) + 1):
        at = count / fine * tiling.unit
        whole, half = count % fine == 0, count % (fine // 2) == 0
        yield Line((_beside(tile, axis, at, 0.0), _beside(tile, axis, at, 3.6 if whole else 2.4 if half else 1.3)), "thin")
        if whole:
            x, y = _beside(tile, axis, at, 4.2)
            yield Label(x, y - (1.9 if axis == 0 else 0.8), str(count // fine), TINY, "middle" if axis == 0 else "end")
    unit = "in" if tiling.inches else "cm"
    text = (f"{unit} from end A", f"{unit} from the reference edge")[axis]
    x, y = _beside(tile, axis, low, 9.0)
    yield Label(x, y, text, TINY, rotation=90.0 * axis)


def _beside(tile: Tile, axis: int, at: float, away: float) -> Point:
    """A point on the paper at ``at`` along a ruler and ``away`` outside the window (mm)."""
    if axis == 0:
        return (tile.placed((at, 0.0))[0], BELOW - away)
    return (LEFT - away, tile.placed((0.0, at))[1])


def _frame(leaf: Leaf, tile: Tile) -> Iterator[Item]:
    """The window's border and, at each joint to a neighbour, a line to trim or glue by, with marks that meet there."""
    tiling = leaf.tiling
    printed = {each.name for each in leaf.tiles}
    right, top = LEFT + tiling.window[0], BELOW + tiling.window[1]
    yield Line(((LEFT, BELOW), (right, BELOW), (right, top), (LEFT, top), (LEFT, BELOW)), "thin")
    for axis in (0, 1):
        for sense in (-1, 1):
            other = Tile(tile.row + sense * axis, tile.column + sense * (1 - axis), 0.0, 0.0, 0.0, 0.0)
            if other.row >= 0 and other.column >= 0 and other.name in printed:
                yield from _joint(tiling, axis, sense, other.name)


def _joint(tiling: Tiling, axis: int, sense: int, other: str) -> Iterator[Item]:
    """The joint to the sheet before (its own edge, trimmed) or after (a dashed line that the other's edge comes to)."""
    first, across = ((LEFT, BELOW), (BELOW, LEFT))[axis]
    at, long = first + (tiling.step[axis] if sense > 0 else 0.0), tiling.window[1 - axis]

    def on(along: float, away: float) -> Point:
        return ((at + away, across + along), (across + along, at + away))[axis]

    if sense > 0:
        yield Line((on(0.0, 0.0), on(long, 0.0)), "hidden")
    for share in MARKS_AT:
        middle = share * long
        yield Area(((on(middle - HALF_MARK, 0.0), on(middle, -sense * HALF_MARK), on(middle + HALF_MARK, 0.0)),),
                   "shade", "thin")
    text = f"glue {other} on this strip, its edge to the dashed line" if sense > 0 else f"trim here, lay over {other}"
    x, y = on(0.22 * long + HALF_MARK, 1.5 if axis == 1 else 3.3)
    yield Label(x, y, text, TINY, rotation=90.0 * (1 - axis))


def _check(leaf: Leaf, tile: Tile) -> Iterator[Item]:
    """The corners of a square to measure before anything is glued."""
    side, text = CHECK[leaf.tiling.inches]
    right, top = LEFT + leaf.tiling.step[0] - 8.0, BELOW + leaf.tiling.window[1] - 6.0
    if leaf.tiling.rows > 1:
        top -= LAP
    for x, way in ((right - side, 1.0), (right, -1.0)):
        for y, up in ((top - side, 1.0), (top, -1.0)):
            yield Line(((x + 6.0 * way, y), (x, y), (x, y + 6.0 * up)), "thin")
    yield Label(right - side / 2.0, top - 2.0, f"check: {text} between the corners, both ways", TINY, "middle")


# ---- words on a sheet


def _edge_names(template: Template, tile: Tile) -> Iterator[Item]:
    """The reference edge and the ends, each where this sheet shows it."""
    part = template.part
    x, y = tile.placed((max(tile.left, 0.0) + 60.0, -4.0))
    if tile.low < -5.0:
        yield Label(x, y, f"reference edge: {part.called(REFERENCE_EDGE)}", SMALL)
    for at, anchor, text in ((0.0, "start", f"◄ end A: {part.called(END_A)}"),
                             (part.board.length, "end", f"end B: {part.called(END_B)} ►")):
        if tile.low < -5.0 and tile.left <= at <= tile.right:
            yield Label(*tile.placed((at, -8.0)), text, SMALL, anchor if at - tile.left > NAME_LONG else "start")


def _told(template: Template, tile: Tile, taken: Taken) -> list[Item]:
    """The grain's arrow with the mark over it and the face's name below, in the freest place on the wood."""
    left, low, right, high = template.extent
    seen = (max(left, tile.left), max(low, tile.low), min(right, tile.right), min(high, tile.high))
    spots = [_share(a, b, seen) for b in (0.5, 0.7, 0.3) for a in (0.4, 0.55, 0.25, 0.7)]
    made = [_told_at(tile.placed((min(max(x, tile.left + HALF_TOLD), tile.right - HALF_TOLD), y)), template)
            for x, y in spots]
    return min(made, key=lambda items: sum(taken.clashes(text_box(item)) for item in items if isinstance(item, Label)))


def _share(a: float, b: float, box: tuple[float, float, float, float]) -> Point:
    return (box[0] + a * (box[2] - box[0]), box[1] + b * (box[3] - box[1]))


def _told_at(at: Point, template: Template) -> list[Item]:
    x, y = at
    turned = f" (turn over: {template.turned_for})" if template.turned_for else ""
    return [Arrow(x - 18.0, y, x + 18.0, y, both=True, style="grain"),
            Label(x, y + 1.5, template.part.mark + turned, BIG, "middle"),
            Label(x, y - 4.0, f"grain · {template.part.called(MARKED_FACE)} up", SMALL, "middle")]


def _head(leaf: Leaf, tile: Tile, job: Job) -> Iterator[Item]:
    width, height = lying(job.spec.paper_size)
    mark = leaf.template.part.mark
    yield Label(LEFT, height - 10.0, f"{mark} · page {tile.name}", 13.0)
    _, face, edges, *rest = words(leaf.template, "inches" if leaf.tiling.inches else "millimetres")
    yield Label(LEFT + 45.0, height - 9.0, f"{leaf.template.name}; {'; '.join(rest)}", SMALL)
    yield Label(LEFT + 45.0, height - 13.0, f"{face}; {edges}", SMALL)
    yield Label(LEFT + 45.0, height - 17.0, job.stamp, TINY)
    yield from _map(leaf, tile, (width - 8.0, height - 7.0))


def _map(leaf: Leaf, tile: Tile, corner: Point) -> Iterator[Item]:
    """All sheets of the template as small boxes with its outline, this one dark, those that are not printed hatched; its
    upper right corner is given."""
    tiling, printed = leaf.tiling, {each.name for each in leaf.tiles}
    columns, rows = tiling.columns, tiling.rows
    wide, high = min(8.0, 60.0 / columns), min(6.0, 13.0 / rows)
    for each in tiling.tiles():
        x, y = corner[0] - (columns - each.column) * wide, corner[1] - (rows - each.row) * high
        fill = "shade" if each.name == tile.name else "none" if each.name in printed else "waste"
        yield Area((((x, y), (x + wide, y), (x + wide, y + high), (x, y + high)),), fill, "thin")
        if high > 2.5 and each.name in printed:
            yield Label(x + wide / 2.0, y + high / 2.0 - 0.8, each.name, min(TINY, high * 1.3), "middle")


# ---- the first page

HOW_TO = (
    "Print at 100 %: switch off “fit to page” and “shrink to printable area”. Measure the check square on every page, both "
    "ways, before you glue. A printer that is out in one way only makes templates that are out in that way.",
    "Trim a page along the edge that says so and lay it over the page before, its edge to the dashed line, so that half "
    "marks make whole ones and the rulers go on without a step. Then check one length over all pages with the steel tape: the "
    "rulers count from end A along the board and from its reference edge across it.",
    "Full lines are the marked face. Dashed lines are what lies below it: the far face where a wall is bevelled, the floor of "
    "a joint. Letters are those of the part's sheet in the cut report. A template that says so serves the other hand when "
    "it is turned over.",
    "Pages hatched on the map are not printed, since nothing lies there or nothing but straight edges: lay those off with the "
    "tape.",
    "Cut one piece, try it in its place, and only then cut the others. Paper moves with damp: the cut report's figures rule.",
)


def _first(leaves: list[Leaf], job: Job) -> Drawing:
    height = lying(job.spec.paper_size)[1]
    items: list[Item] = [Label(LEFT, height - 20.0, "Full-size templates", 17.0),
                         Label(LEFT, height - 27.0, job.stamp, 9.0)]
    y = height - 38.0
    for line in (line for text in HOW_TO for line in wrap(text, LINE_LETTERS)):
        items.append(Label(LEFT, y, line, 8.5))
        y -= 5.0
    rows = [("Mark", "Part", "Pages", "Marked out from it")]
    rows += [_row(leaf) for leaf in leaves] or [("", "No part of this vent needs a template.", "", "")]
    for row in rows:
        y -= 6.0
        items += [Label(LEFT + x, y, text, 9.0) for x, text in zip((0.0, 35.0, 125.0, 165.0), row, strict=True)]
    return _page(items, job, "How to print, check and glue the templates, and which there are.")


def _row(leaf: Leaf) -> tuple[str, str, str, str]:
    part, tiles = leaf.template.part, leaf.tiles
    kinds = dict.fromkeys(cut.kind for cut in part.board.cuts if len(cut.planes) > 1 or cut.kind == "corner cut")
    marks = f"{part.mark}, turned {leaf.template.turned_for}" if leaf.template.turned_for else part.mark
    pages = f"{tiles[0].name} – {tiles[-1].name} ({len(tiles)})" if len(tiles) > 1 else tiles[0].name
    return marks, leaf.template.name, pages, ", ".join(kinds) or "slats' places"
