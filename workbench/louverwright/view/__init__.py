# SPDX-License-Identifier: LGPL-2.1-or-later
"""How vents look in FreeCAD's window: view providers, icons, colours.  Never geometry.

Imports core, features and exchange below it; panels and commands import it.
"""
