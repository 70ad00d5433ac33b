"""How the docs are built: `nox -s docs`. What the register knows is written from it, into `_generated`."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Any

from docutils.nodes import SkipNode
from latex2mathml.converter import convert
from sphinx.application import Sphinx

import pinfilm

sys.path.insert(0, str(Path(__file__).parent))
import generate

project = "pinfilm"
author = "the pinfilm developers"
copyright = "the pinfilm developers"
version = release = pinfilm.__version__

extensions = ["myst_parser", "sphinx.ext.autodoc", "sphinx.ext.napoleon"]
myst_enable_extensions = ["colon_fence", "deflist", "dollarmath"]
myst_heading_anchors = 3
exclude_patterns = ["_build", "_generated"]

html_theme = "furo"
html_title = f"pinfilm {release}"
html_static_path = ["_static"]
html_css_files = ["tables.css"]
html_math_renderer = "mathml"
autodoc_member_order = "bysource"
autodoc_typehints = "none"
autodoc_default_options = {"members": True}
napoleon_google_docstring = False
napoleon_use_rtype = False
napoleon_use_ivar = True


def inline(writer: Any, node: Any) -> None:
    """Write a formula in a line as MathML, which browsers show without a script or a network."""
    writer.body.append(convert(node.astext()))
    raise SkipNode


def block(writer: Any, node: Any) -> None:
    """Write a formula on a line of its own."""
    writer.body.append(convert(node.astext(), display="block"))
    raise SkipNode


def setup(app: Sphinx) -> None:
    """Write what the register knows before anything is read."""
    app.add_html_math_renderer("mathml", (inline, None), (block, None))
    generate.everything(Path(__file__).parent)
