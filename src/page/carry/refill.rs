//! Can it be filled again: a sentence, what fills it as rows that open to their
//! working, curves, and where the days lead.

use super::table;
use crate::{
    answer::{
        RefillAnswer,
        refill::{ChargerRefill, refill},
    },
    drawing::{Drawing, RefillChart},
    finding::Severity,
    page::{
        chart::{Plot, chart_view},
        dom::{El, always, follow_fold, h, named_fold},
        field::number_field_at,
        outcome::{said, sentences},
        reactive::*,
        slices::{Late, Line},
        state::State,
    },
    plan::{Path, Plan, supply::SupplyField as S},
    wording::carry::refill as say,
};
use std::{rc::Rc, time::Duration};

/// The answer, worked out a moment after the keys rest: it runs a fortnight.
#[derive(Clone, Copy)]
struct Answered {
    answer: Late<RefillAnswer>,
}

/// How long the keys rest first.
const REST: Duration = Duration::from_millis(120);

impl Answered {
    fn new(state: State, is_open: RwSignal<bool>) -> Self {
        let (line, answer) = (Line::new(), Late::new());
        always(move || {
            if !is_open.get() {
                return;
            }
            state.turn();
            answer.expect();
            line.begin_after(REST, move |_| answer.put(state.plan_now(refill)));
        });
        Self { answer }
    }

    fn of<R: Default>(self, state: State, of: impl FnOnce(&Plan, &RefillAnswer) -> R) -> R {
        let answer = self.answer.get();
        answer.map_or_else(R::default, |answer| {
            state.with_plan(|plan| of(plan, &answer))
        })
    }
}

/// The whole part.
pub fn refill_part(state: State) -> El {
    let open = RwSignal::new(true);
    let answered = Answered::new(state, open);
    let part = h("div", "refill");
    // Nothing is worked out while the question is folded away.
    follow_fold(&part, open);
    part.child(h("h3", "").attr("id", "refill").text(say::TITLE))
        .child(outcome(state, answered))
        .child(sources(state, answered))
        .child(named_fold("fold", say::CURVES, move || {
            let plots = RefillChart::ALL.into_iter();
            plots.map(|chart| plot(state, answered, chart)).collect()
        }))
        .child(named_fold("fold", say::FIELDS, move || {
            let fields = [
                S::RefillFromPercent,
                S::RefillToPercent,
                S::FuelPricePerL,
                S::ShorePricePerKwh,
            ];
            let fields = fields.map(|field| number_field_at(state, Path::Supply(field), "refill"));
            vec![h("div", "grid").children(fields)]
        }))
}

fn outcome(state: State, answered: Answered) -> El {
    let sentence = move || match answered.answer.get() {
        Some(answer) => state.with_plan(|plan| say::headline(plan, &answer)),
        None if answered.answer.is_coming() => say::WAITING.into(),
        None => say::NO_ANSWER.into(),
    };
    let from = move || answered.of(state, say::from_line);
    let course = move || {
        answered.of(state, |_, answer| {
            let days = answer.days.as_ref();
            days.map_or_else(String::new, |days| say::course(days, answer.to_percent))
        })
    };
    said(
        state,
        "refill-answer",
        sentence,
        [h("p", "detail").live_text(course)],
    )
    .live_class("behind", move || answered.answer.is_behind())
    .child(notes(state, answered))
    .child(h("p", "hint").live_text(from))
}

/// What must be mended and what should be known first. Plain notes of a charger
/// stand in its row.
fn notes(state: State, answered: Answered) -> El {
    let all = move || {
        answered.of(state, |plan, answer| {
            let first = answer.notes.iter().filter(|note| {
                note.severity != Severity::Note || say::charger_of(&note.matter).is_none()
            });
            first
                .filter_map(|note| say::note(plan, answer, note))
                .collect::<Vec<_>>()
        })
    };
    sentences("findings", all)
}

