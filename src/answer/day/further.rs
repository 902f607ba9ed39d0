//! What follows once the day stands: the questions that it is asked beside.

use super::{
    BedtimeLine, CheckInAnswer, LongestNight, MoreHours, bedtime_lines, check_in, longest_night,
    more_hours,
};
use crate::{
    plan::Plan,
    study::sizing::day::{DaySizing, size_all},
};
use serde::{Deserialize, Serialize};

/// Everything that the day is asked beside its trace. A page does each in slices
/// of its own ([`super::Ranker`], [`super::Bedtime`], [`super::CheckInWork`],
/// [`super::Longest`], [`crate::study::sizing::day::size_day`]).
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
pub struct Further {
    /// What would buy more hours.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub more_hours: Option<MoreHours>,
    /// How much of one thing is enough.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub sizing: Vec<DaySizing>,
    /// The latest time to change to each lower mode.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub bedtime: Vec<BedtimeLine>,
    /// What was read in the night, and what follows from it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub check_in: Option<CheckInAnswer>,
    /// The mode plan that holds the set point longest.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub longest_night: Option<LongestNight>,
}

/// All of it at once.
#[must_use]
pub fn further(plan: &Plan) -> Further {
    Further {
        more_hours: more_hours(plan),
        sizing: size_all(plan),
        bedtime: bedtime_lines(plan).unwrap_or_default(),
        check_in: check_in(plan),
        longest_night: longest_night(plan),
    }
}
