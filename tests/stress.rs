//! Books at the far end of what may be written: the longest names, many findings and photographs,
//! the fewest files, letters that no font has, logos of every shape.
//!
//! `RIMEBOOK_STRESS=folder` leaves the PDFs there; `tests/outside/check_words.py` then looks whether
//! any word runs out of its page or into another.

use crate::copied::{demo, snapshot};
use std::fmt::Write;
use std::fs;
use std::path::Path;
use std::process::Command;

/// A name of 200 letters without a space.
fn long_name(kind: &str) -> String {
    kind.chars().cycle().take(200).collect()
}

/// An id of 60 characters.
fn long_id(kind: &str, number: usize) -> String {
    let head = format!("{kind}-{number}-");
    let tail: String = "longidentifier"
        .chars()
        .cycle()
        .take(60 - head.len())
        .collect();
    head + &tail
}

fn written(root: &Path, path: &str, text: impl AsRef<[u8]>) {
    let path = root.join(path);
    fs::create_dir_all(path.parent().unwrap()).unwrap();
    fs::write(path, text).unwrap();
}

const VISIT: &str = "site/system/2026-03-04";

/// The fewest files that make a report of a visit.
fn smallest(root: &Path, operator: &str) {
    written(
        root,
        "rimebook.toml",
        "[contractor]\nname = \"Stonecrop Cooling (invented)\"\n",
    );
    written(
        root,
        "site/site.toml",
        format!(
            "operator = \"{operator}\"\ntimezone = \"Europe/Dublin\"\nunits = \"metric\"\nrules = [\"eu-2024-573\"]\n"
        ),
    );
    written(
        root,
        "site/system/system.toml",
        "name = \"Cold room\"\n\n[[in-force]]\nfrom = 2021-05-04\nrefrigerant = \"R-449A\"\nfull-charge = \"8 kg\"\n\n[[circuit]]\nid = \"a\"\n",
    );
    written(
        root,
        &format!("{VISIT}/visit.toml"),
        "purpose = \"leak search\"\nattendance = [ { by = \"n1\", from = 2026-03-04T08:00, to = 2026-03-04T17:00 } ]\n",
    );
    let people = "\n[[person]]\nid = \"n1\"\nname = \"Perpetua Larkwhistle\"\n";
    let book = fs::read_to_string(root.join("rimebook.toml")).unwrap() + people;
    written(root, "rimebook.toml", book);
    written(
        root,
        &format!("{VISIT}/findings.md"),
        "Looked over, nothing else was done.\n",
    );
}

/// A drawn photograph, each a little different.
fn photograph(number: u8) -> Vec<u8> {
    let (width, height) = if number.is_multiple_of(3) {
        (120, 160)
    } else {
        (160, 120)
    };
    let picture = image::RgbImage::from_fn(width, height, |x, y| {
        let pipe = (height / 2..height * 3 / 5).contains(&y);
        image::Rgb(if pipe {
            [184, 115, 51]
        } else {
            [number, (x % 200) as u8, 120]
        })
    });
    let mut bytes = std::io::Cursor::new(Vec::new());
    picture
        .write_to(&mut bytes, image::ImageFormat::Jpeg)
        .unwrap();
    bytes.into_inner()
}

