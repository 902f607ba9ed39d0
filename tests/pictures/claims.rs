//! Claims: dot, whisker and claim stand in the order of their numbers, and the shape is
//! that of the verdict.

use super::{WIDTHS, check_texts, texts};
use proptest::prelude::*;
use till_morning::text::Formatter;
use till_morning::{
    answer::claims::{ClaimVerdict, claims},
    plan::{
        Claim, Figure, Plan,
        claims::{Claimed, MeterClass},
    },
    text::claims as say,
    view::{
        diagram::badge::Standing,
        drawing::{claim_rows, claims_diagram},
    },
};

fn claim(claimed: f64, most: Option<f64>, measured: f64, meter: bool) -> Claim {
    Claim {
        claimed_wh: Some(claimed),
        claimed_most_wh: most,
        measured_wh: Some(Figure {
            spread_percent: None,
            ..Figure::measured(measured)
        }),
        meter: meter.then_some(MeterClass::Sheet),
        of_reading_percent: Some(1.0),
        ..Claim::of(Claimed::Energy)
    }
}

fn plan(all: Vec<Claim>) -> Plan {
    Plan {
        claims: all,
        ..Plan::demo()
    }
}

#[test]
fn each_verdict_has_its_shape_and_its_word() {
    let tolerant = Claim {
        tolerance_percent: Some(10.0),
        ..claim(4000.0, None, 4010.0, true)
    };
    let plan = plan(vec![
        claim(4000.0, None, 4300.0, true),
        claim(4000.0, None, 3700.0, true),
        tolerant,
        claim(4000.0, None, 4005.0, true),
        claim(4000.0, Some(4400.0), 4200.0, true),
        claim(4000.0, Some(4400.0), 4600.0, true),
        claim(4000.0, None, 4300.0, false),
    ]);
    let answer = claims(&plan, &[]);
    let verdicts: Vec<ClaimVerdict> = answer.claims.iter().map(|one| one.verdict).collect();
    use ClaimVerdict as V;
    let wanted = [
        V::BeatsIt,
        V::FallsShort,
        V::MeetsIt,
        V::TooCloseToCall,
        V::Inside,
    ];
    assert_eq!(verdicts[..5], wanted);
    assert_eq!(verdicts[5..], [V::OutsideAbove, V::NotJudged]);
    let shapes = claim_rows(Formatter::ENGLISH, &plan, &answer)
        .into_iter()
        .map(|row| row.verdict.0);
    use Standing::{Bad, Good, Open};
    assert_eq!(
        shapes.collect::<Vec<_>>(),
        [Good, Bad, Good, Open, Good, Bad, Open]
    );
    for width in WIDTHS {
        let picture = claims_diagram(Formatter::ENGLISH, &plan, &answer, width)
            .unwrap()
            .picture;
        check_texts(&picture);
        let said = texts(&picture);
        for one in &answer.claims {
            let [_, claimed, measured, _, verdict] =
                say::report_row(Formatter::ENGLISH, &plan, one);
            for text in [claimed, measured, verdict] {
                assert!(said.contains(&text), "{text}: {said}");
            }
        }
    }
}

#[test]
fn nothing_claimed_is_no_picture() {
    let plan = plan(Vec::new());
    assert_eq!(
        claims_diagram(Formatter::ENGLISH, &plan, &claims(&plan, &[]), 358.0),
        None
    );
}

proptest! {
    /// A value that beats its claim by more than it may be off has the claim left of its
    /// whisker, and so on: what is seen is what is said.
    #[test]
    fn the_marks_say_what_the_verdict_says(
        claimed in 10.0..1e5f64,
        share in 0.5..1.5f64,
        most in prop::option::of(1.01..1.5f64),
        width in 240.0..760.0f64,
    ) {
        let most = most.map(|most| claimed * most);
        let plan = plan(vec![claim(claimed, most, claimed * share, true)]);
        let answer = claims(&plan, &[]);
        let rows = claim_rows(Formatter::ENGLISH, &plan, &answer);
        let places = rows[0].places(width).unwrap();
        prop_assert!(places.from <= places.measured && places.measured <= places.to);
        prop_assert!(places.from >= 0.0 && places.to <= width);
        // Half a pixel is a pixel's rounding, no more.
        match answer.claims[0].verdict {
            ClaimVerdict::BeatsIt => prop_assert!(places.from > places.claimed - 0.5),
            ClaimVerdict::FallsShort | ClaimVerdict::OutsideBelow => {
                prop_assert!(places.to < places.claimed + 0.5);
            }
            ClaimVerdict::OutsideAbove => {
                prop_assert!(places.from > places.claimed_most.unwrap() - 0.5);
            }
            ClaimVerdict::Inside => {
                let most = places.claimed_most.unwrap();
                prop_assert!(places.from > places.claimed - 0.5 && places.to < most + 0.5);
            }
            _ => {
                let near = |edge: f64| places.from < edge + 0.5 && places.to > edge - 0.5;
                prop_assert!(near(places.claimed) || places.claimed_most.is_some_and(near));
            }
        }
    }
}
