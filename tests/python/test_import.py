"""What loads when."""

from __future__ import annotations

import subprocess
import sys

HEAVY = ("numpy", "pandas", "pint", "matplotlib", "rich", "jinja2")


def loaded_after(code: str) -> set[str]:
    script = f"{code}\nimport sys\nprint(*[m for m in {HEAVY!r} if m in sys.modules])"
    run = subprocess.run([sys.executable, "-c", script], capture_output=True, text=True, check=True)
    return set(run.stdout.split())


def test_import_loads_no_heavy_library() -> None:
    assert loaded_after("import scupper") == set()


def test_reading_records_loads_no_table_library() -> None:
    code = "import scupper as sc; sc.read_inventory(sc.demo_records())[0].to_dict()"
    assert loaded_after(code) == set()


def test_every_public_name_is_there_and_described() -> None:
    import scupper as sc

    for name in sc.__all__:
        assert name == "__version__" or getattr(sc, name).__doc__, name
