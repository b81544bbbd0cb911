"""Runs pytest inside FreeCAD, console or GUI, and ends the process with pytest's own exit status.

FreeCAD ends with status 0 after a script that failed, and loses what is left in the buffers at sys.exit:
so everything is flushed and the process ended from here. PYTEST_ARGS may hold further arguments.
"""

from __future__ import annotations

import os
import platform
import shlex
import sys
import traceback
from pathlib import Path

TESTS = Path(__file__).resolve().parent
CRASHED = 70


def versions() -> str:
    """One line on what the tests run in."""
    import FreeCAD
    import numpy
    from PySide import QtCore

    freecad = ".".join(FreeCAD.Version()[:3]).split(" ")[0]
    return (f"FreeCAD {freecad}, Python {platform.python_version()}, numpy {numpy.__version__}, "
            f"Qt {QtCore.qVersion()}")


def run(room: str) -> None:
    """Runs tests/<room> and ends the process."""
    # In the GUI these two are the report view.
    sys.stdout, sys.stderr = sys.__stdout__, sys.__stderr__
    status = CRASHED
    try:
        print(versions(), flush=True)
        import pytest

        arguments = ["-q", "--durations=5", "-p", "no:cacheprovider", "-c", str(TESTS / "pytest.ini")]
        more = shlex.split(os.environ.get("PYTEST_ARGS", ""))
        status = int(pytest.main([*arguments, *more, str(TESTS / room)]))
    except BaseException:
        traceback.print_exc()
    finally:
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(status)
