//! The native example: a plan on standard input, its answer on standard output.

use serde_json::Value;
use std::{
    env,
    io::Write,
    path::PathBuf,
    process::{Command, Output, Stdio},
};
use till_morning::{
    answer::{Answer, answer},
    plan::{Plan, open::plan_to_json},
};

/// The example as built beside this test: `<profile>/deps/example-…` is run, and
/// `<profile>/examples/answer` is wanted.
fn built() -> PathBuf {
    let this = env::current_exe().expect("this test");
    let profile = this.ancestors().nth(2).expect("the profile's folder");
    // `cargo test --test example` alone builds no examples; this does nothing
    // where it is fresh.
    let mut cargo = Command::new(env!("CARGO"));
    cargo
        .args(["build", "--quiet", "--example", "answer"])
        .arg("--manifest-path")
        .arg(concat!(env!("CARGO_MANIFEST_DIR"), "/Cargo.toml"))
        .arg("--target-dir")
        .arg(profile.parent().expect("the target folder"));
    if profile.ends_with("release") {
        cargo.arg("--release");
    }
    assert!(cargo.status().expect("cargo").success());
    profile
        .join("examples/answer")
        .with_extension(env::consts::EXE_EXTENSION)
}

fn given(input: &[u8]) -> Output {
    let mut example = Command::new(built())
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the example");
    let mut pipe = example.stdin.take().expect("its input");
    pipe.write_all(input).expect("input taken");
    drop(pipe);
    example.wait_with_output().expect("its output")
}

#[test]
fn the_demo_is_answered() {
    let output = given(plan_to_json(&Plan::demo()).as_bytes());
    assert_eq!(output.status.code(), Some(0));
    assert_eq!(output.stderr, b"");
    let text = String::from_utf8(output.stdout).expect("text");
    let read: Answer = serde_json::from_str(&text).expect("an answer");
    let demo = answer(&Plan::demo());
    assert_eq!(read.findings, demo.findings);
    assert_eq!(read.runs.len(), demo.runs.len());
}

/// A plan that cannot be answered is one all the same: findings say why.
#[test]
fn a_plan_out_of_range_is_answered() {
    let mut plan = Plan::demo();
    plan.banks[0].depth_percent = Some(400.0);
    let output = given(plan_to_json(&plan).as_bytes());
    assert_eq!(output.status.code(), Some(0));
    let answer: Value = serde_json::from_slice(&output.stdout).expect("JSON");
    assert_eq!(answer["findings"][0]["field"], "banks[0].depth_percent");
    assert_eq!(answer["runs"], serde_json::json!([]));
}

#[test]
fn what_is_no_plan_is_refused_in_one_line() {
    let much = vec![b' '; 300 * 1024];
    let wrong: [&[u8]; 7] = [
        b"",
        b"garbage\nof two lines",
        b"{}",
        b"{\"version\": 1}",
        b"{\"version\": 7, \"banks\": [], \"units\": []}",
        b"\xff\xfe\x00",
        &much,
    ];
    for input in wrong {
        let output = given(input);
        let said = String::from_utf8(output.stderr).expect("text");
        assert_eq!(output.status.code(), Some(2), "{said}");
        assert_eq!(output.stdout, b"", "{said}");
        assert_eq!(said.lines().count(), 1, "{said}");
        assert!(said.ends_with('\n') && said.trim().len() > 10, "{said}");
    }
}
