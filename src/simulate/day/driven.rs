//! Cabin and bank driven by what was measured: the unit's draw in the place of its
//! thermostat, the current out of the bank in the place of its loads.

use super::{
    inputs::Inputs, outdoors::Air, scene::Scene, state::settled, timeline::Slot, unit::cabin_air,
};
use crate::{
    physics::cabin::{State, Stepper, Thermostat},
    physics::circuit::{Branch, settle},
    quantity::hours,
    simulate::job::inner_of,
};

/// What the unit did over one step of the scene's.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct UnitDid {
    /// The mode that was on, a place among the inputs' modes.
    pub rig: Option<usize>,
    /// Drawn at the bars above what the off-time draws, W, mean over the step; below 0
    /// counts as 0.
    pub extra_w: f64,
    /// Volts at the bars, which the draw of the unit's curves is worked out at.
    pub bar_v: f64,
    /// Starts in the step; absent: as many as a thermostat makes.
    pub starts: Option<f64>,
}

/// One step of a driven cabin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DrivenStep {
    /// Mean of the cabin's air over the step.
    pub mean_c: f64,
    /// At its end.
    pub end: State,
}

/// One step of a driven bank.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DrivenBank {
    /// Share of what it holds at the step's end; below 0, more was taken than it
    /// holds.
    pub share: f64,
    /// Volts at the terminals in the step's middle.
    pub terminal_v: f64,
}

/// A cabin that stands at one temperature, its shell at another, as damp as outdoors at
/// the inputs' start. Celsius.
#[must_use]
pub fn cabin_at(inputs: &Inputs, air_c: f64, shell_c: f64) -> State {
    let ratio = inputs.air.first().map_or(0.0, |air| air.outdoor_ratio);
    State {
        shell_c,
        ..settled(air_c, ratio)
    }
}

/// What a mode draws above its off-time while on, W at the bars, with this weather and
/// cabin air at this temperature and humidity ratio.
///
/// `rig` is a place among [`Inputs::rigs`], `bar_v` the volts at the bars. Nothing where
/// there is no such mode, no such air, or no draw above the off-time's.
#[must_use]
pub fn extra_on_w(
    scene: &Scene,
    inputs: &Inputs,
    rig: usize,
    cabin: &State,
    outdoor_c: f64,
    bar_v: f64,
) -> Option<f64> {
    let pressure_pa = scene.pressure_pa();
    let entering = cabin_air(pressure_pa, cabin.air_c, cabin.humidity_ratio)?;
    let rig = inputs.rigs.get(rig)?;
    let at = |branch: Branch| bar_v * branch.amps_at(bar_v);
    let extra_w = at(rig.doing(&entering, outdoor_c).on) - at(rig.off());
    (extra_w > 0.0).then_some(extra_w)
}

/// What a mode draws in its off-time, W at the bars; 0 where there is no such mode.
#[must_use]
pub fn off_w(inputs: &Inputs, rig: usize, bar_v: f64) -> f64 {
    let off = inputs.rigs.get(rig).map(|rig| rig.off());
    off.map_or(0.0, |off| bar_v * off.amps_at(bar_v))
}

