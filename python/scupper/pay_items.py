"""Pay items of a contract: what it pays by, built up from the cost lines of estimates."""

from __future__ import annotations

import os
from collections.abc import Mapping
from decimal import Decimal
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._files import read_text, write_whole
from scupper._frames import frame
from scupper._progress import Progress, told
from scupper.errors import InputError, UnknownNameError
from scupper.estimating import Estimate
from scupper.programme import Programme, estimate_all
from scupper.results import safe_cells

if TYPE_CHECKING:
    import pandas as pd

    from scupper.simulating import Simulation

_DECIMALS = ("quantity", "low", "high", "unit_price", "extension", "amount", "difference")
_SHOWN = ["code", "group", "description", "unit", "quantity", "low", "high", "unit_price",
          "extension", "difference"]  # fmt: skip
#: What a file is written as, by its ending.
ENDINGS = (".xlsx", ".csv", ".html")


class PayItems:
    """The items of a contract with quantities, unit prices and extensions, exact decimals.

    Every cost line of the estimates is in exactly one item, or spread over all of them. The
    extensions add up to `total`; `residue` is what that differs from the price of the estimates.
    """

    def __init__(self, core: _core.PayItems, programme: Programme, contract: str) -> None:
        self._core = core
        self.programme = programme
        self.contract = contract

    @property
    def currency(self) -> str:
        """Three-letter code of every amount."""
        return self._core.currency

    @property
    def total(self) -> Decimal:
        """Sum of the extensions."""
        return Decimal(self._core.total)

    @property
    def estimated(self) -> Decimal:
        """Price of the estimates, to the cent."""
        return Decimal(self._core.estimated)

    @property
    def residue(self) -> Decimal:
        """`total` less `estimated`: nothing where a lump sum took what rounding leaves."""
        return Decimal(self._core.residue)

    @property
    def rounding(self) -> str:
        """The item that took what rounding leaves; empty where that is shown as `residue`."""
        return self._core.rounding

    @property
    def unused(self) -> list[str]:
        """Codes of the item list that no cost line fell to."""
        return list(self._core.unused)

    @cached_property
    def _table(self) -> pd.DataFrame:
        columns: dict[str, Any] = dict(self._core.table())
        for name in _DECIMALS:
            columns[name] = [Decimal(text) for text in columns[name]]
        return frame(columns)

    def to_pandas(self) -> pd.DataFrame:
        """One row an item: code, group, description, unit, quantity with low and high (5 % and
        95 % of draws), unit_price, extension, and by how much rounding the price makes the
        extension differ from the item's cost. Figures are exact: ``decimal.Decimal``.
        """
        return self._table[_SHOWN].copy()

    def _row(self, code: str) -> int:
        codes = list(self._table["code"])
        if code not in codes:
            near = _core.nearest_name(code, codes)
            allowed = f'"{near}"?' if near else "a code of the items"
            raise UnknownNameError("bid.code", "code", f'"{code}"', allowed)
        return codes.index(code)

    def explain(self, code: str) -> pd.DataFrame:
        """Which cost lines make an item: component, operation, resource, amount, the dearest first.

        Then its part of what is spread (``spread``) and what rounding changes (``rounding``); the
        rows add up to the extension.
        """
        import pandas as pd

        at = self._row(code)
        row = self._table.iloc[at]
        lines = frame(self._core.lines(at)).sort_values("amount", ascending=False, kind="stable")
        rest = {"spread": row["spread"]}
        rest["rounding"] = float(row["extension"]) - row["direct"] - row["spread"]
        more = [("", what, "", amount) for what, amount in rest.items()]
        added = pd.DataFrame(more, columns=list(lines.columns))
        return pd.concat([lines, added], ignore_index=True)

    @cached_property
    def spread(self) -> pd.DataFrame:
        """The cost lines that have no item of their own: component, operation, resource, amount."""
        return frame(self._core.spread())

    @cached_property
    def quantities(self) -> pd.DataFrame:
        """Quantities by structure, one column an item that is measured; before rounding."""
        from scupper.programme import identities

        rows = self.programme._core.priced().tolist()
        columns = {"structure_id": identities(self.programme.inventory, rows)["structure_id"]}
        for at, code in enumerate(self._table["code"]):
            if len(values := self._core.quantities(at)):
                columns[code] = values
        return frame(columns)

    def draws(
        self, simulation: Simulation, *, threads: int | None = None, progress: Progress = False
    ) -> pd.DataFrame:
        """Quantities of the items in every draw of a simulation, before rounding; a lump sum is 1.

        The draws are the simulation's own: quantities that rest on one uncertain input move
        together, and with the price. `BidReview.reversal` takes them.

        Parameters
        ----------
        simulation
            What `scupper.simulate` made of the same structures under the same job.
        threads
            How many; None for as many as the machine has. The draws are the same to the bit.
        progress
            As for `scupper.simulate`.

        Returns
        -------
        pandas.DataFrame
            A row a draw, a column an item.

        Raises
        ------
        InputError
            Where the simulation is of other structures or another job.
        """
        import pandas as pd

        with told(progress, "counting items") as watch:
            values = self._core.draws(
                self.programme.inventory._core, simulation._core, threads or 0, watch
            )
        return pd.DataFrame(values, columns=list(self._table["code"]), copy=False)

    def blank_form(self, path: str | os.PathLike[str]) -> None:
        """Writes the form to send to bidders (.xlsx or .csv): items and quantities, prices blank.

        Filled in, `scupper.read_bids` reads it.
        """
        from scupper._bid_sheets import form_bytes, form_csv

        ending = _ending(path, (".xlsx", ".csv"))
        write_whole(path, form_bytes(self) if ending == ".xlsx" else form_csv(self))

    def save(self, path: str | os.PathLike[str]) -> None:
        """Writes the priced items: a workbook with live formulas (.xlsx), .csv, or .html."""
        from scupper._bid_sheets import items_bytes, items_page

        ending = _ending(path, ENDINGS)
        if ending == ".xlsx":
            write_whole(path, items_bytes(self))
        elif ending == ".csv":
            write_whole(path, safe_cells(self.to_pandas()).to_csv(index=False))
        else:
            write_whole(path, items_page(self))

    def __repr__(self) -> str:
        rows = [f"{len(self._table)} pay items {self.contract.replace('_', ' ')}"]
        for r in self._table.to_dict("records"):
            amount = f"{r['quantity']:>12,} {r['unit']:<5} {r['unit_price']:>14,}"
            rows.append(f"{r['code']:14}{amount} {r['extension']:>16,}")
        rows.append(f"{'total':14}{self.currency + ' ' + format(self.total, ','):>50}")
        return "\n".join(rows)

    def _repr_html_(self) -> str:
        from scupper._bid_sheets import items_table

        return items_table(self)


