//! What is typed, taken, echoed and undone.

use super::*;
use crate::plan::{
    Bank, CheckIn, Claim, Feed, Load, Mode, Provenance, Show,
    claims::{AirField, ClaimField, Claimed},
    day::CheckInField,
    path::ModeField,
};

const AH: Path = Path::Bank(0, B::BatteryRatedAh);
const DEPTH: Path = Path::Bank(0, B::DepthPercent);

fn typed(path: Path, text: &str) -> Draft {
    let mut draft = Draft::of(Plan::demo());
    draft.type_text(path, text);
    draft
}

#[test]
fn a_good_text_goes_into_the_plan_and_stays_as_typed() {
    let mut draft = typed(AH, "99,5");
    assert_eq!(draft.plan.banks[0].battery_rated_ah.value, 99.5);
    assert_eq!(draft.text(AH), "99,5");
    draft.settle(AH);
    assert_eq!(draft.text(AH), "99.5");
}

#[test]
fn a_bad_text_stays_and_the_number_before_it_too() {
    for bad in ["plenty", "0", "99999999", "12 V"] {
        let mut draft = typed(AH, bad);
        assert!(draft.trouble(AH).is_some(), "{bad}");
        draft.settle(AH);
        assert_eq!(draft.text(AH), bad);
        assert_eq!(draft.plan, Plan::demo());
        assert_eq!(draft.troubled(), [AH]);
    }
}

#[test]
fn an_emptied_optional_number_takes_its_default() {
    let mut draft = typed(DEPTH, "");
    assert_eq!(draft.trouble(DEPTH), None);
    assert_eq!(draft.plan.banks[0].depth_percent, None);
    draft.settle(DEPTH);
    assert_eq!(draft.text(DEPTH), "");
}

#[test]
fn strings_and_watt_hours_are_understood_and_echoed() {
    let draft = typed(AH, "3x100");
    assert_eq!(draft.plan.banks[0].parallel_count, 3);
    assert_eq!(draft.plan.banks[0].battery_rated_ah.value, 100.0);
    assert_eq!(
        draft.echo(AH),
        Some(Echo::Strings {
            count: 3,
            each: 100.0,
            unit: Unit::AmpHour
        })
    );
    let draft = typed(AH, "2560 Wh");
    assert_eq!(draft.plan.banks[0].battery_rated_ah.value, 100.0);
    assert_eq!(
        draft.echo(AH),
        Some(Echo::Value {
            value: 100.0,
            unit: Unit::AmpHour
        })
    );
}

#[test]
fn texts_follow_their_rows() {
    let power = |mode| Path::Mode(0, mode, ModeField::PowerW);
    let mut draft = typed(power(2), "hush");
    draft.type_text(power(0), "loud");
    draft.remove(Path::Modes(0), 0);
    assert_eq!(draft.text(power(1)), "hush");
    assert_eq!(draft.troubled(), [power(1)]);
    assert_eq!(draft.plan.units[0].modes.len(), 2);
}

fn draw(draft: &Draft) -> Draw {
    draft.plan.units[0].modes[0].draw
}

const DRAW: Path = Path::Mode(0, 0, ModeField::PowerW);
const DRAW_A: Path = Path::Mode(0, 0, ModeField::CurrentA);

/// The demo's bank is two strings of 25.6 V; its first mode draws 690 W, measured.
#[test]
fn amps_in_a_draw_are_amps_at_the_banks_voltage() {
    for text in ["45 A", "45amps", "45a", "45 A at 25.6 V"] {
        let mut draft = typed(DRAW, text);
        let amps = Draw::Current {
            current_a: Figure::measured(45.0),
            measured_at_v: 25.6,
        };
        assert_eq!(draw(&draft), amps, "{text}");
        assert_eq!(draft.text(DRAW), text);
        assert_eq!(draft.unit_beside(DRAW), None, "the text has its own");
        let echo = Some(Echo::Amps {
            amps: 45.0,
            half: 0.0,
            at_v: 25.6,
        });
        assert_eq!(draft.echo(DRAW), echo, "{text}");
        draft.settle(DRAW);
        // Shown back as amps, in either field, with their voltage.
        for path in [DRAW, DRAW_A] {
            assert_eq!(draft.text(path), "45", "{text}");
            assert_eq!(draft.unit_beside(path), Some(Unit::Amp), "{text}");
            assert_eq!(draft.echo(path), echo, "{text}");
        }
    }
}

