//! Words of the part that makes a reader's page.

use super::{Formatter, m};
use crate::plan::{
    part::Choice,
    reader::{Language, MOST_OPEN},
};

/// The choice of units; the first is for none, here as below.
#[must_use]
pub fn unit_names(f: Formatter) -> Vec<&'static str> {
    vec![
        f.say(m::MakerUnitsPlan),
        f.say(m::MakerUnitsMetric),
        f.say(m::MakerUnitsUs),
    ]
}

/// The choice of looks.
#[must_use]
pub fn theme_names(f: Formatter) -> Vec<&'static str> {
    vec![
        f.say(m::MakerThemeDevice),
        f.say(m::MakerThemeLight),
        f.say(m::MakerThemeDark),
    ]
}

/// The choice of languages, in the order of [`Language`], each by its own name.
#[must_use]
pub fn language_names(f: Formatter) -> Vec<&'static str> {
    let own = Language::ALL.iter().map(|&language| language.own_name());
    std::iter::once(f.say(m::MakerLanguageBrowser))
        .chain(own)
        .collect()
}

/// Why a fifth is not taken.
#[must_use]
pub fn too_many(f: Formatter) -> String {
    f.say(m::MakerTooMany {
        most: MOST_OPEN.to_string(),
    })
}
