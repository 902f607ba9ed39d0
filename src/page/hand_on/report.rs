//! The report: shown as it will be on paper, printed, or kept as a page.

use super::{MadeWhileOpen, Said, save};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::{Answer, answer},
    page::{browser::window, keep, kit::Press, state::State},
    plan::Plan,
    share::{name::file_name, report as paper},
};
use leptos::prelude::*;

/// The fold with the sheet in it. While it is open, printing prints the sheet
/// alone (see `style/hand_on.css`), by the button or by the browser's own way.
#[component]
pub fn Report(said: Said) -> impl IntoView {
    let state = State::here();
    let address = move |plan: &Plan| keep::address_of(&keep::link_of(plan));
    let save_it = move || {
        let page = state
            .plan_now(|plan| paper::file(formatter(), plan, &answer(plan), Some(&address(plan))));
        save::text(said, file_name("report", "html"), save::HTML, &page);
    };
    let print = || {
        // A sandboxed frame may forbid it; the browser's own menu still prints.
        let _ = window().print();
    };
    let make = move |plan: &Plan, answer: &Answer| {
        view! {
            <div class="buttons">
                <Press words=say(m::HandOnReportPrint) press=print />
                <Press words=say(m::HandOnReportSave) press=save_it />
            </div>
            // Its texts are escaped by the report.
            <div inner_html=paper::article(formatter(), plan, answer, Some(&address(plan)))></div>
        }
        .into_any()
    };
    view! { <MadeWhileOpen title=say(m::HandOnReport) make=make /> }
}
