"""Write golden.json anew from the library as it is: every number and word of the evaluations of the whole lines.

Golden values only show that something changed, not that it is right. Run this after a change that was meant, look at
the difference that version control shows, and commit both together:

    python tests/golden/regenerate.py
"""

from __future__ import annotations

import json
import warnings
from pathlib import Path
from typing import Any

import pinfilm

HERE = Path(__file__).parent
CASES = HERE.parent / "data" / "cases-line.json"
GOLDEN = HERE / "golden.json"


def lines() -> dict[str, pinfilm.Line]:
    """Return the lines whose evaluations are kept: the whole-line cases, and the demo plant where it is there."""
    cases = json.loads(CASES.read_text(encoding="utf-8"))
    kept = {case["id"]: pinfilm.Line.from_dict(case["inputs"]) for case in cases if case["quantity"] == "evaluate"}
    return kept | {f"demo-{name}": pinfilm.examples.load(name) for name in pinfilm.examples.names()}


def evaluated(line: pinfilm.Line) -> dict[str, Any]:
    """Return the results alone, without the survey and without sentences, which may be reworded."""
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", pinfilm.PinfilmRangeWarning)
        result = pinfilm.evaluate(line).to_dict()
    del result["line"]
    for note in result["warnings"] + result["cautions"]:
        del note["message"]
        note.pop("limit", None)
    return result


def golden() -> dict[str, Any]:
    """Return the results of all lines."""
    return {name: evaluated(line) for name, line in lines().items()}


if __name__ == "__main__":
    GOLDEN.write_text(json.dumps(golden(), indent=1, ensure_ascii=False) + "\n", encoding="utf-8")
