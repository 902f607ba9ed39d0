//! One mode of one unit: what it takes from the bank and out of the cabin.

use crate::{
    physics::air::{self, Coil, CurveSet, Humidity, MoistAir, OwnMap, SettledRun},
    physics::cabin::{Cooling, WetCoil},
    physics::circuit::Branch,
    plan::{
        Feed, Plan, Unit,
        cooling::{Control, CoolingField as C, UnitCurves},
        path::{ModeField as M, Path},
    },
    quantity::{
        celsius, in_celsius, in_kilograms_per_second, in_watts, kilograms_per_second, pascals,
        watts,
    },
    simulate::{
        Stop,
        assemble::{self, Asked},
    },
};

/// Air into the coil at which units are rated with a 19.4 °C wet bulb: 26.7 °C
/// (80 °F, the indoor condition of AHRI 210/240 and AHAM RAC-1, from memory).
const RATED_DRY_BULB_C: f64 = 26.7;
/// Density that a stated airflow is taken at, kg/m³ of dry air.
const AIRFLOW_KG_M3: f64 = 1.15;

/// Starts of a compressor in an hour, at the most.
const MOST_STARTS_PER_H: f64 = 6.0;
/// Less than this is not left by any number of starts.
const LEAST_KEPT: f64 = 0.2;

/// A mode, assembled.
#[derive(Clone, Debug, PartialEq)]
pub struct UnitModel {
    /// Place of the unit in the plan.
    pub unit: usize,
    /// Place of the mode within its unit.
    pub mode: usize,
    air: air::Unit,
    own: Option<OwnMap>,
    coil: Option<Coil>,
    /// Sensible share at the rating, 0 to 1, where no coil could be made.
    sensible: f64,
    /// Water in the air into the coil at the rating, kg/kg.
    rated_ratio: f64,
    intake_rise_k: f64,
    feed: Feed,
    ohm: f64,
    asked: Asked,
    off_w: f64,
    /// Its cut-off at the end of its cable, or its inverter's.
    pub far_end: Option<Stop>,
    /// What its feed cannot give at any charge.
    pub overload: Option<Stop>,
    /// It follows the load; if not, its thermostat switches it.
    pub modulating: bool,
    /// Least share of its cooling that it comes down to when it modulates, 0 to 1.
    pub floor: f64,
    /// From a start until it cools, s.
    pub start_loss_s: f64,
}

/// What a rig does under given air.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OperatingPoint {
    /// On the bank while on at full, behind its cable.
    pub on: Branch,
    /// Out of the cabin at full.
    pub cooling: Cooling,
}

impl UnitModel {
    /// A mode of a unit on the plan's first bank.
    ///
    /// `unit` and `mode` are their places in the plan, `pressure_pa` that of the air at the
    /// place. Nothing where the plan has no such mode, no bank, or lacks a figure.
    #[must_use]
    pub fn new(plan: &Plan, unit: usize, mode: usize, pressure_pa: f64) -> Option<Self> {
        let the_unit = plan.units.get(unit)?;
        let the_mode = the_unit.modes.get(mode)?;
        let number = |field| plan.number(Path::Cooling(unit, field));
        let nominal_v = plan.banks.first()?.nominal_v();
        let asked =
            assemble::asked_of_feed(the_mode, the_unit, nominal_v, unit, mode, &mut Vec::new());
        let cooling_w = plan.number(Path::Mode(unit, mode, M::CoolingW))?;
        let strongest_w = number(C::CoolingW)?.max(1.0);
        let air = air::Unit {
            curves: curves(the_unit, mode),
            capacity: watts(cooling_w),
            power: watts(the_mode.draw.nominal_w().max(0.1)),
            rated_wet_bulb: celsius(number(C::RatedWetBulbC)?),
            rated_outdoor: celsius(number(C::RatedOutdoorC)?),
        };
        let own = own_map(the_unit, air.curves);
        let sensible = number(C::SensiblePercent)? / 100.0;
        let flow_kg_s = number(C::AirflowM3H)? * AIRFLOW_KG_M3 / 3600.0 * cooling_w / strongest_w;
        // Air of a wetter bulb than that is saturated, and as warm as its wet bulb.
        let wet_c = number(C::RatedWetBulbC)?;
        let entering = MoistAir::new(
            pascals(pressure_pa),
            celsius(RATED_DRY_BULB_C.max(wet_c)),
            Humidity::WetBulb(celsius(wet_c)),
        );
        let rated_ratio = entering.as_ref().map_or(0.0, MoistAir::humidity_ratio);
        let coil = entering.ok().and_then(|entering| {
            Coil::from_rating(
                &entering,
                air.capacity,
                sensible,
                kilograms_per_second(flow_kg_s),
            )
            .ok()
        });
        let standby_w = plan.number(Path::Mode(unit, mode, M::StandbyW))?;
        Some(Self {
            unit,
            mode,
            air,
            own,
            coil,
            sensible,
            rated_ratio,
            intake_rise_k: number(C::IntakeRiseK)?,
            feed: the_unit.feed,
            ohm: assemble::path_ohm(plan, unit),
            asked,
            off_w: assemble::input_w(&the_unit.feed, standby_w),
            far_end: assemble::far_end(plan, unit),
            overload: assemble::overload(the_unit, asked),
            modulating: the_unit.cooling.control == Some(Control::Modulating),
            floor: number(C::FloorPercent)? / 100.0,
            start_loss_s: 60.0 * number(C::StartLossMin).unwrap_or(0.0),
        })
    }

