"""For developers: keeps the files of translations in step with the source.

``python3 tests/translations.py`` writes what is newly said into resources/translations/*.ts, marks what is said no more,
and has Qt's lrelease (qttools5-dev-tools, or as LRELEASE says) make the .qm files that FreeCAD loads.  Translate what is
marked unfinished, take the mark away, and run it again.  Needs the standard library only.

Everything has its one translation in the context "Louverwright".  FreeCAD looks commands and properties up in contexts of
its own; what stands there is put together from those.
"""

from __future__ import annotations

import ast
import os
import shutil
import subprocess
import sys
import xml.etree.ElementTree as ElementTree
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from string import Formatter
from xml.sax.saxutils import escape

ROOT = Path(__file__).resolve().parents[1]
if str(ROOT / "workbench") not in sys.path:
    sys.path.insert(0, str(ROOT / "workbench"))

from louverwright.core.figures import OUTPUTS  # noqa: E402
from louverwright.core.kinds import KINDS, STAGES, spoken  # noqa: E402
from louverwright.core.mend import SIZE_NAMES  # noqa: E402
from louverwright.core.parameters import MEASURED, PARAMETERS, STOCK  # noqa: E402
from louverwright.core.roof_planes import BACK, FRONT, MIDDLE  # noqa: E402
from louverwright.core.saying import Text, say  # noqa: E402
from louverwright.core.spec import tooltip  # noqa: E402
from louverwright.core.stock import FORMS  # noqa: E402
from louverwright.core.units_read import LENGTH_NAMES  # noqa: E402
from louverwright.exchange.paper_sets import SETS  # noqa: E402
from louverwright.folders import TRANSLATIONS  # noqa: E402

PACKAGE = ROOT / "workbench" / "louverwright"
OURS, PROPERTY = "Louverwright", "App::Property"
LANGUAGES = {"de": "de_DE", "fr": "fr_FR"}
#: What the functions are called whose first argument is looked up, and those that make rows of properties.
SAYING, ROWS = ("say", "tr", "joined"), ("Row", "result_row")
#: What carries sentences to the user, and so takes none that was not said.
CARRIERS = ("Finding", "ReadError", "RoofError", "RoofLost", "LostPart", "NewerDocument", "MendError", "OpeningError",
            "PdfError", "SurveyError", "StockListError", "ScenarioError", "PrintWarning", "QLabel", "QPushButton", "QCheckBox",
            "setText", "setToolTip", "setPlaceholderText", "setWindowTitle", "addRow", "Section")
#: Words that tables hold and sentences take in, and that are looked up where they are shown.
WORDS = ("left", "right", "diagonal side", "side", "louvers", "throat", "roof opening", MIDDLE, BACK, FRONT)

Key = tuple[str, str]


@dataclass
class Message:
    """A translation as a file has it; ``state`` is '', 'unfinished' or 'vanished'."""

    text: str = ""
    state: str = "unfinished"


# ---- what is said


def modules() -> Iterator[tuple[Path, ast.Module]]:
    """Every module of the package and its syntax."""
    for path in sorted(PACKAGE.rglob("*.py")):
        yield path, ast.parse(path.read_text(encoding="utf-8"))


