"""Blank surveys: what a person gets to fill in, and that filling it in is enough."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path

import pytest
from conftest import quietly

import pinfilm
from pinfilm.__main__ import main
from pinfilm.reporting.facts import leaves

BLANK = re.compile(r"^(\w+) = *# (.*)$", re.MULTILINE)


def filled(text: str) -> str:
    """Fill every blank with the usual figure beside it."""

    def fill(blank: re.Match[str]) -> str:
        example = blank[2].rpartition("; e.g. ")[2] if "; e.g. " in blank[2] else '"line 1"'
        return f"{blank[1]} = {example}"

    return BLANK.sub(fill, text)


@pytest.mark.parametrize("full", [False, True])
def test_filled_with_usual_values_it_evaluates(full: bool, tmp_path: Path) -> None:
    text = pinfilm.blank_survey(full)
    assert len(BLANK.findall(text)) > 30
    file = tmp_path / "line.toml"
    file.write_text(filled(text), encoding="utf-8")
    result = quietly(pinfilm.Line.from_toml(file))
    assert result.cost.total_per_year > 0
    assert main(["study", str(file)]) == 0


def test_every_key_stands_in_the_full_form_with_its_meaning() -> None:
    text = pinfilm.blank_survey(full=True)
    keys = set(tomllib.loads(filled(text)))
    assert {"chain", "circuit", "duty", "oil", "lubrication", "drive", "costs"} <= keys
    of_surveys = {  # the register has results as well
        ".".join(step for step in path.split(".") if not step.isdigit())
        for name in pinfilm.examples.names()
        for path in leaves(pinfilm.examples.load(name).to_dict())
    }
    for row in pinfilm.register():
        if row["path"] in of_surveys and row["path"].count(".") >= 1 and not row["formula"]:
            assert re.search(rf"^(# )?{row['name']} =.*# .*{re.escape(row['means'])}", text, re.MULTILINE), row["path"]


def test_the_short_form_is_short_and_part_of_the_full_one() -> None:
    short, full = pinfilm.blank_survey().splitlines(), pinfilm.blank_survey(full=True).splitlines()
    assert len(short) < 0.75 * len(full)
    assert {line.split("=")[0] for line in short if BLANK.match(line)} <= {line.split("=")[0] for line in full}


def test_a_key_that_is_still_empty_is_named_with_its_line(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = tmp_path / "line.toml"
    assert main(["survey", str(file)]) == 0
    text = file.read_text(encoding="utf-8")
    assert text == pinfilm.blank_survey()
    lines = filled(text).splitlines()
    at = next(number for number, line in enumerate(lines) if line.startswith("pitch_mm"))
    lines[at] = text.splitlines()[at]
    file.write_text("\n".join(lines), encoding="utf-8")
    capsys.readouterr()
    assert main(["study", str(file)]) == 1
    message = capsys.readouterr().err
    assert str(file) in message
    assert "pitch_mm is still empty" in message
    assert f"line {at + 1}" in message


def test_a_survey_is_not_written_over(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = tmp_path / "line.toml"
    file.write_text("mine", encoding="utf-8")
    assert main(["survey", str(file)]) == 1
    assert "--force" in capsys.readouterr().err
    assert file.read_text(encoding="utf-8") == "mine"
    assert main(["survey", "--full", "--force", str(file)]) == 0
    assert file.read_text(encoding="utf-8") == pinfilm.blank_survey(full=True)
    assert main(["survey", str(tmp_path / "no" / "folder.toml")]) == 1


def test_on_the_screen(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["survey"]) == 0
    printed = capsys.readouterr()
    assert printed.out.rstrip() == pinfilm.blank_survey().rstrip()
    assert printed.err == ""
