//! An accent colour in which headings could hardly be read on white paper.

use crate::caution::{Caution, Edit, Scene};
use crate::text::{Accent, Diagnostic, LEAST_CONTRAST};

const fn accent(to: &'static str) -> Edit {
    Edit {
        file: "rimebook.toml",
        from: "certificate = \"CASE-CO-0042\"\n",
        to,
    }
}

pub(super) static CAUTION: Caution = Caution {
    name: "accent-too-pale",
    summary: "headings in the accent colour would be hard to read on white",
    finds: "An accent colour whose contrast against white is below 4.5 : 1.",
    matters: "Headings are set in that colour; below 4.5 : 1 many people cannot read them, and a copy in black and white loses them. The report is printed in a darker shade of it.",
    put_right: "Choose a darker shade; the caution names the one that the report uses.",
    source: "W3C, Web Content Accessibility Guidelines 2.1, success criterion 1.4.3 (AA)",
    example: &[accent(
        "certificate = \"CASE-CO-0042\"\naccent = \"#777777\"\n",
    )],
    near_miss: &[accent(
        "certificate = \"CASE-CO-0042\"\naccent = \"#767676\"\n",
    )],
    check,
    limits_claim: false,
    rests_on_absence: false,
};

fn check(scene: &Scene<'_>, found: &mut Vec<Diagnostic>) {
    let contractor = scene.book.note.as_ref().and_then(|n| n.contractor.as_ref());
    let Some(noted) = contractor.and_then(|contractor| contractor.accent.as_ref()) else {
        return;
    };
    let Some(colour) = Accent::read(&noted.value) else {
        return;
    };
    let readable = colour.readable();
    if readable == colour {
        return;
    }
    // Rounded down, so that a colour that just fails is not printed as one that passes.
    let contrast = (colour.contrast() * 10.0).floor() / 10.0;
    found.push(
        Diagnostic::caution(
            CAUTION.name,
            noted.span,
            format!("the accent colour `{}` is too pale on white", noted.value),
        )
        .here(format!(
            "contrast {contrast:.1} : 1; text needs {LEAST_CONTRAST} : 1"
        ))
        .why(CAUTION.matters)
        .patch(
            "write the shade that the report uses",
            noted.span,
            format!("\"{}\"", readable.print()),
        ),
    );
}
