//! Plans to pass on: a full one, and any.

use proptest::prelude::*;
use till_morning::{
    physics::battery::Chemistry,
    physics::weather::place::Climate,
    plan::{
        Bank, Cable, CheckIn, Draw, Feed, Figure, Load, Measured, Mode, ModeRow, Night,
        OpenCircuitPoint, Path, Plan, Provenance, Reader, Show, Unit, UnitCooling, Unknown,
        VERSION,
        cabin::Covers,
        reader::{Language, MOST_OPEN, Theme, Units},
        supply::{Array, Charger},
    },
};

/// Four banks, four units of six modes, eight loads, most of it stated. Invented.
pub fn full() -> Plan {
    let chemistries = [
        Chemistry::Lfp,
        Chemistry::Agm,
        Chemistry::Nmc,
        Chemistry::Flooded,
    ];
    Plan {
        title: "Which bank for the long stay above the lake (invented)".into(),
        banks: (0..4).map(|at| full_bank(at, chemistries[at])).collect(),
        units: (0..4).map(full_unit).collect(),
        loads: (0..8).map(full_load).collect(),
        night: Night {
            start_clock_min: 1330,
            wanted_h: 9.5,
            unknown: Unknown::Draw,
            asked_unit: 2,
            asked_mode: 3,
            ..Night::default()
        },
        ..Plan::demo()
    }
}

/// Numbers that do not repeat from one part to the next, as real ones do not.
fn varied(at: usize, base: f64) -> f64 {
    (base * (1.0 + 0.137 * at as f64) * 10.0).round() / 10.0
}

fn full_bank(at: usize, chemistry: Chemistry) -> Bank {
    Bank {
        name: ["Bench box", "Old pair", "Borrowed", "Shed"][at].into(),
        series_count: 1 + at as u32 % 2,
        parallel_count: 2,
        health_percent: Some(Figure::guess(varied(at, 88.0))),
        start_charge_percent: Some(Figure::measured(97.0 - at as f64)),
        depth_percent: Some(90.0 - 10.0 * at as f64),
        cutoff_v: Some(Figure::label(varied(at, 20.8))),
        battery_current_limit_a: Some(Figure::label(100.0)),
        battery_resistance_mohm: Some(Figure {
            value: varied(at, 14.7),
            from: Provenance::Measured,
            spread_percent: Some(15.0),
        }),
        parasitic_w: Some(Figure::measured(varied(at, 1.3))),
        measured: Measured {
            measured_ah: Some(Figure::measured(varied(at, 198.4))),
            measured_wh: Some(Figure::measured(varied(at, 5087.2))),
            load_w: Some(Figure::measured(varied(at, 431.6))),
        },
        ..Bank::of(chemistry, 12.8, varied(at, 105.0))
    }
}

fn full_unit(at: usize) -> Unit {
    let feed = [
        Feed::Direct,
        Feed::usual_dc_dc(),
        Feed::usual_inverter(),
        Feed::Direct,
    ][at];
    let names = ["Plunge", "Hold", "Hush", "Dry", "Fan", "Before dawn"];
    let mode = |(row, name): (usize, &&str)| Mode {
        duty_percent: Some(Figure::measured(varied(row, 41.0))),
        standby_w: Some(Figure::guess(varied(at, 9.0))),
        cooling_w: None,
        ..Mode::of_power(name, Figure::measured(varied(row + 6 * at, 163.0)))
    };
    Unit {
        cooling: UnitCooling::default(),
        name: ["Split cooler", "Roof unit", "Window unit", "Floor unit"][at].into(),
        feed,
        supply_v: Some(24.0),
        cutoff_v: Some(Figure::label(21.0)),
        cable: Cable {
            length_m: Some(varied(at, 2.4)),
            connections_mohm: 0.8,
            ..Cable::default()
        },
        modes: names.iter().enumerate().map(mode).collect(),
    }
}

fn full_load(at: usize) -> Load {
    let names = [
        "Fridge", "Fan", "Lamps", "Radio", "Pump", "Modem", "Charger", "Alarm",
    ];
    Load {
        name: names[at].into(),
        power_w: Figure::guess(varied(at, 6.1)),
    }
}