#[test]
fn amps_are_taken_at_the_voltage_that_is_said() {
    let draft = typed(DRAW, "45 A at 12 V");
    assert_eq!(
        draw(&draft),
        Draw::Current {
            current_a: Figure::measured(45.0),
            measured_at_v: 12.0
        }
    );
    // On this 25.6 V bank they do not carry over: the same power is taken.
    let answer = crate::answer::night(&draft.plan);
    let other = |finding: &crate::plan::finding::Finding| matches!(finding.matter, crate::plan::finding::Matter::AmpsAtOtherVoltage { taken_w, .. } if taken_w == 540.0);
    assert!(answer.findings.iter().any(other));
    for bad in [
        "45 A at",
        "45 A at 5000 V",
        "45 W at 12 V",
        "45 at 12 V",
        "45 Ah",
        "99999 A",
    ] {
        let draft = typed(DRAW, bad);
        assert!(draft.trouble(DRAW).is_some(), "{bad}");
        assert_eq!(draft.plan, Plan::demo(), "{bad}");
    }
    let mut plan = Plan::demo();
    plan.units[0].feed = Feed::DcDc {
        output_v: 12.0,
        efficiency_percent: Figure::label(90.0),
        idle_w: Figure::label(1.0),
        limit_a: None,
    };
    let mut draft = Draft::of(plan);
    draft.type_text(DRAW, "45 A");
    assert!(matches!(draw(&draft), Draw::Current { measured_at_v, .. } if measured_at_v == 12.0));
}

/// A rating plate's 2.2 A at 230 V are 506 VA, by hand; at the battery's volts they would
/// be 28 W and a night of two days.
#[test]
fn amps_on_ac_are_taken_at_the_mains_voltage() {
    let taken_w = |draft: &Draft| match draw(draft) {
        Draw::Current {
            current_a,
            measured_at_v,
        } => current_a.value * measured_at_v,
        Draw::Power { power_w } => power_w.value,
    };
    let mut before = Draft::of(Plan::demo());
    before.feed(0, Feed::usual_inverter());
    before.type_text(DRAW, "2.2 A");
    let mut after = typed(DRAW, "2.2 A");
    after.feed(0, Feed::usual_inverter());
    for draft in [&before, &after] {
        assert!((taken_w(draft) - 506.0).abs() < 1e-9, "{}", taken_w(draft));
    }
    let mut us = Draft::of(Plan {
        show: Show::US,
        ..Plan::demo()
    });
    us.feed(0, Feed::usual_inverter());
    us.type_text(DRAW, "2.2 A");
    assert!((taken_w(&us) - 264.0).abs() < 1e-9);
    // What somebody said stays.
    let mut said = typed(DRAW, "2.2 A at 110 V");
    said.feed(0, Feed::usual_inverter());
    assert!((taken_w(&said) - 242.0).abs() < 1e-9);
}

#[test]
fn the_same_field_undoes_amps() {
    let mut draft = Draft::of(Plan::demo());
    for text in [
        "4", "45", "45 ", "45 A", "45 Am", "45 Amp", "45 ", "45", "690",
    ] {
        draft.type_text(DRAW, text);
    }
    assert_eq!(draft.plan, Plan::demo());
    assert_eq!(draft.unit_beside(DRAW), Some(Unit::Watt));
    // Settled as amps, a bare number is amps; watts are watts again.
    draft.type_text(DRAW, "45 A");
    draft.settle(DRAW);
    draft.type_text(DRAW, "40");
    assert!(matches!(draw(&draft), Draw::Current { current_a, .. } if current_a.value == 40.0));
    draft.type_text(DRAW, "690 W");
    draft.settle(DRAW);
    assert_eq!(draft.plan, Plan::demo());
}

