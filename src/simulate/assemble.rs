//! From a plan to a pack and a job.

use super::{
    calibrate::calibrated,
    job::{Job, Limits, Stop},
};
use crate::{
    physics::battery::{
        Capacity, Pack, TemperatureEffects, curve::Curve, polarisation::Polarisation,
    },
    physics::circuit::Branch,
    physics::feed::{DcDc, Inverter},
    physics::solar::charger::Charger,
    physics::wiring,
    plan::finding::{Finding, Matter},
    plan::{
        Bank, Cable, Draw, Feed, Mode, Plan, Unit,
        entry::is_gauge,
        path::{BankField as B, ModeField, Path, UnitField},
        supply::{ChargerField as G, SupplyField as S},
        wiring::{Strands, WiringField},
    },
    quantity::{celsius, in_ohms, meters, square_millimeters},
    range,
};

/// A pack, and what there is to say about it.
///
/// The findings are notes and cautions about how measured figures were taken; an error
/// never stands here (those are [`Plan::errors`]).
#[derive(Clone, Debug, PartialEq)]
pub struct Assembled {
    /// The whole bank as one source, at the temperature that its resistance is stated for.
    pub pack: Pack,
    /// Empty where nothing was measured, or where it fits.
    pub findings: Vec<Finding>,
}

/// The charger at `index` of the plan's chargers, as it gives in air up to 40 °C.
///
/// - `usual_hold_v`: volts at the bars that it holds where the plan states none
/// - `end_a`: the bank's current at which it is called full, A
///
/// Nothing where its current is not stated, or where there is no such charger.
#[must_use]
pub fn charger(plan: &Plan, index: usize, usual_hold_v: f64, end_a: f64) -> Option<Charger> {
    let number = |field| plan.number(Path::Charger(index, field));
    Some(Charger {
        most_a: number(G::MostA)?,
        hold_v: number(G::HoldV).unwrap_or(usual_hold_v),
        end_a,
        efficiency: number(G::EfficiencyPercent)? / 100.0,
        source_w: number(G::SourceW),
    })
}

/// The bank at `index` of the plan's banks as one source.
///
/// Volts and resistance of a battery count times the batteries in series, Ah and amps
/// times the strings. State of health takes from the Ah and leaves the rated current, so
/// that Peukert's law starts where the label has it. Measured Ah or Wh take the place of
/// the label's, and of health.
///
/// The plan must be without errors at this bank (see [`Plan::errors`]); with
/// some, the result is finite rubbish or nothing. Nothing where there is no such bank.
#[must_use]
pub fn pack(plan: &Plan, index: usize) -> Option<Assembled> {
    let bank = plan.banks.get(index)?;
    let number = |field| plan.number(Path::Bank(index, field));
    let (series, parallel) = (f64::from(bank.series_count), f64::from(bank.parallel_count));
    let rated_ah = bank.battery_rated_ah.value * parallel;
    let rated = Pack {
        curve: battery_curve(bank)?.scaled(series, 0.0),
        ohm: number(B::BatteryResistanceMohm)? / 1000.0 * series / parallel,
        polarisation: polarisation(plan, index),
        capacity: Capacity {
            ah: rated_ah * number(B::HealthPercent)? / 100.0,
            rated_a: rated_ah / number(B::RatedHoursH)?,
            exponent: if bank.chemistry.is_lead_acid() {
                number(B::PeukertExponent)?
            } else {
                1.0
            },
        },
        empty_charge: 0.0,
        cutoff_v: number(B::CutoffV)?,
        limit_a: number(B::BatteryCurrentLimitA).map(|battery_a| battery_a * parallel),
        parasitic_w: number(B::ParasiticW)?,
    };
    let measured = bank.measured;
    if measured.measured_ah.is_none() && measured.measured_wh.is_none() {
        return Some(Assembled {
            pack: rated,
            findings: Vec::new(),
        });
    }
    calibrated(rated, &measured, bank.nominal_v(), index)
}

