//! The reader's page, from JSON.

use super::{Wrong, each, part, wrong};
use crate::plan::{
    Path,
    part::{HeldMut, Keyed, Stands, at_own_names},
    reader::{MOST_OPEN, Reader},
};
use serde_json::Value;

pub(super) fn reader(value: &Value) -> Result<Option<Reader>, Wrong> {
    if value.is_null() {
        return Ok(None);
    }
    let mut reader = Reader::unread();
    part(&mut reader, value, "reader")?;
    Ok(Some(reader))
}

impl Keyed for Reader {
    fn unread() -> Self {
        Self::default()
    }
    at_own_names! { title: Stands::held_mut, note: Stands::held_mut, open: HeldMut::Open, units: Stands::held_mut, theme: Stands::held_mut, language: Stands::held_mut }
}

/// Addresses of numbers. That the plan has them is not asked here: one that it
/// has not is passed over.
pub(super) fn addresses(value: &Value, here: &str) -> Result<Vec<Path>, Wrong> {
    let mut open = Vec::new();
    each(value, here, |at, value| {
        let path = value.as_str().and_then(|text| text.parse().ok());
        match path {
            Some(path) if at < MOST_OPEN => open.push(path),
            Some(_) => return wrong(here, "four addresses at the most"),
            None => return wrong(format!("{here}[{at}]"), "the address of a number"),
        }
        Ok(())
    })?;
    Ok(open)
}

#[cfg(test)]
mod tests {
    use super::reader;
    use crate::plan::{
        Path, Reader,
        path::NightField,
        reader::{Language, Theme, Units},
    };
    use serde_json::json;

    #[test]
    fn what_is_written_is_read_again() {
        let full = Reader {
            title: "How long on yours?".into(),
            note: "Ours ran until seven.".into(),
            open: vec![Path::Night(NightField::StartClockMin), Path::Load(0)],
            units: Some(Units::Us),
            theme: Some(Theme::Dark),
            language: Some(Language::German),
        };
        for one in [Reader::default(), full] {
            let json = serde_json::to_value(&one).unwrap();
            assert_eq!(reader(&json), Ok(Some(one)));
        }
        assert_eq!(reader(&json!(null)), Ok(None));
    }

    #[test]
    fn another_shape_is_named_by_its_address() {
        let at = |value| reader(&value).unwrap_err().at;
        assert_eq!(at(json!(3)), "reader");
        assert_eq!(at(json!({"titel": ""})), "reader.titel");
        assert_eq!(at(json!({"language": "fr"})), "reader.language");
        assert_eq!(at(json!({"open": ["banks[0].name"]})), "reader.open[0]");
        let five = ["loads[0].power_w"; 5];
        assert_eq!(at(json!({"open": five})), "reader.open");
    }
}
