//! A page for readers: what it leaves open, how it looks, and how to put it into a
//! page of one's own.

use super::{Said, share::copy_it};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    page::{
        browser::window,
        field::{Choice, TextField, Tick, id_of},
        keep,
        kit::{Fold, Press, anew},
        state::State,
    },
    plan::{Path, Plan, Reader, part, reader::MOST_OPEN},
    share::embed,
    text::{Formatter, Locale, maker as words, reader},
};
use leptos::prelude::*;

/// Letters of a title and of a note: what fits above an answer on a phone.
const MOST_TITLE: usize = 80;
const MOST_NOTE: usize = 300;

/// The fold, closed until somebody wants it.
#[component]
pub fn ReaderMaker() -> impl IntoView {
    view! {
        <Fold title=|| say(m::MakerTitle)>
            <Maker />
        </Fold>
    }
}

#[component]
fn Maker() -> impl IntoView {
    let said = Said::new(String::new());
    view! {
        <p class="hint">{say(m::MakerHint)}</p>
        <div>
            <TextField id="reader-title" label=say(m::MakerPageTitle) most=MOST_TITLE place=title_of />
            <TextField id="reader-note" label=say(m::MakerPageNote) most=MOST_NOTE place=note_of />
        </div>
        <OpenFields />
        <Looks />
        <Links said=said />
        <Status said=said />
        <Frames said=said />
    }
}

fn title_of(plan: &mut Plan) -> Option<&mut String> {
    Some(&mut plan.reader.get_or_insert_default().title)
}

fn note_of(plan: &mut Plan) -> Option<&mut String> {
    Some(&mut plan.reader.get_or_insert_default().note)
}

/// What came of a press, near it.
#[component]
fn Status(said: Said) -> impl IntoView {
    view! {
        <p class="said" role="status">
            {said}
        </p>
    }
}

/// A box for each number that may be left open.
#[component]
fn OpenFields() -> impl IntoView {
    let state = State::here();
    let said = Said::new(String::new());
    let fields = move || {
        let paths = state.with_plan(Plan::may_open).into_iter();
        paths
            .map(|path| (path, label(state, path)))
            .collect::<Vec<_>>()
    };
    let boxes = move |fields: Vec<(Path, String)>| {
        let boxes = fields.into_iter();
        let one = |(path, label)| view! { <OpenBox said=said path=path label=label /> };
        boxes.map(one).collect_view().into_any()
    };
    view! {
        <fieldset class="card">
            <legend>{say(m::MakerOpen)}</legend>
            <div class="open-fields">{anew(fields, boxes)}</div>
            <Status said=said />
            <p class="hint">{say(m::MakerOpenAsOne)}</p>
        </fieldset>
    }
}

/// A field's name as its reader will see it.
fn label(state: State, path: Path) -> String {
    state.with_plan(|plan| reader::label(formatter(), &plan.published(), path))
}

#[component]
fn OpenBox(said: Said, path: Path, label: String) -> impl IntoView {
    let state = State::here();
    let toggle = move || {
        let mut open = state.plan_now(Plan::open_fields);
        said.set(String::new());
        if open.contains(&path) {
            // The last one stays: with none open the usual ones would come back.
            if open.len() > 1 {
                open.retain(|one| *one != path);
            }
        } else if open.len() < MOST_OPEN {
            open.push(path);
        } else {
            said.set(words::too_many(formatter()));
        }
        state.edit(|plan| plan.reader.get_or_insert_default().open = open);
    };
    view! {
        <Tick
            id=format!("open-{}", id_of(path))
            label=label
            on=move || state.with_plan(|plan| plan.open_fields().contains(&path))
            toggle=toggle
        />
    }
}

/// Units, looks and language, each a choice with 'as it comes' first.
#[component]
fn Looks() -> impl IntoView {
    view! {
        <div class="grid">
            <Look
                id="reader-units"
                label=say(m::MakerUnits)
                names=words::unit_names
                place=|reader| &mut reader.units
            />
            <Look
                id="reader-theme"
                label=say(m::MakerTheme)
                names=words::theme_names
                place=|reader| &mut reader.theme
            />
            <Look
                id="reader-language"
                label=say(m::MakerLanguage)
                names=words::language_names
                place=|reader| &mut reader.language
            />
        </div>
    }
}

/// A choice of the reader's page; the first name is for none.
#[component]
fn Look<T: part::Choice + Send + Sync>(
    id: &'static str,
    label: &'static str,
    names: fn(Formatter) -> Vec<&'static str>,
    place: fn(&mut Reader) -> &mut Option<T>,
) -> impl IntoView {
    let state = State::here();
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
    view! {
        <Choice
            id=id
            label=label
            names=move || names(formatter()).into_iter().map(str::to_owned).collect()
            chosen=now
            choose=choose
        />
    }
}

/// The link of the page as published; empty for a plan that no link could carry.
fn link(state: State) -> String {
    state.with_plan(|plan| {
        let mut plan = plan.clone();
        plan.reader.get_or_insert_default();
        keep::reader_link_of(&plan.published())
    })
}

#[component]
fn Links(said: Said) -> impl IntoView {
    let state = State::here();
    let address = move || keep::address_of(&link(state));
    view! {
        <div class="buttons">
            <a class="as-button" id="reader-link" target="_blank" rel="noopener" href=address>
                {say(m::MakerSee)}
            </a>
            <Press words=say(m::MakerCopyLink) press=move || copy_it(untrack(address), said) />
        </div>
    }
}

#[component]
fn Frames(said: Said) -> impl IntoView {
    let state = State::here();
    let address = move || {
        let href = window().location().href().unwrap_or_default();
        embed::address(&href, &link(state))
    };
    let frame = move || {
        let title = state.with_plan(|plan| {
            let reader = plan.reader.clone().unwrap_or_default();
            // In the reader's language, where the author knows it.
            let language = reader.language.unwrap_or_else(|| formatter().language());
            let f = Formatter::new(Locale::usual(language), plan.show);
            match reader.title.trim() {
                "" => f.say(m::QuestionRun).to_owned(),
                title => title.to_owned(),
            }
        });
        embed::frame(&address(), &title)
    };
    let script = move || embed::script(&address());
    view! {
        <div>
            <h3>{say(m::MakerFrame)}</h3>
            <p class="hint">{say(m::MakerFrameHint)}</p>
            <Snippet id="reader-frame" text=frame />
            <div class="buttons">
                <Press words=say(m::MakerCopyFrame) press=move || copy_it(untrack(frame), said) />
            </div>
            <p class="hint">{say(m::MakerScriptHint)}</p>
            <Snippet id="reader-script" text=script />
            <div class="buttons">
                <Press words=say(m::MakerCopyScript) press=move || copy_it(untrack(script), said) />
            </div>
            <p>
                <a href="./till-morning.html" download="">
                    {say(m::MakerOneFile)}
                </a>
            </p>
        </div>
    }
}

/// Text to select and copy, for browsers that do not copy.
#[component]
fn Snippet(id: &'static str, text: impl Fn() -> String + Send + Sync + 'static) -> impl IntoView {
    view! {
        <pre class="snippet" tabindex="0">
            <code id=id>{text}</code>
        </pre>
    }
}
