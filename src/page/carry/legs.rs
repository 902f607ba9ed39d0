//! The cables, each a row that opens to the rule that decided and its source.

use super::{Answered, OfAnswer, Table, lines};
use crate::{
    answer::wiring::{LegAnswer, Protection, RuleName, SizeFigures, Verdict, WiringAnswer},
    plan::{Plan, part::Choice, wiring::Leg},
    text::carry::{self as say, words},
};
use leptos::prelude::*;

/// All cables that the plan has. A row stays as it is, open or shut, while the
/// numbers in it change.
#[component]
pub fn Legs(answer: Answered) -> impl IntoView {
    let rows = Leg::ALL.iter();
    let rows = rows.map(|&leg| view! { <LegRow answer=answer leg=leg /> });
    view! {
        <div class="legs">
            <h3>{words::LEGS}</h3>
            <p class="hint">{words::LEGS_HINT}</p>
            {rows.collect_view()}
        </div>
    }
}

fn of<R: Default>(answer: Answered, leg: Leg, read: impl FnOnce(&LegAnswer) -> R) -> R {
    answer.with(|answer| {
        let legs = answer.as_ref().map_or(&[][..], |answer| &answer.legs);
        let found = legs.iter().find(|one| one.leg == leg);
        found.map(read).unwrap_or_default()
    })
}

#[component]
fn LegRow(answer: Answered, leg: Leg) -> impl IntoView {
    let line = Memo::new(move |_| of(answer, leg, say::leg_line));
    let is = move |verdict| of(answer, leg, |leg| leg.verdict == verdict);
    let show = move |plan: &Plan, answer: &WiringAnswer| {
        let found = answer.legs.iter().find(|one| one.leg == leg);
        found.map_or_else(|| ().into_any(), |leg| inside(plan, leg))
    };
    view! {
        <details
            class="fold leg"
            id=format!("leg-{}", leg.key())
            hidden=move || line.with(String::is_empty)
        >
            <summary>
                <span class="leg-name">{say::leg_name(leg)}</span>
                <span
                    class="leg-verdict"
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

fn inside(plan: &Plan, leg: &LegAnswer) -> AnyView {
    let help = say::remedies_text(plan, leg);
    let help = help.map(|text| view! { <p class="remedies">{text}</p> });
    let smallest = leg.needed.iter().find_map(|one| one.smallest.as_ref());
    let judged = leg.have.as_ref().or(smallest);
    let figures = judged.map(|figures| {
        let drop = figures.loaded.as_ref();
        let drop = drop.map(|loaded| say::drop_text(plan, leg, loaded));
        lines(
            [say::ampacity_text(plan, leg, figures)]
                .into_iter()
                .chain(drop),
        )
    });
    let notes = leg.notes.iter().map(|note| say::leg_note(plan, note));
    let notes = notes.map(|text| view! { <li>{text}</li> });
    let fuses = leg.protection.iter().map(|one| fuse(leg, one));
    let sources = RuleName::ALL.map(|rule| {
        view! {
            <li>
                <b>{say::rule_name(rule)}</b>
                ": "
                {say::rule_source(rule)}
            </li>
        }
    });
    view! {
        <p class="deciding">{say::deciding(leg)}</p>
        {help}
        {rules(leg)}
        <p>{say::asked_by(plan, leg)}</p>
        {figures}
        <ul class="findings">{notes.collect_view()}</ul>
        {fuses.collect_view()}
        <h4>{words::SOURCES}</h4>
        <ul class="sources">{sources.collect_view()}</ul>
    }
    .into_any()
}

/// Each rule: the smallest of both systems, and whether the one there passes.
fn rules(leg: &LegAnswer) -> impl IntoView + use<> {
    let heads = vec![
        words::RULE,
        words::SMALLEST[0],
        words::SMALLEST[1],
        words::YOURS,
    ];
    let decided = leg.needed.iter().find_map(|one| one.decided_by);
    let rows = RuleName::ALL.map(|rule| {
        let by = leg.needed.iter().map(|one| {
            let row = one.by_rule.iter().find(|row| row.rule == rule);
            let size = row.and_then(|row| row.size.as_ref());
            size.map_or_else(|| words::NONE.to_owned(), say::size_text)
        });
        let name = say::rule_name(rule);
        let name = if decided == Some(rule) {
            format!("{name} ({})", words::DECIDES)
        } else {
            name.to_owned()
        };
        let yours = leg.have.as_ref().map_or("", |have| passes(have, rule));
        std::iter::once(name)
            .chain(by)
            .chain([yours.to_owned()])
            .collect()
    });
    view! { <Table class="rules" heads=heads rows=rows.into() /> }
}

fn passes(have: &SizeFigures, rule: RuleName) -> &'static str {
    if have.fails.contains(&rule) {
        words::FAILS
    } else {
        words::PASSES
    }
}

fn fuse(leg: &LegAnswer, protection: &Protection) -> impl IntoView + use<> {
    let rows = protection.kinds.iter().map(|kind| {
        let (breaks, suits) = say::kind_text(protection, kind);
        vec![
            say::fuse_kind_name(kind.kind).to_owned(),
            breaks,
            suits.to_owned(),
        ]
    });
    let is_wrong = !protection.fitted_faults.is_empty();
    let fitted = say::fitted_text(protection);
    let fitted = fitted.map(|text| {
        view! { <p class=is_wrong.then_some("fuse-wrong")>{text}</p> }
    });
    let recommended = format!("{}: {}", words::RECOMMENDED, say::fuse_text(protection));
    let place = format!("{}: {}", words::PLACE, say::place_text(protection));
    let heads = vec![words::KIND, words::BREAKS, words::HERE];
    view! {
        <h4>{words::THE_FUSE}</h4>
        {fitted}
        {lines(say::start_above_text(leg))}
        <p>{recommended}</p>
        <p>
            {place}
            " "
            {say::source_text(leg.leg)}
        </p>
        <p>{say::fault_text(protection)}</p>
        <Table class="kinds-of-fuse" heads=heads rows=rows.collect() />
        <p class="hint">{words::KINDS_SOURCE}</p>
        <p class="hint">{say::marine_text(protection)}</p>
    }
}
