"""What `import pinfilm` brings in: the budget is counted in modules, which no load of the machine changes."""

from __future__ import annotations

import subprocess
import sys

CODE = """
import sys
before = set(sys.modules)
import pinfilm
pinfilm.kinematics.speed_ripple(9)
print(*sorted(set(sys.modules) - before))
"""


def test_import_brings_in_the_standard_library_and_ourselves_only() -> None:
    run = subprocess.run([sys.executable, "-c", CODE], capture_output=True, check=True, text=True)
    brought = run.stdout.split()
    ours = [name for name in brought if name.partition(".")[0] == "pinfilm"]
    others = [name for name in brought if name.partition(".")[0] not in {"pinfilm", *sys.stdlib_module_names}]
    assert others == []  # NumPy, pint, matplotlib and jinja2 come with what needs them
    assert len(ours) <= 24, ours
    assert len(brought) <= 100, brought
    assert not {"pinfilm._invented", "pinfilm._invented_lines", "pinfilm.plot", "pinfilm.reporting.page"} & set(brought)
