//! How something fares, as a shape: told apart without colour.

use super::{Face, Picture, pen::Pen};
use crate::view::chart::thin::Px;

/// How a path, a battery or a claim fares.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Standing {
    /// Nobody judges it: no shape.
    Plain,
    /// A disc with a tick.
    Good,
    /// An open diamond.
    Open,
    /// A square with a cross.
    Bad,
}

impl Standing {
    /// The class beside others.
    #[must_use]
    pub const fn class(self) -> &'static str {
        match self {
            Self::Plain => "plain",
            Self::Good => "good",
            Self::Open => "open",
            Self::Bad => "bad",
        }
    }

    /// The face of words that say it.
    #[must_use]
    pub const fn face(self) -> Face {
        match self {
            Self::Bad => Face::Wrong,
            _ => Face::Strong,
        }
    }
}

/// Half the size of a shape, px.
pub const RADIUS: f64 = 6.5;

/// Draws the shape about a point.
pub fn badge(picture: &mut Picture, standing: Standing, at: Px) {
    let (x, y) = at;
    let r = RADIUS;
    let mut shape = Pen::new();
    let mut sign = Pen::new();
    match standing {
        Standing::Plain => return,
        Standing::Good => {
            shape.circle(at, r);
            sign.go((x - 3.0, y + 0.2))
                .line((x - 0.8, y + 2.6))
                .line((x + 3.2, y - 2.6));
        }
        Standing::Open => {
            let d = r + 1.0;
            shape.polygon(&[(x, y - d), (x + d, y), (x, y + d), (x - d, y)]);
        }
        Standing::Bad => {
            shape.rect(at, (2.0 * r, 2.0 * r));
            sign.segment((x - 3.0, y - 3.0), (x + 3.0, y + 3.0));
            sign.segment((x - 3.0, y + 3.0), (x + 3.0, y - 3.0));
        }
    }
    picture.path(&format!("pic-badge {}", standing.class()), shape.finish());
    picture.path("pic-sign", sign.finish());
}
