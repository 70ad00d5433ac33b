"""Every Python block of every page runs, each page from top to bottom in one namespace."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

import pinfilm

DOCS = Path(__file__).parents[2] / "docs"
PAGES = sorted(path for path in DOCS.rglob("*.md") if "```python\n" in path.read_text(encoding="utf-8"))


@pytest.mark.filterwarnings("ignore::pinfilm.PinfilmRangeWarning")
@pytest.mark.parametrize("page", PAGES, ids=lambda page: str(page.relative_to(DOCS)))
def test_page(page: Path) -> None:
    text = page.read_text(encoding="utf-8")
    space: dict[str, object] = {"__name__": page.stem, "pinfilm": pinfilm}
    for block in re.finditer(r"^```python\n(.*?)^```", text, re.DOTALL | re.MULTILINE):
        # blank lines before it, so that a failure names the line of the page
        before = "\n" * text[: block.start(1)].count("\n")
        exec(compile(before + block[1], str(page), "exec"), space)


def test_the_worked_examples_are_there_and_check_their_numbers() -> None:
    worked = {page.name: page.read_text(encoding="utf-8") for page in (DOCS / "worked").glob("*.md")}
    assert {"slow-conveyor-joint.md", "oven-oil.md"} <= worked.keys()
    assert all(text.count("assert ") >= 8 for text in worked.values())
