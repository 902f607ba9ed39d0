//! The numbers of the wiring that are guesses, with the ends of what they may be.
//!
//! The ends are common practice, no source; where a figure has a spread of its own
//! or a usual one, they are that. A number that is typed, and is not marked as a
//! guess, is none.

use super::asks::BANK;
use crate::{
    plan::{
        Mode, Path, Plan,
        part::Choice,
        path::{BankField as B, ModeField as M, UnitField as U},
        supply::{ArrayField as A, ChargerField as G, SupplyField as S},
        wiring::{Circuit, InstallationField as L, WiringField as W},
    },
    study::spread,
};

/// A guess, and where it makes things easiest and hardest.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Guess {
    /// Which number.
    pub path: Path,
    /// The value at which the wiring has it easiest, in its accepted range.
    pub kind: f64,
    /// The value at which it has it hardest.
    pub hard: f64,
}

/// All guesses that may have a say, those first that a reader can look up.
pub fn guesses(plan: &Plan) -> Vec<Guess> {
    let unit = plan.night.asked_unit;
    let mut paths: Vec<Path> = [
        W::BatteryPeakA,
        W::BatteryPeakMs,
        W::BatteryChargeA,
        W::StartA,
        W::StartMs,
        W::LinkMohm,
        W::ColdestC,
    ]
    .map(Path::Wiring)
    .into();
    paths.extend(
        [
            B::BatteryCurrentLimitA,
            B::CutoffV,
            B::BatteryResistanceMohm,
        ]
        .map(|field| Path::Bank(BANK, field)),
    );
    let modes = plan.units.get(unit).map_or(0, |unit| unit.modes.len());
    paths.extend(
        (0..modes)
            .flat_map(|mode| [M::PowerW, M::CurrentA].map(|field| Path::Mode(unit, mode, field))),
    );
    paths.extend((0..plan.loads.len()).map(Path::Load));
    paths.extend(UNIT.map(|field| Path::Unit(unit, field)));
    paths.extend((0..plan.supply.chargers.len()).map(|at| Path::Charger(at, G::MostA)));
    paths.extend((0..plan.supply.arrays.len()).flat_map(|at| {
        [A::RatedW, A::PanelBestV, A::PanelOpenV, A::PanelShortA]
            .map(|field| Path::Array(at, field))
    }));
    paths.extend(
        [
            S::PanelVoltsPercentPerK,
            S::ControllerLimitA,
            S::ControllerLimitV,
        ]
        .map(Path::Supply),
    );
    for &circuit in Circuit::ALL {
        let laid = [L::TerminalC, L::InsulationC, L::AirC, L::BundledCount];
        paths.extend(laid.map(|field| Path::Installation(circuit, field)));
    }
    let lengths = Circuit::ALL
        .iter()
        .filter_map(|&circuit| length(plan, circuit));
    paths
        .into_iter()
        .filter_map(|path| guess(plan, path))
        .chain(lengths)
        .collect()
}

const UNIT: [U; 9] = [
    U::CutoffV,
    U::InverterCutoffV,
    U::EfficiencyPercent,
    U::IdleW,
    U::NoLoadW,
    U::ProportionalLossPercent,
    U::SquareLossPercentPerKw,
    U::LimitA,
    U::LimitW,
];

/// Whether it is the draw of a mode that is stated as a mean over its cycles.
fn mean_draw(plan: &Plan, path: Path) -> bool {
    match path {
        Path::Mode(unit, mode, M::PowerW | M::CurrentA) => {
            plan.mode(unit, mode).is_some_and(Mode::is_average)
        }
        _ => false,
    }
}

