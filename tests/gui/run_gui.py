"""``freecad run_gui.py``: the tests of this folder in the real GUI, once its event loop runs.

Always under a time limit: a script that fails before the timer is set leaves the GUI open for ever.
"""

import os
import sys

from PySide import QtCore

sys.path.append(os.path.dirname(os.path.dirname(os.path.abspath(__file__))))

import inside

QtCore.QTimer.singleShot(500, lambda: inside.run("gui"))
