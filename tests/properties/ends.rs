//! Each accepted number is used as it is, up to both ends of its range: nothing is
//! cut short in silence on its way into a day.

use till_morning::{
    plan::{
        Feed, Figure, Path, Plan, cooling::CoolingField as K, day::DayField as D,
        supply::ControllerKind,
    },
    range::Unit,
    simulate::day::{Inputs, Scene},
};

/// The demo with its panels tied to the bank, or its unit behind a converter.
fn plans() -> Vec<Plan> {
    let mut direct = Plan::demo();
    direct.supply.controller = Some(ControllerKind::Direct);
    // With neither stated, each of Vmp and Voc follows the other (a Voc below Vmp is
    // said: `OpenBelowBest`).
    let array = &mut direct.supply.arrays[0];
    array.panels_series_count = Some(10);
    (array.panel_best_v, array.panel_open_v) = (None, None);
    let mut dc_dc = Plan::demo();
    dc_dc.units[0].feed = Feed::DcDc {
        output_v: 12.0,
        efficiency_percent: Figure::label(92.0),
        idle_w: Figure::label(2.0),
        limit_a: None,
    };
    vec![Plan::demo(), direct, dc_dc]
}

/// What is cut for a reason that a finding or the field's own words give.
fn is_said(path: Path) -> bool {
    matches!(
        path,
        // The days answered are at most a week: `WantedBeyondSpan`.
        Path::Night(_)
            // Days of the month: `NoSuchDay`. Not of the inputs, but of the scene.
            | Path::Day(D::Year | D::Month | D::DayOfMonth | D::DaysCount | D::UtcOffsetMin)
            | Path::Day(D::LatitudeDeg | D::LongitudeDeg | D::AltitudeM)
            // The higher of the two is the high: `LowAboveHigh`.
            | Path::Day(D::HighC | D::LowC)
            // Too little air for the cooling: `NoSuchCoil`.
            | Path::Cooling(_, K::AirflowM3H)
    )
}

fn inputs(scene: &Scene, plan: &Plan, path: Path, value: f64) -> Option<Inputs> {
    let mut plan = plan.clone();
    plan.set_number(path, value);
    Inputs::new(scene, &plan)
}

#[test]
fn no_number_is_cut_short_in_silence() {
    let mut cut = Vec::new();
    for plan in plans() {
        assert_eq!(plan.errors(), []);
        let scene = Scene::new(&plan).unwrap();
        for path in plan.paths() {
            let (Some(range), Some(usual)) = (path.range(), plan.number(path)) else {
                continue;
            };
            // A mode that is not planned gives others their defaults and no more.
            let is_planned = |mode| mode == plan.night.asked_mode;
            if matches!(path, Path::Mode(_, mode, _) if !is_planned(mode)) {
                continue;
            }
            if is_said(path) || range.unit == Unit::ClockMinute {
                continue;
            }
            let step = match range.unit {
                Unit::Count => 1.0,
                _ => 0.01 * (range.max - range.min),
            };
            let at = |value| inputs(&scene, &plan, path, value);
            let inside = (usual + 0.25 * (range.max - usual)).round();
            let matters = at(usual) != at(inside);
            if !matters {
                continue;
            }
            for (end, beside) in [(range.min, range.min + step), (range.max, range.max - step)] {
                match (at(end), at(beside)) {
                    (Some(end), Some(beside)) if end != beside => {}
                    (at_end, _) => cut.push((path.to_string(), end, at_end.is_some())),
                }
            }
        }
    }
    assert_eq!(cut, []);
}
