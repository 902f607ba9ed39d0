//! The books of the hot day as flows: energy of the bank, heat of the cabin.

use super::Shown;
use crate::{
    answer::day::DayAnswer,
    text::{Formatter, pictures as say},
    view::diagram::flows::{Balance, Flow, flows},
};

/// Looks by place, those of the chart of power: loads, sun, chargers, unit.
const LOADS: usize = 0;
const SUN: usize = 1;
const CHARGERS: usize = 2;
const UNIT: usize = 3;
/// What is none of these.
const OTHER: usize = 4;

/// A term of a book: its name where it comes in and where it goes out, how much came
/// in (below zero: went out), and its looks.
type Term = ([&'static str; 2], f64, usize);

/// The energy book of a day at a width in pixels.
#[must_use]
pub fn energy_flows(f: Formatter, day: &DayAnswer, width: f64) -> Shown {
    shown(
        f,
        say::ENERGY,
        say::ENERGY_CAPTION,
        &energy_balance(f, day),
        width,
    )
}

/// The heat book of a day.
#[must_use]
pub fn heat_flows(f: Formatter, day: &DayAnswer, width: f64) -> Shown {
    shown(
        f,
        say::HEAT,
        say::HEAT_CAPTION,
        &heat_balance(f, day),
        width,
    )
}

fn shown(
    f: Formatter,
    title: &'static str,
    caption: &'static str,
    balance: &Balance,
    width: f64,
) -> Shown {
    let all = balance
        .ins
        .iter()
        .chain(&balance.outs)
        .chain(&balance.spilled);
    let told: Vec<String> = all
        .map(|flow| format!("{}: {}", flow.name, flow.text))
        .collect();
    Shown {
        title,
        caption: caption.into(),
        told: say::told(f, title, &told),
        picture: flows(balance, width).picture,
    }
}

/// The terms of the energy book: panels, chargers and the bank's store against unit,
/// loads and losses.
#[must_use]
pub fn energy_balance(f: Formatter, day: &DayAnswer) -> Balance {
    let book = &day.energy;
    let terms: [Term; 6] = [
        ([say::FROM_PANELS; 2], book.solar_wh, SUN),
        ([say::FROM_CHARGERS; 2], book.charger_wh, CHARGERS),
        ([say::FROM_BANK, say::TO_BANK], book.from_store_wh, OTHER),
        ([say::TO_UNIT; 2], -book.unit_wh, UNIT),
        ([say::TO_LOADS; 2], -book.loads_wh, LOADS),
        ([say::TO_LOSSES; 2], -book.lost_wh, OTHER),
    ];
    let spilled = Flow {
        name: say::SPILLED.into(),
        value: book.spilled_wh,
        text: say::not_taken(f, book.spilled_wh),
        style: SUN,
    };
    Balance {
        spilled: is_seen(book.spilled_wh).then_some(spilled),
        ..balance(f, &terms)
    }
}

/// The terms of the heat book: what came in by each way against what the unit took and
/// what stayed.
#[must_use]
pub fn heat_balance(f: Formatter, day: &DayAnswer) -> Balance {
    let heat = &day.heat;
    let ways = [
        (heat.sun_glass_wh, SUN),
        (heat.sun_shell_wh, SUN),
        (heat.glass_wh, LOADS),
        (heat.shell_wh, LOADS),
        (heat.air_change_wh, CHARGERS),
        (heat.people_wh, OTHER),
        (heat.gains_wh, OTHER),
    ];
    let ways = say::HEAT_WAYS.into_iter().zip(ways);
    let mut terms: Vec<Term> = ways
        .map(|(names, (wh, style))| (names, wh, style))
        .collect();
    terms.push(([say::UNIT_HEAT; 2], -heat.unit_wh, UNIT));
    terms.push((say::HEAT_STORED, -heat.stored_wh, OTHER));
    balance(f, &terms)
}

/// What rounds to nothing is no flow.
fn is_seen(wh: f64) -> bool {
    wh.is_finite() && wh.abs() >= 0.05
}

fn balance(f: Formatter, terms: &[Term]) -> Balance {
    let seen = || terms.iter().filter(|(_, wh, _)| is_seen(*wh));
    let of_side = |sign: f64| seen().filter(move |(_, wh, _)| sign * wh > 0.0);
    let in_wh: f64 = of_side(1.0).map(|(_, wh, _)| wh).sum();
    let flow = |name: &'static str, wh: f64, style: usize| Flow {
        name: name.into(),
        value: wh,
        text: say::flow(f, wh, in_wh),
        style,
    };
    let ins = of_side(1.0).map(|&(names, wh, style)| flow(names[0], wh, style));
    let outs = of_side(-1.0).map(|&(names, wh, style)| flow(names[1], -wh, style));
    Balance {
        ins: ins.collect(),
        outs: outs.collect(),
        spilled: None,
        heads: say::FLOW_SIDES.map(String::from),
        sum: say::in_all(f, in_wh),
    }
}
