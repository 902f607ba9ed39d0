//! The report: shown as it will be on paper, printed, or kept as a page.

use super::{
    super::{
        browser::window,
        dom::{El, button, h},
        keep,
        part::There,
        reactive::untrack,
        state::State,
    },
    Said, opened, save,
};
use crate::{
    answer::answer,
    pass_on::{name::file_name, report as paper},
    wording::hand_on as words,
};

/// The fold with the sheet in it. While it is open, printing prints the sheet
/// alone (see `style/hand_on.css`), by the button or by the browser's own way.
pub fn report(there: There, state: State, said: Said) -> El {
    let address = move || keep::address_of(&state.with_plan(|plan| keep::link_of(there, plan)));
    let keep_it = move || {
        let made = |plan: &_| paper::file(plan, &answer(plan), Some(&address()));
        let page = untrack(|| state.with_plan(made));
        save::text(said, file_name("report", "html"), save::HTML, &page);
    };
    let print = || {
        // A sandboxed frame may forbid it; the browser's own menu still prints.
        let _ = window().print();
    };
    let inside = move |plan: &_, answer: &_| {
        let sheet = h("div", "");
        sheet
            .0
            .set_inner_html(&paper::article(plan, answer, Some(&address())));
        let buttons = h("div", "buttons")
            .child(button("", words::REPORT_PRINT, print))
            .child(button("", words::REPORT_SAVE, keep_it));
        vec![buttons, sheet]
    };
    opened(words::REPORT, inside, state)
}
