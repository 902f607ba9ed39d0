//! The demonstration plan. People, gear and figures are invented.

use super::{
    Bank, Cabin, Cable, Day, Draw, Feed, Figure, Load, Measured, Mode, Night, Plan, Show, Supply,
    Unit, UnitCooling, VERSION, Wiring,
    supply::Array,
    wiring::{CableInstallation, FuseKind, TakeOff},
};
use crate::physics::battery::Chemistry;

/// What a battery, its system and a cooler on it usually are, until somebody says
/// (common practice, no source).
pub const USUAL_AH: f64 = 100.0;
pub const USUAL_SYSTEM_V: f64 = 12.0;
pub const USUAL_DRAW_W: f64 = 300.0;

impl Plan {
    /// Two birdwatchers in a 5.9 m van beside a salt lake. All of it is invented.
    #[must_use]
    pub fn demo() -> Self {
        Self {
            version: VERSION,
            title: "Two birdwatchers beside a salt lake (invented)".into(),
            banks: vec![Bank {
                parallel_count: 2,
                depth_percent: Some(90.0),
                battery_current_limit_a: Some(Figure::label(100.0)),
                ..Bank::of(Chemistry::Lfp, 25.6, 105.0)
            }],
            units: vec![Unit {
                name: "Split cooler".into(),
                feed: Feed::Direct,
                supply_v: Some(24.0),
                cutoff_v: Some(Figure::label(21.0)),
                cable: Cable {
                    length_m: Some(2.5),
                    area_mm2: Some(16.0),
                    ..Cable::default()
                },
                cooling: UnitCooling::default(),
                modes: vec![
                    Mode::of_power("Plunge", Figure::measured(690.0)),
                    Mode::of_power("Hold", Figure::measured(430.0)),
                    Mode::of_power("Hush", Figure::measured(265.0)),
                ],
            }],
            loads: vec![Load {
                name: "Fridge, fan and lamps".into(),
                power_w: Figure::guess(38.0),
            }],
            night: Night {
                asked_mode: 1,
                ..Night::default()
            },
            ..Self::demo_day()
        }
    }

    /// The demonstration's week: invented like the rest.
    fn demo_day() -> Self {
        Self {
            day: Day {
                days_count: Some(7),
                high_c: Some(Figure::label(36.0)),
                low_c: Some(Figure::label(22.0)),
                ..Day::default()
            },
            supply: Supply {
                arrays: vec![Array {
                    rated_w: Some(Figure::label(240.0)),
                    panels_series_count: Some(2),
                    ..Array::default()
                }],
                ..Supply::default()
            },
            wiring: Wiring {
                take_off: Some(TakeOff::Diagonal),
                battery_fault_a: Some(Figure::label(6000.0)),
                fuse_kind: Some(FuseKind::ClassT),
                unit: CableInstallation {
                    insulation_c: Some(105.0),
                    terminal_c: Some(75.0),
                    air_c: Some(45.0),
                    bundled_count: Some(2),
                    fuse_a: Some(50.0),
                    ..CableInstallation::default()
                },
                ..Wiring::default()
            },
            ..Self::blank()
        }
    }

    /// Nothing in it.
    pub(super) fn blank() -> Self {
        Self {
            version: VERSION,
            title: String::new(),
            banks: Vec::new(),
            units: Vec::new(),
            loads: Vec::new(),
            night: Night::default(),
            day: Day::default(),
            cabin: Cabin::default(),
            supply: Supply::default(),
            wiring: Wiring::default(),
            mode_plan: Vec::new(),
            check_ins: Vec::new(),
            claims: Vec::new(),
            air: super::AirReading::default(),
            price: super::Price::default(),
            show: Show::default(),
            reader: None,
        }
    }

