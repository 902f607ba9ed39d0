//! What a log shows of the unit: when it was on, at what draw, and what else is drawn.

use super::{
    bins::{Bins, Row},
    ground::{Ground, middle},
};
use crate::simulate::day::{Inputs, UnitDid, cabin_at, extra_on_w, off_w};

/// Rows that are no further apart show whether the unit was on: its cycles last some
/// minutes (common practice, no source).
pub(super) const FINE_S: f64 = 180.0;
/// Above this share of what a mode draws, it is on: between a fan and a unit that
/// draws far less than its label.
const ON_SHARE: f64 = 0.35;
/// Less than this share of what a mode draws is no unit.
const STRAY: f64 = 0.05;
/// Rows with the unit off, and their share of all, that show what else is drawn.
const OFF_ROWS: (usize, f64) = (5, 0.05);

/// What was seen of the unit.
#[derive(Clone, Debug, Default)]
pub(super) struct UnitSeen {
    /// One for each step.
    pub did: Vec<UnitDid>,
    /// Share of each step that it was on for, by what was drawn; may pass 1.
    pub on_share: Vec<f64>,
    /// What rows drew with a mode on over what that mode draws by the plan's curves: a
    /// mean for each step.
    pub draws: Vec<Drawn>,
    /// On the bars beside the unit, W, where the log shows it.
    pub beside_w: Option<f64>,
    /// Whether it was on in any row.
    pub was_on: bool,
}

/// What was drawn with a mode on, over the plan's own.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Drawn {
    /// Weather of the step, Celsius.
    pub outdoor_c: f64,
    /// Above 0; 1 as the plan has it.
    pub ratio: f64,
}

/// What is drawn with the unit off.
#[derive(Clone, Copy)]
struct Base {
    /// With the unit's standby in it.
    watts: f64,
    /// Without, where the log shows it.
    beside_w: Option<f64>,
}

impl UnitSeen {
    /// What a log shows, by the plan's `inputs` as to what modes draw: on where a row is well
    /// above what else is drawn.
    pub(super) fn of(ground: &Ground, inputs: &Inputs, nominal_v: f64) -> Self {
        let bins = &ground.bins;
        let expected = expected(ground, inputs, nominal_v);
        let known_w = inputs.bus_w;
        let is_on = |row: &Row| {
            let step = &expected[row.bin];
            let over_w = row.watts - known_w - step.off_w(row.watts - known_w);
            step.mode(over_w)
                .is_some_and(|(_, on_w)| over_w > ON_SHARE * on_w)
        };
        let on: Vec<bool> = bins.rows.iter().map(is_on).collect();
        let was_on = on.contains(&true);
        let standby_w = expected.first().map_or(0.0, |step| step.off_w(0.0));
        let base = base(&bins.rows, &on, known_w, standby_w);
        let is_fine = bins.usual_step_s <= FINE_S;
        let watts = bins.filled(|bin| bin.watts);
        let watts = watts.unwrap_or(vec![base.watts; expected.len()]);
        let starts = starts(&bins.rows, &on, expected.len());
        let did: Vec<UnitDid> = expected
            .iter()
            .enumerate()
            .map(|(at, step)| UnitDid {
                starts: is_fine.then_some(starts[at]),
                ..step.did((watts[at] - base.watts).max(0.0), was_on)
            })
            .collect();
        let shares = did.iter().zip(&expected).map(|(did, step)| {
            let mode = step.mode(did.extra_w);
            mode.map_or(0.0, |(_, on_w)| did.extra_w / on_w)
        });
        Self {
            on_share: shares.collect(),
            draws: if is_fine {
                drawn(bins, &on, &expected, base.watts)
            } else {
                Vec::new()
            },
            beside_w: base.beside_w,
            was_on,
            did,
        }
    }
}

/// What the plan has for each step, under the weather that was measured.
fn expected(ground: &Ground, inputs: &Inputs, nominal_v: f64) -> Vec<Step> {
    let steps = ground.bins.all.len();
    let mut planned = vec![None; steps];
    for slot in &inputs.timeline.slots {
        if let Some(place) = planned.get_mut(slot.step) {
            *place = slot.rig.or(*place);
        }
    }
    let mut weathered = inputs.clone();
    ground.put_weather(&mut weathered, 0.0);
    let volts = ground.bins.filled(|bin| bin.volts);
    let steps = planned.into_iter().enumerate().map(|(at, planned)| {
        let bar_v = volts.as_ref().map_or(nominal_v, |all| all[at].max(1.0));
        Step::new(ground, &weathered, planned, at, bar_v)
    });
    steps.collect()
}

