# SPDX-License-Identifier: LGPL-2.1-or-later
"""Fixing to the roof: framing round the opening, hold-downs, stages onto each other, flashing, sealant."""

from __future__ import annotations

import math
from collections.abc import Iterator, Mapping

from ..core.fastening import Fastened
from ..core.fixings import FROM_INSIDE
from ..core.flashing import APRON, BACK_PAN, COUNTER, SADDLE, SIDE_PAN, STEP, Flashing, flashings
from ..core.kinds import BASE, LOUVER, ROOF, STAGES
from ..core.roof_opening import outline
from ..core.sizes import opening_halves
from .fastening_words import COLUMNS, lost_words, plan_of, rows
from .job import Job
from .page import Block, Bullets, Column, Heading, PageBreak, Para, Table, Together
from .place_words import side_name

#: A header that spans more than 4 ft is doubled, and so are its trimmers (IRC R802.9, from memory).
SINGLE_HEADER = 1219.2
#: Hold-down cleats along a sole: at most so far apart, one near either end; each so long (mm; common practice).
CLEATS_APART, CLEAT = 400.0, 200.0
#: The number in this chapter of the steps that wait for the stages to stand on each other.
AT_ROOF = 6

CAUTIONS = (
    "Roofs and ladders: scaffold or fall protection, never alone, never on wet or icy covering. Cover the opening "
    "whenever you leave it: a sheet that is screwed down.",
    "Cut no rafter, ridge board or truss before somebody licensed for it has agreed: trusses are never cut. What holds "
    "the vent in wind, and the building under it, is for a licensed engineer; follow your local code.",
)


def roof_chapter(job: Job, last: Mapping[str, Together]) -> Iterator[Block]:
    """The chapter, with the steps that are left for the roof."""
    yield PageBreak()
    yield Heading("Fixing to the roof", 1, anchor="roof")
    for text in CAUTIONS:
        yield Para(text, "caution")
    yield from _opening(job)
    yield from _hold_down(job)
    yield from _flashing(job)
    yield from _stage_joints(job, last)


def _opening(job: Job) -> Iterator[Block]:
    at, write = job.sizes, job.writer
    yield Heading("1 · Opening and its framing", 2)
    margin = float(job.spec.opening_margin)
    if min(opening_halves(at, margin)) <= 0.0:
        yield Para("The opening's margin leaves no opening between the legs: give a smaller one, or the vent airs nothing.",
                   "caution")
        return
    corners = outline(at, margin)
    long, wide = (max(p[axis] for p in corners) - min(p[axis] for p in corners) for axis in (0, 1))
    thick = at.base.frame_t
    double = long > SINGLE_HEADER
    times = 2 if double else 1
    start = "from under the vent's axis" if at.roof.single else "from the ridge"
    found: list[tuple[str, ...]] = [
        (name, "1", write.length(long + 2.0 * times * thick), f"{times} thick",
         f"{write.length(along)} along the slope {start} to its inner face; bevel {write.angle(pitch)}")
        for name, pitch, along in _headers(job, wide)]
    found.append(("Trimmer, along the rafters", "2", "as the rafters, from bearing to bearing", f"{times} thick",
                  f"{write.length(long)} apart inside, the opening's ends"))
    yield Table((Column("Piece", 1.6), Column("Number", 0.6, "right"), Column("Length", 1.4), Column("Build", 0.8),
                 Column("Where", 3.0)), tuple(found), caption=f"Rough opening {write.size(long, wide)} level, along × "
                "across the ridge", note="Stock as deep as the barn's rafters, as thick as the vent's frame stock. "
                f"Header spans above {write.far.length(SINGLE_HEADER)} are doubled with their trimmers (IRC R802.9, from "
                "memory); your code, snow and span tables go before this.")
    beside = at.base.inner_r - wide / 2.0
    yield Bullets((f"The soles' inner faces stand {write.length(beside)} outside the opening's edge across the ridge: "
                   "nail blocking between the rafters there, so that every sole bears on framing, not on covering alone.",
                   *(() if not at.plan.turned or at.plan.sides != 4 else (
                       "The opening itself stands cornerwise to the ridge: these pieces frame the rectangle round it, the "
                       "deck stays in its corners.",)),
                   *(() if at.roof.single else (
                       "A ridge board stays whole: cut the covering and deck on either side of it.",))))


def _headers(job: Job, wide: float) -> Iterator[tuple[str, float, float]]:
    """The headers by their slope: name, pitch (degrees) and how far along the slope from the ridge (mm)."""
    roof = job.sizes.roof
    if roof.single:
        for name, reach in (("Lower header", wide / 2.0), ("Upper header", wide / 2.0)):
            yield name, roof.left, reach / math.cos(math.radians(roof.left))
        return
    for name, pitch, reach in (("Header, left slope", roof.left, wide / 2.0 - roof.ridge),
                               ("Header, right slope", roof.right, wide / 2.0 + roof.ridge)):
        if reach > 0.0:
            yield name, pitch, reach / math.cos(math.radians(pitch))


def _hold_down(job: Job) -> Iterator[Block]:
    write = job.writer
    yield Heading("2 · Base and hold-downs", 2)
    found = []
    for part in job.assembly.parts:
        if part.kind.id.startswith("base.sole"):
            each = max(2, 1 + math.ceil((part.board.length - CLEAT) / CLEATS_APART))
            found.append((part.mark, str(part.count), str(each), str(each * part.count), write.length(CLEAT)))
    if found:
        yield Table((Column("Sole", 0.8), Column("Soles", 0.7, "right"), Column("Cleats to a sole", 1.0, "right"),
                     Column("Cleats", 0.7, "right"), Column("Each long", 1.0, "right")), tuple(found),
                    caption="Hold-down cleats, of frame stock",
                    note="From inside: each with three screws into the sole and three into trimmer, header or blocking, the "
                    "longest that the framing takes. Ask for straps or angles where wind is more than slight.")
    yield Bullets((
        ("Snap the vent's axes on the covering." if job.sizes.roof.single else "Snap the ridge's line and the vent's axis."),
        "Set the base, pack it plumb on both faces, scribe feet that do not bear.",
        "Bed the soles on a strip of the roofing's own closure or sealant, so that no water is held under them; then the "
        "cleats.",
    ))


