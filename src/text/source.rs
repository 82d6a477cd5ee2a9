//! Source files by their place in the book, and spans within them.

use std::ops::Range;

/// Number of a file in [`Sources`], in the order of the paths.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FileId(pub u32);

/// A run of bytes in one file.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Span {
    /// The file.
    pub file: FileId,
    /// First byte.
    pub start: u32,
    /// One past the last byte.
    pub end: u32,
}

impl Span {
    /// Makes a span from a byte range.
    pub fn new(file: FileId, range: Range<usize>) -> Self {
        Self {
            file,
            start: u32::try_from(range.start).unwrap_or(u32::MAX),
            end: u32::try_from(range.end).unwrap_or(u32::MAX),
        }
    }

    /// The whole of nothing: the very start of a file, for what concerns all of it.
    pub fn file_start(file: FileId) -> Self {
        Self::new(file, 0..0)
    }

    /// The byte range.
    pub fn range(self) -> Range<usize> {
        self.start as usize..self.end as usize
    }

    /// A part of this span, by byte offsets from its start, never outside it.
    #[must_use]
    pub fn part(self, range: Range<usize>) -> Self {
        let length = (self.end - self.start) as usize;
        let start = range.start.min(length);
        let end = range.end.clamp(start, length);
        Self::new(
            self.file,
            self.start as usize + start..self.start as usize + end,
        )
    }
}

/// One text file: where it lies in the book, and its text as read (a byte order mark removed).
#[derive(Clone, Debug)]
pub struct Source {
    /// Path from the root of the book, with `/`.
    pub path: String,
    /// The text.
    pub text: String,
    line_starts: Vec<u32>,
}

impl Source {
    /// Keeps a text and finds its lines.
    pub fn new(path: String, text: String) -> Self {
        let ends = text.match_indices('\n').map(|(index, _)| index as u32 + 1);
        let mut line_starts: Vec<u32> = std::iter::once(0).chain(ends).collect();
        line_starts.shrink_to_fit();
        Self {
            path,
            text,
            line_starts,
        }
    }

    /// Line and column of a byte, both from 1; the column counts characters.
    pub fn position(&self, byte: u32) -> (usize, usize) {
        let line = self.line_starts.partition_point(|start| *start <= byte);
        let start = self.line_starts[line - 1] as usize;
        let end = (byte as usize).min(self.text.len());
        let column = self
            .text
            .get(start..end)
            .map_or(1, |before| before.chars().count() + 1);
        (line, column)
    }

    /// The bytes of a line (from 1) without its line end.
    pub fn line(&self, line: usize) -> Range<usize> {
        let start = self
            .line_starts
            .get(line - 1)
            .map_or(self.text.len(), |start| *start as usize);
        let end = self
            .line_starts
            .get(line)
            .map_or(self.text.len(), |next| *next as usize - 1);
        start..start + self.text[start..end].trim_end_matches('\r').len()
    }
}

/// Every text file of a book, sorted by path.
#[derive(Clone, Debug, Default)]
pub struct Sources {
    files: Vec<Source>,
}

impl Sources {
    /// Adds a file and gives its number.
    pub fn add(&mut self, source: Source) -> FileId {
        self.files.push(source);
        FileId(self.files.len() as u32 - 1)
    }

    /// The file of a number that this collection gave.
    pub fn get(&self, file: FileId) -> &Source {
        &self.files[file.0 as usize]
    }

    /// All files with their numbers.
    pub fn iter(&self) -> impl Iterator<Item = (FileId, &Source)> {
        self.files
            .iter()
            .enumerate()
            .map(|(index, source)| (FileId(index as u32), source))
    }

    /// `path:line` of a span's start.
    pub fn place(&self, span: Span) -> String {
        let source = self.get(span.file);
        format!("{}:{}", source.path, source.position(span.start).0)
    }

    /// The text under a span.
    pub fn text(&self, span: Span) -> &str {
        self.get(span.file).text.get(span.range()).unwrap_or("")
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn positions_count_characters_and_keep_crlf() {
        let source = Source::new("a".into(), "é = 1\r\nb = 2\r\n".into());
        assert_eq!(source.position(0), (1, 1));
        assert_eq!(source.position(3), (1, 3));
        assert_eq!(source.position(8), (2, 1));
        assert_eq!(&source.text[source.line(2)], "b = 2");
    }
}
