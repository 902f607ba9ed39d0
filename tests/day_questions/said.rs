//! What a day says of numbers that it cannot take as they stand: there when it
//! applies, absent when it does not.

use till_morning::{
    answer::{
        day::{DayPoint, day},
        night,
    },
    plan::finding::{Finding, Matter, Severity},
    plan::{Figure, Plan, cooling::MapRow},
};

fn demo() -> Plan {
    let mut plan = Plan::demo();
    plan.day.days_count = Some(1);
    plan
}

fn of_day(plan: &Plan) -> Vec<Finding> {
    assert_eq!(plan.errors(), []);
    let mut findings = day(plan).unwrap().findings;
    // That its starts cost cooling is no number that it cannot take (`starts`).
    findings.retain(|one| !matches!(one.matter, Matter::StartsCost { .. }));
    findings
}

#[track_caller]
fn says(findings: &[Finding], matter: &Matter) {
    let one = findings.iter().find(|one| one.matter == *matter);
    let one = one.unwrap_or_else(|| panic!("{matter:?} is not in {findings:?}"));
    assert_eq!(one.severity, Severity::Caution);
    assert!(one.field.is_some());
}

#[test]
fn the_demo_has_nothing_of_the_kind() {
    assert_eq!(of_day(&demo()), []);
}

#[test]
fn a_standby_above_the_draw_is_said() {
    let mut plan = demo();
    let mode = &mut plan.units[0].modes[0];
    mode.standby_w = Some(Figure::label(3290.0));
    mode.draw = till_morning::plan::Draw::Power {
        power_w: Figure::label(700.0),
    };
    let matter = Matter::StandbyAboveDraw {
        standby_w: 3290.0,
        draw_w: 700.0,
    };
    says(&night(&plan).findings, &matter);
    plan.units[0].modes[0].standby_w = Some(Figure::label(700.0));
    let none = night(&plan).findings;
    assert!(
        !none
            .iter()
            .any(|one| matches!(one.matter, Matter::StandbyAboveDraw { .. })),
        "{none:?}"
    );
}

#[test]
fn a_day_that_the_month_has_not_is_said() {
    let mut plan = demo();
    (plan.day.month, plan.day.day_of_month) = (Some(2), Some(31));
    plan.day.year = Some(2026);
    says(
        &of_day(&plan),
        &Matter::NoSuchDay {
            stated_number: 31,
            taken_number: 28,
        },
    );
    plan.day.year = Some(2028);
    says(
        &of_day(&plan),
        &Matter::NoSuchDay {
            stated_number: 31,
            taken_number: 29,
        },
    );
    plan.day.day_of_month = Some(29);
    assert_eq!(of_day(&plan), []);
}

#[test]
fn more_hours_than_a_week_are_said() {
    let mut plan = demo();
    plan.night.wanted_h = 200.0;
    let matter = Matter::WantedBeyondSpan {
        wanted_h: 200.0,
        span_h: 168.0,
    };
    says(&of_day(&plan), &matter);
    plan.night.wanted_h = 168.0;
    assert_eq!(of_day(&plan), []);
}

#[test]
fn open_volts_below_the_best_ones_are_said() {
    let mut plan = demo();
    plan.supply.arrays[0].panel_best_v = Some(Figure::label(40.0));
    // What was not stated follows.
    assert_eq!(of_day(&plan), []);
    plan.supply.arrays[0].panel_open_v = Some(Figure::label(22.5));
    let matter = Matter::OpenBelowBest {
        open_v: 22.5,
        best_v: 40.0,
    };
    says(&of_day(&plan), &matter);
}

#[test]
fn an_airflow_too_small_for_the_cooling_is_said() {
    let mut plan = demo();
    plan.units[0].cooling.airflow_m3_h = Some(Figure::label(20.0));
    let found = of_day(&plan);
    assert!(
        matches!(
            found[0].matter,
            Matter::NoSuchCoil {
                airflow_m3_h: 20.0,
                ..
            }
        ),
        "{found:?}"
    );
}

/// A unit whose rating no coil gives is answered with its stated sensible share, and
/// cools on: it does not stop over a cabin that is too warm, and no cabin stands still
/// under a moving sun (once it did, when the air had been dried to nothing).
#[test]
fn a_unit_without_a_coil_of_its_rating_cools_on() {
    for sensible_percent in [60.0, 75.0, 90.0] {
        let mut plan = demo();
        plan.day.days_count = Some(1);
        // From the morning on, and warm enough for the unit to run all day.
        plan.night.start_clock_min = 9 * 60;
        plan.night.wanted_h = 12.0;
        plan.cabin.set_point_c = Some(20.0);
        plan.banks[0].parallel_count = 9;
        plan.units[0].cooling.airflow_m3_h = Some(Figure::label(20.0));
        plan.units[0].cooling.sensible_percent = Some(Figure::label(sensible_percent));
        let day = day(&plan).unwrap();
        assert!(
            day.findings
                .iter()
                .any(|finding| matches!(finding.matter, Matter::NoSuchCoil { .. }))
        );
        let due = |point: &&DayPoint| point.mode.is_some() && point.hours_h > 1.0;
        for point in day.trace.iter().filter(due) {
            let is_warm = point.cabin_c > 20.0 + 1.0;
            assert!(!is_warm || point.unit_w > 0.0, "{point:?}");
        }
        let stands = |two: &&[DayPoint]| two[0].cabin_c == two[1].cabin_c;
        assert_eq!(day.trace.windows(2).find(stands), None);
    }
}

/// Readings of draw and capacity are taken when two of them are whole; what is left out
/// is said by its row.
#[test]
fn a_map_that_lacks_a_number_is_said() {
    let reading = |outdoor_c: f64, draw_w: f64| MapRow {
        outdoor_c: Some(outdoor_c),
        entering_wet_bulb_c: Some(18.0),
        draw_w: Some(draw_w),
        cooling_w: Some(1500.0),
    };
    let of = |rows: Vec<MapRow>| {
        let mut plan = Plan::demo();
        plan.units[0].cooling.unit_map = rows;
        let day = day(&plan).unwrap();
        let row = day
            .findings
            .iter()
            .find_map(|finding| match finding.matter {
                Matter::BadMap { row } => Some(row),
                _ => None,
            });
        (row, day.energy.unit_wh)
    };
    let (none, published_wh) = of(Vec::new());
    assert_eq!(none, None);
    assert_eq!(of(vec![reading(25.0, 400.0)]), (Some(1), published_wh));
    let lacking = MapRow {
        draw_w: None,
        ..reading(35.0, 500.0)
    };
    let two = vec![reading(25.0, 400.0), lacking];
    assert_eq!(of(two), (Some(1), published_wh));
    // A draw that rises far more steeply than any published: the hot day takes more.
    let (said, steep_wh) = of(vec![reading(25.0, 300.0), reading(35.0, 700.0)]);
    assert_eq!(said, None);
    assert!((steep_wh / published_wh - 1.0).abs() > 0.01, "{steep_wh}");
}
