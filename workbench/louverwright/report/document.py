# SPDX-License-Identifier: LGPL-2.1-or-later
"""The whole report as blocks of the page model: title block, summary, cautions, set-up sheet, parts."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from typing import Any

from ..core.dimensions import pitches
from ..core.figures import OUTPUTS, Output
from ..core.kinds import STAGES
from ..core.parameters import (
    ANGLE,
    BY_NAME,
    LENGTH,
    MEASURED,
    NUMBER,
    PARAMETERS,
    STOCK,
    SWITCH,
    VENT,
    Parameter,
    applies,
)
from ..core.resolved import resolved
from ..core.row import end_distance, positions
from ..core.twist import DROPS
from ..core.units import format_angle, format_pitch
from .blanks import sheet_rows, thickness_rows
from .board_drawing import board_drawing
from .job import Job, Writer
from .left_out import left_out_rows, left_out_words, wish_rows
from .page import Block, Bullets, Cell, Column, Figure, Heading, Pairs, Para, Report, Row, Table, Together
from .part_sheet import PartSheet, part_sheets
from .scribing import SCRIBE_NOTE, scribe_rows, twist_rows, twist_words
from .seat_words import seats
from .setups import beyond_rows, corner_rows, crosscut_rows, joint_setups, nested_rows, rip_rows
from .tally import tally
from .twins import twins_line
from .words import CAUTIONS, SAW_CAUTIONS, advice_lines, holding_lines, how_to_read, setup_words, several_words


def document(job: Job) -> Report:
    """The report of a job, ready for any writer."""
    what = "a louvered roof vent" if job.vents == 1 else f"{job.vents} louvered roof vents: make {job.vents} of each"
    blocks = (*_summary(job), *_cut_list(job), *_setups(job), *_parts(job), *_parameters(job))
    return report_of(job, f"Cut report of {what}", blocks)


def report_of(job: Job, subtitle: str, blocks: Iterable[Block]) -> Report:
    """A report of a job with the title block and the foot that all of its papers have."""
    return Report(title=job.title, subtitle=subtitle, title_block=title_block(job), blocks=tuple(blocks), footer=job.stamp,
                  model=job.fingerprint)


def title_block(job: Job) -> tuple[tuple[str, str], ...]:
    """Label and value pairs that match paper and model."""
    several = (("Vents", f"{job.vents}: make {job.vents} of each"),) if job.vents > 1 else ()
    return (("Project", job.spec.project or "–"), ("Date", job.date), ("Units", job.writer.unit),
            ("Revision", job.revision), ("Fingerprint", job.fingerprint),
            ("Made with", f"Louverwright {job.version}"), *several)


def output_text(job: Job, output: Output) -> str:
    """A result as the report prints it."""
    value, write = job.figures[output.name], job.writer
    return {"length": write.length, "area": write.area, "weight": write.weight, "angle": write.angle}.get(
        output.kind, str)(value)


def survey_rows(job: Job) -> tuple[tuple[str, str], ...]:
    """The barn's roof as it was measured, and what the reading's error opens up."""
    spec, write = job.spec, job.writer
    left, right = pitches(spec)
    slopes = [("Left slope", format_pitch(left)), ("Right slope", format_pitch(right))]
    if job.sizes.roof.single:
        slopes = [("Slope, falling to the left", format_pitch(left))]
    rows = [*slopes, ("Pitch may be off by", format_angle(spec.pitch_error, 2)),
            ("Opens at the foot, left", write.length(job.figures["opening_left"])),
            ("Opens at the foot, right", write.length(job.figures["opening_right"]))]
    if spec.ridge_length:
        rows.insert(2, ("Unbroken ridge", f"{write.far.length(spec.ridge_length)} for {spec.vents} vent"
                        + ("s" if spec.vents > 1 else "")))
    if spec.ridge_offset:
        rows.append(("Axis left of the ridge", write.length(spec.ridge_offset)))
    return (*rows, *twist_rows(job))


def section_rows(job: Job, *sections: str) -> tuple[tuple[str, str], ...]:
    """Results of the named sections with their labels."""
    return tuple((output.label.capitalize(), output_text(job, output)) for output in OUTPUTS
                 if output.section in sections and (job.figures[output.name] or not output.optional))


def row_rows(job: Job) -> tuple[tuple[str, str], ...]:
    """Where the vents stand on the ridge, and what all of them come to."""
    write, figures = job.writer, job.figures
    places = ", ".join(write.far.length(place) for place in positions(job.spec))
    return (("Axes, from the ridge's −X end", places), ("From axis to axis", write.far.length(figures["vent_spacing"])),
            ("From the ridge's ends to the nearest axis", write.far.length(end_distance(job.spec))),
            ("Pieces, one vent", str(figures["pieces"])),
            (f"Pieces, all {job.vents} vents", str(figures["pieces_of_all_vents"])),
            ("Weight, one vent", write.weight(figures["total_weight"])),
            (f"Weight, all {job.vents} vents", write.weight(figures["weight_of_all_vents"])))


def _summary(job: Job) -> Iterator[Block]:
    spec = job.spec
    yield Heading("Summary", 1, anchor="summary")
    if spec.notes:
        yield Para(spec.notes)
    if job.vents > 1:
        yield Heading(f"{job.vents} vents on one ridge", 2)
        yield Para(several_words(job.vents))
        yield Pairs(row_rows(job), 2)
    yield Heading("Survey of the barn's roof", 2)
    if spec.survey_note:
        yield Para(spec.survey_note)
    yield Pairs(survey_rows(job), 2)
    yield from _scribing(job)
    yield Heading("Size", 2)
    yield Pairs(section_rows(job, "size", "count"), 2)
    yield Row((Together((Heading("Air", 2), Pairs(section_rows(job, "air"), 1))),
               Together((Heading("Weight and take-off", 2), Pairs(section_rows(job, "weight", "take-off"), 1)))))
    notes = advice_lines(job)
    if notes:
        yield Heading("To look at before cutting", 2)
        yield Bullets(notes)
    yield Heading("Cautions", 2)
    for text in CAUTIONS:
        yield Para(text, "caution")
    yield Heading("How to read this report", 2)
    yield Bullets(how_to_read(job))


def _scribing(job: Job) -> Iterator[Block]:
    """What to scribe off each corner's legs, where the roof was read at its corners."""
    found = job.sizes.readings
    if found:
        yield Para(twist_words(job, found))
        yield Table((Column("Corner", 1.1), Column("From the axis, level", 1.9), Column("Legs", 1.4),
                     Column("Roof lower by", 1.1, "right"), Column("Wood left", 0.9, "right"),
                     Column("To scribe off", 1.3, "right")), scribe_rows(job), caption="Scribe at the roof", note=SCRIBE_NOTE)


