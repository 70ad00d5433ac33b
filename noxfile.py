"""Every check of the project. `nox` runs the sessions that must pass; `nox -l` lists them all."""

from __future__ import annotations

import pathlib
import re
import shutil
import sys
import zipfile

import nox

nox.needs_version = ">=2025.2.9"
nox.options.sessions = ["rust", "python", "notebooks", "docs", "wheel"]
nox.options.default_venv_backend = "venv"
nox.options.reuse_existing_virtualenvs = True

ROOT = pathlib.Path(__file__).parent
PROJECT = nox.project.load_toml("pyproject.toml")
MATURIN = PROJECT["build-system"]["requires"]
STUB = ROOT / "python" / "pinfilm" / "_core.pyi"

EXECUTE = """
import pathlib, sys
import nbclient, nbformat
path = pathlib.Path(sys.argv[1])
book = nbformat.read(path, as_version=4)
dirty = [n for n, cell in enumerate(book.cells, 1) if cell.cell_type == "code" and cell.outputs]
if dirty:
    sys.exit(f"{path}: cells {dirty} have outputs; clear them before you commit")
nbclient.NotebookClient(book, timeout=300, resources={"metadata": {"path": path.parent}}).execute()
print(f"{path}: {sum(cell.cell_type == 'code' for cell in book.cells)} cells executed")
"""


def cargo(session: nox.Session, *arguments: str) -> None:
    """Run cargo without flags that a shell may have set: they would rebuild everything, or change numbers."""
    session.run("cargo", *arguments, external=True, env={"RUSTFLAGS": None})


def develop(session: nox.Session, *groups: str) -> None:
    """Install the dependencies of the groups and the package from this tree; writes the stub of the core too."""
    session.install(*MATURIN, *PROJECT["project"]["dependencies"], *nox.project.dependency_groups(PROJECT, *groups))
    # The same features in every session, so that one build serves all.
    session.run("maturin", "develop", "--locked", "-F", "stubs", "--generate-stubs", env={"RUSTFLAGS": None})


@nox.session(venv_backend="none")
def rust(session: nox.Session) -> None:
    """Format, purity of the core, lints, unit and property tests, published values, independent cases, doc tests."""
    cargo(session, "fmt", "--check")
    core = (path for path in (ROOT / "src").rglob("*.rs") if (ROOT / "src" / "py") not in path.parents)
    named = [str(path.relative_to(ROOT)) for path in core if re.search(r"\b(pyo3|numpy)\b", path.read_text("utf-8"))]
    if named:
        session.error(f"only src/py may name pyo3 or numpy: {', '.join(named)}")
    cargo(session, "clippy", "--locked", "--all-targets", "--", "-D", "warnings")
    cargo(session, "clippy", "--locked", "--features", "python", "--", "-D", "warnings")
    cargo(session, "test", "--locked")


@nox.session
def python(session: nox.Session) -> None:
    """Build, stub, types, style, tests of the boundary, golden results, doc tests."""
    committed = STUB.read_text("utf-8")
    develop(session, "test", "lint")
    if STUB.read_text("utf-8") != committed:
        session.error("python/pinfilm/_core.pyi was out of date; it is written anew: look at it and commit it")
    session.run("ruff", "check", ".")
    session.run("ruff", "format", "--check", ".")
    session.run("mypy", "--strict", "python")
    session.run("python", "-m", "mypy.stubtest", "pinfilm", "--mypy-config-file", "pyproject.toml")
    session.run("python", "-m", "pytest", *session.posargs)
    session.run("python", "-m", "pytest", "--doctest-modules", "python/pinfilm")


@nox.session
def notebooks(session: nox.Session) -> None:
    """Run the demo, the README's examples and every notebook, from clean outputs."""
    develop(session, "notebooks")
    session.run("python", "-m", "pinfilm", "demo")
    blocks = re.findall(r"^```python\n(.*?)^```", (ROOT / "README.md").read_text("utf-8"), re.DOTALL | re.MULTILINE)
    if not blocks:
        session.error("the README has no Python example")
    for block in blocks:
        session.run("python", "-c", block)
    for notebook in sorted((ROOT / "notebooks").glob("*.ipynb")):
        session.run("python", "-c", EXECUTE, str(notebook))


