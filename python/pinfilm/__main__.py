"""Evaluate a survey, a table of lines, or one of the invented demo lines, and print what matters.

Exit codes: 0 done, 1 a survey that cannot be read or computed, 2 wrong usage.
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
from ._core import Caution, Comparison, Evaluation, Line, Warning, compare, evaluate
from .errors import PinfilmError, PinfilmRangeWarning, PinfilmTableWarning
from .files import evaluate_file

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


def table(heads: Iterable[str], of: Iterable[Evaluation | Comparison], paths: Iterable[str]) -> str:
    """Return a table with one line for each path: path, a value of each result, unit, meaning."""
    results = list(of)
    rule = " ".join([f"{'':<32}", *(f"{head:>11}" for head in heads)]).rstrip()
    lines = [rule]
    for path in paths:
        found = [result.explain(place(result, path)) for result in results]
        parts = [(*one.value.split(" ", 1), "")[:2] for one in found]
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


def wrapped(title: str, items: Iterable[Warning | Caution]) -> str:
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


def arguments(given: list[str] | None) -> argparse.Namespace:
    """Return what the command line asks for; leaves with code 2 where it is wrong."""
    parser = argparse.ArgumentParser(prog="python -m pinfilm", description=__doc__.split("\n")[0] if __doc__ else None)
    commands = parser.add_subparsers(dest="command", required=True)
    demo = commands.add_parser("demo", help="one line of the invented plant, as it is and as proposed")
    demos = [name.removesuffix("_now") for name in examples.names() if name.endswith("_now")]
    demo.add_argument("name", nargs="?", default="oven", help=f"{', '.join(demos)} (oven if not given)")
    study = commands.add_parser("study", help="a survey file, and a proposed one where given")
    study.add_argument("now", type=Path, help="survey of the line as it is (TOML)")
    study.add_argument("proposed", type=Path, nargs="?", help="survey of the line as proposed (TOML)")
    for command in (demo, study):
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
    return options


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
    print(f"defaults that held for every row: {len(done.metadata['defaults'])}; kept as they are: ", end="")
    print(", ".join(done.metadata["kept"]) or "none")
    return 0


def main(given: list[str] | None = None) -> int:
    """Run the command and return its exit code."""
    options = arguments(given)
    if options.command == "table":
        return many_lines(options)
    warnings.simplefilter("ignore", PinfilmRangeWarning)  # they are printed with the result
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
    except UnicodeDecodeError:
        print(f"{file}: this is not a survey: it is not UTF-8 text", file=sys.stderr)
        return 1
    except OSError as error:
        print(f"{file}: cannot be read: {error.strerror or error}", file=sys.stderr)
        return 1
    except PinfilmError as error:
        print(f"{file}: {error}", file=sys.stderr)
        return 1
    now = now if change is None else change.now
    text = json.dumps((change or now).to_dict(), ensure_ascii=False, indent=1) if options.json else summary(now, change)
    if isinstance(sys.stdout, io.TextIOWrapper):
        sys.stdout.reconfigure(errors="replace")  # a console without Greek letters still shows the numbers
    try:
        print(text, flush=True)
    except BrokenPipeError:  # piped into `head`
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    return 0


if __name__ == "__main__":
    sys.exit(main())
