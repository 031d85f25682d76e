"""Every notebook runs from top to bottom."""

from __future__ import annotations

import os
from pathlib import Path

import nbformat
import pytest
from nbclient import NotebookClient

NOTEBOOKS = sorted((Path(__file__).resolve().parents[2] / "notebooks").glob("*.ipynb"))


@pytest.mark.parametrize("path", NOTEBOOKS, ids=lambda path: path.stem)
def test_notebook_runs(path: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("IPYTHONDIR", str(tmp_path))
    notebook = nbformat.read(path, as_version=4)
    kernel_folder = {"metadata": {"path": str(tmp_path)}}
    client = NotebookClient(notebook, timeout=120, kernel_name="python3", resources=kernel_folder)
    client.execute(env=dict(os.environ))
    outputs = [cell.get("outputs") for cell in notebook.cells if cell.cell_type == "code"]
    assert all(outputs), "a cell shows nothing"


@pytest.mark.parametrize("path", NOTEBOOKS, ids=lambda path: path.stem)
def test_notebook_is_committed_without_output(path: Path) -> None:
    notebook = nbformat.read(path, as_version=4)
    assert notebook.cells
    for cell in notebook.cells:
        if cell.cell_type == "code":
            assert cell.outputs == []
            assert cell.execution_count is None
