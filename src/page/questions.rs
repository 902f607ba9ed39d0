//! The six questions, each one tap away from anywhere, with undo beside them.
//!
//! They are links within the page, so that the browser's own back button works between
//! them; what is folded opens when its link is followed.

use super::{
    browser::{document, later, listen, window},
    kit::Press,
    locale::say,
    state::State,
};
use crate::text::m;
use leptos::{ev, prelude::*};
use std::time::Duration;

/// The bar of links.
#[component]
pub fn Questions() -> impl IntoView {
    let state = State::here();
    let links = [
        ("question-1", say(m::NavRun)),
        ("question-2", say(m::NavBank)),
        ("question-3", say(m::NavDay)),
        ("question-4", say(m::NavWiring)),
        ("question-5", say(m::NavClaims)),
        ("question-6", say(m::NavHandOn)),
    ];
    let link = |(id, name): (&'static str, &'static str)| {
        view! {
            <li>
                // Where the address says so already, following it tells nobody.
                <a href=format!("#{id}") on:click=move |_| open_soon()>
                    {name}
                </a>
            </li>
        }
    };
    let cannot_undo = Signal::derive(move || !state.can_undo());
    view! {
        <nav class="questions" aria-label=say(m::NavTitle)>
            <ul>{links.map(link).collect_view()}</ul>
            <Press
                class="quiet"
                words="↶"
                label=say(m::Undo)
                disabled=cannot_undo
                press=move || state.undo()
            />
        </nav>
    }
}

/// Follows links within the page, and the keys that undo, from now on.
pub fn follow(state: State) {
    open_soon();
    listen("hashchange", open_what_is_named);
    undo_by_keys(state);
}

/// The same once the page stands, and the address has followed a press.
fn open_soon() {
    later(Duration::ZERO, open_what_is_named);
}

/// Opens the fold that the address names, and what it stands in.
fn open_what_is_named() {
    let hash = window().location().hash().unwrap_or_default();
    let named = document().get_element_by_id(hash.trim_start_matches('#'));
    let Some(named) = named.filter(|_| hash.len() > 1) else {
        return;
    };
    if let Ok(Some(fold)) = named.closest("details") {
        let _ = fold.set_attribute("open", "");
    }
    named.scroll_into_view();
}

/// Ctrl+Z (or Cmd+Z) takes the last change of the plan back, wherever the cursor is.
fn undo_by_keys(state: State) {
    let handle = window_event_listener(ev::keydown, move |event| {
        let is_undo = (event.ctrl_key() || event.meta_key())
            && !event.shift_key()
            && event.key().eq_ignore_ascii_case("z");
        if is_undo && state.can_undo() {
            event.prevent_default();
            state.undo();
        }
    });
    on_cleanup(move || handle.remove());
}
