//! Where a run stands, and how it is to be made.

use super::{
    bank::{Bank, Lasting},
    inputs::Inputs,
    record::{COLDEST_C, DaySum, EnergySum, Happening, Outcome, Starts},
    setpoint_monitor::SetpointMonitor,
};
use crate::{
    physics::battery::Held,
    physics::cabin::{HeatBook, Running, State, Stepper, Thermostat, WaterBook},
    quantity::{celsius, hours, in_joules_per_kelvin, kelvin_steps},
    simulate::Stop,
};

/// How a run is made.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct How {
    /// Currents in two passes, the unit's two states blended, no humidity kept and the
    /// store's side of the energy book left at 0: for samples and searches.
    pub is_quick: bool,
    /// Ends where the bank is first empty: for those who ask no more.
    pub ends_when_empty: bool,
    /// From where; absent: from the plan's start.
    pub start: Option<Start>,
    /// No further than this, hours from the plan's start; absent: to the end.
    pub until_h: Option<f64>,
}

/// A state that a run goes on from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Start {
    /// Hours after the plan's start.
    pub at_h: f64,
    /// Share of what the bank holds, 0 to 1; lead-acid is taken as rested.
    pub soc: f64,
    /// Air, shell and humidity; the unit is taken to be as it says.
    pub cabin: State,
}

/// The moving parts of a run.
///
/// It is all that a run remembers, so that a clone of it may go another way.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct SimState {
    /// The cabin now.
    pub cabin: State,
    /// What the bank holds now.
    pub held: Held,
    /// Everything is off.
    pub all_off: Option<Off>,
    /// The unit alone is off.
    pub unit_off: Option<Off>,
    /// The unit ran when last looked at.
    pub is_running: bool,
    /// Share of the last stretch that it was on for, by its cooling.
    pub on_share: f64,
    /// Litres left of each charger; none where there is no end of it.
    pub fuel_l: Vec<Option<f64>>,
    /// Charging is refused by the temperature, and that was told.
    pub is_refused: bool,
    /// The bank was told to be full, and has not been below 97 % since.
    pub is_full: bool,
    /// The mode planned, a place among the inputs' modes.
    pub rig: Option<usize>,
    /// Whether the set point is held.
    pub keeper: SetpointMonitor,
}

/// Share of what a bank holds by which it must have risen before what stopped
/// comes back (common practice, no source).
const BACK_AFTER: f64 = 0.1;
/// The same where a bank is nearly full: of the room there is left.
const BACK_AFTER_OF_ROOM: f64 = 0.5;
/// What stopped stays off for at least so long, h (ours: longer than any delay
/// that keeps a compressor from short cycles, and a night's events stay few).
const LEAST_OFF_H: f64 = 0.5;
/// Rounding that is no charge.
const ROUNDING: f64 = 1e-9;

/// Something is switched off until charge has come in.
///
/// Rest lifts volts and weather moves loads: neither is charge. So what comes
/// back does so once the bank holds more than its least since the stop, by a
/// tenth of what it can hold, or half the room that was left. A bank that was
/// full has no room: nothing comes back on it before it has been drawn from.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Off {
    /// Hours from the plan's start.
    pub since_h: f64,
    /// The least share of what the bank holds since, 0 to 1.
    pub least_share: f64,
}

impl Off {
    ///
    /// `share` is what the bank holds now, `at_h` now in hours from the plan's start.
    pub(super) fn is_over(&self, share: f64, at_h: f64) -> bool {
        let rise = BACK_AFTER.min(BACK_AFTER_OF_ROOM * (1.0 - self.least_share));
        rise > ROUNDING
            && share >= self.least_share + rise
            && at_h - self.since_h >= LEAST_OFF_H - ROUNDING
    }
}

impl SimState {
    /// Nothing is on yet, tanks are full, the set point is not judged.
    pub(super) fn new(inputs: &Inputs, cabin: State, held: Held) -> Self {
        Self {
            cabin,
            held,
            all_off: None,
            unit_off: None,
            is_running: false,
            on_share: 0.0,
            fuel_l: inputs
                .chargers
                .iter()
                .map(|charger| charger.fuel_l)
                .collect(),
            is_refused: false,
            is_full: false,
            rig: None,
            keeper: SetpointMonitor::new(inputs.set_c, inputs.band_k),
        }
    }

