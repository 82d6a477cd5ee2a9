//! The report: figures as plain data, photographs, and the typesetter that makes the PDF of them.

pub mod chart;
pub mod compose;
pub mod data;
pub mod drawing_data;
pub mod explanation;
pub mod history_data;
pub mod issue;
pub mod mail;
pub mod records_data;
pub mod visit_figures;
pub mod visit_json;

#[cfg(feature = "pdf")]
pub mod attached;
#[cfg(feature = "pdf")]
pub mod glyphs;
#[cfg(feature = "pdf")]
mod packed;
#[cfg(feature = "pdf")]
pub mod photograph;
#[cfg(all(test, feature = "pdf"))]
mod sample;
#[cfg(feature = "pdf")]
pub mod typeset;
#[cfg(feature = "pdf")]
pub mod world;
