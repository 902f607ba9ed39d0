//! From a plan to its refill answer.

use super::{
    RefillAnswer, RefillMatter as R, RefillNote,
    chargers::{self, charger_refill},
    days::days_balance,
    notes,
    setting::{Night, Setting, from_share, night, sun_alone},
    sky::{self, sun_refill},
    watch::{DAY_H, Watch},
};
use crate::{
    answer::refill::FilledFrom,
    plan::finding::{Finding, Matter, Severity},
    plan::{Plan, path::Path, supply::SupplyField as S},
    simulate::day::{How, Inputs, Scene, run},
    study::spread::{Band, Share, bands},
};

/// Answers whether the first bank can be filled again.
///
/// Nothing where the plan has errors in its bank, loads, night or supply;
/// [`Plan::errors`] names them.
///
/// ```
/// use till_morning::{answer::refill::refill, plan::{Plan, supply::Charger, Figure}};
/// let mut plan = Plan::demo();
/// plan.supply.chargers = vec![Charger { most_a: Some(Figure::label(30.0)), ..Charger::default() }];
/// let answer = refill(&plan).unwrap();
/// let shore = &answer.chargers[0];
/// assert!(shore.idle.is_filled);
/// // With the cooler on beside, it takes longer or is not done at all.
/// let cooling = shore.cooling.as_ref().unwrap();
/// assert!(!cooling.is_filled || cooling.hours_h.likely > shore.idle.hours_h.likely);
/// ```
#[must_use]
pub fn refill(plan: &Plan) -> Option<RefillAnswer> {
    if !can_be_answered(plan) {
        return None;
    }
    let night = night(plan);
    let air_c = night.as_ref().map_or(AIR_C, |night| night.bank_c.0);
    let setting = Setting::new(plan, air_c)?;
    let (from, filled_from) = from_share(plan, night.as_ref())?;
    let mut chargers: Vec<_> = (0..plan.supply.chargers.len())
        .filter_map(|at| charger_refill(plan, at, &setting, from, air_c))
        .collect();
    let mut sun = night
        .as_ref()
        .and_then(|night| sun_refill(plan, night, &setting, from));
    let mut likely = vec![
        100.0 * from,
        sun.as_ref().map_or(0.0, |sun| sun.end_percent.likely),
    ];
    for refill in &chargers {
        let hours = |fill: Option<&super::Fill>| fill.map_or(0.0, |fill| fill.hours_h.likely);
        likely.extend([hours(Some(&refill.idle)), hours(refill.cooling.as_ref())]);
    }
    let numbers = Numbers {
        count: likely.len(),
        air_c,
        scene: night.as_ref().and_then(|_| Scene::coarse(&sun_alone(plan))),
    };
    let mut found = bands(plan, &paths(plan, night.is_some()), &likely, |plan| {
        numbers.of(plan)
    })
    .into_iter();
    let mut next = || found.next().unwrap_or_default();
    let from_percent = next().0;
    let end = next();
    if let Some(sun) = &mut sun {
        sky::with_band(sun, end);
    }
    for refill in &mut chargers {
        let (idle, cooling): ((Band, Vec<Share>), _) = (next(), next());
        chargers::with_bands(refill, idle, cooling.0);
    }
    let (low, high) = (
        setting.pack.charge_at(from),
        setting.pack.charge_at(setting.to),
    );
    let missing_ah = (high - low).max(0.0) * setting.pack.capacity.ah;
    let mut answer = RefillAnswer {
        from_percent: Band {
            high: from_percent.high.min(100.0),
            ..from_percent
        },
        from: filled_from,
        to_percent: 100.0 * setting.to,
        missing_ah,
        missing_wh: missing_ah * setting.pack.curve.mean_between(low, high.max(low)),
        beside_w: setting.beside_w,
        chargers,
        sun,
        days: night.as_ref().and_then(|_| days_balance(plan, setting.to)),
        notes: Vec::new(),
    };
    answer.notes = all_notes(plan, &answer, &setting, night.as_ref());
    Some(answer)
}

/// Air about a charger where no day says otherwise.
const AIR_C: f64 = 25.0;

/// Whether no error stands in what a filling needs.
fn can_be_answered(plan: &Plan) -> bool {
    let stands_in_the_way = |error: &Finding| {
        let of_supply = matches!(
            error.field,
            Some(
                Path::Supply(_)
                    | Path::Arrays
                    | Path::Array(..)
                    | Path::Chargers
                    | Path::Charger(..)
            )
        );
        let (unit, mode) = (plan.night.asked_unit, plan.night.asked_mode);
        of_supply
            || (matches!(error.matter, Matter::TooMany { .. }) && !Plan::blocks_claims_only(error))
            || Plan::blocks_night(error)
            || Plan::blocks(error, 0, unit, mode)
    };
    !plan.banks.is_empty() && !plan.errors().iter().any(stands_in_the_way)
}

