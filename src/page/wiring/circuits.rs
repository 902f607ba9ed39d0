//! The cables, each a row that opens to the rule that decided and its source.

use super::{Answered, OfAnswer, Table, lines};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::wiring::{CircuitAnswer, Protection, RuleName, SizeFigures, Verdict, WiringAnswer},
    plan::{
        Plan,
        part::Choice,
        wiring::{Circuit, Place},
    },
    text::wiring as say,
};
use leptos::prelude::*;

/// All cables that the plan has. A row stays as it is, open or shut, while the
/// numbers in it change.
#[component]
pub fn Circuits(answer: Answered) -> impl IntoView {
    let rows = Circuit::ALL.iter();
    let rows = rows.map(|&circuit| view! { <CircuitRow answer=answer circuit=circuit /> });
    view! {
        <div class="circuits">
            <h3>{say(m::WiringCircuits)}</h3>
            <p class="hint">{say(m::WiringCircuitsHint)}</p>
            {rows.collect_view()}
        </div>
    }
}

fn of<R: Default>(answer: Answered, circuit: Circuit, read: impl FnOnce(&CircuitAnswer) -> R) -> R {
    answer.with(|answer| {
        let circuits = answer.as_ref().map_or(&[][..], |answer| &answer.circuits);
        let found = circuits.iter().find(|one| one.circuit == circuit);
        found.map(read).unwrap_or_default()
    })
}

#[component]
fn CircuitRow(answer: Answered, circuit: Circuit) -> impl IntoView {
    let line = Memo::new(move |_| of(answer, circuit, |one| say::circuit_line(formatter(), one)));
    let is = move |verdict| of(answer, circuit, |circuit| circuit.verdict == verdict);
    let show = move |plan: &Plan, answer: &WiringAnswer| {
        let found = answer.circuits.iter().find(|one| one.circuit == circuit);
        found.map_or_else(|| ().into_any(), |circuit| inside(plan, circuit))
    };
    view! {
        <details
            class="fold circuit"
            id=format!("circuit-{}", circuit.key())
            hidden=move || line.with(String::is_empty)
        >
            <summary>
                <span class="circuit-name">{say::circuit_name(formatter(), circuit)}</span>
                <span
                    class="circuit-verdict"
                    class:fails=move || is(Verdict::Fails)
                    class:carries=move || is(Verdict::Carries)
                >
                    {line}
                </span>
            </summary>
            <div class="fold-body">
                <OfAnswer answer=answer show=show />
            </div>
        </details>
    }
}

fn inside(plan: &Plan, circuit: &CircuitAnswer) -> AnyView {
    let help = say::remedies_text(formatter(), circuit);
    let help = help.map(|text| view! { <p class="remedies">{text}</p> });
    let figures = say::judged(formatter(), circuit).map(|figures| {
        let drop = figures.loaded.as_ref();
        let drop = drop.map(|loaded| say::drop_text(formatter(), circuit, loaded));
        lines(
            [say::ampacity_text(formatter(), circuit, figures)]
                .into_iter()
                .chain(drop),
        )
    });
    let notes = circuit
        .notes
        .iter()
        .map(|note| say::circuit_note(formatter(), note));
    let notes = notes.map(|text| view! { <li>{text}</li> });
    let is_boat = plan.wiring.place_taken() == Place::Boat;
    let fuses = circuit.protection.iter();
    let fuses = fuses.map(|one| fuse(circuit, one, is_boat));
    let sources = RuleName::ALL.map(|rule| {
        view! {
            <li>
                <b>{say::rule_name(formatter(), rule)}</b>
                ": "
                {say::rule_source(formatter(), rule)}
            </li>
        }
    });
    view! {
        <p class="deciding">{say::deciding(formatter(), circuit)}</p>
        {help}
        {rules(circuit)}
        <p>{say::asked_by(formatter(), plan, circuit)}</p>
        {figures}
        <ul class="findings">{notes.collect_view()}</ul>
        {fuses.collect_view()}
        <h4>{say(m::WiringSources)}</h4>
        <ul class="sources">{sources.collect_view()}</ul>
    }
    .into_any()
}

/// Each rule: the smallest of both systems, and whether the one there passes.
fn rules(circuit: &CircuitAnswer) -> impl IntoView + use<> {
    let needed = say::needed(formatter(), circuit);
    let systems = needed.iter().map(|one| say::system_sign(one.system));
    let heads: Vec<_> = std::iter::once(say(m::WiringRule))
        .chain(systems)
        .chain([say(m::WiringYours)])
        .collect();
    let decided = say::decided_by(formatter(), circuit);
    let rows = RuleName::ALL.map(|rule| {
        let by = needed.iter().map(|one| {
            let row = one.by_rule.iter().find(|row| row.rule == rule);
            let size = row.and_then(|row| row.size.as_ref());
            size.map_or_else(
                || say(m::WiringNone).to_owned(),
                |size| say::size_text(formatter(), size),
            )
        });
        let name = say::rule_name(formatter(), rule);
        let name = if decided == Some(rule) {
            say(m::WiringDecides { rule: name })
        } else {
            name.to_owned()
        };
        let yours = circuit.have.as_ref().map_or("", |have| passes(have, rule));
        std::iter::once(name)
            .chain(by)
            .chain([yours.to_owned()])
            .collect()
    });
    view! { <Table class="rules" heads=heads rows=rows.into() /> }
}

fn passes(have: &SizeFigures, rule: RuleName) -> &'static str {
    if have.fails.contains(&rule) {
        say(m::WiringFails)
    } else {
        say(m::WiringPasses)
    }
}

fn fuse(circuit: &CircuitAnswer, protection: &Protection, is_boat: bool) -> impl IntoView + use<> {
    let rows = protection.kinds.iter().map(|kind| {
        let (breaks, suits) = say::kind_text(formatter(), protection, kind);
        vec![
            say::fuse_kind_name(formatter(), kind.kind).to_owned(),
            breaks,
            suits.to_owned(),
        ]
    });
    let is_wrong = !protection.fitted_faults.is_empty();
    let fitted = say::fitted_text(formatter(), protection);
    let fitted = fitted.map(|text| {
        view! { <p class=is_wrong.then_some("fuse-wrong")>{text}</p> }
    });
    // Beside a fuse that suits, another number would only confuse.
    let is_good = protection.fitted_a.is_some() && !is_wrong;
    let recommended = (!is_good).then(|| {
        let fuse = say::fuse_text(formatter(), protection);
        view! { <p>{say(m::WiringRecommended { fuse })}</p> }
    });
    let place = say::place_text(formatter(), protection);
    // The law of boats is of no use elsewhere.
    let marine = is_boat.then(|| {
        view! { <p class="hint">{say::marine_text(formatter(), protection)}</p> }
    });
    let heads = vec![say(m::WiringKind), say(m::WiringBreaks), say(m::WiringHere)];
    view! {
        <h4>{say(m::WiringTheFuse)}</h4>
        {fitted}
        {lines(say::start_above_text(formatter(), circuit))}
        {recommended}
        <p>
            {place}
            " "
            {say::source_text(formatter(), circuit.circuit)}
        </p>
        <p>{say::fault_text(formatter(), protection)}</p>
        <Table class="kinds-of-fuse" heads=heads rows=rows.collect() />
        <p class="hint">{say(m::WiringKindsSource)}</p>
        {marine}
    }
}
