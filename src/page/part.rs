//! The later part of the wasm: how far it is, and waiting for it.
//!
//! What the first answer does without is a file by itself, cut off at the doors
//! (`.tools/split`; they are listed in `.tools/finish/parts.mjs`). No door may be
//! passed before it is there. `offline/later.js` brings it and tells by signs; in
//! the one-file page and in tests there is no such part, and nothing to wait for.

use super::{
    browser::{document, listen, window},
    dom::{El, button, h},
    reactive::*,
    state::State,
};
use crate::wording::{Notice, words};
use std::cell::Cell;

/// How far it is: `coming`, `missing`, or empty once it is there.
fn sign() -> String {
    let root = document().document_element();
    root.and_then(|root| root.get_attribute("data-later"))
        .unwrap_or_default()
}

pub fn is_there() -> bool {
    sign().is_empty()
}

/// Neither there nor given up.
pub fn is_coming() -> bool {
    sign() == "coming"
}

/// Asks for it, now or again.
#[inline(never)]
pub fn bring() {
    if let Ok(event) = web_sys::Event::new("till-morning-bring") {
        let _ = window().dispatch_event(&event);
    }
}

/// Calls `work` at once or at the first sign at which `ready`, and once only. What
/// that keeps true lives as long as the present owner.
pub fn once(ready: fn() -> bool, work: impl Fn() + 'static) {
    once_boxed(ready, Box::new(work));
}

#[inline(never)]
fn once_boxed(ready: fn() -> bool, work: Box<dyn Fn()>) {
    if ready() {
        return work();
    }
    let (owner, done) = (Owner::current(), Cell::new(false));
    listen("till-morning-later", move || {
        if !ready() || done.replace(true) {
            return;
        }
        match &owner {
            Some(owner) => owner.with(&work),
            None => work(),
        }
    });
}

/// Whether a press that needs the part may go on; else it is asked for, and said.
pub fn is_there_or_said(state: State) -> bool {
    let is_there = is_there();
    if !is_there {
        bring();
        state.notice.set(Some(Notice::PartNotThere));
    }
    is_there
}

/// What `build` builds behind a door; until then a line on how far the part is.
pub fn place(build: impl Fn() -> Vec<El> + 'static) -> El {
    bring();
    let moved = RwSignal::new(false);
    listen("till-morning-later", move || moved.set(true));
    let how_far = move || {
        moved.get();
        sign()
    };
    h("div", "").live_children(how_far, move || match sign().as_str() {
        "" => build(),
        "missing" => vec![
            say(words::PART_MISSING),
            button("quiet", words::PART_AGAIN, bring),
        ],
        _ => vec![say(words::PART_COMING)],
    })
}

fn say(words: &str) -> El {
    h("p", "hint").attr("role", "status").text(words)
}
