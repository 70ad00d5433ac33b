"""Puts the support of these tests where they find it."""

import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
