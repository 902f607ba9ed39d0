//! The fuse of a circuit: rating, place, what it must break, and what is in it now.

use super::{
    asks::{self, Ask, AskedBy, BANK},
    sizes::SizeName,
};
use crate::{
    physics::wiring::{
        self, BRIGHT_SUN_SHARE, CONTINUOUS_SHARE, Family, FuseAdvice, FusePosition, Place,
        RatingSource, Trial, fuse_ceiling, marine_allowance, position_met, positions,
        prospective_fault, recommend, suitability,
    },
    plan::{
        Plan,
        path::{BankField as B, Path},
        wiring::{CableInstallation, Circuit, FuseKind, InstallationField as L, WiringField as W},
    },
    quantity::{
        amps, celsius, in_amps, in_meters, in_ohms, meters, ohms, square_millimeters, volts,
    },
    study::spread,
};
use serde::{Deserialize, Serialize};

/// Where a fuse may sit, from the source.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "rule", rename_all = "snake_case")]
pub enum Position {
    /// Right at it.
    AtSource,
    /// Where the source itself is impractical: no more cable than this.
    Within { most_m: f64 },
    /// If the conductor is sheathed or enclosed all the way.
    WithinIfEnclosed { most_m: f64 },
    /// No further than this in any case.
    AsCloseAsPracticable { most_m: f64 },
}

/// Where the prospective fault current comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum FaultFrom {
    /// The maker's short-circuit current of a battery, all batteries together.
    Maker,
    /// Charge volts over the lowest likely resistance.
    Resistance,
    /// The panels, which give little more than they always do.
    Panels,
}

/// A kind of fuse held against its place.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct KindFigures {
    /// Which kind.
    pub kind: FuseKind,
    /// Its voltage rating reaches the charge volts.
    pub bears_voltage: bool,
    /// Its interrupting rating at those volts; absent where it has none there.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub interrupts_a: Option<f64>,
    /// That is no less than what may flow.
    pub breaks_fault: bool,
    /// It is sold in the rating wanted.
    pub made_in_rating: bool,
    /// All of these.
    pub suits: bool,
}

/// What is the matter with the fuse that is in it.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "fault", rename_all = "snake_case")]
pub enum FuseFault {
    /// The conductor would burn before it opens.
    AboveConductor { most_a: f64 },
    /// It opens in use: below 125 % of the current.
    BelowLoad { least_a: f64 },
    /// It sits too far from the source.
    TooFar { most_m: f64 },
    /// Its kind does not break what may flow, or not at these volts.
    WrongKind { kind: FuseKind },
}

/// The protection of a circuit.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Protection {
    /// The conductor it protects: the one that is there, else the smallest gauge
    /// that passes.
    pub conductor: SizeName,
    /// 125 % of the continuous current.
    pub least_a: f64,
    /// The next rating up, if the conductor bears it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub recommended_a: Option<f64>,
    /// That rating is of the small sizes made for vehicles, and of no code.
    pub vehicle_size: bool,
    /// The most this conductor may be fused at.
    pub most_a: f64,
    /// The most that the law for boats allows, shown as that.
    pub marine_most_a: f64,
    /// Best first.
    pub positions: Vec<Position>,
    /// What may flow in a short circuit right behind the fuse, which the fuse must
    /// break. Only a cable that lies before the fuse lowers it: the one to the
    /// distribution, for the unit's circuit, where its length and conductor are
    /// stated. At the bank's own terminals there is none.
    pub fault_a: f64,
    /// What flows in a short circuit at the far end of this circuit's own cable, where
    /// its length and conductor are stated. Absent for panels.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fault_far_a: Option<f64>,
    /// What the prospective fault current was worked out from.
    pub fault_from: FaultFrom,
    /// That current is a guess: what must be broken is not judged.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub fault_is_guess: bool,
    /// The highest volts it must break.
    pub charge_v: f64,
    /// Every kind that there is, suited or not.
    pub kinds: Vec<KindFigures>,
    /// The fuse that is there, by its print.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub fitted_a: Option<f64>,
    /// What is the matter with it; empty where nothing is, or none is named.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub fitted_faults: Vec<FuseFault>,
    /// The start is above the fuse: a slow one must bear it.
    pub start_above: bool,
}

