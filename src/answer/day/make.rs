//! From a plan to a day's answer.

use super::{DayAnswer, SunUp};
use crate::{
    answer::worst_first,
    plan::finding::{Finding, Matter},
    plan::{
        Plan,
        cooling::{CoolingField as K, MAP_ROWS},
        day::DayField as D,
        path::{NightField, Path},
        supply::ArrayField as A,
    },
    simulate::day::{How, Inputs, Record, Scene, Starts, can_be_run, run},
    study::spread::{Sampled, Sampler},
};

/// The day of a plan's first bank, without odds and bands: those come from
/// [`crate::study::spread::Sampler`] and go in by [`DayAnswer::with`].
///
/// Nothing where the plan has errors that keep the day from being answered;
/// [`Plan::errors`] names them.
///
/// ```
/// use till_morning::{answer::day::day, plan::Plan};
/// let week = day(&Plan::demo()).unwrap();
/// assert_eq!(week.span_h, 168.0);
/// assert!(week.energy.gap_wh.abs() < 1e-6);
///
/// let mut bad = Plan::demo();
/// bad.day.latitude_deg = Some(91.0);
/// assert!(day(&bad).is_none());
/// ```
#[must_use]
pub fn day(plan: &Plan) -> Option<DayAnswer> {
    if !can_be_run(plan) {
        return None;
    }
    let scene = Scene::new(plan)?;
    let inputs = Inputs::new(&scene, plan)?;
    let mut record = Record::default();
    let outcome = run(&scene, &inputs, &How::default(), &mut record)?;
    let mut findings = findings(plan, &scene, &inputs);
    findings.extend(starts_cost(&inputs, &outcome.starts));
    let findings = worst_first(findings);
    Some(DayAnswer {
        start_clock_min: plan.night.start_clock_min,
        span_h: scene.span_h,
        wanted_h: scene.wanted_h,
        set_point_c: inputs.set_c,
        empty_h: outcome.empty.map(|empty| empty.0),
        empty_by: outcome.empty.map(|empty| empty.1),
        lost_h: outcome.lost_h,
        warmest_c: outcome.warmest_c,
        least_charge_percent: outcome.least_charge_percent,
        odds: None,
        trace: record.points,
        bands: Vec::new(),
        events: record.events,
        sun: scene
            .sun_up()
            .into_iter()
            .map(|(rise_h, set_h)| SunUp { rise_h, set_h })
            .collect(),
        days: outcome.days,
        energy: outcome.energy,
        heat: outcome.heat,
        findings,
        further: None,
    })
}

impl DayAnswer {
    /// With odds and bands from drawn days.
    #[must_use]
    pub fn with(mut self, sampled: Sampled) -> Self {
        self.odds = Some(sampled.odds);
        self.bands = sampled.bands;
        self
    }
}

/// The day with its drawn days: as many as the plan says.
///
/// No more than the range of that number allows. Nothing as for [`day`].
#[must_use]
pub fn day_with_odds(plan: &Plan) -> Option<DayAnswer> {
    let day = day(plan)?;
    let count = plan.number(Path::Day(D::SamplesCount))? as u32;
    let mut sampler = Sampler::new(plan)?;
    sampler.step(count.min(MOST_SAMPLES));
    Some(match sampler.finish() {
        Some(sampled) => day.with(sampled),
        None => day,
    })
}

/// Days drawn in one answer: what the range of their number allows.
const MOST_SAMPLES: u32 = crate::range::SAMPLES_COUNT.max as u32;

/// Of a panel whose open volts are below those at most power.
fn open_below_best(plan: &Plan, at: usize) -> Option<Finding> {
    let volts = |field| plan.number(Path::Array(at, field));
    let (open_v, best_v) = (volts(A::PanelOpenV)?, volts(A::PanelBestV)?);
    let matter = Matter::OpenBelowBest { open_v, best_v };
    (open_v < best_v).then(|| Finding::caution(Some(Path::Array(at, A::PanelOpenV)), matter))
}

/// Of a unit whose rating no coil gives on its airflow.
fn no_such_coil(plan: &Plan, unit: usize) -> Option<Finding> {
    let number = |field| plan.number(Path::Cooling(unit, field));
    let matter = Matter::NoSuchCoil {
        airflow_m3_h: number(K::AirflowM3H)?,
        sensible_percent: number(K::SensiblePercent)?,
    };
    Some(Finding::caution(
        Some(Path::Cooling(unit, K::AirflowM3H)),
        matter,
    ))
}

/// Of a unit's map that is not whole: its first row that is missing or lacks a number.
fn bad_map(plan: &Plan, unit: usize) -> Option<Finding> {
    let rows = &plan.units.get(unit)?.cooling.unit_map;
    let lacking = rows.iter().position(|row| !row.is_whole());
    let missing = (!rows.is_empty() && rows.len() < MAP_ROWS.0).then_some(rows.len());
    let row = lacking.or(missing)?;
    Some(Finding::caution(
        Some(Path::UnitMap(unit)),
        Matter::BadMap { row },
    ))
}

/// Share of the cooling whose loss at starts is worth a word.
const MUCH_LOST: f64 = 0.1;

/// Said where starts take more than a tenth of the cooling.
fn starts_cost(inputs: &Inputs, starts: &Starts) -> Option<Finding> {
    let unit = inputs.rigs.get(starts.rig?)?.unit;
    let matter = Matter::StartsCost {
        starts_count: starts.count,
        lost_percent: 100.0 * starts.lost_share(),
    };
    let path = Path::Cooling(unit, K::StartLossMin);
    (starts.lost_share() > MUCH_LOST).then(|| Finding::note(Some(path), matter))
}

/// What was taken otherwise than stated, and what does not go together.
fn findings(plan: &Plan, scene: &Scene, inputs: &Inputs) -> Vec<Finding> {
    let mut findings = Vec::new();
    let number = |field| plan.number(Path::Day(field));
    if let (Some(high_c), Some(low_c)) = (number(D::HighC), number(D::LowC))
        && low_c > high_c
    {
        let matter = Matter::LowAboveHigh { high_c, low_c };
        findings.push(Finding::caution(Some(Path::Day(D::LowC)), matter));
    }
    let asked = number(D::DayOfMonth).map_or(0, |day| day as u32);
    let taken = scene.day_of_month();
    if asked != taken {
        let matter = Matter::NoSuchDay {
            stated_number: asked,
            taken_number: taken,
        };
        findings.push(Finding::caution(Some(Path::Day(D::DayOfMonth)), matter));
    }
    let (wanted_h, span_h) = (plan.night.wanted_h, scene.span_h);
    if wanted_h > span_h {
        let matter = Matter::WantedBeyondSpan { wanted_h, span_h };
        findings.push(Finding::caution(
            Some(Path::Night(NightField::WantedH)),
            matter,
        ));
    }
    findings.extend((0..plan.supply.arrays.len()).filter_map(|at| open_below_best(plan, at)));
    let mut units: Vec<usize> = Vec::new();
    for rig in &inputs.rigs {
        if units.contains(&rig.unit) {
            continue;
        }
        units.push(rig.unit);
        findings.extend(bad_map(plan, rig.unit));
        let unit = rig.unit;
        if inputs
            .rigs
            .iter()
            .any(|rig| rig.unit == unit && !rig.has_coil())
        {
            findings.extend(no_such_coil(plan, rig.unit));
        }
    }
    if let Some(parts) = plan.day.imported.sun_parts() {
        let matter = Matter::ImportedSun { parts };
        findings.push(Finding::note(Some(Path::Imported), matter));
    }
    findings
}
