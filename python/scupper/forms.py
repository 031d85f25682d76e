"""Forms to fill in: a whole job, and a sheet for what no record tells."""

from __future__ import annotations

import csv
import io
import json
import os
from collections.abc import Iterable
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._core import Structure
from scupper._files import read_text, require_new, write_whole
from scupper.errors import FileError, InputError, UnknownNameError
from scupper.inventory import gathered
from scupper.job import Job
from scupper.results import FORMULA_SIGNS, safe_cells

if TYPE_CHECKING:
    from scupper.inventory import Inventory

#: Columns of a survey sheet that say which structure it is; the others are to be filled in.
_IDENTITY = ["state", "structure_id", "carries", "crosses"]


def job_schema() -> dict[str, Any]:
    """The form of a job document as a JSON Schema (draft 2020-12), for editors and validators.

    It checks keys, words and the shape of values; units and bounds are checked where a job is read.
    """
    schema: dict[str, Any] = json.loads(_core.job_schema())
    return schema


def write_job_form(path: str | os.PathLike[str], job: Job | None = None) -> None:
    """Writes a job document to fill in.

    Parameters
    ----------
    path
        The file; it must not be there yet.
    job
        The job whose values stand in it; without one that of the demo, whose prices are invented.

    Raises
    ------
    FileError
        Where the file exists or cannot be written.
    """
    require_new(path)
    write_whole(path, (job or Job.demo())._core.form() + "\n")


def write_survey_sheet(
    path: str | os.PathLike[str],
    inventory: Inventory | Iterable[Structure],
    job: Job | None = None,
) -> None:
    """Writes a survey sheet: one row a structure, a column for whatever no record tells.

    Parameters
    ----------
    path
        The CSV file; it must not be there yet.
    inventory
        An inventory, a selection of one, or structures.
    job
        The job whose units stand in the headers; without one that of the demo.

    Raises
    ------
    FileError
        Where the file exists or cannot be written.
    """
    import pandas as pd

    require_new(path)
    recorded = gathered(inventory)._core.recorded(set(_IDENTITY))
    table = pd.DataFrame({name: recorded[name] for name in _IDENTITY}, dtype=object)
    for header in (job or Job.demo())._core.survey_headers():
        table[header] = ""
    write_whole(path, safe_cells(table).to_csv(index=False))


def surveyed(job: Job, path: str | os.PathLike[str], inventory: Inventory | None) -> Job:
    """A job with what a survey sheet says: see `Job.with_survey`."""
    name = os.fspath(path)
    lines = _lines(read_text(path).removeprefix("\ufeff"), name)
    if not lines or "structure_id" not in lines[0][1]:
        found = "no line" if not lines else ", ".join(lines[0][1])
        raise FileError("survey.header", f"{name}:1", found, "a column structure_id")
    (top, header), *rows = lines
    at = header.index("structure_id")
    filled_in = [i for i, column in enumerate(header) if column not in _IDENTITY]
    cells = []
    for line, row in rows:
        if len(row) != len(header):
            found = f"{len(row)} cells"
            raise InputError("survey.cells", f"{name}:{line}", found, f"{len(header)} cells")
        state = row[header.index("state")] if "state" in header else ""
        number = _as_written(row[at])
        key = f"{_as_written(state)}:{number}" if state else number
        if not number:
            found = "a row without a structure number"
            raise InputError("survey.structure", f"{name}:{line}", found, "its number")
        cells.append((key, f"{name}:{line}", [row[i] for i in filled_in]))
    if inventory is not None:
        _require_known([(key, place) for key, place, _ in cells], inventory)
    headers = [header[i] for i in filled_in]
    return Job(job._core.with_survey(f"{name}:{top}", headers, cells))


def _lines(text: str, name: str) -> list[tuple[int, list[str]]]:
    """Line number and cells, without blanks around them; blank lines are left out."""
    reader = csv.reader(io.StringIO(text, newline=""), strict=True)
    lines = []
    try:
        for row in reader:
            cells = [cell.strip() for cell in row]
            if any(cells):
                lines.append((reader.line_num, cells))
    except csv.Error as e:
        raise FileError("survey.csv", f"{name}:{reader.line_num}", str(e), "CSV text") from None
    return lines


def _as_written(cell: str) -> str:
    """A cell without the apostrophe that keeps spreadsheets from running it."""
    return cell[1:] if cell[:1] == "'" and cell[1:].startswith(FORMULA_SIGNS) else cell


def _require_known(keys: list[tuple[str, str]], inventory: Inventory) -> None:
    """Refuses numbers that the inventory does not have, all of them at once."""
    places: dict[str, str] = {}
    for key, place in keys:
        places.setdefault(key, place)
    missing = inventory.select(places).missing
    if missing:
        near = [f"{', '.join(names)}?" if names else "nothing near" for names in missing.values()]
        raise UnknownNameError(
            "survey.structure",
            ", ".join(places[key] for key in missing),
            ", ".join(f'"{key}"' for key in missing) + " not in the inventory",
            "; ".join(near),
        )
