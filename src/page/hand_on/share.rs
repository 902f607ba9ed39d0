//! The answer in a sentence to copy, and the link as a code to photograph.

use super::{Said, save};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::RunAnswer,
    page::{keep, kit::Press, state::State},
    plan::Plan,
    share::{name::file_name, qr},
    text::hand_on as words,
};
use leptos::prelude::*;

/// The sentence as it will be pasted, link behind it, and the button.
#[component]
pub fn Sentence(said: Said) -> impl IntoView {
    let state = State::here();
    let text = move || state.with_plan(|plan| lead(state, plan));
    let copy = move || {
        let address = state.plan_now(|plan| keep::address_of(&keep::link_of(plan)));
        let text = untrack(text).unwrap_or_default();
        copy_it(format!("{text} {address}"), said);
    };
    let shown = move || text().unwrap_or_else(|| say(m::NoAnswer).into());
    view! {
        <div>
            <p class="hand-on-sentence" id="hand-on-sentence">
                {shown}
            </p>
            <div class="buttons">
                <Press words=say(m::HandOnCopy) press=copy />
            </div>
        </div>
    }
}

/// Copies a text, and says whether it could.
pub fn copy_it(text: String, said: Said) {
    keep::copy(text, move |copied| {
        let word = if copied {
            say(m::HandOnCopied)
        } else {
            say(m::HandOnNotCopied)
        };
        said.set(word.into());
    });
}

/// The run that leads, in a sentence.
fn lead(state: State, plan: &Plan) -> Option<String> {
    let asked = (plan.night.asked_unit, plan.night.asked_mode);
    state.with_answer(|answer| {
        let is_asked = |run: &&RunAnswer| (run.unit, run.mode) == asked;
        let run = answer.runs.iter().find(is_asked).or(answer.runs.first())?;
        Some(words::sentence(formatter(), plan, run))
    })
}

/// The code, dark on white in any theme, and the length of the link in it.
#[component]
pub fn LinkCode(said: Said) -> impl IntoView {
    let state = State::here();
    let link = Memo::new(move |_| state.with_plan(keep::link_of));
    let address = move || keep::address_of(&link.get());
    let code = Memo::new(move |_| qr::svg(&address(), say(m::HandOnQrName)));
    let under = move || {
        let link = link.get();
        if link.is_empty() || qr::MOST_BYTES < address().len() {
            say(m::HandOnQrTooLong).into()
        } else {
            words::link_length(formatter(), link.len())
        }
    };
    let save_it = move || {
        if let Some(code) = code.get_untracked() {
            save::text(said, file_name("link", "svg"), save::SVG, &code);
        }
    };
    view! {
        <figure class="code">
            <h3>{say(m::HandOnQrTitle)}</h3>
            <div class="code-sheet" id="code" inner_html=move || code.get().unwrap_or_default()></div>
            <figcaption>{under}</figcaption>
            <div class="buttons">
                <Press words=say(m::HandOnQrSave) press=save_it />
            </div>
        </figure>
    }
}
