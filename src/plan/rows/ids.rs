//! A number of its own for each row of a list, so that a page can tell a row that stayed
//! from another at its place.

use crate::plan::Path;
use std::collections::BTreeMap;

/// The numbers of all rows that were ever shown.
#[derive(Debug, Default)]
pub struct RowIds {
    lists: BTreeMap<Path, Vec<u32>>,
    next: u32,
}

impl RowIds {
    /// The numbers of a list of so many rows: new ones stand at its end.
    #[must_use]
    pub fn of(&mut self, list: Path, count: usize) -> Vec<u32> {
        let ids = self.lists.entry(list).or_default();
        ids.truncate(count);
        while ids.len() < count {
            ids.push(self.next);
            self.next += 1;
        }
        ids.clone()
    }

    /// A row is taken out of its list.
    pub fn remove(&mut self, list: Path, at: usize) {
        if let Some(ids) = self.lists.get_mut(&list)
            && at < ids.len()
        {
            ids.remove(at);
        }
        if list == Path::Units {
            // What a unit has is known by the unit's place.
            let is_of_unit = |path: &Path| matches!(path, Path::Modes(_) | Path::UnitMap(_));
            self.lists.retain(|path, _| !is_of_unit(path));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_row_keeps_its_number_while_others_come_and_go() {
        let mut ids = RowIds::default();
        assert_eq!(ids.of(Path::Banks, 2), [0, 1]);
        assert_eq!(ids.of(Path::Units, 1), [2]);
        assert_eq!(ids.of(Path::Banks, 3), [0, 1, 3]);
        ids.remove(Path::Banks, 1);
        assert_eq!(ids.of(Path::Banks, 2), [0, 3]);
        // By undo, or from a file: what is there more is new.
        assert_eq!(ids.of(Path::Banks, 3), [0, 3, 4]);
        ids.remove(Path::Banks, 7);
        assert_eq!(ids.of(Path::Banks, 1), [0]);
    }

    #[test]
    fn modes_are_new_once_a_unit_is_gone() {
        let mut ids = RowIds::default();
        let before = ids.of(Path::Modes(1), 2);
        ids.remove(Path::Units, 0);
        assert_ne!(ids.of(Path::Modes(1), 2), before);
    }
}
