# SPDX-License-Identifier: LGPL-2.1-or-later
"""Take-offs: primer and paint, screen, fasteners, roof covering, sealant, flashing and mast, of the pieces themselves."""

from __future__ import annotations

from collections.abc import Iterator

from ..core.coatings import Surface, litres, surfaces
from ..core.fastening import totals
from ..core.figures import face_area
from ..core.flashing import COUNTER, flashings
from ..core.mast import mast_bores
from ..core.sealing import beads
from .document import report_of
from .fastening_words import plan_of, size_text
from .job import Job
from .page import Block, Column, Heading, Pairs, Para, Report, Table
from .place_words import part_name, side_name
from .seat_words import screw_holes

#: Mesh is cut so much larger all round, to be turned under its battens (mm; common practice).
MESH_LAP = 12.0
#: A bead is a quarter inch by a quarter inch, of cartridges of 10.1 fl oz (300 ml); common practice.
BEAD, CARTRIDGE = 6.35, 300e3
#: Litres of a US gallon.
GALLON = 3.785


def take_offs(job: Job) -> Report:
    """The take-offs of one vent, and of all where there are several, ready for any writer."""
    return report_of(job, "Take-offs", (*_paint(job), *_screen(job), *_fasteners(job), *_covering(job), *_sealant(job),
                                        *_flashing(job), *_mast(job)))


def _all(job: Job) -> str:
    return f", all {job.vents} vents" if job.vents > 1 else ""


# ---- primer and paint


def _paint(job: Job) -> Iterator[Block]:
    write, spec, found = job.writer, job.spec, surfaces(job.assembly)
    yield Heading("Primer and paint", 1, anchor="paint")
    rows = tuple((each.part.mark, str(part_name(each.part, job)), str(each.part.count), write.area(each.whole),
                  write.area(each.glued) if each.glued else "–", write.area(each.primed) if each.primed else "–",
                  write.area(each.painted) if each.painted else "–") for each in found)
    yield Table((Column("Mark", 0.6), Column("Part", 2.6), Column("Pieces", 0.6, "right"),
                 Column("Whole surface", 1.1, "right"), Column("Bare for glue", 1.0, "right"),
                 Column("Primed", 1.0, "right"), Column("Painted", 1.0, "right")), rows,
                note="One vent's. Surfaces are those of the finished pieces, all faces, edges and ends; painted is what "
                "air and rain reach of the parts that are seen from outside, slats on all faces.")
    total = [(name, coats, sum(getter(each) for each in found)) for name, coats, getter in (
        ("Primer", int(spec.primer_coats), _primed), ("Paint", int(spec.paint_coats), _painted))]
    yield Table((Column("", 1.2), Column("Area, one vent", 1.4, "right"), Column("Coats", 0.7, "right"),
                 Column(f"Needed{_all(job)}", 1.6, "right")),
                tuple((name, write.area(area), str(coats), _volume(job, litres(area * job.vents, coats, spec.paint_coverage)))
                      for name, coats, area in total),
                note=f"At {spec.paint_coverage:g} m² ({spec.paint_coverage * 10.764 * GALLON:.0f} ft² to a US gallon) a "
                "litre and coat, without waste: a tenth more for brushes, end grain and touching up. The sheathing's "
                "upper face is left for the covering; feet and end grain take an extra coat.")


def _primed(each: Surface) -> float:
    return each.primed


def _painted(each: Surface) -> float:
    return each.painted


def _volume(job: Job, amount: float) -> str:
    text = f"{amount:.1f}\u00a0l"
    return text if job.writer.style.system == "mm" else f"{text} ({amount / GALLON:.2f}\u00a0US gal)"


# ---- screen and fasteners


def _screen(job: Job) -> Iterator[Block]:
    write = job.writer
    found = [part for part in job.assembly.parts if part.stock.form == "mesh"]
    if not found:
        return
    sizes = [(part, part.board.length + 2.0 * MESH_LAP, part.board.width + 2.0 * MESH_LAP) for part in found]
    yield Heading("Screen", 1, anchor="screen")
    yield Table((Column("Mark", 0.6), Column("Part", 2.0), Column(f"Pieces{_all(job)}", 0.8, "right"),
                 Column("Cut, laps in it", 1.6, "right"), Column("Area", 1.0, "right")),
                tuple((part.mark, str(part_name(part, job)), str(job.count(part)), write.size(long, wide),
                       write.area(long * wide * job.count(part))) for part, long, wide in sizes),
                note=f"{write.length(MESH_LAP)} more all round than the pieces, to turn in under the battens; in all "
                f"{write.area(sum(long * wide * job.count(part) for part, long, wide in sizes))}.")