    /// Whether some coil gives the unit's rating, so that the split of its cooling
    /// follows the air; else the stated sensible share stays.
    #[must_use]
    pub fn has_coil(&self) -> bool {
        self.coil.is_some()
    }

    /// The unit in its off-time: its standby draw through its feed, behind its cable.
    #[must_use]
    pub fn off(&self) -> Branch {
        Branch::power(self.off_w, self.ohm)
    }

    /// Capacity, split and draw with this air into the coil and this weather.
    ///
    /// Air outside what the curves or the coil answer is taken at their edge.
    #[must_use]
    pub fn doing(&self, entering: &MoistAir, outdoor_c: f64) -> OperatingPoint {
        let (capacity_w, power_ratio) = self.by_curves(outdoor_c, in_celsius(entering.wet_bulb()));
        OperatingPoint {
            on: self.on(power_ratio),
            cooling: self.split(entering, capacity_w),
        }
    }

    /// A settled run as the unit's curves have it, air into the coil as rated: its own runs
    /// where the plan has enough of them to fit, else the published map.
    #[must_use]
    pub fn settled_run(&self, outdoor_c: f64) -> SettledRun {
        let wet_bulb_c = in_celsius(self.air.rated_wet_bulb);
        let (cooling_w, power_ratio) = self.by_curves(outdoor_c, wet_bulb_c);
        SettledRun {
            outdoor_c: self.intake_c(outdoor_c),
            wet_bulb_c,
            draw_w: in_watts(self.air.power) * power_ratio,
            cooling_w,
        }
    }

    /// Air into the condenser, Celsius: never above 70.
    fn intake_c(&self, outdoor_c: f64) -> f64 {
        (outdoor_c + self.intake_rise_k).min(70.0)
    }

    /// Capacity, and draw over that at the rating.
    /// Both at the rating where the curves answer nothing.
    fn by_curves(&self, outdoor_c: f64, wet_bulb_c: f64) -> (f64, f64) {
        let intake_c = self.intake_c(outdoor_c);
        let at = self.air.at(celsius(wet_bulb_c), celsius(intake_c));
        let published = at.map_or((in_watts(self.air.capacity), 1.0), |here| {
            (
                in_watts(here.capacity),
                in_watts(here.power) / in_watts(self.air.power),
            )
        });
        self.by_own_runs(intake_c, wet_bulb_c).unwrap_or(published)
    }

    /// Capacity, and draw over that at the rating, by the unit's own runs.
    fn by_own_runs(&self, intake_c: f64, wet_bulb_c: f64) -> Option<(f64, f64)> {
        let own = self.own?;
        let here = own.at(intake_c, wet_bulb_c)?;
        let rated = own.at(
            in_celsius(self.air.rated_outdoor),
            in_celsius(self.air.rated_wet_bulb),
        )?;
        Some((
            in_watts(self.air.capacity) * here.1 / rated.1,
            here.0 / rated.0,
        ))
    }

