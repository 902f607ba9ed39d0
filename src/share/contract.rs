//! The contract as text: JSON in, JSON out, for callers in other languages.
//!
//! Every call gives one JSON object: `{"ok":true, …}` with what was asked for,
//! or `{"ok":false,"error":{"kind":…}}` with a [`Refusal`]. Nothing is thrown,
//! whatever comes in. The module for scripts is these three calls.

use super::{NotALink, TooLong, link_from_plan, plan_from_link};
use crate::{
    answer,
    plan::open::{NotAPlan, plan_from_json},
};
use serde::Serialize;

/// Why there is nothing but this to give back.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Refusal {
    /// The text is no link of ours, or there is none.
    NoLink,
    /// A part of the link is missing or changed.
    Damaged,
    /// Longer than is read or written, in bytes.
    TooLong { most: usize },
    /// Made by a later (or no known) version.
    UnknownVersion { version: u64 },
    /// Not JSON from this place on, counted from 1.
    Malformed { line: usize, column: usize },
    /// JSON of another shape than a plan's.
    OtherShape { detail: String },
}

impl From<NotAPlan> for Refusal {
    fn from(error: NotAPlan) -> Self {
        match error {
            NotAPlan::TooLong { most, .. } => Self::TooLong { most },
            NotAPlan::UnknownVersion { version } => Self::UnknownVersion { version },
            NotAPlan::Malformed { line, column } => Self::Malformed { line, column },
            NotAPlan::OtherShape { detail } => Self::OtherShape { detail },
        }
    }
}

impl From<NotALink> for Refusal {
    fn from(error: NotALink) -> Self {
        match error {
            NotALink::Absent | NotALink::NotOurs => Self::NoLink,
            NotALink::Damaged => Self::Damaged,
            NotALink::TooLong { most } => Self::TooLong { most },
            NotALink::UnknownVersion { version } => Self::UnknownVersion { version },
            NotALink::NotAPlan(error) => error.into(),
        }
    }
}

impl From<TooLong> for Refusal {
    fn from(TooLong { most, .. }: TooLong) -> Self {
        Self::TooLong { most }
    }
}

/// A plan's answer: `{"ok":true,"answer":{…}}`.
///
/// ```
/// use till_morning::{share::contract, plan::Plan};
/// let plan = serde_json::to_string(&Plan::demo()).unwrap();
/// let result: serde_json::Value = serde_json::from_str(&contract::answer(&plan)).unwrap();
/// assert_eq!(result["ok"], true);
/// assert!(result["answer"]["runs"][0]["hours_h"]["likely"].as_f64().unwrap() > 1.0);
/// assert_eq!(
///     contract::answer("[1"),
///     r#"{"ok":false,"error":{"kind":"malformed","line":1,"column":2}}"#
/// );
/// ```
#[must_use]
pub fn answer(plan_json: &str) -> String {
    told("answer", || {
        Ok(json(&answer::answer(&plan_from_json(plan_json)?)))
    })
}

/// The same with the first two questions alone: no hot day, no wiring, no claims.
#[must_use]
pub fn night(plan_json: &str) -> String {
    told("answer", || {
        Ok(json(
            &answer::night(&plan_from_json(plan_json)?).night_part(),
        ))
    })
}

/// The plan in a link's text, with or without `#`: `{"ok":true,"plan":{…}}`.
#[must_use]
pub fn plan_of_link(link: &str) -> String {
    told("plan", || Ok(json(&plan_from_link(link)?)))
}

/// The text to put after `#` for a plan: `{"ok":true,"link":"p1.…"}`.
#[must_use]
pub fn link_of_plan(plan_json: &str) -> String {
    told("link", || {
        Ok(json(&link_from_plan(&plan_from_json(plan_json)?)?))
    })
}

/// The object around what was found, or around why there is nothing.
fn told(key: &str, found: impl FnOnce() -> Result<String, Refusal>) -> String {
    match found() {
        Ok(found) => format!(r#"{{"ok":true,"{key}":{found}}}"#),
        Err(refusal) => format!(r#"{{"ok":false,"error":{}}}"#, json(&refusal)),
    }
}

/// Compact JSON. Plans, answers and refusals hold nothing that JSON cannot.
fn json(value: &impl Serialize) -> String {
    serde_json::to_string(value).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::Plan;

    fn demo() -> String {
        json(&Plan::demo())
    }

    #[test]
    fn a_plan_goes_into_a_link_and_back() {
        let link: serde_json::Value = serde_json::from_str(&link_of_plan(&demo())).unwrap();
        let back = plan_of_link(link["link"].as_str().unwrap());
        assert_eq!(back, format!(r#"{{"ok":true,"plan":{}}}"#, demo()));
    }

    #[test]
    fn every_refusal_says_its_kind() {
        let kind = |result: String| {
            let result: serde_json::Value = serde_json::from_str(&result).unwrap();
            assert_eq!(result["ok"], false);
            result["error"]["kind"].as_str().unwrap().to_owned()
        };
        assert_eq!(kind(answer("")), "malformed");
        assert_eq!(kind(answer("{}")), "other_shape");
        assert_eq!(kind(answer(r#"{"version":9}"#)), "unknown_version");
        assert_eq!(kind(answer(&" ".repeat(1 << 20))), "too_long");
        assert_eq!(kind(link_of_plan("3")), "other_shape");
        assert_eq!(kind(plan_of_link("#question-2")), "no_link");
        assert_eq!(kind(plan_of_link("#p1.q1Y")), "damaged");
        assert_eq!(kind(plan_of_link("#p9.q1Y")), "unknown_version");
        let mut plan = Plan::demo();
        plan.title = "x".repeat(100_000);
        assert_eq!(kind(link_of_plan(&json(&plan))), "too_long");
    }
}