def calls(tree: ast.AST) -> Iterator[tuple[str, ast.Call]]:
    """Every call, by the last part of the function's name."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Call):
            yield getattr(node.func, "attr", getattr(node.func, "id", "")), node


def imported(tree: ast.Module) -> set[str]:
    """The names that a module has from those that say and translate."""
    own = {"saying", "language"}
    return {each.name for node in ast.walk(tree) if isinstance(node, ast.ImportFrom)
                      if (node.module or "").split(".")[-1] in own for each in node.names}


def worded(text: str) -> bool:
    """Whether there is a letter outside the placeholders, or a mark of quotation, which differs from language to language."""
    return any(letter.isalpha() or letter in "“”" for plain, *_ in Formatter().parse(text) for letter in plain)


def said() -> set[str]:
    """Every template that the source hands to one of ``SAYING``, where that is ours and not a message box."""
    return {node.args[0].value for _, tree in modules() for name, node in calls(tree)
            if name in SAYING and name in imported(tree) and node.args and isinstance(node.args[0], ast.Constant)
            and isinstance(node.args[0].value, str) and worded(node.args[0].value)}


def told_words() -> Iterator[Text]:
    """What the tables say, in every form that is shown."""
    for row in PARAMETERS:
        yield from (say(row.label.capitalize()), say(row.group), tooltip(row))
        yield from map(say, (*row.choices, *filter(None, [row.auto])))
        if row.kind == STOCK or (row.group == MEASURED and not row.name.endswith("moisture")):
            yield say(row.label)
    shown = next(ast.literal_eval(node.value) for path, tree in modules() if path.name == "results.py" for node in tree.body
                 if isinstance(node, ast.Assign) and isinstance(node.targets[0], ast.Name) and node.targets[0].id == "SHOWN")
    for output in OUTPUTS:
        yield output.tooltip
        if output.name in shown:
            yield say(output.label.capitalize())
    yield from (spoken(kind.name) for kind in KINDS)
    yield from map(say, (name for _, name in STAGES.values()))
    yield from (say(each.words) for each in SETS)
    yield from map(say, (*SIZE_NAMES, *(name.capitalize() for name in SIZE_NAMES), *FORMS, *LENGTH_NAMES.values(), *WORDS))


def constants_of(tree: ast.Module) -> dict[str, object]:
    """The constants of a module by their names, those of one line (``A, B = "a", "b"``) too."""
    found: dict[str, object] = {}
    for node in tree.body:
        if isinstance(node, ast.Assign):
            names, values = ([*each.elts] if isinstance(each, ast.Tuple) else [each] for each in (node.targets[0], node.value))
            found.update((name.id, value.value) for name, value in zip(names, values, strict=False)
                         if isinstance(name, ast.Name) and isinstance(value, ast.Constant))
    return found


def property_rows() -> Iterator[tuple[str, str]]:
    """Group and tooltip of every property that is not one of the tables'."""
    for path, tree in modules():
        if path.parent.name not in ("features", "view"):
            continue
        constants = constants_of(tree)
        for name, node in calls(tree):
            if name in ROWS and len(node.args) > 3 and isinstance(node.args[3], ast.Constant):
                group = node.args[2]
                yield (constants[group.id] if isinstance(group, ast.Name) and group.id in constants else
                       group.value if isinstance(group, ast.Constant) else ""), node.args[3].value


def commands() -> Iterator[tuple[str, str, str]]:
    """Name, words and tip of every command."""
    tree = ast.parse((PACKAGE / "commands" / "register.py").read_text(encoding="utf-8"))
    for name, node in calls(tree):
        if name == "Row":
            own, _, words, tip, *_ = (ast.literal_eval(each) for each in node.args)
            yield own, words, tip


def derived() -> dict[Key, Text]:
    """What FreeCAD looks up by itself, by context and English text."""
    found = [(name, say(text)) for name, *texts in commands() for text in texts]
    found += [(PROPERTY, each) for row in PARAMETERS for each in (say(row.group), tooltip(row))]
    found += [(PROPERTY, output.tooltip) for output in OUTPUTS]
    found += [(PROPERTY, say(text)) for row in property_rows() for text in row if text]
    found += [(PROPERTY, say("Result"))]
    return {(context, str(text)): text for context, text in found if str(text) != OURS}


def sources() -> set[str]:
    """Every text that has a translation of its own."""
    found = said()

    def note(text: str) -> str:
        found.add(text)
        return text

    for text in (*told_words(), *derived().values()):
        text.told(note)
    return {text for text in found if worded(text)}


def unsaid() -> list[str]:
    """Sentences handed to one of ``CARRIERS`` as they are, which nobody could translate: where they stand."""
    def plain(node: ast.AST) -> Iterator[ast.expr]:
        if isinstance(node, ast.Call) and getattr(node.func, "attr", getattr(node.func, "id", "")) in SAYING:
            return
        if isinstance(node, (ast.Constant, ast.JoinedStr)):
            parts = node.values if isinstance(node, ast.JoinedStr) else [node]
            words = "".join(each.value for each in parts if isinstance(each, ast.Constant) and isinstance(each.value, str))
            if " " in words.strip() and any(letter.isalpha() for letter in words):
                yield node
            return
        for child in ast.iter_child_nodes(node):
            yield from plain(child)

    return [f"{path.relative_to(ROOT)}:{bad.lineno}: {ast.unparse(bad)}" for path, tree in modules()
            if path.parent.name not in ("report", "louverwright") for name, node in calls(tree) if name in CARRIERS
            for each in node.args[2 if name == "Finding" else 0:] for bad in plain(each)]


