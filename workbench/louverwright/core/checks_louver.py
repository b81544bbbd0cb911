# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the louver stage's sizes set each other; see ``checks``."""

from __future__ import annotations

import math
from collections.abc import Iterator

from .dimensions import DADO_WOOD, slat_height, slats_needed
from .louver import screen_heights
from .sizes import PanelSize, Sizes
from .spec import Finding, Spec, least_text, length_text, most_text

#: The least clear width of a panel, or of half a panel beside a mullion (mm).
LEAST_CLEAR = 60.0
#: Wood left behind a dado, or between two back to back (mm).
DADO_FLOOR = 6.0
#: The least clear gap between slats (mm).
LEAST_GAP = 5.0
#: The cladding stands at least this far up past the joint of base and louver stage (mm).
UPSTAND = 20.0
#: The ring's inner edge may stand this far proud of the sill (mm) and hold no water.
PROUD = 0.5


def _panel_width(spec: Spec, at: Sizes) -> Iterator[Finding]:
    def clear_of(panel: PanelSize) -> float:
        return panel.clear_width / 2.0 if panel.mullion_t else panel.clear_width

    narrow = min(at.louver.panels, key=clear_of)
    clear = clear_of(narrow)
    if clear < LEAST_CLEAR:
        more = math.ceil((LEAST_CLEAR - clear) * (2.0 if narrow.mullion_t else 1.0))
        yield Finding("panel", "width", length_text(at.base.width),
                      f"posts and stiles leave {length_text(max(0.0, clear))} clear between them and must leave "
                      f"{length_text(LEAST_CLEAR)}", f"Make it {length_text(at.base.width + more)} or more.")


