//! 'Pass it on': the answer as a sentence, a code, a report, figures and tables.
//!
//! What takes work is made when its fold is opened or its button pressed, not
//! while someone types above.

mod files;
mod reader_maker;
mod report;
mod save;
mod share;

use super::{
    dom::{El, h},
    part::There,
    reactive::*,
    state::State,
};
use crate::{
    answer::{self, Answer},
    plan::Plan,
};

/// What stands under the sixth question.
pub fn hand_on(there: There, state: State) -> Vec<El> {
    let said = RwSignal::new(String::new());
    let status = h("p", "said")
        .attr("role", "status")
        .live_text(move || said.get());
    vec![
        share::sentence(there, state, said),
        share::code(there, state, said),
        status,
        reader_maker::reader_maker(there, state),
        report::report(there, state, said),
        files::figures(state, said),
        files::tables(state, said),
        files::whole(state, said),
    ]
}

/// A line that says what came of a press, for eyes and screen readers.
type Said = RwSignal<String>;

/// A fold whose inside is there while it is open, and follows the plan.
fn opened(title: &str, inside: impl Fn(&Plan, &Answer) -> Vec<El> + 'static, state: State) -> El {
    let open = RwSignal::new(false);
    let key = move || {
        let is_open = open.get();
        if is_open { state.turn() } else { String::new() }
    };
    let build = move || {
        if !open.get_untracked() {
            return Vec::new();
        }
        state.with_plan(|plan| inside(plan, &answer::answer(plan)))
    };
    h("details", "fold")
        .on("toggle", move |event| {
            let target = event.target().and_then(|target| {
                use wasm_bindgen::JsCast;
                target.dyn_into::<web_sys::Element>().ok()
            });
            open.set(target.is_some_and(|fold| fold.has_attribute("open")));
        })
        .child(h("summary", "").text(title))
        .child(h("div", "fold-body").live_children(key, build))
}
