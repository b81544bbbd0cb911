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
