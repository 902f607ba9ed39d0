//! Keep and share: undo, fresh plan, example, units, link, file.

use super::reactive::*;
use super::{
    dom::{El, button, h},
    field::tick,
    files, keep, part,
    state::State,
};
use crate::{
    plan::{Plan, draft::Draft},
    wording::{Notice, words},
};
use wasm_bindgen::JsCast;

/// The buttons, and the link as text for browsers that do not copy.
pub fn keeping(state: State) -> El {
    let shows_link = RwSignal::new(false);
    let link = move || {
        let link = |there| state.with_plan(|plan| keep::link_of(there, plan));
        keep::address_of(&part::there().map(link).unwrap_or_default())
    };
    let copy = move || {
        if part::there_or_said(state).is_none() {
            return;
        }
        shows_link.set(true);
        keep::copy(untrack(link), move |copied| {
            state.notice.set(Some(if copied {
                Notice::LinkCopied
            } else {
                Notice::LinkNotCopied
            }));
        });
    };
    let file = h("input", "hidden")
        .attr("id", "plan-file")
        .attr("type", "file")
        .attr("accept", ".json,application/json")
        .attr("aria-label", words::OPEN_FILE)
        .attr("tabindex", "-1")
        .on("change", move |event| {
            if let Some(there) = part::there() {
                files::open(there, state, &event);
            }
        });
    let picker: web_sys::HtmlElement = file.0.clone().unchecked_into();
    let undo = button("", words::UNDO, move || state.undo())
        .live_flag("disabled", move || !state.can_undo());
    let replace = move |plan: fn() -> Plan, notice| {
        move || {
            let units = state.plan_now(|plan| plan.show);
            state.replace(Draft::of(plan().shown_as(units)), notice);
        }
    };
    let buttons = h("div", "buttons")
        .child(undo)
        .child(button("", words::COPY_LINK, copy))
        .child(button("", words::SAVE_FILE, move || {
            if let Some(there) = part::there_or_said(state) {
                files::save(there, &state.plan.get_untracked());
            }
        }))
        .child(button("", words::OPEN_FILE, move || {
            if part::there_or_said(state).is_some() {
                picker.click();
            }
        }))
        .child(button(
            "",
            words::DEMO,
            replace(Plan::demo, Notice::DemoTaken),
        ))
        .child(button(
            "",
            words::FRESH,
            replace(Plan::fresh, Notice::PlanCleared),
        ));
    let link_field = h("div", "").live_children(
        move || shows_link.get().to_string(),
        move || {
            shows_link
                .get()
                .then(|| link_as_text(link))
                .into_iter()
                .collect()
        },
    );
    h("div", "")
        .child(buttons)
        .child(file)
        .child(link_field)
        .child(tick(
            "us-units",
            words::US_UNITS,
            move || state.with_plan(|plan| plan.show.us_units),
            move || state.edit(|plan| plan.show.us_units = !plan.show.us_units),
        ))
}

fn link_as_text(link: impl Fn() -> String + 'static) -> El {
    let input = h("input", "")
        .attr("id", "link")
        .attr("type", "text")
        .attr("readonly", "");
    let element: web_sys::HtmlInputElement = input.0.clone().unchecked_into();
    super::dom::always(move || element.set_value(&link()));
    h("div", "field")
        .child(h("label", "").attr("for", "link").text(words::LINK))
        .child(input)
}
