"""Steps from a case to the next one that touch its findings."""

from dataclasses import replace

from idkey.model.case import Case, Finding


def observed(case: Case, finding: Finding) -> Case:
    """The case with a finding; the pictures of the one it corrects stay.

    What was drawn on them stays only while it says the same.
    """
    known = case.finding(finding.character)
    if known is not None and known.pictures and not finding.pictures:
        marks = known.marks if known.same_as == finding.same_as else ""
        finding = replace(finding, pictures=known.pictures, marks=marks)
    return case.observe(finding)


def illustrated(case: Case, character: str, pictures: tuple[str, ...]) -> Case:
    """The case with further pictures, by id, of a finding; the same one without that finding."""
    finding = case.finding(character)
    if finding is None:
        return case
    return case.observe(
        replace(finding, pictures=tuple(dict.fromkeys(finding.pictures + pictures)))
    )


def bared(case: Case, character: str, picture: str) -> Case:
    """The case without one picture of a finding, and without what was drawn on it."""
    finding = case.finding(character)
    if finding is None:
        return case
    kept = tuple(one for one in finding.pictures if one != picture)
    marks = "" if picture in finding.marks else finding.marks
    return case.observe(replace(finding, pictures=kept, marks=marks))
