"""Every check of the project. `nox` runs the sessions that must pass; `nox -l` lists them all."""

from __future__ import annotations

import pathlib
import re
import subprocess

import nox

nox.options.sessions = ["rust", "python", "notebooks"]
nox.options.default_venv_backend = "venv"
nox.options.reuse_existing_virtualenvs = True

ROOT = pathlib.Path(__file__).parent
MATURIN = "maturin>=1.14,<2"


@nox.session(venv_backend="none")
def rust(session: nox.Session) -> None:
    """Format, lints, purity of the core, unit and property tests, published values, independent cases, doc tests."""
    session.run("cargo", "fmt", "--check", external=True)
    named = subprocess.run(
        ["git", "grep", "-lE", r"\b(pyo3|numpy)\b", "--", "src/*.rs", "src/**/*.rs", ":!src/py"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    ).stdout.split()
    if named:
        session.error(f"only src/py may name pyo3 or numpy: {', '.join(named)}")
    session.run("cargo", "clippy", "--locked", "--all-targets", "--", "-D", "warnings", external=True)
    session.run("cargo", "clippy", "--locked", "--features", "python", "--", "-D", "warnings", external=True)
    session.run("cargo", "test", "--locked", external=True)


@nox.session
def python(session: nox.Session) -> None:
    """Build, stub, types, style, tests of the boundary, doc tests."""
    session.install(MATURIN, *nox.project.dependency_groups(nox.project.load_toml("pyproject.toml"), "test", "lint"))
    session.install("numpy>=1.26", "pandas>=2")
    session.run("maturin", "develop", "--locked", "-F", "stubs", "--generate-stubs")
    session.run("git", "diff", "--exit-code", "--", "python/pinfilm/_core.pyi", external=True)
    session.run("ruff", "check", ".")
    session.run("ruff", "format", "--check", ".")
    session.run("mypy", "--strict", "python")
    session.run("python", "-m", "mypy.stubtest", "pinfilm", "--ignore-missing-stub")
    session.run("python", "-m", "pytest", "tests/python", "tests/golden", "-q")
    session.run("python", "-m", "pytest", "--doctest-modules", "python/pinfilm", "-q")


@nox.session
def notebooks(session: nox.Session) -> None:
    """Run the README's example and every notebook from clean outputs."""
    session.install(MATURIN, *nox.project.dependency_groups(nox.project.load_toml("pyproject.toml"), "notebooks"))
    session.install("numpy>=1.26")
    session.run("maturin", "develop", "--locked")
    session.run("python", "-m", "pinfilm", "demo")
    blocks = re.findall(r"```python\n(.*?)```", (ROOT / "README.md").read_text(encoding="utf-8"), flags=re.DOTALL)
    for block in blocks:
        session.run("python", "-W", "ignore", "-c", block)
    for notebook in sorted((ROOT / "notebooks").glob("*.ipynb")):
        session.run(
            "python",
            "-c",
            "import sys, nbformat, nbclient\n"
            "book = nbformat.read(sys.argv[1], as_version=4)\n"
            "dirty = [c for c in book.cells if c.cell_type == 'code' and c.outputs]\n"
            "assert not dirty, 'clear the outputs before you commit'\n"
            "nbclient.NotebookClient(book, timeout=120).execute()\n"
            "print('1 passed, 0 failed')",
            str(notebook),
        )


@nox.session
def wheel(session: nox.Session) -> None:
    """Build the release wheel, install it in a clean environment, run the demo."""
    session.install(MATURIN)
    out = pathlib.Path(session.create_tmp()) / "wheels"
    session.run("maturin", "build", "--release", "--locked", "--out", str(out))
    for built in out.glob("*.whl"):
        session.install("--force-reinstall", str(built))
    session.run("python", "-m", "pinfilm", "demo")


@nox.session
def bench(session: nox.Session) -> None:
    """Time the core and the boundary; not part of the checks."""
    session.run("cargo", "bench", "--locked", external=True)
    session.install(MATURIN, "numpy>=1.26")
    session.run("maturin", "develop", "--release", "--locked")
    session.run("python", "benches/boundary.py")