#[test]
fn amps_of_a_load_are_watts_with_an_echo() {
    let mut plan = Plan::demo();
    plan.loads = vec![Load {
        name: "Fridge".into(),
        power_w: Figure::guess(20.0),
    }];
    let mut draft = Draft::of(plan);
    for (path, text, watts, at_v) in [
        (Path::Load(0), "3 A", 76.8, 25.6),
        (Path::Load(0), "3 A at 12 V", 36.0, 12.0),
        (Path::Mode(0, 0, ModeField::StandbyW), "0.5 A", 12.8, 25.6),
    ] {
        draft.type_text(path, text);
        let taken = draft.plan.stated(path).unwrap();
        assert!((taken.value - watts).abs() < 1e-9, "{text}");
        assert_eq!(taken.from, Provenance::Label, "{text}");
        match draft.echo(path) {
            Some(Echo::Watts { at_v: v, .. }) => assert_eq!(v, at_v),
            other => panic!("{text}: {other:?}"),
        }
    }
}

#[test]
fn a_range_is_a_middle_with_its_spread() {
    let mut draft = typed(DRAW, "230-250");
    let half = 100.0 * 10.0 / 240.0;
    let Draw::Power { power_w } = draw(&draft) else {
        panic!("watts");
    };
    assert_eq!(power_w.value, 240.0);
    assert!((power_w.spread_percent.unwrap() - half).abs() < 1e-9);
    let between = Echo::Between {
        value: 240.0,
        half: 10.0,
        unit: Unit::Watt,
    };
    assert_eq!(draft.echo(DRAW), Some(between));
    // Another number is not as far off as that one was.
    draft.settle(DRAW);
    draft.type_text(DRAW, "300");
    assert!(matches!(draw(&draft), Draw::Power { power_w } if power_w.spread_percent.is_none()));
    // In amps too; and where a number has no spread, no range is taken.
    assert!(matches!(
        draw(&typed(DRAW, "40-50 A")),
        Draw::Current { current_a, .. } if current_a.value == 45.0 && current_a.spread_percent.is_some()
    ));
    assert!(typed(DEPTH, "70-80").trouble(DEPTH).is_some());
    assert!(
        typed(DRAW, "1-1000").trouble(DRAW).is_some(),
        "wider than a spread may be"
    );
}

#[test]
fn a_product_is_undone_by_the_field_that_typed_it() {
    let mut draft = Draft::of(Plan::demo());
    let strings = |draft: &Draft| draft.plan.banks[0].parallel_count;
    for (text, count, ah) in [("100", 2, 100.0), ("3x100", 3, 100.0), ("100", 2, 100.0)] {
        draft.type_text(AH, text);
        assert_eq!(strings(&draft), count, "{text}");
        assert_eq!(draft.plan.banks[0].battery_rated_ah.value, ah, "{text}");
    }
    // Of watt-hours too.
    draft.type_text(AH, "3x2560 Wh");
    assert_eq!(
        (strings(&draft), draft.plan.banks[0].battery_rated_ah.value),
        (3, 100.0)
    );
    draft.type_text(AH, "105");
    assert_eq!(draft.plan, Plan::demo());
}

#[test]
fn what_has_no_field_is_not_changed_by_a_text() {
    let mut plan = Plan::of(
        Bank::of(crate::physics::battery::Chemistry::Lfp, 12.8, 100.0),
        Mode::of_power("Hold", Figure::label(200.0)),
    );
    plan.reader = Some(crate::plan::Reader::default());
    let author = plan.published();
    let mut draft = Draft::of_open_fields(author.clone());
    let hours = |draft: &Draft| crate::answer::night(&draft.plan).runs[0].hours_h.likely;
    let first = hours(&draft);
    for (text, times) in [("100", 1.0), ("2x100", 2.0), ("100", 1.0)] {
        draft.type_text(AH, text);
        draft.settle(AH);
        draft.edit(|plan| plan.follow(&author));
        // A larger bank sags less: a little more than twice as long.
        let ratio = hours(&draft) / first;
        assert!((times..1.1 * times).contains(&ratio), "{text}: {ratio}");
        assert_eq!(draft.plan.banks[0].parallel_count, 1, "{text}");
    }
    assert_eq!(draft.plan.banks, author.banks);
    // With the count on the page it is the count that changes.
    plan.reader = Some(crate::plan::Reader {
        open: vec![AH, Path::Bank(0, B::ParallelCount)],
        ..Default::default()
    });
    let mut draft = Draft::of_open_fields(plan.published());
    draft.type_text(AH, "2x100");
    assert_eq!(draft.plan.banks[0].parallel_count, 2);
}

