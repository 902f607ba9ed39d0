//! Cooling from the air side, with the budget of its uncertainty.

use crate::{
    physics::air::{
        AirError, AirSide, Airflow, Face, FlowBasis, Humidity, Partial, Point, Reading, Scope,
        Traverse, cooling, partial::Slope, partials, pressure_at_altitude,
    },
    physics::bench::{
        instrument::Kind,
        measured::{Measured, Part, Source},
    },
    plan::finding::Finding,
    plan::{
        AirReading, Figure, Path, Plan,
        claims::{AirBasis, Claimed},
        day::DayField,
    },
    quantity::{
        celsius, cubic_meters_per_hour, cubic_meters_per_second, in_cubic_meters_per_hour,
        in_kilograms_per_second, in_meters_per_second, in_watts, meters, meters_per_second,
        square_meters, watts,
    },
};
use serde::{Deserialize, Serialize};

/// The cooling that was read.
///
/// By the plan's readings at both faces ([`crate::physics::air::cooling`]).
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct AirAnswer {
    /// Humidity was not read at both faces: the water shed is not counted.
    pub sensible_only: bool,
    /// Total, or sensible where nothing more can be known, W.
    pub cooling_w: f64,
    /// Expanded uncertainty, k = 2.
    pub expanded_w: f64,
    /// Of it what cools the air.
    pub sensible_w: f64,
    /// What took water out of it; absent where humidity was not read at both faces.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub latent_w: Option<f64>,
    /// Water shed; absent as that.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub condensate_kg_per_h: Option<f64>,
    /// As it was read: of the face and basis that the plan says.
    pub airflow_m3_h: f64,
    /// Expanded, k = 2.
    pub airflow_expanded_m3_h: f64,
    /// Cooling over the unit's draw; absent where no draw was read.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cop: Option<f64>,
    /// Expanded, k = 2.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub cop_expanded: Option<f64>,
    /// The same ratio as EER.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub btu_per_wh: Option<f64>,
    /// Largest first: the first row is what limits it.
    pub budget: Vec<BudgetRow>,
}

/// One reading's part in the uncertainty of the cooling.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct BudgetRow {
    /// Which reading.
    pub by: AirInputRead,
    /// Standard uncertainty that it makes, in watts of cooling, above 0.
    pub standard_w: f64,
    /// Its share of the squared uncertainty; all rows make 100.
    pub share_percent: f64,
}

/// A reading of the air side.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum AirInputRead {
    Flow,
    FreeArea,
    InletTemperature,
    InletHumidity,
    OutletTemperature,
    OutletHumidity,
    Pressure,
}

/// Why the air side gives no figure.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum AirRefusal {
    /// Both temperatures are needed.
    NoTemperatures,
    /// An airflow, or a vane's speeds with a free area, is needed.
    NoFlow,
    /// A number is outside what can be answered.
    OutOfRange,
    /// Air cannot hold so much water.
    TooWet,
}

/// Usual spread (k = 2) of a free area by tape, per cent: common practice, no source.
const AREA_SPREAD_PERCENT: f64 = 4.0;
/// The same of an airflow read as such.
const FLOW_SPREAD_PERCENT: f64 = 10.0;
/// The same of the unit's draw.
const POWER_SPREAD_PERCENT: f64 = 4.0;
/// What an altitude may be off by, as pascals, one standard deviation: common practice, no
/// source.
const PRESSURE_STANDARD_PA: f64 = 400.0;

/// Works the air side out; `None` where nothing of it was read.
///
/// `errors` are the plan's ([`Plan::errors`]): with one in the air side it is refused.
///
/// # Errors
/// What is missing, or a number that cannot be answered.
pub fn air(plan: &Plan, errors: &[Finding]) -> Option<Result<AirAnswer, AirRefusal>> {
    let read = &plan.air;
    if *read == AirReading::default() {
        return None;
    }
    if errors.iter().any(|e| matches!(e.field, Some(Path::Air(_)))) {
        return Some(Err(AirRefusal::OutOfRange));
    }
    Some(reading(plan).and_then(|reading| worked(read, &reading)))
}

fn refusal(error: AirError) -> AirRefusal {
    match error {
        AirError::AboveSaturation(_) | AirError::CoilTooCold => AirRefusal::TooWet,
        AirError::NoReadings => AirRefusal::NoFlow,
        _ => AirRefusal::OutOfRange,
    }
}

