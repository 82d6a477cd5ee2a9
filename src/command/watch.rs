//! `watch`: checks again, and prints again, whenever a note is saved.

use crate::command::check;
use crate::command::console::{Console, Exit};
use crate::command::loaded::{LoadFault, Loaded, Target, load};
use crate::notes::find_root;
use notify::{EventKind, RecursiveMode, Watcher};
use std::path::{Path, PathBuf};
use std::sync::mpsc::{Receiver, RecvTimeoutError, channel};
use std::time::Duration;

/// An editor writes a file in several steps: changes this close together count as one.
const TOGETHER: Duration = Duration::from_millis(60);

/// Checks a path now and after every change of the book, until it is interrupted.
///
/// `print` is what is done beside the check, such as making the reports.
pub fn watch(path: &Path, console: &Console, print: &dyn Fn(&Loaded, &Target) -> Exit) -> Exit {
    let Ok(Some(root)) = find_root(path) else {
        console.err(&LoadFault::NoBook(path.to_path_buf()).message());
        return Exit::Usage;
    };
    let (sender, receiver) = channel();
    let watcher = notify::recommended_watcher(move |event| {
        // Nobody listens any more once the loop has ended.
        let _ = sender.send(event);
    });
    let watched = watcher.and_then(|mut watcher| {
        watcher.watch(&root, RecursiveMode::Recursive)?;
        Ok(watcher)
    });
    let _watcher = match watched {
        Ok(watcher) => watcher,
        Err(error) => {
            console.err(&format!("error: the book cannot be watched: {error}\n"));
            return Exit::Disk;
        }
    };
    loop {
        match load(path) {
            Ok((loaded, target)) => {
                check::people(&loaded, &target, console);
                print(&loaded, &target);
            }
            Err(fault) => console.err(&fault.message()),
        }
        console.err("watching; Ctrl-C ends it\n");
        if !changed(&receiver, &root) {
            return Exit::Fine;
        }
    }
}

/// Waits for a change of the notes; false where nothing more can come.
fn changed(receiver: &Receiver<notify::Result<notify::Event>>, root: &Path) -> bool {
    loop {
        let Ok(event) = receiver.recv() else {
            return false;
        };
        if event.is_ok_and(|event| concerns(event.kind, &event.paths, root)) {
            break;
        }
    }
    loop {
        match receiver.recv_timeout(TOGETHER) {
            Ok(_) => {}
            Err(RecvTimeoutError::Timeout) => return true,
            Err(RecvTimeoutError::Disconnected) => return false,
        }
    }
}

/// Whether an event changes something that is read: no reading, nothing hidden, nothing that we made.
fn concerns(kind: EventKind, paths: &[PathBuf], root: &Path) -> bool {
    let read = |path: &PathBuf| {
        let Ok(relative) = path.strip_prefix(root) else {
            return false;
        };
        let ours = relative.starts_with("reports");
        let hidden = relative
            .components()
            .any(|part| part.as_os_str().to_string_lossy().starts_with('.'));
        !ours && !hidden
    };
    !matches!(kind, EventKind::Access(_)) && paths.iter().any(read)
}

#[cfg(test)]
mod tests {
    use super::*;
    use notify::event::{AccessKind, ModifyKind};

    #[test]
    fn reports_hidden_files_and_mere_reading_are_passed_over() {
        let root = Path::new("/book");
        let modified = EventKind::Modify(ModifyKind::Any);
        let at = |path: &str| vec![PathBuf::from(path)];
        assert!(concerns(modified, &at("/book/site/site.toml"), root));
        assert!(!concerns(modified, &at("/book/reports/a.pdf"), root));
        assert!(!concerns(modified, &at("/book/.git/index"), root));
        assert!(!concerns(modified, &at("/elsewhere/site.toml"), root));
        let access = EventKind::Access(AccessKind::Any);
        assert!(!concerns(access, &at("/book/site/site.toml"), root));
    }
}