#[test]
fn a_typed_number_is_no_guess() {
    let mut draft = Draft::of(Plan::fresh());
    let from = draft.plan.banks[0].battery_rated_ah.from;
    assert_eq!(from, Provenance::Assumed);
    for text in ["120", "100"] {
        draft.type_text(AH, text);
        assert_eq!(
            draft.plan.banks[0].battery_rated_ah.from,
            Provenance::Label,
            "{text}"
        );
    }
    draft.type_text(DRAW, "310");
    assert!(matches!(draw(&draft), Draw::Power { power_w } if power_w.from == Provenance::Label));
    // What was measured stays measured.
    let draft = typed(DRAW, "700");
    assert!(
        matches!(draw(&draft), Draw::Power { power_w } if power_w.from == Provenance::Measured)
    );
}

#[test]
fn what_is_entered_as_measured_is_measured() {
    let mut plan = Plan::demo();
    plan.claims = vec![Claim::of(Claimed::Charge)];
    plan.check_ins = vec![CheckIn::default()];
    let mut draft = Draft::of(plan);
    for path in [
        Path::Bank(0, B::MeasuredAh),
        Path::Bank(0, B::MeasuredWh),
        Path::Bank(0, B::MeasuredLoadW),
        Path::Claim(0, ClaimField::MeasuredAh),
        Path::Air(AirField::InletC),
        Path::CheckIn(0, CheckInField::ChargePercent),
    ] {
        for text in ["50", "51"] {
            draft.type_text(path, text);
            assert_eq!(
                draft.plan.stated(path).unwrap().from,
                Provenance::Measured,
                "{path}"
            );
        }
    }
    draft.type_text(Path::Bank(0, B::HealthPercent), "95");
    let health = draft.plan.stated(Path::Bank(0, B::HealthPercent)).unwrap();
    assert_eq!(health.from, Provenance::Label);
}

#[test]
fn a_spread_of_its_own_stays_with_its_number() {
    let mut plan = Plan::demo();
    let logged = Figure {
        spread_percent: Some(1.5),
        ..Figure::measured(150.0)
    };
    let path = Path::Bank(0, B::MeasuredAh);
    plan.set_figure(path, logged);
    let mut draft = Draft::of(plan);
    draft.type_text(path, "15");
    assert_eq!(draft.plan.stated(path), Some(Figure::measured(15.0)));
    draft.type_text(path, "150");
    assert_eq!(draft.plan.stated(path), Some(logged));
}

#[test]
fn defaults_are_in_the_units_shown() {
    let mut plan = Plan::demo();
    let path = Path::Cooling(0, crate::plan::cooling::CoolingField::AirflowM3H);
    let metric: f64 = Draft::of(plan.clone()).default_text(path).parse().unwrap();
    plan.show = Show::US;
    let cfm: f64 = Draft::of(plan).default_text(path).parse().unwrap();
    assert!((metric / cfm - 1.699).abs() < 0.01, "{metric} and {cfm}");
}

#[test]
fn a_meters_limits_are_in_the_unit_of_what_it_read() {
    let mut plan = Plan::demo();
    plan.show = Show::US;
    plan.claims = vec![Claim::of(Claimed::Airflow), Claim::of(Claimed::Temperature)];
    let mut draft = Draft::of(plan);
    let full = |at| Path::Claim(at, ClaimField::FullScaleNumber);
    draft.type_text(full(0), "1000");
    draft.type_text(full(1), "180");
    let taken = [0, 1].map(|at| draft.plan.stated(full(at)).unwrap().value);
    assert!((taken[0] - 1699.01).abs() < 0.01 && (taken[1] - 100.0).abs() < 1e-9);
    draft.settle(full(0));
    assert_eq!(draft.text(full(0)), "1000");
    assert_eq!(draft.unit_beside(full(0)), Some(Unit::CubicMeterPerHour));
}
