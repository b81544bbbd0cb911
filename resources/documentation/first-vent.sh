#!/usr/bin/env bash
# first-vent.sh: makes the pictures of first-vent.md anew, by walking through its steps in the real window
# (tests/gui/test_first_vent_gui.py) and keeping what is on the screen, and a page of the paper that comes out.
set -euo pipefail
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
. "$here/../../tests/lib.sh"
need_packages freecad python3-pytest python3-hypothesis python3-jsonschema xvfb xauth poppler-utils fonts-dejavu-core

work=$(mktemp -d "${TMPDIR:-/tmp}/louverwright-pictures-XXXXXX")
trap 'rm -rf "$work"' EXIT
say "walking through the first vent in FreeCAD's window"
mkdir -p "$work/shots"
PYTEST_ARGS="-k first_vent --basetemp=$work/shots/papers" bash "$here/../../tests/versions.sh" --here "$work" 170 gui
tail -n 3 "$work/gui.log"
[ "$(cat "$work/gui.status")" -eq 0 ] || { tail -n 60 "$work/gui.log"; exit 1; }

say "the paper that came out, its first page and one part"
report=$(find "$work/shots" -name report.pdf | head -n 1)
pdftoppm -r 70 -png -f 1 -l 1 -singlefile "$report" "$work/shots/first_9_paper"

say "making them smaller: $here"
/usr/bin/python3 - "$work/shots" "$here" <<'PYTHON'
import os
import sys
from pathlib import Path

os.environ["QT_QPA_PLATFORM"] = "offscreen"
sys.path.append("/usr/share/freecad/Ext")
from PySide import QtCore, QtGui

application = QtGui.QGuiApplication([])
for path in sorted(Path(sys.argv[1]).glob("first_*.png")):
    picture = QtGui.QImage(str(path))
    if picture.width() > 1000:
        picture = picture.scaledToWidth(1000, QtCore.Qt.SmoothTransformation)
    target = Path(sys.argv[2]) / path.name
    picture.convertToFormat(QtGui.QImage.Format_RGB888).save(str(target), "PNG", 0)
    print(target.name, target.stat().st_size // 1024, "kB")
PYTHON
