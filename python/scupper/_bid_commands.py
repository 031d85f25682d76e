"""The commands of bids: pay items of a list, and forms that are read."""

from __future__ import annotations

import argparse
import sys
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    Commands = argparse._SubParsersAction[argparse.ArgumentParser]


def add_items(commands: Commands) -> argparse.ArgumentParser:
    """``scupper items``; the caller adds what every priced command takes."""
    command = commands.add_parser("items", help="price a list as pay items of a contract")
    command.add_argument("--select", metavar="IDS", help="structure numbers, comma-separated")
    command.add_argument("--items", metavar="ITEMS.json", help="own item list with its mapping")
    command.add_argument("--by-structure", action="store_true", help="a lump price for each")
    command.add_argument("--mobilization", choices=["item", "spread"], help="how it is paid")
    command.add_argument("--traffic", choices=["lump_sum", "day"], help="how its control is paid")
    command.add_argument("--form", metavar="FORM.xlsx", help="the blank form too (.xlsx, .csv)")
    command.add_argument("--out", metavar="FILE", required=True, help=".xlsx, .csv or .html")
    command.set_defaults(run=_items)
    return command


def add_read_bids(commands: Commands) -> None:
    """``scupper read-bids``."""
    command = commands.add_parser("read-bids", help="read bid forms and show what was understood")
    command.add_argument("forms", metavar="FORM", nargs="+", help="forms or a tabulation")
    command.add_argument("--mapping", metavar="MAPPING.json", help="what headings do not say")
    command.add_argument("--out", metavar="PRICES.csv", help="unit prices side by side")
    command.add_argument("--doubts", metavar="DOUBTS.csv", help="every doubtful cell")
    command.set_defaults(run=_read_bids)


def add_bids(commands: Commands) -> None:
    """``scupper bids``."""
    command = commands.add_parser("bids", help="check and compare bids: who is low, and how surely")
    command.add_argument("forms", metavar="FORM", nargs="+", help="forms or a tabulation")
    command.add_argument("--mapping", metavar="MAPPING.json", help="what headings do not say")
    command.add_argument(
        "--governs",
        choices=["unit_price", "words", "extension"],
        default="unit_price",
        help="what holds where figures contradict each other",
    )
    command.add_argument("--ranges", metavar="RANGES.csv", help="code, low and high of quantities")
    command.add_argument("--daily-cost", metavar="AMOUNT", help="road-user cost, for days bid")
    command.add_argument("--out", metavar="AWARD", help="the award sheet (.html, .xlsx)")
    command.set_defaults(run=_bids)


def _items(options: argparse.Namespace) -> None:
    from scupper.command_line import _chosen, _records, _surveyed
    from scupper.pay_items import pay_items
    from scupper.programme import estimate_all

    inventory = _records(options)
    job = _surveyed(options, inventory)
    programme = estimate_all(_chosen(options, inventory), job)
    items = pay_items(
        programme,
        options.items,
        contract="by_structure" if options.by_structure else "by_quantity",
        mobilization=options.mobilization,
        traffic=options.traffic,
    )
    items.save(options.out)
    if options.form:
        items.blank_form(options.form)
    for row in programme.unpriced.to_dict("records"):
        print(f"scupper: no price: {row['structure_id']}, {row['reason']}", file=sys.stderr)
    print(items)


def _read_bids(options: argparse.Namespace) -> None:
    from scupper._files import write_whole
    from scupper.bid_forms import read_bids
    from scupper.results import safe_cells

    bids = read_bids(options.forms, options.mapping)
    for path, table in (
        (options.out, bids.to_pandas().reset_index()),
        (options.doubts, bids.doubts),
    ):
        if path:
            write_whole(path, safe_cells(table).to_csv(index=False))
    print(bids.preview)


def _bids(options: argparse.Namespace) -> None:
    from scupper._award_facts import reversal_sentence
    from scupper.bid_forms import read_bids
    from scupper.bid_review import read_ranges, review

    ranges = None if options.ranges is None else read_ranges(options.ranges)
    found = review(
        read_bids(options.forms, options.mapping), governs=options.governs, ranges=ranges
    )
    print(found)
    for row in found.findings.to_dict("records"):
        print(f"{row['bidder']}: {row['text']} {row['remedy']}")
    for row in found.unbalanced().to_dict("records"):
        print(f"{row['bidder']}, {row['item']}: {row['means']} {row['ask']}")
    chance = None
    if ranges is not None and found.low is not None:
        chance = found.reversal()
        print(reversal_sentence(chance, found.currency))
    timed = None
    if options.daily_cost is not None:
        timed = found.with_time(options.daily_cost)
        print(timed.to_string())
    if options.out:
        found.save(options.out, reversal=chance, time=timed)
