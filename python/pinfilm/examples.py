"""The invented plant: five lines as they are (``…_now``) and as proposed (``…_proposed``). Nothing here is real."""

from __future__ import annotations

from importlib.resources import files

from ._core import Line

__all__ = ["load", "names", "pair", "survey"]


def names() -> list[str]:
    """Names of the surveys.

    Examples
    --------
    >>> "oven_now" in names()
    True
    """
    folder = files(__package__) / "data"
    return sorted(entry.name.removesuffix(".toml") for entry in folder.iterdir() if entry.name.endswith(".toml"))


def survey(name: str) -> str:
    """Text of a survey file.

    Raises
    ------
    ValueError
        If there is no survey of this name.
    """
    if name not in names():
        raise ValueError(f"there is no example {name!r}; there are {', '.join(names())}")
    return (files(__package__) / "data" / f"{name}.toml").read_text(encoding="utf-8")


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
