# SPDX-License-Identifier: LGPL-2.1-or-later
"""The lift plan: what each stage weighs, where it balances, who lifts it and how, and the cautions that go with it."""

from __future__ import annotations

from collections.abc import Iterator

from ..core.lifting import (
    CARRYING_LEGS,
    GRAVITY,
    HELD_AT,
    LIFTED_BY,
    LIFTED_FROM,
    MOST_PEOPLE,
    POUND,
    SLING_ANGLE,
    Load,
    each_lifts,
    loads,
    passes,
    people,
    sling_force,
    velocity_pressure,
    wind_forces,
)
from .document import report_of
from .job import Job
from .page import Block, Bullets, Column, Heading, Pairs, Para, Report, Table

CAUTIONS = (
    "Lift in still air only: a stage is a sail. Never stand under it, and keep everybody else away with a tag line's length.",
    "Ladders: one in four, tied, three feet (0.9 m) above the landing. Nothing is carried up a ladder that needs a hand, or "
    "that could upset your balance: stages go up by tackle, hoist or from a scaffold.",
    "Roofs: a scaffold or fall protection from 6 ft (1.8 m) up, never alone, never on wet, icy or soft covering.",
    "Hoists, slings and lifting points are for gear that is marked with its working load, rigged by somebody who is trained "
    "for it. Follow your local code.",
    "What holds the vent to the building in wind, and the building under it, is for a licensed engineer. The forces below are "
    "for information only.",
)


def lift_report(job: Job) -> Report:
    """The plan, ready for any writer."""
    return report_of(job, "Lift plan", (*_cautions(), *_stages(job), *_by_hand(job), *_by_tackle(job), *_wind(job)))


def _stages(job: Job) -> Iterator[Block]:
    write = job.writer
    columns = (Column("Stage", 1.4), Column("Weight", 0.8, "right"), Column("Long × wide × high", 1.8, "right"),
               Column("Centre above its foot", 1.1, "right"), Column("Centre off the axis", 1.1, "right"),
               Column("People", 0.7, "right"))
    each = each_lifts(job.spec)
    rows = tuple((load.name, write.weight(load.weight), write.size(*load.size), write.length(load.centre[2] - load.low),
                  write.length(load.off_axis), str(people(load.weight, each))) for load in loads(job.assembly))
    yield Heading("What is lifted", 1, anchor="stages")
    yield Table(columns, rows, note="Weights are of the wood at the moisture that its stock has, without covering, flashing "
                "and paint: allow a tenth more. Along and across are the barn's ridge's. One vent's.")


def _by_hand(job: Job) -> Iterator[Block]:
    write, each = job.writer, each_lifts(job.spec)
    yield Heading("By hand", 1, anchor="hand")
    if job.spec.lift_limit:
        yield Para(f"Each person lifts {write.weight(each)} at most, as you gave it.")
    else:
        yield Para(f"Each person lifts {write.weight(each)} at most: the lifting equation of NIOSH (94-110) for a load held "
                   f"{write.length(HELD_AT)} before the ankles and lifted from {write.length(LIFTED_FROM)} by "
                   f"{write.length(LIFTED_BY)}, once in a while, with good handles, feet firm and nobody turning. On a roof, "
                   "reaching or stepping up, it is less.")
    lines = [text for load in loads(job.assembly)[:-1] for text in _hand_lines(load, job)]
    yield Bullets(tuple(lines))


def _hand_lines(load: Load, job: Job) -> Iterator[str]:
    """Who lifts a stage, what may be left off it, and whether it goes through."""
    write, each = job.writer, each_lifts(job.spec)
    number, bare = people(load.weight, each), load.weight - load.loose
    if number <= MOST_PEOPLE:
        yield f"{load.name}: {number} people."
    else:
        rest = people(bare, each)
        yield (f"{load.name}: {number} people would have to hold it, and {MOST_PEOPLE} can stand round it. Lift it by tackle, "
               f"or bring up by themselves its cladding, panels or sheathing ({write.weight(load.loose)}): the frame alone is "
               f"{write.weight(bare)}, {rest} people.")
    opening = float(job.spec.passage_width)
    if opening and not passes(load, opening):
        yield (f"{load.name} does not go upright through {write.length(opening)}: it is "
               f"{write.length(min(load.size[0], load.size[1]))} across. Put it together on the roof's side of that place.")


def _by_tackle(job: Job) -> Iterator[Block]:
    write, at = job.writer, job.sizes
    spread = 2.0 * at.base.inner_r
    rows = tuple((load.name, _force(sling_force(load, spread))) for load in loads(job.assembly))
    yield Heading("By tackle", 1, anchor="tackle")
    yield Para(f"Lift at four points, alike on opposite sides, {write.length(spread)} apart: under the top rails of base and "
               "louver stage, under the roof stage's cap plate, never by cladding, slats, ring or fascia. Balance it a hand's "
               "breadth off the ground first; the centre of gravity hangs under the hook.")
    yield Table((Column("Stage", 1.5), Column("Tension in the heavier leg", 2.0, "right")), rows,
                note=f"Legs at {SLING_ANGLE:g}° from the level; {CARRYING_LEGS} of four legs are taken to carry (common "
                "practice), and those nearer to the centre carry more. Without any shock: gear takes several times this.")


def _wind(job: Job) -> Iterator[Block]:
    yield Heading("Wind, for information only", 1, anchor="wind")
    speed = float(job.spec.wind_speed)
    if not speed:
        yield Para("No wind speed is given. Enter the place's design speed to see the force by the published formula.")
        return
    lateral, uplift = wind_forces(job.sizes, loads(job.assembly)[-1], speed)
    yield Pairs((("Wind speed", f"{speed:g} m/s"), ("Velocity pressure", f"{velocity_pressure(speed):.0f} N/m²"),
                 ("On the side, level", _force(lateral)), ("Uplift on the roof", _force(uplift)),
                 ("Weight against it", _force(job.figures["total_weight"] * GRAVITY))), 1)
    yield Para("F = qh · (GCr) · A of ASCE 7 for rooftop structures, GCr 1.9 and 1.5, qh = 0.613 · 0.98 · 0.85 · V² (30 ft up "
               "in open country). Ask a licensed engineer wherever the uplift comes near the weight, on high or exposed "
               "barns, near coasts and on hills, and wherever your code asks for it.", "small")


def _force(newtons: float) -> str:
    return f"{newtons / 1000.0:.2f}\u00a0kN ({newtons / GRAVITY / POUND:.0f}\u00a0lbf)"


def _cautions() -> Iterator[Block]:
    yield Heading("Cautions", 1, anchor="cautions")
    for text in CAUTIONS:
        yield Para(text, "caution")
