//! Real logs against the counters that their cycler kept, and change points.

use super::table::{near, number, rows};
use till_morning::physics::bench::claim::{Better, Claim, Verdict, judge};
use till_morning::physics::bench::import::{Given, Options, Role, Unit, read_all};
use till_morning::physics::bench::instrument::Instrument;
use till_morning::physics::bench::log::Log;
use till_morning::physics::bench::measured::charge;
use till_morning::physics::bench::pelt::change_points;
use till_morning::physics::bench::totals::{Sampling, Totals, totals};
use till_morning::quantity::{in_amp_hours, in_amps, in_hours, in_volts, in_watt_hours};

const SLOW_DISCHARGE: &str = include_str!("../data/bench_log_lfp_a123_c30_discharge.csv");
const SLOW_CHARGE: &str = include_str!("../data/bench_log_lfp_a123_c30_charge.csv");
const PULSES: &str = include_str!("../data/bench_log_lfp_a123_dynamic_1s.csv");
const MISSED_LOW: &str = include_str!("../data/bench_log_pulses_missed_s2.csv");
const MISSED_HIGH: &str = include_str!("../data/bench_log_pulses_missed_s4.csv");
const COUNTERS: &str = include_str!("../data/bench_log_integration_totals.csv");
const CUTS: &str = include_str!("../data/change_points_ruptures.csv");

#[track_caller]
fn read(text: &str) -> (Log, Totals) {
    let (log, _) = read_all(text.as_bytes(), Options::default()).expect("a readable log");
    let totals = totals(&log);
    (log, totals)
}

/// First to last change of a counter in a log's own text.
fn counted(text: &str, column: usize) -> f64 {
    let rows = rows(text);
    number(&rows[rows.len() - 1][column]) - number(&rows[0][column])
}

// Real logs of an iron phosphate cell at 25 C with the cycler's own counters beside them
// (github batterysim/esctoolbox-python, MIT). Steady current: 0.02 %.
#[test]
fn slow_discharge_and_charge_agree_with_the_cyclers_counters() {
    for (text, ah, wh, turned) in [(SLOW_DISCHARGE, 5, 7, true), (SLOW_CHARGE, 3, 5, false)] {
        let (log, t) = read(text);
        assert_eq!(log.notes.amps_turned, turned);
        assert!(t.gaps.is_empty() && t.sampling == Sampling::Resolved);
        let (q, e) = (t.charge.unwrap(), t.energy.unwrap());
        near(in_amp_hours(q.net), counted(text, ah), 2e-4);
        near(in_watt_hours(e.net), counted(text, wh), 2e-4);
        assert!(in_amp_hours(q.returned) == 0.0);
        assert!(in_amp_hours(q.sampling.unwrap()) < 2e-4 * in_amp_hours(q.net));
    }
}

// The counters at the end of the whole logs; ours begin a row or so later, so
// the first counter reading is added.
#[test]
fn whole_run_counters_are_met() {
    let table = rows(COUNTERS);
    let find = |log: &str| {
        table
            .iter()
            .find(|r| r[0] == log && r[1] == "trap")
            .unwrap()
    };
    let first = |text: &str, column: usize| number(&rows(text)[0][column]);
    for (text, name, ah, wh, q, e) in [
        (SLOW_DISCHARGE, "P25_S1", 5, 7, 5, 9),
        (SLOW_CHARGE, "P25_S3", 3, 5, 3, 7),
    ] {
        let t = read(text).1;
        let row = find(name);
        near(
            in_amp_hours(t.charge.unwrap().net) + first(text, ah),
            number(&row[q]),
            2e-4,
        );
        near(
            in_watt_hours(t.energy.unwrap().net) + first(text, wh),
            number(&row[e]),
            2e-4,
        );
    }
}

