//! The language and habits of the device, and the words in them.
//!
//! There is one of these to a page, as there is one document: so it is asked for by
//! name and not handed down through every component.

use super::{browser, state::State};
use crate::{
    plan::reader::Language,
    text::{Formatter, Locale, message::Message},
};
use leptos::{prelude::*, reactive::graph::Observer};
use std::cell::Cell;

thread_local! {
    static FORMATTER: Cell<Option<Memo<Formatter>>> = const { Cell::new(None) };
}

/// What the browser says: its language, and how it writes numbers and times there.
pub fn of_browser() -> Locale {
    let tag = browser::language();
    Locale {
        decimal_comma: browser::decimal_comma(&tag),
        clock_12h: browser::clock_12h(&tag),
        language: Language::of_tag(&tag),
    }
}

/// From here on the page speaks so, in the units of its plan.
pub fn set_up(locale: Signal<Locale>, state: State) {
    let units = Memo::new(move |_| state.with_plan(|plan| plan.show));
    let formatter = Memo::new(move |_| Formatter::new(locale.get(), units.get()));
    FORMATTER.set(Some(formatter));
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
