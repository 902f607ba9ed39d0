//! Words in and around the pictures: wiring, bank, flows, claims.

mod bank;
mod flows;

pub use bank::{bank_counts, burdens, leaves, most_loaded};
pub use flows::{flow, flow_heads, flow_sides, heat_ways};

use super::{
    Formatter, day_words,
    labels::chemistry_short,
    m, mode_in_sentence, unit_name,
    wiring::{amps, circuit_name, fitted_text, judged, size_text, system_sign},
};
use crate::{
    answer::wiring::{
        AskedBy, BankLimits, CircuitAnswer, CircuitNote, SizeFigures, SizeSystem, SolarSide,
        Verdict,
    },
    plan::{Feed, Plan, wiring::Circuit},
    range::Unit,
};

/// How a path is opened, as it is read out.
#[must_use]
pub fn opens(f: Formatter, title: &str, verdict: &str) -> String {
    f.say(m::PictureOpens { title, verdict })
}

/// What is wrong with the fuse that is there, beside what is wrong with the conductor.
#[must_use]
pub fn wrong_fuse(f: Formatter, circuit: &CircuitAnswer) -> Option<String> {
    let protection = circuit.protection.as_ref()?;
    let conductor_fails = circuit
        .have
        .as_ref()
        .is_some_and(|have| !have.fails.is_empty());
    let is_wrong = conductor_fails && !protection.fitted_faults.is_empty();
    is_wrong.then(|| fitted_text(f, protection)).flatten()
}

/// A size in both systems: `16 mm² (counts as 6 AWG)`, `6 AWG (13.3 mm²)`.
#[must_use]
pub fn size_in_both(f: Formatter, figures: &SizeFigures) -> String {
    let size = size_text(f, &figures.size);
    match figures.size.system {
        SizeSystem::Awg => f.say(m::PictureSizeInBoth {
            size,
            other: f.with_unit(figures.size.area_mm2, system_sign(SizeSystem::Metric)),
        }),
        SizeSystem::Metric => match &figures.ampacity {
            Some(ampacity) if ampacity.row != figures.size => f.say(m::PictureCountsAs {
                size,
                other: size_text(f, &ampacity.row),
            }),
            _ => size,
        },
    }
}

/// Conductor and length of a circuit.
#[must_use]
pub fn conductor(f: Formatter, circuit: &CircuitAnswer) -> String {
    let is_taken = |note: &CircuitNote| matches!(note, CircuitNote::LengthTaken { .. });
    let length = f.stated_value(circuit.length_m, Unit::Meter);
    let length = if circuit.notes.iter().any(is_taken) {
        f.say(m::PictureEachWayAssumed { length })
    } else {
        f.say(m::PictureEachWay { length })
    };
    match &circuit.have {
        Some(have) => f.say(m::PictureConductor {
            size: size_in_both(f, have),
            length,
        }),
        None => length,
    }
}

/// Current and drop of a circuit, through what is there or the smallest that passes.
#[must_use]
pub fn current(f: Formatter, circuit: &CircuitAnswer) -> String {
    let current = amps(f, circuit.low_a);
    let at = volts(f, circuit.source_low_v);
    let Some((figures, loaded)) = judged(f, circuit).and_then(|one| Some((one, one.loaded?)))
    else {
        return f.say(m::PictureCurrent { current, volts: at });
    };
    let drop = volts(f, loaded.hot_v);
    let percent = share(f, loaded.hot_percent);
    if circuit.have.is_some() {
        f.say(m::PictureCurrentDrops {
            current,
            volts: at,
            drop,
            percent,
        })
    } else {
        f.say(m::PictureCurrentWouldDrop {
            current,
            volts: at,
            size: size_text(f, &figures.size),
            drop,
            percent,
        })
    }
}

/// Volts to the hundredth, without zeros at the end.
fn volts(f: Formatter, value: f64) -> String {
    format!("{}\u{202f}V", f.fixed(value, 2))
}

fn share(f: Formatter, percent: f64) -> String {
    let decimals = usize::from(percent < 10.0);
    format!("{}\u{202f}%", f.fixed(percent, decimals))
}

/// The fuse over its sign, and whether there is one.
#[must_use]
pub fn fuse(f: Formatter, circuit: &CircuitAnswer) -> Option<(String, bool)> {
    let protection = circuit.protection.as_ref()?;
    if let Some(fitted_a) = protection.fitted_a {
        let rating = amps(f, fitted_a);
        return Some((f.say(m::PictureFuse { rating }), true));
    }
    let text = match protection.recommended_a {
        Some(recommended_a) => f.say(m::PictureFuseMissing {
            rating: amps(f, recommended_a),
        }),
        None => f.say(m::PictureFuseNoneFits).into(),
    };
    Some((text, false))
}

/// Fuses of strings of panels; nothing where none is needed.
#[must_use]
pub fn panel_fuses(f: Formatter, side: &SolarSide) -> Option<String> {
    Some(f.say(m::PicturePanelFuses {
        rating: amps(f, side.string_fuse_a?),
        strings: side.strings_count,
    }))
}

