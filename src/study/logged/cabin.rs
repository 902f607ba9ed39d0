//! What the cabin's thermometer says: loss, heat capacity, cooling for each watt.
//!
//! The unit's thermostat is left out: what it drew was measured, and by its curves
//! that is what it cooled. Loss, capacity and cooling all make heat flows, so of an
//! air that only drifts little they tell no more than their ratios, and each keeps
//! most of the spread it had; a night with the unit off for an hour tells more.

use super::{
    factors::{Factors, Found, capacity_sd, cooling_sd},
    ground::{Ground, own},
    twice::Twice,
};
use crate::{
    simulate::day::{DrivenStep, Inputs, cabin_at, drive_cabin},
    study::{
        night::fit::{LEAST_SD, loss_sd},
        spread::least::Known,
    },
};

/// Scatter of a thermometer's readings, means over some minutes, K (common practice,
/// no source).
const READING_SD_K: f64 = 0.2;
/// What two thermometers may differ by, K (cheap ones keep 0.5 each; common practice,
/// no source).
const APART_SD_K: f64 = 0.5;
/// The same where the weather is the plan's.
const WEATHER_SD_K: f64 = 1.5;
/// The shell starts between cabin and weather, K (ours).
const SHELL_SD_K: f64 = 4.0;
/// What the sun on the cabin may be off by: clouds and trees of that very day (ours).
const SUN_SD: f64 = 0.3;
/// Half-widths of the differences: loss, capacity, cooling for each watt; K; sun.
const NUDGES: [f64; 7] = [0.03, 0.03, 0.03, 0.1, 0.1, 0.3, 0.05];

/// The cabin's fit on its way. Of the three factors the logarithms are the unknowns: an
/// error is a share of what there is, and heat flows are products of them.
#[derive(Clone, Debug)]
pub(super) struct CabinFit {
    twice: Twice,
    /// Steps with a reading.
    places: Vec<usize>,
    /// The unit's share is not asked where it never ran.
    is_idle: bool,
}

impl CabinFit {
    /// Nothing without a thermometer.
    pub(super) fn new(ground: &Ground) -> Option<Self> {
        let cabin_c = ground.cabin_c.as_ref()?;
        let places = own(&ground.bins, |bin| bin.cabin_c);
        let first_c = *cabin_c.first()?;
        let plan = &ground.plan;
        let known = |value: f64, sd: f64| Known {
            value,
            sd: sd.max(LEAST_SD),
        };
        let outdoor_c = ground.inputs(plan, 0.0)?.air.first()?.outdoor_c;
        let before = vec![
            known(0.0, loss_sd(plan)),
            known(0.0, capacity_sd(plan)),
            known(0.0, cooling_sd(plan)),
            known(0.0, apart_sd_k(ground)),
            known(first_c, APART_SD_K),
            known(0.5 * (first_c + outdoor_c), SHELL_SD_K),
            known(1.0, SUN_SD),
        ];
        let data = places.iter().map(|&at| known(cabin_c[at], READING_SD_K));
        Some(Self {
            twice: Twice::new(before, NUDGES.to_vec(), vec![data.collect()]),
            places,
            is_idle: !ground.unit.was_on,
        })
    }

    /// One step; whether it is done.
    pub(super) fn step(&mut self, ground: &Ground) -> bool {
        let places = &self.places;
        self.twice.step(|at| {
            let steps = driven(ground, at)?;
            Some(places.iter().map(|&place| steps[place].mean_c).collect())
        })
    }

    /// Puts loss, heat capacity and cooling for each watt into what was found: factors over the
    /// plan's own, their deviations turned from logarithms.
    pub(super) fn found(&self, found: &mut Found) {
        let after = self.twice.after();
        let factor = |place: usize| {
            let value = after[place].value.exp();
            Known {
                value,
                sd: value * after[place].sd,
            }
        };
        found.loss = Some(factor(0));
        found.capacity = Some(factor(1));
        found.per_watt = (!self.is_idle).then(|| factor(2));
    }

    /// Root mean square of the misses over the thermometer's scatter, of the first pass.
    pub(super) fn misfit(&self) -> f64 {
        self.twice.misfit
    }

    /// K to be added to outdoor temperatures, for them to agree with the cabin's thermometer.
    pub(super) fn warmer_k(&self) -> f64 {
        self.twice.at()[3]
    }

    /// The cabin as fitted, step by step.
    pub(super) fn course(&self, ground: &Ground) -> Option<Vec<DrivenStep>> {
        driven(ground, self.twice.at())
    }
}

/// What outdoor temperatures may be off by, against the cabin's thermometer.
///
/// One standard deviation, K: wider where the weather is the plan's and was not logged.
pub(super) fn apart_sd_k(ground: &Ground) -> f64 {
    if ground.outdoor_c.is_some() {
        APART_SD_K
    } else {
        WEATHER_SD_K
    }
}

/// The cabin under what the unit drew: `at` as in [`NUDGES`], the first three logarithms.
fn driven(ground: &Ground, at: &[f64]) -> Option<Vec<DrivenStep>> {
    let &[loss, capacity, per_watt, warmer_k, air_c, shell_c, sun] = at else {
        return None;
    };
    let factors = Factors {
        loss: loss.exp(),
        capacity: capacity.exp(),
        ..Factors::ONE
    };
    let per_watt = per_watt.exp();
    let mut inputs = ground.inputs(&factors.on(&ground.plan), warmer_k)?;
    put_sun(&mut inputs, sun.max(0.0));
    let start = cabin_at(&inputs, air_c, shell_c);
    drive_cabin(
        &ground.scene,
        &inputs,
        start,
        &ground.unit.did,
        per_watt.clamp(0.2, 5.0),
    )
}

/// So much of the sun; what the shell loses to the sky in the dark stays.
fn put_sun(inputs: &mut Inputs, sun: f64) {
    let dark_w = inputs.air.iter().map(|air| air.sun_shell_w);
    let dark_w = dark_w.fold(0.0, f64::min);
    for air in &mut inputs.air {
        air.sun_glass_w *= sun;
        air.sun_shell_w = dark_w + sun * (air.sun_shell_w - dark_w);
    }
}
