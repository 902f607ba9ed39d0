//! What must hold in the wiring room for any numbers, sane or not.

mod choice;
mod hostile;
mod network;

use proptest::prelude::*;
use till_morning::physics::wiring::{Build, Column, Place, TakeOff};
use till_morning::quantity::{ElectricCurrent, in_amps};

fn column() -> impl Strategy<Value = Column> {
    (0usize..Column::ALL.len()).prop_map(|place| Column::ALL[place])
}

fn place() -> impl Strategy<Value = Place> {
    prop_oneof![Just(Place::Boat), Just(Place::Vehicle), Just(Place::Cabin)]
}

fn build() -> impl Strategy<Value = Build> {
    prop_oneof![
        Just(Build::Stranded),
        Just(Build::Flexible),
        Just(Build::FlexibleTinned)
    ]
}

fn take_off() -> impl Strategy<Value = TakeOff> {
    prop_oneof![
        Just(TakeOff::SameEnd),
        Just(TakeOff::Diagonal),
        Just(TakeOff::BusBar)
    ]
}

fn sum_a(currents: &[ElectricCurrent]) -> f64 {
    currents.iter().map(|current| in_amps(*current)).sum()
}
