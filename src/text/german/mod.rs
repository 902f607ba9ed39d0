//! The reader's page in German.
//!
//! Plural by CLDR's rule for German: *one* for a 1 written without decimals,
//! *other* for all else, zero and fractions with them. Numbers as CLDR has them
//! for German: comma, and points between thousands. Signs of units are the same
//! in every language.

mod findings;
mod labels;
#[cfg(test)]
mod tests;

use super::{
    WITHIN_A_DAY_H,
    number::{Format, Span, clock_after, join, span},
    reader::{Table, Texts},
};
use crate::{
    answer::{Answer, NoPocket, Pocket, PocketOutcome, RunAnswer},
    plan::{
        Plan, Show,
        draft::Echo,
        entry::{is_converted, show, shown, width_shown},
    },
    range::Unit,
    simulate::Stop,
    text::ribbon::RibbonWords,
};
use labels::{bank, chemistry_name, mode_name, unit_name};

pub(super) const FORMAT: Format = Format {
    decimal: ',',
    group: '.',
    group_from: 4,
};

pub(super) static TABLE: Table = Table {
    format: FORMAT,
    texts: Texts {
        usual_title: "Wie lange läuft es?",
        yours: "Ihre Zahlen",
        no_answer: "Noch keine Antwort: bitte die markierten Felder berichtigen.",
        stale: "Das ist die Antwort auf die letzten gültigen Zahlen: ein Feld ist zu berichtigen.",
        ribbon_caption: "Jeder Balken läuft vom Beginn an; sein Ende verblasst vom frühen zum späten Ende der Spanne, mit einem Strich beim wahrscheinlichen.",
        readings: "Wie die Zahlen gelesen wurden",
        on_paper: "Auf Papier",
        on_paper_hint: "Eine Zeile je Betriebsart. Nutzbare Wh: Nennspannung mal vorhandene Ah, mal Entladetiefe.",
        other_voltage: "Ihre Batteriebank hat eine andere Spannung als die veröffentlichte: Abschaltspannungen und die Spannung, die das Gerät braucht, sind im gleichen Verhältnis angenommen.",
        not_the_measured: "Ihre Bank ist nicht die gemessene: gemessene Ladung und Energie bleiben außer Betracht, es gilt die Angabe auf der Batterie.",
        back: "Zurück zu den veröffentlichten Zahlen",
        in_full: "Ganz öffnen",
        in_full_hint: "Der ganze Plan mit Ihren Zahlen (auf Englisch): was angenommen wurde, Kurven, wie groß die Bank sein müsste.",
        caution: "Kinder, Tiere oder Menschen, die sich nicht selbst befreien können, nie unbeaufsichtigt einem Kühlgerät an der Batterie überlassen. Ein geschlossenes Fahrzeug heizt sich alle 5 Minuten um etwa 1,8 °C auf, das meiste davon in den ersten 30.",
        estimates: "Das ersetzt weder örtliche Vorschriften noch eine Elektrofachkraft. Schätzungen sind keine Zusagen.",
        foot: "Till Morning. In diesem Browser berechnet; nichts wird irgendwohin gesendet.",
    },
    ribbon: RibbonWords {
        label: |_| "Nachtband: wie weit jede Betriebsart auf der Uhr reicht",
        title: |_, plan, answer, run| run_title(plan, answer, run),
        short: |_, plan, run| run_short(plan, run),
    },
    run_sentence: |_, plan, run| run_sentence(plan, run),
    run_detail: |_, run| run_detail(run),
    finding: |f, finding| findings::finding_sentence(finding, f.units),
    pocket: |_, plan, asked| pocket(plan, asked),
    label: |_, plan, path| labels::label(plan, path),
    hint: |_, path| labels::hint(path),
    chemistry: |_, chemistry| labels::chemistry_name(chemistry),
    trouble: |f, label, wanted| {
        format!(
            "{label}: bitte {} angeben.",
            findings::accepted(wanted, f.units)
        )
    },
    echo: |f, read| echo(read, f.units),
};

/// The forms of a word.
#[derive(Clone, Copy)]
struct Forms {
    one: &'static str,
    other: &'static str,
}

const DAYS: Forms = Forms {
    one: "Tag",
    other: "Tage",
};
const HOURS: Forms = Forms {
    one: "Stunde",
    other: "Stunden",
};
const MINUTES: Forms = Forms {
    one: "Minute",
    other: "Minuten",
};
const CELLS: Forms = Forms {
    one: "Zelle",
    other: "Zellen",
};
const STRINGS: Forms = Forms {
    one: "Strang",
    other: "Stränge",
};

