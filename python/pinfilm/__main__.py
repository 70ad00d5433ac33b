"""Oiling of conveyor chains from the command line: blank surveys, studies, reports, tables of lines, current logs.

Exit codes: 0 done, 1 a file that cannot be read, computed or written, 2 wrong usage.
"""

from __future__ import annotations

import argparse
import io
import json
import os
import sys
import textwrap
import warnings
from collections.abc import Iterable
from pathlib import Path

from . import examples
from ._core import (
    AvoidedUse,
    BeforeAfter,
    Caution,
    ChangePoints,
    Comparison,
    CurrentLog,
    Evaluation,
    Line,
    LogNote,
    LogRules,
    Warning,
    blank_survey,
    compare,
    evaluate,
    register,
)
from .errors import PinfilmError, PinfilmRangeWarning, PinfilmTableWarning
from .files import evaluate_file
from .reporting import report

WIDTH = 100

#: What the summary shows of an evaluation, by paths that `Evaluation.explain` takes.
SHOWN = (
    "kinematics.joints",
    "kinematics.circuit_time_s",
    "tension.pull_n",
    "tension.tight_n",
    "joint.pressure_mpa",
    "joint.mu_joint_drive",
    "joint.events.{thinnest}.lambda_ratio",
    "fill.never_reached",
    "fill.worst_wait_h",
    "fill.mean_fill",
    "fill.lowest_fill_reached",
    "wear.elongation_1_year_pct",
    "wear.life_years",
    "wear.governs",
    "wear.service_life_years",
    "drive.load",
    "drive.current_a",
    "drive.energy_kwh_per_year",
    "supply.applied_l_per_year",
    "supply.dripped_share",
)
ITEMS = ("oil", "application_labour", "energy", "cleaning", "downtime", "chain", "sprockets", "waste", "upkeep")
#: Columns of a log that may have another name in the file.
COLUMNS = ("time", "current_a", "power_kw", "load_pct", "load_kg_per_m", "speed_m_per_min", "temperature_c", "running")
#: What is shown of a comparison of two periods of a log.
LOG_SHOWN = (
    "means_before",
    "means_after",
    "means_left_out",
    "level_before_a",
    "level_before_kw",
    "difference_a",
    "difference_kw",
    "saving_pct",
    "saving_low_pct",
    "saving_high_pct",
    "lag1",
    "degrees",
    "placebo_splits",
    "placebo_rank",
    "detectable_pct",
    "needed_days",
    "active_saving_pct",
    "pull.pull_saving_pct",
    "pull.pull_saving_low_pct",
    "pull.pull_saving_high_pct",
    "pull.error_log_pct",
    "pull.error_motor_pct",
    "pull.motor_load",
    "pin_share_pct",
    "halved_all_pct",
)
LOG_CAUTION = Caution(
    code="clamp",
    message="Clamps and meters are fitted by people licensed for it, on a locked-out drive; local codes decide.",
)
COST = (*(f"cost.{item}" for item in ITEMS), "cost.total_per_year")
CHANGE = (
    *(f"saving_items.{item}" for item in ITEMS),
    "saving_per_year",
    "saving_without_chain_per_year",
    "invest",
    "payback_status",
    "payback_days",
    "payback_status_without_chain",
    "payback_days_without_chain",
    "discounted_payback_status",
    "discounted_payback_years",
    "npv",
    "irr_status",
    "irr",
)


def number_and_unit(value: str) -> tuple[str, str]:
    """Return a value as `explain` shows it, in two: `over 50 years` is `over 50`, in years."""
    words = value.split(" ")
    figures = 2 if words[0] == "over" else 1
    return " ".join(words[:figures]), " ".join(words[figures:])


def table(heads: Iterable[str], of: Iterable[Evaluation | Comparison], paths: Iterable[str]) -> str:
    """Return a table with one line for each path: path, a value of each result, unit, meaning."""
    results = list(of)
    rule = " ".join([f"{'':<32}", *(f"{head:>11}" for head in heads)]).rstrip()
    lines = [rule]
    for path in paths:
        found = [result.explain(place(result, path)) for result in results]
        parts = [number_and_unit(one.value) for one in found]
        unit = next((unit for _, unit in parts if unit), "")
        name = path if "{thinnest}" not in path else f"{path.replace('.{thinnest}', '')}, least"
        start = f"{name:<32} {' '.join(f'{number:>11}' for number, _ in parts)} {unit:<11}"
        means = textwrap.wrap(found[0].means, WIDTH - len(start) - 1) or [""]
        lines += [f"{start} {means[0]}".rstrip(), *(f"{'':<{len(start)}} {more}" for more in means[1:])]
    return "\n".join(lines)


