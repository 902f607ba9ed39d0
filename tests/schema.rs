//! The JSON Schemas of the contract: committed, up to date, and true.
//!
//! `UPDATE_SCHEMA=1 cargo test --test schema` writes them anew; the difference
//! then shows what a reader of plans and answers has to follow.

use schemars::{Schema, schema_for};
use serde_json::{Value, json};
use std::{collections::BTreeSet, fs, path::PathBuf};
use till_morning::{
    answer::{Answer, answer},
    plan::{Plan, open::plan_from_json},
};

fn of_plan() -> Value {
    as_value(schema_for!(Plan))
}

fn of_answer() -> Value {
    as_value(schema_for!(Answer))
}

fn as_value(schema: Schema) -> Value {
    serde_json::to_value(schema).expect("a schema is JSON")
}

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests")
}

#[track_caller]
fn is_committed(name: &str, schema: &Value) {
    let file = folder().join("schema").join(name);
    let text = serde_json::to_string_pretty(schema).expect("JSON") + "\n";
    if std::env::var_os("UPDATE_SCHEMA").is_some() {
        fs::write(&file, &text).expect("the schema is written");
    }
    let committed = fs::read_to_string(&file).unwrap_or_default();
    assert!(
        committed == text,
        "tests/schema/{name} is stale: UPDATE_SCHEMA=1 cargo test --test schema, and look at the difference"
    );
}

#[test]
fn the_plan_schema_is_up_to_date() {
    is_committed("plan.schema.json", &of_plan());
}

#[test]
fn the_answer_schema_is_up_to_date() {
    is_committed("answer.schema.json", &of_answer());
}

/// What another program's reading of a schema (the `jsonschema` crate) finds
/// wrong with a document.
fn faults(schema: &Value, document: &Value) -> Vec<String> {
    let validator = jsonschema::validator_for(schema).expect("a schema");
    validator
        .iter_errors(document)
        .map(|error| format!("{}: {error}", error.instance_path()))
        .collect()
}

#[test]
fn the_schemas_are_schemas() {
    for schema in [of_plan(), of_answer()] {
        assert!(jsonschema::meta::is_valid(&schema));
    }
    assert!(!jsonschema::meta::is_valid(&json!({"type": "a shoe"})));
}

/// The demo, and every plan that the golden tests keep, the broken one too:
/// a value outside its range is no fault of shape.
fn plans() -> Vec<Value> {
    let mut plans = vec![serde_json::to_value(Plan::demo()).expect("JSON")];
    let files = fs::read_dir(folder().join("golden/plans")).expect("the folder of plans");
    for file in files {
        let text = fs::read_to_string(file.expect("a file").path()).expect("a plan");
        plans.push(serde_json::from_str(&text).expect("JSON"));
    }
    assert!(plans.len() > 5);
    plans
}

#[test]
fn plans_and_their_answers_are_as_the_schemas_say() {
    for document in plans() {
        assert_eq!(faults(&of_plan(), &document), [""; 0], "{document}");
        let plan = plan_from_json(&document.to_string()).expect("a plan");
        let answer = serde_json::to_value(answer(&plan)).expect("JSON");
        assert_eq!(faults(&of_answer(), &answer), [""; 0]);
    }
}

/// What the schema refuses the engine refuses, and the other way round.
#[test]
fn schema_and_engine_refuse_the_same() {
    let demo = serde_json::to_value(Plan::demo()).expect("JSON");
    let with = |pointer: &str, value: Value| {
        let mut plan = demo.clone();
        *plan.pointer_mut(pointer).expect("a place in the demo") = value;
        plan
    };
    let shapes = [
        (json!({}), false),
        (json!({"version": 1, "banks": [], "units": []}), true),
        (with("/banks", json!(3)), false),
        (with("/banks/0/battery_rated_ah", json!("105")), false),
        (
            with("/banks/0/battery_rated_ah", json!({"value": 105.0})),
            true,
        ),
        (
            with(
                "/banks/0/battery_rated_ah",
                json!({"value": 105.0, "spread": 2.0}),
            ),
            false,
        ),
        (with("/banks/0/chemistry", json!("cheese")), false),
        (with("/banks/0/series_count", json!(-1)), false),
        (with("/banks/0/depth_percent", json!(-1.0)), true),
        (with("/banks/0/depth_percent", Value::Null), true),
        (
            with("/units/0", json!({"modes": [], "colour": "red"})),
            false,
        ),
        (with("/units/0/modes/0", json!({"name": "no draw"})), false),
        (
            with(
                "/units/0/modes/0",
                json!({"name": "", "current_a": 3.0, "measured_at_v": 12.0}),
            ),
            true,
        ),
        (with("/night", json!({"unknown": "depth"})), true),
    ];
    for (document, is_a_plan) in shapes {
        let found = faults(&of_plan(), &document);
        assert_eq!(found.is_empty(), is_a_plan, "{document} {found:?}");
        let read = plan_from_json(&document.to_string());
        assert_eq!(read.is_ok(), is_a_plan, "{document} {read:?}");
    }
}

/// Units that a key of a number ends in.
const UNITS: [&str; 30] = [
    "_ms",
    "_ah",
    "_wh",
    "_w",
    "_v",
    "_a",
    "_h",
    "_m",
    "_mm2",
    "_m2",
    "_m3",
    "_m3_h",
    "_m_s",
    "_k",
    "_kg",
    "_deg",
    "_l",
    "_l_per_kwh",
    "_kj_k",
    "_w_m2_k",
    "_w_m2",
    "_percent_per_k",
    "_mohm",
    "_c",
    "_min",
    "_percent",
    "_percent_per_kw",
    "_count",
    "_per_battery",
    "_exponent",
];

