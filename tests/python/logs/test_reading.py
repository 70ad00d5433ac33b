"""A log is the same whatever it came in, and what cannot be read is refused by name."""

from __future__ import annotations

import builtins
import copy
import datetime
import pickle
from pathlib import Path
from typing import Any

import numpy as np
import pandas
import polars
import pyarrow
import pytest

import pinfilm
from pinfilm import CurrentLog, InputError, LogRules, TableError, UnitError

TIME = np.datetime64("2025-03-01T06:00", "us") + np.arange(300) * np.timedelta64(10, "m")
CURRENT = np.where(np.arange(300) % 40 < 8, 0.0, 2.5 + 0.01 * (np.arange(300) * 7 % 13))
LOAD = 80.0 + np.arange(300) * 3 % 17
COLUMNS = {"time": TIME, "current_a": CURRENT, "load_pct": LOAD}


def meant(log: CurrentLog) -> dict[str, list[Any]]:
    return {name: column.tolist() for name, column in log.means().items()}


RULES = LogRules(no_load_current_a=1.8, window_h=2, warm_up_min=10)
PLAIN = meant(CurrentLog.read(COLUMNS, rules=RULES))


def csv(path: Path) -> Path:
    polars.DataFrame(COLUMNS).write_csv(path)
    return path


def german(path: Path) -> Path:
    stamps = [stamp.strftime("%d.%m.%Y %H:%M") for stamp in TIME.tolist()]
    rows = zip(stamps, CURRENT.tolist(), LOAD.tolist(), strict=True)
    text = "\n".join(f"{t};" + f"{i:.2f};{x:.1f}".replace(".", ",") for t, i, x in rows)
    path.write_text("time;current_a;load_pct\n" + text, encoding="utf-8")
    return path


def parquet(path: Path) -> Path:
    polars.DataFrame(COLUMNS).write_parquet(path)
    return path


class OnlyArrow:
    """A table that offers nothing but Arrow's capsule."""

    def __init__(self, table: Any) -> None:
        self.table = table

    def __arrow_c_stream__(self, requested_schema: object = None) -> object:
        return self.table.__arrow_c_stream__(requested_schema)


SOURCES = {
    "dict": lambda _: COLUMNS,
    "lists": lambda _: {name: column.tolist() for name, column in COLUMNS.items()},
    "texts": lambda _: {**COLUMNS, "time": np.datetime_as_string(TIME).tolist()},
    "pandas": lambda _: pandas.DataFrame(COLUMNS),
    "polars": lambda _: polars.DataFrame(COLUMNS),
    "arrow": lambda _: OnlyArrow(pyarrow.table({name: pyarrow.array(column) for name, column in COLUMNS.items()})),
    "csv": lambda folder: csv(folder / "log.csv"),
    "csv as text": lambda folder: str(csv(folder / "log.csv")),
    "semicolons and decimal commas": lambda folder: german(folder / "log.csv"),
    "parquet": lambda folder: parquet(folder / "log.parquet"),
}


@pytest.mark.parametrize("kind", SOURCES)
def test_the_same_log_from_everything(kind: str, tmp_path: Path) -> None:
    log = CurrentLog.read(SOURCES[kind](tmp_path), rules=RULES)
    assert len(log) == 300
    assert meant(log) == PLAIN
    assert log.logged == "current_a" and log.covariates == ["load_pct"]


def test_other_names_and_power_preferred() -> None:
    source = {"when": TIME, "I": CURRENT, "P": CURRENT / 3}
    log = CurrentLog.read(source, columns={"time": "when", "current_a": "I", "power_kw": "P"}, name="x")
    assert (log.logged, log.name) == ("power_kw", "x")