    /// The bank after a stretch, whatever is off with it.
    pub(super) fn holds(&mut self, held: Held, bank: &Bank) {
        self.held = held;
        let share = bank.store.soc(held);
        for off in [&mut self.all_off, &mut self.unit_off]
            .into_iter()
            .flatten()
        {
            off.least_share = off.least_share.min(share);
        }
    }
}

/// Sums of a run.
pub(super) struct EnergyBalance {
    /// Electricity of the whole span.
    pub energy: EnergySum,
    pub heat: HeatBook,
    pub water: WaterBook,
    /// One for each 24 hours.
    pub days: Vec<DaySum>,
    /// The first time the bank was empty, and by what.
    pub empty: Option<(f64, Stop)>,
    /// The first time the set point was lost.
    pub lost_h: Option<f64>,
    /// Warmest mean while it was to be cool, until the wanted hour.
    pub warmest_c: f64,
    /// Least share of what the bank holds.
    pub least_share: f64,
    /// Hours from the plan's start to where the cabin may get warm again.
    pub wanted_h: f64,
    /// The latest event told.
    pub told_h: f64,
    pub starts: Starts,
}

impl EnergyBalance {
    /// `share` is what the bank holds at the start.
    pub(super) fn new(days: usize, wanted_h: f64, share: f64) -> Self {
        Self {
            energy: EnergySum::default(),
            heat: HeatBook::default(),
            water: WaterBook::default(),
            days: vec![DaySum::EMPTY; days],
            empty: None,
            lost_h: None,
            warmest_c: COLDEST_C,
            least_share: share,
            wanted_h,
            told_h: 0.0,
            starts: Starts::default(),
        }
    }

    /// Keeps the first of what the answer asks for.
    pub(super) fn note(&mut self, at_h: f64, what: Happening) {
        self.told_h = self.told_h.max(at_h);
        match what {
            Happening::Empty { stop, .. } => {
                self.empty.get_or_insert((at_h, stop));
            }
            Happening::SetPointLost => {
                self.lost_h.get_or_insert(at_h);
            }
            _ => {}
        }
    }

    /// The outcome of what was booked, the run standing where it ended.
    pub(super) fn finish(mut self, inputs: &Inputs, standing: &SimState) -> Outcome {
        self.energy.close();
        Outcome {
            empty: self.empty,
            lost_h: self.lost_h,
            warmest_c: if self.warmest_c > COLDEST_C {
                self.warmest_c
            } else {
                standing.cabin.air_c
            },
            least_charge_percent: 100.0 * self.least_share,
            days: self.days,
            energy: self.energy,
            heat: super::record::HeatSum::of(&self.heat, &self.water),
            end_share: inputs.bank.store.soc(standing.held),
            end_cabin: standing.cabin,
            starts: self.starts,
        }
    }
}

/// The cabin's steppers: one for each mode and one for none, whole steps long.
#[derive(Clone, Debug)]
pub(super) struct Steppers {
    modes: Vec<Stepper>,
    /// The same with their cycles smoothed out.
    smooth: Vec<Stepper>,
    /// Closed up with nothing running, and aired.
    none: Stepper,
    aired: Stepper,
    whole: Lasting,
}

/// How the cabin is kept over a step.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Keep {
    /// No mode is planned: doors and roof light open.
    Aired,
    /// A mode is planned and does not run.
    Closed,
    /// This mode runs, a place among the inputs' modes.
    Cooled(usize),
}

impl Steppers {
    /// Nothing where the cabin's figures are beyond what its room answers.
    pub(super) fn new(inputs: &Inputs) -> Option<Self> {
        let step_h = inputs.timeline.step_h;
        let modes = |is_smooth| {
            (0..inputs.rigs.len())
                .map(|rig| stepper(inputs, Keep::Cooled(rig), step_h, is_smooth))
                .collect::<Option<Vec<_>>>()
        };
        Some(Self {
            modes: modes(false)?,
            smooth: modes(true)?,
            none: stepper(inputs, Keep::Closed, step_h, false)?,
            aired: stepper(inputs, Keep::Aired, step_h, false)?,
            whole: inputs.bank.lasting(step_h),
        })
    }

