"""The questions before a run: their order, what each answer leads to, and what is never passed by."""

from dataclasses import replace
from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from app.domain.plan import Side
from app.domain.readiness import ITEMS, PAIN_LIMIT, Decision
from app.run.readiness_form import ITEM_STEPS, ReadinessForm, Spot, Step

AT = datetime(2026, 11, 25, 17, 30, tzinfo=UTC)
SHOULDER = Spot("front of the shoulder", Side.LEFT)
QUIET = (Step.SLEEP, Step.FATIGUE, Step.STRESS, Step.SORENESS, Step.PAIN, Step.CHANGED, Step.RED_FLAG)


def answered(*numbers: int) -> ReadinessForm:
    form = ReadinessForm()
    for number in numbers:
        form = form.number(number)
    return form


def held(**more: object) -> ReadinessForm:
    """At the note, with pain above the limit."""
    return replace(ReadinessForm(step=Step.CARE, pain=PAIN_LIMIT + 1), **more)  # type: ignore[arg-type]


def test_seven_keys_answer_everything_where_nothing_hurts() -> None:
    form = answered(2, 3, 4, 1, 0, 2, 2)
    assert form == ReadinessForm(Step.DONE, 2, 3, 4, 1, 0, None, changed=False, red_flag=False)
    assert form.may_begin
    assert form.total == 2 + 3 + 4 + 1


def test_passing_over_leads_through_the_same_questions_and_answers_nothing() -> None:
    form, seen = ReadinessForm(), []
    while form.step is not Step.DONE:
        seen.append(form.step)
        form = form.pass_over()
    assert tuple(seen) == QUIET
    assert form == ReadinessForm(step=Step.DONE)
    assert form.may_begin
    assert form.touched


def test_a_place_is_asked_for_where_there_is_pain_only() -> None:
    assert answered(1, 1, 1, 1, 3).step is Step.PLACE
    assert answered(1, 1, 1, 1, 0).step is Step.CHANGED


def test_pain_that_is_taken_back_has_no_place() -> None:
    form = answered(1, 1, 1, 1, 3).point(SHOULDER)
    assert form.spot == SHOULDER
    assert form.go_to(Step.PAIN).number(0).spot is None


@pytest.mark.parametrize("step", ITEM_STEPS)
@pytest.mark.parametrize("number", [-1, 0, 8, 9, 10])
def test_an_item_takes_one_to_seven_only(step: Step, number: int) -> None:
    form = ReadinessForm(step=step)
    assert form.number(number) == form


def test_the_sum_is_unknown_while_one_item_is() -> None:
    assert answered(7, 7, 7).total is None
    assert answered(7, 7, 7).pass_over().total is None
    assert answered(7, 7, 7, 7).total == 28
    assert answered(1, 1, 1, 1).total == 4


def test_one_and_zero_make_ten_before_the_place_is_pointed_out_and_not_after() -> None:
    one = answered(1, 1, 1, 1, 1)
    assert one.make_ten().pain == 10
    assert one.point(SHOULDER).make_ten().pain == 1
    assert answered(1, 1, 1, 1, 2).make_ten().pain == 2


@pytest.mark.parametrize(("pain", "waits"), [(None, False), (0, False), (5, False), (6, True), (10, True)])
def test_pain_above_five_keeps_the_session_from_being_started(pain: int | None, waits: bool) -> None:
    form = ReadinessForm(pain=pain).skip_all()
    assert form.held is waits
    assert form.step is (Step.CARE if waits else Step.DONE)
    assert form.may_begin is not waits


def test_a_red_flag_keeps_the_session_from_being_started() -> None:
    form = ReadinessForm(step=Step.RED_FLAG).say(yes=True)
    assert form.step is Step.CARE
    assert form.pass_over() == form
    assert form.skip_all() == form
    assert not form.may_begin


@pytest.mark.parametrize("decision", list(Decision))
def test_nothing_is_decided_before_there_is_a_note(decision: Decision) -> None:
    assert held().decide(decision) == held()
    assert held(note="  \t").decide(decision).step is Step.CARE
    decided = held(note="since Monday").decide(decision)
    assert (decided.step, decided.decision) == (Step.DONE, decision)
    assert decided.may_begin is (decision is Decision.SPOKEN)


