# SPDX-License-Identifier: LGPL-2.1-or-later
"""Colours that tell parts apart, for colour-blind eyes as well: by what a part is cut from, or by its kind.

``tests/core/test_colours.py`` measures how far apart they are.  Knows no FreeCAD.
"""

from __future__ import annotations

from dataclasses import dataclass

from ..core.kinds import BY_ID, KINDS

BY_STOCK, BY_KIND = "stock", "kind of part"
#: What parts can be coloured by; the first is the usual.
WAYS = (BY_STOCK, BY_KIND)


@dataclass(frozen=True)
class Look:
    """A colour (red, green, blue, 0 to 1) and a transparency in percent."""

    colour: tuple[float, float, float]
    transparency: int = 0


FRAME = Look((0.71, 0.62, 0.43))
RAFTER = Look((0.53, 0.38, 0.11))
BOARD = Look((0.94, 0.90, 0.72))
SLAT = Look((0.93, 0.65, 0.30))
STILE = Look((0.57, 0.65, 0.61))
CLADDING = Look((0.58, 0.24, 0.26))
SHEATHING = Look((0.29, 0.28, 0.39))
SCREEN = Look((0.37, 0.59, 0.75), 55)
STOCK_LOOKS = (FRAME, RAFTER, BOARD, SLAT, STILE, CLADDING, SHEATHING, SCREEN)

#: By the stock parameter that a kind is cut from.
_BY_STOCK = {"frame_stock": FRAME, "plate_stock": FRAME, "rafter_stock": RAFTER, "ridge_stock": RAFTER,
             "king_post_stock": RAFTER, "cladding_stock": CLADDING, "corner_board_stock": BOARD, "slat_stock": SLAT,
             "stile_stock": STILE, "ring_stock": BOARD, "trim_stock": BOARD, "sheathing_stock": SHEATHING,
             "soffit_stock": BOARD, "fascia_stock": BOARD, "screen_stock": SCREEN, "batten_stock": SLAT}

#: Given to the kinds in turn, in their order: those that follow each other are told apart best.
_IN_TURN = ((0.97, 0.80, 0.21), (0.10, 0.24, 0.49), (0.81, 0.97, 0.64), (0.39, 0.09, 0.16), (0.39, 0.62, 0.96),
            (0.48, 0.42, 0.08), (0.91, 0.44, 0.59))
_PLACE = {kind.id: place for place, kind in enumerate(KINDS)}

#: Colours of documents from before there was a choice: they were never the user's own.
_EARLIER = ((0.76, 0.60, 0.38), (0.87, 0.77, 0.58), (0.82, 0.70, 0.49), (0.66, 0.36, 0.29), (0.62, 0.56, 0.48),
            (0.42, 0.47, 0.52))
#: FreeCAD keeps a colour in steps of 1/255.
_STEP = 1.0 / 255.0


def look_of(kind_id: str, way: str = BY_STOCK) -> Look:
    """How a kind of part looks when parts are coloured by ``way``, one of ``WAYS``."""
    by_stock = _BY_STOCK[BY_ID[kind_id].stock]
    if way == BY_STOCK:
        return by_stock
    return Look(_IN_TURN[_PLACE[kind_id] % len(_IN_TURN)], by_stock.transparency)


def is_ours(kind_id: str, colour: tuple[float, ...]) -> bool:
    """Whether a part of this kind may have been given this colour (0 to 1) by us; else the user chose it."""
    known = (*(look_of(kind_id, way).colour for way in WAYS), *_EARLIER)
    return any(all(abs(a - b) <= _STEP for a, b in zip(colour, each, strict=True)) for each in known)
