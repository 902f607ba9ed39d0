//! The page from top to bottom: answer first, then what it rests on.

use super::{
    assumed::Assumed,
    banks::Banks,
    curves::Curves,
    keep,
    keeping::Keeping,
    margin::{Cautions, Notices},
    modes::Modes,
    needed::Needed,
    outcome::Outcome,
    state::State,
    units::Units,
};
use crate::wording::words;
use leptos::{ev, prelude::*};

/// The widest the column gets.
const COLUMN_PX: f64 = 720.0;
/// What the page keeps free at both sides together.
const SIDES_PX: f64 = 32.0;

/// The whole page.
#[component]
pub fn App() -> impl IntoView {
    let opened = keep::open();
    let state = State::new(opened.draft, opened.notice);
    provide_context(state);
    if let Some(own) = opened.own {
        state.remember_other(own);
    }
    keep::keep(state);
    follow_width(state);
    follow_update(state);
    view! {
        <header class="masthead">
            <p class="mark" aria-hidden="true"></p>
            <h1>"Till Morning"</h1>
            <p class="strap">{words::STRAP}</p>
        </header>
        <main>
            <Notices/>
            <section class="question" aria-labelledby="question-1">
                <h2 id="question-1">{words::QUESTION_RUN}</h2>
                <Outcome/>
                <Banks/>
                <Modes/>
                <Units/>
                <Curves/>
            </section>
            <section class="question" aria-labelledby="question-2">
                <h2 id="question-2">{words::QUESTION_BANK}</h2>
                <Needed/>
            </section>
            <section class="question" aria-labelledby="assumed">
                <h2 id="assumed">{words::ASSUMED}</h2>
                <Assumed/>
            </section>
            <section class="question" aria-labelledby="keeping">
                <h2 id="keeping">{words::KEEPING}</h2>
                <Keeping/>
            </section>
            <section class="question" aria-labelledby="cautions">
                <h2 id="cautions">{words::CAUTIONS_TITLE}</h2>
                <Cautions/>
            </section>
        </main>
        <footer class="foot"><p>{words::FOOT}</p></footer>
    }
}

/// Charts are drawn for the width there is.
fn follow_width(state: State) {
    let measure = move || {
        let inner = window()
            .inner_width()
            .ok()
            .and_then(|width| width.as_f64())
            .unwrap_or(360.0);
        state.width.set((inner - SIDES_PX).clamp(240.0, COLUMN_PX));
    };
    measure();
    let handle = window_event_listener(ev::resize, move |_| measure());
    on_cleanup(move || handle.remove());
}

/// The service worker's sign that a newer version waits.
fn follow_update(state: State) {
    let waits = document()
        .document_element()
        .is_some_and(|root| root.has_attribute("data-update"));
    state.update.set(waits);
    let handle =
        window_event_listener_untyped("till-morning-update", move |_| state.update.set(true));
    on_cleanup(move || handle.remove());
}
