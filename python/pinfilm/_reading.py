"""Columns of a log out of data frames, Arrow, files and arrays. polars reads files and Arrow, where it is installed."""

from __future__ import annotations

import datetime
import os
from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any

import numpy as np

from .errors import InputError, TableError, UnitError

if TYPE_CHECKING:
    from numpy.typing import NDArray

NAMES = ("time", "current_a", "power_kw", "load_pct", "load_kg_per_m", "speed_m_per_min", "temperature_c", "running")
#: Stamps that are plain: year first, or day first with dots. Slashes are not: a month may come first.
FORMATS = (
    *(
        f"{day}{between}{time}"
        for day in ("%Y-%m-%d", "%d.%m.%Y", "%Y/%m/%d")
        for between in (" ", "T")
        for time in ("%H:%M:%S%.f", "%H:%M")
    ),
    "%Y-%m-%d",
    "%d.%m.%Y",
)
MISSING = np.iinfo(np.int64).min


def _refuse(
    message: str, field: str, value: str | None = None, limit: str = "", code: str = "wrong_type"
) -> TableError:
    return TableError(f"{message} [code: {code}, {field}]", code, field, None, value, "", limit, None)


def time_stamps(time: Any) -> tuple[NDArray[np.int64], bool]:
    """Return stamps as nanoseconds from 1970, and whether they are UTC; without an offset they are a clock's."""
    if isinstance(time, tuple) and len(time) == 2 and isinstance(time[1], bool):  # as `remade` passes them
        return np.asarray(time[0], dtype="datetime64[ns]").astype(np.int64), time[1]
    zone = getattr(getattr(time, "dtype", None), "tz", None) or getattr(getattr(time, "dtype", None), "time_zone", None)
    if zone is not None:  # of pandas and polars
        plain = time.dt.convert_time_zone("UTC").dt.replace_time_zone(None) if hasattr(time, "to_physical") else time
        return np.asarray(plain, dtype="datetime64[ns]").astype(np.int64), True
    array = np.asarray(time)
    if array.ndim != 1:
        raise _refuse(f"time has {array.ndim} axes: give one stamp for each row", "time")
    if array.dtype.kind == "M":
        return array.astype("datetime64[ns]").astype(np.int64), False
    if array.size == 0:
        return np.zeros(0, dtype=np.int64), False
    if array.dtype.kind in "biuf":
        raise _refuse("time holds plain numbers, and what they count is not known: give dates", "time", limit="dates")
    return _one_by_one(array)


def zone_of(time: Any) -> str | None:
    """Return the name of the zone that a column of pandas or polars is in; its days are the days of the log."""
    dtype = getattr(time, "dtype", None)
    zone = getattr(dtype, "tz", None) or getattr(dtype, "time_zone", None)
    name = zone if isinstance(zone, str) else getattr(zone, "key", None) or getattr(zone, "zone", None)
    return name if isinstance(name, str) and "/" in name else None  # an offset such as +02:00 is no zone


def _one_by_one(array: NDArray[Any]) -> tuple[NDArray[np.int64], bool]:
    """Read texts and `datetime` objects; those without a date are missing."""
    stamps = np.full(array.size, MISSING, dtype=np.int64)
    aware = naive = 0
    epoch = datetime.datetime(1970, 1, 1)
    for row, item in enumerate(array.tolist()):
        stamp = item
        if isinstance(item, str):
            try:
                stamp = datetime.datetime.fromisoformat(item.strip()) if item.strip() else None
            except ValueError:
                raise _refuse(
                    f"time {row} = {item!r} is not a date: write it as 2025-06-02 10:30", "time", item, "ISO 8601"
                ) from None
        if stamp is None or stamp != stamp:
            continue
        if isinstance(stamp, datetime.date) and not isinstance(stamp, datetime.datetime):
            stamp = datetime.datetime(stamp.year, stamp.month, stamp.day)
        if not isinstance(stamp, datetime.datetime):
            raise _refuse(f"time {row} = {item!r} is not a date", "time", repr(item), "dates")
        if stamp.tzinfo is None:
            naive += 1
        else:
            aware += 1
            stamp = stamp.astimezone(datetime.UTC).replace(tzinfo=None)
        since = stamp - epoch
        stamps[row] = (since.days * 86_400 + since.seconds) * 1_000_000_000 + since.microseconds * 1000
    if aware and naive:
        raise InputError(
            f"{aware} time stamps have an offset from UTC and {naive} have none, so their order is not known: give all "
            "with, or all without [code: inconsistent, time]",
            "inconsistent",
            "time",
            naive,
            None,
            "",
            "all with an offset, or all without",
            None,
        )
    return stamps, aware > 0