    /// The draw through the feed; a mode that is stated in amps keeps being a current.
    fn on(&self, power_ratio: f64) -> Branch {
        match self.asked {
            Asked::Amps(amps) => Branch::current(amps * power_ratio, self.ohm),
            Asked::Watts(watts) => {
                Branch::power(assemble::input_w(&self.feed, watts * power_ratio), self.ohm)
            }
        }
    }

    /// Sensible capacity and the wet coil.
    fn split(&self, entering: &MoistAir, capacity_w: f64) -> Cooling {
        let work = self
            .coil
            .and_then(|coil| Some((coil, coil.work(entering, watts(capacity_w)).ok()?)));
        match work {
            Some((coil, work)) => {
                let wet = in_watts(work.latent) > 0.0;
                let contact_kg_s = in_kilograms_per_second(coil.dry_air()) * (1.0 - coil.bypass());
                Cooling {
                    sensible_w: in_watts(work.sensible).max(0.0),
                    coil: wet.then_some(WetCoil {
                        contact_kg_s,
                        surface_ratio: work.surface_humidity_ratio,
                    }),
                }
            }
            None => Cooling {
                sensible_w: capacity_w * self.sensible,
                // Drier air than at the rating gives less water. Asked for the same
                // watts, the coil would dry the cabin to nothing, and no air flow is
                // enough for that.
                coil: WetCoil::of_latent(
                    capacity_w * (1.0 - self.sensible),
                    entering.humidity_ratio().max(self.rated_ratio),
                ),
            },
        }
    }

    /// Cooling that is left where cycles are too short to be followed, at a share of
    /// the time on: a thermostat starts `4 N f (1 - f)` times an hour, `N` being six at
    /// the most (the form by Henderson and Rengarajan, ASHRAE Transactions 102 (1996),
    /// from memory).
    ///
    /// `share` 0 to 1; the result is a share of the cooling, 0.2 to 1.
    #[must_use]
    pub fn kept_smoothed(&self, share: f64) -> f64 {
        let off_share = (1.0 - share).clamp(0.0, 1.0);
        let lost = 4.0 * MOST_STARTS_PER_H * off_share * self.start_loss_s / 3600.0;
        (1.0 - lost).max(LEAST_KEPT)
    }
}

/// The published map of a mode.
fn curves(unit: &Unit, mode: usize) -> CurveSet {
    let is_strongest = unit
        .modes
        .get(mode)
        .is_some_and(|mode| mode.draw.nominal_w() >= unit.strongest_w());
    match unit.cooling.curves {
        None | Some(UnitCurves::WindowUnit) => CurveSet::WindowUnit,
        Some(UnitCurves::SingleSpeed) => CurveSet::SingleSpeedCentral,
        Some(UnitCurves::TwoStage) if is_strongest => CurveSet::TwoStageHigh,
        Some(UnitCurves::TwoStage) => CurveSet::TwoStageLow,
    }
}

/// Of the plan's rows that are complete; nothing where they are too few to fit.
fn own_map(unit: &Unit, base: CurveSet) -> Option<OwnMap> {
    let runs = unit.cooling.unit_map.iter().filter_map(|row| {
        Some(SettledRun {
            outdoor_c: row.outdoor_c?,
            wet_bulb_c: row.entering_wet_bulb_c?,
            draw_w: row.draw_w?,
            cooling_w: row.cooling_w?,
        })
    });
    OwnMap::fitted(base, &runs.collect::<Vec<_>>())
}

impl Cooling {
    /// The same for a share of the time.
    pub(super) fn times(self, share: f64) -> Self {
        let coil = self.coil.map(|coil| WetCoil {
            contact_kg_s: coil.contact_kg_s * share,
            ..coil
        });
        Self {
            sensible_w: self.sensible_w * share,
            coil,
        }
    }
}

/// Cabin air as the air room has it: never above saturation, never out of range.
///
/// Pa, Celsius (taken between -40 and 80) and kg/kg.
#[must_use]
pub fn cabin_air(pressure_pa: f64, air_c: f64, ratio: f64) -> Option<MoistAir> {
    let pressure = pascals(pressure_pa);
    let dry_bulb = celsius(air_c.clamp(-40.0, 80.0));
    MoistAir::new(pressure, dry_bulb, Humidity::Ratio(ratio.clamp(0.0, 0.2)))
        .or_else(|_| MoistAir::saturated(pressure, dry_bulb))
        .ok()
}
