//! A bank in the cold, against what was measured on a cell and against the standard.

use super::vectors::{near, near_share, number, rows};
use till_morning::{
    answer::day::day,
    physics::battery::{Chemistry, TemperatureEffects},
    plan::{Figure, Plan},
    simulate::day::{DayEvent, Happening},
};

/// Medians of 1 s steps and slow discharges of a cell at eight temperatures (the
/// files say whose).
#[test]
fn lithium_iron_phosphate_as_measured() {
    let steps = rows("lfp_step_resistance_vs_temperature_measured.csv");
    let at_25 = number(&steps[5], "r_median_mohm");
    for row in &steps {
        let warmth = TemperatureEffects::of(Chemistry::Lfp, number(row, "t_c"), 10.0);
        near_share(warmth.ohm_ratio, number(row, "r_median_mohm") / at_25, 2e-3);
    }
    let runs = rows("lfp_capacity_vs_temperature_measured.csv");
    let full = number(&runs[5], "discharged_ah");
    for row in &runs {
        let warmth = TemperatureEffects::of(Chemistry::Lfp, number(row, "t_c"), 10.0);
        near(
            warmth.capacity_ratio,
            number(row, "discharged_ah") / full,
            6e-4,
        );
    }
}

/// IEC 60896-11, clause 14 (from memory): Ca = C / (1 + 0.006 (t - 20)) of a slow
/// test. 100 Ah measured at 10 °C are 106.38 Ah at 20 °C, at 30 °C they are 94.34.
#[test]
fn lead_acid_by_the_standard() {
    let at = |bank_c| 100.0 / TemperatureEffects::of(Chemistry::Agm, bank_c, 20.0).capacity_ratio;
    near(at(10.0), 106.38, 0.005);
    near(at(30.0), 94.34, 0.005);
    let fast = TemperatureEffects::of(Chemistry::Flooded, 10.0, 1.0).capacity_ratio;
    near(fast, 0.9, 1e-12);
    assert_eq!(
        TemperatureEffects::of(Chemistry::Nmc, -20.0, 5.0),
        TemperatureEffects::NONE
    );
}

/// The colder the bank, the fewer the hours until the unit stops, whatever stops it; the
/// books close all the same.
#[test]
fn a_colder_bank_never_lasts_longer() {
    for chemistry in Chemistry::ALL {
        let mut before_h = f64::INFINITY;
        for bank_c in [45.0, 25.0, 10.0, 0.0, -10.0, -20.0] {
            let mut plan = Plan::demo();
            plan.day.days_count = Some(1);
            plan.supply.arrays.clear();
            plan.banks[0].chemistry = chemistry;
            plan.banks[0].parallel_count = 1;
            plan.cabin.set_point_c = Some(12.0);
            plan.supply.bank_c = Some(Figure::label(bank_c));
            let day = day(&plan).unwrap();
            // A deep cold bank sags to the unit's own cut-off before it is empty.
            let is_stop = |event: &&DayEvent| matches!(event.what, Happening::UnitStopped { .. });
            let stopped_h = day.events.iter().find(is_stop).map(|event| event.hours_h);
            let hours_h = day.empty_h.unwrap().min(stopped_h.unwrap_or(f64::INFINITY));
            assert!(
                hours_h <= before_h + 1e-6,
                "{chemistry:?} {bank_c} {hours_h}"
            );
            let gap = day.energy.gap_wh.abs() / day.energy.throughput_wh();
            assert!(gap < 1e-9, "{chemistry:?} {gap}");
            before_h = hours_h;
        }
    }
}
