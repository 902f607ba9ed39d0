//! The same from hand-noted figures.

use super::into;
use crate::{
    answer::log::{self, Note, NoteField},
    page::{
        dom::{El, h, named_fold, text_of},
        reactive::*,
        state::State,
    },
    wording::claims::{self as say, words},
};

/// Start, end, average, minutes; into a mode in one tap.
pub fn notes(state: State) -> El {
    let note = RwSignal::new(Note::default());
    let said = RwSignal::new("");
    named_fold("fold", words::NOTES, move || {
        let fields = NoteField::ALL.iter().map(|&field| one(note, field));
        let figures = move || log::noted(&note.get());
        let text = move || figures().map_or_else(String::new, |f| say::noted_sentence(&f));
        let stretch = move || figures().map(|figures| figures.as_stretch());
        vec![
            h("p", "hint").text(words::NOTES_HINT),
            h("div", "grid").children(fields),
            h("p", "detail").attr("role", "status").live_text(text),
            h("p", "hint").text(words::INTO),
            into::mode_buttons(state, stretch, say::make_noted, said),
            h("p", "hint")
                .attr("role", "status")
                .live_text(move || said.get().into()),
        ]
    })
}

fn one(note: RwSignal<Note>, field: NoteField) -> El {
    let id = format!("note-{}", field.key());
    let error_id = format!("{id}-error");
    let wrong = RwSignal::new(false);
    let input = h("input", "")
        .attr("id", &id)
        .attr("type", "text")
        .attr("autocomplete", "off")
        .attr("inputmode", "decimal")
        .attr("aria-describedby", &error_id)
        .on("input", move |event| {
            let read = field.read(&text_of(&event));
            wrong.set(read.is_err());
            note.update(|note| note.set(field, read.unwrap_or(None)));
        });
    h("div", "field")
        .live_class("wrong", move || wrong.get())
        .child(h("label", "").attr("for", &id).text(say::note_label(field)))
        .child(
            h("span", "entry")
                .child(input)
                .child(h("span", "unit").text(say::note_unit(field))),
        )
        .child(h("p", "error").attr("id", &error_id).live_text(move || {
            if wrong.get() {
                say::note_trouble(field)
            } else {
                String::new()
            }
        }))
}
