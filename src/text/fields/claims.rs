//! Names of the fifth question's fields.

use super::{Words, plain};
use crate::plan::claims::{AirField as A, ClaimField as C, PriceField as P};
use crate::text::Formatter;

pub(super) fn claim(_f: Formatter, field: C) -> Words {
    match field {
        C::ClaimedAh
        | C::ClaimedWh
        | C::ClaimedW
        | C::ClaimedM3H
        | C::ClaimedC
        | C::ClaimedCoolingW
        | C::ClaimedBtuPerWh => plain("Claimed"),
        C::ClaimedMostAh
        | C::ClaimedMostWh
        | C::ClaimedMostW
        | C::ClaimedMostM3H
        | C::ClaimedMostC
        | C::ClaimedMostCoolingW
        | C::ClaimedMostBtuPerWh => plain("Claimed, up to"),
        C::MeasuredAh
        | C::MeasuredWh
        | C::MeasuredW
        | C::MeasuredM3H
        | C::MeasuredC
        | C::MeasuredCoolingW
        | C::MeasuredBtuPerWh => plain("Measured"),
        C::TolerancePercent => plain("Tolerance that the claim states"),
        C::OfReadingPercent => plain("Limit, of the reading"),
        C::OfFullScalePercent => plain("Limit, of full scale"),
        C::FullScaleNumber => plain("Full scale of the meter"),
        C::CountsNumber => plain("Limit, counts of the last digit"),
        C::OneCountNumber => plain("One count is"),
        C::MeasuredMin => plain("Measured for"),
        C::RateA => plain("Mean current of the run"),
        C::TestC => plain("Temperature in the test"),
        C::RatedC => plain("Temperature of the claim"),
        C::GrilleM2 => plain("Free area of the grille"),
    }
}

pub(super) fn air(_f: Formatter, field: A) -> Words {
    match field {
        A::AltitudeM => plain("Height above the sea"),
        A::InletC => plain("Air going in"),
        A::InletHumidityPercent => plain("Humidity going in"),
        A::OutletC => plain("Air coming out"),
        A::OutletHumidityPercent => plain("Humidity coming out"),
        A::AirflowM3H => plain("Airflow"),
        A::FreeAreaM2 => plain("Free area of the grille"),
        A::PowerW => plain("Draw at the same time"),
    }
}

pub(super) fn price(_f: Formatter, field: P) -> Words {
    match field {
        P::PriceNumber => plain("Price paid for the bank"),
        P::CyclesCount => plain("Cycles it is said to live"),
        P::CycleDepthPercent => plain("Depth of each cycle"),
        P::LeftPercent => plain("Capacity left by then"),
    }
}