/// A number and its word: `1 Stunde`, `0 Stunden`, `4,2 Tage`.
fn counted(value: f64, decimals: usize, forms: Forms) -> String {
    let number = FORMAT.fixed(value, decimals);
    // Whatever its sign: CLDR's operands are of the absolute value.
    let word = if number.trim_start_matches('\u{2212}') == "1" {
        forms.one
    } else {
        forms.other
    };
    format!("{number} {word}")
}

fn with_unit(value: f64, sign: &str) -> String {
    FORMAT.with_unit(value, sign)
}

/// A duration in words, for sentences.
fn in_words(hours: f64) -> String {
    match span(hours) {
        Span::Nothing => counted(0.0, 0, MINUTES),
        Span::UnderAMinute => format!("unter {}", counted(1.0, 0, MINUTES)),
        Span::Days(days, decimals) => counted(days, decimals, DAYS),
        Span::Clocked(0, minutes) => counted(minutes as f64, 0, MINUTES),
        Span::Clocked(hours, 0) => counted(hours as f64, 0, HOURS),
        Span::Clocked(hours, minutes) => format!(
            "{} {}",
            counted(hours as f64, 0, HOURS),
            counted(minutes as f64, 0, MINUTES)
        ),
    }
}

/// A duration with signs, where room is short.
fn duration(hours: f64) -> String {
    match span(hours) {
        Span::Clocked(hours, minutes) => join(60 * hours + minutes),
        _ => in_words(hours),
    }
}

fn value_text(value: f64, unit: Unit, units: Show) -> String {
    match unit {
        Unit::ClockMinute => super::number::clock(value),
        Unit::Hour if value < 100.0 => duration(value),
        _ => with_unit(
            shown(value, unit, units),
            super::labels::unit_sign(unit, units),
        ),
    }
}

/// A value as it was stated: nothing of it is rounded off.
fn stated_text(value: f64, unit: Unit, units: Show) -> String {
    match unit {
        _ if is_converted(unit, units) => super::number::with_sign(
            FORMAT.grouped(&show(value, unit, units)),
            super::labels::unit_sign(unit, units),
        ),
        Unit::ClockMinute => super::number::clock(value),
        Unit::Hour if (1.0 / 60.0..100.0).contains(&value) => join((value * 60.0).round() as u64),
        _ => super::number::with_sign(FORMAT.stated(value), super::labels::unit_sign(unit, units)),
    }
}

/// How a typed text was understood.
fn echo(echo: Echo, units: Show) -> String {
    let read = match echo {
        Echo::Value { value, unit } => stated_text(value, unit, units),
        Echo::Strings { count, each, unit } => {
            let strings = counted(f64::from(count), 0, STRINGS);
            format!("{strings} zu je {}", stated_text(each, unit, units))
        }
        Echo::Between { value, half, unit } => {
            let of = if unit == Unit::Celsius {
                Unit::Kelvin
            } else {
                unit
            };
            let half = width_shown(half, unit, units);
            let half = with_unit(half, super::labels::unit_sign(of, units));
            format!("{} ±{half}", stated_text(value, unit, units))
        }
        Echo::Amps { amps, half, at_v } => {
            let spread = if half > 0.0 {
                format!(" ±{}", with_unit(half, "A"))
            } else {
                String::new()
            };
            format!(
                "{}{spread} bei {}",
                with_unit(amps, "A"),
                with_unit(at_v, "V")
            )
        }
        Echo::Watts { watts, amps, at_v } => format!(
            "{}: {} bei {}",
            with_unit(watts, "W"),
            with_unit(amps, "A"),
            with_unit(at_v, "V")
        ),
    };
    format!("gelesen als {read}")
}

fn run_title(plan: &Plan, answer: &Answer, run: &RunAnswer) -> String {
    let mut title = mode_name(plan, run.unit, run.mode);
    if plan.units.len() > 1 {
        title = format!("{title}, {}", unit_name(plan, run.unit));
    }
    if plan.banks.len() > 1 && answer.banks.len() > 1 {
        title = format!("{title}, {}", bank(plan, run.bank));
    }
    title
}

