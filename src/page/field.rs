//! Fields: a label, a text, its unit, where it came from, and what is wrong.

use super::state::State;
use crate::{
    plan::{Origin, Path, draft::Echo},
    range::Unit,
    spread, wording,
};
use leptos::prelude::*;

/// A stable id for a field's parts, from its address.
pub fn id_of(path: Path) -> String {
    let safe = |c: char| if c.is_ascii_alphanumeric() { c } else { '-' };
    path.to_string().chars().map(safe).collect()
}

/// A number of the plan.
///
/// The text is the truth while typing; it is written out plainly on leaving.
#[component]
pub fn NumberField(
    path: Path,
    /// Instead of the field's own name.
    #[prop(optional, into)]
    label: Option<String>,
    /// Larger, for the numbers to start from.
    #[prop(optional)]
    large: bool,
    /// No words under it.
    #[prop(optional)]
    bare: bool,
) -> impl IntoView {
    let state = State::get();
    let id = id_of(path);
    let unit = path.range().map(|range| range.unit);
    let sign = move || {
        let us_units = state.plan.with(|plan| plan.show.us_units);
        unit.map_or("", |unit| wording::unit_sign(unit, us_units))
    };
    let text = Memo::new(move |_| state.draft.with(|draft| draft.text(path)));
    let default = Memo::new(move |_| {
        state.draft.with(|draft| {
            draft
                .plan
                .assumed(path)
                .map_or_else(String::new, |f| draft.written(path, f.value))
        })
    });
    let trouble = Memo::new(move |_| state.draft.with(|draft| draft.trouble(path).is_some()));
    let echo = Memo::new(move |_| state.draft.with(|draft| draft.echo(path)));
    let hint = if bare { "" } else { wording::field_hint(path) };
    let (error_id, hint_id) = (format!("{id}-error"), format!("{id}-hint"));
    let described = {
        let (error_id, hint_id) = (error_id.clone(), hint_id.clone());
        move || match (trouble.get(), hint.is_empty()) {
            (true, true) => error_id.clone(),
            (true, false) => format!("{error_id} {hint_id}"),
            (false, true) => String::new(),
            (false, false) => hint_id.clone(),
        }
    };
    // Negative numbers need a keyboard with a minus, which `decimal` may lack.
    let keys = match path.range() {
        Some(range) if range.min < 0.0 => None,
        Some(range) if range.unit == Unit::ClockMinute => None,
        Some(range) if range.unit == Unit::Count => Some("numeric"),
        _ => Some("decimal"),
    };
    let label = label.unwrap_or_else(|| wording::field_label(path).to_owned());
    view! {
        <div class="field" class:large=large class:wrong=move || trouble.get()>
            <label for=id.clone()>
                {label}
                {move || (!sign().is_empty()).then(|| view! { <span class="unit-in-label">" (" {sign} ")"</span> })}
            </label>
            <span class="entry">
                <input
                    id=id
                    type="text"
                    inputmode=keys
                    autocomplete="off"
                    spellcheck="false"
                    prop:value=move || text.get()
                    placeholder=move || default.get()
                    aria-invalid=move || trouble.get().then_some("true")
                    aria-describedby=described
                    on:input=move |event| state.type_text(path, &event_target_value(&event))
                    on:blur=move |_| state.settle(path)
                />
                <span class="unit" aria-hidden="true">{sign}</span>
                <OriginMark path/>
            </span>
            {move || trouble.get().then(|| view! {
                <p class="error" id=error_id.clone()>{wording::entry_trouble(path)}</p>
            })}
            {move || echo.get().map(|echo| view! { <p class="echo">{echo_text(echo)}</p> })}
            {(!hint.is_empty()).then(|| view! { <p class="hint" id=hint_id>{hint}</p> })}
        </div>
    }
}

