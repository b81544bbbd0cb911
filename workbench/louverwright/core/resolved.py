# SPDX-License-Identifier: LGPL-2.1-or-later
"""What automatic parameters came out as."""

from __future__ import annotations

from .dimensions import sizes
from .parameters import MEASURED, MOISTURE, PARAMETERS, STOCK, THICKNESS, WIDTH, measured_name
from .row import end_distance
from .spec import Spec


def resolved(spec: Spec) -> dict[str, float]:
    """The value (mm, degrees, a count) of each parameter that can be automatic and has a value then."""
    at = sizes(spec)
    row = {"end_distance": end_distance(spec)} if spec.ridge_length else {}
    return {**row, "width": at.base.width + 2.0 * at.plan.out(1), "length": at.base.width + 2.0 * at.plan.out(0),
            "flare_pitch": at.cap.eave_pitch, "flare_reach": at.cap.tail_r - at.cap.break_r,
            "end_pitch": at.end_pitch,
            "verge": at.cap.verge_r - at.cap.plate_r - at.base.cladding_t,
            "base_height": at.base.top, "louver_height": at.louver.top - at.base.top,
            "post_face": at.base.post_face, "corner_board_face": at.base.corner_face, "slat_count": at.louver.slats,
            "ring_slope": at.louver.ring_slope, "sill_slope": at.louver.sill_slope, "trim_lap": at.louver.trim_lap,
            "heel_height": at.cap.heel, "hip_rafter_slope": at.cap.hip_slope, "rafters_per_side": at.cap.rafters,
            **_stock(spec)}


def _stock(spec: Spec) -> dict[str, float]:
    """Thickness, width and moisture of the stock of each use, as far as they can be told."""
    rows = {row.name for row in PARAMETERS if row.group == MEASURED}
    told = {measured_name(row.name, what): float(getattr(spec.values[row.name], what))
            for row in PARAMETERS if row.kind == STOCK for what in (THICKNESS, WIDTH, MOISTURE)}
    return {name: value for name, value in told.items() if name in rows}
