//! Feed and draw as JSON has them: flat, with all the keys of all their kinds.
//!
//! Read by their tag alone they would pass through a buffer in which serde loses
//! the address of a wrong value, and a flattened draw would let unknown keys pass.
//! Here each key is read at its place; what the kind lacks or has too much of is
//! then told in serde's own words.

use super::{Draw, DrawBasis, Feed, Figure, Mode};
use serde::{
    Deserialize,
    de::{Error as _, value::Error},
};

/// Keys that another kind has, and whether they were said.
type Strange = [(&'static str, bool)];

/// What the kind must have.
fn needed<T>(said: Option<T>, key: &'static str) -> Result<T, Error> {
    said.ok_or_else(|| Error::missing_field(key))
}

/// Refuses the first key that the kind does not have.
fn refuse(strange: &Strange, own: &'static [&'static str]) -> Result<(), Error> {
    match strange.iter().find(|(_, is_said)| *is_said) {
        Some((key, _)) => Err(Error::unknown_field(key, own)),
        None => Ok(()),
    }
}

#[derive(Deserialize)]
#[serde(rename_all = "snake_case")]
enum FeedKind {
    Direct,
    DcDc,
    Inverter,
}

/// A [`Feed`] as it is read.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct FlatFeed {
    kind: FeedKind,
    output_v: Option<f64>,
    efficiency_percent: Option<Figure>,
    idle_w: Option<Figure>,
    limit_a: Option<Figure>,
    no_load_w: Option<Figure>,
    proportional_loss_percent: Option<Figure>,
    square_loss_percent_per_kw: Option<Figure>,
    limit_w: Option<Figure>,
    cutoff_v: Option<Figure>,
}

impl FlatFeed {
    const OF_CONVERTER: &[&str] = &[
        "kind",
        "output_v",
        "efficiency_percent",
        "idle_w",
        "limit_a",
    ];
    const OF_INVERTER: &[&str] = &[
        "kind",
        "no_load_w",
        "proportional_loss_percent",
        "square_loss_percent_per_kw",
        "limit_w",
        "cutoff_v",
    ];

    fn said_of_converter(&self) -> [(&'static str, bool); 4] {
        [
            ("output_v", self.output_v.is_some()),
            ("efficiency_percent", self.efficiency_percent.is_some()),
            ("idle_w", self.idle_w.is_some()),
            ("limit_a", self.limit_a.is_some()),
        ]
    }

    fn said_of_inverter(&self) -> [(&'static str, bool); 5] {
        [
            ("no_load_w", self.no_load_w.is_some()),
            (
                "proportional_loss_percent",
                self.proportional_loss_percent.is_some(),
            ),
            (
                "square_loss_percent_per_kw",
                self.square_loss_percent_per_kw.is_some(),
            ),
            ("limit_w", self.limit_w.is_some()),
            ("cutoff_v", self.cutoff_v.is_some()),
        ]
    }
}

impl TryFrom<FlatFeed> for Feed {
    type Error = Error;

    fn try_from(said: FlatFeed) -> Result<Self, Error> {
        let own = match said.kind {
            FeedKind::Direct => &["kind"],
            FeedKind::DcDc => FlatFeed::OF_CONVERTER,
            FeedKind::Inverter => FlatFeed::OF_INVERTER,
        };
        if !matches!(said.kind, FeedKind::DcDc) {
            refuse(&said.said_of_converter(), own)?;
        }
        if !matches!(said.kind, FeedKind::Inverter) {
            refuse(&said.said_of_inverter(), own)?;
        }
        Ok(match said.kind {
            FeedKind::Direct => Self::Direct,
            FeedKind::DcDc => Self::DcDc {
                output_v: needed(said.output_v, "output_v")?,
                efficiency_percent: needed(said.efficiency_percent, "efficiency_percent")?,
                idle_w: needed(said.idle_w, "idle_w")?,
                limit_a: said.limit_a,
            },
            FeedKind::Inverter => Self::Inverter {
                no_load_w: needed(said.no_load_w, "no_load_w")?,
                proportional_loss_percent: needed(
                    said.proportional_loss_percent,
                    "proportional_loss_percent",
                )?,
                square_loss_percent_per_kw: needed(
                    said.square_loss_percent_per_kw,
                    "square_loss_percent_per_kw",
                )?,
                limit_w: said.limit_w,
                cutoff_v: said.cutoff_v,
            },
        })
    }
}

/// A [`Mode`] as it is read.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub(super) struct FlatMode {
    name: String,
    power_w: Option<Figure>,
    current_a: Option<Figure>,
    measured_at_v: Option<f64>,
    basis: Option<DrawBasis>,
    duty_percent: Option<Figure>,
    standby_w: Option<Figure>,
    cooling_w: Option<Figure>,
}

impl FlatMode {
    const OF_CURRENT: &[&str] = &[
        "name",
        "current_a",
        "measured_at_v",
        "basis",
        "duty_percent",
        "standby_w",
        "cooling_w",
    ];
    const OF_POWER: &[&str] = &[
        "name",
        "power_w",
        "basis",
        "duty_percent",
        "standby_w",
        "cooling_w",
    ];

    /// Amps make a draw of amps; without them it is one of watts.
    fn draw(&self) -> Result<Draw, Error> {
        match self.current_a {
            Some(current_a) => {
                refuse(&[("power_w", self.power_w.is_some())], Self::OF_CURRENT)?;
                Ok(Draw::Current {
                    current_a,
                    measured_at_v: needed(self.measured_at_v, "measured_at_v")?,
                })
            }
            None => {
                let strange = [("measured_at_v", self.measured_at_v.is_some())];
                let power_w = needed(self.power_w, "power_w")?;
                refuse(&strange, Self::OF_POWER)?;
                Ok(Draw::Power { power_w })
            }
        }
    }
}

impl TryFrom<FlatMode> for Mode {
    type Error = Error;

    fn try_from(said: FlatMode) -> Result<Self, Error> {
        Ok(Self {
            draw: said.draw()?,
            name: said.name,
            basis: said.basis,
            duty_percent: said.duty_percent,
            standby_w: said.standby_w,
            cooling_w: said.cooling_w,
        })
    }
}
