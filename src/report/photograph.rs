//! Photographs for print: upright, in sRGB, without metadata, no larger than the page needs.
//!
//! Input is the bytes of a file, output a fresh JPEG (ITU-T T.81) that holds pixels only: position,
//! camera serial, thumbnail and profile stay behind. Size is checked before anything is decoded.

use std::fmt;
use std::io::Cursor;

use fast_image_resize::images::{TypedImage, TypedImageRef};
use fast_image_resize::pixels::U8x3;
use fast_image_resize::{FilterType, ResizeAlg, ResizeOptions, Resizer};
use image::codecs::jpeg::{JpegDecoder, JpegEncoder};
use image::codecs::png::PngDecoder;
use image::{
    ColorType, DynamicImage, ExtendedColorType, ImageDecoder, ImageResult, Limits, RgbImage,
};
use moxcms::{ColorProfile, Layout, TransformOptions};

/// The most pixels that a photograph gets, upright.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Frame {
    /// Along the lines.
    pub width: u32,
    /// Down the page.
    pub height: u32,
}

/// A photograph alone: the template sets it 114 mm wide and 66 mm high at most. Ten pixels a
/// millimetre are 254 dots per inch.
pub const ALONE: Frame = Frame {
    width: 1140,
    height: 660,
};
/// One of two photographs side by side: 55 mm wide and 66 mm high at most.
pub const BESIDE: Frame = Frame {
    width: 550,
    height: 660,
};
/// Another number wherever the same picture comes out in other bytes than before.
pub const EDITION: u32 = 1;

const MOST_BYTES: usize = 60 << 20;
const MOST_PIXELS: u64 = 120_000_000;
const MOST_MEMORY: u64 = 1 << 30;
/// Below this, blocks of eight pixels begin to show around edges in print (chosen by eye).
const QUALITY: u8 = 82;

/// A photograph ready for print.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Photograph {
    /// The JPEG file: sRGB, no metadata.
    pub jpeg: Vec<u8>,
    /// Width in pixels, upright.
    pub width: u32,
    /// Height in pixels, upright.
    pub height: u32,
}

/// Why a file cannot be printed as a photograph.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum PhotographFault {
    /// The file holds nothing.
    Empty,
    /// The file holds text.
    Text,
    /// The file is what git leaves where the picture itself was not fetched.
    NotFetched,
    /// The file is of a kind that cannot be read here; the kind is named.
    OtherKind(&'static str),
    /// The file is of no known kind.
    Unknown,
    /// The file is larger than can be taken; its size in bytes.
    TooManyBytes(usize),
    /// The picture has more pixels than can be taken; its width and height.
    TooManyPixels(u32, u32),
    /// The file says it is a picture, but cannot be decoded; the decoder's reason.
    Broken(String),
}

impl fmt::Display for PhotographFault {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => write!(out, "the file is empty"),
            Self::Text => write!(out, "the file holds text, not a picture"),
            Self::NotFetched => write!(
                out,
                "the file is only git's pointer to a picture that was not fetched (`git lfs pull` fetches it)"
            ),
            Self::OtherKind(kind) => write!(
                out,
                "this is a {kind} file; save the picture as JPEG or PNG"
            ),
            Self::Unknown => write!(out, "the file is neither JPEG nor PNG"),
            Self::TooManyBytes(bytes) => write!(
                out,
                "the file has {} MB; at most {} MB are taken",
                bytes.div_ceil(1 << 20),
                MOST_BYTES >> 20
            ),
            Self::TooManyPixels(width, height) => write!(
                out,
                "the picture has {width} by {height} pixels; at most {} million are taken",
                MOST_PIXELS / 1_000_000
            ),
            Self::Broken(reason) => write!(out, "the picture is damaged: {reason}"),
        }
    }
}

impl std::error::Error for PhotographFault {}

impl From<image::ImageError> for PhotographFault {
    fn from(error: image::ImageError) -> Self {
        Self::Broken(error.to_string())
    }
}

