//! The mail draft (RFC 5322): a summary in plain text, the report attached.
//!
//! Nothing in it is drawn or read from the machine: date, Message-ID and boundary come from the visit,
//! so that the same notes give the same bytes. Header values never carry a line break from a note.

use crate::language::Words;
use crate::report::data::{Block, Inline, ReportData};
use crate::text::Message;
use mail_builder::MessageBuilder;
use mail_builder::headers::HeaderType;
use mail_builder::headers::content_type::ContentType;
use mail_builder::mime::MimePart;

/// Who it is from and to, and what names it.
#[derive(Clone, Debug)]
pub struct Envelope {
    /// The contractor's mail address, if it is noted.
    pub from: Option<String>,
    /// The operator's mail address, if it is noted.
    pub to: Option<String>,
    /// Seconds since 1970 of the visit's end.
    pub date: i64,
    /// What names the visit for good: site, system and day.
    pub ident: String,
    /// Hexadecimal digits of the PDF's digest.
    pub digest: String,
    /// File name of the PDF.
    pub file: String,
    /// Telephone of the contractor.
    pub telephone: Option<String>,
    /// The words of the site's language.
    pub words: &'static Words,
}

/// Writes the draft.
pub fn draft(data: &ReportData, pdf: &[u8], envelope: &Envelope) -> std::io::Result<Vec<u8>> {
    let digest = |from: usize| envelope.digest.get(from..from + 24).unwrap_or("0");
    let parts = vec![
        MimePart::new(
            ContentType::new("text/plain").attribute("charset", "utf-8"),
            summary(data, envelope),
        ),
        MimePart::new(ContentType::new("application/pdf"), pdf.to_vec())
            .attachment(one_line(&envelope.file)),
    ];
    let mixed =
        ContentType::new("multipart/mixed").attribute("boundary", format!("report-{}", digest(0)));
    let mut message = MessageBuilder::new()
        .subject(one_line(&data.document.title))
        .date(envelope.date)
        .message_id(format!(
            "{}.{}@rimebook.invalid",
            digest(24),
            word(&envelope.ident)
        ))
        // Opens as a draft to be sent, not as a mail received.
        .header("X-Unsent", HeaderType::Text("1".into()));
    let contractor = one_line(&data.contractor.name);
    if let Some(from) = envelope.from.as_deref().and_then(address) {
        message = message.from((contractor, from));
    }
    if let Some(to) = envelope.to.as_deref().and_then(address) {
        message = message.to(to);
    }
    message.body(MimePart::new(mixed, parts)).write_to_vec()
}

/// An address that can stand in a header; none where it holds what an address does not.
fn address(text: &str) -> Option<String> {
    let text = text.trim();
    let fine = text.split('@').filter(|part| !part.is_empty()).count() == 2
        && !text
            .chars()
            .any(|c| c.is_whitespace() || c.is_control() || "<>,;:\"()[]\\".contains(c));
    fine.then(|| text.to_owned())
}

/// Text on one line: a header cannot be broken by a note.
fn one_line(text: &str) -> String {
    text.split(|c: char| c.is_control() || c == '\u{2028}' || c == '\u{2029}')
        .filter(|part| !part.trim().is_empty())
        .collect::<Vec<_>>()
        .join(" ")
        .replace('\u{a0}', " ")
}

/// Letters, digits and hyphens only.
fn word(text: &str) -> String {
    text.chars()
        .map(|c| if c.is_ascii_alphanumeric() { c } else { '-' })
        .collect()
}

