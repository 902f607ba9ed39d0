//! The energy books close, and the end named is the end reached.

use super::{
    close, run,
    sane_plan::{labelled_bank, measured_bank, own_table, plan_on, sane_plan},
};
use proptest::prelude::*;
use till_morning::{
    answer::{RunAnswer, night as answer},
    plan::finding::Matter,
    plan::{
        Bank, Draw, Figure, Measured, Mode, OpenCircuitPoint, Plan,
        path::{BankField, Path},
    },
    range,
    simulate::{Stop, assemble::path_ohm},
};

/// The mean of a table between two charges (per cent), by trapezoids, reckoned
/// here from the table alone.
fn mean_volts(table: &[OpenCircuitPoint], low: f64, high: f64) -> f64 {
    let at = |charge: f64| {
        let above = table.iter().position(|row| row.charge_percent >= charge);
        let above = above.unwrap_or(table.len() - 1).max(1);
        let (a, b) = (table[above - 1], table[above]);
        let share = (charge - a.charge_percent) / (b.charge_percent - a.charge_percent);
        a.open_circuit_v + share * (b.open_circuit_v - a.open_circuit_v)
    };
    let inside = table.iter().map(|row| row.charge_percent);
    let mut ends = vec![low];
    ends.extend(inside.filter(|&charge| charge > low && charge < high));
    ends.push(high);
    let area: f64 = ends
        .windows(2)
        .map(|pair| (pair[1] - pair[0]) * (at(pair[0]) + at(pair[1])) / 2.0)
        .sum();
    area / (high - low)
}

/// A bank with a table of its own and an exponent of one, by its label.
fn tabled_bank() -> impl Strategy<Value = Bank> {
    labelled_bank()
        .prop_flat_map(|bank| (own_table(bank.reading().volts), Just(bank)))
        .prop_map(|(battery_open_circuit, bank)| Bank {
            battery_open_circuit,
            peukert_exponent: Some(Figure::label(1.0)),
            ..bank
        })
}

fn tabled_plan() -> impl Strategy<Value = Plan> {
    plan_on(tabled_bank().boxed())
}

/// Watts at the terminals beside the unit.
fn beside_w(plan: &Plan) -> f64 {
    let parasitic_w = plan.number(Path::Bank(0, BankField::ParasiticW)).unwrap();
    parasitic_w
        + plan
            .loads
            .iter()
            .map(|load| load.power_w.value)
            .sum::<f64>()
}

/// The charge at the start and at the end, per cent, if the run has a length.
fn span(run: &RunAnswer) -> Option<(f64, f64)> {
    let (first, last) = (run.trace.first()?, run.trace.last()?);
    let has_length = first.charge_percent - last.charge_percent > 1e-3;
    has_length.then_some((first.charge_percent, last.charge_percent))
}