def _cut_list(job: Job) -> Iterator[Block]:
    """All parts in one table, with counts that reconcile."""
    pieces = [Column("Pieces", 0.6, "right")]
    if job.vents > 1:
        pieces = [Column("Pieces, one vent", 0.7, "right"), Column(f"Pieces{job.for_all}", 0.7, "right")]
    columns = (Column("Mark", 0.7), Column("Part", 2.2), *pieces, Column("Stock", 2.2),
               Column("Blank L × W × T", 1.9), Column("Weight, each", 0.8, "right"))
    sheets = part_sheets(job)
    noted = any(sheet.note for sheet in sheets)
    columns = (*columns, Column("Note", 1.6)) if noted else columns
    yield Heading("Cut list", 1, anchor="cut-list")
    for stage, (_, name) in STAGES.items():
        own = [s for s in sheets if s.part.kind.stage == stage]
        yield Table(columns, tuple(_cut_list_row(s, job, noted) for s in own), caption=name, note=_total(own, job),
                    tallies=tuple(tally(s, job) for s in own))
    yield Para(_grand_total(sheets, job))
    yield from _left_out(job, pieces)


def _left_out(job: Job, pieces: list[Column]) -> Iterator[Block]:
    """The parts that are drawn but not made here, so that nobody thinks they were forgotten."""
    rows = left_out_rows(job)
    if rows:
        yield Heading("Left out", 2, anchor="left-out")
        yield Table((Column("Mark", 0.7), Column("Part", 2.2), *pieces, Column("Stock", 2.0),
                     Column("Finished L × W × T", 2.2), Column("Weight, each", 0.8, "right"), Column("Note", 1.6)),
                    rows, caption="Not made here")
        for line in left_out_words(job):
            yield Para(line, "caution")


