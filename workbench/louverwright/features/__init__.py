# SPDX-License-Identifier: LGPL-2.1-or-later
"""FreeCAD documents: the vent's objects, their properties, and the solids of its parts.

Imports core, FreeCAD and Part; never FreeCADGui, never Qt.  All that lasts is a document property: the
proxies hold no state.
"""
