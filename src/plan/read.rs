//! From JSON to a plan, by the same table that the form uses.
//!
//! Numbers go to their places by address (see `path` and `slot`), so a new field
//! is read without a line here. Serde's derived readers say "missing field at
//! line 3"; this says which bank's which number, and weighs a third of them in
//! the page.

use super::{
    Bank, Cable, Draw, Feed, Figure, Load, Mode, OpenCircuitPoint, Origin, Plan, Unit, Unknown,
    part::{HeldMut, Part, Stands},
    path::{BankField, ModeField, NightField, Path, UnitField},
    slot::PlaceMut,
};
use crate::bank::Chemistry;
use serde::{Deserialize, Deserializer, de::Error};
use serde_json::{Map, Value};
use std::fmt;

mod reader;

type Object = Map<String, Value>;

/// What is wrong with a JSON value that should be a plan, and where.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Wrong {
    /// An address as findings use it; empty for the plan itself.
    pub at: String,
    pub expected: &'static str,
}

impl fmt::Display for Wrong {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        let at = if self.at.is_empty() { "plan" } else { &self.at };
        write!(to, "{at}: {} expected", self.expected)
    }
}

const OBJECT: &str = "an object";
const LIST: &str = "a list";
const TEXT: &str = "a text";
const NUMBER: &str = "a number";
const WHOLE: &str = "a whole number";
const FIGURE: &str = "a number, or an object with value, from and spread_percent";
const NO_SUCH: &str = "no such key";
const REQUIRED: &str = "a value here";

impl<'de> Deserialize<'de> for Plan {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        plan(&Value::deserialize(from)?).map_err(D::Error::custom)
    }
}

fn wrong<T>(at: impl fmt::Display, expected: &'static str) -> Result<T, Wrong> {
    Err(Wrong {
        at: at.to_string(),
        expected,
    })
}

/// Reads a plan. Unknown keys are refused, missing ones take their defaults.
///
/// # Errors
/// The first value that is not of its kind, and its address.
pub fn plan(value: &Value) -> Result<Plan, Wrong> {
    let object = object(value, "")?;
    let mut plan = Plan::blank();
    plan.version = 0;
    for required in ["version", "banks", "units"] {
        if !object.contains_key(required) {
            return wrong(required, REQUIRED);
        }
    }
    for (key, value) in object {
        match key.as_str() {
            "version" => plan.version = whole(value, key)?,
            "title" => plan.title = text(value, key)?,
            "banks" => each(value, key, |index, value| bank(&mut plan, index, value))?,
            "units" => each(value, key, |index, value| unit(&mut plan, index, value))?,
            "loads" => each(value, key, |index, value| load(&mut plan, index, value))?,
            "night" => night(&mut plan, value)?,
            "show" => show(&mut plan, value)?,
            "reader" => plan.reader = reader::reader(value)?,
            _ => {
                let held = match key.as_str() {
                    "day" => plan.day.held_mut(),
                    "cabin" => plan.cabin.held_mut(),
                    "supply" => plan.supply.held_mut(),
                    "wiring" => plan.wiring.held_mut(),
                    "mode_plan" => plan.mode_plan.held_mut(),
                    "check_ins" => plan.check_ins.held_mut(),
                    "claims" => plan.claims.held_mut(),
                    "air" => plan.air.held_mut(),
                    "price" => plan.price.held_mut(),
                    _ => return wrong(key, NO_SUCH),
                };
                put(held, value, key)?;
            }
        }
    }
    Ok(plan)
}

fn bank(plan: &mut Plan, at: usize, value: &Value) -> Result<(), Wrong> {
    // Not a number until read: JSON has no such number, so what is left is missing.
    plan.banks
        .push(Bank::of(Chemistry::Lfp, f64::NAN, f64::NAN));
    let object = object(value, &format!("banks[{at}]"))?;
    let mut chemistry = None;
    for (key, value) in object {
        let here = || format!("banks[{at}].{key}");
        match key.as_str() {
            "name" => plan.banks[at].name = text(value, &here())?,
            "chemistry" => {
                let known = Chemistry::ALL
                    .into_iter()
                    .find(|kind| value.as_str() == Some(kind.key()));
                match known {
                    Some(kind) => chemistry = Some(kind),
                    None => return wrong(here(), "a known chemistry"),
                }
            }
            "block_open_circuit" => {
                each(value, &here(), |row, value| {
                    plan.banks[at]
                        .block_open_circuit
                        .push(point(value, &format!("{}[{row}]", here()))?);
                    Ok(())
                })?;
            }
            "measured" => numbers(plan, value, &here(), |key| {
                bank_path(at, &format!("measured.{key}"))
            })?,
            key => number(plan, bank_path(at, key), value, &here())?,
        }
    }
    let Some(kind) = chemistry else {
        return wrong(format!("banks[{at}].chemistry"), REQUIRED);
    };
    plan.banks[at].chemistry = kind;
    complete(
        plan,
        &[BankField::BlockNominalV, BankField::BlockRatedAh].map(|field| Path::Bank(at, field)),
    )
}