def place(result: Evaluation | Comparison, path: str) -> str:
    """Return the path with the articulation that has the thinnest film put in."""
    if not isinstance(result, Evaluation):
        return path
    ratios = [event.lambda_ratio for event in result.joint.events]
    return path.format(thinnest=ratios.index(min(ratios)) if ratios else 0)


def wrapped(title: str, items: Iterable[Warning | Caution | LogNote]) -> str:
    """Return sentences with their codes, wrapped under a title."""
    lines = [
        textwrap.fill(f"[{item.code}] {item.message}", WIDTH, initial_indent="  ", subsequent_indent="    ")
        for item in items
    ]
    return "\n".join([title, *(lines or ["  none"])])


def summary(now: Evaluation, change: Comparison | None) -> str:
    """Return everything that is printed of a line, and of what is proposed for it."""
    results = {"now": now} if change is None else {"now": change.now, "proposed": change.proposed}
    parts = [
        f"Line: {now.line.name}. Money in {now.line.costs.currency}.",
        table(results, results.values(), SHOWN),
        table(results, results.values(), COST),
    ]
    if change is not None:
        parts.append(table(["change"], [change], CHANGE))
    parts += [wrapped(f"Warnings, {name}:", result.warnings) for name, result in results.items()]
    cautions = {caution.code: caution for result in results.values() for caution in result.cautions}
    parts.append(wrapped("Cautions:", cautions.values()))
    return "\n\n".join(parts)


def evidence(found: BeforeAfter, *more: str) -> str:
    """Return everything that is printed of a log."""
    rows = {row["path"]: row for row in register()}
    values = found.to_dict()
    values |= {f"pull.{name}": value for name, value in (values["pull"] or {}).items()}
    lines = []
    for name in LOG_SHOWN:
        if (value := values.get(name)) is None:
            continue
        row = rows[f"before_after.{name}"]
        start = f"{name:<32} {value:>11.6g} {row['unit']:<11}"
        means = textwrap.wrap(row["means"], WIDTH - len(start) - 1)
        lines += [f"{start} {means[0]}", *(f"{'':<{len(start)}} {rest}" for rest in means[1:])]
    verdict = "\n".join(textwrap.fill(text, WIDTH) for text in (found.sentence, *more, found.cleaning.sentence))
    return "\n\n".join(
        [verdict, "\n".join(lines), wrapped("Read it with:", found.notes), wrapped("Cautions:", [LOG_CAUTION])]
    )


def said(part: BeforeAfter | ChangePoints | AvoidedUse | PinfilmError) -> str:
    """Return the sentence of a part; that of the search says what it was not told."""
    if isinstance(part, PinfilmError):
        return str(part)
    if not isinstance(part, ChangePoints):
        return part.sentence
    beside = f", with {' and '.join(part.covariates)} taken out over the whole log" if part.covariates else ""
    warned = " What drifts with the season can hide a step or seem one: the day, where it is known, decides."
    return f"A search that is not told the day{beside}: {part.sentence}{warned if beside else ''}"


def log(options: argparse.Namespace) -> str:
    """Return what a log says of a change, as text or JSON."""
    try:
        line = None if options.survey is None else Line.from_toml(options.survey)
    except OSError as error:
        raise OSError(error.errno, error.strerror or str(error), str(options.survey)) from None
    names = {ours: theirs for ours in COLUMNS if (theirs := getattr(options, ours)) is not None}
    rules = LogRules(no_load_current_a=options.no_load_a) if options.no_load_a is not None else None
    whole = CurrentLog.read(
        options.file, columns=names, time_format=options.time_format, time_zone=options.time_zone, rules=rules
    )
    asked = {} if options.confidence_pct is None else {"confidence_pct": options.confidence_pct}
    found = whole.before_after(options.changed, line=line, **asked)
    parts: dict[str, BeforeAfter | ChangePoints | AvoidedUse | PinfilmError] = {"before_after": found}
    try:
        if line is not None or whole.logged == "power_kw":
            parts["savings"] = whole.savings(options.changed, line=line, **asked)
        parts["change_points"] = whole.change_points(line=line)
    except PinfilmError as error:  # a log too short for these still has a before and an after
        parts["not_told"] = error
    if options.json:
        told = {name: str(part) if isinstance(part, PinfilmError) else part.to_dict() for name, part in parts.items()}
        return json.dumps(told, ensure_ascii=False, indent=1)
    return evidence(found, *(said(part) for part in parts.values() if part is not found))


