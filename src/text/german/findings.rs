//! Findings of the first question. The others' are not on the reader's page.

use super::{CELLS, FORMAT, counted, labels::name, value_text, with_unit};
use crate::{
    plan::Show,
    plan::finding::{Finding, Matter},
    range::{Range, Unit},
    text::{self, Formatter},
};

/// A finding as one sentence that names the field and says what to do.
pub(super) fn finding_sentence(finding: &Finding, units: Show) -> String {
    let at = finding.field.map_or("Der Plan", name);
    match finding.matter {
        Matter::OutOfRange { value, min, max, unit } => format!(
            "{at}: {} liegt außerhalb dessen, was beantwortet werden kann. Bitte {} angeben.",
            value_text(value, unit, units),
            accepted(Range { min, max, unit }, units)
        ),
        Matter::NotANumber { min, max, unit } => {
            format!("{at}: bitte {} angeben.", accepted(Range { min, max, unit }, units))
        }
        Matter::TooMany { count, most } => {
            format!("{at}: {count} sind aufgeführt, bis zu {most} werden beantwortet.")
        }
        Matter::NoneGiven => format!("{at}: mindestens eins wird gebraucht."),
        Matter::NominalReading { stated_v, taken_v, cells, wh } => format!(
            "„{}\u{202f}V“ wird als {} gelesen, {}: {} je Batterie.",
            FORMAT.plain(stated_v),
            counted(f64::from(cells), 0, CELLS),
            with_unit(taken_v, "V"),
            with_unit(wh, "Wh")
        ),
        Matter::BadTable { row } => format!(
            "{at}: Zeile {} passt nicht. Die Ladung muss von Zeile zu Zeile steigen, die Spannung darf nicht fallen, und es braucht zwei Zeilen oder mehr.",
            row + 1
        ),
        Matter::AmpsAtOtherVoltage { measured_at_v, bank_v, taken_w } => format!(
            "Ampere, gemessen bei {}, gelten nicht an einer Bank von {}: angenommen ist dieselbe Leistung, {}.",
            with_unit(measured_at_v, "V"),
            with_unit(bank_v, "V"),
            with_unit(taken_w, "W")
        ),
        Matter::AmpsBehindConverter { taken_w } => format!(
            "Ampere hinter einem Wandler oder Wechselrichter gelten als Leistung: {}.",
            with_unit(taken_w, "W")
        ),
        Matter::SupplyMismatch { supply_v, bank_v } => format!(
            "Das Gerät braucht {}, und die Bank gibt {}: andere Zahl von Blöcken in Reihe, oder ein Wandler dazwischen.",
            with_unit(supply_v, "V"),
            with_unit(bank_v, "V")
        ),
        Matter::MeasuredImplausible { mean_v, expected_v } => format!(
            "Gemessene Wh durch gemessene Ah sind im Mittel {}, wo diese Bank etwa {} zeigen würde: beide prüfen, und die Blöcke in Reihe. Die Wh bleiben außer Betracht.",
            with_unit(mean_v, "V"),
            with_unit(expected_v, "V")
        ),
        Matter::MeasuredLoadTaken { load_w } => format!(
            "Die Messung nennt keine Last: angenommen ist der Nennstrom der Bank, {}.",
            with_unit(load_w, "W")
        ),
        Matter::DepthBeyondStart { start_percent, floor_percent } => format!(
            "Die Bank beginnt bei {}, und {} sollen bleiben: es ist nichts zu nutzen.",
            with_unit(start_percent, "%"),
            with_unit(floor_percent, "%")
        ),
        Matter::TypicalCurve => "Die Spannungskurve dieser Chemie ist eine typische: Stunden bis zu einer Abschaltspannung sind weniger sicher.".into(),
        Matter::EqualSharing { parallel } => format!(
            "{parallel} Stränge gelten als gleich belastet: Sammelschienen, oder gleiche Kabel und Abgriff über Kreuz."
        ),
        Matter::DeepLeadAcid { depth_percent } => format!(
            "Bleibatterien, die {} tief entladen werden, altern früh: die Hälfte ist üblich.",
            with_unit(depth_percent, "%")
        ),
        Matter::Unreachable { min, max, unit } => format!(
            "{at}: nichts {} ergibt diese Stunden.",
            accepted(Range { min, max, unit }, units)
        ),
        _ => text::finding_sentence(Formatter::new(Formatter::ENGLISH.locale, units), finding),
    }
}

/// An accepted range in words.
pub(super) fn accepted(range: Range, units: Show) -> String {
    let Range { min, max, unit } = range;
    match unit {
        Unit::Count => format!(
            "eine ganze Zahl von {} bis {}",
            FORMAT.plain(min),
            FORMAT.plain(max)
        ),
        Unit::ClockMinute => "eine Uhrzeit von 00:00 bis 23:59".into(),
        _ => {
            let [min, max] = text::findings::ends(range, units, FORMAT);
            let sign = text::labels::unit_sign(unit, units);
            let space = if sign.is_empty() { "" } else { "\u{202f}" };
            format!("von {min} bis {max}{space}{sign}")
        }
    }
}
