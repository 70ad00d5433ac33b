"""Every Python block of every page runs, each page from top to bottom in one namespace."""

from __future__ import annotations

import re
import textwrap
from pathlib import Path

import pytest

import pinfilm

DOCS = Path(__file__).parents[2] / "docs"
BLOCK = re.compile(r"^( *)```python\n(.*?)^\1```", re.DOTALL | re.MULTILINE)
PAGES = sorted(
    path for path in DOCS.rglob("*.md") if "_build" not in path.parts and BLOCK.search(path.read_text(encoding="utf-8"))
)


@pytest.mark.filterwarnings("ignore::pinfilm.PinfilmRangeWarning")
@pytest.mark.parametrize("page", PAGES, ids=lambda page: str(page.relative_to(DOCS)))
def test_page(page: Path) -> None:
    text = page.read_text(encoding="utf-8")
    space: dict[str, object] = {"__name__": page.stem, "pinfilm": pinfilm}
    for block in BLOCK.finditer(text):
        # blank lines before it, so that a failure names the line of the page
        before = "\n" * text[: block.start(2)].count("\n")
        exec(compile(before + textwrap.dedent(block[2]), str(page), "exec"), space)


def test_the_worked_examples_are_there_and_check_their_numbers() -> None:
    worked = {page.name: page.read_text(encoding="utf-8") for page in (DOCS / "worked").glob("*.md")}
    assert {"slow-conveyor-joint.md", "oven-oil.md"} <= worked.keys()
    assert all(text.count("assert ") >= 8 for text in worked.values())
