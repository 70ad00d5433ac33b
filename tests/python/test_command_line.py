"""The small command: what it prints, what it refuses, how it leaves."""

from __future__ import annotations

import json
import subprocess
import sys
from pathlib import Path

import pytest

from pinfilm import compare, examples
from pinfilm.__main__ import main


@pytest.fixture
def oven(tmp_path: Path) -> tuple[Path, Path]:
    files = tmp_path / "now.toml", tmp_path / "proposed.toml"
    for file, name in zip(files, ("oven_now", "oven_proposed"), strict=True):
        file.write_text(examples.survey(name), encoding="utf-8")
    return files


@pytest.mark.parametrize("name", [name.removesuffix("_now") for name in examples.names() if name.endswith("_now")])
def test_every_demo_line_prints_in_a_hundred_columns(name: str, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["demo", name]) == 0
    printed = capsys.readouterr()
    assert printed.err == ""
    assert max(map(len, printed.out.splitlines())) <= 100
    for part in ("tension.pull_n", "payback_days", "payback_days_without_chain", "Warnings, proposed:", "moving_chain"):
        assert part in printed.out


def test_demo_runs_as_a_module() -> None:
    done = subprocess.run(
        [sys.executable, "-m", "pinfilm", "demo"], capture_output=True, text=True, encoding="utf-8", check=True
    )
    assert done.stderr == ""
    assert "payback_status" in done.stdout


def test_a_life_beyond_what_is_said_keeps_its_number(capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["demo"]) == 0
    (life,) = [line for line in capsys.readouterr().out.splitlines() if line.startswith("wear.life_years")]
    assert life.split()[2:5] == ["over", "50", "years"]


def test_study_of_one_survey_has_no_payback(oven: tuple[Path, Path], capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["study", str(oven[0])]) == 0
    printed = capsys.readouterr().out
    assert "cost.total_per_year" in printed
    assert "payback" not in printed


def test_study_of_two_surveys_gives_what_compare_gives(
    oven: tuple[Path, Path], capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["study", *map(str, oven), "--json"]) == 0
    printed = json.loads(capsys.readouterr().out)
    change = compare(*examples.pair("oven")).to_dict()
    assert printed["payback_days"] == change["payback_days"]
    assert printed["saving_items"] == change["saving_items"]


def test_the_message_names_file_key_and_line(oven: tuple[Path, Path], capsys: pytest.CaptureFixture[str]) -> None:
    lines = examples.survey("oven_proposed").splitlines()
    at = next(number for number, line in enumerate(lines) if line.startswith("pitch_mm"))
    lines[at] = lines[at].replace("pitch_mm", "pich_mm")
    oven[1].write_text("\n".join(lines), encoding="utf-8")
    assert main(["study", *map(str, oven)]) == 1
    printed = capsys.readouterr()
    assert printed.out == ""
    for part in (str(oven[1]), "chain.pich_mm", "pitch_mm?", f"line {at + 1}"):
        assert part in printed.err
    assert "Traceback" not in printed.err


def test_what_a_model_refuses_names_key_and_line(oven: tuple[Path, Path], capsys: pytest.CaptureFixture[str]) -> None:
    lines = examples.survey("oven_now").splitlines()
    at = next(number for number, line in enumerate(lines) if line.startswith("rated_speed_rpm"))
    lines[at] = "rated_speed_rpm = 1100"
    oven[0].write_text("\n".join(lines), encoding="utf-8")
    assert main(["study", str(oven[0])]) == 1
    assert f"survey key drive.rated_speed_rpm, line {at + 1}]" in capsys.readouterr().err


def test_a_survey_that_is_not_utf_8_names_its_line(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    file = tmp_path / "survey.toml"
    file.write_bytes(b"name = 'a'\n# M\xfcller\n")
    assert main(["study", str(file)]) == 1
    assert "byte 15 of the file is 0xfc. Save it as UTF-8 [code: not_readable, line 2]" in capsys.readouterr().err


@pytest.mark.parametrize("content", [None, b"\xff\xfe\x00", b"= =", b""])
def test_what_is_not_a_survey_is_refused_in_one_line(
    content: bytes | None, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    file = tmp_path / "survey.toml"
    if content is not None:
        file.write_bytes(content)
    assert main(["study", str(file)]) == 1
    message = capsys.readouterr().err
    assert message.startswith(f"{file}: ")
    assert message.count("\n") == 1


@pytest.mark.parametrize("given", [[], ["study"], ["demo", "no-such-line"], ["oil"], ["log", "log.csv"]])
def test_wrong_usage_leaves_with_two(given: list[str]) -> None:
    with pytest.raises(SystemExit) as left:
        main(given)
    assert left.value.code == 2


@pytest.fixture(scope="module")
def logged(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path, str]:
    folder = tmp_path_factory.mktemp("log")
    demo = examples.current_log("oven", days=200, changed_after=100, step_min=30)
    demo.to_csv(folder / "oven.csv")
    (folder / "oven.toml").write_text(examples.survey("oven_now"), encoding="utf-8")
    return folder / "oven.csv", folder / "oven.toml", demo.changed.isoformat()


def test_a_log_prints_its_verdict_in_a_hundred_columns(
    logged: tuple[Path, Path, str], capsys: pytest.CaptureFixture[str]
) -> None:
    file, survey, changed = logged
    arguments = ["log", str(file), "--survey", str(survey), "--changed", changed, "--time-zone", "Europe/Vienna"]
    assert main(arguments) == 0
    printed = capsys.readouterr()
    assert printed.err == ""
    assert max(map(len, printed.out.splitlines())) <= 100
    for part in ("less current at equal load", "pull of the chain", "saving_pct", "Read it with:", "locked-out", "kWh"):
        assert part in printed.out
    assert main([*arguments, "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert found["before_after"]["verdict"] == "saving" and found["savings"]["may_be_claimed"]
    assert found["before_after"]["sentence"].replace("\n", " ") in " ".join(printed.out.split())


def test_a_log_without_a_survey_and_with_other_names(
    logged: tuple[Path, Path, str], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    text = logged[0].read_text("utf-8").split("\n", 1)[1]
    other = tmp_path / "log.csv"
    other.write_text("when,I,q,T\n" + text, encoding="utf-8")
    names = ["--time", "when", "--current-a", "I", "--load-pct", "q", "--no-load-a", "1"]
    assert main(["log", str(other), "--changed", logged[2], *names]) == 0
    assert "current_is_not_pull" in capsys.readouterr().out


@pytest.mark.parametrize(
    ("extra", "part"),
    [
        (["--changed", "2031-01-01"], "choose a date inside the log"),
        (["--changed", "soon"], "is not a date"),
        (["--changed", "2025-04-01", "--load-pct", "mass"], "no column 'mass'"),
        (["--changed", "2025-04-01", "--survey", "none.toml"], "none.toml: cannot be read"),
    ],
)
def test_a_log_that_fails_says_why(
    extra: list[str], part: str, logged: tuple[Path, Path, str], capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["log", str(logged[0]), *extra]) == 1
    printed = capsys.readouterr()
    assert printed.out == "" and part in printed.err and printed.err.count("\n") == 1
