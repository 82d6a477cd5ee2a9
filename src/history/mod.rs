//! What the visits of a system say together: the life of each point, and one visit beside another.
//!
//! A history up to a visit is made from that visit and those before it, never from later ones.

mod differences;
mod kinds;
mod notes_difference;
mod point_history;
mod proposal;
mod step;
mod system_years;
mod time_line;

pub use differences::{Compared, differences};
pub use kinds::{KindRate, kinds, poisson_interval};
pub use notes_difference::{FileDifference, notes_difference, without_private};
pub use point_history::{PointHistory, Repair, Spell, State};
pub use proposal::{Proposal, proposals};
pub use step::{Looked, OF_ITS_SECTION, OTHERS, Seen, Step, by_whom, steps};
pub use system_years::{Year, years};
pub use time_line::{LEGEND, marks, time_line};
