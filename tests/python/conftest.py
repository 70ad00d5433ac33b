"""What all boundary tests share: the whole lines of the case file, and how hard hypothesis tries.

``PINFILM_TESTS=slow`` lets hypothesis try many more examples than the everyday ``fast``.
"""

from __future__ import annotations

import copy
import json
import os
import warnings
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, settings

import pinfilm

ROOT = Path(__file__).parents[1]

_COMMON = {"deadline": None, "suppress_health_check": [HealthCheck.too_slow, HealthCheck.function_scoped_fixture]}
settings.register_profile("fast", max_examples=60, derandomize=True, **_COMMON)
settings.register_profile("slow", max_examples=5000, **_COMMON)
settings.load_profile(os.environ.get("PINFILM_TESTS", "fast"))


def surveys() -> dict[str, dict[str, Any]]:
    """Survey data of each whole line of the case file, by the case's name."""
    cases = json.loads((ROOT / "data" / "cases-line.json").read_text(encoding="utf-8"))
    return {case["id"]: case["inputs"] for case in cases if case["quantity"] == "evaluate"}


SURVEYS = surveys()
OVEN = "E-oven-present"


def quietly(line: pinfilm.Line) -> pinfilm.Evaluation:
    """Evaluate without the Python warnings; they stay listed in the result."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", pinfilm.PinfilmRangeWarning)
        return pinfilm.evaluate(line)


def compare_quietly(now: pinfilm.Line, proposed: pinfilm.Line) -> pinfilm.Comparison:
    """Compare without the Python warnings."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", pinfilm.PinfilmRangeWarning)
        return pinfilm.compare(now, proposed)


@pytest.fixture
def survey() -> dict[str, Any]:
    """Return the oven line's survey, to be changed at will."""
    return copy.deepcopy(SURVEYS[OVEN])


@pytest.fixture(scope="session")
def line() -> pinfilm.Line:
    """Return the oven line."""
    return pinfilm.Line.from_dict(SURVEYS[OVEN])


@pytest.fixture(scope="session", params=list(SURVEYS))
def each_line(request: pytest.FixtureRequest) -> pinfilm.Line:
    """Return every whole line of the case file in turn."""
    return pinfilm.Line.from_dict(SURVEYS[request.param])