def _fasteners(job: Job) -> Iterator[Block]:
    rows = [(size_text(size, job.writer), str(count * job.vents)) for size, count in totals(plan_of(job)).items()]
    for part in job.assembly.parts:
        holes = screw_holes(part, job)
        if holes:
            rows.append((f"screw {holes.screw}, slats to {part.mark}", str(holes.number * job.count(part))))
    yield Heading("Screws, nails, staples", 1, anchor="fasteners")
    yield Table((Column("Fastener", 3.0), Column(f"Number{_all(job)}", 1.0, "right")), tuple(rows),
                note="From the fastening plan in the assembly book, joint by joint; hold-down cleats and flashing are "
                "the roof's. Buy a tenth more.")


# ---- roof, sealant, flashing, mast


def _covering(job: Job) -> Iterator[Block]:
    write, at, figures = job.writer, job.sizes, job.figures
    yield Heading("Roof covering", 1, anchor="covering")
    areas = {side: face_area(at, side) for side in at.eaves}
    yield Table((Column("Face over the", 3.0), Column("Pitch", 1.0, "right"), Column("Eave", 1.0, "right"),
                 Column("Area", 1.0, "right")),
                tuple((str(side_name(job, side)), write.angle(at.cap.pitch_of(side)), write.length(2.0 * at.roof_half(side)),
                       write.area(area)) for side, area in areas.items()),
                note=f"In all {write.area(figures['roof_covering'])}, one vent; laps and waste as the covering's maker says.")
    hips = 0 if at.cap.gables else at.plan.sides
    pairs = [("Eaves, drip edge", write.far.length(figures["eave_length"]))]
    if hips:
        pairs.append((f"Hips, {hips} of {write.far.length(figures['hip_length'])}",
                      write.far.length(hips * figures["hip_length"])))
    if figures["ridge_run"]:
        pairs.append(("Ridge", write.far.length(figures["ridge_run"])))
    if figures["verge_length"]:
        pairs.append(("Verges", write.far.length(figures["verge_length"])))
    yield Pairs(tuple(pairs), 2)


def _sealant(job: Job) -> Iterator[Block]:
    write = job.writer
    runs: dict[str, float] = {}
    for bead in beads(job.assembly):
        runs[bead.row.how] = runs.get(bead.row.how, 0.0) + bead.length
    counter = sum(piece.length * piece.count for piece in flashings(job.spec, job.sizes) if piece.name == COUNTER)
    runs["behind the counter-flashing's upper edge"] = counter
    total = sum(runs.values()) * job.vents
    yield Heading("Sealant", 1, anchor="sealant")
    yield Table((Column("Where", 4.0), Column("Length, one vent", 1.2, "right")),
                tuple((how[:1].upper() + how[1:], write.far.length(run)) for how, run in runs.items()),
                note=f"In all {write.far.length(total)}{_all(job)}: {total * BEAD * BEAD / CARTRIDGE:.1f} cartridges of "
                f"10 fl oz (300 ml) for a bead of 1/4 in (6 mm) square; laps of flashing take more.")


def _flashing(job: Job) -> Iterator[Block]:
    write = job.writer
    found: dict[str, list[tuple[float, float]]] = {}
    for piece in flashings(job.spec, job.sizes):
        found.setdefault(piece.name, []).append((piece.count * piece.length, piece.count * piece.length * piece.girth))
    yield Heading("Flashing", 1, anchor="flashing")
    yield Table((Column("Piece", 2.0), Column("Length, one vent", 1.2, "right"), Column("Metal", 1.0, "right")),
                tuple((name.capitalize(), write.far.length(sum(run for run, _ in each)),
                       write.area(sum(area for _, area in each))) for name, each in found.items()),
                note="Pieces, sizes and order are in the assembly book.")


def _mast(job: Job) -> Iterator[Block]:
    bores, write = mast_bores(job.assembly), job.writer
    if not bores:
        return
    yield Heading("Mast", 1, anchor="mast")
    rows = tuple((each.mark, each.name, write.fine.length(each.diameter), write.length(each.high - each.low),
                  write.length(each.low)) for each in bores)
    inside = bores[0].high - bores[-1].low
    yield Table((Column("Mark", 0.6), Column("Bored part", 2.4), Column("Bore", 0.9, "right"),
                 Column("Deep", 0.9, "right"), Column("Lower end above the ridge", 1.5, "right")), rows,
                note=f"Mast of {write.fine.length(float(job.spec.mast_diameter))}: {write.length(inside)} stand in the "
                "vent, to which comes what is to show above the peak.")
    yield Para("With it: a collar or boot at the peak and sealant, a wedge or pin at the step, the weep hole left open. "
               "A mast catches wind and lightning: ask those who are licensed for either.")
