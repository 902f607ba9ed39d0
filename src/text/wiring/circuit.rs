//! Sentences on one cable: the rule that decided, and the numbers behind it.

use super::{
    said::{amps, degrees, percent, volts},
    sizes::{both_sizes, decided_by, none_passes, size_text, system_sign},
};
use crate::{
    answer::wiring::{
        AskedBy, CircuitAnswer, CircuitNote as N, LoadedFigures, Remedy, RuleName, SizeFigures,
        SizeSystem,
    },
    plan::Plan,
    range::Unit,
    text::{Formatter, m, mode_in_sentence, unit_name},
};

/// The rule that decided, with both sizes.
#[must_use]
pub fn deciding(f: Formatter, circuit: &CircuitAnswer) -> String {
    let Some(rule) = decided_by(f, circuit) else {
        return f.say(m::WiringNeedsNone).into();
    };
    let sizes = both_sizes(f, circuit);
    match rule {
        RuleName::Ampacity => f.say(m::WiringNeedsAmpacity { sizes }),
        RuleName::FuseFit => f.say(m::WiringNeedsFuse { sizes }),
        RuleName::Drop => f.say(m::WiringNeedsDrop { sizes }),
        RuleName::MechanicalMinimum => f.say(m::WiringNeedsMinimum { sizes }),
    }
}

/// What would help, where the cable fails or no size passes.
#[must_use]
pub fn remedies_text(f: Formatter, circuit: &CircuitAnswer) -> Option<String> {
    let none_passes = none_passes(circuit);
    let fails = circuit
        .have
        .as_ref()
        .is_some_and(|have| !have.fails.is_empty());
    let remedies = circuit.remedies.iter();
    let ways: Vec<String> = remedies.map(|&one| remedy_text(f, one)).collect();
    let has_ways = !ways.is_empty();
    let ways = ways.join("; ");
    match (has_ways, none_passes, fails) {
        (true, true, _) => Some(f.say(m::WiringRemediesAny { ways })),
        (true, false, _) => Some(f.say(m::WiringRemediesYours { ways })),
        (false, true, _) => Some(f.say(m::WiringRemediesLighter).into()),
        (false, false, true) => Some(f.say(m::WiringRemediesLarger).into()),
        (false, false, false) => None,
    }
}

fn remedy_text(f: Formatter, remedy: Remedy) -> String {
    match remedy {
        Remedy::Ratings {
            insulation,
            terminals,
            to_c,
        } => f.say(m::WiringRemedyRatings {
            parts: match (insulation, terminals) {
                (true, true) => "both",
                (true, false) => "insulation",
                (false, _) => "terminals",
            },
            temperature: degrees(f, to_c),
        }),
        Remedy::CoolerAir { to_c } => f.say(m::WiringRemedyAir {
            temperature: degrees(f, to_c),
        }),
        Remedy::OutOfBundle => f.say(m::WiringRemedyAlone).into(),
        Remedy::ShorterRun { to_m } => f.say(m::WiringRemedyShorter {
            length: f.stated_value(to_m, Unit::Meter),
        }),
        Remedy::HigherCutOff { to_v } => f.say(m::WiringRemedyCutOff {
            volts: volts(f, to_v),
        }),
        Remedy::TwoRuns => f.say(m::WiringRemedyTwo).into(),
    }
}

/// A rule as a row's name.
#[must_use]
pub fn rule_name(f: Formatter, rule: RuleName) -> &'static str {
    match rule {
        RuleName::Ampacity => f.say(m::WiringRuleAmpacity),
        RuleName::FuseFit => f.say(m::WiringRuleFuse),
        RuleName::Drop => f.say(m::WiringRuleDrop),
        RuleName::MechanicalMinimum => f.say(m::WiringRuleMinimum),
    }
}

/// Where a rule comes from.
#[must_use]
pub fn rule_source(f: Formatter, rule: RuleName) -> &'static str {
    match rule {
        RuleName::Ampacity => f.say(m::WiringRuleAmpacitySource),
        RuleName::FuseFit => f.say(m::WiringRuleFuseSource),
        RuleName::Drop => f.say(m::WiringRuleDropSource),
        RuleName::MechanicalMinimum => f.say(m::WiringRuleMinimumSource),
    }
}

