"""A vent that is tied to a roof: what makes FreeCAD recompute it, and what becomes of it when the roof changes or goes.

A stand-in is used for the vent: a group like it, that sits down on its roof whenever it is recomputed, and counts that.
"""

from __future__ import annotations

from math import radians, tan

import FreeCAD
import Part
import pytest
import roofs
from FreeCAD import Placement, Rotation, Vector
from roofs import LEFT, LONG, RIGHT, TURNED, face_names, feature, roof_shape
from vents import near, not_settled

from louverwright.features.roof_link import (
    ensure_roof_properties,
    follow,
    is_linked,
    link_to,
    linked_picks,
    unfollowed,
    unlink,
)
from louverwright.features.roof_reading import (
    RoofError,
    RoofPick,
    placement_on,
    read_roof,
    turned,
)
from louverwright.features.roof_watch import stop_watching, watch
from louverwright.features.standing import container_placement, in_container

COUNTS: dict[str, int] = {}


class Standing:
    """Sits down on its roof, one metre from the back end of the ridge."""

    def execute(self, obj):
        COUNTS[obj.Name] = COUNTS.get(obj.Name, 0) + 1
        reading = follow(obj)
        if reading:
            obj.Placement = in_container(obj, placement_on(reading.planes, 1000.0, "back"))

    def dumps(self):
        return None

    def loads(self, state):
        """Nothing is read."""

    __getstate__ = dumps
    __setstate__ = loads


@pytest.fixture
def document():
    found = FreeCAD.newDocument("Roofs")
    found.UndoMode = 1
    yield found
    for name in FreeCAD.listDocuments():
        FreeCAD.closeDocument(name)


def stand_in(document, within=None):
    vent = document.addObject("Part::FeaturePython", "Vent")
    vent.addExtension("App::GeoFeatureGroupExtensionPython")
    vent.Proxy = Standing()
    ensure_roof_properties(vent)
    if within is not None:
        within.addObject(vent)
    return vent


def barn(document):
    """A roof in a part in a part, both moved and turned; the frame of its ridge is TURNED."""
    site, path, _ = roofs.nested(document)
    document.recompute()
    return site, path, document.getObject("Barn"), document.getObject("Roof")


def tie(vent, root, path):
    """Ties the vent to the roof, its 40° slope on the left."""
    frame = frame_of(root, path)
    link_to(vent, read_roof(RoofPick(root, (face_names(root, path, frame, LEFT, 1)[0],))))
    vent.Document.recompute()


def frame_of(root, path):
    """The frame of the ridge as the roof is placed now."""
    return container_placement(root).multiply(root.getSubObject(f"{path}Face1", retType=3))


def stands(vent, root, path):
    """Whether the vent stands where it should on the roof as it is now."""
    place, frame = container_placement(vent).multiply(vent.Placement), frame_of(root, path)
    return (near(place.Base, frame.multVec(Vector(1000.0, 0, 0)))
            and near(place.Rotation.multVec(Vector(1, 0, 0)), frame.Rotation.multVec(Vector(1, 0, 0)), 1e-9)
            and not_settled(vent.Document) == [])


def runs(vent, change):
    """How often a change recomputes the vent."""
    COUNTS.clear()
    change()
    vent.Document.recompute()
    return COUNTS.get(vent.Name, 0)


def moved(obj):
    """Turns an object about the plumb line and moves it, as seen from outside all parts."""
    def change():
        seen = Placement(Vector(100, -200, 300), Rotation(Vector(0, 0, 1), 11.0))
        seen = seen.multiply(container_placement(obj)).multiply(obj.Placement)
        obj.Placement = in_container(obj, seen)
    return change


def reshaped(obj, left=LEFT, right=RIGHT):
    def change():
        place = obj.Placement
        obj.Shape = roof_shape(left, right).fuse(Part.makeBox(10, 10, 10, Vector(0, 0, -5000)))
        obj.Placement = place
    return change


@pytest.mark.parametrize(("within", "site_moves", "barn_moves"), [("", 1, 1), ("Site", 0, 1), ("Barn", 0, 0)])
def test_every_move_and_every_edit_is_followed_once(document, within, site_moves, barn_moves) -> None:
    """Parts that hold roof and vent both carry both, and need not recompute the vent."""
    site, path, part, roof = barn(document)
    vent = stand_in(document, document.getObject(within) if within else None)
    tie(vent, site, path)
    assert stands(vent, site, path)
    for change, expected in ((moved(roof), 1), (moved(part), barn_moves), (moved(site), site_moves), (reshaped(roof), 1)):
        assert runs(vent, change) == expected
        assert stands(vent, site, path)
    assert unfollowed(vent) == []


