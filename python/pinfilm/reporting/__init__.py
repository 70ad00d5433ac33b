"""A report of a change: one HTML file that needs nothing else, to read on a screen or print on A4 and Letter."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    import os
    from collections.abc import Iterable
    from pathlib import Path

    from .._core import Comparison

__all__ = ["report"]


def report(
    comparison: Comparison,
    path: str | os.PathLike[str],
    *,
    paybacks: Any | None = None,
    prepared: str = "",
    notes: Iterable[str] = (),
) -> Path:
    """Write a report of a line as it is and as proposed, with the set-up sheet of the proposal.

    Parameters
    ----------
    comparison : Comparison
        From `compare`.
    path : str or path
        The HTML file to write; one that is there is written over.
    paybacks : array_like, optional
        Payback (days) of each draw of a sample, infinite or NaN where it never pays back. Without it the report says
        that its payback is a single figure.
    prepared : str, optional
        Who prepared it and when, as it should stand under the title.
    notes : iterable of str, optional
        Remarks of the surveyor, one paragraph each.

    Returns
    -------
    pathlib.Path
        The file.

    Raises
    ------
    ImportError
        Without jinja2 and matplotlib: ``pip install 'pinfilm[report]'``.
    OSError
        If the file cannot be written.

    Notes
    -----
    The file is whole: pictures stand in it, nothing is fetched. All text of the survey is escaped. Every figure, unit,
    meaning, source and class is that of the register.

    Examples
    --------
    >>> import pinfilm, tempfile, pathlib
    >>> change = pinfilm.compare(*pinfilm.examples.pair("floor"))
    >>> file = pinfilm.report(change, pathlib.Path(tempfile.mkdtemp()) / "floor.html")
    >>> file.read_text(encoding="utf-8").startswith("<!DOCTYPE html>")
    True
    """
    from pathlib import Path

    from .page import page  # what draws and writes takes a second to import: only where it is asked for

    file = Path(path)
    file.write_text(page(comparison, paybacks, prepared, tuple(notes)), encoding="utf-8")
    return file
