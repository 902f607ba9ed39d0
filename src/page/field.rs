//! Fields: a label, a text, its unit, where it came from, and what is wrong.

use super::reactive::*;
use super::{
    dom::{El, always, h, set_attr, set_class, set_text, text_of},
    state::State,
};
use crate::{
    plan::{Figure, Origin, Path, Plan, draft::Draft},
    range::Unit,
    wording::{self, words},
};
use wasm_bindgen::JsCast;

/// A stable id for a field's parts, from its address.
pub fn id_of(path: Path) -> String {
    let safe = |c: char| if c.is_ascii_alphanumeric() { c } else { '-' };
    path.to_string().chars().map(safe).collect()
}

/// A number of the plan.
///
/// The text is the truth while typing; it is written out plainly on leaving.
pub fn number_field(state: State, path: Path) -> El {
    field(state, path, "field", wording::field_hint(path), "")
}

/// The same where the page has one of it already: `at` keeps their ids apart.
pub fn number_field_at(state: State, path: Path, at: &str) -> El {
    field(state, path, "field", wording::field_hint(path), at)
}

/// The same, larger, for the numbers to start from.
pub fn large_field(state: State, path: Path) -> El {
    field(state, path, "field large", wording::field_hint(path), "")
}

/// The same with no words under it, for rows.
pub fn row_field(state: State, path: Path) -> El {
    field(state, path, "field large", "", "")
}

fn field(state: State, path: Path, class: &str, hint: &str, at: &str) -> El {
    let id = format!("{at}{}", id_of(path));
    let (error_id, hint_id) = (format!("{id}-error"), format!("{id}-hint"));
    let label = h("label", "")
        .attr("for", &id)
        .text(wording::field_label(path));
    let unit_in_label = h("span", "unit-in-label");
    let input = input(state, path, &id);
    let unit = h("span", "unit").attr("aria-hidden", "true");
    let origin = origin_mark(state, path);
    let error = h("p", "error").attr("id", &error_id);
    let echo = h("p", "echo");
    let root = h("div", class);
    let parts = Parts {
        root: root.0.clone(),
        unit_in_label: unit_in_label.0.clone(),
        input: input.0.clone().unchecked_into(),
        unit: unit.0.clone(),
        error: error.0.clone(),
        echo: echo.0.clone(),
        hint_id: if hint.is_empty() {
            String::new()
        } else {
            hint_id.clone()
        },
        error_id,
    };
    always(move || state.with_draft(|draft| parts.show(draft, path)));
    let entry = h("span", "entry").child(input).child(unit).children(origin);
    let hint = (!hint.is_empty()).then(|| h("p", "hint").attr("id", &hint_id).text(hint));
    root.child(label.child(unit_in_label))
        .child(entry)
        .child(error)
        .child(echo)
        .children(hint)
}

fn input(state: State, path: Path, id: &str) -> El {
    let input = h("input", "")
        .attr("id", id)
        .attr("type", "text")
        .attr("autocomplete", "off")
        .attr("spellcheck", "false")
        .on("input", move |event| {
            state.type_text(path, &text_of(&event))
        })
        .on("blur", move |_| state.settle(path));
    keyboard(input, path)
}

/// The keyboard that a phone shows for a number.
pub(super) fn keyboard(input: El, path: Path) -> El {
    match path.range() {
        // Negative numbers need a keyboard with a minus, which `decimal` may lack.
        Some(range) if range.min < 0.0 || range.unit == Unit::ClockMinute => input,
        // `45 A`, `2x100` and `240 cfm` are invited: they need letters.
        _ if path.invites_letters() => input,
        Some(range) if range.unit == Unit::Count => input.attr("inputmode", "numeric"),
        _ => input.attr("inputmode", "decimal"),
    }
}

/// The parts of a field that change.
struct Parts {
    root: web_sys::Element,
    unit_in_label: web_sys::Element,
    input: web_sys::HtmlInputElement,
    unit: web_sys::Element,
    error: web_sys::Element,
    echo: web_sys::Element,
    error_id: String,
    hint_id: String,
}

