# SPDX-License-Identifier: LGPL-2.1-or-later
"""What all proxies have in common: they hold nothing, so nothing of them is saved."""

from __future__ import annotations

from typing import Any


class Proxy:
    """A proxy without state.  Older FreeCADs ask for the state by the second pair of names."""

    def dumps(self) -> Any:
        """Nothing is saved."""
        return None

    def loads(self, state: Any) -> None:
        """Nothing is read."""

    __getstate__ = dumps
    __setstate__ = loads
