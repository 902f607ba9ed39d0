//! Which mode or bank of the plan a figure goes to.

use crate::{
    answer::log::{self, StretchFigures},
    page::{
        dom::{El, button, h},
        field::choice,
        reactive::*,
        state::State,
    },
    wording::{self, claims::words},
};

/// Every mode of every unit, by name.
fn modes(state: State) -> Vec<(usize, usize, String)> {
    state.with_plan(|plan| {
        let units = plan.units.iter().enumerate();
        let all = units.flat_map(|(unit, one)| (0..one.modes.len()).map(move |mode| (unit, mode)));
        all.map(|(unit, mode)| (unit, mode, wording::full_mode_name(plan, unit, mode)))
            .collect()
    })
}

/// A button for each mode that the figures can become the draw of.
pub fn mode_buttons(
    state: State,
    figures: impl Fn() -> Option<StretchFigures> + Clone + 'static,
    label: impl Fn(&str) -> String + 'static,
    said: RwSignal<&'static str>,
) -> El {
    boxed(state, std::rc::Rc::new(figures), Box::new(label), said)
}

#[inline(never)]
fn boxed(
    state: State,
    figures: std::rc::Rc<dyn Fn() -> Option<StretchFigures>>,
    label: Box<dyn Fn(&str) -> String>,
    said: RwSignal<&'static str>,
) -> El {
    let key = move || {
        let names: Vec<String> = modes(state).into_iter().map(|one| one.2).collect();
        names.join("\n")
    };
    h("div", "buttons").live_children(key, move || {
        let buttons = modes(state).into_iter().map(|(unit, mode, name)| {
            let figures = figures.clone();
            button("quiet", &name, move || {
                let mut taken = false;
                if let Some(figures) = untrack(|| figures()) {
                    state.edit(|plan| taken = log::to_mode(plan, unit, mode, &figures));
                }
                said.set(if taken {
                    words::TAKEN
                } else {
                    words::NOT_TAKEN
                });
            })
            .attr("aria-label", &label(&name))
        });
        buttons.collect()
    })
}

/// Which bank of the plan; nothing to choose where there is one.
pub fn bank_choice(
    state: State,
    id: &str,
    label: &'static str,
    now: impl Fn() -> usize + Clone + Send + Sync + 'static,
    set: impl Fn(usize) + Clone + Send + Sync + 'static,
) -> El {
    let names = move || {
        state.with_plan(|plan| {
            let all = 0..plan.banks.len();
            all.map(|bank| wording::bank_in_words(plan, bank))
                .collect::<Vec<_>>()
        })
    };
    let id = id.to_owned();
    let several = move || (names().len() > 1).to_string();
    h("div", "").live_children(several, move || {
        let one = || choice(&id, label, names, now.clone(), set.clone());
        (untrack(names).len() > 1).then(one).into_iter().collect()
    })
}
