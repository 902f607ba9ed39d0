//! Where a number stands in a plan: `banks[0].battery_rated_ah`.
//!
//! One address for the form, the findings, the spread and the search: each of
//! them reads and writes plan numbers through [`Plan::number`] and
//! [`Plan::set_number`] and needs to know nothing else of a field.

use super::{
    Bank, Figure, Load, Mode, Night, Unit,
    cabin::CabinField,
    claims::{AirField, ClaimField, PriceField},
    cooling::{CoolingField, MapField},
    day::{CheckInField, DayField, ModeRowField},
    demo::{USUAL_AH, USUAL_SYSTEM_V},
    fields::{Row, Width, fields},
    part::Choice,
    supply::{ArrayField, ChargerField, SupplyField},
    wiring::{Circuit, InstallationField, USUAL_M, USUAL_MM2, WiringField},
};
use crate::range::{self, Range};
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::{fmt, str::FromStr};

#[cfg(doc)]
use super::Plan;

fields! {
    /// The numbers of a bank.
    BankField of Bank, default by Bank {
        BatteryNominalV = (battery_nominal_v), BATTERY_NOMINAL_V, Exact(USUAL_SYSTEM_V), NoSpread;
        BatteryRatedAh = (battery_rated_ah), BATTERY_RATED_AH, Guess(USUAL_AH), Share(5.0, 2.0, 10.0);
        RatedHoursH = (rated_hours_h), RATED_HOURS_H,
            Of(|bank, _| Some(Figure::label(bank.chemistry.data().rated_hours))), NoSpread;
        SeriesCount = (series_count), SERIES_COUNT, Nothing, NoSpread;
        ParallelCount = (parallel_count), PARALLEL_COUNT, Nothing, NoSpread;
        HealthPercent = (health_percent), HEALTH_PERCENT, Guess(100.0), Share(5.0, 3.0, 5.0);
        StartChargePercent = (start_charge_percent), START_CHARGE_PERCENT,
            Guess(100.0), Share(3.0, 2.0, 3.0);
        DepthPercent = (depth_percent), DEPTH_PERCENT,
            Of(|bank, _| Some(Figure::label(bank.chemistry.data().usual_depth_percent))), NoSpread;
        CutoffV = (cutoff_v), CUTOFF_V,
            Of(|bank, _| Some(bank.usual_cutoff_v())), Share(2.0, 1.0, 3.0);
        BatteryCurrentLimitA = (battery_current_limit_a), CURRENT_LIMIT_A, Nothing, NoSpread;
        BatteryResistanceMohm = (battery_resistance_mohm), BATTERY_RESISTANCE_MOHM,
            Of(|bank, _| Some(bank.usual_resistance_mohm())), Share(30.0, 15.0, 50.0);
        PolarisationPercent = (polarisation_percent), POLARISATION_PERCENT,
            Of(|bank, _| bank.usual_polarisation_percent()), Share(20.0, 10.0, 40.0);
        // A usual exponent is within so much of rate tables up to C/2 (`lead_rates`).
        PeukertExponent = (peukert_exponent), PEUKERT_EXPONENT,
            Of(|bank, _| Some(Figure::guess(bank.chemistry.data().peukert_exponent))), Share(4.0, 2.0, 10.0);
        ParasiticW = (parasitic_w), PARASITIC_W,
            Of(|bank, _| Some(Figure::guess(bank.chemistry.data().parasitic_w))), Share(30.0, 10.0, 80.0);
        MeasuredAh = (measured.measured_ah), MEASURED_AH, Nothing, Share(5.0, 2.0, 10.0);
        MeasuredWh = (measured.measured_wh), MEASURED_WH, Nothing, Share(5.0, 2.0, 10.0);
        MeasuredLoadW = (measured.load_w), MEASURED_LOAD_W, Nothing, NoSpread;
    }
}