/// The middle of the rows with the unit off, or else the plan's own.
fn base(rows: &[Row], on: &[bool], known_w: f64, standby_w: f64) -> Base {
    let off_rows: Vec<f64> = rows
        .iter()
        .zip(on)
        .filter(|(_, on)| !**on)
        .map(|(row, _)| row.watts)
        .collect();
    let shows_off =
        off_rows.len() >= OFF_ROWS.0 && off_rows.len() as f64 >= OFF_ROWS.1 * rows.len() as f64;
    let watts = if shows_off {
        middle(off_rows).max(0.0)
    } else {
        known_w + standby_w
    };
    Base {
        watts,
        beside_w: shows_off.then(|| (watts - standby_w).max(0.0)),
    }
}

/// What the plan has for one step.
struct Step {
    bar_v: f64,
    outdoor_c: f64,
    is_planned: bool,
    /// Each mode with what it draws on above its off-time, and in it.
    modes: Vec<(usize, f64, f64)>,
}

impl Step {
    /// `planned` is the mode on by the plan; where none is, every mode is in question.
    fn new(
        ground: &Ground,
        inputs: &Inputs,
        planned: Option<usize>,
        at: usize,
        bar_v: f64,
    ) -> Self {
        let outdoor_c = inputs.air.get(at).map_or(0.0, |air| air.outdoor_c);
        let air_c = ground.cabin_c.as_ref().map_or(inputs.set_c, |all| all[at]);
        let cabin = cabin_at(inputs, air_c, air_c);
        let all = 0..inputs.rigs.len();
        let asked: Vec<usize> = planned.map_or(all.collect(), |rig| vec![rig]);
        let modes = asked.into_iter().filter_map(|rig| {
            let on_w = extra_on_w(&ground.scene, inputs, rig, &cabin, outdoor_c, bar_v)?;
            Some((rig, on_w, off_w(inputs, rig, bar_v)))
        });
        Self {
            bar_v,
            outdoor_c,
            is_planned: planned.is_some(),
            modes: modes.collect(),
        }
    }

    /// The mode that draws most nearly so much: the planned one, where one is.
    fn nearest(&self, over_w: f64) -> Option<&(usize, f64, f64)> {
        let far = |on_w: f64| (over_w - on_w).abs();
        self.modes
            .iter()
            .min_by(|a, b| far(a.1).total_cmp(&far(b.1)))
    }

    fn mode(&self, over_w: f64) -> Option<(usize, f64)> {
        self.nearest(over_w).map(|mode| (mode.0, mode.1))
    }

    fn off_w(&self, over_w: f64) -> f64 {
        self.nearest(over_w).map_or(0.0, |mode| mode.2)
    }

    /// What the unit did for so much above the base. Doors are open while no mode is
    /// planned and none is on.
    fn did(&self, extra_w: f64, was_on: bool) -> UnitDid {
        let mode = self.mode(extra_w);
        let mode = mode.filter(|(_, on_w)| was_on && (self.is_planned || extra_w > STRAY * on_w));
        UnitDid {
            rig: mode.map(|mode| mode.0),
            extra_w,
            bar_v: self.bar_v,
            starts: None,
        }
    }
}

/// Starts in each step.
fn starts(rows: &[Row], on: &[bool], steps: usize) -> Vec<f64> {
    let mut starts = vec![0.0; steps];
    for at in 1..rows.len() {
        if on[at] && !on[at - 1] && rows[at].follows {
            starts[rows[at].bin] += 1.0;
        }
    }
    starts
}

/// A mean for each step of the rows with a mode on, its neighbours on as well: a row
/// at a switch may be a mean over both.
fn drawn(bins: &Bins, on: &[bool], expected: &[Step], base_w: f64) -> Vec<Drawn> {
    let rows = &bins.rows;
    let whole = |at: usize| {
        let before = at > 0 && on[at - 1] && rows[at].follows;
        let after = on.get(at + 1).is_some_and(|on| *on) && rows[at + 1].follows;
        on[at] && before && after
    };
    let places: Vec<usize> = (0..rows.len()).filter(|&at| whole(at)).collect();
    let groups = places.chunk_by(|a, b| rows[*a].bin == rows[*b].bin);
    groups
        .filter_map(|group| {
            let mean_w = group.iter().map(|&at| rows[at].watts).sum::<f64>() / group.len() as f64;
            let step = &expected[rows[group[0]].bin];
            let (_, on_w, off_w) = *step.nearest(mean_w - base_w)?;
            Some(Drawn {
                outdoor_c: step.outdoor_c,
                ratio: (mean_w - base_w + off_w) / (on_w + off_w),
            })
        })
        .filter(|drawn| drawn.ratio.is_finite() && drawn.ratio > 0.0)
        .collect()
}
