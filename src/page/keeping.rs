//! Keep and share: undo, fresh plan, example, units, link, file.

use super::{files, keep, state::State};
use crate::{
    pass_on::link_from_plan,
    plan::{Plan, draft::Draft},
    wording::{Notice, words},
};
use leptos::prelude::*;

/// The buttons, and the link as text for browsers that do not copy.
#[component]
pub fn Keeping() -> impl IntoView {
    let state = State::get();
    let shows_link = RwSignal::new(false);
    let link = move || keep::address_of(&state.plan.with(link_from_plan));
    let copy = move |_| {
        shows_link.set(true);
        keep::copy(state, link());
    };
    let file_input = NodeRef::<leptos::html::Input>::new();
    let choose = move |_| {
        if let Some(input) = file_input.get() {
            input.click();
        }
    };
    let us_units = Memo::new(move |_| state.plan.with(|plan| plan.show.us_units));
    view! {
        <div class="buttons">
            <button type="button" disabled=move || !state.can_undo() on:click=move |_| state.undo()>{words::UNDO}</button>
            <button type="button" on:click=copy>{words::COPY_LINK}</button>
            <button type="button" on:click=move |_| files::save(&state.plan.get_untracked())>{words::SAVE_FILE}</button>
            <button type="button" on:click=choose>{words::OPEN_FILE}</button>
            <button type="button" on:click=move |_| state.replace(Draft::of(Plan::demo()), Notice::DemoTaken)>{words::DEMO}</button>
            <button type="button" on:click=move |_| state.replace(Draft::of(Plan::fresh()), Notice::PlanCleared)>{words::FRESH}</button>
        </div>
        <input node_ref=file_input id="plan-file" class="hidden" type="file" accept=".json,application/json"
            aria-label=words::OPEN_FILE tabindex="-1"
            on:change=move |event| files::open(state, &event)/>
        {move || shows_link.get().then(|| view! {
            <div class="field">
                <label for="link">{words::LINK}</label>
                <input id="link" type="text" readonly prop:value=link/>
            </div>
        })}
        <label class="check">
            <input type="checkbox" id="us-units" prop:checked=move || us_units.get()
                on:change=move |_| state.edit(|plan| plan.show.us_units = !plan.show.us_units)/>
            {words::US_UNITS}
        </label>
    }
}