OFFSETS = {
    "texts": lambda utc: [f"{text}+00:00" for text in np.datetime_as_string(utc, unit="s")],
    "pandas": lambda utc: pandas.Series(utc).dt.tz_localize("UTC").dt.tz_convert("Europe/Vienna"),
    "polars": lambda utc: (
        polars.Series(utc.astype("datetime64[us]")).dt.replace_time_zone("UTC").dt.convert_time_zone("Europe/Vienna")
    ),
    "objects": lambda utc: [stamp.replace(tzinfo=datetime.UTC) for stamp in utc.astype("datetime64[s]").tolist()],
}


@pytest.mark.parametrize("kind", OFFSETS)
def test_stamps_with_an_offset_and_by_a_clock_are_the_same_log(kind: str) -> None:
    # Vienna, through both changes of the clock
    utc = np.datetime64("2025-03-29T00:00") + np.arange(214 * 24) * np.timedelta64(1, "h")
    summer = (utc >= np.datetime64("2025-03-30T01:00")) & (utc < np.datetime64("2025-10-26T01:00"))
    clock = utc + np.timedelta64(1, "h") + summer * np.timedelta64(1, "h")
    reading = 2.0 + 0.01 * (np.arange(utc.size) % 7)
    by_clock = CurrentLog(time=clock, current_a=reading, time_zone="Europe/Vienna")
    with_offset = CurrentLog(time=OFFSETS[kind](utc), current_a=reading, time_zone="Europe/Vienna")
    assert meant(by_clock) == meant(with_offset)
    assert by_clock.cleaning().repeated_hour == 2 and by_clock.cleaning().skipped_hour == 0


@pytest.mark.parametrize("kind", ["pandas", "polars"])
def test_days_are_those_of_the_zone_that_a_column_is_in(kind: str) -> None:
    utc = np.datetime64("2025-07-01T00:00") + np.arange(96) * np.timedelta64(1, "h")
    time = OFFSETS[kind](utc)
    for log in (
        CurrentLog(time=time, current_a=np.arange(96.0) + 1),
        CurrentLog.read({"time": time, "current_a": CURRENT[:96]}),
    ):
        assert log.time_zone == "Europe/Vienna"
        assert log.means()["time"][0] == np.datetime64("2025-06-30T22:00")
    elsewhere = CurrentLog(time=time, current_a=np.arange(96.0) + 1, time_zone="UTC")
    assert elsewhere.means()["time"][0] == utc[0]


def test_a_bare_clock_is_mended_by_what_its_stamps_show() -> None:
    utc = np.datetime64("2025-10-25T00:00") + np.arange(300) * np.timedelta64(10, "m")
    clock = utc + np.timedelta64(60, "m") + (utc < np.datetime64("2025-10-26T01:00")) * np.timedelta64(60, "m")
    found = CurrentLog(time=clock, current_a=2.0 + 0.01 * (np.arange(300) % 7), rules=LogRules(window_h=0)).cleaning()
    assert (found.clock_shifts, found.pieces, found.kept, found.duplicates_averaged) == (1, 1, 300, 0)


def test_a_logger_that_stays_on_winter_time_is_told() -> None:
    clock = np.datetime64("2025-03-30T00:00") + np.arange(12) * np.timedelta64(30, "m")
    found = CurrentLog(time=clock, current_a=np.arange(12.0) + 1, time_zone="Europe/Vienna").cleaning()
    assert found.skipped_hour == 2 and "clock_not_put_forward" in found.cautions


def refused(kind: type[Exception], code: str, field: str, **columns: Any) -> pinfilm.PinfilmError:
    given = {"time": TIME, "current_a": CURRENT} | columns
    with pytest.raises(kind) as raised:
        CurrentLog(**given)
    error = raised.value
    assert isinstance(error, pinfilm.PinfilmError)
    assert (error.code, error.field) == (code, field)
    return error


