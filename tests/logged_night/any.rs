//! Any log gives an answer, and no number that is none.

use proptest::prelude::*;
use till_morning::{
    physics::bench::log::{ClockTimes, Log, Notes, Sample, Sense},
    plan::Plan,
    study::logged::{FittedNight, LoggedNight, MeterSd, logged_night},
};

fn sample() -> impl Strategy<Value = Sample> {
    let maybe = |low: f64, high: f64| {
        prop_oneof![
            4 => (low..high).prop_map(Some),
            1 => Just(None),
            1 => prop_oneof![Just(0.0), Just(low), Just(high)].prop_map(Some),
        ]
    };
    (
        0.0..150_000.0,
        maybe(-2000.0, 2000.0),
        maybe(-10_000.0, 10_000.0),
        maybe(-1e6, 1e6),
        maybe(-100.0, 300.0),
        maybe(-100.0, 300.0),
    )
        .prop_map(|(time_s, volts, amps, watts, celsius, outdoor_c)| Sample {
            time_s,
            volts,
            amps,
            watts,
            celsius,
            outdoor_c,
            line: 0,
        })
}

/// Of sane rows now and then one that is not.
fn log() -> impl Strategy<Value = Option<Log>> {
    let clock = prop_oneof![
        Just(ClockTimes::Elapsed),
        Just(ClockTimes::Local),
        Just(ClockTimes::Universal)
    ];
    let wild = prop::collection::vec(sample(), 2..300);
    let steady = (20.0..4000.0, 0.0..60.0, 2..400_usize, any::<bool>()).prop_map(
        |(step_s, amps, count, has_cabin)| {
            let row = |k: usize| Sample {
                time_s: step_s * k as f64,
                volts: Some(26.0),
                amps: Some(if k % 7 < 3 { 0.0 } else { amps }),
                celsius: has_cabin.then_some(25.0 + (k % 5) as f64),
                ..Sample::default()
            };
            (0..count).map(row).collect::<Vec<_>>()
        },
    );
    (prop_oneof![wild, steady], clock).prop_map(|(mut samples, clock)| {
        samples.sort_by(|a, b| a.time_s.total_cmp(&b.time_s));
        let notes = Notes {
            clock,
            ..Notes::default()
        };
        Log::new(samples, None, Sense::Prevailing, notes)
    })
}

fn numbers(night: &FittedNight) -> Vec<f64> {
    let mut all = vec![night.span_h, night.covered_h, night.charged_percent];
    all.extend(night.middle_c);
    all.extend(night.cabin_misfit_number);
    for one in &night.figures {
        all.extend([one.before, one.before_half, one.after, one.after_half]);
    }
    if let Some(ahead) = &night.ahead {
        all.extend([ahead.from_h, ahead.to_h]);
        all.extend(ahead.held_c);
        for miss in [ahead.cabin_k, ahead.volts_v].into_iter().flatten() {
            all.extend([
                miss.mean,
                miss.root_mean_square,
                miss.before_root_mean_square,
            ]);
        }
        let used = ahead.used_ah;
        all.extend([used.measured, used.predicted, used.before]);
        for point in &ahead.points {
            all.extend([point.hours_h, point.used_ah]);
            all.extend(point.cabin_c.into_iter().chain(point.predicted_c));
            all.extend(point.volts.into_iter().chain(point.predicted_v));
            all.extend(point.predicted_ah);
        }
    }
    all
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 40, ..ProptestConfig::default() })]

    #[test]
    fn any_log_gives_numbers(log in log(), meter_sd in 0.0..0.5) {
        let Some(log) = log else { return Ok(()) };
        let plan = Plan::demo();
        if let LoggedNight::Fitted(night) = logged_night(&plan, &log, MeterSd { charge: meter_sd, draw: meter_sd }) {
            for number in numbers(&night) {
                prop_assert!(number.is_finite(), "{night:?}");
            }
            if let Some(taken) = &night.taken {
                prop_assert_eq!(taken.errors(), Vec::new());
            }
        }
    }
}
