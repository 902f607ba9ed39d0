//! One sheet of paper for an electrician: shown as it prints, and printed alone.

use super::{Answered, OfAnswer, Table, cautions};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::wiring::{CircuitAnswer, WiringAnswer},
    page::{
        browser::{document, window},
        kit::Press,
    },
    plan::Plan,
    text::wiring::{self as say, words},
};
use leptos::{html, prelude::*};

/// On the page's body only while the sheet prints: style/wiring.css then leaves
/// nothing else on the paper.
const PRINTING: &str = "for-electrician";

/// A fold with the sheet in it, and the button that prints it. Printing from the
/// browser's own menu prints the page.
#[component]
pub fn Sheet(answer: Answered) -> impl IntoView {
    let fold = NodeRef::<html::Details>::new();
    let print = move || {
        let (Some(fold), Some(body)) = (fold.get_untracked(), document().body()) else {
            return;
        };
        let was_open = fold.open();
        fold.set_open(true);
        let _ = body.class_list().add_1(PRINTING);
        let _ = window().print();
        let _ = body.class_list().remove_1(PRINTING);
        fold.set_open(was_open);
    };
    view! {
        <div>
            <Press class="print-sheet" words=say(m::WiringSheetPrint) press=print />
            <details class="fold" id="electrician" node_ref=fold>
                <summary>{say(m::WiringSheet)}</summary>
                <div class="fold-body">
                    <OfAnswer answer=answer show=article />
                </div>
            </details>
        </div>
    }
}

fn items(texts: impl IntoIterator<Item = String>) -> impl IntoView {
    let items = texts.into_iter().map(|text| view! { <li>{text}</li> });
    view! { <ul>{items.collect_view()}</ul> }
}

fn article(plan: &Plan, answer: &WiringAnswer) -> AnyView {
    let title = plan.title.trim().to_owned();
    let named = (!title.is_empty()).then(|| view! { <p>{title}</p> });
    let circuits = answer.circuits.iter().map(circuit_row).collect();
    let batteries = answer.bank.as_ref().map(|bank| {
        let lines = [
            Some(say::batteries_line(formatter(), bank)),
            say::take_off_line(formatter(), bank),
            say::string_fuse_line(formatter(), bank),
        ];
        items(lines.into_iter().flatten())
    });
    let panels = answer.solar.as_ref();
    let panels = panels.map(|side| items(say::solar_lines(formatter(), side)));
    let system = say::system_on_paper(formatter(), plan, answer).into_iter();
    let system = system.map(|text| view! { <p class="system">{text}</p> });
    view! {
        <article class="sheet">
            <h1>{say(m::WiringSheetTitle)}</h1>
            {named}
            {system.collect_view()}
            <p class="method">{say(m::WiringSheetMethod)}</p>
            <p class="said-first">{say::headline(formatter(), answer)}</p>
            {super::diagram::on_paper(plan, answer)}
            <Table class="sheet-circuits" heads=words::sheet_heads(formatter()).into() rows=circuits />
            <h2>{say(m::WiringBatteries)}</h2>
            {batteries}
            {panels}
            <h2>{say(m::WiringSheetTaken)}</h2>
            {items(say::taken_for(formatter(), plan, answer))}
            <h2>{say(m::WiringCautions)}</h2>
            {cautions::on_sheet(plan, answer)}
            <p class="sign">{say(m::WiringSheetSign)}</p>
        </article>
    }
    .into_any()
}

fn circuit_row(circuit: &CircuitAnswer) -> Vec<String> {
    let have = circuit.have.as_ref();
    vec![
        say::circuit_on_paper(formatter(), circuit),
        say::amps_on_paper(formatter(), circuit),
        have.map_or_else(
            || say(m::WiringNotEntered).into(),
            |have| say::size_text(formatter(), &have.size),
        ),
        say::both_sizes(formatter(), circuit),
        say::decided_on_paper(formatter(), circuit),
        say::drop_on_paper(formatter(), circuit),
        say::fuse_on_paper(formatter(), circuit),
    ]
}