/// Makes a photograph ready for print.
///
/// A picture smaller than the frame keeps its size. The same bytes in give the same bytes out. `room`
/// holds the pixels meanwhile; whoever prepares several gives it again, since room for twelve million
/// pixels takes long to be had anew.
pub fn prepare(
    bytes: &[u8],
    frame: Frame,
    room: &mut Vec<u8>,
) -> Result<Photograph, PhotographFault> {
    use image::metadata::Orientation as O;
    let read = read(bytes, room)?;
    let lies = matches!(
        read.orientation,
        O::Rotate90 | O::Rotate270 | O::Rotate90FlipH | O::Rotate270FlipH
    );
    let frame = if lies {
        Frame {
            width: frame.height,
            height: frame.width,
        }
    } else {
        frame
    };
    let small = shrink(room, read.size, frame)?;
    let mut upright = DynamicImage::ImageRgb8(to_srgb(small, read.profile.as_deref()));
    upright.apply_orientation(read.orientation);
    encode(&upright.into_rgb8())
}

/// Reads only enough of the file to say why it cannot be printed, without decoding it.
pub fn inspect(bytes: &[u8]) -> Result<(), PhotographFault> {
    match kind(bytes)? {
        Kind::Jpeg => check_size(&JpegDecoder::new(Cursor::new(bytes))?),
        Kind::Png => check_size(&png_decoder(bytes)?),
    }
}

enum Kind {
    Jpeg,
    Png,
}

/// Tells the kind of a file from its first bytes, never from its name.
fn kind(bytes: &[u8]) -> Result<Kind, PhotographFault> {
    if bytes.is_empty() {
        return Err(PhotographFault::Empty);
    }
    if bytes.len() > MOST_BYTES {
        return Err(PhotographFault::TooManyBytes(bytes.len()));
    }
    let at = |place: usize, mark: &[u8]| bytes.get(place..).is_some_and(|b| b.starts_with(mark));
    if at(0, b"\xFF\xD8\xFF") {
        return Ok(Kind::Jpeg);
    }
    if at(0, b"\x89PNG\r\n\x1A\n") {
        return Ok(Kind::Png);
    }
    Err(if at(0, b"version https://git-lfs") {
        PhotographFault::NotFetched
    } else if at(4, b"ftyphei") || at(4, b"ftyphev") || at(4, b"ftypmif1") {
        PhotographFault::OtherKind("HEIC")
    } else if at(4, b"ftypavi") {
        PhotographFault::OtherKind("AVIF")
    } else if at(4, b"ftyp") {
        PhotographFault::OtherKind("video")
    } else if at(0, b"RIFF") && at(8, b"WEBP") {
        PhotographFault::OtherKind("WebP")
    } else if at(0, b"GIF8") {
        PhotographFault::OtherKind("GIF")
    } else if at(0, b"II*\0") || at(0, b"MM\0*") {
        PhotographFault::OtherKind("TIFF or raw")
    } else if at(0, b"%PDF") {
        PhotographFault::OtherKind("PDF")
    } else if std::str::from_utf8(bytes).is_ok_and(|text| !text.contains('\0')) {
        PhotographFault::Text
    } else {
        PhotographFault::Unknown
    })
}

/// What a file says about its pixels.
struct Read {
    size: (u32, u32),
    orientation: image::metadata::Orientation,
    profile: Option<Vec<u8>>,
}

/// Reads the pixels as they lie in the file, three bytes each.
fn read(bytes: &[u8], room: &mut Vec<u8>) -> Result<Read, PhotographFault> {
    match kind(bytes)? {
        Kind::Jpeg => decode(JpegDecoder::new(Cursor::new(bytes))?, room),
        Kind::Png => decode(png_decoder(bytes)?, room),
    }
}

fn png_decoder(bytes: &[u8]) -> ImageResult<PngDecoder<Cursor<&[u8]>>> {
    PngDecoder::with_limits(Cursor::new(bytes), limits())
}

fn limits() -> Limits {
    let mut limits = Limits::default();
    limits.max_alloc = Some(MOST_MEMORY);
    limits
}

