"""What goes wrong goes wrong as a typed exception that says which field, which value, which limit."""

from __future__ import annotations

import copy
import math
import pickle
from pathlib import Path
from typing import Any

import pytest
from conftest import SURVEYS, quietly
from hypothesis import given
from hypothesis import strategies as st

import pinfilm
from pinfilm import ConvergenceError, InputError, PinfilmError, TableError, UnitError


def refused(changes: dict[str, Any], line: pinfilm.Line, kind: type[PinfilmError] = InputError) -> PinfilmError:
    with pytest.raises(kind) as caught:
        line.replace(changes)
    assert type(caught.value) is kind
    return caught.value


def test_an_error_says_field_value_unit_and_limit(line: pinfilm.Line) -> None:
    error = refused({"duty.speed_m_per_min": -3}, line)
    assert (error.code, error.field, error.value, error.unit) == ("out_of_range", "duty.speed_m_per_min", -3.0, "m/min")
    assert error.limit == "above 0 and at most 1200 m/min"
    assert error.line is None
    assert "duty.speed_m_per_min = -3 m/min" in str(error)
    assert "code: out_of_range" in str(error)


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf, 10**400, -(10**400)])
def test_what_is_not_finite_is_refused(line: pinfilm.Line, value: float) -> None:
    error = refused({"chain.pitch_mm": value}, line)
    assert error.code == "not_finite"
    with pytest.raises(InputError, match="not a finite number"):
        pinfilm.Timer(run_min=value)


def test_an_unknown_key_names_the_nearest(line: pinfilm.Line) -> None:
    error = refused({"chain.pich_mm": 100.0}, line)
    assert error.code == "unknown_key"
    assert error.field == "chain.pich_mm"
    assert "did you mean pitch_mm?" in str(error)


def test_an_unknown_key_of_a_file_names_its_line(line: pinfilm.Line) -> None:
    text = line.to_toml()
    with pytest.raises(InputError) as caught:
        pinfilm.Line.from_toml(text.replace("pitch_mm", "pich_mm", 1))
    number = next(i for i, row in enumerate(text.splitlines(), 1) if row.startswith("pitch_mm"))
    assert caught.value.line == number
    assert f"line {number}" in str(caught.value)


def test_an_unknown_choice_names_the_nearest(line: pinfilm.Line) -> None:
    error = refused({"circuit.sections.1.support": "roller"}, line)
    assert error.code == "unknown_choice"
    assert error.value == "roller"
    assert 'Did you mean "rollers"?' in str(error)


@pytest.mark.parametrize(
    ("text", "code"),
    [("= 3", "not_readable"), ("name = 'a'\nchain = 3", "wrong_type"), ("", "missing"), ("name = 1", "wrong_type")],
)
def test_bad_text_is_refused(text: str, code: str) -> None:
    with pytest.raises(InputError) as caught:
        pinfilm.Line.from_toml(text)
    assert caught.value.code == code


def test_bad_json_is_refused() -> None:
    with pytest.raises(InputError) as caught:
        pinfilm.Line.from_json('{"name": \n}')
    assert (caught.value.code, caught.value.line) == ("not_readable", 2)


def test_errors_are_also_what_a_caller_expects() -> None:
    for kind, builtin in ((InputError, ValueError), (UnitError, ValueError), (TableError, ValueError)):
        assert issubclass(kind, PinfilmError)
        assert issubclass(kind, builtin)
    assert issubclass(ConvergenceError, (PinfilmError, RuntimeError))


@pytest.mark.parametrize("kind", [PinfilmError, InputError, UnitError, TableError, ConvergenceError])
@pytest.mark.parametrize("value", [(1.5, None), (None, "word"), (None, None)])
def test_errors_pickle_and_copy(kind: type[PinfilmError], value: tuple[float | None, str | None]) -> None:
    error = kind("what is wrong", "some_code", "chain.pitch_mm", *value, "mm", "above 0 mm", 12)
    for other in (pickle.loads(pickle.dumps(error)), copy.copy(error), copy.deepcopy(error)):
        assert type(other) is kind
        assert str(other) == "what is wrong"
        assert vars(other) == vars(error)
    assert error.value == (value[0] if value[0] is not None else value[1])


def test_an_error_can_be_raised_where_nothing_can_be_imported() -> None:
    with pytest.raises(InputError):
        eval("Timer(run_min=-1)", {"__builtins__": {}, "Timer": pinfilm.Timer})


def test_data_that_hold_themselves_are_refused(line: pinfilm.Line) -> None:
    ring: list[Any] = []
    ring.append(ring)
    loop: dict[str, Any] = {}
    loop["chain"] = loop
    for junk in (ring, loop):
        with pytest.raises(InputError, match="holds itself"):
            line.replace(chain=junk)
        with pytest.raises(InputError, match="holds itself"):
            pinfilm.Line.from_dict(junk)


def edited(line: pinfilm.Line, old: str, new: str) -> tuple[pinfilm.Line, int]:
    """Return the line read from a text with one change, and the number of the changed row."""
    text = line.to_toml()
    assert old in text
    return pinfilm.Line.from_toml(text.replace(old, new, 1)), 1 + text[: text.index(old)].count("\n")


