"""Docstrings say what signatures and the register say, and their examples run."""

import doctest
import importlib
import inspect
import re
from collections.abc import Iterator

import pytest

from pinfilm import _core

MODULES = [
    "coverage",
    "economics",
    "electrics",
    "fill",
    "film",
    "hydraulics",
    "kinematics",
    "motor",
    "oil",
    "statistics",
    "tension",
    "wear",
]
FORMULAS = {(formula["module"], formula["name"]): formula for formula in _core.formulas()}
SECTIONS = ["Parameters", "Returns", "Raises", "Notes", "References", "Examples"]


def public_functions() -> Iterator[tuple[str, str]]:
    for module in MODULES:
        names = importlib.import_module(f"pinfilm.{module}").__all__
        yield from ((module, name) for name in names if name[0].islower())


def docstring(module: str, name: str) -> str:
    return inspect.cleandoc(getattr(importlib.import_module(f"pinfilm.{module}"), name).__doc__)


def sections(text: str) -> dict[str, str]:
    parts = re.split(r"^(\w+)\n-+\n", text, flags=re.MULTILINE)
    return dict(zip(parts[1::2], parts[2::2], strict=True))


def parameters(text: str) -> dict[str, str]:
    """Name and description of every documented parameter; `a, b : array_like` documents two."""
    found: dict[str, str] = {}
    for names, body in re.findall(r"^([\w, ]+) : .*\n((?:    .*\n?)+)", sections(text)["Parameters"], re.MULTILINE):
        found |= {name.strip(): " ".join(body.split()) for name in names.split(",")}
    return found


def test_every_formula_is_public_and_every_public_function_is_registered() -> None:
    assert set(public_functions()) == set(FORMULAS)


@pytest.mark.parametrize(("module", "name"), list(public_functions()))
class TestFormula:
    def test_signature_docstring_and_register_name_the_same(self, module: str, name: str) -> None:
        function = getattr(importlib.import_module(f"pinfilm.{module}"), name)
        signature = list(inspect.signature(function).parameters)
        assert list(parameters(docstring(module, name))) == signature
        assert [row["name"] for row in FORMULAS[module, name]["arguments"]] == signature

    def test_ranges_and_defaults_stand_in_the_docstring(self, module: str, name: str) -> None:
        documented = parameters(docstring(module, name))
        for row in FORMULAS[module, name]["arguments"]:
            text = documented[row["name"]]
            if row["default"].startswith('"'):
                assert "as if not given" in text
                continue
            assert row["allowed"] in text
            optional = inspect.signature(getattr(_core, name)).parameters[row["name"]].default is None
            if optional and row["default"]:
                default = f"{float(row['default'].replace('_', '')):g}"
                assert re.search(rf"\b{re.escape(default)}\b.*(not given|\Z)|level|at 0 s", text), text

    def test_results_are_in_the_register(self, module: str, name: str) -> None:
        results = FORMULAS[module, name]["results"]
        if name == "three_gaps":
            assert results == []  # pairs of length and count, which have no name of their own
        else:
            assert results
            assert all(row["means"] for row in results)
            if len(results) == 1 and results[0]["unit"] not in {"", "money"}:
                label = results[0]["unit"]
                words = {"°": "degrees", "%": "percent", "d": "days", "µL/h": "µL per joint and running hour"}
                assert words.get(label, label) in sections(docstring(module, name))["Returns"].lower().replace(
                    label.lower(), label
                ).replace(words.get(label, label).lower(), words.get(label, label))

    def test_sections_are_complete_and_in_order(self, module: str, name: str) -> None:
        found = sections(docstring(module, name))
        assert [title for title in found if title in SECTIONS] == SECTIONS
        assert "InputError" in found["Raises"]
        assert all(text.strip() for text in found.values())

    def test_first_line_is_a_sentence(self, module: str, name: str) -> None:
        first = docstring(module, name).splitlines()[0]
        assert first.endswith(".")
        assert len(first) <= 120

    def test_examples_run(self, module: str, name: str) -> None:
        test = doctest.DocTestParser().get_doctest(docstring(module, name), {}, f"{module}.{name}", None, 0)
        assert test.examples
        outcome = doctest.DocTestRunner(optionflags=doctest.FAIL_FAST).run(test)
        assert outcome.failed == 0


def test_outcomes_document_their_fields_and_make_themselves_again() -> None:
    for module in MODULES:
        face = importlib.import_module(f"pinfilm.{module}")
        for name in face.__all__:
            if name[0].isupper():
                cls = getattr(face, name)
                assert cls.__module__ == f"pinfilm.{module}"
                fields = {field for field, value in vars(cls).items() if inspect.isgetsetdescriptor(value)}
                assert fields
                assert all(getattr(cls, field).__doc__ for field in fields)
                one = cls(**dict.fromkeys(fields, 1.0))
                assert set(one.to_dict()) == fields
