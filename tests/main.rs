//! The test house: every integration test of Rimebook in one binary.

#![expect(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a test that cannot go on has failed"
)]

mod cases;
mod copied;
mod mistakes;
