"""``python -m pinfilm``: evaluate a demo line or a survey file and print what matters.

``demo [NAME]`` evaluates one line of the invented plant as it is and as proposed; ``study NOW.toml [PROPOSED.toml]``
does the same for survey files.
"""

from __future__ import annotations

import argparse
import json
import sys
import textwrap
import warnings
from pathlib import Path

import pinfilm

from ._core import Comparison, Evaluation, register

WIDTH = 100

#: What the summary shows of an evaluation, by path of the register.
SHOWN = (
    "kinematics.joints",
    "kinematics.circuit_time_s",
    "tension.pull_n",
    "joint.events.pressure_mpa",
    "joint.events.lambda_ratio",
    "joint.mu_joint_drive",
    "fill.never_reached",
    "fill.worst_wait_h",
    "fill.mean_fill",
    "fill.lowest_fill_reached",
    "wear.elongation_1_year_pct",
    "wear.life_years",
    "wear.governs",
    "drive.load",
    "drive.current_a",
    "drive.energy_kwh_per_year",
    "supply.applied_l_per_year",
    "supply.dripped_share",
    "cost.total_per_year",
)


def value(result: Evaluation, path: str) -> str:
    """Return the value of a result as people read it, with its unit."""
    return result.explain(path).value


def summary(results: dict[str, Evaluation]) -> str:
    """Return a table of the shown quantities, one column for each evaluation."""
    means = {row["path"]: row["means"] for row in register()}
    head = f"{'':<38}" + "".join(f"{name:>20}" for name in results)
    lines = [head]
    for path in SHOWN:
        cells = "".join(f"{value(result, path):>20}" for result in results.values())
        lines.append(f"{path:<38}{cells}  {means.get(path, '')}"[: WIDTH + 40])
    return "\n".join(lines)


def wrapped(title: str, items: list[tuple[str, str]]) -> str:
    """Return coded sentences under a title, wrapped."""
    lines = [title]
    for code, message in items:
        lines.append(textwrap.fill(f"[{code}] {message}", WIDTH, initial_indent="  ", subsequent_indent="    "))
    return "\n".join(lines)


def show(now: Evaluation, change: Comparison | None) -> None:
    """Print one line, and the comparison where there is one."""
    results = {"now": now} if change is None else {"now": change.now, "proposed": change.proposed}
    print(f"Line {now.line.name}")
    print(summary(results))
    for name, result in results.items():
        print()
        print(wrapped(f"Warnings, {name}:", [(warning.code, warning.message) for warning in result.warnings]))
    if change is not None:
        print()
        print(str(change))
    print(wrapped("Cautions:", [(caution.code, caution.message) for caution in now.cautions]))


def run(now: pinfilm.Line, proposed: pinfilm.Line | None, as_json: bool) -> None:
    """Evaluate, compare, print."""
    warnings.simplefilter("ignore", pinfilm.PinfilmRangeWarning)  # they are printed with the result
    change = None if proposed is None else pinfilm.compare(now, proposed)
    result = pinfilm.evaluate(now) if change is None else change.now
    if as_json:
        print(json.dumps((result if change is None else change).to_dict(), ensure_ascii=False, indent=1))
    else:
        show(result, change)


def main(arguments: list[str] | None = None) -> int:
    """Run the command; return its exit code: 0 done, 1 a survey that cannot be computed, 2 wrong usage."""
    parser = argparse.ArgumentParser(prog="python -m pinfilm", description=__doc__)
    commands = parser.add_subparsers(dest="command", required=True)
    demo = commands.add_parser("demo", help="one line of the invented plant, as it is and as proposed")
    demo.add_argument("name", nargs="?", default="oven", help="oven, slat, paint, floor or packing")
    study = commands.add_parser("study", help="a survey file, and a proposed one where given")
    study.add_argument("now", type=Path, help="survey of the line as it is (TOML)")
    study.add_argument("proposed", type=Path, nargs="?", help="survey of the line as proposed (TOML)")
    for command in (demo, study):
        command.add_argument("--json", action="store_true", help="print everything as JSON")
    options = parser.parse_args(arguments)
    place = ""
    try:
        if options.command == "demo":
            now, proposed = pinfilm.examples.pair(options.name)
            run(now, proposed, options.json)
        else:
            lines = []
            for path in filter(None, (options.now, options.proposed)):
                place = f"{path}: "
                lines.append(pinfilm.Line.from_toml(path))
            run(lines[0], lines[1] if len(lines) > 1 else None, options.json)
    except (pinfilm.PinfilmError, OSError, ValueError) as error:
        print(f"{place}{error}", file=sys.stderr)
        return 1
    return 0


if __name__ == "__main__":
    sys.exit(main())
