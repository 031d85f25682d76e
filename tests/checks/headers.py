"""Every public header compiles by itself."""

from __future__ import annotations

import os
import re
import shlex
import subprocess
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import check


def compile_alone(include: Path, header: Path) -> str:
    """The first error of a translation unit that holds this include alone, or empty text."""
    name = header.relative_to(include)
    compiler = shlex.split(os.environ.get("CXX", "c++"))
    command = [*compiler, "-std=c++20", "-fsyntax-only", f"-I{include}", "-x", "c++", "-"]
    unit = f'#include "{name}"\n#include "{name}"\n'
    result = subprocess.run(command, input=unit, capture_output=True, text=True, check=False)
    if result.returncode == 0:
        return ""
    errors = [line for line in result.stderr.splitlines() if "error" in line]
    return f"{name}: {(errors or ['the compiler failed'])[0]}"


def compiled_first(root: Path) -> set[Path]:
    """Headers that a source of the library includes before anything else: the build compiles them
    alone. Those that may be included once only are left for `compile_alone`."""
    first = set()
    for source in (root / "cpp/src").rglob("*.cpp"):
        found = re.search(r'^#include [<"](.+)[>"]', source.read_text(), re.MULTILINE)
        header = root / "cpp/include" / found[1] if found else root
        if header.is_file() and "#pragma once" in header.read_text():
            first.add(header)
    return first


def find(root: Path) -> list[str]:
    include = root / "cpp/include"
    proved = compiled_first(root)
    headers = sorted(header for header in include.rglob("*.hpp") if header not in proved)
    with ThreadPoolExecutor(os.cpu_count()) as pool:
        results = list(pool.map(lambda header: compile_alone(include, header), headers))
    print(f"{len(headers)} headers compiled, {len(proved)} come first in a source")
    return [result for result in results if result]


MADE_UP = {
    "cpp/include/scupper/good.hpp": "#pragma once\n#include <string>\nusing A = std::string;\n",
    "cpp/include/scupper/bare.hpp": "#pragma once\nstruct Bare { std::string s; };\n",
    "cpp/include/scupper/twice.hpp": "struct Twice {};\n",
}
EXPECTED = ["scupper/bare.hpp: ", "scupper/twice.hpp: "]

if __name__ == "__main__":
    sys.exit(check.run("Headers compile alone", find, MADE_UP, EXPECTED))