def numbers(values: Any, name: str, unit: str) -> NDArray[np.float64]:
    """Return a column as numbers; NaN for what is missing. A quantity with a unit is converted to that of the name."""
    if hasattr(values, "magnitude") and hasattr(values, "to"):
        try:
            values = values.to(unit).magnitude
        except Exception:
            message = f"{name} is given in {values.units} and cannot be converted to {unit} [code: dimension, {name}]"
            raise UnitError(message, "dimension", name, None, str(values.units), unit, unit, None) from None
    try:
        array = np.asarray(values.filled(np.nan) if isinstance(values, np.ma.MaskedArray) else values, dtype=np.float64)
    except (TypeError, ValueError):
        found = next((item for item in np.asarray(values, dtype=object).ravel() if not _is_number(item)), None)
        message = f"{name} holds {found!r}, which is no number: leave it out or make it NaN"
        raise _refuse(message, name, repr(found), "numbers, NaN where there is none") from None
    if array.ndim != 1:
        raise _refuse(f"{name} has {array.ndim} axes: give one number for each row", name)
    return np.ascontiguousarray(array)


def _is_number(item: Any) -> bool:
    try:
        float(item)
    except (TypeError, ValueError):
        return item is None
    return True


def flags(values: Any, name: str) -> NDArray[np.bool_]:
    """Return a run signal: true or false, 1 or 0."""
    array = np.asarray(values)
    if array.dtype.kind == "b":
        return np.ascontiguousarray(array)
    as_numbers = numbers(values, name, "")
    if not np.isin(as_numbers, (0.0, 1.0)).all():
        message = f"{name} holds something other than true and false, or 1 and 0: say for each row whether the line ran"
        raise _refuse(message, name, limit="true or false, 1 or 0")
    return np.asarray(as_numbers == 1.0)


def date(given: Any, field: str) -> str:
    """Return a date or a time as ISO text."""
    if isinstance(given, str):
        return given
    if isinstance(given, np.datetime64):
        return str(np.datetime_as_string(given, unit="D" if given == given.astype("datetime64[D]") else "s"))
    if isinstance(given, (datetime.date, datetime.datetime)):
        return given.isoformat()
    raise _refuse(f"{field} = {given!r} is not a date: write it as 2025-06-02", field, repr(given), "a date")


def columns(source: Any, names: Mapping[str, str] | None, time_format: str | None) -> dict[str, Any]:
    """Return the columns of a source by the names that `CurrentLog` has for them."""
    wanted = dict(names or {})
    if unknown := set(wanted) - set(NAMES):
        message = f"columns names {sorted(unknown)}, which a log does not have: it has {', '.join(NAMES)}"
        raise _refuse(message, "columns", ", ".join(sorted(unknown)), ", ".join(NAMES), "unknown_key")
    name = ""
    if isinstance(source, (str, os.PathLike)):
        path = Path(source)
        source, name = _file(path), path.stem
    if isinstance(source, Mapping):
        has = list(source)
    elif hasattr(source, "columns") and hasattr(source, "__getitem__"):  # pandas, polars
        has = list(source.columns)
    elif hasattr(source, "__arrow_c_stream__"):
        source = _polars("an Arrow table").DataFrame(source)
        has = source.columns
    else:
        kind = type(source).__name__
        message = (
            f"a {kind} is no table: give a mapping, a data frame, an Arrow table, or the path of a CSV or Parquet file"
        )
        raise _refuse(message, "source", kind)
    found: dict[str, Any] = {"name": name}
    for ours in NAMES:
        theirs = wanted.get(ours, ours)
        if theirs in has:
            found[ours] = source[theirs]
        elif ours in wanted or ours == "time":
            there = ", ".join(map(str, has))
            option = f"--{ours.replace('_', '-')}"
            message = (
                f"the log has no column {theirs!r}: it has {there}; say which of them is {ours} "
                f"(columns={{{ours!r}: …}}, on the command line {option})"
            )
            raise _refuse(message, ours, theirs, there, "missing")
    found["time_zone"] = zone_of(found["time"])
    return _typed(found, time_format) if type(found["time"]).__module__.startswith("polars") else found


