"""The invented plant: five lines as they are (``…_now``) and as proposed (``…_proposed``). Nothing here is real."""

from __future__ import annotations

from typing import TYPE_CHECKING

from ._core import Line

if TYPE_CHECKING:
    from importlib.resources.abc import Traversable

__all__ = ["load", "names", "pair", "survey"]


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
