//! The wiring: where the cables run, how they lie, and what the batteries bear.
//!
//! The cable to the unit has its length and conductor at the unit itself
//! (`units[0].cable`), so that hours and cables speak of the same copper; how
//! it lies stands here. The defaults are common practice, no source, and the cautious
//! end of it.

use super::{
    Bank, Figure, Plan,
    part::{Choice, choice, part},
    path::{BankField as B, Path},
};
use crate::plan::finding::Finding;

choice! {
    /// Where the system is: it decides where fuses sit.
    Place {
        Vehicle = "vehicle",
        Boat = "boat",
        Cabin = "cabin",
    }
    /// Where the two cables leave the batteries in parallel.
    TakeOff {
        /// Both from the first battery.
        SameEnd = "same_end",
        /// Plus from the first battery, minus from the last.
        Diagonal = "diagonal",
        /// Each battery by equal leads to bars.
        BusBar = "bus_bar",
    }
    /// How a conductor is made.
    Strands {
        /// Many fine strands, bare.
        Fine = "fine",
        /// Many fine strands, each tinned.
        FineTinned = "fine_tinned",
        /// A few thick strands.
        Few = "few",
        /// One wire.
        Solid = "solid",
    }
    /// Kinds of protection for direct current, by their trade terms.
    FuseKind {
        Blade = "blade",
        Strip = "strip",
        Post = "post",
        ClassT = "class_t",
        Breaker = "breaker",
    }
    /// A stretch of cable.
    Circuit {
        /// From the bank to where it branches.
        Distribution = "distribution",
        /// To the cooling unit, or to its converter or inverter.
        Unit = "unit",
        /// From a charger or the controller to the bank.
        Charger = "charger",
        /// From the panels to the controller.
        Panel = "panel",
    }
}

part! {
    /// How a cable lies and what protects it.
    #[derive(Copy)]
    CableInstallation, InstallationField, default by Circuit {
        /// Rating of its insulation.
        insulation_c: MaybeNumber = InsulationC, RATING_C, Guess(75.0), NoSpread;
        /// Rating of the coolest lug, holder or device that it ends on.
        terminal_c: MaybeNumber = TerminalC, RATING_C, Guess(75.0), NoSpread;
        /// Air around it at its hottest.
        air_c: MaybeNumber = AirC, CABLE_AIR_C,
            Of(|circuit, _| Some(circuit.usual_air_c())), NoSpread;
        /// Conductors that carry current in the same bundle, its own two with them.
        bundled_count: MaybeCount = BundledCount, BUNDLED_COUNT, Guess(2.0), NoSpread;
        /// Of the source's volts.
        allowed_drop_percent: MaybeNumber = AllowedDropPercent, ALLOWED_DROP_PERCENT,
            Of(|circuit, _| Some(circuit.usual_drop_percent())), NoSpread;
        /// The fuse that is in it, by its print.
        fuse_a: MaybeNumber = FuseA, FUSE_A, Nothing, NoSpread;
        /// How far along the cable that fuse sits from the source.
        fuse_along_m: MaybeNumber = FuseAlongM, FUSE_ALONG_M, Nothing, NoSpread;
    } with {
        strands: Option<Strands>,
        engine_space: bool,
        /// Inside a wall, conduit or duct.
        enclosed: bool,
    }
}

part! {
    /// The wiring. Left out: usual cables, and what they must be.
    #[derive(Copy)]
    Wiring, WiringField, default by Wiring {
        /// From the bank to where it branches, one way. Left out: the cables
        /// begin at the bank.
        distribution_m: MaybeNumber = DistributionM, CABLE_LENGTH_M, Nothing, NoSpread;
        distribution_mm2: MaybeNumber = DistributionMm2, CABLE_AREA_MM2,
            Of(|wiring, _| wiring.usual_distribution()), NoSpread;
        charger_m: MaybeNumber = ChargerM, CABLE_LENGTH_M, Guess(2.0), NoSpread;
        charger_mm2: MaybeNumber = ChargerMm2, CABLE_AREA_MM2, Nothing, NoSpread;
        panel_m: MaybeNumber = PanelM, CABLE_LENGTH_M, Guess(5.0), NoSpread;
        panel_mm2: MaybeNumber = PanelMm2, CABLE_AREA_MM2, Nothing, NoSpread;
        /// At the bank, when the unit starts.
        start_a: MaybeFigure = StartA, DRAW_A,
            Of(|_, plan| plan.assumed_start_a().map(Figure::guess)), NoSpread;
        start_ms: MaybeFigure = StartMs, START_MS, Guess(500.0), NoSpread;
        /// What the inverter gives for a moment.
        inverter_peak_w: MaybeFigure = InverterPeakW, LIMIT_W, Nothing, NoSpread;
        /// What one battery gives for a moment, and for how long.
        battery_peak_a: MaybeFigure = BatteryPeakA, CURRENT_LIMIT_A, Nothing, NoSpread;
        battery_peak_ms: MaybeFigure = BatteryPeakMs, START_MS, Nothing, NoSpread;
        /// What one battery may be charged with.
        battery_charge_a: MaybeFigure = BatteryChargeA, CURRENT_LIMIT_A,
            Of(|_, plan| plan.banks.first().map(Bank::usual_charge_a)), NoSpread;
        /// Coldest that a battery may be charged.
        charge_least_c: MaybeNumber = ChargeLeastC, BANK_C,
            Of(|_, plan| plan.banks.first().map(Bank::usual_charge_least_c)), NoSpread;
        /// Short-circuit current of one battery, by its maker.
        battery_fault_a: MaybeFigure = BatteryFaultA, FAULT_A, Nothing, NoSpread;
        /// Of each link between neighbouring posts, or of each lead to a bar.
        // A short strap and the two lugs on its ends.
        link_mohm: MaybeFigure = LinkMohm, LINK_MOHM, Guess(0.5), NoSpread;
        /// Batteries in series that the maker allows.
        most_series_count: MaybeCount = MostSeriesCount, SERIES_COUNT, Nothing, NoSpread;
        /// Coldest morning of the year, for panels and for charging.
        coldest_c: MaybeNumber = ColdestC, COLDEST_C, Guess(-10.0), NoSpread;
    } with {
        place: Option<Place>,
        take_off: Option<TakeOff>,
        fuse_kind: Option<FuseKind>,
        /// Batteries of different age, make or use stand together.
        mixed_batteries: bool,
        distribution: CableInstallation,
        unit: CableInstallation,
        charger: CableInstallation,
        panel: CableInstallation,
    }
}

