"""Invented current logs of the demo plant, as messy as real ones, with a truth that is known."""

from __future__ import annotations

import csv
import dataclasses
import datetime
import warnings
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from ._core import CurrentLog, Line, LogRules, evaluate
from .errors import PinfilmRangeWarning

if TYPE_CHECKING:
    from numpy.typing import NDArray

ZONE = "Europe/Vienna"
#: Share of the current that the room's temperature takes off for each kelvin, through the gear oil. Invented.
PER_KELVIN = 0.001
#: Day to day: voltage, product, how the chain was cleaned. Standard deviation and likeness of a day to the one before.
DAILY, LIKENESS = 0.010, 0.5
#: Reading to reading.
SCATTER = 0.012


@dataclasses.dataclass(frozen=True, kw_only=True)
class InventedLog:
    """An invented log and the truth in it.

    Attributes
    ----------
    name : str
        Line of the demo plant.
    line : Line
        Its survey, as it was before.
    changed : datetime.date
        Day on which the line became the proposed one.
    saving_pct : float
        True fall of the reading at the mean load of the period after.
    pull_saving_pct : float
        True fall of the pull there.
    columns : dict
        What the logger wrote, in the order of its file: `time` by the clock on the wall, reading, load, temperature.
    """

    name: str
    line: Line
    changed: datetime.date
    saving_pct: float
    pull_saving_pct: float
    columns: dict[str, NDArray[Any]] = dataclasses.field(compare=False)

    def log(self, *, rules: LogRules | None = None) -> CurrentLog:
        """Return it as a log."""
        return CurrentLog.read(self.columns, time_zone=ZONE, name=self.name, rules=rules)

    def to_csv(self, path: str | Path) -> None:
        """Write it as a logger would, with semicolons and the names that its columns have."""
        names = list(self.columns)
        texts = [np.datetime_as_string(self.columns["time"], unit="s").tolist()]
        texts += [[f"{value:g}" for value in self.columns[name]] for name in names[1:]]
        with Path(path).open("w", encoding="utf-8", newline="") as file:
            writer = csv.writer(file)
            writer.writerow(names)
            writer.writerows(zip(*texts, strict=True))


def _at_load(line: Line, share: float) -> tuple[float, float, float]:
    """Return current (A), electrical power (kW) and pull (N) of a line with a share of its product."""
    survey = line.to_dict()
    sections = survey["circuit"]["sections"]
    least = min(section["load_kg_per_m"] for section in sections)
    for section in sections:
        section["load_kg_per_m"] = least + share * (section["load_kg_per_m"] - least)
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", PinfilmRangeWarning)
        result = evaluate(Line.from_dict(survey))
    current, power = result.drive.current_a, result.drive.input_power_w
    if current is None or power is None:
        raise ValueError(f"the drive of {line.name} brakes at this load: there is no log to invent")
    return current, power / 1000, result.tension.pull_n


def invented(
    now: Line,
    proposed: Line,
    *,
    seed: int = 7,
    days: int = 365,
    changed_after: int = 150,
    step_min: int = 10,
    power: bool = False,
) -> InventedLog:
    """Invent the log of a line that becomes another on some day: same seed, same log."""
    chance = np.random.Generator(np.random.Philox(seed))
    shares = np.linspace(0.3, 1.1, 9)
    before, after = (np.array([_at_load(line, share) for share in shares]) for line in (now, proposed))
    start = datetime.date(2025, 1, 1)
    per_day = 24 * 60 // step_min
    rows = days * per_day
    utc = np.datetime64(start, "m") - np.timedelta64(60, "m") + np.arange(rows) * np.timedelta64(step_min, "m")
    wall = _on_the_wall(utc)  # people come to work by it
    minute = (wall - np.datetime64(start, "m")).astype(np.int64)
    day, of_day = np.minimum(minute // 1440, days - 1), minute % 1440

    # a product mix that wanders from day to day and from shift to shift; a room with seasons
    mix = _wander(chance, days, 0.6) * 0.09 + 0.75
    share = np.clip(mix[day] + 0.05 * _wander(chance, rows, 0.9), 0.35, 1.05)
    room = 20 + 7 * np.sin(2 * np.pi * (day - 110) / 365) + _wander(chance, days, 0.7)[day] * 2
    changed = day >= changed_after
    column = 1 if power else 0
    true = np.where(changed, np.interp(share, shares, after[:, column]), np.interp(share, shares, before[:, column]))
    daily = 1 + DAILY * _wander(chance, days, LIKENESS)
    reading = true * (1 - PER_KELVIN * (room - 20)) * daily[day] * (1 + SCATTER * chance.standard_normal(rows))

    # two shifts from six to ten at night, no weekends; cold gear oil in the first hours
    weekday = (day + start.weekday()) % 7
    runs = (of_day >= 360) & (of_day < 1320) & (weekday < 5)
    reading *= 1 + 0.08 * np.exp(-np.maximum(of_day - 360, 0) / 40)
    reading[of_day == 360] *= 3
    reading = np.where(runs, reading, 0.0)
    step = 0.001 if power else 0.01
    reading = np.round(reading / step) * step
    mean_share = float(share[runs & changed].mean())
    at_mean = [np.array([np.interp(mean_share, shares, side[:, k]) for k in range(3)]) for side in (before, after)]

    columns = {
        "time": wall,
        "power_kw" if power else "current_a": reading,
        "load_pct": np.round(100 * share, 1),
        "temperature_c": np.round(room, 1),
    }
    return InventedLog(
        name=now.name,
        line=now,
        changed=start + datetime.timedelta(days=changed_after),
        saving_pct=float(100 * (1 - at_mean[1][column] / at_mean[0][column])),
        pull_saving_pct=float(100 * (1 - at_mean[1][2] / at_mean[0][2])),
        columns=_spoilt(columns, chance, list(columns)[1]),
    )


def _wander(chance: np.random.Generator, count: int, likeness: float) -> NDArray[np.float64]:
    """Return first-order autoregressive numbers of unit spread."""
    news = chance.standard_normal(count) * np.sqrt(1 - likeness**2)
    found = np.empty(count)
    last = chance.standard_normal()
    for i, new in enumerate(news.tolist()):
        last = likeness * last + new
        found[i] = last
    return found


def _on_the_wall(utc: NDArray[Any]) -> NDArray[Any]:
    """Return what a clock in central Europe shows: an hour ahead of UTC, two in summer."""
    summer = (utc >= np.datetime64("2025-03-30T01:00")) & (utc < np.datetime64("2025-10-26T01:00"))
    return utc + np.timedelta64(1, "h") + summer * np.timedelta64(1, "h")


def _spoilt(columns: dict[str, Any], chance: np.random.Generator, name: str) -> dict[str, NDArray[Any]]:
    """Return the columns as a logger leaves them: days missing, rows twice, out of order, wild or empty."""
    rows = columns["time"].size
    reading = columns[name]
    running = np.flatnonzero(reading > 0)
    wild = chance.choice(running, rows // 2000, replace=False)
    reading[wild] = np.round(reading[wild] * chance.uniform(2, 5, wild.size), 2)
    reading[chance.choice(running, rows // 3000, replace=False)] = np.nan
    reading[chance.choice(running, rows // 4000, replace=False)] *= -1
    keep = np.ones(rows, dtype=bool)
    for at in chance.integers(0, rows - rows // 120, 3):  # the logger was unplugged
        keep[at : at + rows // 180] = False
    order = np.flatnonzero(keep)
    order = np.insert(order, chance.integers(0, order.size, 20), chance.choice(order, 20))  # late and doubled rows
    return {key: column[order] for key, column in columns.items()}
