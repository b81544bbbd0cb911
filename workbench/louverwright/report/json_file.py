# SPDX-License-Identifier: LGPL-2.1-or-later
"""The exact numbers as JSON: every blank, every cut as planes, every placement, beside the strings of the report.

Documented by ``resources/cuts.schema.json``; a stranger can rebuild each solid from it.
"""

from __future__ import annotations

from typing import Any

from ..core.assembly import CORNER_CUT, CROSSCUT, RIP, Cut, Part
from ..core.geometry import Placement, Vec
from ..core.row import positions
from ..core.saw import ARRISES, edge_of, end_of, end_spans, setting
from .document import title_block
from .job import Job, plain, wish_record
from .json_text import json_text
from .part_sheet import PartSheet, left_out_sheets, nested, part_sheets

FORMAT, FORMAT_VERSION = "louverwright-cuts", 1


def to_json(job: Job) -> str:
    """The whole file as text."""
    return json_text(cuts_record(job))


def cuts_record(job: Job) -> dict[str, Any]:
    """The file's content: mm and degrees, unrounded."""
    return {
        "format": FORMAT, "format_version": FORMAT_VERSION, "units": {"length": "mm", "angle": "degree", "mass": "kg"},
        "fingerprint": job.fingerprint, "revision": job.revision, "date": job.date,
        "title_block": dict(title_block(job)),
        "parameters": {name: plain(value) for name, value in job.spec.values.items()},
        "part_wishes": {kind: wish_record(wish) for kind, wish in job.spec.parts.items()},
        "results": dict(job.figures),
        "vents": job.vents, "positions": list(positions(job.spec)),
        "parts": [_part(sheet, job) for sheet in part_sheets(job)],
        "left_out": [_part(sheet, job) for sheet in left_out_sheets(job)],
        "joints": [{"first": j.first, "second": j.second, "kind": j.kind, "gap": j.gap} for j in job.assembly.joints],
        "counts": {"parts": len(job.assembly.parts), "pieces": len(job.assembly.pieces)},
        "counts_for_all": {"pieces": sum(job.count(part) for part in job.assembly.parts),
                           "weight": sum(part.weight * job.count(part) for part in job.assembly.parts)},
    }


def _part(sheet: PartSheet, job: Job) -> dict[str, Any]:
    part = sheet.part
    found = nested(part)
    return {
        "mark": part.mark, "kind": part.kind.id, "name": sheet.name, "hand": part.hand, "count": part.count,
        "count_for_all": job.count(part), "stock": plain(part.stock), "note": sheet.note, "blank": list(part.board.size),
        "weight_each": part.weight,
        "names": dict(part.names), "cuts": [_cut(cut) for cut in part.board.cuts],
        "arrises": _arrises(part),
        "nested": None if found is None else {"slope": found[0], "mitre": found[1], "fence_height": found[2]},
        "pieces": [{"id": piece.id, "side": piece.side, "end": piece.end, "index": piece.index,
                    "placement": _placement(piece.placement)} for piece in part.pieces],
        "shown": _shown(sheet),
    }


def _cut(cut: Cut) -> dict[str, Any]:
    record: dict[str, Any] = {"kind": cut.kind, "name": cut.name}
    if cut.planes:
        record["waste"] = [{"normal": list(p.normal), "offset": p.offset} for p in cut.planes]
    if cut.bore:
        bore = cut.bore
        record["bore"] = {"start": list(bore.start), "direction": list(bore.direction), "length": bore.length,
                          "diameter": bore.diameter}
    if cut.kind in (RIP, CROSSCUT, CORNER_CUT):
        angles = setting(cut.planes[0])
        record["bevel"] = angles.bevel
        if cut.kind == RIP:
            record |= {"taper": angles.taper, "edge": edge_of(cut)}
        else:
            record |= {"mitre": angles.mitre, "end": end_of(cut)}
    return record


def _arrises(part: Part) -> list[dict[str, Any]]:
    a, b = end_spans(part.board)
    return [{"edge": edge, "face": face, "from": a.at(edge, face), "to": b.at(edge, face)} for edge, face in ARRISES]


def _placement(placement: Placement) -> dict[str, list[float]]:
    def listed(v: Vec) -> list[float]:
        return list(v)

    return {"origin": listed(placement.origin), "x": listed(placement.x), "y": listed(placement.y),
            "z": listed(placement.z)}


def _shown(sheet: PartSheet) -> dict[str, Any]:
    """The report's own strings."""
    return {
        "facts": dict(sheet.facts),
        "cuts": [{"step": r.number, "where": r.where, "name": r.name, "set": r.set_to, "lay": r.lay,
                  "mark_at": r.mark_at} for r in sheet.cuts],
        "joints": [{"name": r.name, "face": r.face, "size": r.size, "position": r.position} for r in sheet.joints],
        "advice": list(sheet.advice),
    }
