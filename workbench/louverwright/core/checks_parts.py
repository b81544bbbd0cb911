# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is wished for single kinds of part: that there is such a kind, and that its own stock fits the layout.

A wish for a kind that the vent does not have asks for nothing, so that it outlives a change of the vent's form.
"""

from __future__ import annotations

from collections.abc import Iterator

from .kinds import BY_ID, Kind
from .layout import layout
from .parameters import BY_NAME
from .part_wish import STOCK, Wishes, field_of
from .saying import say
from .spec import Finding, Spec, length_text
from .stock import Stock, StockList, same_section
from .texts import brief


def kind_findings(parts: Wishes) -> Iterator[Finding]:
    """Wishes for kinds that there are not."""
    for name in parts:
        if name not in BY_ID:
            yield Finding("no kind", field_of(brief(name), ""), say("“{name}”", name=brief(name)),
                          say("there is no such kind of part"), say("Choose one of: {parts}.", parts=", ".join(BY_ID)))


def stock_findings(spec: Spec, stock: StockList) -> Iterator[Finding]:
    """Own stock that the list does not have, or that does not fit; and a vent of which nothing is made."""
    assembly = layout(spec)
    for kind in dict.fromkeys(part.kind for part in assembly.whole):
        own, usual = spec.wish(kind).stock, spec.values[kind.stock]
        fitting = [item.name for item in stock.items if same_section(item, usual)]
        if isinstance(own, str) and own:
            yield Finding("no own stock", field_of(kind.id, STOCK), say("“{name}”", name=brief(own)),
                          say("the stock list “{name}” has no such item", name=stock.name), _cure(fitting))
        elif isinstance(own, Stock) and not same_section(own, usual):
            yield _unfit(kind, own, usual)
    if not assembly.parts:
        yield Finding("nothing to make", "", "", say("every part of the vent is left out"),
                      say("Make at least one of them."))


def _unfit(kind: Kind, own: Stock, usual: Stock) -> Finding:
    return Finding("own stock", field_of(kind.id, STOCK), say("“{name}”", name=own.name),
                   say("it is a {form}, {section}, and the vent is laid out from “{usual}”, a {usual_form}, {usual_section}",
                       form=say(own.form), section=_section(own), usual=usual.name, usual_form=say(usual.form),
                       usual_section=_section(usual)),
                   say("Choose stock of that form and size, or change the vent's {parameter} instead, for the layout is made "
                       "from it.", parameter=say(BY_NAME[kind.stock].label)))


def _section(item: Stock) -> str:
    return f"{length_text(item.thickness)} × {length_text(item.width)}"


def _cure(fitting: list[str]) -> str:
    if not fitting:
        return say("Take it away: the list has no stock of this part's form and size.")
    return say("Choose one of: {parts}.", parts=", ".join(fitting))
