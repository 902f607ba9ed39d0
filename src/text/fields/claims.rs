//! Names of the fifth question's fields.

use super::{Words, plain};
use crate::plan::claims::{AirField as A, ClaimField as C, PriceField as P};
use crate::text::{Formatter, m};

pub(super) fn claim(f: Formatter, field: C) -> Words {
    match field {
        C::ClaimedAh
        | C::ClaimedWh
        | C::ClaimedW
        | C::ClaimedM3H
        | C::ClaimedC
        | C::ClaimedCoolingW
        | C::ClaimedBtuPerWh => plain(f.say(m::ClaimClaimed)),
        C::ClaimedMostAh
        | C::ClaimedMostWh
        | C::ClaimedMostW
        | C::ClaimedMostM3H
        | C::ClaimedMostC
        | C::ClaimedMostCoolingW
        | C::ClaimedMostBtuPerWh => plain(f.say(m::ClaimClaimedMost)),
        C::MeasuredAh
        | C::MeasuredWh
        | C::MeasuredW
        | C::MeasuredM3H
        | C::MeasuredC
        | C::MeasuredCoolingW
        | C::MeasuredBtuPerWh => plain(f.say(m::ClaimMeasured)),
        C::TolerancePercent => plain(f.say(m::ClaimTolerancePercent)),
        C::OfReadingPercent => plain(f.say(m::ClaimOfReadingPercent)),
        C::OfFullScalePercent => plain(f.say(m::ClaimOfFullScalePercent)),
        C::FullScaleNumber => plain(f.say(m::ClaimFullScaleNumber)),
        C::CountsNumber => plain(f.say(m::ClaimCountsNumber)),
        C::OneCountNumber => plain(f.say(m::ClaimOneCountNumber)),
        C::MeasuredMin => plain(f.say(m::ClaimMeasuredMin)),
        C::RateA => plain(f.say(m::ClaimRateA)),
        C::TestC => plain(f.say(m::ClaimTestC)),
        C::RatedC => plain(f.say(m::ClaimRatedC)),
        C::GrilleM2 => plain(f.say(m::ClaimGrilleM2)),
    }
}

pub(super) fn air(f: Formatter, field: A) -> Words {
    match field {
        A::AltitudeM => plain(f.say(m::AirAltitudeM)),
        A::InletC => plain(f.say(m::AirInletC)),
        A::InletHumidityPercent => plain(f.say(m::AirInletHumidityPercent)),
        A::OutletC => plain(f.say(m::AirOutletC)),
        A::OutletHumidityPercent => plain(f.say(m::AirOutletHumidityPercent)),
        A::AirflowM3H => plain(f.say(m::AirAirflowM3H)),
        A::FreeAreaM2 => plain(f.say(m::AirFreeAreaM2)),
        A::PowerW => plain(f.say(m::AirPowerW)),
    }
}

pub(super) fn price(f: Formatter, field: P) -> Words {
    match field {
        P::PriceNumber => plain(f.say(m::PricePriceNumber)),
        P::CyclesCount => plain(f.say(m::PriceCyclesCount)),
        P::CycleDepthPercent => plain(f.say(m::PriceCycleDepthPercent)),
        P::LeftPercent => plain(f.say(m::PriceLeftPercent)),
    }
}
