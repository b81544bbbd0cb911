# SPDX-License-Identifier: LGPL-2.1-or-later
"""The checks of a vent as a page: what was measured on it, against what limit from which source, and the verdict."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from ..core.assembly import Assembly
from ..core.dry_fit import CONTACT_LIMIT, GAP_LIMIT, OVERLAP_LIMIT, joint_fits, overlaps
from ..core.error_budget import LENGTH, SPACING, Opening, openings
from ..core.fastening import Fastened, fastening_of
from ..core.figures import air_report
from ..core.fixings import SCREW
from ..core.kinds import STAGES
from ..core.movement import SEASON, THICKNESS, Movement, movements
from ..core.rain import STEEPEST, end_grain_up, reach_beyond, sheds, sight_lines, steepest_shut
from .document import report_of, title_block
from .job import Job
from .json_text import json_text
from .page import Block, Column, Heading, Para, Report, Table
from .place_words import side_name

FORMAT, FORMAT_VERSION = "louverwright-checks", 1
GOOD, LOOK, TOLD = "good", "look at it", "for information"
OWN = "own rule"
PRACTICE, MEMORY = "common practice", "from memory"
#: Falls and drips: degrees from level, mm.
LEAST_FALL, SILL_FALL, DRIP_LEAST = 10.0, 15.0, 19.05


@dataclass(frozen=True)
class Check:
    """One check in words; ``value`` and ``bound`` are the same unrounded (mm, mm², mm³, degrees; None where there is none)."""

    name: str
    shown: str
    limit: str
    source: str
    verdict: str
    value: float | None = None
    bound: float | None = None


@dataclass(frozen=True)
class Chapter:
    """Checks of one sort, with what has to be known to read them."""

    key: str
    title: str
    words: str
    checks: tuple[Check, ...]


def chapters(job: Job) -> tuple[Chapter, ...]:
    """All checks of a vent."""
    return (
        Chapter("dry_fit", "Dry fit", "Every joint measured on the drawn pieces, with round holes left out. It says that the "
                "numbers of the cut report fit together, not how well the saw cuts.", tuple(_dry_fit(job))),
        Chapter("rain", "Rain", "Sight lines are looked for through the drawn solids, square to the panel, at all heights and "
                "in planes across its clear width, on each of its sides. Rain driven along the panel rises more for each "
                "step inward than it does here, and splashes are not in it.", tuple(_rain(job))),
        Chapter("air", "Air", "Areas that the air passes one after another count as the smallest.", tuple(_air(job))),
        Chapter("movement", "Movement across the season", f"Width across the grain × coefficient × change of moisture, "
                f"for {SEASON:g} points from the driest to the wettest of the year (an assumption, {MEMORY}; another change "
                "in proportion) and flat-sawn boards, which move most. Along the grain wood hardly moves.",
                tuple(_movement(job))),
        Chapter("errors", "What an error at the saw does", "Each cut is made wrong by the amount named, on the drawn piece, "
                "and the joint's opening is measured where it is widest. At a mitre both pieces are taken to be wrong alike.",
                tuple(_errors(job))),
        Chapter("reach", "Driver's reach", "Every joint that the fastening plan screws, among the pieces that stand about at "
                "that step: a driver straight on the screw's axis, as long with its bit as the shop's.", tuple(_reach(job))),
    )


def drawn(job: Job) -> Assembly:
    """The vent with every part in its place, those too that are left out: what is bought or used again has to fit as well."""
    return Assembly(job.assembly.whole, job.assembly.joints)


def _verdict(good: bool) -> str:
    return GOOD if good else LOOK


def _dry_fit(job: Job) -> Iterator[Check]:
    shared = overlaps(drawn(job))
    most = shared[0].volume if shared else 0.0
    pair = f"{shared[0].first} and {shared[0].second}" if shared else "no two pieces"
    yield Check("Wood that two pieces share", f"{most:.2f} mm³, {pair}", f"at most {OVERLAP_LIMIT:g} mm³",
                OWN, _verdict(most <= OVERLAP_LIMIT), most, OVERLAP_LIMIT)
    for fit in joint_fits(drawn(job)):
        what = f"{fit.kind.capitalize()}, {fit.count} joints"
        yield Check(f"{what}: furthest off its gap", f"{fit.worst:.4f} mm", f"at most {GAP_LIMIT:g} mm", OWN,
                    _verdict(fit.worst <= GAP_LIMIT), fit.worst, GAP_LIMIT)
        if fit.least_area:
            yield Check(f"{what}: least area that faces", f"{fit.least_area:.0f} mm²", f"at least {CONTACT_LIMIT:g} mm²", OWN,
                        _verdict(fit.least_area >= CONTACT_LIMIT), fit.least_area, CONTACT_LIMIT)


def _rain(job: Job) -> Iterator[Check]:
    assembly, at, spec, write = drawn(job), job.sizes, job.spec, job.writer
    for side in range(at.plan.sides):
        worst = max(sight_lines(assembly, at, side, spec.rain_angle), key=lambda each: each.open)
        steepest = steepest_shut(assembly, at, side)
        shut = f"shut up to {write.angle(steepest)}" if steepest < STEEPEST else "shut at every angle"
        shown = shut if worst.open <= 1e-6 else f"open by {write.fine.length(worst.open)} at {write.angle(worst.angle)}"
        yield Check(f"Sight through the {side_name(job, side)}, level to {write.angle(spec.rain_angle)}", shown,
                    f"shut up to {write.angle(spec.rain_angle)}", "the rain angle of this vent",
                    _verdict(worst.open <= 1e-6), steepest, float(spec.rain_angle))
    for shed in sheds(assembly, at, ("louver.slat", "louver.sill", "louver.ring")):
        sill = shed.part.kind.id == "louver.sill"
        least, source = (SILL_FALL, MEMORY) if sill else (LEAST_FALL, OWN)
        yield Check(f"Fall outward of {shed.part.mark}, {shed.part.name}", write.angle(shed.fall),
                    f"at least {write.angle(least)}", source, _verdict(shed.fall >= least - 1e-6), shed.fall, least)
    yield from _drips(job)
    found = end_grain_up(assembly)
    for end in found:
        yield Check(f"End grain up: {end.part.mark}, {end.part.name}, {end.end}, {end.count} of them",
                    f"{write.angle(end.lean)} from level", "none under open sky", PRACTICE,
                    f"{LOOK}: cover it, or seal it and seal it again with each coat of paint", end.lean)
    if not found:
        yield Check("End grain up under open sky", "none", "none", PRACTICE, GOOD)


def _drips(job: Job) -> Iterator[Check]:
    for name, kind, family in (("Drip ring beyond the corner boards", "louver.ring", "base.corner"),
                               ("Drip ring beyond the cladding", "louver.ring", "base.cladding"),
                               ("Fascia beyond the louver stage's trim", "roof.fascia", "louver.trim")):
        reach = reach_beyond(drawn(job), job.sizes, kind, family)
        if reach is not None:
            least = job.writer.fine.length(DRIP_LEAST)
            yield Check(name, job.writer.fine.length(reach), f"at least {least}", f"{PRACTICE} / {MEMORY}",
                        _verdict(reach >= DRIP_LEAST), reach, DRIP_LEAST)


def _air(job: Job) -> Iterator[Check]:
    air, write = air_report(job.spec), job.writer
    target = write.area(air.target) if air.target else "no target given"
    source = "target of this vent; areas in series: AMCA 500-L" if air.target else "areas in series: AMCA 500-L"
    for name, area in (("Louvers, the screen's factor in it", air.louvers), ("Throat within the frames", air.throat),
                       ("Opening in the roof", air.roof_opening), (f"The smallest: {air.narrowest}", air.least)):
        yield Check(name, write.area(area), target, source, _verdict(area >= air.target) if air.target else TOLD, area,
                    air.target or None)


def _movement(job: Job) -> Iterator[Check]:
    """One row for all parts that move alike, and for all of a wood that has no coefficient."""
    rows: dict[tuple[str, str, str, str, str], list[Movement]] = {}
    for each in movements(job.assembly, job.spec):
        rows.setdefault(_movement_words(each, job), []).append(each)
    for (what, shown, limit, source, verdict), alike in rows.items():
        marks = ", ".join(dict.fromkeys(each.part.mark for each in alike))
        yield Check(f"{marks}: {what}", shown, limit, source, verdict, alike[0].moves, alike[0].gap or None)


def _movement_words(each: Movement, job: Job) -> tuple[str, str, str, str, str]:
    """What moves and how much, its limit, the source, and the verdict."""
    if each.moves is None or each.species is None:
        wood = each.part.stock.material or each.part.stock.name
        return each.of, f"unknown: no coefficient for “{wood}”", "–", "stock list", LOOK if each.gap else TOLD
    what, shown = f"{each.of} {job.writer.length(each.size)}", _small(each.moves, job)
    source = f"{each.species.name}: {each.species.source}"
    if not each.gap:
        return what, shown, "–", source, TOLD
    limit = f"{'the fit in the dado' if each.of == THICKNESS else 'the gap between boards'}, {_small(each.gap, job)}"
    return what, shown, limit, source, GOOD if each.held else f"{LOOK}: leave {shown}"


def _small(mm: float, job: Job) -> str:
    """A length that may be far below the finest graduation: to 0.01 mm, and in inches to a thousandth."""
    return f"{mm:.2f}\u00a0mm" if job.writer.style.system == "mm" else f"{mm / 25.4:.3f}\u00a0in"


def _errors(job: Job) -> Iterator[Check]:
    for each in openings(drawn(job), job.sizes):
        yield Check(f"{each.sort.name}, {each.part.mark}: {_error_text(each, job)}",
                    f"opens {_small(each.opens, job)}", _small(each.sort.limit, job), f"{PRACTICE}; {_error_source(each)}",
                    f"{_verdict(each.good)}. Hold {each.sort.hold}; trim {each.sort.trim}.", each.opens, each.sort.limit)


def _error_source(each: Opening) -> str:
    return "the errors of all dados added up" if each.what == SPACING else "measured on the piece cut wrong"


def _error_text(each: Opening, job: Job) -> str:
    if each.what == LENGTH:
        return f"{_small(each.error, job)} too short"
    if each.what == SPACING:
        return f"{_small(each.error, job)} wrong at each"
    return f"{each.what} wrong by {job.writer.angle(each.error)}"


def _reach(job: Job) -> Iterator[Check]:
    """One row for each stage, one for each pair of stages, and one for each joint that no driver reaches."""
    assembly = drawn(job)
    groups: dict[str, list[Fastened]] = {}
    for each in fastening_of(job.spec, assembly):
        if each.row.fastener == SCREW:
            stages = sorted({assembly.part_of(name).kind.stage for name in (each.first, each.second)}, key=list(STAGES).index)
            groups.setdefault(" to ".join(STAGES[stage][1].lower() for stage in stages), []).append(each)
    for name, joints in groups.items():
        held = sum(each.held for each in joints)
        yield Check(f"{name.capitalize()}: joints with their screws in reach", f"{held} of {len(joints)}", "all", OWN,
                    _verdict(held == len(joints)), held, len(joints))
        for each in joints:
            if not each.held:
                first, second = (assembly.part_of(piece).mark for piece in (each.first, each.second))
                shown = f"{assembly.part_of(each.blocked).mark} in the way" if each.blocked else "no wood for a screw"
                yield Check(f"{first} to {second}", shown, "a screw in reach", OWN, LOOK)


# ---- paper and JSON


def checks_report(job: Job) -> Report:
    """The checks as a report, ready for any writer."""
    found = chapters(job)
    return report_of(job, "Checks of a louvered roof vent",
                     (*_summary(found), *(block for chapter in found for block in _chapter(chapter))))


def _summary(found: tuple[Chapter, ...]) -> Iterator[Block]:
    yield Heading("Summary", 1, anchor="summary")
    rows = tuple((chapter.title, str(len(chapter.checks)), str(sum(_bad(each) for each in chapter.checks)))
                 for chapter in found)
    yield Table((Column("Checks", 3.0), Column("Rows", 1.0, "right"), Column("To look at", 1.0, "right")), rows)
    yield Para("These checks are of the drawn vent. They do not stand for a look at the barn, nor for what local codes, wind, "
               "snow and the roof's framing ask for: leave that to those licensed for it.", "caution")


def _bad(check: Check) -> bool:
    return check.verdict.startswith(LOOK)


def _chapter(chapter: Chapter) -> Iterator[Block]:
    yield Heading(chapter.title, 1, anchor=chapter.key)
    yield Para(chapter.words)
    rows = tuple((each.name, each.shown, each.limit, each.source, each.verdict) for each in chapter.checks)
    yield Table((Column("Check", 2.6), Column("Measured", 1.5), Column("Limit", 1.3), Column("Source", 1.6),
                 Column("Verdict", 1.9)), rows)


def checks_record(job: Job) -> dict[str, Any]:
    """The JSON file's content: mm, mm², mm³ and degrees, unrounded, beside the page's strings."""
    return {
        "format": FORMAT, "format_version": FORMAT_VERSION, "units": {"length": "mm", "angle": "degree"},
        "fingerprint": job.fingerprint, "revision": job.revision, "date": job.date, "title_block": dict(title_block(job)),
        "chapters": [{"key": chapter.key, "title": chapter.title, "checks": [
            {"name": each.name, "value": each.value, "bound": each.bound, "to_look_at": _bad(each),
             "shown": {"measured": each.shown, "limit": each.limit, "source": each.source, "verdict": each.verdict}}
            for each in chapter.checks]} for chapter in chapters(job)],
    }


def to_checks_json(job: Job) -> str:
    """The whole file as text."""
    return json_text(checks_record(job))
