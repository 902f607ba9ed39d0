//! What can hurt, where it applies: each caution with its trigger in the plan.
//!
//! A caution is a type with its numbers, chosen by what the plan says and by nothing
//! that is written of it. Its sentence and its source stand once, in
//! [`crate::text`]. Thresholds that no code gives are common practice, no source.

use super::{day::can_be_run, wiring};
use crate::{
    physics::battery::Chemistry,
    plan::{
        Path, Plan,
        day::DayField as D,
        supply::{BankPlace, Charger, ChargerKind, SupplyField as S},
        wiring::{Circuit, WiringField as W},
    },
    simulate::day::closed,
};
use serde::{Deserialize, Serialize};

/// Something that can hurt.
///
/// `bank` is a place in the plan, volts are of the whole bank.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "caution", rename_all = "snake_case")]
pub enum Caution {
    /// A closed cabin that nothing cools gets above 35 °C in the plan's days.
    /// `cabin_c` is the warmest that it gets.
    HeatUnattended {
        cabin_c: f64,
    },
    /// A bank is charged to 50 V or more.
    BeyondFiftyVolts {
        bank: usize,
        charge_v: f64,
    },
    /// A generator is among what charges; on by the clock while people sleep.
    Generator {
        at_night: bool,
    },
    /// The same of an engine.
    Engine {
        at_night: bool,
    },
    /// Something charges a lithium bank that may be colder than it bears.
    /// `least_c` is the least it bears, `coldest_c` the coldest it may be.
    ChargedCold {
        bank: usize,
        least_c: f64,
        coldest_c: f64,
    },
    /// A lead-acid bank stands indoors: it wants this much air.
    /// m³ an hour, and the opening that lets it through.
    LeadAcidGas {
        bank: usize,
        air_m3_h: f64,
        opening_mm2: f64,
    },
    /// A cable from the bank carries 10 A or more and no fuse is named for it.
    /// `current_a` for hours.
    PathWithoutFuse {
        circuit: Circuit,
        current_a: f64,
    },
    /// An engine charges a bank whose BMS may open.
    AlternatorLeftOpen {
        bank: usize,
    },
    /// More in series than the maker allows.
    SeriesBeyondMaker {
        bank: usize,
        series_count: u32,
        most_count: u32,
    },
    /// In series, and how many the maker allows was not said.
    SeriesAsAllowed {
        bank: usize,
        series_count: u32,
    },
    /// Strings in parallel.
    ParallelAsAllowed {
        bank: usize,
        parallel_count: u32,
    },
    /// A bank with a BMS.
    BmsIsNoFuse,
    /// The rest: always.
    FuseAtSource,
    CopperOnly,
    AutomotiveGauge,
    PrintedRatingDecides,
    LocalCodes,
    Estimates,
}

/// Warmer than this a closed cabin is dangerous to whoever cannot leave it.
/// (Common practice, no source.)
const HOT_C: f64 = 35.0;
/// Below this a wire usually sits behind a fuse box of its own.
const HIGH_CURRENT_A: f64 = 10.0;

impl Caution {
    /// Whether it is about cables, fuses and batteries, for the fourth question and
    /// the electrician's sheet.
    #[must_use]
    pub const fn is_of_wiring(self) -> bool {
        !matches!(
            self,
            Self::HeatUnattended { .. }
                | Self::Generator { .. }
                | Self::Engine { .. }
                | Self::Estimates
        )
    }

    /// Whether it is about a charger of that kind.
    #[must_use]
    pub const fn is_of_charger(self, kind: ChargerKind) -> bool {
        match self {
            Self::Generator { .. } => matches!(kind, ChargerKind::Generator),
            Self::Engine { .. } | Self::AlternatorLeftOpen { .. } => {
                matches!(kind, ChargerKind::Engine)
            }
            _ => false,
        }
    }
}

