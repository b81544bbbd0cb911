# SPDX-License-Identifier: LGPL-2.1-or-later
"""Blocks to make for the bench: what the stages stand on while they are put together.  All in mm and degrees."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass

from .assembly import Assembly
from .kinds import BASE, ROOF
from .sight import bodies
from .sizes import Sizes

#: Air left between the bench and what hangs down over it (mm; common practice).
AIR = 10.0
#: Level blocks are so long (mm): offcuts of frame stock.
BLOCK = 200.0


@dataclass(frozen=True)
class BenchBlock:
    """Blocks of one kind: what for, how many, length, height at the high end, and the angle of the sloped face (0 for
    level)."""

    use: str
    count: int
    length: float
    height: float
    angle: float


def bench_blocks(assembly: Assembly, at: Sizes) -> tuple[BenchBlock, ...]:
    """Every kind of block that this vent asks for, in the order of use."""
    return (*_base(assembly, at), *_louver(assembly, at), *_roof(assembly, at))


def _reach(assembly: Assembly, stage: str, without: str) -> tuple[float, float]:
    """Lowest and highest point of a stage's pieces but those of a kind."""
    found = [body for body in bodies(assembly).values()
             if body.piece.kind.startswith(stage + ".") and body.piece.kind != without]
    return min(body.low[2] for body in found), max(body.high[2] for body in found)


def _base(assembly: Assembly, at: Sizes) -> Iterator[BenchBlock]:
    if assembly.of_kind("base.rail.top"):
        over = _reach(assembly, BASE, "")[1] - at.base.top
        yield BenchBlock("under the top rails, the base standing on its head: the cladding runs past them", at.plan.sides,
                         BLOCK, max(0.0, over) + AIR, 0.0)
    slopes = ((at.roof.left, "left"),) if at.roof.single else ((at.roof.left, "left"), (at.roof.right, "right"))
    half = at.base.width / 2.0 + at.plan.out(1)
    for pitch, name in slopes:
        run = 2.0 * half if at.roof.single else half + (-at.roof.ridge if name == "left" else at.roof.ridge)
        if pitch > 0.0 and run > 0.0:
            yield BenchBlock(f"saddle of the {name} slope, to stand the base upright and try it before it goes up", 2,
                             run / math.cos(math.radians(pitch)), run * math.tan(math.radians(pitch)), pitch)


def _louver(assembly: Assembly, at: Sizes) -> Iterator[BenchBlock]:
    louver = at.louver
    if assembly.of_kind("louver.sill"):
        yield BenchBlock("wedges under the sill, to stand a panel upright while its glue sets", 2, louver.depth,
                         louver.sill_rise, louver.sill_slope)
    rings = assembly.of_kind("louver.ring")
    if rings:
        wide, slope = rings[0].board.width, math.radians(louver.ring_slope)
        yield BenchBlock("brackets under a ring board, to hold it at its slope while it is screwed", 2, wide * math.cos(slope),
                         wide * math.sin(slope), louver.ring_slope)


def _roof(assembly: Assembly, at: Sizes) -> Iterator[BenchBlock]:
    if not assembly.of_kind("roof.plate"):
        return
    plate = at.cap.plate_top - at.cap.plate_t
    hang = max(0.0, plate - _reach(assembly, ROOF, "roof.soffit")[0]) + AIR
    yield BenchBlock("under the plate: tails and fascia hang below it", at.plan.sides, BLOCK, hang, 0.0)
    if at.cap.post_flats:
        yield BenchBlock("prop under the king post, on the bench, until all hips are in", 1, 2.0 * at.cap.post_apothem,
                         at.cap.post_bottom - plate + hang, 0.0)
