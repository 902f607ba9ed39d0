//! What the batteries are asked and bear; and the panels' side.

use super::{Answered, OfAnswer, Table, lines};
use crate::page::locale::formatter;
use crate::page::locale::say;
use crate::text::m;
use crate::{
    answer::wiring::{BankLimits, Burden, WiringAnswer},
    plan::Plan,
    text::wiring::{self as say, words},
};
use leptos::prelude::*;

/// The batteries, through series and parallel.
#[component]
pub fn Batteries(answer: Answered) -> impl IntoView {
    let show = |_: &Plan, answer: &WiringAnswer| {
        let bank = answer.bank.as_ref();
        bank.map_or_else(|| ().into_any(), of_bank)
    };
    view! { <OfAnswer answer=answer show=show /> }
}

fn of_bank(bank: &BankLimits) -> AnyView {
    let row = |name: &str, burden: &Burden| {
        let name = std::iter::once(name.to_owned());
        name.chain(say::burden_row(formatter(), burden))
            .collect::<Vec<_>>()
    };
    let rows = [
        (say(m::WiringForHours), Some(&bank.continuous)),
        (say(m::WiringAtStart), Some(&bank.start)),
        (say(m::WiringOneOpen), bank.one_open.as_ref()),
        (say(m::WiringCharging), bank.charge.as_ref()),
    ];
    let rows = rows
        .iter()
        .filter_map(|(name, burden)| Some(row(name, (*burden)?)));
    let said = [
        say::start_line(formatter(), bank),
        say::take_off_line(formatter(), bank),
        say::string_fuse_line(formatter(), bank),
    ];
    view! {
        <h3>{say(m::WiringBatteries)}</h3>
        <Table class="burdens" heads=words::burden_heads(formatter()).into() rows=rows.collect() />
        {lines(said.into_iter().flatten())}
    }
    .into_any()
}

/// The panels, if there are any.
#[component]
pub fn Panels(answer: Answered) -> impl IntoView {
    let show = |_: &Plan, answer: &WiringAnswer| {
        let Some(side) = &answer.solar else {
            return ().into_any();
        };
        view! {
            <h3>{say(m::WiringPanels)}</h3>
            {lines(say::solar_lines(formatter(), side))}
        }
        .into_any()
    };
    view! { <OfAnswer answer=answer show=show /> }
}
