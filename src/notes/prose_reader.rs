//! Markdown events to the closed tree of prose; what the report cannot set is told with its place.

use crate::text::prose::{Block, Inline};
use crate::text::{Diagnostic, Diagnostics, FileId, Span};
use pulldown_cmark::{Event, HeadingLevel, Options, Parser, Tag, TagEnd};
use std::ops::Range;

/// The Markdown that findings may use.
pub(super) fn options() -> Options {
    Options::ENABLE_TABLES | Options::ENABLE_STRIKETHROUGH | Options::ENABLE_HEADING_ATTRIBUTES
}

/// Deepest nesting of lists and quotations: the typesetter limits call depth.
const DEEPEST: usize = 8;

/// An event with the bytes it came from.
pub(super) type Located<'e> = (Event<'e>, Range<usize>);

/// All events of a text.
pub(super) fn events(text: &str) -> Vec<Located<'_>> {
    Parser::new_ext(text, options())
        .into_offset_iter()
        .collect()
}

/// A picture in the prose.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(super) struct Picture {
    pub path: String,
    pub caption: String,
    pub title: String,
    pub range: Range<usize>,
}

/// Reads a run of events to blocks, pictures set apart.
pub(super) struct ProseReader<'e, 'd> {
    file: FileId,
    events: &'e [Located<'e>],
    next: usize,
    pub pictures: Vec<Picture>,
    diagnostics: &'d mut Diagnostics,
    /// An opening tag was told: the one that closes it needs no second word.
    html_told: bool,
    in_comment: bool,
}