fn bank_path(at: usize, key: &str) -> Option<Path> {
    BankField::of_key(key).map(|field| Path::Bank(at, field))
}

fn point(value: &Value, at: &str) -> Result<OpenCircuitPoint, Wrong> {
    let row = object(value, at)?;
    match (
        row.get("charge_percent").and_then(Value::as_f64),
        row.get("open_circuit_v").and_then(Value::as_f64),
    ) {
        (Some(charge_percent), Some(open_circuit_v)) if row.len() == 2 => Ok(OpenCircuitPoint {
            charge_percent,
            open_circuit_v,
        }),
        _ => wrong(at, "charge_percent and open_circuit_v"),
    }
}

fn unit(plan: &mut Plan, at: usize, value: &Value) -> Result<(), Wrong> {
    plan.units.push(Unit::of(Vec::new()));
    let object = object(value, &format!("units[{at}]"))?;
    if !object.contains_key("modes") {
        return wrong(Path::Modes(at), REQUIRED);
    }
    for (key, value) in object {
        let here = format!("units[{at}].{key}");
        match key.as_str() {
            "name" => plan.units[at].name = text(value, &here)?,
            "feed" => feed(plan, at, value, &here)?,
            "cable" => {
                plan.units[at].cable = Cable {
                    length_m: f64::NAN,
                    area_mm2: f64::NAN,
                    ..Cable::default()
                };
                numbers(plan, value, &here, |key| {
                    unit_path(at, &format!("cable.{key}"))
                })?;
                complete(
                    plan,
                    &[UnitField::CableLengthM, UnitField::CableAreaMm2].map(|f| Path::Unit(at, f)),
                )?;
            }
            "modes" => each(value, &here, |index, value| mode(plan, at, index, value))?,
            "cooling" => part(&mut plan.units[at].cooling, value, &here)?,
            key => number(plan, unit_path(at, key), value, &here)?,
        }
    }
    Ok(())
}

fn unit_path(at: usize, key: &str) -> Option<Path> {
    UnitField::of_key(key).map(|field| Path::Unit(at, field))
}

fn feed(plan: &mut Plan, at: usize, value: &Value, here: &str) -> Result<(), Wrong> {
    use UnitField as U;
    let kind = object(value, here)?.get("kind").and_then(Value::as_str);
    let (feed, required): (Feed, &[U]) = match kind {
        Some("direct") => (Feed::Direct, &[]),
        Some("dc_dc") => (
            Feed::unread_dc_dc(),
            &[U::OutputV, U::EfficiencyPercent, U::IdleW],
        ),
        Some("inverter") => (
            Feed::unread_inverter(),
            &[
                U::NoLoadW,
                U::ProportionalLossPercent,
                U::SquareLossPercentPerKw,
            ],
        ),
        _ => return wrong(format!("{here}.kind"), "direct, dc_dc or inverter"),
    };
    plan.units[at].feed = feed;
    for (key, value) in object(value, here)? {
        if key != "kind" {
            number(
                plan,
                unit_path(at, &format!("feed.{key}")),
                value,
                &format!("{here}.{key}"),
            )?;
        }
    }
    required
        .iter()
        .try_for_each(|&field| complete(plan, &[Path::Unit(at, field)]))
}

impl Feed {
    const NOT_READ: Figure = Figure::label(f64::NAN);

    const fn unread_dc_dc() -> Self {
        let (efficiency_percent, idle_w) = (Self::NOT_READ, Self::NOT_READ);
        Self::DcDc {
            output_v: f64::NAN,
            efficiency_percent,
            idle_w,
            limit_a: None,
        }
    }
    const fn unread_inverter() -> Self {
        Self::Inverter {
            no_load_w: Self::NOT_READ,
            proportional_loss_percent: Self::NOT_READ,
            square_loss_percent_per_kw: Self::NOT_READ,
            limit_w: None,
            cutoff_v: None,
        }
    }
}

