//! What is claimed of the gear, what was measured, and with what.
//!
//! A log itself is too big for a plan; its totals are what stands here.

use super::{
    Plan, Show,
    part::{choice, part},
};
use crate::plan::Path;
use crate::plan::finding::{Finding, Matter};
use crate::range::{self, Range, Unit};

choice! {
    /// What a claim is about.
    Claimed {
        Charge = "charge",
        Energy = "energy",
        Draw = "draw",
        Airflow = "airflow",
        Temperature = "temperature",
        Cooling = "cooling",
        Eer = "eer",
    }
    /// What a figure was read off. The classes carry usual limits; `Sheet`
    /// means the limits stated in the claim.
    MeterClass {
        Clamp = "clamp",
        Shunt = "shunt",
        Multimeter = "multimeter",
        WattMeter = "watt_meter",
        Vane = "vane",
        Thermometer = "thermometer",
        Hygrometer = "hygrometer",
        Sheet = "sheet",
    }
    /// What was called full before the run.
    FullBy {
        ChargerDone = "charger_done",
        VoltsHeld = "volts_held",
        MonitorSaid = "monitor_said",
    }
    /// What ended the run.
    EndBy {
        BatteryCutOff = "battery_cut_off",
        UnitCutOff = "unit_cut_off",
        VoltsReached = "volts_reached",
        ByHand = "by_hand",
    }
    /// Which air a volume flow counts.
    AirBasis {
        AtInlet = "at_inlet",
        AtOutlet = "at_outlet",
        Standard = "standard",
    }
}

part! {
    /// A claim, the figure measured against it, and the test's conditions.
    ///
    /// The numbers of the quantity it is about count; the others stay where
    /// they were typed.
    Claim, ClaimField, default by Claim {
        claimed_ah: MaybeNumber = ClaimedAh, CLAIM_AH, Nothing, NoSpread;
        claimed_most_ah: MaybeNumber = ClaimedMostAh, CLAIM_AH, Nothing, NoSpread;
        measured_ah: MaybeFigure = MeasuredAh, CLAIM_AH, Nothing, NoSpread;
        claimed_wh: MaybeNumber = ClaimedWh, CLAIM_WH, Nothing, NoSpread;
        claimed_most_wh: MaybeNumber = ClaimedMostWh, CLAIM_WH, Nothing, NoSpread;
        measured_wh: MaybeFigure = MeasuredWh, CLAIM_WH, Nothing, NoSpread;
        claimed_w: MaybeNumber = ClaimedW, CLAIM_W, Nothing, NoSpread;
        claimed_most_w: MaybeNumber = ClaimedMostW, CLAIM_W, Nothing, NoSpread;
        measured_w: MaybeFigure = MeasuredW, CLAIM_W, Nothing, NoSpread;
        claimed_m3_h: MaybeNumber = ClaimedM3H, AIRFLOW_M3_H, Nothing, NoSpread;
        claimed_most_m3_h: MaybeNumber = ClaimedMostM3H, AIRFLOW_M3_H, Nothing, NoSpread;
        measured_m3_h: MaybeFigure = MeasuredM3H, AIRFLOW_M3_H, Nothing, NoSpread;
        claimed_c: MaybeNumber = ClaimedC, CLAIM_C, Nothing, NoSpread;
        claimed_most_c: MaybeNumber = ClaimedMostC, CLAIM_C, Nothing, NoSpread;
        measured_c: MaybeFigure = MeasuredC, CLAIM_C, Nothing, NoSpread;
        claimed_cooling_w: MaybeNumber = ClaimedCoolingW, CLAIM_W, Nothing, NoSpread;
        claimed_most_cooling_w: MaybeNumber = ClaimedMostCoolingW, CLAIM_W, Nothing, NoSpread;
        measured_cooling_w: MaybeFigure = MeasuredCoolingW, CLAIM_W, Nothing, NoSpread;
        claimed_btu_per_wh: MaybeNumber = ClaimedBtuPerWh, EER, Nothing, NoSpread;
        claimed_most_btu_per_wh: MaybeNumber = ClaimedMostBtuPerWh, EER, Nothing, NoSpread;
        measured_btu_per_wh: MaybeFigure = MeasuredBtuPerWh, EER, Nothing, NoSpread;
        /// What the claim may be off by either way, as it says itself.
        tolerance_percent: MaybeNumber = TolerancePercent, SHARE_PERCENT, Nothing, NoSpread;
        /// By the meter's sheet.
        of_reading_percent: MaybeNumber = OfReadingPercent, LIMIT_PERCENT, Nothing, NoSpread;
        of_full_scale_percent: MaybeNumber = OfFullScalePercent, LIMIT_PERCENT, Nothing, NoSpread;
        /// In the unit of the figure, or amperes of a shunt.
        full_scale_number: MaybeNumber = FullScaleNumber, METER_NUMBER, Nothing, NoSpread;
        counts_number: MaybeNumber = CountsNumber, METER_NUMBER, Nothing, NoSpread;
        /// One count of the last digit, in the unit of the figure.
        one_count_number: MaybeNumber = OneCountNumber, METER_NUMBER, Nothing, NoSpread;
        /// How long the measurement took.
        measured_min: MaybeNumber = MeasuredMin, MEASURED_MIN, Nothing, NoSpread;
        /// Mean current of a capacity run.
        rate_a: MaybeNumber = RateA, DRAW_A, Nothing, NoSpread;
        /// Of the battery at the start, or of the room.
        test_c: MaybeNumber = TestC, CLAIM_C, Nothing, NoSpread;
        /// The temperature that the claim was made for.
        rated_c: MaybeNumber = RatedC, CLAIM_C, Guess(25.0), NoSpread;
        /// Free area of the grille, where a vane was read.
        grille_m2: MaybeNumber = GrilleM2, GRILLE_M2, Nothing, NoSpread;
    } with {
        name: String,
        about: Option<Claimed>,
        meter: Option<MeterClass>,
        full_by: Option<FullBy>,
        end_by: Option<EndBy>,
        /// Figures of repeated runs, in the unit of the claim; two or more
        /// outrank the single figure.
        runs: Vec<f64>,
        /// Which bank of the plan a capacity is of.
        bank: usize,
    }
}

