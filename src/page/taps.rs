//! A choice of few as buttons side by side: one tap, all of it in sight.

use leptos::prelude::*;

/// What can be tapped, and which of it is chosen now: none where nobody has said.
#[component]
pub fn Taps(
    #[prop(into)] id: String,
    label: &'static str,
    /// The taps say it themselves: the label is read out alone where room is short.
    #[prop(optional)]
    is_plain: bool,
    /// In their order; told again whenever they change.
    names: impl Fn() -> Vec<String> + Send + Sync + 'static,
    chosen: impl Fn() -> Option<usize> + Send + Sync + 'static,
    choose: impl Fn(usize) + Send + Sync + 'static,
) -> impl IntoView {
    let names = Memo::new(move |_| names());
    let chosen = Memo::new(move |_| chosen());
    let choose = StoredValue::new(Box::new(choose) as Box<dyn Fn(usize) + Send + Sync>);
    let label_id = format!("{id}-label");
    let span_id = label_id.clone();
    let button = move |(at, name): (usize, String)| {
        let is_chosen = move || chosen.get() == Some(at);
        view! {
            <button
                type="button"
                class="tap"
                aria-pressed=move || is_chosen().to_string()
                on:click=move |_| choose.with_value(|choose| choose(at))
            >
                {name}
            </button>
        }
    };
    let buttons = move || {
        names
            .get()
            .into_iter()
            .enumerate()
            .map(button)
            .collect_view()
    };
    view! {
        <div class="taps" id=id role="group" aria-labelledby=label_id>
            <span class="taps-label" class:plain=is_plain id=span_id>
                {label}
            </span>
            {buttons}
        </div>
    }
}
