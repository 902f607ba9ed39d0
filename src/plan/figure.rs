//! A number with where it came from and how far it may be off.

use super::path::{BankField as B, Path};
use serde::{Deserialize, Serialize};

/// Where a number came from. Spreads follow from it (see [`crate::study::spread`]).
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub enum Provenance {
    /// Printed on the gear or in its papers.
    #[default]
    Label,
    /// Read off an instrument.
    Measured,
    /// Neither: a default, or the owner's guess.
    Guess,
    /// Nobody has said it: the usual figure stands in until somebody does.
    Assumed,
}

impl Provenance {
    /// Those that somebody can choose.
    pub const ALL: [Self; 3] = [Self::Label, Self::Measured, Self::Guess];

    /// Whether it is no more than a guess, ours or the owner's.
    #[must_use]
    pub const fn is_guess(self) -> bool {
        matches!(self, Self::Guess | Self::Assumed)
    }
}

/// A physical number in the unit its key names.
///
/// In JSON either a bare number, taken as from the label, or an object:
/// `{"value": 49.7, "from": "measured", "spread_percent": 2}`.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(from = "Wire", into = "Wire")]
pub struct Figure {
    pub value: f64,
    pub from: Provenance,
    /// Half-width as a share of the value, at two standard deviations.
    /// Absent: the usual one for this kind of number and origin.
    pub spread_percent: Option<f64>,
}

impl Figure {
    #[must_use]
    pub const fn label(value: f64) -> Self {
        Self {
            value,
            from: Provenance::Label,
            spread_percent: None,
        }
    }
    #[must_use]
    pub const fn measured(value: f64) -> Self {
        Self {
            value,
            from: Provenance::Measured,
            spread_percent: None,
        }
    }
    #[must_use]
    pub const fn guess(value: f64) -> Self {
        Self {
            value,
            from: Provenance::Guess,
            spread_percent: None,
        }
    }
    /// A usual figure where one is needed and nobody has said it.
    #[must_use]
    pub const fn assumed(value: f64) -> Self {
        Self {
            value,
            from: Provenance::Assumed,
            spread_percent: None,
        }
    }
    /// This, unless it only stands in for what nobody has said.
    #[must_use]
    pub fn if_said(self) -> Option<Self> {
        (self.from != Provenance::Assumed).then_some(self)
    }
    /// A choice, with no spread.
    #[must_use]
    pub const fn exact(value: f64) -> Self {
        Self {
            value,
            from: Provenance::Label,
            spread_percent: Some(0.0),
        }
    }
    /// The same figure with another value.
    #[must_use]
    pub const fn with(self, value: f64) -> Self {
        Self { value, ..self }
    }
}

impl Path {
    /// Where a number typed at this address comes from: a reading is measured, and
    /// anything else at least from a label, since somebody read or knew it.
    #[must_use]
    pub const fn origin_typed(self, before: Provenance) -> Provenance {
        let is_reading = match self {
            Self::Bank(_, field) => {
                matches!(field, B::MeasuredAh | B::MeasuredWh | B::MeasuredLoadW)
            }
            Self::Claim(_, field) => field.is_measured(),
            Self::Air(_) | Self::CheckIn(..) | Self::MapRow(..) => true,
            _ => false,
        };
        match before {
            _ if is_reading => Provenance::Measured,
            Provenance::Guess | Provenance::Assumed => Provenance::Label,
            Provenance::Label | Provenance::Measured => before,
        }
    }
}

/// A figure written out.
#[derive(Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
struct Full {
    value: f64,
    #[serde(default)]
    from: Provenance,
    #[serde(skip_serializing_if = "Option::is_none")]
    spread_percent: Option<f64>,
}

/// A figure in JSON.
#[derive(Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(
    untagged,
    expecting = "expected a number, or an object with value, from and spread_percent"
)]
enum Wire {
    Bare(f64),
    Full(Full),
}

impl From<Wire> for Figure {
    fn from(read: Wire) -> Self {
        match read {
            Wire::Bare(value) => Self::label(value),
            Wire::Full(Full {
                value,
                from,
                spread_percent,
            }) => Self {
                value,
                from,
                spread_percent,
            },
        }
    }
}

impl From<Figure> for Wire {
    fn from(figure: Figure) -> Self {
        let Figure {
            value,
            from,
            spread_percent,
        } = figure;
        if from == Provenance::Label && spread_percent.is_none() {
            return Self::Bare(value);
        }
        Self::Full(Full {
            value,
            from,
            spread_percent,
        })
    }
}
