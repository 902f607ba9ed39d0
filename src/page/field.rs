//! Fields: a label, a text, its unit, where it came from, and what is wrong.

use super::state::State;
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    plan::{Figure, Path, Plan, Provenance, draft::Draft},
    range::Unit,
    text::{self},
};
use leptos::prelude::*;

/// A stable id for a field's parts, from its address.
pub fn id_of(path: Path) -> String {
    let safe = |c: char| if c.is_ascii_alphanumeric() { c } else { '-' };
    path.to_string().chars().map(safe).collect()
}

/// How a field looks where it stands.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Look {
    #[default]
    Plain,
    /// Larger, for the numbers to start from.
    Large,
    /// Large with no words under it, for rows.
    Row,
    /// Its label for those who do not see it alone: it stands beside what says it.
    Bare,
}

/// Everything of a field that may change: a key wakes only what differs.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shown {
    pub text: String,
    pub placeholder: String,
    /// The unit beside it.
    pub sign: &'static str,
    /// Empty where nothing is wrong.
    pub error: String,
    pub echo: String,
}

impl Shown {
    fn of(draft: &Draft, path: Path) -> Self {
        let _units = draft.plan.show;
        let sign = draft.unit_beside(path);
        let troubled = draft.trouble(path).is_some();
        let echo = draft.echo(path);
        Self {
            text: draft.text(path),
            placeholder: draft.default_text(path),
            sign: sign.map_or("", |unit| formatter().sign(unit)),
            error: match draft.wanted(path) {
                Some(wanted) if troubled => text::entry_trouble(formatter(), path, wanted),
                _ => String::new(),
            },
            echo: echo.map_or_else(String::new, |echo| text::echo_sentence(formatter(), echo)),
        }
    }

    fn is_wrong(&self) -> bool {
        !self.error.is_empty()
    }
}

/// A number of the plan.
///
/// The text is the truth while typing; it is written out plainly on leaving.
#[component]
pub fn NumberField(
    path: Path,
    /// Keeps the ids apart where the page has the number twice.
    #[prop(optional)]
    at: &'static str,
    #[prop(optional)] look: Look,
) -> impl IntoView {
    let state = State::here();
    let shown = Memo::new(move |_| state.with_draft(|draft| Shown::of(draft, path)));
    let (hint, meaning) = match look {
        Look::Row | Look::Bare => ("", None),
        Look::Plain | Look::Large => (
            text::field_hint(formatter(), path),
            text::field_meaning(formatter(), path),
        ),
    };
    view! {
        <Entry
            path=path
            id=format!("{at}{}", id_of(path))
            label=text::field_label(formatter(), path)
            hint=hint
            meaning=meaning
            is_large=matches!(look, Look::Large | Look::Row)
            is_bare=look == Look::Bare
            shown=shown
            typed=move |text: String| state.type_text(path, &text)
        >
            <OriginMark path=path />
        </Entry>
    }
}

