# SPDX-License-Identifier: LGPL-2.1-or-later
"""What is primed and what stays bare for glue: in words, from the joints that a part is glued in."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from ..core.assembly import CROSSCUT, DADO, HALF_LAP, Assembly, Cut, Part
from ..core.gluing import GluedFace, glued_faces
from ..core.saw import end_of
from ..core.solid import END_A, END_B

NO_GLUE = "no glue: prime all faces, edges and end grain"
MESH = "none: mesh"


def finish_text(part: Part, assembly: Assembly) -> str:
    """Which faces stay bare for glue and which are primed; every part has such a line."""
    if part.stock.form == "mesh":
        return MESH
    bare = bare_text(part, assembly)
    if part.kind.finish:
        return "; ".join(filter(None, (f"bare for glue: {bare}" if bare else "", part.kind.finish)))
    return f"bare for glue: {bare}; prime all the rest" if bare else NO_GLUE


def bare_text(part: Part, assembly: Assembly) -> str:
    """The glued faces of a part by their names in the vent, with the marks of what they are glued to; '' for none."""
    faces = glued_faces(assembly).get(part.mark, ())
    names = {face.name: _cuts(face.name, part) for face in faces}
    joints = [face for face in faces if any(cut.kind in (HALF_LAP, DADO) for cut in names[face.name])]
    ends = [face for face in faces if _ends(face, part)]
    others = [face for face in faces if face not in joints and face not in ends]
    beside = [face for face in others if joints and all(_in_joint(mate, assembly) for mate in face.mates)]
    housed = [face for face in others if ends and not joints and all(_in_joint(mate, assembly) for mate in face.mates)]
    texts = [*_joint_texts(joints, beside, part), *_end_text(ends, housed, part),
             *(_face_text(face, part, assembly) for face in others if face not in beside and face not in housed)]
    return "; ".join(texts)


def _cuts(name: str, part: Part) -> list[Cut]:
    """The cuts that left a face: several where equal ones share a name."""
    return [cut for cut in part.board.cuts if cut.planes and name.split("/")[0] == cut.name]


def _ends(face: GluedFace, part: Part) -> list[str]:
    """The ends that a face is all of."""
    if face.name in (END_A, END_B):
        return [face.name]
    return [end_of(cut) for cut in _cuts(face.name, part) if cut.kind == CROSSCUT]


def _in_joint(mate: tuple[str, str], assembly: Assembly) -> bool:
    """True for a partner's face that is the wall or the floor of a lap or a dado."""
    other = next(part for part in assembly.whole if part.mark == mate[0])
    return any(cut.kind in (HALF_LAP, DADO) for cut in _cuts(mate[1], other))


def _joint_texts(joints: Sequence[GluedFace], beside: Sequence[GluedFace], part: Part) -> Iterator[str]:
    for kind, one, many in ((HALF_LAP, "the half lap", "the half laps"), (DADO, "the dado", "the dados")):
        cuts = [cut for cut in part.board.cuts if cut.kind == kind]
        own = [face for face in joints if any(cut in cuts for cut in _cuts(face.name, part))]
        if own:
            also = " and the edges that lie in the other's" if beside and kind == HALF_LAP else ""
            yield f"{many if len(cuts) > 1 else one}{also} ({_marks(own)})"


def _end_text(ends: Sequence[GluedFace], housed: Sequence[GluedFace], part: Part) -> Iterator[str]:
    found = {end for face in ends for end in _ends(face, part)}
    if found:
        name = "both ends" if len(found) == 2 else f"the {part.called(found.pop())}"
        yield f"{name}{', and the faces as far as the dados take them' if housed else ''} ({_marks(ends)})"


def _face_text(face: GluedFace, part: Part, assembly: Assembly) -> str:
    name = dict(part.names).get(face.name) or face.name.split("/")[0]
    if face.whole and not any(_in_joint(mate, assembly) for mate in face.mates):
        return f"all of the {name} ({_marks([face])})"
    return f"the {name} where {_marks([face])} {'meet' if len(face.partners) > 1 else 'meets'} it"


def _marks(faces: Sequence[GluedFace]) -> str:
    return ", ".join(dict.fromkeys(mark for face in faces for mark in face.partners))
