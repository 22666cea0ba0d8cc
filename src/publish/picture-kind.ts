/** The kinds of photograph that can be opened, and HEIC, which is known but can't. */
export type PictureKind = 'JPEG' | 'PNG' | 'WebP' | 'AVIF' | 'TIFF' | 'HEIC';

const BRANDS_START = 8;
const BRAND_BYTES = 4;
const MOST_BRANDS = 32;

/** What a file is by its first bytes, whatever its name says. Nothing else is handed to the picture library, which
 * would also open drawings and documents that can point at other files.
 * Sources: ISO/IEC 10918-1 (SOI), PNG (3rd ed.) 5.2, RFC 9649 (WebP) 2, TIFF 6.0 section 2, ISO/IEC 14496-12 (`ftyp`). */
export function pictureKind(bytes: Uint8Array): PictureKind | undefined {
  if (startsWith(bytes, [0xff, 0xd8, 0xff])) return 'JPEG';
  if (startsWith(bytes, [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])) return 'PNG';
  if (textAt(bytes, 0) === 'RIFF' && textAt(bytes, 8) === 'WEBP') return 'WebP';
  // 42 is TIFF, 43 its form for files over 4 GB; either byte order.
  if (startsWith(bytes, [0x49, 0x49, 42, 0]) || startsWith(bytes, [0x4d, 0x4d, 0, 42])) return 'TIFF';
  if (startsWith(bytes, [0x49, 0x49, 43, 0]) || startsWith(bytes, [0x4d, 0x4d, 0, 43])) return 'TIFF';
  return textAt(bytes, 4) === 'ftyp' ? kindOfBrands(bytes) : undefined;
}

/** A phone's file may name several brands; `mif1` alone doesn't say how the picture in it is coded. */
function kindOfBrands(bytes: Uint8Array): PictureKind | undefined {
  const brands: string[] = [];
  const end = Math.min(new DataView(bytes.buffer, bytes.byteOffset).getUint32(0), bytes.length);
  for (let at = BRANDS_START; at + BRAND_BYTES <= end && brands.length < MOST_BRANDS; at += BRAND_BYTES) {
    brands.push(textAt(bytes, at));
  }
  if (brands.some((brand) => brand === 'avif' || brand === 'avis')) return 'AVIF';
  return brands.some((brand) => /^(?:he[ivm][cxs]|m[is]f1)$/.test(brand)) ? 'HEIC' : undefined;
}

const startsWith = (bytes: Uint8Array, start: readonly number[]) => start.every((byte, at) => bytes[at] === byte);

const textAt = (bytes: Uint8Array, at: number) => String.fromCharCode(...bytes.subarray(at, at + BRAND_BYTES));
