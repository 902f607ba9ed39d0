//! Totals and stretches of an invented run.

use super::truth::{Row, net, same, truth};
use till_morning::physics::bench::instrument::{Instrument, Kind};
use till_morning::physics::bench::log::{Log, Notes, Sample, Sense};
use till_morning::physics::bench::measured::steady;
use till_morning::physics::bench::stretches::{Fineness, spans};
use till_morning::physics::bench::totals::{totals, totals_in};
use till_morning::quantity::{Time, in_amp_hours, in_minutes, in_watts};

fn log_of(rows: &[Row]) -> Log {
    let sample = |&(time_s, v, a): &Row| Sample {
        time_s,
        volts: Some(v),
        amps: Some(a),
        ..Sample::default()
    };
    let samples = rows.iter().map(sample).collect();
    Log::new(samples, None::<Time>, Sense::Positive, Notes::default()).unwrap()
}

#[test]
fn steady_stretches_are_the_modes_that_were_run() {
    // 40 min at 24 A, 60 min at 9.5 A, as written in `truth`.
    let rows = truth(600);
    let log = log_of(&rows);
    for most_points in [10, 100, 4000] {
        let fineness = Fineness {
            most_points,
            ..Fineness::default()
        };
        let found = spans(&log, &fineness);
        assert_eq!(found.len(), 2, "{most_points}: {found:?}");
        let minutes = |(from, to, _): (Time, Time, f64)| (in_minutes(from), in_minutes(to));
        // From the first row of each to its last, ten seconds apart.
        assert_eq!(minutes(found[0]), (0.0, 2390.0 / 60.0));
        assert_eq!(minutes(found[1]), (40.0, 5990.0 / 60.0));
        assert!((found[0].2 - 24.0 * 13.0).abs() < 5.0);
        assert!((found[1].2 - 9.5 * 12.8).abs() < 3.0, "{}", found[1].2);
    }
    let part = 240..600;
    let totals = totals_in(&log, part.clone());
    let mean_w = in_watts(totals.watts.unwrap().mean);
    let watts = log.series_in(part, |s| s.watts);
    let draw = steady(mean_w, &totals, &watts, &Instrument::of_reading(0.01));
    // The meter's limit, and the scatter of a draw that goes up and down besides.
    assert!(draw.expanded().unwrap() > 2.0 * 0.01 * mean_w / 3f64.sqrt());
    // Strict enough, it is all one.
    let blunt = Fineness {
        least_change: 1.0,
        ..Fineness::default()
    };
    assert_eq!(spans(&log, &blunt).len(), 1);
}

#[test]
fn totals_add_over_parts_and_turn_with_the_sign() {
    let rows = truth(500);
    let log = log_of(&rows);
    let whole = net(&totals(&log));
    // Parts that share their border row.
    let (a, b) = (
        net(&totals_in(&log, 0..201)),
        net(&totals_in(&log, 200..500)),
    );
    same((a.0 + b.0, a.1 + b.1), whole, 1e-12);
    let turned: Vec<Row> = rows.iter().map(|r| (r.0 + 1e9, r.1, -r.2)).collect();
    let t = totals(&log_of(&turned));
    same(net(&t), (-whole.0, -whole.1), 1e-9);
    assert_eq!(in_amp_hours(t.charge.unwrap().drawn), 0.0);
    assert_eq!(net(&totals_in(&log, 900..901)), (0.0, 0.0));
}

#[test]
fn every_kind_of_meter_has_limits() {
    for kind in Kind::ALL {
        let meter = kind.usual(100.0);
        assert!(
            meter.limit(50.0) > 0.0 && meter.limit(50.0) < 10.0,
            "{kind:?}"
        );
        assert!(meter.limit(-50.0) == meter.limit(50.0));
    }
}
