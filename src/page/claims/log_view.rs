//! What an open log says, and its way into the plan.

use super::{
    edges::{StretchChart, Stretches},
    file::Bench,
    into::BankChoice,
    night::OneNight,
};
use crate::page::locale::{formatter, say};
use crate::text::m;
use crate::{
    answer::log::{self, LogMeter, LogReport, Means},
    page::{
        field::Choice,
        kit::{Press, Sentences, anew},
        state::State,
    },
    text::claims as say,
};
use leptos::{html, prelude::*};

const METERS: [LogMeter; 3] = [
    LogMeter {
        is_clamp: false,
        shunt_a: 100.0,
    },
    LogMeter {
        is_clamp: false,
        shunt_a: 500.0,
    },
    LogMeter {
        is_clamp: true,
        shunt_a: 500.0,
    },
];

type Reported = Memo<Option<LogReport>>;

/// The figures of the log; nothing while none is open.
#[component]
pub fn LogView() -> impl IntoView {
    let bench = Bench::here();
    let inside = |is_open: bool| is_open.then(|| view! { <OpenLog /> }).into_any();
    view! { <div class="log">{anew(move || bench.log.with(Option::is_some), inside)}</div> }
}

#[component]
fn OpenLog() -> impl IntoView {
    let bench = Bench::here();
    let report = bench.figures.report(bench);
    let invented = move || {
        if bench.is_invented.get() {
            say(m::LogInvented)
        } else {
            ""
        }
    };
    // What was done to the rows.
    let rows = move || {
        let both = bench.log.get().zip(report.get());
        both.map_or_else(String::new, |(log, report)| {
            say::rows_text(formatter(), &log.notes, &report)
        })
    };
    view! {
        <p class="hint">{invented}</p>
        <StretchChart />
        <Totals report=report />
        <Sentences class="findings" all=move || sentences(report) />
        <p class="detail">{rows}</p>
        <Meter />
        <Offset report=report />
        <IntoPlan report=report />
        <OneNight />
        <Stretches />
    }
}

#[component]
fn Totals(report: Reported) -> impl IntoView {
    let means = |m: Option<Means>, unit| m.map(|m| say::means_text(formatter(), m, unit));
    let total =
        |t: Option<(f64, Option<f64>)>, unit| t.map(|t| say::total_text(formatter(), t, unit));
    let rows = move || {
        let Some(report) = report.get() else {
            return Vec::new();
        };
        let rows = [
            (
                say(m::LogDuration),
                Some(say::lasted_text(formatter(), &report)),
            ),
            (say(m::LogCharge), total(report.ah, "Ah")),
            (say(m::LogEnergy), total(report.wh, "Wh")),
            (say(m::LogVolts), means(report.volts, "V")),
            (say(m::LogAmps), means(report.amps, "A")),
            (say(m::LogWatts), means(report.watts, "W")),
        ];
        let there = rows.into_iter().filter_map(|(head, text)| {
            let text = text?;
            Some(view! {
                <tr>
                    <th scope="row">{head}</th>
                    <td>{text}</td>
                </tr>
            })
        });
        there.collect()
    };
    view! {
        <div>
            <table class="totals">
                <tbody>{rows}</tbody>
            </table>
        </div>
    }
}

/// The run's end, gaps, and whether the rows follow the load.
fn sentences(report: Reported) -> Vec<String> {
    let mut all = Vec::new();
    if let Some(report) = report.get() {
        all.extend(
            report
                .end
                .as_ref()
                .map(|end| say::end_sentence(formatter(), end)),
        );
        if !report.gaps_h.is_empty() {
            all.push(say::gap_sentence(formatter(), &report));
        }
        all.push(say::sampling_sentence(formatter(), report.sampling));
        all.retain(|text| !text.is_empty());
    }
    all
}

#[component]
fn Meter() -> impl IntoView {
    let bench = Bench::here();
    let chosen = move || {
        let meter = bench.meter.get();
        METERS.iter().position(|&one| one == meter).unwrap_or(0)
    };
    view! {
        <Choice
            id="log-meter"
            label=say(m::LogMeter)
            names=|| METERS.map(|one| say::log_meter_name(formatter(), one)).to_vec()
            chosen=chosen
            choose=move |at| bench.meter.set(METERS.get(at).copied().unwrap_or_default())
        />
    }
}

/// What the meter shows at rest.
#[component]
fn Offset(report: Reported) -> impl IntoView {
    let bench = Bench::here();
    let trouble = RwSignal::new(String::new());
    let field = NodeRef::<html::Input>::new();
    let typed = move |event| match say::offset_of(&event_target_value(&event)) {
        Some(number) => {
            trouble.set(String::new());
            bench.offset_a.set(number);
        }
        None => trouble.set(say::offset_bad(formatter())),
    };
    let read = move || {
        let found = bench.log.get_untracked();
        match found.and_then(|log| log::resting_offset_a(&log)) {
            Some(amps) => {
                trouble.set(String::new());
                if let Some(field) = field.get_untracked() {
                    field.set_value(&say::plainly(amps));
                }
                bench.offset_a.set(amps);
            }
            None => trouble.set(say(m::LogOffsetNone).into()),
        }
    };
    let effect = move || {
        let ah = report.with(|report| report.as_ref().map_or(0.0, |r| r.offset_ah));
        if ah == 0.0 {
            String::new()
        } else {
            say::offset_sentence(formatter(), ah)
        }
    };
    view! {
        <div class="field">
            <label for="log-offset">{say(m::LogOffset)}</label>
            <span class="entry">
                <input
                    node_ref=field
                    id="log-offset"
                    type="text"
                    autocomplete="off"
                    aria-describedby="log-offset-error log-offset-hint"
                    placeholder="0"
                    on:change=typed
                />
                <span class="unit">"A"</span>
            </span>
            <p class="error" id="log-offset-error">
                {trouble}
            </p>
            <p class="echo" role="status">
                {effect}
            </p>
            <p class="hint" id="log-offset-hint">
                {say::offset_hint(formatter())}
            </p>
            <Press class="quiet" words=say(m::LogOffsetFromLog) press=read />
        </div>
    }
}

#[component]
fn IntoPlan(report: Reported) -> impl IntoView {
    let (state, bench) = (State::here(), Bench::here());
    let to_bank = move || {
        let Some(report) = report.get_untracked() else {
            return;
        };
        let (mut taken, bank) = (false, bench.bank.get_untracked());
        state.edit(|plan| taken = log::to_bank(plan, bank, &report));
        bench.said.set(if taken {
            say(m::LogTaken)
        } else {
            say(m::LogNotTaken)
        });
    };
    let to_claims = move || {
        let Some(report) = report.get_untracked() else {
            return;
        };
        let bank = bench.bank.get_untracked();
        let name = if bench.is_invented.get_untracked() {
            say(m::LogInventedName)
        } else {
            ""
        };
        state.edit(|plan| log::to_claims(plan, bank, &report, name));
        bench.said.set(say(m::LogTaken));
    };
    view! {
        <div>
            <BankChoice
                id="log-bank"
                label=say(m::LogBank)
                now=move || bench.bank.get()
                set=move |at| bench.bank.set(at)
            />
            <div class="buttons">
                <Press words=say(m::LogMakeBank) press=to_bank />
                <Press class="quiet" words=say(m::LogMakeClaims) press=to_claims />
            </div>
            <p class="hint" role="status">
                {bench.said}
            </p>
        </div>
    }
}