def test_a_link_to_the_part_is_followed_to_its_depth(document) -> None:
    root, path, _ = roofs.link_to_a_part(document)
    document.recompute()
    vent = stand_in(document)
    tie(vent, root, path)
    for obj in ("Roof", "Twin", "Site"):
        assert runs(vent, moved(document.getObject(obj))) == 1
        assert stands(vent, root, path)
    inner = stand_in(document, root)
    tie(inner, root, path)
    assert runs(inner, moved(document.getObject("Twin"))) == 1
    assert stands(inner, root, path)


def test_a_roof_named_alone_in_a_part(document) -> None:
    _, _, part, roof = barn(document)
    vent = stand_in(document)
    tie(vent, roof, "")
    assert runs(vent, moved(part)) == 1
    assert stands(vent, roof, "")


def test_a_vent_dragged_into_the_roofs_part_and_out_again(document, capfd) -> None:
    site, path, part, roof = barn(document)
    vent = stand_in(document)
    tie(vent, site, path)
    for group in (part, site):
        group.addObject(vent)
        document.recompute()    # closes a cycle, which the vent then opens
        vent.touch()
        document.recompute()
        capfd.readouterr()
        assert runs(vent, reshaped(roof)) == 1
        assert stands(vent, site, path)
        said = "".join(capfd.readouterr())
        assert "DAG" not in said and "still touched" not in said
        group.removeObject(vent)
        vent.touch()
        document.recompute()
        assert runs(vent, moved(site)) == 1
        assert stands(vent, site, path)


def test_no_warning_of_scope_or_cycle(document, capfd) -> None:
    site, path, part, roof = barn(document)
    for within in (None, site, part):
        vent = stand_in(document, within)
        tie(vent, site, path)
        assert runs(vent, moved(roof)) == 1
    said = "".join(capfd.readouterr())
    assert not [word for word in ("scope", "DAG", "yclic", "still touched") if word in said]


def test_saved_and_reopened(document, tmp_path) -> None:
    site, path, _, _ = barn(document)
    vent = stand_in(document)
    tie(vent, site, path)
    picks = [(pick.object.Name, pick.subpaths) for pick in linked_picks(vent)]
    document.saveAs(str(tmp_path / "barn.FCStd"))
    FreeCAD.closeDocument(document.Name)
    again = FreeCAD.openDocument(str(tmp_path / "barn.FCStd"))
    vent, site = again.getObject("Vent"), again.getObject("Site")
    assert not_settled(again) == []
    assert [(pick.object.Name, pick.subpaths) for pick in linked_picks(vent)] == picks
    assert runs(vent, moved(site)) == 1
    assert stands(vent, site, path)


def test_undo_of_an_edit_and_of_the_tie(document) -> None:
    site, path, _, roof = barn(document)
    vent = stand_in(document)
    document.openTransaction("Tie")
    tie(vent, site, path)
    document.commitTransaction()
    document.openTransaction("Edit")
    reshaped(roof, 30.0, 30.0)()
    document.recompute()
    document.commitTransaction()
    changed = vent.RoofSignature
    document.undo()
    document.recompute()
    assert vent.RoofSignature != changed
    assert stands(vent, site, path)
    document.undo()
    assert not is_linked(vent) and linked_picks(vent) == () and vent.RoofFollows == []
    document.redo()
    document.recompute()
    assert is_linked(vent) and stands(vent, site, path)


@pytest.mark.parametrize("gone", ["Roof", "Site"])
def test_a_roof_that_is_deleted(document, gone) -> None:
    """The vent keeps its place, says what is wrong, and stands again once the deletion is undone."""
    site, path, _, _ = barn(document)
    vent = stand_in(document)
    tie(vent, site, path)
    place = vent.Placement
    document.openTransaction("Delete")
    document.removeObject(gone)
    document.commitTransaction()
    document.recompute()
    assert "Invalid" in vent.State
    assert "stands on a roof that was read before. The roof, or what it stands in, is gone. Pick the roof again." in (
        vent.getStatusString())
    assert vent.Placement == place and is_linked(vent)
    document.undo()
    document.recompute()
    assert stands(vent, document.getObject("Site"), path)


