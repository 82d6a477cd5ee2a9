//! `findings.md`: one heading per finding, a list of fields, prose and pictures.

use crate::notes::finding_line::{
    Look, Piece, Proof, Repair, Size, look, one_line, proof, repair, size,
};
use crate::notes::from_note::word_unknown;
use crate::notes::prose_reader::{Located, Picture, ProseReader, events, level, plain};
use crate::text::prose::Block;
use crate::text::{Diagnostic, Diagnostics, FileId, Noted, Source, Span, nearest, or_list};
use crate::vocabulary::finding_field::{FindingField, FindingKind, FindingState};
use crate::vocabulary::{Identifier, Word};
use pulldown_cmark::{Event, Tag};
use std::ops::Range;

/// `findings.md` as written.
#[derive(Clone, Debug, Default)]
pub struct FindingsNote {
    /// Prose before the first finding.
    pub introduction: Vec<Block>,
    /// The findings, in order.
    pub findings: Vec<FindingNote>,
}

/// One finding.
#[derive(Clone, Debug)]
pub struct FindingNote {
    /// Its heading.
    pub span: Span,
    /// Whether all of it could be read.
    pub sound: bool,
    /// Words of the heading.
    pub title: String,
    /// The point it is tied to.
    pub point: Option<Noted<Identifier>>,
    /// What it is.
    pub kind: Option<Noted<FindingKind>>,
    /// What was seen, in order.
    pub evidence: Vec<Look>,
    /// How large.
    pub size: Option<Size>,
    /// Why it leaks.
    pub cause: Option<Noted<String>>,
    /// Repairs, in order.
    pub repairs: Vec<Repair>,
    /// Proofs, in order.
    pub proofs: Vec<Proof>,
    /// How it was left.
    pub state: Option<Noted<FindingState>>,
    /// Which circuit, where the point does not say it.
    pub circuit: Option<Noted<Identifier>>,
    /// Prose for the customer.
    pub prose: Vec<Block>,
    /// Pictures.
    pub pictures: Vec<PictureNote>,
}

/// A picture of a finding.
#[derive(Clone, Debug, PartialEq)]
pub struct PictureNote {
    /// Path from the visit folder, as written.
    pub path: Noted<String>,
    /// Caption.
    pub caption: String,
    /// Rings, as parts of width and height, 0 to 1.
    pub rings: Vec<(f64, f64)>,
    /// Said to be before or after the work.
    pub when: Option<When>,
}

/// Whether a picture shows the place before or after the work.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum When {
    /// Before.
    Before,
    /// After.
    After,
}

/// Reads `findings.md`.
pub(super) fn read(file: FileId, source: &Source, diagnostics: &mut Diagnostics) -> FindingsNote {
    let events = events(&source.text);
    let starts = finding_starts(&events);
    let first = starts.first().copied().unwrap_or(events.len());
    let mut reader = ProseReader::new(file, &events[..first], diagnostics);
    let introduction = without_title(reader.blocks(0));
    let mut note = FindingsNote {
        introduction,
        findings: Vec::with_capacity(starts.len()),
    };
    for (index, start) in starts.iter().enumerate() {
        let end = starts.get(index + 1).copied().unwrap_or(events.len());
        note.findings.push(
            FindingReader {
                file,
                source,
                diagnostics,
                sound: true,
            }
            .finding(&events[*start..end]),
        );
    }
    note
}

/// Headings of the second level begin findings; where there are none, those of the first do.
fn finding_starts(events: &[Located<'_>]) -> Vec<usize> {
    let at_level = |wanted: usize| -> Vec<usize> {
        events
            .iter()
            .enumerate()
            .filter(|(_, (event, _))| {
                matches!(event, Event::Start(Tag::Heading { level: l, .. }) if level(*l) == wanted)
            })
            .map(|(index, _)| index)
            .collect()
    };
    let second = at_level(2);
    if second.is_empty() {
        at_level(1)
    } else {
        second
    }
}

fn without_title(blocks: Vec<Block>) -> Vec<Block> {
    blocks
        .into_iter()
        .filter(|block| !matches!(block, Block::Heading { .. }))
        .collect()
}

struct FindingReader<'r> {
    file: FileId,
    source: &'r Source,
    diagnostics: &'r mut Diagnostics,
    sound: bool,
}