def test_a_change_in_health_asks_for_a_note_that_may_stay_empty() -> None:
    form = ReadinessForm(changed=True, step=Step.RED_FLAG).say(yes=False)
    assert form.step is Step.CARE
    assert not form.may_decide
    assert form.pass_over().may_begin


def test_no_decision_outlives_the_answer_it_was_taken_on() -> None:
    decided = held(note="since Monday").decide(Decision.SPOKEN)
    assert decided.back().decision is None
    assert decided.go_to(Step.PAIN).number(9).decision is None


def test_back_goes_the_same_way_and_keeps_the_answers() -> None:
    form = answered(2, 3, 4, 1, 6).point(SHOULDER).say(yes=False).say(yes=False)
    seen = [form.step]
    while form.back() != form:
        form = form.back()
        seen.append(form.step)
    assert seen == [Step.CARE, Step.RED_FLAG, Step.CHANGED, Step.PLACE, *reversed(QUIET[:5])]
    assert (form.sleep, form.pain, form.spot) == (2, 6, SHOULDER)


def test_a_question_these_answers_do_not_lead_to_cannot_be_gone_to() -> None:
    form = answered(1, 1, 1, 1, 0)
    for step in (Step.PLACE, Step.CARE, Step.DONE):
        assert form.go_to(step) == form
    assert form.go_to(Step.SLEEP).step is Step.SLEEP


def test_what_is_written_down_is_what_was_said() -> None:
    form = answered(2, 3, 4).pass_over().number(7).point(SHOULDER).say(yes=True).say(yes=False)
    kept = form.write(" a fall ").decide(Decision.SKIPPED).readiness("id", "Ines", AT, "UTC", None)
    assert [getattr(kept, name) for name in ITEMS] == [2, 3, 4, None]
    assert (kept.pain, kept.pain_place, kept.pain_side) == (7, "front of the shoulder", Side.LEFT)
    assert (kept.changed, kept.red_flag, kept.note) == (True, False, "a fall")
    assert (kept.decision, kept.run_id, kept.total) == (Decision.SKIPPED, None, None)


def test_what_was_left_open_is_written_down_as_unknown() -> None:
    kept = ReadinessForm().skip_all().readiness("id", "Ines", AT, "UTC", "run")
    unknown = (*ITEMS, "pain", "pain_place", "pain_side", "changed", "red_flag", "note", "decision")
    assert [getattr(kept, name) for name in unknown] == [None] * len(unknown)
    assert kept.run_id == "run"


ACTS = st.one_of(
    st.integers(0, 10).map(lambda number: lambda form: form.number(number)),
    st.sampled_from(list(Step)).map(lambda step: lambda form: form.go_to(step)),
    st.sampled_from(list(Decision)).map(lambda decision: lambda form: form.decide(decision)),
    st.sampled_from(["", " ", "a fall"]).map(lambda note: lambda form: form.write(note)),
    st.booleans().map(lambda yes: lambda form: form.say(yes=yes)),
    st.sampled_from(
        [
            ReadinessForm.pass_over,
            ReadinessForm.back,
            ReadinessForm.skip_all,
            ReadinessForm.make_ten,
            lambda form: form.point(SHOULDER),
        ]
    ),
)


@given(st.lists(ACTS, max_size=40))
def test_no_way_leads_past_a_note_that_is_due(acts: list[object]) -> None:
    form = ReadinessForm()
    for act in acts:
        assert callable(act)
        form = act(form)
        assert form.step in (*form.steps, Step.DONE)
        assert form.pain or form.spot is None
        if form.may_begin and ((form.pain or 0) > PAIN_LIMIT or form.red_flag):
            assert form.decision is Decision.SPOKEN
            assert form.note.strip()
        if form.step is Step.DONE and form.held:
            assert form.decision is not None
        form.readiness("id", "Ines", AT, "UTC")
