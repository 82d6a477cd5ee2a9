//! Photographs made ready for print, kept beside the reports so that an unchanged one is not made anew.
//!
//! The folder can be deleted at any time. A name says from which bytes a photograph was made, for which
//! frame and by which version; the file begins with the digest of the rest, and one that was damaged is
//! passed over.

use crate::report::photograph::{EDITION, Frame, prepare};
use sha2::{Digest, Sha256};
use std::io::Write;
use std::path::{Path, PathBuf};

/// Folder of the kept photographs, within that of the reports.
const FOLDER: &str = ".photographs";

/// Where photographs are kept, if they are.
#[derive(Clone, Debug, Default)]
pub struct KeptPhotographs {
    folder: Option<PathBuf>,
}

impl KeptPhotographs {
    /// Kept in the reports' own folder; nowhere if a link stands in its place.
    pub fn within(reports: &Path) -> Self {
        let folder = reports.join(FOLDER);
        Self {
            folder: Some(folder).filter(|folder| !folder.is_symlink()),
        }
    }

    /// The photograph of a file's bytes as JPEG; `digest` is theirs, in hexadecimal digits. Errors: in
    /// words, why it cannot be printed.
    pub fn ready(
        &self,
        bytes: &[u8],
        digest: &str,
        frame: Frame,
        room: &mut Vec<u8>,
    ) -> Result<Vec<u8>, String> {
        let version = env!("CARGO_PKG_VERSION");
        let (width, height) = (frame.width, frame.height);
        let name = format!("{digest}-{width}x{height}-{version}-{EDITION}");
        if let Some(known) = self.read(&name) {
            return Ok(known);
        }
        let jpeg = prepare(bytes, frame, room)
            .map_err(|fault| fault.to_string())?
            .jpeg;
        self.write(&name, &jpeg);
        Ok(jpeg)
    }

    fn read(&self, name: &str) -> Option<Vec<u8>> {
        let file = self.folder.as_ref()?.join(name);
        if file.is_symlink() {
            return None;
        }
        let bytes = std::fs::read(file).ok()?;
        let (digest, jpeg) = bytes.split_at_checked(DIGEST)?;
        (Sha256::digest(jpeg)[..] == *digest).then(|| jpeg.to_vec())
    }

    /// Where it cannot be kept, it is made anew the next time.
    fn write(&self, name: &str, jpeg: &[u8]) {
        let Some(folder) = &self.folder else {
            return;
        };
        let _ = std::fs::create_dir_all(folder).and_then(|()| {
            let mut file = tempfile::NamedTempFile::new_in(folder)?;
            file.write_all(&Sha256::digest(jpeg))?;
            file.write_all(jpeg)?;
            file.persist(folder.join(name)).map_err(|error| error.error)
        });
    }
}

/// Bytes of a SHA-256.
const DIGEST: usize = 32;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::report::photograph::ALONE;
    use std::io::Cursor;

    fn jpeg() -> Vec<u8> {
        let picture = image::RgbImage::from_fn(90, 60, |x, y| image::Rgb([x as u8, y as u8, 90]));
        let mut bytes = Cursor::new(Vec::new());
        picture
            .write_to(&mut bytes, image::ImageFormat::Jpeg)
            .unwrap();
        bytes.into_inner()
    }

    #[test]
    fn a_kept_photograph_has_the_bytes_of_a_fresh_one_and_a_damaged_one_is_made_anew() {
        let reports = tempfile::tempdir().unwrap();
        let kept = KeptPhotographs::within(reports.path());
        let file = jpeg();
        let ready = |kept: &KeptPhotographs| kept.ready(&file, "0417", ALONE, &mut Vec::new());
        let fresh = ready(&KeptPhotographs::default());
        assert_eq!(ready(&kept), fresh);
        let folder = reports.path().join(FOLDER);
        let places: Vec<_> = folder.read_dir().unwrap().map(Result::unwrap).collect();
        let [place] = places.as_slice() else {
            panic!("one file: {places:?}");
        };
        // What is kept is what is used, as long as it is whole.
        let other = b"another whole file".to_vec();
        let whole = [&Sha256::digest(&other)[..], &other].concat();
        std::fs::write(place.path(), &whole).unwrap();
        assert_eq!(ready(&kept), Ok(other));
        std::fs::write(place.path(), &whole[..40]).unwrap();
        assert_eq!(ready(&kept), fresh);
        assert_eq!(ready(&kept), fresh);
    }

    #[cfg(unix)]
    #[test]
    fn nothing_is_written_through_a_link() {
        let (reports, elsewhere) = (tempfile::tempdir().unwrap(), tempfile::tempdir().unwrap());
        std::os::unix::fs::symlink(elsewhere.path(), reports.path().join(FOLDER)).unwrap();
        let file = jpeg();
        let kept = KeptPhotographs::within(reports.path());
        kept.ready(&file, "0", ALONE, &mut Vec::new()).unwrap();
        assert_eq!(elsewhere.path().read_dir().unwrap().count(), 0);
    }
}