    /// A plan to fill in: nobody has said anything yet, and usual figures stand in.
    #[must_use]
    pub fn fresh() -> Self {
        let bank = Bank {
            battery_nominal_v: None,
            battery_rated_ah: Figure::assumed(USUAL_AH),
            ..Bank::of(Chemistry::Lfp, USUAL_SYSTEM_V, USUAL_AH)
        };
        let mut plan = Self::of(bank, Mode::of_power("", Figure::assumed(USUAL_DRAW_W)));
        // Somewhere between them there is a cable, of which nobody has said anything.
        plan.units[0].cable = Cable::default();
        plan
    }

    /// The same plan in the units that another is shown in: whoever starts afresh
    /// has chosen their units already.
    #[must_use]
    pub fn shown_as(self, units: super::Show) -> Self {
        Self {
            show: units,
            ..self
        }
    }

    /// The least that can be answered: one battery, one mode, the unit at the battery's
    /// own terminals.
    #[must_use]
    pub fn of(bank: Bank, mode: Mode) -> Self {
        Self {
            banks: vec![bank],
            units: vec![Unit {
                cable: Cable {
                    length_m: Some(0.0),
                    ..Cable::default()
                },
                ..Unit::of(vec![mode])
            }],
            ..Self::blank()
        }
    }
}

impl Bank {
    /// One battery with everything else left to its default.
    #[must_use]
    pub fn of(chemistry: Chemistry, battery_nominal_v: f64, battery_rated_ah: f64) -> Self {
        Self {
            name: String::new(),
            chemistry,
            battery_nominal_v: Some(battery_nominal_v),
            battery_rated_ah: Figure::label(battery_rated_ah),
            rated_hours_h: None,
            series_count: 1,
            parallel_count: 1,
            health_percent: None,
            start_charge_percent: None,
            depth_percent: None,
            cutoff_v: None,
            battery_current_limit_a: None,
            battery_resistance_mohm: None,
            polarisation_percent: None,
            peukert_exponent: None,
            parasitic_w: None,
            battery_open_circuit: Vec::new(),
            measured: Measured::default(),
        }
    }
}

impl Unit {
    /// A unit on the bank itself, with no cable to speak of.
    #[must_use]
    pub fn of(modes: Vec<Mode>) -> Self {
        Self {
            name: String::new(),
            feed: Feed::Direct,
            supply_v: None,
            cutoff_v: None,
            cable: Cable::default(),
            cooling: UnitCooling::default(),
            modes,
        }
    }
}

impl Mode {
    /// A mode that draws constant power all the time.
    #[must_use]
    pub fn of_power(name: &str, power_w: Figure) -> Self {
        Self {
            name: name.into(),
            draw: Draw::Power { power_w },
            basis: None,
            duty_percent: None,
            standby_w: None,
            cooling_w: None,
        }
    }
}

impl Draw {
    /// Watts that stay as amps that stay, or back, by a system voltage.
    #[must_use]
    pub fn switched(self, nominal_v: f64) -> Self {
        match self {
            Self::Power { power_w } => {
                let current_a = power_w.with(power_w.value / nominal_v);
                Self::Current {
                    current_a,
                    measured_at_v: nominal_v,
                }
            }
            Self::Current {
                current_a,
                measured_at_v,
            } => Self::Power {
                power_w: current_a.with(current_a.value * measured_at_v),
            },
        }
    }
}

impl Feed {
    /// A converter to 12 V with usual figures (common practice, no source).
    #[must_use]
    pub const fn usual_dc_dc() -> Self {
        Self::DcDc {
            output_v: 13.0,
            efficiency_percent: Figure::guess(92.0),
            idle_w: Figure::guess(2.0),
            limit_a: None,
        }
    }

    /// An inverter with usual figures (common practice, no source).
    #[must_use]
    pub const fn usual_inverter() -> Self {
        Self::Inverter {
            no_load_w: Figure::guess(12.0),
            proportional_loss_percent: Figure::guess(5.0),
            square_loss_percent_per_kw: Figure::guess(3.0),
            limit_w: None,
            cutoff_v: None,
        }
    }
}
