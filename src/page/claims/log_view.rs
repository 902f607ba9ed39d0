//! What an open log says, and its way into the plan.

use super::{edges, file::Bench, into};
use crate::{
    answer::log::{self, LogMeter, LogReport, Means},
    page::{
        dom::{El, button, h, text_of},
        field::choice,
        reactive::*,
        state::State,
    },
    range,
    wording::claims::{self as say, words},
};

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

/// The figures of the log; nothing while none is open.
pub fn log_view(state: State, bench: Bench) -> El {
    let is_open = move || bench.log.with(Option::is_some).to_string();
    h("div", "log").live_children(is_open, move || {
        if bench.log.with_untracked(Option::is_none) {
            return Vec::new();
        }
        let report = bench.figures.report(bench);
        let invented = h("p", "hint").live_text(move || {
            if bench.is_invented.get() {
                words::INVENTED.into()
            } else {
                String::new()
            }
        });
        vec![
            invented,
            edges::chart(state, bench),
            totals(report),
            sentences(report),
            rows(bench, report),
            meter(bench),
            offset(bench, report),
            into_plan(state, bench, report),
            edges::table(state, bench),
        ]
    })
}

type Reported = Memo<Option<LogReport>>;

fn totals(report: Reported) -> El {
    let key = move || report.with(|report| format!("{report:?}"));
    h("div", "").live_children(key, move || {
        let Some(report) = report.get_untracked() else {
            return Vec::new();
        };
        let row = |head: &str, text: Option<String>| {
            text.map(|text| {
                h("tr", "")
                    .child(h("th", "").attr("scope", "row").text(head))
                    .child(h("td", "").text(&text))
            })
        };
        let means = |m: Option<Means>, unit| m.map(|m| say::means_text(m, unit));
        let total = |t: Option<(f64, Option<f64>)>, unit| t.map(|t| say::total_text(t, unit));
        let rows = [
            row(words::LASTED, Some(say::lasted_text(&report))),
            row(words::CHARGE, total(report.ah, "Ah")),
            row(words::ENERGY, total(report.wh, "Wh")),
            row(words::VOLTS, means(report.volts, "V")),
            row(words::AMPS, means(report.amps, "A")),
            row(words::WATTS, means(report.watts, "W")),
        ];
        vec![h("table", "totals").child(h("tbody", "").children(rows.into_iter().flatten()))]
    })
}

/// The run's end, gaps, and whether the rows follow the load.
fn sentences(report: Reported) -> El {
    let all = move || {
        let mut all = Vec::new();
        if let Some(report) = report.get() {
            all.extend(report.end.as_ref().map(say::end_sentence));
            if !report.gaps_h.is_empty() {
                all.push(say::gap_sentence(&report));
            }
            all.push(say::sampling_sentence(report.sampling));
            all.retain(|text| !text.is_empty());
        }
        all
    };
    h("ul", "findings").live_children(
        move || all().join("\n"),
        move || all().iter().map(|text| h("li", "").text(text)).collect(),
    )
}

/// What was done to the rows.
fn rows(bench: Bench, report: Reported) -> El {
    h("p", "detail").live_text(move || {
        let (log, report) = (bench.log.get(), report.get());
        let both = log.zip(report);
        both.map_or_else(String::new, |(log, report)| {
            say::rows_text(&log.notes, &report)
        })
    })
}

fn meter(bench: Bench) -> El {
    choice(
        "log-meter",
        words::LOG_METER,
        || words::LOG_METERS.map(str::to_owned).to_vec(),
        move || {
            let meter = bench.meter.get();
            METERS.iter().position(|&one| one == meter).unwrap_or(0)
        },
        move |at| bench.meter.set(METERS.get(at).copied().unwrap_or_default()),
    )
}

fn offset(bench: Bench, report: Reported) -> El {
    let trouble = RwSignal::new("");
    let typed = RwSignal::new(String::new());
    let input = h("input", "")
        .attr("id", "log-offset")
        .attr("type", "text")
        .attr("autocomplete", "off")
        .attr("aria-describedby", "log-offset-error log-offset-hint")
        .attr("placeholder", "0")
        .on("change", move |event| {
            let text = text_of(&event);
            typed.set(text.clone());
            let number = say::offset_of(&text, range::OFFSET_A);
            trouble.set(number.map_or(words::OFFSET_BAD, |_| ""));
            if let Some(number) = number {
                bench.offset_a.set(number);
            }
        });
    let field: web_sys::HtmlInputElement = wasm_bindgen::JsCast::unchecked_into(input.0.clone());
    let read = button("quiet", words::OFFSET_FROM_LOG, move || {
        let found = bench.log.get_untracked();
        match found.and_then(|log| log::resting_offset_a(&log)) {
            Some(amps) => {
                trouble.set("");
                field.set_value(&say::plainly(amps));
                bench.offset_a.set(amps);
            }
            None => trouble.set(words::OFFSET_NONE),
        }
    });
    let effect = move || {
        let ah = report.with(|report| report.as_ref().map_or(0.0, |r| r.offset_ah));
        if ah == 0.0 {
            String::new()
        } else {
            say::offset_sentence(ah)
        }
    };
    h("div", "field")
        .child(h("label", "").attr("for", "log-offset").text(words::OFFSET))
        .child(
            h("span", "entry")
                .child(input)
                .child(h("span", "unit").text("A")),
        )
        .child(
            h("p", "error")
                .attr("id", "log-offset-error")
                .live_text(move || trouble.get().into()),
        )
        .child(h("p", "echo").attr("role", "status").live_text(effect))
        .child(
            h("p", "hint")
                .attr("id", "log-offset-hint")
                .text(words::OFFSET_HINT),
        )
        .child(read)
}

fn into_plan(state: State, bench: Bench, report: Reported) -> El {
    let bank = button("", words::MAKE_BANK, move || {
        let Some(report) = report.get_untracked() else {
            return;
        };
        let (mut taken, bank) = (false, bench.bank.get_untracked());
        state.edit(|plan| taken = log::to_bank(plan, bank, &report));
        bench.said.set(if taken {
            words::TAKEN
        } else {
            words::NOT_TAKEN
        });
    });
    let claims = button("quiet", words::MAKE_CLAIMS, move || {
        if let Some(report) = report.get_untracked() {
            let bank = bench.bank.get_untracked();
            let name = if bench.is_invented.get_untracked() {
                words::INVENTED_NAME
            } else {
                ""
            };
            state.edit(|plan| log::to_claims(plan, bank, &report, name));
            bench.said.set(words::TAKEN);
        }
    });
    let which = into::bank_choice(
        state,
        "log-bank",
        words::LOG_BANK,
        move || bench.bank.get(),
        move |at| bench.bank.set(at),
    );
    h("div", "")
        .child(which)
        .child(h("div", "buttons").child(bank).child(claims))
        .child(
            h("p", "hint")
                .attr("role", "status")
                .live_text(move || bench.said.get().into()),
        )
}
