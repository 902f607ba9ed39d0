//! What stands beside the questions: notices and cautions.

use super::state::State;
use crate::wording::{self, CAUTIONS, words};
use leptos::prelude::*;

/// What happened to the document, and the way to a newer version.
#[component]
pub fn Notices() -> impl IntoView {
    let state = State::get();
    let reload = move |_| {
        if let Ok(event) = web_sys::Event::new("till-morning-reload") {
            let _ = window().dispatch_event(&event);
        }
    };
    view! {
        <div role="status" aria-live="polite">
            {move || state.notice.get().map(|notice| view! {
                <p class="notice" id="notice">
                    {wording::notice_sentence(notice)}
                    <button type="button" class="quiet" on:click=move |_| state.notice.set(None)>{words::DISMISS}</button>
                </p>
            })}
            {move || state.update.get().then(|| view! {
                <p class="notice" id="update-notice">
                    {words::UPDATE_WAITS}
                    <button type="button" on:click=reload>{words::RELOAD}</button>
                </p>
            })}
        </div>
    }
}

/// Cautions with their sources.
#[component]
pub fn Cautions() -> impl IntoView {
    let items = CAUTIONS.iter().map(|caution| view! {
        <li>
            {caution.text}
            {(!caution.source.is_empty()).then(|| view! { <cite>" ("{caution.source}")"</cite> })}
        </li>
    }).collect_view();
    view! { <ul class="cautions">{items}</ul> }
}