/// The parts of a number's field, whatever language they are in.
#[component]
pub fn Entry(
    path: Path,
    id: String,
    #[prop(into)] label: String,
    hint: &'static str,
    /// One sentence for who does not know the term: a tap away.
    meaning: Option<&'static str>,
    is_large: bool,
    /// Its label is read out and not seen.
    #[prop(optional)]
    is_bare: bool,
    shown: Memo<Shown>,
    typed: impl Fn(String) + Send + Sync + 'static,
    /// What stands after the unit.
    #[prop(optional)]
    children: Option<Children>,
) -> impl IntoView {
    let state = State::here();
    let (error_id, hint_id) = (format!("{id}-error"), format!("{id}-hint"));
    let described = {
        let (error_id, hint_id) = (error_id.clone(), hint_id.clone());
        move || {
            let error = shown.with(Shown::is_wrong).then_some(&*error_id);
            let hint = (!hint.is_empty()).then_some(&*hint_id);
            let ids: Vec<&str> = [error, hint].into_iter().flatten().collect();
            (!ids.is_empty()).then(|| ids.join(" "))
        }
    };
    let typed: Box<dyn Fn(String) + Send + Sync> = Box::new(typed);
    let is_told = RwSignal::new(false);
    let meaning_id = format!("{id}-meaning");
    let mark = meaning.map(|_| {
        let question = say(m::MeaningQuestion { field: &label });
        view! { <MeaningMark question=question told=is_told controls=meaning_id.clone() /> }
    });
    let meaning = meaning.map(|meaning| {
        view! {
            <p class="meaning" id=meaning_id hidden=move || !is_told.get()>
                {meaning}
            </p>
        }
    });
    view! {
        <div
            class="field"
            class:large=is_large
            class:bare=is_bare
            class:wrong=move || shown.with(Shown::is_wrong)
        >
            <span class="label-line">
                <label for=id.clone()>
                    {label}
                    <span class="unit-in-label">
                        {move || shown.with(|shown| text::unit_in_label(shown.sign))}
                    </span>
                </label>
                {mark}
            </span>
            {meaning}
            <span class="entry">
                <input
                    id=id
                    type="text"
                    autocomplete="off"
                    spellcheck="false"
                    inputmode=keyboard(path)
                    placeholder=move || shown.with(|shown| shown.placeholder.clone())
                    aria-invalid=move || shown.with(Shown::is_wrong).then_some("true")
                    aria-describedby=described
                    prop:value=move || shown.with(|shown| shown.text.clone())
                    on:input=move |event| typed(event_target_value(&event))
                    on:blur=move |_| state.settle(path)
                />
                <span class="unit" aria-hidden="true">
                    {move || shown.with(|shown| shown.sign)}
                </span>
                {children.map(|children| children())}
            </span>
            <p class="error" id=error_id>
                {move || shown.with(|shown| shown.error.clone())}
            </p>
            <p class="echo">{move || shown.with(|shown| shown.echo.clone())}</p>
            {(!hint.is_empty()).then(|| view! { <p class="hint" id=hint_id>{hint}</p> })}
        </div>
    }
}

/// Opens and shuts the sentence that says what a term means.
#[component]
fn MeaningMark(question: String, told: RwSignal<bool>, controls: String) -> impl IntoView {
    view! {
        <button
            type="button"
            class="meaning-mark"
            aria-label=question.clone()
            title=question
            aria-expanded=move || told.get().to_string()
            aria-controls=controls
            on:click=move |_| told.update(|told| *told = !*told)
        >
            "?"
        </button>
    }
}

/// The keyboard that a phone shows for a number.
pub fn keyboard(path: Path) -> Option<&'static str> {
    match path.range() {
        // Negative numbers need a keyboard with a minus, which `decimal` may lack.
        Some(range) if range.min < 0.0 || range.unit == Unit::ClockMinute => None,
        // `45 A`, `2x100` and `240 cfm` are invited: they need letters.
        _ if path.invites_letters() => None,
        Some(range) if range.unit == Unit::Count => Some("numeric"),
        _ => Some("decimal"),
    }
}

/// What a number's origin is now.
#[derive(Clone, Debug, PartialEq)]
struct Known {
    from: Provenance,
    is_stated: bool,
    /// The origin with its spread.
    mark: String,
}

/// Where a number comes from: a choice of three. A number left to its default
/// has no origin to choose, only one to show. Choices and counts have none.
#[component]
fn OriginMark(path: Path) -> impl IntoView {
    let state = State::here();
    if !state.plan_now(|plan| plan.has_origin(plan.kept_at(path))) {
        return None;
    }
    let known = Memo::new(move |_| {
        state.with_plan(|plan| {
            let path = plan.kept_at(path);
            let figure = plan.figure(path)?;
            Some(Known {
                from: figure.from,
                is_stated: plan.stated(path).is_some(),
                mark: text::origin_mark(formatter(), path, figure),
            })
        })
    });
    let is_stated = move || known.with(|known| known.as_ref().is_some_and(|known| known.is_stated));
    let mark = move || known.with(|known| known.as_ref().map(|known| known.mark.clone()));
    let name = move || {
        known.with(|known| {
            known
                .as_ref()
                .map_or("", |known| text::origin_name(formatter(), known.from))
        })
    };
    let choose = move |event| {
        let name = event_target_value(&event);
        let chosen = Provenance::ALL
            .into_iter()
            .find(|&origin| text::origin_name(formatter(), origin) == name);
        state.edit(|plan| {
            let path = plan.kept_at(path);
            if let (Some(from), Some(figure)) = (chosen, plan.figure(path)) {
                let spread_percent = None;
                plan.set_figure(
                    path,
                    Figure {
                        from,
                        spread_percent,
                        ..figure
                    },
                );
            }
        });
    };
    let options = Provenance::ALL
        .map(|from| text::origin_name(formatter(), from))
        .map(|name| view! { <option value=name>{name}</option> })
        .collect_view();
    Some(view! {
        <span class="origins">
            <select
                class="origin"
                aria-label=text::origin_question(formatter(), path)
                hidden=move || !is_stated()
                title=mark
                prop:value=name
                on:change=choose
            >
                {options}
            </select>
            <span
                class="origin"
                hidden=move || is_stated() || known.with(Option::is_none)
                title=mark
            >
                {say(m::AssumedMark)}
            </span>
        </span>
    })
}

