//! A page for readers: what it leaves open, how it looks, and how to put it into a
//! page of one's own.

use super::{
    super::{
        browser::window,
        dom::{El, always, button, h, named_fold, set_attr},
        field::{choice, text_field, tick},
        keep,
        part::There,
        reactive::*,
        state::State,
    },
    Said,
};
use crate::{
    pass_on::embed,
    plan::{
        Path, Plan, Reader,
        part::Choice,
        reader::{Language, MOST_OPEN, Theme, Units},
    },
    wording::{
        hand_on as said_words, maker as words,
        reader::{Table, table},
    },
};

/// Letters of a title and of a note: what fits above an answer on a phone.
const MOST_TITLE: usize = 80;
const MOST_NOTE: usize = 300;

/// The fold, closed until somebody wants it.
pub fn reader_maker(there: There, state: State) -> El {
    named_fold("fold", words::TITLE, move || {
        let said = RwSignal::new(String::new());
        vec![
            h("p", "hint").text(words::HINT),
            texts(state),
            open_fields(state),
            looks(state),
            links(there, state, said),
            status(said),
            frames(there, state, said),
        ]
    })
}

fn texts(state: State) -> El {
    fn title(plan: &mut Plan) -> Option<&mut String> {
        Some(&mut plan.reader.get_or_insert_default().title)
    }
    fn note(plan: &mut Plan) -> Option<&mut String> {
        Some(&mut plan.reader.get_or_insert_default().note)
    }
    let title = text_field(state, "reader-title", words::PAGE_TITLE, MOST_TITLE, title);
    let note = text_field(state, "reader-note", words::PAGE_NOTE, MOST_NOTE, note);
    h("div", "").child(title).child(note)
}

/// A box for each number that may be left open.
fn open_fields(state: State) -> El {
    let said = RwSignal::new(String::new());
    let key = move || {
        let paths = state.with_plan(Plan::may_open);
        paths
            .iter()
            .map(|path| label(state, *path))
            .collect::<String>()
    };
    let boxes = h("div", "open-fields").live_children(key, move || {
        let paths = state.with_plan(Plan::may_open);
        paths
            .into_iter()
            .map(|path| open_box(state, said, path))
            .collect()
    });
    h("fieldset", "card")
        .child(h("legend", "").text(words::OPEN))
        .child(boxes)
        .child(status(said))
        .child(h("p", "hint").text(words::OPEN_AS_ONE))
}

/// What came of a press, near it.
fn status(said: Said) -> El {
    h("p", "said")
        .attr("role", "status")
        .live_text(move || said.get())
}

/// A field's name as its reader will see it.
fn label(state: State, path: Path) -> String {
    let english: &Table = table(Language::English);
    state.with_plan(|plan| (english.label)(&plan.published(), path))
}

fn open_box(state: State, said: Said, path: Path) -> El {
    let is_open = move || state.with_plan(|plan| plan.open_fields().contains(&path));
    let toggle = move || {
        let mut open = untrack(|| state.with_plan(Plan::open_fields));
        said.set(String::new());
        if open.contains(&path) {
            // The last one stays: with none open the usual ones would come back.
            if open.len() > 1 {
                open.retain(|one| *one != path);
            }
        } else if open.len() < MOST_OPEN {
            open.push(path);
        } else {
            said.set(words::too_many());
        }
        state.edit(|plan| plan.reader.get_or_insert_default().open = open);
    };
    let id = format!("open-{}", super::super::field::id_of(path));
    tick(&id, &untrack(|| label(state, path)), is_open, toggle)
}

/// Units, looks and language, each a choice with 'as it comes' first.
fn looks(state: State) -> El {
    h("div", "grid")
        .child(chosen(
            state,
            ("reader-units", words::UNITS, words::UNIT_NAMES),
            |reader| &mut reader.units as &mut Option<Units>,
        ))
        .child(chosen(
            state,
            ("reader-theme", words::THEME, words::THEME_NAMES),
            |reader| &mut reader.theme as &mut Option<Theme>,
        ))
        .child(chosen(
            state,
            ("reader-language", words::LANGUAGE, words::LANGUAGE_NAMES),
            |reader| &mut reader.language as &mut Option<Language>,
        ))
}

/// A choice of the reader's page; the first name is for none.
fn chosen<T: Choice>(
    state: State,
    (id, label, names): (&str, &str, [&'static str; 3]),
    place: fn(&mut Reader) -> &mut Option<T>,
) -> El {
    let now = move || {
        let mut reader = state.with_plan(|plan| plan.reader.clone().unwrap_or_default());
        let one = *place(&mut reader);
        one.and_then(|one| T::ALL.iter().position(|other| *other == one))
            .map_or(0, |at| at + 1)
    };
    let choose = move |at: usize| {
        let one = at.checked_sub(1).and_then(|at| T::ALL.get(at)).copied();
        state.edit(|plan| *place(plan.reader.get_or_insert_default()) = one);
    };
    choice(
        id,
        label,
        move || names.map(str::to_owned).to_vec(),
        now,
        choose,
    )
}

/// The link of the page as published; empty for a plan that no link could carry.
fn link(there: There, state: State) -> String {
    state.with_plan(|plan| {
        let mut plan = plan.clone();
        plan.reader.get_or_insert_default();
        keep::reader_link_of(there, &plan.published())
    })
}

fn links(there: There, state: State, said: Said) -> El {
    let address = move || keep::address_of(&link(there, state));
    let see = h("a", "as-button")
        .attr("id", "reader-link")
        .attr("target", "_blank")
        .attr("rel", "noopener")
        .text(words::SEE);
    let element = see.0.clone();
    always(move || set_attr(&element, "href", Some(&address())));
    h("div", "buttons")
        .child(see)
        .child(button("", words::COPY_LINK, move || {
            copy(untrack(address), said)
        }))
}

fn copy(text: String, said: Said) {
    keep::copy(text, move |copied| {
        let word = if copied {
            said_words::COPIED
        } else {
            said_words::NOT_COPIED
        };
        said.set(word.into());
    });
}

fn frames(there: There, state: State, said: Said) -> El {
    let address = move || {
        let href = window().location().href().unwrap_or_default();
        embed::address(&href, &link(there, state))
    };
    let frame = move || {
        let title = state.with_plan(|plan| {
            let reader = plan.reader.clone().unwrap_or_default();
            let say = table(reader.language.unwrap_or(Language::English));
            match reader.title.trim() {
                "" => say.texts.usual_title.to_owned(),
                title => title.to_owned(),
            }
        });
        embed::frame(&address(), &title)
    };
    let script = move || embed::script(&address());
    let one_file = h("a", "")
        .attr("href", "./till-morning.html")
        .attr("download", "")
        .text(words::ONE_FILE);
    h("div", "")
        .child(h("h3", "").text(words::FRAME))
        .child(h("p", "hint").text(words::FRAME_HINT))
        .child(snippet("reader-frame", frame))
        .child(
            h("div", "buttons").child(button("", words::COPY_FRAME, move || {
                copy(untrack(frame), said);
            })),
        )
        .child(h("p", "hint").text(words::SCRIPT_HINT))
        .child(snippet("reader-script", script))
        .child(
            h("div", "buttons").child(button("", words::COPY_SCRIPT, move || {
                copy(untrack(script), said);
            })),
        )
        .child(h("p", "").child(one_file))
}

/// Text to select and copy, for browsers that do not copy.
fn snippet(id: &str, text: impl Fn() -> String + 'static) -> El {
    h("pre", "snippet")
        .attr("tabindex", "0")
        .child(h("code", "").attr("id", id).live_text(text))
}
