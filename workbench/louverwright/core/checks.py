# SPDX-License-Identifier: LGPL-2.1-or-later
"""Whether a vent can be built: what must go together, all findings at once.

Limits of single values are the parameter table's (``spec.make_spec``); here are those that sizes set each
other.  A spec that passes builds.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Mapping
from functools import lru_cache
from typing import Any

from . import checks_cap, checks_louver, checks_parts, checks_roof
from .dimensions import SOLE_ROOM, sizes, sole_top, width_of
from .layout import layout
from .offcuts import OffcutError, read_offcuts
from .parameters import BY_NAME, THICKNESS, WIDTH, measured_name
from .part_wish import NO_WISHES, STOCK, Wishes, field_of
from .plan import ENDS
from .prices import PriceError, read_prices
from .row import row_findings
from .saying import say
from .sizes import Sizes, opening_halves
from .spec import Finding, Spec, SpecError, least_text, length_text, make_spec, most_text
from .stock import USES, Stock, StockList

#: A leg shorter than this below its rail cannot hold the base to the roof (mm).
LEAST_LEG = 40.0
#: A rectangle is this much longer than wide at most.
LONGEST_RATIO = 2.0
#: Stock measured to differ from its list by more than this share is not that stock.
MEASURED_SHARE = 0.25
#: A saw does not relieve wood by less than this (mm; common practice).
LEAST_CAP = 1.0
#: An opening in the roof narrower than this airs nothing (mm).
LEAST_OPENING = 20.0


def checked_spec(values: Mapping[str, Any], stock: StockList, parts: Wishes = NO_WISHES) -> Spec:
    """The spec of the given values and wishes, checked so far that it builds.  Raises SpecError with every finding."""
    unknown = tuple(checks_parts.kind_findings(parts))
    try:
        spec = make_spec(values, stock, parts)
    except SpecError as error:
        raise SpecError((*error.findings, *unknown)) from None
    findings = (*unknown, *_measured(values, spec, stock), *_offcuts(spec, stock), *_prices(spec, stock), *check(spec))
    findings = findings or tuple(checks_parts.stock_findings(spec, stock))
    if findings:
        raise SpecError(findings)
    return spec


def _prices(spec: Spec, stock: StockList) -> Iterator[Finding]:
    """Prices that cannot be read, or are for what the list does not have."""
    try:
        told = read_prices(spec.prices)
    except PriceError as error:
        yield Finding("prices", "prices", error.value, error.limit, error.cure)
        return
    known = [item.name for item in stock.items]
    for name in told:
        if name not in known:
            yield Finding("prices", "prices", say("“{name}”", name=name), say("it is no item of the stock list"),
                          say("Choose one of: {names}.", names=", ".join(known)))


def _offcuts(spec: Spec, stock: StockList) -> Iterator[Finding]:
    """Offcuts in the shop that cannot be read, or are of no stick of the list."""
    try:
        own = read_offcuts(spec.shop_offcuts)
    except OffcutError as error:
        yield Finding("offcuts", "shop_offcuts", error.value, error.limit, error.cure)
        return
    sticks = {item.name for item in stock.items if item.form not in ("sheet", "mesh")}
    for name in own:
        if name not in sticks:
            yield Finding("offcuts", "shop_offcuts", say("“{name}”", name=name), say("it is no stick of the stock list"),
                          say("Choose one of: {names}.", names=", ".join(sorted(sticks))))


def _measured(values: Mapping[str, Any], spec: Spec, stock: StockList) -> Iterator[Finding]:
    """Sizes as measured that no planing and no drying makes of the stock's own."""
    for use in USES:
        item = spec.values[use]
        listed = next((each for each in stock.items if each.name == item.name), None)
        if listed is None or isinstance(values.get(use), Stock):
            continue
        for what, real, own in ((THICKNESS, item.thickness, listed.thickness), (WIDTH, item.width, listed.width)):
            if abs(real - own) > MEASURED_SHARE * own:
                yield Finding("as measured", measured_name(use, what), length_text(real),
                              say("the stock list has {own} for “{name}”, and what differs by more than "
                                  "{share:g} % is another stock", own=length_text(own), name=listed.name,
                                  share=100.0 * MEASURED_SHARE), _meant(use, item, listed, stock))


def _meant(use: str, item: Stock, listed: Stock, stock: StockList) -> str:
    """The cure: the listed stock whose sizes come nearest to what was measured, if that is another one."""
    near = min((each for each in stock.items if each.form == listed.form),
               key=lambda each: abs(each.thickness - item.thickness) + abs(each.width - item.width))
    other = say("another") if near is listed else say("“{name}”", name=near.name)
    return say("Choose {other} as {stock}, or measure again.", other=other, stock=say(BY_NAME[use].label))


@lru_cache(maxsize=64)
def check(spec: Spec) -> tuple[Finding, ...]:
    """Every reason why the spec cannot be built; () for one that can."""
    size = tuple(_width(spec)) or tuple(checks_roof.readings_findings(spec))
    if size:
        return size
    at = sizes(spec)
    tests: tuple[Callable[[Spec, Sizes], Iterator[Finding]], ...] = (
        _plan, _frame, _seat, _opening, _soles, _cladding, row_findings, *checks_roof.CHECKS, *checks_louver.CHECKS,
        *checks_cap.CHECKS)
    findings = tuple(finding for test in tests for finding in test(spec, at))
    return findings or tuple(_blanks(spec))


