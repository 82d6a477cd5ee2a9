//! The messages of one language.

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::sync::OnceLock;

use fluent::concurrent::FluentBundle;
use fluent::{FluentArgs, FluentResource, FluentValue};

use crate::language::figure::figure;
use crate::language::phrase::phrase_id;
use crate::text::{Message, Text};
use crate::vocabulary::Word;
use crate::vocabulary::site_file::Language;

/// The message files of a language: name and text.
macro_rules! files {
    ($language:literal: $($name:literal)*) => {
        &[$(($name, include_str!(concat!("../../templates/words/", $language, "/", $name, ".ftl")))),*]
    };
}

/// Every message file by the word of its language.
///
/// American English takes those of English, then its own over them.
pub const FILES: [(&str, &[(&str, &str)]); 5] = [
    (
        "en",
        files!("en": "dates" "page" "first-page" "findings" "tests" "account" "workings" "method" "rules" "history" "records" "cautions" "mail"),
    ),
    (
        "de",
        files!("de": "dates" "page" "first-page" "findings" "tests" "account" "workings" "method" "rules" "history" "records" "cautions" "mail" "vocabulary" "methods" "laws"),
    ),
    (
        "fr",
        files!("fr": "dates" "page" "first-page" "findings" "tests" "account" "workings" "method" "rules" "history" "records" "cautions" "mail" "vocabulary" "methods" "laws"),
    ),
    (
        "es",
        files!("es": "dates" "page" "first-page" "findings" "tests" "account" "workings" "method" "rules" "history" "records" "cautions" "mail" "vocabulary" "methods" "laws"),
    ),
    ("en-us", files!("en-us": "dates")),
];

/// The fixed sentences of one language.
pub struct Words {
    language: Language,
    bundle: FluentBundle<FluentResource>,
    page: BTreeMap<String, String>,
}

impl std::fmt::Debug for Words {
    fn fmt(&self, formatter: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(formatter, "Words({})", self.language.word())
    }
}

impl Words {
    /// The words of a language, read once.
    pub fn of(language: Language) -> &'static Words {
        static READ: [OnceLock<Words>; 5] = [const { OnceLock::new() }; 5];
        let place = match language {
            Language::English => &READ[0],
            Language::German => &READ[1],
            Language::French => &READ[2],
            Language::Spanish => &READ[3],
            Language::AmericanEnglish => &READ[4],
        };
        place.get_or_init(|| Words::read(language))
    }

    /// The words of the screen.
    pub fn english() -> &'static Words {
        Words::of(Language::English)
    }

    fn read(language: Language) -> Words {
        let identifier = language.word().parse().unwrap_or_default();
        let mut bundle = FluentBundle::new_concurrent(vec![identifier]);
        bundle.set_use_isolating(false);
        let wanted = match language {
            Language::AmericanEnglish => &["en", "en-us"][..],
            other => &[other.word()],
        };
        for (_, files) in wanted
            .iter()
            .filter_map(|word| FILES.iter().find(|(known, _)| known == word))
        {
            for (_, text) in *files {
                // What cannot be read of a file is left out; a test reads every file whole.
                let resource = match FluentResource::try_new((*text).to_owned()) {
                    Ok(resource) | Err((resource, _)) => resource,
                };
                bundle.add_resource_overriding(resource);
            }
        }
        add_functions(&mut bundle);
        let mut words = Words {
            language,
            bundle,
            page: BTreeMap::new(),
        };
        words.page = page_ids()
            .map(|(id, name)| (name.to_owned(), words.word(id)))
            .collect();
        let months = words.months().join("|");
        words.page.insert("months".to_owned(), months);
        words
    }

    /// Which language it is.
    pub fn language(&self) -> Language {
        self.language
    }

    /// Two letters of ISO 639.
    pub fn tag(&self) -> &'static str {
        &self.language.word()[..2]
    }

    /// Two letters of ISO 3166, where the form of dates is a country's.
    pub fn region(&self) -> Option<&'static str> {
        (self.language == Language::AmericanEnglish).then_some("US")
    }

    /// The words that templates print by themselves, by their names without `page-`.
    pub fn page(&self) -> &BTreeMap<String, String> {
        &self.page
    }

    /// A sentence without anything in it.
    pub fn word(&self, id: &'static str) -> String {
        self.say(&Message::of(id))
    }

    /// A sentence.
    pub fn say(&self, message: &Message) -> String {
        let mut arguments = FluentArgs::new();
        for (name, argument) in &message.arguments {
            arguments.set(
                *name,
                match argument {
                    Text::Count(count) => FluentValue::from(*count),
                    other => FluentValue::from(self.text(other)),
                },
            );
        }
        self.formatted(message.id, Some(&arguments))
            .unwrap_or_else(|| format!("⟦{}⟧", message.id))
    }

    /// Any text, as it is printed in this language.
    pub fn text(&self, text: &Text) -> String {
        match text {
            Text::Written(text) => text.clone(),
            Text::Figure(printed) => self.figure(printed),
            Text::Count(count) => count.to_string(),
            Text::Day(day) => self.day(*day),
            Text::Phrase(english) => self.phrase(english),
            Text::Said(message) => self.say(message),
            Text::List(several) => {
                let several: Vec<String> = several.iter().map(|one| self.text(one)).collect();
                self.and_list(&several)
            }
        }
    }

    /// Parts of one line, kept apart by the language's semicolon.
    pub fn series<S: AsRef<str>>(&self, parts: &[S]) -> String {
        let parts: Vec<&str> = parts.iter().map(AsRef::as_ref).collect();
        parts.join(&format!("{} ", self.word("page-semicolon")))
    }

    /// A fixed word or sentence of a table of this program, by its English.
    pub fn phrase(&self, english: &str) -> String {
        if self.is_english() {
            return english.to_owned();
        }
        self.formatted(&phrase_id(english), None)
            .unwrap_or_else(|| english.to_owned())
    }

    /// Digits and unit as this program prints them, in the language's form.
    pub fn figure(&self, printed: &str) -> String {
        if self.is_english() {
            return printed.to_owned();
        }
        figure(printed, true, |word| match word {
            "yr" => Some(self.word("unit-year")),
            "day" => Some(self.word("unit-day")),
            "days" => Some(self.word("unit-days")),
            "std" => Some(self.word("unit-standard")),
            _ => None,
        })
    }

    fn is_english(&self) -> bool {
        matches!(self.language, Language::English | Language::AmericanEnglish)
    }

    fn formatted(&self, id: &str, arguments: Option<&FluentArgs<'_>>) -> Option<String> {
        let pattern = self.bundle.get_message(id)?.value()?;
        let mut errors = Vec::new();
        let text = self.bundle.format_pattern(pattern, arguments, &mut errors);
        Some(text.into_owned())
    }
}