/// What runs take for a conductor that nobody has named, mm²: common practice, no
/// source, and no conductor that is judged.
pub const USUAL_MM2: f64 = 16.0;

/// The same for the length of a cable, one way, m.
pub const USUAL_M: f64 = 3.0;

impl Wiring {
    /// How a circuit lies.
    #[must_use]
    pub const fn installation(&self, circuit: Circuit) -> &CableInstallation {
        match circuit {
            Circuit::Distribution => &self.distribution,
            Circuit::Unit => &self.unit,
            Circuit::Charger => &self.charger,
            Circuit::Panel => &self.panel,
        }
    }

    pub const fn installation_mut(&mut self, circuit: Circuit) -> &mut CableInstallation {
        match circuit {
            Circuit::Distribution => &mut self.distribution,
            Circuit::Unit => &mut self.unit,
            Circuit::Charger => &mut self.charger,
            Circuit::Panel => &mut self.panel,
        }
    }

    /// The run counts it where a length says that it is there.
    fn usual_distribution(&self) -> Option<Figure> {
        self.distribution_m.map(|_| Figure::guess(USUAL_MM2))
    }

    /// Where it is, said or not: most that run a cooler on a bank drive it.
    #[must_use]
    pub fn place_taken(&self) -> Place {
        self.place.unwrap_or(Place::Vehicle)
    }

    /// Where the cables leave, said or not: the take-off that burdens most.
    #[must_use]
    pub fn take_off_taken(&self) -> TakeOff {
        self.take_off.unwrap_or(TakeOff::SameEnd)
    }
}

impl Circuit {
    /// A closed vehicle in the sun; and the dark of a roof above it.
    const fn usual_air_c(self) -> Figure {
        Figure::guess(match self {
            Self::Panel => 60.0,
            Self::Distribution | Self::Unit | Self::Charger => 45.0,
        })
    }

    /// Together 5 %.
    const fn usual_drop_percent(self) -> Figure {
        Figure::exact(match self {
            Self::Distribution => 2.0,
            Self::Unit | Self::Charger | Self::Panel => 3.0,
        })
    }

    /// The addresses of its length and conductor, with the unit that is fed.
    #[must_use]
    pub const fn run_paths(self, unit: usize) -> [Path; 2] {
        use super::path::UnitField as U;
        match self {
            Self::Distribution => [
                Path::Wiring(WiringField::DistributionM),
                Path::Wiring(WiringField::DistributionMm2),
            ],
            Self::Unit => [
                Path::Unit(unit, U::CableLengthM),
                Path::Unit(unit, U::CableAreaMm2),
            ],
            Self::Charger => [
                Path::Wiring(WiringField::ChargerM),
                Path::Wiring(WiringField::ChargerMm2),
            ],
            Self::Panel => [
                Path::Wiring(WiringField::PanelM),
                Path::Wiring(WiringField::PanelMm2),
            ],
        }
    }
}

impl Bank {
    fn usual_charge_a(&self) -> Figure {
        let hourly = self.chemistry.data().charging.usual_rate;
        Figure::guess(hourly * self.battery_rated_ah.value)
    }

    /// No colder than 0 °C for anything but lead-acid: some makers of other cells allow
    /// less, but a caution is not silenced by what is only usual.
    pub fn usual_charge_least_c(&self) -> Figure {
        let usual_c = self.chemistry.data().charging.between_c.0;
        Figure::guess(if self.chemistry.is_lead_acid() {
            usual_c
        } else {
            usual_c.max(0.0)
        })
    }
}

impl Plan {
    /// Twice the strongest mode's current where the unit's own electronics start
    /// it, six times behind an inverter: a motor at rest.
    fn assumed_start_a(&self) -> Option<f64> {
        let unit = self.units.get(self.night.asked_unit)?;
        let running_a = unit.strongest_w() / self.banks.first()?.nominal_v();
        Some(match unit.feed {
            super::Feed::Inverter { .. } => 6.0 * running_a,
            _ => 2.0 * running_a,
        })
    }

    /// The addresses of the fourth question's numbers.
    pub(super) fn wiring_paths(&self, all: &mut Vec<Path>) {
        all.extend(WiringField::ALL.iter().map(|&field| Path::Wiring(field)));
        for &circuit in Circuit::ALL {
            all.extend(
                InstallationField::ALL
                    .iter()
                    .map(|&field| Path::Installation(circuit, field)),
            );
        }
    }

    /// Whether an error is one of the wiring's own, which leaves the rest
    /// answerable.
    #[must_use]
    pub const fn blocks_wiring_only(error: &Finding) -> bool {
        matches!(error.field, Some(Path::Wiring(_) | Path::Installation(..)))
    }

    /// Continuous amps that one battery may give, where they are said.
    #[must_use]
    pub fn battery_limit_a(&self, bank: usize) -> Option<f64> {
        self.number(Path::Bank(bank, B::BatteryCurrentLimitA))
    }
}
