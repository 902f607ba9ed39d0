//! Cable in a run and in a short circuit: there and back.

use super::{answered, current, days::flat_bank, near, near_share, power, table};
use till_morning::{
    answer::wiring::wiring,
    physics::battery::Chemistry,
    plan::{
        Bank, Cable, Figure, Plan,
        wiring::{Circuit, Strands},
    },
};

/// Square millimetres of a gauge, as a plan holds it: to a thousandth, ASTM B258,
/// d = 0.127 mm x 92^((36 - n) / 39).
fn gauge_mm2(number: f64) -> f64 {
    let across_mm = 0.127 * 92f64.powf((36.0 - number) / 39.0);
    (1000.0 * std::f64::consts::FRAC_PI_4 * across_mm * across_mm).round() / 1000.0
}

const FOOT_M: f64 = 0.3048;

/// A two-wire 24 V circuit of a course (electrician2.com, lpage135, after NFPA 70
/// chapter 9 table 8): gauge 16 stranded of 4.99 ohm a thousand feet, 100 ft one way,
/// 4 A: 3.992 V are lost, 16.6 %. The table is of copper at 75 °C.
#[test]
fn a_run_loses_the_volts_of_both_conductors() {
    let bank = Bank {
        battery_open_circuit: table(&[(0.0, 20.0), (1.0, 26.0)]),
        ..flat_bank(24.0, 100.0)
    };
    let mut plan = Plan::of(bank, current(4.0, 24.0));
    plan.units[0].cutoff_v = Some(Figure::exact(20.0));
    plan.units[0].cable = Cable {
        length_m: Some(100.0 * FOOT_M),
        area_mm2: Some(gauge_mm2(16.0)),
        temperature_c: 75.0,
        connections_mohm: 0.0,
    };
    plan.wiring.unit.strands = Some(Strands::Few);
    // The unit stops at 20 V of its own: where the bank, 26 V full and 20 V empty, is
    // at 20 V and what the cable loses.
    let run = &answered(&plan).runs[0];
    let lost_v = run.last_v - 20.0;
    near_share(lost_v, 3.992, 0.003);
    near_share(100.0 * lost_v / 24.0, 16.6, 0.004);
    near_share(run.hours_h.likely, 25.0 * (26.0 - 23.992) / 6.0, 0.006);
}

/// Ohm's law with the copper of the National Bureau of Standards (solid, 20 °C, ohm a
/// thousand feet: gauge 12 1.588, gauge 14 2.525). A battery of 14.6 V and, by its
/// maker, 2000 A; 10 ft of gauge 12 to the distribution, 20 ft of gauge 14 on to the
/// unit, both there and back.
#[test]
fn a_short_circuit_is_held_back_by_the_cable_before_it() {
    let mut plan = Plan::of(Bank::of(Chemistry::Lfp, 12.8, 100.0), power(20.0));
    plan.wiring.battery_fault_a = Some(Figure::label(2000.0));
    plan.wiring.coldest_c = Some(20.0);
    plan.wiring.distribution_m = Some(10.0 * FOOT_M);
    plan.wiring.distribution_mm2 = Some(gauge_mm2(12.0));
    let cable = &mut plan.units[0].cable;
    (cable.length_m, cable.area_mm2) = (Some(20.0 * FOOT_M), Some(gauge_mm2(14.0)));
    let answer = wiring(&plan).unwrap();
    near(answer.charge_v, 14.6, 1e-9);
    let fuse = |circuit: Circuit| {
        let circuit = answer
            .circuits
            .iter()
            .find(|one| one.circuit == circuit)
            .unwrap();
        circuit.protection.clone().unwrap()
    };
    let (bank_ohm, to_bus, to_unit) = (14.6 / 2000.0, 20.0 * 1.588e-3, 40.0 * 2.525e-3);

    // The main fuse sits at the bank: no cable comes before it, and none may make
    // less of what it has to break.
    let main = fuse(Circuit::Distribution);
    near(main.fault_a, 2000.0, 1e-6);
    near_share(main.fault_far_a.unwrap(), 14.6 / (bank_ohm + to_bus), 2e-3);

    let unit = fuse(Circuit::Unit);
    near_share(unit.fault_a, 14.6 / (bank_ohm + to_bus), 2e-3);
    near_share(
        unit.fault_far_a.unwrap(),
        14.6 / (bank_ohm + to_bus + to_unit),
        2e-3,
    );

    // A cable before the fuse that nobody named holds nothing back.
    plan.wiring.distribution_mm2 = None;
    let answer = wiring(&plan).unwrap();
    let circuit = answer
        .circuits
        .iter()
        .find(|one| one.circuit == Circuit::Unit)
        .unwrap();
    near(circuit.protection.as_ref().unwrap().fault_a, 2000.0, 1e-6);
}
