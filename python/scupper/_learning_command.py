"""The command `scupper learn`."""

from __future__ import annotations

import argparse
from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from scupper.job import Job

JobOf = Callable[[argparse.Namespace], "Job"]


def add_learn(commands: argparse._SubParsersAction[argparse.ArgumentParser], job_of: JobOf) -> None:
    """Adds the command; `job_of` gives the job that its options ask for."""
    command = commands.add_parser("learn", help="learn rates from a log of finished jobs")
    command.add_argument("log", metavar="LOG.csv", help="finished jobs, a row an operation")
    command.add_argument("--records", metavar="RECORDS", help="inventory file the log names")
    command.add_argument("--job", metavar="JOB.json", help="job document; without it the demo's")
    command.add_argument("--rates", metavar="BOOK", help="rate book (.json, .csv, .xlsx): it wins")
    command.add_argument("--crew", default="", metavar="NAME", help="whose rates; any crew's")
    command.add_argument("--agency", default="", metavar="NAME", help="whose rates; any agency's")
    command.add_argument("--least-jobs", type=int, default=5, metavar="N", help="fewer: kept")
    command.add_argument("--units", choices=["us", "metric", "si"], help="how rates are shown")
    command.add_argument("--save", metavar="BOOK", help="rate book to write (.json, .csv, .xlsx)")
    command.add_argument("--out", metavar="TABLE.csv", help="old against new, a row a value")
    command.set_defaults(run=partial(_learn, job_of))


def _learn(job_of: JobOf, options: argparse.Namespace) -> None:
    from scupper.inventory import read_inventory
    from scupper.learning import learn

    job = job_of(options)
    inventory = read_inventory(options.records) if options.records else None
    found = learn(
        options.log,
        job,
        inventory,
        crew=options.crew,
        agency=options.agency,
        least_jobs=options.least_jobs,
    )
    if options.save:
        found.rates.save(options.save, job.units)
    if options.out:
        found.save(options.out)
    print(found)
    for row in found.faults.to_dict("records"):
        print(f"{row['place']}: {row['found']}: {row['reason']}")