/// The plan's readings as the air room takes them; the altitude is the day's where the
/// readings have none, and sea level without either.
fn reading(plan: &Plan) -> Result<Reading, AirRefusal> {
    let read = &plan.air;
    let altitude = read
        .altitude_m
        .or_else(|| plan.number(Path::Day(DayField::AltitudeM)));
    let pressure = pressure_at_altitude(meters(altitude.unwrap_or(0.0))).map_err(refusal)?;
    let point = |t: Option<Figure>, humidity: Option<Figure>| {
        let dry_bulb = celsius(t.ok_or(AirRefusal::NoTemperatures)?.value);
        let humidity = humidity.map(|percent| Humidity::Relative(percent.value / 100.0));
        Ok(Point { dry_bulb, humidity })
    };
    let face = match read.basis {
        Some(AirBasis::AtInlet) => Face::Inlet,
        _ => Face::Outlet,
    };
    let airflow = match (read.airflow_m3_h, read.free_area_m2) {
        (Some(flow), _) => Airflow::Volume {
            rate: cubic_meters_per_hour(flow.value),
            basis: match read.basis {
                Some(AirBasis::Standard) => FlowBasis::Standard,
                _ => FlowBasis::Actual(face),
            },
        },
        (None, Some(area)) if !read.vane_m_s.is_empty() => Airflow::Vane {
            points: read
                .vane_m_s
                .iter()
                .map(|&v| meters_per_second(v))
                .collect(),
            free_area: square_meters(area.value),
            at: face,
        },
        _ => return Err(AirRefusal::NoFlow),
    };
    Ok(Reading {
        pressure,
        inlet: point(read.inlet_c, read.inlet_humidity_percent)?,
        outlet: point(read.outlet_c, read.outlet_humidity_percent)?,
        airflow,
        power: read.power_w.map(|figure| watts(figure.value)),
    })
}

/// Standard uncertainty of a stated spread (k = 2) in the figure's own unit.
fn stated(figure: Option<Figure>) -> Option<f64> {
    let figure = figure?;
    Some((figure.value * figure.spread_percent? / 200.0).abs())
}

/// Standard uncertainty of each reading, in the unit that its slope is per.
fn standard(read: &AirReading, by: Partial) -> f64 {
    let thermometer = Kind::Thermometer.usual(0.0).standard(0.0);
    let hygrometer = Kind::Hygrometer.usual(0.0).standard(0.0) / 100.0;
    let humidity = |figure: Option<Figure>| stated(figure).map_or(hygrometer, |u| u / 100.0);
    match by {
        Partial::Flow => flow_standard(read),
        Partial::FreeArea => read.free_area_m2.map_or(0.0, |area| {
            stated(Some(area)).unwrap_or(area.value * AREA_SPREAD_PERCENT / 200.0)
        }),
        Partial::InletDryBulb => stated(read.inlet_c).unwrap_or(thermometer),
        Partial::OutletDryBulb => stated(read.outlet_c).unwrap_or(thermometer),
        Partial::InletHumidity => humidity(read.inlet_humidity_percent),
        Partial::OutletHumidity => humidity(read.outlet_humidity_percent),
        Partial::Pressure => PRESSURE_STANDARD_PA,
        Partial::Power => read.power_w.map_or(0.0, |power| {
            stated(Some(power)).unwrap_or(power.value * POWER_SPREAD_PERCENT / 200.0)
        }),
    }
}

/// Of the flow as a share of itself: a volume's spread, or the vane's limits at
/// its mean speed with the scatter of the traverse.
fn flow_standard(read: &AirReading) -> f64 {
    if let Some(flow) = read.airflow_m3_h {
        return stated(Some(flow)).map_or(FLOW_SPREAD_PERCENT / 200.0, |u| u / flow.value);
    }
    let points: Vec<_> = read
        .vane_m_s
        .iter()
        .map(|&v| meters_per_second(v))
        .collect();
    let Ok(traverse) = Traverse::of(&points) else {
        return 0.0;
    };
    let mean = in_meters_per_second(traverse.mean);
    if mean <= 0.0 {
        return 0.0;
    }
    let scatter = traverse.spread_of_mean.map_or(0.0, in_meters_per_second);
    Kind::VaneMeter.usual(0.0).standard(mean).hypot(scatter) / mean
}

