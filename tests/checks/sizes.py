"""Small files, small functions: reports the sizes and refuses what passes the hard limits."""

from __future__ import annotations

import ast
import sys
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from statistics import median, quantiles

import check

sys.path.insert(0, str(check.ROOT / "bindings"))
from cpp_tokens import Cursor, Token  # noqa: E402

FOLDERS = ("cpp", "bindings", "python")
FILE_LIMIT = 500
FUNCTION_LIMIT = 80
ACCESS = ("public", "private", "protected")
SCOPES = {"namespace", "class", "struct", "union", "extern"}


@dataclass(frozen=True)
class Sized:
    name: str
    line: int
    lines: int


def without_template(head: list[Token]) -> list[str]:
    """The words of a declaration's head after its `template <...>`."""
    texts = [token.text for token in head]
    while "template" in texts[:1] and "<" in texts:
        depth = 0
        for i, text in enumerate(texts):
            depth += {"<": 1, ">": -1}.get(text, 0)
            if text == ">" and depth == 0:
                texts = texts[i + 1 :]
                break
        else:
            break
    return texts


def opens_function(head: list[str]) -> bool:
    call = head.index("(") if "(" in head else 0
    return call > 0 and ("=" not in head[:call] or "operator" in head)


def is_member_initialiser(head: list[str]) -> bool:
    return (
        ")" in head
        and ":" in head[head.index(")") :]
        and (head[-1].isidentifier() or head[-1] == ">")
    )


def cpp_functions(text: str) -> Iterator[Sized]:
    cursor = Cursor(text)
    cursor.tokens = [token for token in cursor.tokens if token.kind != "doc"]
    start = 0
    while cursor.at < len(cursor.tokens):
        here = cursor.at
        word = cursor.peek()
        head = without_template(cursor.tokens[start:here])
        if word != "{":
            cursor.at += 1
            if word in (";", "}") or (word == ":" and head and head[0] in ACCESS):
                start = cursor.at
        elif opens_function(head):
            body = cursor.balanced()
            if not is_member_initialiser(head):
                first = cursor.tokens[start].line
                yield Sized(head[head.index("(") - 1], first, body[-1].line - first + 1)
                start = cursor.at
        elif SCOPES & set(head):
            cursor.at += 1
            start = cursor.at
        else:
            cursor.balanced()


def python_functions(text: str) -> Iterator[Sized]:
    """Functions and methods; the docstring does not count."""
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            lines = (node.end_lineno or node.lineno) - node.lineno + 1
            if ast.get_docstring(node):
                lines -= (node.body[0].end_lineno or 0) - node.body[0].lineno + 1
            yield Sized(node.name, node.lineno, lines)


def spread(sizes: list[int]) -> str:
    p90 = quantiles(sizes, n=10, method="inclusive")[-1] if len(sizes) > 1 else sizes[0]
    return f"{len(sizes)}, median {median(sizes):g}, p90 {p90:.0f}, longest {max(sizes)}"


def measure(root: Path, folder: str) -> tuple[list[int], list[int], list[str]]:
    """Lines of files, lines of functions, and what passes a limit, under one folder."""
    files, functions, found = [], [], []
    for file in sorted((root / folder).rglob("*.*")):
        if file.suffix not in (".hpp", ".cpp", ".py"):
            continue
        text = file.read_text(encoding="utf-8")
        name = file.relative_to(root)
        files.append(len(text.splitlines()))
        if files[-1] > FILE_LIMIT:
            found.append(f"{name}: {files[-1]} lines; at most {FILE_LIMIT}")
        for sized in python_functions(text) if file.suffix == ".py" else cpp_functions(text):
            functions.append(sized.lines)
            if sized.lines > FUNCTION_LIMIT:
                place = f"{name}:{sized.line}"
                found.append(f"{place}: {sized.name} {sized.lines} lines; at most {FUNCTION_LIMIT}")
    return files, functions, found


def find(root: Path) -> list[str]:
    found = []
    for folder in FOLDERS:
        files, functions, violations = measure(root, folder)
        if files:
            print(f"{folder}: files {spread(files)}")
        if functions:
            print(f"{folder}: functions {spread(functions)}")
        found += violations
    return found


LONG_CPP = """\
namespace scupper {
template <class T = double>
class Box {
  public:
    explicit Box(T t) : t_{t}, u_(2) {
        work();
    }

  private:
    T t_{}, u_;
};
const int table[] = {1, 2};
"""
MADE_UP = {
    "cpp/src/cost/long.cpp": LONG_CPP + "int far(int x = 1) {\n" + "    ++x;\n" * 80 + "}\n}\n",
    "cpp/src/cost/wide.cpp": "int x;\n" * 501,
    "cpp/src/cost/fits.cpp": "int near() {\n" + "    f();\n" * 78 + "}\n",
    "python/scupper/long.py": "def far():\n" + "    f()\n" * 80,
    "python/scupper/fits.py": 'def near():\n    """' + "Doc.\n" * 90 + '    """\n    f()\n',
}
EXPECTED = ["long.cpp:13: far 82 lines", "wide.cpp: 501 lines", "long.py:1: far 81 lines"]

if __name__ == "__main__":
    sys.exit(check.run("Files and functions stay small", find, MADE_UP, EXPECTED))
