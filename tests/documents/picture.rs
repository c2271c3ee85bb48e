//! The QR code, read by somebody else's reader.

use fillwright::share::{Picture, QUIET_ZONE};

use super::shared::of_the_example;

/// Pixels per module.
const SCALE: usize = 3;

/// The picture as rows of pixels, dark ones true.
fn pixels(picture: &Picture) -> Vec<Vec<bool>> {
    let side = usize::try_from(picture.size).unwrap() * SCALE;
    let mut rows = vec![vec![false; side]; side];
    for run in picture.path.split_terminator('z') {
        let numbers: Vec<usize> = run
            .trim_start_matches('M')
            .split([' ', 'h', 'v', '-'])
            .filter(|it| !it.is_empty())
            .map(|it| it.parse().unwrap())
            .collect();
        let [x, y, length, 1, back] = numbers[..] else { panic!("{run} is no run of modules") };
        assert_eq!(length, back);
        for row in &mut rows[y * SCALE..(y + 1) * SCALE] {
            row[x * SCALE..(x + length) * SCALE].fill(true);
        }
    }
    rows
}

#[test]
fn another_reader_reads_the_link() {
    for shared in of_the_example() {
        let link = format!("https://example.invalid/app/#/take/{}", shared.to_link().unwrap());
        let rows = pixels(&Picture::of(&link).unwrap());
        let side = rows.len();
        let mut image = rqrr::PreparedImage::prepare_from_greyscale(side, side, |x, y| {
            if rows[y][x] { 0 } else { 255 }
        });
        let grids = image.detect_grids();
        assert_eq!(grids.len(), 1);
        assert_eq!(grids[0].decode().unwrap().1, link);
    }
}

#[test]
fn around_it_is_room() {
    let rows = pixels(&Picture::of("x").unwrap());
    let quiet = usize::try_from(QUIET_ZONE).unwrap() * SCALE;
    let dark = |row: &Vec<bool>| row.iter().any(|it| *it);
    let first = rows.iter().position(dark);
    let last = rows.iter().rposition(dark);
    // The smallest code has 21 modules (ISO/IEC 18004).
    assert_eq!(first.zip(last), Some((quiet, quiet + 21 * SCALE - 1)));
}
