"""Nothing changed that was not meant to change: evaluations against the kept ones, numbers to 1e-8."""

from __future__ import annotations

import importlib.util
import json
import math
from collections.abc import Iterator
from typing import Any

import pytest
from conftest import ROOT

RTOL = 1e-8

_spec = importlib.util.spec_from_file_location("regenerate", ROOT / "golden" / "regenerate.py")
assert _spec is not None
assert _spec.loader is not None
regenerate = importlib.util.module_from_spec(_spec)
_spec.loader.exec_module(regenerate)
KEPT = json.loads((ROOT / "golden" / "golden.json").read_text(encoding="utf-8"))
LINES = regenerate.lines()


def differences(kept: Any, now: Any, path: str = "") -> Iterator[str]:
    """Tell every place where two results differ: floats by RTOL, everything else exactly."""
    if isinstance(kept, dict) and isinstance(now, dict):
        for key in kept.keys() | now.keys():
            if key in kept and key in now:
                yield from differences(kept[key], now[key], f"{path}.{key}")
            else:
                yield f"{path}.{key} is only in {'the kept result' if key in kept else 'the new result'}"
    elif isinstance(kept, list) and isinstance(now, list) and len(kept) == len(now):
        for i, (one, other) in enumerate(zip(kept, now, strict=True)):
            yield from differences(one, other, f"{path}.{i}")
    elif isinstance(kept, float) and isinstance(now, float):
        # Differences of nearly equal numbers (a rise that closes the loop) are zero but for rounding.
        if not math.isclose(kept, now, rel_tol=RTOL, abs_tol=1e-12):
            yield f"{path}: {kept!r} became {now!r}"
    elif type(kept) is not type(now) or kept != now:
        yield f"{path}: {kept!r} became {now!r}"


@pytest.mark.parametrize("name", sorted(KEPT.keys() | LINES.keys()))
def test_a_line_still_gives_its_kept_result(name: str) -> None:
    assert name in KEPT, "new line: run tests/golden/regenerate.py"
    assert name in LINES, "a kept line is gone: run tests/golden/regenerate.py"
    assert not list(differences(KEPT[name], regenerate.evaluated(LINES[name])))


def test_a_difference_would_be_seen() -> None:
    kept = {"a": [1.0, 2], "b": "word"}
    assert not list(differences(kept, {"a": [1.0 + 5e-9, 2], "b": "word"}))
    assert len(list(differences(kept, {"a": [1.0 + 5e-8, 3], "b": "other", "c": 1}))) == 4