/// The body: what page one says, as plain text.
pub fn summary(data: &ReportData, envelope: &Envelope) -> String {
    let words = envelope.words;
    let mut text = String::new();
    let mut add = |lines: &[String]| {
        for line in lines.iter().filter(|line| !line.is_empty()) {
            text += &one_line(line);
            text += "\r\n";
        }
        text += "\r\n";
    };
    add(&[format!("{}, {}", data.head.system, data.head.date)]);
    add(std::slice::from_ref(&data.outcome.sentence));
    add(&[data.outcome.because.join(" ")]);
    for caution in &data.cautions {
        let because = caution.because.clone().unwrap_or_default();
        let message = Message::of("mail-caution")
            .with("caution", caution.sentence.as_str())
            .with("because", because);
        add(&[words.say(&message)]);
    }
    for (title, blocks) in [
        ("mail-leaking-again", &data.leaking_again),
        ("mail-still-leaking", &data.still_leaking),
        ("mail-waiting", &data.waiting),
    ] {
        if !blocks.is_empty() {
            let lines: Vec<String> = blocks.iter().map(plain).collect();
            add(&std::iter::once(words.word(title))
                .chain(lines)
                .collect::<Vec<_>>());
        }
    }
    if !data.still_open.is_empty() {
        let lines = data.still_open.iter().map(|item| match &item.decided {
            Some(decided) => format!("- {} {decided}", item.what),
            None => format!("- {}", item.what),
        });
        add(&std::iter::once(words.word("mail-still-open"))
            .chain(lines)
            .collect::<Vec<_>>());
    }
    if !data.next.is_empty() {
        let lines = data.next.iter().map(|next| {
            let before = next
                .not_before
                .as_ref()
                .map_or_else(String::new, |before| format!(", {before}"));
            let line = format!("- {} {}{before}", next.what, next.by);
            line.trim_end().to_owned()
        });
        add(&std::iter::once(words.word("mail-next"))
            .chain(lines)
            .collect::<Vec<_>>());
    }
    add(&[words.word("mail-attached")]);
    add(&[
        data.contractor.name.clone(),
        envelope.telephone.clone().unwrap_or_default(),
    ]);
    text.trim_end().to_owned() + "\r\n"
}

/// The words of a block of page one, which are paragraphs.
fn plain(block: &Block) -> String {
    match block {
        Block::Paragraph { c } => c.iter().map(Inline::words).collect(),
        _ => String::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::vocabulary::site_file::Language;

    fn envelope() -> Envelope {
        Envelope {
            from: Some("office@contractor.example".to_owned()),
            to: Some("plant@operator.example".to_owned()),
            date: 1_781_800_000,
            ident: "harbour/ice/2026-06-18".to_owned(),
            digest: "0123456789abcdef".repeat(4),
            file: "harbour_ice_2026-06-18.pdf".to_owned(),
            telephone: None,
            words: Words::english(),
        }
    }

    fn data(title: &str) -> ReportData {
        let mut data = ReportData::default();
        data.document.title = title.to_owned();
        data.outcome.sentence = "One leak found, repaired and proved.".to_owned();
        data
    }

    #[test]
    fn the_same_report_gives_the_same_bytes() {
        let one = draft(&data("Report"), b"%PDF", &envelope()).unwrap();
        assert_eq!(one, draft(&data("Report"), b"%PDF", &envelope()).unwrap());
        let text = String::from_utf8(one).unwrap();
        assert!(
            text.contains("boundary=\"report-0123456789abcdef01234567\""),
            "{text}"
        );
        assert!(text.contains("One leak found"));
    }

    #[test]
    fn the_body_speaks_the_language_of_the_site() {
        let mut to = envelope();
        to.words = Words::of(Language::German);
        let body = summary(&data("Bericht"), &to);
        assert!(body.contains("Der Bericht liegt bei."), "{body}");
    }

    #[test]
    fn a_note_cannot_add_a_header() {
        let title = "Report\r\nBcc: someone@elsewhere.example\r\n\r\nbody";
        let mut to = envelope();
        to.to = Some("plant@operator.example\r\nBcc: someone@elsewhere.example".to_owned());
        let text = String::from_utf8(draft(&data(title), b"%PDF", &to).unwrap()).unwrap();
        let head = text.split("\r\n\r\n").next().unwrap();
        assert!(!head.lines().any(|line| line.starts_with("Bcc")), "{head}");
        assert!(!head.lines().any(|line| line.starts_with("To:")), "{head}");
    }
}