impl<'e, 'd> ProseReader<'e, 'd> {
    pub fn new(file: FileId, events: &'e [Located<'e>], diagnostics: &'d mut Diagnostics) -> Self {
        Self {
            file,
            events,
            next: 0,
            pictures: Vec::new(),
            diagnostics,
            html_told: false,
            in_comment: false,
        }
    }

    /// All blocks to the end of the run.
    pub fn blocks(&mut self, depth: usize) -> Vec<Block> {
        let mut blocks = Vec::new();
        while let Some((event, range)) = self.events.get(self.next) {
            self.next += 1;
            match event {
                Event::Start(tag) => self.block(tag, range, depth, &mut blocks),
                Event::End(_) => break,
                Event::Rule => blocks.push(Block::Rule),
                Event::Html(text) => self.html(text, range),
                _ => {
                    self.next -= 1;
                    let c = self.inlines();
                    if !c.is_empty() {
                        blocks.push(Block::Paragraph { c });
                    }
                }
            }
        }
        blocks
    }

    fn block(
        &mut self,
        tag: &Tag<'_>,
        range: &Range<usize>,
        depth: usize,
        blocks: &mut Vec<Block>,
    ) {
        match tag {
            Tag::Paragraph => {
                let c = self.inlines();
                if !c.is_empty() {
                    blocks.push(Block::Paragraph { c });
                }
                self.next += 1;
            }
            Tag::Heading { .. } => {
                blocks.push(Block::Heading { c: self.inlines() });
                self.next += 1;
            }
            Tag::BlockQuote(_) if depth < DEEPEST => {
                blocks.push(Block::Quote {
                    c: self.blocks(depth + 1),
                });
            }
            Tag::List(start) if depth < DEEPEST => {
                let items = self.items(depth);
                blocks.push(match start {
                    Some(start) => Block::Numbered {
                        start: *start,
                        items,
                    },
                    None => Block::List { items },
                });
            }
            Tag::CodeBlock(_) => {
                let mut text = String::new();
                while let Some((Event::Text(part), _)) = self.events.get(self.next) {
                    text.push_str(part);
                    self.next += 1;
                }
                self.next += 1;
                blocks.push(Block::Code {
                    text: text.trim_end().to_owned(),
                });
            }
            Tag::Table(_) => blocks.push(self.table()),
            Tag::HtmlBlock => {
                while let Some((Event::Html(text), range)) = self.events.get(self.next) {
                    self.html(text, range);
                    self.next += 1;
                }
                self.next += 1;
            }
            Tag::BlockQuote(_) | Tag::List(_) => {
                self.skip();
                self.diagnostics.push(
                    Diagnostic::error(
                        "prose-too-deep",
                        Span::new(self.file, range.clone()),
                        "this list or quotation is nested too deeply",
                    )
                    .here(format!("more than {DEEPEST} levels"))
                    .cure("write it with fewer levels"),
                );
            }
            _ => {
                self.next -= 1;
                let c = self.inlines();
                if c.is_empty() {
                    self.next += 1;
                } else {
                    blocks.push(Block::Paragraph { c });
                }
            }
        }
    }

    /// Passes over what is left of the element that has just begun.
    fn skip(&mut self) {
        let mut open = 1;
        while let Some((event, _)) = self.events.get(self.next) {
            self.next += 1;
            match event {
                Event::Start(_) => open += 1,
                Event::End(_) => open -= 1,
                _ => {}
            }
            if open == 0 {
                return;
            }
        }
    }

    fn items(&mut self, depth: usize) -> Vec<Vec<Block>> {
        let mut items = Vec::new();
        while let Some((event, _)) = self.events.get(self.next) {
            self.next += 1;
            match event {
                Event::Start(Tag::Item) => items.push(self.blocks(depth + 1)),
                _ => break,
            }
        }
        items
    }

    fn table(&mut self) -> Block {
        let mut head = Vec::new();
        let mut rows = Vec::new();
        let mut row = Vec::new();
        while let Some((event, _)) = self.events.get(self.next) {
            self.next += 1;
            match event {
                Event::Start(Tag::TableCell) => {
                    row.push(self.inlines());
                    self.next += 1;
                }
                Event::End(TagEnd::TableHead) => head = std::mem::take(&mut row),
                Event::End(TagEnd::TableRow) => rows.push(std::mem::take(&mut row)),
                Event::End(TagEnd::Table) => break,
                _ => {}
            }
        }
        Block::Table { head, rows }
    }

    /// Inlines up to the next event that ends or begins a block, which is left in place.
    fn inlines(&mut self) -> Vec<Inline> {
        let mut inlines = Vec::new();
        while let Some((event, range)) = self.events.get(self.next) {
            match event {
                Event::Text(text) => push_text(&mut inlines, text),
                Event::Code(text) => inlines.push(Inline::Code {
                    text: text.to_string(),
                }),
                Event::SoftBreak => push_text(&mut inlines, " "),
                Event::HardBreak => inlines.push(Inline::Break),
                Event::InlineHtml(text) => self.html(text, range),
                Event::Start(tag) => {
                    self.next += 1;
                    match tag {
                        Tag::Strong => inlines.push(Inline::Strong { c: self.inlines() }),
                        Tag::Emphasis => inlines.push(Inline::Emphasis { c: self.inlines() }),
                        Tag::Strikethrough => inlines.push(Inline::Struck { c: self.inlines() }),
                        Tag::Link { dest_url, .. } => {
                            let c = self.inlines();
                            inlines.push(self.link(dest_url, range, c));
                        }
                        Tag::Image {
                            dest_url, title, ..
                        } => {
                            let caption = plain(&self.inlines());
                            self.pictures.push(Picture {
                                path: dest_url.to_string(),
                                caption,
                                title: title.to_string(),
                                range: range.clone(),
                            });
                        }
                        _ => {
                            self.next -= 1;
                            return trimmed(inlines);
                        }
                    }
                }
                _ => return trimmed(inlines),
            }
            self.next += 1;
        }
        trimmed(inlines)
    }

    fn link(&mut self, to: &str, range: &Range<usize>, c: Vec<Inline>) -> Inline {
        let allowed = ["http://", "https://", "mailto:", "tel:"]
            .iter()
            .any(|scheme| to.starts_with(scheme));
        if !allowed {
            self.diagnostics.push(
                Diagnostic::error(
                    "link-not-printable",
                    Span::new(self.file, range.clone()),
                    format!("`{to}` is not an address that a reader of the report can follow"),
                )
                .here("a link to something outside the report")
                .cure("use a full address that begins with https://, mailto: or tel:"),
            );
        }
        Inline::Link {
            to: to.to_owned(),
            c,
        }
    }

    fn html(&mut self, text: &str, range: &Range<usize>) {
        // A comment comes line by line: it goes on until its end mark.
        let comment = self.in_comment || is_comment(text);
        let open = text
            .rfind("<!--")
            .map_or(self.in_comment, |at| !text[at..].contains("-->"));
        self.in_comment = open && !text.trim_end().ends_with("-->");
        if comment || (self.html_told && text.trim().starts_with("</")) {
            return;
        }
        self.html_told = true;
        self.diagnostics.push(
            Diagnostic::error(
                "html-in-prose",
                Span::new(self.file, range.clone()),
                "HTML cannot be printed in the report",
            )
            .here("not plain Markdown")
            .cure("write it as Markdown, or as a comment <!-- … --> to keep it out of the report"),
        );
    }
}

fn is_comment(text: &str) -> bool {
    let text = text.trim();
    text.is_empty() || text.starts_with("<!--") || text.ends_with("-->")
}

fn push_text(inlines: &mut Vec<Inline>, more: &str) {
    if let Some(Inline::Text { text }) = inlines.last_mut() {
        text.push_str(more);
    } else {
        inlines.push(Inline::plain(more));
    }
}

/// Takes the blanks off both ends, and what is then empty away.
fn trimmed(mut inlines: Vec<Inline>) -> Vec<Inline> {
    if let Some(Inline::Text { text }) = inlines.first_mut() {
        *text = text.trim_start().to_owned();
    }
    if let Some(Inline::Text { text }) = inlines.last_mut() {
        *text = text.trim_end().to_owned();
    }
    inlines.retain(|inline| !matches!(inline, Inline::Text { text } if text.is_empty()));
    inlines
}

/// The words alone.
pub(super) fn plain(inlines: &[Inline]) -> String {
    let mut out = String::new();
    for inline in inlines {
        match inline {
            Inline::Text { text } | Inline::Code { text } => out.push_str(text),
            Inline::Strong { c }
            | Inline::Emphasis { c }
            | Inline::Struck { c }
            | Inline::Link { c, .. } => out.push_str(&plain(c)),
            Inline::Working { .. } => {}
            Inline::Break => out.push(' '),
        }
    }
    out
}

/// The level of a heading as a number.
pub(super) fn level(level: HeadingLevel) -> usize {
    level as usize
}
