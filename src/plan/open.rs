//! From text to a plan: bounded, versioned, never a panic.

use super::{Plan, VERSION};
use serde::de::DeserializeOwned;
use serde_json::Value;

/// Bytes of JSON that are read. A full plan is under 20 kB.
pub const MOST_BYTES: usize = 256 * 1024;

/// Why a text is no plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NotAPlan {
    TooLong {
        bytes: usize,
        most: usize,
    },
    /// Made by a later (or no known) version of this program.
    UnknownVersion {
        version: u64,
    },
    /// JSON of another shape: which key, and what is expected there.
    OtherShape {
        detail: String,
    },
    /// Not JSON from this place on, counted from 1.
    Malformed {
        line: usize,
        column: usize,
    },
}

/// Reads a plan from JSON of any known version.
///
/// # Errors
/// See [`NotAPlan`]. Values outside their range are no error here: they open,
/// and the answer's findings name them.
///
/// ```
/// use till_morning::plan::{Plan, open::{plan_from_json, NotAPlan}};
/// let text = serde_json::to_string(&Plan::demo()).unwrap();
/// assert_eq!(plan_from_json(&text), Ok(Plan::demo()));
/// assert_eq!(plan_from_json(r#"{"version": 9}"#), Err(NotAPlan::UnknownVersion { version: 9 }));
/// ```
pub fn plan_from_json(text: &str) -> Result<Plan, NotAPlan> {
    if text.len() > MOST_BYTES {
        return Err(NotAPlan::TooLong {
            bytes: text.len(),
            most: MOST_BYTES,
        });
    }
    // Files from some editors begin with a byte-order mark.
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let value: Value = serde_json::from_str(text).map_err(|error| NotAPlan::Malformed {
        line: error.line(),
        column: error.column(),
    })?;
    // The version first: what else a later one holds is not ours to judge.
    match value.get("version").and_then(Value::as_u64) {
        Some(version) if version != u64::from(VERSION) => Err(NotAPlan::UnknownVersion { version }),
        _ => shaped(value).map_err(|detail| NotAPlan::OtherShape { detail }),
    }
}

/// JSON as a plan, a draft or a list of them. All is read this one way: what reads a
/// plan is compiled for each, and is a large part of the page.
///
/// # Errors
/// Where it is of another shape, and what is expected there.
pub fn shaped<T: DeserializeOwned>(value: Value) -> Result<T, String> {
    serde_path_to_error::deserialize(value)
        .map_err(|error| what_is_wrong(&error.path().to_string(), &error.inner().to_string()))
}

/// Serde's names of what it expects, and what people call it.
const IN_WORDS: [(&str, &str); 6] = [
    ("f64", "a number"),
    ("u32", "a whole number"),
    ("usize", "a whole number"),
    ("a sequence", "a list"),
    ("a string", "a text"),
    ("a boolean", "true or false"),
];

/// Where a plan is of another shape, and what is expected there.
fn what_is_wrong(at: &str, message: &str) -> String {
    let mut at = if at == "." { "plan" } else { at }.to_owned();
    // A key that is missing is part of the address, and so is one that this kind
    // of feed or draw does not have.
    let of_a_key = ["missing field `", "unknown field `"];
    let of_a_key = of_a_key.iter().find_map(|said| message.strip_prefix(said));
    if let Some((key, _)) = of_a_key.and_then(|rest| rest.split_once('`'))
        && at.rsplit('.').next() != Some(key)
    {
        at = format!("{at}.{key}");
    }
    let Some((found, expected)) = message.rsplit_once(", expected ") else {
        return format!("{at}: {message}");
    };
    let in_words = IN_WORDS.iter().find(|(name, _)| *name == expected);
    let expected = match in_words {
        Some((_, words)) => words,
        None if expected.starts_with("struct ") => "an object",
        None => expected,
    };
    format!("{at}: {found}, expected {expected}")
}

