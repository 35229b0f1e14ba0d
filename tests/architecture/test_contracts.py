"""The contracts of import-linter hold; they see what the other two checks cannot."""

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]


def test_import_linter_keeps_every_contract():
    ended = subprocess.run(
        [sys.executable, "-c", "from importlinter.cli import lint_imports_command as c; c()"],
        cwd=ROOT,
        capture_output=True,
        text=True,
        check=False,
    )

    assert ended.returncode == 0, ended.stdout
    assert " 0 broken" in ended.stdout