fn run_sentence(plan: &Plan, run: &RunAnswer) -> String {
    let name = mode_name(plan, run.unit, run.mode);
    let hours = run.hours_h.likely;
    if hours <= 0.0 {
        return format!("{name} startet nicht: {}.", stop_phrase(&run.stop));
    }
    if hours >= WITHIN_A_DAY_H {
        return format!("{name} läuft {}.", in_words(hours));
    }
    let until = clock_after(plan.night.start_clock_min, hours);
    format!("{name} läuft {}, bis etwa {until} Uhr.", in_words(hours))
}

fn run_detail(run: &RunAnswer) -> String {
    if run.hours_h.likely <= 0.0 {
        return String::new();
    }
    format!(
        "{} bis {}, je nachdem, wie gut die Zahlen bekannt sind. Es endet {}.",
        duration(run.hours_h.low),
        duration(run.hours_h.high),
        stop_phrase(&run.stop)
    )
}

fn run_short(plan: &Plan, run: &RunAnswer) -> String {
    match run.hours_h.likely {
        hours if hours <= 0.0 => "startet nicht".into(),
        hours if hours < WITHIN_A_DAY_H => {
            let until = clock_after(plan.night.start_clock_min, hours);
            format!("{}, bis {until}", duration(hours))
        }
        hours => duration(hours),
    }
}

/// How a run ends, after "Es endet" or "startet nicht:".
fn stop_phrase(stop: &Stop) -> String {
    match *stop {
        Stop::ChargeFloor { kept_percent } if kept_percent < 0.5 => "mit leerer Bank".into(),
        Stop::ChargeFloor { kept_percent } => {
            format!(
                "bei {}, die in der Bank bleiben sollen",
                with_unit(kept_percent, "%")
            )
        }
        Stop::OwnCutOff { cutoff_v } => {
            format!(
                "mit der Abschaltung der Batterie, {}",
                with_unit(cutoff_v, "V")
            )
        }
        Stop::CurrentLimit { limit_a } => {
            format!("an der Stromgrenze der Bank, {}", with_unit(limit_a, "A"))
        }
        Stop::UnitCutOff { cutoff_v } => format!(
            "mit der Abschaltung des Geräts, {} an seinen Klemmen",
            with_unit(cutoff_v, "V")
        ),
        Stop::InverterCutOff { cutoff_v } => format!(
            "mit der Abschaltung des Wechselrichters, {} an seinem Eingang",
            with_unit(cutoff_v, "V")
        ),
        Stop::InverterLimit { limit_w } => {
            format!(
                "der Wechselrichter gibt höchstens {}",
                with_unit(limit_w, "W")
            )
        }
        Stop::ConverterLimit { limit_a } => {
            format!("der Wandler gibt höchstens {}", with_unit(limit_a, "A"))
        }
        Stop::NoCurrentCarriesIt => {
            "wo kein Strom die Leistung mehr durch Kabel und Bank bringt".into()
        }
    }
}

fn pocket(plan: &Plan, pocket: &Pocket) -> String {
    let mode = mode_name(plan, pocket.unit, pocket.mode);
    let chemistry = plan.banks.get(pocket.bank);
    let chemistry = chemistry.map_or("", |bank| chemistry_name(bank.chemistry));
    match pocket.outcome {
        PocketOutcome::Holds(f) => format!(
            "{mode}: Stunden = {} × nutzbare Wh (= {} × nutzbare Ah bei {}, {chemistry}); von {} bis {} nutzbaren Wh, auf {} genau.",
            FORMAT.fixed(f.hours_per_wh, 5),
            FORMAT.fixed(f.hours_per_ah, 4),
            with_unit(f.nominal_v, "V"),
            FORMAT.plain(f.least_wh),
            FORMAT.plain(f.most_wh),
            format_args!("{}\u{202f}%", FORMAT.fixed(f.worst_error_percent, 1)),
        ),
        PocketOutcome::Refused { because, .. } => {
            let why = match because {
                NoPocket::LeadAcid => {
                    "Bleibatterien aus einer größeren Bank mehr je Ah geben und keine Zeile für alle Größen gilt"
                }
                NoPocket::FixedStartCharge => "die Bank nicht voll beginnt",
                NoPocket::Sun => "der Anteil der Sonne an der Uhrzeit hängt",
                NoPocket::Limits => {
                    "Abschaltspannungen oder Stromgrenzen manche Größen früher enden lassen"
                }
                NoPocket::NothingUsable => "die Bank nichts zu geben hat",
            };
            format!("{mode}: keine Faustformel, weil {why}.")
        }
    }
}
