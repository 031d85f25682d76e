"""The parts of a list worked on one after the other here, or side by side on a cluster."""

from __future__ import annotations

import time
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import Any, Protocol

from scupper import _core
from scupper._needed import needed
from scupper._progress import Told
from scupper._run_folder import RunFolder
from scupper.errors import Error, InputError, Interrupted
from scupper.inventory import Inventory
from scupper.job import Job

State = tuple[Any, ...]

#: How often a part is done again after whoever had it was lost.
_TRIES = 3
#: How long a cluster may be without a worker [s].
_PATIENCE = 60.0
#: How long a wait for a part may take before the caller is asked whether to go on [s].
_TICK = 0.2
#: Parts at work or waiting for each thread of a cluster.
_PER_THREAD = 3


class Task(Protocol):
    """What is done with a part, here or on a worker."""

    def __call__(
        self, part: Inventory, job: Job, threads: int | None, progress: Told | None
    ) -> State:
        """The state of a finished part."""


@dataclass
class Watch:
    """Tells how many structures are done."""

    told: Told | None
    all: int
    done: int = 0

    def now(self, further: int = 0) -> bool:
        """Whether to go on."""
        return self.told is None or self.told(self.done + further, self.all) is not False

    def check(self) -> None:
        if not self.now():
            raise stopped()

    def add(self, structures: int) -> None:
        self.done += structures
        self.check()


def stopped() -> Interrupted:
    return Interrupted("cluster.stopped", "", "the run was stopped", "")


@dataclass
class Run:
    """One run over the parts of a list."""

    task: Task
    job: Job
    folder: RunFolder | None
    watch: Watch
    threads: int | None

    def kept(self, number: int, part: Inventory) -> State | None:
        """A part that a former run finished."""
        if self.folder is None:
            return None
        return self.folder.read(number, records_hash(part))

    def keep(self, number: int, part: Inventory, state: State) -> None:
        if self.folder is not None:
            self.folder.write(number, records_hash(part), state)


def records_hash(part: Inventory) -> str:
    """A hash of all that the records of a part say."""
    return f"{part._core.hash():016x}"


def here(parts: Iterable[Inventory], run: Run) -> Iterator[tuple[Inventory, State]]:
    """Each part and its state, in this process."""
    watch = run.watch
    for number, part in enumerate(parts):
        watch.check()
        state = run.kept(number, part)
        if state is None:
            within = None if watch.told is None else lambda done, _: watch.now(done)
            state = run.task(part, run.job, run.threads, within)
            run.keep(number, part, state)
        watch.add(len(part))
        yield part, state


def _job_of(job: Job) -> Job:
    """The job on a worker: every part that is worked on there has it from here."""
    return job


def _worked(task: Task, part: Inventory, job: Job, threads: int, version: str) -> State:
    """The state of a part, on a worker."""
    if version != _core.__version__:
        raise InputError("cluster.version", "worker", _core.__version__, version)
    return task(part, job, threads, None)


@dataclass
class _Part:
    number: int
    part: Inventory
    tries: int = 0


@dataclass
class _Cluster:
    """Parts that are at work on a cluster."""

    client: Any
    run: Run
    job: Any = None
    pending: dict[Any, _Part] = field(default_factory=dict)
    lonely_since: float | None = None

    def submit(self, what: _Part) -> None:
        if self.job is None or self.job.status in ("cancelled", "lost", "error"):
            self.job = self.client.submit(_job_of, self.run.job, pure=False)
        threads = self.run.threads or 1
        future = self.client.submit(
            _worked, self.run.task, what.part, self.job, threads, _core.__version__, pure=False
        )
        self.pending[future] = what

    def room(self) -> int:
        """How many parts may be under way, so that nobody's memory grows with the list."""
        threads: dict[str, int] = self.client.nthreads()
        return max(4, _PER_THREAD * sum(threads.values()))

    def finished(self) -> Iterator[tuple[_Part, State]]:
        """Parts that are done by now; waits for one, or for a moment."""
        distributed = needed("distributed", "a cluster")
        try:
            distributed.wait(list(self.pending), timeout=_TICK, return_when="FIRST_COMPLETED")
        except distributed.TimeoutError:
            self._need_workers()
        except distributed.CancelledError:
            pass  # lost futures are looked at below
        for future in [f for f in self.pending if f.status != "pending"]:
            what = self.pending.pop(future)
            if future.status == "finished":
                yield what, future.result()
            elif future.status == "error":
                raise _reason(future.exception(), what, distributed)
            else:
                self._again(what)

    def _again(self, what: _Part) -> None:
        what.tries += 1
        if what.tries > _TRIES:
            raise _lost(what, what.tries)
        self.submit(what)

    def _need_workers(self) -> None:
        if self.client.nthreads():
            self.lonely_since = None
            return
        self.lonely_since = self.lonely_since or time.monotonic()
        if time.monotonic() - self.lonely_since > _PATIENCE:
            allowed = f"a worker within {_PATIENCE:.0f} s"
            raise Error("cluster.no_workers", "client", "no worker", allowed)

    def cancel(self) -> None:
        if self.pending:
            self.client.cancel(list(self.pending))


def _reason(error: BaseException, what: _Part, distributed: Any) -> BaseException:
    if isinstance(error, distributed.scheduler.KilledWorker):
        return _lost(what, 1 + int(getattr(error, "allowed_failures", _TRIES)))
    return error


def _lost(what: _Part, times: int) -> Error:
    first = what.part[0].key
    found = f"its worker was lost {times} times"
    allowed = "workers with memory for a part: fewer rows a part, or fewer threads a worker"
    return Error("cluster.worker_lost", f"part {what.number} from {first}", found, allowed)


def on_cluster(
    parts: Iterable[Inventory], run: Run, client: Any
) -> Iterator[tuple[Inventory, State]]:
    """Each part and its state in the order of the list, worked on side by side."""
    cluster = _Cluster(client, run)
    rest = enumerate(parts)
    ready: dict[int, tuple[Inventory, State]] = {}
    following, more = 0, True
    try:
        while more or cluster.pending:
            room = cluster.room()
            while more and len(cluster.pending) + len(ready) < room:
                number, part = next(rest, (-1, None))
                if part is None:
                    more = False
                elif (state := run.kept(number, part)) is not None:
                    ready[number] = part, state
                    run.watch.add(len(part))
                else:
                    cluster.submit(_Part(number, part))
            if cluster.pending:
                for what, state in cluster.finished():
                    run.keep(what.number, what.part, state)
                    ready[what.number] = what.part, state
                    run.watch.add(len(what.part))
                run.watch.check()
            while following in ready:
                yield ready.pop(following)
                following += 1
    finally:
        cluster.cancel()
