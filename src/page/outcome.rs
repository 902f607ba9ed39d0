//! The answer: sentences first, then the night ribbon, then the working.

use super::{ribbon::NightRibbon, state::State};
use crate::{
    finding::Severity,
    wording::{self, words},
};
use leptos::prelude::*;

/// The answer to "How long will it run?".
#[component]
pub fn Outcome() -> impl IntoView {
    let state = State::get();
    // The mode that the night asks for leads; the ribbon shows all.
    let lead = Memo::new(move |_| {
        state.plan.with(|plan| {
            state.answer.with(|answer| {
                let asked = (plan.night.asked_unit, plan.night.asked_mode);
                let run = answer.runs.iter().find(|run| (run.unit, run.mode) == asked);
                run.or(answer.runs.first())
                    .map(|run| wording::run_sentence(plan, run))
            })
        })
    });
    view! {
        <div class="outcome" class:stale=move || state.stale.get()>
            <div role="status" aria-live="polite" aria-atomic="true">
                <p class="answer" id="answer">
                    {move || lead.get().map_or_else(|| words::NO_ANSWER.into(), |(answer, _)| answer)}
                </p>
                <p class="detail">{move || lead.get().map(|(_, detail)| detail)}</p>
                <p class="stale-mark" id="stale">
                    {move || state.stale.get().then_some(words::STALE)}
                </p>
            </div>
            <NightRibbon/>
            <Findings/>
            <Working/>
        </div>
    }
}

/// What the engine has to say beside the numbers; notes fold away.
#[component]
fn Findings() -> impl IntoView {
    let state = State::get();
    let sentences = move |notes: bool| {
        state.answer.with(|answer| {
            answer
                .findings
                .iter()
                .filter(|finding| (finding.severity == Severity::Note) == notes)
                .map(|finding| {
                    let class = if notes { "note" } else { "caution" };
                    view! { <li class=class>{wording::finding_sentence(finding)}</li> }
                })
                .collect_view()
        })
    };
    let has = move |notes: bool| {
        state.answer.with(|answer| {
            answer
                .findings
                .iter()
                .any(|f| (f.severity == Severity::Note) == notes)
        })
    };
    view! {
        {move || has(false).then(|| view! { <ul class="findings">{sentences(false)}</ul> })}
        {move || has(true).then(|| view! {
            <details class="fold small">
                <summary>{words::READINGS}</summary>
                <ul class="findings">{sentences(true)}</ul>
            </details>
        })}
    }
}

/// The formula with this plan's numbers in it, for each run.
#[component]
fn Working() -> impl IntoView {
    let state = State::get();
    let open = RwSignal::new(false);
    let runs = move || {
        state.plan.with(|plan| {
            state.answer.with(|answer| {
                answer
                    .runs
                    .iter()
                    .map(|run| {
                        let rows = run
                            .working
                            .terms
                            .iter()
                            .map(|term| {
                                view! {
                                    <tr>
                                        <th scope="row">{wording::term_label(term.name)}</th>
                                        <td>{wording::working_value(term)}</td>
                                    </tr>
                                }
                            })
                            .collect_view();
                        let shares = run
                            .spread_from
                            .iter()
                            .take(4)
                            .map(|share| {
                                view! {
                                    <li>{wording::share_sentence(share)}</li>
                                }
                            })
                            .collect_view();
                        view! {
                            <h4>{wording::run_title(plan, answer, run)}</h4>
                            <p class="formula">{wording::formula_text(run.working.formula)}</p>
                            <table class="terms"><tbody>{rows}</tbody></table>
                            <p class="source">{wording::source_text(run.working.formula)}</p>
                            <p>{words::SPREAD_FROM}</p>
                            <ul>{shares}</ul>
                        }
                    })
                    .collect_view()
            })
        })
    };
    view! {
        <details class="fold" on:toggle=move |event| open.set(is_open(&event))>
            <summary>{words::SHOW_WORKING}</summary>
            // Built only when asked for: it is long, and read once.
            {move || open.get().then(|| view! { <div class="working">{runs()}</div> })}
        </details>
    }
}

/// Whether the fold that tells of its toggle is open now.
pub fn is_open(event: &web_sys::Event) -> bool {
    use wasm_bindgen::JsCast;
    event
        .target()
        .and_then(|target| target.dyn_into::<web_sys::Element>().ok())
        .is_some_and(|fold| fold.has_attribute("open"))
}
