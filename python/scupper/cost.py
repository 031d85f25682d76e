"""What an estimate costs, and the formulas of money: wages, equipment, interest, contract terms.

Money is text with its currency (``"46 USD/h"``), or bare numbers and arrays with ``units={"cash":
"USD/h"}``; arrays broadcast as in numpy. Amounts come out as plain numbers in the currency of the
arguments, money for a time by the hour; all amounts of a call are in one currency.
"""

from __future__ import annotations

from functools import cached_property
from typing import TYPE_CHECKING

from scupper import _core
from scupper._built_up import (
    BuiltUp,
    equipment_rate,
    parts,
    wage,
)
from scupper._contract import (
    CashFlow,
    conversion_differential,
    disposal_by_load,
    disposal_by_mass,
    distributed,
    hauled_water,
    hire,
    hydrant_water,
    retainage,
    retained,
    unit_cost,
    varied_payment,
)
from scupper._equipment import (
    average_investment,
    break_even_time,
    declining_balance,
    equipment_hour,
    fuel,
    hourly,
    mobilization,
    ownership_by_investment,
    ownership_by_recovery,
    repair,
    standby,
    straight_line,
    sum_of_years,
    tyres,
    updated_fuel,
)
from scupper._frames import frame
from scupper._interest import (
    capital_recovery_factor,
    compound_amount_factor,
    escalated,
    gradient_present_worth_factor,
    gradient_series_factor,
    implied_inflation,
    nominal_rate,
    present_worth,
    present_worth_factor,
    rate_for_term,
    real_rate,
    series_amount_factor,
    series_present_worth_factor,
    sinking_fund_factor,
)
from scupper._wages import (
    capped_tax,
    capped_tax_share,
    labour_hour,
    leave_factor,
    overtime_base,
    overtime_premium,
    show_up_time,
    week_pay,
)
from scupper.errors import UnknownNameError

if TYPE_CHECKING:
    import pandas as pd

__all__ = [
    "BuiltUp",
    "CashFlow",
    "Cost",
    "average_investment",
    "break_even_time",
    "capital_recovery_factor",
    "capped_tax",
    "capped_tax_share",
    "compound_amount_factor",
    "conversion_differential",
    "declining_balance",
    "disposal_by_load",
    "disposal_by_mass",
    "distributed",
    "equipment_hour",
    "equipment_rate",
    "escalated",
    "fuel",
    "gradient_present_worth_factor",
    "gradient_series_factor",
    "hauled_water",
    "hire",
    "hourly",
    "hydrant_water",
    "implied_inflation",
    "labour_hour",
    "leave_factor",
    "mobilization",
    "nominal_rate",
    "overtime_base",
    "overtime_premium",
    "ownership_by_investment",
    "ownership_by_recovery",
    "parts",
    "present_worth",
    "present_worth_factor",
    "rate_for_term",
    "real_rate",
    "repair",
    "retainage",
    "retained",
    "series_amount_factor",
    "series_present_worth_factor",
    "show_up_time",
    "sinking_fund_factor",
    "standby",
    "straight_line",
    "sum_of_years",
    "tyres",
    "unit_cost",
    "updated_fuel",
    "varied_payment",
    "wage",
    "week_pay",
]

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

    @cached_property
    def cube(self) -> pd.DataFrame:
        """Component and operation down, resource across; what costs nothing is 0.

        Overhead, profit, bond, mobilization and contingency stand in the component ``indirect``.
        The sum of the whole is `total`, that of any row, column or component the one of `by`.
        """
        return self.lines.pivot_table(
            index=["component", "operation"],
            columns="resource",
            values="amount",
            aggfunc="sum",
            fill_value=0.0,
            sort=False,
        )

    @cached_property
    def unit_costs(self) -> pd.DataFrame:
        """What each component costs by the unit of its quantity, in the job's units.

        Returns
        -------
        pandas.DataFrame
            By component, the structure as a whole last: quantity, unit, direct (its own lines),
            distributed (its part of closure, travel, supply and disposal, in proportion to
            direct), margins, total, per_unit, price_unit (``"USD/ft2"``). NaN: nothing to count by.
        """
        return frame(_core.unit_costs(self._core)).set_index("component")

    def __repr__(self) -> str:
        return f"{self.currency} {self.total:,.0f}"
