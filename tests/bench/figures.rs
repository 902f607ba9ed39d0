//! Totals and stretches of an invented run.

use super::truth::{Row, net, same, truth};
use till_morning::physics::bench::instrument::{Instrument, Kind};
use till_morning::physics::bench::log::{Log, Notes, Sample, Sense};
use till_morning::physics::bench::measured::mean_draw;
use till_morning::physics::bench::stretches::{Fineness, stretches};
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
        let found = stretches(
            &log,
            &Fineness {
                most_points,
                ..Fineness::default()
            },
        );
        assert_eq!(found.len(), 2, "{most_points}: {found:?}");
        assert_eq!(
            (found[0].samples.clone(), found[1].samples.clone()),
            (0..240, 240..600)
        );
        assert!((in_watts(found[0].watts.unwrap()) - 24.0 * 13.0).abs() < 5.0);
        assert!((in_minutes(found[1].lasts()) - 3590.0 / 60.0).abs() < 1e-9);
        // Three quarters of an ampere either way in seven steps: sd 0.5 A, 13 V.
        assert!(
            (found[1].deviation - 0.5 * 12.8).abs() < 0.3,
            "{}",
            found[1].deviation
        );
        let draw = mean_draw(
            &log,
            found[1].samples.clone(),
            &Instrument::of_reading(0.01),
        )
        .unwrap();
        assert!((draw.value - in_watts(found[1].watts.unwrap())).abs() < 1e-9);
        assert!(draw.expanded().unwrap() > 2.0 * 0.01 * draw.value / 3f64.sqrt());
    }
    // Strict enough, it is all one.
    let blunt = Fineness {
        least_change: 1.0,
        ..Fineness::default()
    };
    assert_eq!(stretches(&log, &blunt).len(), 1);
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
