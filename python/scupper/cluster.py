"""Long lists: in parts, on as many machines as there are, and from where a run was stopped.

The result is that of `scupper.simulate` and `scupper.estimate_all` over the whole list, to the
bit, however it is cut and whoever works on it. Without a client the parts are done one after the
other in this process; with a folder memory does not grow with the list::

    with sc.cluster.local(4) as client:
        found = sc.cluster.simulate("nation.parquet", job, client=client, folder="run")
"""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import closing, contextmanager
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

from scupper import _core
from scupper._needed import needed
from scupper._parquet import write_tables
from scupper._part_runs import Run, Task, Watch, here, on_cluster
from scupper._pieces import Pieces, Records, Source
from scupper._progress import Progress, Told, told
from scupper._run_folder import RunFolder
from scupper.errors import InputError
from scupper.inventory import Inventory
from scupper.job import Job
from scupper.programme import Programme
from scupper.programme import estimate_all as _estimate_all
from scupper.simulating import Simulation, require_limit
from scupper.simulating import simulate as _simulate

if TYPE_CHECKING:
    import pandas as pd

__all__ = ["FolderSimulation", "Records", "estimate_all", "finished", "local", "simulate"]

#: Place of the rows of the structures in the state of a simulation.
_ROWS = 5


@dataclass(frozen=True)
class _Simulate:
    """A part priced in many draws."""

    draws: int
    seed: int
    sampling: str
    replicates: int | None

    def __call__(
        self, part: Inventory, job: Job, threads: int | None, progress: Told | None
    ) -> tuple[Any, ...]:
        found = _simulate(
            part, job, self.draws, self.seed, sampling=self.sampling, replicates=self.replicates,
            threads=threads, progress=progress or False,
        )  # fmt: skip
        return (*found._core.state(), found._identity)


@dataclass(frozen=True)
class _Estimate:
    """A part priced."""

    def __call__(
        self, part: Inventory, job: Job, threads: int | None, progress: Told | None
    ) -> tuple[Any, ...]:
        state: tuple[Any, ...] = _estimate_all(part, job, threads, progress or False)._core.state()
        return state


@contextmanager
def local(workers: int, threads: int = 1) -> Iterator[Any]:
    """A cluster of processes on this machine, closed at the end.

    Parameters
    ----------
    workers
        Processes. A program that starts them does so under ``if __name__ == "__main__":``.
    threads
        Parts that each works on at a time.

    Yields
    ------
    distributed.Client
        To hand to `simulate` and `estimate_all`.
    """
    if workers < 1:
        raise InputError("cluster.workers", "workers", str(workers), "1 or more")
    distributed = needed("distributed", "a cluster")
    with distributed.LocalCluster(
        n_workers=workers, threads_per_worker=threads, processes=True, dashboard_address=None
    ) as cluster, distributed.Client(cluster) as client:  # fmt: skip
        yield client


def simulate(
    source: Source,
    job: Job,
    draws: int = 10_000,
    seed: int = 1,
    *,
    client: Any = None,
    rows: int = 1000,
    folder: str | os.PathLike[str] | None = None,
    sampling: str = "latin_hypercube",
    replicates: int | None = None,
    relative_error: float | None = None,
    threads: int | None = None,
    progress: Progress = False,
) -> Simulation:
    """Prices a long list of structures in many draws: as `scupper.simulate`, to the bit.

    Parameters
    ----------
    source
        An inventory, structures, a file, or a list of files (of any form that `read_inventory`
        reads). Files are read a part at a time; a second record of a structure is rejected whatever
        file it stands in.
    job
        The job. It goes to each worker once.
    draws, seed, sampling, replicates
        As for `scupper.simulate`.
    relative_error
        As for `scupper.simulate`, of the total of the whole list: all parts are drawn in rounds of
        more and more replicates. A folder keeps the parts of each round.
    client
        A ``distributed.Client``: `local`, or of a cluster elsewhere whose workers have this package
        in the same version. A part whose worker is lost is done again. None for this process.
    rows
        Structures a part, at most.
    folder
        Where finished parts are kept, each whole or not at all. A later call with the same folder,
        job, settings and list reads what is finished and does the rest. The rows of the structures
        then stay there and only totals in memory.
    threads
        How many each part has: None for one on a cluster, here for as many as the machine has.
    progress
        True for a bar with the time left, or a function of (structures done, structures in all);
        False from it stops the run.

    Returns
    -------
    Simulation
        ``records`` tells what files held.

    Raises
    ------
    InputError
        Where the folder belongs to another run, naming what differs; and as `scupper.simulate`.
    Interrupted
        Where `progress` returns False. What was finished is in the folder, nothing half-written.
    Error
        ``cluster.worker_lost`` where a part loses its worker again and again,
        ``cluster.no_workers`` where there is none for a minute.
    """
    require_limit(relative_error)
    pieces = Pieces(source, rows)
    most = _Simulate(int(draws), int(seed), sampling, replicates)
    settings: dict[str, Any] = {"rows": rows, **vars(most)}
    if relative_error is not None:
        settings["relative_error"] = relative_error
    store = _store(folder, "simulate", job, settings)
    how = _How(job, client, threads, progress)
    if relative_error is None:
        found = _run_of(pieces, most, how, store)
    else:
        found = _run_until(pieces, most, relative_error, how, store)
    found.records = pieces.records if pieces.from_files else None
    return found


