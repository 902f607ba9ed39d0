//! Texts broken into lines that fit.

/// A text in lines of at most so many letters, broken at blanks; a word that is longer
/// than a line is broken where the line ends.
#[must_use]
pub fn wrapped(text: &str, most: usize) -> Vec<String> {
    let most = most.max(2);
    let mut lines: Vec<String> = Vec::new();
    for word in text
        .split([' ', '\n', '\t'])
        .filter(|word| !word.is_empty())
    {
        let mut rest: Vec<char> = word.chars().collect();
        let fits = lines
            .last()
            .is_some_and(|line| line.chars().count() + 1 + rest.len() <= most);
        if let Some(line) = lines.last_mut().filter(|_| fits) {
            line.push(' ');
            line.extend(rest);
            continue;
        }
        while rest.len() > most {
            let tail = rest.split_off(most - 1);
            rest.push('-');
            lines.push(rest.into_iter().collect());
            rest = tail;
        }
        lines.push(rest.into_iter().collect());
    }
    lines
}

/// The same in so many lines at most; what does not fit is cut, and seen to be.
#[must_use]
pub fn in_lines(text: &str, most: usize, lines: usize) -> Vec<String> {
    let mut all = wrapped(text, most);
    if all.len() > lines {
        all.truncate(lines);
        if let Some(last) = all.last_mut() {
            let kept: Vec<char> = last.chars().take(most.max(2) - 1).collect();
            *last = kept.into_iter().collect::<String>() + "…";
        }
    }
    all
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_word_longer_than_a_line_is_broken() {
        assert_eq!(
            wrapped("an Undervoltage cut", 6),
            ["an", "Under-", "volta-", "ge cut"]
        );
        assert_eq!(wrapped(" \n", 6), [""; 0]);
    }

    #[test]
    fn what_is_cut_is_seen_to_be() {
        assert_eq!(in_lines("one two three", 7, 1), ["one tw…"]);
        assert_eq!(in_lines("one two", 7, 1), ["one two"]);
    }
}
