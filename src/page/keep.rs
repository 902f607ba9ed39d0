//! Where the plan is kept: the browser's storage and the link's fragment.
//!
//! Storage may be missing (a sandboxed frame), full, or damaged: the page then
//! works as it is and says so.

use super::{
    app::example,
    browser::{forget, later, listen, window},
    dom::always,
    reactive::*,
};
use super::{part::There, state::State, turns::spawn};
use crate::{
    pass_on::{NotALink, link_from_plan, plan_from_link},
    plan::{Plan, draft::Draft, open::NotAPlan},
    wording::Notice,
};
use gloo_storage::{LocalStorage, Storage, errors::StorageError};
use std::{cell::Cell, time::Duration};

const KEY: &str = "till-morning.draft.1";
const DAMAGED_KEY: &str = "till-morning.damaged";
/// Rest after a change before the address follows it: browsers allow few
/// changes of the address in a row.
const ADDRESS_REST: Duration = Duration::from_millis(600);

/// What the page opens with.
struct Opened {
    /// The link's plan, or the one kept here.
    draft: Option<Draft>,
    notice: Option<Notice>,
    /// The reader's own draft, when a link brought another.
    own: Option<Draft>,
}

/// Whether a plan may be there to open: the storage holds one, or the address
/// something that may be a link.
pub fn has_something() -> bool {
    let kept = || {
        let storage = window().local_storage().ok()??;
        storage.get_item(KEY).ok()?
    };
    fragment().len() > 1 || kept().is_some()
}

/// A door: opens what is kept or linked in place of the example, and keeps every
/// change from then on. It may come after the first changes have been made.
#[inline(never)]
pub fn open(there: There, state: State) {
    if linked().is_ok_and(|plan| plan.reader.is_some()) {
        // The part came late, and the page for an author stands already.
        let _ = window().location().reload();
        return;
    }
    let opened = opened();
    let example = Draft::of(example());
    let untouched = state.draft.with_untracked(|draft| *draft == example);
    if let Some(own) = opened.own {
        state.remember_other(own);
    }
    match opened.draft {
        Some(draft) if untouched => state.draft.set(draft),
        Some(draft) => state.change(|present| *present = draft),
        None => {}
    }
    state.notice.set(opened.notice);
    // The plan as opened is not written back: a link only looked at, and a storage
    // not yet used, stay as they are.
    keep(there, state, untouched.then(|| state.draft.get_untracked()));
}

fn opened() -> Opened {
    let (own, mut notice) = match stored() {
        Ok(own) => (own, None),
        Err(notice) => (None, Some(notice)),
    };
    match plan_from_link(&fragment()) {
        Ok(plan) if own.as_ref().is_some_and(|own| own.plan.in_full() == plan) => {}
        Ok(plan) => {
            let notice = own.is_some().then_some(Notice::PlanFromLink);
            return Opened {
                draft: Some(Draft::of(plan)),
                notice,
                own,
            };
        }
        Err(NotALink::Absent) => {}
        Err(error) => notice = Some(notice_of(&error)),
    }
    Opened {
        draft: own,
        notice,
        own: None,
    }
}

/// Keeps every change from now on, and follows links opened in this tab.
fn keep(there: There, state: State, as_opened: Option<Draft>) {
    if !has_storage() {
        state.notice.update(|notice| {
            notice.get_or_insert(Notice::StorageMissing);
        });
    }
    let as_opened = Cell::new(as_opened);
    let timer = StoredValue::new(None::<i32>);
    always(move || {
        let draft = state.draft.get();
        if as_opened.take().is_some_and(|opened| opened == draft) {
            return;
        }
        if has_storage() && LocalStorage::set(KEY, &draft).is_err() {
            state.notice.set(Some(Notice::StorageFull));
        }
        if let Some(timer) = timer.get_value() {
            forget(timer);
        }
        let follow = move || set_fragment(&state.plan.with_untracked(|plan| link_of(there, plan)));
        timer.set_value(later(ADDRESS_REST, follow));
    });
    listen("hashchange", move || match plan_from_link(&fragment()) {
        Ok(plan) if plan.reader.is_some() => {
            let _ = window().location().reload();
        }
        Ok(plan)
            if state
                .plan
                .with_untracked(|present| present.in_full() == plan) => {}
        Ok(plan) => state.replace(Draft::of(plan), Notice::PlanFromLink),
        Err(NotALink::Absent) => {}
        Err(error) => state.notice.set(Some(notice_of(&error))),
    });
}

