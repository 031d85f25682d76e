"""How far a long call is: nothing, a bar, or the caller's own function."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager

Told = Callable[[int, int], bool | None]
Progress = bool | Told


@contextmanager
def told(progress: Progress, what: str) -> Iterator[Told | None]:
    """The function the core calls with numbers done and in all.

    Parameters
    ----------
    progress
        False for none, True for a bar on standard error, or a function of (done, all); False from
        it stops the call.
    what
        What the bar says.
    """
    if progress is False:
        yield None
    elif progress is True:
        with _bar(what) as update:
            yield update
    else:
        yield progress


@contextmanager
def _bar(what: str) -> Iterator[Told]:
    """A bar with what is done, how many a second and the time left."""
    from rich import progress as bars
    from rich.console import Console

    columns = (
        bars.TextColumn("{task.description}"),
        bars.BarColumn(),
        bars.TextColumn("{task.completed:,.0f} of {task.total:,.0f}"),
        bars.TextColumn("{task.fields[speed]}"),
        bars.TimeRemainingColumn(),
        bars.TextColumn("left"),
    )
    with bars.Progress(*columns, console=Console(stderr=True), transient=True) as bar:
        task = bar.add_task(what, total=0, speed="")

        def update(done: int, total: int) -> None:
            speed = bar.tasks[0].speed
            shown = "" if speed is None else f"{speed:,.0f}/s"
            bar.update(task, completed=done, total=total, speed=shown)

        yield update