/// The panels' highest volts against the controller.
#[must_use]
pub fn cold_volts(f: Formatter, side: &SolarSide) -> String {
    let open = volts(f, side.cold_open_v);
    let temperature = f.stated_value(side.coldest_c.round(), Unit::Celsius);
    let Some(limit_v) = side.controller_limit_v else {
        return f.say(m::PictureColdOpen {
            volts: open,
            temperature,
        });
    };
    let limit = volts(f, limit_v);
    if side.verdict == Verdict::Fails {
        f.say(m::PictureColdFails {
            volts: open,
            temperature,
            limit,
        })
    } else {
        f.say(m::PictureColdFits {
            volts: open,
            temperature,
            limit,
        })
    }
}

/// The bank in a line: batteries, capacity, chemistry.
#[must_use]
pub fn bank(f: Formatter, plan: &Plan) -> Option<String> {
    let bank = plan.banks.first()?;
    let count = bank.series_count * bank.parallel_count;
    Some(f.say(m::PictureBatteries {
        count: f.number(f64::from(count)),
        volts: f.with_unit(bank.reading().volts, "V"),
        capacity: f.with_unit(bank.battery_rated_ah.value, "Ah"),
        chemistry: chemistry_short(f, bank.chemistry),
    }))
}

/// The fuse of each string of batteries.
#[must_use]
pub fn string_fuse(f: Formatter, bank: &BankLimits) -> Option<String> {
    let rating = amps(f, bank.string_fuse_a?);
    Some(f.say(m::PictureStringFuse { rating }))
}

/// What a converter or an inverter is.
#[must_use]
pub fn feed(f: Formatter, plan: &Plan, unit: usize) -> Option<String> {
    match plan.units.get(unit)?.feed {
        Feed::Direct => None,
        Feed::DcDc { output_v, .. } => Some(f.say(m::PictureDcConverter {
            volts: f.with_unit(output_v, "V"),
        })),
        Feed::Inverter { limit_w, .. } => Some(match limit_w {
            Some(limit) => f.say(m::PictureInverterRated {
                power: f.with_unit(limit.value, "W"),
            }),
            None => f.say(m::PictureInverter).into(),
        }),
    }
}

/// Whose current a cable to the unit is sized for.
#[must_use]
pub fn sized_for(f: Formatter, plan: &Plan, circuit: &CircuitAnswer) -> String {
    match circuit.asked_by {
        AskedBy::Mode { unit, mode } => f.say(m::PictureSizedForMode {
            mode: mode_in_sentence(f, plan, unit, mode),
        }),
        _ => f.say(m::PictureSizedForRating).into(),
    }
}

/// The unit by its name.
#[must_use]
pub fn unit(f: Formatter, plan: &Plan) -> String {
    unit_name(f, plan, plan.night.asked_unit)
}

/// A charger by its place and what feeds it, and what it gives at most.
#[must_use]
pub fn charger(f: Formatter, plan: &Plan, at: usize, most_a: f64) -> (String, String) {
    let kind = plan.supply.chargers.get(at).map(|one| one.kind_taken());
    let source = kind.map_or("", |kind| day_words::charger_name(f, kind));
    let number = (at + 1).to_string();
    (
        f.say(m::PictureCharger { number, source }),
        at_most(f, most_a),
    )
}

/// The most that a controller or a charger gives.
#[must_use]
pub fn at_most(f: Formatter, most_a: f64) -> String {
    f.say(m::PictureAtMost {
        current: amps(f, most_a),
    })
}

/// Panels in a group: count and watts.
#[must_use]
pub fn panels(f: Formatter, plan: &Plan) -> String {
    let watts: f64 = (0..plan.supply.arrays.len())
        .filter_map(|at| {
            use crate::plan::{Path, supply::ArrayField};
            plan.number(Path::Array(at, ArrayField::RatedW))
        })
        .sum();
    let groups = plan.supply.arrays.len();
    let power = f.with_unit(watts, "W");
    if groups > 1 {
        f.say(m::PicturePanelGroups { groups, power })
    } else {
        f.say(m::PicturePanels { power })
    }
}

/// Names of all other loads, and their watts.
#[must_use]
pub fn loads(f: Formatter, plan: &Plan) -> (String, String) {
    let names = plan.loads.iter().map(|load| load.name.trim());
    let names: Vec<&str> = names.filter(|name| !name.is_empty()).collect();
    let watts: f64 = plan.loads.iter().map(|load| load.power_w.value).sum();
    (names.join(", "), f.with_unit(watts, "W"))
}

/// A circuit's title.
#[must_use]
pub fn circuit_title(f: Formatter, circuit: Circuit) -> &'static str {
    circuit_name(f, circuit)
}

/// How a claim is measured, in words beside its dot.
#[must_use]
pub fn measured(f: Formatter, value: &str) -> String {
    f.say(m::PictureMeasured { value })
}

/// What is claimed, with what the claim allows itself.
#[must_use]
pub fn claimed(f: Formatter, value: &str, tolerance_percent: Option<f64>) -> String {
    match tolerance_percent {
        Some(percent) => f.say(m::PictureClaimedWithin {
            value,
            percent: f.fixed(percent, 1),
        }),
        None => f.say(m::PictureClaimed { value }),
    }
}

/// A picture for those who do not see it: its parts in their order.
#[must_use]
pub fn told(title: &str, parts: &[String]) -> String {
    format!("{title}. {}", parts.join(". "))
}
