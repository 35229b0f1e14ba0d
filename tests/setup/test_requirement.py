"""Requirement lines are read from pyproject.toml and compared with what is installed."""

from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st
from packaging.specifiers import SpecifierSet

from idkey.bootstrap import requirement

PROJECT = """
[project]
dependencies = ["numpy>=1.26", "nothing-of-this-name>=2"]
[project.optional-dependencies]
tests = ["pytest>=8"]
"""

releases = st.lists(st.integers(0, 12), min_size=1, max_size=4).map(lambda n: ".".join(map(str, n)))
limits = st.lists(
    st.tuples(st.sampled_from([">=", "<=", "!=", "==", "<", ">"]), releases), max_size=3
).map(lambda pairs: ",".join(sign + number for sign, number in pairs))


@given(version=releases, limit=limits)
def test_limits_mean_what_the_packaging_library_says(version: str, limit: str):
    assert requirement.meets(version, limit) == SpecifierSet(limit).contains(version)


def test_an_extra_adds_its_lines_after_the_programs_own(tmp_path: Path):
    (tmp_path / "pyproject.toml").write_text(PROJECT, "utf-8")

    assert requirement.from_checkout("tests", tmp_path)[-1] == "pytest>=8"
    assert len(requirement.from_checkout("", tmp_path)) == 2


def test_an_installed_package_asks_for_nothing(tmp_path: Path):
    assert requirement.from_checkout("tests", tmp_path) == ()


def test_only_what_is_not_there_is_missing(tmp_path: Path):
    (tmp_path / "pyproject.toml").write_text(PROJECT, "utf-8")

    lines = requirement.from_checkout("tests", tmp_path)

    assert requirement.missing(lines) == ("nothing-of-this-name>=2",)


@pytest.mark.parametrize(
    ("line", "missing"),
    [
        pytest.param(
            "PySide6_Essentials>=6.8,!=6.11.0", False, id="names are compared as pip does"
        ),
        pytest.param("pytest>=999", True, id="a version that is too old counts as missing"),
        pytest.param("sqlalchemy[asyncio]>=2", False, id="extras of others are left to pip"),
        pytest.param(
            'nothing-at-all; sys_platform == "win32"', False, id="markers are left to pip"
        ),
        pytest.param("types-PyYAML", False, id="no limit"),
    ],
)
def test_a_line(line: str, missing: bool):
    assert bool(requirement.missing((line,))) is missing


def test_this_environment_meets_the_program_and_lacks_no_file():
    assert requirement.missing(requirement.from_checkout("tests")) == ()
    assert requirement.damaged() == ()
