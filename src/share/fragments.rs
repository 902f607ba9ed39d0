//! Common pieces of JSON as single bytes, and back.
//!
//! JSON holds no bytes below 32 (RFC 8259, section 7: they are written as escapes),
//! and ours no line breaks, so such a byte can stand for a piece.

/// Writes each piece as its place in the list, counted from 1; where several fit, the
/// longest. What is no piece stays.
pub(super) fn shortened(json: &[u8], pieces: &[&str]) -> Vec<u8> {
    let mut short = Vec::with_capacity(json.len());
    let mut rest = json;
    while let [first, others @ ..] = rest {
        let fitting = (1_u8..)
            .zip(pieces)
            .filter(|(_, piece)| rest.starts_with(piece.as_bytes()));
        match fitting.max_by_key(|(_, piece)| piece.len()) {
            Some((place, piece)) => {
                short.push(place);
                rest = &rest[piece.len()..];
            }
            None => {
                short.push(*first);
                rest = others;
            }
        }
    }
    short
}

/// Undoes [`shortened`]. Nothing if that would be more than `most` bytes, or if a
/// byte stands for no piece.
pub(super) fn lengthened(
    short: &[u8],
    pieces: &[&str],
    most: usize,
) -> Result<Vec<u8>, Unreadable> {
    let mut json = Vec::with_capacity(short.len());
    for byte in short {
        match byte {
            0..32 => {
                let place = usize::from(*byte).checked_sub(1);
                let piece = place
                    .and_then(|at| pieces.get(at))
                    .ok_or(Unreadable::NoPiece)?;
                json.extend_from_slice(piece.as_bytes());
            }
            byte => json.push(*byte),
        }
        if json.len() > most {
            return Err(Unreadable::TooLong);
        }
    }
    Ok(json)
}

/// Why bytes are nothing that was shortened.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Unreadable {
    NoPiece,
    TooLong,
}

#[cfg(test)]
mod tests {
    use super::*;

    const PIECES: [&str; 3] = ["ab", "abc", "\":"];

    #[test]
    fn there_and_back() {
        for text in ["", "abcabab\":a", "xyz", "ä\":"] {
            let short = shortened(text.as_bytes(), &PIECES);
            let back = lengthened(&short, &PIECES, 64);
            assert_eq!(back.as_deref(), Ok(text.as_bytes()));
        }
        assert_eq!(shortened(b"abcab\":", &PIECES), [2, 1, 3]);
    }

    #[test]
    fn what_is_no_piece_or_too_long_is_refused() {
        for byte in [0, 4, 10, 31] {
            assert_eq!(lengthened(&[byte], &PIECES, 64), Err(Unreadable::NoPiece));
        }
        assert_eq!(lengthened(&[2; 4], &PIECES, 11), Err(Unreadable::TooLong));
        assert!(lengthened(&[2; 4], &PIECES, 12).is_ok());
    }
}
