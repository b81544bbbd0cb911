# SPDX-License-Identifier: LGPL-2.1-or-later
"""The assembly book: bench blocks, each stage step by step with its picture, the fastening plan, fixing to the roof."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from ..core.bench_blocks import bench_blocks
from ..core.fastening import Fastened, totals
from ..core.fixings import FROM_INSIDE, NONE, SCREW, SOURCES
from ..core.kinds import STAGES
from ..core.sealing import Bead, beads
from ..core.steps import Step, order_of
from .assembly_words import CAUTIONS, DRY_FIT, WORDS
from .document import report_of
from .fastening_words import COLUMNS, drill_rows, lost_words, plan_of, rows, size_text
from .finish import finish_text
from .job import Job
from .left_out import marks_left_out
from .page import Block, Bullets, Column, Figure, Heading, PageBreak, Pairs, Para, Report, Row, Table, Together
from .place_words import part_name
from .roof_fixing import AT_ROOF, roof_chapter
from .step_picture import picture

#: Room for a step's picture (mm on paper).
ROOM = (70.0, 54.0)


def assembly_book(job: Job) -> Report:
    """The book, ready for any writer."""
    return report_of(job, "Assembly book", (*_before(job), *_stages(job), *roof_chapter(job, step_blocks(job, at_roof=True)),
                                            *_plan(job)))


def _before(job: Job) -> Iterator[Block]:
    """What comes before any step: what the book is for, blocks, dry fit, cautions."""
    write = job.writer
    yield Heading("Before you begin", 1, anchor="before")
    if job.vents > 1:
        yield Para(f"All pieces, screws and beads in this book are one vent's; you make {job.vents}.")
    yield Para("Steps follow each other: each piece finds what it stands on. New pieces are grey. Left and right are as seen "
               "from outside. Slants are read from square to the seam; screws are counted for all alike joints of the step.")
    if job.assembly.left_out:
        yield Para(f"Left out, not made here: {marks_left_out(job)}. What would be fastened to them is in no table of "
                   "this book; see “Left out” in the cut report.", "caution")
    yield Bullets(DRY_FIT)
    for text in CAUTIONS:
        yield Para(text, "caution")
    table = tuple((block.use.capitalize(), str(block.count), write.length(block.length), write.length(block.height),
                   write.angle(block.angle) if block.angle else "level") for block in bench_blocks(job.assembly, job.sizes))
    yield Table((Column("Use", 4.0), Column("Make", 0.6, "right"), Column("Long", 0.9, "right"),
                 Column("High", 0.9, "right"), Column("Slope", 0.8, "right")), table, caption="Bench blocks",
                note="Long is level, of a saddle up the slope; high is at the high end. From offcuts, screwed to the bench.")


def _stages(job: Job) -> Iterator[Block]:
    blocks = step_blocks(job, at_roof=False)
    for stage, (_, name) in STAGES.items():
        own = [each for key, each in blocks.items() if key.startswith(stage + ".")]
        if own:
            yield PageBreak()
            yield Heading(name, 1, anchor=f"stage-{stage}")
            yield from own


def step_blocks(job: Job, at_roof: bool) -> Mapping[str, Together]:
    """Each step's block by its rule's key: those at the bench, or those at the roof."""
    order = order_of(job.assembly)
    later = _closing(job)
    found: dict[str, Together] = {}
    there: list[str] = []
    number = 0
    for index, step in enumerate(order.steps):
        if index and order.steps[index - 1].stage != step.stage:
            there, number = [], 0
        number += 1
        if step.rule.at_roof == at_roof:
            key = step.rule.key if step.rule.key not in found else f"{step.rule.key}.{number}"
            found[key] = _step(job, step, number, there, later.get(index, []))
        there += [piece.id for piece in step.pieces]
    return found


def _closing(job: Job) -> Mapping[int, list[Fastened]]:
    """The joints of one stage that each step closes, by the step's place."""
    places, stage = order_of(job.assembly).places, {piece.id: piece.kind.split(".")[0] for piece in job.assembly.pieces}
    found: dict[int, list[Fastened]] = {}
    for each in plan_of(job):
        if stage[each.first] == stage[each.second]:
            found.setdefault(max(places[each.first][0], places[each.second][0]), []).append(each)
    return found


