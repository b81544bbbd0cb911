# SPDX-License-Identifier: LGPL-2.1-or-later
"""Finding FreeCAD from an ordinary Python, so that ``python3 -m louverwright`` can use it."""

from __future__ import annotations

import importlib.util
import os
import sys
from collections.abc import Iterator
from pathlib import Path

#: Set this to the folder of FreeCAD's library (the one with FreeCAD.so) where it is not found by itself.
VARIABLE = "LOUVERWRIGHT_FREECAD"
#: Where packages put the library.
KNOWN = ("/usr/lib/freecad/lib", "/usr/lib/freecad-python3/lib", "/usr/lib64/freecad/lib", "/usr/local/lib/freecad/lib",
         "/usr/local/lib", "/opt/freecad/lib", "/Applications/FreeCAD.app/Contents/Resources/lib",
         "C:/Program Files/FreeCAD/bin")
#: The interpreter that Debian builds FreeCAD for.
SYSTEM_PYTHON = Path("/usr/bin/python3")
_TRIED = "LOUVERWRIGHT_TRIED_SYSTEM_PYTHON"


class NoFreeCAD(RuntimeError):
    """FreeCAD's library was not found or does not fit this Python; the text says what to do."""


def add_paths() -> None:
    """Puts FreeCAD's library, its PySide shim and its modules on the path, after everything else."""
    for folder in _libraries():
        share = Path("/usr/share/freecad") if str(folder).startswith("/usr/lib") else folder.parent
        modules = sorted((share / "Mod").iterdir()) if (share / "Mod").is_dir() else []
        for each in (folder, share / "Ext", *modules):
            if str(each) not in sys.path:
                sys.path.append(str(each))
        return


def _libraries() -> Iterator[Path]:
    names = [os.environ[VARIABLE]] if VARIABLE in os.environ else list(KNOWN)
    for name in names:
        folder = Path(name)
        if any((folder / f"FreeCAD.{end}").exists() for end in ("so", "pyd", "dylib")):
            yield folder


def load_freecad() -> None:
    """Imports FreeCAD and Part.  Raises NoFreeCAD with a sentence."""
    if importlib.util.find_spec("FreeCAD") is None:
        add_paths()
    try:
        import FreeCAD  # noqa: F401
        import Part  # noqa: F401
    except ImportError as error:
        raise NoFreeCAD(
            f"FreeCAD's library was not found for this Python ({sys.executable}): {error}. Install FreeCAD (on Debian: "
            f"apt install freecad), run this with the Python it is built for, or set {VARIABLE} to the folder that "
            "holds its library.") from error


def run_again_in_system_python() -> None:
    """Starts the same command in the system's Python where this one is another; returns if that is no help."""
    other = SYSTEM_PYTHON.exists() and Path(sys.executable).resolve() != SYSTEM_PYTHON.resolve()
    if not other or _TRIED in os.environ or not any(_libraries()):
        return
    os.environ[_TRIED] = "1"
    os.execv(SYSTEM_PYTHON, [str(SYSTEM_PYTHON), "-m", "louverwright", *sys.argv[1:]])