def _width(spec: Spec) -> Iterator[Finding]:
    width, row = width_of(spec), BY_NAME["width"]
    assert row.low is not None and row.high is not None
    if not width:
        yield Finding("width", "width", "0", say("no ridge length is given to size the vent by"),
                      say("Give the width, or the ridge length."))
    elif not row.low <= width <= row.high:
        yield Finding("width", "width", length_text(width), say("by the width rule from the ridge; it must be between "
                                                                "{low} and {high}", low=length_text(row.low),
                                                                high=length_text(row.high)),
                      say("Give the width, or another number of vents."))
    elif spec.length and max(width, spec.length) > LONGEST_RATIO * min(width, spec.length) + 1e-6:
        yield Finding("length", "length", length_text(spec.length),
                      say("the longer of length and width may be twice the other, here {least} to {most}",
                          least=length_text(width / LONGEST_RATIO), most=length_text(LONGEST_RATIO * width)),
                      say("Make it more nearly square."))


def _frame(spec: Spec, at: Sizes) -> Iterator[Finding]:
    base = at.base
    if base.post_face > base.frame_w:
        yield Finding("post face", "post_face", length_text(base.post_face),
                      say("it cannot be wider than the frame stock, {frame_w}", frame_w=most_text(base.frame_w)),
                      say("Choose wider frame stock, or a narrower post face."))
    if base.post_face < base.frame_t + 20.0:
        yield Finding("post face", "post_face", length_text(base.post_face),
                      say("the eave-side plank is narrower by the frame's thickness {frame_t} and needs 20 mm",
                          frame_t=length_text(base.frame_t)),
                      say("Set it to {least} or more.", least=least_text(base.frame_t + 20.0)))


def _plan(spec: Spec, at: Sizes) -> Iterator[Finding]:
    base = at.base
    if spec.sides not in (4, 6, 8):
        yield Finding("sides", "sides", str(spec.sides), say("a plan has 4, 6 or 8 sides"), say("Choose one of these."))
    if spec.sides != 4 and at.plan.rectangle:
        yield Finding("rectangle", "length", length_text(spec.length),
                      say("only a plan of 4 sides can be a rectangle, and this has {sides}", sides=spec.sides),
                      say("Set it to 0, or take 4 sides."))
    half = min(at.plan.half(side, base.frame_r + base.cladding_t + base.corner_t) for side in (0, 1))
    if base.corner_face > half - 5.0:
        yield Finding("corner board", "corner_board_face", length_text(base.corner_face),
                      say("the boards of both corners would meet in the middle of a side {side} long",
                          side=length_text(2.0 * half)), say("Set it to {most} or less.", most=most_text(half - 5.0)))


def _seat(spec: Spec, at: Sizes) -> Iterator[Finding]:
    """The ridge passes between the legs of a square plan, and every leg reaches from the roof to its rail."""
    base = at.base
    opening = at.opening(0)
    astride = at.plan.sides == 4 and not at.plan.turned and not at.roof.single
    most = max(0.0, opening - 30.0 if astride else base.frame_r / 2.0)
    if abs(spec.ridge_offset) > most and not at.roof.single:
        yield Finding("ridge", "ridge_offset", length_text(spec.ridge_offset),
                      say("the ridge must pass between the legs, {most} from the axis at most", most=most_text(most)),
                      say("Move the vent nearer to the ridge, make it wider, or seat it on one slope."))
        return
    highest = max(_highest(spec, at, side, end) for side in range(at.plan.sides) for end in ENDS)
    leg = base.top - base.frame_w - highest
    if leg < LEAST_LEG:
        yield Finding("leg", "base_height", length_text(base.top),
                      say("a leg has only {leg} below its rail and needs {least_leg}", leg=length_text(max(0.0, leg)),
                          least_leg=length_text(LEAST_LEG)),
                      say("Raise it to {least} or more.", least=length_text(math.ceil(base.top + LEAST_LEG - leg))))
    inner = opening - abs(spec.ridge_offset)
    if astride and 0.0 < spec.ridge_cap_height < LEAST_CAP:
        yield Finding("ridge cap", "ridge_cap_height", f"{spec.ridge_cap_height:g} mm",
                      say("a relief over so low a cap cannot be sawn; it is {least_cap} deep at least",
                          least_cap=length_text(LEAST_CAP)),
                      say("Set it to 0 for no relief, or to {least_cap} or more.", least_cap=length_text(LEAST_CAP)))
    if astride and spec.ridge_cap_height and spec.ridge_cap_width / 2.0 > inner:
        yield Finding("ridge cap", "ridge_cap_width", length_text(spec.ridge_cap_width),
                      say("the cap would lie under the legs, which stand {inner} from the ridge", inner=length_text(inner)),
                      say("Take the cap away under the vent and set its height to 0, or make the vent wider."))


