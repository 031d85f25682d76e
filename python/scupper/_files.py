"""Files are read with a readable error, and written whole or not at all."""

from __future__ import annotations

import os
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from scupper.errors import FileError


def read_text(path: str | os.PathLike[str]) -> str:
    """The UTF-8 text of a file."""
    try:
        return Path(path).read_text(encoding="utf-8")
    except OSError as e:
        reason = e.strerror or str(e)
        raise FileError("file.open", os.fspath(path), reason, "a readable file") from None
    except UnicodeDecodeError as e:
        raise FileError("file.text", os.fspath(path), str(e), "UTF-8 text") from None


@contextmanager
def replaced(path: str | os.PathLike[str]) -> Iterator[Path]:
    """A file to write beside another, which it replaces once it is whole."""
    target = Path(path)
    partial = target.with_name(f".{target.name}.{os.getpid()}.partial")
    try:
        yield partial
        os.replace(partial, target)
    except OSError as e:
        raise not_writable(target, e) from None
    finally:
        partial.unlink(missing_ok=True)


def write_whole(path: str | os.PathLike[str], content: str | bytes) -> None:
    """Writes beside the file, then puts the new one in its place."""
    with replaced(path) as partial:
        partial.write_bytes(content.encode("utf-8") if isinstance(content, str) else content)


def require_new(path: str | os.PathLike[str]) -> None:
    """Refuses a path where there is something already."""
    if Path(path).exists():
        allowed = "a new file: a form that is filled in is not overwritten"
        raise FileError("file.exists", os.fspath(path), "a file", allowed)


def not_writable(path: Path, error: OSError) -> FileError:
    return FileError("file.write", str(path), error.strerror or str(error), "a writable path")
