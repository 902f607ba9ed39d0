//! Flows: both sides add up, and every band is as wide as its number.

use super::{WIDTHS, check_texts, plans};
use proptest::{collection::vec, prelude::*};
use till_morning::text::Formatter;
use till_morning::{
    answer::day::day,
    plan::Plan,
    view::{
        diagram::flows::{Balance, Drawn, Flow, flows},
        drawing::{energy_balance, heat_balance},
    },
};

/// One scale for all bands; nothing over another.
fn check(balance: &Balance, width: f64) -> Drawn {
    let drawn = flows(balance, width);
    check_texts(&drawn.picture);
    let counted: Vec<_> = drawn.bands.iter().collect();
    let first = counted.first().map(|band| band.width / band.value);
    for band in &counted {
        let scale = band.width / band.value;
        assert!((scale / first.unwrap() - 1.0).abs() < 1e-9, "{}", band.name);
    }
    drawn
}

fn sum(flows: &[Flow]) -> f64 {
    flows.iter().map(|flow| flow.value).sum()
}

fn days() -> Vec<Plan> {
    let mut all = plans::all();
    // A cold night, so that heat goes out; and a bank that starts low, and is charged.
    let mut cold = Plan::demo();
    cold.day.high_c = Some(till_morning::plan::Figure::label(24.0));
    cold.day.low_c = Some(till_morning::plan::Figure::label(9.0));
    cold.banks[0].start_charge_percent = Some(till_morning::plan::Figure::label(30.0));
    all.push(cold);
    for plan in &mut all {
        plan.day.days_count = Some(1);
    }
    all
}

#[test]
fn the_books_add_up_and_so_do_the_bands() {
    for plan in days() {
        let day = day(&plan).unwrap();
        let (energy, heat) = (
            energy_balance(Formatter::ENGLISH, &day),
            heat_balance(Formatter::ENGLISH, &day),
        );
        // What is left out rounds to nothing: a twentieth of a watt-hour a term.
        for (balance, terms) in [(&energy, 6.0), (&heat, 9.0)] {
            let gap = (sum(&balance.ins) - sum(&balance.outs)).abs();
            assert!(gap <= 0.05 * terms + 1e-6, "{gap}");
            for width in WIDTHS {
                let drawn = check(balance, width);
                let side = |is_in: bool| {
                    let spilled = balance.spilled.as_ref().map(|flow| flow.name.as_str());
                    let bands = drawn.bands.iter().filter(move |band| {
                        band.is_in == is_in && Some(band.name.as_str()) != spilled
                    });
                    bands.map(|band| band.width).sum::<f64>()
                };
                assert!((side(true) - side(false)).abs() < 0.1);
            }
        }
        // The answer's own rows, none changed.
        let has = |all: &[Flow], wh: f64| wh < 0.05 || all.iter().any(|flow| flow.value == wh);
        assert!(has(&energy.ins, day.energy.solar_wh) && has(&energy.ins, day.energy.charger_wh));
        assert!(has(&energy.outs, day.energy.unit_wh) && has(&energy.outs, day.energy.loads_wh));
        assert!(has(&energy.outs, day.energy.lost_wh));
        assert!(has(&heat.outs, day.heat.unit_wh) && has(&heat.ins, day.heat.sun_shell_wh));
    }
}

fn flow() -> impl Strategy<Value = Flow> {
    let value = prop_oneof![
        4 => 0.0..1e5f64,
        1 => Just(0.0),
        1 => 1e-6..1e-3f64,
        1 => prop::num::f64::ANY,
    ];
    // No name is "inf", which no coordinate may be.
    let name = "[a-hj-zäöü ]{0,60}";
    (name, value, 0..5usize).prop_map(|(name, value, style)| Flow {
        name,
        value,
        text: "12 345 Wh, 100 %".into(),
        style,
    })
}

proptest! {
    /// Any flows at all, tiny beside huge, with names of sixty letters.
    #[test]
    fn any_flows_are_drawn(
        ins in vec(flow(), 0..9),
        outs in vec(flow(), 0..9),
        spilled in prop::option::of(flow()),
        width in 240.0..760.0f64,
    ) {
        let large = |flow: &Flow| flow.value.is_finite() && flow.value.abs() < 1e9;
        let balance = Balance {
            ins: ins.into_iter().filter(large).collect(),
            outs: outs.into_iter().filter(large).collect(),
            spilled: spilled.filter(large),
            heads: ["comes in", "goes out"].map(String::from),
            sum: "12 345 Wh in all".into(),
        };
        let drawn = check(&balance, width);
        let markup = drawn.picture.markup("");
        prop_assert!(!markup.contains("NaN") && !markup.contains("inf"));
    }
}
