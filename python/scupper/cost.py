"""What an estimate costs, by component, operation and resource."""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from scupper import _core
from scupper._frames import frame
from scupper.errors import UnknownNameError

if TYPE_CHECKING:
    import pandas as pd

DIMENSIONS = ("component", "operation", "resource")


class Cost:
    """The cost of one structure. Every sum over its lines is the total.

    Attributes
    ----------
    total : float
        In `currency`.
    currency : str
        Three-letter code.
    """

    def __init__(self, core: _core.Estimate, currency: str) -> None:
        self._core = core
        self.currency = currency
        self.total: float = core.figure("cost.total")[0]

    @cached_property
    def lines(self) -> pd.DataFrame:
        """The lines that are not zero: component, operation, resource, amount."""
        return frame(self._core.cost_lines())

    def by(self, dimension: str) -> pd.Series[float]:
        """The cost by one of component, operation, resource, the dearest first.

        Parameters
        ----------
        dimension
            ``"component"``, ``"operation"`` or ``"resource"``.

        Returns
        -------
        pandas.Series
            Sums to `total`.
        """
        if dimension not in DIMENSIONS:
            allowed = ", ".join(DIMENSIONS)
            raise UnknownNameError("cost.by", "cost.by", f'"{dimension}"', allowed)
        sums = self.lines.groupby(dimension)["amount"].sum()
        return sums.sort_values(ascending=False, kind="stable")

    def __repr__(self) -> str:
        return f"{self.currency} {self.total:,.0f}"