def _cut_list_row(sheet: PartSheet, job: Job, noted: bool) -> tuple[str | Cell, ...]:
    """A part in the cut list; pieces for one vent and for all where there are several; a note where any has one."""
    counts = (sheet.count,) if job.vents == 1 else (sheet.count, str(job.count(sheet.part)))
    return (Cell(sheet.mark, bold=True, link=anchor(sheet)), sheet.name, *counts, sheet.stock, sheet.blank, sheet.weight,
            *((sheet.note,) if noted else ()))


def _total(sheets: list[PartSheet], job: Job) -> str:
    """What a stage comes to, for one vent and for all."""
    write = job.writer
    weight = sum(s.part.weight * s.part.count for s in sheets)
    one = f"{sum(s.part.count for s in sheets)} pieces, {write.weight(weight)}"
    if job.vents == 1:
        return f"{one}."
    return (f"{one}, for one vent; {sum(job.count(s.part) for s in sheets)} pieces, {write.weight(weight * job.vents)}, "
            f"for all {job.vents} vents.")


def _grand_total(sheets: Sequence[PartSheet], job: Job) -> str:
    one = f"{sum(s.part.count for s in sheets)} pieces under {len(sheets)} marks in all."
    if job.vents == 1:
        return one
    return f"One vent: {one} All {job.vents} vents: {sum(job.count(s.part) for s in sheets)} pieces."


def anchor(sheet: PartSheet) -> str:
    """The name of a part's block in the report."""
    return f"part-{sheet.mark}"


def _setups(job: Job) -> Iterator[Block]:
    cuts = f"Cuts{job.for_all}"
    yield Heading("Set-up sheet", 1, anchor="set-ups")
    yield Para("Stand before the saw with the fence behind the piece: the piece you keep lies to the left of the "
               "blade. Bevels change before mitres, so that the fewest scales move. Left and right tell where the "
               "saw's handle swings. Each part's block says which of its edges and faces the names stand for."
               + (f" {setup_words(job.vents)}" if job.vents > 1 else ""))
    twins = twins_line(job.assembly)
    if twins:
        yield Para(twins)
    yield from _blanks(job, cuts)
    yield Table(
        (Column("No.", 0.7), Column("Blade", 0.7), Column("Mitre", 0.9), Column("How the pieces lie", 2.4),
         Column("Ends", 4.0), Column(cuts, 0.5, "right")),
        tuple((r.number, r.bevel, r.mitre, r.lie, r.ends, r.count) for r in crosscut_rows(job)),
        caption="Crosscuts", note="Mitre from a square cut; blade from upright. A part with a double cheek has two cuts "
        "at that end.")
    corners = corner_rows(job)
    if corners:
        yield Table((Column("Set", 1.6), Column("How the piece lies", 2.4), Column("Cuts at", 4.0),
                     Column(cuts, 0.5, "right")), corners, caption="Corner cuts: by the points in the part's block",
                    note="Angles from square across the board.")
    joints = tuple((r.joint, r.size, r.parts, r.count) for r in joint_setups(job))
    if joints:
        yield Table((Column("Joint", 1.6), Column("Angle and size", 4.0), Column("Parts", 2.0),
                     Column(f"Joints{job.for_all}", 0.6, "right")), joints, caption="Dados, laps, notches and bores")
    nested = nested_rows(job)
    if nested:
        yield Table((Column("Mark", 0.6), Column("Stood at, from the table", 1.2), Column("Mitre", 0.8),
                     Column("Fence at least", 1.0)), nested, caption="Nested settings: blade upright",
                    note="Outside towards you, as it sits in the vent. Left end: handle left, keep to the right; right end: "
                    "handle right, keep to the left.")
    beyond = beyond_rows(job)
    if beyond:
        yield Table((Column("Marks", 1.2), Column("What to do", 6.0)), beyond, caption="Beyond the saw")
    yield Bullets(SAW_CAUTIONS)
    holding = holding_lines(job)
    if holding:
        yield Heading("Where rounding adds up", 2)
        yield Bullets(holding)


