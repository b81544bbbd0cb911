# SPDX-License-Identifier: LGPL-2.1-or-later
"""The comparison of two states of a vent as a report and as JSON; both print the strings of ``compare_words``.

The JSON is documented by ``resources/compare.schema.json``.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from ..core.compare import ADDED, CHANGED, MADE_AGAIN, Gathered, Handed, PartChange
from ..core.fits import fit
from ..core.kinds import BY_ID
from .compare_words import (
    NOTHING,
    Pair,
    caution_lines,
    change_rows,
    change_title,
    lie_text,
    name_of,
    summary_lines,
    wood_text,
)
from .job import Job, plain, wish_record
from .json_text import json_text
from .page import Block, Cell, Column, Heading, Para, Report, Table, Together

FORMAT, FORMAT_VERSION = "louverwright-comparison", 1


def comparison_report(pair: Pair) -> Report:
    """The report of a comparison, ready for any writer."""
    title = pair.after.title
    blocks = (*_summary(pair), *_kept(pair), *_changes(pair), *_gathered(pair))
    return Report(title=title, subtitle="What changed, and which pieces already cut can be kept",
                  title_block=_title_block(pair), blocks=blocks,
                  footer=f"{title} · model {pair.before.fingerprint} → {pair.after.fingerprint} · {pair.after.date}")


def state_text(job: Job) -> str:
    """Which state it is: revision, model and date as its own paper has them."""
    return f"revision {job.revision}, model {job.fingerprint}, {job.date}"


def _title_block(pair: Pair) -> tuple[tuple[str, str], ...]:
    return (("Project", pair.after.spec.project or NOTHING), ("Before", state_text(pair.before)),
            ("After", state_text(pair.after)), ("Units", pair.after.writer.unit),
            ("Made with", f"Louverwright {pair.after.version}"))


def _summary(pair: Pair) -> Iterator[Block]:
    yield Heading("Summary", 1, anchor="summary")
    for line in summary_lines(pair):
        yield Para(line)
    for line in caution_lines(pair):
        yield Para(line, "caution")
    if pair.wishes:
        yield Heading("Set otherwise for single parts", 2, anchor="wishes")
        yield Table((Column("Part", 2.0), Column("Before", 2.0), Column("After", 2.0)),
                    tuple((label, old, new) for _, label, old, new in pair.wishes))
    yield Heading("Parameters that changed", 2, anchor="parameters")
    if not pair.parameters:
        yield Para("No parameter changed.")
        return
    yield Table((Column("Parameter", 2.0), Column("Before", 2.0), Column("After", 2.0)),
                tuple((label, old, new) for _, label, old, new in pair.parameters))


_HANDED = (Column("Old mark", 0.8), Column("New mark", 0.8), Column("Part", 3.0), Column("Pieces", 0.7, "right"))


def _kept(pair: Pair) -> Iterator[Block]:
    yield Heading("Pieces to keep", 1, anchor="keep")
    if not pair.found.kept:
        yield Para("None of the old pieces is right as it is.")
    else:
        yield Table(_HANDED, tuple(_handed_row(row, pair) for row in pair.found.kept), caption="Kept as they are",
                    note="A mark in bold is to be written anew. Pieces of one mark are alike: take any.")
    if pair.found.recut:
        yield Table((*_HANDED, Column("Lies in the old piece", 3.0)),
                    tuple((*_handed_row(row, pair), lie_text(row, pair)) for row in pair.found.recut),
                    caption="To be cut from old pieces", note="What to take off stands with the part below. Measured along, "
                    "from the ends of the blanks.")


def _handed_row(row: Handed, pair: Pair) -> tuple[str | Cell, ...]:
    return (row.old.mark, Cell(row.new.mark, bold=row.old.mark != row.new.mark), name_of(row.new, pair.after),
            str(len(row.pieces)))


def _changes(pair: Pair) -> Iterator[Block]:
    yield Heading("What changed in each part", 1, anchor="changes")
    if not pair.found.changed:
        yield Para("No length and no angle of any piece changed.")
    yield from (change_block(change, pair) for change in pair.found.changed)
    if pair.found.recut_changes:
        yield Heading("What to take off old pieces of other places", 1, anchor="take-off")
        yield from (change_block(change, pair) for change in pair.found.recut_changes)


def change_block(change: PartChange, pair: Pair) -> Together:
    """A part that changed: where its wood comes from, and its measures before and after."""
    rows = tuple((row.what, row.old, row.new) for row in change_rows(change, pair))
    return Together((Heading(change_title(change, pair), 2), Para(wood_text(change, pair)),
                     Table((Column("Measure", 2.6), Column("Before", 2.2), Column("After", 2.2)), rows)))


def _gathered(pair: Pair) -> Iterator[Block]:
    found = pair.found
    columns = (Column("Mark", 0.8), Column("Part", 3.0), Column("Pieces", 0.7, "right"))
    lists = (("Added", "added", found.added, pair.after), ("Removed", "removed", found.removed, pair.before),
             *((("Left out now", "left-out", found.left_out, pair.before),) if found.left_out else ()),
             *((("Made again", "made-again", found.made_again, pair.after),) if found.made_again else ()),
             ("To be cut from new wood", "new-wood", found.to_make, pair.after),
             ("Old pieces left over", "left-over", found.left_over, pair.before))
    for title, anchor, groups, job in lists:
        yield Heading(title, 1, anchor=anchor)
        if groups:
            yield Table(columns, tuple((g.part.mark, name_of(g.part, job), str(len(g.ids))) for g in groups))
        else:
            yield Para("None.")


def screen_lines(pair: Pair) -> tuple[str, ...]:
    """The comparison in a few lines for a terminal."""
    lines = [*summary_lines(pair)]
    lines += [f"{label}: {old} → {new}" for _, label, old, new in pair.parameters if "\n" not in old + new]
    states = {CHANGED: "changed", ADDED: "added", MADE_AGAIN: "made again"}
    for state, word in states.items():
        marks = list(dict.fromkeys(piece.new_mark for piece in pair.found.pieces if piece.state == state))
        if marks:
            lines.append(f"{word}: {', '.join(marks)}")
    for word, groups in (("removed", pair.found.removed), ("left out now", pair.found.left_out)):
        if groups:
            lines.append(f"{word}: {', '.join(group.part.mark for group in groups)}")
    return tuple(lines)


# ---- JSON


def to_compare_json(pair: Pair) -> str:
    """The whole file as text."""
    return json_text(comparison_record(pair))


def comparison_record(pair: Pair) -> dict[str, Any]:
    """The file's content: mm and degrees, unrounded; strings as the report prints them."""
    found = pair.found
    return {
        "format": FORMAT, "format_version": FORMAT_VERSION, "units": {"length": "mm", "angle": "degree"},
        "before": _state(pair.before), "after": _state(pair.after), "title_block": dict(_title_block(pair)),
        "summary": list(summary_lines(pair)), "cautions": list(caution_lines(pair)),
        "parameters": [{"name": name, "old": plain(pair.before.spec.values[name]), "new": plain(pair.after.spec.values[name]),
                        "shown": {"label": label, "old": old, "new": new}} for name, label, old, new in pair.parameters],
        "part_wishes": [{"kind": kind, "old": wish_record(pair.before.spec.wish(BY_ID[kind])),
                         "new": wish_record(pair.after.spec.wish(BY_ID[kind])),
                         "shown": {"label": label, "old": old, "new": new}}
                        for kind, label, old, new in pair.wishes],
        "pieces": [{"id": p.id, "state": p.state, "old_mark": p.old_mark, "new_mark": p.new_mark, "wood": p.wood,
                    "source": p.source} for p in found.pieces],
        "kept": [_handed(row, pair) for row in found.kept], "recut": [_recut(row, pair) for row in found.recut],
        "changed": [changed_record(change, pair) for change in found.changed],
        "recut_changes": [changed_record(change, pair) for change in found.recut_changes],
        "added": [_group(g, pair.after) for g in found.added], "removed": [_group(g, pair.before) for g in found.removed],
        "left_out": [_group(g, pair.before) for g in found.left_out],
        "made_again": [_group(g, pair.after) for g in found.made_again],
        "left_out_otherwise": [_group(g, pair.after) for g in found.left_out_otherwise],
        "to_make": [_group(g, pair.after) for g in found.to_make],
        "left_over": [_group(g, pair.before) for g in found.left_over],
    }