/// Messages that templates print: id, and name in the template.
fn page_ids() -> impl Iterator<Item = (&'static str, &'static str)> {
    let english = FILES.first().map_or(&[][..], |(_, files)| *files);
    english
        .iter()
        .flat_map(|(_, text)| text.lines())
        .filter_map(|line| line.split_once(" ="))
        .filter_map(|(id, _)| Some((id, id.strip_prefix("page-")?)))
}

/// `CAPITAL($text)` begins a sentence, `LOWER($text)` stands within one, `SMALL($text)` is a sentence within one, of which only the
/// first letter is made small; `SPELLED($count)` writes a small count in words where the language has `spelled-counts`.
fn add_functions(bundle: &mut FluentBundle<FluentResource>) {
    let spelled: Vec<String> = bundle
        .get_message("spelled-counts")
        .and_then(|message| message.value())
        .map(|pattern| bundle.format_pattern(pattern, None, &mut Vec::new()))
        .map(|list: Cow<'_, str>| list.split('|').map(|word| word.trim().to_owned()).collect())
        .unwrap_or_default();
    // A function of that name cannot be there yet.
    let _ = bundle.add_function("CAPITAL", |positional, _| {
        FluentValue::from(match positional.first() {
            Some(FluentValue::String(text)) => crate::text::capital(text),
            Some(FluentValue::Number(number)) => number.as_string().into_owned(),
            _ => String::new(),
        })
    });
    let _ = bundle.add_function("SMALL", |positional, _| {
        FluentValue::from(match positional.first() {
            Some(FluentValue::String(text)) => crate::text::small(text),
            _ => String::new(),
        })
    });
    let _ = bundle.add_function("LOWER", |positional, _| {
        FluentValue::from(match positional.first() {
            Some(FluentValue::String(text)) => text.to_lowercase(),
            _ => String::new(),
        })
    });
    let _ = bundle.add_function("SPELLED", move |positional, _| {
        FluentValue::from(match positional.first() {
            Some(FluentValue::Number(number)) => {
                let exact = number.value >= 0.0 && number.value.fract() == 0.0;
                let word = spelled.get(number.value as usize).filter(|_| exact);
                word.map_or_else(|| number.as_string().into_owned(), Clone::clone)
            }
            Some(FluentValue::String(text)) => text.as_ref().to_owned(),
            _ => String::new(),
        })
    });
}
