"""Tables that the tests of tables share."""

from __future__ import annotations

import warnings
from typing import Any

import pinfilm


def columns(count: int = 40) -> dict[str, list[Any]]:
    """Return invented lines as they are, one line a row, columns without prefixes."""
    both = pinfilm.examples.lines(count)
    kept = {name: values for name, values in both.items() if not name.startswith("proposed.")}
    return {name.removeprefix("now."): values for name, values in kept.items()}


def single(line: pinfilm.Line) -> pinfilm.Evaluation:
    """Evaluate one line without Python warnings."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", pinfilm.PinfilmRangeWarning)
        return pinfilm.evaluate(line)


def at(result: Any, path: str) -> Any:
    """Return what stands at a dotted path of a result."""
    for step in path.split("."):
        result = getattr(result, step)
    return result


def survey_of(row: dict[str, Any]) -> dict[str, Any]:
    """Build, in Python alone, the survey that a row of `columns` stands for."""
    loop = {"pitch_mm": row["chain.pitch_mm"]}
    survey: dict[str, Any] = {
        "name": "",
        "chain": {},
        "duty": {},
        "oil": {},
        "lubrication": {},
        "drive": {},
        "costs": {},
    }
    for name, value in row.items():
        group, _, key = name.partition(".")
        if group == "circuit":
            loop[key] = value
        elif key and value is not None:
            survey[group][key] = value
    return {**survey, "circuit": pinfilm.Circuit.two_sprocket(**loop).to_dict()}