/// The plan as a file, for people to read: indented JSON.
#[must_use]
pub fn plan_to_json(plan: &Plan) -> String {
    let mut text = serde_json::to_string_pretty(plan).unwrap_or_default();
    text.push('\n');
    text
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    /// The demo with one value changed.
    fn with(pointer: &str, key: &str, value: Value) -> Result<Plan, NotAPlan> {
        let mut plan = serde_json::to_value(Plan::demo()).unwrap();
        plan.pointer_mut(pointer).unwrap()[key] = value;
        plan_from_json(&plan.to_string())
    }

    /// What a change of the demo is refused with.
    #[track_caller]
    fn refused(pointer: &str, key: &str, value: Value, wanted: &str) {
        match with(pointer, key, value) {
            Err(NotAPlan::OtherShape { detail }) => assert_eq!(detail, wanted),
            read => panic!("{wanted}: {read:?}"),
        }
    }

    #[test]
    fn what_is_written_is_read_again() {
        assert_eq!(
            plan_from_json(&plan_to_json(&Plan::demo())),
            Ok(Plan::demo())
        );
    }

    #[test]
    fn a_value_of_another_kind_is_named_by_its_address() {
        let figure = "banks[0].battery_rated_ah: expected a number, or an object with value, from and spread_percent";
        let bank = "/banks/0";
        refused(bank, "battery_rated_ah", json!("105"), figure);
        refused(bank, "battery_rated_ah", json!(null), figure);
        let spread = json!({"value": 105, "spread": 2});
        refused(bank, "battery_rated_ah", spread, figure);
        refused(
            bank,
            "battery_nominal_v",
            json!("12"),
            "banks[0].battery_nominal_v: invalid type: string \"12\", expected a number",
        );
        refused(
            bank,
            "series_count",
            json!(-1),
            "banks[0].series_count: invalid value: integer `-1`, expected a whole number",
        );
        refused(
            bank,
            "chemistry",
            json!("cheese"),
            "banks[0].chemistry: unknown variant `cheese`, expected one of `lfp`, `nmc`, `sodium_ion`, `agm`, `gel`, `flooded`",
        );
        refused(
            "",
            "day",
            json!(3),
            "day: invalid type: integer `3`, expected an object",
        );
        refused(
            "",
            "loads",
            json!(3),
            "loads: invalid type: integer `3`, expected a list",
        );
        refused(
            "",
            "title",
            json!(3),
            "title: invalid type: integer `3`, expected a text",
        );
        refused(
            "",
            "show",
            json!({"us_units": 1}),
            "show.us_units: invalid type: integer `1`, expected true or false",
        );
        assert_eq!(
            plan_from_json("3"),
            Err(NotAPlan::OtherShape {
                detail: "plan: invalid type: integer `3`, expected an object".into()
            })
        );
    }

    #[test]
    fn a_key_too_many_or_missing_is_named() {
        refused(
            "",
            "show",
            json!({"us": true}),
            "show.us: unknown field `us`, expected `us_units`",
        );
        refused(
            "",
            "loads",
            json!([{"name": ""}]),
            "loads[0].power_w: missing field `power_w`",
        );
        let cable = json!({"length": 16});
        let wanted = "units[0].cable.length: unknown field `length`, expected one of `length_m`, `area_mm2`, `temperature_c`, `connections_mohm`";
        refused("/units/0", "cable", cable, wanted);
    }

    #[test]
    fn a_feed_has_the_keys_of_its_kind() {
        let refused = |feed, wanted| refused("/units/0", "feed", feed, wanted);
        refused(
            json!({"kind": "direct", "idle_w": 3}),
            "units[0].feed.idle_w: unknown field `idle_w`, expected `kind`",
        );
        refused(
            json!({"kind": "dc_dc", "output_v": 13, "efficiency_percent": 90}),
            "units[0].feed.idle_w: missing field `idle_w`",
        );
        refused(
            json!({"kind": "dc_dc", "output_v": true}),
            "units[0].feed.output_v: invalid type: boolean `true`, expected a number",
        );
        refused(
            json!({"output_v": 13}),
            "units[0].feed.kind: missing field `kind`",
        );
        let read = with("/units/0", "feed", json!({"kind": "direct"}));
        assert_eq!(read.unwrap().units[0].feed, crate::plan::Feed::Direct);
    }

    #[test]
    fn a_mode_draws_watts_or_amps_and_not_both() {
        let mode = |mode: Value, wanted: &str| {
            let mut plan = serde_json::to_value(Plan::demo()).unwrap();
            *plan.pointer_mut("/units/0/modes/0").unwrap() = mode;
            let detail = wanted.into();
            let read = plan_from_json(&plan.to_string());
            assert_eq!(read, Err(NotAPlan::OtherShape { detail }));
        };
        mode(
            json!({"name": ""}),
            "units[0].modes[0].power_w: missing field `power_w`",
        );
        mode(
            json!({"name": "", "current_a": 3}),
            "units[0].modes[0].measured_at_v: missing field `measured_at_v`",
        );
        mode(
            json!({"name": "", "power_w": 30, "current_a": 3, "measured_at_v": 12}),
            "units[0].modes[0].power_w: unknown field `power_w`, expected one of `name`, `current_a`, `measured_at_v`, `basis`, `duty_percent`, `standby_w`, `cooling_w`",
        );
        mode(
            json!({"name": "", "power_w": 30, "duty_percent": "all"}),
            "units[0].modes[0].duty_percent: expected a number, or an object with value, from and spread_percent",
        );
    }

    #[test]
    fn a_reader_has_four_addresses_of_numbers_at_the_most() {
        refused(
            "",
            "reader",
            json!({"open": ["banks[0].name"]}),
            "reader.open[0]: no such field in a plan",
        );
        refused(
            "",
            "reader",
            json!({"open": vec!["loads[0].power_w"; 5]}),
            "reader.open: invalid length 5, expected four addresses at the most",
        );
        let read = with("", "reader", json!(null)).unwrap();
        assert_eq!(read.reader, None);
    }
}