def _panel_depth(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    behind = louver.screen_t + (louver.batten_t if louver.screen_t else 0.0)
    most = at.base.post_face / at.plan.slope - behind
    if louver.depth > most:
        yield Finding("panel depth", "panel_depth", length_text(louver.depth),
                      f"neighbouring panels would touch inside the corner beyond {most_text(most)} (post face less "
                      f"screen and batten)", "Make the panel shallower, the battens thinner or the posts wider.")
    if louver.depth > spec.stile_stock.width:
        yield Finding("panel depth", "panel_depth", length_text(louver.depth),
                      f"stiles are cut from stock {most_text(spec.stile_stock.width)} wide",
                      "Make the panel shallower, or choose wider stile stock.")


def _battens(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    if not louver.screen_t:
        return
    low, high = screen_heights(louver)
    most = min(min(panel.half for panel in louver.panels) - LEAST_CLEAR / 2.0, (high - low - LEAST_CLEAR) / 2.0)
    if louver.batten_w > most:
        yield Finding("batten", "batten_stock", f"“{spec.batten_stock.name}”",
                      f"battens {length_text(louver.batten_w)} wide would meet behind the screen; "
                      f"{most_text(max(0.0, most))} is the widest", "Choose narrower battens, or leave the screen out.")
    if low < louver.rail_top - 1e-6 and louver.depth < louver.frame_t:
        yield Finding("batten", "panel_depth", length_text(louver.depth),
                      f"the screen hangs {length_text(louver.rail_top - low)} below the rail's top, and the panel is "
                      f"shallower than the rail, {length_text(louver.frame_t)}",
                      f"Make it {least_text(louver.frame_t)} or more, or choose narrower battens.")


def _slat_stock(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    a = math.radians(louver.slat_angle)
    blank = louver.depth / math.cos(a) + louver.slat_t * math.tan(a)
    if blank > spec.slat_stock.width:
        yield Finding("slat", "slat_stock", f"“{spec.slat_stock.name}”",
                      f"slats need a blank {length_text(blank)} wide and it is {length_text(spec.slat_stock.width)}",
                      "Make the panel shallower, the slats flatter, or choose wider slat stock.")


def _slats(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    room = louver.head_under - louver.rail_top
    least = slat_height(spec)
    if room < least + louver.slat_plumb + DADO_WOOD:
        need = math.ceil(louver.top - at.base.top + least + louver.slat_plumb + DADO_WOOD - room)
        yield Finding("louver height", "louver_height", length_text(louver.top - at.base.top),
                      "there is no room for a sill and one slat between the rails",
                      f"Make it {length_text(need)} or more.")
        return
    wood = louver.spacing - louver.slat_plumb
    if wood < DADO_WOOD or louver.gap < LEAST_GAP:
        yield Finding("slats", "slat_count", str(louver.slats),
                      f"{length_text(max(0.0, wood))} of wood and a gap of {length_text(max(0.0, louver.gap))} are left "
                      f"between slats; {length_text(DADO_WOOD)} and {length_text(LEAST_GAP)} are the least",
                      "Take fewer slats, a steeper slat or a deeper panel." if spec.slat_count else
                      "Take a smaller rain angle, a steeper slat or a deeper panel.")
    if louver.overlap(spec.rain_angle) < -1e-6:
        yield Finding("sight line", "slat_count", str(louver.slats),
                      f"rain rising inward at {spec.rain_angle:g}° passes between the slats",
                      _more_slats(spec, room))


def _more_slats(spec: Spec, room: float) -> str:
    needed = slats_needed(spec, room)
    if needed > 1:
        return f"Take {needed} slats or more, or a smaller rain angle."
    return "Take a steeper slat or a smaller rain angle."


def _sill(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    slope = math.radians(louver.sill_slope)
    blank = louver.depth / math.cos(slope) + louver.slat_t * math.tan(slope)
    if blank > spec.slat_stock.width:
        yield Finding("sill", "sill_slope", f"{louver.sill_slope:g}°",
                      f"the sill needs a blank {length_text(blank)} wide and its stock is "
                      f"{most_text(spec.slat_stock.width)}", "Make the sill flatter, or choose wider slat stock.")
    room = louver.spacing - louver.sill_plumb + min(0.0, louver.rise - louver.sill_rise)
    if room < DADO_WOOD <= louver.spacing - louver.slat_plumb:
        yield Finding("sill", "sill_slope", f"{louver.sill_slope:g}°",
                      f"it leaves {length_text(max(0.0, room))} under the first slat's dado, and {length_text(DADO_WOOD)} is "
                      "the least", "Make the sill flatter, or take fewer slats.")


def _dados(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    mullion_t = max(panel.mullion_t for panel in louver.panels)
    if spec.dado_depth > louver.stile_t - DADO_FLOOR:
        yield Finding("dado", "dado_depth", length_text(spec.dado_depth),
                      f"a stile {length_text(louver.stile_t)} thick must keep {length_text(DADO_FLOOR)} behind it",
                      f"Set it to {most_text(louver.stile_t - DADO_FLOOR)} or less.")
    if mullion_t and 2.0 * spec.dado_depth > mullion_t - DADO_FLOOR:
        yield Finding("dado", "dado_depth", length_text(spec.dado_depth),
                      f"dados on both faces leave less than {length_text(DADO_FLOOR)} of the mullion",
                      f"Set it to {most_text((mullion_t - DADO_FLOOR) / 2.0)} or less.")
    if mullion_t and louver.depth > at.base.frame_w:
        yield Finding("mullion", "panel_depth", length_text(louver.depth),
                      f"the mullion is cut from frame stock {length_text(at.base.frame_w)} wide",
                      "Make the panel shallower, or choose wider frame stock.")


def _ring(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver, base = at.louver, at.base
    slope = math.radians(louver.ring_slope)
    proud = louver.ring_t / math.cos(slope) - louver.sill_plumb
    if proud > PROUD:
        yield Finding("ring slope", "ring_slope", f"{louver.ring_slope:g}°",
                      f"the ring's inner edge would stand {length_text(proud)} above the sill and hold water",
                      f"Make it no steeper than the slats, {louver.slat_angle:g}°, and no thicker.")
    head = louver.rail_top - (base.width / 2.0 - louver.frame_r) * math.tan(slope) - spec.ring_clearance / math.cos(slope)
    if head < base.top + UPSTAND:
        yield Finding("upstand", "ring_slope", f"{louver.ring_slope:g}°",
                      f"the cladding under it ends {length_text(max(0.0, head - base.top))} above the joint of the "
                      f"stages and must reach {length_text(UPSTAND)}", "Make the ring flatter, or the frame stock wider.")
    drip = louver.rail_top - (louver.ring_r - louver.frame_r) * math.tan(slope)
    if drip < at.roof.height(0.0) + LEAST_CLEAR and drip < base.top - base.frame_w:
        yield Finding("ring", "ring_projection", length_text(spec.ring_projection),
                      "the ring's nose would hang down below the base's top rail",
                      "Make the ring narrower or flatter.")


def _trim(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    if louver.trim_lap > louver.stile_t - 1.0:
        yield Finding("trim lap", "trim_lap", length_text(louver.trim_lap),
                      f"it would cover the stile, {length_text(louver.stile_t)} thick, and close the louvers",
                      f"Set it to {most_text(louver.stile_t - 1.0)} or less.")


CHECKS = (_panel_width, _panel_depth, _battens, _slat_stock, _slats, _sill, _dados, _ring, _trim)
