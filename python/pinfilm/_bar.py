"""A progress bar for terminals and notebooks, in the few lines that it takes."""

from __future__ import annotations

import importlib
import shutil
import sys
import time
from collections.abc import Callable
from types import TracebackType
from typing import Any

__all__ = ["Bar", "Report", "watched"]

Report = Callable[[int, int], object]
"""Called with rows done and rows in all; 0 in all where nobody knows."""

WIDTH = 30
"""Blocks of the bar, at most."""


def watched() -> bool:
    """Return whether somebody sees what is written: a terminal, or a notebook."""
    return _in_notebook() or (sys.stderr is not None and sys.stderr.isatty())


def _in_notebook() -> bool:
    shell = sys.modules.get("IPython")
    return shell is not None and hasattr(shell.get_ipython(), "kernel")


class Bar:
    """Draws one line over itself, at most ten times a second; leaves the last one standing, whatever ends the run.

    In a notebook the line is one output that is replaced, so that a saved notebook holds it once.
    """

    def __init__(self, label: str, ready: int = 0) -> None:
        """Begin a bar; `ready` are rows that were done before it began."""
        self.label, self.ready = label, ready
        self.start = time.monotonic()
        self.last = -1.0
        self.shown: tuple[int, int] | None = None
        self.told: tuple[int, int] | None = None
        self.display: Any = None

    def __enter__(self) -> Bar:
        """Give the bar itself."""
        return self

    def __call__(self, done: int, total: int) -> None:
        """Tell how far it is; draws if the last drawing is a tenth of a second old."""
        self.told = (done, total)
        now = time.monotonic()
        if now - self.last >= 0.1:
            self.last = now
            self._draw(done, total)

    def __exit__(
        self, kind: type[BaseException] | None, error: BaseException | None, trace: TracebackType | None
    ) -> None:
        """Draw what was told last, and end the line."""
        if self.told is not None and self.told != self.shown:
            self._draw(*self.told)
        if self.shown is not None and self.display is None:
            print(file=sys.stderr, flush=True)

    def _draw(self, done: int, total: int) -> None:
        self.shown = (done, total)
        if _in_notebook():
            self._replace(self._text(done, total, 120, "█·"))
            return
        try:
            "█·".encode(sys.stderr.encoding or "ascii")
            blocks = "█·"
        except UnicodeEncodeError:
            blocks = "#-"
        # a line that fills the terminal would go on in the next one, and could not be drawn over
        columns = shutil.get_terminal_size().columns - 1
        text = self._text(done, total, columns, blocks)
        print(f"\r{text:<{columns}}", end="", file=sys.stderr, flush=True)

    def _replace(self, text: str) -> None:
        content = {"text/plain": text}
        if self.display is None:
            display = importlib.import_module("IPython.display").display
            self.display = display(content, raw=True, display_id=True)
        else:
            self.display.update(content, raw=True)

    def _text(self, done: int, total: int, columns: int, blocks: str) -> str:
        spent = time.monotonic() - self.start
        speed = (done - self.ready) / max(spent, 1e-9)
        if not total:
            return _cut(f"{self.label} {done:,} rows, {speed:,.0f} a second", columns)
        share = f"{done / total:4.0%} {done:,} of {total:,} rows"
        if done >= total:
            share += f" in {_span(spent)}"
        elif done > self.ready:
            share += f", {_span((total - done) / speed)} left"
        # a narrow terminal takes from the bar first, then from the label
        width = max(0, min(WIDTH, columns - len(share) - len(self.label) - 2))
        filled = width * done // total
        bar = f"{blocks[0] * filled}{blocks[1] * (width - filled)} " if width >= 5 else ""
        label = _cut(self.label, max(0, columns - len(bar) - len(share) - 1))
        return _cut(f"{label} {bar}{share}".lstrip(), columns)


def _cut(text: str, columns: int) -> str:
    return text if len(text) <= columns else text[: max(0, columns - 2)] + ".."[:columns]


def _span(seconds: float) -> str:
    """Return a time as people say it: 12 s, 3 min 05 s, 2 h 10 min."""
    whole = round(seconds)
    if whole < 60:
        return f"{whole} s"
    if whole < 3600:
        return f"{whole // 60} min {whole % 60:02d} s"
    return f"{whole // 3600} h {whole % 3600 // 60:02d} min"
