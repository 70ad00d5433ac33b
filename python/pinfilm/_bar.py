"""A progress bar for terminals and notebooks, in the few lines that it takes."""

from __future__ import annotations

import sys
import time
from collections.abc import Callable

__all__ = ["Report", "bar"]

Report = Callable[[int, int], object]
"""Called with rows done and rows in all; 0 in all where nobody knows."""


def watched() -> bool:
    """Return whether somebody sees what is written to the error stream: a terminal, or a notebook."""
    if sys.stderr is not None and sys.stderr.isatty():
        return True
    shell = sys.modules.get("IPython")
    return shell is not None and type(shell.get_ipython()).__name__ == "ZMQInteractiveShell"


def bar(label: str) -> Report:
    """Return a callback that draws one line over itself, at most ten times a second."""
    start, last = time.monotonic(), 0.0

    def report(done: int, total: int) -> None:
        nonlocal last
        now, ended = time.monotonic(), 0 < total <= done
        if now - last < 0.1 and not ended:
            return
        last = now
        speed = done / max(now - start, 1e-9)
        if total:
            filled = 30 * done // total
            left = (total - done) / max(speed, 1e-9)
            text = (
                f"{'█' * filled}{'·' * (30 - filled)} {done / total:4.0%} {done:,} of {total:,} rows, {left:.0f} s left"
            )
        else:
            text = f"{done:,} rows, {speed:,.0f} a second"
        print(f"\r{label} {text}   ", end="\n" if ended else "", file=sys.stderr, flush=True)

    return report