/// Numbers whose key names no unit, and why.
const WITHOUT: [&str; 54] = [
    // A date, and the number that a row of chances starts from.
    "year",
    "month",
    "day_of_month",
    "seed_number",
    // Ratios.
    "cop",
    "linke_turbidity",
    "moisture_buffer",
    // Factors on a plan's figures and how well they are told, of a night's readings.
    "used_ratio_number",
    "after_number",
    "sd_after_number",
    "sd_before_number",
    "misfit_number",
    // The document's own.
    "version",
    // In a figure: its unit is in the key that holds the figure.
    "value",
    // With its unit in a key beside it (held by a test below), or in a figure.
    "min",
    "max",
    "draw",
    "fails_at",
    // Of a band: its unit is in the key that holds the band.
    "low",
    "likely",
    "high",
    // Of a claim and its verdict: in the unit of what `about` names, or of the
    // meter that read it.
    "measured",
    "as_measured",
    "claimed",
    "claimed_most",
    "expanded",
    "meter_limit",
    "full_scale_number",
    "counts_number",
    "one_count_number",
    // Ratios of a claim.
    "coverage",
    "by_rate",
    "by_temperature",
    "cop_expanded",
    // In the currency that was typed; and what the bank gives in its life.
    "price_number",
    "cost_number",
    "shore_price_per_kwh",
    "stated_number",
    "taken_number",
    "per_lifetime_kwh",
    "lifetime_kwh",
    // Places in lists.
    "claim",
    "bank",
    "charger",
    "array",
    "load",
    "lower",
    "unit",
    "mode",
    "asked_unit",
    "asked_mode",
    "row",
    // How many.
    "most",
    "cells",
];
const HOW_MANY: [&str; 2] = ["count", "parallel"];
/// A key that is a unit and nothing else.
const A_UNIT: [&str; 1] = ["wh"];

/// Every property of every object in a schema, with the object it is in.
fn properties<'a>(schema: &'a Value, found: &mut Vec<(&'a str, &'a Value, &'a Value)>) {
    if let Some(Value::Object(map)) = schema.get("properties") {
        found.extend(map.iter().map(|(key, inner)| (key.as_str(), inner, schema)));
    }
    match schema {
        Value::Object(map) => map.values().for_each(|inner| properties(inner, found)),
        Value::Array(list) => list.iter().for_each(|inner| properties(inner, found)),
        _ => {}
    }
}

/// Whether a property holds a number, a figure or a band of numbers.
fn is_number(schema: &Value) -> bool {
    let names = |value: &Value| matches!(value.as_str(), Some("number" | "integer"));
    let by_type = match schema.get("type") {
        Some(Value::Array(types)) => types.iter().any(names),
        Some(one) => names(one),
        None => false,
    };
    let reference = schema.get("$ref").and_then(Value::as_str);
    let by_reference = matches!(reference, Some("#/$defs/Figure" | "#/$defs/Band"));
    let either = schema.get("anyOf").and_then(Value::as_array);
    by_type || by_reference || either.is_some_and(|any| any.iter().any(is_number))
}

fn names_its_unit(key: &str) -> bool {
    UNITS.iter().any(|unit| key.ends_with(unit))
}

#[test]
fn keys_of_numbers_end_in_their_unit() {
    let (plan, answer) = (of_plan(), of_answer());
    let mut all = Vec::new();
    properties(&plan, &mut all);
    properties(&answer, &mut all);
    let numbers = all.iter().filter(|(_, inner, _)| is_number(inner));
    let keys: BTreeSet<&str> = numbers.map(|(key, _, _)| *key).collect();
    assert!(keys.contains("battery_rated_ah") && keys.contains("hours_h"));
    let without: BTreeSet<&str> = keys
        .into_iter()
        .filter(|key| !names_its_unit(key))
        .collect();
    // An exception that is no longer needed is to go, so the sets are the same.
    let allowed: BTreeSet<&str> = WITHOUT.into_iter().chain(HOW_MANY).chain(A_UNIT).collect();
    assert_eq!(without, allowed);
}

/// A bare number has its unit beside it, unless it is a figure's.
#[test]
fn bare_numbers_have_their_unit_beside_them() {
    let (plan, answer) = (of_plan(), of_answer());
    let mut all = Vec::new();
    properties(&plan, &mut all);
    properties(&answer, &mut all);
    let bare = all.iter().filter(|(key, inner, _)| {
        matches!(*key, "value" | "min" | "max" | "draw" | "fails_at") && is_number(inner)
    });
    let mut seen = 0;
    for (key, _, object) in bare {
        let beside = &object["properties"];
        let named = ["unit", "draw_unit", "from"];
        assert!(
            named.iter().any(|key| beside.get(key).is_some()),
            "{key} in {object}"
        );
        seen += 1;
    }
    assert!(seen > 5);
}

#[test]
fn the_scan_sees_a_key_without_a_unit() {
    let bad = json!({"$defs": {"A": {"properties": {
        "speed": {"type": ["number", "null"]}, "name": {"type": "string"},
        "mass_w": {"anyOf": [{"$ref": "#/$defs/Figure"}, {"type": "null"}]}
    }}}});
    let mut all = Vec::new();
    properties(&bad, &mut all);
    let numbers = all.iter().filter(|(_, inner, _)| is_number(inner));
    let keys: Vec<_> = numbers.map(|(key, ..)| *key).collect();
    assert_eq!(keys, ["mass_w", "speed"]);
    assert!(names_its_unit("mass_w") && !names_its_unit("speed"));
}
