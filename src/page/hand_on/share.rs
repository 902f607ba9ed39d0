//! The answer in a sentence to copy, and the link as a code to photograph.

use super::{
    super::{
        dom::{El, button, h},
        keep,
        part::There,
        reactive::*,
        state::State,
    },
    Said, save,
};
use crate::{
    answer::RunAnswer,
    pass_on::{name::file_name, qr},
    plan::Plan,
    wording::{hand_on as words, words as page_words},
};

/// The sentence as it will be pasted, link behind it, and the button.
pub fn sentence(there: There, state: State, said: Said) -> El {
    let text = move || {
        state
            .with_plan(|plan| lead(state, plan))
            .unwrap_or_default()
    };
    let copy = move || {
        let address =
            untrack(|| keep::address_of(&state.with_plan(|plan| keep::link_of(there, plan))));
        let text = format!("{} {address}", untrack(text));
        keep::copy(text, move |copied| {
            said.set(
                if copied {
                    words::COPIED
                } else {
                    words::NOT_COPIED
                }
                .into(),
            );
        });
    };
    let shown = move || {
        let text = text();
        if text.is_empty() {
            page_words::NO_ANSWER.into()
        } else {
            text
        }
    };
    h("div", "")
        .child(
            h("p", "hand-on-sentence")
                .attr("id", "hand-on-sentence")
                .live_text(shown),
        )
        .child(h("div", "buttons").child(button("", words::COPY, copy)))
}

/// The run that leads, in a sentence.
fn lead(state: State, plan: &Plan) -> Option<String> {
    let asked = (plan.night.asked_unit, plan.night.asked_mode);
    state.with_answer(|answer| {
        let is_asked = |run: &&RunAnswer| (run.unit, run.mode) == asked;
        let run = answer.runs.iter().find(is_asked).or(answer.runs.first())?;
        Some(words::sentence(plan, run))
    })
}

/// The code, dark on white in any theme, and the length of the link in it.
pub fn code(there: There, state: State, said: Said) -> El {
    let link = move || state.with_plan(|plan| keep::link_of(there, plan));
    let address = move || keep::address_of(&link());
    let markup = move || qr::svg(&address(), words::QR_NAME).unwrap_or_default();
    let under = move || {
        let link = link();
        if link.is_empty() || qr::MOST_BYTES < address().len() {
            words::QR_TOO_LONG.into()
        } else {
            words::link_length(link.len())
        }
    };
    let keep_it = move || {
        if let Some(code) = qr::svg(&untrack(address), words::QR_NAME) {
            save::text(said, file_name("link", "svg"), save::SVG, &code);
        }
    };
    h("figure", "code")
        .child(h("h3", "").text(words::QR_TITLE))
        .child(
            h("div", "code-sheet")
                .attr("id", "code")
                .live_markup(markup),
        )
        .child(h("figcaption", "").live_text(under))
        .child(h("div", "buttons").child(button("", words::QR_SAVE, keep_it)))
}
