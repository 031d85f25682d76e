"""The committed stub of the extension is what the generator writes for the installed package."""

from __future__ import annotations

import argparse
import difflib
import subprocess
import sys
import tempfile
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
STUB = ROOT / "python/scupper/_core.pyi"


def generate(folder: Path) -> str:
    """The stub of scupper._core as this interpreter has it installed."""
    command = [sys.executable, "-m", "pybind11_stubgen", "scupper._core",
               "--exit-code", "--output-dir", str(folder)]  # fmt: skip
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL)
    file = folder / "scupper/_core.pyi"
    package = folder / "scupper/_core/__init__.pyi"
    return (file if file.exists() else package).read_text(encoding="utf-8")


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--write", action="store_true", help="replace the committed stub")
    arguments = parser.parse_args()
    with tempfile.TemporaryDirectory() as folder:
        fresh = generate(Path(folder))
    if arguments.write:
        STUB.write_text(fresh, encoding="utf-8")
        return 0
    kept = STUB.read_text(encoding="utf-8") if STUB.exists() else ""
    difference = list(difflib.unified_diff(
        kept.splitlines(), fresh.splitlines(), "committed", "generated", lineterm=""))  # fmt: skip
    print("\n".join(difference) or "the committed stub is current")
    return 1 if difference else 0


if __name__ == "__main__":
    sys.exit(main())
