//! Where the finished wasm is cut.
//!
//! wasm-bindgen and wasm-opt have changed the functions since the linker: so what
//! stays is worked out anew by the calls that stand in the code now. Places in the
//! table and addresses are the linker's still, and so is what it knew of them.

use std::collections::{BTreeMap, BTreeSet};
use std::ops::Range;

use crate::{Fault, module::Whole, origin::Behind};

/// Shorter stretches of constants stay: a segment of their own would weigh as much.
const SHORTEST: u32 = 32;

pub struct Cut<'a> {
    /// The first, and those that come later, in order: each may take from all before.
    pub parts: Vec<Piece<'a>>,
    /// The doors' places in the table, after all others.
    pub doors: BTreeMap<u32, u32>,
}

/// One part, by indices in the whole.
pub struct Piece<'a> {
    /// Functions defined in it.
    pub functions: BTreeSet<u32>,
    /// What it takes from those before.
    pub taken: Taken,
    pub data: Segments<'a>,
}

/// By index in the whole, in order.
#[derive(Default)]
pub struct Taken {
    pub functions: BTreeSet<u32>,
    pub globals: BTreeSet<u32>,
    pub tables: BTreeSet<u32>,
}

impl<'a> Cut<'a> {
    pub fn of(whole: &Whole<'a>, behind: &[Behind]) -> Result<Self, Fault> {
        let mut slots = behind.iter().flat_map(|part| &part.slots);
        if !slots.all(|slot| whole.slots.contains_key(slot)) {
            return Err("the function table is not the linker's".into());
        }
        let table = whole
            .tables
            .get(whole.table as usize)
            .ok_or("no function table")?;
        let doors = whole.doors.keys().copied();
        Ok(Self {
            parts: pieces(whole, behind)?,
            doors: doors.zip(u32::try_from(table.initial)?..).collect(),
        })
    }
}

fn pieces<'a>(whole: &Whole<'a>, behind: &[Behind]) -> Result<Vec<Piece<'a>>, Fault> {
    let mut rest: BTreeSet<u32> =
        (whole.functions_imported..whole.functions.len() as u32).collect();
    let mut data = whole.data.clone();
    let mut pieces = Vec::new();
    for (part, behind) in behind.iter().enumerate() {
        let reached = reached(whole, behind, part)?;
        let functions: BTreeSet<u32> = rest.intersection(&reached).copied().collect();
        rest.retain(|function| !functions.contains(function));
        let (own, after) = parted(&data, &behind.data);
        data = after;
        pieces.push(piece(whole, functions, own, part)?);
    }
    let early = |(door, &to): (&u32, &usize)| {
        let before = pieces.iter().take(to);
        before.clone().any(|piece| piece.functions.contains(door))
    };
    if whole.doors.iter().any(early) {
        return Err("a door itself is called from outside".into());
    }
    pieces.push(piece(whole, rest, data, behind.len())?);
    Ok(pieces)
}

fn piece<'a>(
    whole: &Whole,
    functions: BTreeSet<u32>,
    data: Segments<'a>,
    part: usize,
) -> Result<Piece<'a>, Fault> {
    let mut taken = Taken::default();
    if part > 0 {
        taken = taken_by(whole, &functions, part)?;
    }
    Ok(Piece {
        functions,
        taken,
        data,
    })
}

/// All functions that a part and those before it need.
fn reached(whole: &Whole, behind: &Behind, part: usize) -> Result<BTreeSet<u32>, Fault> {
    let in_table = whole
        .slots
        .iter()
        .filter(|(slot, _)| !behind.slots.contains(slot));
    let mut open: Vec<u32> = in_table.map(|(_, &function)| function).collect();
    open.extend(whole.called_from_outside());
    let mut reached = BTreeSet::new();
    while let Some(function) = open.pop() {
        if !leads_on(whole, function, part) && reached.insert(function) {
            open.extend(whole.named_by(function)?.functions);
        }
    }
    Ok(reached)
}

/// Is it a door to a part after this one?
fn leads_on(whole: &Whole, function: u32, part: usize) -> bool {
    whole.doors.get(&function).is_some_and(|&to| to > part)
}

fn taken_by(whole: &Whole, own: &BTreeSet<u32>, part: usize) -> Result<Taken, Fault> {
    let mut taken = Taken::default();
    taken.tables.insert(whole.table);
    for &function in own {
        let named = whole.named_by(function)?;
        let others = named.functions.into_iter();
        taken
            .functions
            .extend(others.filter(|f| !own.contains(f) && !leads_on(whole, *f, part)));
        taken.globals.extend(named.globals);
        taken.tables.extend(named.tables);
    }
    Ok(taken)
}

pub type Segments<'a> = Vec<(u32, &'a [u8])>;

/// The segments that stay, and those that go.
fn parted<'a>(segments: &[(u32, &'a [u8])], behind: &[Range<u32>]) -> (Segments<'a>, Segments<'a>) {
    let (mut first, mut later) = (Vec::new(), Vec::new());
    for &(start, bytes) in segments {
        let end = start + bytes.len() as u32;
        let piece =
            |from: u32, to: u32| (from, &bytes[(from - start) as usize..(to - start) as usize]);
        let mut at = start;
        for range in behind {
            let (from, to) = (range.start.max(start), range.end.min(end));
            if from < to && to - from >= SHORTEST {
                if at < from {
                    first.push(piece(at, from));
                }
                later.push(piece(from, to));
                at = to;
            }
        }
        if at < end {
            first.push(piece(at, end));
        }
    }
    (first, later)
}

#[cfg(test)]
mod tests {
    use super::parted;

    /// Cut as it may be, every byte is in one of the parts, at its own address.
    #[test]
    fn no_byte_is_lost_or_moved() {
        let bytes: Vec<u8> = (0..200).collect();
        let (start, all) = (1000, bytes.as_slice());
        for behind in [
            vec![],
            vec![1000..1100, 1100..1200],
            vec![900..1050, 1100..1110, 1150..1300],
        ] {
            let (first, later) = parted(&[(start, all)], &behind);
            let mut seen = vec![None; all.len()];
            for (at, piece) in first.iter().chain(&later) {
                for (place, byte) in (at - start..).zip(*piece) {
                    assert_eq!(seen[place as usize].replace(*byte), None);
                }
            }
            assert_eq!(seen.into_iter().flatten().collect::<Vec<_>>(), bytes);
        }
        let (first, later) = parted(&[(start, all)], &[900..1050, 1100..1110]);
        assert_eq!((first.len(), later.len()), (1, 1)); // ten bytes are not worth a segment
    }
}
