//! What is lost between the cells and the controller.
//!
//! Each loss is a share of what the one before left, so that they multiply and
//! never add past the whole. Shade is not among them ([`super::Group`] has it),
//! nor is heat ([`super::cell`]), nor the controller's own
//! ([`super::controller`]): each is counted once.

use super::{Input, OutOfRange, within};

/// Shares lost, each 0 to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Losses {
    /// Dust, salt and droppings on the glass.
    pub dust: f64,
    /// Light turned away by the glass at low sun; most on panels that lie flat.
    pub glance: f64,
    /// Cable, plugs and roof gland between panel and controller.
    pub cable: f64,
    /// Panels of a string that differ, or follow the curve of a roof and so look
    /// different ways.
    pub uneven: f64,
    /// Years in the sun, the first weeks' drop included.
    pub age: f64,
    /// The label promising more than the panel ever gave.
    pub label: f64,
}

impl Losses {
    /// A roof array of a few years, seldom washed.
    ///
    /// Our guess, to be shown as one: common practice, no source.
    pub const USUAL: Self = Self {
        dust: 0.03,
        glance: 0.03,
        cable: 0.02,
        uneven: 0.02,
        age: 0.03,
        label: 0.01,
    };

    /// None at all.
    pub const NONE: Self = Self {
        dust: 0.0,
        glance: 0.0,
        cable: 0.0,
        uneven: 0.0,
        age: 0.0,
        label: 0.0,
    };

    /// Share left after all of them.
    ///
    /// # Errors
    /// A share out of range.
    pub fn kept(&self) -> Result<f64, OutOfRange> {
        kept_after(&[
            self.dust,
            self.glance,
            self.cable,
            self.uneven,
            self.age,
            self.label,
        ])
    }
}

/// Share left after several losses in a row: the product of what each leaves.
///
/// - `lost`: each 0 to 1
///
/// # Errors
/// A share out of range.
///
/// Source: Dobos, NREL/TP-6A20-62641 (2014), system losses.
pub fn kept_after(lost: &[f64]) -> Result<f64, OutOfRange> {
    lost.iter().try_fold(1.0, |kept, &share| {
        Ok(kept * (1.0 - within(Input::LostShare, share, 0.0, 1.0)?))
    })
}
