"""What the tests of vents in documents share: what a vent is made of, what it looks like, and what it says."""

from __future__ import annotations

import FreeCAD

from louverwright.core.layout import layout
from louverwright.features.model import spec_of
from louverwright.features.vent import parts_of, stages_of

NOISE = ("Traceback", "rror", "xception", "setAttr", "blocked", "still touched", "cyclic", "scope")


def assembly_of(vent):
    """The core's assembly for the vent's properties."""
    return layout(spec_of(vent))


def everything(vent):
    """The vent with all that belongs to it."""
    return [vent, *stages_of(vent), *parts_of(vent)]


def part(vent, kind_id):
    """The object of one kind."""
    (only,) = [each for each in parts_of(vent) if each.KindId == kind_id]
    return only


def not_settled(document):
    """Names of the objects that are touched or in error."""
    return [obj.Name for obj in document.Objects if "Up-to-date" not in obj.State or "Touched" in obj.State]


def model(vent):
    """All that a vent is, to compare before and after: parameters, results, and each part's shape to a micrometre."""
    values = {name: told(getattr(vent, name)) for name in vent.PropertiesList
              if vent.getGroupOfProperty(name) not in ("Base", "", "Louverwright")}
    shapes = {each.KindId: (each.Count, each.Visibility, tuple(each.Marks), tuple(each.Pieces), measured(each.Shape))
              for each in parts_of(vent)}
    return values, shapes, measured(vent.Shape)


def told(value):
    """A property's value; numbers to the twelfth digit, which is what a file keeps."""
    if isinstance(value, FreeCAD.Units.Quantity):
        return f"{value.Value:.12g} {value.Unit.Type}"
    return f"{value:.12g}" if isinstance(value, float) else value


class Near(float):
    """A number that is equal to any other within a micrometre or a billionth of it: above all noise of floats."""

    __hash__ = None

    def __eq__(self, other):
        return abs(float(self) - float(other)) < 1e-3 + 1e-9 * abs(float(self))

    def __ne__(self, other):
        return not self == other


def measured(shape):
    """Volume and each solid's centre."""
    return Near(shape.Volume), [tuple(map(Near, solid.CenterOfMass)) for solid in shape.Solids]


def errors_in(text):
    """The lines of a log that tell of a fault."""
    return [line for line in text.splitlines() if any(word in line for word in NOISE)]


def global_centre(root, path):
    """Where FreeCAD sees the centre of a sub-shape of ``root``."""
    return root.getSubObject(path).CenterOfMass


def near(a, b, within=1e-6):
    """Whether two points are the same."""
    return FreeCAD.Vector(a).distanceToPoint(FreeCAD.Vector(b)) < within
