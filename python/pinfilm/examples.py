"""The invented plant: five lines as they are (``…_now``) and as proposed (``…_proposed``). Nothing here is real."""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

from ._core import Line

if TYPE_CHECKING:
    from importlib.resources.abc import Traversable

    from ._invented import InventedLog

__all__ = ["current_log", "lines", "load", "names", "pair", "survey"]


def _folder() -> Traversable:
    """Return the folder of the surveys. What finds it takes as long to import as the rest: only where it is needed."""
    from importlib.resources import files

    return files(__package__) / "data"


def names() -> list[str]:
    """Names of the surveys.

    Examples
    --------
    >>> "oven_now" in names()
    True
    """
    return sorted(entry.name.removesuffix(".toml") for entry in _folder().iterdir() if entry.name.endswith(".toml"))


def survey(name: str) -> str:
    """Text of a survey file.

    Raises
    ------
    ValueError
        If there is no survey of this name.
    """
    if name not in names():
        raise ValueError(f"there is no example {name!r}; there are {', '.join(names())}")
    return (_folder() / f"{name}.toml").read_text(encoding="utf-8")


def load(name: str) -> Line:
    """Return one line of the invented plant.

    Examples
    --------
    >>> load("oven_now").name
    'oven'
    """
    return Line.from_toml(survey(name))


def pair(name: str) -> tuple[Line, Line]:
    """Return a line as it is and as proposed.

    Examples
    --------
    >>> now, proposed = pair("oven")
    """
    return load(f"{name}_now"), load(f"{name}_proposed")


def current_log(
    name: str,
    *,
    seed: int = 7,
    days: int = 365,
    changed_after: int = 150,
    step_min: int = 10,
    power: bool = False,
    nothing_done: bool = False,
) -> InventedLog:
    """Return an invented log of a drive of the plant, with the truth in it: the same seed gives the same log.

    Parameters
    ----------
    name : str
        A line: ``"oven"``, ``"packing"``, …
    seed : int
        Chance.
    days, changed_after : int
        Length of the log, and the day on which the line becomes the proposed one.
    step_min : int
        Minutes between two rows.
    power : bool
        Whether power was logged, and not current.
    nothing_done : bool
        Whether the line stays as it is.

    Returns
    -------
    InventedLog
        `columns` as the logger wrote them, `log()`, `changed`, and the true `saving_pct` and `pull_saving_pct`.

    Examples
    --------
    >>> demo = current_log("oven", days=120, changed_after=60)
    >>> print(demo.log().before_after(demo.changed, line=demo.line).verdict)
    saving
    """
    from ._invented import invented  # NumPy is not imported with the package

    now, proposed = pair(name)
    return invented(
        now,
        now if nothing_done else proposed,
        seed=seed,
        days=days,
        changed_after=changed_after,
        step_min=step_min,
        power=power,
    )


def lines(count: int = 20_000, seed: int = 7) -> dict[str, list[Any]]:
    """Return columns of invented lines, oiled by hand now and by a chain-driven applicator as proposed.

    Parameters
    ----------
    count : int
        Rows, at least 1.
    seed : int
        The same seed gives the same lines.

    Returns
    -------
    dict of str to list
        Columns for `compare_table`: ``asset`` and ``hall`` of the plant's own, values that hold for both lines, and
        values with the prefixes ``now.`` and ``proposed.``. About one row in two hundred has a defect that a survey
        could have.

    Examples
    --------
    >>> columns = lines(100)
    >>> len(columns["asset"]), "proposed.lubrication.shot_ul" in columns
    (100, True)
    """
    from ._invented_lines import invented  # random numbers are not imported with the package

    return invented(count, seed)
