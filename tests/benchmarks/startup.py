# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the add-on adds to FreeCAD's start: the window is started with it and without it, in turn.

    xvfb-run -a python3 tests/benchmarks/startup.py [--runs 9]

Both profiles start in FreeCAD's own Part workbench, so that the add-on is only registered, as on a day without vents.
Prints the medians (ms) and their difference, and what of the add-on and of Qt's and numpy's modules had been loaded.
"""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from statistics import median

TESTS = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(TESTS))

from make_profile import make_profile  # noqa: E402

#: Runs once the window's event loop runs, and ends the program.
SCRIPT = """
import os, sys
from PySide import QtCore
def end():
    names = [n for n in sys.modules if n.split(".")[0] in ("louverwright", "numpy")]
    open(os.environ["LOADED"], "w").write("\\n".join(sorted(names)))
    os._exit(0)
QtCore.QTimer.singleShot(0, end)
"""


def started(profile: Path, script: Path, loaded: Path) -> float:
    """Seconds from the program's start until its window's event loop runs."""
    environment = {**os.environ, "FREECAD_USER_HOME": str(profile), "LOADED": str(loaded), "QTWEBENGINE_DISABLE_SANDBOX": "1"}
    begun = time.perf_counter()
    subprocess.run(["freecad", str(script)], env=environment, check=True, capture_output=True, timeout=60)
    return time.perf_counter() - begun


def main() -> int:
    """Reads the command line, runs and prints."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--runs", type=int, default=9, help="starts of each kind")
    parser.add_argument("--json", type=Path)
    options = parser.parse_args()
    runs = options.runs
    with tempfile.TemporaryDirectory() as folder:
        work = Path(folder)
        script, loaded = work / "start.py", work / "loaded"
        script.write_text(SCRIPT, encoding="utf-8")
        with_it, without = (make_profile(work / name) for name in ("with", "without"))
        (without / "Mod" / "Louverwright").unlink()
        for profile in (with_it, without):
            settings = profile / "user.cfg"
            settings.write_text(settings.read_text(encoding="utf-8").replace("LouverwrightWorkbench", "PartWorkbench"),
                                encoding="utf-8")
            started(profile, script, loaded)    # the first start of a profile writes caches
        times: dict[Path, list[float]] = {with_it: [], without: []}
        for _ in range(runs):
            for profile, found in times.items():
                found.append(started(profile, script, loaded))
        started(with_it, script, loaded)
        both = median(times[with_it]) * 1e3, median(times[without]) * 1e3
        print(f"start with the add-on {both[0]:.0f} ms, without {both[1]:.0f} ms, difference {both[0] - both[1]:.0f} ms "
              f"(medians of {runs})")
        if options.json:
            record = {"with": both[0], "without": both[1], "difference": both[0] - both[1]}
            options.json.write_text(json.dumps(record) + "\n", encoding="utf-8")
        print("loaded:", ", ".join(loaded.read_text(encoding="utf-8").split()))
    return 0


if __name__ == "__main__":
    sys.exit(main())