/// [`pack`] as warm as the plan says the bank is: its resistance and what it drops beyond
/// that. Capacity stays as stated.
///
/// The pack unchanged where no temperature is stated, or one out of
/// [`range::BANK_C`](crate::range::BANK_C). For a steady draw; a day has its own
/// temperatures.
#[must_use]
pub fn warm_pack(plan: &Plan, index: usize) -> Option<Assembled> {
    let assembled = pack(plan, index)?;
    let stated_c = plan.number(Path::Supply(S::BankC));
    // One out of range is a finding of the day, and counts for nothing here.
    let Some(bank_c) = stated_c.filter(|&bank_c| range::BANK_C.accepts(bank_c)) else {
        return Some(assembled);
    };
    let chemistry = plan.banks.get(index)?.chemistry;
    let hours = chemistry.data().rated_hours;
    let ratio = TemperatureEffects::of(chemistry, bank_c, hours).ohm_ratio;
    let pack = Pack {
        ohm: assembled.pack.ohm * ratio,
        polarisation: assembled.pack.polarisation.map(|it| it.at_ohm_ratio(ratio)),
        ..assembled.pack
    };
    Some(Assembled { pack, ..assembled })
}

/// What the bank drops beyond its resistance, as its chemistry is known for.
/// The plan's percentage scales what was measured on the chemistry: 100 as measured, 0
/// none. Nothing for lead-acid, whose drop is Peukert's law, nor, up to 100, for a
/// chemistry on which nothing was measured.
fn polarisation(plan: &Plan, index: usize) -> Option<Polarisation> {
    let bank = plan.banks.get(index)?;
    let share = plan.number(Path::Bank(index, B::PolarisationPercent))? / 100.0;
    let cells = f64::from(bank.reading().cells) * f64::from(bank.series_count);
    let ah = bank.battery_rated_ah.value * f64::from(bank.parallel_count);
    bank.chemistry.data().rates.of_bank(cells, ah, share)
}

/// Of one battery: open-circuit volts against the charge of its cells, 0 to 1. The plan's
/// own rows, where it has any, else the chemistry's; nothing where the rows make no curve.
fn battery_curve(bank: &Bank) -> Option<Curve> {
    if bank.battery_open_circuit.is_empty() {
        return Some(bank.chemistry.data().curve(f64::from(bank.reading().cells)));
    }
    let rows: Vec<_> = bank
        .battery_open_circuit
        .iter()
        .map(|row| (row.charge_percent / 100.0, row.open_circuit_v))
        .collect();
    Curve::new(&rows).ok()
}

/// Loop resistance from the bank to a unit: its own cable, made as the wiring
/// says, and the one to the distribution before it, where its length is said. The
/// fourth question judges the same copper; a conductor that nobody has named is
/// taken as the usual one here, and judged by nobody.
///
/// Ohms of both conductors and of the connections, at the temperature of the unit's cable.
/// 0 where there is no such unit.
#[must_use]
pub fn path_ohm(plan: &Plan, unit: usize) -> f64 {
    let Some(cable) = plan.units.get(unit).map(|unit| &unit.cable) else {
        return 0.0;
    };
    let wiring = &plan.wiring;
    let number = |field| plan.number(Path::Unit(unit, field)).unwrap_or(0.0);
    let (own_m, own_mm2) = (
        number(UnitField::CableLengthM),
        number(UnitField::CableAreaMm2),
    );
    let own = pair_ohm(cable, own_m, own_mm2, wiring.unit.strands);
    let shared_mm2 = plan.number(Path::Wiring(WiringField::DistributionMm2));
    let shared = match (wiring.distribution_m, shared_mm2) {
        (Some(length_m), Some(area_mm2)) => {
            pair_ohm(cable, length_m, area_mm2, wiring.distribution.strands)
        }
        _ => 0.0,
    };
    own + shared + cable.connections_mohm / 1000.0
}

