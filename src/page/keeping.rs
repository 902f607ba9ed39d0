//! Keep and share: fresh plan, example, units, link, file.

use super::{browser::window, keep, kit::Press, part, state::State};
use crate::page::locale::say;
use crate::text::m;
use crate::{
    plan::{Plan, draft::Draft},
    text::Notice,
};
use leptos::{ev, html, prelude::*};

/// The buttons, and the link as text for browsers that do not copy.
#[component]
pub fn Keeping() -> impl IntoView {
    let state = State::here();
    // Seen at once, and not only where the button is.
    let replace = move |plan: Plan, notice| {
        window().scroll_to_with_x_and_y(0.0, 0.0);
        let units = state.plan_now(|plan| plan.show);
        state.replace(Draft::of(plan.shown_as(units)), notice);
    };
    let show_example = move || {
        state.show_example();
        window().scroll_to_with_x_and_y(0.0, 0.0);
    };
    let save = move || {
        if let Some(keeping) = part::keeping_or_said(state) {
            (keeping.save)(&state.plan.get_untracked());
        }
    };
    let shows_link = RwSignal::new(false);
    let copy = move || {
        if part::keeping_or_said(state).is_some() {
            shows_link.set(true);
            keep::copy(untrack(|| link(state)), move |copied| {
                state.notice.set(Some(if copied {
                    Notice::LinkCopied
                } else {
                    Notice::LinkNotCopied
                }));
            });
        }
    };
    view! {
        <div>
            <div class="buttons">
                <Press words=say(m::CopyLink) press=copy />
                <Press words=say(m::SaveFile) press=save />
                <OpenFile />
                <Press words=say(m::Demo) press=show_example />
                <Press words=say(m::Fresh) press=move || replace(Plan::fresh(), Notice::PlanCleared) />
            </div>
            <div>{move || shows_link.get().then(|| view! { <LinkAsText /> })}</div>
        </div>
    }
}

/// The plan's link; of the page itself where no link can carry it.
fn link(state: State) -> String {
    let link = |keeping: part::Keeping| state.with_plan(keeping.link);
    keep::address_of(&part::keeping().map(link).unwrap_or_default())
}

#[component]
fn OpenFile() -> impl IntoView {
    let state = State::here();
    let picker = NodeRef::<html::Input>::new();
    let pick = move || {
        if part::keeping_or_said(state).is_some()
            && let Some(picker) = picker.get_untracked()
        {
            picker.click();
        }
    };
    let open = move |event: ev::Event| {
        if let Some(keeping) = part::keeping() {
            (keeping.open_file)(state, &event);
        }
    };
    view! {
        <Press words=say(m::OpenFile) press=pick />
        <input
            node_ref=picker
            class="hidden"
            id="plan-file"
            type="file"
            accept=".json,application/json"
            aria-label=say(m::OpenFile)
            tabindex="-1"
            on:change=open
        />
    }
}

#[component]
fn LinkAsText() -> impl IntoView {
    let state = State::here();
    view! {
        <div class="field">
            <label for="link">{say(m::Link)}</label>
            <input id="link" type="text" readonly prop:value=move || link(state) />
        </div>
    }
}
