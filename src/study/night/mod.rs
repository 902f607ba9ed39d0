//! What a hot night is asked beside its course: what would buy more hours, when to change
//! down at the latest, what the readings so far make of it, and which mode plan stays cool
//! longest. Each comes in steps, so that a page can do it in slices.

mod bedtime;
mod change;
mod check_in;
pub(super) mod fit;
mod longest;
mod rank;
mod readings;
mod switching;
mod trial;

pub use bedtime::{Bedtime, BedtimeLine, Latest, bedtime_lines};
pub use change::Change;
pub use check_in::{Advice, CheckInAnswer, CheckInWork, Onward, check_in};
pub use fit::{Fit, FittedFactor};
pub use longest::{CoolPlan, Longest, LongestNight, ModeFrom, longest_night};
pub use rank::{MoreHours, RankedChange, Ranker, Worth, more_hours};
pub use trial::{Chances, SearchScenario};