def arguments(given: list[str] | None) -> argparse.Namespace:
    """Return what the command line asks for; leaves with code 2 where it is wrong."""
    about, _, codes = (__doc__ or "").partition("\n\n")
    parser = argparse.ArgumentParser(prog="python -m pinfilm", description=about, epilog=codes)
    commands = parser.add_subparsers(dest="command", required=True)
    demo = commands.add_parser("demo", help="one line of the invented plant, as it is and as proposed")
    demos = [name.removesuffix("_now") for name in examples.names() if name.endswith("_now")]
    demo.add_argument("name", nargs="?", default="oven", help=f"{', '.join(demos)} (oven if not given)")
    study = commands.add_parser("study", help="a survey file, and a proposed one where given")
    study.add_argument("now", type=Path, help="survey of the line as it is (TOML)")
    study.add_argument("proposed", type=Path, nargs="?", help="survey of the line as proposed (TOML)")
    study.add_argument("--report", type=Path, metavar="FILE", help="also write a report of both (HTML)")
    survey = commands.add_parser("survey", help="write a blank survey file, to be filled in")
    survey.add_argument("path", type=Path, nargs="?", help="file to write; on the screen if not given")
    survey.add_argument("--full", action="store_true", help="every key, not only those of an everyday survey")
    survey.add_argument("--force", action="store_true", help="write over a file that is there")
    logged = commands.add_parser("log", help="a current log: what changed on a day, how sure that is, what it is worth")
    logged.add_argument("file", type=Path, help="CSV or Parquet file")
    logged.add_argument("--changed", required=True, help="day of the change: 2025-06-02")
    logged.add_argument("--survey", type=Path, help="survey of the line (TOML): turns current into pull and energy")
    logged.add_argument("--time-zone", help="zone of the logger's clock: Europe/Vienna")
    logged.add_argument("--time-format", help="how the file writes time, where that is not plain: %%m/%%d/%%Y %%H:%%M")
    logged.add_argument(
        "--confidence-pct", type=float, default=None, help="confidence of the intervals (95 if not given)"
    )
    logged.add_argument("--no-load-a", type=float, help="current without load, where no survey is given")
    for ours in COLUMNS:
        logged.add_argument(f"--{ours.replace('_', '-')}", metavar="COLUMN", help=f"the file's column of {ours}")
    for command in (demo, study, logged):
        command.add_argument("--json", action="store_true", help="print everything as JSON")
    many = commands.add_parser("table", help="many lines: a Parquet or CSV file in, a Parquet file out")
    many.add_argument(
        "source", type=Path, metavar="IN", help="one line a row, columns named as a survey names its values"
    )
    many.add_argument("target", type=Path, metavar="OUT", help="Parquet file; a run that was cut off is taken up again")
    many.add_argument("--compare", action="store_true", help="compare the columns now.… and proposed.… of each row")
    many.add_argument("--defaults", type=Path, metavar="SURVEY", help="survey that holds where no cell says otherwise")
    many.add_argument("--outputs", nargs="+", metavar="PATH", help="results, such as drive.current_a")
    many.add_argument("--units", nargs="+", metavar="COLUMN=UNIT", default=[], help="such as duty.ambient_c=degF")
    many.add_argument("--threads", type=int, help="threads (all processors if not given)")
    options = parser.parse_args(given)
    if options.command == "table" and not all("=" in pair for pair in options.units):
        many.error("units are given as COLUMN=UNIT")
    if options.command == "demo" and options.name not in demos:
        demo.error(f"there is no demo line {options.name!r}; there are {', '.join(demos)}")
    if options.command == "study" and options.report is not None and options.proposed is None:
        study.error("a report needs two surveys: the line as it is and as proposed")
    return options


def show(text: str) -> None:
    """Print, whatever letters the console has and however early the reader stops."""
    if isinstance(sys.stdout, io.TextIOWrapper):
        sys.stdout.reconfigure(errors="replace")  # a console without Greek letters still shows the numbers
    try:
        print(text, flush=True)
    except BrokenPipeError:  # piped into `head`
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def refuse(file: Path | str, why: object) -> int:
    """Say what is wrong with which file, in one line; return the exit code."""
    print(f"{file}: {why}", file=sys.stderr)
    return 1


