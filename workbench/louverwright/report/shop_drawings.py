# SPDX-License-Identifier: LGPL-2.1-or-later
"""The set of shop drawings: general arrangement, a sheet a stage, sheets of parts; each a frame with pictures placed in it.

The same placed pictures are printed, and put on TechDraw's pages.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache, partial

from ..core.kinds import STAGES
from .drawing import Drawing
from .job import Job
from .part_pages import part_pages
from .picture import Picture, drawn
from .placed import Named, Placed, centred, in_column, in_row, room_of
from .sheet_frame import filled, frame, room
from .sheets import LARGER, Sheet, SheetSet, lying
from .vent_views import elevations, exploded, pieces_of, roof_plan, stage_views, vertical_section

#: One to how many, the largest first: of rules in millimetres, and those that make whole and half inches of a foot.
SCALES = {True: (1.0, 2.0, 5.0, 10.0, 15.0, 20.0, 25.0, 30.0, 40.0, 50.0, 75.0, 100.0, 150.0, 200.0),
          False: (1.0, 2.0, 4.0, 6.0, 8.0, 12.0, 16.0, 24.0, 32.0, 48.0, 64.0, 96.0, 128.0, 192.0)}
#: Between two pictures (mm on paper).
GAP = 6.0
#: The share of a stage's sheet that its elevation and plan take at most.
ASSEMBLED = 0.46
FREE = "not to scale"
#: Places drawings; None where they find no room.
Place = Callable[[Sequence[Named]], tuple[Placed, ...] | None]
UNITS = {"mm": "millimetres", "in": "inches", "ft-in": "feet, inches"}


@dataclass(frozen=True)
class ShopSheet:
    """One sheet: a name that stays the same when the model changes, its title, its scale in words, and its pictures."""

    name: str
    title: str
    scale: str
    pictures: tuple[Placed, ...]


def paper_of(job: Job) -> str:
    """The paper of the shop drawings."""
    return LARGER[job.spec.paper_size] if job.spec.large_drawings else job.spec.paper_size


@lru_cache(maxsize=4)
def shop_sheets(job: Job) -> tuple[ShopSheet, ...]:
    """Every sheet of the set, in order."""
    return (*_arrangement(job), *(sheet for stage in STAGES for sheet in _stage(job, stage)), *_parts(job))


def shop_drawings(job: Job) -> SheetSet:
    """The set ready to be printed."""
    sheets = shop_sheets(job)
    return SheetSet(f"Shop drawings: {job.title}", paper_of(job),
                    tuple(Sheet(sheet.name, whole(job, sheet, number)) for number, sheet in enumerate(sheets, 1)))


def whole(job: Job, sheet: ShopSheet, number: int) -> Drawing:
    """A sheet with its frame and title block."""
    paper = paper_of(job)
    items = (*frame(paper), *filled(paper, title_values(job, sheet, number)),
             *(item for each in sheet.pictures for item in each.drawing.placed(each.x, each.y)))
    return Drawing(*lying(paper), items, description=f"{sheet.title}; scale {sheet.scale}.")


def title_values(job: Job, sheet: ShopSheet, number: int) -> dict[str, str]:
    """What the title block says, by the names of its fields."""
    return {"Vent": job.title, "Sheet": sheet.title, "Scale": sheet.scale, "Units": UNITS[job.writer.style.system],
            "Paper": paper_of(job), "Model": f"{job.fingerprint} · {job.revision}",
            "Number": f"{number} of {len(shop_sheets(job))}"}


def _arrangement(job: Job) -> Iterator[ShopSheet]:
    if not pieces_of(job):
        return
    box = room(paper_of(job))
    for name, title, pictures, level in (
            ("arrangement", "General arrangement: elevations", elevations(job), True),
            ("arrangement-2", "General arrangement: section, plan", (vertical_section(job), roof_plan(job)), False)):
        one_to, drawings = _largest(job, pictures, partial(in_row, box=box, gap=GAP, level=level))
        yield ShopSheet(name, title, scale_words(job, one_to), drawings)


def _stage(job: Job, stage: str) -> Iterator[ShopSheet]:
    """Left the stage put together, to scale; right pulled apart, as large as there is room for."""
    if not pieces_of(job, stage):
        return
    left, low, right, high = room(paper_of(job))
    views = stage_views(job, stage)
    edge = left + ASSEMBLED * (right - left)
    one_to, column = _largest(job, views, partial(in_column, box=(left, low, edge, high), gap=GAP))
    reach = max(each.x + each.drawing.width for each in column)
    free = (reach + GAP, low, right, high)
    apart = _as_large_as_fits(exploded(job, stage), room_of(free), job)
    yield ShopSheet(stage, str(STAGES[stage][1]), scale_words(job, one_to), (*column, centred(*apart, free)))


def _parts(job: Job) -> Iterator[ShopSheet]:
    for number, page in enumerate(part_pages(job, room(paper_of(job))), 1):
        first, last = page[0].name, page[-1].name
        title = f"Parts {first} to {last}" if len(page) > 1 else f"Part {first}"
        yield ShopSheet(f"parts-{number}", title, FREE, tuple(page))


def _largest(job: Job, pictures: Sequence[Picture], place: Place) -> tuple[float, tuple[Placed, ...]]:
    """The largest scale at which pictures find room, and where they are placed.  Raises ValueError where none will do."""
    size = room_of(room(paper_of(job)))
    for one_to in SCALES[job.writer.style.system == "mm"]:
        if any(long > one_to * free for each in pictures for long, free in zip(room_of(each.box), size, strict=True)):
            continue
        found = place([(each.name, _to_scale(each, one_to, job)) for each in pictures])
        if found:
            return one_to, found
    raise ValueError("The vent is too large to be drawn on this paper.")


def _to_scale(picture: Picture, one_to: float, job: Job) -> Drawing:
    return drawn(replace(picture, caption=f"{picture.caption}, 1:{one_to:g}"), 1.0 / one_to, job.writer.bare)


def _as_large_as_fits(picture: Picture, size: tuple[float, float], job: Job) -> tuple[str, Drawing]:
    """The picture at whatever scale fills the room (mm): what stands round it keeps its size."""
    high = min(free / long for long, free in zip(room_of(picture.box), size, strict=True))
    low = high / 20.0
    for _ in range(10):
        middle = (low * high) ** 0.5
        tried = drawn(picture, middle, job.writer.bare)
        low, high = (middle, high) if tried.width <= size[0] and tried.height <= size[1] else (low, middle)
    return picture.name, drawn(picture, low, job.writer.bare)


def scale_words(job: Job, one_to: float) -> str:
    """A scale as the title block says it."""
    if job.writer.style.system == "mm":
        return f"1:{one_to:g}"
    return f"1:{one_to:g} ({job.writer.bare(304.8 / one_to)} = 1 ft)"
