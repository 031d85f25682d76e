"""Measured structures in forms of their own: lists to write, forms to fill in, their schema."""

from __future__ import annotations

import csv
import io
import json
import os
from collections.abc import Iterable
from pathlib import Path
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._core import Structure
from scupper._files import require_new, write_whole
from scupper.inventory import gathered

if TYPE_CHECKING:
    from scupper.inventory import Inventory


def structures_schema() -> dict[str, Any]:
    """The form of a list of structures as a JSON Schema (draft 2020-12).

    It checks keys, words and the shape of values; units and bounds are checked where a list is
    read.
    """
    schema: dict[str, Any] = json.loads(_core.structures_schema())
    return schema


def write_structures(
    path: str | os.PathLike[str], inventory: Inventory | Iterable[Structure]
) -> None:
    """Writes structures whole, so that `read_inventory` reads the same again.

    Parameters
    ----------
    path
        The JSON file.
    inventory
        An inventory, a selection of one, or structures.

    Raises
    ------
    FileError
        Where it cannot be written.
    """
    write_whole(path, _core.write_structures(gathered(inventory)._core) + "\n")


def write_structure_form(path: str | os.PathLike[str], units: str = "us") -> None:
    """Writes a form for measured structures: a table, or a list where the name ends in .json.

    Parameters
    ----------
    path
        The file; it must not be there yet.
    units
        ``"us"``, ``"metric"`` or ``"si"``: the units in the headers of the table. In a list every
        value states its own.

    Raises
    ------
    FileError
        Where the file exists or cannot be written.
    InputError
        Where `units` is another word.
    """
    require_new(path)
    headers = _core.structure_headers(units)
    if Path(path).suffix.lower() == ".json":
        write_whole(path, _core.structures_form() + "\n")
        return
    text = io.StringIO()
    csv.writer(text, lineterminator="\n").writerow(headers)
    write_whole(path, text.getvalue())
