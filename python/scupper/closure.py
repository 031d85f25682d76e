"""Which closure a road probably needs while a bridge is cleaned.

A starting point only: the agency's traffic control plan and the manual it has adopted govern.
"""

from __future__ import annotations

from scupper._core import kind_by_record

__all__ = ["kind_by_record"]
