"""Every class of the core that is a noun behaves like a value: it can be written, read, copied, compared and hashed."""

from __future__ import annotations

import copy
import inspect
import json
import pickle
from collections.abc import Iterator
from typing import Any

import pytest
from conftest import OVEN, SURVEYS, compare_quietly, quietly

import pinfilm
from pinfilm import _core

NOUNS = {
    name: cls
    for name, cls in vars(_core).items()
    if inspect.isclass(cls) and hasattr(cls, "from_dict") and hasattr(cls, "to_dict")
}


def _inside(noun: Any) -> Iterator[Any]:
    """Yield a noun and every noun inside it."""
    yield noun
    for name in noun.to_dict():
        value = getattr(noun, name, None)
        for item in value if isinstance(value, tuple) else (value,):
            if type(item).__name__ in NOUNS:
                yield from _inside(item)


def _samples() -> dict[str, Any]:
    """Return one instance of every noun, out of the evaluated lines; the first one met, and the richest of its kind."""
    lines = {name: pinfilm.Line.from_dict(data) for name, data in SURVEYS.items()}
    odd = pinfilm.Line.from_dict(SURVEYS[OVEN]).replace(name='<oven & "dryer">\nº1')
    roots: list[Any] = [quietly(line) for line in lines.values()]
    roots.append(compare_quietly(odd, lines["E-oven-proposed"]))
    roots.append(
        _core.TwoSprocket(
            pitch_mm=100, centre_distance_m=20, teeth_drive=12, teeth_tail=12, carried_kg_per_m=60, take_up_n=1500
        )
    )
    oven = roots[0]
    roots += [oven.round_loop(3), oven.shot_record(1), oven.friction_curve(0, 5), oven.elongation_curve(points=5)]
    roots.append(pinfilm.joint_orbit(lines[OVEN]))
    roots += _of_a_log()
    offers = {"shots_ul": [2, 8], "run_min": [180], "dwell_min": [540, 1620], "every_nth": [8, 9]}
    roots.append(pinfilm.recommend(pinfilm.examples.load("oven_proposed"), keep=2, **offers))
    roots.append(_core.Shift(start_h=6, length_h=8, stop_every_min=50, stop_min=10))
    roots.append(pinfilm.simulate(pinfilm.examples.load("oven_proposed"), weeks=1))
    found: dict[str, Any] = {}
    for root in roots:
        for noun in _inside(root):
            name = type(noun).__name__
            if name not in found or len(repr(noun)) > len(repr(found[name])):
                found[name] = noun
    return found


def _of_a_log() -> list[Any]:
    """Return verdicts on an invented log, and what they are asked with."""
    demo = pinfilm.examples.current_log("oven", days=200, changed_after=100, step_min=60)
    log = demo.log(rules=pinfilm.LogRules(no_load_current_a=1.0))
    return [
        log.before_after(demo.changed, line=demo.line),
        log.change_points(line=demo.line),
        log.savings(demo.changed, line=demo.line),
        log.watch(demo.changed, line=demo.line),
        pinfilm.oil_use(used_l=2.0, shots=120_000, shot_ul=18.0),
        pinfilm.OilCheck(used_l=2.0, shots=120_000, shot_ul=18.0),
        pinfilm.LogRules(),
        pinfilm.LogRow(current_a=2.8),
        pinfilm.Proof(),
    ]


SAMPLES = _samples()
NAMES = {name: getattr(_core, name) for name in NOUNS}


def test_every_noun_has_a_sample() -> None:
    assert sorted(SAMPLES) == sorted(NOUNS)


@pytest.fixture(params=sorted(NOUNS))
def noun(request: pytest.FixtureRequest) -> Any:
    return SAMPLES[request.param]


@pytest.mark.parametrize("form", ["dict", "json", "toml"])
def test_written_and_read_again_it_is_the_same(noun: Any, form: str) -> None:
    written = getattr(noun, f"to_{form}")()
    again = getattr(type(noun), f"from_{form}")(written)
    assert again == noun
    assert again.to_dict() == noun.to_dict()


def test_its_dictionary_is_plain_data(noun: Any) -> None:
    assert json.loads(json.dumps(noun.to_dict(), allow_nan=False)) == noun.to_dict()
    assert json.loads(noun.to_json()) == noun.to_dict()


def test_its_repr_is_python(noun: Any) -> None:
    again = eval(repr(noun), dict(NAMES))
    assert again == noun
    assert repr(again) == repr(noun)


def test_it_pickles_and_copies(noun: Any) -> None:
    copies = [pickle.loads(pickle.dumps(noun, protocol)) for protocol in range(2, pickle.HIGHEST_PROTOCOL + 1)]
    copies += [copy.copy(noun), copy.deepcopy(noun), noun.replace()]
    for other in copies:
        assert type(other) is type(noun)
        assert other == noun
        assert hash(other) == hash(noun)
        assert (other != noun) is False
    assert len({noun, *copies}) == 1