def _highest(spec: Spec, at: Sizes, side: int, end: int) -> float:
    """The highest point of the seat under a leg (mm)."""
    base, plan = at.base, at.plan
    ys = [plan.point(side, r, end * along, 0.0)[1] for r in (base.inner_r, base.frame_r)
          for along in (at.opening(side), plan.half(side, r))]
    if not at.roof.single and min(ys) < at.roof.ridge < max(ys):
        ys.append(at.roof.ridge)
    return max(checks_roof.seat_height(spec, at, y) for y in ys)


def _opening(spec: Spec, at: Sizes) -> Iterator[Finding]:
    """The opening in the roof, inside the legs, has some width."""
    most = min(opening_halves(at, 0.0))
    if spec.opening_margin > most - LEAST_OPENING / 2.0:
        yield Finding("opening", "opening_margin", length_text(spec.opening_margin),
                      say("the legs leave {clear} between them, and the opening in the roof must be {least_opening} wide",
                          clear=length_text(2.0 * most), least_opening=length_text(LEAST_OPENING)),
                      say("Make the margin smaller, or the vent wider."))


def _soles(spec: Spec, at: Sizes) -> Iterator[Finding]:
    base = at.base
    steeper, value = checks_roof.steeper_field(spec, at)
    steepest = math.radians(max(at.roof.left, at.roof.right))
    left = base.frame_w - base.frame_t * math.tan(steepest)
    if left < 20.0:
        yield Finding("sole", steeper, value, say("a sole on the eave side keeps only {left} of its width on so steep a "
                                                  "roof and needs 20 mm", left=length_text(max(0.0, left))),
                      say("Choose wider frame stock."))
    depth = spec.ridge_cap_height + spec.seat_depth
    if spec.ridge_cap_height and depth > base.frame_w / 2.0:
        yield Finding("sole", "ridge_cap_height", length_text(spec.ridge_cap_height),
                      say("with the seat depth it takes {depth} of a sole, more than half its width",
                          depth=length_text(depth)), say("Take the cap away under the vent and set its height to 0, or "
                                                         "choose wider frame stock."))
    top = sole_top(spec)
    rail_under = base.top - base.frame_w
    if rail_under < top + SOLE_ROOM:
        yield Finding("sole", "base_height", length_text(base.top),
                      say("the soles reach {top} above the ridge and would meet the top rail at {rail_under}",
                          top=length_text(top), rail_under=length_text(rail_under)),
                      say("Raise it to {least} or more.", least=length_text(math.ceil(top + SOLE_ROOM + base.frame_w))))
    low = spec.bottom_rail_height
    if low and not top <= low <= rail_under - base.frame_w:
        yield Finding("bottom rail", "bottom_rail_height", length_text(low),
                      say("it must lie between the soles and the top rail, {top} to {rail_under}", top=least_text(top),
                          rail_under=most_text(rail_under - base.frame_w)) if top < rail_under - base.frame_w else
                      say("there is no room for it between the soles and the top rail"),
                      say("Set it to 0 for none, or raise the base."))


def _cladding(spec: Spec, at: Sizes) -> Iterator[Finding]:
    base = at.base
    form = spec.cladding_stock.form
    if (spec.cladding == "boards") != (form == "board"):
        yield Finding("cladding", "cladding_stock", say("“{name}”", name=spec.cladding_stock.name),
                      say("it is a {form}, and the cladding is to be {cladding}", form=say(form),
                          cladding=say(spec.cladding)),
                      say("Choose the other cladding, or other stock."))
    face, wide = base.corner_face, spec.corner_board_stock.width
    if face > wide:
        yield Finding("corner board", "corner_board_face", length_text(face),
                      say("it cannot be wider than its stock, {wide}", wide=most_text(wide)),
                      say("Choose wider corner board stock, or a narrower face."))
    if face < base.corner_t + 20.0:
        yield Finding("corner board", "corner_board_face", length_text(face),
                      say("the eave-side board is narrower by its thickness and needs 20 mm"),
                      say("Set it to {least} or more.", least=least_text(base.corner_t + 20.0)))


def _blanks(spec: Spec) -> Iterator[Finding]:
    """Blanks that the stock sold cannot give."""
    for part in layout(spec).parts:
        size, stock = part.board.size, part.stock
        for given, most, what in ((size[0], max(stock.lengths), say("long")), (size[1], stock.width, say("wide")),
                                  (size[2], stock.thickness, say("thick"))):
            if given > most + 1e-6:
                cure = (say("Join it on a rafter or choose a smaller vent or a larger sheet.") if stock.form == "sheet" else
                        say("Choose other stock or a smaller vent."))
                own = spec.wish(part.kind).stock_name == stock.name
                yield Finding("blank", field_of(part.kind.id, STOCK) if own else part.kind.stock,
                              say("“{name}”", name=stock.name),
                              say("{mark} ({name}) must be {given} {what}, and it is sold {most} {what}", mark=part.mark,
                                  name=part.name, given=length_text(given), what=what, most=length_text(most)), cure)
