//! How good the odds are: truths are drawn from a plan's own spreads, and counted is
//! how often they lay in the bands told beforehand, and how often what was told as
//! odds came true.
//!
//! It tests the arithmetic between spreads and odds: first order in the runs, drawn
//! days in the hot day, both in coarser steps than the truths here. It does not test
//! whether the spreads are right: that takes nights of real vans.
//!
//! What is told: a run's band is at k = 2, so 95.45 % of a normal number; the hot
//! day's band is 2.5 to 97.5 % of its drawn days. No band of 80 % is shown. It is
//! taken from the same arithmetic here: the run's half-widths at k = 1.2816, the
//! drawn days' own tenths; so that a band that is right at its ends alone is found.
//!
//! `cargo test --test odds -- --nocapture` shows the tables.

mod counted;
mod days;
mod fit;
mod runs;
mod truth;
