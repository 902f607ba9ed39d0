//! What rows with the unit on say of its draw, and how it changes with the weather.

use super::{
    cabin::apart_sd_k,
    factors::{Found, ends_c},
    ground::Ground,
    twice::Twice,
    unit::Drawn,
};
use crate::study::{night::fit::LEAST_SD, night::fit::share_sd, spread::least::Known};

/// What a mean over some minutes is worth, as a share: as in a unit's own map.
const RUN_SD: f64 = 0.02;
/// What a published slope is worth, by the kelvin: as there.
pub(super) const SLOPE_SD: f64 = 0.02;
/// How draws change with the weather, by the kelvin (of the published maps).
const USUAL_SLOPE: f64 = 0.015;
/// A slope is asked for where the weather changed by so much, K.
const LEAST_CHANGE_K: f64 = 2.0;

/// The draw over the plan's own: its level in the middle of the weather that was met,
/// and the change of its logarithm with the weather, by the kelvin.
#[derive(Clone, Debug)]
pub(super) struct DrawFit {
    twice: Twice,
    /// In the middle between the ends, Celsius.
    pub middle_c: f64,
    /// Coldest and warmest weather that the unit ran in.
    pub ends_c: (f64, f64),
    drawn: Vec<Drawn>,
}

impl DrawFit {
    /// Nothing where no step has the unit on throughout.
    ///
    /// `meter_sd`: what the meter's draw may be off by, as a share.
    pub(super) fn new(ground: &Ground, meter_sd: f64) -> Option<Self> {
        let drawn = ground.unit.draws.clone();
        let ends_c = ends_c(&drawn)?;
        let known = |value: f64, sd: f64| Known {
            value,
            sd: sd.max(LEAST_SD),
        };
        // What all rows may be off by together: the meter, and the weather that the plan's
        // own draw is taken in.
        let common_sd = meter_sd.hypot(USUAL_SLOPE * apart_sd_k(ground));
        let before = vec![
            known(1.0, draw_sd(ground)),
            known(0.0, SLOPE_SD),
            known(0.0, common_sd),
        ];
        let data = drawn.iter().map(|one| known(one.ratio, RUN_SD));
        Some(Self {
            twice: Twice::new(before, vec![0.01, 0.001, 0.01], vec![data.collect()]),
            middle_c: 0.5 * (ends_c.0 + ends_c.1),
            ends_c,
            drawn,
        })
    }

    /// One step; whether it is done.
    pub(super) fn step(&mut self) -> bool {
        let (drawn, middle_c) = (&self.drawn, self.middle_c);
        self.twice.step(|at| {
            let level = at[0] * (1.0 + at[2]);
            let of = |one: &Drawn| level * (at[1] * (one.outdoor_c - middle_c)).exp();
            Some(drawn.iter().map(of).collect())
        })
    }

    /// Puts the draw over the plan's own into what was found.
    pub(super) fn found(&self, found: &mut Found) {
        found.draw = self.twice.after().first().copied();
    }

    /// Change of the draw's logarithm by the kelvin; nothing where the weather was not measured
    /// or changed too little while the unit ran.
    pub(super) fn slope(&self, ground: &Ground) -> Option<Known> {
        let changed_k = self.ends_c.1 - self.ends_c.0;
        let asked = ground.outdoor_c.is_some() && changed_k >= LEAST_CHANGE_K;
        self.twice.after().get(1).copied().filter(|_| asked)
    }
}

/// The widest of the modes that are planned, as a share, one standard deviation.
pub(super) fn draw_sd(ground: &Ground) -> f64 {
    let plan = &ground.plan;
    let rows = plan.mode_rows();
    let paths = rows
        .iter()
        .filter_map(|&(_, unit, mode)| plan.draw_path(unit, mode?));
    paths.map(|path| share_sd(plan, path)).fold(0.0, f64::max)
}