def _flashing(job: Job) -> Iterator[Block]:
    write, pieces = job.writer, flashings(job.spec, job.sizes)
    merged: dict[tuple[str, str, str, str], list[Flashing]] = {}
    for piece in pieces:
        key = (piece.name, write.length(piece.length), write.length(piece.girth), write.angle(piece.angle))
        merged.setdefault(key, []).append(piece)
    table = tuple((str(number), name.capitalize(), str(sum(piece.count for piece in alike)), long, girth, _bend(alike[0], job),
                   ", ".join(dict.fromkeys(str(side_name(job, piece.side)) for piece in alike)))
                  for number, ((name, long, girth, _), alike) in enumerate(merged.items(), start=1))
    yield Heading("3 · Flashing, the lowest first", 2)
    yield Table((Column("Lay", 0.4, "right"), Column("Piece", 1.2), Column("No.", 0.4, "right"), Column("Long", 0.9, "right"),
                 Column("Girth", 0.9, "right"), Column("Bend: wall, roof, open angle", 2.0), Column("Sides", 2.6)),
                table,
                note="Legs 4 in up and out as in IRC R905.2.8.3 (from memory); the rest common practice. Lengths take in "
                "the laps: 4 in round corners and end to end, a hem of 1/2 in. Check each against the corner boards "
                "before it is bent.")
    names = {piece.name for piece in pieces}
    yield Bullets((
        *(text for name, text in _LAYING.items() if name in names),
        "Sealant: two beads under every lap of pans and saddle, one behind the counter-flashing's upper edge, none where "
        "water must run out. Fasten pans through their outer edge or the wall's leg, never in the water's way.",
        "The roofing's maker's own instructions and pieces go before this list; metals that touch must suit each other."))


def _bend(piece: Flashing, job: Job) -> str:
    """How a piece is bent: its legs on the wall and on the roof, and the open angle between them."""
    if piece.name == SADDLE:
        return "saddle over the ridge"
    if not piece.out:
        return "flat, hemmed"
    write = job.writer
    return f"{write.bare(piece.up)} up, {write.bare(piece.out)} out, {write.angle(piece.angle)}"


_LAYING = {
    APRON: "Apron: over the covering below, its ends past the corners and turned up the side walls.",
    STEP: "Steps: one to each course, each over the one below by 2 in (50 mm), under the course above; nailed to the roof, "
          "never to the wall.",
    SIDE_PAN: "Side pans: over the apron's ends, up to the ridge; the outer hem turned up as a check for water.",
    BACK_PAN: "Back pan: last of the roof's metal, over the side pieces, its upper edge under the covering.",
    SADDLE: "Ridge saddle: over both slopes' pieces and the ridge cap, its corners soldered, riveted and sealed, or made "
            "by the roofing's maker.",
    COUNTER: "Counter-flashing: its edge let into a saw kerf in the cladding, or screwed over a bead, past the wall's "
             "leg; dress it round the corner boards.",
}


def _stage_joints(job: Job, last: Mapping[str, Together]) -> Iterator[Block]:
    """The stages onto each other, with what holds them, and the steps that wait for them."""
    stage = {piece.id: piece.kind.split(".")[0] for piece in job.assembly.pieces}
    titles = {frozenset((BASE, LOUVER)): "4 · Louver stage onto the base", frozenset((LOUVER, ROOF)): "5 · Roof stage on top"}
    words = {frozenset((BASE, LOUVER)): "Lower it inside the cladding until the rails meet; turn it until all sides are "
                                        "flush.",
             frozenset((LOUVER, ROOF)): "Set the plate on the rails, bed mould outside the friezes; the soffit is not on yet."}
    for pair, title in titles.items():
        joints = [each for each in plan_of(job) if frozenset((stage[each.first], stage[each.second])) == pair]
        if joints:
            yield Together((Heading(title, 2), Para(words[pair]), *_held(job, joints)))
    yield from last.values()
    yield Together((Heading(f"{AT_ROOF + 1} · Last of all", 2), Bullets((
        "Covering of the vent's roof with its drip edge, hips and ridge; collar and sealant round the mast, if there is one.",
        "Caulk the joint over the drip ring, touch up plugs and cut edges, give the last coat.",
        f"Look at it after the first storm and once a year: sealant, plugs, screens; {len(STAGES)} stages, all screws "
        "tight."))))


def _held(job: Job, joints: list[Fastened]) -> Iterator[Block]:
    """What holds one stage on another, and what does not."""
    table = rows(job, joints)
    if table:
        yield Table(COLUMNS, table, note="A straight driver reaches every one of these from where you stand, the stages as "
                                         "they then are: checked on the pieces.")
    else:
        yield Para("As drawn, nothing holds this stage: no screw of it can be driven. Settle how it is held before it is "
                   "lifted, and never let it stand loose.", "caution")
    if any(each.row is FROM_INSIDE for each in joints):
        yield Para("From inside: reach up through the opening from the barn, on a scaffold or a ladder that is tied, never "
                   "standing on the vent's frame or on a ceiling that is not a floor.", "caution")
    for text in lost_words(job, joints):
        yield Para(f"Look at {text}", "caution")
