"""These tests need FreeCAD: its console (run_host.py), or the Python that Debian's FreeCAD is built for.

In that plain Python FreeCAD is loaded here, with a profile of its own in which the add-on is installed.
"""

from __future__ import annotations

import atexit
import os
import shutil
import sys
import tempfile
from pathlib import Path

import pytest

LIBRARY = Path("/usr/lib/freecad/lib")
SHARED = Path("/usr/share/freecad")


def load_freecad() -> None:
    sys.path.append(str(Path(__file__).resolve().parent.parent))
    from make_profile import make_profile

    home = Path(tempfile.mkdtemp(prefix="louverwright-profile-"))
    atexit.register(shutil.rmtree, home)
    os.environ["FREECAD_USER_HOME"] = str(make_profile(home))
    # The PySide shim, and the modules without which Part.makeCompound crashes; PartDesign is found in the folder of all.
    sys.path += [str(LIBRARY), str(SHARED / "Ext"), *map(str, sorted((SHARED / "Mod").iterdir())), str(SHARED / "Mod")]
    import FreeCAD  # noqa: F401


if "FreeCAD" not in sys.modules:
    load_freecad()


@pytest.fixture
def document():
    """An empty document with undo; every document is closed afterwards."""
    import FreeCAD

    found = FreeCAD.newDocument("Barn")
    found.UndoMode = 1
    yield found
    for name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)


@pytest.fixture
def roof(document):
    """A thick roof of two slopes, somewhere and turned."""
    from roofs import TURNED, feature, roof_shape

    found = feature(document, roof_shape(), place=TURNED)
    document.recompute()
    return found