fn check_size(decoder: &impl ImageDecoder) -> Result<(), PhotographFault> {
    let (width, height) = decoder.dimensions();
    if u64::from(width) * u64::from(height) > MOST_PIXELS {
        return Err(PhotographFault::TooManyPixels(width, height));
    }
    Ok(())
}

fn decode(mut decoder: impl ImageDecoder, room: &mut Vec<u8>) -> Result<Read, PhotographFault> {
    check_size(&decoder)?;
    decoder.set_limits(limits())?;
    // A damaged profile or direction is no reason to refuse the picture.
    let profile = decoder.icc_profile().unwrap_or_default();
    let orientation = decoder
        .orientation()
        .unwrap_or(image::metadata::Orientation::NoTransforms);
    let size = decoder.dimensions();
    if decoder.color_type() == ColorType::Rgb8 {
        room.resize(size.0 as usize * size.1 as usize * 3, 0);
        decoder.read_image(room)?;
    } else {
        let image = DynamicImage::from_decoder(decoder)?;
        let pixels = if image.color().has_alpha() {
            on_white(&image)
        } else {
            image.into_rgb8()
        };
        *room = pixels.into_raw();
    }
    Ok(Read {
        size,
        orientation,
        profile,
    })
}

/// Lays a transparent picture on white paper.
fn on_white(image: &DynamicImage) -> RgbImage {
    let clear = image.to_rgba8();
    let (width, height) = clear.dimensions();
    RgbImage::from_fn(width, height, |x, y| {
        let [red, green, blue, alpha] = clear.get_pixel(x, y).0;
        let over = |ink: u8| {
            let ink = u16::from(ink) * u16::from(alpha) + 255 * (255 - u16::from(alpha));
            (ink / 255) as u8
        };
        image::Rgb([over(red), over(green), over(blue)])
    })
}

fn shrink(
    pixels: &[u8],
    (width, height): (u32, u32),
    frame: Frame,
) -> Result<RgbImage, PhotographFault> {
    let broken = |reason: String| PhotographFault::Broken(reason);
    let of_size = |pixels: Vec<u8>, (width, height): (u32, u32)| {
        RgbImage::from_raw(width, height, pixels)
            .ok_or_else(|| broken("its rows do not add up".to_owned()))
    };
    if width <= frame.width && height <= frame.height {
        return of_size(pixels.to_vec(), (width, height));
    }
    let fits = |most: u32, side: u32| f64::from(most.max(1)) / f64::from(side);
    let ratio = fits(frame.width, width).min(fits(frame.height, height));
    let scaled = |side: u32| ((f64::from(side) * ratio).round() as u32).max(1);
    let (new_width, new_height) = (scaled(width), scaled(height));
    let mut shrunk = vec![0; new_width as usize * new_height as usize * 3];
    // Typed for this one kind of pixel: the untyped call would compile every kind there is.
    let from = TypedImageRef::<U8x3>::from_buffer(width, height, pixels)
        .map_err(|e| broken(e.to_string()))?;
    let mut to = TypedImage::<U8x3>::from_buffer(new_width, new_height, &mut shrunk)
        .map_err(|e| broken(e.to_string()))?;
    let options = ResizeOptions::new().resize_alg(ResizeAlg::Convolution(FilterType::CatmullRom));
    Resizer::new()
        .resize_typed(&from, &mut to, &options)
        .map_err(|e| broken(e.to_string()))?;
    of_size(shrunk, (new_width, new_height))
}

/// Converts to sRGB; a missing or unusable profile means that the picture is taken for sRGB.
fn to_srgb(mut pixels: RgbImage, profile: Option<&[u8]>) -> RgbImage {
    let transform = profile
        .and_then(|bytes| ColorProfile::new_from_slice(bytes).ok())
        .and_then(|from| {
            let to = ColorProfile::new_srgb();
            let options = TransformOptions::default();
            from.create_transform_8bit(Layout::Rgb, &to, Layout::Rgb, options)
                .ok()
        });
    if let Some(transform) = transform {
        let mut converted = vec![0; pixels.as_raw().len()];
        if transform.transform(pixels.as_raw(), &mut converted).is_ok() {
            pixels.copy_from_slice(&converted);
        }
    }
    pixels
}