@pytest.mark.parametrize(
    ("old", "new", "field", "unit"),
    [
        ("rated_speed_rpm = ", "rated_speed_rpm = 1100.0 # ", "drive.rated_speed_rpm", "1/min"),
        ("iso_vg = ", "iso_vg = 200 # ", "oil.iso_vg", ""),
        ("pitch_mm = ", "tensile_strength_kn = 0.5\npitch_mm = ", "chain.tensile_strength_kn", "kN"),
        ("rise_m = 0.0", "rise_m = 300.0", None, "m"),
    ],
)
def test_what_models_refuse_has_the_survey_path_and_its_line(
    line: pinfilm.Line, old: str, new: str, field: str | None, unit: str
) -> None:
    changed, number = edited(line, old, new)
    with pytest.raises(InputError) as caught:
        quietly(changed)
    error = caught.value
    assert (error.unit, error.line) == (unit, number), str(error)
    if field is not None:
        assert error.field == field
        assert f"{field} = " in str(error)
    assert error.field.startswith(("circuit.sections.", "drive.", "oil.", "chain."))
    assert isinstance(error.value, float)
    assert error.limit
    # what did not come from a file has no line, and is the same in everything else
    with pytest.raises(InputError) as again:
        quietly(pinfilm.Line.from_dict(changed.to_dict()))
    assert again.value.line is None
    assert {**vars(again.value), "line": number} == vars(error)
    assert changed == pinfilm.Line.from_dict(changed.to_dict())


@pytest.mark.parametrize("cls", [pinfilm.Line, pinfilm.Oil])
@pytest.mark.parametrize("form", ["toml", "json"])
def test_a_file_that_is_not_utf_8_names_byte_and_line(cls: Any, form: str, tmp_path: Path) -> None:
    file = tmp_path / f"survey.{form}"
    file.write_bytes(b'name = "a"\n# M\xfcller\n')
    for source in (file, str(file)):
        with pytest.raises(InputError) as caught:
            getattr(cls, f"from_{form}")(source)
        assert (caught.value.code, caught.value.line, caught.value.value) == ("not_readable", 2, "0xfc")
        assert "byte 15 of the file is 0xfc" in str(caught.value)


def test_an_unknown_choice_lists_the_choices_once(line: pinfilm.Line) -> None:
    error = refused({"circuit.sections.1.support": "roller"}, line)
    assert str(error).count("trolleys") == 1


class Awkward:
    """Pretends to be a number, a list and a quantity, and fails at each."""

    def __float__(self) -> float:
        raise ValueError("no float")

    def __len__(self) -> int:
        raise ValueError("no length")

    def __iter__(self) -> Any:
        raise TypeError("no items")


def paths_of(data: Any, path: str = "") -> list[str]:
    """Return every dotted path of survey data."""
    items = data.items() if isinstance(data, dict) else enumerate(data) if isinstance(data, list) else ()
    return [path] * bool(path) + [deep for key, item in items for deep in paths_of(item, f"{path}.{key}".lstrip("."))]


ALL_PATHS = {name: paths_of(data) for name, data in SURVEYS.items()}
NUMBERS = st.one_of(
    st.floats(allow_nan=True, allow_infinity=True),
    st.floats(1e-9, 1e9),
    st.sampled_from([0, -0.0, 1, -1, 2, 3, 5e-324, 1e-300, 1e300, 2**31, 2**53, 2**63, -(2**63), 10**30, 10**400]),
    st.integers(-10, 5000),
)
JUNK = st.one_of(
    NUMBERS,
    st.none(),
    st.booleans(),
    st.text(max_size=8),
    st.binary(max_size=4),
    st.lists(NUMBERS, max_size=3),
    st.dictionaries(st.text(max_size=6), NUMBERS, max_size=2),
    st.complex_numbers(),
    st.decimals(),
    st.fractions(),
    st.sampled_from([object(), Awkward(), int, len, {1, 2}, "\ud800", "\0", b"", range(3), ..., NotImplemented]),
)


def evaluated_or_refused(name: str, changes: dict[str, Any]) -> None:
    """Change, evaluate and show a line; only typed errors may come of it, and no number that is none."""
    try:
        line = pinfilm.Line.from_dict(SURVEYS[name]).replace(changes)
        result = quietly(line)
        str(result), result._repr_html_(), repr(result)
        result.to_json(), result.to_toml()
    except (PinfilmError, TypeError, ValueError) as error:
        assert str(error)
        return
    assert pinfilm.Line.from_dict(line.to_dict()) == line
    assert result == result.replace()


@given(st.sampled_from(sorted(SURVEYS)), st.data())
def test_junk_anywhere_is_refused_and_never_a_panic(name: str, data: st.DataObject) -> None:
    count = data.draw(st.integers(1, 2))
    changes = {data.draw(st.sampled_from(ALL_PATHS[name])): data.draw(JUNK) for _ in range(count)}
    evaluated_or_refused(name, changes)


@given(st.sampled_from(sorted(SURVEYS)), st.data())
def test_odd_numbers_anywhere_give_a_result_or_a_typed_error(name: str, data: st.DataObject) -> None:
    """Numbers stretched by up to a million: many survive the ranges and reach the models."""
    survey = pinfilm.Line.from_dict(SURVEYS[name])
    changes = {}
    for path in data.draw(st.lists(st.sampled_from(ALL_PATHS[name]), min_size=1, max_size=4, unique=True)):
        here: Any = survey.to_dict()
        for step in path.split("."):
            here = here[int(step)] if isinstance(here, list) else here[step]
        if isinstance(here, int | float) and not isinstance(here, bool):
            factor = data.draw(st.sampled_from([0, 1e-6, 1e-3, 0.1, 0.5, 1.5, 3, 10, 1e3, 1e6, -1]))
            changes[path] = int(here * factor) if isinstance(here, int) else here * factor
    evaluated_or_refused(name, changes)


@given(st.text(max_size=60))
def test_any_text_is_read_or_refused(text: str) -> None:
    for read in (pinfilm.Line.from_toml, pinfilm.Line.from_json, pinfilm.Oil.from_toml):
        with pytest.raises((PinfilmError, ValueError, OSError)):
            read(text)