/// A number of up to fifteen digits, as typed or read off an instrument.
/// The reader of JSON is exact to there (see `numbers_of_any_length`).
fn number() -> impl Strategy<Value = f64> {
    (-999_999_999_999_999_i64..=999_999_999_999_999, 0..20)
        .prop_map(|(digits, places)| format!("{digits}e-{places}").parse().unwrap())
}

fn figure() -> impl Strategy<Value = Figure> {
    let from =
        prop::sample::select(&[Provenance::Label, Provenance::Measured, Provenance::Guess][..]);
    (number(), from, prop::option::of(number())).prop_map(|(value, from, spread_percent)| Figure {
        value,
        from,
        spread_percent,
    })
}

fn some_figure() -> impl Strategy<Value = Option<Figure>> {
    prop::option::of(figure())
}

/// A name in any script, with whatever a keyboard gives.
fn name() -> impl Strategy<Value = String> {
    prop_oneof![Just(String::new()), any::<String>(), "[a-z ]{1,12}"]
}

fn bank() -> impl Strategy<Value = Bank> {
    let chemistry = prop::sample::select(
        &[
            Chemistry::Lfp,
            Chemistry::Nmc,
            Chemistry::SodiumIon,
            Chemistry::Agm,
            Chemistry::Gel,
            Chemistry::Flooded,
        ][..],
    );
    let row = (number(), number()).prop_map(|(charge_percent, open_circuit_v)| OpenCircuitPoint {
        charge_percent,
        open_circuit_v,
    });
    let measured = (some_figure(), some_figure(), some_figure());
    (
        (
            name(),
            chemistry,
            number(),
            figure(),
            prop::option::of(number()),
        ),
        (any::<u32>(), any::<u32>(), some_figure(), some_figure()),
        (
            prop::option::of(number()),
            some_figure(),
            some_figure(),
            some_figure(),
        ),
        (
            some_figure(),
            some_figure(),
            prop::collection::vec(row, 0..4),
            measured,
            some_figure(),
        ),
    )
        .prop_map(|(a, b, c, d)| Bank {
            name: a.0,
            chemistry: a.1,
            battery_nominal_v: Some(a.2),
            battery_rated_ah: a.3,
            rated_hours_h: a.4,
            series_count: b.0,
            parallel_count: b.1,
            health_percent: b.2,
            start_charge_percent: b.3,
            depth_percent: c.0,
            cutoff_v: c.1,
            battery_current_limit_a: c.2,
            battery_resistance_mohm: c.3,
            polarisation_percent: d.4,
            peukert_exponent: d.0,
            parasitic_w: d.1,
            battery_open_circuit: d.2,
            measured: Measured {
                measured_ah: d.3.0,
                measured_wh: d.3.1,
                load_w: d.3.2,
            },
        })
}

fn feed() -> impl Strategy<Value = Feed> {
    let dc_dc = (number(), figure(), figure(), some_figure()).prop_map(
        |(output_v, efficiency_percent, idle_w, limit_a)| Feed::DcDc {
            output_v,
            efficiency_percent,
            idle_w,
            limit_a,
        },
    );
    let inverter = (figure(), figure(), figure(), some_figure(), some_figure()).prop_map(
        |(no_load_w, proportional_loss_percent, square_loss_percent_per_kw, limit_w, cutoff_v)| {
            Feed::Inverter {
                no_load_w,
                proportional_loss_percent,
                square_loss_percent_per_kw,
                limit_w,
                cutoff_v,
            }
        },
    );
    prop_oneof![Just(Feed::Direct), dc_dc, inverter]
}

fn mode() -> impl Strategy<Value = Mode> {
    let draw = prop_oneof![
        figure().prop_map(|power_w| Draw::Power { power_w }),
        (figure(), number()).prop_map(|(current_a, measured_at_v)| Draw::Current {
            current_a,
            measured_at_v
        }),
    ];
    (name(), draw, some_figure(), some_figure()).prop_map(
        |(name, draw, duty_percent, standby_w)| Mode {
            name,
            draw,
            basis: None,
            duty_percent,
            standby_w,
            cooling_w: None,
        },
    )
}

