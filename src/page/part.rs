//! The later part of the wasm: how far it is, and waiting for it.
//!
//! What the first answer does without is a file by itself, cut off at the doors
//! (`.tools/split`; they are listed in `.tools/finish/parts.mjs`). No door may be
//! passed before it is there: each takes a [`There`], which only this file gives. `offline/later.js` brings it and tells by signs; in
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

/// The part is there, and stays: what a door asks for.
#[derive(Clone, Copy)]
pub struct There(());

pub fn there() -> Option<There> {
    sign().is_empty().then_some(There(()))
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

/// Calls `work` once: now, or when the part is there. What that keeps true lives as
/// long as the present owner.
pub fn once_there(work: impl Fn(There) + 'static) {
    let work = move || {
        if let Some(there) = there() {
            work(there);
        }
    };
    once(|| there().is_some(), Box::new(work));
}

/// Calls `work` once: now, or when the part is there or has been given up.
pub fn once_settled(work: fn()) {
    once(|| !is_coming(), Box::new(work));
}

#[inline(never)]
fn once(ready: fn() -> bool, work: Box<dyn Fn()>) {
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

/// For a press that needs the part: where it is not there it is asked for, and said.
pub fn there_or_said(state: State) -> Option<There> {
    let there = there();
    if there.is_none() {
        bring();
        state.notice.set(Some(Notice::PartNotThere));
    }
    there
}

/// What `build` builds behind a door; until then a line on how far the part is.
pub fn place(build: impl Fn(There) -> Vec<El> + 'static) -> El {
    bring();
    let moved = RwSignal::new(false);
    listen("till-morning-later", move || moved.set(true));
    let how_far = move || {
        moved.get();
        sign()
    };
    h("div", "").live_children(how_far, move || match (there(), is_coming()) {
        (Some(there), _) => build(there),
        (None, true) => vec![say(words::PART_COMING)],
        (None, false) => vec![
            say(words::PART_MISSING),
            button("quiet", words::PART_AGAIN, bring),
        ],
    })
}

fn say(words: &str) -> El {
    h("p", "hint").attr("role", "status").text(words)
}
