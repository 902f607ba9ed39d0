//! Cuts the page's wasm in two at its doors.
//!
//! ```text
//! till-morning-split LINKED FINISHED DOOR[,DOOR] FIRST LATER WHOLE LIST
//! ```
//!
//! LINKED is the program as the linker leaves it, with its relocations; FINISHED
//! the same after wasm-bindgen and wasm-opt, with its names; DOOR the path of a
//! function that leads to what may come later. FIRST starts as FINISHED would.
//! LATER holds what only doors reach; it takes memory, table and functions
//! from FIRST (its instance's exports, as module `f`) and hangs its own into the
//! table. Before that no door must be passed: it traps there. WHOLE is
//! FINISHED without names and what else is no program, for a page that takes all at once.
//! LIST says of each function how many bytes it has, in which part, largest first:
//! where to look when a part grows.

mod cut;
mod doors;
mod linked;
mod module;
mod origin;
mod write;

use doors::Doors;
use std::{fs, process::ExitCode};
use wasmparser::{ConstExpr, Operator, Validator};

/// Why it cannot be done.
pub type Fault = Box<dyn std::error::Error>;

fn main() -> ExitCode {
    let given: Vec<String> = std::env::args().skip(1).collect();
    let [linked, finished, doors, outputs @ ..] = given.as_slice() else {
        return usage();
    };
    let Ok([first, later, whole, list]) = <&[String; 4]>::try_from(outputs) else {
        return usage();
    };
    match split(
        linked,
        finished,
        &Doors::named(doors),
        [first, later, whole, list],
    ) {
        Ok(line) => {
            println!("{line}");
            ExitCode::SUCCESS
        }
        Err(fault) => {
            eprintln!("till-morning-split: {fault}");
            ExitCode::FAILURE
        }
    }
}

fn usage() -> ExitCode {
    eprintln!("usage: till-morning-split LINKED FINISHED DOOR[,DOOR] FIRST LATER WHOLE LIST");
    ExitCode::from(2)
}

/// Writes all; gives a line that says how they came out.
fn split(
    linked: &str,
    finished: &str,
    doors: &Doors,
    outputs: [&String; 4],
) -> Result<String, Fault> {
    let behind = origin::behind(&fs::read(linked)?, doors)?;
    let finished = fs::read(finished)?;
    let whole = module::Whole::read(&finished, doors)?;
    let cut = cut::Cut::of(&whole, &behind)?;
    let parts = [
        write::first(&whole, &cut)?,
        write::later(&whole, &cut)?,
        write::bare(&finished)?,
    ];
    for (path, wasm) in outputs.iter().zip(&parts) {
        Validator::new().validate_all(wasm)?;
        fs::write(path, wasm)?;
    }
    fs::write(outputs[3], list(&whole, &cut))?;
    let constants: usize = cut.later_data.iter().map(|(_, bytes)| bytes.len()).sum();
    Ok(format!(
        "cut in two: first {} bytes; later {} bytes, {} of {} functions, {constants} bytes of constants",
        parts[0].len(),
        parts[1].len(),
        cut.later.len(),
        whole.bodies.len(),
    ))
}

/// A line for each function: bytes, part, name.
fn list(whole: &module::Whole, cut: &cut::Cut) -> String {
    let mut lines: Vec<_> = (whole.functions_imported..)
        .zip(&whole.bodies)
        .map(|(function, body)| {
            let part = if cut.later.contains(&function) {
                "later"
            } else {
                "first"
            };
            let name = whole.names.get(&function).copied().unwrap_or("?");
            let plain = format!("{:#}", rustc_demangle::demangle(name));
            (body.as_bytes().len(), part, plain)
        })
        .collect();
    lines.sort_by(|a, b| b.cmp(a));
    lines
        .iter()
        .map(|(bytes, part, name)| format!("{bytes:7} {part} {name}\n"))
        .collect()
}

/// The number that an offset is.
pub fn constant(offset: &ConstExpr) -> Result<u32, Fault> {
    let mut operators = offset.get_operators_reader();
    match (operators.read()?, operators.read()?) {
        (Operator::I32Const { value }, Operator::End) => Ok(value.cast_unsigned()),
        other => Err(format!("an offset that is no number: {other:?}").into()),
    }
}