impl Parts {
    fn show(&self, draft: &Draft, path: Path) {
        let text = draft.text(path);
        if self.input.value() != text {
            self.input.set_value(&text);
        }
        let default = draft.default_text(path);
        if self.input.placeholder() != default {
            self.input.set_placeholder(&default);
        }
        let units = draft.plan.show;
        let unit = draft.unit_beside(path);
        let sign = unit.map_or("", |unit| wording::unit_sign(unit, units));
        set_text(&self.unit, sign);
        set_text(&self.unit_in_label, &wording::unit_in_label(sign));
        let troubled = draft.trouble(path).is_some();
        set_class(&self.root, "wrong", troubled);
        set_attr(&self.input, "aria-invalid", troubled.then_some("true"));
        set_text(
            &self.error,
            &match draft.wanted(path) {
                Some(wanted) if troubled => wording::entry_trouble(path, wanted, units),
                _ => String::new(),
            },
        );
        set_text(
            &self.echo,
            &draft
                .echo(path)
                .map_or_else(String::new, |echo| wording::echo_sentence(echo, units)),
        );
        let described = match (troubled, self.hint_id.is_empty()) {
            (true, true) => self.error_id.clone(),
            (true, false) => format!("{} {}", self.error_id, self.hint_id),
            (false, _) => self.hint_id.clone(),
        };
        set_attr(
            &self.input,
            "aria-describedby",
            (!described.is_empty()).then_some(&described),
        );
    }
}

const ORIGINS: [Origin; 3] = [Origin::Label, Origin::Measured, Origin::Guess];

/// Where a number comes from: a choice of three. A number left to its default
/// has no origin to choose, only one to show. Choices and counts have none.
fn origin_mark(state: State, path: Path) -> Option<El> {
    if !state.plan_now(|plan| plan.has_origin(plan.kept_at(path))) {
        return None;
    }
    let select = h("select", "origin").attr("aria-label", &wording::origin_question(path));
    let select = select.children(ORIGINS.map(|origin| {
        h("option", "")
            .attr("value", wording::origin_name(origin))
            .text(wording::origin_name(origin))
    }));
    let select = select.on("change", move |event| {
        let name = text_of(&event);
        let chosen = ORIGINS
            .into_iter()
            .find(|&origin| wording::origin_name(origin) == name);
        state.edit(|plan| {
            let path = plan.kept_at(path);
            if let (Some(from), Some(figure)) = (chosen, plan.figure(path)) {
                plan.set_figure(
                    path,
                    Figure {
                        from,
                        spread_percent: None,
                        ..figure
                    },
                );
            }
        });
    });
    let assumed = h("span", "origin").text(words::ASSUMED_MARK);
    let (choice, mark) = (select.0.clone(), assumed.0.clone());
    always(move || {
        state.with_draft(|draft| {
            let path = draft.plan.kept_at(path);
            let stated = draft.plan.stated(path).is_some();
            set_attr(&choice, "hidden", stated.then_some("").xor(Some("")));
            set_attr(&mark, "hidden", stated.then_some(""));
            let Some(figure) = draft.plan.figure(path) else {
                set_attr(&mark, "hidden", Some(""));
                return;
            };
            let words = wording::origin_mark(path, figure, draft.plan.show);
            set_attr(&choice, "title", Some(&words));
            set_attr(&mark, "title", Some(&words));
            let choice: &web_sys::HtmlSelectElement = choice.unchecked_ref();
            choice.set_value(wording::origin_name(figure.from));
        });
    });
    Some(h("span", "origins").child(select).child(assumed))
}

/// A place in the plan for a text.
type NamePlace = Box<dyn Fn(&mut Plan) -> Option<&mut String>>;

/// A name of the user's own.
pub fn name_field(
    state: State,
    id: &str,
    label: &str,
    place: impl Fn(&mut Plan) -> Option<&mut String> + 'static,
) -> El {
    boxed_name(state, id, label, 60, Box::new(place))
}