def test_other_numbers_and_other_pitches(document) -> None:
    """Every edit is taken as the next state of the same roof, however far they go together."""
    site, path, _, roof = barn(document)
    vent = stand_in(document)
    tie(vent, site, path)
    for left, right in ((45.0, 18.0), (45.0, 30.0), (20.0, 30.0), (20.0, 55.0)):
        assert runs(vent, reshaped(roof, left, right)) == 1
        planes = follow(vent).planes
        assert (planes.pitch_left, planes.pitch_right) == (pytest.approx(left), pytest.approx(right))
        assert stands(vent, site, path)
    place = roof.Placement
    roof.Shape = Part.makeBox(LONG, 100.0, 100.0)
    roof.Placement = place
    document.recompute()
    assert "not there any more, nor any ridge like theirs. Pick the roof again." in vent.getStatusString()
    reshaped(roof)()
    document.recompute()
    assert "Invalid" not in vent.State


def test_turned_about(document) -> None:
    site, path, _, roof = barn(document)
    vent = stand_in(document)
    link_to(vent, turned(read_roof(RoofPick(site, (face_names(site, path, TURNED, LEFT, 1)[0],)))))
    for change in (moved(site), moved(roof), reshaped(roof, 35.0, 20.0)):
        assert runs(vent, change) == 1
        frame = frame_of(site, path)
        assert near(vent.Placement.Base, frame.multVec(Vector(LONG - 1000.0, 0, 0)))
        assert near(vent.Placement.Rotation.multVec(Vector(-1, 0, 0)), frame.Rotation.multVec(Vector(1, 0, 0)), 1e-9)


def test_two_roots(document) -> None:
    halves = []
    for hand, pitch in ((1, LEFT), (-1, RIGHT)):
        part = document.addObject("App::Part", "Half")
        part.addObject(feature(document, roofs.slab(hand, pitch), "Slope"))
        halves.append(part)
    document.recompute()
    vent = stand_in(document)
    link_to(vent, read_roof(*(RoofPick(part, (f"{part.Group[0].Name}.",)) for part in halves)))
    document.recompute()
    assert near(vent.Placement.Base, Vector(1000.0, 0, 0))
    lift = Placement(Vector(0, 0, 50.0), Rotation())

    def raised(part):
        def change():
            part.Placement = lift
        return change

    for part in halves:
        assert runs(vent, raised(part)) == 1
    assert near(vent.Placement.Base, Vector(1000.0, 0, 50.0))


def test_a_copy_of_the_barn_has_a_vent_of_its_own(document) -> None:
    site, path, _, _ = barn(document)
    vent = stand_in(document, site)
    tie(vent, site, path)
    before = set(document.Objects)
    document.copyObject([site], True)
    document.recompute()
    copies = [obj for obj in document.Objects if obj not in before]
    (copy,) = [obj for obj in copies if obj.Name.startswith("Vent")]
    (root,) = [obj for obj in copies if obj.Name.startswith("Site")]
    (pick,) = linked_picks(copy)
    assert pick.object == root and pick.subpaths != (path,)
    (roof,) = [obj for obj in copies if obj.Name.startswith("Roof")]
    assert runs(copy, moved(roof)) == 1
    assert stands(copy, root, pick.subpaths[0])
    assert stands(vent, site, path)


def test_what_cannot_be_followed_is_refused_before_anything_is_changed(document) -> None:
    roof = feature(document, roof_shape(), place=TURNED)
    vent = stand_in(document)
    vent.Shape = Part.makeBox(10, 10, 10)
    cut = document.addObject("Part::Cut", "Opened")
    cut.Base, cut.Tool = roof, vent
    document.recompute()
    with pytest.raises(RoofError, match="“Opened” is made from the vent “Vent” or shows it"):
        link_to(vent, read_roof(RoofPick(cut)))
    assert not is_linked(vent) and vent.RoofFollows == []
    tie(vent, roof, "")
    assert runs(vent, moved(roof)) == 1
    other = FreeCAD.newDocument("Elsewhere")
    far = feature(other, roof_shape())
    with pytest.raises(RoofError, match=f"is in the document “{other.Label}”"):
        link_to(vent, read_roof(RoofPick(far)))
    assert linked_picks(vent) == (RoofPick(roof, ("",)),)


