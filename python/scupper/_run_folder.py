"""A folder of finished parts of a long run, so that it can go on where it was stopped."""

from __future__ import annotations

import io
import json
import os
import zipfile
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any

from scupper import _core
from scupper._files import not_writable, write_whole
from scupper._stamp import job_hash
from scupper.errors import FileError, InputError
from scupper.job import Job

_FORM = 1
_MANIFEST = "manifest.json"
_JOB = "job.json"
_ROUND = "replicates-"
#: How many differences a refusal names.
_MOST = 3


class RunFolder:
    """Finished parts of one run: each in a file of its own that is written whole or not at all.

    `manifest.json` says what the run is; a part says of which records it is. One run at a time
    writes into a folder.
    """

    def __init__(self, path: str | os.PathLike[str]) -> None:
        self._path = Path(path)

    def begin(self, what: str, job: Job, settings: Mapping[str, Any]) -> None:
        """Makes the folder, or takes up one that was begun for the same run.

        Raises
        ------
        InputError
            Where it belongs to another run; what differs is named.
        """
        facts = {"form": _FORM, "what": what, "version": _core.__version__,
                 "job": job_hash(job), **settings}  # fmt: skip
        if (self._path / _MANIFEST).exists():
            self._compare(facts, job)
            for left in self._path.glob(".*.partial"):  # by a run that was killed
                left.unlink(missing_ok=True)
            return
        try:
            self._path.mkdir(parents=True, exist_ok=True)
            if {f.name for f in self._path.iterdir() if f.name[0] != "."} - {_JOB}:
                allowed = "an empty folder, or one with the manifest of the same run"
                raise InputError("cluster.folder", str(self._path), "other files", allowed)
        except OSError as e:
            raise not_writable(self._path, e) from None
        write_whole(self._path / _JOB, job._core.write())
        write_whole(self._path / _MANIFEST, json.dumps(facts, indent=1))

    def _compare(self, facts: Mapping[str, Any], job: Job) -> None:
        begun = self.facts()
        begun.pop("parts", None)
        for name in {**facts, **begun}:
            if begun.get(name) == facts.get(name):
                continue
            found, allowed = f"{name} {facts.get(name)}", f"{name} {begun.get(name)}"
            if name == "job":
                found, allowed = "another job", "the job it was begun with: " + self._moved(job)
            raise InputError("cluster.folder", str(self._path), found, allowed)

    def _moved(self, job: Job) -> str:
        """The first keys in which a job differs from that of the folder."""
        before, now = _flat(self._document()), _flat(job.to_dict())
        keys = [key for key in {**before, **now} if before.get(key) != now.get(key)]
        named = [f"{key} {before.get(key)!r}, not {now.get(key)!r}" for key in keys[:_MOST]]
        return "; ".join(named) + (f"; and {len(keys) - _MOST} more" if len(keys) > _MOST else "")

    def _document(self) -> dict[str, Any]:
        return _document(self._path / _JOB)

    def facts(self) -> dict[str, Any]:
        """What the run is."""
        return _document(self._path / _MANIFEST)

    def job(self) -> Job:
        """The job of the run."""
        return Job.from_file(self._path / _JOB)

    def round(self, replicates: int) -> RunFolder:
        """The folder within it of a round that has so many replicates."""
        return RunFolder(self._path / f"{_ROUND}{replicates:06d}")

    def latest(self) -> RunFolder:
        """The last round of which any part is finished; the folder itself where it has none."""
        rounds = [RunFolder(path) for path in sorted(self._path.glob(f"{_ROUND}*"))]
        begun = [one for one in rounds if one._file(0).exists()]
        return begun[-1] if begun else self

    def _file(self, number: int) -> Path:
        return self._path / f"part-{number:06d}.npz"

    def read(self, number: int, records: str | None = None) -> tuple[Any, ...] | None:
        """A finished part; None where there is none yet, or its file is not whole.

        Parameters
        ----------
        number
            Place of the part in the list.
        records
            Hash of the records it has to be of; None for any.

        Raises
        ------
        InputError
            Where it is of other records.
        """
        import numpy as np

        path = self._file(number)
        if not path.exists():
            return None
        try:
            with path.open("rb") as raw, np.load(raw, allow_pickle=False) as file:
                head = json.loads(file["head"].tobytes())
                state = tuple(_value(item, file) for item in head["state"])
        except (OSError, EOFError, KeyError, ValueError, zipfile.BadZipFile):
            return None
        if records is not None and head["records"] != records:
            allowed = "the records it was begun with"
            raise InputError("cluster.folder", str(path), "a part of other records", allowed)
        return state

    def write(self, number: int, records: str, state: tuple[Any, ...]) -> None:
        """Writes a part, whole or not at all."""
        import numpy as np

        blobs: dict[str, Any] = {}
        items = [_stored(item, blobs) for item in state]
        head = json.dumps({"records": records, "state": items}).encode()
        buffer = io.BytesIO()
        np.savez_compressed(buffer, head=np.frombuffer(head, np.uint8), **blobs)
        write_whole(self._file(number), buffer.getvalue())

    def finish(self, parts: int) -> None:
        """Writes down that all parts are there."""
        write_whole(self._path / _MANIFEST, json.dumps({**self.facts(), "parts": parts}, indent=1))

    def states(self) -> Iterator[tuple[Any, ...]]:
        """The finished parts from the first on, as far as they follow on one another."""
        number = 0
        while (state := self.read(number)) is not None:
            yield state
            number += 1


def _document(path: Path) -> dict[str, Any]:
    try:
        document: dict[str, Any] = json.loads(path.read_text(encoding="utf-8"))
    except (OSError, ValueError) as e:
        raise FileError("cluster.manifest", str(path), str(e), "a folder of a run") from None
    return document


def _stored(item: Any, blobs: dict[str, Any]) -> Any:
    """An item of a state as JSON knows it; bytes stand beside it."""
    import numpy as np

    if not isinstance(item, bytes):
        return {"is": item}
    name = f"bytes{len(blobs)}"
    blobs[name] = np.frombuffer(item, np.uint8)
    return {"bytes": name}


def _value(item: Mapping[str, Any], file: Any) -> Any:
    return file[item["bytes"]].tobytes() if "bytes" in item else item["is"]


def _flat(document: Any, path: str = "") -> dict[str, Any]:
    """Every value of a document by its path."""
    if isinstance(document, Mapping):
        below = [_flat(v, f"{path}.{k}" if path else str(k)) for k, v in document.items()]
    elif isinstance(document, list):
        below = [_flat(v, f"{path}[{i}]") for i, v in enumerate(document)]
    else:
        return {path: document}
    return {key: value for part in below for key, value in part.items()}
