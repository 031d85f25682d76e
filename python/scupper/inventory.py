"""The inventory: structures, and everything the reader could not use."""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator, Sequence
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._core import Structure
from scupper._frames import frame, whole_numbers
from scupper._progress import Progress, told
from scupper._structure_tables import table_of
from scupper.elements import ElementFile, Path, joined
from scupper.errors import InputError, UnknownNameError

if TYPE_CHECKING:
    import pandas as pd

REJECTED = ["where", "line", "state", "structure_id", "found", "reason"]
_DOUBTS = ["where", "line", "state", "structure_id", "column", "found", "reason", "kept"]


class Inventory:
    """Structures in the order of their file: ``inv[0]``, ``inv["0042"]``, ``inv["99:0042"]``.

    Every row of the file is accounted for: rows = structures + rejected + routes under.
    """

    def __init__(self, core: _core.Inventory, elements: Sequence[ElementFile] = ()) -> None:
        self._core = core
        #: What each element file joined to it held and matched.
        self.elements: tuple[ElementFile, ...] = tuple(elements)

    def __len__(self) -> int:
        return len(self._core)

    def __iter__(self) -> Iterator[Structure]:
        return (self._core.at(i) for i in range(len(self)))

    def __getitem__(self, which: int | str) -> Structure:
        """The structure at a position, or of a number; "state:number" where states share it."""
        if isinstance(which, str):
            return self._find(which)
        return self._core.at(which if which >= 0 else range(len(self))[which])

    def _find(self, number: str) -> Structure:
        found: Structure | None = self._core.find(number)
        if found is None:
            near = ", ".join(self._core.near_misses(number, 3))
            allowed = f"{near}?" if near else "a structure number of this inventory"
            raise UnknownNameError("inventory.unknown", "inventory", f'"{number}"', allowed)
        return found

    @property
    def rows(self) -> int:
        """Records read, header and blank lines apart."""
        return self._core.rows

    @property
    def routes_under(self) -> int:
        """Records of routes under a structure; they are no structures."""
        return self._core.routes_under

    @property
    def files(self) -> list[str]:
        """Names of the files read."""
        return self._core.files

    @property
    def rejected(self) -> pd.DataFrame:
        """Records that are no structure: where, line, state, structure_id, found, reason."""
        return frame(self._core.rejected(), REJECTED)

    @property
    def doubts(self) -> pd.DataFrame:
        """Fields in doubt; ``kept`` says whether the value is recorded all the same."""
        return frame(self._core.doubts(), _DOUBTS)

    def to_pandas(self) -> pd.DataFrame:
        """The recorded fields, one row a structure, units in the column names.

        Returns
        -------
        pandas.DataFrame
            Missing numbers are NaN or NA, missing text is empty. What was measured beyond the
            record follows with its likely value: ``column.height [m]``. `read_inventory` reads
            such a table.
        """
        columns = self._core.recorded() | _core.measured(self._core)
        integers = [n for n, c in columns.items() if getattr(c, "dtype", None) == "int32"]
        return frame(columns | {name: whole_numbers(columns[name]) for name in integers})

    def select(self, numbers: Iterable[str]) -> Selection:
        """The structures of some numbers, and which numbers were not found.

        Parameters
        ----------
        numbers
            Structure numbers, or "state:number".

        Returns
        -------
        Selection
            In the order of the numbers; a number given twice is taken once.
        """
        found: dict[str, Structure] = {}
        missing: dict[str, list[str]] = {}
        repeated: list[str] = []
        for number in map(str, numbers):
            structure = self._unambiguous(number)
            if structure is None:
                missing[number] = self._core.near_misses(number, 3)
            elif structure.key in found:
                repeated.append(number)
            else:
                found[structure.key] = structure
        core = self._core.part(list(found.values()))
        return Selection(core, missing, repeated)

    def to_parquet(self, path: str | os.PathLike[str]) -> None:
        """Writes every field of every record as a Parquet file, whole or not at all.

        Parameters
        ----------
        path
            A column a field in SI units, null where it is not recorded; rejected records and doubts
            stand in the file's metadata. `read_inventory` reads the same again, to the bit.

        Raises
        ------
        FileError
            Where it cannot be written.
        Error
            Where pyarrow is not installed.
        """
        from scupper._parquet import write_inventory

        write_inventory(path, self._core)

    def __reduce__(self) -> tuple[Any, ...]:
        state = dict(_core.structure_columns(self._core)), dict(_core.inventory_notes(self._core))
        return _restored, (*state, self.elements)

    def _unambiguous(self, number: str) -> Structure | None:
        """The structure, or None where there is none or several states have one."""
        try:
            return self._core.find(number)
        except InputError:
            return None

    def __repr__(self) -> str:
        name = ", ".join(map(os.path.basename, self.files)) or "no file"
        return (
            f"<{type(self).__name__} of {name}: {len(self)} structures, "
            f"{len(self._core.rejected()['where'])} rejected, {self.routes_under} routes under, "
            f"{len(self._core.doubts()['where'])} doubts>"
        )


