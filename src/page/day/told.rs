//! What the question is answered with: the day at once, its odds a moment later.

use super::{State, band::Bands};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::day::{self as answered, DayAnswer},
    page::{kit::Sentences, outcome::Said},
    plan::Plan,
    plan::finding::Severity,
    text::{self, day as say},
};
use leptos::prelude::*;
use std::sync::Arc;

/// The day's answer as far as it is worked out.
#[derive(Clone, Copy)]
pub struct Told {
    /// Without odds and bands: it follows the keys.
    pub day: Memo<Option<Arc<DayAnswer>>>,
    pub bands: Bands,
    /// With the odds and bands there are, those of the numbers before included.
    pub whole: Memo<Option<Arc<DayAnswer>>>,
}

impl Told {
    /// Folded away nothing is worked out: the first questions stay quick.
    pub fn new(state: State, is_open: RwSignal<bool>) -> Self {
        let day = Memo::new_with_compare(
            move |last: Option<&Option<Arc<DayAnswer>>>| {
                if is_open.get() {
                    state.with_plan(|plan| answered::day(plan).map(Arc::new))
                } else {
                    last.cloned().flatten()
                }
            },
            |_, _| true,
        );
        let bands = Bands::new(state, is_open);
        let whole = Memo::new_with_compare(
            move |_| {
                let day = day.get()?;
                let drawn = bands.drawn.get();
                let fitting = drawn.filter(|drawn| drawn.fits(&day));
                Some(fitting.map_or(day.clone(), |drawn| {
                    Arc::new(DayAnswer::clone(&day).with(drawn.sampled.clone()))
                }))
            },
            |_, _| true,
        );
        Self { day, bands, whole }
    }

    /// That of the question that a component stands in.
    pub fn here() -> Self {
        expect_context()
    }

    /// Something of the whole answer, if there is one.
    pub fn of<R: Default>(self, state: State, of: impl FnOnce(&Plan, &DayAnswer) -> R) -> R {
        self.whole
            .get()
            .map_or_else(R::default, |day| state.with_plan(|plan| of(plan, &day)))
    }
}

/// The answer in sentences.
#[component]
pub fn DayTold() -> impl IntoView {
    let (state, told) = (State::here(), Told::here());
    let sentence = move || match told.day.get() {
        Some(day) => state.with_plan(|plan| say::lasts_sentence(formatter(), plan, &day)),
        None => say(m::DayNoAnswer).into(),
    };
    let warmth = move || {
        let day = told.day.get();
        day.map(|day| state.with_plan(|plan| say::warmth_sentence(formatter(), plan, &day)))
    };
    let odds = move || {
        told.of(state, |plan, day| {
            let odds = day.odds.as_ref();
            odds.map_or_else(
                || told.bands.word().to_owned(),
                |odds| say::odds_sentence(formatter(), plan, day, odds),
            )
        })
    };
    let end = move || {
        told.of(state, |plan, day| say::end_sentence(formatter(), plan, day))
            .unwrap_or_default()
    };
    let assume = move || {
        told.of(state, |_, day| {
            day.odds
                .as_ref()
                .map_or_else(String::new, |odds| say::odds_assume(formatter(), odds))
        })
    };
    let details = move || {
        view! {
            <p class="detail" id="day-warmth">
                {warmth}
            </p>
            <p class="detail odds" class:old=move || told.bands.drawn.is_behind()>
                {odds}
            </p>
            <p class="detail">{end}</p>
        }
    };
    view! {
        <Said id="day-answer" sentence=sentence details=details>
            <Findings />
            <p class="hint">{assume}</p>
        </Said>
    }
}

/// What must be corrected, and what should be known first.
#[component]
fn Findings() -> impl IntoView {
    let (state, told) = (State::here(), Told::here());
    let all = move || {
        let mut all: Vec<String> = state.with_draft(|draft| {
            let _units = draft.plan.show;
            let troubled = draft.troubled().into_iter();
            troubled
                .filter_map(|path| {
                    let wanted = draft.wanted(path)?;
                    Some(text::entry_trouble(formatter(), path, wanted))
                })
                .collect()
        });
        match told.day.get() {
            Some(day) => {
                all.extend(state.with_plan(|plan| {
                    let findings = day.findings.iter();
                    let mut all: Vec<String> = findings
                        .map(|one| text::finding_sentence(formatter(), one))
                        .collect();
                    all.extend(say::first_things(formatter(), plan, &day));
                    all
                }));
            }
            None => all.extend(state.with_plan(|plan| {
                let errors = plan.errors();
                let errors = errors.iter().filter(|one| one.severity == Severity::Error);
                errors
                    .map(|one| text::finding_sentence(formatter(), one))
                    .collect::<Vec<_>>()
            })),
        }
        all
    };
    view! { <Sentences class="findings" all=all /> }
}