def _ending(path: str | os.PathLike[str], known: tuple[str, ...]) -> str:
    ending = Path(path).suffix.lower()
    if ending not in known:
        allowed = "a name that ends in " + ", ".join(known)
        raise InputError("file.kind", "path", f'"{os.fspath(path)}"', allowed)
    return ending


def item_list(items: str | os.PathLike[str] | None = None) -> _core.ItemList:
    """An item list with its mapping from a JSON document; None for the one that ships.

    Raises
    ------
    InputError
        Naming file, line and item of what cannot be used.
    """
    if items is None:
        return _core.ItemList.read(_core.ItemList.shipped(), "pay_items.json")
    return _core.ItemList.read(read_text(items), os.fspath(items))


def pay_items(
    priced: Programme | Estimate,
    items: str | os.PathLike[str] | _core.ItemList | None = None,
    *,
    contract: str = "by_quantity",
    mobilization: str | None = None,
    traffic: str | None = None,
    choices: Mapping[str, str] | None = None,
    price_decimals: int = 2,
    draws: int = 256,
    seed: int = 1,
    threads: int | None = None,
) -> PayItems:
    """The pay items of a programme, or of one estimate.

    Parameters
    ----------
    priced
        A programme or an estimate.
    items
        An item list with its mapping: a JSON document; None for the one that ships (invented).
    contract
        ``"by_quantity"``, or ``"by_structure"``: one lump price for each named structure.
    mobilization
        ``"item"`` or ``"spread"`` over the items; None for the list's first way.
    traffic
        ``"lump_sum"`` or ``"day"``; None for the list's first way.
    choices
        Other choices that an own list has, by name.
    price_decimals
        Decimals of a unit price, 0 to 6.
    draws, seed
        What low and high of a quantity come from.
    threads
        How many; None for as many as the machine has.

    Returns
    -------
    PayItems
        Items whose extensions add up to the price to the cent.

    Raises
    ------
    InputError
        Naming the cost lines that no item takes, or that two take; an item with cost and no
        quantity.
    """
    programme = priced
    if isinstance(priced, Estimate):
        programme = estimate_all([priced.structure], priced.job)
    assert isinstance(programme, Programme)
    listed = items if isinstance(items, _core.ItemList) else item_list(items)
    options = dict(choices or {})
    options |= {"mobilization": mobilization} if mobilization else {}
    options |= {"traffic": traffic} if traffic else {}
    core = _core.pay_items(
        programme._core, programme.inventory._core, listed, contract, options, price_decimals,
        draws, seed, threads or 0,
    )  # fmt: skip
    return PayItems(core, programme, contract)