// Pulses of a second, a row each second: 1 % of each direction, 1.5 % of the net.
#[test]
fn pulses_that_the_rows_follow() {
    let (log, t) = read(PULSES);
    assert_eq!(t.sampling, Sampling::Resolved);
    let q = t.charge.unwrap();
    assert!(
        !log.notes.amps_turned,
        "positive is discharge in this source"
    );
    near(in_amp_hours(q.drawn), counted(PULSES, 5), 0.01);
    near(in_amp_hours(q.returned), counted(PULSES, 4), 0.01);
    let net = counted(PULSES, 5) - counted(PULSES, 4);
    near(in_amp_hours(q.net), net, 0.015);
    // The stated sampling error holds what is really off, k = 2.
    let off = (in_amp_hours(q.net) - net).abs();
    assert!(off < 2.0 * in_amp_hours(q.sampling.unwrap()));
}

// The same rows, every second one left out, and a script of pulses that the
// rows of the same cycler miss: warned of, and nothing claimed.
#[test]
fn pulses_between_the_rows_claim_nothing() {
    let halved: String = PULSES
        .lines()
        .enumerate()
        .filter(|(k, _)| *k < 2 || k % 2 == 0)
        .map(|(_, line)| format!("{line}\n"))
        .collect();
    for text in [halved.as_str(), MISSED_LOW] {
        let t = read(text).1;
        assert!(
            matches!(t.sampling, Sampling::PulsesNotResolved { .. }),
            "{:?}",
            t.sampling
        );
        let measured = charge(&t, &Instrument::class(0.0, 1.0)).unwrap();
        assert_eq!(measured.expanded(), None);
        let claim = Claim {
            value: measured.value / 2.0,
            tolerance: None,
            better: Better::Higher,
        };
        assert_eq!(judge(&measured, &claim).verdict, Verdict::TooCloseToCall);
    }
    // What is really off in the second: trapezoid against counter.
    let q = read(MISSED_LOW).1.charge.unwrap();
    let net = counted(MISSED_LOW, 3) - counted(MISSED_LOW, 4);
    assert!((in_amp_hours(q.net) - net.abs()).abs() > 0.03 * net.abs());
}

// Here the rows look smooth and are not: only the cycler's counters tell. The
// net is six times too large. Without the counters the engine cannot know; the
// second half says so rather than hides it.
#[test]
fn counters_tell_what_smooth_rows_hide() {
    let (log, t) = read(MISSED_HIGH);
    let Sampling::CountersDisagree { share } = t.sampling else {
        panic!("{:?}", t.sampling);
    };
    assert!(share > 0.04, "{share}");
    assert_eq!(
        charge(&t, &Instrument::class(0.0, 1.0)).unwrap().expanded(),
        None
    );
    assert_eq!(log.notes.counters.len(), 4);
    let columns = (3..7)
        .map(|column| Given {
            column,
            role: Role::Ignored,
            unit: Unit::None,
        })
        .collect();
    let options = Options {
        columns,
        ..Options::default()
    };
    let blind = read_all(MISSED_HIGH.as_bytes(), options).unwrap().0;
    assert_eq!(totals(&blind).sampling, Sampling::Resolved);
}

// The real discharge once more: mean volts as the source's own table of the
// same run gives them, 6.711516 Wh over 2.060186 Ah.
#[test]
fn mean_volts_of_the_slow_discharge() {
    let t = read(SLOW_DISCHARGE).1;
    near(in_volts(t.volts.unwrap().mean), 6.711_516 / 2.060_186, 2e-4);
    near(
        in_amps(t.amps.unwrap().mean),
        2.059_973 / in_hours(t.covered),
        2e-4,
    );
}

// ruptures 1.1.10, Pelt with the l2 cost, on stored signals.
#[test]
fn change_points_of_ruptures() {
    let cases = rows(CUTS);
    assert_eq!(cases.len(), 21);
    for row in cases {
        let numbers = |cell: &str| -> Vec<f64> { cell.split_whitespace().map(number).collect() };
        let want: Vec<usize> = numbers(&row[3]).into_iter().map(|x| x as usize).collect();
        let got = change_points(&numbers(&row[4]), number(&row[2]), number(&row[1]) as usize);
        assert_eq!(got, want, "{}", row[0]);
    }
}
