# SPDX-License-Identifier: LGPL-2.1-or-later
"""Gives objects their view providers as they are made or reopened.  Light: FreeCAD imports it at its start."""

from __future__ import annotations

import FreeCAD

from ..features.hooks import listen

GROUP_EXTENSION = "Gui::ViewProviderGeoFeatureGroupExtensionPython"


def start() -> None:
    """From now on every vent that is made, or reopened without its views, is given them."""
    listen(attach)


def attach(obj: FreeCAD.DocumentObject) -> None:
    """The view of one of our objects, unless it has one already (or FreeCAD runs without a window).

    A view of an older document is given the properties that it lacks.
    """
    view = getattr(obj, "ViewObject", None)
    if view is None or not hasattr(view, "Proxy"):
        return
    from . import providers

    provider = providers.provider_for(obj)
    if provider is None:
        return
    provider.ensure(view)
    if isinstance(view.Proxy, provider):
        return
    if provider.is_group and not view.hasExtension(GROUP_EXTENSION):
        view.addExtension(GROUP_EXTENSION)
    view.Proxy = provider()
    provider.dress(view)
