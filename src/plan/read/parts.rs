//! The hot day's parts, from JSON: numbers by address, choices by name.

use super::{Wrong, each, number, object, place, wrong};
use crate::plan::{
    CheckIn, ModeRow, Path, Plan,
    cabin::CabinField,
    cooling::CoolingField,
    day::{CheckInField, DayField, ModeRowField},
    part::Choice,
    supply::{Array, ArrayField, Charger, ChargerField, SupplyField},
};
use serde_json::Value;

/// A choice by its name; null is as if it were not there.
pub(super) fn choice<T: Choice>(value: &Value, here: &str) -> Result<Option<T>, Wrong> {
    if value.is_null() {
        return Ok(None);
    }
    match value.as_str().and_then(T::of_key) {
        Some(one) => Ok(Some(one)),
        None => wrong(here, "one of the names in the schema"),
    }
}

/// A list of numbers.
pub(super) fn list(value: &Value, here: &str) -> Result<Vec<f64>, Wrong> {
    let mut numbers = Vec::new();
    each(value, here, |_, value| match value.as_f64() {
        Some(number) => {
            numbers.push(number);
            Ok(())
        }
        None => wrong(here, super::NUMBER),
    })?;
    Ok(numbers)
}

pub(super) fn day(plan: &mut Plan, value: &Value) -> Result<(), Wrong> {
    for (key, value) in object(value, "day")? {
        let here = format!("day.{key}");
        match key.as_str() {
            "climate" => plan.day.climate = choice(value, &here)?,
            "imported" => imported(plan, value)?,
            key => number(plan, DayField::of_key(key).map(Path::Day), value, &here)?,
        }
    }
    Ok(())
}

fn imported(plan: &mut Plan, value: &Value) -> Result<(), Wrong> {
    for (key, value) in object(value, "day.imported")? {
        let here = format!("day.imported.{key}");
        let numbers = list(value, &here)?;
        let hours = &mut plan.day.imported;
        match key.as_str() {
            "outdoor_c" => hours.outdoor_c = numbers,
            "global_w_m2" => hours.global_w_m2 = numbers,
            "dew_point_c" => hours.dew_point_c = numbers,
            _ => return wrong(here, super::NO_SUCH),
        }
    }
    Ok(())
}

pub(super) fn cabin(plan: &mut Plan, value: &Value) -> Result<(), Wrong> {
    for (key, value) in object(value, "cabin")? {
        let here = format!("cabin.{key}");
        let cabin = &mut plan.cabin;
        match key.as_str() {
            "kind" => cabin.kind = choice(value, &here)?,
            "insulation" => cabin.insulation = choice(value, &here)?,
            "colour" => cabin.colour = choice(value, &here)?,
            "glazing" => cabin.glazing = choice(value, &here)?,
            "covers" => cabin.covers = choice(value, &here)?,
            key => number(plan, CabinField::of_key(key).map(Path::Cabin), value, &here)?,
        }
    }
    Ok(())
}

pub(super) fn cooling(
    plan: &mut Plan,
    unit: usize,
    value: &Value,
    here: &str,
) -> Result<(), Wrong> {
    for (key, value) in object(value, here)? {
        let here = format!("{here}.{key}");
        match key.as_str() {
            "control" => plan.units[unit].cooling.control = choice(value, &here)?,
            key => {
                let path = CoolingField::of_key(key).map(|field| Path::Cooling(unit, field));
                number(plan, path, value, &here)?;
            }
        }
    }
    Ok(())
}

pub(super) fn supply(plan: &mut Plan, value: &Value) -> Result<(), Wrong> {
    for (key, value) in object(value, "supply")? {
        let here = format!("supply.{key}");
        let supply = &mut plan.supply;
        match key.as_str() {
            "controller" => supply.controller = choice(value, &here)?,
            "bank_place" => supply.bank_place = choice(value, &here)?,
            "arrays" => each(value, &here, |at, value| array(plan, at, value))?,
            "chargers" => each(value, &here, |at, value| charger(plan, at, value))?,
            key => number(
                plan,
                SupplyField::of_key(key).map(Path::Supply),
                value,
                &here,
            )?,
        }
    }
    Ok(())
}

fn array(plan: &mut Plan, at: usize, value: &Value) -> Result<(), Wrong> {
    plan.supply.arrays.push(Array::default());
    for (key, value) in object(value, &format!("supply.arrays[{at}]"))? {
        let here = format!("supply.arrays[{at}].{key}");
        match key.as_str() {
            "mounting" => plan.supply.arrays[at].mounting = choice(value, &here)?,
            key => {
                let path = ArrayField::of_key(key).map(|field| Path::Array(at, field));
                number(plan, path, value, &here)?;
            }
        }
    }
    Ok(())
}

fn charger(plan: &mut Plan, at: usize, value: &Value) -> Result<(), Wrong> {
    plan.supply.chargers.push(Charger::default());
    for (key, value) in object(value, &format!("supply.chargers[{at}]"))? {
        let here = format!("supply.chargers[{at}].{key}");
        match key.as_str() {
            "kind" => plan.supply.chargers[at].kind = choice(value, &here)?,
            key => {
                let path = ChargerField::of_key(key).map(|field| Path::Charger(at, field));
                number(plan, path, value, &here)?;
            }
        }
    }
    Ok(())
}

pub(super) fn mode_row(plan: &mut Plan, at: usize, value: &Value) -> Result<(), Wrong> {
    plan.mode_plan.push(ModeRow::default());
    for (key, value) in object(value, &format!("mode_plan[{at}]"))? {
        let here = format!("mode_plan[{at}].{key}");
        match key.as_str() {
            "unit" => plan.mode_plan[at].unit = place(value, &here)?,
            "mode" if value.is_null() => {}
            "mode" => plan.mode_plan[at].mode = Some(place(value, &here)?),
            key => {
                let path = ModeRowField::of_key(key).map(|field| Path::ModeRow(at, field));
                number(plan, path, value, &here)?;
            }
        }
    }
    Ok(())
}

pub(super) fn check_in(plan: &mut Plan, at: usize, value: &Value) -> Result<(), Wrong> {
    plan.check_ins.push(CheckIn::default());
    for (key, value) in object(value, &format!("check_ins[{at}]"))? {
        let here = format!("check_ins[{at}].{key}");
        let path = CheckInField::of_key(key).map(|field| Path::CheckIn(at, field));
        number(plan, path, value, &here)?;
    }
    Ok(())
}
