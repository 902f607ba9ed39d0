//! What a bank is, before anything hangs on it.

use crate::{
    plan::finding::{Finding, Matter},
    plan::{
        Plan,
        path::{BankField as B, Path},
    },
    simulate::{assemble, held_span},
};
use serde::{Deserialize, Serialize};

/// A bank as the engine reads it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct BankFacts {
    /// Its place in the plan.
    pub bank: usize,
    /// Nominal volts of one battery, as its cells make them.
    pub battery_nominal_v: f64,
    /// In series within one battery.
    pub cells_per_battery: u32,
    /// Of the whole bank: that times the batteries in series.
    pub nominal_v: f64,
    /// Series times parallel.
    pub batteries_count: u32,
    /// By the label, whole bank.
    pub rated_ah: f64,
    /// Rated Ah at the nominal voltage taken.
    pub rated_wh: f64,
    /// From full to empty, by the label and health, or as measured.
    pub held_ah: f64,
    /// At rest: the energy behind the open-circuit voltage.
    pub held_wh: f64,
    /// What the depth leaves to use, from the charge at the start, Ah; 0 where the start is
    /// below what is kept.
    pub usable_ah: f64,
    /// The same by the open-circuit voltage over that stretch.
    pub usable_wh: f64,
    /// Of the whole bank, at 25 °C.
    pub resistance_mohm: f64,
    /// Measured over rated charge, where Ah was measured.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub measured_of_rated_ah_percent: Option<f64>,
    /// Measured over rated energy, where Wh was measured.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub measured_of_rated_wh_percent: Option<f64>,
}

/// The facts of the bank at `index`, with what there is to say about it pushed onto
/// `findings`; nothing where it cannot be made a pack.
pub fn bank_facts(plan: &Plan, index: usize, findings: &mut Vec<Finding>) -> Option<BankFacts> {
    let bank = plan.banks.get(index)?;
    let assembled = assemble::pack(plan, index)?;
    findings.extend(assembled.findings);
    readings(plan, index, findings);
    let pack = assembled.pack;
    let (from, to) = held_span(plan, index)?;
    let (high, low) = (pack.charge_at(from), pack.charge_at(to));
    let reading = bank.reading();
    let rated_ah = bank.battery_rated_ah.value * f64::from(bank.parallel_count);
    let rated_wh = rated_ah * bank.nominal_v();
    let share = |figure: Option<crate::plan::Figure>, rated: f64| {
        figure.map(|figure| 100.0 * figure.value / rated)
    };
    let usable_ah = pack.held_ah() * (from - to);
    Some(BankFacts {
        bank: index,
        battery_nominal_v: reading.volts,
        cells_per_battery: reading.cells,
        nominal_v: bank.nominal_v(),
        batteries_count: bank.series_count * bank.parallel_count,
        rated_ah,
        rated_wh,
        held_ah: pack.held_ah(),
        held_wh: pack.held_ah() * pack.curve.mean_between(pack.empty_charge, 1.0),
        usable_ah,
        usable_wh: usable_ah * pack.curve.mean_between(low, high),
        resistance_mohm: pack.ohm * 1000.0,
        measured_of_rated_ah_percent: share(bank.measured.measured_ah, rated_ah),
        measured_of_rated_wh_percent: share(bank.measured.measured_wh, rated_wh),
    })
}

/// The readings taken of this bank that its owner should see.
fn readings(plan: &Plan, index: usize, findings: &mut Vec<Finding>) {
    let bank = &plan.banks[index];
    let reading = bank.reading();
    if reading.differs_from(bank.stated_v()) && bank.battery_nominal_v.is_some() {
        findings.push(Finding::note(
            Some(Path::Bank(index, B::BatteryNominalV)),
            Matter::NominalReading {
                stated_v: bank.stated_v(),
                taken_v: reading.volts,
                cells: reading.cells,
                wh: reading.volts * bank.battery_rated_ah.value,
            },
        ));
    }
    if bank.battery_open_circuit.is_empty() && !bank.chemistry.data().curve_is_measured {
        findings.push(Finding::note(
            Some(Path::OpenCircuit(index)),
            Matter::TypicalCurve,
        ));
    }
    if bank.parallel_count > 1 {
        findings.push(Finding::note(
            Some(Path::Bank(index, B::ParallelCount)),
            Matter::EqualSharing {
                parallel: bank.parallel_count,
            },
        ));
    }
    let depth_percent = plan
        .number(Path::Bank(index, B::DepthPercent))
        .unwrap_or(0.0);
    if bank.chemistry.is_lead_acid() && depth_percent > DEEP_LEAD_ACID_PERCENT {
        findings.push(Finding::caution(
            Some(Path::Bank(index, B::DepthPercent)),
            Matter::DeepLeadAcid { depth_percent },
        ));
    }
    let start_percent = plan
        .number(Path::Bank(index, B::StartChargePercent))
        .unwrap_or(100.0);
    if start_percent <= 100.0 - depth_percent {
        findings.push(Finding::caution(
            Some(Path::Bank(index, B::StartChargePercent)),
            Matter::DepthBeyondStart {
                start_percent,
                floor_percent: 100.0 - depth_percent,
            },
        ));
    }
}

/// Deeper than half wears lead-acid out early (common practice, no source).
const DEEP_LEAD_ACID_PERCENT: f64 = 50.0;