/// A text of the user's own, with so many letters at the most.
pub fn text_field(
    state: State,
    id: &str,
    label: &str,
    most: usize,
    place: impl Fn(&mut Plan) -> Option<&mut String> + 'static,
) -> El {
    boxed_name(state, id, label, most, Box::new(place))
}

#[inline(never)]
fn boxed_name(state: State, id: &str, label: &str, most: usize, place: NamePlace) -> El {
    let place = std::rc::Rc::new(place);
    let write = place.clone();
    let input = h("input", "")
        .attr("id", id)
        .attr("type", "text")
        .attr("autocomplete", "off")
        .attr("maxlength", &most.to_string())
        .on("input", move |event| {
            let text = text_of(&event);
            state.rename(|plan| {
                if let Some(place) = write(plan) {
                    *place = text;
                }
            });
        });
    let element: web_sys::HtmlInputElement = input.0.clone().unchecked_into();
    always(move || {
        // Read through the same lens that writes: a copy is cheap beside an answer.
        let mut plan = state.plan.get();
        let text = place(&mut plan).cloned().unwrap_or_default();
        if element.value() != text {
            element.set_value(&text);
        }
    });
    h("div", "field name")
        .child(h("label", "").attr("for", id).text(label))
        .child(input)
}

/// The names of a choice; told again whenever they change.
type Names = Box<dyn Fn() -> Vec<String> + Send + Sync>;

/// A choice of few, by place in the list.
pub fn choice(
    id: &str,
    label: &str,
    names: impl Fn() -> Vec<String> + Send + Sync + 'static,
    chosen: impl Fn() -> usize + 'static,
    choose: impl Fn(usize) + 'static,
) -> El {
    boxed_choice(
        id,
        label,
        Box::new(names),
        Box::new(chosen),
        Box::new(choose),
    )
}

#[inline(never)]
fn boxed_choice(
    id: &str,
    label: &str,
    names: Names,
    chosen: Box<dyn Fn() -> usize>,
    choose: Box<dyn Fn(usize)>,
) -> El {
    let names = std::sync::Arc::new(names);
    let (key, build, list) = (names.clone(), names.clone(), names);
    let select = h("select", "").attr("id", id).live_children(
        move || key().join("\n"),
        move || {
            let options = build().into_iter().enumerate();
            options
                .map(|(index, name)| {
                    h("option", "")
                        .attr("value", &index.to_string())
                        .text(&name)
                })
                .collect()
        },
    );
    let select = select.on("change", move |event| {
        if let Ok(index) = text_of(&event).parse() {
            choose(index);
        }
    });
    let element: web_sys::HtmlSelectElement = select.0.clone().unchecked_into();
    always(move || {
        // The list first: a choice among options that are not there is lost.
        let _ = list();
        let chosen = i32::try_from(chosen()).unwrap_or(0);
        if element.selected_index() != chosen {
            element.set_selected_index(chosen);
        }
    });
    h("div", "field choice")
        .child(h("label", "").attr("for", id).text(label))
        .child(select)
}

/// A box to tick.
pub fn tick(
    id: &str,
    label: &str,
    on: impl Fn() -> bool + 'static,
    toggle: impl Fn() + 'static,
) -> El {
    boxed_tick(id, label, Box::new(on), Box::new(toggle))
}

#[inline(never)]
fn boxed_tick(id: &str, label: &str, on: Box<dyn Fn() -> bool>, toggle: Box<dyn Fn()>) -> El {
    let input = h("input", "").attr("type", "checkbox").attr("id", id);
    let element: web_sys::HtmlInputElement = input.0.clone().unchecked_into();
    let (again, on) = (element.clone(), std::rc::Rc::new(on));
    let now = on.clone();
    let input = input.on("change", move |_| {
        toggle();
        // A change that was not taken leaves the box as it was.
        again.set_checked(untrack(|| now()));
    });
    always(move || element.set_checked(on()));
    h("label", "check").child(input).text(label)
}