fn encode(pixels: &RgbImage) -> Result<Photograph, PhotographFault> {
    let (width, height) = pixels.dimensions();
    let mut jpeg = Vec::new();
    JpegEncoder::new_with_quality(&mut jpeg, QUALITY).encode(
        pixels.as_raw(),
        width,
        height,
        ExtendedColorType::Rgb8,
    )?;
    Ok(Photograph {
        jpeg,
        width,
        height,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use image::ImageEncoder;

    fn picture(width: u32, height: u32) -> RgbImage {
        RgbImage::from_fn(width, height, |x, y| {
            image::Rgb([(x * 255 / width) as u8, (y * 255 / height) as u8, 90])
        })
    }

    /// Prepares a picture of at most so many pixels on either side.
    fn prepare(bytes: &[u8], most: u32) -> Result<Photograph, PhotographFault> {
        let frame = Frame {
            width: most,
            height: most,
        };
        super::prepare(bytes, frame, &mut Vec::new())
    }

    fn jpeg(pixels: &RgbImage) -> Vec<u8> {
        encode(pixels).unwrap().jpeg
    }

    /// An APP1 segment with a direction and, after the tables, a position in plain text.
    fn with_exif(jpeg: &[u8], orientation: u8) -> Vec<u8> {
        let mut body = b"Exif\0\0II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0".to_vec();
        body.extend([orientation, 0, 0, 0, 0, 0, 0, 0]);
        body.extend(b"GPS 41.1456 N 8.6731 W, camera 00417");
        let length = (body.len() as u16 + 2).to_be_bytes();
        let mut out = vec![0xFF, 0xD8, 0xFF, 0xE1, length[0], length[1]];
        out.extend(body);
        out.extend(&jpeg[2..]);
        out
    }

    fn holds(bytes: &[u8], mark: &[u8]) -> bool {
        bytes.windows(mark.len()).any(|window| window == mark)
    }

    #[test]
    fn a_picture_on_its_side_is_turned_upright_and_loses_its_metadata() {
        let lying = with_exif(&jpeg(&picture(64, 40)), 6);
        assert!(holds(&lying, b"GPS 41.1456"));
        let ready = prepare(&lying, 1100).unwrap();
        assert_eq!((ready.width, ready.height), (40, 64));
        for mark in [&b"GPS"[..], b"Exif", b"camera", b"ICC_PROFILE"] {
            assert!(!holds(&ready.jpeg, mark));
        }
        // Direction 6: what was at the left is at the top afterwards, so red grows downwards.
        let out = image::load_from_memory(&ready.jpeg).unwrap().to_rgb8();
        assert!(out.get_pixel(20, 60)[0] > out.get_pixel(20, 4)[0] + 150);
    }

    #[test]
    fn the_longer_side_is_shrunk_and_a_small_picture_kept() {
        let ready = prepare(&jpeg(&picture(300, 1200)), 400).unwrap();
        assert_eq!((ready.width, ready.height), (100, 400));
        let ready = prepare(&jpeg(&picture(30, 20)), 400).unwrap();
        assert_eq!((ready.width, ready.height), (30, 20));
        let ready = prepare(&jpeg(&picture(2000, 1)), 400).unwrap();
        assert_eq!((ready.width, ready.height), (400, 1));
    }

    #[test]
    fn a_picture_fits_its_frame_upright_and_a_used_room_changes_nothing() {
        let frame = Frame {
            width: 400,
            height: 100,
        };
        let mut room = vec![7; 12_345];
        let standing = with_exif(&jpeg(&picture(600, 300)), 6);
        let ready = super::prepare(&standing, frame, &mut room).unwrap();
        assert_eq!((ready.width, ready.height), (50, 100));
        let wide = jpeg(&picture(600, 300));
        let ready = super::prepare(&wide, frame, &mut room).unwrap();
        assert_eq!((ready.width, ready.height), (200, 100));
        assert_eq!(Ok(ready), super::prepare(&wide, frame, &mut Vec::new()));
    }

    #[test]
    fn a_wide_gamut_is_converted_before_its_profile_is_dropped() {
        let profile = ColorProfile::new_display_p3().encode().unwrap();
        let green = RgbImage::from_pixel(32, 32, image::Rgb([120, 200, 80]));
        let mut png = Vec::new();
        let mut encoder = image::codecs::png::PngEncoder::new(&mut png);
        encoder.set_icc_profile(profile).unwrap();
        encoder
            .write_image(&green, 32, 32, ExtendedColorType::Rgb8)
            .unwrap();
        let ready = prepare(&png, 1100).unwrap();
        let out = image::load_from_memory(&ready.jpeg).unwrap().to_rgb8();
        let [red, green, blue] = out.get_pixel(16, 16).0.map(i32::from);
        // Derived by hand: curve of IEC 61966-2-1, then the matrix from P3-D65 (SMPTE EG 432-1) to
        // its primaries, 1.2249 -0.2247 0 / -0.0420 1.0419 0 / -0.0197 -0.0786 1.0979: 89.1, 202.5, 55.6.
        let near = |ink: i32, wanted: i32| (ink - wanted).abs() <= 3;
        assert!(
            near(red, 89) && near(green, 202) && near(blue, 56),
            "{red} {green} {blue}"
        );
    }

    #[test]
    fn a_transparent_picture_lies_on_white() {
        let clear = image::RgbaImage::from_pixel(16, 16, image::Rgba([0, 0, 0, 0]));
        let mut png = Cursor::new(Vec::new());
        clear.write_to(&mut png, image::ImageFormat::Png).unwrap();
        let ready = prepare(png.get_ref(), 1100).unwrap();
        let out = image::load_from_memory(&ready.jpeg).unwrap().to_rgb8();
        assert!(out.get_pixel(8, 8).0.iter().all(|&ink| ink > 250));
    }

    #[test]
    fn the_same_bytes_give_the_same_bytes() {
        let file = jpeg(&picture(900, 700));
        assert_eq!(prepare(&file, 300), prepare(&file, 300));
    }

    #[test]
    fn what_is_no_picture_is_named() {
        let told = |bytes: &[u8]| prepare(bytes, 400).unwrap_err();
        assert_eq!(told(b""), PhotographFault::Empty);
        assert_eq!(told(b"nut, before repair\n"), PhotographFault::Text);
        assert_eq!(
            told(b"version https://git-lfs.github.com/spec/v1\n"),
            PhotographFault::NotFetched
        );
        assert_eq!(
            told(b"\0\0\0\x18ftypheic\0\0\0\0"),
            PhotographFault::OtherKind("HEIC")
        );
        assert_eq!(told(&[0, 1, 2, 3, 0xFF]), PhotographFault::Unknown);
        assert!(matches!(
            told(b"\xFF\xD8\xFF\xE0 and then nothing"),
            PhotographFault::Broken(_)
        ));
    }

    #[test]
    fn a_small_file_that_claims_to_be_huge_is_refused_before_it_is_decoded() {
        let mut file = jpeg(&picture(16, 16));
        let frame = file.windows(2).position(|w| w == [0xFF, 0xC0]).unwrap();
        file[frame + 5..frame + 9].copy_from_slice(&[0xFF, 0xFF, 0xFF, 0xFF]);
        let fault = prepare(&file, 400).unwrap_err();
        assert_eq!(fault, PhotographFault::TooManyPixels(65535, 65535));
        assert_eq!(inspect(&file), Err(fault));
        let large = vec![0xFF; MOST_BYTES + 1];
        assert_eq!(
            inspect(&large),
            Err(PhotographFault::TooManyBytes(large.len()))
        );
    }

    #[test]
    fn damage_anywhere_is_refused_or_survived_but_never_a_panic() {
        let file = with_exif(&jpeg(&picture(48, 48)), 3);
        for cut in (0..file.len()).step_by(7) {
            let _ = prepare(&file[..cut], 40);
            let mut bent = file.clone();
            bent[cut] = !bent[cut];
            let _ = prepare(&bent, 40);
        }
    }
}
