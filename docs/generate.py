"""Pages that the register writes: glossary, closures, the tables of the theory pages, the list of notebooks."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pinfilm
from pinfilm._core import formulas

#: Theory page, groups of the register that belong to it, formula modules.
ROOMS = {
    "chain": (("chain",), ("kinematics",)),
    "oil": (("oil",), ("oil",)),
    "circuit": (("circuit", "kinematics", "tension", "friction"), ("tension",)),
    "joint": (("surface", "joint"), ("film",)),
    "lubrication": (("lubrication", "fill"), ("coverage", "hydraulics", "fill")),
    "wear": (("wear",), ("wear",)),
    "drive": (("drive",), ("motor",)),
    "supply": (("supply",), ("electrics",)),
    "economics": (("costs", "cost", ""), ("economics",)),
    "line": (("duty", "round_loop", "shot_record", "friction_curve", "elongation_curve"), ()),
    "log": (
        ("rules", "proof", "cleaning", "change_points", "before_after", "avoided", "watch", "oil_check", "oil_use"),
        ("statistics",),
    ),
}


def cell(text: str) -> str:
    """Text that is safe in a cell of a Markdown table."""
    text = text.replace("\\", "\\\\").replace("|", "\\|").replace("\n", " ")
    for letter in "*_<>[]$`":
        text = text.replace(letter, "\\" + letter)
    return text.strip()


def table(heads: list[str], rows: list[list[str]]) -> str:
    """A Markdown table."""
    lines = ["| " + " | ".join(heads) + " |", "|" + "---|" * len(heads)]
    return "\n".join(lines + ["| " + " | ".join(row) + " |" for row in rows]) + "\n"


def bounded(words: str) -> str:
    """A range in words, long numbers as powers of ten; a dash for one that is none."""
    if words.startswith("any number"):
        return "–"
    return re.sub(r"\d{6,}", lambda number: f"{float(number[0]):g}".replace("e+", "e"), words)


def group(path: str) -> str:
    """The group of a path; empty for what stands at the top of a comparison."""
    return path.split(".")[0] if "." in path else ""


def unique() -> list[dict[str, str]]:
    """Rows of the register, each path and meaning once."""
    seen: set[tuple[str, str]] = set()
    rows = []
    for row in pinfilm.register():
        key = (row["path"], row["means"])
        if key not in seen:
            seen.add(key)
            rows.append(row)
    return rows


def glossary() -> str:
    """Every public quantity."""
    rows = sorted(unique(), key=lambda row: (row["path"].count(".") == 0, row["path"]))
    heads = ["name", "meaning", "allowed, *usual*", "default"]
    body = [
        [
            f"`{r['path']}`",
            cell(r["means"]) + (f", {cell(r['symbol'])}" if r["symbol"] else ""),
            ranges(r),
            cell(r["default"].replace(" ", "").replace("None", "–")),
        ]
        for r in rows
    ]
    return f"{len(body)} quantities.\n\n" + table(heads, body)


def ranges(row: dict[str, str]) -> str:
    """Allowed and usual range of a row, or its unit where it has neither."""
    allowed, usual = bounded(row["allowed"]), bounded(row["usual"])
    if usual != "–":
        return f"{cell(allowed)}, *{cell(usual)}*"
    return cell(row["unit"]) if allowed == "–" else cell(allowed)


def closures() -> str:
    """Every relation or default of our own."""
    rows = [row for row in unique() if row["source_class"] == "closure of our own"]
    heads = ["name", "meaning", "default or relation", "spread", "from"]
    body = [
        [
            f"`{r['path']}`",
            cell(r["means"]),
            cell((r["default"] or r["formula"]).replace("None", "–")),
            cell(r["spread"]),
            cell(r["source"]),
        ]
        for r in rows
    ]
    return f"{len(body)} rows of the register have this class.\n\n" + table(heads, body)


def references(doc: str) -> str:
    """The references of a docstring."""
    found = re.search(r"References\n-+\n(.*?)(\n\n|\Z)", doc, re.DOTALL)
    return " ".join(found.group(1).split()) if found else ""


def theory(groups: tuple[str, ...], modules: tuple[str, ...]) -> str:
    """Equation, function, source and range of a room."""
    text = ""
    known = {one["name"]: one for one in formulas()}
    calls = []
    for module in modules:
        for name in getattr(pinfilm, module).__all__:
            one = known.get(name)
            if one is None:
                continue
            ranges = "; ".join(f"{a['name']}: {bounded(a['allowed'])}" for a in one["arguments"])
            function = getattr(getattr(pinfilm, module), name)
            gives = (
                ", ".join(result["means"] for result in one["results"][:3]) or (function.__doc__ or "").split("\n")[0]
            )
            calls.append([f"`{module}.{name}`", cell(gives), cell(references(function.__doc__ or "")), cell(ranges)])
    if calls:
        text += "## Functions\n\n" + table(["function", "gives", "source", "range of its arguments"], calls) + "\n"
    rows = [row for row in unique() if group(row["path"]) in groups and row["formula"]]
    if rows:
        body = [
            [f"`{r['path']}` {cell(r['symbol'])}".strip(), cell(r["formula"].replace("{", "").replace("}", "")),
             cell(r["source"]), r["source_class"], cell(r["unit"])]
            for r in rows
        ]  # fmt: skip
        text += "## Results\n\n" + table(["result", "equation", "source", "class", "unit"], body) + "\n"
    rows = [
        row
        for row in unique()
        if group(row["path"]) in groups and not row["formula"] and row["default"] not in ("", "None")
    ]
    rows = [row for row in rows if row["source_class"] != "from the survey"]
    if rows:
        body = [
            [f"`{r['path']}`", cell(r["means"]), cell(r["default"]), cell(bounded(r["usual"])), cell(r["spread"]),
             f"{r['source_class']}" + (f"; {cell(r['source'])}" if r["source"] else "")]
            for r in rows
        ]  # fmt: skip
        text += "## Values that stand where the survey says nothing\n\n"
        text += table(["input", "meaning", "value", "usual", "spread", "class, source"], body) + "\n"
    return text


def notebooks(folder: Path) -> str:
    """The notebooks by their first heading."""
    lines = []
    for file in sorted(folder.glob("*.ipynb")):
        cells = json.loads(file.read_text("utf-8"))["cells"]
        words = "".join(next((c["source"] for c in cells if c["cell_type"] == "markdown"), file.stem))
        title = next((line.lstrip("# ") for line in words.splitlines() if line.startswith("#")), file.stem)
        lines.append(f"- {{download}}`{title} </../notebooks/{file.name}>`")
    return "\n".join(lines) + "\n"


def more(docs: Path) -> str:
    """Pages that stand in the folder and in no other list: published checks, uncertainty, worked examples."""
    listed = {"index", "tutorials", "glossary", "closures", "cautions", "benchmarks"}
    pages = sorted(page.stem for page in docs.glob("*.md") if page.stem not in listed)
    pages += sorted(f"worked/{page.stem}" for page in (docs / "worked").glob("*.md"))
    if not pages:
        return ""
    lines = "\n".join(f"/{page}" for page in pages)
    return f"```{{toctree}}\n:maxdepth: 1\n:caption: Checks and worked examples\n\n{lines}\n```\n"


def everything(docs: Path) -> None:
    """Write all of it; a file that would not change is left alone, so that a second build is quick."""
    out = docs / "_generated"
    out.mkdir(exist_ok=True)
    pages = {"glossary": glossary(), "closures": closures(), "more": more(docs)}
    pages["notebooks"] = notebooks(docs.parent / "notebooks")
    pages |= {f"theory-{room}": theory(*of) for room, of in ROOMS.items()}
    for name, text in pages.items():
        file = out / f"{name}.md"
        if not file.exists() or file.read_text("utf-8") != text:
            file.write_text(text, "utf-8")
