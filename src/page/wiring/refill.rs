//! Can it be filled again: a sentence, what fills it as rows that open to their
//! working, curves, and where the days lead.

use super::{Table, lines};
use crate::page::locale::{formatter, say};
use crate::text::m;
use crate::{
    answer::{
        RefillAnswer,
        refill::{ChargerRefill, refill},
    },
    page::{
        chart::{ChartView, Plot},
        field::NumberField,
        kit::{Fold, Sentences, anew},
        margin::caution_view,
        outcome::Said,
        slices::{Lane, Late},
        state::State,
    },
    plan::finding::Severity,
    plan::{Path, Plan, supply::SupplyField as S},
    text::wiring::refill as say,
    view::drawing::{Drawing, RefillChart},
};
use leptos::prelude::*;
use std::{sync::Arc, time::Duration};

/// The answer, worked out a moment after the keys rest: it runs a fortnight.
#[derive(Clone, Copy)]
struct Answered {
    answer: Late<RefillAnswer>,
}

/// How long the keys rest first.
const REST: Duration = Duration::from_millis(120);

impl Answered {
    /// Nothing is worked out while the question is folded away.
    fn new(state: State, is_open: RwSignal<bool>) -> Self {
        let (lane, answer) = (Lane::new(), Late::new());
        Effect::new(move || {
            if !is_open.get() {
                return;
            }
            state.turn();
            answer.expect();
            lane.begin_after(REST, move |_| async move {
                answer.put(state.plan_now(refill));
            });
        });
        Self { answer }
    }

    /// That of the part that a component stands in.
    fn here() -> Self {
        expect_context()
    }

    fn of<R: Default>(self, state: State, of: impl FnOnce(&Plan, &RefillAnswer) -> R) -> R {
        let answer = self.answer.get();
        answer.map_or_else(R::default, |answer| {
            state.with_plan(|plan| of(plan, &answer))
        })
    }

    fn of_charger<R: Default>(self, at: usize, read: impl FnOnce(&ChargerRefill) -> R) -> R {
        let answer = self.answer.get();
        let found = answer.as_ref().and_then(|answer| answer.chargers.get(at));
        found.map(read).unwrap_or_default()
    }
}

/// The whole part.
#[component]
pub fn Refill(is_open: RwSignal<bool>) -> impl IntoView {
    let state = State::here();
    let answered = Answered::new(state, is_open);
    provide_context(answered);
    let plots = move || {
        let plots = RefillChart::ALL.into_iter();
        let plot = |chart| view! { <ChartView plot=plot(state, answered, chart) /> };
        plots.map(plot).collect_view()
    };
    // Without a charger there is no curve, and nothing true to say below one.
    let charges = |one: &ChargerRefill| one.idle.curve.len() > 1;
    let without = Signal::derive(move || {
        !answered.of(state, |_, answer| answer.chargers.iter().any(charges))
    });
    let fields = || {
        let fields = [
            S::RefillFromPercent,
            S::RefillToPercent,
            S::FuelPricePerL,
            S::ShorePricePerKwh,
        ];
        let field = |field| view! { <NumberField path=Path::Supply(field) at="refill" /> };
        fields.map(field).collect_view()
    };
    view! {
        <div class="refill">
            <h3 id="refill">{say(m::ChargingTitle)}</h3>
            <Outcome />
            <Sources />
            <Fold title=|| say(m::ChargingCurves) hidden=without>{plots()}</Fold>
            <Fold title=|| say(m::ChargingFields)>
                <div class="grid">{fields()}</div>
            </Fold>
        </div>
    }
}

#[component]
fn Outcome() -> impl IntoView {
    let (state, answered) = (State::here(), Answered::here());
    let sentence = move || match answered.answer.get() {
        Some(answer) => state.with_plan(|plan| say::headline(formatter(), plan, &answer)),
        None if answered.answer.is_coming() => say(m::ChargingWaiting).into(),
        None => say(m::ChargingNoAnswer).into(),
    };
    let from = move || {
        answered.of(state, |plan, answer| {
            say::from_line(formatter(), plan, answer)
        })
    };
    let course = move || {
        answered.of(state, |_, answer| {
            let days = answer.days.as_ref();
            days.map_or_else(String::new, |days| {
                say::course(formatter(), days, answer.to_percent)
            })
        })
    };
    view! {
        <div class:behind=move || answered.answer.is_behind()>
            <Said
                id="refill-answer"
                sentence=sentence
                details=move || view! { <p class="detail">{course}</p> }
            >
                <Sentences class="findings" all=move || notes(state, answered) />
                <p class="hint">{from}</p>
            </Said>
        </div>
    }
}

/// What must be corrected and what should be known first. Plain notes of a charger
/// stand in its row.
fn notes(state: State, answered: Answered) -> Vec<String> {
    answered.of(state, |plan, answer| {
        let first = answer.notes.iter().filter(|note| {
            note.severity != Severity::Note || say::charger_of(&note.matter).is_none()
        });
        first
            .filter_map(|note| say::note(formatter(), plan, answer, note))
            .collect()
    })
}

