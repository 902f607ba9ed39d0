//! Where the plan is kept: the browser's storage and the link's fragment.
//!
//! Storage may be missing (a sandboxed frame), full, or damaged, and each call to it may
//! throw (Firefox does where its file is corrupt): the page then works as it is and says
//! so. Reading by gloo's `get` would panic there. All tabs share one: see
//! [`crate::plan::tabs`].

use super::{
    app::first_plan,
    browser::{document, forget, later, listen, window},
    state::{Shall, State},
    turns::spawn,
};
use crate::{
    plan::{
        Plan, VERSION,
        draft::Draft,
        open::{NotAPlan, shaped},
        tabs::{Stored, Tab},
    },
    share::{NotALink, link_from_plan, plan_from_link},
    text::Notice,
};
use gloo_storage::{SessionStorage, Storage as _};
use leptos::prelude::*;
use serde::de::DeserializeOwned;
use std::{
    cell::{Cell, RefCell},
    rc::Rc,
    time::Duration,
};
use web_sys::Storage;

/// The draft: the newest of all tabs in the storage that they share, and each
/// tab's own in the one that it keeps to itself.
const KEY: &str = "till-morning.draft.1";
/// Another tab's draft, until it is decided which it shall be.
const ASIDE_KEY: &str = "till-morning.aside.1";
/// The link that this tab has put into its address: its own plan, not another's.
const ADDRESS_KEY: &str = "till-morning.address";
/// Marks an entry of the browser's history whose address has this page's own plan.
const OWN_ENTRY: &str = "till-morning.own";
const DAMAGED_KEY: &str = "till-morning.damaged";
/// The steps back of this tab.
const STEPS_KEY: &str = "till-morning.steps.1";
const KEPT_STEPS: usize = 20;
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
    tab: Tab,
}

/// Whether a plan may be there to open: the storage holds one, or the address
/// something that may be a link.
pub fn has_something() -> bool {
    fragment().len() > 1 || read(local(), KEY).is_some()
}

/// Opens what is kept or linked in place of the example, and keeps every change from
/// then on. It may come after the first changes have been made.
pub fn open(state: State) {
    if linked().is_ok_and(|plan| plan.reader.is_some()) {
        // The part came late, and the page for an author stands already.
        let _ = window().location().reload();
        return;
    }
    let opened = opened();
    let first = Draft::of(first_plan());
    let untouched = state.draft.with_untracked(|draft| *draft == first);
    let steps = read(session(), STEPS_KEY).and_then(|text| stored(&text));
    if let Some(steps) = steps {
        state.take_steps(steps);
    }
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
    keep(
        state,
        untouched.then(|| state.draft.get_untracked()),
        opened.tab,
    );
}

fn opened() -> Opened {
    let [own, shared, aside] = [
        read(session(), KEY),
        read(local(), KEY),
        read(local(), ASIDE_KEY),
    ];
    let (tab, text) = Tab::open(Stored {
        own: own.as_deref(),
        shared: shared.as_deref(),
        aside: aside.as_deref(),
    });
    let (own, mut notice) = match text.map(drafted) {
        _ if local().is_none() => (None, Some(Notice::StorageMissing)),
        None => (None, None),
        Some(Some(draft)) => (Some(draft), None),
        Some(None) => (None, Some(Notice::StorageDamaged)),
    };
    let is_ours = read(session(), ADDRESS_KEY).is_some_and(|link| fragment() == format!("#{link}"));
    match plan_from_link(&fragment()) {
        _ if is_ours && own.is_some() => {}
        Ok(plan) if own.as_ref().is_some_and(|own| own.plan.in_full() == plan) => {}
        Ok(plan) => {
            let notice = own.is_some().then_some(Notice::PlanFromLink);
            return Opened {
                draft: Some(Draft::of(plan)),
                notice,
                own,
                tab,
            };
        }
        Err(error) => notice = told(&error).or(notice),
    }
    Opened {
        draft: own,
        notice,
        own: None,
        tab,
    }
}

/// As the storage has it: tabs know each other's drafts by their texts.
fn text_of(draft: &Draft) -> String {
    serde_json::to_string(draft).unwrap_or_default()
}

