"""docs/what-is-drawn.md lists every spread of the register, word for word; run as a script, this file writes it."""

from __future__ import annotations

import pathlib

import pinfilm

PAGE = pathlib.Path(__file__).parents[2] / "docs" / "what-is-drawn.md"
HEAD = """# What studies draw

How far each guess may be out, from the register; this list is written from it.
`pinfilm.default_uncertainty(lines)` gives the distributions of those inputs that move a number of a line or a
change, and `sample`, `sensitivity` and `calibrate` take them if nothing else is named.

- The spread is taken about the value of the line. A lognormal is moved by its median, the others by their peak;
  where the value lies outside the ends, these move with it as a factor. Ends are cut at what the input allows,
  and a lognormal that reaches beyond keeps its body (5 % to 95 %, log-uniform).
- A uniform spread *from memory* tells how oils, motors and meters differ. A survey that names a value of its
  own has looked: then it is not drawn. A uniform spread of a closure or of practice is drawn with its peak at
  the named value.
- Of a pair, one draw serves both sides, about the value of each. Different methods of oiling have draws of
  their own. Of a cost that the proposal changes only the promise is drawn: what is counted now is taken as
  counted.
- Friction and wear of a surface are correlated by 0.5 (dry friction with the dry wear coefficient, boundary
  friction with the boundary one), a closure of our own.
- Spreads of prices, cleanings, breakdowns and capital are common practice, no source; the value itself is the
  survey's.
- Costs of labour, standstill, chain and fitting are not drawn unless you name them. Cost of standstill is the
  softest number of all.

| input | unit | default | spread | founded |
|---|---|---|---|---|
"""


def page() -> str:
    seen = set()
    lines = []
    for row in pinfilm.register():
        key = (row["path"], row["spread"], row["default"])
        if row["spread"] and key not in seen:
            seen.add(key)
            default = "" if row["default"] in {"", "None"} else row["default"]
            lines.append(f"| `{row['path']}` | {row['unit']} | {default} | {row['spread']} | {row['source_class']} |")
    return HEAD + "\n".join(lines) + "\n"


def test_the_page_is_the_register() -> None:
    assert PAGE.read_text(encoding="utf-8") == page(), "write it anew with this file as a script, and look at it"


if __name__ == "__main__":
    PAGE.write_text(page(), encoding="utf-8")