def _polars(what: str) -> Any:
    try:
        import polars
    except ImportError:
        message = f"reading {what} needs polars: pip install 'pinfilm[log]', or give NumPy arrays"
        raise _refuse(message, "source", what, code="missing") from None
    return polars


def _file(path: Path) -> Any:
    """Return a file as a polars frame."""
    if path.suffix.lower() not in (".csv", ".txt", ".parquet"):
        raise _refuse(f"{path.name} is neither .csv nor .parquet", "source", path.name, ".csv, .txt or .parquet")
    polars = _polars(f"{path.name}")
    with path.open("rb") as file:
        head = file.read(4096)
    try:
        if path.suffix.lower() == ".parquet":
            return polars.read_parquet(path)
        first, _, rest = head.partition(b"\n")
        separator = max((";", "\t", ","), key=lambda sign: first.count(sign.encode()))
        comma = separator != "," and b"," in rest
        # every column as text: a number that is none must be counted, not stop the rest
        frame = polars.read_csv(
            path, separator=separator, infer_schema=False, encoding="utf8-lossy", truncate_ragged_lines=True
        )
    except polars.exceptions.PolarsError as error:
        raise _refuse(
            f"{path.name} cannot be read as a table: {str(error).splitlines()[0]}", "source", path.name
        ) from None
    frame = frame.rename({name: name.strip().removeprefix("\ufeff") for name in frame.columns})
    return frame.with_columns(polars.col(polars.String).str.replace(",", ".", literal=True)) if comma else frame


def _typed(found: dict[str, Any], time_format: str | None) -> dict[str, Any]:
    """Return polars columns as NumPy takes them: text to dates and numbers, nothing to NaN."""
    polars = _polars("this table")
    for name, column in found.items():
        if not type(column).__module__.startswith("polars"):  # the name, the zone, an array beside a series
            continue
        if name == "time":
            found[name] = _dates(column, time_format)
        elif name == "running":
            text = column.dtype == polars.String
            found[name] = (
                (column.str.to_lowercase().is_in(["1", "true", "1.0", "yes"]) if text else column.cast(polars.Boolean))
                .fill_null(False)
                .to_numpy()
            )
        else:
            found[name] = column.cast(polars.Float64, strict=False).fill_null(float("nan")).to_numpy()
    return found


def _dates(column: Any, time_format: str | None) -> Any:
    """Return stamps of a polars column, by the first format that reads most of them."""
    polars = _polars("this table")
    if column.dtype == polars.Date or column.dtype == polars.Datetime:
        stamps = column.cast(polars.Datetime("ns", getattr(column.dtype, "time_zone", None)))
        aware = getattr(column.dtype, "time_zone", None) is not None
        return (stamps.to_physical().fill_null(int(MISSING)).to_numpy().view("datetime64[ns]"), aware)
    if column.dtype != polars.String:
        raise _refuse(
            f"time holds {column.dtype}, and what it counts is not known: give dates", "time", str(column.dtype)
        )
    text = column.str.strip_chars()
    offset = text.str.contains(r"(Z|[+-]\d{2}:?\d{2})$") & text.str.contains("[T:]")
    with_offset = int(offset.sum())
    if with_offset and time_format is None:
        if with_offset < text.len() - text.null_count() - int((text == "").sum()):
            return time_stamps(text.to_list())  # refuses the mixture, and says how many
        stamps = text.str.to_datetime("%+", time_unit="ns", time_zone="UTC", strict=False)
        if stamps.null_count() == text.null_count():
            return stamps.to_physical().fill_null(int(MISSING)).to_numpy().view("datetime64[ns]"), True
        return time_stamps([item or None for item in text.to_list()])
    best = None
    for written in (time_format,) if time_format else FORMATS:
        stamps = text.str.to_datetime(written, time_unit="ns", strict=False, exact=True)
        if best is None or stamps.null_count() < best.null_count():
            best = stamps
        if best.null_count() == text.null_count():
            break
    if best is None or 2 * best.null_count() > text.len():
        shown = next((item for item in text.to_list() if item), "")
        message = f'time such as {shown!r} is not plain: say how it is written, with time_format ("%m/%d/%Y %H:%M")'
        raise _refuse(message, "time", shown, "2025-06-02 10:30, 02.06.2025 10:30, or time_format")
    return best.to_physical().fill_null(int(MISSING)).to_numpy().view("datetime64[ns]"), False


def remade(parts: dict[str, Any]) -> Any:
    """Return a log from its parts; what unpickling calls."""
    from ._core import CurrentLog

    return CurrentLog(**parts)
