//! Which mode or bank of the plan a figure goes to.

use crate::page::locale::{formatter, say};
use crate::text::m;
use crate::{
    answer::log::{self, StretchFigures},
    page::{
        field::Choice,
        kit::{Press, anew},
        state::State,
    },
    text::{self},
};
use leptos::prelude::*;
use std::sync::Arc;

/// Every mode of every unit, as its button names it.
fn modes(state: State) -> Vec<(usize, usize, String)> {
    state.with_plan(|plan| {
        let units = plan.units.iter().enumerate();
        let all = units.flat_map(|(unit, one)| (0..one.modes.len()).map(move |mode| (unit, mode)));
        all.map(|(unit, mode)| {
            (
                unit,
                mode,
                text::mode_in_sentence(formatter(), plan, unit, mode),
            )
        })
        .collect()
    })
}

/// A button for each mode that the figures can become the draw of.
#[component]
pub fn ModeButtons(
    figures: impl Fn() -> Option<StretchFigures> + Send + Sync + 'static,
    /// What the button for a mode says.
    words: impl Fn(&str) -> String + Send + Sync + 'static,
    said: RwSignal<&'static str>,
) -> impl IntoView {
    let state = State::here();
    let figures: Arc<dyn Fn() -> Option<StretchFigures> + Send + Sync> = Arc::new(figures);
    let words: Arc<dyn Fn(&str) -> String + Send + Sync> = Arc::new(words);
    let buttons = move |modes: Vec<(usize, usize, String)>| {
        let buttons = modes.into_iter().map(|(unit, mode, name)| {
            let figures = figures.clone();
            let take = move || {
                let mut taken = false;
                if let Some(figures) = untrack(|| figures()) {
                    state.edit(|plan| taken = log::to_mode(plan, unit, mode, &figures));
                }
                said.set(if taken {
                    say(m::LogTaken)
                } else {
                    say(m::LogNotTaken)
                });
            };
            let words = words(&name);
            view! { <Press class="quiet" words=words press=take /> }
        });
        buttons.collect_view().into_any()
    };
    view! { <div class="buttons">{anew(move || modes(state), buttons)}</div> }
}

/// Which bank of the plan; nothing to choose where there is one.
#[component]
pub fn BankChoice(
    #[prop(into)] id: String,
    label: &'static str,
    now: impl Fn() -> usize + Copy + Send + Sync + 'static,
    set: impl Fn(usize) + Copy + Send + Sync + 'static,
) -> impl IntoView {
    let state = State::here();
    let names = move || {
        state.with_plan(|plan| {
            let all = 0..plan.banks.len();
            all.map(|bank| text::bank_in_words(formatter(), plan, bank))
                .collect::<Vec<_>>()
        })
    };
    let several = move || state.with_plan(|plan| plan.banks.len() > 1);
    let build = move |several: bool| {
        several
            .then(|| {
                let id = id.clone();
                view! { <Choice id=id label=label names=names chosen=now choose=set /> }
            })
            .into_any()
    };
    view! { <div>{anew(several, build)}</div> }
}
