# SPDX-License-Identifier: LGPL-2.1-or-later
"""What the add-on adds to FreeCAD's start: the window is started with it and without it, in turn.

    xvfb-run -a python3 tests/benchmarks/startup.py [--runs 9]

Both profiles start in FreeCAD's own Part workbench, so that the add-on is only registered, as on a day without vents; its
modules are compiled, as they are from the second start on.  FreeCAD halts for 50 ms at each line that it writes on its
splash screen, and there is one for each add-on: that is measured by itself.  Prints the medians (ms) and their differences,
and what of the add-on and of Qt's and numpy's modules had been loaded.
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
    environment = {**os.environ, "FREECAD_USER_HOME": str(profile), "LOADED": str(loaded), "QTWEBENGINE_DISABLE_SANDBOX": "1",
                   "PYTHONPYCACHEPREFIX": str(profile / "compiled")}
    environment.pop("PYTHONDONTWRITEBYTECODE", None)
    begun = time.perf_counter()
    subprocess.run(["freecad", str(script)], env=environment, check=True, capture_output=True, timeout=60)
    return time.perf_counter() - begun


def profile_of(folder: Path, addon: bool, splash: bool) -> Path:
    """A profile that starts in the Part workbench."""
    profile = make_profile(folder)
    if not addon:
        (profile / "Mod" / "Louverwright").unlink()
    settings = profile / "user.cfg"
    text = settings.read_text(encoding="utf-8").replace("LouverwrightWorkbench", "PartWorkbench")
    shown = f'<FCBool Name="ShowSplasher" Value="{int(splash)}"/>'
    settings.write_text(text.replace('<FCText Name="Language">', f'{shown}<FCText Name="Language">'), encoding="utf-8")
    return profile


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
        profiles = {(splash, addon): profile_of(work / f"{splash}{addon}", addon, splash)
                    for splash in (False, True) for addon in (True, False)}
        times: dict[tuple[bool, bool], list[float]] = {kind: [] for kind in profiles}
        for profile in profiles.values():
            started(profile, script, loaded)    # the first start of a profile writes caches
        for _ in range(runs):
            for kind, profile in profiles.items():
                times[kind].append(1e3 * started(profile, script, loaded))
        started(profiles[False, True], script, loaded)
        record = {}
        for splash, words in ((False, ""), (True, ", splash screen shown")):
            both = median(times[splash, True]), median(times[splash, False])
            record[f"added to the start{words}"] = {"with": both[0], "without": both[1], "difference": both[0] - both[1]}
            print(f"start{words}: with the add-on {both[0]:.0f} ms, without {both[1]:.0f} ms, difference "
                  f"{both[0] - both[1]:.0f} ms (medians of {runs})")
        if options.json:
            options.json.write_text(json.dumps(record) + "\n", encoding="utf-8")
        print("loaded:", ", ".join(loaded.read_text(encoding="utf-8").split()))
    return 0


if __name__ == "__main__":
    sys.exit(main())