def _state(job: Job) -> dict[str, Any]:
    return {"fingerprint": job.fingerprint, "revision": job.revision, "date": job.date, "project": job.spec.project,
            "pieces": len(job.assembly.pieces)}


def _handed(row: Handed, pair: Pair) -> dict[str, Any]:
    return {"old_mark": row.old.mark, "new_mark": row.new.mark, "name": name_of(row.new, pair.after),
            "count": len(row.pieces), "pieces": [{"old": old, "new": new} for old, new in row.pieces]}


def _recut(row: Handed, pair: Pair) -> dict[str, Any]:
    place = fit(row.old.board, row.new.board)
    assert place is not None
    return _handed(row, pair) | {"place": {"origin": list(place.origin), "x": list(place.x), "y": list(place.y),
                                           "z": list(place.z)}, "shown": {"lies": lie_text(row, pair)}}


def _group(group: Gathered, job: Job) -> dict[str, Any]:
    return {"mark": group.part.mark, "name": name_of(group.part, job), "count": len(group.ids), "pieces": list(group.ids)}


def changed_record(change: PartChange, pair: Pair) -> dict[str, Any]:
    """A part that changed, as the file has it."""
    return {
        "old_mark": change.old.mark, "new_mark": change.new.mark, "kind": change.new.kind.id, "pieces": list(change.ids),
        "turned": change.turned,
        "measures": [{"kind": c.kind, "cut": c.cut, "where": c.where, "number": c.number, "what": c.what, "unit": c.unit,
                      "old": c.old, "new": c.new} for c in change.changes],
        "shown": {"title": change_title(change, pair), "wood": wood_text(change, pair),
                  "rows": [{"what": row.what, "old": row.old, "new": row.new} for row in change_rows(change, pair)]},
    }
