//! Choices of the plan that may be left open: the one assumed is marked so.

use super::{dom::El, field::choice, reactive::Get, state::State};
use crate::{
    plan::{Plan, part::Choice},
    wording::day_words as words,
};

/// A choice of a plan's part: where it stands, what it is called, and what is
/// taken where it is left open.
pub struct Chosen<T> {
    pub label: &'static str,
    pub name: fn(T) -> &'static str,
    pub assumed: T,
}

/// A field for it. `place` finds it in a plan, by the same way for reading and writing.
pub fn choose<T: Choice + Send + Sync>(
    state: State,
    id: &str,
    chosen: Chosen<T>,
    place: impl Fn(&mut Plan) -> Option<&mut Option<T>> + Copy + Send + Sync + 'static,
) -> El {
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
                words::assumed_choice(name(one))
            } else {
                name(one).to_owned()
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
    choice(id, label, names, at, take)
}
