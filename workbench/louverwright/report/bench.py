# SPDX-License-Identifier: LGPL-2.1-or-later
"""The bench sheet: what is set, struck and tried at the bench before and beside the saw's set-up sheet."""

from __future__ import annotations

from collections.abc import Iterator

from .bench_drawing import gauge_drawing, stick_drawing
from .bench_rows import (
    Row,
    drill_rows,
    gauge_rows,
    lap_rows,
    order_rows,
    pair_rows,
    raking_rows,
    rip_setups,
    slat_rows,
    story_sticks,
)
from .document import report_of
from .job import Job
from .page import Block, Bullets, Column, Figure, Heading, Para, Report, Table, Together
from .words import SAW_CAUTIONS

DADO_PRACTICE = (
    "Clamp all boards of one story stick together, faces touching, the edge that they are measured on up and their square "
    "ends flush against a stop: so one line serves both hands. Lay the stick on, and square every place across all the "
    "edges at once with a knife.",
    "Unclamp, lay each board with the face for the dados up, and strike each place from its knife line with a bevel gauge, "
    "its stock on that same edge. The other hand takes the same setting with the gauge turned over: strike one hand whole "
    "before you turn it. A left and a right board laid with those edges together must show Vs.",
    "Hatch the waste between two lines before anything is cut. A line that runs off the board's end is cut all the same.",
    "Clamp the guide along the line itself, and a strip of waste against the edge where the cut comes out, so that the "
    "fibres break there and not in the board; that edge is the one that the vent hides.",
    "Cut the first dado in waste and try the test slat before any board. By hand it goes in to the floor over its whole "
    "length, and shows the play given and no more. Wood swells across the grain: never make it closer.",
)
PAIR_PRACTICE = (
    "Take a scrap with square, parallel edges, long enough that both halves are held well clear of the blade. Set both "
    "scales, lay it as the set-up sheet's row says and cut it through in the middle.",
    "Roll the offcut half round about its length, so that its lower face comes up and its edges change sides, and hold cut "
    "against cut, corner to corner.",
    "The wide faces are tried square to the joint: the longer ones over the outside, the shorter ones in the hollow. The "
    "arrises that meet at a corner of the joint are tried along the two pieces. The faces show the bevel, with twice its "
    "error; once they are right, the lengths show the mitre.",
    "Correct the bevel first, then the mitre, and cut again. Cut good boards only when both angles are right and no light "
    "comes through the joint. A setting to the left and its fellow to the right are two set-ups: try both.",
    "What the set-up sheet has under “Beyond the saw” is tried with the jig or the handsaw that is named there.",
)
LAP_NOTE = ("Set the depth on two offcuts of the same stock as it came: lapped, they lie flush on both sides. Left is what "
            "must stay under the lap. Cut the shoulders first; with a knife line at each, they do not break out.")
RIP_NOTE = ("In this order on each stock. The fence is set from itself to the blade where it comes through the table, with "
            "the face named up; “either edge” means the jointed one.")
DRILL_NOTE = ("The widest bit first. Bore square to the face unless a lean is given, over a scrap clamped under where it "
              "comes out; deep holes to a stop. Screw holes of hinges, straps and fittings are not in this list.")


def bench_report(job: Job) -> Report:
    """The sheet, ready for any writer."""
    return report_of(job, "Bench sheet: dados, laps, rips, holes and test pairs",
                     (*_dados(job), *_laps(job), *_rips(job), *_holes(job), *_pairs(job), *_order(job)))


