//! A drawing as SVG markup: one path per series, texts escaped.
//!
//! Looks come from classes. A figure that leaves the page takes its style along.

use super::scale::tenths;
use std::fmt::Write;

/// Where a text stands from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    Start,
    Middle,
    End,
}

/// Markup under construction. Numbers are pixels, rounded to a tenth.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Svg {
    markup: String,
}

impl Svg {
    #[must_use]
    pub fn new() -> Self {
        Self::default()
    }

    /// A path; an empty one is left out.
    pub fn path(&mut self, class: &str, d: &str) {
        if !d.is_empty() {
            let _ = write!(self.markup, r#"<path class="{class}" d="{d}"/>"#);
        }
    }

    pub fn rect(&mut self, class: &str, (x, y): (f64, f64), (width, height): (f64, f64)) {
        let _ = write!(
            self.markup,
            r#"<rect class="{class}" x="{}" y="{}" width="{}" height="{}"/>"#,
            px(x),
            px(y),
            px(width.max(0.0)),
            px(height.max(0.0))
        );
    }

    /// An upright line.
    pub fn upright(&mut self, class: &str, x: f64, (top, bottom): (f64, f64)) {
        self.path(class, &format!("M{} {}V{}", px(x), px(top), px(bottom)));
    }

    /// A level line.
    pub fn level(&mut self, class: &str, y: f64, (left, right): (f64, f64)) {
        self.path(class, &format!("M{} {}H{}", px(left), px(y), px(right)));
    }

    pub fn dot(&mut self, class: &str, (x, y): (f64, f64)) {
        let _ = write!(
            self.markup,
            r#"<circle class="{class}" cx="{}" cy="{}" r="4"/>"#,
            px(x),
            px(y)
        );
    }

    /// A text; what would be markup in it is escaped.
    pub fn text(&mut self, class: &str, (x, y): (f64, f64), anchor: Anchor, text: &str) {
        let anchor = match anchor {
            Anchor::Start => "start",
            Anchor::Middle => "middle",
            Anchor::End => "end",
        };
        let _ = write!(
            self.markup,
            r#"<text class="{class}" x="{}" y="{}" text-anchor="{anchor}">{}</text>"#,
            px(x),
            px(y),
            escaped(text)
        );
    }

    /// A left-to-right gradient between two classed stops, under an id.
    pub fn gradient(&mut self, id: &str, from: &str, to: &str) {
        let _ = write!(
            self.markup,
            r#"<defs><linearGradient id="{id}"><stop class="{from}" offset="0"/><stop class="{to}" offset="1"/></linearGradient></defs>"#
        );
    }

    /// Opens a group under a transform.
    pub fn open_group(&mut self, transform: &str) {
        let _ = write!(self.markup, r#"<g transform="{transform}">"#);
    }

    pub fn close_group(&mut self) {
        self.markup.push_str("</g>");
    }

    /// The whole drawing, with attributes of its root (already escaped).
    #[must_use]
    pub fn finish(self, (width, height): (f64, f64), attributes: &str) -> String {
        let (width, height) = (px(width), px(height));
        format!(
            r#"<svg xmlns="http://www.w3.org/2000/svg" width="{width}" height="{height}" viewBox="0 0 {width} {height}" {attributes}>{}</svg>"#,
            self.markup
        )
    }

    /// What is inside, without the root.
    #[must_use]
    pub fn inner(self) -> String {
        self.markup
    }
}

/// A coordinate in the shortest form, to a tenth.
#[must_use]
pub fn px(value: f64) -> String {
    let tenths = tenths(value);
    let sign = if tenths < 0 { "-" } else { "" };
    let (whole, part) = (tenths.unsigned_abs() / 10, tenths.unsigned_abs() % 10);
    if part == 0 {
        format!("{sign}{whole}")
    } else {
        format!("{sign}{whole}.{part}")
    }
}

/// Text as it may stand in markup and in a quoted attribute.
#[must_use]
pub fn escaped(text: &str) -> String {
    let mut safe = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            '\'' => safe.push_str("&#39;"),
            // Characters that XML has no place for.
            '\0'..='\u{8}' | '\u{b}' | '\u{c}' | '\u{e}'..='\u{1f}' | '\u{fffe}' | '\u{ffff}' => {}
            c => safe.push(c),
        }
    }
    safe
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_cannot_become_markup() {
        let mut svg = Svg::new();
        svg.text("a", (1.04, 2.0), Anchor::End, "<b>&\"'\u{1}");
        assert_eq!(
            svg.inner(),
            r#"<text class="a" x="1" y="2" text-anchor="end">&lt;b&gt;&amp;&quot;&#39;</text>"#
        );
    }
}