fn echo_text(echo: Echo) -> String {
    let with = |value, unit| match unit {
        Unit::Hour => wording::number::duration_fine(value),
        Unit::ClockMinute => wording::number::clock(value),
        _ => wording::number::with_unit(value, wording::unit_sign(unit, false)),
    };
    match echo {
        Echo::Value { value, unit } => wording::reading_echo(&with(value, unit)),
        Echo::Strings { count, each, unit } => wording::strings_echo(count, &with(each, unit)),
    }
}

/// Where a number comes from, and its spread: a choice of three.
#[component]
fn OriginMark(path: Path) -> impl IntoView {
    let state = State::get();
    let figure = Memo::new(move |_| {
        state
            .plan
            .with(|plan| plan.has_origin(path).then(|| plan.figure(path)).flatten())
    });
    let stated = Memo::new(move |_| state.plan.with(|plan| plan.stated(path).is_some()));
    let choose = move |event: web_sys::Event| {
        let from = origin_of(&event_target_value(&event));
        state.edit(|plan| {
            if let Some(mut figure) = plan.figure(path) {
                figure.from = from;
                figure.spread_percent = None;
                plan.set_figure(path, figure);
            }
        });
    };
    let options = move |from: Origin| {
        [Origin::Label, Origin::Measured, Origin::Guess].map(|origin| {
            view! {
                <option value=wording::origin_name(origin) prop:selected=move || origin == from>
                    {wording::origin_name(origin)}
                </option>
            }
        })
    };
    move || {
        let figure = figure.get()?;
        // A number left to its default has no origin to choose: it is shown.
        let percent = spread::percent_of(path, figure);
        let mark = wording::origin_mark(figure.from, percent);
        Some(if stated.get() {
            view! {
                <select
                    class="origin"
                    aria-label=wording::origin_question(path)
                    title=mark
                    on:change=choose
                >
                    {options(figure.from)}
                </select>
            }
            .into_any()
        } else {
            view! { <span class="origin" title=mark>"assumed"</span> }.into_any()
        })
    }
}

fn origin_of(name: &str) -> Origin {
    [Origin::Measured, Origin::Guess]
        .into_iter()
        .find(|&from| wording::origin_name(from) == name)
        .unwrap_or(Origin::Label)
}

/// A name of the user's own.
#[component]
pub fn NameField(
    #[prop(into)] id: String,
    #[prop(into)] label: String,
    get: impl Fn(&crate::plan::Plan) -> String + Send + Sync + 'static,
    set: impl Fn(&mut crate::plan::Plan, String) + Copy + Send + Sync + 'static,
) -> impl IntoView {
    let state = State::get();
    let text = Memo::new(move |_| state.plan.with(|plan| get(plan)));
    view! {
        <div class="field name">
            <label for=id.clone()>{label}</label>
            <input
                id=id
                type="text"
                autocomplete="off"
                maxlength="60"
                prop:value=move || text.get()
                on:input=move |event| {
                    let text = event_target_value(&event);
                    state.draft.update(|draft| draft.edit(|plan| set(plan, text)));
                }
            />
        </div>
    }
}

/// A choice of few.
#[component]
pub fn Choice(
    #[prop(into)] id: String,
    #[prop(into)] label: String,
    /// What can be chosen, by name.
    #[prop(into)]
    options: Signal<Vec<String>>,
    /// Which is.
    #[prop(into)]
    chosen: Signal<usize>,
    on_choice: impl Fn(usize) + Send + Sync + 'static,
) -> impl IntoView {
    view! {
        <div class="field choice">
            <label for=id.clone()>{label}</label>
            <select id=id on:change=move |event| {
                if let Ok(index) = event_target_value(&event).parse() {
                    on_choice(index);
                }
            }>
                {move || options.get().into_iter().enumerate().map(|(index, name)| view! {
                    <option value=index.to_string() prop:selected=move || chosen.get() == index>{name}</option>
                }).collect_view()}
            </select>
        </div>
    }
}