/// A row for each charger, and one for the sun.
#[component]
fn Sources() -> impl IntoView {
    let (state, answered) = (State::here(), Answered::here());
    // Rows are built anew only when chargers come and go, so that an open one
    // stays open while its numbers change.
    let shape = move || {
        answered.of(state, |plan, answer| {
            let chargers = answer.chargers.iter();
            let names = chargers.map(|one| say::charger_name(formatter(), plan, one));
            (names.collect::<Vec<_>>(), answer.sun.is_some())
        })
    };
    let rows = |(names, has_sun): (Vec<String>, bool)| {
        let has_any = has_sun || !names.is_empty();
        let rows = names.into_iter().enumerate();
        let row = |(at, name)| view! { <ChargerRow at=at name=name /> };
        view! {
            {has_any.then(|| view! { <h4>{say(m::ChargingSources)}</h4> })}
            {rows.map(row).collect_view()}
            {has_sun.then(|| view! { <SunRow /> })}
        }
        .into_any()
    };
    view! { <div class="sources-of-charge">{anew(shape, rows)}</div> }
}

#[component]
fn SourceRow(
    #[prop(into)] id: String,
    #[prop(into)] name: String,
    verdict: impl Fn() -> String + Send + Sync + 'static,
    fails: impl Fn() -> bool + Send + Sync + 'static,
    children: Children,
) -> impl IntoView {
    view! {
        <details class="fold source" id=id>
            <summary>
                <span class="source-name">{name}</span>
                <span class="source-verdict" class:fails=fails>
                    {verdict}
                </span>
            </summary>
            <div class="fold-body">
                <div>{children()}</div>
            </div>
        </details>
    }
}

#[component]
fn ChargerRow(at: usize, name: String) -> impl IntoView {
    let (state, answered) = (State::here(), Answered::here());
    let said = Memo::new(move |_| {
        answered.of(state, |plan, answer| {
            let charger = answer.chargers.get(at);
            charger.map_or_else(Vec::new, |charger| charger_lines(plan, answer, charger))
        })
    });
    let cautions = Memo::new(move |_| {
        let kind = answered.of_charger(at, |one| Some(one.kind));
        kind.map_or_else(Vec::new, |kind| {
            state.with_plan(|plan| say::cautions(formatter(), plan, kind))
        })
    });
    let cautions = move || {
        let one = |caution| view! { <p class="caution">{caution_view(caution)}</p> };
        cautions.get().into_iter().map(one).collect_view()
    };
    view! {
        <SourceRow
            id=format!("charger-{at}")
            name=name
            verdict=move || answered.of_charger(at, |one| say::charger_verdict(formatter(), &one.idle))
            fails=move || answered.of_charger(at, |one| !one.idle.is_filled)
        >
            {move || lines(said.get())}
            {cautions}
        </SourceRow>
    }
}

fn charger_lines(plan: &Plan, answer: &RefillAnswer, charger: &ChargerRefill) -> Vec<String> {
    let mut lines = say::charger_lines(formatter(), plan, charger);
    let own = answer.notes.iter().filter(|note| {
        note.severity == Severity::Note && say::charger_of(&note.matter) == Some(charger.charger)
    });
    lines.extend(own.filter_map(|note| say::note(formatter(), plan, answer, note)));
    lines
}

#[component]
fn SunRow() -> impl IntoView {
    let (state, answered) = (State::here(), Answered::here());
    let verdict = move || {
        answered.of(state, |plan, answer| {
            let sun = answer.sun.as_ref();
            sun.map_or_else(String::new, |sun| say::sun_verdict(formatter(), plan, sun))
        })
    };
    let fails = move || {
        answered.of(state, |_, answer| {
            let sun = answer.sun.as_ref();
            sun.is_some_and(|sun| sun.tomorrow.repaid_h.is_none())
        })
    };
    let turn = move || (state.turn(), answered.answer.is_coming());
    let body = move |_| {
        answered
            .of(state, |plan, answer| {
                let sun = answer.sun.as_ref()?;
                let skies = std::iter::once(&sun.tomorrow).chain(&sun.skies);
                let rows = skies
                    .map(|sky| say::sky_row(formatter(), plan, sky))
                    .collect();
                Some(view! {
                    {lines(say::sun_lines(formatter(), plan, answer, sun))}
                    <Table class="" heads=say::sky_heads(formatter()).into() rows=rows />
                })
            })
            .into_any()
    };
    view! {
        <SourceRow id="sun-alone" name=say(m::ChargingSun) verdict=verdict fails=fails>
            {anew(turn, body)}
        </SourceRow>
    }
}

fn plot(state: State, answered: Answered, chart: RefillChart) -> Plot {
    let draw = move || -> Drawing {
        answered.of(state, |plan, answer| chart.draw(formatter(), plan, answer))
    };
    Plot {
        titles: chart.titles(formatter()),
        draw: Arc::new(draw),
    }
}
