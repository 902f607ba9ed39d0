//! The books of the hot day as flows: energy of the bank, heat of the cabin.

use super::Shown;
use crate::{
    answer::day::DayAnswer,
    text::{Formatter, m, pictures as say},
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
        f.say(m::PictureEnergy),
        f.say(m::PictureEnergyCaption),
        &energy_balance(f, day),
        width,
    )
}

/// The heat book of a day.
#[must_use]
pub fn heat_flows(f: Formatter, day: &DayAnswer, width: f64) -> Shown {
    shown(
        f.say(m::PictureHeat),
        f.say(m::PictureHeatCaption),
        &heat_balance(f, day),
        width,
    )
}

fn shown(title: &'static str, caption: &'static str, balance: &Balance, width: f64) -> Shown {
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
        told: say::told(title, &told),
        picture: flows(balance, width).picture,
    }
}

/// The terms of the energy book: panels, chargers and the bank's store against unit,
/// loads and losses.
#[must_use]
pub fn energy_balance(f: Formatter, day: &DayAnswer) -> Balance {
    let book = &day.energy;
    let terms: [Term; 6] = [
        ([f.say(m::PictureFromPanels); 2], book.solar_wh, SUN),
        (
            [f.say(m::PictureFromChargers); 2],
            book.charger_wh,
            CHARGERS,
        ),
        (
            [f.say(m::PictureFromBank), f.say(m::PictureToBank)],
            book.from_store_wh,
            OTHER,
        ),
        ([f.say(m::PictureToUnit); 2], -book.unit_wh, UNIT),
        ([f.say(m::PictureToLoads); 2], -book.loads_wh, LOADS),
        ([f.say(m::PictureToLosses); 2], -book.lost_wh, OTHER),
    ];
    let spilled = Flow {
        name: f.say(m::PictureSpilled).into(),
        value: book.spilled_wh,
        text: f.energy(book.spilled_wh),
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
    let ways = say::heat_ways(f).into_iter().zip(ways);
    let mut terms: Vec<Term> = ways
        .map(|(names, (wh, style))| (names, wh, style))
        .collect();
    terms.push(([f.say(m::PictureUnitHeat); 2], -heat.unit_wh, UNIT));
    terms.push((
        [f.say(m::PictureHeatFromStore), f.say(m::PictureHeatToStore)],
        -heat.stored_wh,
        OTHER,
    ));
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
        heads: say::flow_sides(f).map(String::from),
        sum: f.say(m::PictureInAll {
            energy: f.energy(in_wh),
        }),
    }
}
