# SPDX-License-Identifier: LGPL-2.1-or-later
"""Colours that tell apart what parts are cut from: frame, boards, sheet, sheathing, screen."""

from __future__ import annotations

from dataclasses import dataclass

from ..core.kinds import BY_ID


@dataclass(frozen=True)
class Look:
    """A colour (red, green, blue, 0 to 1) and a transparency in percent."""

    colour: tuple[float, float, float]
    transparency: int = 0


FRAME = Look((0.76, 0.60, 0.38))
BOARD = Look((0.87, 0.77, 0.58))
SLAT = Look((0.82, 0.70, 0.49))
SHEET = Look((0.66, 0.36, 0.29))
SHEATHING = Look((0.62, 0.56, 0.48))
SCREEN = Look((0.42, 0.47, 0.52), 55)

#: By the stock parameter that a kind is cut from.
_BY_STOCK = {"frame_stock": FRAME, "rafter_stock": FRAME, "ridge_stock": FRAME, "plate_stock": FRAME,
             "king_post_stock": FRAME, "cladding_stock": SHEET, "corner_board_stock": BOARD, "slat_stock": SLAT,
             "stile_stock": BOARD, "ring_stock": BOARD, "trim_stock": BOARD, "sheathing_stock": SHEATHING,
             "soffit_stock": BOARD,
             "fascia_stock": BOARD, "screen_stock": SCREEN, "batten_stock": SLAT}


def look_of(kind_id: str) -> Look:
    """How a kind of part looks."""
    return _BY_STOCK[BY_ID[kind_id].stock]
