//! How long a report without photographs takes, beside the bare typesetting of the same data with the
//! same templates.
//!
//! `cargo bench --bench report` prints both; their quotient is the ratio that matters. Nothing here fails
//! for being slow.

#![expect(
    clippy::unwrap_used,
    reason = "a benchmark that cannot read the demo book has nothing to measure"
)]

use divan::{Bencher, black_box};
use rimebook::command::{Loaded, load};
use rimebook::report::compose::{Scene, compose, formulas};
use rimebook::report::data::ReportData;
use rimebook::report::typeset::{Manuscript, Pages, typeset};
use rimebook::report::visit_figures::VisitFigures;
use rimebook::report::world::{MAIN, ReportWorld};
use std::path::PathBuf;
use typst::comemo::evict;
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

/// A visit with eight tests and readings, and no photograph.
const VISIT: &str = "brackwater/flake-ice-1/2025-10-13";

fn main() {
    divan::main();
}

fn book() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("jobs-example")
}

fn composed(loaded: &Loaded) -> ReportData {
    let sites = loaded.book.sites.iter();
    let (site, system, number) = sites
        .flat_map(|site| site.systems.iter().map(move |system| (site, system)))
        .find_map(|(site, system)| {
            let number = system.visits.iter().position(|visit| visit.path == VISIT)?;
            Some((site, system, number))
        })
        .unwrap();
    let scene = Scene {
        sources: &loaded.sources,
        book: &loaded.book,
        site,
        system,
        number,
        visit: &system.visits[number],
        figures: VisitFigures::of(site, system, number).unwrap(),
        fingerprint: String::new(),
    };
    compose(&scene, &[], false).data
}

/// From the files to the PDF.
#[divan::bench(sample_count = 15, sample_size = 1)]
fn whole(bencher: Bencher) {
    bencher.bench_local(|| {
        let (loaded, _) = load(black_box(&book())).unwrap();
        let data = composed(&loaded);
        let manuscript = Manuscript {
            data: Pages::Visit(&data),
            photographs: &[],
            logo: None,
            own: None,
            formulas: &formulas(),
            attachment: "{}",
            ident: VISIT,
            creator: "bench",
            keep: 0,
        };
        typeset(&manuscript).unwrap().pdf
    });
}

/// Only the typesetter: from the data to the PDF.
#[divan::bench(sample_count = 15, sample_size = 1)]
fn bare(bencher: Bencher) {
    let (loaded, _) = load(&book()).unwrap();
    let mut data = serde_json::to_value(composed(&loaded)).unwrap();
    data["logo"] = serde_json::Value::Null;
    let data = data.to_string();
    let standards = PdfStandards::new(&[PdfStandard::A_3a, PdfStandard::Ua_1]).unwrap();
    let options = PdfOptions {
        standards,
        ..PdfOptions::default()
    };
    bencher.bench_local(|| {
        evict(0);
        let (data, attached) = (data.clone(), "{}".to_owned());
        let world = ReportWorld::new(MAIN, data, attached, &formulas(), &[], None, None);
        let document = typst::compile::<PagedDocument>(black_box(&world))
            .output
            .unwrap();
        typst_pdf::pdf(&document, &options).unwrap()
    });
}
