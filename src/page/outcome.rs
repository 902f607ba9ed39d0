//! The answer: sentences first, then the night ribbon, then the working.

use super::{
    dom::{El, h, named_fold},
    ribbon::night_ribbon,
    state::State,
};
use crate::{
    answer::RunAnswer,
    finding::Severity,
    wording::{self, words},
};

/// The answer to "How long will it run?".
pub fn outcome(state: State) -> El {
    let sentence =
        move || lead(state, wording::run_sentence).unwrap_or_else(|| words::NO_ANSWER.into());
    let detail = h("p", "detail")
        .live_text(move || lead(state, |_, run| wording::run_detail(run)).unwrap_or_default());
    said(state, "answer", sentence, [detail])
        .child(night_ribbon(state))
        .child(findings(state, false))
        .child(readings(state))
        .child(named_fold("fold", words::SHOW_WORKING, move || {
            vec![working(state)]
        }))
}

/// An answer, read out when it changes: its sentence, lines under it, and whether it
/// is of the last good numbers. What hangs on it may be put in as well.
pub fn said(
    state: State,
    id: &str,
    sentence: impl Fn() -> String + 'static,
    details: impl IntoIterator<Item = El>,
) -> El {
    let said = h("div", "")
        .attr("role", "status")
        .attr("aria-live", "polite")
        .child(h("p", "answer").attr("id", id).live_text(sentence))
        .children(details)
        .child(stale_mark(state));
    h("div", "outcome")
        .live_class("stale", move || state.is_stale())
        .child(said)
}

/// Sentences as a list, built anew when they change.
pub fn sentences(class: &str, all: impl Fn() -> Vec<String> + Copy + Send + Sync + 'static) -> El {
    h("ul", class).live_children(
        move || all().join("\n"),
        move || all().iter().map(|text| h("li", "").text(text)).collect(),
    )
}

/// Says that the answer is of the last good numbers.
pub fn stale_mark(state: State) -> El {
    h("p", "stale-mark").live_text(move || {
        if state.is_stale() {
            words::STALE.into()
        } else {
            String::new()
        }
    })
}

/// Something of the run that leads: the mode that the night asks for.
fn lead(state: State, of: impl Fn(&crate::plan::Plan, &RunAnswer) -> String) -> Option<String> {
    state.with_plan(|plan| {
        state.with_answer(|answer| {
            let asked = (plan.night.asked_unit, plan.night.asked_mode);
            let run = answer.runs.iter().find(|run| (run.unit, run.mode) == asked);
            run.or(answer.runs.first()).map(|run| of(plan, run))
        })
    })
}

/// What the engine has to say beside the numbers.
fn findings(state: State, notes: bool) -> El {
    let said = move || {
        state.with_answer(|answer| {
            let wanted = answer
                .findings
                .iter()
                .filter(|f| (f.severity == Severity::Note) == notes);
            let units = state.with_plan(|plan| plan.show);
            wanted
                .map(|one| wording::finding_sentence(one, units))
                .collect::<Vec<_>>()
        })
    };
    let class = if notes {
        "findings"
    } else {
        "findings cautions-now"
    };
    sentences(class, said)
}

/// Notes fold away: nothing in them is wrong.
fn readings(state: State) -> El {
    let fold = named_fold("fold small", words::READINGS, move || {
        vec![findings(state, true)]
    });
    fold.live_flag("hidden", move || {
        let is_note = |finding: &crate::finding::Finding| finding.severity == Severity::Note;
        !state.with_answer(|answer| answer.findings.iter().any(is_note))
    })
}

/// The formula with this plan's numbers in it, for each run.
fn working(state: State) -> El {
    h("div", "working").live_children(
        move || {
            // Anything in the plan may change the working.
            state.turn()
        },
        move || {
            state.with_plan(|plan| {
                state.with_answer(|answer| {
                    let runs = answer.runs.iter();
                    runs.flat_map(|run| run_working(&wording::run_title(plan, answer, run), run))
                        .collect()
                })
            })
        },
    )
}

fn run_working(title: &str, run: &RunAnswer) -> Vec<El> {
    let rows = run.working.terms.iter().map(|term| {
        h("tr", "")
            .child(
                h("th", "")
                    .attr("scope", "row")
                    .text(wording::term_label(term.name)),
            )
            .child(h("td", "").text(&wording::working_value(term)))
    });
    let shares = run
        .spread_from
        .iter()
        .take(4)
        .map(|share| h("li", "").text(&wording::share_sentence(share)));
    vec![
        h("h3", "").text(title),
        h("p", "formula").text(wording::formula_text(run.working.formula)),
        h("table", "terms").child(h("tbody", "").children(rows)),
        h("p", "source").text(wording::source_text(run.working.formula)),
        h("p", "").text(words::SPREAD_FROM),
        h("ul", "").children(shares),
    ]
}
