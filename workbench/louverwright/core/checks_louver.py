# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the louver stage's sizes set each other; see ``checks``."""

from __future__ import annotations

import math
from collections.abc import Iterator

from .dimensions import DADO_WOOD, slat_height, slats_needed
from .louver import screen_heights
from .saying import say
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
                      say("posts and stiles leave {clear} clear between them and must leave {least_clear}",
                          clear=length_text(max(0.0, clear)), least_clear=length_text(LEAST_CLEAR)),
                      say("Make it {least} or more.", least=length_text(at.base.width + more)))


def _panel_depth(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    behind = louver.screen_t + (louver.batten_t if louver.screen_t else 0.0)
    most = at.base.post_face / at.plan.slope - behind
    if louver.depth > most:
        yield Finding("panel depth", "panel_depth", length_text(louver.depth),
                      say("neighbouring panels would touch inside the corner beyond {most} (post face less screen and "
                          "batten)", most=most_text(most)), say("Make the panel shallower, the battens thinner or the "
                                                                "posts wider."))
    if louver.depth > spec.stile_stock.width:
        yield Finding("panel depth", "panel_depth", length_text(louver.depth),
                      say("stiles are cut from stock {width} wide", width=most_text(spec.stile_stock.width)),
                      say("Make the panel shallower, or choose wider stile stock."))


def _battens(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    if not louver.screen_t:
        return
    low, high = screen_heights(louver)
    most = min(min(panel.half for panel in louver.panels) - LEAST_CLEAR / 2.0, (high - low - LEAST_CLEAR) / 2.0)
    if louver.batten_w > most:
        yield Finding("batten", "batten_stock", say("“{name}”", name=spec.batten_stock.name),
                      say("battens {batten_w} wide would meet behind the screen; {most} is the widest",
                          batten_w=length_text(louver.batten_w), most=most_text(max(0.0, most))),
                      say("Choose narrower battens, or leave the screen out."))
    if low < louver.rail_top - 1e-6 and louver.depth < louver.frame_t:
        yield Finding("batten", "panel_depth", length_text(louver.depth),
                      say("the screen hangs {low} below the rail's top, and the panel is shallower than the rail, "
                          "{frame_t}", low=length_text(louver.rail_top - low), frame_t=length_text(louver.frame_t)),
                      say("Make it {least} or more, or choose narrower battens.", least=least_text(louver.frame_t)))


def _slat_stock(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    a = math.radians(louver.slat_angle)
    blank = louver.depth / math.cos(a) + louver.slat_t * math.tan(a)
    if blank > spec.slat_stock.width:
        yield Finding("slat", "slat_stock", say("“{name}”", name=spec.slat_stock.name),
                      say("slats need a blank {blank} wide and it is {width}", blank=length_text(blank),
                          width=length_text(spec.slat_stock.width)),
                      say("Make the panel shallower, the slats flatter, or choose wider slat stock."))


def _slats(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    room = louver.head_under - louver.rail_top
    least = slat_height(spec)
    if room < least + louver.slat_plumb + DADO_WOOD:
        need = math.ceil(louver.top - at.base.top + least + louver.slat_plumb + DADO_WOOD - room)
        yield Finding("louver height", "louver_height", length_text(louver.top - at.base.top),
                      say("there is no room for a sill and one slat between the rails"),
                      say("Make it {least} or more.", least=length_text(need)))
        return
    wood = louver.spacing - louver.slat_plumb
    if wood < DADO_WOOD or louver.gap < LEAST_GAP:
        yield Finding("slats", "slat_count", str(louver.slats),
                      say("{wood} of wood and a gap of {gap} are left between slats; {dado_wood} and {least_gap} are the "
                          "least", wood=length_text(max(0.0, wood)), gap=length_text(max(0.0, louver.gap)),
                          dado_wood=length_text(DADO_WOOD), least_gap=length_text(LEAST_GAP)),
                      say("Take fewer slats, a steeper slat or a deeper panel.") if spec.slat_count else
                      say("Take a smaller rain angle, a steeper slat or a deeper panel."))
    if louver.overlap(spec.rain_angle) < -1e-6:
        yield Finding("sight line", "slat_count", str(louver.slats),
                      say("rain rising inward at {rain_angle:g}° passes between the slats", rain_angle=spec.rain_angle),
                      _more_slats(spec, room))


def _more_slats(spec: Spec, room: float) -> str:
    needed = slats_needed(spec, room)
    if needed > 1:
        return say("Take {needed} slats or more, or a smaller rain angle.", needed=needed)
    return say("Take a steeper slat or a smaller rain angle.")


def _sill(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    slope = math.radians(louver.sill_slope)
    blank = louver.depth / math.cos(slope) + louver.slat_t * math.tan(slope)
    if blank > spec.slat_stock.width:
        yield Finding("sill", "sill_slope", f"{louver.sill_slope:g}°",
                      say("the sill needs a blank {blank} wide and its stock is {width}", blank=length_text(blank),
                          width=most_text(spec.slat_stock.width)), say("Make the sill flatter, or choose wider slat stock."))
    room = louver.spacing - louver.sill_plumb + min(0.0, louver.rise - louver.sill_rise)
    if room < DADO_WOOD <= louver.spacing - louver.slat_plumb:
        yield Finding("sill", "sill_slope", f"{louver.sill_slope:g}°",
                      say("it leaves {room} under the first slat's dado, and {dado_wood} is the least",
                          room=length_text(max(0.0, room)), dado_wood=length_text(DADO_WOOD)),
                      say("Make the sill flatter, or take fewer slats."))


def _dados(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    mullion_t = max(panel.mullion_t for panel in louver.panels)
    if spec.dado_depth > louver.stile_t - DADO_FLOOR:
        yield Finding("dado", "dado_depth", length_text(spec.dado_depth),
                      say("a stile {stile_t} thick must keep {dado_floor} behind it", stile_t=length_text(louver.stile_t),
                          dado_floor=length_text(DADO_FLOOR)),
                      say("Set it to {most} or less.", most=most_text(louver.stile_t - DADO_FLOOR)))
    if mullion_t and 2.0 * spec.dado_depth > mullion_t - DADO_FLOOR:
        yield Finding("dado", "dado_depth", length_text(spec.dado_depth),
                      say("dados on both faces leave less than {dado_floor} of the mullion",
                          dado_floor=length_text(DADO_FLOOR)),
                      say("Set it to {most} or less.", most=most_text((mullion_t - DADO_FLOOR) / 2.0)))
    if mullion_t and louver.depth > at.base.frame_w:
        yield Finding("mullion", "panel_depth", length_text(louver.depth),
                      say("the mullion is cut from frame stock {frame_w} wide", frame_w=length_text(at.base.frame_w)),
                      say("Make the panel shallower, or choose wider frame stock."))


def _ring(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver, base = at.louver, at.base
    slope = math.radians(louver.ring_slope)
    proud = louver.ring_t / math.cos(slope) - louver.sill_plumb
    if proud > PROUD:
        yield Finding("ring slope", "ring_slope", f"{louver.ring_slope:g}°",
                      say("the ring's inner edge would stand {proud} above the sill and hold water", proud=length_text(proud)),
                      say("Make it no steeper than the slats, {slat_angle:g}°, and no thicker.", slat_angle=louver.slat_angle))
    head = louver.rail_top - (base.width / 2.0 - louver.frame_r) * math.tan(slope) - spec.ring_clearance / math.cos(slope)
    if head < base.top + UPSTAND:
        yield Finding("upstand", "ring_slope", f"{louver.ring_slope:g}°",
                      say("the cladding under it ends {head} above the joint of the stages and must reach {upstand}",
                          head=length_text(max(0.0, head - base.top)), upstand=length_text(UPSTAND)),
                      say("Make the ring flatter, or the frame stock wider."))
    drip = louver.rail_top - (louver.ring_r - louver.frame_r) * math.tan(slope)
    if drip < at.roof.height(0.0) + LEAST_CLEAR and drip < base.top - base.frame_w:
        yield Finding("ring", "ring_projection", length_text(spec.ring_projection),
                      say("the ring's nose would hang down below the base's top rail"),
                      say("Make the ring narrower or flatter."))


def _trim(spec: Spec, at: Sizes) -> Iterator[Finding]:
    louver = at.louver
    if louver.trim_lap > louver.stile_t - 1.0:
        yield Finding("trim lap", "trim_lap", length_text(louver.trim_lap),
                      say("it would cover the stile, {stile_t} thick, and close the louvers",
                          stile_t=length_text(louver.stile_t)),
                      say("Set it to {most} or less.", most=most_text(louver.stile_t - 1.0)))


CHECKS = (_panel_width, _panel_depth, _battens, _slat_stock, _slats, _sill, _dados, _ring, _trim)
