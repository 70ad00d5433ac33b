"""Every Python block of the docs runs; blocks of one page share what they define."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

DOCS = Path(__file__).parents[2] / "docs"
PAGES = sorted(page for page in DOCS.rglob("*.md") if "_build" not in page.parts)
BLOCK = re.compile(r"^( *)```python\n(.*?)^\1```", re.DOTALL | re.MULTILINE)


@pytest.mark.filterwarnings("ignore::pinfilm.PinfilmRangeWarning")
@pytest.mark.parametrize("page", [pytest.param(page, id=str(page.relative_to(DOCS))) for page in PAGES])
def test_python_blocks_run(page: Path, capsys: pytest.CaptureFixture[str]) -> None:
    space: dict[str, object] = {}
    text = page.read_text(encoding="utf-8")
    for block in BLOCK.finditer(text):
        line = text[: block.start(2)].count("\n")
        exec(compile("\n" * line + block[2], str(page), "exec"), space)
