//! Pictures against the numbers they are drawn from, and against what a reader needs:
//! no text over another, none cut off at a side.

#[path = "../properties/any_plan.rs"]
mod any_plan;
mod bank;
mod claims;
mod flows;
mod plans;
mod wiring;

use till_morning::view::{chart::frame::Rect, diagram::Picture};

/// Widths that are drawn: the narrowest phone, a usual one, a column, paper.
pub const WIDTHS: [f64; 4] = [240.0, 358.0, 660.0, 720.0];

fn overlap(a: Rect, b: Rect) -> bool {
    // A tenth of a pixel is rounding.
    a.left < b.right - 0.1
        && b.left < a.right - 0.1
        && a.top < b.bottom - 0.1
        && b.top < a.bottom - 0.1
}

/// No two texts overlap, and all stand inside.
pub fn check_texts(picture: &Picture) {
    let all: Vec<_> = picture
        .labels()
        .map(|label| (label.rect(), &label.text))
        .collect();
    for (at, (rect, text)) in all.iter().enumerate() {
        assert!(
            rect.left > -0.5 && rect.right < picture.width + 0.5,
            "{text} leaves a width of {}: {rect:?}",
            picture.width
        );
        assert!(
            rect.top > -3.0 && rect.bottom < picture.height + 3.0,
            "{text}: {rect:?} of {}",
            picture.height
        );
        for (other, said) in &all[at + 1..] {
            assert!(
                !overlap(*rect, *other),
                "{text} / {said} at {}",
                picture.width
            );
        }
    }
}

/// All texts of a picture, in their order.
pub fn texts(picture: &Picture) -> String {
    let all: Vec<&str> = picture.labels().map(|label| label.text.as_str()).collect();
    all.join(" ")
}

#[test]
fn a_text_over_another_is_found() {
    use till_morning::view::{
        chart::svg::Anchor,
        diagram::{Face, Label},
    };
    let label = |x| Label::new(Face::Line, (x, 20.0), Anchor::Start, "12 V");
    let at = |x: f64| {
        let mut picture = Picture {
            width: 300.0,
            height: 40.0,
            ..Picture::default()
        };
        picture.text(label(0.0));
        picture.text(label(x));
        std::panic::catch_unwind(move || check_texts(&picture))
    };
    assert!(at(20.0).is_err() && at(60.0).is_ok() && at(290.0).is_err());
}
