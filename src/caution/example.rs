//! A further visit to the book of good practice that many examples build upon.

use crate::caution::Edit;

/// `visit.toml` of the further visit.
pub(super) const VISIT: Edit = Edit {
    file: "larchwick/cheese-store/2026-11-03/visit.toml",
    from: "",
    to: r#"purpose = "leak search and repair"
attendance = [
  { by = "n1", from = 2026-11-03T08:30, to = 2026-11-03T17:30 },
  { by = "n1", from = 2026-11-04T08:00, to = 2026-11-04T12:00 },
]
ambient = "10 °C"
barometer = "1008 mbar a"
"#,
};

/// A leak found and repaired there; its proofs and its state come after it.
pub(super) const REPAIRED_LEAK: Edit = Edit {
    file: FINDINGS,
    from: "",
    to: r"## Stem of the receiver outlet valve {#unit/receiver-outlet-valve}

- kind: leak
- evidence:
  - 09:10 oil under the cap, wiped; back after an hour
  - 10:20 bubbles, foam after 3 min
- cause: packing worn
- repair: 11:00 packing renewed
",
};

/// The circuit emptied for that repair at 10:50.
pub(super) const EMPTIED: Edit = Edit {
    file: REFRIGERANT,
    from: "",
    to: r#"[[movement]]
kind = "recovered"
why = "repair"
at = 2026-11-03T10:50
by = "n1"
cylinder = "rec-1"
scale = "scale-1"
before = "14.60 kg"
after = "26.40 kg"
destination = "same system"

"#,
};

/// The same refrigerant charged again on the second day, with a little new.
pub(super) const RECHARGED: Edit = Edit {
    file: REFRIGERANT,
    from: "",
    to: r#"[[movement]]
kind = "charged"
why = "recharge"
at = 2026-11-04T10:40
by = "n1"
cylinder = "rec-1"
scale = "scale-1"
before = "26.40 kg"
after = "14.70 kg"
charged-to = "partial"

[[movement]]
kind = "charged"
why = "recharge"
at = 2026-11-04T10:55
by = "n1"
cylinder = "new-1"
scale = "scale-1"
before = "18.20 kg"
after = "18.00 kg"
charged-to = "full by weight"
"#,
};

/// A top-up there without anything else.
pub(super) const TOP_UP: Edit = Edit {
    file: REFRIGERANT,
    from: "",
    to: r#"[[movement]]
kind = "charged"
why = "top-up"
at = 2026-11-03T11:30
by = "n1"
cylinder = "new-1"
scale = "scale-1"
before = "18.20 kg"
after = "17.10 kg"
charged-to = "full by sight glass"
"#,
};

/// The findings of the further visit.
pub(super) const FINDINGS: &str = "larchwick/cheese-store/2026-11-03/findings.md";
/// Its movements.
pub(super) const REFRIGERANT: &str = "larchwick/cheese-store/2026-11-03/refrigerant.toml";
/// Its readings.
pub(super) const READINGS: &str = "larchwick/cheese-store/2026-11-03/readings.toml";

/// The readings of the periodic check.
pub(super) const CHECK_READINGS: &str = "larchwick/cheese-store/2026-09-16/readings.toml";

/// The search of the periodic check made by another method, written as in the file.
pub(super) const fn check_by(method: &'static str) -> Edit {
    Edit {
        file: CHECK_READINGS,
        from: "method = \"electronic\"\ninstrument = \"sniffer-1\"",
        to: method,
    }
}

/// Lines at the end of the readings of the periodic check.
pub(super) const fn check_also(to: &'static str) -> Edit {
    Edit {
        file: CHECK_READINGS,
        from: "",
        to,
    }
}

/// Lines at the end of the findings of the further visit.
pub(super) const fn findings(to: &'static str) -> Edit {
    Edit {
        file: FINDINGS,
        from: "",
        to,
    }
}

/// Lines at the end of the readings of the further visit.
pub(super) const fn readings(to: &'static str) -> Edit {
    Edit {
        file: READINGS,
        from: "",
        to,
    }
}
