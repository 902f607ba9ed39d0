//! Small things that the page's components share.

use leptos::{ev, prelude::*};
use std::sync::Arc;
use wasm_bindgen::JsCast;

/// What `build` builds for a key: thrown away and built anew when the key changes, and
/// only then, so that a field within keeps its focus while numbers change.
pub fn anew<K: Clone + PartialEq + Send + Sync + 'static>(
    key: impl Fn() -> K + Send + Sync + 'static,
    build: impl Fn(K) -> AnyView + Send + Sync + 'static,
) -> AnyView {
    let key = Memo::new(move |_| key());
    let turn = Memo::new(move |before: Option<&usize>| {
        // Read, and not only tracked: a key worked out later would count as a change.
        key.with(|_| ());
        before.map_or(0, |before| before + 1)
    });
    rebuilt(turn, Arc::new(move || build(key.get())))
}

/// Not of any kind of key, so that it is compiled once.
fn rebuilt(turn: Memo<usize>, build: Arc<dyn Fn() -> AnyView + Send + Sync>) -> AnyView {
    // A list of one row: a closure alone would be patched in place, and an open fold
    // in it would keep standing open with nothing in it.
    let build = move |_| untrack(|| build());
    view! { <For each=move || [turn.get()] key=|turn| *turn children=build /> }.into_any()
}

/// A fold whose inside is built when it is first opened.
#[component]
pub fn Fold(
    #[prop(default = "fold")] class: &'static str,
    /// What stands on it.
    #[prop(into)]
    title: ViewFn,
    /// Told when it opens and closes: what is folded away need not be worked out.
    #[prop(optional)]
    open: Option<RwSignal<bool>>,
    #[prop(into, optional)] hidden: Signal<bool>,
    children: ChildrenFn,
) -> impl IntoView {
    let built = RwSignal::new(false);
    let toggle = move |event: ev::Event| {
        let is_open = is_open(&event);
        if is_open && !built.get_untracked() {
            built.set(true);
        }
        if let Some(open) = open {
            open.set(is_open);
        }
    };
    view! {
        <details class=class hidden=hidden on:toggle=toggle>
            <summary>{title.run()}</summary>
            <div class="fold-body">{move || built.get().then(|| children())}</div>
        </details>
    }
}

/// Whether the fold that an event is of is open now.
fn is_open(event: &ev::Event) -> bool {
    let fold = event
        .current_target()
        .and_then(|target| target.dyn_into::<web_sys::Element>().ok());
    fold.is_some_and(|fold| fold.has_attribute("open"))
}

/// A button with its words.
#[component]
pub fn Press(
    #[prop(optional)] class: &'static str,
    #[prop(into)] words: String,
    /// For those whose words are a sign: how it is read out.
    #[prop(into, optional)]
    label: Option<String>,
    #[prop(into, optional)] disabled: Signal<bool>,
    #[prop(into, optional)] hidden: Signal<bool>,
    press: impl Fn() + Send + Sync + 'static,
) -> impl IntoView {
    let press: Box<dyn Fn() + Send + Sync> = Box::new(press);
    view! {
        <button
            type="button"
            class=(!class.is_empty()).then_some(class)
            aria-label=label.clone()
            title=label
            disabled=disabled
            hidden=hidden
            on:click=move |_| press()
        >
            {words}
        </button>
    }
}

/// Sentences as a list.
#[component]
pub fn Sentences(
    class: &'static str,
    all: impl Fn() -> Vec<String> + Send + Sync + 'static,
) -> impl IntoView {
    let all = Memo::new(move |_| all());
    let items = move || {
        all.get()
            .into_iter()
            .map(|text| view! { <li>{text}</li> })
            .collect_view()
    };
    view! { <ul class=class>{items}</ul> }
}