fn mode(plan: &mut Plan, unit: usize, at: usize, value: &Value) -> Result<(), Wrong> {
    let here = format!("units[{unit}].modes[{at}]");
    let object = object(value, &here)?;
    let not_read = Figure::label(f64::NAN);
    let mut mode = Mode::of_power("", not_read);
    if object.contains_key("current_a") {
        mode.draw = Draw::Current {
            current_a: not_read,
            measured_at_v: f64::NAN,
        };
    }
    let Some(name) = object.get("name") else {
        return wrong(format!("{here}.name"), REQUIRED);
    };
    mode.name = text(name, &format!("{here}.name"))?;
    plan.units[unit].modes.push(mode);
    for (key, value) in object {
        if key != "name" {
            let path = ModeField::of_key(key).map(|field| Path::Mode(unit, at, field));
            number(plan, path, value, &format!("{here}.{key}"))?;
        }
    }
    let place = |field| Path::Mode(unit, at, field);
    match plan.units[unit].modes[at].draw {
        Draw::Power { .. } => complete(plan, &[place(ModeField::PowerW)]),
        Draw::Current { .. } => complete(
            plan,
            &[ModeField::CurrentA, ModeField::MeasuredAtV].map(place),
        ),
    }
}

fn load(plan: &mut Plan, at: usize, value: &Value) -> Result<(), Wrong> {
    let here = format!("loads[{at}]");
    let mut load = Load {
        name: String::new(),
        power_w: Figure::label(f64::NAN),
    };
    for (key, value) in object(value, &here)? {
        match key.as_str() {
            "name" => load.name = text(value, &format!("{here}.name"))?,
            "power_w" => load.power_w = figure(value, &format!("{here}.power_w"))?,
            key => return wrong(format!("{here}.{key}"), NO_SUCH),
        }
    }
    plan.loads.push(load);
    complete(plan, &[Path::Load(at)])
}

fn night(plan: &mut Plan, value: &Value) -> Result<(), Wrong> {
    for (key, value) in object(value, "night")? {
        let here = format!("night.{key}");
        match key.as_str() {
            "unknown" => {
                let known = Unknown::ALL
                    .into_iter()
                    .find(|one| value.as_str() == Some(one.key()));
                match known {
                    Some(unknown) => plan.night.unknown = unknown,
                    None => return wrong(here, "hours, bank, draw or depth"),
                }
            }
            "asked_unit" => plan.night.asked_unit = place(value, &here)?,
            "asked_mode" => plan.night.asked_mode = place(value, &here)?,
            key => number(plan, NightField::of_key(key).map(Path::Night), value, &here)?,
        }
    }
    Ok(())
}

fn show(plan: &mut Plan, value: &Value) -> Result<(), Wrong> {
    for (key, value) in object(value, "show")? {
        match (key.as_str(), value.as_bool()) {
            ("us_units", Some(on)) => plan.show.us_units = on,
            ("us_units", None) => return wrong("show.us_units", "true or false"),
            _ => return wrong(format!("show.{key}"), NO_SUCH),
        }
    }
    Ok(())
}

// ---- kinds of values -----------------------------------------------------------

/// Every number of an object, each to its address.
fn numbers(
    plan: &mut Plan,
    value: &Value,
    here: &str,
    path: impl Fn(&str) -> Option<Path>,
) -> Result<(), Wrong> {
    for (key, value) in object(value, here)? {
        number(plan, path(key), value, &format!("{here}.{key}"))?;
    }
    Ok(())
}

/// One number to its address; an address that the plan has no place for is refused.
fn number(plan: &mut Plan, path: Option<Path>, value: &Value, here: &str) -> Result<(), Wrong> {
    match path.and_then(|path| plan.place_mut(path)) {
        Some(place) => put(HeldMut::Number(place), value, here),
        None => wrong(here, NO_SUCH),
    }
}

/// A part, key by key.
fn part(part: &mut dyn Part, value: &Value, here: &str) -> Result<(), Wrong> {
    for (key, value) in object(value, here)? {
        let here = format!("{here}.{key}");
        match part.at(key) {
            Some(held) => put(held, value, &here)?,
            None => return wrong(here, NO_SUCH),
        }
    }
    Ok(())
}

