//! Diagnostics as text in the manner of rustc, and as JSON. The one file that knows the renderer.

use crate::text::{Cure, Diagnostic, Diagnostics, Label, Severity, Sources};
use annotate_snippets::{
    AnnotationKind, Group, Level, Patch, Renderer, Snippet, renderer::DEFAULT_TERM_WIDTH,
};
use serde_json::{Value, json};

/// How to draw.
#[derive(Clone, Copy, Debug, Default)]
pub struct Look {
    /// With colour escapes.
    pub colour: bool,
    /// Terminal width in columns, if known.
    pub width: Option<usize>,
}

/// Most diagnostics drawn in one run; the rest are counted.
const MOST_SHOWN: usize = 200;

/// Draws all diagnostics, in their order, errors and cautions as they come.
pub fn render(diagnostics: &Diagnostics, sources: &Sources, look: Look) -> String {
    let renderer = if look.colour {
        Renderer::styled()
    } else {
        Renderer::plain()
    }
    .term_width(look.width.unwrap_or(DEFAULT_TERM_WIDTH));
    let mut out = String::new();
    for diagnostic in diagnostics.iter().take(MOST_SHOWN) {
        out.push_str(&renderer.render(&groups(diagnostic, sources)));
        out.push_str("\n\n");
    }
    let hidden = diagnostics.iter().count().saturating_sub(MOST_SHOWN);
    if hidden > 0 {
        out.push_str(&format!("… and {hidden} more, not shown\n\n"));
    }
    out
}

fn groups<'a>(diagnostic: &'a Diagnostic, sources: &'a Sources) -> Vec<Group<'a>> {
    let level = match diagnostic.severity {
        Severity::Error => Level::ERROR,
        Severity::Caution => Level::WARNING.with_name(Some("caution")),
    };
    let mut group = level
        .primary_title(diagnostic.what.as_str())
        .id(diagnostic.name)
        .elements(snippets(diagnostic, sources));
    if let Some(why) = &diagnostic.why {
        group = group.element(Level::NOTE.with_name(Some("why")).message(why.as_str()));
    }
    let mut groups = Vec::new();
    for cure in &diagnostic.cures {
        match &cure.patch {
            None => group = group.element(Level::HELP.message(cure.text.as_str())),
            Some((span, to)) => groups.push(
                Level::HELP.secondary_title(cure.text.as_str()).element(
                    snippet_of(sources, span.file)
                        .patch(Patch::new(clamped(sources, *span), to.as_str())),
                ),
            ),
        }
    }
    groups.insert(0, group);
    groups
}

fn snippets<'a>(
    diagnostic: &'a Diagnostic,
    sources: &'a Sources,
) -> Vec<Snippet<'a, annotate_snippets::Annotation<'a>>> {
    let primary_file = diagnostic.primary.span.file;
    let mut files = vec![primary_file];
    for other in &diagnostic.others {
        if !files.contains(&other.span.file) {
            files.push(other.span.file);
        }
    }
    files
        .into_iter()
        .map(|file| {
            let mut snippet = snippet_of(sources, file);
            if file == primary_file {
                snippet = snippet.annotation(annotation(
                    AnnotationKind::Primary,
                    &diagnostic.primary,
                    sources,
                ));
            }
            for other in diagnostic.others.iter().filter(|o| o.span.file == file) {
                snippet = snippet.annotation(annotation(AnnotationKind::Context, other, sources));
            }
            snippet
        })
        .collect()
}

fn snippet_of<T: Clone>(sources: &Sources, file: crate::text::FileId) -> Snippet<'_, T> {
    let source = sources.get(file);
    Snippet::source(source.text.as_str()).path(source.path.as_str())
}

fn annotation<'a>(
    kind: AnnotationKind,
    label: &'a Label,
    sources: &Sources,
) -> annotate_snippets::Annotation<'a> {
    let annotation = kind.span(clamped(sources, label.span));
    if label.text.is_empty() {
        annotation
    } else {
        annotation.label(label.text.as_str())
    }
}

/// The bytes of a span within its file, widened to whole characters.
fn clamped(sources: &Sources, span: crate::text::Span) -> std::ops::Range<usize> {
    let text = &sources.get(span.file).text;
    let range = span.range();
    text.floor_char_boundary(range.start)..text.ceil_char_boundary(range.end)
}

/// One closing line with the counts.
pub fn summary(diagnostics: &Diagnostics) -> String {
    let plural = |count: usize, word: &str| match count {
        0 => format!("no {word}s"),
        1 => format!("1 {word}"),
        n => format!("{n} {word}s"),
    };
    format!(
        "{}, {}",
        plural(diagnostics.errors(), "error"),
        plural(diagnostics.cautions(), "caution")
    )
}

/// The diagnostics as JSON values with 1-based lines and columns.
pub fn to_json(diagnostics: &Diagnostics, sources: &Sources) -> Value {
    let place = |span: crate::text::Span| {
        let source = sources.get(span.file);
        let (line, column) = source.position(span.start);
        let (end_line, end_column) = source.position(span.end);
        json!({
            "file": source.path, "line": line, "column": column,
            "end-line": end_line, "end-column": end_column,
        })
    };
    let label = |label: &Label| json!({ "at": place(label.span), "text": label.text });
    let cure = |cure: &Cure| {
        let patch = cure
            .patch
            .as_ref()
            .map(|(span, to)| json!({ "at": place(*span), "replace-with": to }));
        json!({ "text": cure.text, "patch": patch })
    };
    diagnostics
        .iter()
        .map(|d| {
            json!({
                "severity": d.severity.word(),
                "name": d.name,
                "what": d.what,
                "at": place(d.primary.span),
                "here": d.primary.text,
                "others": d.others.iter().map(label).collect::<Vec<_>>(),
                "why": d.why,
                "cures": d.cures.iter().map(cure).collect::<Vec<_>>(),
            })
        })
        .collect()
}
