//! A bank that somebody measured, and a direct cooling unit run from it until
//! the battery's own cut-off (common practice, no source).

use super::{bare_bank, current, hours, near, near_share, power, run};
use till_morning::{
    answer::night as answer,
    physics::battery::Chemistry,
    plan::finding::Matter,
    plan::{Bank, Figure, Measured, Plan},
    simulate::Stop,
};

/// By its label 12.8 V 320 Ah, 4096 Wh; by the bench 335.5 Ah and 4319 Wh.
const MEASURED_AH: f64 = 335.5;
const MEASURED_WH: f64 = 4319.0;
/// The cut-off of its electronics is the chemistry's usual one.
fn bank(measured: Measured) -> Bank {
    Bank {
        cutoff_v: None,
        battery_resistance_mohm: None,
        measured,
        ..bare_bank(Chemistry::Lfp, 12.8, 320.0)
    }
}

/// Watts, amps and the hours and minutes run.
const RUNS: [(f64, f64, f64); 4] = [
    (639.9, 49.7, 6.0 * 60.0 + 45.0),
    (585.0, 45.1, 7.0 * 60.0 + 26.0),
    (440.0, 34.0, 9.0 * 60.0 + 53.0),
    (348.0, 27.0, 12.0 * 60.0 + 25.0),
];

fn calibrated() -> Bank {
    bank(Measured {
        measured_ah: Some(Figure::measured(MEASURED_AH)),
        measured_wh: Some(Figure::measured(MEASURED_WH)),
        load_w: Some(Figure::measured(RUNS[0].0)),
    })
}

/// As constant currents: this tests the division of Ah by amps, and no more.
#[test]
fn measured_ah_over_amps() {
    let bank = bank(Measured {
        measured_ah: Some(Figure::measured(MEASURED_AH)),
        load_w: Some(Figure::measured(RUNS[0].0)),
        ..Measured::default()
    });
    for (_, amps, minutes) in RUNS {
        near(60.0 * hours(&bank, current(amps, 12.8)), minutes, 3.0);
    }
}

/// As constant powers, calibrated on the first run alone: that run comes back,
/// and the other three are foretold within 2.5 %.
///
/// The watts and the amps of the four runs give 12.88, 12.97, 12.94 and 12.89 V,
/// which do not rise as the load falls: meters are not better than this.
#[test]
fn the_other_runs_foretold_from_the_first() {
    let (watts, _, minutes) = RUNS[0];
    near_share(60.0 * hours(&calibrated(), power(watts)), minutes, 0.005);
    for (watts, _, minutes) in &RUNS[1..] {
        near_share(60.0 * hours(&calibrated(), power(*watts)), *minutes, 0.025);
    }
}

/// The measured run gives the measured figures back, to its cut-off: measured
/// Wh are terminal Wh, and what was measured replaces the label.
#[test]
fn the_measured_run_comes_back() {
    let run = run(&calibrated(), power(RUNS[0].0));
    near_share(run.drawn_ah, MEASURED_AH, 1e-6);
    near_share(run.drawn_wh, MEASURED_WH, 1e-6);
    assert!(
        matches!(
            run.stop,
            Stop::OwnCutOff { .. } | Stop::ChargeFloor { kept_percent: 0.0 }
        ),
        "{:?}",
        run.stop
    );
}

/// 104.8 % of the label's charge and 105.4 % of its energy.
#[test]
fn measured_against_the_label() {
    let answer = answer(&Plan::of(calibrated(), power(500.0)));
    let facts = &answer.banks[0];
    near_share(facts.rated_wh, 4096.0, 1e-9);
    near(
        facts.measured_of_rated_ah_percent.expect("measured"),
        104.8,
        0.05,
    );
    near(
        facts.measured_of_rated_wh_percent.expect("measured"),
        105.4,
        0.05,
    );
}

/// "12 V 100 Ah" is four cells of 3.2 V in LFP, 1280 Wh, and six of 2 V in lead,
/// 1200 Wh. The reading that differs from the words is said.
#[test]
fn twelve_volts_are_read_by_the_chemistry() {
    let read = |chemistry| {
        let answer = answer(&Plan::of(Bank::of(chemistry, 12.0, 100.0), power(100.0)));
        let said = answer
            .findings
            .iter()
            .find_map(|finding| match finding.matter {
                Matter::NominalReading { taken_v, wh, .. } => Some((taken_v, wh)),
                _ => None,
            });
        (answer.banks[0].rated_wh, said)
    };
    let (rated_wh, said) = read(Chemistry::Lfp);
    near_share(rated_wh, 1280.0, 1e-9);
    let (taken_v, wh) = said.expect("a finding");
    near_share(taken_v, 12.8, 1e-12);
    near_share(wh, 1280.0, 1e-9);
    for chemistry in [Chemistry::Agm, Chemistry::Gel, Chemistry::Flooded] {
        let (rated_wh, said) = read(chemistry);
        near_share(rated_wh, 1200.0, 1e-9);
        assert_eq!(said, None);
    }
}