fields! {
    /// The numbers of a cooling unit and what feeds it.
    UnitField of Unit, default by Unit {
        SupplyV = (supply_v), SUPPLY_V,
            Of(|_, plan| plan.banks.first().map(|bank| Figure::guess(bank.nominal_v()))), NoSpread;
        CutoffV = (cutoff_v), CUTOFF_V, Nothing, Share(2.0, 1.0, 3.0);
        // Said, it is that one: only the guess has a spread.
        CableLengthM = (cable.length_m), CABLE_LENGTH_M, Guess(USUAL_M), Share(0.0, 0.0, 50.0);
        CableAreaMm2 = (cable.area_mm2), CABLE_AREA_MM2, Guess(USUAL_MM2), Share(0.0, 0.0, 50.0);
        CableTemperatureC = (cable.temperature_c), CABLE_TEMPERATURE_C, Nothing, NoSpread;
        ConnectionsMohm = (cable.connections_mohm), CONNECTIONS_MOHM, Nothing, NoSpread;
        OutputV = (feed: feed.output_v), CONVERTER_OUTPUT_V, Nothing, NoSpread;
        EfficiencyPercent = (feed: feed.efficiency_percent), EFFICIENCY_PERCENT,
            Nothing, Share(2.0, 1.0, 4.0);
        IdleW = (feed: feed.idle_w), IDLE_W, Nothing, Share(20.0, 5.0, 50.0);
        LimitA = (feed: feed.limit_a), CURRENT_LIMIT_A, Nothing, NoSpread;
        NoLoadW = (feed: feed.no_load_w), IDLE_W, Nothing, Share(20.0, 5.0, 50.0);
        ProportionalLossPercent = (feed: feed.proportional_loss_percent), PROPORTIONAL_LOSS_PERCENT,
            Nothing, Share(20.0, 10.0, 50.0);
        SquareLossPercentPerKw = (feed: feed.square_loss_percent_per_kw), SQUARE_LOSS_PERCENT_PER_KW,
            Nothing, Share(20.0, 10.0, 50.0);
        LimitW = (feed: feed.limit_w), LIMIT_W, Nothing, NoSpread;
        InverterCutoffV = (feed: feed.cutoff_v), CUTOFF_V, Nothing, Share(2.0, 1.0, 3.0);
    }
}

fields! {
    /// The numbers of a mode, which its unit and its own place find.
    ModeField of Mode, default by (usize, usize) {
        // A mode's draw wanders with the heat outside: a label says least of it.
        PowerW = (draw: power_w), DRAW_W,
            Of(|&(unit, mode), plan| plan.usual_draw_w(unit, mode)), Share(15.0, 4.0, 20.0);
        CurrentA = (draw: current_a), DRAW_A,
            Of(|&(unit, mode), plan| plan.usual_draw_a(unit, mode)), Share(15.0, 4.0, 20.0);
        MeasuredAtV = (draw: measured_at_v), SUPPLY_V, Nothing, NoSpread;
        // Left out, this and standby are no guess: a mode's watts are then its mean.
        DutyPercent = (duty_percent), DUTY_PERCENT, Exact(100.0), Share(15.0, 5.0, 25.0);
        StandbyW = (standby_w), STANDBY_W, Exact(0.0), Share(15.0, 4.0, 25.0);
        CoolingW = (cooling_w), COOLING_W,
            Of(|&(unit, mode), plan| plan.assumed_mode_cooling(unit, mode)), Share(10.0, 5.0, 20.0);
    }
}

fields! {
    /// The numbers of the night.
    NightField of Night, default by Night {
        StartClockMin = (start_clock_min), START_CLOCK_MIN, Nothing, NoSpread;
        WantedH = (wanted_h), WANTED_H, Nothing, NoSpread;
        AgeingPercent = (ageing_percent), AGEING_PERCENT, Nothing, NoSpread;
        MarginPercent = (margin_percent), MARGIN_PERCENT, Nothing, NoSpread;
    }
}

fields! {
    /// The number of another load.
    LoadField of Load, default by Load {
        PowerW = (power_w), LOAD_W, Nothing, Share(15.0, 4.0, 25.0);
    }
}

/// The address of one number, or of one list, in a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Path {
    Banks,
    Bank(usize, BankField),
    /// What a bank's cells are made of: no number, and a reader may be left it.
    Chemistry(usize),
    /// The own open-circuit table of a bank.
    OpenCircuit(usize),
    /// The measured map of a unit.
    UnitMap(usize),
    MapRow(usize, usize, MapField),
    Units,
    Unit(usize, UnitField),
    Modes(usize),
    Mode(usize, usize, ModeField),
    Loads,
    /// The watts of another load.
    Load(usize),
    Night(NightField),
    Day(DayField),
    /// The hours imported from a weather file.
    Imported,
    Cabin(CabinField),
    /// What a unit gives.
    Cooling(usize, CoolingField),
    Supply(SupplyField),
    Arrays,
    Array(usize, ArrayField),
    Chargers,
    Charger(usize, ChargerField),
    ModePlan,
    ModeRow(usize, ModeRowField),
    CheckIns,
    CheckIn(usize, CheckInField),
    Claims,
    Claim(usize, ClaimField),
    /// The cooler read from its air side.
    Air(AirField),
    Price(PriceField),
    Wiring(WiringField),
    /// How a circuit of the wiring lies.
    Installation(Circuit, InstallationField),
}

