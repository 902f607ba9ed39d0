//! From a plan to the plain numbers of a run: cheap, so that samples and
//! searches can vary a plan and ask again.

use super::{
    bank::{Bank, Charging},
    outdoors::{Air, Weather, ratio_at_dew_point},
    scene::Scene,
    timeline::{Rows, Timeline},
    unit::UnitModel,
};
use crate::{
    physics::battery::{Held, Store},
    physics::cabin::{Activity, Figures, MoistStore, Occupant, Stores},
    physics::solar::{
        self, Group, cell,
        charger::Charger,
        controller::{ArrayVolts, Controller},
        losses::Losses,
        plane::Plane,
    },
    physics::weather::{clear_sky::Sky, day::DayProfile},
    plan::{
        Plan,
        cabin::CabinField as C,
        day::DayField as D,
        path::{BankField as B, Path},
        supply::{
            ArrayField as A, BankPlace, ChargerField as G, ControllerKind, Mounting,
            SupplyField as S,
        },
    },
    quantity::{
        amps, celsius, cubic_meters, joules_per_kelvin, kilograms, square_meters, volts, watts,
        watts_per_square_meter_kelvin,
    },
    simulate::assemble,
    simulate::held_span,
};

/// Everything a run needs, in plain numbers.
///
/// Public, so that studies can vary a figure without its way through a plan: whoever does
/// sees to its range.
#[derive(Clone, Debug, PartialEq)]
pub struct Inputs {
    /// The plan's first bank. The day knows no other.
    pub bank: Bank,
    /// What the bank holds at the start.
    pub start_held: Held,
    /// On the bars but the unit: the loads and the bank's own electronics, W.
    pub bus_w: f64,
    /// Other heat in the cabin, W; none while everything is off.
    pub gains_w: f64,
    /// Everyone aboard while awake, animals included.
    pub awake: Vec<Occupant>,
    /// The same while asleep.
    pub asleep: Vec<Occupant>,
    /// The cabin's heat, closed up.
    pub stores: Stores,
    /// The cabin's water, closed up.
    pub moist: MoistStore,
    /// The same with doors and roof light open: while no mode is planned.
    pub aired: (Stores, MoistStore),
    /// Set point, Celsius: the middle of the band.
    pub set_c: f64,
    /// Whole width of the thermostat's band, K.
    pub band_k: f64,
    /// Cabin at the start, Celsius; absent: as a day without cooling leaves it.
    pub start_c: Option<f64>,
    /// One for each of the timeline's modes, in their order.
    pub rigs: Vec<UnitModel>,
    /// What is on when.
    pub timeline: Timeline,
    /// The weather at the edges of the steps: one more than there are steps.
    pub air: Vec<Air>,
    /// The panels' controller; absent without panels.
    pub controller: Option<Controller>,
    /// In the plan's order.
    pub chargers: Vec<Fuelled>,
    /// Where the bank stands, and with it how warm it is.
    pub bank_place: BankPlace,
    /// Its temperature, Celsius, where the plan states one: it then goes by no place.
    pub bank_c: Option<f64>,
}

/// A charger, and the fuel it burns.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Fuelled {
    /// The charger while cool.
    pub charger: Charger,
    /// Litres there are; absent: no end of it.
    pub fuel_l: Option<f64>,
    /// Litres burnt for a kilowatt-hour that the charger takes; 0 burns none.
    pub fuel_l_per_kwh: f64,
}

impl Inputs {
    /// The inputs of a plan under a scene's sun. The plan may differ from
    /// the scene's in any figure but date, place, clock, wanted hours and days.
    ///
    /// Nothing where the plan has errors that keep it from being run
    /// ([`super::can_be_run`]).
    #[must_use]
    pub fn new(scene: &Scene, plan: &Plan) -> Option<Self> {
        let heavens = &scene.heavens;
        let timeline = Timeline::new(plan, heavens.steps(), heavens.steps_per_hour());
        Self::by(scene, plan, timeline)
    }

    /// The same under another mode plan: rows over a list of the plan's modes
    /// (see [`Timeline::of_rows`]).
    ///
    /// `modes` are (unit, mode) places in the plan, which `rows` name by their place here.
    #[must_use]
    pub fn of_rows(
        scene: &Scene,
        plan: &Plan,
        modes: Vec<(usize, usize)>,
        rows: &Rows,
    ) -> Option<Self> {
        Self::by(scene, plan, line_of_rows(scene, plan, modes, rows))
    }

    /// Puts another mode plan over the same list of modes in the place of theirs: the cheap
    /// way from one mode plan to the next.
    pub fn put_rows(&mut self, scene: &Scene, plan: &Plan, rows: &Rows) {
        let modes = std::mem::take(&mut self.timeline.modes);
        self.timeline = line_of_rows(scene, plan, modes, rows);
    }

    /// Share of what the bank holds at the start, 0 to 1.
    #[must_use]
    pub fn start_share(&self) -> f64 {
        self.bank.store.soc(self.start_held)
    }