part! {
    /// One steady reading of the cooler from its air side.
    AirReading, AirField, default by AirReading {
        altitude_m: MaybeNumber = AltitudeM, ALTITUDE_M, Nothing, NoSpread;
        inlet_c: MaybeFigure = InletC, CLAIM_C, Nothing, NoSpread;
        inlet_humidity_percent: MaybeFigure = InletHumidityPercent, HUMIDITY_PERCENT,
            Nothing, NoSpread;
        outlet_c: MaybeFigure = OutletC, CLAIM_C, Nothing, NoSpread;
        outlet_humidity_percent: MaybeFigure = OutletHumidityPercent, HUMIDITY_PERCENT,
            Nothing, NoSpread;
        /// Where it was read as a volume; else from the vane.
        airflow_m3_h: MaybeFigure = AirflowM3H, AIRFLOW_M3_H, Nothing, NoSpread;
        /// Open area of the grille, not its outside size.
        free_area_m2: MaybeFigure = FreeAreaM2, GRILLE_M2, Nothing, NoSpread;
        /// Electrical watts at the same time.
        power_w: MaybeFigure = PowerW, DRAW_W, Nothing, NoSpread;
    } with {
        basis: Option<AirBasis>,
        /// One reading a traverse point, equal areas each.
        vane_m_s: Vec<f64>,
    }
}

part! {
    /// What the bank cost and how long it is said to live.
    #[derive(Copy)]
    Price, PriceField, default by Price {
        /// In any currency; answers are in the same.
        price_number: MaybeNumber = PriceNumber, PRICE_NUMBER, Nothing, NoSpread;
        cycles_count: MaybeNumber = CyclesCount, CYCLES_NUMBER, Nothing, NoSpread;
        /// Share of a cycle that is used; absent: the first bank's depth.
        cycle_depth_percent: MaybeNumber = CycleDepthPercent, DEPTH_PERCENT, Nothing, NoSpread;
        /// Capacity left at the end of that life.
        // The end of life that most makers count cycles to: common practice, no source.
        left_percent: MaybeNumber = LeftPercent, SHARE_PERCENT, Guess(80.0), NoSpread;
    } with {}
}

/// Claims, repeated runs and traverse points that one answer takes.
pub const MOST_CLAIMS: usize = 24;
pub const MOST_RUNS: usize = 20;
pub const MOST_POINTS: usize = 48;

/// Numbers with spaces or semicolons between, each within a range; `None` where
/// one is not, or where there are more than `most`. A unit may stand apart from
/// its number: `240 cfm 250 cfm`.
#[must_use]
pub fn read_list(text: &str, range: Range, most: usize, units: Show) -> Option<Vec<f64>> {
    let mut numbers: Vec<String> = Vec::new();
    for word in text.split([' ', ';', '\n', '\t']).filter(|w| !w.is_empty()) {
        match numbers.last_mut() {
            Some(number) if !word.contains(|c: char| c.is_ascii_digit()) => number.push_str(word),
            _ => numbers.push(word.to_owned()),
        }
    }
    let read = |word: &String| {
        let entry = super::entry::read(word, range.unit, units);
        let value = entry.ok()?.value;
        range.accepts(value).then_some(value)
    };
    let numbers: Option<Vec<f64>> = numbers.iter().map(read).collect();
    numbers.filter(|numbers| numbers.len() <= most)
}