/// Sixty findings with two hundred photographs between them, all names as long as they come.
fn largest(root: &Path) {
    let person = long_id("person", 1);
    let detector = long_id("detector", 1);
    written(
        root,
        "rimebook.toml",
        format!(
            "[contractor]\nname = \"{}\"\naddress = \"{}\"\ncertificate = \"{}\"\ntelephone = \"{}\"\n\n\
             [[person]]\nid = \"{person}\"\nname = \"{}\"\n\n\
             [[instrument]]\nid = \"{detector}\"\nkind = \"electronic leak detector\"\nsensor = \"infrared\"\nsensitivity = \"3 g/yr\"\nchecked = [2026-01-12]\n",
            long_name("Contractor"),
            long_name("Address"),
            long_name("CERT01"),
            long_name("0123456789"),
            long_name("Person"),
        ),
    );
    written(
        root,
        "site/site.toml",
        format!(
            "name = \"{}\"\noperator = \"{}\"\naddress = \"{}\"\ntimezone = \"Europe/Dublin\"\nunits = \"metric\"\nrules = [\"eu-2024-573\"]\n",
            long_name("Site"),
            long_name("Operator"),
            long_name("Street"),
        ),
    );
    let mut system = format!(
        "name = \"{}\"\n\n[[in-force]]\nfrom = 2021-05-04\nrefrigerant = \"R-449A\"\nfull-charge = \"800 kg\"\n\n[[circuit]]\nid = \"a\"\n",
        long_name("System")
    );
    let mut findings = String::new();
    let mut number = 0_u8;
    for finding in 1..=60 {
        let point = long_id("point", finding);
        write!(
            system,
            "\n[[point]]\nid = \"{point}\"\nkind = \"flare joint\"\npart = \"liquid line\"\nwhere = \"{}\"\n",
            long_name("Where")
        )
        .unwrap();
        write!(
            findings,
            "## {} {{#{point}}}\n\n- kind: leak\n- evidence:\n  - 09:10 oil, {}\n  - 09:30 electronic {detector}, alarm; {}\n\
             - size: {finding}0 ± 5 g/yr, estimated\n- cause: {}\n- state: open\n\n{} and words after it.\n\n",
            long_name("Finding"), long_name("oily"), long_name("alarm"), long_name("cause"), long_name("prose"),
        )
        .unwrap();
        for _ in 0..if finding <= 20 { 4 } else { 3 } {
            number += 1;
            writeln!(
                findings,
                "![{}](photos/p{number}.jpg \"ring 50 % 50 %\")\n",
                long_name("caption")
            )
            .unwrap();
            written(
                root,
                &format!("{VISIT}/photos/p{number}.jpg"),
                photograph(number),
            );
        }
    }
    assert_eq!(number, 200);
    written(root, "site/system/system.toml", system);
    written(root, &format!("{VISIT}/findings.md"), findings);
    written(
        root,
        &format!("{VISIT}/visit.toml"),
        format!(
            "purpose = \"leak search\"\nattendance = [ {{ by = \"{person}\", from = 2026-03-04T08:00, to = 2026-03-04T17:00 }} ]\ncomplaint = \"{}\"\n\n\
             [[advice]]\nwhat = \"{}\"\nto = \"{}\"\nanswer = \"{}\"\nat = 2026-03-04T16:00\n",
            long_name("Complaint"),
            long_name("Advice"),
            long_name("Manager"),
            long_name("Answer"),
        ),
    );
}

/// Runs `report` on a book; gives the exit code, what it says, and the only PDF, kept if asked.
fn report(root: &Path, name: &str) -> (i32, String, Option<Vec<u8>>) {
    let folder = tempfile::tempdir().unwrap();
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args(["report", VISIT, "--into"])
        .arg(folder.path())
        .current_dir(root)
        .env("NO_COLOR", "1")
        .output()
        .unwrap();
    let pdf = snapshot(folder.path()).into_values().next();
    if let (Some(samples), Some(pdf)) = (std::env::var_os("RIMEBOOK_STRESS"), &pdf) {
        fs::write(Path::new(&samples).join(format!("{name}.pdf")), pdf).unwrap();
    }
    let said = String::from_utf8_lossy(&output.stderr).into_owned();
    (output.status.code().unwrap(), said, pdf)
}

fn printed(root: &Path, name: &str) -> Vec<u8> {
    let (code, said, pdf) = report(root, name);
    assert_eq!(code, 0, "{said}");
    let pdf = pdf.unwrap();
    assert!(pdf.starts_with(b"%PDF-1.7"));
    pdf
}

#[test]
fn the_longest_names_and_two_hundred_photographs_make_a_report_of_bearable_size() {
    for paper in ["a4", "letter"] {
        let folder = tempfile::tempdir().unwrap();
        largest(folder.path());
        let book = fs::read_to_string(folder.path().join("rimebook.toml")).unwrap();
        let book = book.replacen(
            "[contractor]",
            &format!("[contractor]\npaper = \"{paper}\""),
            1,
        );
        written(folder.path(), "rimebook.toml", book);
        let pdf = printed(folder.path(), &format!("longest-{paper}"));
        let pictures = pdf.windows(14).filter(|w| w == b"/Subtype/Image").count()
            + pdf.windows(15).filter(|w| w == b"/Subtype /Image").count();
        assert!(pictures >= 200, "{pictures} pictures");
        assert!(pdf.len() < 5_000_000, "{} bytes", pdf.len());
    }
}

#[test]
fn a_book_of_five_files_makes_a_small_report() {
    let folder = tempfile::tempdir().unwrap();
    smallest(folder.path(), "Nettlebed Dairy (invented)");
    assert_eq!(snapshot(folder.path()).len(), 5);
    let pdf = printed(folder.path(), "smallest");
    assert!(pdf.len() < 150_000, "{} bytes", pdf.len());
}