/// What this page has stored as JSON.
fn stored<T: DeserializeOwned>(text: &str) -> Option<T> {
    shaped(serde_json::from_str(text).ok()?).ok()
}

/// A kept draft; what cannot be read, or is of a later version of the page, is set aside,
/// so that nothing typed is lost to a reader's fault.
fn drafted(text: String) -> Option<Draft> {
    let draft = stored(&text);
    let draft = draft.filter(|draft: &Draft| draft.plan.version == VERSION);
    if draft.is_none() && !write(local(), DAMAGED_KEY, &text) {
        // No room: at least as long as this tab is open.
        let _ = write(session(), DAMAGED_KEY, &text);
    }
    draft
}

/// Keeps every change from now on, and follows links opened in this tab.
fn keep(state: State, as_opened: Option<Draft>, tab: Tab) {
    if local().is_none() {
        state.notice.update(|notice| {
            notice.get_or_insert(Notice::StorageMissing);
        });
    }
    let as_opened = Cell::new(as_opened);
    let timer = StoredValue::new(None::<i32>);
    let tab = Rc::new(RefCell::new(tab));
    mind_other_tabs(state, &tab);
    Effect::new(move || {
        let draft = state.draft.get();
        // The example is looked at and not kept.
        if state.is_example() {
            return;
        }
        keep_steps(state);
        if as_opened.take().is_some_and(|opened| opened == draft) {
            return;
        }
        keep_draft(state, &tab, &draft);
        if let Some(timer) = timer.get_value() {
            forget(timer);
        }
        let follow = move || set_fragment(&state.plan.with_untracked(link_of));
        timer.set_value(later(ADDRESS_REST, follow));
    });
    listen("hashchange", move || match plan_from_link(&fragment()) {
        // Gone back or on to: a place in the page, and no link from somebody. The plan stays.
        _ if is_own_entry() => {
            if !state.is_example() {
                set_fragment(&state.plan.with_untracked(link_of));
            }
        }
        Ok(plan) if plan.reader.is_some() => {
            let _ = window().location().reload();
        }
        Ok(plan)
            if state
                .plan
                .with_untracked(|present| present.in_full() == plan) => {}
        Ok(plan) => state.replace(Draft::of(plan), Notice::PlanFromLink),
        Err(error) => {
            if let Some(notice) = told(&error) {
                state.notice.set(Some(notice));
            }
        }
    });
}

/// Keeps the last steps back, so that a reload does not lose them.
fn keep_steps(state: State) {
    let steps = state.steps();
    let last = &steps[steps.len().saturating_sub(KEPT_STEPS)..];
    if session().is_some() {
        let _ = SessionStorage::set(STEPS_KEY, last);
    }
}

/// Writes the draft; another tab's that stands there is set aside first.
fn keep_draft(state: State, tab: &RefCell<Tab>, draft: &Draft) {
    if local().is_none() {
        return;
    }
    let text = text_of(draft);
    let aside = tab.borrow_mut().write(read(local(), KEY).as_deref(), &text);
    let is_safe = aside.is_none_or(|aside| write(local(), ASIDE_KEY, &aside));
    if !(is_safe && write(local(), KEY, &text)) {
        state.notice.set(Some(Notice::StorageFull));
    }
    let _ = write(session(), KEY, &text);
    state.other_tab.set(tab.borrow().other().is_some());
}

