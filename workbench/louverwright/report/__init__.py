# SPDX-License-Identifier: LGPL-2.1-or-later
"""The report: rows, the page model and its writers (HTML here, PDF in exchange).

Pure like the core: no FreeCAD, no Qt, no files, no clock. Imports core only; exchange, view and the rooms
above may come in. Every string is made once, in the page model, so all writers print the same.
"""