/// A place in the plan for a text.
type TextPlace = Box<dyn Fn(&mut Plan) -> Option<&mut String> + Send + Sync>;

/// A text of the user's own.
#[component]
pub fn TextField(
    #[prop(into)] id: String,
    label: &'static str,
    /// So many letters at the most.
    #[prop(default = 60)]
    most: usize,
    place: impl Fn(&mut Plan) -> Option<&mut String> + Send + Sync + 'static,
) -> impl IntoView {
    let state = State::here();
    let place: StoredValue<TextPlace> = StoredValue::new(Box::new(place));
    // Read through the same lens that writes: a copy is cheap beside an answer.
    let text = Memo::new(move |_| {
        let mut plan = state.plan.get();
        place.with_value(|place| place(&mut plan).cloned().unwrap_or_default())
    });
    let write = move |event| {
        let text = event_target_value(&event);
        state.rename(|plan| {
            place.with_value(|place| {
                if let Some(place) = place(plan) {
                    *place = text;
                }
            });
        });
    };
    view! {
        <div class="field name">
            <label for=id.clone()>{label}</label>
            <input
                id=id
                type="text"
                autocomplete="off"
                maxlength=most
                prop:value=move || text.get()
                on:input=write
            />
        </div>
    }
}

/// A choice of few, by place in the list.
#[component]
pub fn Choice(
    #[prop(into)] id: String,
    label: &'static str,
    /// Told again whenever they change.
    names: impl Fn() -> Vec<String> + Send + Sync + 'static,
    chosen: impl Fn() -> usize + Send + Sync + 'static,
    choose: impl Fn(usize) + Send + Sync + 'static,
) -> impl IntoView {
    let names = Memo::new(move |_| names());
    let chosen = Memo::new(move |_| chosen());
    let choose: Box<dyn Fn(usize) + Send + Sync> = Box::new(choose);
    let options = move || {
        let names = names.get().into_iter().enumerate();
        let option = |(at, name): (usize, String)| {
            view! { <option value=at.to_string() selected=move || chosen.get() == at>{name}</option> }
        };
        names.map(option).collect_view()
    };
    let change = move |event: leptos::ev::Event| {
        if let Ok(at) = event_target_value(&event).parse() {
            choose(at);
        }
        // A choice that was not taken, or not yet, leaves the list as it was.
        let list = event_target::<web_sys::HtmlSelectElement>(&event);
        list.set_value(&chosen.get_untracked().to_string());
    };
    view! {
        <div class="field choice">
            <label for=id.clone()>{label}</label>
            <select id=id prop:value=move || chosen.get().to_string() on:change=change>
                {options}
            </select>
        </div>
    }
}

/// A box to tick.
#[component]
pub fn Tick(
    #[prop(into)] id: String,
    #[prop(into)] label: String,
    on: impl Fn() -> bool + Send + Sync + 'static,
    toggle: impl Fn() + Send + Sync + 'static,
) -> impl IntoView {
    let on = Memo::new(move |_| on());
    let toggle: Box<dyn Fn() + Send + Sync> = Box::new(toggle);
    let change = move |event: leptos::ev::Event| {
        toggle();
        // A change that was not taken leaves the box as it was.
        event_target::<web_sys::HtmlInputElement>(&event).set_checked(on.get_untracked());
    };
    view! {
        <label class="check">
            <input type="checkbox" id=id prop:checked=move || on.get() on:change=change />
            {label}
        </label>
    }
}