def _dados(job: Job) -> Iterator[Block]:
    rows = gauge_rows(job)
    raking = raking_rows(job)
    if rows or raking:
        yield Heading("Dado practice", 1, anchor="dados")
    if rows:
        yield Bullets(DADO_PRACTICE)
        yield Table((Column("Mark", 0.7), Column("Face", 1.0), Column("Gauge's stock on", 1.1), Column("Gauge set to", 1.9),
                     Column("Blade leans", 1.4), Column("Line across", 1.0), Column("Cut", 1.7)), rows,
                    caption="Bevel gauge", note="“Line across” is how far the blade must reach over the wood beyond the "
                    "gauge's stock.")
        yield Table((Column("Marks", 1.6), Column("Slat", 0.6), Column("Test slat", 1.7), Column("Dado wide", 0.9, "right"),
                     Column("Play", 0.8, "right"), Column("Deep", 0.8, "right")), slat_rows(job), caption="Test slat",
                    note="An offcut of the slats themselves, ripped and planed with them.")
        yield from _sticks(job)
    if raking:
        yield Table((Column("Mark", 0.7), Column("Face and lines", 2.6), Column("Angle", 1.6), Column("Places", 2.6)), raking,
                    caption="Raking stiles: marks only, the slats are butted")


def _sticks(job: Job) -> Iterator[Block]:
    for number, stick in enumerate(story_sticks(job), start=1):
        yield Heading(f"Story stick {number}: {stick.marks}", 2)
        yield Together((Figure(stick_drawing(stick), f"On the {stick.edge}, from {stick.start}"),
                        Figure(gauge_drawing(stick, job), "Where the gauge lies at the first dado")))
        yield Table((Column("Place", 2.4), Column(f"From {stick.start}", 1.4, "right"),
                     Column(f"From the {stick.end}", 1.4, "right")), stick.rows,
                    note="Mark the stick from one end with one hook of the tape, never from place to place. The same places "
                    "are on the full-size template.")


def _laps(job: Job) -> Iterator[Block]:
    rows = lap_rows(job)
    if rows:
        yield Heading("Half laps", 1, anchor="laps")
        yield Table((Column("Deep", 0.7, "right"), Column("Left", 0.7, "right"), Column("Marks", 2.2), Column("Lap", 1.6),
                     Column("Cut from", 0.8), Column("Where", 2.6), Column(f"Laps{job.for_all}", 0.5, "right")), rows,
                    note=LAP_NOTE)


def _rips(job: Job) -> Iterator[Block]:
    setups = rip_setups(job)
    if setups:
        yield Heading("Rips by stock", 1, anchor="rips")
        yield Para(RIP_NOTE)
    for stock, rows in setups:
        yield Table((Column("", 0.3, "right"), Column("Blade", 1.2), Column("Fence", 1.6), Column("Lies", 2.6),
                     Column("Parts", 2.2), Column(f"Cuts{job.for_all}", 0.5, "right")), rows, caption=stock)


def _holes(job: Job) -> Iterator[Block]:
    rows = drill_rows(job)
    if rows:
        yield Heading("Drill list", 1, anchor="holes")
        yield Table((Column("Bit", 0.8), Column("Depth", 0.9), Column("Mark", 0.6), Column("Hole", 1.6), Column("From", 2.0),
                     Column("Where", 2.4), Column(f"Holes{job.for_all}", 0.5, "right")), rows, note=DRILL_NOTE)


def _pairs(job: Job) -> Iterator[Block]:
    rows: tuple[Row, ...] = pair_rows(job)
    if rows:
        yield Heading("Test pairs for compound settings", 1, anchor="pairs")
        yield Bullets(PAIR_PRACTICE)
        yield Table((Column("No.", 0.7), Column("Set to", 1.8), Column("Scrap W × T", 1.3), Column("Faces close to", 1.3),
                     Column("Lengths close to", 1.3), Column("For", 2.2)), rows)
        yield Bullets(SAW_CAUTIONS)


def _order(job: Job) -> Iterator[Block]:
    yield Heading("Order of cuts", 1, anchor="order")
    yield Table((Column("Mark", 0.7), Column("Part", 1.6), Column("Steps, numbered as in the part's block", 6.0)),
                order_rows(job), note="Rips come before ends, ends before laps and dados: a later cut is measured from what "
                "an earlier one left.")
