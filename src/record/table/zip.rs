//! Several files in one, stored as they are: what a spreadsheet file is made of.
//!
//! Own code: the `zip` crate adds 39 kB (brotli). A table of a few kilobytes need not be packed.
//!
//! Source: ISO/IEC 21320-1:2015.

/// Check value of a file's bytes.
///
/// Source: ISO 3309, the polynomial 0x04C11DB7, bits reversed.
fn crc32(bytes: &[u8]) -> u32 {
    let step = |crc: u32, byte: &u8| {
        (0..8).fold(crc ^ u32::from(*byte), |crc, _| if crc & 1 == 1 { crc >> 1 ^ 0xedb8_8320 } else { crc >> 1 })
    };
    !bytes.iter().fold(!0, step)
}

/// Files by name, as the bytes of one file. All carry the date 1980-01-01, so that the same files give the
/// same bytes. Names are plain ASCII.
pub(super) fn store(files: &[(&str, &[u8])]) -> Vec<u8> {
    let mut out = Vec::new();
    let mut directory = Vec::new();
    for (name, bytes) in files {
        let at = out.len();
        let mut fields = Vec::new();
        // Version 2.0, no flags, stored, midnight of 1980-01-01.
        for short in [20_u16, 0, 0, 0, 0x21] {
            fields.extend(short.to_le_bytes());
        }
        for long in [crc32(bytes), size(bytes), size(bytes)] {
            fields.extend(long.to_le_bytes());
        }
        fields.extend((name.len() as u16).to_le_bytes());
        fields.extend([0, 0]);
        out.extend(b"PK\x03\x04");
        out.extend(&fields);
        out.extend(name.as_bytes());
        out.extend(*bytes);
        directory.extend(b"PK\x01\x02\x14\x00");
        directory.extend(&fields);
        // No comment, first disk, no attributes.
        directory.extend([0; 10]);
        directory.extend((at as u32).to_le_bytes());
        directory.extend(name.as_bytes());
    }
    let (at, count) = (out.len() as u32, files.len() as u16);
    out.extend(&directory);
    out.extend(b"PK\x05\x06\x00\x00\x00\x00");
    out.extend(count.to_le_bytes());
    out.extend(count.to_le_bytes());
    out.extend((directory.len() as u32).to_le_bytes());
    out.extend(at.to_le_bytes());
    out.extend([0, 0]);
    out
}

fn size(bytes: &[u8]) -> u32 {
    u32::try_from(bytes.len()).unwrap_or(u32::MAX)
}

#[cfg(test)]
mod tests {
    use super::crc32;

    /// Source: the check value of CRC-32 in ISO 3309: "123456789" gives 0xCBF43926.
    #[test]
    fn the_check_value() {
        assert_eq!(crc32(b"123456789"), 0xcbf4_3926);
        assert_eq!(crc32(b""), 0);
    }
}