/// A value to its place. Absent and null are the same for what may be left out.
fn put(held: HeldMut<'_>, value: &Value, here: &str) -> Result<(), Wrong> {
    use PlaceMut as P;
    match held {
        HeldMut::Number(P::MaybeFigure(_) | P::MaybeNumber(_) | P::MaybeCount(_))
        | HeldMut::Choice(_)
        | HeldMut::MaybeIndex(_)
            if value.is_null() => {}
        HeldMut::Number(P::Figure(to)) => *to = figure(value, here)?,
        HeldMut::Number(P::MaybeFigure(to)) => *to = Some(figure(value, here)?),
        HeldMut::Number(P::Number(to)) => *to = plain(value, here)?,
        HeldMut::Number(P::MaybeNumber(to)) => *to = Some(plain(value, here)?),
        HeldMut::Number(P::Count(to)) => *to = whole(value, here)?,
        HeldMut::Number(P::MaybeCount(to)) => *to = Some(whole(value, here)?),
        HeldMut::Choice(choice) => {
            if !value.as_str().is_some_and(|name| choice.choose(name)) {
                return wrong(here, "one of the names in the schema");
            }
        }
        HeldMut::Text(to) => *to = text(value, here)?,
        HeldMut::Flag(to) => match value.as_bool() {
            Some(flag) => *to = flag,
            None => return wrong(here, "true or false"),
        },
        HeldMut::Index(to) => *to = place(value, here)?,
        HeldMut::MaybeIndex(to) => *to = Some(place(value, here)?),
        HeldMut::Numbers(to) => each(value, here, |_, value| {
            to.push(plain(value, here)?);
            Ok(())
        })?,
        HeldMut::Part(to) => part(to, value, here)?,
        HeldMut::Rows(to) => each(value, here, |at, value| {
            part(to.add(), value, &format!("{here}[{at}]"))
        })?,
    }
    Ok(())
}

fn plain(value: &Value, here: &str) -> Result<f64, Wrong> {
    value.as_f64().map_or_else(|| wrong(here, NUMBER), Ok)
}

fn figure(value: &Value, here: &str) -> Result<Figure, Wrong> {
    if let Some(number) = value.as_f64() {
        return Ok(Figure::label(number));
    }
    let Some(object) = value.as_object() else {
        return wrong(here, FIGURE);
    };
    let mut figure = Figure::label(f64::NAN);
    for (key, value) in object {
        match (key.as_str(), value.as_f64()) {
            ("value", Some(number)) => figure.value = number,
            ("spread_percent", None) if value.is_null() => {}
            ("spread_percent", Some(number)) => figure.spread_percent = Some(number),
            ("from", _) => match Origin::ALL
                .into_iter()
                .find(|from| value.as_str() == Some(from.key()))
            {
                Some(from) => figure.from = from,
                None => return wrong(format!("{here}.from"), "label, measured or guess"),
            },
            _ => return wrong(format!("{here}.{key}"), FIGURE),
        }
    }
    if figure.value.is_nan() {
        wrong(here, FIGURE)
    } else {
        Ok(figure)
    }
}

/// Whether all that is required was read.
fn complete(plan: &Plan, paths: &[Path]) -> Result<(), Wrong> {
    for &path in paths {
        if plan.stated(path).is_none_or(|figure| figure.value.is_nan()) {
            return wrong(path, REQUIRED);
        }
    }
    Ok(())
}

fn each(
    value: &Value,
    here: &str,
    mut read: impl FnMut(usize, &Value) -> Result<(), Wrong>,
) -> Result<(), Wrong> {
    match value.as_array() {
        Some(list) => list
            .iter()
            .enumerate()
            .try_for_each(|(index, value)| read(index, value)),
        None => wrong(here, LIST),
    }
}

fn object<'a>(value: &'a Value, here: &str) -> Result<&'a Object, Wrong> {
    value.as_object().map_or_else(|| wrong(here, OBJECT), Ok)
}

fn text(value: &Value, here: &str) -> Result<String, Wrong> {
    value
        .as_str()
        .map_or_else(|| wrong(here, TEXT), |text| Ok(text.to_owned()))
}

fn whole(value: &Value, here: &str) -> Result<u32, Wrong> {
    let whole = value.as_u64().and_then(|number| u32::try_from(number).ok());
    whole.map_or_else(|| wrong(here, WHOLE), Ok)
}

/// A place in a list; whether the list is so long is not asked here.
fn place(value: &Value, here: &str) -> Result<usize, Wrong> {
    let place = value
        .as_u64()
        .and_then(|number| usize::try_from(number).ok());
    place.map_or_else(|| wrong(here, WHOLE), Ok)
}
