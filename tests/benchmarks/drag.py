# SPDX-License-Identifier: LGPL-2.1-or-later
"""How many pictures a second follow a hand that drags a value in the panel, in the real window.

    xvfb-run -a -s "-screen 0 1600x1000x24" python3 tests/benchmarks/drag.py [--steps 60] [--json FILE]

Each step puts a new value in the panel's field and waits until the 3D view has drawn the new picture.  Prints the median
and the 95th percentile (ms) for each value dragged.
"""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
import tempfile
from pathlib import Path
from re import sub
from statistics import median

TESTS = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(TESTS))

from make_profile import make_profile  # noqa: E402

#: Fields by their names, with the value to begin from and the step of the hand (mm, degrees).
DRAGGED = {"Width": (900.0, 1.0), "SlatAngle": (40.0, 0.1), "RoofPitch": (30.0, 0.1), "Overhang": (120.0, 0.5)}
#: Pictures a second that are asked for.
ASKED = 20.0

#: Runs in the window once its event loop runs, and ends the program.
SCRIPT = """
import json, os, sys, time
import FreeCAD, FreeCADGui
from pivy import coin
from PySide import QtCore, QtGui

DRAGGED, STEPS, FOUND = json.loads(os.environ["DRAGGED"]), int(os.environ["STEPS"]), os.environ["FOUND"]

def pump(until, limit=5.0):
    end = time.perf_counter() + limit
    while not until():
        QtGui.QApplication.processEvents(QtCore.QEventLoop.AllEvents, 20)
        assert time.perf_counter() < end, "no picture came"

def wait(seconds):
    end = time.perf_counter() + seconds
    pump(lambda: time.perf_counter() > end, seconds + 1.0)

def measure():
    FreeCADGui.activateWorkbench("LouverwrightWorkbench")
    FreeCAD.newDocument("Barn")
    FreeCADGui.activeView().viewIsometric()
    FreeCADGui.runCommand("Louverwright_NewVent")
    wait(1.0)
    from louverwright.panels import vent_panel
    import gc
    (panel,) = [each for each in gc.get_objects() if isinstance(each, vent_panel.VentPanel)]
    FreeCADGui.SendMsgToActiveView("ViewFit")
    drawn, shown = [], []
    node = coin.SoCallback()
    picture = coin.SoGLRenderAction.getClassTypeId()
    node.setCallback(lambda _, action: drawn.append(1) if action.isOfType(picture) else None, None)
    FreeCADGui.activeView().getSceneGraph().addChild(node)
    draw = panel.draw
    def told():
        draw()
        shown.append(len(drawn))
    panel.drawing.action = told
    wait(1.0)
    times = {}
    for name, (start, step) in DRAGGED.items():
        (field, *_) = panel.fields[name]
        times[name] = []
        for number in range(STEPS + 5):
            before = len(shown)
            begun = time.perf_counter()
            panel.put(name, start + number * step, None)
            pump(lambda: len(shown) > before and len(drawn) > shown[-1])
            times[name].append(1000.0 * (time.perf_counter() - begun))
        times[name] = times[name][5:]
        panel.put(name, start, None)
        wait(0.6)
    json.dump(times, open(FOUND, "w"))

def run():
    try:
        measure()
    except BaseException:
        import traceback
        traceback.print_exc()
    finally:
        sys.stderr.flush()
        os._exit(0)

QtCore.QTimer.singleShot(500, run)
"""


def dragged(steps: int) -> dict[str, list[float]]:
    """Times of all pictures (ms), by the field that was dragged."""
    with tempfile.TemporaryDirectory() as folder:
        work = Path(folder)
        script, found = work / "drag.py", work / "found.json"
        script.write_text(SCRIPT, encoding="utf-8")
        profile = make_profile(work / "profile")
        names = {sub(r"(?<!^)(?=[A-Z])", "_", name).lower(): value for name, value in DRAGGED.items()}
        environment = {**os.environ, "FREECAD_USER_HOME": str(profile), "DRAGGED": json.dumps(names), "STEPS": str(steps),
                       "FOUND": str(found), "QTWEBENGINE_DISABLE_SANDBOX": "1"}
        done = subprocess.run(["freecad", str(script)], env=environment, check=True, capture_output=True, timeout=300,
                              text=True)
        assert found.exists(), done.stderr[-2000:] + done.stdout[-2000:]
        times: dict[str, list[float]] = json.loads(found.read_text(encoding="utf-8"))
        return times


def main() -> int:
    """Reads the command line, runs and prints."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--steps", type=int, default=60)
    parser.add_argument("--json", type=Path)
    options = parser.parse_args()
    record = {}
    for name, times in dragged(options.steps).items():
        slow = sorted(times)[int(0.95 * len(times))]
        record[name] = {"median": median(times), "p95": slow}
        print(f"{name:16s} median {median(times):6.1f} ms, p95 {slow:6.1f} ms: {1000.0 / median(times):5.1f} pictures a "
              f"second, asked {ASKED:.0f}")
    if options.json:
        options.json.write_text(json.dumps(record, indent=1) + "\n", encoding="utf-8")
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
