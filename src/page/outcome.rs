//! The answer: sentences first, then the night ribbon, then the working.

use super::{
    below::{Below, Place},
    kit::{Fold, Sentences, anew},
    ribbon::NightRibbon,
    state::State,
};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::RunAnswer,
    plan::Plan,
    plan::finding::{Finding, Severity},
    text::{self},
};
use leptos::prelude::*;

/// The answer to "How long will it run?".
#[component]
pub fn Outcome() -> impl IntoView {
    let state = State::here();
    let sentence = move || {
        lead(state, |plan, run| {
            let asks = text::first::asks(formatter(), plan, run);
            asks.unwrap_or_else(|| text::run_sentence(formatter(), plan, run))
        })
        .unwrap_or_else(|| say(m::NoAnswer).into())
    };
    let rests_on = move || state.with_plan(|plan| text::first::rests_on(formatter(), plan));
    let detail =
        move || lead(state, |_, run| text::run_detail(formatter(), run)).unwrap_or_default();
    view! {
        <Said
            id="answer"
            sentence=sentence
            details=move || {
                view! {
                    <p class="detail">{detail}</p>
                    <p class="rests-on">{rests_on}</p>
                }
            }
        />
    }
}

/// What stands behind the answer: the ribbon, what is to be said of the numbers, and the
/// working.
#[component]
pub fn OutcomeRest() -> impl IntoView {
    view! {
        <div class="outcome-rest">
            <NightRibbon />
            <Findings notes=false />
            <Readings />
            <Fold title=|| say(m::ShowWorking)>
                <Place of=Below::Working />
            </Fold>
        </div>
    }
}

/// An answer, read out when it changes: its sentence, lines under it, and whether it
/// is of the last good numbers. What hangs on it may be put in as well.
#[component]
pub fn Said(
    id: &'static str,
    sentence: impl Fn() -> String + Send + Sync + 'static,
    #[prop(into, optional)] details: ViewFn,
    #[prop(optional)] children: Option<Children>,
) -> impl IntoView {
    let state = State::here();
    view! {
        <div class="outcome" class:stale=move || state.is_stale()>
            <div role="status" aria-live="polite">
                <p class="answer" id=id>
                    {sentence}
                </p>
                {details.run()}
                <StaleMark />
            </div>
            {children.map(|children| children())}
        </div>
    }
}

/// Says that the answer is of the last good numbers.
#[component]
pub fn StaleMark() -> impl IntoView {
    let state = State::here();
    let words = move || if state.is_stale() { say(m::Stale) } else { "" };
    view! { <p class="stale-mark">{words}</p> }
}

/// Something of the run that leads: the mode that the night asks for.
fn lead(state: State, of: impl Fn(&Plan, &RunAnswer) -> String) -> Option<String> {
    state.with_plan(|plan| {
        state.with_answer(|answer| {
            let asked = (plan.night.asked_unit, plan.night.asked_mode);
            let run = answer.runs.iter().find(|run| (run.unit, run.mode) == asked);
            run.or(answer.runs.first()).map(|run| of(plan, run))
        })
    })
}

/// What the engine has to say beside the numbers.
#[component]
fn Findings(notes: bool) -> impl IntoView {
    let state = State::here();
    let said = move || {
        state.with_answer(|answer| {
            let wanted = answer.findings.iter().filter(|one| is_note(one) == notes);
            let _units = state.with_plan(|plan| plan.show);
            wanted
                .map(|one| text::finding_sentence(formatter(), one))
                .collect()
        })
    };
    let class = if notes {
        "findings"
    } else {
        "findings cautions-now"
    };
    view! { <Sentences class=class all=said /> }
}

fn is_note(finding: &Finding) -> bool {
    finding.severity == Severity::Note
}

/// Notes fold away: nothing in them is wrong.
#[component]
fn Readings() -> impl IntoView {
    let state = State::here();
    let none =
        Signal::derive(move || !state.with_answer(|answer| answer.findings.iter().any(is_note)));
    view! {
        <Fold class="fold small" title=|| say(m::Readings) hidden=none>
            <Findings notes=true />
        </Fold>
    }
}

/// The formula with this plan's numbers in it, for each run.
#[component]
pub fn Working() -> impl IntoView {
    let state = State::here();
    let runs = move |_| {
        state.with_plan(|plan| {
            state.with_answer(|answer| {
                let runs = answer.runs.iter();
                let one = |run| run_working(text::run_title(formatter(), plan, answer, run), run);
                runs.map(one).collect_view().into_any()
            })
        })
    };
    // Anything in the plan may change the working.
    view! { <div class="working">{anew(move || state.turn(), runs)}</div> }
}

fn run_working(title: String, run: &RunAnswer) -> impl IntoView + use<> {
    let formula = run.working.formula;
    let rows = run.working.terms.iter().map(|term| {
        view! {
            <tr>
                <th scope="row">{text::term_label(formatter(), term.name)}</th>
                <td>{text::working_value(formatter(), term)}</td>
            </tr>
        }
    });
    let shares = run.spread_from.iter().take(4);
    let shares = shares.map(|share| view! { <li>{text::share_sentence(formatter(), share)}</li> });
    view! {
        <h3>{title}</h3>
        <p class="formula">{text::formula_text(formatter(), formula)}</p>
        <table class="terms">
            <tbody>{rows.collect_view()}</tbody>
        </table>
        <p class="source">{text::source_text(formatter(), formula)}</p>
        <p>{say(m::SpreadFrom)}</p>
        <ul>{shares.collect_view()}</ul>
    }
}
