"""Writes docstrings.cpp: the `///` comments of the public headers as text for Python.

    python docstrings.py <include folder> <docstrings.cpp>

The source holds `scupper::doc("hydraulics::nozzle_flow")`, `doc("Job::replace")` and so on: names
without the leading `scupper::`, members after their class. A function with several documented
overloads is named with its parameters, `doc("friction_loss(flow, bore, length)")`. With a name
without comment the module does not load.
"""

from __future__ import annotations

import sys
from collections import Counter
from pathlib import Path

from comments import Comment, Item, read_comment
from declarations import Declaration, read_headers

SOURCE = """\
// Written by bindings/docstrings.py from the public headers.
#include "docstrings.hpp"

#include <stdexcept>
#include <string>

namespace scupper {{
namespace {{
struct NamedText {{
    std::string_view name;
    const char* text;
}};
constexpr NamedText docstrings[] = {{
{entries}
}};
}} // namespace

const char* doc(std::string_view name) {{
    for (const NamedText& entry : docstrings) {{
        if (entry.name == name) {{
            return entry.text;
        }}
    }}
    throw std::logic_error("no public header documents " + std::string(name));
}}
}} // namespace scupper
"""


def section(title: str, lines: list[str]) -> list[str]:
    return ["", title, "-" * len(title), *lines]


def item(entry: Item) -> list[str]:
    head = f"{entry.name} : [{entry.unit}]" if entry.name else f"[{entry.unit}]"
    return [head, *(f"    {line}" for line in entry.lines if line)]


def render(comment: Comment) -> str:
    """A comment in the layout that Python readers know: underlined sections, indented items."""
    lines = list(comment.prose)
    while lines and not lines[-1]:
        lines.pop()
    if comment.parameters:
        lines += section("Parameters", [line for p in comment.parameters for line in item(p)])
    if comment.result:
        lines += section("Returns", item(comment.result))
    for title, text in comment.sections.items():
        lines += section(title, text)
    return "\n".join(lines).strip()


def short_name(declaration: Declaration) -> str:
    return declaration.name.removeprefix("scupper::")


def full_name(declaration: Declaration) -> str:
    return f"{short_name(declaration)}({', '.join(declaration.parameters)})"


def docstrings(declarations: list[Declaration]) -> dict[str, str]:
    """Name -> text of everything documented; overloads go by the names of their parameters."""
    documented = [d for d in declarations if d.doc and d.exempt in ("", "static constant")]
    often = Counter(map(short_name, documented))
    texts: dict[str, str] = {}
    for declaration in documented:
        name = short_name(declaration)
        key = name if often[name] == 1 else full_name(declaration)
        text = render(read_comment(declaration.doc))
        texts[key] = f"{texts[key]}\n\n{text}" if key in texts else text
    return texts


def source(texts: dict[str, str]) -> str:
    entries = [f'    {{"{name}", R"doc({text})doc"}},' for name, text in texts.items()]
    return SOURCE.format(entries="\n".join(entries))


def main(include: Path, output: Path) -> None:
    text = source(docstrings([declaration for _, declaration in read_headers(include)]))
    output.parent.mkdir(parents=True, exist_ok=True)
    if not output.exists() or output.read_text(encoding="utf-8") != text:
        output.write_text(text, encoding="utf-8")


if __name__ == "__main__":
    main(Path(sys.argv[1]), Path(sys.argv[2]))
