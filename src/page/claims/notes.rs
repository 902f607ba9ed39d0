//! The same from hand-noted figures.

use super::into::ModeButtons;
use crate::page::locale::{formatter, say};
use crate::text::m;
use crate::{
    answer::log::{self, Note, NoteField},
    page::kit::Fold,
    text::claims as say,
};
use leptos::prelude::*;

/// Start, end, average, minutes; into a mode in one tap.
#[component]
pub fn Notebook() -> impl IntoView {
    let note = RwSignal::new(Note::default());
    let said = RwSignal::new("");
    let fields = move || {
        let fields = NoteField::ALL.iter();
        let one = |&field| view! { <NoteInput note=note field=field /> };
        fields.map(one).collect_view()
    };
    let figures = move || log::noted(&note.get());
    let text = move || figures().map_or_else(String::new, |f| say::noted_sentence(formatter(), &f));
    let stretch = move || figures().map(|figures| figures.as_stretch());
    view! {
        <Fold title=|| say(m::LogNotes)>
            <p class="hint">{say(m::LogNotesHint)}</p>
            <div class="grid">{fields()}</div>
            <p class="detail" role="status">
                {text}
            </p>
            <ModeButtons figures=stretch words=|name| say::make_noted(formatter(), name) said=said />
            <p class="hint" role="status">
                {said}
            </p>
        </Fold>
    }
}

#[component]
fn NoteInput(note: RwSignal<Note>, field: NoteField) -> impl IntoView {
    let id = format!("note-{}", field.key());
    let error_id = format!("{id}-error");
    let wrong = RwSignal::new(false);
    let typed = move |event| {
        let read = field.read(&event_target_value(&event));
        wrong.set(read.is_err());
        note.update(|note| note.set(field, read.unwrap_or(None)));
    };
    let error = move || {
        if wrong.get() {
            say::note_trouble(formatter(), field)
        } else {
            String::new()
        }
    };
    view! {
        <div class="field" class:wrong=move || wrong.get()>
            <label for=id.clone()>{say::note_label(formatter(), field)}</label>
            <span class="entry">
                <input
                    id=id
                    type="text"
                    autocomplete="off"
                    inputmode="decimal"
                    aria-describedby=error_id.clone()
                    on:input=typed
                />
                <span class="unit">{say::note_unit(formatter(), field)}</span>
            </span>
            <p class="error" id=error_id>
                {error}
            </p>
        </div>
    }
}
