//! Copies of books in a temporary folder, and what they hold.

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

/// Copies a folder with all that is in it.
pub fn copied(from: &Path, to: &Path) {
    fs::create_dir_all(to).unwrap();
    for entry in fs::read_dir(from).unwrap() {
        let entry = entry.unwrap();
        let target = to.join(entry.file_name());
        if entry.file_type().unwrap().is_dir() {
            copied(&entry.path(), &target);
        } else {
            fs::copy(entry.path(), &target).unwrap();
        }
    }
}

/// Every file of a folder with its bytes, by its path from there, with `/`.
pub fn snapshot(root: &Path) -> BTreeMap<String, Vec<u8>> {
    walkdir::WalkDir::new(root)
        .into_iter()
        .map(Result::unwrap)
        .filter(|entry| !entry.file_type().is_dir())
        .map(|entry| {
            let path = entry.path().strip_prefix(root).unwrap();
            let path = path.to_string_lossy().replace('\\', "/");
            (path, fs::read(entry.path()).unwrap_or_default())
        })
        .collect()
}

/// A copy of the demo book, gone when it is dropped.
pub fn demo() -> tempfile::TempDir {
    let folder = tempfile::tempdir().unwrap();
    copied(
        &Path::new(env!("CARGO_MANIFEST_DIR")).join("jobs-example"),
        folder.path(),
    );
    folder
}
