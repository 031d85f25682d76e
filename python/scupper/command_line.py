"""The command `scupper`."""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Sequence
from typing import TYPE_CHECKING

from scupper import _bid_commands, _core
from scupper._decide_command import add_decide
from scupper._draw_commands import add_draws
from scupper._learning_command import add_learn
from scupper.errors import Error, InputError, Interrupted

if TYPE_CHECKING:
    from scupper.estimating import Estimate
    from scupper.inventory import Inventory
    from scupper.job import Job

USER_ERROR = 2
INTERRUPTED = 130


def main(arguments: Sequence[str] | None = None) -> int:
    """Runs the command line.

    Parameters
    ----------
    arguments
        Words after the command; None for those of the process.

    Returns
    -------
    int
        0, 2 where the input cannot be used, 130 after Ctrl-C.
    """
    options = _parser().parse_args(arguments)
    try:
        options.run(options)
    except (KeyboardInterrupt, Interrupted):
        print("scupper: stopped; nothing was left half-written", file=sys.stderr)
        return INTERRUPTED
    except Error as e:
        print(f"scupper: {e}", file=sys.stderr)
        return USER_ERROR
    except BrokenPipeError:
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())  # `scupper rules | head`
    return 0


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="scupper", description="Plans and prices the routine cleaning of highway bridges."
    )
    parser.add_argument("--version", action="version", version=f"scupper {_core.__version__}")
    commands = parser.add_subparsers(required=True, metavar="command")
    _add_estimate(commands)
    _add_explain(commands)
    _add_template(commands)
    _add_workbook(commands)
    _add_papers(commands)
    _add_alternatives(commands)
    add_draws(commands, _add_job, _listed)
    _add_outings(commands)
    add_decide(commands, _add_job, _listed)
    _add_job(_bid_commands.add_items(commands))
    _bid_commands.add_read_bids(commands)
    add_learn(commands, _job)
    _bid_commands.add_bids(commands)
    for name, run, what in (
        ("rules", _rules, "print every rule of the take-off"),
        ("keys", _keys, "print every key that documents may use"),
    ):
        command = commands.add_parser(name, help=what)
        command.set_defaults(run=run)
    schema = commands.add_parser("schema", help="print the JSON Schema of a document")
    schema.add_argument("document", nargs="?", choices=["job", "structures"], default="job")
    schema.set_defaults(run=_schema)
    verify = commands.add_parser("verify", help="check the engine against published figures")
    verify.add_argument("--out", metavar="DIR", help="folder for the table as CSV and HTML")
    verify.add_argument("--rows", action="store_true", help="print every row, not only the counts")
    verify.set_defaults(run=_verify)
    demo = commands.add_parser("demo", help="write the records and job of an invented county")
    demo.add_argument("folder", metavar="DIR")
    demo.set_defaults(run=_demo)
    return parser


def _add_job(command: argparse.ArgumentParser) -> None:
    command.add_argument("records", metavar="RECORDS", help="inventory file")
    command.add_argument(
        "--elements", metavar="ELEMENTS.xml", nargs="+", help="element-level files to join"
    )
    command.add_argument("--job", metavar="JOB.json", help="job document; without it the demo's")
    command.add_argument("--rates", metavar="BOOK", help="rate book (.json, .csv, .xlsx): it wins")
    command.add_argument("--survey", metavar="SURVEY.csv", help="what was counted and measured")
    command.add_argument("--units", choices=["us", "metric", "si"], help="how results are shown")


