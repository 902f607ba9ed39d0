//! The fifth question's parts, from JSON.

use super::parts::{choice, list};
use super::{Wrong, each, number, object, place, text};
use crate::plan::{
    Path, Plan,
    claims::{AirField, Claim, ClaimField, PriceField},
};
use serde_json::Value;

pub(super) fn claims(plan: &mut Plan, value: &Value) -> Result<(), Wrong> {
    each(value, "claims", |at, value| claim(plan, at, value))
}

fn claim(plan: &mut Plan, at: usize, value: &Value) -> Result<(), Wrong> {
    plan.claims.push(Claim::default());
    for (key, value) in object(value, &format!("claims[{at}]"))? {
        let here = format!("claims[{at}].{key}");
        let claim = &mut plan.claims[at];
        match key.as_str() {
            "name" => claim.name = text(value, &here)?,
            "about" => claim.about = choice(value, &here)?,
            "meter" => claim.meter = choice(value, &here)?,
            "full_by" => claim.full_by = choice(value, &here)?,
            "end_by" => claim.end_by = choice(value, &here)?,
            "runs" => claim.runs = list(value, &here)?,
            "bank" => claim.bank = place(value, &here)?,
            key => {
                let path = ClaimField::of_key(key).map(|field| Path::Claim(at, field));
                number(plan, path, value, &here)?;
            }
        }
    }
    Ok(())
}

pub(super) fn air(plan: &mut Plan, value: &Value) -> Result<(), Wrong> {
    for (key, value) in object(value, "air")? {
        let here = format!("air.{key}");
        match key.as_str() {
            "basis" => plan.air.basis = choice(value, &here)?,
            "vane_m_s" => plan.air.vane_m_s = list(value, &here)?,
            key => number(plan, AirField::of_key(key).map(Path::Air), value, &here)?,
        }
    }
    Ok(())
}

pub(super) fn price(plan: &mut Plan, value: &Value) -> Result<(), Wrong> {
    for (key, value) in object(value, "price")? {
        let here = format!("price.{key}");
        number(plan, PriceField::of_key(key).map(Path::Price), value, &here)?;
    }
    Ok(())
}