@dataclass(frozen=True)
class _How:
    """What all rounds of a run have in common."""

    job: Job
    client: Any
    threads: int | None
    progress: Progress


def _run_until(
    pieces: Pieces, most: _Simulate, relative_error: float, how: _How, store: RunFolder | None
) -> Simulation:
    """Round after round, each with more replicates, until the mean total cost is known."""
    if most.replicates is None:
        most = replace(most, replicates=_core.replicates_for(max(most.draws, 1)))
    number = most.replicates or 1
    following = _core.first_round(most.draws, number)
    while True:
        draws, replicates = following
        task = replace(most, draws=draws, replicates=replicates)
        within = None if store is None else store.round(replicates)
        if within is not None:
            within.begin("simulate", how.job, vars(task))
        found = _run_of(pieces, task, how, within)
        following = found._core.next_round(most.draws, number, relative_error)
        if following == (draws, replicates):
            if store is not None and within is not None:
                store.finish(within.facts()["parts"])
            return found


def _run_of(pieces: Pieces, task: _Simulate, how: _How, store: RunFolder | None) -> Simulation:
    """One run over all parts."""
    core: _core.Simulation | None = None
    identity: dict[str, list[Any]] = {}
    for _, (*state, names) in _states(
        pieces, task, how.job, store, how.client, how.threads, how.progress, "simulating"
    ):
        kept = tuple(state) if store is None else _rowless(state)
        core = _appended(core, _core.Simulation.of_state(how.job.plan, kept))
        if store is None:
            for column, values in names.items():
                identity.setdefault(column, []).extend(values)
    if core is None:
        return _nothing(how.job, task)
    if store is None:
        return Simulation(core, how.job, identity)
    return FolderSimulation(core, how.job, store)


def _store(
    folder: str | os.PathLike[str] | None, what: str, job: Job, settings: dict[str, Any]
) -> RunFolder | None:
    if folder is None:
        return None
    store = RunFolder(folder)
    store.begin(what, job, settings)
    return store


def _states(
    pieces: Pieces,
    task: Task,
    job: Job,
    store: RunFolder | None,
    client: Any,
    threads: int | None,
    progress: Progress,
    what: str,
) -> Iterator[tuple[Inventory, tuple[Any, ...]]]:
    """Each part and its state, in the order of the list."""
    with told(progress, what) as watch:
        length = pieces.length() if watch is not None else 0
        run = Run(task, job, store, Watch(watch, length), threads)
        done = here(pieces, run) if client is None else on_cluster(pieces, run, client)
        number = 0
        with closing(done):  # type: ignore[type-var]
            for pair in done:
                number += 1
                yield pair
    if store is not None:
        store.finish(number)


def _appended(whole: _core.Simulation | None, part: _core.Simulation) -> _core.Simulation:
    if whole is None:
        return part
    whole.append(part)
    return whole


