//! Plans that nobody would write.
//!
//! Every number of a plan has an address, so a plan of any shape is made first
//! and then each address is written to: with a value from its range, an end of
//! it, or anything at all that a float can hold.

use proptest::{prelude::*, sample::select};
use till_morning::{
    physics::battery::Chemistry,
    plan::{
        Bank, Draw, Feed, Figure, Load, Mode, Night, OpenCircuitPoint, Plan, Provenance, Unit,
        Unknown,
    },
};

/// What is written to an address.
#[derive(Clone, Copy, Debug)]
enum Touch {
    Keep,
    Clear,
    /// A share of the way through the range, by logarithm where it can be.
    Within(f64),
    Least,
    Most,
    Anything(f64),
}

fn any_number() -> impl Strategy<Value = f64> {
    let odd = select(vec![
        f64::NAN,
        f64::INFINITY,
        f64::NEG_INFINITY,
        f64::MAX,
        f64::MIN_POSITIVE,
        -1.0,
        -0.0,
        0.0,
        0.5,
        1e300,
        4_294_967_296.0,
    ]);
    prop_oneof![odd, prop::num::f64::ANY]
}

fn touch(wild: bool) -> BoxedStrategy<Touch> {
    let tame = prop_oneof![
        4 => Just(Touch::Keep),
        2 => Just(Touch::Clear),
        6 => (0.0..=1.0).prop_map(Touch::Within),
        1 => Just(Touch::Least),
        1 => Just(Touch::Most),
    ];
    if !wild {
        return tame.boxed();
    }
    prop_oneof![12 => tame, 1 => any_number().prop_map(Touch::Anything)].boxed()
}

fn origin() -> impl Strategy<Value = Provenance> {
    select(vec![
        Provenance::Label,
        Provenance::Measured,
        Provenance::Guess,
    ])
}

fn any_feed() -> impl Strategy<Value = Feed> {
    prop_oneof![
        Just(Feed::Direct),
        Just(Feed::usual_dc_dc()),
        Just(Feed::usual_inverter())
    ]
}

fn any_mode() -> impl Strategy<Value = Mode> {
    (any::<String>(), any::<bool>()).prop_map(|(name, is_current)| {
        let mode = Mode::of_power(&name, Figure::label(300.0));
        if !is_current {
            return mode;
        }
        let draw = Draw::Current {
            current_a: Figure::label(20.0),
            measured_at_v: 12.8,
        };
        Mode { draw, ..mode }
    })
}

/// Rows of an own table: none, orderly, or anything.
fn rows(wild: bool) -> BoxedStrategy<Vec<OpenCircuitPoint>> {
    let row = |(charge_percent, open_circuit_v)| OpenCircuitPoint {
        charge_percent,
        open_circuit_v,
    };
    let orderly = prop::collection::vec((0.1..20.0, 0.0..5.0), 2..6).prop_map(move |steps| {
        let mut at = (0.0, 8.0);
        let walk = steps.into_iter().map(|step: (f64, f64)| {
            at = (f64::min(at.0 + step.0, 100.0), at.1 + step.1);
            row(at)
        });
        walk.collect::<Vec<_>>()
    });
    if !wild {
        return prop_oneof![3 => Just(Vec::new()), 1 => orderly].boxed();
    }
    let anything = prop::collection::vec((any_number(), any_number()).prop_map(row), 0..6);
    prop_oneof![6 => Just(Vec::new()), 2 => orderly, 1 => anything].boxed()
}

fn bank(wild: bool) -> impl Strategy<Value = Bank> {
    let chemistry = select(&Chemistry::ALL[..]);
    (any::<String>(), chemistry, rows(wild)).prop_map(|(name, chemistry, battery_open_circuit)| {
        Bank {
            name,
            battery_open_circuit,
            ..Bank::of(chemistry, 12.0, 100.0)
        }
    })
}

fn unit(most_modes: usize) -> impl Strategy<Value = Unit> {
    let modes = prop::collection::vec(any_mode(), 0..=most_modes);
    (any::<String>(), any_feed(), modes).prop_map(|(name, feed, modes)| Unit {
        name,
        feed,
        ..Unit::of(modes)
    })
}

fn night() -> impl Strategy<Value = Night> {
    let unknown = select(vec![
        Unknown::Hours,
        Unknown::Bank,
        Unknown::Draw,
        Unknown::Depth,
    ]);
    let index = || prop_oneof![8 => 0usize..2, 1 => any::<u32>().prop_map(|index| index as usize)];
    (unknown, index(), index()).prop_map(|(unknown, asked_unit, asked_mode)| Night {
        unknown,
        asked_unit,
        asked_mode,
        ..Night::default()
    })
}

/// A plan of any shape, with the numbers it was made with.
fn shape(wild: bool) -> impl Strategy<Value = Plan> {
    let counts = if wild { 0..6usize } else { 1..3 };
    let banks = prop::collection::vec(bank(wild), counts.clone());
    let units = prop::collection::vec(unit(2), counts);
    let loads = prop::collection::vec(any::<String>(), 0..3);
    (any::<String>(), banks, units, loads, night()).prop_map(
        |(title, banks, units, loads, night)| {
            let load = |name| Load {
                name,
                power_w: Figure::label(10.0),
            };
            Plan {
                title,
                banks,
                units,
                loads: loads.into_iter().map(load).collect(),
                night,
                ..Plan::demo()
            }
        },
    )
}

/// Any plan: wild ones hold any number, tame ones only what their ranges accept.
pub fn any_plan(wild: bool) -> impl Strategy<Value = Plan> {
    let touches = prop::collection::vec((touch(wild), origin(), prop::option::of(0.0..=90.0)), 97);
    (shape(wild), touches).prop_map(|(mut plan, touches)| {
        for (path, (touch, from, spread_percent)) in
            plan.paths().into_iter().zip(touches.iter().cycle())
        {
            let Some(range) = path.range() else { continue };
            let count = matches!(
                range.unit,
                till_morning::range::Unit::Count | till_morning::range::Unit::ClockMinute
            );
            let value = match *touch {
                Touch::Keep => continue,
                Touch::Clear => {
                    plan.clear(path);
                    continue;
                }
                Touch::Least => range.min,
                Touch::Most => range.max,
                Touch::Within(share) if range.min > 0.0 => {
                    range.min * (range.max / range.min).powf(share)
                }
                Touch::Within(share) => range.min + share * (range.max - range.min),
                Touch::Anything(value) => value,
            };
            let value = if matches!(touch, Touch::Anything(_)) {
                value
            } else {
                let value = value.clamp(range.min, range.max);
                if count { value.round() } else { value }
            };
            plan.set_figure(
                path,
                Figure {
                    value,
                    from: *from,
                    spread_percent: *spread_percent,
                },
            );
        }
        plan
    })
}
