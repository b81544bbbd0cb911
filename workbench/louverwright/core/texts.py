# SPDX-License-Identifier: LGPL-2.1-or-later
"""Texts that a user writes: which can be printed, how long they may be, and how a sentence quotes one that cannot be used."""

from __future__ import annotations

import unicodedata

from .saying import Text, say

#: The most characters of a text that stands on one line of a paper, of a remark, and of a file's path.
LONGEST_LINE, LONGEST_NOTE, LONGEST_PATH = 200, 4_000, 1_000
#: The most characters of a revision, which stands in every title block.
LONGEST_REVISION = 40
#: A sentence quotes no more of a value than this.
_QUOTED = 40
#: A number beyond this is no measure of anything, and may be too large for a float.
ENDLESS = 1e15
_LAYOUT = "\n\r\t"
#: What has a part of a line run the other way than it is read, so that 12 may show as 21.
_TURNING = "\u202a\u202b\u202c\u202d\u202e\u2066\u2067\u2068\u2069"


def printable(character: str) -> bool:
    """Whether a character can stand in a file and on paper: no control character but line ends and tabs, no half of a pair."""
    if character in _LAYOUT:
        return True
    return (unicodedata.category(character) not in ("Cc", "Cs") and character not in _TURNING
            and ord(character) & 0xFFFE != 0xFFFE)


def unfit(text: str, longest: int) -> tuple[Text, Text] | None:
    """Why a text cannot be printed, and the cure; None for one that can."""
    if len(text) > longest:
        return (say("it has {count} characters, and at most {most} are printed", count=len(text), most=longest),
                say("Shorten it."))
    bad = next((character for character in text if not printable(character)), "")
    if bad:
        return (say("it has a character that cannot be printed, U+{number}", number=f"{ord(bad):04X}"),
                say("Take that character out."))
    return None


def visible(text: str) -> str:
    """A text with what cannot be printed written by its number, safe for a terminal and any encoding of Unicode."""
    return "".join(each if printable(each) and each != "\r" else f"\\u{ord(each):04x}" for each in text)


def brief(value: object, most: int = _QUOTED) -> str:
    """A value as a sentence quotes it: in one line, no longer than ``most`` characters."""
    if isinstance(value, int) and not -ENDLESS < value < ENDLESS:
        return say("an endless number")
    text = str(value)
    return visible(text[:most].replace("\n", " ").replace("\t", " ")) + ("…" if len(text) > most else "")
