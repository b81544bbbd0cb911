# SPDX-License-Identifier: LGPL-2.1-or-later
"""Louverwright: design louvered roof vents for barns.

Rooms: core (pure geometry and rules), report, features, exchange, view, panels, commands.
Doors open one way only: core <- report <- exchange, core <- features <- exchange, and so on up to commands.
"""

__version__ = "0.1.0"