/// The addresses that are moved for the bands.
fn paths(plan: &Plan, has_day: bool) -> Vec<Path> {
    let mut paths = chargers::paths(plan);
    paths.push(Path::Supply(S::RefillFromPercent));
    for path in sky::paths(plan) {
        let is_bank = matches!(path, Path::Bank(..));
        if (has_day || is_bank) && !paths.contains(&path) {
            paths.push(path);
        }
    }
    paths
}

/// What is asked for again and again: charge left, the sunny day's end, and
/// hours by each charger, idle and cooling.
struct Numbers {
    count: usize,
    air_c: f64,
    scene: Option<Scene>,
}

impl Numbers {
    fn of(&self, plan: &Plan) -> Vec<f64> {
        let mut numbers = self.some(plan).unwrap_or_default();
        // A plan at the edge of its ranges that cannot be run: no part in any band.
        numbers.resize(self.count, 0.0);
        numbers
    }

    fn some(&self, plan: &Plan) -> Option<Vec<f64>> {
        let setting = Setting::new(plan, self.air_c)?;
        let (left, end) = match &self.scene {
            Some(scene) => day_shares(scene, &sun_alone(plan))?,
            None => (from_share(plan, None)?.0, 0.0),
        };
        let stated = plan.number(Path::Supply(S::RefillFromPercent));
        let from = stated.map_or(left, |percent| percent / 100.0);
        let mut numbers = vec![100.0 * from, 100.0 * end];
        for at in 0..plan.supply.chargers.len() {
            let charger = chargers::charger(plan, at, &setting, self.air_c)?.charger;
            let mut hours = |loads: Option<&[_]>| {
                let hours = loads.map_or(0.0, |loads| {
                    let filled = chargers::fill(&setting, charger, loads, from);
                    chargers::hours(&setting, &filled)
                });
                numbers.push(hours);
            };
            hours(Some(&setting.idle));
            hours(setting.cooling.as_deref());
        }
        Some(numbers)
    }
}

/// Shares held at the wanted hour and a day after the start, quickly.
fn day_shares(scene: &Scene, plan: &Plan) -> Option<(f64, f64)> {
    let inputs = Inputs::new(scene, plan)?;
    let how = How {
        is_quick: true,
        until_h: Some(DAY_H),
        ..How::default()
    };
    let mut watch = Watch::default();
    run(scene, &inputs, &how, &mut watch)?;
    let share = |at_h| Some((watch.percent_at(at_h)? / 100.0).clamp(0.0, 1.0));
    Some((share(scene.wanted_h.min(DAY_H))?, share(DAY_H)?))
}

/// Worst first; of one weight in the order found.
fn all_notes(
    plan: &Plan,
    answer: &RefillAnswer,
    setting: &Setting,
    night: Option<&Night>,
) -> Vec<RefillNote> {
    let mut all = Vec::new();
    let (has_panels, has_charger) = (
        !plan.supply.arrays.is_empty(),
        !plan.supply.chargers.is_empty(),
    );
    match (has_panels, has_charger) {
        (false, false) => all.push((Severity::Error, R::NoSource)),
        (true, false) => all.push((Severity::Note, R::NoCharger)),
        (false, true) => all.push((Severity::Note, R::NoPanels)),
        (true, true) => {}
    }
    if night.is_none() {
        all.push((Severity::Note, R::NoDay));
    }
    let (from_percent, to_percent) = (answer.from_percent.likely, answer.to_percent);
    if answer.from == FilledFrom::Stated && from_percent >= to_percent {
        let matter = R::NothingToFill {
            from_percent,
            to_percent,
        };
        all.push((Severity::Note, matter));
    }
    if let Some(night) = night {
        all.extend(temperature_note(setting, night.bank_c));
        for refill in &answer.chargers {
            all.extend(notes::notes(plan, refill, night.bank_c.0));
        }
    }
    all.sort_by_key(|(severity, _)| std::cmp::Reverse(*severity));
    let note = |(severity, matter)| RefillNote { severity, matter };
    all.into_iter().map(note).collect()
}

/// Whether the bank is too cold or too hot to be charged.
fn temperature_note(
    setting: &Setting,
    (warmest_c, coldest_c): (f64, f64),
) -> Option<(Severity, R)> {
    let (least_c, most_c) = setting.charging.between_c;
    if warmest_c < least_c {
        let bank_c = warmest_c;
        return Some((Severity::Error, R::TooCold { bank_c, least_c }));
    }
    if warmest_c > most_c {
        let bank_c = warmest_c;
        return Some((Severity::Caution, R::TooHot { bank_c, most_c }));
    }
    (coldest_c < least_c).then_some({
        let bank_c = coldest_c;
        (Severity::Caution, R::ColdAtTimes { bank_c, least_c })
    })
}