impl Path {
    /// What is so of this number in every plan; none for a list.
    #[must_use]
    pub const fn row(self) -> Option<Row> {
        Some(match self {
            Self::Bank(_, field) => field.row(),
            Self::Unit(_, field) => field.row(),
            Self::Mode(_, _, field) => field.row(),
            Self::Load(_) => LoadField::PowerW.row(),
            Self::Night(field) => field.row(),
            Self::Day(field) => field.row(),
            Self::Cabin(field) => field.row(),
            Self::Cooling(_, field) => field.row(),
            Self::Supply(field) => field.row(),
            Self::Array(_, field) => field.row(),
            Self::Charger(_, field) => field.row(),
            Self::ModeRow(_, field) => field.row(),
            Self::CheckIn(_, field) => field.row(),
            Self::MapRow(_, _, field) => field.row(),
            Self::Claim(_, field) => field.row(),
            Self::Air(field) => field.row(),
            Self::Price(field) => field.row(),
            Self::Wiring(field) => field.row(),
            Self::Installation(_, field) => field.row(),
            Self::Banks
            | Self::Chemistry(_)
            | Self::OpenCircuit(_)
            | Self::UnitMap(_)
            | Self::Units
            | Self::Modes(_)
            | Self::Loads
            | Self::Imported
            | Self::Arrays
            | Self::Chargers
            | Self::ModePlan
            | Self::CheckIns
            | Self::Claims => return None,
        })
    }

    /// The values that this number may take; none for a list.
    #[must_use]
    pub const fn range(self) -> Option<Range> {
        match self.row() {
            Some(row) => Some(row.range),
            None => None,
        }
    }

    /// What the number is usually off by.
    #[must_use]
    pub const fn width(self) -> Width {
        match self.row() {
            Some(row) => row.width,
            None => Width::NoSpread,
        }
    }
}

impl Path {
    /// Whether a unit or a count is often typed with the number: a field with a
    /// keyboard of digits alone would shut it out.
    #[must_use]
    pub const fn invites_letters(self) -> bool {
        match self {
            Self::Bank(_, BankField::BatteryRatedAh)
            | Self::Mode(_, _, ModeField::PowerW | ModeField::CurrentA)
            | Self::Load(_) => true,
            _ => match self.range() {
                Some(range) => matches!(
                    range.unit,
                    range::Unit::CubicMeterPerHour | range::Unit::SquareMillimeter
                ),
                None => false,
            },
        }
    }
}

impl fmt::Display for Path {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        match *self {
            Self::Banks => to.write_str("banks"),
            Self::Bank(bank, field) => write!(to, "banks[{bank}].{}", field.key()),
            Self::Chemistry(bank) => write!(to, "banks[{bank}].chemistry"),
            Self::OpenCircuit(bank) => write!(to, "banks[{bank}].battery_open_circuit"),
            Self::UnitMap(unit) => write!(to, "units[{unit}].cooling.unit_map"),
            Self::MapRow(unit, row, field) => {
                write!(to, "units[{unit}].cooling.unit_map[{row}].{}", field.key())
            }
            Self::Units => to.write_str("units"),
            Self::Unit(unit, field) => write!(to, "units[{unit}].{}", field.key()),
            Self::Modes(unit) => write!(to, "units[{unit}].modes"),
            Self::Mode(unit, mode, field) => {
                write!(to, "units[{unit}].modes[{mode}].{}", field.key())
            }
            Self::Loads => to.write_str("loads"),
            Self::Load(load) => write!(to, "loads[{load}].{}", LoadField::PowerW.key()),
            Self::Night(field) => write!(to, "night.{}", field.key()),
            Self::Day(field) => write!(to, "day.{}", field.key()),
            Self::Imported => to.write_str("day.imported"),
            Self::Cabin(field) => write!(to, "cabin.{}", field.key()),
            Self::Cooling(unit, field) => write!(to, "units[{unit}].cooling.{}", field.key()),
            Self::Supply(field) => write!(to, "supply.{}", field.key()),
            Self::Arrays => to.write_str("supply.arrays"),
            Self::Array(at, field) => write!(to, "supply.arrays[{at}].{}", field.key()),
            Self::Chargers => to.write_str("supply.chargers"),
            Self::Charger(at, field) => write!(to, "supply.chargers[{at}].{}", field.key()),
            Self::ModePlan => to.write_str("mode_plan"),
            Self::ModeRow(at, field) => write!(to, "mode_plan[{at}].{}", field.key()),
            Self::CheckIns => to.write_str("check_ins"),
            Self::Claims => to.write_str("claims"),
            Self::Claim(at, field) => write!(to, "claims[{at}].{}", field.key()),
            Self::Air(field) => write!(to, "air.{}", field.key()),
            Self::Price(field) => write!(to, "price.{}", field.key()),
            Self::Wiring(field) => write!(to, "wiring.{}", field.key()),
            Self::Installation(circuit, field) => {
                write!(to, "wiring.{}.{}", circuit.key(), field.key())
            }
            Self::CheckIn(at, field) => write!(to, "check_ins[{at}].{}", field.key()),
        }
    }
}