def write_survey(options: argparse.Namespace) -> int:
    """Write a blank survey to a file, or to the screen."""
    text = blank_survey(options.full)
    if options.path is None:
        show(text.rstrip("\n"))
        return 0
    try:
        with options.path.open("w" if options.force else "x", encoding="utf-8") as file:
            file.write(text)
    except FileExistsError:
        return refuse(options.path, "is there already: give another name, or --force to write over it")
    except OSError as error:
        return refuse(options.path, f"cannot be written: {error.strerror or error}")
    print(f"{options.path}: fill in what stands empty, then: python -m pinfilm study {options.path}", file=sys.stderr)
    return 0


def many_lines(options: argparse.Namespace) -> int:
    """Evaluate a file of lines, and print what became of its rows and columns."""
    warnings.simplefilter("ignore", PinfilmTableWarning)  # printed below
    try:
        done = evaluate_file(
            options.source,
            options.target,
            outputs=options.outputs,
            compare=options.compare,
            threads=options.threads,
            defaults=None if options.defaults is None else Line.from_toml(options.defaults),
            units=dict(pair.split("=", 1) for pair in options.units) or None,
        )
    except ImportError as error:
        print(f"tables in files need pyarrow: install pinfilm[table] ({error})", file=sys.stderr)
        return 1
    except (PinfilmError, OSError, UnicodeDecodeError) as error:
        print(f"{options.source}: {error}", file=sys.stderr)
        return 1
    counts = ", ".join(f"{count} {status}" for status, count in sorted(done.status_counts.items()))
    print(f"{done.target}: {done.rows} rows ({counts or 'none'}); {done.taken_up} of them from an earlier run")
    for column, name in done.metadata["misspelt"].items():
        print(f"not read: column {column!r}; did you mean {name!r}?")
    if done.status_counts.get("error"):
        print("a row with an error has its reason in the columns code and message")
    print(f"defaults that held for every row: {len(done.metadata['defaults'])}; kept as they are: ", end="")
    print(", ".join(done.metadata["kept"]) or "none")
    return 0


def main(given: list[str] | None = None) -> int:
    """Run the command and return its exit code."""
    options = arguments(given)
    if options.command == "survey":
        return write_survey(options)
    if options.command == "table":
        return many_lines(options)
    warnings.simplefilter("ignore", PinfilmRangeWarning)  # they are printed with the result
    if options.command == "log":
        try:
            return printed(log(options))
        except UnicodeDecodeError:
            print(f"{options.survey}: this is not a survey: it is not UTF-8 text", file=sys.stderr)
        except OSError as error:
            print(f"{error.filename or options.file}: cannot be read: {error.strerror or error}", file=sys.stderr)
        except PinfilmError as error:
            print(f"{options.file}: {error}", file=sys.stderr)
        return 1
    files: list[Path | str]
    if options.command == "demo":
        files = [f"{options.name}_now", f"{options.name}_proposed"]
    else:
        files = [file for file in (options.now, options.proposed) if file is not None]
    lines, file = [], files[0]
    try:
        for file in files:
            lines.append(examples.load(file) if isinstance(file, str) else Line.from_toml(file))
            now = evaluate(lines[-1])
        change = compare(*lines) if len(lines) == 2 else None
    except OSError as error:
        return refuse(file, f"cannot be read: {error.strerror or error}")
    except PinfilmError as error:
        return refuse(file, error)
    now = now if change is None else change.now
    text = json.dumps((change or now).to_dict(), ensure_ascii=False, indent=1) if options.json else summary(now, change)
    printed(text)
    if change is not None and getattr(options, "report", None) is not None:
        try:
            report(change, options.report)
        except ImportError as error:
            return refuse(options.report, error)
        except OSError as error:
            return refuse(options.report, f"cannot be written: {error.strerror or error}")
        print(f"{options.report}: report written", file=sys.stderr)
    return 0


def printed(text: str) -> int:
    """Print a result and return the exit code of success."""
    if isinstance(sys.stdout, io.TextIOWrapper):
        sys.stdout.reconfigure(errors="replace")  # a console without Greek letters still shows the numbers
    try:
        print(text, flush=True)
    except BrokenPipeError:  # piped into `head`
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    return 0


if __name__ == "__main__":
    sys.exit(main())
