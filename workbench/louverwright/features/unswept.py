# SPDX-License-Identifier: LGPL-2.1-or-later
"""Rest for Python's search for garbage while a vent is laid out: that makes none which needs a search, and remembers much
that would be searched through each time."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def unswept() -> Iterator[None]:
    """No search for so long; not for work that runs code of others, or waits."""
    swept = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if swept:
            gc.enable()