/// Two conductors of that length and area, as warm as the unit's cable. Where
/// nothing says how they are made they are taken as the area they name; a number
/// out of range counts for nothing (and is a finding).
fn pair_ohm(cable: &Cable, length_m: f64, area_mm2: f64, strands: Option<Strands>) -> f64 {
    let allowance = strands.map_or(1.0, |strands| {
        let system = if is_gauge(area_mm2) {
            wiring::System::Awg
        } else {
            wiring::System::Metric
        };
        build(strands).allowance(system)
    });
    let found = wiring::loop_resistance(
        square_millimeters(area_mm2),
        allowance,
        meters(length_m),
        celsius(cable.temperature_c),
    );
    found.map_or(0.0, in_ohms)
}

/// The wiring room's word for how a conductor is made.
pub(crate) const fn build(strands: Strands) -> wiring::Build {
    match strands {
        Strands::Fine => wiring::Build::Flexible,
        Strands::FineTinned => wiring::Build::FlexibleTinned,
        Strands::Few => wiring::Build::Stranded,
        Strands::Solid => wiring::Build::Solid,
    }
}

/// A job, and what there is to say about it.
///
/// Findings are cautions where amps do not carry over to this bank (see [`SAME_SYSTEM`]).
#[derive(Clone, Debug, PartialEq)]
pub struct AssembledJob {
    /// Of the steady run; a hot day makes its own from the same parts.
    pub job: Job,
    /// One at most; empty where the mode's draw is taken as stated.
    pub findings: Vec<Finding>,
}

/// A mode of a unit on a bank, with everything else that runs.
///
/// `bank`, `unit` and `mode` are places in the plan's lists, the mode's within its unit;
/// `pack` is that bank ([`pack`], [`warm_pack`]) and gives its standby draw alone. The
/// bus carries that and all loads at once, without a cable; the unit hangs behind its
/// own ([`path_ohm`]).
///
/// Nothing where one of the three is not in the plan.
#[must_use]
pub fn job(
    plan: &Plan,
    bank: usize,
    unit: usize,
    mode: usize,
    pack: &Pack,
) -> Option<AssembledJob> {
    let the_bank = plan.banks.get(bank)?;
    let the_unit = plan.units.get(unit)?;
    let the_mode = the_unit.modes.get(mode)?;
    let mut findings = Vec::new();
    let asked = asked_of_feed(
        the_mode,
        the_unit,
        the_bank.nominal_v(),
        unit,
        mode,
        &mut findings,
    );
    let standby_w = plan.number(Path::Mode(unit, mode, ModeField::StandbyW))?;
    let bus = Branch::power(
        plan.loads
            .iter()
            .map(|load| load.power_w.value)
            .sum::<f64>()
            + pack.parasitic_w,
        0.0,
    );
    let ohm = path_ohm(plan, unit);
    let off = Branch::power(input_w(&the_unit.feed, standby_w), ohm);
    let on = match asked {
        Asked::Amps(amps) => Branch::current(amps, ohm),
        Asked::Watts(watts) => Branch::power(input_w(&the_unit.feed, watts), ohm),
    };
    // A mean has the cycles in it already.
    let duty = if the_mode.is_average() {
        1.0
    } else {
        plan.number(Path::Mode(unit, mode, ModeField::DutyPercent))? / 100.0
    };
    let limits = Limits {
        far_end: far_end(plan, unit),
        overload: overload(the_unit, asked),
    };
    Some(AssembledJob {
        job: Job {
            on: [bus, on],
            off: [bus, off],
            duty,
            limits,
        },
        findings,
    })
}

/// What the mode takes at the unit's own terminals.
///
/// Behind a converter or an inverter that is the output side.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Asked {
    /// Constant power, W: more amps as the volts fall.
    Watts(f64),
    /// Constant current, A, whatever the volts.
    Amps(f64),
}