def test_what_is_no_log_is_refused() -> None:
    refused(InputError, "inconsistent", "current_a", current_a=CURRENT[:-1])
    refused(InputError, "missing", "current_a", current_a=None)
    refused(InputError, "unknown_choice", "time_zone", time_zone="Europe/Atlantis")
    mixed = ["2025-01-01 00:00", "2025-01-01T01:00+01:00"]
    error = refused(InputError, "inconsistent", "time", time=mixed, current_a=[1.0, 2.0])
    assert "offset" in str(error)
    refused(TableError, "wrong_type", "time", time=np.arange(300))
    refused(TableError, "wrong_type", "time", time=["soon"], current_a=[1.0])
    refused(TableError, "wrong_type", "current_a", current_a=["much"] * 300)
    refused(TableError, "wrong_type", "load_pct", load_pct=np.zeros((300, 2)))
    refused(TableError, "wrong_type", "running", running=np.full(300, 0.5))


def test_sources_without_a_log_are_refused(tmp_path: Path) -> None:
    for source, field in [
        ({"current_a": CURRENT}, "time"),
        (3, "source"),
        (tmp_path / "log.xls", "source"),
    ]:
        with pytest.raises(TableError) as raised:
            CurrentLog.read(source)
        assert raised.value.field == field
    with pytest.raises(TableError, match="no column 'I7'") as raised:
        CurrentLog.read(COLUMNS, columns={"current_a": "I7"})
    assert raised.value.code == "missing"
    with pytest.raises(TableError, match="does not have"):
        CurrentLog.read(COLUMNS, columns={"voltage": "U"})
    american = tmp_path / "log.csv"
    american.write_text("time,current_a\n3/4/2025 10:30,2.5\n3/5/2025 10:30,2.6\n")
    with pytest.raises(TableError, match="time_format"):
        CurrentLog.read(american)
    assert len(CurrentLog.read(american, time_format="%m/%d/%Y %H:%M")) == 2
    with pytest.raises(FileNotFoundError):
        CurrentLog.read(tmp_path / "none.csv")


def test_words_in_a_file_are_counted_not_fatal(tmp_path: Path) -> None:
    path = tmp_path / "log.csv"
    path.write_text("time,current_a\n2025-01-01 10:00,2.5\n2025-01-01 10:10,ERR\n2025-01-01 10:20,2.6\nnever,2.6\n")
    found = CurrentLog.read(path, rules=LogRules(window_h=0)).cleaning()
    assert (found.rows_read, found.unreadable, found.kept) == (4, 2, 2)


def test_arrays_need_no_polars(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    real = builtins.__import__

    def without(name: str, *rest: Any) -> Any:
        if name in ("polars", "pandas", "pyarrow"):
            raise ImportError(name)
        return real(name, *rest)

    path = csv(tmp_path / "log.csv")
    monkeypatch.setattr(builtins, "__import__", without)
    assert meant(CurrentLog.read(COLUMNS, rules=RULES)) == PLAIN
    with pytest.raises(TableError, match="needs polars"):
        CurrentLog.read(path)


def test_a_quantity_is_converted() -> None:
    pint = pytest.importorskip("pint")
    unit = pint.UnitRegistry()
    log = CurrentLog(time=TIME, current_a=CURRENT * 1000 * unit.milliampere, load_pct=LOAD, rules=RULES)
    assert meant(log)["current_a"] == pytest.approx(PLAIN["current_a"])
    with pytest.raises(UnitError) as raised:
        CurrentLog(time=TIME, current_a=CURRENT * unit.volt)
    assert raised.value.code == "dimension"


def test_a_log_is_a_value() -> None:
    log = CurrentLog.read({**COLUMNS, "running": CURRENT > 0}, time_zone="Europe/Vienna", name="a", rules=RULES)
    for other in (pickle.loads(pickle.dumps(log)), copy.copy(log), copy.deepcopy(log)):
        assert other == log and hash(other) == hash(log) and meant(other) == meant(log)
    assert log.replace(name="b") != log and log.replace(rules=LogRules()).rules == LogRules()
    assert repr(log) == '<CurrentLog "a": 300 rows of current_a with load_pct>'
    with pytest.raises(AttributeError):
        log.name = "c"  # type: ignore[misc]
