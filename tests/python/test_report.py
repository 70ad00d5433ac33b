"""The report: one file, whole and safe, that opens in a browser and prints."""

from __future__ import annotations

import os
import re
import shutil
import subprocess
from html.parser import HTMLParser
from pathlib import Path

import numpy as np
import pytest
from conftest import compare_quietly

import pinfilm

pytestmark = pytest.mark.timeout(300)  # drawing takes its time on a loaded machine

DEMOS = sorted({name.rsplit("_", 1)[0] for name in pinfilm.examples.names()})
BROWSER = next(filter(None, map(shutil.which, ("chromium", "chromium-browser", "google-chrome", "chrome"))), None)


def written(path: Path, name: str = "oven", **given: object) -> str:
    """Write a report and return its text."""
    change = compare_quietly(*pinfilm.examples.pair(name))
    assert pinfilm.report(change, path, **given) == path  # type: ignore[arg-type]
    return path.read_text(encoding="utf-8")


class Reader(HTMLParser):
    """Collects what would be fetched, and whether tags close."""

    VOID = frozenset({"meta", "img", "br", "link", "input", "hr"})

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []
        self.addresses: list[str] = []
        self.images: list[dict[str, str | None]] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.addresses += [value or "" for name, value in attrs if name in ("src", "href", "action", "data", "srcset")]
        if tag == "img":
            self.images.append(dict(attrs))
        if tag not in self.VOID:
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        assert self.open, tag
        assert self.open.pop() == tag


@pytest.mark.parametrize("name", DEMOS)
def test_it_is_whole_and_fetches_nothing(name: str, tmp_path: Path) -> None:
    text = written(tmp_path / "report.html", name)
    reader = Reader()
    reader.feed(text)
    assert reader.open == []
    assert len(reader.images) >= 9
    assert all(address.startswith("data:image/svg+xml;base64,") for address in reader.addresses)
    assert all(image["alt"] for image in reader.images)
    outside = re.sub(r'src="data:[^"]*"', "", text)
    assert "http:" not in outside
    assert "https:" not in outside
    assert "<script" not in text
    for part in ("What was found", "What is proposed", "Set-up sheet", "Savings and payback", "Warnings", "Cautions",
                 "Assumptions", "Check on the day", "Prove it later", "standstill costs only half"):  # fmt: skip
        assert part in text
    assert " nan" not in outside.lower()
    assert "None<" not in outside


def test_its_figures_are_those_of_the_comparison(tmp_path: Path) -> None:
    change = compare_quietly(*pinfilm.examples.pair("oven"))
    text = written(tmp_path / "report.html")
    assert f"paid back in {change.payback_days:.0f} days" in text
    assert f"{change.payback_days_downtime_halved:.0f} days" in text
    assert f"{change.payback_days_without_chain:.0f} days" in text
    for warning in change.now.warnings:
        assert warning.message.split("'")[0].split("<")[0][:40] in text
    for path in ("lubrication.every_nth", "fill.application_section", "lubrication.timer.run_min"):
        assert path in text
    assert "money" not in text.replace("Safety is not put into money", "").replace("Money in", "").lower()


def test_what_the_surveyor_wrote_is_escaped(tmp_path: Path) -> None:
    now, proposed = pinfilm.examples.pair("oven")
    evil = '<script>alert("1")</script>&'
    lines = [line.replace({"oil.name": f"{evil} {n}", "costs.currency": "<b>X"}, name=evil)
             for n, line in enumerate((now, proposed))]  # fmt: skip
    file = pinfilm.report(compare_quietly(*lines), tmp_path / "r.html", prepared=evil, notes=[evil])
    text = file.read_text(encoding="utf-8")
    assert "<script" not in text
    assert "<b>X" not in text
    assert "&lt;script&gt;" in text


def test_a_sample_gives_a_spread(tmp_path: Path) -> None:
    assert "no spread was sampled" in written(tmp_path / "without.html")
    text = written(tmp_path / "with.html", paybacks=np.r_[np.linspace(200, 800, 97), np.inf, np.nan, np.inf])
    assert "100 draws" in text
    assert "3.0%" in text
    assert "How sure the payback is" in text


def test_it_is_the_same_every_time(tmp_path: Path) -> None:
    assert written(tmp_path / "a.html") == written(tmp_path / "b.html")


@pytest.fixture(scope="module")
def browser() -> str:
    """A headless browser; every check of the project has one, a workstation may not."""
    if BROWSER is None:
        if os.environ.get("CI"):
            pytest.fail("no Chromium on this machine: the checks install one (see DEVELOPERS.md)")
        pytest.skip("no Chromium on this machine: the report was not opened")
    return BROWSER


def run(browser: str, page: Path, home: Path, *options: str) -> subprocess.CompletedProcess[str]:
    """Open a page without a window and without a network."""
    command = [
        browser, "--headless=new", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run",
        "--hide-scrollbars", "--proxy-server=127.0.0.1:9", f"--user-data-dir={home}", *options, page.as_uri(),
    ]  # fmt: skip
    return subprocess.run(command, capture_output=True, text=True, timeout=90, check=False)


def test_it_opens_at_two_widths_and_prints(browser: str, tmp_path: Path) -> None:
    page = tmp_path / "report.html"
    written(page, paybacks=np.linspace(200, 800, 100))
    for width in (1200, 390):
        probe = tmp_path / f"probe{width}.html"
        # the page in a frame of that width, and a word on whether anything sticks out or failed to draw
        probe.write_text(
            f'<iframe id="f" src="report.html" width="{width}" height="900"></iframe><p id="out">waiting</p><script>'
            "document.getElementById('f').onload = function () { var d = this.contentDocument, e = d.documentElement;"
            "var broken = [...d.images].filter(i => !i.complete || i.naturalWidth === 0).length;"
            "document.getElementById('out').textContent = 'images ' + d.images.length + ' broken ' + broken + ' out '"
            "+ (e.scrollWidth - e.clientWidth) + ' height ' + e.scrollHeight; };</script>",
            encoding="utf-8",
        )
        done = run(browser, probe, tmp_path / "home", "--allow-file-access-from-files", "--virtual-time-budget=20000",
                   "--dump-dom")  # fmt: skip
        found = re.search(r"images (\d+) broken (\d+) out (-?\d+) height (\d+)", done.stdout)
        assert found, done.stderr[-2000:]
        images, broken, out, height = map(int, found.groups())
        assert images >= 10
        assert broken == 0
        assert out <= 0, f"{out} px stick out at a width of {width}"
        assert height > 3000
        shot = tmp_path / f"{width}.png"
        run(browser, page, tmp_path / "home", f"--window-size={width},2000", f"--screenshot={shot}")
        assert shot.stat().st_size > 20_000
    pdf = tmp_path / "report.pdf"
    run(browser, page, tmp_path / "home", "--no-pdf-header-footer", f"--print-to-pdf={pdf}")
    content = pdf.read_bytes()
    assert content.startswith(b"%PDF")
    assert 4 <= len(re.findall(rb"/Type\s*/Page\b", content)) <= 20