def test_it_differs_from_everything_else(noun: Any) -> None:
    assert noun != noun.to_dict()
    assert noun != None  # noqa: E711
    assert all(noun != other for name, other in SAMPLES.items() if name != type(noun).__name__)


def test_a_changed_noun_is_another(noun: Any) -> None:
    def changed(value: Any) -> Any:
        if isinstance(value, bool):
            return not value
        return value * 1.0000001 if isinstance(value, float) and value else None

    for name in noun.to_dict():
        value = changed(getattr(noun, name, None))
        if value is None:
            continue
        try:
            other = noun.replace({name: value})
        except pinfilm.InputError:  # at the edge of its range, or only sensible together with others
            continue
        assert other != noun
        assert getattr(other, name) == value
        assert noun.replace(**{name: value}) == other


def test_its_tables_can_be_shown(noun: Any) -> None:
    html = noun._repr_html_()
    assert html.count("<table") == html.count("</table>") > 0
    assert html.count("<td") == html.count("</td>")
    assert '<oven & "dryer">' not in html
    assert str(noun)


def test_html_escapes_what_the_surveyor_wrote() -> None:
    html = SAMPLES["Line"].replace(name='<b>x</b> & "y"')._repr_html_()
    assert "&lt;b&gt;x&lt;/b&gt; &amp;" in html
    assert "<b>x</b>" not in html


def test_it_is_frozen(noun: Any) -> None:
    for name in [*noun.to_dict(), "anything_else"]:
        with pytest.raises((AttributeError, TypeError)):
            setattr(noun, name, 1.0)
        with pytest.raises((AttributeError, TypeError)):
            delattr(noun, name)


def test_it_takes_keywords_only(noun: Any) -> None:
    with pytest.raises(TypeError):
        type(noun)(1.0)
    with pytest.raises(TypeError, match="no_such_name"):
        type(noun)(no_such_name=1.0)


def test_every_keyword_is_an_attribute_with_a_docstring(noun: Any) -> None:
    keywords = [name for name in inspect.signature(type(noun)).parameters]
    assert keywords
    data = noun.to_dict()
    for name in keywords:
        assert name in data
        assert getattr(type(noun), name).__doc__, name
        assert type(noun).__doc__


def test_replace_reaches_list_items_and_nouns_inside() -> None:
    line = SAMPLES["Line"]
    other = line.replace({"circuit.sections.1.length_m": 41.0, "duty.dust_factor": 2}, name="other")
    assert other.circuit.sections[1].length_m == 41.0
    assert other.duty.dust_factor == 2.0
    assert other.name == "other"
    assert line.circuit.sections[1].length_m != 41.0
    with pytest.raises(pinfilm.InputError, match="items 0 to"):
        line.replace({"circuit.sections.99.length_m": 41.0})


def test_a_file_is_read_by_its_path_or_name(tmp_path: Any) -> None:
    line = SAMPLES["Line"]
    for form in ("toml", "json"):
        file = tmp_path / f"line.{form}"
        file.write_text(getattr(line, f"to_{form}")(), encoding="utf-8")
        read = getattr(pinfilm.Line, f"from_{form}")
        assert read(file) == read(str(file)) == line
        with pytest.raises(FileNotFoundError):
            read(tmp_path / f"missing.{form}")


SETTINGS = ("friction", "surface", "joint", "fill", "wear")


def test_a_line_may_leave_its_settings_out() -> None:
    line = pinfilm.Line.from_dict({key: value for key, value in SURVEYS[OVEN].items() if key not in SETTINGS})
    groups = {name: getattr(line, name) for name in line.to_dict()}
    named = {name: value for name, value in groups.items() if name not in SETTINGS and value is not None}
    assert pinfilm.Line(**named) == line
    assert pinfilm.Line(**named, wear=None) == line
    for name in SETTINGS:
        assert groups[name] == type(groups[name])()
        assert f"{name}={type(groups[name]).__name__}(" not in repr(line)
    assert eval(repr(line), dict(NAMES)) == line
    other = line.replace({"surface.roughness_um": 0.5})
    assert "surface=Surface(roughness_um=0.5)" in repr(other)
    assert eval(repr(other), dict(NAMES)) == other


def test_the_help_of_a_line_names_what_may_be_left_out() -> None:
    said = pinfilm.Line.__doc__ or ""
    assert all(f"`{name}`" in said for name in SETTINGS)
    optional = inspect.signature(pinfilm.Line).parameters
    assert all(optional[name].default is None for name in SETTINGS)


def test_money_is_shown_in_the_currency_of_the_survey() -> None:
    line = pinfilm.Line.from_dict(SURVEYS[OVEN]).replace({"costs.currency": "CHF"})
    result = quietly(line)
    change = compare_quietly(line, line)
    for shown in (line, result, result.cost, change):
        for text in (str(shown), shown._repr_html_()):
            assert "CHF/" in text
            assert "money/" not in text
    assert result.explain("cost.total_per_year").value.endswith(" CHF/year")
    assert change.explain("saving_per_year").value.endswith(" CHF/year")
