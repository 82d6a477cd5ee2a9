//! A sentence to be said in the reader's language: which message, and what goes into it.

use jiff::civil::Date;

/// A fixed sentence by the id of its message, with what goes into it.
///
/// The message files are `templates/words/LANGUAGE/*.ftl`; `language::Words` says it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Message {
    /// Id of the message.
    pub id: &'static str,
    /// Names in the message and what stands for them.
    pub arguments: Vec<(&'static str, Text)>,
}

/// Something said to the reader, or put into a message.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Text {
    /// The writer's own words, a name, an id: printed as they stand.
    Written(String),
    /// Digits and unit as this program prints them; decimal sign and unit follow the language.
    Figure(String),
    /// A whole number, which the sentence may agree with.
    Count(i64),
    /// A day.
    Day(Date),
    /// A fixed word or sentence of a table of this program, by its English.
    Phrase(&'static str),
    /// Another message.
    Said(Message),
    /// Several, joined as the language joins them: a, b and c.
    List(Vec<Text>),
}

impl Message {
    /// The message of an id, with nothing in it yet.
    pub const fn of(id: &'static str) -> Self {
        Self {
            id,
            arguments: Vec::new(),
        }
    }

    /// Puts something in.
    #[must_use]
    pub fn with(mut self, name: &'static str, text: impl Into<Text>) -> Self {
        self.arguments.push((name, text.into()));
        self
    }

    /// Puts in digits and unit as this program prints them.
    #[must_use]
    #[expect(
        clippy::needless_pass_by_value,
        reason = "what is printed is made for this call"
    )]
    pub fn figure(self, name: &'static str, printed: impl ToString) -> Self {
        self.with(name, Text::Figure(printed.to_string()))
    }

    /// Puts in a fixed word of a table of this program, by its English.
    #[must_use]
    pub fn phrase(self, name: &'static str, english: &'static str) -> Self {
        self.with(name, Text::Phrase(english))
    }
}

impl From<String> for Text {
    fn from(text: String) -> Self {
        Text::Written(text)
    }
}

impl From<&str> for Text {
    fn from(text: &str) -> Self {
        Text::Written(text.to_owned())
    }
}

impl From<usize> for Text {
    fn from(count: usize) -> Self {
        Text::Count(i64::try_from(count).unwrap_or(i64::MAX))
    }
}

impl From<i64> for Text {
    fn from(count: i64) -> Self {
        Text::Count(count)
    }
}

impl From<Date> for Text {
    fn from(day: Date) -> Self {
        Text::Day(day)
    }
}

impl From<Message> for Text {
    fn from(message: Message) -> Self {
        Text::Said(message)
    }
}

impl<T: Into<Text>> From<Vec<T>> for Text {
    fn from(several: Vec<T>) -> Self {
        Text::List(several.into_iter().map(Into::into).collect())
    }
}
