"""The command `scupper decide`."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable
from typing import TYPE_CHECKING, Any

from scupper.errors import FileError, InputError

if TYPE_CHECKING:
    from scupper.inventory import Inventory
    from scupper.job import Job


def add_decide(
    commands: argparse._SubParsersAction[argparse.ArgumentParser],
    add_job: Callable[[argparse.ArgumentParser], None],
    listed: Callable[[argparse.Namespace], tuple[Inventory, Job]],
) -> None:
    """Adds the command; `listed` gives the structures and the in-house job of its options."""
    command = commands.add_parser("decide", help="hold own people against a contract")
    add_job(command)
    command.add_argument("--contract", metavar="JOB.json", required=True, help="job as it is let")
    command.add_argument("--terms", metavar="TERMS.json", help="terms by key, text with units")
    command.add_argument("--basis", choices=["avoidable", "full"], default="avoidable")
    command.add_argument("--hours", metavar="TIME", help='crew hours there are: splits, as "600 h"')
    command.add_argument(
        "--equipment",
        metavar="KIND=TIME",
        action="append",
        default=[],
        help='hours there are of a kind of equipment: splits, as bucket_truck="200 h"',
    )
    command.add_argument("--draws", type=int, metavar="N", default=2000)
    command.add_argument("--select", metavar="IDS", help="structure numbers, comma-separated")
    command.add_argument("--out", metavar="FILE.html", required=True, help="HTML to print")
    command.add_argument("--workbook", metavar="FILE.xlsx", help="the same as a workbook")
    command.set_defaults(run=lambda options: _decide(options, *listed(options)))


def _decide(options: argparse.Namespace, inventory: Inventory, job: Job) -> None:
    from scupper.deciding import decide
    from scupper.job import Job

    decision = decide(
        inventory,
        job,
        Job.from_file(options.contract),
        _terms(options.terms),
        basis=options.basis,
        draws=options.draws,
        progress=sys.stderr.isatty(),
    )
    yard = dict(map(_hours_of, options.equipment))
    split = decision.split(options.hours, equipment=yard) if options.hours or yard else None
    print(decision)
    if split:
        print(split)
    decision.page(options.out, split)
    print(options.out)
    if options.workbook:
        decision.save_workbook(options.workbook, split)
        print(options.workbook)


def _hours_of(text: str) -> tuple[str, str]:
    """A kind of equipment and the hours there are of it."""
    kind, equals, hours = text.partition("=")
    if not (kind and equals and hours):
        raise InputError("command.equipment", "--equipment", text, 'as bucket_truck="200 h"')
    return kind.strip(), hours.strip()


def _terms(path: str | None) -> dict[str, Any]:
    from scupper._files import read_text

    if path is None:
        return {}
    try:
        terms = json.loads(read_text(path))
    except ValueError as e:
        raise FileError("file.json", path, str(e), "terms by key as JSON") from None
    if not isinstance(terms, dict):
        raise FileError("file.json", path, "no object", '{"contract.inspection": "6 %"}')
    return terms
