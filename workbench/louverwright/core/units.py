# SPDX-License-Identifier: LGPL-2.1-or-later
"""Lengths, angles, areas and weights as people write them.

Inside the program a length is millimetres, an angle degrees, an area square millimetres and a weight
kilograms. `units_read` turns a user's text into those, `units_write` turns them back into text; this
module is the one door to both.
"""

from .units_read import (
    ReadError,
    parse_angle,
    parse_area,
    parse_count,
    parse_length,
    parse_number,
    parse_weight,
    parse_yes_no,
)
from .units_write import (
    LengthStyle,
    format_angle,
    format_area,
    format_length,
    format_pitch,
    format_size,
    format_weight,
    rounded,
)

__all__ = [
    "LengthStyle",
    "ReadError",
    "format_angle",
    "format_area",
    "format_length",
    "format_pitch",
    "format_size",
    "format_weight",
    "parse_angle",
    "parse_area",
    "parse_count",
    "parse_length",
    "parse_number",
    "parse_weight",
    "parse_yes_no",
    "rounded",
]