impl FindingReader<'_> {
    fn finding(mut self, events: &[Located<'_>]) -> FindingNote {
        let range = events.first().map_or(0..0, |(_, range)| range.clone());
        let line_end = self.source.text[range.clone()]
            .find('\n')
            .map_or(range.end, |index| range.start + index);
        let span = Span::new(self.file, range.start..line_end);
        let heading_end = events
            .iter()
            .position(|(event, _)| matches!(event, Event::End(pulldown_cmark::TagEnd::Heading(_))))
            .map_or(events.len(), |index| index + 1);
        let mut words = ProseReader::new(
            self.file,
            &events[1.min(events.len())..heading_end],
            self.diagnostics,
        );
        let title_blocks = words.blocks(0);
        let title = title_blocks
            .iter()
            .map(|block| match block {
                Block::Paragraph { c } => plain(c),
                _ => String::new(),
            })
            .collect::<String>();
        let point = self.point(events, span);
        let mut note = FindingNote {
            span,
            sound: true,
            title: one_line(&title),
            point,
            kind: None,
            evidence: Vec::new(),
            size: None,
            cause: None,
            repairs: Vec::new(),
            proofs: Vec::new(),
            state: None,
            circuit: None,
            prose: Vec::new(),
            pictures: Vec::new(),
        };
        let mut rest = heading_end;
        if let Some((Event::Start(Tag::List(None)), _)) = events.get(heading_end) {
            rest = heading_end + list_length(&events[heading_end..]);
            self.fields(&events[heading_end..rest], &mut note);
        }
        self.required(&note);
        let mut reader = ProseReader::new(self.file, &events[rest..], self.diagnostics);
        note.prose = reader.blocks(0);
        let pictures = std::mem::take(&mut reader.pictures);
        note.pictures = pictures
            .into_iter()
            .filter_map(|picture| self.picture(&picture))
            .collect();
        note.sound = self.sound;
        note.evidence.shrink_to_fit();
        note.repairs.shrink_to_fit();
        note.proofs.shrink_to_fit();
        note
    }

    fn point(&self, events: &[Located<'_>], heading: Span) -> Option<Noted<Identifier>> {
        let Some((Event::Start(Tag::Heading { id: Some(id), .. }), _)) = events.first() else {
            return None;
        };
        let text = &self.source.text[heading.range()];
        let at = text.rfind(&format!("#{id}")).map_or(heading, |index| {
            heading.part(index + 1..index + 1 + id.len())
        });
        Some(Noted::new(Identifier(id.to_string()), at))
    }

    fn required(&mut self, note: &FindingNote) {
        for (missing, field, example) in [
            (note.kind.is_none(), FindingField::Kind, "- kind: leak"),
            (
                note.state.is_none(),
                FindingField::State,
                "- state: repaired, proved",
            ),
        ] {
            if missing && self.sound {
                self.diagnostics.push(
                    Diagnostic::error(
                        "field-missing",
                        note.span,
                        format!("this finding has no `{}`", field.word()),
                    )
                    .here("should be in the list under this heading")
                    .why("the outcome of the visit is worked out from it")
                    .cure(format!("add a line such as `{example}`")),
                );
            }
        }
    }

    fn fields(&mut self, events: &[Located<'_>], note: &mut FindingNote) {
        let mut seen: Vec<(FindingField, Span)> = Vec::new();
        let mut index = 1;
        while let Some((event, range)) = events.get(index) {
            if !matches!(event, Event::Start(Tag::Item)) {
                index += 1;
                continue;
            }
            let length = list_length(&events[index..]);
            let item = &events[index..index + length];
            index += length;
            let nested = item
                .iter()
                .position(|(event, _)| matches!(event, Event::Start(Tag::List(_))));
            let own_end = nested.map_or(range.end, |at| item[at].1.start);
            let own = item_text(self.file, self.source, range.start..own_end);
            let lines: Vec<Piece<'_>> = nested
                .map(|at| sub_items(&item[at..]))
                .unwrap_or_default()
                .into_iter()
                .map(|range| item_text(self.file, self.source, range))
                .collect();
            self.field(own, &lines, note, &mut seen);
        }
    }

    fn field(
        &mut self,
        own: Piece<'_>,
        lines: &[Piece<'_>],
        note: &mut FindingNote,
        seen: &mut Vec<(FindingField, Span)>,
    ) {
        let (name, value) = own.split(':');
        let Some(field) = FindingField::of(name.text) else {
            self.unknown(name, value.is_some());
            return;
        };
        let first = seen.iter().find(|(known, _)| *known == field);
        if let Some((_, first)) = first.filter(|_| !field.repeats()) {
            self.fault(
                Diagnostic::error(
                    "key-twice",
                    name.span,
                    format!("`{}` stands twice in this finding", name.text),
                )
                .here("the second one")
                .also(*first, "the first one")
                .cure("keep one of the two lines"),
            );
            return;
        }
        seen.push((field, name.span));
        let value = value.unwrap_or(own.from(own.text.len()));
        if value.text.is_empty() && lines.is_empty() && field != FindingField::Private {
            self.fault(
                Diagnostic::error("text-empty", name.span, format!("`{}` is empty", name.text))
                    .here("nothing after the colon")
                    .cure("write it, or take the line out"),
            );
            return;
        }
        self.value(field, value, lines, note);
    }

    fn value(
        &mut self,
        field: FindingField,
        value: Piece<'_>,
        lines: &[Piece<'_>],
        note: &mut FindingNote,
    ) {
        let before = self.diagnostics.errors();
        match field {
            FindingField::Kind => note.kind = self.word(field, value),
            FindingField::State => note.state = self.word(field, value),
            FindingField::Evidence => {
                let own = (!value.text.is_empty()).then_some(&value);
                note.evidence = own
                    .into_iter()
                    .chain(lines)
                    .filter_map(|line| look(*line, self.diagnostics))
                    .collect();
            }
            FindingField::Size => {
                let none = ["not measured", "not sized", "unknown"];
                if !none.contains(&value.text) {
                    note.size = size(value, self.diagnostics);
                }
            }
            FindingField::Cause => {
                note.cause = Some(Noted::new(one_line(value.text), value.span));
            }
            FindingField::Repair => note.repairs.push(repair(value, self.diagnostics)),
            FindingField::Proof => note.proofs.extend(proof(value, self.diagnostics)),
            FindingField::Circuit => {
                note.circuit = Some(Noted::new(Identifier(value.text.to_owned()), value.span));
            }
            FindingField::Private => {}
        }
        self.sound &= self.diagnostics.errors() == before;
    }

    fn word<W: Word>(&mut self, field: FindingField, value: Piece<'_>) -> Option<Noted<W>> {
        let read = W::of(&one_line(value.text));
        if read.is_none() {
            let words: Vec<&'static str> = W::WORDS.iter().map(|(word, _, _)| *word).collect();
            self.fault(word_unknown(
                field.word(),
                value.text,
                value.span,
                &words,
                false,
            ));
        }
        read.map(|word| Noted::new(word, value.span))
    }

    fn unknown(&mut self, name: Piece<'_>, has_colon: bool) {
        let words: Vec<&'static str> = FindingField::WORDS
            .iter()
            .map(|(word, _, _)| *word)
            .collect();
        let diagnostic = if has_colon {
            Diagnostic::error(
                "key-unknown",
                name.span,
                format!("unknown field `{}` in this finding", name.text),
            )
            .here("not one of the fields of a finding")
            .why("a misspelt field would silently be left out of the report")
        } else {
            Diagnostic::error(
                "field-without-colon",
                name.span,
                "this line of the list is no field",
            )
            .here("expected a name, a colon and a value")
            .why("the first list under a heading holds the fields; prose comes after it")
        };
        let diagnostic = match nearest(name.text, &words).filter(|_| has_colon) {
            Some(near) => diagnostic.patch(format!("did you mean `{near}`?"), name.span, near),
            None => diagnostic.cure(format!("the fields are {}", or_list(&words))),
        };
        self.fault(diagnostic);
    }

    fn fault(&mut self, diagnostic: Diagnostic) {
        self.sound = false;
        self.diagnostics.push(diagnostic);
    }

    fn picture(&mut self, picture: &Picture) -> Option<PictureNote> {
        let span = Span::new(self.file, picture.range.clone());
        let raw = &self.source.text[picture.range.clone()];
        let at = raw
            .find(&picture.path)
            .map_or(span, |index| span.part(index..index + picture.path.len()));
        let wrong = |what: &str, here: &str, cure: &str| {
            Diagnostic::error("photograph-outside", at, what)
                .here(here)
                .why("a report holds only what lies in its own visit folder")
                .cure(cure)
        };
        let path = picture.path.as_str();
        if path.contains("://") || path.starts_with("data:") {
            self.fault(wrong(
                "a photograph cannot be fetched from elsewhere",
                "an address, not a file of this visit",
                "copy the picture into photos/ and name it there",
            ));
            return None;
        }
        let escapes = path.starts_with(['/', '\\', '~'])
            || path.contains('\\')
            || path.contains(':')
            || path.split('/').any(|part| part == "..");
        if escapes {
            self.fault(wrong(
                "this photograph lies outside the visit folder",
                "leads out of the folder",
                "copy the picture into photos/ and write photos/name.jpg",
            ));
            return None;
        }
        if picture.caption.trim().is_empty() {
            self.fault(
                Diagnostic::error("caption-missing", span, "this photograph has no caption")
                    .here("nothing between the square brackets")
                    .why("a customer who cannot see the picture is read its caption")
                    .cure("write what it shows: `![Oil on the nut before repair](photos/…)`"),
            );
            return None;
        }
        let (rings, when) = self.marks(picture, span);
        Some(PictureNote {
            path: Noted::new(picture.path.clone(), at),
            caption: one_line(&picture.caption),
            rings,
            when: when
                .or_else(|| when_of(path))
                .or_else(|| when_of(&picture.caption)),
        })
    }

    /// `ring 44 % 61 %` and `before` or `after`, joined by commas or semicolons.
    fn marks(&mut self, picture: &Picture, span: Span) -> (Vec<(f64, f64)>, Option<When>) {
        let mut rings = Vec::new();
        let mut when = None;
        for mark in picture.title.split([',', ';']) {
            let mark = mark.trim();
            match mark {
                "" => {}
                "before" => when = Some(When::Before),
                "after" => when = Some(When::After),
                _ => match ring(mark) {
                    Some(place) => rings.push(place),
                    None => self.fault(
                        Diagnostic::error(
                            "mark-unreadable",
                            span,
                            format!("`{mark}` is no mark on a photograph"),
                        )
                        .here("in the quoted part after the file name")
                        .cure("write `ring 44 % 61 %`: from the left, from the top; or `before`, `after`"),
                    ),
                },
            }
        }
        (rings, when)
    }
}

fn when_of(text: &str) -> Option<When> {
    let lower = text.to_lowercase();
    let has = |word: &str| {
        lower
            .split(|c: char| !c.is_alphanumeric())
            .any(|part| part == word)
    };
    match (has("before"), has("after")) {
        (true, false) => Some(When::Before),
        (false, true) => Some(When::After),
        _ => None,
    }
}

fn ring(mark: &str) -> Option<(f64, f64)> {
    let rest = mark.strip_prefix("ring")?;
    let mut parts = rest.split('%').map(str::trim);
    let x: f64 = parts.next()?.parse().ok()?;
    let y: f64 = parts.next()?.parse().ok()?;
    let inside = |value: f64| (0.0..=100.0).contains(&value);
    (parts.all(str::is_empty) && rest.ends_with('%') && inside(x) && inside(y))
        .then_some((x / 100.0, y / 100.0))
}

/// How many events the element that begins a run has.
fn list_length(events: &[Located<'_>]) -> usize {
    let mut open = 0;
    for (index, (event, _)) in events.iter().enumerate() {
        match event {
            Event::Start(_) => open += 1,
            Event::End(_) => open -= 1,
            _ => {}
        }
        if open == 0 {
            return index + 1;
        }
    }
    events.len()
}

/// The bytes of the items of a nested list.
fn sub_items(events: &[Located<'_>]) -> Vec<Range<usize>> {
    let length = list_length(events);
    let mut depth = 0;
    let mut items = Vec::new();
    for (event, range) in &events[..length] {
        match event {
            Event::Start(Tag::List(_)) => depth += 1,
            Event::End(pulldown_cmark::TagEnd::List(_)) => depth -= 1,
            Event::Start(Tag::Item) if depth == 1 => items.push(range.clone()),
            _ => {}
        }
    }
    items
}

/// The text of a list item without its bullet.
fn item_text(file: FileId, source: &Source, range: Range<usize>) -> Piece<'_> {
    let whole = Piece {
        text: &source.text[range.clone()],
        span: Span::new(file, range),
    }
    .trim();
    match whole.text.strip_prefix(['-', '*', '+']) {
        Some(_) => whole.from(1).trim(),
        None => whole,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read_text(text: &str) -> (FindingsNote, Vec<String>) {
        let source = Source::new("findings.md".into(), text.into());
        let mut diagnostics = Diagnostics::default();
        let note = read(FileId(0), &source, &mut diagnostics);
        let told = diagnostics
            .iter()
            .map(|d| {
                format!(
                    "{}: {}",
                    d.name,
                    source.text[d.primary.span.range()].trim_end()
                )
            })
            .collect();
        (note, told)
    }

    const FLARE: &str = "\
## Flare nut, evaporator 1 {#evap-1/txv-inlet}

- kind: leak
- evidence:
  - 08:55 oil trace, wiped, back at 09:50
  - [day 2] 09:10 electronic ld-2, no alarm; clean air, alarm again
- size: 30 g/yr, measured by electronic ld-2 at 11 bar g
- repair: 11:30 flare remade, 60 N m
- proof: p1
- proof: 16:50 electronic ld-2, no alarm
- state: repaired, proved
- private: apprentice's first flare

The nut had **backed off**.

![Oil on the nut before repair](photos/nut-before.jpg \"ring 44 % 61 %\")
";

    #[test]
    fn a_finding_is_read_whole() {
        let (note, told) = read_text(FLARE);
        assert_eq!(told, Vec::<String>::new());
        let finding = &note.findings[0];
        assert_eq!(finding.title, "Flare nut, evaporator 1");
        assert_eq!(finding.point.as_ref().unwrap().value.0, "evap-1/txv-inlet");
        assert_eq!(finding.evidence.len(), 2);
        assert!(finding.evidence[0].positive());
        assert_eq!(finding.evidence[1].at.value.day, 2);
        assert!(!finding.evidence[1].positive());
        assert!(finding.size.as_ref().unwrap().measured);
        assert_eq!(finding.repairs[0].what, "flare remade, 60 N m");
        assert_eq!(finding.proofs.len(), 2);
        assert_eq!(finding.state.unwrap().value, FindingState::RepairedProved);
        assert_eq!(finding.prose.len(), 1);
        assert_eq!(finding.pictures[0].rings, vec![(0.44, 0.61)]);
        assert_eq!(finding.pictures[0].when, Some(When::Before));
    }

    #[test]
    fn slips_are_told_at_their_place() {
        let (_, told) = read_text(&FLARE.replace("- kind: leak", "- kind: leek"));
        assert_eq!(told, ["word-unknown: leek"]);
        let (_, told) = read_text(&FLARE.replace(
            "electronic ld-2, no alarm\n- state",
            "electonic ld-2, no alarm\n- state",
        ));
        assert_eq!(told, ["word-unknown: electonic"]);
        let (_, told) = read_text(&FLARE.replace("08:55 oil", "oil"));
        assert_eq!(
            told,
            ["evidence-without-time: oil trace, wiped, back at 09:50"]
        );
        let (_, told) = read_text(&FLARE.replace("photos/nut-before.jpg", "../../x.jpg"));
        assert_eq!(told, ["photograph-outside: ../../x.jpg"]);
    }
}