/// The text is no address in a plan of this version.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NoSuchPath;

impl fmt::Display for NoSuchPath {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        to.write_str("no such field in a plan")
    }
}

impl FromStr for Path {
    type Err = NoSuchPath;

    fn from_str(text: &str) -> Result<Self, NoSuchPath> {
        parse(text).ok_or(NoSuchPath)
    }
}

fn parse(text: &str) -> Option<Path> {
    match text {
        "banks" => return Some(Path::Banks),
        "units" => return Some(Path::Units),
        "loads" => return Some(Path::Loads),
        "day.imported" => return Some(Path::Imported),
        "supply.arrays" => return Some(Path::Arrays),
        "supply.chargers" => return Some(Path::Chargers),
        "mode_plan" => return Some(Path::ModePlan),
        "check_ins" => return Some(Path::CheckIns),
        "claims" => return Some(Path::Claims),
        _ => {}
    }
    if let Some(key) = text.strip_prefix("night.") {
        return NightField::of_key(key).map(Path::Night);
    }
    if let Some(key) = text.strip_prefix("day.") {
        return DayField::of_key(key).map(Path::Day);
    }
    if let Some(rest) = text.strip_prefix("claims[") {
        let (at, key) = index(rest)?;
        return ClaimField::of_key(key).map(|field| Path::Claim(at, field));
    }
    if let Some(key) = text.strip_prefix("air.") {
        return AirField::of_key(key).map(Path::Air);
    }
    if let Some(key) = text.strip_prefix("price.") {
        return PriceField::of_key(key).map(Path::Price);
    }
    if let Some(key) = text.strip_prefix("wiring.") {
        return match key.split_once('.') {
            None => WiringField::of_key(key).map(Path::Wiring),
            Some((circuit, key)) => Some(Path::Installation(
                Circuit::of_key(circuit)?,
                InstallationField::of_key(key)?,
            )),
        };
    }
    if let Some(key) = text.strip_prefix("cabin.") {
        return CabinField::of_key(key).map(Path::Cabin);
    }
    if let Some(rest) = text.strip_prefix("supply.arrays[") {
        let (at, key) = index(rest)?;
        return ArrayField::of_key(key).map(|field| Path::Array(at, field));
    }
    if let Some(rest) = text.strip_prefix("supply.chargers[") {
        let (at, key) = index(rest)?;
        return ChargerField::of_key(key).map(|field| Path::Charger(at, field));
    }
    if let Some(key) = text.strip_prefix("supply.") {
        return SupplyField::of_key(key).map(Path::Supply);
    }
    if let Some(rest) = text.strip_prefix("mode_plan[") {
        let (at, key) = index(rest)?;
        return ModeRowField::of_key(key).map(|field| Path::ModeRow(at, field));
    }
    if let Some(rest) = text.strip_prefix("check_ins[") {
        let (at, key) = index(rest)?;
        return CheckInField::of_key(key).map(|field| Path::CheckIn(at, field));
    }
    if let Some(rest) = text.strip_prefix("banks[") {
        let (bank, key) = index(rest)?;
        return match key {
            "chemistry" => Some(Path::Chemistry(bank)),
            "battery_open_circuit" => Some(Path::OpenCircuit(bank)),
            _ => BankField::of_key(key).map(|field| Path::Bank(bank, field)),
        };
    }
    if let Some(rest) = text.strip_prefix("loads[") {
        let (load, key) = index(rest)?;
        return LoadField::of_key(key).map(|LoadField::PowerW| Path::Load(load));
    }
    let (unit, key) = index(text.strip_prefix("units[")?)?;
    if key == "modes" {
        return Some(Path::Modes(unit));
    }
    if key == "cooling.unit_map" {
        return Some(Path::UnitMap(unit));
    }
    if let Some(rest) = key.strip_prefix("cooling.unit_map[") {
        let (row, key) = index(rest)?;
        return MapField::of_key(key).map(|field| Path::MapRow(unit, row, field));
    }
    if let Some(key) = key.strip_prefix("cooling.") {
        return CoolingField::of_key(key).map(|field| Path::Cooling(unit, field));
    }
    if let Some(rest) = key.strip_prefix("modes[") {
        let (mode, key) = index(rest)?;
        return ModeField::of_key(key).map(|field| Path::Mode(unit, mode, field));
    }
    UnitField::of_key(key).map(|field| Path::Unit(unit, field))
}

