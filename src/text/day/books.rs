//! The books of energy and heat, row by row.

use crate::text::Formatter;
use crate::{answer::day::DayAnswer, range::Unit};

/// One row of the energy book: what, and how much of it in or out.
pub type BookRow = (&'static str, String);

/// The table of days: its head, then a row for each. Energies are in watt-hours;
/// chargers only where there are any.
#[must_use]
pub fn day_rows(f: Formatter, day: &DayAnswer) -> Vec<Vec<String>> {
    let charged = day.energy.charger_wh > 0.0;
    let mut heads = vec!["Day", "Panels, Wh", "Unit, Wh", "Loads, Wh", "Least", "End"];
    if charged {
        heads.insert(2, "Chargers, Wh");
    }
    let wh = |value: f64| f.plain(value.round());
    let rows = day.days.iter().enumerate().map(|(at, sum)| {
        let mut row = vec![
            f.plain(at as f64 + 1.0),
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
    std::iter::once(heads.into_iter().map(str::to_owned).collect())
        .chain(rows)
        .collect()
}

/// Where the energy came from and went.
#[must_use]
pub fn energy_rows(f: Formatter, day: &DayAnswer) -> Vec<BookRow> {
    let book = &day.energy;
    let mut rows = vec![
        (
            "From the panels, past the controller",
            f.energy(book.solar_wh),
        ),
        ("From chargers", f.energy(book.charger_wh)),
        ("Out of the bank’s store", f.energy(book.from_store_wh)),
        (
            "To the cooling unit, its feed and cable",
            f.energy(book.unit_wh),
        ),
        ("To the other loads", f.energy(book.loads_wh)),
        ("Lost as heat in the bank", f.energy(book.lost_wh)),
        (
            "Offered by the panels and not taken",
            f.energy(book.spilled_wh),
        ),
    ];
    if book.fuel_l > 0.0 {
        rows.push(("Fuel used", f.value(book.fuel_l, Unit::Liter)));
    }
    rows
}

/// Where the cabin’s heat came from and went; into the cabin is positive.
#[must_use]
pub fn heat_rows(f: Formatter, day: &DayAnswer) -> Vec<BookRow> {
    let heat = &day.heat;
    vec![
        ("Sun through glass", f.energy(heat.sun_glass_wh)),
        ("Sun on the shell", f.energy(heat.sun_shell_wh)),
        ("Through glass, by conduction", f.energy(heat.glass_wh)),
        ("Through the shell, by conduction", f.energy(heat.shell_wh)),
        ("With air that comes in", f.energy(heat.air_change_wh)),
        ("People and animals", f.energy(heat.people_wh)),
        ("Other things inside", f.energy(heat.gains_wh)),
        ("Taken out by the unit", f.energy(-heat.unit_wh)),
        (
            "Stayed in air, contents and shell",
            f.energy(heat.stored_wh),
        ),
        (
            "Water that the unit shed",
            f.value(heat.condensed_kg, Unit::Kilogram),
        ),
        ("Latent heat of that water", f.energy(heat.latent_wh)),
    ]
}