/// Amps carry over only to the bank voltage they were measured at, and only
/// where nothing converts them: elsewhere the same power is taken.
///
/// `bank_v` is the bank's nominal voltage; the two places name the mode in the caution
/// that is pushed where power is taken instead of amps.
pub(crate) fn asked_of_feed(
    mode: &Mode,
    unit: &Unit,
    bank_v: f64,
    unit_index: usize,
    mode_index: usize,
    findings: &mut Vec<Finding>,
) -> Asked {
    let (amps, at_v) = match mode.draw {
        Draw::Power { power_w } => return Asked::Watts(power_w.value),
        Draw::Current {
            current_a,
            measured_at_v,
        } => (current_a.value, measured_at_v),
    };
    let taken_w = amps * at_v;
    let path = Some(Path::Mode(unit_index, mode_index, ModeField::CurrentA));
    let other_voltage = (at_v / bank_v - 1.0).abs() > SAME_SYSTEM;
    let matter = match unit.feed {
        Feed::Direct if other_voltage => Matter::AmpsAtOtherVoltage {
            measured_at_v: at_v,
            bank_v,
            taken_w,
        },
        Feed::Direct => return Asked::Amps(amps),
        Feed::DcDc { .. } | Feed::Inverter { .. } => Matter::AmpsBehindConverter {
            measured_at_v: at_v,
            taken_w,
        },
    };
    findings.push(Finding::caution(path, matter));
    Asked::Watts(taken_w)
}

/// A system voltage within a quarter is the same system: 12.0, 12.8 and 14.4 V
/// are, 12 and 24 V are not.
/// As a share of the bank's nominal voltage. (Ours.)
pub const SAME_SYSTEM: f64 = 0.25;

/// Watts at the feed's input for so many at its output; what it draws at no load is in
/// them, also for 0 W.
pub(crate) fn input_w(feed: &Feed, output_w: f64) -> f64 {
    match *feed {
        Feed::Direct => output_w,
        Feed::DcDc {
            efficiency_percent,
            idle_w,
            ..
        } => DcDc {
            efficiency: efficiency_percent.value / 100.0,
            idle_w: idle_w.value,
        }
        .input_w(output_w),
        Feed::Inverter {
            no_load_w,
            proportional_loss_percent,
            square_loss_percent_per_kw,
            ..
        } => Inverter {
            no_load_w: no_load_w.value,
            proportional: proportional_loss_percent.value / 100.0,
            square_per_kw: square_loss_percent_per_kw.value / 100.0,
        }
        .input_w(output_w),
    }
}

/// The voltage at the end of the unit's cable below which its inverter, or the unit
/// itself where it has none, stops. Nothing where there is no such unit.
pub(in crate::simulate) fn far_end(plan: &Plan, unit: usize) -> Option<Stop> {
    if plan.is_direct(unit) {
        let cutoff_v = plan.number(Path::Unit(unit, UnitField::CutoffV))?;
        return Some(Stop::UnitCutOff { cutoff_v });
    }
    let cutoff_v = plan.number(Path::Unit(unit, UnitField::InverterCutoffV))?;
    Some(Stop::InverterCutOff { cutoff_v })
}

/// What the feed cannot give, whatever the charge.
pub(in crate::simulate) fn overload(unit: &Unit, asked: Asked) -> Option<Stop> {
    let Asked::Watts(watts) = asked else {
        return None;
    };
    match unit.feed {
        Feed::DcDc {
            output_v,
            limit_a: Some(limit),
            ..
        } if watts / output_v > limit.value => Some(Stop::ConverterLimit {
            limit_a: limit.value,
        }),
        Feed::Inverter {
            limit_w: Some(limit),
            ..
        } if watts > limit.value => Some(Stop::InverterLimit {
            limit_w: limit.value,
        }),
        _ => None,
    }
}
