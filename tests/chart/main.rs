//! Charts against values and properties from outside the project.

mod axes;
mod labels;
mod paths;
mod whole;

use proptest::prelude::*;

/// Any number a chart might be given, and many it should not.
fn wild() -> impl Strategy<Value = f64> {
    prop_oneof![
        4 => -1e3..1e3,
        2 => any::<f64>(),
        1 => Just(f64::NAN),
        1 => Just(f64::INFINITY),
        1 => Just(f64::NEG_INFINITY),
        1 => Just(0.0),
    ]
}
