//! A text into lines and cells.

/// What stands between the cells of a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Separator {
    /// A tab.
    Tab,
    /// A semicolon.
    Semicolon,
    /// A comma; decimals then have a point, or stand in quotes.
    Comma,
    /// Blanks.
    Blank,
}

impl Separator {
    fn char(self) -> char {
        match self {
            Self::Tab => '\t',
            Self::Semicolon => ';',
            Self::Comma => ',',
            Self::Blank => ' ',
        }
    }

    /// The one that these lines use.
    pub(super) fn of(lines: &[(usize, &str)]) -> Self {
        // A title or a header may hold any sign; what begins with a digit is a row.
        let is_row = |line: &&str| {
            line.trim_start().trim_start_matches('"').starts_with(|c: char| c.is_ascii_digit())
        };
        let rows: Vec<_> = lines.iter().map(|(_, line)| *line).filter(is_row).collect();
        let most = |holds: &dyn Fn(&str) -> bool| {
            rows.iter().filter(|row| holds(row)).count() * 2 > rows.len()
        };
        for sure in [Self::Tab, Self::Semicolon] {
            if most(&|row| sure.cells(row).len() > 1) {
                return sure;
            }
        }
        // "2000 350,5": blanks part the cells, as each comma has digits on both sides.
        let decimal_commas = |row: &str| {
            Self::Blank.cells(row).len() > 1 && row.split(',').skip(1).all(starts_with_digit)
        };
        if most(&|row| Self::Comma.cells(row).len() > 1) && !most(&decimal_commas) {
            Self::Comma
        } else {
            Self::Blank
        }
    }

    /// The cells of a line without blanks and quotes around them.
    pub(super) fn cells(self, line: &str) -> Vec<String> {
        let mut cells = vec![String::new()];
        let mut quoted = false;
        let mut characters = line.chars().peekable();
        while let Some(c) = characters.next() {
            let cell_is_new = cells.last().is_none_or(|cell| cell.trim().is_empty());
            match c {
                // A doubled quote within quotes stands for itself.
                '"' if quoted && characters.peek() == Some(&'"') => {
                    characters.next();
                    push(&mut cells, '"');
                }
                '"' if quoted => quoted = false,
                '"' if cell_is_new => quoted = true,
                c if !quoted && self.is(c) => {
                    if self != Self::Blank || !cell_is_new {
                        cells.push(String::new());
                    }
                }
                c => push(&mut cells, c),
            }
        }
        let mut cells: Vec<_> = cells.iter().map(|cell| cell.trim().to_owned()).collect();
        // Spreadsheets and hands leave separators at the end of a line.
        while cells.last().is_some_and(String::is_empty) {
            cells.pop();
        }
        cells
    }

    fn is(self, c: char) -> bool {
        if self == Self::Blank { c.is_whitespace() } else { c == self.char() }
    }

    /// The separator that a spreadsheet's first line `sep=;` announces.
    pub(super) fn announced(line: &str) -> Option<Self> {
        let sign = line.trim_matches(['"', ' ']).strip_prefix("sep=")?;
        let all = [Self::Tab, Self::Semicolon, Self::Comma];
        all.into_iter().find(|separator| sign.starts_with(separator.char()))
    }
}

fn push(cells: &mut [String], c: char) {
    if let Some(cell) = cells.last_mut() {
        cell.push(c);
    }
}

fn starts_with_digit(text: &str) -> bool {
    text.starts_with(|c: char| c.is_ascii_digit())
}

/// The lines that hold something, with their numbers counted from 1.
pub(super) fn lines(text: &str) -> Vec<(usize, String)> {
    let text = text.trim_start_matches('\u{feff}').replace("\r\n", "\n");
    let lines = text.split(['\n', '\r']).enumerate();
    lines
        .filter(|(_, line)| !line.trim().is_empty())
        .map(|(index, line)| (index + 1, line.to_owned()))
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn separator(text: &str) -> Separator {
        let lines = lines(text);
        Separator::of(
            &lines.iter().map(|(number, line)| (*number, line.as_str())).collect::<Vec<_>>(),
        )
    }

    #[test]
    fn the_rows_tell_the_separator() {
        for (text, expected) in [
            ("2000\t350\n2500\t380", Separator::Tab),
            ("2000;350,5\n2500;380,1", Separator::Semicolon),
            ("2000,350.5\n2500,380.1", Separator::Comma),
            ("2000, 350\n2500, 380", Separator::Comma),
            ("2000 350\n2500 380", Separator::Blank),
            ("2000 350,5\n2500 380,1", Separator::Blank),
            ("2,000 350\n2,500 380", Separator::Blank),
            ("Run 3, in the rain; third gear\nrpm Nm\n2000 350", Separator::Blank),
            ("\"2000,5\",\"350,5\"", Separator::Comma),
            ("", Separator::Blank),
        ] {
            assert_eq!(separator(text), expected, "{text}");
        }
    }

    #[test]
    fn quotes_hold_a_cell_together() {
        assert_eq!(
            Separator::Comma.cells("\"a, b\" , \"c \"\"d\"\"\",e"),
            ["a, b", "c \"d\"", "e"]
        );
        assert_eq!(Separator::Blank.cells("  2000   350  "), ["2000", "350"]);
        assert_eq!(Separator::Semicolon.cells("2000;;1,2;;"), ["2000", "", "1,2"]);
        // An inch of mercury is no quote, as it stands in its cell.
        assert_eq!(Separator::Comma.cells("boost \"Hg,power"), ["boost \"Hg", "power"]);
    }

    #[test]
    fn lines_keep_their_numbers() {
        let kept = lines("\u{feff}a\r\n\r\nb\rc");
        assert_eq!(kept, [(1, "a".to_owned()), (3, "b".to_owned()), (4, "c".to_owned())]);
        assert_eq!(Separator::announced("sep=;"), Some(Separator::Semicolon));
        assert_eq!(Separator::announced("separate"), None);
    }
}
