"""How the docs are built: `nox -s docs`. What the register knows is written from it, into `_generated`."""

from __future__ import annotations

import sys
from pathlib import Path

import pinfilm

sys.path.insert(0, str(Path(__file__).parent))
import generate

project = "pinfilm"
author = "the pinfilm developers"
copyright = "the pinfilm developers"
version = release = pinfilm.__version__

extensions = ["myst_parser", "sphinx.ext.autodoc", "sphinx.ext.napoleon", "sphinx.ext.mathjax"]
myst_enable_extensions = ["colon_fence", "deflist", "dollarmath"]
myst_heading_anchors = 3
exclude_patterns = ["_build", "_generated"]

html_theme = "furo"
html_title = f"pinfilm {release}"
html_static_path = []
# The pages must read without a network: formulas fall back to their source.
autodoc_member_order = "bysource"
autodoc_typehints = "none"
autodoc_default_options = {"members": True}
napoleon_google_docstring = False
napoleon_use_rtype = False
napoleon_use_ivar = True


def setup(app: object) -> None:
    """Write what the register knows before anything is read."""
    generate.everything(Path(__file__).parent)
