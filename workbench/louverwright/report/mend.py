# SPDX-License-Identifier: LGPL-2.1-or-later
"""A part that came out wrong as a report, on the screen and as JSON; all print the strings of ``mend_words``.

The JSON is documented by ``resources/mend.schema.json``.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from ..core.compare import PartChange
from ..core.mend import SIZE_NAMES
from ..core.mend_cure import Cure, Opening, Side
from ..core.mend_ways import Way
from .compare import change_block, changed_record, state_text
from .json_text import json_text
from .mend_words import (
    Repair,
    again_text,
    caution_lines,
    heading,
    missing_rows,
    off_text,
    opening_rows,
    others_text,
    place_text,
    refused_text,
    summary_lines,
    value_text,
    verdict_lines,
    way_row,
)
from .page import Block, Bullets, Column, Heading, Para, Report, Table

FORMAT, FORMAT_VERSION = "louverwright-mending", 1


def mending_report(repair: Repair) -> Report:
    """The report, ready for any writer."""
    title = repair.job.title
    return Report(title=title, subtitle=f"A part came out wrong: {heading(repair)}", title_block=_title_block(repair),
                  blocks=(*_summary(repair), *_bench(repair), *_lost(repair), *_ways(repair)),
                  footer=repair.job.stamp)


def _title_block(repair: Repair) -> tuple[tuple[str, str], ...]:
    return (("Project", repair.job.spec.project or "–"), ("Vent", state_text(repair.job)),
            ("Units", repair.job.writer.unit), ("Made with", f"Louverwright {repair.job.version}"))


def _summary(repair: Repair) -> Iterator[Block]:
    yield Heading("Summary", 1, anchor="summary")
    for line in summary_lines(repair):
        yield Para(line)
    for line in caution_lines(repair):
        yield Para(line, "caution")


_OPENINGS = (Column("Where", 1.0), Column("Joint with", 2.0), Column("Kind", 1.0), Column("Opens by", 0.8, "right"),
             Column("Hold left", 1.2, "right"), Column("Packing L × W × T", 3.2))


def _bench(repair: Repair) -> Iterator[Block]:
    if repair.mending.lost:
        return
    yield Heading("At the bench", 1, anchor="bench")
    for cure in repair.mending.cures:
        text = off_text(cure, repair)
        yield Heading(text[:1].upper() + text[1:], 2)
        for line in (*verdict_lines(cure, repair), place_text(cure, repair)):
            if line:
                yield Para(line)
        if cure.off < 0.0:
            yield Table(_OPENINGS, opening_rows(cure, repair), caption="What it leaves open", note="Each row as if all of the "
                        "loss fell to that end, edge or face.")


def _lost(repair: Repair) -> Iterator[Block]:
    if not repair.mending.lost:
        return
    yield Heading("The piece to make again", 1, anchor="again")
    yield Para(again_text(repair))
    yield Heading("Joints that it leaves open", 1, anchor="missing")
    yield Table((Column("With", 3.0), Column("Kind", 1.5), Column("Joints", 0.7, "right")), missing_rows(repair),
                caption="One piece")


def _ways(repair: Repair) -> Iterator[Block]:
    if repair.mending.lost:
        return
    yield Heading("Let the vent follow", 1, anchor="ways")
    if not repair.shown:
        yield Para("No one length or angle of the parameters makes a vent with the part as it is.")
    else:
        yield Para("Each row is one parameter, all others as they are. The fewest other parts that change come first; a row "
                   "that moves cuts of the part itself serves only where these are not cut yet.")
        yield Table((Column("Parameter", 1.6), Column("Now", 1.0, "right"), Column("Then", 1.0, "right"),
                     Column("What else changes", 3.2), Column("Pieces", 0.7, "right"),
                     Column("Own cuts that move", 2.0)),
                    tuple(way_row(way, repair) for way in repair.shown))
    if repair.mending.ways.refused:
        yield Heading("Would do, but cannot be built", 2)
        yield Bullets(tuple(refused_text(each, repair) for each in repair.mending.ways.refused))
    for way in repair.shown[:1]:
        changes = _other_changes(way, repair)
        if changes:
            yield Heading(f"What changes with {way.parameter.label} {value_text(way.parameter, way.new, repair)}", 1,
                          anchor="changes")
            yield from (change_block(change, repair.pair(way)) for change in changes)


def _other_changes(way: Way, repair: Repair) -> tuple[PartChange, ...]:
    """What changes in other parts."""
    return tuple(change for change in way.found.changed if change.old.mark != repair.mending.part.mark)


def screen_lines(repair: Repair) -> tuple[str, ...]:
    """The answer in a few lines for a terminal."""
    lines = [*summary_lines(repair)]
    lines += [f"{kind} with {other}: {count}" for other, kind, count in missing_rows(repair)]
    for way in repair.shown[1:]:
        name, old, new, _, _, moved = way_row(way, repair)
        lines.append(f"{name}: {old} → {new}; {others_text(way)}" + (f"; own cuts that move: {moved}" if way.moved else ""))
    lines += [refused_text(each, repair) for each in repair.mending.ways.refused]
    return (*lines, *caution_lines(repair))


# ---- JSON


def to_mend_json(repair: Repair) -> str:
    """The whole file as text."""
    return json_text(mending_record(repair))


def mending_record(repair: Repair) -> dict[str, Any]:
    """The file's content: mm and degrees, unrounded; strings as the report prints them."""
    mending = repair.mending
    return {
        "format": FORMAT, "format_version": FORMAT_VERSION, "units": {"length": "mm", "angle": "degree"},
        "fingerprint": repair.job.fingerprint, "revision": repair.job.revision, "date": repair.job.date,
        "title_block": dict(_title_block(repair)), "heading": heading(repair), "summary": list(summary_lines(repair)),
        "cautions": list(caution_lines(repair)),
        "part": {"mark": mending.part.mark, "kind": mending.part.kind.id, "count": mending.count,
                 "drawn": list(mending.part.board.size), "real": list(mending.real), "lost": mending.lost},
        "cut": list(mending.cut), "cures": [_cure(cure, repair) for cure in mending.cures],
        "missing": [{"first": j.first, "second": j.second, "kind": j.kind, "gap": j.gap} for j in mending.missing],
        "ways": [_way(way, repair) for way in repair.shown], "barred": mending.ways.barred,
        "refused": [{"parameter": each.parameter.name, "new": each.new, "findings": [f.sentence for f in each.findings],
                     "shown": refused_text(each, repair)} for each in mending.ways.refused],
    }