def test_what_moves_unseen(document) -> None:
    """A part with the vent and without the roof carries the vent off its roof, until it is recomputed."""
    stop_watching()    # what other tests have begun
    site, path, _, _ = barn(document)
    yard = document.addObject("App::Part", "Yard")
    vent = stand_in(document, yard)
    tie(vent, site, path)
    assert unfollowed(vent) == [yard]
    assert runs(vent, moved(yard)) == 0
    assert not stands(vent, site, path)
    vent.touch()
    document.recompute()
    assert stands(vent, site, path)


@pytest.fixture
def watched():
    watch()
    watch()
    yield
    stop_watching()


def test_a_watch_sees_what_no_link_can_carry(document, watched) -> None:
    site, path, part, roof = barn(document)
    yard = document.addObject("App::Part", "Yard")
    vent = stand_in(document, yard)
    tie(vent, site, path)
    assert runs(vent, moved(yard)) == 1
    assert stands(vent, site, path)
    assert runs(vent, lambda: yard.removeObject(vent)) == 1
    assert stands(vent, site, path)
    assert runs(vent, lambda: part.addObject(vent)) >= 1
    document.recompute()
    assert stands(vent, site, path)
    for obj, expected in ((site, 0), (part, 0), (roof, 1)):    # nothing twice, nothing for nothing
        assert runs(vent, moved(obj)) == expected
        assert stands(vent, site, path)


def test_a_roof_that_is_cut_for_the_vent_takes_the_vent_into_its_part(document, watched) -> None:
    """FreeCAD puts the tool of a cut into the part that the cut is put into."""
    site, path, part, roof = barn(document)
    vent = stand_in(document)
    vent.Shape = Part.makeBox(100.0, 100.0, 100.0)
    tie(vent, site, path)
    cut = document.addObject("Part::Cut", "Opened")
    cut.Base, cut.Tool = roof, vent
    part.addObject(cut)
    document.recompute()
    document.recompute()
    assert vent.getParentGeoFeatureGroup() == part and unfollowed(vent) == []
    for obj, expected in ((site, 0), (part, 0), (roof, 1)):
        assert runs(vent, moved(obj)) == expected
        assert stands(vent, site, path)


def test_a_watch_sees_the_part_that_holds_what_is_made_from_the_vent(document, watched) -> None:
    """Such a part depends on the vent, so that a link from the vent to the part would be a cycle."""
    site, path, part, roof = barn(document)
    vent = stand_in(document)
    user = document.addObject("App::FeaturePython", "User")
    user.addProperty("App::PropertyLinkGlobal", "Source")
    user.Source = vent
    part.addObject(user)
    tie(vent, site, path)
    assert vent.getParentGeoFeatureGroup() is None and unfollowed(vent) == [site, part]
    for obj in (site, part, roof):
        assert runs(vent, moved(obj)) == 1
        assert stands(vent, site, path)


def test_set_free(document) -> None:
    site, path, _, roof = barn(document)
    vent = stand_in(document)
    tie(vent, site, path)
    place = vent.Placement
    unlink(vent)
    document.recompute()
    assert not is_linked(vent) and follow(vent) is None
    assert runs(vent, moved(roof)) == 0
    assert vent.Placement == place


def test_the_feet_are_where_the_roof_is(document) -> None:
    """Numbers by hand: one metre from the back of a ridge that is 3 m up and runs along +Y."""
    place = Placement(Vector(0, 0, 3000.0), Rotation(Vector(0, 0, 1), 90.0))
    roof = feature(document, roof_shape(45.0, 30.0), place=place)
    vent = stand_in(document)
    link_to(vent, read_roof(RoofPick(roof, (face_names(roof, "", place, 45.0, 1)[0],))))
    document.recompute()
    assert near(vent.Placement.Base, Vector(0.0, 1000.0, 3000.0))
    planes = follow(vent).planes
    left = planes.left.lifted((-500.0, 1000.0, 0.0))    # left of +Y is −X
    right = planes.right.lifted((500.0, 1000.0, 0.0))
    assert near(Vector(*left), Vector(-500.0, 1000.0, 2500.0))
    assert near(Vector(*right), Vector(500.0, 1000.0, 3000.0 - 500.0 * tan(radians(30.0))))