    /// The stepper of a kept cabin if the step is a whole one.
    pub(super) fn whole(&self, keep: Keep, step_h: f64, is_smooth: bool) -> Option<&Stepper> {
        self.lasting(step_h).map(|_| match keep {
            Keep::Aired => &self.aired,
            Keep::Closed => &self.none,
            Keep::Cooled(rig) if is_smooth => &self.smooth[rig],
            Keep::Cooled(rig) => &self.modes[rig],
        })
    }

    /// The length of a step if it is a whole one.
    pub(super) fn lasting(&self, step_h: f64) -> Option<&Lasting> {
        ((step_h - self.whole.hours).abs() < 1e-12).then_some(&self.whole)
    }
}

/// A thermostat that would switch its unit more often than this, every half minute,
/// has its cycles smoothed out: a compressor's own delay is some minutes (common
/// practice, no source), so that no such cycles are there to be followed.
const SWITCHES_PER_H: f64 = 120.0;
/// The same for short steps.
const LEAST_EVENTS: usize = 8;

/// A stepper for a kept cabin and a length of step, its thermostat's cycles
/// smoothed out if that is asked.
/// Nothing where the cabin's figures are beyond what its room answers.
pub(super) fn stepper(
    inputs: &Inputs,
    keep: Keep,
    step_h: f64,
    is_smooth: bool,
) -> Option<Stepper> {
    let thermostat = match keep {
        Keep::Cooled(rig) => thermostat(inputs, rig),
        Keep::Aired | Keep::Closed => Thermostat::Off,
    };
    let thermostat = if is_smooth {
        thermostat.averaged()
    } else {
        thermostat
    };
    let (stores, moist) = match keep {
        Keep::Aired => &inputs.aired,
        Keep::Closed | Keep::Cooled(_) => &(inputs.stores, inputs.moist),
    };
    // A start is two events.
    let most_events = LEAST_EVENTS + (1.5 * step_h * SWITCHES_PER_H) as usize;
    let stepper = Stepper::new(stores, moist, thermostat, hours(step_h)).ok()?;
    let loss_s = match keep {
        Keep::Cooled(rig) if !is_smooth => inputs.rigs[rig].start_loss_s,
        _ => 0.0,
    };
    Some(stepper.with_at_most(most_events).with_start_loss(loss_s))
}

/// Whether a thermostat would cycle faster than is followed, by the share of its
/// cooling that was asked for: a unit of P watts on for a share f heats and cools
/// the air's C through its band b in C b / (P f (1 - f)) seconds.
pub(super) fn cycles_too_fast(inputs: &Inputs, rig: usize, cooling_w: f64, share: f64) -> bool {
    if inputs.rigs[rig].modulating {
        return false;
    }
    let air_j = in_joules_per_kelvin(inputs.stores.air) * inputs.band_k;
    // All of a step may be a rounding more than all of it.
    let off_share = (1.0 - share).max(0.0);
    let by_air_h = air_j / (3600.0 * cooling_w * share * off_share);
    let cycle_h = by_air_h + inputs.rigs[rig].start_loss_s / 3600.0;
    2.0 > SWITCHES_PER_H * cycle_h
}

/// Of a unit that cycles the band lies half on either side of the set point.
fn thermostat(inputs: &Inputs, rig: usize) -> Thermostat {
    let rig = &inputs.rigs[rig];
    let half_k = 0.5 * inputs.band_k;
    if rig.modulating {
        Thermostat::Modulating {
            set: celsius(inputs.set_c),
            band: kelvin_steps(inputs.band_k),
            floor: rig.floor,
        }
    } else {
        Thermostat::Cycling {
            off_below: celsius(inputs.set_c - half_k),
            on_above: celsius(inputs.set_c + half_k),
        }
    }
}

/// A cabin at one temperature and humidity ratio throughout, its unit off.
pub(super) fn settled(air_c: f64, ratio: f64) -> State {
    State {
        air_c,
        shell_c: air_c,
        humidity_ratio: ratio,
        running: Running::Off,
    }
}
