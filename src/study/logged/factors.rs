//! Factors on a plan's figures, and their way into it.

use super::unit::Drawn;
use crate::{
    plan::{
        Plan,
        cabin::CabinField as C,
        cooling::{CoolingField as K, MapRow},
        path::{ModeField as M, Path},
    },
    simulate::day::UnitModel,
    study::{
        night::fit::{
            FACTORS, draw_paths, hold_cooling, loss_paths, narrow, share_sd, times, usable_paths,
        },
        spread::least::Known,
    },
};

/// What the figures of a plan are multiplied by: 1 leaves them, 0.2 and 5 are the ends.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Factors {
    /// On U-values and air changes.
    pub loss: f64,
    /// On the heat capacity of air, contents and shell.
    pub capacity: f64,
    /// Cooling for each watt drawn.
    pub per_watt: f64,
    /// On the draw of every mode.
    pub draw: f64,
    /// On the bank's rated or measured Ah and Wh.
    pub usable: f64,
}

impl Factors {
    pub(super) const ONE: Self = Self {
        loss: 1.0,
        capacity: 1.0,
        per_watt: 1.0,
        draw: 1.0,
        usable: 1.0,
    };

    /// The plan times these; a figure that stays is not stated for that.
    pub(super) fn on(&self, plan: &Plan) -> Plan {
        let mut plan = plan.clone();
        let cooling = self.per_watt * self.draw;
        if self.draw != 1.0 || cooling != 1.0 {
            hold_cooling(&mut plan);
        }
        let (draws, coolings) = (draw_paths(&plan), cooling_paths(&plan));
        let usable: Vec<Path> = usable_paths()
            .into_iter()
            .filter(|&path| plan.stated(path).is_some())
            .collect();
        let all: [(&[Path], f64); 5] = [
            (&loss_paths(), self.loss),
            (&capacity_paths(), self.capacity),
            (&draws, self.draw),
            (&coolings, cooling),
            (&usable, self.usable),
        ];
        for (paths, factor) in all.into_iter().filter(|(_, factor)| *factor != 1.0) {
            for &path in paths {
                times(&mut plan, path, factor.max(FACTORS.0).min(FACTORS.1));
            }
        }
        plan
    }
}

/// The figures that hold the cabin's heat.
pub(super) fn capacity_paths() -> [Path; 2] {
    [C::AirCapacityKjK, C::ShellCapacityKjK].map(Path::Cabin)
}

/// The figures that say how much units cool, rating and modes.
fn cooling_paths(plan: &Plan) -> Vec<Path> {
    let mut paths = Vec::new();
    for (unit, the_unit) in plan.units.iter().enumerate() {
        paths.push(Path::Cooling(unit, K::CoolingW));
        let modes = 0..the_unit.modes.len();
        paths.extend(modes.map(|mode| Path::Mode(unit, mode, M::CoolingW)));
    }
    paths
}

/// The wider of the two, as a share, one standard deviation.
pub(super) fn capacity_sd(plan: &Plan) -> f64 {
    capacity_paths()
        .map(|path| share_sd(plan, path))
        .into_iter()
        .fold(0.0, f64::max)
}

/// The widest of the modes that are planned, as a share, one standard deviation.
pub(super) fn cooling_sd(plan: &Plan) -> f64 {
    let rows = plan.mode_rows();
    let paths = rows
        .iter()
        .filter_map(|&(_, unit, mode)| Some(Path::Mode(unit, mode?, M::CoolingW)));
    paths.map(|path| share_sd(plan, path)).fold(0.0, f64::max)
}

/// The factors with what is known of each: absent where the log could not say.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Found {
    /// Absent without a thermometer.
    pub loss: Option<Known>,
    /// Absent without a thermometer.
    pub capacity: Option<Known>,
    /// Absent without a thermometer, and where the unit was never on.
    pub per_watt: Option<Known>,
    /// Absent where no step has the unit on throughout, and of units that follow the load.
    pub draw: Option<Known>,
    /// Of a log without volts no more than that what was taken was in it.
    pub usable: Option<Known>,
}

