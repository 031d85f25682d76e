"""Every source and test file is named in its CMakeLists.txt, every part in its parent's list."""

from __future__ import annotations

import re
import sys
from pathlib import Path

import check

FOLDERS = {"cpp": "src", "tests/cpp": ""}


def words(file: Path) -> set[str]:
    return (
        set(re.findall(r"[\w.\-/]+", file.read_text(encoding="utf-8"))) if file.exists() else set()
    )


def find(root: Path) -> list[str]:
    found = []
    for parent, parts in FOLDERS.items():
        listed = words(root / parent / "CMakeLists.txt")
        folders = [p for p in sorted((root / parent / parts).glob("*")) if p.is_dir()]
        for folder in folders:
            files = sorted(folder.rglob("*.cpp"))
            if files and folder.name not in listed:
                found.append(f"{folder.relative_to(root)}: not in {parent}/CMakeLists.txt")
            named = words(folder / "CMakeLists.txt")
            for file in files:
                if not named & {str(file.relative_to(folder)), file.stem}:
                    found.append(f"{file.relative_to(root)}: not in its folder's CMakeLists.txt")
    return found


MADE_UP = {
    "cpp/CMakeLists.txt": "set(SCUPPER_PARTS error)\n",
    "cpp/src/error/CMakeLists.txt": "target_sources(scupper PRIVATE error.cpp)\n",
    "cpp/src/error/error.cpp": "",
    "cpp/src/error/forgotten.cpp": "",
    "cpp/src/money/CMakeLists.txt": "target_sources(scupper PRIVATE money.cpp)\n",
    "cpp/src/money/money.cpp": "",
    "tests/cpp/CMakeLists.txt": "foreach(part error)\n",
    "tests/cpp/error/test_error.cpp": "",
    "tests/cpp/error/CMakeLists.txt": "foreach(snippet bare_number)\n",
    "tests/cpp/error/refused/bare_number.cpp": "",
}
EXPECTED = [
    "cpp/src/error/forgotten.cpp: not in its folder's",
    "cpp/src/money: not in cpp/CMakeLists.txt",
    "tests/cpp/error/test_error.cpp: not in its folder's",
]

if __name__ == "__main__":
    sys.exit(check.run("Every file is built", find, MADE_UP, EXPECTED))