# ---- the files


def file_of(language: str, ending: str = "ts") -> Path:
    """The file of a language."""
    return TRANSLATIONS / f"Louverwright_{language}.{ending}"


def read(path: Path) -> dict[Key, Message]:
    """The translations of a .ts file; none where there is no file."""
    if not path.exists():
        return {}
    found: dict[Key, Message] = {}
    for context in ElementTree.parse(path).getroot().iter("context"):
        for message in context.iter("message"):
            own = message.find("translation")
            assert own is not None
            found[context.findtext("name", ""), message.findtext("source", "")] = Message(own.text or "", own.get("type", ""))
    return found


def look_up_in(messages: Mapping[Key, Message]) -> Callable[[str], str]:
    """The look-up that FreeCAD makes in our own context."""
    return lambda text: messages.get((OURS, text), Message()).text or text


def updated(old: Mapping[Key, Message]) -> dict[Key, Message]:
    """The translations as they should stand in the file: old ones kept, new ones unfinished, those said no more vanished."""
    wanted = {(OURS, text) for text in sources()}
    new = {key: Message(old[key].text, "" if old[key].state == "vanished" else old[key].state) if key in old and old[key].text
           else Message() for key in wanted}
    new.update({key: Message(message.text, "vanished") for key, message in old.items()
                if key[0] == OURS and key not in wanted and message.text})
    look_up, unfinished = look_up_in(new), {key[1] for key in wanted if new[key].state}
    for key, text in derived().items():
        asked: set[str] = set()
        text.told(lambda each, asked=asked: asked.add(each) or each)    # type: ignore[misc]
        new[key] = Message(text.told(look_up), "unfinished" if asked & unfinished else "")
    return new


def written(messages: Mapping[Key, Message], language: str) -> str:
    """The text of a .ts file."""
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>",
             f'<TS version="2.1" language="{LANGUAGES[language]}" sourcelanguage="en_GB">']
    for context in sorted({key[0] for key in messages}, key=lambda name: (name != OURS, name)):
        lines += ["<context>", f"    <name>{context}</name>"]
        for (_, source), message in sorted((key, message) for key, message in ((k, m) for k, m in messages.items())
                                           if key[0] == context):
            kind = f' type="{message.state}"' if message.state else ""
            lines += ["    <message>", f"        <source>{escape(source)}</source>",
                      f"        <translation{kind}>{escape(message.text)}</translation>", "    </message>"]
        lines.append("</context>")
    return "\n".join((*lines, "</TS>", ""))


def placeholders(text: str) -> list[str]:
    """The placeholders with how they are written out, in alphabetical order."""
    return sorted(f"{name}!{conversion}:{spec}" for _, name, spec, conversion in Formatter().parse(text) if name is not None)


def release(languages: Iterable[str] = LANGUAGES) -> None:
    """Has Qt make the .qm files.  Raises FileNotFoundError where there is no lrelease."""
    tool = os.environ.get("LRELEASE") or shutil.which("lrelease")
    if tool is None:
        raise FileNotFoundError("There is no lrelease: install qttools5-dev-tools, or name one in LRELEASE.")
    for language in languages:
        subprocess.run([tool, "-silent", str(file_of(language)), "-qm", str(file_of(language, "qm"))], check=True)


def main() -> None:
    """Brings all files up to date."""
    TRANSLATIONS.mkdir(exist_ok=True)
    for language in LANGUAGES:
        messages = updated(read(file_of(language)))
        file_of(language).write_text(written(messages, language), encoding="utf-8")
        left = sum(message.state == "unfinished" for (context, _), message in messages.items() if context == OURS)
        print(f"{language}: {len(messages)} texts, {left} to translate")
    release()


if __name__ == "__main__":
    main()
