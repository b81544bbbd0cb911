# SPDX-License-Identifier: LGPL-2.1-or-later
"""What may be wished for one kind of part alone: another stock, a note on paper, or that it is left out."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from types import MappingProxyType

from .kinds import BY_ID, spoken
from .saying import say
from .stock import Stock, same_section

#: A wish's fields, as scenario files and findings name them.
STOCK, NOTE, LEFT_OUT = "stock", "note", "left_out"


@dataclass(frozen=True)
class PartWish:
    """The wish for a kind: its own stock ('' for the vent's), a note, and whether it is not made here.

    The stock is a name in the vent's stock list, or the item itself; in a ``Spec`` it is the item, and a name only where the
    list has no such item.
    """

    stock: Stock | str = ""
    note: str = ""
    left_out: bool = False

    @property
    def stock_name(self) -> str:
        """The name of the kind's own stock; '' for the vent's."""
        return self.stock.name if isinstance(self.stock, Stock) else self.stock


NO_WISH = PartWish()
#: Wishes by the kinds' ids.
Wishes = Mapping[str, PartWish]
NO_WISHES: Wishes = MappingProxyType({})


def found_in(wishes: Wishes, items: tuple[Stock, ...]) -> Wishes:
    """The wishes with items for the names of stock, as far as there are such; those that wish for nothing are dropped."""
    known = {item.name: item for item in items}
    found = {kind: replace(wish, stock=known.get(wish.stock, wish.stock) if isinstance(wish.stock, str) else wish.stock)
             for kind, wish in wishes.items() if wish != NO_WISH}
    return MappingProxyType(found)


def measured_alike(wishes: Wishes, before: Mapping[str, Stock], after: Mapping[str, Stock]) -> Wishes:
    """The wishes with own stock as thick and wide as the vent's was measured, where it has the section of that before.

    ``before`` and ``after`` are the vent's items by its stock parameters.  The moisture that was measured is that of the
    vent's own stock; another keeps its list's.
    """
    return MappingProxyType({kind: _measured(wish, before[BY_ID[kind].stock], after[BY_ID[kind].stock])
                             if kind in BY_ID and BY_ID[kind].stock in after else wish for kind, wish in wishes.items()})


def _measured(wish: PartWish, before: Stock, after: Stock) -> PartWish:
    if not isinstance(wish.stock, Stock) or not same_section(wish.stock, before):
        return wish
    return replace(wish, stock=replace(wish.stock, thickness=after.thickness, width=after.width))


def field_of(kind_id: str, what: str) -> str:
    """The field of a finding about a wish: 'parts.base.leg.gable.stock'."""
    return f"parts.{kind_id}.{what}" if what else f"parts.{kind_id}"


def field_words(field: str) -> str:
    """A wish's field as the user reads it: 'Own stock of B1 (Leg, gable side)'; '' for another field."""
    if not field.startswith("parts."):
        return ""
    kind = BY_ID.get(field.removeprefix("parts.").removesuffix(f".{STOCK}").removesuffix(f".{NOTE}"))
    if kind is None:
        return say("Part")
    if field.endswith(f".{NOTE}"):
        return say("Note of {mark} ({name})", mark=kind.mark, name=spoken(kind.name))
    return say("Own stock of {mark} ({name})", mark=kind.mark, name=spoken(kind.name))