/// Uncertainties of the readings go in by their slopes (GUM, JCGM 100:2008, 5.1.2), each as
/// if independent of the others.
fn worked(read: &AirReading, reading: &Reading) -> Result<AirAnswer, AirRefusal> {
    let side = cooling(reading).map_err(refusal)?;
    let slopes = partials(reading).map_err(refusal)?;
    let of_slope = |slope: &Slope| slope.total_w.unwrap_or(slope.sensible_w);
    let budget = budget(read, &slopes, of_slope);
    let root = |of: &dyn Fn(&Slope) -> f64| {
        let part = |slope: &Slope| (of(slope) * standard(read, slope.by)).powi(2);
        2.0 * slopes.iter().map(part).sum::<f64>().sqrt()
    };
    let airflow_m3_h = airflow_m3_h(reading, &side);
    let area = |read: &AirReading| match (read.airflow_m3_h, read.free_area_m2) {
        (None, Some(area)) => standard(read, Partial::FreeArea) / area.value,
        _ => 0.0,
    };
    let of_flow = flow_standard(read).hypot(area(read));
    Ok(AirAnswer {
        sensible_only: side.scope == Scope::SensibleOnly,
        cooling_w: in_watts(side.total.unwrap_or(side.sensible)),
        expanded_w: root(&of_slope),
        sensible_w: in_watts(side.sensible),
        latent_w: side.latent.map(in_watts),
        condensate_kg_per_h: side
            .condensate
            .map(|rate| 3600.0 * in_kilograms_per_second(rate)),
        airflow_m3_h,
        airflow_expanded_m3_h: 2.0 * airflow_m3_h * of_flow,
        cop: side.efficiency.map(|e| e.cop),
        cop_expanded: side
            .efficiency
            .map(|_| root(&|slope: &Slope| slope.cop.unwrap_or(0.0))),
        btu_per_wh: side.efficiency.map(|e| e.eer_btu_wh),
        budget,
    })
}

/// The volume as it was read.
fn airflow_m3_h(reading: &Reading, side: &AirSide) -> f64 {
    let kg_s = in_kilograms_per_second(side.dry_air);
    match &reading.airflow {
        Airflow::Volume { rate, .. } => in_cubic_meters_per_hour(*rate),
        Airflow::Vane { at, .. } => {
            let air = match at {
                Face::Inlet => &side.inlet,
                Face::Outlet => &side.outlet,
            };
            let m3_kg = crate::quantity::in_cubic_meters_per_kilogram(air.specific_volume());
            in_cubic_meters_per_hour(cubic_meters_per_second(kg_s * m3_kg))
        }
    }
}

/// The draw has no row: it says nothing of the cooling, only of the COP.
fn budget(read: &AirReading, slopes: &[Slope], of: impl Fn(&Slope) -> f64) -> Vec<BudgetRow> {
    let rows = slopes.iter().filter_map(|slope| {
        let by = match slope.by {
            Partial::Flow => AirInputRead::Flow,
            Partial::FreeArea => AirInputRead::FreeArea,
            Partial::InletDryBulb => AirInputRead::InletTemperature,
            Partial::InletHumidity => AirInputRead::InletHumidity,
            Partial::OutletDryBulb => AirInputRead::OutletTemperature,
            Partial::OutletHumidity => AirInputRead::OutletHumidity,
            Partial::Pressure => AirInputRead::Pressure,
            Partial::Power => return None,
        };
        let standard_w = (of(slope) * standard(read, slope.by)).abs();
        (standard_w > 0.0).then_some(BudgetRow {
            by,
            standard_w,
            share_percent: 0.0,
        })
    });
    let mut rows: Vec<BudgetRow> = rows.collect();
    let whole: f64 = rows.iter().map(|row| row.standard_w.powi(2)).sum();
    for row in &mut rows {
        row.share_percent = 100.0 * row.standard_w.powi(2) / whole;
    }
    rows.sort_by(|a, b| b.standard_w.total_cmp(&a.standard_w));
    rows
}

impl AirAnswer {
    /// The figure of a claim that the air side can answer.
    /// Airflow, cooling or EER; nothing else, and no EER where no draw was read.
    pub(super) fn figure(&self, about: Claimed) -> Option<Measured> {
        let (value, expanded) = match about {
            Claimed::Airflow => (self.airflow_m3_h, self.airflow_expanded_m3_h),
            Claimed::Cooling => (self.cooling_w, self.expanded_w),
            Claimed::Eer => {
                let (eer, cop) = (self.btu_per_wh?, self.cop?);
                (eer, self.cop_expanded? * eer / cop)
            }
            _ => return None,
        };
        let mut figure = Measured::known(value, expanded / 2.0);
        figure.parts = vec![Part::fixed(Source::Meter, expanded / 2.0)];
        (value.is_finite() && expanded.is_finite()).then_some(figure)
    }
}