def _step(job: Job, step: Step, number: int, there: list[str], joints: list[Fastened]) -> Together:
    words = WORDS[step.rule.key]
    place = AT_ROOF if step.rule.at_roof else number
    new = [piece.id for piece in step.pieces]
    drawing = picture(job.assembly, there, new, words.eye, ROOM, f"{words.title}: the new pieces in grey.")
    blocks: list[Block] = [Heading(f"{place} · {words.title}", 2),
                           Row((Figure(drawing), Together((Pairs(_marks(job, new), 1, small=True), _finish(job, new)))),
                               (1.15, 1.0)),
                           Bullets((*words.lines, *_sealing(job, new, there)))]
    table = rows(job, [each for each in joints if each.row.fastener != NONE])
    if table:
        blocks.append(Table(COLUMNS, table))
    return Together(tuple(blocks))


def _marks(job: Job, new: list[str]) -> tuple[tuple[str, str], ...]:
    """How many pieces of which mark are put on in a step."""
    counts: dict[str, int] = {}
    for name in new:
        mark = job.assembly.part_of(name).mark
        counts[mark] = counts.get(mark, 0) + 1
    parts = {part.mark: part for part in job.assembly.parts}
    return tuple((f"{count} × {mark}", str(part_name(parts[mark], job))) for mark, count in sorted(counts.items()))


def _finish(job: Job, new: list[str]) -> Para:
    """What of the new pieces stays bare for glue and what is primed before."""
    texts: dict[str, list[str]] = {}
    for part in dict.fromkeys(job.assembly.part_of(name) for name in new):
        texts.setdefault(finish_text(part, job.assembly), []).append(part.mark)
    return Para("\n".join(f"{', '.join(marks)}: {text}." for text, marks in texts.items()), "small")


def _sealing(job: Job, new: list[str], there: list[str]) -> Iterator[str]:
    """The beads that a step lays: those whose later piece is new."""
    known, fresh = {*new, *there}, set(new)
    found: dict[str, list[Bead]] = {}
    for bead in beads(job.assembly):
        if {bead.first, bead.second} <= known and fresh & {bead.first, bead.second}:
            found.setdefault(bead.row.how, []).append(bead)
    for how, own in found.items():
        marks = sorted({job.assembly.part_of(name).mark for bead in own for name in (bead.first, bead.second)})
        yield (f"Sealant: {how} ({', '.join(marks)}): {len(own)} bead{'s' if len(own) > 1 else ''}, "
               f"{job.writer.far.length(sum(bead.length for bead in own))} in all.")


# ---- the fastening plan


def _plan(job: Job) -> Iterator[Block]:
    plan, write = plan_of(job), job.writer
    sizes = totals(plan)
    yield PageBreak()
    yield Heading("Fastening plan", 1, anchor="fastening")
    yield Para("Lengths follow from the wood that each screw goes through, along the screw. Every screw keeps clear of the "
               "mast's bore and of its neighbours, ends under the far face, and was checked for a driver of "
               f"{write.length(job.spec.driver_length)} with its bit, standing on its axis at the step where it is driven.")
    yield Table((Column("Fastener", 3.0), Column("Number, one vent", 1.0, "right")),
                tuple((size_text(size, write), str(count)) for size, count in sizes.items()), caption="All sizes",
                note="Stainless, or hot-dip galvanised as your roofing and any treated wood ask for. Buy a tenth more.")
    yield Table((Column("Screw", 1.2), Column("Hole in the first part", 1.4), Column("Pilot in the second", 1.4),
                 Column("Counterbore", 2.4)), tuple(drill_rows(job, sizes)), caption="Drills")
    yield from _reach(job, plan)
    yield Bullets((*SOURCES, "Gable-end slats are screwed by their stiles' marks in the cut report, and are not counted here.")
                  if job.assembly.of_kind("roof.gable.slat") else SOURCES)


def _reach(job: Job, plan: tuple[Fastened, ...]) -> Iterator[Block]:
    """The check that everything can be driven: the stages' joints one by one, and what cannot be."""
    screws = sum(len(each.driven) for each in plan if each.row.fastener == SCREW)
    yield Heading("Driver's reach", 2)
    yield Para(f"{screws} screws: a straight driver stands free on the axis of each.")
    marks = {piece.id: part.mark for part in job.assembly.parts for piece in part.pieces}
    fewer = sorted({f"{marks[each.first]} to {marks[each.second]}" for each in plan
                    if each.row.fastener != NONE and each.row is not FROM_INSIDE and 0 < len(each.driven) < each.wanted})
    if fewer:
        yield Para(f"Fewer than usual, for want of wood between them: {', '.join(fewer)}. Glue these faces as well.")
    for text in lost_words(job, plan):
        yield Para(f"Look at {text}", "caution")