/// Splits `3].rest` into the number and the rest.
fn index(text: &str) -> Option<(usize, &str)> {
    let (number, rest) = text.split_once(']')?;
    let rest = rest.strip_prefix('.')?;
    // Written one way only, so that text and address answer each other.
    let plain = number == "0" || !number.starts_with(['0', '+']);
    plain
        .then(|| number.parse().ok())?
        .map(|number| (number, rest))
}

impl Serialize for Path {
    fn serialize<S: Serializer>(&self, to: S) -> Result<S::Ok, S::Error> {
        to.collect_str(self)
    }
}

impl<'de> Deserialize<'de> for Path {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        let text = String::deserialize(from)?;
        text.parse().map_err(serde::de::Error::custom)
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for Path {
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Path".into()
    }
    fn json_schema(generator: &mut schemars::SchemaGenerator) -> schemars::Schema {
        String::json_schema(generator)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(text: &str, path: Path) {
        assert_eq!(path.to_string(), text);
        assert_eq!(text.parse(), Ok(path));
    }

    #[test]
    fn text_and_address_answer_each_other() {
        check(
            "banks[0].battery_rated_ah",
            Path::Bank(0, BankField::BatteryRatedAh),
        );
        check(
            "banks[1].measured.measured_wh",
            Path::Bank(1, BankField::MeasuredWh),
        );
        check(
            "units[0].feed.cutoff_v",
            Path::Unit(0, UnitField::InverterCutoffV),
        );
        check(
            "units[2].modes[13].power_w",
            Path::Mode(2, 13, ModeField::PowerW),
        );
        check("units[0].modes", Path::Modes(0));
        check("banks[1].chemistry", Path::Chemistry(1));
        check("day.high_c", Path::Day(DayField::HighC));
        check("units[1].cooling.cop", Path::Cooling(1, CoolingField::Cop));
        check("units[1].cooling.unit_map", Path::UnitMap(1));
        check(
            "units[1].cooling.unit_map[2].draw_w",
            Path::MapRow(1, 2, MapField::DrawW),
        );
        check(
            "supply.arrays[1].tilt_deg",
            Path::Array(1, ArrayField::TiltDeg),
        );
        check("loads[4].power_w", Path::Load(4));
        check(
            "wiring.panel_mm2",
            Path::Wiring(crate::plan::wiring::WiringField::PanelMm2),
        );
        check(
            "wiring.charger.fuse_a",
            Path::Installation(
                crate::plan::wiring::Circuit::Charger,
                crate::plan::wiring::InstallationField::FuseA,
            ),
        );
        check("night.wanted_h", Path::Night(NightField::WantedH));
    }

    #[test]
    fn other_text_is_no_address() {
        for text in [
            "",
            "banks[",
            "banks[-1].name",
            "banks[01].battery_rated_ah",
            "units[0].modes[0]",
            "night",
        ] {
            assert_eq!(text.parse::<Path>(), Err(NoSuchPath), "{text}");
        }
    }
}
