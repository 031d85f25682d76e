"""Packages that only some calls need."""

from __future__ import annotations

from importlib import import_module
from typing import Any

from scupper.errors import Error


def needed(module: str, what: str) -> Any:
    """A module of the extra ``cluster``, or an error that says how to come by it.

    Parameters
    ----------
    module
        As ``"pyarrow.parquet"``.
    what
        What it is needed for.
    """
    try:
        return import_module(module)
    except ImportError:
        package = module.partition(".")[0]
        allowed = f"{what} needs it: pip install 'scupper[cluster]'"
        raise Error("package.missing", package, "not installed", allowed) from None
