//! The language and habits of the device, and the words in them.
//!
//! There is one of these to a page, as there is one document: so it is asked for by
//! name and not handed down through every component.

use super::{
    browser,
    field::{Choice, Tick},
    kit::Fold,
    state::State,
    turns::spawn,
    words,
};
use crate::{
    plan::{part::Choice as _, reader::Language},
    text::{Formatter, Locale, Notice, m, message::Message, patterns},
};
use gloo_storage::{LocalStorage, Storage as _};
use leptos::{prelude::*, reactive::graph::Observer};
use std::{cell::Cell, sync::LazyLock};

thread_local! {
    static FORMATTER: Cell<Option<Memo<Formatter>>> = const { Cell::new(None) };
}

/// What the browser says: its language, and how it writes numbers and times there. Asked
/// once: its tables take a while to open.
static OF_BROWSER: LazyLock<Locale> = LazyLock::new(|| {
    let tag = browser::language();
    Locale {
        decimal_comma: browser::decimal_comma(&tag),
        clock_12h: browser::clock_12h(&tag),
        language: Language::of_tag(&tag),
    }
});

pub fn of_browser() -> Locale {
    *OF_BROWSER
}

/// Where a choice of one's own is kept, for this device and not for the plan.
const KEY: &str = "till-morning.locale.1";

/// From here on the page speaks as was chosen here, or as the browser does, in the units
/// of its plan.
pub fn set_up(state: State) -> RwSignal<Locale> {
    speak(of_page(), state)
}

/// What was chosen here, or what the browser says.
pub fn of_page() -> Locale {
    kept().unwrap_or_else(of_browser)
}

/// The same in a language that is settled: a reader's page may have one of its author's.
pub fn speak(locale: Locale, state: State) -> RwSignal<Locale> {
    let locale = RwSignal::new(locale);
    let units = Memo::new(move |_| state.with_plan(|plan| plan.show));
    let formatter = Memo::new(move |_| Formatter::new(locale.get(), units.get()));
    FORMATTER.set(Some(formatter));
    provide_context(Chosen(locale));
    Effect::new(move || {
        let tag = locale.get().language.tag();
        if let Some(root) = browser::document().document_element() {
            let _ = root.set_attribute("lang", tag);
        }
    });
    locale
}

#[derive(Clone, Copy)]
struct Chosen(RwSignal<Locale>);

/// In a sandboxed frame there is none: the mere look throws.
fn storage() -> Option<web_sys::Storage> {
    browser::window().local_storage().ok()?
}

fn kept() -> Option<Locale> {
    // Not by the crate's own `get`: it panics where the call throws.
    let text = storage()?.get_item(KEY).ok()??;
    serde_json::from_str(&text).ok()
}

/// Language, units, decimal mark and clock: one place for all of it.
#[component]
pub fn LocaleChoice() -> impl IntoView {
    let state = State::here();
    let Chosen(locale) = expect_context();
    let take = move |chosen: Locale| {
        if storage().is_some() {
            let _ = LocalStorage::set(KEY, chosen);
        }
        locale.set(chosen);
    };
    let choose = move |chosen: Locale| {
        if patterns::is_there(chosen.language) {
            return take(chosen);
        }
        spawn(async move {
            if words::bring(chosen.language).await {
                take(chosen);
            } else {
                state.notice.set(Some(Notice::LanguageNotThere));
            }
        });
    };
    let change = move |change: fn(&mut Locale)| {
        let mut locale = locale.get_untracked();
        change(&mut locale);
        choose(locale);
    };
    let languages = || {
        let names = Language::ALL.iter().map(|one| one.own_name().to_owned());
        names.collect()
    };
    let language = move || {
        let now = locale.get().language;
        Language::ALL
            .iter()
            .position(|&one| one == now)
            .unwrap_or(0)
    };
    let speak = move |place: usize| {
        if let Some(&language) = Language::ALL.get(place) {
            let comma = Locale::usual(language).decimal_comma;
            choose(Locale {
                language,
                decimal_comma: comma,
                ..locale.get_untracked()
            });
        }
    };
    view! {
        <Fold class="fold small locale" title=|| say(m::LocaleTitle)>
            <Choice
                id="language"
                label=say(m::LocaleLanguage)
                names=languages
                chosen=language
                choose=speak
            />
            <Tick
                id="us-units"
                label=say(m::UsUnits)
                on=move || state.with_plan(|plan| plan.show.us_units)
                toggle=move || state.edit(|plan| plan.show.us_units = !plan.show.us_units)
            />
            <Tick
                id="decimal-comma"
                label=say(m::LocaleComma)
                on=move || locale.get().decimal_comma
                toggle=move || change(|locale| locale.decimal_comma = !locale.decimal_comma)
            />
            <Tick
                id="clock-12h"
                label=say(m::LocaleClock)
                on=move || locale.get().clock_12h
                toggle=move || change(|locale| locale.clock_12h = !locale.clock_12h)
            />
        </Fold>
    }
}

/// Writes in the page's language and units. Followed where something can follow.
pub fn formatter() -> Formatter {
    let Some(formatter) = FORMATTER.get() else {
        return Formatter::ENGLISH;
    };
    if Observer::get().is_some() {
        formatter.get()
    } else {
        formatter.get_untracked()
    }
}

/// A message in the page's language.
pub fn say<M: Message>(message: M) -> M::Text {
    formatter().say(message)
}
