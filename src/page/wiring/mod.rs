//! "Can the wiring carry it, and can it be filled again?": cables, fuses and
//! what the batteries bear; an answer first, then what it rests on.

mod batteries;
mod cautions;
mod circuits;
mod diagram;
mod fields;
mod refill;
mod sheet;

use super::{
    field::NumberField,
    kit::{Fold, anew},
    outcome::Said,
    state::State,
    supply::SupplyForm,
};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::wiring::{Open, WiringAnswer, wiring},
    plan::{Path, Plan},
    text::wiring::{self as say},
};
use batteries::{Batteries, Panels};
use cautions::WiringCautions;
use circuits::Circuits;
use fields::{BankLimits, Cables, FuseKindChoice};
use leptos::prelude::*;
use refill::Refill;
use sheet::Sheet;

/// The wiring's answer, worked out while the question is open.
pub type Answered = Memo<Option<WiringAnswer>>;

/// All that stands under the question. `is_open`: its fold is; folded away, nothing is
/// worked out.
#[component]
pub fn WiringQuestion(is_open: RwSignal<bool>) -> impl IntoView {
    let state = State::here();
    let answer: Answered = Memo::new_with_compare(move |_| state.with_plan(wiring), |_, _| true);
    view! {
        <Outcome answer=answer />
        <diagram::WiringDiagram answer=answer />
        <OpenFields answer=answer />
        <Circuits answer=answer />
        <Cables />
        <diagram::BankDiagram answer=answer />
        <Batteries answer=answer />
        <BankLimits />
        <Panels answer=answer />
        <Refill is_open=is_open />
        <Fold title=|| say(m::WiringSupply)>
            <SupplyForm at="carry" />
        </Fold>
        <WiringCautions answer=answer />
        <Sheet answer=answer />
    }
}

/// The sentence, and the batteries in a line.
#[component]
fn Outcome(answer: Answered) -> impl IntoView {
    let sentence = move || {
        answer.with(|answer| {
            let said = answer
                .as_ref()
                .map(|answer| say::headline(formatter(), answer));
            said.unwrap_or_else(|| say(m::WiringNoAnswer).into())
        })
    };
    let line = move || {
        answer.with(|answer| {
            let bank = answer.as_ref().and_then(|answer| answer.bank.as_ref());
            bank.map(|bank| say::batteries_line(formatter(), bank))
                .unwrap_or_default()
        })
    };
    view! {
        <Said
            id="wiring-answer"
            sentence=sentence
            details=move || view! { <p class="detail">{line}</p> }
        />
    }
}

/// The fields that the verdict waits for, beside it. One that was shown stays while
/// it is typed into.
#[component]
fn OpenFields(answer: Answered) -> impl IntoView {
    let shown = Memo::new(move |before: Option<&Vec<Open>>| {
        let mut all = before.cloned().unwrap_or_default();
        answer.with(|answer| {
            let open = answer.as_ref().map_or(&[][..], |answer| &answer.open);
            for one in open {
                if !all.contains(one) {
                    all.push(*one);
                }
            }
        });
        all
    });
    view! {
        <div class="grid open-fields">
            <For each=move || shown.get() key=|open| format!("{open:?}") children=open_field />
        </div>
    }
}

fn open_field(open: Open) -> AnyView {
    match open {
        Open::FuseKind => view! { <FuseKindChoice id="open-fuse-kind" /> }.into_any(),
        Open::Field(path) => {
            let circuit = match path {
                Path::Installation(circuit, _) => {
                    Some(view! { <p class="hint">{say::circuit_name(formatter(), circuit)}</p> })
                }
                _ => None,
            };
            view! {
                <div>
                    <NumberField path=path at="open-" />
                    {circuit}
                </div>
            }
            .into_any()
        }
    }
}

/// What is built of the answer, anew whenever that changes.
#[component]
fn OfAnswer(
    answer: Answered,
    show: impl Fn(&Plan, &WiringAnswer) -> AnyView + Clone + Send + Sync + 'static,
) -> impl IntoView {
    let state = State::here();
    let turn = move || {
        answer.track();
        state.turn()
    };
    let inside = move |_| {
        state.with_plan(|plan| {
            answer.with(|answer| {
                let answer = answer.as_ref();
                answer.map_or_else(|| ().into_any(), |answer| show(plan, answer))
            })
        })
    };
    view! { <div>{anew(turn, inside)}</div> }
}

/// A table with its heads.
#[component]
fn Table(class: &'static str, heads: Vec<&'static str>, rows: Vec<Vec<String>>) -> impl IntoView {
    // What may be wider than a phone is reached by keys, under a name.
    let names = heads.iter().filter(|text| !text.is_empty());
    let name = names.copied().collect::<Vec<_>>().join(", ");
    // A corner with nothing in it is no heading.
    let heads = heads.into_iter().map(|text| match text {
        "" => view! { <td></td> }.into_any(),
        text => view! { <th scope="col">{text}</th> }.into_any(),
    });
    let rows = rows.into_iter().map(|cells| {
        let mut cells = cells.into_iter();
        let first = cells.next();
        let rest = cells.map(|text| view! { <td>{text}</td> });
        view! {
            <tr>
                <th scope="row">{first}</th>
                {rest.collect_view()}
            </tr>
        }
    });
    view! {
        <div class="scroll" tabindex="0" role="group" aria-label=name>
            <table class=class>
                <thead>
                    <tr>{heads.collect_view()}</tr>
                </thead>
                <tbody>{rows.collect_view()}</tbody>
            </table>
        </div>
    }
}

/// Texts, a paragraph each.
fn lines(texts: impl IntoIterator<Item = String>) -> AnyView {
    let lines = texts.into_iter().map(|text| view! { <p>{text}</p> });
    lines.collect_view().into_any()
}
