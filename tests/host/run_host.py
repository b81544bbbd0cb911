"""``freecadcmd run_host.py``: the tests of this folder in FreeCAD's console."""

import os
import sys

sys.path.append(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))

import inside

inside.run("host")