/// All cautions that apply to a plan, weightiest first. Those that want a number
/// that the plan has wrong are left out: its findings name it.
///
/// ```
/// use till_morning::{answer::cautions::{Caution, cautions}, physics::battery::Chemistry, plan::Plan};
/// let mut plan = Plan::demo();
/// let gas = |plan: &Plan| cautions(plan).iter().any(|one| matches!(one, Caution::LeadAcidGas { .. }));
/// assert!(!gas(&plan));
/// plan.banks[0].chemistry = Chemistry::Flooded;
/// assert!(gas(&plan));
/// ```
#[must_use]
pub fn cautions(plan: &Plan) -> Vec<Caution> {
    let closed = can_be_run(plan).then(|| closed(plan)).flatten();
    let mut all = Vec::new();
    let warmest_c = closed.map(|closed| closed.warmest_c);
    let hot = warmest_c.filter(|&cabin_c| cabin_c > HOT_C);
    all.extend(hot.map(|cabin_c| Caution::HeatUnattended { cabin_c }));
    let errors = plan.errors();
    let is_sound = |&bank: &usize| !errors.iter().any(|error| Plan::blocks_bank(error, bank));
    let banks = (0..plan.banks.len()).filter(is_sound);
    all.extend(banks.clone().filter_map(|bank| beyond_fifty(plan, bank)));
    all.extend(engines(plan));
    let coldest_c = coldest_bank_c(plan, closed.map(|closed| closed.coldest_bank_c));
    all.extend(
        banks
            .clone()
            .filter_map(|bank| cold(plan, bank, coldest_c?)),
    );
    all.extend(banks.clone().filter_map(|bank| gas(plan, bank)));
    let unfused = wiring::unfused(plan).into_iter();
    let unfused = unfused.filter(|&(_, current_a)| current_a >= HIGH_CURRENT_A);
    all.extend(unfused.map(|(circuit, current_a)| Caution::PathWithoutFuse { circuit, current_a }));
    all.extend(banks.clone().filter_map(|bank| alternator(plan, bank)));
    all.extend(banks.flat_map(|bank| together(plan, bank)));
    if plan.banks.iter().any(|bank| has_bms(bank.chemistry)) {
        all.push(Caution::BmsIsNoFuse);
    }
    all.extend([
        Caution::FuseAtSource,
        Caution::CopperOnly,
        Caution::AutomotiveGauge,
        Caution::PrintedRatingDecides,
        Caution::LocalCodes,
        Caution::Estimates,
    ]);
    all
}

/// Lithium and sodium-ion come with one; lead-acid has none.
const fn has_bms(chemistry: Chemistry) -> bool {
    !chemistry.is_lead_acid()
}

fn beyond_fifty(plan: &Plan, bank: usize) -> Option<Caution> {
    let charge_v = wiring::charge_v_of(plan, bank)?;
    wiring::is_beyond_fifty(charge_v).then_some(Caution::BeyondFiftyVolts { bank, charge_v })
}

/// What burns fuel, each kind said once; at night if any of that kind is on then.
fn engines(plan: &Plan) -> Vec<Caution> {
    let of = |kind: ChargerKind| {
        let all = plan.supply.chargers.iter();
        let mut nights = all
            .filter(|one| one.kind_taken() == kind)
            .map(|one| is_on_at_night(plan, one))
            .peekable();
        nights.peek()?;
        Some(nights.any(|at_night| at_night))
    };
    let generator = of(ChargerKind::Generator).map(|at_night| Caution::Generator { at_night });
    let engine = of(ChargerKind::Engine).map(|at_night| Caution::Engine { at_night });
    generator.into_iter().chain(engine).collect()
}

