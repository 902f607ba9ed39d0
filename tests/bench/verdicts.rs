//! Verdicts follow their interval, and a remedy does what it says.

use proptest::prelude::*;
use till_morning::physics::bench::claim::{
    Better, Claim, RangeVerdict, Verdict, decisive, decisive_range, judge, judge_range,
};
use till_morning::physics::bench::measured::{Measured, Part, Shrinks, Source};
use till_morning::quantity::minutes;

proptest! {
    #![proptest_config(ProptestConfig::with_cases(400))]

    #[test]
    fn verdicts_follow_the_interval(
        y in -1e4..1e4f64, u in 0.0..1e3f64, c in -1e4..1e4f64, band in proptest::option::of(0.0..500.0f64)
    ) {
        let measured = Measured::known(y, u);
        let expanded = measured.expanded().unwrap();
        prop_assert_eq!(expanded, 2.0 * u);
        let slack = band.unwrap_or(0.0);
        for better in [Better::Higher, Better::Lower, Better::Neither] {
            let verdict = judge(&measured, &Claim { value: c, tolerance: band, better }).verdict;
            let (low, high) = (y - expanded, y + expanded);
            match verdict {
                Verdict::MeetsIt => prop_assert!(band.is_some() && low >= c - slack && high <= c + slack),
                Verdict::BeatsIt if better == Better::Higher => prop_assert!(low > c),
                Verdict::BeatsIt => prop_assert!(better == Better::Lower && high < c),
                Verdict::FallsShort if better == Better::Higher => prop_assert!(high < c - slack),
                Verdict::FallsShort if better == Better::Lower => prop_assert!(low > c + slack),
                Verdict::FallsShort => prop_assert!(high < c - slack || low > c + slack),
                Verdict::TooCloseToCall => prop_assert!(u > 0.0 || y == c || band.is_some()),
            }
            // Mirrored, the better way turned: the same verdict.
            let turned = match better {
                Better::Higher => Better::Lower,
                Better::Lower => Better::Higher,
                Better::Neither => Better::Neither,
            };
            let mirror = Claim { value: -c, tolerance: band, better: turned };
            prop_assert_eq!(judge(&Measured::known(-y, u), &mirror).verdict, verdict);
        }
        let range = judge_range(&measured, (c, c + slack)).verdict;
        let want = match () {
            () if y + expanded < c => RangeVerdict::OutsideBelow,
            () if y - expanded > c + slack => RangeVerdict::OutsideAbove,
            () if y - expanded >= c && y + expanded <= c + slack => RangeVerdict::Inside,
            () => RangeVerdict::TooCloseToCall,
        };
        prop_assert_eq!(range, want);
    }

    // What is said to decide a verdict does decide it.
    #[test]
    fn the_remedy_decides(
        y in 100.0..200.0f64, c in 100.0..200.0f64, meter in 0.1..40.0f64, scatter in 0.0..20.0f64,
        timing in 0.0..20.0f64
    ) {
        let part = |source, standard, shrinks| Part { source, standard, shrinks, freedom: None };
        let measured = |meter: f64, longer: f64| Measured {
            value: y,
            parts: vec![
                part(Source::Meter, meter, Shrinks::Never),
                part(Source::Scatter, scatter / longer.sqrt(), Shrinks::WithRootOfTime),
                part(Source::Timing, timing / longer, Shrinks::WithTime),
            ],
            unseen: (0.0, 0.0),
            resolved: true,
            lasted: Some(minutes(30.0)),
        };
        let claim = Claim { value: c, tolerance: None, better: Better::Lower };
        let now = measured(meter, 1.0);
        let Some(remedy) = decisive(&now, &claim) else {
            prop_assert!(judge(&now, &claim).verdict != Verdict::TooCloseToCall || y == c);
            return Ok(());
        };
        if let Some(longer) = remedy.minutes {
            prop_assert!(longer >= 30.0);
            let then = judge(&measured(meter, longer / 30.0), &claim).verdict;
            prop_assert!(then != Verdict::TooCloseToCall);
        }
        if let Some(limit) = remedy.meter_limit {
            let then = judge(&measured(limit / 3f64.sqrt(), 1.0), &claim).verdict;
            prop_assert!(then != Verdict::TooCloseToCall);
        }
    }
}

#[test]
fn what_is_not_finite_is_never_judged() {
    for bad in [f64::NAN, f64::INFINITY, -f64::INFINITY] {
        let claim = Claim {
            value: 100.0,
            tolerance: None,
            better: Better::Higher,
        };
        for measured in [Measured::known(bad, 1.0), Measured::known(1.0, bad)] {
            let judged = judge(&measured, &claim);
            assert_eq!(
                (judged.verdict, judged.interval),
                (Verdict::TooCloseToCall, None)
            );
            assert_eq!(decisive(&measured, &claim), None);
            assert_eq!(decisive_range(&measured, (1.0, 2.0)), None);
        }
        let claim = Claim {
            value: bad,
            ..claim
        };
        assert_eq!(
            judge(&Measured::known(1.0, 0.1), &claim).verdict,
            Verdict::TooCloseToCall
        );
    }
}
