//! What the bank's volts say of its usable energy.
//!
//! The current out of the bank was measured, and its volts fall with the charge that is
//! left: so far as they fall. Through the flat middle of a lithium bank they say next
//! to nothing, at its end all of it.

use super::{
    factors::{Factors, Found},
    ground::{Ground, own, start_share},
    twice::Twice,
};
use crate::{
    simulate::day::{DrivenBank, drive_bank},
    study::{
        night::fit::{LEAST_SD, usable_sd},
        spread::least::Known,
    },
};

/// Scatter of the volts about the chemistry's curve, as a share of the nominal volts
/// (ours: 10 mV a cell of 3.2 V).
const VOLTS_SD: f64 = 0.003;
/// What the whole curve and the meter may be off by, as the same share (ours: 16 mV a cell).
const LEVEL_SD: f64 = 0.005;
/// The share that the plan says is in the bank at the start.
const START_SD: f64 = 0.02;
/// The share at which a bank is when its own electronics end the run, and below which
/// none can be.
const END_SD: f64 = 0.02;
/// Half-widths of the differences: usable energy, share, volts over the nominal ones,
/// amps over those read.
const NUDGES: [f64; 4] = [0.02, 0.005, 0.001, 0.01];

/// The bank's fit on its way.
#[derive(Clone, Debug)]
pub(super) struct BankFit {
    twice: Twice,
    places: Vec<usize>,
    cabin_c: Vec<f64>,
    cut_off_at: Option<usize>,
}

impl BankFit {
    /// The bank's fit to a log, the cabin as warm as `cabin_c` in each of its steps.
    ///
    /// `meter_sd`: what the meter's charge may be off by, as a share. Nothing without a bank. Of
    /// a log without volts it learns no more than that what was taken was in it.
    pub(super) fn new(ground: &Ground, cabin_c: Vec<f64>, meter_sd: f64) -> Option<Self> {
        let plan = &ground.plan;
        let places = own(&ground.bins, |bin| bin.volts);
        let nominal_v = plan.banks.first()?.nominal_v();
        let known = |value: f64, sd: f64| Known {
            value,
            sd: sd.max(LEAST_SD),
        };
        let before = vec![
            known(1.0, usable_sd(plan)),
            known(start_share(plan), START_SD),
            known(0.0, LEVEL_SD),
            known(0.0, meter_sd),
        ];
        let volts = places.iter().filter_map(|&at| ground.bins.all[at].volts);
        let volts = volts.map(|volts| known(volts / nominal_v, VOLTS_SD));
        // What was taken was in it; and nothing is where its own electronics ended it.
        let end = vec![known(0.0, END_SD)];
        Some(Self {
            twice: Twice::new(before, NUDGES.to_vec(), vec![volts.collect(), end]),
            places,
            cabin_c,
            cut_off_at: ground.cut_off_at,
        })
    }

    /// One step; whether it is done.
    pub(super) fn step(&mut self, ground: &Ground) -> bool {
        let places = &self.places;
        let (cabin_c, cut_off_at) = (&self.cabin_c, self.cut_off_at);
        let nominal_v = ground
            .plan
            .banks
            .first()
            .map_or(1.0, |bank| bank.nominal_v());
        self.twice.step(|at| {
            let steps = driven(ground, at, cabin_c)?;
            let volts = places
                .iter()
                .map(|&place| steps[place].terminal_v / nominal_v + at[2]);
            let shares = steps.iter().map(|step| step.share);
            let end = match cut_off_at {
                Some(at) => steps[at].share,
                None => shares.fold(0.0, f64::min),
            };
            Some(volts.chain([end]).collect())
        })
    }

    /// Puts the usable energy into what was found.
    pub(super) fn found(&self, found: &mut Found) {
        found.usable = self.twice.after().first().copied();
    }

    /// The bank as fitted, one for each step of the log; the curve's volts, which the meter's
    /// are above by [`Self::higher_v`].
    pub(super) fn course(&self, ground: &Ground) -> Option<Vec<DrivenBank>> {
        driven(ground, self.twice.at(), &self.cabin_c)
    }

    /// What the meter's volts are above the curve's, V of the whole bank.
    pub(super) fn higher_v(&self, ground: &Ground) -> f64 {
        let nominal_v = ground
            .plan
            .banks
            .first()
            .map_or(0.0, |bank| bank.nominal_v());
        nominal_v * self.twice.at()[2]
    }
}

/// The bank under the current that was logged: `at` is usable energy over the plan's, share
/// at the start, volts over the nominal ones, amps over those read less 1.
fn driven(ground: &Ground, at: &[f64], cabin_c: &[f64]) -> Option<Vec<DrivenBank>> {
    let &[usable, share, _, off] = at else {
        return None;
    };
    let factors = Factors {
        usable,
        ..Factors::ONE
    };
    let inputs = ground.inputs(&factors.on(&ground.plan), 0.0)?;
    let amps: Vec<f64> = ground.amps.iter().map(|amps| amps * (1.0 + off)).collect();
    Some(drive_bank(&inputs, share, &amps, cabin_c))
}