@nox.session
def docs(session: nox.Session) -> None:
    """Build the pages; a warning is an error."""
    develop(session, "docs")
    session.run("sphinx-build", "-W", "--keep-going", "-q", "-b", "html", "docs", "docs/_build/html")


@nox.session
def wheel(session: nox.Session) -> None:
    """Source archive, the wheel built from it, audit of the stable ABI, the demo in an environment with nothing else.

    `nox -s wheel -- --release` builds as it is shipped; without, dependencies that were compiled before serve here too.
    """
    out = pathlib.Path(session.create_tmp()) / "wheels"
    shutil.rmtree(out, ignore_errors=True)
    session.install(*MATURIN, "abi3audit>=0.0.20")
    session.run("maturin", "sdist", "--out", str(out))
    (source,) = out.glob("*.tar.gz")
    profile = "release" if "--release" in session.posargs else "dev"
    # pip unpacks the archive and builds in there, as it does for people who install it
    session.run(
        "python", "-m", "pip", "wheel", "--no-deps", "--wheel-dir", str(out), str(source),
        env={
            "RUSTFLAGS": None,
            "CARGO_TARGET_DIR": str(ROOT / "target"),
            "MATURIN_PEP517_ARGS": f"--profile {profile} --strip true",
        },
    )  # fmt: skip
    (built,) = out.glob("*.whl")
    session.run("abi3audit", "--strict", "--report", str(built))
    tracked = session.run("git", "ls-files", "python/pinfilm", external=True, silent=True).split()
    held = zipfile.ZipFile(built).namelist()
    missing = [path for path in tracked if path.removeprefix("python/") not in held]
    if missing:
        session.error(f"not in the wheel: {', '.join(missing)}")
    clean = out / "clean"
    session.run("python", "-m", "venv", str(clean))
    alone = str(clean / ("Scripts" if sys.platform == "win32" else "bin") / "python")
    session.run(alone, "-m", "pip", "install", "-q", str(built), external=True)
    session.run(alone, "-I", "-m", "pinfilm", "demo", external=True)
    session.run(alone, "-I", "-m", "pinfilm", "survey", silent=True, external=True)


@nox.session(venv_backend="none")
def tables(session: nox.Session) -> None:
    """Write the pages under docs that tests make from the library anew; look at the difference and commit it."""
    tests = ["--test", "published", "--test", "honesty"]
    session.run("cargo", "test", "--locked", *tests, external=True, env={"RUSTFLAGS": None, "PINFILM_TABLES": "write"})


@nox.session
def slow(session: nox.Session) -> None:
    """Recovery of known parameters by walkers, of known savings from invented logs; minutes, not part of the checks."""
    cargo(session, "test", "--release", "--locked", "--test", "cases", "--", "--ignored", "--nocapture")
    develop(session, "test")
    session.run("python", "-m", "pytest", "-s", "tests/slow")


@nox.session
def hostile(session: nox.Session) -> None:
    """A million hostile rows, and many more examples of hypothesis; minutes, not part of the checks."""
    develop(session, "test")
    session.run("python", "-m", "pytest", "tests/python/tables/test_hostile_tables.py", env={"PINFILM_TESTS": "slow"})


@nox.session
def bench(session: nox.Session) -> None:
    """Time the core and the boundary; not part of the checks."""
    cargo(session, "bench", "--locked")
    session.install(*MATURIN, *PROJECT["project"]["dependencies"])
    session.run("maturin", "develop", "--release", "--locked", env={"RUSTFLAGS": None})
    session.run("python", "benches/boundary.py")
    session.install("ruptures", "pandas", "pyarrow", "scipy", "SALib>=1.5")
    session.run("python", "benches/change_points.py")
    session.run("python", "benches/table.py")
    session.run("python", "benches/sensitivity.py")
    session.run("python", "benches/study.py")
    session.run("python", "benches/recommend.py")
    session.run("python", "benches/reference.py")
