"""What FreeCAD's start costs: nothing heavy is loaded before a vent is wanted."""

from __future__ import annotations

import subprocess
from pathlib import Path

import pytest

WORKBENCH = Path(__file__).resolve().parents[2] / "workbench"
PYTHON = Path("/usr/bin/python3")

# In a Python of its own: in this one all is loaded already. FreeCAD is made of paper.
SCRIPT = """
import sys, types
sys.path.insert(0, sys.argv[1])
told = []
app, gui = types.ModuleType("FreeCAD"), types.ModuleType("FreeCADGui")
app.Qt = types.SimpleNamespace(translate=lambda context, text: text)
app.DocumentObject = app.Document = object
app.addDocumentObserver = lambda observer: None
gui.Workbench = object
gui.addWorkbench = lambda bench: print(bench.MenuText)
gui.addIconPath = lambda path: None
gui.addLanguagePath = lambda path: told.append(path)
gui.updateLocale = lambda: told.append("updateLocale")
gui.addPreferencePage = lambda page, group: None
gui.addCommand = lambda name, command: command.GetResources()
sys.modules.update(FreeCAD=app, FreeCADGui=gui)
for name in ("Init.py", "InitGui.py"):
    code = compile(open(sys.argv[1] + "/" + name, encoding="utf-8").read(), name, "exec")
    exec(code, {"__name__": "start"}, {})
print(*told)
print(*sorted(name for name in sys.modules if name.split(".")[0] in ("numpy", "Part", "PySide", "louverwright")))
"""


@pytest.mark.skipif(not PYTHON.exists(), reason="there is no /usr/bin/python3")
def test_starting_loads_neither_numpy_nor_the_geometry() -> None:
    done = subprocess.run([str(PYTHON), "-B", "-c", SCRIPT, str(WORKBENCH)], check=True, capture_output=True, text=True)
    menu, languages, loaded = done.stdout.splitlines()
    assert menu == "Louverwright"
    path, then = languages.split()    # the translations are there before anything is named
    assert sorted(each.name for each in Path(path).glob("*.qm")) == ["Louverwright_de.qm", "Louverwright_fr.qm"]
    assert then == "updateLocale"
    names = loaded.split()
    assert "louverwright.view.attach" in names
    assert "louverwright.commands.register" in names    # the commands are there in every workbench
    heavy = [name for name in names if name.split(".")[0] != "louverwright"
             or name.startswith(("louverwright.core.layout", "louverwright.report", "louverwright.exchange",
                                 "louverwright.panels.v", "louverwright.panels.f", "louverwright.features.vent"))]
    heavy += [name for name in names if name.startswith("louverwright.commands.") and not name.endswith(".register")]
    assert heavy == []
