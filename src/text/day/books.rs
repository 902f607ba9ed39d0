//! The books of energy and heat, row by row.

use super::Calendar;
use crate::text::{Formatter, m};
use crate::{answer::day::DayAnswer, plan::Plan, range::Unit};

/// One row of the energy book: what, and how much of it in or out.
pub type BookRow = (&'static str, String);

/// The table of days: its head, then a row for each. Energies are in watt-hours;
/// chargers only where there are any.
#[must_use]
pub fn day_rows(f: Formatter, plan: &Plan, day: &DayAnswer) -> Vec<Vec<String>> {
    let calendar = Calendar::of(plan);
    let charged = day.energy.charger_wh > 0.0;
    let clock = f.clock(f64::from(day.start_clock_min));
    let mut heads = vec![
        f.say(m::DayHeadFrom { clock }),
        f.say(m::DayHeadPanels).into(),
        f.say(m::DayHeadUnit).into(),
        f.say(m::DayHeadLoads).into(),
        f.say(m::DayHeadLeast).into(),
        f.say(m::DayHeadEnd).into(),
    ];
    if charged {
        heads.insert(2, f.say(m::DayHeadChargers).into());
    }
    let wh = |value: f64| f.plain(value.round());
    let rows = day.days.iter().enumerate().map(|(at, sum)| {
        let mut row = vec![
            calendar.row(f, at),
            wh(sum.solar_wh),
            wh(sum.unit_wh),
            wh(sum.loads_wh),
            f.percent(sum.least_charge_percent),
            f.percent(sum.end_charge_percent),
        ];
        if charged {
            row.insert(2, wh(sum.charger_wh));
        }
        row
    });
    std::iter::once(heads).chain(rows).collect()
}

/// Where the energy came from and went.
#[must_use]
pub fn energy_rows(f: Formatter, day: &DayAnswer) -> Vec<BookRow> {
    let book = &day.energy;
    let mut rows = vec![
        (f.say(m::DayEnergyPanels), f.energy(book.solar_wh)),
        (f.say(m::DayEnergyChargers), f.energy(book.charger_wh)),
        (f.say(m::DayEnergyStore), f.energy(book.from_store_wh)),
        (f.say(m::DayEnergyUnit), f.energy(book.unit_wh)),
        (f.say(m::DayEnergyLoads), f.energy(book.loads_wh)),
        (f.say(m::DayEnergyLost), f.energy(book.lost_wh)),
        (f.say(m::DayEnergySpilled), f.energy(book.spilled_wh)),
    ];
    if book.fuel_l > 0.0 {
        rows.push((f.say(m::DayEnergyFuel), f.value(book.fuel_l, Unit::Liter)));
    }
    rows
}

/// Where the cabin’s heat came from and went; into the cabin is positive.
#[must_use]
pub fn heat_rows(f: Formatter, day: &DayAnswer) -> Vec<BookRow> {
    let heat = &day.heat;
    vec![
        (f.say(m::DayHeatSunGlass), f.energy(heat.sun_glass_wh)),
        (f.say(m::DayHeatSunShell), f.energy(heat.sun_shell_wh)),
        (f.say(m::DayHeatGlass), f.energy(heat.glass_wh)),
        (f.say(m::DayHeatShell), f.energy(heat.shell_wh)),
        (f.say(m::DayHeatAir), f.energy(heat.air_change_wh)),
        (f.say(m::DayHeatPeople), f.energy(heat.people_wh)),
        (f.say(m::DayHeatGains), f.energy(heat.gains_wh)),
        (f.say(m::DayHeatUnit), f.energy(-heat.unit_wh)),
        (f.say(m::DayHeatStored), f.energy(heat.stored_wh)),
        (
            f.say(m::DayHeatCondensed),
            f.value(heat.condensed_kg, Unit::Kilogram),
        ),
        (f.say(m::DayHeatLatent), f.energy(heat.latent_wh)),
    ]
}