def _cure(cure: Cure, repair: Repair) -> dict[str, Any]:
    return {"size": SIZE_NAMES[cure.axis], "off": cure.off, "places": list(cure.places), "stays": cure.stays,
            "shared_hold": cure.shared, "sides": [_side(side, repair) for side in cure.sides],
            "shown": {"off": off_text(cure, repair), "verdict": list(verdict_lines(cure, repair)),
                      "rows": [list(row) for row in opening_rows(cure, repair)] if cure.off < 0.0 else []}}


def _side(side: Side, repair: Repair) -> dict[str, Any]:
    return {"side": side.name, "name": repair.mending.part.called(side.name), "stays": side.stays,
            "openings": [_opening(each) for each in side.openings], "covers": list(side.covers),
            "cuts": [cut.name for cut in side.cuts], "joints": list(side.joints)}


def _opening(each: Opening) -> dict[str, Any]:
    packing = [each.long, each.wide, each.opens] if each.packed else None
    return {"other": each.other.mark if each.other else "", "kind": each.kind, "gap": each.gap, "opens": each.opens,
            "hold": each.hold, "hold_left": each.left, "stays": each.stays, "packing": packing}


def _way(way: Way, repair: Repair) -> dict[str, Any]:
    pair = repair.pair(way)
    return {"parameter": way.parameter.name, "old": way.old, "new": way.new, "others": list(way.others), "pieces": way.pieces,
            "fitting": way.fitting, "moved": list(way.moved),
            "changed": [changed_record(change, pair) for change in _other_changes(way, repair)],
            "shown": list(way_row(way, repair))}
