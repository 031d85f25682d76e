"""The commands `scupper simulate`, `sensitivity` and `survey-list`."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Callable
from contextlib import nullcontext
from functools import partial
from typing import TYPE_CHECKING

from scupper._files import write_whole

if TYPE_CHECKING:
    import pandas as pd

    from scupper.inventory import Inventory
    from scupper.job import Job
    from scupper.simulating import Simulation

    Commands = argparse._SubParsersAction[argparse.ArgumentParser]

AddJob = Callable[[argparse.ArgumentParser], None]
Listed = Callable[[argparse.Namespace], "tuple[Inventory, Job]"]
Work = Callable[[argparse.Namespace, "Inventory", "Job"], None]


def add_draws(commands: Commands, add_job: AddJob, listed: Listed) -> None:
    """Adds the commands; `listed` gives the structures and the job that their options ask for."""
    for add, work in (
        (_add_simulate, _simulate),
        (_add_sensitivity, _sensitivity),
        (_add_survey_list, _survey_list),
    ):
        command = add(commands)
        add_job(command)
        command.add_argument("--select", metavar="IDS", help="structure numbers, comma-separated")
        command.set_defaults(run=partial(_run, work, listed))


def _run(work: Work, listed: Listed, options: argparse.Namespace) -> None:
    work(options, *listed(options))


def _add_draws(command: argparse.ArgumentParser, draws: int, what: str) -> None:
    command.add_argument("--draws", type=int, metavar="N", default=draws, help=what)
    command.add_argument("--seed", type=int, metavar="N", default=1, help="same seed, same draws")
    command.add_argument(
        "--sampling",
        default="latin_hypercube",
        metavar="KIND",
        help="latin_hypercube, sobol, sobol_single or plain",
    )


def _add_simulate(commands: Commands) -> argparse.ArgumentParser:
    command = commands.add_parser("simulate", help="say how sure the price of a list is")
    _add_draws(command, 10_000, "in all; with --relative-error at most")
    command.add_argument(
        "--relative-error",
        type=float,
        metavar="SHARE",
        help="stop once the mean cost is known to this share of it, as 0.001",
    )
    command.add_argument("--budget", type=float, metavar="AMOUNT", help="say how likely it is held")
    command.add_argument("--folder", metavar="DIR", help="keep finished parts; go on from there")
    command.add_argument("--workers", type=int, metavar="N", help="processes that share the parts")
    command.add_argument("--plot", metavar="FILE.png", help="chance to stay below an amount")
    command.add_argument(
        "--out", metavar="RANGES", required=True, help="a row a structure: .csv or .parquet"
    )
    return command


def _add_sensitivity(commands: Commands) -> argparse.ArgumentParser:
    command = commands.add_parser("sensitivity", help="say which inputs a figure depends on")
    command.add_argument(
        "--figure", default="cost", metavar="NAME", help="cost, hours, water, debris or closure"
    )
    _add_draws(command, 1000, "of each of two samples; every input takes as many prices again")
    command.add_argument("--top", type=int, metavar="N", default=12, help="inputs by themselves")
    command.add_argument("--out", metavar="TABLE", help="a row an input: .csv or .json")
    return command


def _add_survey_list(commands: Commands) -> argparse.ArgumentParser:
    command = commands.add_parser(
        "survey-list", help="list the visits and measurements that narrow the cost most"
    )
    command.add_argument("--visits", type=int, metavar="N", default=20, help="structures at most")
    command.add_argument("--out", metavar="LIST.csv", required=True, help="the list")
    command.add_argument("--sheet", metavar="SHEET.csv", help="a new sheet to fill in for it")
    command.add_argument("--plot", metavar="FILE.png", help="what to measure first, as bars")
    return command


def _simulate(options: argparse.Namespace, inventory: Inventory, job: Job) -> None:
    found = _simulated(options, inventory, job)
    if options.out.lower().endswith(".parquet"):
        found.to_parquet(options.out)
    else:
        found.save(options.out)
    print(found)
    if options.budget is not None:
        print(f"above {options.budget:,.0f}: {found.chance_above(options.budget):.1%} of draws")
    if options.plot:
        from scupper._risk_charts import save

        save(options.plot, lambda axes: found.plot(limit=options.budget, ax=axes))
        print(options.plot)


def _simulated(options: argparse.Namespace, inventory: Inventory, job: Job) -> Simulation:
    """In one go, or in parts where they are kept or shared."""
    from scupper import cluster
    from scupper.simulating import simulate

    run = simulate
    here = options.folder is None and options.workers is None
    with nullcontext() if options.workers is None else cluster.local(options.workers) as client:
        if not here:
            run = partial(cluster.simulate, client=client, folder=options.folder)
        return run(
            inventory,
            job,
            options.draws,
            options.seed,
            sampling=options.sampling,
            relative_error=options.relative_error,
            progress=sys.stderr.isatty(),
        )


def _sensitivity(options: argparse.Namespace, inventory: Inventory, job: Job) -> None:
    from scupper.simulating import sensitivity

    table = sensitivity(
        inventory,
        job,
        options.figure,
        options.draws,
        options.seed,
        top=options.top,
        sampling=options.sampling,
        progress=sys.stderr.isatty(),
    )
    if options.out:
        write_whole(options.out, _table_text(options.out, table))
    print(table.set_index("label").to_string(float_format=lambda x: f"{x:.3f}", na_rep="–"))


def _table_text(path: str, table: pd.DataFrame) -> str:
    """A table by the ending of its file: rows as JSON, else CSV."""
    from scupper.results import safe_cells

    rows = table.reset_index()
    if path.lower().endswith(".json"):
        text = rows.to_json(orient="records", indent=1, double_precision=15, force_ascii=False)
        return f"{text}\n"
    return safe_cells(rows).to_csv(index=False)


def _survey_list(options: argparse.Namespace, inventory: Inventory, job: Job) -> None:
    from scupper.surveying import survey_list

    found = survey_list(inventory, job, options.visits, progress=sys.stderr.isatty())
    found.save(options.out)
    if options.sheet:
        found.write_sheet(options.sheet)
    print(found)
    if options.plot:
        from scupper._risk_charts import save, survey_height

        height = survey_height(len(found.visits))
        save(options.plot, lambda axes: found.plot(len(found.visits), axes), height)
        print(options.plot)
