# SPDX-License-Identifier: LGPL-2.1-or-later
"""Run by FreeCAD at its start, with and without a window.  Nothing is needed then."""
