"""The page: what stands in a report, read off a comparison, and put into its template."""

from __future__ import annotations

from typing import Any

try:
    from jinja2 import Environment, PackageLoader, StrictUndefined
except ImportError:  # pragma: no cover
    raise ImportError("pinfilm.report needs jinja2 and matplotlib: pip install 'pinfilm[report]'") from None

from .._core import Comparison, Evaluation, version
from . import facts, pictures, setup


def page(comparison: Comparison, paybacks: Any | None, prepared: str, notes: tuple[str, ...]) -> str:
    """Return the report as HTML."""
    environment = Environment(
        loader=PackageLoader("pinfilm.reporting", "."),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    now, proposed = comparison.now, comparison.proposed
    spread = facts.spread(paybacks)
    return environment.get_template("report.html.j2").render(
        version=version(),
        prepared=prepared,
        notes=notes,
        comparison=comparison,
        now=now,
        proposed=proposed,
        currency=proposed.line.costs.currency,
        short=facts.in_short(comparison),
        survey=facts.table((now,), facts.SURVEY),
        found=facts.table((now, proposed), facts.FOUND),
        changes=facts.changes(now.line, proposed.line),
        setup=setup.sheet(proposed),
        why_there=setup.why_there(proposed),
        checks=setup.on_the_day(proposed),
        proof=setup.proof(comparison),
        money=facts.items(comparison),
        payback=facts.table((comparison,), facts.PAYBACK),
        spread=spread,
        spread_sentence=facts.in_a_sentence(spread) if spread else "",
        pictures=pictures.all_of(comparison, paybacks),
        assumptions=facts.assumptions(proposed),
        warnings=_warnings(now, proposed),
        cautions=list({caution.code: caution for caution in (*proposed.cautions, *now.cautions)}.values()),
    )


def _warnings(now: Evaluation, proposed: Evaluation) -> list[tuple[str, str]]:
    """Return warnings with the lines that they are about; the same one of both lines once."""
    of: dict[str, list[str]] = {}
    for name, result in (("as it is", now), ("as proposed", proposed)):
        for warning in result.warnings:
            of.setdefault(warning.message, []).append(name)
    return [(" and ".join(names), message) for message, names in of.items()]
