//! Plans to draw: the demonstration's, an almost empty one, a large one, one with long
//! names, in both systems of units. Invented.

use till_morning::{
    physics::battery::Chemistry,
    plan::{
        Bank, Feed, Figure, Load, Mode, Plan, Show,
        supply::{Array, Charger, ChargerKind},
        wiring::TakeOff,
    },
};

/// Four in series, three strings, an inverter, panels and two chargers.
pub fn large() -> Plan {
    let label = |value| Some(Figure::label(value));
    let mut plan = Plan::fresh();
    plan.banks = vec![Bank {
        series_count: 4,
        parallel_count: 3,
        battery_current_limit_a: label(60.0),
        ..Bank::of(Chemistry::Lfp, 12.8, 100.0)
    }];
    let unit = &mut plan.units[0];
    unit.feed = Feed::usual_inverter();
    unit.name = "Roof unit".into();
    unit.modes[0] = Mode::of_power("Cool", Figure::label(1400.0));
    (unit.cable.length_m, unit.cable.area_mm2) = (Some(1.5), Some(35.0));
    let wiring = &mut plan.wiring;
    (wiring.distribution_m, wiring.distribution_mm2) = (Some(1.2), Some(50.0));
    (wiring.charger_mm2, wiring.panel_mm2) = (Some(16.0), Some(4.0));
    wiring.distribution.fuse_a = Some(150.0);
    wiring.unit.fuse_a = Some(80.0);
    wiring.take_off = Some(TakeOff::BusBar);
    plan.supply.arrays = vec![Array {
        rated_w: label(1200.0),
        panels_series_count: Some(2),
        panels_parallel_count: Some(3),
        ..Array::default()
    }];
    plan.supply.controller_limit_v = label(100.0);
    plan.supply.controller_limit_a = label(30.0);
    plan.supply.chargers = vec![
        Charger {
            most_a: label(50.0),
            ..Charger::default()
        },
        Charger {
            kind: Some(ChargerKind::Engine),
            most_a: label(30.0),
            ..Charger::default()
        },
    ];
    plan.loads = ["Fridge", "Lamps"].map(load).into();
    plan
}

fn load(name: &str) -> Load {
    Load {
        name: name.into(),
        power_w: Figure::label(20.0),
    }
}

/// Sixty letters and more, some in one word.
pub fn long_names() -> Plan {
    let mut plan = Plan::demo();
    plan.units[0].name = "Splitklimagerät mit Schwingungsdämpfung und Außenaufstellung XL".into();
    plan.units[0].modes[0].name =
        "Donaudampfschifffahrtsgesellschaftskapitänskajütenkühlungsanlage".into();
    plan.loads = vec![load(
        "Kompressorkühlschrankunterbaubeleuchtung, Lüfter, Lampen und noch mehr davon",
    )];
    plan
}

/// A thin, long cable under a fuse that is too large for it.
pub fn failing() -> Plan {
    let mut plan = Plan::demo();
    plan.units[0].cable.length_m = Some(12.0);
    plan.units[0].cable.area_mm2 = Some(8.37);
    plan.wiring.unit.fuse_a = Some(100.0);
    plan.wiring.take_off = Some(TakeOff::SameEnd);
    plan
}

/// All of them, in metric and in US units.
pub fn all() -> Vec<Plan> {
    let plans = [
        Plan::demo(),
        Plan::fresh(),
        large(),
        long_names(),
        failing(),
    ];
    let in_units = |units: Show| plans.clone().map(|plan| plan.shown_as(units));
    [Show::METRIC, Show::US].map(in_units).concat()
}
