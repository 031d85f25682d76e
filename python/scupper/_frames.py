"""Columns from the core become pandas tables."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    import numpy as np
    import pandas as pd


def frame(columns: Mapping[str, Any], order: Sequence[str] | None = None) -> pd.DataFrame:
    """A table of columns, in an order."""
    import pandas as pd

    # The columns are nobody else's: to gather them into blocks would only copy them.
    return pd.DataFrame(dict(columns), columns=list(order or columns), copy=False)


def whole_numbers(codes: np.ndarray[Any, Any]) -> Any:
    """Whole numbers of which -1 means "not recorded", as pandas' nullable integers."""
    import pandas as pd

    return pd.arrays.IntegerArray(codes.astype("int64"), codes == -1)


def words(codes: np.ndarray[Any, Any], names: Sequence[str]) -> Any:
    """Numbers that stand for words, as a pandas categorical."""
    import pandas as pd

    return pd.Categorical.from_codes(codes.astype("int8"), categories=pd.Index(list(names)))


def with_units(columns: Iterable[tuple[str, str, Any]]) -> pd.DataFrame:
    """A table of columns of name, unit and values; the units stand in the names."""
    return frame({suffixed(name, unit): values for name, unit, values in columns})


def suffixed(name: str, unit: str) -> str:
    """A column name with its unit; counts and plain numbers have none."""
    if unit in ("each", "1"):
        return name
    return f"{name}_{unit.replace('/', '_per_').replace(' ', '_').replace('*', '_')}"
