//! A value together with the place it was read from.

use crate::text::Span;

/// A value and where it stands in the notes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Noted<T> {
    /// The value.
    pub value: T,
    /// Its place.
    pub span: Span,
}

impl<T> Noted<T> {
    /// A value at a place.
    pub fn new(value: T, span: Span) -> Self {
        Self { value, span }
    }

    /// The same place with another value.
    pub fn map<U>(self, change: impl FnOnce(T) -> U) -> Noted<U> {
        Noted {
            value: change(self.value),
            span: self.span,
        }
    }
}
