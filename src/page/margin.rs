//! What stands beside the questions: notices and cautions.

use super::{
    browser::window,
    kit::Press,
    state::{Shall, State},
};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::{self, Caution},
    text::{self, CautionText},
};
use leptos::prelude::*;

/// What happened to the document, and the way to a newer version.
#[component]
pub fn Notices() -> impl IntoView {
    let state = State::here();
    let dismiss = move || state.notice.set(None);
    let happened = move || {
        let notice = state.notice.get()?;
        Some(view! {
            <p class="notice" id="notice">
                {text::notice_sentence(formatter(), notice)}
                <Press class="quiet" words=say(m::Dismiss) press=dismiss />
            </p>
        })
    };
    let other_tab = move || {
        let take = move || state.shall.set(Some(Shall::Other));
        let keep = move || state.shall.set(Some(Shall::This));
        state.other_tab.get().then(|| {
            view! {
                <p class="notice" id="other-tab">
                    {say(m::OtherTab)}
                    <Press words=say(m::UseOtherTab) press=take />
                    <Press words=say(m::KeepThisTab) press=keep />
                </p>
            }
        })
    };
    let update = move || {
        state.update.get().then(|| {
            view! {
                <p class="notice" id="update-notice">
                    {say(m::UpdateWaits)}
                    <Press words=say(m::Reload) press=reload />
                </p>
            }
        })
    };
    view! {
        <div role="status" aria-live="polite">
            {happened}
            {other_tab}
            {update}
        </div>
    }
}

/// Says that the example is shown, and leads back to one's own plan.
#[component]
pub fn ExampleBar() -> impl IntoView {
    let state = State::here();
    let bar = move || {
        state.is_example().then(|| {
            view! {
                <p class="notice" id="example">
                    {say(m::ExampleShown)}
                    <Press words=say(m::ExampleLeave) press=move || state.leave_example() />
                    <Press class="quiet" words=say(m::ExampleTake) press=move || state.take_example() />
                </p>
            }
        })
    };
    view! { <div role="status">{bar}</div> }
}

/// Stands ready, hidden: where the page's own code has failed, nothing of it could be
/// drawn any more. `offline/broken.js` shows it and minds its buttons.
#[component]
pub fn Broken() -> impl IntoView {
    view! {
        <div class="notice broken" id="broken" role="alert" hidden=true>
            <h2>{say(m::BrokenTitle)}</h2>
            <p>{say(m::BrokenKept)}</p>
            <label>{say(m::BrokenLink)} <input class="broken-link" readonly=true /></label>
            <p>{say(m::BrokenTyped)} " " <output class="broken-typed"></output></p>
            <button type="button" class="broken-reload">
                {say(m::BrokenReload)}
            </button>
            <button type="button" class="quiet broken-empty">
                {say(m::BrokenEmpty)}
            </button>
            <p class="hint">{say(m::BrokenEmptyHint)}</p>
        </div>
    }
}

fn reload() {
    if let Ok(event) = web_sys::Event::new("till-morning-reload") {
        let _ = window().dispatch_event(&event);
    }
}

/// Those of this plan, each with its source. What always holds stands beside them
/// before the later part is there.
#[component]
pub fn Cautions() -> impl IntoView {
    let state = State::here();
    let said = Memo::new(move |_| {
        state.with_plan(|plan| {
            let all = answer::cautions(plan).into_iter();
            let all = all.filter(|&one| one != Caution::Estimates);
            all.map(|one| text::caution_text(formatter(), plan, one))
                .collect::<Vec<_>>()
        })
    });
    let one = |caution| view! { <li>{caution_view(caution)}</li> };
    let list = move || said.get().into_iter().map(one).collect_view();
    view! { <ul class="cautions">{list}</ul> }
}

/// A caution, its source, and its English beside a translation.
pub fn caution_view(caution: CautionText) -> AnyView {
    let CautionText {
        text,
        english,
        source,
    } = caution;
    let source = (!source.is_empty()).then(|| view! { <cite>{text::in_brackets(source)}</cite> });
    let english = english.map(|english| {
        view! {
            <small class="in-english" lang="en">
                {english}
            </small>
        }
    });
    view! {
        {text}
        " "
        {source}
        {english}
    }
    .into_any()
}