/// A row for each charger, and one for the sun.
fn sources(state: State, answered: Answered) -> El {
    // Rows are built anew only when chargers come and go, so that an open one
    // stays open while its numbers change.
    let shape = move || {
        answered.of(state, |plan, answer| {
            let names = answer
                .chargers
                .iter()
                .map(|one| say::charger_name(plan, one));
            (names.collect::<Vec<_>>(), answer.sun.is_some())
        })
    };
    h("div", "sources-of-charge").live_children(
        move || format!("{:?}", shape()),
        move || {
            let (names, has_sun) = shape();
            let count = names.len();
            let rows = names
                .iter()
                .enumerate()
                .map(|(at, name)| charger_row(state, answered, at, name));
            let sun = has_sun.then(|| sun_row(state, answered));
            let title = (has_sun || count > 0).then(|| h("h4", "").text(say::SOURCES));
            title.into_iter().chain(rows).chain(sun).collect()
        },
    )
}

fn row(
    id: &str,
    name: &str,
    verdict: impl Fn() -> String + 'static,
    fails: impl Fn() -> bool + 'static,
    body: El,
) -> El {
    let summary = h("summary", "")
        .child(h("span", "source-name").text(name))
        .child(
            h("span", "source-verdict")
                .live_class("fails", fails)
                .live_text(verdict),
        );
    h("details", "fold source")
        .attr("id", id)
        .child(summary)
        .child(h("div", "fold-body").child(body))
}

fn charger_row(state: State, answered: Answered, at: usize, name: &str) -> El {
    fn of<R: Default>(answered: Answered, at: usize, read: impl FnOnce(&ChargerRefill) -> R) -> R {
        let answer = answered.answer.get();
        let found = answer.as_ref().and_then(|answer| answer.chargers.get(at));
        found.map(read).unwrap_or_default()
    }
    let lines = move || {
        answered.of(state, |plan, answer| {
            answer.chargers.get(at).map_or_else(Vec::new, |charger| {
                let mut lines = say::charger_lines(plan, charger);
                let own = answer.notes.iter().filter(|note| {
                    note.severity == Severity::Note
                        && say::charger_of(&note.matter) == Some(charger.charger)
                });
                lines.extend(own.filter_map(|note| say::note(plan, answer, note)));
                lines
            })
        })
    };
    let cautions = move || {
        let kind = of(answered, at, |one| Some(one.kind));
        kind.map_or_else(Vec::new, |kind| {
            state.with_plan(|plan| say::cautions(plan, kind))
        })
    };
    let said = h("div", "").live_children(
        move || lines().join("\n"),
        move || lines().iter().map(|text| h("p", "").text(text)).collect(),
    );
    let body = h("div", "").child(said).child(h("div", "").live_children(
        move || format!("{:?}", cautions()),
        move || {
            let all = cautions().into_iter();
            all.map(|(text, source)| {
                let caution = h("p", "caution").text(&text).text(" ");
                caution.child(h("cite", "").text(source))
            })
            .collect()
        },
    ));
    row(
        &format!("charger-{at}"),
        name,
        move || of(answered, at, |one| say::charger_verdict(&one.idle)),
        move || of(answered, at, |one| !one.idle.is_filled),
        body,
    )
}

fn sun_row(state: State, answered: Answered) -> El {
    let verdict = move || {
        answered.of(state, |plan, answer| {
            let sun = answer.sun.as_ref();
            sun.map_or_else(String::new, |sun| say::sun_verdict(plan, sun))
        })
    };
    let fails = move || {
        answered.of(state, |_, answer| {
            let sun = answer.sun.as_ref();
            sun.is_some_and(|sun| sun.tomorrow.repaid_h.is_none())
        })
    };
    let body = h("div", "").live_children(
        move || {
            let mark = if answered.answer.is_coming() {
                "behind"
            } else {
                ""
            };
            state.turn() + mark
        },
        move || {
            answered.of(state, |plan, answer| {
                answer.sun.as_ref().map_or_else(Vec::new, |sun| {
                    let lines = say::sun_lines(plan, answer, sun);
                    let lines = lines.iter().map(|text| h("p", "").text(text));
                    let skies = std::iter::once(&sun.tomorrow).chain(&sun.skies);
                    let rows = skies.map(|sky| say::sky_row(plan, sky)).collect();
                    lines.chain([table("", &say::SKY_HEADS, rows)]).collect()
                })
            })
        },
    );
    row("sun-alone", say::SUN, verdict, fails, body)
}

fn plot(state: State, answered: Answered, chart: RefillChart) -> El {
    let draw = move || -> Drawing { answered.of(state, |plan, answer| chart.draw(plan, answer)) };
    chart_view(
        state,
        Plot {
            titles: chart.titles(),
            draw: Rc::new(draw),
        },
    )
}
