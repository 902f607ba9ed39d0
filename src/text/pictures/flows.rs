//! Words on the day's energy and heat as flows.

use crate::text::{Formatter, m};

/// The energy of a flow in words, and its share of all.
#[must_use]
pub fn flow(f: Formatter, wh: f64, of_wh: f64) -> String {
    let percent = 100.0 * wh / of_wh.max(f64::MIN_POSITIVE);
    let energy = f.energy(wh);
    if percent < 0.5 {
        f.say(m::PictureFlowSmall { energy })
    } else {
        f.say(m::PictureFlow {
            energy,
            percent: f.percent(percent),
        })
    }
}

/// What stands over the two sides.
#[must_use]
pub fn flow_sides(f: Formatter) -> [&'static str; 2] {
    [f.say(m::PictureComesIn), f.say(m::PictureGoesOut)]
}

/// Heads of the rows behind a flow.
#[must_use]
pub fn flow_heads(f: Formatter) -> [&'static str; 3] {
    [
        f.say(m::PictureFlowWhat),
        f.say(m::PictureFlowDirection),
        f.say(m::PictureFlowWh),
    ]
}

/// Names of the heat balance's terms where heat comes in and where it goes out.
#[must_use]
pub fn heat_ways(f: Formatter) -> [[&'static str; 2]; 7] {
    let out_of_glass = f.say(m::PictureHeatOutGlass);
    [
        [f.say(m::PictureHeatSunGlass), out_of_glass],
        [f.say(m::PictureHeatSunShell), f.say(m::PictureHeatToSky)],
        [f.say(m::PictureHeatGlass), out_of_glass],
        [f.say(m::PictureHeatShell), f.say(m::PictureHeatOutShell)],
        [f.say(m::PictureHeatAirIn), f.say(m::PictureHeatAirOut)],
        [f.say(m::PictureHeatPeople); 2],
        [f.say(m::PictureHeatThings); 2],
    ]
}