fn unit() -> impl Strategy<Value = Unit> {
    let cable = (number(), prop::option::of(number()), number(), number()).prop_map(
        |(length_m, area_mm2, temperature_c, connections_mohm)| Cable {
            length_m: Some(length_m),
            area_mm2,
            temperature_c,
            connections_mohm,
        },
    );
    let modes = prop::collection::vec(mode(), 0..4);
    (
        name(),
        feed(),
        prop::option::of(number()),
        some_figure(),
        cable,
        modes,
    )
        .prop_map(|(name, feed, supply_v, cutoff_v, cable, modes)| Unit {
            cooling: UnitCooling::default(),
            name,
            feed,
            supply_v,
            cutoff_v,
            cable,
            modes,
        })
}

fn night() -> impl Strategy<Value = Night> {
    let unknown =
        prop::sample::select(&[Unknown::Hours, Unknown::Bank, Unknown::Draw, Unknown::Depth][..]);
    // As far as the page's 32-bit counts go.
    let at = || (0..=u32::MAX as usize).boxed();
    (
        any::<u32>(),
        number(),
        unknown,
        at(),
        at(),
        number(),
        number(),
    )
        .prop_map(
            |(
                start_clock_min,
                wanted_h,
                unknown,
                asked_unit,
                asked_mode,
                ageing_percent,
                margin,
            )| {
                Night {
                    start_clock_min,
                    wanted_h,
                    unknown,
                    asked_unit,
                    asked_mode,
                    ageing_percent,
                    margin_percent: margin,
                }
            },
        )
}

/// Any plan of this version, sane or not, its numbers finite.
pub fn any_plan() -> impl Strategy<Value = Plan> {
    let load = (name(), figure()).prop_map(|(name, power_w)| Load { name, power_w });
    let night = (
        name(),
        prop::collection::vec(bank(), 0..3),
        prop::collection::vec(unit(), 0..3),
        prop::collection::vec(load, 0..3),
        night(),
        any::<bool>(),
    );
    (night, day(), prop::option::of(reader())).prop_map(
        |((title, banks, units, loads, night, us_units), day, reader)| Plan {
            version: VERSION,
            title,
            banks,
            units,
            loads,
            night,
            show: Show { us_units },
            reader,
            ..day
        },
    )
}

/// What an author may give a reader's page, of this plan or of another.
fn reader() -> impl Strategy<Value = Reader> {
    let paths = Plan::demo().paths();
    let open = prop::collection::vec(prop::sample::select(paths), 0..=MOST_OPEN);
    let looks = (any::<bool>(), any::<bool>(), any::<bool>());
    (name(), name(), open, looks).prop_map(|(title, note, open, (us, dark, german))| Reader {
        title,
        note,
        open,
        units: us.then_some(Units::Us),
        theme: dark.then_some(Theme::Dark),
        language: german.then_some(Language::German),
    })
}

/// A plan whose hot-day parts hold any number in any of their places.
fn day() -> impl Strategy<Value = Plan> {
    let rows = (0..3usize, 0..3usize, 0..3usize, 0..3usize);
    let touches = prop::collection::vec(prop::option::of(figure()), 90);
    (rows, touches).prop_map(|((arrays, chargers, rows, looks), touches)| {
        let mut plan = Plan::demo();
        plan.supply.arrays = vec![Array::default(); arrays];
        plan.supply.chargers = vec![Charger::default(); chargers];
        plan.mode_plan = vec![ModeRow::default(); rows];
        plan.check_ins = vec![CheckIn::default(); looks];
        plan.day.climate = (looks == 1).then_some(Climate::GulfCoast);
        plan.cabin.covers = (rows == 1).then_some(Covers::Curtains);
        plan.day.imported.outdoor_c = vec![31.5; rows];
        let paths: Vec<_> = plan.paths().into_iter().filter(is_of_the_day).collect();
        for (path, touch) in paths.into_iter().zip(touches) {
            match touch {
                Some(figure) => plan.set_figure(path, figure),
                None => plan.clear(path),
            };
        }
        plan
    })
}

fn is_of_the_day(path: &Path) -> bool {
    matches!(
        path,
        Path::Day(_)
            | Path::Cabin(_)
            | Path::Supply(_)
            | Path::Array(..)
            | Path::Charger(..)
            | Path::ModeRow(..)
            | Path::CheckIn(..)
    )
}
