//! What a unit gives for what it draws.

use super::{
    Draw, Figure, Unit,
    part::{choice, part},
};

choice! {
    /// How a unit keeps the set point.
    Control {
        /// On and off about it.
        Thermostat = "thermostat",
        /// Follows the load down to a floor.
        Modulating = "modulating",
    }
}

part! {
    /// A unit's cooling at its rating, and how it is told to run.
    #[derive(Copy)]
    UnitCooling, CoolingField {
        /// Total cooling in its strongest mode.
        cooling_w: MaybeFigure = CoolingW, COOLING_W;
        /// Watts of cooling for each watt, where the cooling is not stated.
        cop: MaybeFigure = Cop, COP;
        /// Air outdoors at that rating.
        rated_outdoor_c: MaybeNumber = RatedOutdoorC, OUTDOOR_C;
        /// Wet bulb of the air into the coil at that rating.
        rated_wet_bulb_c: MaybeNumber = RatedWetBulbC, WET_BULB_C;
        /// Least cooling over full cooling, of a modulating unit.
        floor_percent: MaybeFigure = FloorPercent, FLOOR_PERCENT;
        /// Air through the coil in its strongest mode.
        airflow_m3_h: MaybeFigure = AirflowM3H, AIRFLOW_M3_H;
        /// Sensible share of the cooling at the rating.
        sensible_percent: MaybeFigure = SensiblePercent, SENSIBLE_PERCENT;
        /// How much hotter than the weather the air is that the condenser breathes.
        intake_rise_k: MaybeFigure = IntakeRiseK, INTAKE_RISE_K;
    } with {
        control: Option<Control>,
    }
}

/// Watts of cooling a watt where nothing is stated: 10 Btu/Wh, a plain window
/// unit (common practice, no source).
const USUAL_COP: f64 = 2.93;
/// Airflow by the cooling, m³/h a watt: 400 ft³/min a ton (common practice, no
/// source).
const USUAL_M3_H_PER_W: f64 = 0.193;

impl Unit {
    /// Watts of the strongest mode while on.
    #[must_use]
    pub fn strongest_w(&self) -> f64 {
        self.modes
            .iter()
            .map(|mode| mode.draw.nominal_w())
            .fold(0.0, f64::max)
    }

    /// The default of one of the cooling's numbers.
    #[must_use]
    pub fn assumed_cooling(&self, field: CoolingField) -> Option<Figure> {
        use CoolingField as C;
        let stated = &self.cooling;
        let cop = || stated.cop.map_or(USUAL_COP, |cop| cop.value);
        let cooling_w = || {
            stated
                .cooling_w
                .map_or_else(|| self.strongest_w() * cop(), |cooling| cooling.value)
        };
        Some(Figure::guess(match field {
            C::CoolingW => self.strongest_w() * cop(),
            C::Cop => USUAL_COP,
            C::RatedOutdoorC => return Some(Figure::exact(35.0)),
            C::RatedWetBulbC => return Some(Figure::exact(19.4)),
            C::FloorPercent => 30.0,
            C::AirflowM3H => cooling_w() * USUAL_M3_H_PER_W,
            C::SensiblePercent => 75.0,
            C::IntakeRiseK => 3.0,
        }))
    }

    /// Cooling of a mode where it is not stated: the strongest mode's, in
    /// proportion to the watts.
    #[must_use]
    pub fn assumed_mode_cooling_w(&self, mode: usize) -> Option<f64> {
        let strongest_w = self.strongest_w();
        let cooling_w = self
            .cooling
            .cooling_w
            .or_else(|| self.assumed_cooling(CoolingField::CoolingW))?
            .value;
        let mode_w = self.modes.get(mode)?.draw.nominal_w();
        Some(if strongest_w > 0.0 {
            cooling_w * mode_w / strongest_w
        } else {
            0.0
        })
    }
}

impl Draw {
    /// Watts while on, amps taken at the voltage they were measured at.
    #[must_use]
    pub fn nominal_w(&self) -> f64 {
        match *self {
            Self::Power { power_w } => power_w.value,
            Self::Current {
                current_a,
                measured_at_v,
            } => current_a.value * measured_at_v,
        }
    }
}