/// The protection of a circuit with that conductor in it.
pub(super) fn protection(
    plan: &Plan,
    ask: &Ask,
    trial: &Trial,
    current_a: f64,
) -> Option<Protection> {
    let ampacity = trial.ampacity?;
    let place = place(plan);
    let most_a = in_amps(fuse_ceiling(place, &ampacity));
    let advice = recommend(amps(current_a), amps(most_a)).ok()?;
    let (recommended, wanted) = match advice {
        FuseAdvice::Use(rating) => (Some(rating), Some(rating)),
        FuseAdvice::ConductorMustGrow { needs, .. } => (None, Some(needs)),
        FuseAdvice::BeyondList => (None, None),
    };
    let (fault_a, fault_from) = fault(plan, ask)?;
    let fault_far_a = (ask.by != AskedBy::Panels)
        .then(|| behind(ask.charge_v, fault_a, cold_loop_ohm(plan, ask.circuit)?))
        .flatten();
    let recommended_a = recommended.map(|rating| in_amps(rating.current));
    let laid = plan.wiring.installation(ask.circuit);
    let wanted_a = laid.fuse_a.or(wanted.map(|rating| in_amps(rating.current)));
    let kinds = kinds(ask.charge_v, fault_a, wanted_a?);
    let least_a = CONTINUOUS_SHARE * current_a;
    let fitted = Fitted {
        least_a,
        most_a,
        kinds: &kinds,
        fault_is_guess: fault_from != FaultFrom::Panels && fault_is_guess(plan),
    };
    Some(Protection {
        conductor: SizeName::of(trial.size),
        least_a,
        recommended_a,
        vehicle_size: recommended.is_some_and(|r| r.source == RatingSource::VehiclePractice),
        most_a,
        marine_most_a: in_amps(
            marine_allowance(&ampacity, volts(ask.charge_v))
                .ok()?
                .highest,
        ),
        positions: positions(place).into_iter().map(position).collect(),
        fault_a,
        fault_far_a,
        fault_from,
        fault_is_guess: fitted.fault_is_guess,
        charge_v: ask.charge_v,
        fitted_a: laid.fuse_a,
        fitted_faults: fitted.faults(plan, ask.circuit, place),
        start_above: ask.start_a.is_some_and(|start_a| {
            let rating_a = laid.fuse_a.or(recommended_a);
            rating_a.is_some_and(|rating_a| start_a > rating_a)
        }),
        kinds,
    })
}

/// What the fuse that is there is held against.
struct Fitted<'a> {
    least_a: f64,
    most_a: f64,
    kinds: &'a [KindFigures],
    fault_is_guess: bool,
}

impl Fitted<'_> {
    /// In this order: against the conductor, against the load, by its place, by its kind.
    fn faults(&self, plan: &Plan, circuit: Circuit, place: Place) -> Vec<FuseFault> {
        let laid: &CableInstallation = plan.wiring.installation(circuit);
        let mut faults = Vec::new();
        if let Some(fuse_a) = laid.fuse_a {
            if fuse_a > self.most_a {
                faults.push(FuseFault::AboveConductor {
                    most_a: self.most_a,
                });
            }
            // 125 % of 24 A is the 30 A that it is on paper.
            if fuse_a < self.least_a * (1.0 - 1e-9) {
                faults.push(FuseFault::BelowLoad {
                    least_a: self.least_a,
                });
            }
        }
        if let Some(along_m) = plan.number(Path::Installation(circuit, L::FuseAlongM)) {
            let met = position_met(place, meters(along_m), laid.enclosed);
            if let Ok(None) = met {
                let most_m = positions(place)
                    .into_iter()
                    .map(position)
                    .fold(0.0, furthest);
                faults.push(FuseFault::TooFar { most_m });
            }
        }
        let is_main = circuit != Circuit::Panel;
        let kind = plan.wiring.fuse_kind.filter(|_| is_main);
        let figures = kind.and_then(|kind| self.kinds.iter().find(|one| one.kind == kind));
        // Against a fault that is a guess no kind is wrong, and none is right.
        let breaks = |one: &KindFigures| one.breaks_fault || self.fault_is_guess;
        if let Some(one) = figures.filter(|one| !one.bears_voltage || !breaks(one)) {
            faults.push(FuseFault::WrongKind { kind: one.kind });
        }
        faults
    }
}

/// The longest of the distances that ask for no enclosure, m.
fn furthest(most_m: f64, position: Position) -> f64 {
    match position {
        Position::Within { most_m: m } | Position::AsCloseAsPracticable { most_m: m } => {
            most_m.max(m)
        }
        Position::AtSource | Position::WithinIfEnclosed { .. } => most_m,
    }
}

/// The wiring room's place.
pub(super) fn place(plan: &Plan) -> Place {
    use crate::plan::wiring::Place as P;
    match plan.wiring.place_taken() {
        P::Vehicle => Place::Vehicle,
        P::Boat => Place::Boat,
        P::Cabin => Place::Cabin,
    }
}

fn position(position: FusePosition) -> Position {
    match position {
        FusePosition::AtSource => Position::AtSource,
        FusePosition::Within(most) => Position::Within {
            most_m: in_meters(most),
        },
        FusePosition::WithinIfEnclosed(most) => Position::WithinIfEnclosed {
            most_m: in_meters(most),
        },
        FusePosition::AsCloseAsPracticable(most) => Position::AsCloseAsPracticable {
            most_m: in_meters(most),
        },
    }
}

const fn family(kind: FuseKind) -> Family {
    match kind {
        FuseKind::Blade => Family::Blade,
        FuseKind::Strip => Family::Anl,
        FuseKind::Post => Family::Mrbf,
        FuseKind::ClassT => Family::ClassT,
        FuseKind::Breaker => Family::Breaker,
    }
}