proptest! {
    /// What stood behind the open-circuit voltage is what came out at the
    /// terminals and what the resistance kept.
    #[test]
    fn energy_is_kept_in_the_bank(plan in tabled_plan()) {
        let (run, bank) = (run(&plan), &plan.banks[0]);
        if let Some((high, low)) = span(&run) {
            let series = f64::from(bank.series_count);
            let behind_wh = run.drawn_ah * series * mean_volts(&bank.battery_open_circuit, low, high);
            prop_assert!(close(behind_wh, run.drawn_wh + run.lost_wh, 1e-9), "{behind_wh} {run:?}");
        }
    }

    /// Charge drawn is the share of the capacity that went, of a bank with no
    /// Peukert's law.
    #[test]
    fn charge_is_kept_in_the_bank(plan in tabled_plan()) {
        let (run, bank) = (run(&plan), &plan.banks[0]);
        if let Some((high, low)) = span(&run) {
            let health = bank.health_percent.map_or(100.0, |figure| figure.value);
            let whole_ah = bank.battery_rated_ah.value * f64::from(bank.parallel_count) * health / 100.0;
            prop_assert!(close(run.drawn_ah, whole_ah * (high - low) / 100.0, 1e-9));
        }
    }

    /// With no cable, what leaves the terminals is the unit's and the loads'.
    #[test]
    fn energy_is_kept_on_the_bars(mut plan in sane_plan()) {
        plan.units[0].cable.length_m = Some(0.0);
        plan.units[0].cable.connections_mohm = 0.0;
        let run = run(&plan);
        let beside_wh = beside_w(&plan) * run.hours_h.likely;
        prop_assert!(close(run.drawn_wh, run.unit_wh + beside_wh, 1e-9), "{run:?}");
    }

    /// With nothing beside the unit, bank and cable carry one current: their
    /// heat is as their resistances.
    #[test]
    fn energy_is_kept_in_the_cable(mut plan in tabled_plan(), milliohm in 0.5..30.0) {
        plan.loads.clear();
        let bank = &mut plan.banks[0];
        bank.parasitic_w = Some(Figure::label(0.0));
        bank.battery_resistance_mohm = Some(Figure::label(milliohm));
        // A plain resistance: polarisation has heat of its own.
        bank.polarisation_percent = Some(Figure::label(0.0));
        let bank_ohm = milliohm / 1000.0 * f64::from(bank.series_count) / f64::from(bank.parallel_count);
        let run = run(&plan);
        let cable_wh = run.lost_wh * path_ohm(&plan, 0) / bank_ohm;
        prop_assert!(close(run.drawn_wh, run.unit_wh + cable_wh, 1e-9), "{run:?}");
    }

    /// The level that is named is the level at which the run ended.
    #[test]
    fn the_stop_named_is_reached(plan in sane_plan()) {
        let run = run(&plan);
        if span(&run).is_none() {
            return Ok(());
        }
        let (last, cable) = (run.trace.last().unwrap(), path_ohm(&plan, 0));
        let beside_a = beside_w(&plan) / last.terminal_v;
        let far_v = last.terminal_v - cable * (last.bank_a - beside_a);
        let near = |found: f64, level: f64| (found - level).abs() <= 1e-6 * level.abs().max(1.0);
        let reached = match run.stop {
            Stop::ChargeFloor { kept_percent } => near(last.charge_percent, kept_percent),
            Stop::OwnCutOff { cutoff_v } => near(last.terminal_v, cutoff_v),
            Stop::CurrentLimit { limit_a } => near(last.bank_a, limit_a),
            Stop::UnitCutOff { cutoff_v } | Stop::InverterCutOff { cutoff_v } => near(far_v, cutoff_v),
            // At the summit the unit's power is a quarter of V² / R, with V the
            // volts that the resistances leave to it; half of them is lost.
            Stop::NoCurrentCarriesIt => far_v < 0.75 * run.first_v,
            // What no charge could give never starts.
            Stop::InverterLimit { .. } | Stop::ConverterLimit { .. } => false,
        };
        prop_assert!(reached, "{:?} {last:?} {far_v}", run.stop);
    }

    /// No other level was passed on the way.
    #[test]
    fn no_level_is_passed_unnamed(plan in sane_plan()) {
        let run = run(&plan);
        let cutoff_v = plan.number(Path::Bank(0, BankField::CutoffV)).unwrap();
        let limit_a = plan.number(Path::Bank(0, BankField::BatteryCurrentLimitA));
        let limit_a = limit_a.map_or(f64::INFINITY, |a| a * f64::from(plan.banks[0].parallel_count));
        for point in &run.trace {
            prop_assert!(point.terminal_v >= cutoff_v * (1.0 - 1e-8));
            prop_assert!(point.bank_a <= limit_a * (1.0 + 1e-8));
        }
        let falls = run.trace.windows(2).all(|pair| {
            pair[0].charge_percent >= pair[1].charge_percent && pair[0].hours_h <= pair[1].hours_h
        });
        prop_assert!(falls, "{:?}", run.trace);
    }

    /// A measured bank, under the load and to the end of its own measurement,
    /// gives the measured numbers back; or the answer says that it cannot.
    #[test]
    fn a_measured_run_comes_back(bank in measured_bank()) {
        let measured = bank.measured;
        let load_w = measured.load_w.unwrap_or(Figure::measured(30.0));
        // A load that the bank may have been measured at, and no mode may draw.
        let load_w = load_w.with(load_w.value.min(range::DRAW_W.max));
        let bank = Bank {
            start_charge_percent: None,
            depth_percent: Some(100.0),
            battery_current_limit_a: None,
            parasitic_w: Some(Figure::label(0.0)),
            measured: Measured { load_w: Some(load_w), ..measured },
            ..bank
        };
        let plan = Plan::of(bank, Mode::of_power("", load_w));
        let said = |matter: &Matter| matches!(matter, Matter::MeasuredImplausible { .. });
        if !answer(&plan).findings.iter().any(|finding| said(&finding.matter)) {
            let run = run(&plan);
            let alike = |found, figure: Option<Figure>| {
                figure.is_none_or(|figure| close(found, figure.value, 1e-6))
            };
            prop_assert!(alike(run.drawn_ah, measured.measured_ah), "{run:?}");
            prop_assert!(alike(run.drawn_wh, measured.measured_wh), "{run:?}");
        }
    }

    /// A unit of constant watts gets them, all the time it is on.
    #[test]
    fn a_unit_gets_its_watts(mut plan in sane_plan()) {
        plan.units[0].feed = Default::default();
        let mode = &mut plan.units[0].modes[0];
        (mode.duty_percent, mode.standby_w) = (None, None);
        let Draw::Power { power_w } = mode.draw else { return Ok(()) };
        let run = run(&plan);
        prop_assert!(close(run.unit_wh, power_w.value * run.hours_h.likely, 1e-9));
    }
}