class Selection(Inventory):
    """A part of an inventory, usable wherever an inventory is.

    Attributes
    ----------
    missing : dict of str to list of str
        Numbers not found, or found in several states, and the nearest that exist.
    repeated : list of str
        Numbers of structures that were already taken.
    """

    def __init__(
        self, core: _core.Inventory, missing: dict[str, list[str]], repeated: list[str]
    ) -> None:
        super().__init__(core)
        self.missing = missing
        self.repeated = repeated


def _restored(columns: Any, notes: Any, elements: Sequence[ElementFile]) -> Inventory:
    return Inventory(_core.inventory_of(columns, notes), elements)


def read_inventory(
    source: str | os.PathLike[str] | pd.DataFrame | Sequence[str | os.PathLike[str]],
    elements: Path | Iterable[Path] | None = None,
    progress: Progress = False,
) -> Inventory:
    """Reads an inventory: a file in any form, several, or a table; and element files beside it.

    Parameters
    ----------
    source
        A file of the national inventory, delimited (columns are found by name), of fixed width, or
        of the specification of 2022 (JSON records, which hold their elements themselves);
        a list (JSON) or table (CSV with a column ``structure_id``) of measured structures; Parquet
        of `Inventory.to_parquet` or with the columns of any of these; or a DataFrame with columns
        as `Inventory.to_pandas` has them. The first bytes tell the form. Of several files
        the structures follow on one another; a second record of one is rejected.
    elements
        Element-level files (XML) to join by state and structure number, or one of them: their
        quantities take the place of inferred ones and have the basis ``element``. What does not
        fit the structure is among the doubts; `Inventory.elements` tells what matched.
    progress
        True for a bar on standard error, or a function of (bytes done, bytes in all).

    Returns
    -------
    Inventory
        Structures, rejected records and doubts.

    Raises
    ------
    FileError
        Where a file cannot be read, lacks necessary columns or is no element file.
    UnknownNameError
        Where a list or table of measured structures has a key that is none.
    """
    if isinstance(source, (str, os.PathLike)):
        core = _read(source, progress)
    elif isinstance(source, Sequence):
        from scupper._pieces import joined_files

        core = joined_files([_read(path, progress) for path in source])
    else:
        core = table_of(source)
    files = joined(elements, core)
    return Inventory(core, files)


def _read(path: str | os.PathLike[str], progress: Progress) -> _core.Inventory:
    from scupper._parquet import ParquetFile, is_parquet

    if not isinstance(path, (str, os.PathLike)):
        raise InputError("inventory.source", "source", type(path).__name__, "paths of files")
    if is_parquet(path):
        return ParquetFile(path).whole()
    with told(progress, "reading") as watch:
        return _core.read_inventory(os.fspath(path), watch)


def iter_inventory(
    path: str | os.PathLike[str], chunk: int = 100_000, progress: Progress = False
) -> Iterator[Inventory]:
    """Reads a file of the national inventory piece by piece, in memory for one piece.

    Parameters
    ----------
    path
        The file, delimited, of fixed width, JSON of the specification of 2022, or Parquet.
    chunk
        Records a piece, structures, rejected and routes under together.
    progress
        True for a bar on standard error, or a function of (bytes done, bytes in all).

    Returns
    -------
    iterator of Inventory
        Each piece with its own rejected records and doubts; lines are those of the file, in JSON
        the number of the record. A second record of a structure is rejected although the first
        stood in a former piece.

    Raises
    ------
    FileError
        Where it cannot be read or lacks necessary columns.
    InputError
        Where `chunk` is no positive number.
    """
    if chunk < 1:
        raise InputError("inventory.chunk", "chunk", repr(chunk), "1 or more records")
    from scupper._parquet import ParquetFile, is_parquet

    if is_parquet(path):
        return map(Inventory, ParquetFile(path).pieces(chunk))
    return _pieces(_core.InventoryFile(os.fspath(path), chunk), progress)


def _pieces(file: _core.InventoryFile, progress: Progress) -> Iterator[Inventory]:
    with told(progress, "reading") as watch:
        while (piece := file.next(watch)) is not None:
            yield Inventory(piece)


def gathered(structures: Inventory | Iterable[Structure]) -> Inventory:
    """An inventory as it is, or one of structures from anywhere."""
    if isinstance(structures, Inventory):
        return structures
    return Inventory(_core.Inventory.of(list(structures)))