fn notice_of(error: &NotALink) -> Notice {
    match error {
        NotALink::TooLong { .. } => Notice::LinkTooLong,
        NotALink::UnknownVersion { .. } | NotALink::NotAPlan(NotAPlan::UnknownVersion { .. }) => {
            Notice::LinkUnknownVersion
        }
        _ => Notice::LinkDamaged,
    }
}

/// Whether the browser lets this page keep anything: asked first, because in a
/// sandboxed frame the mere look throws.
fn has_storage() -> bool {
    matches!(window().local_storage(), Ok(Some(_)))
}

fn stored() -> Result<Option<Draft>, Notice> {
    if !has_storage() {
        return Err(Notice::StorageMissing);
    }
    match LocalStorage::get::<Draft>(KEY) {
        Ok(draft) => Ok(Some(draft)),
        Err(StorageError::KeyNotFound(_)) => Ok(None),
        Err(_) => {
            // Set aside, so that nothing typed is lost to a reader's fault.
            if let Ok(Some(storage)) = window().local_storage()
                && let Ok(Some(text)) = storage.get_item(KEY)
            {
                let _ = storage.set_item(DAMAGED_KEY, &text);
            }
            Err(Notice::StorageDamaged)
        }
    }
}

fn fragment() -> String {
    window().location().hash().unwrap_or_default()
}

fn set_fragment(link: &str) {
    // Refused in some frames: the plan is then only in the storage.
    if let Ok(history) = window().history() {
        let _ = history.replace_state_with_url(
            &wasm_bindgen::JsValue::NULL,
            "",
            Some(&format!("#{link}")),
        );
    }
}

/// A door: the plan's link, in full; nothing for a plan that no link could carry.
#[inline(never)]
pub fn link_of(_: There, plan: &Plan) -> String {
    link_from_plan(&plan.in_full()).unwrap_or_default()
}

/// The link of a reader's page. Behind a door already, like the two below.
pub fn reader_link_of(_: There, plan: &Plan) -> String {
    link_from_plan(plan).unwrap_or_default()
}

/// The plan in the address.
pub fn linked() -> Result<Plan, NotALink> {
    plan_from_link(&fragment())
}

/// Has the address follow a reader's numbers, where the browser lets it. Nothing
/// else is kept: on somebody's phone the plan of their own stays as it is.
pub fn follow(there: There, plan: impl Fn() -> Plan + 'static, as_opened: Plan) {
    let timer = StoredValue::new(None::<i32>);
    let as_opened = Cell::new(Some(as_opened));
    always(move || {
        let plan = plan();
        if as_opened.take().is_some_and(|opened| opened == plan) {
            return;
        }
        if let Some(timer) = timer.get_value() {
            forget(timer);
        }
        let link = reader_link_of(there, &plan);
        timer.set_value(later(ADDRESS_REST, move || set_fragment(&link)));
    });
}

/// Whether the page stands in a frame of another.
pub fn is_framed() -> bool {
    let own = window();
    // Looking at a frame's parent is refused by nobody, only what is in it.
    own.parent()
        .is_ok_and(|parent| parent.is_some_and(|parent| parent != own))
}

/// The page's own address with a plan in it.
pub fn address_of(link: &str) -> String {
    let href = window().location().href().unwrap_or_default();
    let base = href.split('#').next().unwrap_or_default();
    format!("{base}#{link}")
}

/// Copies a text, and tells whether it could.
pub fn copy(text: String, tell: impl FnOnce(bool) + 'static) {
    spawn(async move {
        let allowed = window().is_secure_context();
        let copied = allowed && {
            let promise = window().navigator().clipboard().write_text(&text);
            wasm_bindgen_futures::JsFuture::from(promise).await.is_ok()
        };
        tell(copied);
    });
}