def _blanks(job: Job, cuts: str) -> Iterator[Block]:
    """From the stock to the blanks: sheets cut up, sticks thicknessed, everything ripped."""
    pieces = Column(f"Pieces{job.for_all}", 0.5, "right")
    for caption, rows, size, note in (
            ("Sheet goods and mesh: cut to size first", sheet_rows(job), "Along the grain × across",
             "The first size runs along the sheet's face grain, of mesh along the roll."),
            ("Thicknessing", thickness_rows(job), "Thickness", "Planed, or ripped on edge: before the rips to width.")):
        if rows:
            yield Table((Column("No.", 0.7), Column("Stock", 1.6), Column(size, 1.9), Column("Parts", 4.0), pieces),
                        tuple((r.number, r.stock, r.size, r.parts, r.count) for r in rows), caption=caption, note=note)
    yield Table(
        (Column("No.", 0.6), Column("Blade", 0.7), Column("Parts", 7.0), Column(cuts, 0.5, "right")),
        tuple((r.number, r.bevel, r.parts, r.count) for r in rip_rows(job)),
        caption="Rips", note="The wider face up, so that a tilted blade leans away from the fence.")


def _parts(job: Job) -> Iterator[Block]:
    yield Heading("Parts", 1, anchor="parts")
    for sheet in part_sheets(job):
        yield _part(sheet, job)


def _part(sheet: PartSheet, job: Job) -> Together:
    number = f"cut {sheet.count}"
    if job.vents > 1:
        number = f"{job.count(sheet.part)} pieces: {sheet.count} for each of {job.vents} vents"
    title = f"{sheet.mark} · {sheet.name} · {number}"
    figure = Figure(board_drawing(sheet.part, sheet.name, job.writer, seats(sheet.part, job.assembly)))
    blocks: list[Block] = [Heading(title, 2, anchor=anchor(sheet)), figure, Pairs(sheet.facts, 2, small=True)]
    rows = [(row.number, row.title, row.set_to, row.lay, row.mark_at) for row in sheet.cuts]
    rows += [(str(len(sheet.cuts) + i), row.name, row.size, row.face, row.position)
             for i, row in enumerate(sheet.joints, start=1)]
    blocks.append(Table((Column("", 0.25), Column(f"{sheet.mark}: cut or joint", 1.7), Column("Set, or size", 1.8),
                         Column("Lay, or face", 2.6), Column("Mark at", 2.9)), tuple(rows)))
    if sheet.advice:
        blocks.append(Para(" ".join(sheet.advice), "caution"))
    return Together(tuple(blocks), tally(sheet, job))


def parameter_text(job: Job, name: str) -> str:
    """A parameter's value as the report prints it; for an automatic one what it came out as."""
    row, value, write = BY_NAME[name], job.spec.values[name], job.writer.fine
    automatic = (row.auto and value == 0) or (name == "rafters_per_side" and value < 0)
    if automatic and name not in resolved(job.spec):
        return row.auto
    if automatic:
        value = resolved(job.spec)[name]
    text = _value_text(row, value, write)
    if name in ("pitch_left", "pitch_right") and job.sizes.readings:
        return f"{text} (left aside: the drops give the slope)"
    return f"{text} (automatic)" if automatic else text


def _value_text(row: Parameter, value: Any, write: Writer) -> str:
    if row.kind == LENGTH:
        return write.length(value)
    if row.kind == ANGLE:
        return format_angle(value, 2)
    if row.kind == STOCK:
        return str(value.name)
    if row.kind == SWITCH:
        return "yes" if value else "no"
    return f"{value:g}" if row.kind == NUMBER else str(value)


def _parameters(job: Job) -> Iterator[Block]:
    """What the model was made from, so that it can be made again."""
    yield Heading("Parameters", 1, anchor="parameters")
    values = job.spec.values
    rows = tuple((row.label.capitalize(), parameter_text(job, row.name)) for row in PARAMETERS
                 if row.scope == VENT and row.group != "Job" and row.name != "survey_note" and applies(row.name, values)
                 and (values[row.name] or not (row.group == MEASURED or row.name in DROPS.values())))
    yield Para("Parameters that this vent has no use for are left out.", "small")
    yield Pairs(rows, 2)
    wishes = wish_rows(job)
    if wishes:
        yield Table((Column("Part", 3.0), Column("Own stock", 1.6), Column("State", 1.6), Column("Note", 2.6)), wishes,
                    caption="Set for single parts")
