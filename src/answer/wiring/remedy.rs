//! What would help a cable that fails, found by trying it.

use super::{
    asks,
    circuit::{CircuitAnswer, passes},
    face::upstream_v,
};
use crate::{
    physics::wiring::Demand,
    plan::{
        Figure, Path, Plan,
        path::{BankField as B, UnitField as U},
        wiring::{Circuit, InstallationField as L},
    },
    quantity::{amps, in_amps, in_watts, watts},
};
use serde::{Deserialize, Serialize};

/// A change that alone lets the conductor that is there pass, or where none is
/// named, or none would do, some size.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "by", rename_all = "snake_case")]
pub enum Remedy {
    /// Insulation, lugs and holders, or both, rated for more: the cooler governs.
    Ratings {
        insulation: bool,
        terminals: bool,
        to_c: f64,
    },
    /// The cable lies where it is no warmer than this.
    CoolerAir { to_c: f64 },
    /// Its own pair alone.
    OutOfBundle,
    /// One way, half of what it is.
    ShorterRun { to_m: f64 },
    /// What it feeds stops at more volts, so at fewer amps: its own cut-off or its inverter's,
    /// and the bank's where neither has one.
    HigherCutOff { to_v: f64 },
    /// Two runs, each with a fuse of its own.
    TwoRuns,
}

/// Rated temperatures that cable and lugs are sold for, tried in this order.
const RATINGS_C: [f64; 2] = [90.0, 105.0];
/// A cut-off of a bank with charge left, as a share of nominal volts; air that is
/// not warmed by anything: common practice, no source.
const HIGH_CUT_OFF: f64 = 0.95;
const COOL_C: f64 = 30.0;

/// What would help: nothing where the cable passes.
pub(super) fn remedies(plan: &Plan, answer: &CircuitAnswer) -> Vec<Remedy> {
    let is_named = answer.have.is_some();
    let none_passes = answer.needed.iter().all(|one| one.smallest.is_none());
    let fails = answer
        .have
        .as_ref()
        .is_some_and(|have| !have.fails.is_empty());
    if !none_passes && !fails {
        return Vec::new();
    }
    let tried = Tried {
        plan,
        circuit: answer.circuit,
        is_named: is_named && !none_passes,
    };
    let mut found: Vec<Remedy> = tried.ratings().into_iter().collect();
    let ways: [(Remedy, Change); 4] = [
        (Remedy::CoolerAir { to_c: COOL_C }, cooler),
        (Remedy::OutOfBundle, unbundled),
        (
            Remedy::ShorterRun {
                to_m: 0.5 * answer.length_m,
            },
            shorter,
        ),
        (tried.cut_off(), stops_sooner),
    ];
    for (remedy, change) in ways {
        let mut changed = plan.clone();
        change(&mut changed, &tried, &remedy);
        if tried.helps(&changed, 1.0) {
            found.push(remedy);
        }
    }
    if tried.helps(plan, 0.5) {
        found.push(Remedy::TwoRuns);
    }
    found
}

/// How a plan is changed to try a remedy.
type Change = fn(&mut Plan, &Tried<'_>, &Remedy);

struct Tried<'a> {
    plan: &'a Plan,
    circuit: Circuit,
    is_named: bool,
}

impl Tried<'_> {
    /// Whether a changed plan passes with so much of the load on one run.
    fn helps(&self, changed: &Plan, share: f64) -> bool {
        let Some(mut ask) = asks::ask(changed, self.circuit) else {
            return false;
        };
        ask.demand = match ask.demand {
            Demand::Current(current) => Demand::Current(amps(share * in_amps(current))),
            Demand::Power { power, efficiency } => Demand::Power {
                power: watts(share * in_watts(power)),
                efficiency,
            },
        };
        passes(
            changed,
            &ask,
            upstream_v(changed, self.circuit),
            self.is_named,
        )
    }

    fn number(&self, field: L) -> f64 {
        let number = self.plan.number(Path::Installation(self.circuit, field));
        number.unwrap_or_default()
    }

    /// The least rating that helps, and of what: both where both are lower.
    fn ratings(&self) -> Option<Remedy> {
        RATINGS_C.into_iter().find_map(|to_c| {
            let (insulation, terminals) = (
                self.number(L::InsulationC) < to_c,
                self.number(L::TerminalC) < to_c,
            );
            let mut changed = self.plan.clone();
            let laid = changed.wiring.installation_mut(self.circuit);
            if insulation {
                laid.insulation_c = Some(to_c);
            }
            if terminals {
                laid.terminal_c = Some(to_c);
            }
            ((insulation || terminals) && self.helps(&changed, 1.0)).then_some(Remedy::Ratings {
                insulation,
                terminals,
                to_c,
            })
        })
    }

    /// Never lower than it is.
    fn cut_off(&self) -> Remedy {
        let nominal_v = self
            .plan
            .banks
            .first()
            .map_or(0.0, crate::plan::Bank::nominal_v);
        let now_v = asks::low_v(self.plan).unwrap_or_default();
        Remedy::HigherCutOff {
            to_v: now_v.max(HIGH_CUT_OFF * nominal_v),
        }
    }
}

fn cooler(plan: &mut Plan, tried: &Tried<'_>, _: &Remedy) {
    let air_c = tried.number(L::AirC).min(COOL_C);
    plan.wiring.installation_mut(tried.circuit).air_c = Some(air_c);
}

fn unbundled(plan: &mut Plan, tried: &Tried<'_>, _: &Remedy) {
    plan.wiring.installation_mut(tried.circuit).bundled_count = Some(2);
}

fn shorter(plan: &mut Plan, tried: &Tried<'_>, remedy: &Remedy) {
    let [length, _] = tried.circuit.run_paths(plan.night.asked_unit);
    if let Remedy::ShorterRun { to_m } = *remedy {
        plan.set_number(length, to_m);
    }
}

/// The unit's own cut-off or its inverter's, or else the bank's.
fn stops_sooner(plan: &mut Plan, tried: &Tried<'_>, remedy: &Remedy) {
    // Chargers and panels give their amps whatever the bank's volts.
    let (Remedy::HigherCutOff { to_v }, Circuit::Unit | Circuit::Distribution) =
        (*remedy, tried.circuit)
    else {
        return;
    };
    let unit = plan.night.asked_unit;
    let path = match tried.plan.is_direct(unit) {
        true => Path::Unit(unit, U::CutoffV),
        false => Path::Unit(unit, U::InverterCutoffV),
    };
    if !plan.set_figure(path, Figure::label(to_v)) {
        plan.set_figure(Path::Bank(0, B::CutoffV), Figure::label(to_v));
    }
}
