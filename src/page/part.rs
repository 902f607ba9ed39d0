//! The later parts of the wasm: how far they are, and waiting for them.
//!
//! What the first answer does without are two files by themselves, cut off at the doors
//! (`.tools/split`; they are listed in `.tools/finish/parts.mjs`): what reads and writes
//! plans, and the folded questions. No door may be passed before its part is there: each
//! takes a [`There`] or an [`AllThere`], which only this file gives. `offline/later.js`
//! brings them and tells by signs; in the one-file page and in tests there are no such
//! parts, and nothing to wait for.

use super::{
    browser::{document, listen, window},
    kit::{Press, anew},
    state::State,
};
use crate::wording::{Notice, words};
use leptos::prelude::*;
use std::cell::Cell;

/// How far a part is: `coming`, `missing`, or empty once it is there.
fn sign(of: &str) -> String {
    let root = document().document_element();
    root.and_then(|root| root.get_attribute(of))
        .unwrap_or_default()
}

/// The sign of what reads and writes plans.
const KEEPING: &str = "data-keeping";
/// The sign of the folded questions; they come after it.
const LATER: &str = "data-later";

/// What reads and writes plans is there, and stays: what its doors ask for.
#[derive(Clone, Copy)]
pub struct There(());

/// The folded questions are there too.
#[derive(Clone, Copy)]
pub struct AllThere(pub There);

pub fn there() -> Option<There> {
    sign(KEEPING).is_empty().then_some(There(()))
}

fn all_there() -> Option<AllThere> {
    let there = there()?;
    sign(LATER).is_empty().then_some(AllThere(there))
}

/// Neither there nor given up.
fn is_coming() -> bool {
    sign(KEEPING) == "coming"
}

/// Asks for all of it, now or again.
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

/// What `build` builds of the folded questions; until then a line on how far they are.
pub fn place(build: impl Fn(AllThere) -> AnyView + Clone + Send + Sync + 'static) -> AnyView {
    let inside = move |sign: String| match all_there() {
        Some(there) => build(there),
        None if sign == "coming" => {
            view! { <p class="hint" role="status">{words::PART_COMING}</p> }.into_any()
        }
        None => view! {
            <p class="hint" role="status">
                {words::PART_MISSING}
            </p>
            <Press class="quiet" words=words::PART_AGAIN press=bring />
        }
        .into_any(),
    };
    view! { <div>{anew(later_sign(), inside)}</div> }.into_any()
}

/// What `build` builds of the later part, where the page is whole without it: nothing
/// until it is there.
pub fn extra(build: impl Fn(AllThere) -> AnyView + Clone + Send + Sync + 'static) -> AnyView {
    let inside = move |_| all_there().map_or_else(|| ().into_any(), &build);
    view! { <div>{anew(later_sign(), inside)}</div> }.into_any()
}

/// How far the folded questions are, from now on.
fn later_sign() -> impl Fn() -> String + Send + Sync + 'static {
    bring();
    let moved = Trigger::new();
    listen("till-morning-later", move || moved.notify());
    move || {
        moved.track();
        sign(LATER)
    }
}
