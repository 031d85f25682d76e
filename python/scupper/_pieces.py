"""A long list of structures, a piece at a time: from memory, from a file, from many files."""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator, Sequence
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._core import Structure
from scupper._frames import frame
from scupper._parquet import piece_notes
from scupper.errors import FileError, InputError
from scupper.inventory import REJECTED, Inventory, gathered, iter_inventory, read_inventory

if TYPE_CHECKING:
    import pandas as pd

Path = str | os.PathLike[str]
Source = Inventory | Iterable[Structure] | Path | Sequence[Path]
_SECOND = "second record of the same structure"


class Seen:
    """Which structures stood in former files: 64 bits of each."""

    def __init__(self) -> None:
        self._file_of: dict[int, int] = {}
        self._files: list[str] = []

    def without_second(self, piece: _core.Inventory) -> _core.Inventory:
        """A piece without structures of former files; they are among its rejected records."""
        name = ", ".join(piece.files)
        if not self._files or self._files[-1] != name:
            self._files.append(name)
        here = len(self._files) - 1
        kept: list[int] = []
        rejected: list[tuple[Any, ...]] = []
        for i in range(len(piece)):
            structure = piece.at(i)
            first = self._file_of.setdefault(_core.hash_text(structure.key), here)
            if first == here:
                kept.append(i)
            else:
                found = f"first in {self._files[first]}"
                row = (0, structure.line, structure.state, structure.id, found, _SECOND)
                rejected.append(row)
        if not rejected:
            return piece
        columns, notes = _core.structure_columns(piece), dict(_core.inventory_notes(piece))
        notes["rejected"] = [*notes["rejected"], *rejected]
        return _core.inventory_of({n: _some(c, kept) for n, c in columns.items()}, notes)


def _some(column: Any, rows: list[int]) -> Any:
    return [column[i] for i in rows] if isinstance(column, list) else column[rows]


def joined_files(files: Sequence[_core.Inventory]) -> _core.Inventory:
    """The structures of several files, one after the other."""
    import numpy as np

    if not files:
        raise InputError("inventory.source", "source", "no file", "at least one file")
    seen = Seen()
    parts = [seen.without_second(file) for file in files] if len(files) > 1 else list(files)
    columns = [_core.structure_columns(part) for part in parts]
    joined: dict[str, Any] = {}
    for name, first in columns[0].items():
        every = [c[name] for c in columns]
        joined[name] = sum(every, []) if isinstance(first, list) else np.concatenate(every)
    return _core.inventory_of(joined, _joined_notes([_core.inventory_notes(p) for p in parts]))


def _joined_notes(parts: Sequence[dict[str, Any]]) -> dict[str, Any]:
    whole: dict[str, Any] = {name: type(value)() for name, value in parts[0].items()}
    for notes in parts:
        before = len(whole["files"])
        for name in ("rejected", "doubts"):
            whole[name] += [(row[0] + before, *row[1:]) for row in notes[name]]
        whole["files"] += notes["files"]
        whole["absent_columns"] += set(notes["absent_columns"]) - set(whole["absent_columns"])
        for name in ("rows", "routes_under", "blank_lines"):
            whole[name] += notes[name]
    return whole


class Records:
    """What a list held that was read a piece at a time: rows = structures + rejected + routes
    under."""

    def __init__(self) -> None:
        #: Names of the files.
        self.files: list[str] = []
        #: Records read.
        self.rows = 0
        #: Structures among them.
        self.structures = 0
        #: Records of routes under a structure.
        self.routes_under = 0
        #: Fields in doubt.
        self.doubts = 0
        self._rejected: dict[str, list[Any]] = {name: [] for name in REJECTED}

    @property
    def rejected(self) -> pd.DataFrame:
        """Records that are no structure: where, line, state, structure_id, found, reason."""
        return frame(self._rejected, REJECTED)

    def count(self, piece: _core.Inventory) -> None:
        """Counts a piece that was read."""
        notes = _core.inventory_notes(piece)
        self.files += [file for file in notes["files"] if file not in self.files]
        self.rows += notes["rows"]
        self.structures += len(piece)
        self.routes_under += notes["routes_under"]
        self.doubts += len(notes["doubts"])
        rejected = piece.rejected()
        for name, column in self._rejected.items():
            column += list(rejected[name])

    def __repr__(self) -> str:
        return (
            f"<Records of {len(self.files)} files: {self.structures:,} structures, "
            f"{len(self._rejected['where']):,} rejected, {self.routes_under:,} routes under, "
            f"{self.doubts:,} doubts>"
        )


class Pieces:
    """A list of structures in pieces of at most some records, none across two files.

    Where the pieces are cut does not depend on who works on them. To go through them is to count
    `records`.
    """

    def __init__(self, source: Source, rows: int) -> None:
        if rows < 1:
            raise InputError("cluster.rows", "rows", str(rows), "1 or more structures a part")
        self._rows = rows
        self._paths = _paths(source)
        self._inventory = None if self._paths else gathered(source)  # type: ignore[arg-type]
        self.records = Records()

    @property
    def from_files(self) -> bool:
        """Whether it is read from files."""
        return self._inventory is None

    def __iter__(self) -> Iterator[Inventory]:
        self.records = Records()
        for piece in self._all():
            self.records.count(piece)
            if len(piece):
                yield Inventory(piece)

    def _all(self) -> Iterator[_core.Inventory]:
        if self._inventory is not None:
            yield from _cut(self._inventory._core, self._rows)
            return
        seen = Seen()
        for path in self._paths:
            for piece in _pieces_of(path, self._rows):
                yield seen.without_second(piece) if len(self._paths) > 1 else piece

    def length(self) -> int:
        """How many structures there are, to say how long it takes: files are read once for it."""
        if self._inventory is not None:
            return len(self._inventory)
        return sum(len(piece) for path in self._paths for piece in _pieces_of(path, self._rows))

    def whole(self) -> Inventory:
        """All of it in memory."""
        if self._inventory is not None:
            return self._inventory
        return read_inventory(self._paths if len(self._paths) > 1 else self._paths[0])


def _paths(source: Source) -> list[Path]:
    """The files of a source; none where it is structures."""
    if isinstance(source, (str, os.PathLike)):
        return [source]
    if isinstance(source, Sequence) and source and isinstance(source[0], (str, os.PathLike)):
        return list(source)
    return []


def _cut(core: _core.Inventory, rows: int) -> Iterator[_core.Inventory]:
    for first in range(0, max(len(core), 1), rows):
        yield _core.inventory_slice(core, first, rows)


def _pieces_of(path: Path, rows: int) -> Iterator[_core.Inventory]:
    """The pieces of a file, with its notes; a form that cannot be read in pieces is read whole."""
    pieces = iter_inventory(path, rows)
    try:
        first = next(pieces)
    except FileError:
        whole = read_inventory(path)._core  # or the error that fits its form
        notes = _core.inventory_notes(whole)
        for number, piece in enumerate(_cut(whole, rows)):
            own = piece_notes(notes, len(whole), len(piece), number == 0)
            yield _core.inventory_of(_core.structure_columns(piece), own)
        return
    yield first._core
    yield from (piece._core for piece in pieces)
