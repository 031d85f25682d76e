"""Inventories and results as Parquet files, each with a stamp of what it rests on."""

from __future__ import annotations

import json
import os
import tempfile
from collections.abc import Iterable, Iterator, Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._files import replaced
from scupper._needed import needed
from scupper._structure_tables import table_of
from scupper.errors import FileError

if TYPE_CHECKING:
    import pandas as pd

#: First bytes of a Parquet file.
MAGIC = b"PAR1"
#: Where in a file's metadata the stamp stands.
STAMP = b"scupper"
#: The column that tells records of the national inventory.
NATIONAL = "STRUCTURE_NUMBER_008"
_FORM = 1


def is_parquet(path: str | os.PathLike[str]) -> bool:
    """Whether a file begins as Parquet files do."""
    try:
        with open(path, "rb") as file:
            return file.read(len(MAGIC)) == MAGIC
    except OSError:
        return False  # whoever reads it says what is wrong


def write_inventory(path: str | os.PathLike[str], core: _core.Inventory) -> None:
    """Writes every field of every record, with what was rejected or doubted."""
    pa = needed("pyarrow", "Parquet")
    columns = {name: _array(pa, c) for name, c in _core.structure_columns(core).items()}
    notes = {"kind": "inventory", "notes": _core.inventory_notes(core)}
    _write(path, [pa.table(columns)], notes)


def _array(pa: Any, column: Any) -> Any:
    """A column of the core; what is not recorded is null."""
    kind = getattr(column, "dtype", None)
    if kind == "int64":
        return pa.array(column, mask=column < 0)
    return (
        pa.array(column, from_pandas=True) if kind == "float64" else pa.array(column, pa.string())
    )


def write_tables(
    path: str | os.PathLike[str], tables: Iterable[pd.DataFrame], stamp: Mapping[str, Any]
) -> None:
    """Writes tables of the same columns one below the other, whole or not at all."""
    pa = needed("pyarrow", "Parquet")
    _write(path, (pa.Table.from_pandas(t, preserve_index=False) for t in tables), dict(stamp))


def _write(path: str | os.PathLike[str], tables: Iterable[Any], facts: dict[str, Any]) -> None:
    pq = needed("pyarrow.parquet", "Parquet")
    text = json.dumps({"form": _FORM, "version": _core.__version__, **facts})
    rest = iter(tables)
    first = next(rest)
    schema = first.schema.with_metadata({**(first.schema.metadata or {}), STAMP: text.encode()})
    with replaced(path) as partial, pq.ParquetWriter(partial, schema) as writer:
        writer.write_table(first.cast(schema))
        for table in rest:
            writer.write_table(table.cast(schema))


class ParquetFile:
    """A Parquet file of structures: this package's own, a table of them, or national records."""

    def __init__(self, path: str | os.PathLike[str]) -> None:
        pq = needed("pyarrow.parquet", "Parquet")
        self._path = os.fspath(path)
        try:
            self._file = pq.ParquetFile(self._path)
        except (OSError, needed("pyarrow", "Parquet").ArrowException) as e:
            raise self._bad(str(e)) from None
        self._facts = self._stamp()

    def _bad(self, found: str) -> FileError:
        return FileError("parquet.open", self._path, found, "a whole Parquet file of structures")

    def _stamp(self) -> dict[str, Any] | None:
        text = (self._file.schema_arrow.metadata or {}).get(STAMP)
        if text is None:
            return None
        facts: dict[str, Any] = json.loads(text)
        if facts.get("form") != _FORM or facts.get("kind") != "inventory":
            found = f"{facts.get('kind')} of form {facts.get('form')}"
            raise FileError("parquet.kind", self._path, found, f"an inventory of form {_FORM}")
        return facts

    def pieces(self, rows: int) -> Iterator[_core.Inventory]:
        """Its structures, at most so many at a time; the first piece has the notes of all."""
        if self._facts is None:
            whole, notes = self._foreign()
            cut, total = _cut(whole, rows), len(whole["structure_id"])
        else:
            cut, total, notes = self._batches(rows), self.structures, self._facts["notes"]
        for number, (columns, count) in enumerate(cut):
            yield _core.inventory_of(columns, piece_notes(notes, total, count, number == 0))

    def _batches(self, rows: int) -> Iterator[tuple[dict[str, Any], int]]:
        try:
            for batch in self._file.iter_batches(batch_size=rows):
                yield _columns(batch), len(batch)
            if self.structures == 0:
                yield _columns(self._file.read()), 0
        except (OSError, needed("pyarrow", "Parquet").ArrowException) as e:
            raise self._bad(str(e)) from None

    def whole(self) -> _core.Inventory:
        """All of it."""
        (whole,) = self.pieces(max(self._file.metadata.num_rows, 1))
        return whole

    @property
    def structures(self) -> int:
        """Rows it holds."""
        return int(self._file.metadata.num_rows)

    def _foreign(self) -> tuple[dict[str, Any], dict[str, Any]]:
        """Columns and notes of the structures of a file that another program wrote."""
        table = self._file.read().to_pandas()
        core = _national(table) if NATIONAL in table.columns else table_of(table)
        notes = {**_core.inventory_notes(core), "files": [self._path]}
        return dict(_core.structure_columns(core)), notes


def _columns(batch: Any) -> dict[str, Any]:
    """Columns as the core takes them."""
    return {n: _values(c) for n, c in zip(batch.schema.names, batch.columns, strict=True)}


def _values(column: Any) -> Any:
    kind = str(column.type)
    if kind == "int64":
        return column.fill_null(-1).to_numpy(zero_copy_only=False)
    if kind == "double":
        return column.to_numpy(zero_copy_only=False)
    return column.fill_null("").to_pylist()


def _cut(columns: Mapping[str, Any], rows: int) -> Iterator[tuple[dict[str, Any], int]]:
    """Columns cut into pieces."""
    length = len(columns["structure_id"])
    for first in range(0, max(length, 1), rows):
        part = {name: column[first : first + rows] for name, column in columns.items()}
        yield part, len(part["structure_id"])


def piece_notes(notes: Mapping[str, Any], total: int, count: int, first: bool) -> dict[str, Any]:
    """Notes of a piece of `count` structures; what was no structure is counted with the first."""
    if first:
        return {**notes, "rows": notes["rows"] - total + count}
    nothing: dict[str, Any] = {"routes_under": 0, "blank_lines": 0, "rejected": [], "doubts": []}
    return {**notes, **nothing, "rows": count}


def _national(table: pd.DataFrame) -> _core.Inventory:
    """Records of the national inventory, read as the text they were."""
    with tempfile.TemporaryDirectory() as folder:
        text = Path(folder) / "records.csv"
        table.to_csv(text, index=False)
        return _core.read_inventory(os.fspath(text), None)
