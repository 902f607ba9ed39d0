//! What labels, instruments and guesses are worth: the number's own spread, or what
//! its row in the plan's table says.

use crate::plan::{Figure, Path, Provenance, fields::Width};

const fn by_origin(label: f64, measured: f64, guess: f64, from: Provenance) -> f64 {
    match from {
        Provenance::Label => label,
        Provenance::Measured => measured,
        Provenance::Guess | Provenance::Assumed => guess,
    }
}

/// Half-width of a figure in its own unit, at two standard deviations: its own
/// spread, or the usual for its kind and origin. 0 for one that has none.
#[must_use]
pub fn half_width(path: Path, figure: Figure) -> f64 {
    let share = |percent: f64| percent / 100.0 * figure.value.abs();
    match (figure.spread_percent, path.width()) {
        (Some(percent), _) => share(percent),
        (None, Width::Share(label, measured, guess)) => {
            share(by_origin(label, measured, guess, figure.from))
        }
        (None, Width::Units(label, measured, guess)) => {
            by_origin(label, measured, guess, figure.from)
        }
        (None, Width::NoSpread) => 0.0,
    }
}

/// The usual spread as a share of the value, where it is one.
pub(super) fn usual_percent(path: Path, from: Provenance) -> f64 {
    match path.width() {
        Width::Share(label, measured, guess) => by_origin(label, measured, guess, from),
        Width::Units(..) | Width::NoSpread => 0.0,
    }
}