/// Which end is hard depends on the number: fewer amps that a battery bears, more that a
/// unit takes. Both ends are kept in the accepted range.
fn guess(plan: &Plan, path: Path) -> Option<Guess> {
    let figure = plan.figure(path)?;
    // Of a mean, the draw while it runs is still to be said.
    let is_mean = mean_draw(plan, path);
    if !figure.from.is_guess() && !is_mean {
        return None;
    }
    let value = figure.value;
    let (low, high) = (value - half(path, plan), value + half(path, plan));
    let (kind, hard) = match path {
        // The cooler of both is the row of the table; it has none below 60 °C.
        Path::Installation(_, L::InsulationC | L::TerminalC) => (105.0, 60.0),
        Path::Installation(_, L::AirC) => (value - 15.0, value + 15.0),
        // Another circuit in the same bundle.
        Path::Installation(_, L::BundledCount) => (value, value + 2.0),
        // Lithium may bear its Ah in an hour, or a quarter of it.
        Path::Wiring(W::BatteryChargeA) => (2.0 * value, 0.5 * value),
        Path::Wiring(W::StartA) => (0.5 * value, 1.5 * value),
        Path::Wiring(W::StartMs) => (0.2 * value, 6.0 * value),
        Path::Wiring(W::LinkMohm) => (0.5 * value, 2.0 * value),
        Path::Wiring(W::ColdestC) => (value + 10.0, value - 15.0),
        // What a battery or controller bears: more is kinder.
        Path::Wiring(W::BatteryPeakA | W::BatteryPeakMs)
        | Path::Bank(_, B::BatteryCurrentLimitA)
        | Path::Supply(S::ControllerLimitV) => (1.5 * value, 0.5 * value),
        // Less resistance leaves more of the sharing to the links.
        Path::Bank(_, B::CutoffV | B::BatteryResistanceMohm)
        | Path::Unit(_, U::CutoffV | U::InverterCutoffV | U::EfficiencyPercent) => (high, low),
        Path::Unit(_, U::LimitA | U::LimitW)
        | Path::Charger(_, G::MostA)
        | Path::Supply(S::ControllerLimitA) => (0.5 * value, 2.0 * value),
        // One of both volts is said: the other is near it.
        Path::Array(at, A::PanelBestV) if plan.supply.arrays[at].panel_open_v.is_some() => {
            (1.05 * value, 0.95 * value)
        }
        Path::Array(at, A::PanelOpenV) if plan.supply.arrays[at].panel_best_v.is_some() => {
            (0.95 * value, 1.1 * value)
        }
        // A panel for a 12 V bank, or for a house.
        Path::Array(_, A::PanelBestV) => (2.0 * value, 0.9 * value),
        Path::Array(_, A::PanelOpenV) => (0.9 * value, 2.0 * value),
        Path::Supply(S::PanelVoltsPercentPerK) => (0.85 * value, 1.15 * value),
        // A compressor that runs a third of the time or more (common practice, no source).
        Path::Mode(..) if is_mean => (value, 3.0 * value),
        _ => (low, high),
    };
    let range = path.range()?;
    let within = |value: f64| value.max(range.min).min(range.max);
    Some(Guess {
        path,
        kind: within(kind),
        hard: within(hard),
    })
}

/// Half the width of what a figure may be.
fn half(path: Path, plan: &Plan) -> f64 {
    let figure = plan.figure(path);
    let usual = figure.map_or(0.0, |figure| spread::half_width(path, figure));
    let quarter = 0.25 * figure.map_or(0.0, |figure| figure.value.abs());
    if usual > 0.0 { usual } else { quarter }
}

/// A length that nobody gave: between half and twice what was taken.
fn length(plan: &Plan, circuit: Circuit) -> Option<Guess> {
    let [path, _] = circuit.run_paths(plan.night.asked_unit);
    let is_there = circuit != Circuit::Distribution || plan.wiring.distribution_m.is_some();
    let taken_m = super::circuit::length_taken_m(plan, circuit).filter(|_| is_there)?;
    Some(Guess {
        path,
        kind: 0.5 * taken_m,
        hard: 2.0 * taken_m,
    })
}
