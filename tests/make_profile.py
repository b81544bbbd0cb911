"""Makes a FreeCAD profile with this add-on installed, for FREECAD_USER_HOME: ``make_profile.py FOLDER``.

The add-on is a symbolic link in the profile's Mod folder, as a user would have it. No start page and no
dialog come up, and nothing is saved behind the tests' back.
"""

from __future__ import annotations

import sys
from pathlib import Path

ADDON = Path(__file__).resolve().parent.parent

SETTINGS = """<?xml version="1.0" encoding="UTF-8" standalone="no" ?>
<FCParameters>
  <FCParamGroup Name="Root">
    <FCParamGroup Name="BaseApp">
      <FCParamGroup Name="Preferences">
        <FCParamGroup Name="General">
          <FCText Name="AutoloadModule">LouverwrightWorkbench</FCText>
          <FCText Name="Language">English</FCText>
        </FCParamGroup>
        <FCParamGroup Name="Document">
          <FCBool Name="AutoSaveEnabled" Value="0"/>
          <FCBool Name="CreateBackupFiles" Value="0"/>
        </FCParamGroup>
      </FCParamGroup>
    </FCParamGroup>
  </FCParamGroup>
</FCParameters>
"""


def make_profile(folder: Path, addon: Path = ADDON) -> Path:
    """A profile in ``folder``, made if need be; FreeCAD ignores a FREECAD_USER_HOME that does not exist."""
    mods = folder / "Mod"
    mods.mkdir(parents=True, exist_ok=True)
    link = mods / "Louverwright"
    link.unlink(missing_ok=True)
    link.symlink_to(addon, target_is_directory=True)
    (folder / "user.cfg").write_text(SETTINGS, encoding="utf-8")
    return folder


if __name__ == "__main__":
    make_profile(Path(sys.argv[1]))
