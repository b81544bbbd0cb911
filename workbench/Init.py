# SPDX-License-Identifier: LGPL-2.1-or-later
"""Run by FreeCAD at its start, with and without a window: has vents revived that a FreeCAD without this add-on has saved."""

from louverwright.features.revival import start

start()
