//! The bank: as many batteries and strings as there are, or as fit and the rest
//! counted; and the string that gives most is the one that Kirchhoff's laws name.

use super::{WIDTHS, check_texts, plans, texts};
use till_morning::text::Formatter;
use till_morning::{
    answer::wiring::{Verdict, wiring},
    physics::wiring::{Battery, Row, TakeOff},
    plan::{Plan, wiring::TakeOff as Leave},
    quantity::{amps, in_amps, ohms, volts},
    view::{
        diagram::bank::{Place, condensed},
        diagram::{Mark, Picture},
        drawing::{bank_diagram, leave},
    },
};

fn count(picture: &Picture, class: &str) -> usize {
    let is = |mark: &&Mark| matches!(mark, Mark::Path { class: of, .. } if of == class);
    picture.marks.iter().filter(is).count()
}

/// The same bank at every width.
fn draw(series: u32, parallel: u32, take_off: Leave) -> [Picture; 4] {
    let mut plan = plans::large();
    (plan.banks[0].series_count, plan.banks[0].parallel_count) = (series, parallel);
    plan.banks[0].battery_nominal_v = Some(3.2);
    plan.wiring.take_off = Some(take_off);
    let answer = wiring(&plan).unwrap();
    WIDTHS.map(|width| {
        bank_diagram(Formatter::ENGLISH, &plan, &answer, width)
            .unwrap()
            .picture
    })
}

/// The string marked is one with the highest current of the network, whatever the
/// links: the network itself is held against a circuit simulator's (tests/published).
#[test]
fn the_most_loaded_is_marked() {
    let cases = [
        (TakeOff::SameEnd, Leave::SameEnd),
        (TakeOff::Diagonal, Leave::Diagonal),
        (TakeOff::BusBar, Leave::BusBar),
    ];
    for (take_off, name) in cases {
        for strings in 2..=40u32 {
            let battery = Battery {
                open_circuit: volts(13.2),
                resistance: ohms(0.02),
            };
            let row = Row {
                batteries: vec![battery; strings as usize],
                link: ohms(0.0005),
                take_off,
            };
            let sharing = row.share(amps(100.0)).unwrap();
            for (at, &current) in sharing.currents.iter().enumerate() {
                let is_highest = in_amps(sharing.highest) - in_amps(current) < 1e-9;
                assert_eq!(
                    leave(name).is_most_loaded(at as u32, strings),
                    is_highest,
                    "{name:?}, {at} of {strings}"
                );
            }
        }
    }
}

#[test]
fn all_batteries_are_drawn_or_counted() {
    for take_off in [Leave::SameEnd, Leave::Diagonal, Leave::BusBar] {
        // A bank of the largest counts takes seconds to answer: one of them is enough.
        let largest = (take_off == Leave::Diagonal).then_some((40, 40));
        let sizes = [(1, 1), (1, 2), (4, 3), (3, 5), (16, 1)];
        for (series, parallel) in sizes.into_iter().chain(largest) {
            for picture in draw(series, parallel, take_off) {
                check_texts(&picture);
                let drawn = count(&picture, "pic-plate") as u32;
                let said = texts(&picture);
                assert!(said.contains(&format!("{series} in series, {parallel} in parallel")));
                let rows = if parallel > 4 { 3 } else { parallel };
                if said.contains(&format!("× {series} ")) && series > 3 {
                    assert!(drawn < series * rows);
                } else {
                    assert_eq!(drawn, series * rows, "{series} × {parallel}");
                }
                assert_eq!(
                    said.contains(&format!("× {parallel} strings")),
                    parallel > 4
                );
            }
        }
    }
}

#[test]
fn a_break_keeps_both_ends() {
    assert_eq!(condensed(3, 4), [0, 1, 2].map(Place::At));
    let broken = condensed(40, 4);
    assert_eq!(broken.first(), Some(&Place::At(0)));
    assert_eq!(broken[2..], [Place::Break, Place::At(39)]);
}

/// The current and the limit are the answer's.
#[test]
fn what_it_gives_is_the_answers() {
    for plan in plans::all() {
        let answer = wiring(&plan).unwrap();
        let limits = answer.bank.as_ref().unwrap();
        for width in WIDTHS {
            let picture = bank_diagram(Formatter::ENGLISH, &plan, &answer, width)
                .unwrap()
                .picture;
            check_texts(&picture);
            let said = texts(&picture);
            let worst =
                till_morning::text::wiring::amps(Formatter::ENGLISH, limits.continuous.worst_a);
            assert!(said.contains(&worst), "{worst}: {said}");
        }
    }
}

#[test]
fn too_much_is_a_cross_and_a_word() {
    let mut plan = Plan::demo();
    plan.banks[0].battery_current_limit_a = Some(till_morning::plan::Figure::label(10.0));
    let answer = wiring(&plan).unwrap();
    assert_eq!(
        answer.bank.as_ref().unwrap().continuous.verdict,
        Verdict::Fails
    );
    let picture = bank_diagram(Formatter::ENGLISH, &plan, &answer, 358.0)
        .unwrap()
        .picture;
    assert!(count(&picture, "pic-badge bad") >= 2);
    assert!(texts(&picture).contains("limit 10\u{202f}A: above the limit"));
}