impl Claimed {
    /// The places of the claim, its upper end, and the figure measured.
    #[must_use]
    pub const fn fields(self) -> [ClaimField; 3] {
        use ClaimField as C;
        match self {
            Self::Charge => [C::ClaimedAh, C::ClaimedMostAh, C::MeasuredAh],
            Self::Energy => [C::ClaimedWh, C::ClaimedMostWh, C::MeasuredWh],
            Self::Draw => [C::ClaimedW, C::ClaimedMostW, C::MeasuredW],
            Self::Airflow => [C::ClaimedM3H, C::ClaimedMostM3H, C::MeasuredM3H],
            Self::Temperature => [C::ClaimedC, C::ClaimedMostC, C::MeasuredC],
            Self::Cooling => [
                C::ClaimedCoolingW,
                C::ClaimedMostCoolingW,
                C::MeasuredCoolingW,
            ],
            Self::Eer => [
                C::ClaimedBtuPerWh,
                C::ClaimedMostBtuPerWh,
                C::MeasuredBtuPerWh,
            ],
        }
    }

    /// What figures of this kind may be.
    #[must_use]
    pub const fn range(self) -> Range {
        self.fields()[0].range()
    }
}

impl ClaimField {
    /// Whether it is the figure that was measured.
    #[must_use]
    pub const fn is_measured(self) -> bool {
        matches!(
            self,
            Self::MeasuredAh
                | Self::MeasuredWh
                | Self::MeasuredW
                | Self::MeasuredM3H
                | Self::MeasuredC
                | Self::MeasuredCoolingW
                | Self::MeasuredBtuPerWh
        )
    }
}

impl Claim {
    /// A claim about a quantity, with nothing said yet.
    #[must_use]
    pub fn of(about: Claimed) -> Self {
        Self {
            about: Some(about),
            ..Self::default()
        }
    }

    /// What it is about; a claim that does not say is about energy.
    #[must_use]
    pub fn about_taken(&self) -> Claimed {
        self.about.unwrap_or(Claimed::Energy)
    }
}

impl Plan {
    /// The values that a number may take, in the unit that it has in this plan: a
    /// meter's full scale and its last digit are in the unit of what was read.
    #[must_use]
    pub fn range(&self, path: Path) -> Option<Range> {
        let range = path.range()?;
        let (at, field) = match path {
            Path::Claim(at, field) => (at, field),
            _ => return Some(range),
        };
        let (Some(claim), ClaimField::FullScaleNumber | ClaimField::OneCountNumber) =
            (self.claims.get(at), field)
        else {
            return Some(range);
        };
        let unit = match (claim.meter, claim.about_taken().range().unit) {
            (Some(MeterClass::Shunt | MeterClass::Clamp), _) => Unit::Amp,
            // So many degrees, wherever they begin.
            (_, Unit::Celsius) => Unit::Kelvin,
            (_, unit) => unit,
        };
        Some(Range { unit, ..range })
    }

    /// The addresses of the fifth question's numbers.
    pub(super) fn claim_paths(&self, all: &mut Vec<Path>) {
        for at in 0..self.claims.len() {
            all.extend(ClaimField::ALL.iter().map(|&field| Path::Claim(at, field)));
        }
        all.extend(AirField::ALL.iter().map(|&field| Path::Air(field)));
        all.extend(PriceField::ALL.iter().map(|&field| Path::Price(field)));
    }

    /// What in the lists cannot be answered.
    pub(super) fn claim_errors(&self) -> Vec<Finding> {
        let mut errors = Vec::new();
        let too_many = |path, count, most| {
            let matter = Matter::TooMany { count, most };
            (count > most).then(|| Finding::error(Some(path), matter))
        };
        errors.extend(too_many(Path::Claims, self.claims.len(), MOST_CLAIMS));
        for (at, claim) in self.claims.iter().enumerate() {
            let path = Path::Claim(at, claim.about_taken().fields()[2]);
            errors.extend(too_many(path, claim.runs.len(), MOST_RUNS));
            let range = claim.about_taken().range();
            let bad = |&&value: &&f64| !range.accepts(value);
            let bad = claim.runs.iter().take(MOST_RUNS).find(bad);
            errors.extend(bad.and_then(|&value| Finding::of_value(path, value, range)));
        }
        let path = Path::Air(AirField::FreeAreaM2);
        let points = &self.air.vane_m_s;
        errors.extend(too_many(path, points.len(), MOST_POINTS));
        let bad = points.iter().find(|&&v| !range::VANE_M_S.accepts(v));
        errors.extend(bad.and_then(|&v| Finding::of_value(path, v, range::VANE_M_S)));
        errors
    }

    /// Whether an error is one of the fifth question's own parts.
    #[must_use]
    pub fn blocks_claims_only(error: &Finding) -> bool {
        matches!(
            error.field,
            Some(Path::Claims | Path::Claim(..) | Path::Air(_) | Path::Price(_))
        )
    }
}
