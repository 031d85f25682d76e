"""What a split says in words: who does what, at what cost, what it saves, which hours bind."""

from __future__ import annotations

from math import inf
from typing import TYPE_CHECKING

from scupper import _report
from scupper._paper import money, short

if TYPE_CHECKING:
    from scupper.splitting import Split

#: How a least saving by law is counted, in words.
OVER = {"contract": "each contract by itself", "programme": "all contracts together"}


def verdict(split: Split) -> str:
    """One or two sentences."""
    own = split.counts.get("in-house", 0)
    out = len(split.table) - own
    money = f"{split.currency} {split.cost:,.0f} a year"
    if not own or not out:
        who = "Own people clean" if own else f"{_contracts(split)} {_takes(split)}"
        return f"{who} {_all(split)}: {money}, {_against(split)}."
    return (
        f"Own people clean {_structures(own)}, {_structures(out)} go out in {_contracts(split)}: "
        f"{money}, {_against(split)}."
    ).replace("1 structure go out", "1 structure goes out")


def _takes(split: Split) -> str:
    return "takes" if split.contracts == 1 else "take"


def _all(split: Split) -> str:
    return "the one structure" if len(split.table) == 1 else f"all {len(split.table):,} structures"


def _structures(number: int) -> str:
    return f"{number:,} structure{'' if number == 1 else 's'}"


def _contracts(split: Split) -> str:
    return "one contract" if split.contracts == 1 else f"{split.contracts} contracts"


def _against(split: Split) -> str:
    """What it saves against the cheaper way to do the whole list."""
    name, cost = split.one_way
    if cost != cost:
        return "where the whole list can be done neither way within the rules"
    saving = split.saving
    if round(abs(saving)) == 0:
        return f"as much as {name}"
    more = "less" if saving > 0 else "more"
    return f"{split.currency} {abs(saving):,.0f} {more} than {name}"


def capacity_rows(split: Split) -> list[dict[str, str]]:
    """Hours used and there are, and what more of them would save, as text."""
    per_hour, unlimited = (dict(split.worth[column]) for column in ("per_hour", "saving_unlimited"))
    rows = []
    for name, row in split.capacity.iterrows():
        limited = row["available"] < inf
        text = {"name": str(name).replace("_", " "), "per_hour": "", "lifted": ""}
        text |= {column: short(row[column]) for column in ("used", "all_in_house")}
        text["available"] = short(row["available"]) if limited else "not limited"
        if limited:
            text["per_hour"] = money(per_hour[name])
            text["lifted"] = money(unlimited[name])
        rows.append(text)
    return rows


def summary(split: Split) -> _report.Lines:
    """Lines of text: ways, costs, hours."""
    code = split.currency
    lines = [(way, _structures(n)) for way, n in split.counts.items()]
    lines.append(
        ("cost", f"{code} {split.cost:,.0f}{'' if split.proven else ', not proven least'}")
    )
    if split.over != "nothing":
        lines.append(("to be saved besides", f"{code} {split.saving_asked:,.0f}, "
                                             f"{OVER[split.over]}"))  # fmt: skip
    for name, row in split.capacity.iterrows():
        there = f" of {row['available']:,.0f}" if row["available"] < inf else ""
        lines.append((f"{str(name).replace('_', ' ')} hours", f"{row['used']:,.0f}{there}"))
    return [
        *lines,
        ("all in-house", f"{code} {split.all_in_house:,.0f}"
                         f"{'' if split.fits_in_house else ', more hours than there are'}"),
        ("all by contract", f"{code} {split.all_contract:,.0f}"),
    ]  # fmt: skip