#[test]
fn a_customer_in_letters_that_no_font_has_is_told_by_character_and_never_a_box() {
    for (operator, character) in [
        ("شركة التبريد", "U+0634"),
        ("חברת קירור", "U+05D7"),
        ("冷冻公司", "U+51B7"),
        ("れいとう株式会社", "U+308C"),
        ("한빛냉동", "U+D55C"),
    ] {
        let folder = tempfile::tempdir().unwrap();
        smallest(folder.path(), operator);
        let (code, said, pdf) = report(folder.path(), "letters");
        assert_eq!((code, pdf), (1, None), "{operator}: {said}");
        assert!(said.contains(character), "{operator}: {said}");
        assert!(said.contains("site/site.toml:1:"), "{operator}: {said}");
    }
}

#[test]
fn greek_cyrillic_and_accented_customers_are_printed() {
    for (number, operator) in [
        "Ψυγεία Θράκης",
        "Холод и лёд",
        "Łódź Chłodnia",
        "Đá Lạnh Huế",
    ]
    .into_iter()
    .enumerate()
    {
        let folder = tempfile::tempdir().unwrap();
        smallest(folder.path(), operator);
        printed(folder.path(), &format!("letters-{number}"));
    }
}

/// A PNG in one colour.
fn png(width: u32, height: u32) -> Vec<u8> {
    let mut bytes = std::io::Cursor::new(Vec::new());
    image::RgbImage::from_pixel(width, height, image::Rgb([40, 90, 100]))
        .write_to(&mut bytes, image::ImageFormat::Png)
        .unwrap();
    bytes.into_inner()
}

/// The demo book with another logo, and what `report` makes of its smallest visit.
fn with_logo(name: &str, bytes: &[u8]) -> (i32, String, usize) {
    let book = demo();
    written(book.path(), &format!("branding/{name}"), bytes);
    let text = fs::read_to_string(book.path().join("rimebook.toml")).unwrap();
    let text = text.replace("branding/logo.svg", &format!("branding/{name}"));
    written(book.path(), "rimebook.toml", text);
    let folder = tempfile::tempdir().unwrap();
    let output = Command::new(env!("CARGO_BIN_EXE_rimebook"))
        .args(["report", "brackwater/cold-store-1/2026-05-12", "--into"])
        .arg(folder.path())
        .current_dir(book.path())
        .output()
        .unwrap();
    let pdf = snapshot(folder.path())
        .into_values()
        .next()
        .unwrap_or_default();
    if let Some(samples) = std::env::var_os("RIMEBOOK_STRESS").filter(|_| !pdf.is_empty()) {
        fs::write(Path::new(&samples).join(format!("{name}.pdf")), &pdf).unwrap();
    }
    let said = String::from_utf8_lossy(&output.stderr).into_owned();
    (output.status.code().unwrap(), said, pdf.len())
}

#[test]
fn logos_of_every_shape_are_printed_and_broken_ones_are_told() {
    let portrait = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 20 90\"><rect width=\"20\" height=\"90\" fill=\"#2f5d62\"/></svg>";
    for (name, bytes) in [
        ("portrait.svg", portrait.as_bytes().to_vec()),
        ("portrait.png", png(60, 400)),
        ("banner.png", png(3000, 60)),
        ("huge.png", png(5000, 5000)),
    ] {
        let (code, said, length) = with_logo(name, &bytes);
        assert_eq!(code, 0, "{name}: {said}");
        assert!((1..600_000).contains(&length), "{name}: {length} bytes");
    }
    for (name, bytes) in [
        ("cut.png", png(60, 60)[..40].to_vec()),
        ("cut.svg", portrait.as_bytes()[..60].to_vec()),
        ("empty.png", Vec::new()),
        ("named-wrongly.png", portrait.as_bytes().to_vec()),
    ] {
        let (code, said, length) = with_logo(name, &bytes);
        assert_eq!((code, length), (1, 0), "{name}: {said}");
        assert!(
            said.contains(name) && said.contains("rimebook.toml:7"),
            "{name}: {said}"
        );
    }
}

#[test]
fn an_accent_that_is_no_colour_is_told_at_its_line() {
    let folder = tempfile::tempdir().unwrap();
    smallest(folder.path(), "Nettlebed Dairy (invented)");
    let book = fs::read_to_string(folder.path().join("rimebook.toml")).unwrap();
    for (accent, code, word) in [("teal", 1, "colour-unreadable"), ("#ffd400", 0, "")] {
        let book = book.replacen(
            "[contractor]",
            &format!("[contractor]\naccent = \"{accent}\""),
            1,
        );
        written(folder.path(), "rimebook.toml", book);
        let (exit, said, pdf) = report(folder.path(), "pale-accent");
        assert_eq!((exit, pdf.is_some()), (code, code == 0), "{said}");
        assert!(said.contains(word), "{said}");
    }
}
