//! A report with 24 photographs of twelve megapixels stays small enough to mail, and comes out the same
//! whether its photographs were kept from an earlier run or not.

use crate::copied::{demo, snapshot};
use image::codecs::jpeg::JpegEncoder;
use image::{ExtendedColorType, Rgb, RgbImage};
use std::path::Path;
use std::process::Command;

const VISIT: &str = "brackwater/flake-ice-1/2026-07-09";
const PDF: &str = "brackwater_flake-ice-1_2026-07-09.pdf";

/// What a report with 24 photographs may weigh.
const MOST_WITH: usize = 5_000_000;
/// What one without any may weigh.
const MOST_WITHOUT: usize = 250_000;

/// A picture as a telephone takes it: large soft shapes, hard edges, grain of two by two pixels.
fn picture(seed: u32) -> Vec<u8> {
    let mut state = seed.wrapping_mul(2_654_435_761) | 1;
    let mut random = move || {
        state ^= state << 13;
        state ^= state >> 17;
        state ^= state << 5;
        state
    };
    // The sum of four bytes is nearly normal: mean 510, standard deviation 148; here 9 of 255.
    let grain: Vec<i32> = (0..2000 * 1500)
        .map(|_| {
            let sum: u32 = random().to_le_bytes().iter().map(|b| u32::from(*b)).sum();
            (sum.cast_signed() - 510) / 16
        })
        .collect();
    let shapes: Vec<(i64, i64, i64, [i32; 3])> = (0..40)
        .map(|_| {
            let at = |most: u32, draw: u32| i64::from(draw % most);
            let ink = [random(), random(), random()].map(|ink| 30 + (ink % 190).cast_signed());
            (
                at(4000, random()),
                at(3000, random()),
                40 + at(300, random()),
                ink,
            )
        })
        .collect();
    let mut pixels = RgbImage::from_fn(4000, 3000, |x, y| {
        let waves = (f64::from(x + seed * 97) / 310.0).sin() + (f64::from(y) / 270.0).cos();
        let shade = 120 + (waves * 35.0) as i32;
        Rgb([shade, shade - 10, shade - 25].map(|ink| ink.clamp(0, 255) as u8))
    });
    for (x, y, radius, ink) in shapes {
        for row in (y - radius).max(0)..(y + radius).min(3000) {
            let half = ((radius * radius - (row - y) * (row - y)) as f64).sqrt() as i64;
            for column in (x - half).max(0)..(x + half).min(4000) {
                pixels.put_pixel(column as u32, row as u32, Rgb(ink.map(|ink| ink as u8)));
            }
        }
    }
    for (x, y, pixel) in pixels.enumerate_pixels_mut() {
        let noise = grain[(y / 2 * 2000 + x / 2) as usize];
        pixel.0 = pixel
            .0
            .map(|ink| (i32::from(ink) + noise).clamp(0, 255) as u8);
    }
    let mut jpeg = Vec::new();
    JpegEncoder::new_with_quality(&mut jpeg, 88)
        .encode(pixels.as_raw(), 4000, 3000, ExtendedColorType::Rgb8)
        .unwrap();
    assert!(
        jpeg.len() > 2_000_000,
        "{} bytes are too few for twelve megapixels",
        jpeg.len()
    );
    jpeg
}

/// The same picture as a camera held otherwise would write it: 1 upright, 2 to 4 mirrored or on its head.
fn held(jpeg: &[u8], direction: u8) -> Vec<u8> {
    let mut segment =
        b"\xFF\xD8\xFF\xE1\0\x22Exif\0\0II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0".to_vec();
    segment.extend([direction, 0, 0, 0, 0, 0, 0, 0]);
    segment.extend(&jpeg[2..]);
    segment
}

fn report(book: &Path, more: &[&str]) {
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .current_dir(book)
        .args(["report", VISIT])
        .args(more)
        .output()
        .unwrap();
    assert!(
        output.status.success(),
        "{}",
        String::from_utf8_lossy(&output.stderr)
    );
}

/// The bytes of a PDF without its pictures, which lie in it as they are.
fn without_pictures(pdf: &[u8]) -> usize {
    let starts = |at: usize| {
        pdf[at..].starts_with(b"stream\n\xFF\xD8\xFF")
            || pdf[at..].starts_with(b"stream\r\n\xFF\xD8\xFF")
    };
    let end = |at: usize| {
        pdf[at..]
            .windows(9)
            .position(|w| w == b"endstream")
            .unwrap()
    };
    let pictures: usize = (0..pdf.len()).filter(|at| starts(*at)).map(end).sum();
    pdf.len() - pictures
}

#[test]
fn twenty_four_photographs_make_a_report_that_can_be_mailed() {
    let book = demo();
    let visit = book.path().join(VISIT);
    std::fs::create_dir_all(visit.join("photos")).unwrap();
    let mut findings = std::fs::read_to_string(visit.join("findings.md")).unwrap();
    for seed in 0..6 {
        let jpeg = picture(seed + 1);
        for direction in 1..=4 {
            let name = format!("photos/large-{seed}-{direction}.jpg");
            std::fs::write(visit.join(&name), held(&jpeg, direction)).unwrap();
            findings += &format!("\n![Picture {seed}, held {direction}]({name})\n");
        }
    }
    std::fs::write(visit.join("findings.md"), findings).unwrap();
    let reports = book.path().join("reports");
    report(book.path(), &[]);
    let fresh = std::fs::read(reports.join(PDF)).unwrap();
    assert!(fresh.len() < MOST_WITH, "{} bytes", fresh.len());
    assert!(
        without_pictures(&fresh) + 1_000_000 < fresh.len(),
        "the pictures were not found"
    );
    let kept = snapshot(&reports.join(".photographs"));
    assert!(kept.len() >= 24, "{} photographs were kept", kept.len());
    report(book.path(), &[]);
    assert!(
        fresh == std::fs::read(reports.join(PDF)).unwrap(),
        "kept photographs change the report"
    );
    let elsewhere = tempfile::tempdir().unwrap();
    report(book.path(), &["--into", elsewhere.path().to_str().unwrap()]);
    let made = snapshot(elsewhere.path());
    assert!(
        made.len() == 1 && made[PDF] == fresh,
        "a folder that was asked for gets the report alone"
    );
}

#[test]
fn no_report_of_the_demo_book_grows_without_its_photographs() {
    let book = demo();
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .current_dir(book.path())
        .arg("report")
        .output()
        .unwrap();
    assert!(output.status.success());
    let made = snapshot(&book.path().join("reports"));
    let pdfs = made.iter().filter(|(name, _)| name.ends_with(".pdf"));
    let sizes: Vec<(&String, usize)> = pdfs
        .map(|(name, pdf)| (name, without_pictures(pdf)))
        .collect();
    assert_eq!(sizes.len(), 17);
    for (name, size) in sizes {
        assert!(size < MOST_WITHOUT, "{name}: {size} bytes");
    }
}
