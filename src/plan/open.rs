//! From text to a plan: bounded, versioned, never a panic.

use super::{Plan, VERSION, read};
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
        _ => read::plan(&value).map_err(|wrong| NotAPlan::OtherShape {
            detail: wrong.to_string(),
        }),
    }
}

/// The plan as a file, for people to read: indented JSON.
#[must_use]
pub fn plan_to_json(plan: &Plan) -> String {
    let mut text = indented(&serde_json::to_string(plan).unwrap_or_default());
    text.push('\n');
    text
}

/// Compact JSON with a line for each value.
///
/// The library's own indenting writer would be compiled for every type of the
/// plan a second time; the text alone says all that is needed.
#[must_use]
pub fn indented(json: &str) -> String {
    let mut text = String::with_capacity(2 * json.len());
    let (mut depth, mut quoted, mut escaped) = (0_usize, false, false);
    let line = |text: &mut String, depth: usize| {
        text.push('\n');
        (0..depth).for_each(|_| text.push_str("  "));
    };
    let mut before = ' ';
    for c in json.chars() {
        if quoted {
            text.push(c);
            quoted = escaped || c != '"';
            escaped = c == '\\' && !escaped;
            before = c;
            continue;
        }
        let (opens, closes) = ("[{".contains(c), "]}".contains(c));
        depth -= usize::from(closes && depth > 0);
        let empty = closes && "[{".contains(before);
        if (closes && !empty) || ("[{,".contains(before) && !closes) {
            line(&mut text, depth);
        }
        text.push(c);
        if c == ':' {
            text.push(' ');
        }
        depth += usize::from(opens);
        quoted = c == '"';
        before = c;
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn indents_as_the_library_does() {
        let mut plan = Plan::demo();
        plan.title = "a \"b\" [c, {d}: \\".into();
        for value in [
            serde_json::json!({"a": [], "b": {}, "c": [1, "x\\\"", null]}),
            serde_json::to_value(&plan).unwrap(),
        ] {
            let theirs = serde_json::to_string_pretty(&value).unwrap();
            assert_eq!(indented(&value.to_string()), theirs);
        }
        assert_eq!(plan_from_json(&plan_to_json(&plan)), Ok(plan));
    }
}
