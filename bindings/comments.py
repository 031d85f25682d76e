"""The fixed form of a `///` comment: summary, formula, parameters, result, range, source."""

from __future__ import annotations

import re
from dataclasses import dataclass, field

SECTIONS = ("Formula", "Range", "Errors", "Source", "Verified by")
PARAMETER = re.compile(r"@param\s+(?P<name>\w+)\s*(?:\[(?P<unit>[^\]]*)\])?\s*(?P<text>.*)")
RESULT = re.compile(r"@return\s*(?:\[(?P<unit>[^\]]*)\])?\s*(?P<text>.*)")
SECTION = re.compile(rf"(?P<title>{'|'.join(SECTIONS)}):\s*(?P<text>.*)")


@dataclass
class Item:
    """A parameter or result. `unit` is what stands in brackets, or None without brackets."""

    name: str
    unit: str | None
    lines: list[str]


@dataclass
class Comment:
    prose: list[str] = field(default_factory=list)
    parameters: list[Item] = field(default_factory=list)
    result: Item | None = None
    sections: dict[str, list[str]] = field(default_factory=dict)

    @property
    def summary(self) -> str:
        return next((line for line in self.prose if line), "")


def read_comment(lines: list[str]) -> Comment:
    """Sorts the lines of a comment; a line that opens nothing new goes on with what is open."""
    comment = Comment()
    target = comment.prose
    for line in lines:
        text = line.strip()
        if found := PARAMETER.match(text):
            item = Item(found["name"], found["unit"], [found["text"]])
            comment.parameters.append(item)
            target = item.lines
        elif found := RESULT.match(text):
            comment.result = Item("", found["unit"], [found["text"]])
            target = comment.result.lines
        elif found := SECTION.match(text):
            target = comment.sections.setdefault(found["title"], [])
            target.append(found["text"])
        elif not text and target is not comment.prose:
            target = comment.prose
            target.append("")
        else:
            target.append(text)
    return comment