/// The cabin from the scene's start on, the unit cooling by its curves for what it
/// drew, times `per_watt`.
///
/// - `start`: the cabin before the first step
/// - `did`: one for each step of the scene's, from its first on; it may end earlier
/// - `per_watt`: 1 as the unit's curves have it
///
/// A step for each of `did`. Nothing where the cabin's figures are beyond what its
/// room answers, or there are more steps than the scene has.
#[must_use]
pub fn drive_cabin(
    scene: &Scene,
    inputs: &Inputs,
    start: State,
    did: &[UnitDid],
    per_watt: f64,
) -> Option<Vec<DrivenStep>> {
    let step_h = inputs.timeline.step_h;
    let new = |stores, moist, rule| Stepper::new(stores, moist, rule, hours(step_h)).ok();
    let closed = new(&inputs.stores, &inputs.moist, Thermostat::RunsOn)?;
    let aired = new(&inputs.aired.0, &inputs.aired.1, Thermostat::Off)?;
    let mut cabin = start;
    let mut steps = Vec::with_capacity(did.len());
    let mut slots = inputs.timeline.slots.iter().peekable();
    for (step, did) in did.iter().enumerate() {
        let slot = slot_of(&mut slots, step)?;
        let people = inputs.people(slot, cabin.air_c);
        let drive = |air: &Air| air.drive(people, inputs.gains_w);
        let (first, next) = (inputs.air.get(step)?, inputs.air.get(step + 1)?);
        let (begin, end) = (drive(first), drive(next));
        let outdoor_c = 0.5 * (first.outdoor_c + next.outdoor_c);
        let share = did.rig.and_then(|rig| {
            let on_w = extra_on_w(scene, inputs, rig, &cabin, outdoor_c, did.bar_v)?;
            Some((rig, (did.extra_w / on_w).max(0.0)))
        });
        let done = match share {
            Some((rig, share)) => {
                let entering = cabin_air(scene.pressure_pa(), cabin.air_c, cabin.humidity_ratio)?;
                let kept = kept(inputs, rig, share, did.starts, step_h);
                let doing = inputs.rigs[rig].doing(&entering, outdoor_c);
                let cooling = doing.cooling.times(share * kept * per_watt);
                closed.step(&cabin, &begin, &end, Some(&cooling)).ok()?
            }
            None if slot.rig.is_none() => aired.step(&cabin, &begin, &end, None).ok()?,
            None => closed.step(&cabin, &begin, &end, None).ok()?,
        };
        cabin = done.state;
        steps.push(DrivenStep {
            mean_c: done.mean_air_c,
            end: cabin,
        });
    }
    Some(steps)
}

/// The longest of the slots of a step.
fn slot_of<'a>(
    slots: &mut std::iter::Peekable<impl Iterator<Item = &'a Slot>>,
    step: usize,
) -> Option<&'a Slot> {
    let length = |slot: &Slot| slot.to_h - slot.from_h;
    let mut longest: Option<&Slot> = None;
    while let Some(slot) = slots.next_if(|slot| slot.step <= step) {
        if slot.step == step && longest.is_none_or(|best| length(slot) > length(best)) {
            longest = Some(slot);
        }
    }
    longest
}

/// Cooling that is left after the starts.
/// Share of a step's cooling, 0 to 1: counted starts each lose their time from the time
/// on; uncounted ones as a thermostat makes them ([`UnitModel::kept_smoothed`]).
///
/// [`UnitModel::kept_smoothed`]: super::unit::UnitModel::kept_smoothed
fn kept(inputs: &Inputs, rig: usize, share: f64, starts: Option<f64>, step_h: f64) -> f64 {
    let rig = &inputs.rigs[rig];
    if rig.modulating || share <= 0.0 {
        return 1.0;
    }
    match starts {
        Some(starts) => {
            let on_s = 3600.0 * step_h * share.min(1.0);
            (1.0 - starts * rig.start_loss_s / on_s).max(0.0)
        }
        None => rig.kept_smoothed(share.min(1.0)),
    }
}

/// The bank from a share on, giving `amps` over each step while the cabin's air has these
/// temperatures.
///
/// - `share`: of what the bank holds at the start, 0 to 1, the bank long at rest
/// - `amps`: out of the bank, one for each step of the scene's from its first on
/// - `cabin_c`: as many, Celsius; of lists that differ the shorter counts
///
/// Nothing stops it: where more is taken than it holds, the shares go below 0. Volts of a
/// step whose current nothing carries are the open-circuit ones.
#[must_use]
pub fn drive_bank(inputs: &Inputs, share: f64, amps: &[f64], cabin_c: &[f64]) -> Vec<DrivenBank> {
    let bank = &inputs.bank;
    let lasting = bank.lasting(inputs.timeline.step_h);
    let mut held = bank.store.rested(share);
    let steps = amps.iter().zip(cabin_c).enumerate();
    let steps = steps.map(|(step, (&amps, &cabin_c))| {
        let after = bank.after(held, &lasting, amps);
        let outdoor_c = inputs.air.get(step).map_or(cabin_c, |air| air.outdoor_c);
        let ratio = bank
            .warmth(inputs.bank_temperature_c(cabin_c, outdoor_c), 0.0)
            .ohm_ratio;
        let charge = 0.5 * (bank.store.charge(held) + bank.store.charge(after));
        let ocv_v = bank.pack.curve.at(charge);
        let inner = inner_of(&bank.pack, ratio);
        let loaded = settle(ocv_v, inner, &[Branch::current(amps, 0.0)]);
        held = after;
        DrivenBank {
            share: bank.store.soc(held),
            terminal_v: loaded.map_or(ocv_v, |point| point.bar_v),
        }
    });
    steps.collect()
}