    /// The one maker; the timeline is all that differs between its callers.
    fn by(scene: &Scene, plan: &Plan, timeline: Timeline) -> Option<Self> {
        let number = |field| plan.number(Path::Cabin(field));
        let pressure_pa = scene.heavens.pressure_pa();
        let figures = figures(plan, pressure_pa)?;
        let aired = Figures {
            air_changes_per_hour: number(C::AiredChangesPerH)?,
            ..figures
        };
        let bank = bank(plan)?;
        let rigs = timeline
            .modes
            .iter()
            .map(|&(unit, mode)| UnitModel::new(plan, unit, mode, pressure_pa))
            .collect::<Option<Vec<_>>>()?;
        let weather = weather(scene, plan)?;
        let array = array(plan);
        let loads_w: f64 = plan.loads.iter().map(|load| load.power_w.value).sum();
        let (from, _) = held_span(plan, 0)?;
        Some(Self {
            start_held: bank.store.rested(from),
            bus_w: loads_w + bank.pack.parasitic_w,
            gains_w: number(C::GainsW)?,
            awake: aboard(plan, Activity::SeatedLightWork),
            asleep: aboard(plan, Activity::Asleep),
            stores: figures.stores().ok()?,
            moist: figures.moist_store().ok()?,
            aired: (aired.stores().ok()?, aired.moist_store().ok()?),
            set_c: number(C::SetPointC)?,
            band_k: number(C::DeadBandK)?,
            start_c: number(C::StartC),
            rigs,
            timeline,
            air: scene.heavens.air(&weather, array.as_ref(), &figures),
            controller: array.as_ref().and_then(|_| controller(plan)),
            chargers: chargers(plan, &bank)?,
            bank_place: plan.supply.bank_place.unwrap_or(BankPlace::Cabin),
            bank_c: plan.number(Path::Supply(S::BankC)),
            bank,
        })
    }
}

fn line_of_rows(scene: &Scene, plan: &Plan, modes: Vec<(usize, usize)>, rows: &Rows) -> Timeline {
    let pace = (scene.heavens.steps(), scene.heavens.steps_per_hour());
    Timeline::of_rows(plan, pace, modes, rows)
}

/// The plan's first bank.
fn bank(plan: &Plan) -> Option<Bank> {
    let pack = assemble::pack(plan, 0)?.pack;
    let the_bank = plan.banks.first()?;
    let (_, to) = held_span(plan, 0)?;
    let cells = f64::from(the_bank.reading().cells) * f64::from(the_bank.series_count);
    let charging = Charging::usual(the_bank.chemistry, cells);
    let rated_h = plan.number(Path::Bank(0, B::RatedHoursH))?;
    Some(Bank {
        store: Store::new(&pack, rated_h, charging.kept),
        chemistry: the_bank.chemistry,
        floor_share: to,
        pack,
        charging,
    })
}

/// Everyone aboard at something. Part of a person is nobody.
fn aboard(plan: &Plan, doing: Activity) -> Vec<Occupant> {
    let count = |field| plan.number(Path::Cabin(field)).unwrap_or(0.0) as usize;
    let person = Occupant::Person { doing };
    let kg = plan.number(Path::Cabin(C::AnimalKg)).unwrap_or(0.0);
    let animal = Occupant::Animal {
        mass: kilograms(kg),
    };
    let mut aboard = vec![person; count(C::PeopleCount)];
    aboard.extend(vec![animal; count(C::AnimalsCount)]);
    aboard
}

/// The cabin's figures, stated ones in the place of derived ones.
///
/// `pressure_pa` sets the density of the cabin's air. Nothing where a figure is neither
/// stated nor derived.
#[must_use]
pub fn figures(plan: &Plan, pressure_pa: f64) -> Option<Figures> {
    let number = |field| plan.number(Path::Cabin(field));
    Some(Figures {
        floor: square_meters(number(C::FloorM2)?),
        volume: cubic_meters(number(C::VolumeM3)?),
        roof: square_meters(number(C::RoofM2)?),
        walls: square_meters(number(C::WallsM2)?),
        wall_glass: square_meters(number(C::WallGlassM2)?),
        roof_glass: square_meters(number(C::RoofGlassM2)?),
        lit_walls: number(C::LitWallsPercent)? / 100.0,
        shell_coefficient: watts_per_square_meter_kelvin(number(C::ShellWM2K)?),
        glass_coefficient: watts_per_square_meter_kelvin(number(C::GlassWM2K)?),
        glass_gain: number(C::GlassGainPercent)? / 100.0,
        absorptance: number(C::AbsorptancePercent)? / 100.0,
        shade: number(C::ShadePercent)? / 100.0,
        air_capacity: joules_per_kelvin(1000.0 * number(C::AirCapacityKjK)?),
        shell_capacity: joules_per_kelvin(1000.0 * number(C::ShellCapacityKjK)?),
        air_changes_per_hour: number(C::AirChangesPerH)?,
        air_density_kg_m3: 1.2 * pressure_pa / 101_325.0,
        moisture_buffer: number(C::MoistureBuffer)?,
    })
}