impl Found {
    /// What was found, 1 where nothing was.
    pub(super) fn factors(&self) -> Factors {
        let of = |known: Option<Known>| known.map_or(1.0, |known| known.value);
        Factors {
            loss: of(self.loss),
            capacity: of(self.capacity),
            per_watt: of(self.per_watt),
            draw: of(self.draw),
            usable: of(self.usable),
        }
    }

    /// The plan with the factors in it, spreads narrowed as well.
    pub(super) fn on(&self, plan: &Plan) -> Plan {
        let mut taken = self.factors().on(plan);
        if self == &Self::default() {
            return plan.clone();
        }
        let cooling = self.per_watt.map(|known| Known {
            sd: known.sd.hypot(self.draw.map_or(0.0, |draw| draw.sd)),
            ..known
        });
        let (draws, coolings) = (draw_paths(&taken), cooling_paths(&taken));
        let all: [(&[Path], Option<Known>); 5] = [
            (&loss_paths(), self.loss),
            (&capacity_paths(), self.capacity),
            (&coolings, cooling),
            (&draws, self.draw),
            (&usable_paths(), self.usable),
        ];
        for (paths, known) in all {
            if let Some(known) = known {
                narrow(&mut taken, paths, known.sd / known.value.max(0.2));
            }
        }
        taken
    }
}

/// A slope of the draw with the weather, as two settled runs of the unit's map, and
/// its level in the middle of them.
///
/// - `ends_c`: the weather of both runs, Celsius outdoors
/// - `slope_per_k`: added to the map's own, change of the logarithm by the kelvin
///
/// Nothing where the plan has runs of its own, or no such mode.
pub(super) fn with_slope(
    plan: &Plan,
    unit: usize,
    mode: usize,
    ends_c: (f64, f64),
    slope_per_k: f64,
    pressure_pa: f64,
) -> Option<Plan> {
    let mut plan = plan.clone();
    if !plan.units.get(unit)?.cooling.unit_map.is_empty() {
        return None;
    }
    let middle_c = 0.5 * (ends_c.0 + ends_c.1);
    let before = UnitModel::new(&plan, unit, mode, pressure_pa)?;
    let rows = [ends_c.0, ends_c.1].map(|outdoor_c| {
        let run = before.settled_run(outdoor_c);
        let draw_w = run.draw_w * (slope_per_k * (outdoor_c - middle_c)).exp();
        MapRow {
            outdoor_c: Some(tenth(run.outdoor_c)),
            entering_wet_bulb_c: Some(tenth(run.wet_bulb_c)),
            draw_w: Some(tenth(draw_w)),
            cooling_w: Some(tenth(run.cooling_w)),
        }
    });
    hold_cooling(&mut plan);
    plan.units.get_mut(unit)?.cooling.unit_map = rows.to_vec();
    // The rating may lie beyond the weather that was met: what counts is the draw in it.
    let after = UnitModel::new(&plan, unit, mode, pressure_pa)?;
    let ratio = before.settled_run(middle_c).draw_w / after.settled_run(middle_c).draw_w;
    for path in draw_paths(&plan) {
        if matches!(path, Path::Mode(at, ..) if at == unit) {
            times(&mut plan, path, ratio);
        }
    }
    Some(plan)
}

/// As a person would write it into a field.
fn tenth(value: f64) -> f64 {
    (10.0 * value).round() / 10.0
}

/// Coldest and warmest weather that the unit ran in, Celsius; nothing where it never did.
pub(super) fn ends_c(drawn: &[Drawn]) -> Option<(f64, f64)> {
    let all = drawn.iter().map(|one| one.outdoor_c);
    let low = all.clone().reduce(f64::min)?;
    Some((low, all.reduce(f64::max)?))
}