/// Hears of other tabs' changes, and does what is chosen then.
fn mind_other_tabs(state: State, tab: &Rc<RefCell<Tab>>) {
    state.other_tab.set(tab.borrow().other().is_some());
    let hearing = tab.clone();
    listen("storage", move || {
        let own = state.draft.with_untracked(text_of);
        hearing
            .borrow_mut()
            .hear(read(local(), KEY).as_deref(), &own);
        state.other_tab.set(hearing.borrow().other().is_some());
    });
    let tab = tab.clone();
    Effect::new(move || {
        let Some(shall) = state.shall.get() else {
            return;
        };
        state.shall.set(None);
        let other = match shall {
            Shall::Other => tab.borrow_mut().take(),
            Shall::This => tab.borrow_mut().keep(),
        };
        // Decided, or one undo away: and the other tab hears that it is so.
        let own = state.draft.with_untracked(text_of);
        let aside = read(local(), ASIDE_KEY);
        if aside.is_some() && (aside == other || aside.as_deref() == Some(&own)) {
            remove(local(), ASIDE_KEY);
        }
        match shall {
            Shall::Other => {
                if let Some(draft) = other.and_then(drafted) {
                    state.replace(draft, Notice::OtherTabTaken);
                }
            }
            Shall::This => state
                .draft
                .with_untracked(|draft| keep_draft(state, &tab, draft)),
        }
        state.other_tab.set(tab.borrow().other().is_some());
    });
}

/// What is said of a fragment that gives no plan.
fn told(error: &NotALink) -> Option<Notice> {
    match error {
        NotALink::Absent => None,
        NotALink::NotOurs if is_place(fragment().trim_start_matches('#')) => None,
        NotALink::NotOurs => Some(Notice::NotALink),
        NotALink::TooLong { .. } => Some(Notice::LinkTooLong),
        NotALink::UnknownVersion { .. } | NotALink::NotAPlan(NotAPlan::UnknownVersion { .. }) => {
            Some(Notice::LinkUnknownVersion)
        }
        _ => Some(Notice::LinkDamaged),
    }
}

/// Whether it names a place in the page. While the page opens it is not there yet:
/// its questions are known by their names.
fn is_place(name: &str) -> bool {
    name.starts_with("question-") || document().get_element_by_id(name).is_some()
}

/// What all tabs share. In a sandboxed frame there is none: the mere look throws.
fn local() -> Option<Storage> {
    window().local_storage().ok()?
}

/// What this tab keeps to itself, through a reload.
fn session() -> Option<Storage> {
    window().session_storage().ok()?
}

fn read(storage: Option<Storage>, key: &str) -> Option<String> {
    storage?.get_item(key).ok()?
}

/// Whether it could be written.
fn write(storage: Option<Storage>, key: &str, text: &str) -> bool {
    storage.is_some_and(|storage| storage.set_item(key, text).is_ok())
}

fn remove(storage: Option<Storage>, key: &str) {
    let _ = storage.map(|storage| storage.remove_item(key));
}

fn fragment() -> String {
    window().location().hash().unwrap_or_default()
}

fn set_fragment(link: &str) {
    // Refused in some frames: the plan is then only in the storage.
    if let Ok(history) = window().history() {
        let _ = history.replace_state_with_url(&OWN_ENTRY.into(), "", Some(&format!("#{link}")));
        let _ = write(session(), ADDRESS_KEY, link);
    }
}

/// Whether this page itself has put the plan into the address of this entry of the history.
fn is_own_entry() -> bool {
    let state = window().history().and_then(|history| history.state());
    state.is_ok_and(|state| state.as_string().as_deref() == Some(OWN_ENTRY))
}

/// The plan's link, in full; nothing for a plan that no link could carry.
pub fn link_of(plan: &Plan) -> String {
    link_from_plan(&plan.in_full()).unwrap_or_default()
}

/// The link of a reader's page.
pub fn reader_link_of(plan: &Plan) -> String {
    link_from_plan(plan).unwrap_or_default()
}

/// The plan in the address.
pub fn linked() -> Result<Plan, NotALink> {
    plan_from_link(&fragment())
}

/// Has the address follow a reader's numbers, where the browser lets it. Nothing
/// else is kept: on somebody's phone the plan of their own stays as it is.
pub fn follow(plan: impl Fn() -> Plan + 'static, as_opened: Plan) {
    let timer = StoredValue::new(None::<i32>);
    let as_opened = Cell::new(Some(as_opened));
    Effect::new(move || {
        let plan = plan();
        if as_opened.take().is_some_and(|opened| opened == plan) {
            return;
        }
        if let Some(timer) = timer.get_value() {
            forget(timer);
        }
        let link = reader_link_of(&plan);
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
