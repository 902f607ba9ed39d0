//! From JSON to a plan, by the same table that the form uses.
//!
//! Numbers go to their places by address (see `path` and `slot`), so a new field
//! is read without a line here. Serde's derived readers say "missing field at
//! line 3"; this says which bank's which number, and weighs a third of them in
//! the page.

use super::{
    Figure, Plan, Provenance,
    part::{HeldMut, Keyed},
    slot::PlaceMut,
};
use serde::{Deserialize, Deserializer, de::Error};
use serde_json::{Map, Value};
use std::fmt;

mod keys;
mod reader;

pub(super) type Object = Map<String, Value>;

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

fn wrong<T>(at: impl Into<String>, expected: &'static str) -> Result<T, Wrong> {
    Err(Wrong {
        at: at.into(),
        expected,
    })
}

/// Reads a plan. Unknown keys are refused, missing ones take their defaults.
///
/// # Errors
/// The first value that is not of its kind, and its address.
pub fn plan(value: &Value) -> Result<Plan, Wrong> {
    let mut plan = Plan::unread();
    part(&mut plan, value, "")?;
    Ok(plan)
}

/// Something of keys, key by key.
fn part(part: &mut dyn Keyed, value: &Value, here: &str) -> Result<(), Wrong> {
    let object = match value.as_object() {
        Some(object) => object,
        None => return wrong(here, OBJECT),
    };
    let under = |key: &str| match here {
        "" => key.to_owned(),
        _ => format!("{here}.{key}"),
    };
    match part.begin(object) {
        Err([key, expected]) => return wrong(under(key), expected),
        Ok(required) => {
            for &key in required {
                if !object.contains_key(key) {
                    return wrong(under(key), REQUIRED);
                }
            }
        }
    }
    for (key, value) in object {
        let here = under(key);
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
        | HeldMut::MaybeIndex(_)
            if value.is_null() => {}
        HeldMut::Choice(choice) if value.is_null() && choice.is_optional() => {}
        HeldMut::Number(P::Figure(to)) => *to = figure(value, here)?,
        HeldMut::Number(P::MaybeFigure(to)) => *to = Some(figure(value, here)?),
        HeldMut::Number(P::Number(to)) => *to = plain(value, here)?,
        HeldMut::Number(P::MaybeNumber(to)) => *to = Some(plain(value, here)?),
        HeldMut::Number(P::Count(to)) => *to = whole(value, here)?,
        HeldMut::Number(P::MaybeCount(to)) => *to = Some(whole(value, here)?),
        HeldMut::Known => {}
        HeldMut::Open(to) => *to = reader::addresses(value, here)?,
        HeldMut::Reader(to) => *to = reader::reader(value)?,
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
            ("from", _) => match Provenance::ALL
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
