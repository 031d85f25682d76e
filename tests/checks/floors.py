"""A part includes lower floors only, JSON stays in two parts, Python sees one extension."""

from __future__ import annotations

import ast
import re
import sys
from collections.abc import Iterator
from pathlib import Path

import check

FLOORS = [
    ["error"],
    ["quantity", "money", "random"],
    ["unit", "traced", "schema", "uncertain"],
    ["structure", "equipment", "rates"],
    ["job", "inventory", "takeoff", "hydraulics", "debris", "closure"],
    ["work"],
    ["cost"],
    ["estimate"],
    ["simulate"],
    ["bid", "delivery"],
    ["json"],
]
FLOOR = {part: number for number, parts in enumerate(FLOORS, start=1) for part in parts}
JSON_PARTS = {"json", "inventory"}
INCLUDE = re.compile(r'^\s*#\s*include\s*[<"]([^>"]+)[>"]')


def source_files(root: Path) -> Iterator[tuple[Path, str, bool]]:
    """Every C++ file of the core with its part, and whether it is a public header."""
    for folder, public in (("cpp/include/scupper", True), ("cpp/src", False)):
        for file in sorted((root / folder).rglob("*.[hc]pp")):
            part = file.relative_to(root / folder).parts[0]
            yield file, part.removesuffix(".hpp"), public


def included_part(path: str) -> str:
    """The part an include reaches, or empty text where it leaves the core."""
    parts = [folder.removesuffix(".hpp") for folder in path.split("/")]
    if parts[0] == "scupper" and len(parts) > 1:
        return parts[1]
    return next((part for part in parts[:-1] if part in FLOOR), "")


def wrong_include(part: str, public: bool, path: str) -> str:
    """Why a part must not include this, or empty text."""
    if path.startswith("nlohmann/"):
        if public:
            return "JSON in a public header"
        return "" if part in JSON_PARTS else f"JSON in {part}; only in {sorted(JSON_PARTS)}"
    if ".." in path:
        return "a relative include leaves its folder"
    other = included_part(path)
    if not other or other == part:
        return ""
    if other not in FLOOR:
        return f"{other} has no floor"
    if FLOOR[other] >= FLOOR[part]:
        return f"{part} (floor {FLOOR[part]}) includes {other} (floor {FLOOR[other]})"
    return ""


def wrong_includes(root: Path) -> list[str]:
    found = []
    for file, part, public in source_files(root):
        if part not in FLOOR:
            found.append(f"{file.relative_to(root)}: {part} has no floor in floors.py")
            continue
        for number, line in enumerate(file.read_text(encoding="utf-8").splitlines(), start=1):
            match = INCLUDE.match(line)
            if match and (why := wrong_include(part, public, match[1])):
                found.append(f"{file.relative_to(root)}:{number}: {why}")
    return found


def imported(tree: ast.AST, package: tuple[str, ...]) -> Iterator[tuple[int, tuple[str, ...]]]:
    """Line and absolute dotted path of every import."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Import):
            for alias in node.names:
                yield node.lineno, tuple(alias.name.split("."))
        elif isinstance(node, ast.ImportFrom):
            base = package[: len(package) - node.level + 1] if node.level else ()
            base += tuple(node.module.split(".")) if node.module else ()
            if len(base) == 1:
                for alias in node.names:
                    yield node.lineno, (*base, alias.name)
            else:
                yield node.lineno, base


def wrong_imports(root: Path) -> list[str]:
    """Imports of compiled modules other than scupper._core."""
    found = []
    folder = root / "python"
    for file in sorted(folder.rglob("*.py")):
        package = file.relative_to(folder).parts[:-1]
        for line, path in imported(ast.parse(file.read_text(encoding="utf-8")), package):
            compiled = len(path) > 1 and path[0] == "scupper" and path[1].startswith("_")
            source = folder.joinpath(*path[:2]) if compiled else None
            known = source is None or source.is_dir() or source.with_suffix(".py").exists()
            if path[0] == "bindings" or not (known or path[1] in ("_core", "__version__")):
                found.append(f"{file.relative_to(root)}:{line}: imports {'.'.join(path)}")
    return found


def find(root: Path) -> list[str]:
    return wrong_includes(root) + wrong_imports(root)


MADE_UP = {
    "cpp/include/scupper/unit.hpp": '#include "scupper/error.hpp"\n#include <scupper/cost.hpp>\n',
    "cpp/include/scupper/unit/text.hpp": '#include "scupper/traced.hpp"\n',
    "cpp/include/scupper/inventory/read.hpp": "#include <nlohmann/json.hpp>\n",
    "cpp/src/inventory/read.cpp": '#include <nlohmann/json.hpp>\n#include "detail.hpp"\n',
    "cpp/src/cost/price.cpp": '#include <nlohmann/json.hpp>\n#include "../work/crew.hpp"\n',
    "cpp/src/attic/box.cpp": "",
    "python/scupper/__init__.py": "from scupper._core import price\nfrom . import _other, tables\n",
    "python/scupper/tables.py": "import bindings.module\nimport pandas\n",
}
EXPECTED = [
    "unit.hpp:2: unit (floor 3) includes cost (floor 7)",
    "text.hpp:1: unit (floor 3) includes traced (floor 3)",
    "inventory/read.hpp:1: JSON in a public header",
    "price.cpp:1: JSON in cost",
    "price.cpp:2: a relative include",
    "attic has no floor",
    "__init__.py:2: imports scupper._other",
    "tables.py:1: imports bindings.module",
]

if __name__ == "__main__":
    sys.exit(check.run("Parts include lower floors only", find, MADE_UP, EXPECTED))
