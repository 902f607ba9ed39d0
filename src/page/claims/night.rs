//! The plan fitted to the night that is open, and its last third predicted.

use super::file::Bench;
use crate::{
    answer::log::{self, FittedNight, LEAST_H, Log, LoggedNight},
    page::{
        chart::{ChartView, Plot},
        kit::{Press, Sentences, anew},
        locale::{formatter, say},
        slices::{Lane, NO_REST, Superseded, Turn},
        state::State,
    },
    text::{claims as say, m},
    view::drawing::{Drawing, LoggedChart},
};
use leptos::prelude::*;
use std::sync::Arc;

/// What came of the last fit, and whether one is on its way.
#[derive(Clone, Copy)]
struct Fit {
    night: RwSignal<Option<Arc<LoggedNight>>>,
    is_busy: RwSignal<bool>,
    lane: Lane,
}

impl Fit {
    fn new() -> Self {
        Self {
            night: RwSignal::new(None),
            is_busy: RwSignal::new(false),
            lane: Lane::new(),
        }
    }

    /// Fits the plan as it stands to the log as it is read off.
    fn begin(self, state: State, bench: Bench) {
        let Some(log) = untrack(|| bench.figures.rested()) else {
            return;
        };
        self.is_busy.set(true);
        self.lane
            .begin_after(NO_REST, move |turn| self.work(state, bench, log, turn));
    }

    async fn work(
        self,
        state: State,
        bench: Bench,
        log: Arc<Log>,
        turn: Turn,
    ) -> Result<(), Superseded> {
        let meter = bench.meter.get_untracked();
        let plan = untrack(|| state.with_plan(Clone::clone));
        turn.rest().await?;
        let mut work = log::night(&plan, &log, meter);
        turn.run(1, || work.step()).await?;
        self.night.set(Some(Arc::new(work.finish())));
        self.is_busy.set(false);
        Ok(())
    }

    /// What was fitted to another log, or to one read off otherwise, is of this one no
    /// more; nor is what is on its way.
    fn forget(self) {
        self.lane.begin_after(NO_REST, |_| async {});
        self.is_busy.set(false);
        self.night.set(None);
    }

    /// Something of what was fitted; nothing where nothing was.
    fn of<T>(self, part: impl Fn(&FittedNight) -> T) -> Option<T> {
        self.night.with(|night| match night.as_deref() {
            Some(LoggedNight::Fitted(night)) => Some(part(night)),
            _ => None,
        })
    }
}

/// How the plan stands to the fit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Standing {
    /// Nothing was fitted.
    None,
    /// It is the plan that was fitted.
    Same,
    /// The fitted figures are in it.
    Taken,
    /// It was changed since.
    Changed,
}

/// The section of an open log.
#[component]
pub fn OneNight() -> impl IntoView {
    let (state, bench, fit) = (State::here(), Bench::here(), Fit::new());
    Effect::new(move || {
        bench.figures.rested();
        bench.meter.track();
        fit.forget();
    });
    let standing = Memo::new(move |_| {
        state.with_plan(|plan| {
            let of = fit.of(|night| match () {
                () if night.taken.as_deref() == Some(plan) => Standing::Taken,
                () if *night.of_plan == *plan => Standing::Same,
                () => Standing::Changed,
            });
            of.unwrap_or(Standing::None)
        })
    });
    let is_other = move || bench.bank.get() != 0;
    let said = move || match standing.get() {
        _ if is_other() => say(m::LogNightOtherBank).into(),
        _ if fit.is_busy.get() => say(m::LogNightFitting).into(),
        Standing::Taken => say(m::LogNightTaken).into(),
        Standing::Changed => say(m::LogNightChanged).into(),
        Standing::Same => String::new(),
        Standing::None => fit.night.with(|night| {
            let night = night.as_deref();
            night.map_or_else(String::new, |night| say::night_state(formatter(), night))
        }),
    };
    let take = move || {
        let taken = untrack(|| fit.of(|night| night.taken.clone())).flatten();
        if let Some(taken) = taken {
            state.edit(|plan| *plan = *taken);
        }
    };
    let no_fit = Signal::derive(move || {
        let has = matches!(standing.get(), Standing::Taken | Standing::Same);
        is_other() || fit.is_busy.get() || has
    });
    let no_take = Signal::derive(move || {
        let has = fit.of(|night| night.taken.is_some()) == Some(true);
        !has || standing.get() != Standing::Same
    });
    let shown = move || fit.night.get().map(|night| Arc::as_ptr(&night) as usize);
    let least = formatter().duration(LEAST_H);
    view! {
        <div class="one-night" id="log-night">
            <h3>{say(m::LogNightTitle)}</h3>
            <p class="hint">{say(m::LogNightHint { least })}</p>
            <div class="buttons">
                <Press
                    words=say(m::LogNightFit)
                    hidden=no_fit
                    press=move || fit.begin(state, bench)
                />
            </div>
            <p class="hint" role="status" id="log-night-said">
                {said}
            </p>
            {anew(shown, move |_| view! { <Outcome fit=fit /> }.into_any())}
            <Press words=say(m::LogNightTake) hidden=no_take press=take />
        </div>
    }
}

/// The figures before and after, what is to be known of them, and the prediction.
#[component]
fn Outcome(fit: Fit) -> impl IntoView {
    let state = State::here();
    let notes = move || {
        let night = fit.night.get();
        night.map_or_else(Vec::new, |night| {
            state.with_plan(|plan| say::night_notes(formatter(), plan, &night))
        })
    };
    view! {
        <Figures fit=fit />
        <Sentences class="findings" all=notes />
        <Predicted fit=fit />
    }
}

#[component]
fn Figures(fit: Fit) -> impl IntoView {
    let night = fit.night.get_untracked()?;
    let rows = say::night_rows(formatter(), &night);
    if rows.is_empty() {
        return None;
    }
    let heads = say::night_heads(formatter()).map(|text| view! { <th scope="col">{text}</th> });
    let rows = rows.into_iter().map(|row| {
        view! {
            <tr>
                <th scope="row">{row.name}</th>
                <td>{row.before}</td>
                <td>{row.after}</td>
                <td>{row.told}</td>
            </tr>
        }
    });
    Some(view! {
        <div class="scroll" tabindex="0" role="region" aria-label=say(m::LogNightTitle)>
            <table id="log-night-figures">
                <thead>
                    <tr>{heads.collect_view()}</tr>
                </thead>
                <tbody>{rows.collect_view()}</tbody>
            </table>
        </div>
    })
}

/// The last third: measured and predicted.
#[component]
fn Predicted(fit: Fit) -> impl IntoView {
    let night =
        untrack(|| fit.of(|night| night.ahead.clone().map(|it| (it, night.start_clock_min))));
    let (ahead, start_min) = night.flatten()?;
    let ahead = Arc::new(ahead);
    let charts = LoggedChart::ALL
        .into_iter()
        .filter(|chart| chart.is_in(&ahead));
    let charts = charts.map(|chart| {
        let ahead = ahead.clone();
        let draw = move || -> Drawing { chart.draw(formatter(), start_min, &ahead) };
        let plot = Plot {
            titles: chart.titles(formatter(), start_min),
            draw: Arc::new(draw),
        };
        view! { <ChartView plot=plot /> }
    });
    Some(view! {
        <div class="predicted">
            <h3>{say(m::LogNightPredicts)}</h3>
            <p class="hint">{say(m::LogNightPredictsHint)}</p>
            {charts.collect_view()}
        </div>
    })
}
