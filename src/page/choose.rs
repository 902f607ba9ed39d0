//! Choices of the plan that may be left open: the one assumed is marked so.

use super::{field::Choice, state::State};
use crate::page::locale::formatter;
use crate::text::Formatter;
use crate::{
    plan::{Plan, part},
    text::day_words as words,
};
use leptos::prelude::*;

/// A choice of a plan's part: what it is called, and what is taken where it is
/// left open.
#[derive(Clone, Copy)]
pub struct Chosen<T> {
    pub label: fn(Formatter) -> &'static str,
    pub name: fn(Formatter, T) -> &'static str,
    pub assumed: T,
}

/// A field for it. `place` finds it in a plan, by the same way for reading and
/// writing.
#[component]
pub fn OpenChoice<T: part::Choice + Send + Sync>(
    #[prop(into)] id: String,
    chosen: Chosen<T>,
    place: impl Fn(&mut Plan) -> Option<&mut Option<T>> + Copy + Send + Sync + 'static,
) -> impl IntoView {
    let state = State::here();
    let Chosen {
        label,
        name,
        assumed,
    } = chosen;
    // Read through the lens that writes: a copy is cheap beside an answer.
    let stated = move || {
        let mut plan = state.plan.get();
        place(&mut plan).and_then(|slot| *slot)
    };
    let names = move || {
        let open = stated().is_none();
        let all = T::ALL.iter().map(|&one| {
            if open && one == assumed {
                words::assumed_choice(formatter(), name(formatter(), one))
            } else {
                name(formatter(), one).to_owned()
            }
        });
        all.collect()
    };
    let at = move || {
        let now = stated().unwrap_or(assumed);
        T::ALL.iter().position(|&one| one == now).unwrap_or(0)
    };
    let take = move |index: usize| {
        state.edit(|plan| {
            if let (Some(slot), Some(&one)) = (place(plan), T::ALL.get(index)) {
                *slot = Some(one);
            }
        });
    };
    view! { <Choice id=id label=label(formatter()) names=names chosen=at choose=take /> }
}
