# SPDX-License-Identifier: LGPL-2.1-or-later
"""Which sizes stand beside which picture: sizes and figures of the job, and the pieces' own ends; none is measured
on the paper."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from itertools import pairwise

from ..core.geometry import Vec, dot
from ..core.kinds import BASE
from ..core.sizes import Sizes
from .job import Job
from .picture import ABOVE, BELOW, LEFT, RIGHT, Span
from .views import View

Y = (0.0, 1.0, 0.0)


def across(points: Iterable[Vec], way: Vec, where: str) -> Span:
    """The width of points along a direction."""
    reach = [dot(p, way) for p in points]
    return Span(where, min(reach), max(reach))


def ring(at: Sizes, r: float) -> list[Vec]:
    """The corners of the plan at ``r``."""
    return [at.plan.corner_point(corner, r) for corner in range(at.plan.sides)]


def eaves(at: Sizes) -> list[Vec]:
    """The corners of the roof in plan, outside of everything."""
    return [at.roof_corner(corner) for corner in range(at.plan.sides)]


def chain(where: str, *stops: float) -> list[Span]:
    """Dimensions from stop to stop; those of no length are left out."""
    return [Span(where, a, b) for a, b in pairwise(sorted(stops)) if b - a > 0.05]


def vent_spans(job: Job, view: View, low: float) -> list[Span]:
    """The whole vent: cladding and eaves, the stages' heights from the ridge, and over all."""
    at, top = job.sizes, job.figures["overall_height"]
    return [across(ring(at, at.base.width / 2.0), view.right, BELOW), across(eaves(at), view.right, BELOW),
            *chain(RIGHT, low, 0.0, at.base.top, at.louver.top, top), Span(RIGHT, 0.0, top), Span(RIGHT, low, top)]


def section_spans(job: Job, side: int) -> list[Span]:
    """The section through a side: frames and throat in the side's own direction, rails and slats, plate and peak."""
    at = job.sizes
    out = at.plan.out(side)

    def both(r: float, where: str) -> Span:
        return Span(where, -r - out, r + out)

    slats = [Span(LEFT, at.louver.slat_under(1), at.louver.slat_under(2))] if at.louver.slats > 1 else []
    return [both(at.base.inner_r, BELOW), both(at.base.frame_r, BELOW), both(at.louver.panel_r, ABOVE),
            both(at.louver.frame_r, ABOVE), both(at.cap.plate_r, ABOVE), *slats,
            *chain(LEFT, at.louver.rail_top, at.louver.head_under, at.louver.rail_under),
            *chain(RIGHT, 0.0, at.base.top, at.louver.rail_top, at.louver.rail_under, at.louver.top, at.cap.plate_top,
                   at.peak)]


def plan_spans(job: Job, view: View, stage: str = "") -> list[Span]:
    """From above: the roof over its eaves; of the base its throat, its frame and its cladding."""
    at = job.sizes
    radii = (at.base.inner_r, at.base.frame_r, at.base.width / 2.0)
    shapes = [ring(at, r) for r in radii] if stage == BASE else [eaves(at)]
    return list(_both_ways(shapes, view))


def level_spans(job: Job, view: View) -> list[Span]:
    """The louver stage cut level: between its panels, over its frame."""
    at = job.sizes
    return list(_both_ways([ring(at, at.louver.panel_r), ring(at, at.louver.frame_r)], view))


def framing_spans(job: Job, view: View) -> list[Span]:
    """The roof's frame from above: over the plate, over the eaves."""
    at = job.sizes
    return list(_both_ways([ring(at, at.cap.plate_r), eaves(at)], view))


def _both_ways(shapes: Iterable[list[Vec]], view: View) -> Iterator[Span]:
    for shape in shapes:
        yield across(shape, view.right, BELOW)
        yield across(shape, view.up, RIGHT)


def base_spans(job: Job, low: float, high: float) -> list[Span]:
    """The base: over the cladding; foot, ridge, top of its frame, and the cladding's edge that laps on."""
    at = job.sizes
    return [across(ring(at, at.base.width / 2.0), Y, BELOW), *chain(RIGHT, low, 0.0, at.base.top, high),
            Span(RIGHT, low, high)]


def louver_spans(job: Job, low: float, high: float) -> list[Span]:
    """The louver stage: over its frame; what drops into the base, rails, top."""
    at = job.sizes
    return [across(ring(at, at.louver.frame_r), Y, BELOW),
            *chain(RIGHT, low, at.base.top, at.louver.rail_top, at.louver.rail_under, at.louver.top), Span(RIGHT, low, high)]


def roof_spans(job: Job, low: float, high: float) -> list[Span]:
    """The roof stage: over the eaves; its lowest edge, plate and top."""
    at = job.sizes
    return [across(eaves(at), Y, BELOW), *chain(RIGHT, low, at.cap.plate_top, high), Span(RIGHT, low, high)]