def _rowless(state: list[Any]) -> tuple[Any, ...]:
    """A state without the rows of its structures: its totals."""
    return (*state[:_ROWS], b"", *state[_ROWS + 1 :])


def _nothing(job: Job, task: _Simulate) -> Simulation:
    """The run over a list without structures."""
    *state, names = task(Inventory(_core.Inventory.of([])), job, 1, None)
    return Simulation(_core.Simulation.of_state(job.plan, tuple(state)), job, names)


class FolderSimulation(Simulation):
    """A simulation whose totals are in memory and whose rows stand in the folder of its run."""

    def __init__(self, core: _core.Simulation, job: Job, store: RunFolder) -> None:
        super().__init__(core, job, {})
        self._store = store

    def parts(self) -> Iterator[Simulation]:
        """The parts one by one, each with its rows."""
        for *state, names in self._store.states():
            yield Simulation(
                _core.Simulation.of_state(self.job.plan, tuple(state)), self.job, names
            )

    def to_pandas(self) -> pd.DataFrame:
        """One row a structure, as `Simulation.to_pandas`: all parts in memory."""
        import pandas as pd

        return pd.concat([part.to_pandas() for part in self.parts()], ignore_index=True)

    def to_parquet(self, path: str | os.PathLike[str]) -> None:
        """Writes the rows as `Simulation.to_parquet`, with one part in memory at a time."""
        write_tables(path, (part.to_pandas() for part in self.parts()), self._facts())

    def _number(self) -> int:
        without = len(self._core.unpriced()["reason"]) + len(self._core.left_out()["reason"])
        return self._core.structures - without

    def __reduce__(self) -> Any:
        return FolderSimulation._restored, (self.job, self._core.state(), self._store)

    @staticmethod
    def _restored(job: Job, state: Any, store: RunFolder) -> FolderSimulation:
        return FolderSimulation(_core.Simulation.of_state(job.plan, state), job, store)

    def joined(self, following: Simulation) -> Simulation:
        """As `Simulation.joined`, with all rows in memory."""
        first, *others = self.parts()
        for part in (*others, following):
            first = first.joined(part)
        return first


def finished(folder: str | os.PathLike[str]) -> FolderSimulation:
    """What of a simulation in a folder is finished: the parts from the first on.

    Of a run with a limit of its standard error those of the last round of which there is any.

    Parameters
    ----------
    folder
        The folder of a run, whole or not.

    Returns
    -------
    FolderSimulation
        Totals over the finished parts.

    Raises
    ------
    InputError
        Where the folder has no finished part, or belongs to a run of another kind.
    """
    store = RunFolder(folder)
    what = store.facts().get("what")
    if what != "simulate":
        raise InputError("cluster.folder", os.fspath(folder), f"a run of {what}", "of simulate")
    store, job = store.latest(), store.job()
    core: _core.Simulation | None = None
    for *state, _ in store.states():
        core = _appended(core, _core.Simulation.of_state(job.plan, _rowless(state)))
    if core is None:
        allowed = "a folder with the first part finished"
        raise InputError("cluster.folder", os.fspath(folder), "no finished part", allowed)
    return FolderSimulation(core, job, store)


def estimate_all(
    source: Source,
    job: Job,
    *,
    client: Any = None,
    rows: int = 20_000,
    folder: str | os.PathLike[str] | None = None,
    threads: int | None = None,
    progress: Progress = False,
) -> Programme:
    """Prices a long list of structures: as `scupper.estimate_all`, to the bit.

    Parameters
    ----------
    source, job, client, rows, folder, threads, progress
        As for `simulate`; a programme keeps its records in memory.

    Returns
    -------
    Programme
        Priced rows, unpriced structures with reasons, totals.

    Raises
    ------
    InputError, Interrupted, Error
        As for `simulate`.
    """
    inventory = Pieces(source, rows).whole()
    store = _store(folder, "estimate", job, {"rows": rows})
    parts = [
        _core.Programme.of_state(job.plan, state)
        for _, state in _states(
            Pieces(inventory, rows), _Estimate(), job, store, client, threads, progress, "pricing"
        )
    ]
    if not parts:
        return _estimate_all(inventory, job)
    return Programme(_core.Programme.joined(parts), inventory, job)
