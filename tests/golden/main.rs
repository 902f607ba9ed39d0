//! A handful of plans and the key numbers of their answers, kept as they were.
//!
//! This is no outside check: the numbers are this engine's own. It says only
//! that a change of them is meant. `UPDATE_GOLDEN=1 cargo test --test golden`
//! writes them anew; read the difference before it is committed, and raise the
//! package's version where the same plan now answers otherwise.

use serde_json::Value;
use std::{env, fs, path::PathBuf};
use till_morning::{
    answer::answer,
    plan::{
        Plan,
        open::{plan_from_json, plan_to_json},
    },
};

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/golden")
}

/// What is long, drawn only, or said elsewhere.
const LEFT_OUT: [&str; 10] = [
    "method",
    "trace",
    "bands",
    "events",
    "days",
    "by_bank",
    "by_depth",
    "curve",
    "spread_from",
    "working",
];

/// An answer's key numbers, to six significant digits: enough to see a change,
/// and no more than all machines agree on.
fn key_numbers(value: Value) -> Value {
    match value {
        Value::Number(number) if number.is_f64() => {
            let number = number.as_f64().expect("a float");
            let rounded: f64 = format!("{number:.5e}").parse().expect("a number");
            rounded.into()
        }
        Value::Array(list) => list.into_iter().map(key_numbers).collect(),
        Value::Object(map) => map
            .into_iter()
            .filter(|(key, _)| !LEFT_OUT.contains(&key.as_str()))
            .map(|(key, value)| (key, key_numbers(value)))
            .collect(),
        other => other,
    }
}

#[track_caller]
fn is_as_it_was(name: &str, plan: &Plan) {
    let answer = serde_json::to_value(answer(plan)).expect("JSON");
    let now = serde_json::to_string_pretty(&key_numbers(answer)).expect("JSON") + "\n";
    let file = folder().join("answers").join(name);
    if env::var_os("UPDATE_GOLDEN").is_some() {
        fs::write(&file, &now).expect("the answer is written");
    }
    let was = fs::read_to_string(&file).unwrap_or_default();
    for (line, (was, now)) in was.lines().zip(now.lines()).enumerate() {
        assert_eq!(was, now, "tests/golden/answers/{name}, line {}", line + 1);
    }
    assert!(
        was == now,
        "{name} answers otherwise. If that is meant: UPDATE_GOLDEN=1 cargo test --test golden"
    );
}

#[test]
fn the_demo_answers_as_it_did() {
    is_as_it_was("demo.json", &Plan::demo());
}

#[test]
fn plans_on_file_answer_as_they_did() {
    let mut seen = 0;
    for file in fs::read_dir(folder().join("plans")).expect("the folder of plans") {
        let path = file.expect("a file").path();
        let name = path.file_name().expect("a name").to_string_lossy();
        let text = fs::read_to_string(&path).expect("a plan");
        let plan = plan_from_json(&text).unwrap_or_else(|error| panic!("{name}: {error:?}"));
        assert_eq!(
            plan_from_json(&plan_to_json(&plan)).as_ref(),
            Ok(&plan),
            "{name}"
        );
        is_as_it_was(&name, &plan);
        seen += 1;
    }
    assert_eq!(seen, 5);
}

/// No answer is kept whose plan is gone.
#[test]
fn every_answer_has_its_plan() {
    let count = |folder: PathBuf| fs::read_dir(folder).expect("a folder").count();
    // The demo's plan is in the engine.
    assert_eq!(
        count(folder().join("answers")),
        1 + count(folder().join("plans"))
    );
}

#[test]
fn six_digits_are_kept() {
    let rounded = key_numbers(serde_json::json!({"a": [1.234_567_89, 0.0, 3], "method": "x"}));
    assert_eq!(rounded, serde_json::json!({"a": [1.234_57, 0.0, 3]}));
}
