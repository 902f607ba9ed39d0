//! A plan as JSON on standard input, its answer as JSON on standard output.
//!
//! Exit code 0 for any plan, however odd (findings say what is wrong with it);
//! 2, and one line on standard error, for what is no plan at all.

use std::{
    io::{self, Read, Write},
    process::ExitCode,
};
use till_morning::{
    answer::answer,
    plan::open::{NotAPlan, plan_from_json},
};

fn main() -> ExitCode {
    let mut bytes = Vec::new();
    if let Err(error) = io::stdin().read_to_end(&mut bytes) {
        return refuse(&error.to_string());
    }
    let text = String::from_utf8_lossy(&bytes);
    match plan_from_json(&text) {
        Ok(plan) => {
            let json = serde_json::to_string_pretty(&answer(&plan)).unwrap_or_default();
            match writeln!(io::stdout(), "{json}") {
                Ok(()) => ExitCode::SUCCESS,
                Err(error) => refuse(&error.to_string()),
            }
        }
        Err(NotAPlan::TooLong { bytes, most }) => {
            refuse(&format!("{bytes} bytes, and {most} are read"))
        }
        Err(NotAPlan::UnknownVersion { version }) => {
            refuse(&format!("version {version} is not known here"))
        }
        Err(NotAPlan::Malformed { line, column }) => {
            refuse(&format!("no JSON from line {line}, column {column} on"))
        }
        Err(NotAPlan::OtherShape { detail }) => refuse(&detail),
    }
}

fn refuse(why: &str) -> ExitCode {
    eprintln!("not a plan: {why}");
    ExitCode::from(2)
}
