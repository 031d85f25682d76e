"""Packages that only some calls need."""

from __future__ import annotations

from importlib import import_module
from typing import Any

from scupper.errors import Error


def needed(module: str, what: str, extra: str = "cluster") -> Any:
    """A module of an extra, or an error that says how to come by it.

    Parameters
    ----------
    module
        As ``"pyarrow.parquet"``.
    what
        What it is needed for.
    extra
        With which it is installed.
    """
    try:
        return import_module(module)
    except ImportError:
        package = module.partition(".")[0]
        allowed = f"{what} needs it: pip install 'scupper[{extra}]'"
        raise Error("package.missing", package, "not installed", allowed) from None