def _add_estimate(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    command = commands.add_parser("estimate", help="price an inventory into CSV files")
    _add_job(command)
    command.add_argument("--out", metavar="DIR", required=True, help="folder for the CSV files")
    command.add_argument("--select", metavar="IDS", help="structure numbers, comma-separated")
    command.add_argument("--threads", type=int, metavar="N", help="as many as the machine has")
    command.set_defaults(run=_estimate)


def _add_explain(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    command = commands.add_parser("explain", help="print how a figure of a structure came about")
    _add_job(command)
    command.add_argument("structure", metavar="ID", help='structure number, or "state:number"')
    command.add_argument("key", metavar="KEY", help='as "water", "cost.total", "drain_count"')
    command.add_argument(
        "--depth", type=int, metavar="N", default=2, help="levels below the figure"
    )
    command.add_argument("--whole", action="store_true", help="every level, down to the inputs")
    command.set_defaults(run=_explain)


def _add_template(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    template = commands.add_parser("template", help="write a form to fill in")
    forms = template.add_subparsers(required=True, metavar="form")
    job = forms.add_parser("job", help="a job document with every input, its unit and source")
    job.set_defaults(run=_template_job)
    survey = forms.add_parser("survey", help="a sheet for what no record tells, a row a structure")
    survey.add_argument("records", metavar="RECORDS", help="inventory file")
    survey.add_argument("--select", metavar="IDS", help="structure numbers, comma-separated")
    survey.set_defaults(run=_template_survey)
    structures = forms.add_parser("structures", help="a table or list (.json) of structures")
    structures.set_defaults(run=_template_structures)
    structures.add_argument("--out", metavar="FILE", required=True, help="a new file")
    structures.add_argument("--units", choices=["us", "metric", "si"], default="us")
    rates = forms.add_parser("rates", help="a rate book (.csv, .xlsx, .json) to fill in")
    rates.set_defaults(run=_template_rates)
    for form in (job, survey, rates):
        form.add_argument("--out", metavar="FILE", required=True, help="a new file")
        form.add_argument("--job", metavar="JOB.json", help="job document; without it the demo's")
        form.add_argument("--units", choices=["us", "metric", "si"], help="units of the form")


def _add_workbook(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    command = commands.add_parser("workbook", help="price a structure into a live workbook")
    _add_job(command)
    command.add_argument("structure", metavar="ID", help='structure number, or "state:number"')
    command.add_argument("--out", metavar="FILE.xlsx", required=True, help="the workbook")
    command.set_defaults(run=_workbook)


def _add_papers(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    for name, run, what in (
        ("page", _page, "write the estimate of a structure on one page"),
        ("card", _card, "write a foreman's card for a structure"),
        ("report", _county_report, "write the report of a whole inventory"),
    ):
        command = commands.add_parser(name, help=what)
        _add_job(command)
        if name != "report":
            command.add_argument("structure", metavar="ID", help='number, or "state:number"')
        command.add_argument("--out", metavar="FILE.html", required=True, help="HTML to print")
        command.set_defaults(run=run)


def _add_alternatives(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    command = commands.add_parser(
        "methods", help="compare ways to clean, means of access and closures at a structure"
    )
    _add_job(command)
    command.add_argument("structure", metavar="ID", help='structure number, or "state:number"')
    command.add_argument(
        "--weights", metavar="WEIGHTS", help="what counts how much, as cost=2,closure=1,dirt_left=1"
    )
    command.add_argument("--out", metavar="FILE.html", help="the same as HTML to print")
    command.set_defaults(run=_alternatives)


def _add_outings(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    command = commands.add_parser("outings", help="put structures into the shifts of one crew")
    _add_job(command)
    command.add_argument("--select", metavar="IDS", help="structure numbers, comma-separated")
    command.add_argument("--within", metavar="DISTANCE", help='neighbours, as "5 mi"')
    command.add_argument("--twins", metavar="DISTANCE", help='the two of a pair, as "200 ft"')
    command.add_argument("--first", metavar="DAY", help="first day, as 2027-04-05")
    command.add_argument("--week-limit", metavar="TIME", help='plain hours of a week, as "40 h"')
    command.add_argument("--out", metavar="SHIFTS.csv", required=True, help="a row a shift")
    command.set_defaults(run=_outings)


def _job(options: argparse.Namespace) -> Job:
    from scupper.job import Job

    if options.job is None:
        print("scupper: no --job: the demo's invented prices and crew are used", file=sys.stderr)
    job = Job.demo() if options.job is None else Job.from_file(options.job)
    book = getattr(options, "rates", None)
    if book is not None:
        from scupper.rates import RateBook

        job = job.with_rates(RateBook.from_file(book))
    return job.replace(units=options.units) if options.units else job


def _records(options: argparse.Namespace) -> Inventory:
    from scupper.inventory import read_inventory

    elements = getattr(options, "elements", None)
    inventory = read_inventory(options.records, elements, progress=sys.stderr.isatty())
    for file in inventory.elements:
        print(file, file=sys.stderr)
    return inventory


def _chosen(options: argparse.Namespace, inventory: Inventory) -> Inventory:
    if options.select is None:
        return inventory
    return inventory.select(part.strip() for part in options.select.split(","))


def _surveyed(options: argparse.Namespace, inventory: Inventory) -> Job:
    job = _job(options)
    return job.with_survey(options.survey, inventory) if options.survey else job


def _estimate(options: argparse.Namespace) -> None:
    from scupper.results import write_results

    inventory = _records(options)
    job = _surveyed(options, inventory)
    chosen = _chosen(options, inventory)
    summary = write_results(
        options.out, inventory, chosen, job, threads=options.threads, progress=sys.stderr.isatty()
    )
    print(summary)


def _priced(options: argparse.Namespace) -> Estimate:
    from scupper.estimating import estimate

    inventory = _records(options)
    return estimate(inventory[options.structure], _surveyed(options, inventory))


def _explain(options: argparse.Namespace) -> None:
    depth = None if options.whole else options.depth
    print(_priced(options).explain(options.key, depth))


def _template_job(options: argparse.Namespace) -> None:
    from scupper.forms import write_job_form

    write_job_form(options.out, _job(options))
    print(options.out)


def _template_survey(options: argparse.Namespace) -> None:
    from scupper.forms import write_survey_sheet
    from scupper.inventory import Selection

    chosen = _chosen(options, _records(options))
    if isinstance(chosen, Selection):
        for number, near in chosen.missing.items():
            near_misses = ", ".join(near) or "nothing"
            print(f"scupper: not found: {number}, near: {near_misses}", file=sys.stderr)
    write_survey_sheet(options.out, chosen, _job(options))
    print(options.out)


def _template_rates(options: argparse.Namespace) -> None:
    from scupper.rates import write_rate_form

    write_rate_form(options.out, _job(options), options.units or "us")
    print(options.out)


def _template_structures(options: argparse.Namespace) -> None:
    from scupper.structures import write_structure_form

    write_structure_form(options.out, options.units)
    print(options.out)


def _schema(options: argparse.Namespace) -> None:
    of = {"job": _core.job_schema, "structures": _core.structures_schema}
    print(of[options.document]())


def _workbook(options: argparse.Namespace) -> None:
    _priced(options).save_workbook(options.out)
    print(options.out)


def _weights(text: str | None) -> dict[str, float] | None:
    """Weights from ``cost=2,closure=1``."""
    if text is None:
        return None
    weights = {}
    for part in text.split(","):
        name, _, number = part.partition("=")
        try:
            weights[name.strip()] = float(number)
        except ValueError:
            raise InputError(
                "alternatives.weights", "--weights", f'"{part}"', "as cost=2,closure=1"
            ) from None
    return weights


def _alternatives(options: argparse.Namespace) -> None:
    from scupper.choosing import alternatives

    inventory = _records(options)
    structure = inventory[options.structure]
    found = alternatives(structure, _surveyed(options, inventory), _weights(options.weights))
    print(found)
    if options.out:
        found.save_page(options.out)
        print(options.out)


def _page(options: argparse.Namespace) -> None:
    _priced(options).save_page(options.out)
    print(options.out)


def _card(options: argparse.Namespace) -> None:
    _priced(options).save_work_card(options.out)
    print(options.out)


def _outings(options: argparse.Namespace) -> None:
    from scupper.outings import outings

    inventory = _records(options)
    job = _surveyed(options, inventory)
    plan = outings(
        _chosen(options, inventory),
        job,
        within=options.within,
        twins=options.twins,
        first=options.first,
        week_limit=options.week_limit,
    )
    plan.save(options.out)
    print(plan)


def _listed(options: argparse.Namespace) -> tuple[Inventory, Job]:
    """The chosen structures and the job with its survey."""
    inventory = _records(options)
    job = _surveyed(options, inventory)
    return _chosen(options, inventory), job


def _county_report(options: argparse.Namespace) -> None:
    from scupper.programme import estimate_all

    inventory = _records(options)
    job = _surveyed(options, inventory)
    bar = sys.stderr.isatty()
    estimate_all(inventory, job, progress=bar).save_report(options.out, progress=bar)
    print(options.out)


def _rules(_: argparse.Namespace) -> None:
    from scupper.taking_off import rules

    for rule in rules().to_dict("records"):
        print(f"{rule['name']}: {rule['formula']}")
        for word in ("when", "missing", "source"):
            if rule[word]:
                print(f"    {word}: {rule[word]}")


def _keys(_: argparse.Namespace) -> None:
    print(_core.key_listing(), end="")


def _verify(options: argparse.Namespace) -> None:
    from scupper.verifying import verification, verification_counts, write_verification

    table = verification()
    if options.rows:
        columns = ["id", "quantity", "inputs", "published", "ours", "unit", "verdict", "basis"]
        print(table[columns].to_string(index=False, max_colwidth=44))
    print(verification_counts(table).to_string(index=False))
    for file in write_verification(options.out, table) if options.out else ():
        print(file)


def _demo(options: argparse.Namespace) -> None:
    from scupper.demo import write_demo

    for file in write_demo(options.folder):
        print(file)


if __name__ == "__main__":
    sys.exit(main())
