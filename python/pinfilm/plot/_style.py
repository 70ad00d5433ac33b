"""How pictures look: colours that everybody can tell apart, lines and hatches that survive a grey printer, labels."""

from __future__ import annotations

from collections.abc import Mapping
from textwrap import fill
from typing import TYPE_CHECKING, NamedTuple

from .._core import Comparison, Evaluation, register

try:
    from matplotlib import pyplot
except ImportError:  # pragma: no cover
    raise ImportError("pinfilm.plot draws with matplotlib: pip install 'pinfilm[plot]'") from None

if TYPE_CHECKING:
    from matplotlib.axes import Axes

#: Colours of Okabe and Ito 2008 ("Color Universal Design"), in an order whose neighbours also differ in grey.
BLACK, VERMILLION, BLUE, ORANGE = "#000000", "#D55E00", "#0072B2", "#E69F00"
GREEN, PURPLE, SKY, YELLOW = "#009E73", "#CC79A7", "#56B4E9", "#F0E442"
GREY, PALE = "#6b6b6b", "#ececec"


#: Letters of an axis label on one line: beside a picture of usual height, and below one.
WIDEST, ACROSS = 40, 62


class Look(NamedTuple):
    """How one of several things is drawn: never told apart by colour alone."""

    color: str
    line: str | tuple[int, tuple[int, ...]]
    marker: str
    hatch: str


LOOKS = (
    Look(BLUE, "-", "o", ""),
    Look(ORANGE, "--", "s", "///"),
    Look(BLACK, "-.", "^", "..."),
    Look(GREEN, ":", "D", "xxx"),
    Look(PURPLE, (0, (5, 1, 1, 1, 1, 1)), "v", "\\\\\\"),
    Look(SKY, (0, (1, 1)), "P", "---"),
)


def look(number: int) -> Look:
    """How the thing of that number is drawn; after the last look the first again."""
    return LOOKS[number % len(LOOKS)]


def axes(ax: Axes | None, size: tuple[float, float] = (6.4, 3.8)) -> Axes:
    """Return the given axes, or new ones on a figure of their own."""
    if ax is not None:
        return ax
    return pyplot.subplots(figsize=size, layout="constrained")[1]


_ROWS: list[dict[str, dict[str, str]]] = []
"""The register by path, once somebody has asked for it; whole whenever it is there, for threads that ask at once."""


def row(path: str) -> dict[str, str]:
    """Return the row of the register at a path."""
    if not _ROWS:
        _ROWS.append({found["path"]: found for found in register()})
    return _ROWS[0][path]


def label(path: str, unit: str | None = None, widest: int = WIDEST) -> str:
    """Return meaning and unit of a quantity, as an axis says it; `unit` where the register's is not the one shown."""
    found = row(path)
    unit = found["unit"] if unit is None else unit
    means = found["means"].split(";")[0].split(":")[0]
    means = means[:1].upper() + means[1:]
    return fill(f"{means} ({unit})" if unit else means, widest)


def money(path: str, result: Evaluation | Comparison) -> str:
    """Return meaning and unit of money, in the currency of the survey."""
    line = result.now.line if isinstance(result, Comparison) else result.line
    return label(path, row(path)["unit"].replace("money", line.costs.currency))


def each(results: Evaluation | Comparison | Mapping[str, Evaluation]) -> dict[str, Evaluation]:
    """Return results by name: one alone has no name, a comparison has two."""
    if isinstance(results, Comparison):
        return {"as it is": results.now, "as proposed": results.proposed}
    if isinstance(results, Evaluation):
        return {"": results}
    return dict(results)


def legend(ax: Axes, **how: object) -> None:
    """Draw a legend if anything on the axes has a name."""
    if ax.get_legend_handles_labels()[1]:
        ax.legend(**({"frameon": True, "framealpha": 0.9, "fontsize": "small"} | how))


def quiet(ax: Axes, grid: str = "both") -> None:
    """Take away what does not carry data."""
    ax.spines[["top", "right"]].set_visible(False)
    ax.grid(True, axis=grid, color="0.88", linewidth=0.7)  # type: ignore[arg-type]
    ax.set_axisbelow(True)