/// Every kind of fuse held against charge volts, what it must break and the rating wanted.
pub(super) fn kinds(charge_v: f64, fault_a: f64, rating_a: f64) -> Vec<KindFigures> {
    use crate::plan::part::Choice;
    let held = |&kind: &FuseKind| {
        let (charge, fault, rating) = (volts(charge_v), amps(fault_a), amps(rating_a));
        let found = suitability(family(kind), charge, fault, rating).ok()?;
        Some(KindFigures {
            kind,
            bears_voltage: found.bears_voltage,
            interrupts_a: found.interrupts.map(in_amps),
            breaks_fault: found.breaks_fault,
            made_in_rating: found.made_in_rating,
            suits: found.suits(),
        })
    };
    FuseKind::ALL.iter().filter_map(held).collect()
}

/// What may flow into a fault right behind the fuse: every battery at once, at
/// charge volts, through the cable that lies before the fuse and no other.
fn fault(plan: &Plan, ask: &Ask) -> Option<(f64, FaultFrom)> {
    if ask.by == AskedBy::Panels {
        return Some((BRIGHT_SUN_SHARE * ask.continuous_a, FaultFrom::Panels));
    }
    let parallel = f64::from(plan.banks.get(BANK)?.parallel_count);
    let (one_a, from) = string_fault(plan, ask.charge_v)?;
    let bank_a = parallel * one_a;
    let before_ohm = match ask.circuit {
        Circuit::Unit => cold_loop_ohm(plan, Circuit::Distribution).unwrap_or(0.0),
        _ => 0.0,
    };
    Some((behind(ask.charge_v, bank_a, before_ohm)?, from))
}

/// The fault current with so much cable more between source and fault.
fn behind(charge_v: f64, fault_a: f64, cable_ohm: f64) -> Option<f64> {
    let source_ohm = ohms(charge_v / fault_a);
    let fault = prospective_fault(volts(charge_v), source_ohm, ohms(cable_ohm));
    fault.ok().map(in_amps)
}

/// The least resistance of a circuit's cable, there and back: solid copper of its
/// size, as cold as the coldest morning. Nothing where length or conductor are
/// not stated.
fn cold_loop_ohm(plan: &Plan, circuit: Circuit) -> Option<f64> {
    let [length, conductor] = circuit.run_paths(plan.night.asked_unit);
    let length_m = asks::stated(plan, length).filter(|&length_m| length_m > 0.0)?;
    let area_mm2 = asks::stated(plan, conductor)?;
    let coldest_c = plan.number(Path::Wiring(W::ColdestC))?;
    let found = wiring::loop_resistance(
        square_millimeters(area_mm2),
        1.0,
        meters(length_m),
        celsius(coldest_c),
    );
    found.ok().map(in_ohms)
}

/// Whether the short-circuit current of a battery is a guess: typed as one, or from
/// a resistance that is one.
pub(super) fn fault_is_guess(plan: &Plan) -> bool {
    let stated = plan.stated(Path::Wiring(W::BatteryFaultA));
    let figure = stated.or_else(|| plan.figure(Path::Bank(BANK, B::BatteryResistanceMohm)));
    figure.is_none_or(|figure| figure.from.is_guess())
}

/// The fault current of one string of batteries.
pub(super) fn string_fault(plan: &Plan, charge_v: f64) -> Option<(f64, FaultFrom)> {
    let stated = plan.number(Path::Wiring(W::BatteryFaultA));
    if let Some(battery_a) = stated {
        return Some((battery_a, FaultFrom::Maker));
    }
    let bank = plan.banks.get(BANK)?;
    let ohm = string_ohm(plan, true)? * f64::from(bank.series_count);
    // The terminals themselves. No bank has less than a hundredth of a milliohm.
    let fault = prospective_fault(volts(charge_v), ohms(ohm.max(1e-5)), ohms(0.0));
    Some((in_amps(fault.ok()?), FaultFrom::Resistance))
}

/// Resistance of one battery; the lowest likely one where faults are reckoned:
/// less its spread, which for a guess is half of it.
pub(super) fn string_ohm(plan: &Plan, lowest: bool) -> Option<f64> {
    let path = Path::Bank(BANK, B::BatteryResistanceMohm);
    let figure = plan.figure(path)?;
    if !lowest {
        return Some(figure.value / 1000.0);
    }
    let figure = match plan.stated(path) {
        Some(_) => figure,
        // No leads and no electronics: what may be short across the terminals.
        None => figure.with(plan.banks.get(BANK)?.least_resistance_mohm()),
    };
    let less = spread::half_width(path, figure);
    Some((figure.value - less).max(0.0) / 1000.0)
}

/// The rating a current takes with nothing to hold it against.
pub(super) fn rating_for(current_a: f64) -> Option<f64> {
    match recommend(amps(current_a), amps(10_000.0)).ok()? {
        FuseAdvice::Use(rating) => Some(in_amps(rating.current)),
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_kind_of_the_plan_is_one_of_the_room() {
        let kinds = kinds(29.2, 5000.0, 50.0);
        assert_eq!(kinds.len(), Family::ALL.len());
        let class_t = kinds.iter().find(|one| one.kind == FuseKind::ClassT);
        assert!(class_t.unwrap().suits);
        assert!(kinds.iter().any(|one| !one.suits));
    }
}
