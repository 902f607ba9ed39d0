//! Cautions that the page shows where they apply.

/// A caution and where it comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Caution {
    pub text: &'static str,
    pub source: &'static str,
}

/// What anyone who sleeps beside a bank should have read once.
pub const CAUTIONS: [Caution; 8] = [
    Caution {
        text: "Never leave children, animals or anyone who cannot get out, unattended, to a battery-run cooler. \
               A closed vehicle climbs about 3.2 °F (1.8 °C) each 5 minutes, and most of the rise comes in the first 30.",
        source: "McLaren, Null & Quinn, Pediatrics 116 (2005) e109",
    },
    Caution {
        text: "This does not replace local codes or a licensed electrician. Estimates are not guarantees.",
        source: "",
    },
    Caution {
        text: "Fuse at the source, as near the battery as can be. The battery’s own electronics are no fuse.",
        source: "33 CFR 183.455 for boats",
    },
    Caution {
        text: "Lithium is not charged below 0 °C (32 °F).",
        source: "cell makers’ usual limit",
    },
    Caution {
        text: "Vent lead-acid: charging gives off hydrogen.",
        source: "33 CFR 183.420; IEC 62485",
    },
    Caution {
        text: "Generators stand outside and 20 ft (6 m) away, exhaust turned away. No engine runs while people sleep.",
        source: "US Consumer Product Safety Commission",
    },
    Caution {
        text: "A battery that opens while an engine charges it can harm the alternator.",
        source: "common practice",
    },
    Caution {
        text: "Connect in series and parallel only as the maker of the battery allows.",
        source: "common practice",
    },
];
