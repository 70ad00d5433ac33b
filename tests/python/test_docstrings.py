"""The examples in the docstrings of the compiled core, which doctest does not find by itself."""

from __future__ import annotations

import doctest
from collections.abc import Iterator

import pytest

import pinfilm
from pinfilm import _core


def examples() -> Iterator[doctest.DocTest]:
    parser = doctest.DocTestParser()
    for name, thing in vars(_core).items():
        documented = {name: thing}
        if isinstance(thing, type):
            documented |= {f"{name}.{member}": getattr(thing, member) for member in vars(thing)}
        for path, value in documented.items():
            test = parser.get_doctest(getattr(value, "__doc__", None) or "", {"pinfilm": pinfilm}, path, None, 0)
            if test.examples:
                yield test


@pytest.mark.filterwarnings("ignore::pinfilm.PinfilmRangeWarning")
@pytest.mark.parametrize("test", [pytest.param(test, id=test.name) for test in examples()])
def test_example_runs(test: doctest.DocTest) -> None:
    told: list[str] = []
    assert doctest.DocTestRunner().run(test, out=told.append).failed == 0, "".join(told)
