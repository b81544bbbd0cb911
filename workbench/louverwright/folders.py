# SPDX-License-Identifier: LGPL-2.1-or-later
"""The add-on's folders.  Light: FreeCAD imports it at its start."""

from __future__ import annotations

from pathlib import Path

#: The add-on's folder, which holds workbench, icons and resources.
ADDON = Path(__file__).resolve().parents[2]
RESOURCES = ADDON / "resources"
ICONS = ADDON / "icons"
#: Sheets for TechDraw, by their papers' names.
TEMPLATES = RESOURCES / "templates"
#: Where FreeCAD finds our texts in other languages.
TRANSLATIONS = RESOURCES / "translations"