/// Whose current a circuit was sized for, and what that is.
#[must_use]
pub fn asked_by(f: Formatter, plan: &Plan, circuit: &CircuitAnswer) -> String {
    let who = match circuit.asked_by {
        AskedBy::Mode { unit, mode } => f.say(m::WiringSizedMode {
            mode: mode_in_sentence(f, plan, unit, mode),
        }),
        AskedBy::Rating { unit } => f.say(m::WiringSizedRating {
            unit: unit_name(f, plan, unit),
        }),
        AskedBy::Everything => f.say(m::WiringSizedAll).into(),
        AskedBy::Charger { charger } => f.say(m::WiringSizedCharger {
            number: (charger + 1).to_string(),
        }),
        AskedBy::Controller => f.say(m::WiringSizedController).into(),
        AskedBy::Panels => {
            return f.say(m::WiringSizedPanels {
                current: amps(f, circuit.continuous_a),
                design: amps(f, circuit.low_a),
            });
        }
    };
    let mut sentences = vec![who, current(f, circuit)];
    sentences.extend(circuit.start_a.map(|start_a| {
        f.say(m::WiringCurrentStart {
            current: amps(f, start_a),
        })
    }));
    sentences.join(" ")
}

fn current(f: Formatter, circuit: &CircuitAnswer) -> String {
    if circuit.low_a > circuit.continuous_a * 1.001 {
        f.say(m::WiringCurrentLow {
            nominal: amps(f, circuit.continuous_a),
            low: amps(f, circuit.low_a),
            volts: volts(f, circuit.source_low_v),
        })
    } else {
        f.say(m::WiringCurrent {
            current: amps(f, circuit.low_a),
        })
    }
}

/// How the rating of a conductor came about.
#[must_use]
pub fn ampacity_text(f: Formatter, circuit: &CircuitAnswer, figures: &SizeFigures) -> String {
    let size = size_text(f, &figures.size);
    let Some(ampacity) = &figures.ampacity else {
        return f.say(m::WiringAmpacityNone { size });
    };
    let size = if ampacity.row == figures.size {
        size
    } else {
        let row = size_text(f, &ampacity.row);
        f.say(m::WiringReadAs { size, row })
    };
    // A factor of 1 is left out.
    let factor =
        |percent: f64| (percent < 99.95).then(|| format!("× {}", f.fixed(percent / 100.0, 2)));
    let factors = [
        factor(ampacity.heat_percent).map(|factor| {
            let temperature = degrees(f, circuit.air_c);
            f.say(m::WiringFactorAir {
                factor,
                temperature,
            })
        }),
        factor(ampacity.bundle_percent).map(|factor| f.say(m::WiringFactorBundle { factor })),
        factor(ampacity.enclosure_percent).map(|factor| f.say(m::WiringFactorEnclosed { factor })),
    ];
    let factors = factors.into_iter().flatten();
    f.say(m::WiringAmpacity {
        size,
        table: amps(f, ampacity.table_a),
        column: degrees(f, ampacity.column_c),
        factors: factors.map(|one| format!(" {one}")).collect::<String>(),
        allowed: amps(f, ampacity.allowed_a),
    })
}

/// What a conductor drops, cold and hot.
#[must_use]
pub fn drop_text(f: Formatter, circuit: &CircuitAnswer, loaded: &LoadedFigures) -> String {
    f.say(m::WiringDrop {
        length: f.stated_value(circuit.length_m, Unit::Meter),
        cold: volts(f, loaded.cold_v),
        cold_percent: percent(f, loaded.cold_percent),
        hot: volts(f, loaded.hot_v),
        hot_percent: percent(f, loaded.hot_percent),
        temperature: degrees(f, loaded.conductor_c),
        allowed: percent(f, circuit.allowed_drop_percent),
        volts: volts(f, circuit.source_low_v),
    })
}

/// A note on a circuit.
#[must_use]
pub fn circuit_note(f: Formatter, note: &N) -> String {
    match *note {
        N::NoRoomForHeat { air_c, rating_c } => f.say(m::WiringNoteNoRoom {
            air: degrees(f, air_c),
            rating: degrees(f, rating_c),
        }),
        N::NoGaugePasses => f.say(m::WiringNoteNoGauge).into(),
        N::NoMetricPasses => f.say(m::WiringNoteNoMetric).into(),
        N::NoCurrentCarries => f.say(m::WiringNoteNoCurrent).into(),
        N::SolidWire => f.say(m::WiringNoteSolid).into(),
        N::ReadAsThinner { stated_mm2 } => f.say(m::WiringNoteBetween {
            size: f.with_unit(stated_mm2, system_sign(SizeSystem::Metric)),
        }),
        N::LengthTaken { taken_m } => f.say(m::WiringNoteLength {
            length: f.stated_value(taken_m, Unit::Meter),
        }),
        N::Connections { lost_v } => f.say(m::WiringNoteConnections {
            volts: volts(f, lost_v),
        }),
        N::ShutIn => f.say(m::WiringNoteEnclosed).into(),
    }
}
