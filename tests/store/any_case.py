"""Any case that can be: strategies for hypothesis."""

from hypothesis import strategies as st

from idkey.model.case import Aim, Care, Case, Certainty, Claim, Finding, Specimen, Step
from idkey.model.character import Look, Sex, Stage

_texts = st.text(max_size=12)
_names = st.text("abc_äß漢", min_size=1, max_size=6)
_numbers = st.floats(allow_nan=False, allow_infinity=False)
_shared = {
    "certainty": st.sampled_from(Certainty),
    "look": st.none() | st.sampled_from(Look),
    "note": _texts,
    "pictures": st.lists(_texts, max_size=2).map(tuple),
    "lead": _texts,
    "at": _texts,
    "by": _texts,
}
findings = st.one_of(
    st.builds(
        Finding,
        character=_names,
        states=st.lists(_names, min_size=1, max_size=3).map(tuple),
        negated=st.booleans(),
        **_shared,
    ),
    st.builds(
        Finding,
        character=_names,
        value=_numbers,
        uncertainty=st.none() | st.floats(0, 1e6),
        **_shared,
    ),
    st.builds(Finding, character=_names, unseen=st.just(True), **_shared),
)
claims = st.builds(
    Claim, **dict.fromkeys(("text", "label", "supplier", "date", "sex", "size", "origin"), _texts)
)
cases = st.builds(
    Case,
    id=_names,
    key=_names,
    key_version=_texts,
    claim=claims,
    specimen=st.builds(
        Specimen,
        sex=st.none() | st.sampled_from(Sex),
        stage=st.none() | st.sampled_from(Stage),
    ),
    findings=st.lists(findings, max_size=3).map(tuple),
    aim=st.sampled_from(Aim),
    tolerance=st.integers(0, 3),
    care=st.sampled_from(Care),
    use_prior=st.booleans(),
    walk=st.lists(
        st.builds(Step, couplet=_names, leads=st.lists(st.integers(1, 4)).map(tuple)), max_size=3
    ).map(tuple),
    note=_texts,
    by=_texts,
    created=_texts,
)
