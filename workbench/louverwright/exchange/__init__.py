# SPDX-License-Identifier: LGPL-2.1-or-later
"""Exchange: files into and out of FreeCAD, such as drawings, templates, DXF, STEP and PDF.

May use FreeCAD, and Qt through FreeCAD's PySide shim. Imports core, report and features; view, panels and
commands may come in. Failures are exceptions whose text is a sentence for the user.
"""
