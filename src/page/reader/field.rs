//! A reader's number: a label, a text, its unit, and what is wrong.
//!
//! The author's page has fields of its own (`page/field.rs`), with origins, and
//! with English in them.

use super::{
    super::{
        dom::{El, always, h, set_attr, set_class, set_text, text_of},
        field::{choice, id_of, keyboard},
        reactive::*,
    },
    Open,
};
use crate::{
    bank::Chemistry,
    plan::{Path, Plan, draft::Draft},
    wording,
};
use wasm_bindgen::JsCast;

/// The parts of a field that change.
struct Parts {
    root: web_sys::Element,
    input: web_sys::HtmlInputElement,
    unit: web_sys::Element,
    in_label: web_sys::Element,
    error: web_sys::Element,
    echo: web_sys::Element,
    label: String,
    described: [String; 2],
}

/// What is open at an address: a number, or the chemistry.
pub(super) fn field(open: Open, path: Path) -> El {
    match path {
        Path::Chemistry(bank) => chemistry(open, path, bank),
        _ => number_field(open, path),
    }
}

fn chemistry(open: Open, path: Path, bank: usize) -> El {
    let label = open
        .author
        .with_value(|author| (open.say.label)(author, path));
    let names = move || {
        Chemistry::ALL
            .map(|one| (open.say.chemistry)(one).to_owned())
            .to_vec()
    };
    let chosen = move || {
        let now = open.state.with_plan(|plan| plan.banks[bank].chemistry);
        Chemistry::ALL
            .iter()
            .position(|&one| one == now)
            .unwrap_or(0)
    };
    let choose = move |at: usize| {
        let Some(&one) = Chemistry::ALL.get(at) else {
            return;
        };
        open.state.edit(|plan| {
            plan.banks[bank].chemistry = one;
            open.author.with_value(|author| plan.follow(author));
        });
    };
    choice(&id_of(path), &label, names, chosen, choose)
}

fn number_field(open: Open, path: Path) -> El {
    let id = id_of(path);
    let (label, hint) = open
        .author
        .with_value(|author| ((open.say.label)(author, path), (open.say.hint)(path)));
    let (error_id, hint_id) = (format!("{id}-error"), format!("{id}-hint"));
    let input = h("input", "")
        .attr("id", &id)
        .attr("type", "text")
        .attr("autocomplete", "off")
        .attr("spellcheck", "false")
        .on("input", move |event| {
            type_text(open, path, &text_of(&event))
        })
        .on("blur", move |_| open.state.settle(path));
    let input = keyboard(input, path);
    let unit = h("span", "unit").attr("aria-hidden", "true");
    let in_label = h("span", "unit-in-label");
    let error = h("p", "error").attr("id", &error_id);
    let (echo, root) = (h("p", "echo"), h("div", "field large"));
    let parts = Parts {
        root: root.0.clone(),
        input: input.0.clone().unchecked_into(),
        unit: unit.0.clone(),
        in_label: in_label.0.clone(),
        error: error.0.clone(),
        echo: echo.0.clone(),
        label: label.clone(),
        described: [
            error_id,
            if hint.is_empty() {
                String::new()
            } else {
                hint_id.clone()
            },
        ],
    };
    always(move || open.state.with_draft(|draft| parts.show(open, draft, path)));
    let hint = (!hint.is_empty()).then(|| h("p", "hint").attr("id", &hint_id).text(hint));
    root.child(h("label", "").attr("for", &id).text(&label).child(in_label))
        .child(h("span", "entry").child(input).child(unit))
        .child(error)
        .child(echo)
        .children(hint)
}

/// Takes the text, and what hangs on the number with it.
fn type_text(open: Open, path: Path, text: &str) {
    open.state.type_text(path, text);
    open.state.rename(|plan: &mut Plan| {
        open.author.with_value(|author| plan.follow(author));
    });
}

impl Parts {
    fn show(&self, open: Open, draft: &Draft, path: Path) {
        let written = |text: String| {
            let clock = text.contains(':');
            if clock {
                text
            } else {
                open.say.format.typed(&text)
            }
        };
        // What is typed stays as it is; what is settled is written as the language has it.
        let text = match draft.text(path) {
            text if draft.is_typing(path) => text,
            text => written(text),
        };
        if self.input.value() != text {
            self.input.set_value(&text);
        }
        self.input
            .set_placeholder(&written(draft.default_text(path)));
        let units = draft.plan.show;
        let unit = draft.unit_beside(path);
        let sign = unit.map_or("", |unit| wording::unit_sign(unit, units));
        set_text(&self.unit, sign);
        set_text(&self.in_label, &wording::unit_in_label(sign));
        let troubled = draft.trouble(path).is_some();
        set_class(&self.root, "wrong", troubled);
        set_attr(&self.input, "aria-invalid", troubled.then_some("true"));
        let error = match draft.wanted(path) {
            Some(wanted) if troubled => (open.say.trouble)(&self.label, wanted, units),
            _ => String::new(),
        };
        set_text(&self.error, &error);
        let echo = draft.echo(path).map(|echo| (open.say.echo)(echo, units));
        set_text(&self.echo, &echo.unwrap_or_default());
        let described = self.described[usize::from(!troubled)..].join(" ");
        let described = described.trim();
        let described = (!described.is_empty()).then_some(described);
        set_attr(&self.input, "aria-describedby", described);
    }
}
