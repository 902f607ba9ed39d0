//! Operating points against ngspice 39.3 (the file says how).

use super::{near, records};
use till_morning::{
    physics::battery::strings::Source,
    physics::circuit::{Branch, Load, Point, settle},
};

const SPICE: &str = include_str!("../data/dc_network_spice.csv");

/// The records of one case: what was solved, and the numbers found (NaN where
/// the file leaves a column empty).
fn cases(case: &str) -> Vec<(String, Vec<f64>)> {
    records(SPICE)
        .iter()
        .filter(|record| &record[0] == case)
        .map(|record| {
            let found = record.iter().skip(2);
            let found = found.map(|text| text.parse().unwrap_or(f64::NAN));
            (record[1].to_string(), found.collect())
        })
        .collect()
}

/// The number after `key=` in a description.
fn value(text: &str, key: &str) -> f64 {
    let mut words = text.split(' ');
    let word = words.find_map(|word| word.strip_prefix(key)?.strip_prefix('='));
    word.expect(key).parse().expect(key)
}

const fn source(ocv_v: f64, ohm: f64) -> Source {
    Source { ocv_v, ohm }
}

#[track_caller]
fn feed(source: Source, branches: &[Branch]) -> Point {
    settle(source.ocv_v, source.ohm, branches).expect("an operating point")
}

#[test]
fn one_source_one_cable() {
    let cases = cases("single");
    assert_eq!(cases.len(), 6);
    for (text, found) in cases {
        let unit = Branch::power(value(&text, "P"), value(&text, "Rcable"));
        let point = feed(source(value(&text, "E"), value(&text, "Rb")), &[unit]);
        near(point.bar_v, found[0], 1e-6);
        near(unit.taker_v(point.bar_v), found[1], 1e-6);
        near(point.amps, found[2], 1e-5);
        near(unit.taker_w(point.bar_v), value(&text, "P"), 1e-9);
    }
}

/// Down to a battery that is charged by its neighbours.
#[test]
fn three_sources_side_by_side() {
    let cases = cases("parallel3");
    assert_eq!(cases.len(), 3);
    for (text, found) in cases {
        let one = |k| {
            source(
                value(&text, &format!("E{k}")),
                value(&text, &format!("R{k}")),
            )
        };
        let sources = [one(1), one(2), one(3)];
        let whole = Source::in_parallel(&sources);
        let point = feed(whole, &[Branch::power(value(&text, "P"), 0.0)]);
        near(point.bar_v, found[0], 1e-6);
        for (source, published_a) in sources.iter().zip(&found[3..6]) {
            near(source.amps_at(point.bar_v), *published_a, 1e-5);
        }
    }
}

#[test]
fn two_strings_of_two() {
    let cases = cases("2s2p");
    let (text, found) = &cases[0];
    let solved = "string1: 13.2/.005+13.2/.005, string2: 13.2/.015+13.1/.006, P=1500";
    assert_eq!(text, solved);
    let lower = source(13.2, 0.005);
    let strings = [
        Source::in_series(&[lower, lower]),
        Source::in_series(&[source(13.2, 0.015), source(13.1, 0.006)]),
    ];
    let whole = Source::in_parallel(&strings);
    let point = feed(whole, &[Branch::power(1500.0, 0.0)]);
    near(point.bar_v, found[0], 1e-6);
    near(strings[0].amps_at(point.bar_v), found[3], 1e-5);
    near(strings[1].amps_at(point.bar_v), found[4], 1e-5);
    let middle_v = lower.ocv_v - lower.ohm * strings[0].amps_at(point.bar_v);
    near(middle_v, found[5], 1e-6);
}

/// Everything at once: two constant powers, a resistor and a charger on a bus
/// behind the bank and a main cable. Bank and main carry the same current, so
/// both belong to the source.
#[test]
fn a_bus_with_loads_and_a_charger() {
    let cases = cases("tree");
    let (text, found) = &cases[0];
    let solved = "E=13.2 Rb=.012 main .004; unit 420 W via .009; fridge 45 W via .03; \
                  9 ohm lamps via .05; solar 8.5 A into bus";
    assert_eq!(text, solved);
    let (unit, fridge) = (Branch::power(420.0, 0.009), Branch::power(45.0, 0.03));
    let lamps = Branch {
        ohm: 0.05,
        load: Load::Resistor { ohm: 9.0 },
    };
    let solar = Branch::current(-8.5, 0.0);
    let point = feed(source(13.2, 0.012 + 0.004), &[unit, fridge, lamps, solar]);
    near(13.2 - 0.012 * point.amps, found[0], 1e-6);
    near(unit.taker_v(point.bar_v), found[1], 1e-6);
    near(point.amps, found[2], 1e-5);
    near(point.bar_v, found[3], 1e-6);
    near(fridge.taker_v(point.bar_v), found[4], 1e-6);
    near(lamps.taker_v(point.bar_v), found[5], 1e-6);
}