/// The weather's figures. A low above the high is taken the other way round.
fn weather(scene: &Scene, plan: &Plan) -> Option<Weather> {
    let number = |field| plan.number(Path::Day(field));
    let (a, b) = (number(D::HighC)?, number(D::LowC)?);
    let (high_c, low_c) = (a.max(b), a.min(b));
    let pressure_pa = scene.heavens.pressure_pa();
    let stated = plan.day.dew_point_c.is_some();
    let dew_point_c = match number(D::HumidityPercent) {
        Some(percent) if !stated => dew_of_humidity(pressure_pa, high_c, percent)?,
        _ => number(D::DewPointC)?,
    };
    let sky = Sky::new(number(D::LinkeTurbidity)?, number(D::CloudPercent)? / 100.0);
    Some(Weather {
        profile: DayProfile::new(celsius(high_c), celsius(low_c), None).ok()?,
        warmer_k: high_c - scene.high_c,
        dew_point_c,
        dew_ratio: ratio_at_dew_point(pressure_pa, dew_point_c),
        sky: sky.ok()?,
        albedo: number(D::GroundAlbedoPercent)? / 100.0,
        wind_m_s: number(D::WindMS)?,
    })
}

/// The dew point of air at the day's high with that relative humidity: humidity is stated
/// for the warmest hour, and the dew point stays through the days.
fn dew_of_humidity(pressure_pa: f64, air_c: f64, percent: f64) -> Option<f64> {
    use crate::physics::air::{Humidity, MoistAir};
    let air = MoistAir::new(
        crate::quantity::pascals(pressure_pa),
        celsius(air_c),
        Humidity::Relative(percent / 100.0),
    );
    Some(crate::quantity::in_celsius(air.ok()?.dew_point().ok()?))
}

/// All panels, if there are any.
fn array(plan: &Plan) -> Option<solar::Array> {
    let supply = &plan.supply;
    let groups = (0..supply.arrays.len())
        .map(|at| {
            let number = |field| plan.number(Path::Array(at, field));
            let mounting = match supply.arrays[at].mounting {
                Some(Mounting::StoodOff) => cell::Mounting::StoodOff,
                _ => cell::Mounting::FlatOnRoof,
            };
            let plane = Plane::new(number(A::TiltDeg)?, number(A::AzimuthDeg)?).ok()?;
            let shaded = number(A::ShadingPercent)? / 100.0;
            Group::new(watts(number(A::RatedW)?), plane, mounting, shaded).ok()
        })
        .collect::<Option<Vec<_>>>()?;
    if groups.is_empty() {
        return None;
    }
    let number = |field| plan.number(Path::Supply(field));
    // One share for all that is lost: shade and heat are counted elsewhere.
    let losses = Losses {
        dust: number(S::ArrayLossPercent)? / 100.0,
        ..Losses::NONE
    };
    let albedo = plan.number(Path::Day(D::GroundAlbedoPercent))? / 100.0;
    let per_kelvin = number(S::PanelPowerPercentPerK)? / 100.0;
    solar::Array::new(groups, per_kelvin, &losses, albedo).ok()
}

/// Panels on a controller without tracking work at the bank's volts, so their own volts
/// are asked for there and nowhere else.
fn controller(plan: &Plan) -> Option<Controller> {
    let number = |field| plan.number(Path::Supply(field));
    let limit = number(S::ControllerLimitA).map(amps);
    if plan.supply.controller != Some(ControllerKind::Direct) {
        let efficiency = number(S::ControllerEfficiencyPercent)? / 100.0;
        return Controller::tracking(efficiency, limit).ok();
    }
    // All groups are on one controller: the first one's volts stand for all.
    let first = |field| plan.number(Path::Array(0, field));
    let in_series = first(A::PanelsSeriesCount)?;
    let best_v = first(A::PanelBestV)? * in_series;
    // Open volts below the best ones are a finding; the best ones are then both.
    let open_v = (first(A::PanelOpenV)? * in_series).max(best_v);
    let per_kelvin = number(S::PanelVoltsPercentPerK)? / 100.0;
    let curve = ArrayVolts::new(volts(best_v), volts(open_v), per_kelvin).ok()?;
    Controller::direct(curve, limit).ok()
}

/// In the plan's order; nothing where one lacks a figure.
fn chargers(plan: &Plan, bank: &Bank) -> Option<Vec<Fuelled>> {
    let end_a = bank.charging.end_share * bank.store.cells_ah;
    (0..plan.supply.chargers.len())
        .map(|at| {
            let number = |field| plan.number(Path::Charger(at, field));
            Some(Fuelled {
                charger: assemble::charger(plan, at, bank.charging.hold_v, end_a)?,
                fuel_l: number(G::FuelL),
                fuel_l_per_kwh: number(G::FuelLPerKwh).unwrap_or(0.0),
            })
        })
        .collect()
}
