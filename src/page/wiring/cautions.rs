//! Where it can hurt: the cautions that apply, each with its source.

use super::{Answered, OfAnswer};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::{Caution, wiring::WiringAnswer},
    page::margin::caution_view,
    plan::Plan,
    text::{
        self, CautionText, Formatter,
        wiring::{self as say},
    },
};
use leptos::prelude::*;

#[component]
pub fn WiringCautions(answer: Answered) -> impl IntoView {
    view! {
        <div>
            <h3>{say(m::WiringCautions)}</h3>
            <OfAnswer answer=answer show=list />
        </div>
    }
}

/// What follows from the numbers first, then what can hurt whatever they are.
fn list(plan: &Plan, answer: &WiringAnswer) -> AnyView {
    listed(plan, answer, text::caution_text)
}

/// The same on the sheet that is at the electrician's already.
pub fn on_sheet(plan: &Plan, answer: &WiringAnswer) -> AnyView {
    listed(plan, answer, text::caution_on_sheet)
}

fn listed(
    plan: &Plan,
    answer: &WiringAnswer,
    in_words: fn(Formatter, &Plan, Caution) -> CautionText,
) -> AnyView {
    let one = |text: String, source: &'static str| {
        let source = (!source.is_empty()).then(|| view! { <cite>{source}</cite> });
        view! {
            <li class="caution">
                {text}
                " "
                {source}
            </li>
        }
    };
    let of_numbers = answer.notes.iter().map(|note| {
        let (text, source) = say::note(formatter(), note);
        one(text, source)
    });
    let all = crate::answer::cautions(plan).into_iter();
    let of_plan = all.filter(|caution| caution.is_of_wiring());
    let of_plan = of_plan.map(|caution| {
        let caution = in_words(formatter(), plan, caution);
        view! { <li class="caution">{caution_view(caution)}</li> }
    });
    view! {
        <ul class="cautions wiring-cautions">
            {of_numbers.collect_view()}
            {of_plan.collect_view()}
        </ul>
    }
    .into_any()
}
