//! Plans that a person might write: one bank, one unit, one mode.

use proptest::{option, prelude::*, sample::select};
use till_morning::{
    physics::battery::Chemistry,
    plan::{
        Bank, Cable, Draw, Feed, Figure, Load, Measured, Mode, OpenCircuitPoint, Plan, Unit,
        Unknown,
    },
};

fn figure(values: impl Strategy<Value = f64>) -> impl Strategy<Value = Figure> {
    (values, 0..3).prop_map(|(value, from)| match from {
        0 => Figure::label(value),
        1 => Figure::measured(value),
        _ => Figure::guess(value),
    })
}

/// A rising table from empty to full about a battery's nominal volts.
pub fn own_table(nominal_v: f64) -> impl Strategy<Value = Vec<OpenCircuitPoint>> {
    let steps = prop::collection::vec((0.1..10.0, 0.0..1.0), 2..12);
    steps.prop_map(move |steps| {
        let (width, rise): (f64, f64) = steps
            .iter()
            .skip(1)
            .fold((0.0, 0.0), |sum, step| (sum.0 + step.0, sum.1 + step.1));
        let (mut charge, mut up) = (0.0, 0.0);
        let mut rows = Vec::new();
        for (row, step) in steps.iter().enumerate() {
            if row > 0 {
                charge += step.0 / width;
                up += step.1 / rise.max(1e-9);
            }
            rows.push(OpenCircuitPoint {
                // The last sum may be a rounding above 1.
                charge_percent: f64::min(100.0 * charge, 100.0),
                open_circuit_v: nominal_v * (0.9 + 0.2 * up),
            });
        }
        rows
    })
}

prop_compose! {
    fn batteries()(
        chemistry in select(&Chemistry::ALL[..]),
        nominal_v in select(vec![6.0, 12.0, 12.8, 24.0, 25.6, 48.0]),
        rated_ah in 10.0..400.0,
        series in 1u32..4,
        parallel in 1u32..4,
    ) -> Bank {
        Bank {
            series_count: series,
            parallel_count: parallel,
            ..Bank::of(chemistry, nominal_v, rated_ah)
        }
    }
}

prop_compose! {
    fn own_numbers(bank: Bank)(
        health in option::of(figure(50.0..110.0)),
        start in option::of(figure(30.0..100.0)),
        depth in option::of(10.0..100.0),
        cutoff in option::of(0.75..0.98),
        limit in option::of(figure(10.0..300.0)),
        resistance in option::of(figure(0.0..30.0)),
        exponent in option::of(figure(1.0..1.5)),
        always_on in option::of(figure(0.0..5.0)),
        table in own_table(bank.reading().volts),
        has_table in any::<bool>(),
        bank in Just(bank),
    ) -> Bank {
        Bank {
            health_percent: health,
            start_charge_percent: start,
            depth_percent: depth,
            cutoff_v: cutoff.map(|share| Figure::label(share * bank.nominal_v())),
            battery_current_limit_a: limit,
            battery_resistance_mohm: resistance,
            peukert_exponent: exponent,
            parasitic_w: always_on,
            battery_open_circuit: if has_table { table } else { Vec::new() },
            ..bank
        }
    }
}

/// A bank by its label.
pub fn labelled_bank() -> impl Strategy<Value = Bank> {
    batteries().prop_flat_map(own_numbers)
}

prop_compose! {
    pub fn measured_bank()(
        bank in labelled_bank(),
        ah_share in 0.7..1.2,
        mean_share in option::of(0.95..1.06),
        hours in 2.0..30.0,
        has_load in any::<bool>(),
    ) -> Bank {
        let ah = ah_share * bank.battery_rated_ah.value * f64::from(bank.parallel_count);
        let wh = ah * bank.nominal_v();
        Bank {
            measured: Measured {
                measured_ah: Some(Figure::measured(ah)),
                measured_wh: mean_share.map(|share| Figure::measured(share * wh)),
                load_w: has_load.then_some(Figure::measured(wh / hours)),
            },
            ..bank
        }
    }
}

fn bank() -> impl Strategy<Value = Bank> {
    prop_oneof![3 => labelled_bank(), 1 => measured_bank()]
}

fn feed() -> impl Strategy<Value = Feed> {
    let dc_dc = (
        figure(80.0..98.0),
        figure(0.0..8.0),
        option::of(figure(10.0..200.0)),
    );
    let inverter = (
        figure(0.0..30.0),
        figure(0.0..10.0),
        figure(0.0..6.0),
        option::of(figure(200.0..4000.0)),
    );
    prop_oneof![
        2 => Just(Feed::Direct),
        1 => dc_dc.prop_map(|(efficiency_percent, idle_w, limit_a)| Feed::DcDc {
            output_v: 13.0, efficiency_percent, idle_w, limit_a,
        }),
        1 => inverter.prop_map(|(no_load_w, proportional_loss_percent, square_loss_percent_per_kw, limit_w)| {
            Feed::Inverter {
                no_load_w, proportional_loss_percent, square_loss_percent_per_kw, limit_w,
                cutoff_v: None,
            }
        }),
    ]
}

pub fn cable() -> impl Strategy<Value = Cable> {
    (
        option::of(0.0..15.0),
        option::of(1.5..70.0),
        0.0..80.0,
        0.0..5.0,
    )
        .prop_map(
            |(length_m, area_mm2, temperature_c, connections_mohm)| Cable {
                length_m,
                area_mm2,
                temperature_c,
                connections_mohm,
            },
        )
}

prop_compose! {
    fn mode()(
        watts in 5.0..2500.0,
        origin in figure(Just(0.0)),
        is_current in prop::bool::weighted(0.3),
        at_v in select(vec![12.0, 12.8, 24.0, 48.0]),
        duty in option::of(figure(5.0..100.0)),
        standby_share in option::of(0.0..0.2),
    ) -> Mode {
        let draw = if is_current {
            Draw::Current { current_a: origin.with(watts / at_v), measured_at_v: at_v }
        } else {
            Draw::Power { power_w: origin.with(watts) }
        };
        Mode {
            draw,
            duty_percent: duty,
            // Less than a fifth of the on-power: the unit is more when on.
            standby_w: standby_share.map(|share| Figure::label(share * watts)),
            ..Mode::of_power("mode", Figure::label(1.0))
        }
    }
}

prop_compose! {
    /// A whole plan about a bank.
    pub fn plan_on(banks: BoxedStrategy<Bank>)(
        bank in banks,
        mode in mode(),
        feed in feed(),
        cable in cable(),
        cutoff in option::of(0.7..0.97),
        loads in prop::collection::vec(figure(0.0..100.0), 0..3),
    ) -> Plan {
        let unit = Unit {
            feed,
            cable,
            cutoff_v: cutoff.map(|share| Figure::label(share * bank.nominal_v())),
            ..Unit::of(Vec::new())
        };
        let mut plan = Plan::of(bank, mode.clone());
        plan.units = vec![Unit { modes: vec![mode], ..unit }];
        plan.loads = loads.into_iter().map(|power_w| Load { name: "load".into(), power_w }).collect();
        plan.night.unknown = Unknown::Hours;
        plan
    }
}

pub fn sane_plan() -> impl Strategy<Value = Plan> {
    plan_on(bank().boxed())
}

/// A plan whose bank goes by its label alone.
pub fn labelled_plan() -> impl Strategy<Value = Plan> {
    plan_on(labelled_bank().boxed())
}
