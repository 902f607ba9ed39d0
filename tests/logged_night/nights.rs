//! Nights of a plan's own, logged: each ten minutes of the run as ten rows, the unit on
//! in the first of them for its share.

use till_morning::{
    physics::bench::log::{ClockTimes, Log, Notes, Sample, Sense},
    plan::{
        Figure, Path, Plan,
        cabin::CabinField as C,
        cooling::CoolingField,
        path::{BankField, ModeField},
    },
    simulate::day::{How, Inputs, Record, Scene, cabin_at, extra_on_w, run},
};

/// Numbers as if by chance, the same at every run: SplitMix64.
pub struct Chance(pub u64);

impl Chance {
    fn next(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }

    /// Normal, by Box and Muller.
    pub fn normal(&mut self) -> f64 {
        let (a, b) = (self.next().max(1e-300), self.next());
        (-2.0 * a.ln()).sqrt() * (std::f64::consts::TAU * b).cos()
    }
}

/// What the true night is, over the plan's figures.
#[derive(Clone, Copy, Debug)]
pub struct Truth {
    pub loss: f64,
    pub capacity: f64,
    pub per_watt: f64,
    pub draw: f64,
    pub usable: f64,
    /// What the outdoor thermometer shows too little, K.
    pub apart_k: f64,
    pub start_share: f64,
    /// What the volts are too high by.
    pub level_v: f64,
}

impl Truth {
    pub const AS_PLANNED: Self = Self {
        loss: 1.0,
        capacity: 1.0,
        per_watt: 1.0,
        draw: 1.0,
        usable: 1.0,
        apart_k: 0.0,
        start_share: 0.9,
        level_v: 0.0,
    };
}

/// The demonstration's van without panels from eight in the evening on, its unit free of
/// what starts cost: of that the rows made here show nothing.
pub fn plan() -> Plan {
    let mut plan = Plan::demo();
    plan.night.start_clock_min = 20 * 60;
    plan.night.wanted_h = 11.0;
    plan.day.days_count = Some(1);
    plan.supply.arrays.clear();
    plan.cabin.start_c = Some(Figure::measured(30.0));
    plan.set_number(Path::Bank(0, BankField::StartChargePercent), 90.0);
    plan.set_number(Path::Cooling(0, CoolingField::StartLossMin), 0.0);
    assert_eq!(plan.errors(), Vec::new());
    plan
}

pub fn times(plan: &mut Plan, path: Path, factor: f64) {
    let figure = plan.figure(path).expect("a figure");
    plan.set_figure(path, figure.with(figure.value * factor));
}

/// The plan as it truly is.
pub fn true_plan(plan: &Plan, truth: &Truth) -> Plan {
    let mut plan = plan.clone();
    let cooling = Path::Mode(0, 1, ModeField::CoolingW);
    let held = plan.figure(cooling).expect("its cooling");
    for field in [
        C::ShellWM2K,
        C::GlassWM2K,
        C::AirChangesPerH,
        C::AiredChangesPerH,
    ] {
        times(&mut plan, Path::Cabin(field), truth.loss);
    }
    for field in [C::AirCapacityKjK, C::ShellCapacityKjK] {
        times(&mut plan, Path::Cabin(field), truth.capacity);
    }
    times(&mut plan, Path::Mode(0, 1, ModeField::PowerW), truth.draw);
    let cooling_w = held.value * truth.draw * truth.per_watt;
    plan.set_figure(cooling, held.with(cooling_w));
    times(
        &mut plan,
        Path::Bank(0, BankField::BatteryRatedAh),
        truth.usable,
    );
    plan.set_number(
        Path::Bank(0, BankField::StartChargePercent),
        100.0 * truth.start_share,
    );
    plan
}

/// Scatter of a row, indoors, outdoors and of volts; ten rows make a step.
#[derive(Clone, Copy, Debug)]
pub struct Scatter {
    pub cabin_k: f64,
    pub outdoor_k: f64,
    pub volts: f64,
    /// Of the draw while on, as a share, and of a whole step.
    pub draw: f64,
}

/// A night of the true plan as rows a minute apart.
pub fn logged(
    plan: &Plan,
    truth: &Truth,
    hours: f64,
    scatter: Scatter,
    chance: &mut Chance,
) -> Log {
    let plan = true_plan(plan, truth);
    let scene = Scene::new(&plan).expect("a scene");
    let inputs = Inputs::new(&scene, &plan).expect("inputs");
    let mut record = Record::default();
    let how = How {
        until_h: Some(hours),
        ..How::default()
    };
    run(&scene, &inputs, &how, &mut record).expect("a run");
    let mut samples = Vec::new();
    for pair in record.points.windows(2) {
        let (from, to) = (pair[0], pair[1]);
        let rows = ((to.hours_h - from.hours_h) * 60.0).round() as usize;
        let rig = to.mode.map(|_| 0);
        let cabin = cabin_at(&inputs, to.cabin_c, to.cabin_c);
        let on_w = rig.and_then(|rig| {
            extra_on_w(&scene, &inputs, rig, &cabin, from.outdoor_c, to.terminal_v)
        });
        let on_w = on_w.map(|on_w| on_w * (1.0 + scatter.draw * chance.normal()));
        let mut left = on_w.map_or(0.0, |on_w| rows as f64 * to.unit_w / on_w);
        for row in 0..rows {
            let on = left.clamp(0.0, 1.0);
            left -= on;
            let watts = to.loads_w + on * on_w.unwrap_or(0.0);
            let share = (row as f64 + 0.5) / rows as f64;
            let outdoor_c = from.outdoor_c + share * (to.outdoor_c - from.outdoor_c);
            samples.push(Sample {
                time_s: 3600.0 * from.hours_h + 60.0 * (row as f64 + 0.5) + 72_000.0,
                volts: Some(to.terminal_v + truth.level_v + scatter.volts * chance.normal()),
                amps: Some(watts / to.terminal_v),
                watts: Some(watts),
                celsius: Some(to.cabin_c + scatter.cabin_k * chance.normal()),
                outdoor_c: Some(outdoor_c - truth.apart_k + scatter.outdoor_k * chance.normal()),
                ..Sample::default()
            });
        }
    }
    let notes = Notes {
        clock: ClockTimes::Local,
        ..Notes::default()
    };
    Log::new(samples, None, Sense::Positive, notes).expect("a log")
}