/// Whether a charger is on by the clock within the night.
fn is_on_at_night(plan: &Plan, charger: &Charger) -> bool {
    const DAY_MIN: f64 = 24.0 * 60.0;
    let (Some(from), Some(until)) = (charger.from_clock_min, charger.until_clock_min) else {
        return false;
    };
    let start_min = f64::from(plan.night.start_clock_min);
    let night_min = (60.0 * plan.night.wanted_h).min(DAY_MIN);
    // Counted from the night's start, a window begins and ends somewhere in the day.
    let after = |clock: u32| (f64::from(clock) - start_min + DAY_MIN) % DAY_MIN;
    let (on, off) = (after(from), after(until));
    // One that ends before it begins was on when the night began.
    on < night_min || off < on
}

/// The coldest that a bank may be: by what is said of its own warmth; else by the
/// plan's days where it stands, and by the year's coldest morning where that is said.
fn coldest_bank_c(plan: &Plan, in_the_days_c: Option<f64>) -> Option<f64> {
    if let Some(bank_c) = plan.number(Path::Supply(S::BankC)) {
        return Some(bank_c);
    }
    // Where the days cannot be run: as cold as it is outdoors.
    let outdoors = || {
        let imported = plan.day.imported.outdoor_c.iter().copied();
        let high_low = [D::HighC, D::LowC].map(|field| plan.number(Path::Day(field)));
        let all = high_low.into_iter().flatten().chain(imported);
        all.reduce(f64::min)
    };
    let stated = plan.stated(Path::Wiring(W::ColdestC));
    let morning = stated.map(|figure| figure.value);
    in_the_days_c
        .or_else(outdoors)
        .into_iter()
        .chain(morning)
        .reduce(f64::min)
}

/// Said of a bank that is charged by anything at all; lead-acid bears the cold.
fn cold(plan: &Plan, bank: usize, coldest_c: f64) -> Option<Caution> {
    let is_charged = !(plan.supply.chargers.is_empty() && plan.supply.arrays.is_empty());
    let the_bank = plan.banks.get(bank)?;
    let is_lithium = has_bms(the_bank.chemistry);
    let stated = plan.stated(Path::Wiring(W::ChargeLeastC));
    // The default of the field is of the first bank's chemistry.
    let least_c = stated.unwrap_or(the_bank.usual_charge_least_c()).value;
    (is_charged && is_lithium && coldest_c < least_c).then_some(Caution::ChargedCold {
        bank,
        least_c,
        coldest_c,
    })
}

/// Not of a bank outside, and not of one that does not gas.
fn gas(plan: &Plan, bank: usize) -> Option<Caution> {
    if plan.supply.bank_place == Some(BankPlace::Outside) {
        return None;
    }
    let (air_m3_h, opening_mm2) = wiring::ventilate(plan, bank)?;
    Some(Caution::LeadAcidGas {
        bank,
        air_m3_h,
        opening_mm2,
    })
}

/// A BMS that opens leaves the alternator without a load.
fn alternator(plan: &Plan, bank: usize) -> Option<Caution> {
    let mut chargers = plan.supply.chargers.iter();
    let by_engine = chargers.any(|one| one.kind_taken() == ChargerKind::Engine);
    let opens = has_bms(plan.banks.get(bank)?.chemistry);
    (by_engine && opens).then_some(Caution::AlternatorLeftOpen { bank })
}

/// What is in series and parallel, against what the maker allows.
fn together(plan: &Plan, bank: usize) -> Vec<Caution> {
    let Some(the_bank) = plan.banks.get(bank) else {
        return Vec::new();
    };
    let (series_count, parallel_count) = (the_bank.series_count, the_bank.parallel_count);
    let series = match plan.wiring.most_series_count {
        Some(most_count) if series_count > most_count => Some(Caution::SeriesBeyondMaker {
            bank,
            series_count,
            most_count,
        }),
        None if series_count > 1 => Some(Caution::SeriesAsAllowed { bank, series_count }),
        _ => None,
    };
    let parallel = (parallel_count > 1).then_some(Caution::ParallelAsAllowed {
        bank,
        parallel_count,
    });
    series.into_iter().chain(parallel).collect()
}
