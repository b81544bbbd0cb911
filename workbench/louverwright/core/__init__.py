# SPDX-License-Identifier: LGPL-2.1-or-later
"""The core: pure functions and frozen records. Standard library and numpy only.

No FreeCAD, no Qt, no files, no clock, no globals that change. Everyone may come in; core goes to nobody.
Millimetres, degrees and kilograms inside.
"""
