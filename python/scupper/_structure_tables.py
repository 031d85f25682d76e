"""A pandas table of structures becomes the rows of text that the core reads."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper.errors import InputError

if TYPE_CHECKING:
    import pandas as pd


def table_of(table: pd.DataFrame) -> _core.Inventory:
    """The structures of a table with columns as `Inventory.to_pandas` has them."""
    import pandas as pd

    if not isinstance(table, pd.DataFrame):
        found = type(table).__name__
        raise InputError("inventory.source", "source", found, "a path or a pandas.DataFrame")
    columns = [_cells(table.iloc[:, i]) for i in range(table.shape[1])]
    rows = [(line, list(cells)) for line, cells in enumerate(zip(*columns, strict=True), start=1)]
    return _core.read_structure_table("DataFrame", [str(name) for name in table.columns], rows)


def _cells(column: pd.Series[Any]) -> list[str]:
    """Text of each value; nothing where it is missing."""
    missing = column.isna().to_list()
    return ["" if gone else _cell(v) for gone, v in zip(missing, column.to_list(), strict=True)]


def _cell(value: Any) -> str:
    """Text that reads back to the same value."""
    return repr(float(value)) if isinstance(value, float) else str(value).strip()
