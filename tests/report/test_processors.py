"""What one processor makes of a key and a case, another makes as well.

A rationale is verified by making it again from the record, maybe on another machine. Processors
differ in the last digits of sums and logarithms: OpenBLAS and numpy choose other code for each.
"""

import os
import subprocess
import sys
from dataclasses import replace
from pathlib import Path

import pytest

from idkey import places
from idkey.engine.assess import assess
from idkey.engine.build import build
from idkey.engine.compile import compiled
from idkey.engine.questions import questions
from idkey.engine.sample import SAMPLE_KEY, sample_case
from idkey.formats.folder import read_key
from idkey.model.case import Care, Case, Specimen
from idkey.report.rationale import rationale, rationale_json

OLD = {
    "OPENBLAS_CORETYPE": "Prescott",
    "NPY_DISABLE_CPU_FEATURES": "X86_V4 X86_V3 AVX512_SKX AVX512_ICL AVX512_SPR AVX2 FMA3",
    "PYTHONWARNINGS": "ignore",  # numpy warns of a feature this machine lacks anyway
}
"""Has a processor of 2010 played, where it is one of that family; elsewhere nothing changes."""


def told() -> str:
    """Built couplets, orders of questions, and rationales, as text."""
    lines = []
    for folder in sorted(places.keys_folder().iterdir()):
        if not (folder / "key.yaml").is_file():
            continue
        key = read_key(folder)
        matrix = compiled(key, Specimen(), Care.ORDINARY)
        for many in (True, False):
            lines += [f"{key.id} {many} {c}" for c in build(matrix, many_leads=many).couplets]
        case = Case(id="a-case", key=key.id)
        steps = [case]
        if key.id == SAMPLE_KEY:
            case = replace(sample_case(key), id="a-case")
            steps = [replace(case, findings=case.findings[:n]) for n in range(12)]
        for step in steps:
            matrix = compiled(key, step.specimen, step.care)
            found = assess(matrix, step)
            asked = " ".join(q.character for q in questions(matrix, found))
            lines += [asked, rationale_json(rationale(key, found))]
    return "\n".join(lines)


@pytest.mark.slow
def test_another_processor_comes_to_the_same_couplets_questions_and_rationales():
    ended = subprocess.run(
        [sys.executable, __file__],
        env={**os.environ, **OLD, "PYTHONPATH": str(Path(__file__).parents[2])},
        check=True,
        capture_output=True,
        text=True,
        encoding="utf-8",
    )

    assert ended.stdout == told()


if __name__ == "__main__":
    sys.stdout.reconfigure(encoding="utf-8")
    sys.stdout.write(told())
