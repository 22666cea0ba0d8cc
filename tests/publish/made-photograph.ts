import sharp from 'sharp';

/** Words hidden in the metadata of the photographs made here: none may be found in anything published. */
export const HIDDEN = ['Canary-Exif', 'Canary-Maker', 'Canary-Xmp', 'Canary-Iptc', 'Canary-Comment'] as const;

/** A JPEG as a camera leaves it: turned by its orientation tag, with EXIF, an invented GPS position, XMP, IPTC, a
 * comment and a wide colour profile. `widthPx` and `heightPx` are of the picture the right way up. */
export async function cameraPhotograph(widthPx: number, heightPx: number): Promise<Buffer> {
  const lying = await sharp(await pattern(widthPx, heightPx), {
    raw: { width: widthPx, height: heightPx, channels: 3 },
  })
    .rotate(-90)
    .withExif({
      IFD0: { ImageDescription: HIDDEN[0], Make: HIDDEN[1], Orientation: '6' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1', GPSLongitudeRef: 'E', GPSLongitude: '7/1 15/1 0/1' },
    })
    .withMetadata({ orientation: 6 })
    .withXmp(
      `<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" dc:creator="${HIDDEN[2]}"/></rdf:RDF></x:xmpmeta>`,
    )
    .withIccProfile('p3')
    .jpeg({ quality: 95, chromaSubsampling: '4:4:4' })
    .toBuffer();
  return Buffer.concat([lying.subarray(0, 2), iptcSegment(HIDDEN[3]), commentSegment(HIDDEN[4]), lying.subarray(2)]);
}

/** Smooth colours that are different everywhere, with a red upper left corner that shows which way is up. */
async function pattern(widthPx: number, heightPx: number): Promise<Buffer> {
  const pixels = Buffer.alloc(widthPx * heightPx * 3);
  for (let y = 0; y < heightPx; y += 1) {
    for (let x = 0; x < widthPx; x += 1) {
      const corner = x < widthPx / 8 && y < heightPx / 8;
      const colour = corner ? [220, 20, 20] : [60, 40 + (160 * x) / widthPx, 40 + (160 * y) / heightPx];
      pixels.set(colour.map(Math.round), (y * widthPx + x) * 3);
    }
  }
  return pixels;
}

/** IPTC-IIM 4.2: record 2, dataset 120 (caption), in the resource block 0x0404 of an APP13 segment. */
function iptcSegment(caption: string): Buffer {
  const dataset = Buffer.concat([Buffer.from([0x1c, 2, 120, 0, caption.length]), Buffer.from(caption)]);
  const size = Buffer.alloc(4);
  size.writeUInt32BE(dataset.length);
  const padding = Buffer.alloc(dataset.length % 2);
  const block = Buffer.concat([Buffer.from('8BIM\x04\x04\0\0', 'latin1'), size, dataset, padding]);
  return segment(0xed, Buffer.concat([Buffer.from('Photoshop 3.0\0', 'latin1'), block]));
}

const commentSegment = (text: string) => segment(0xfe, Buffer.from(text));

function segment(marker: number, content: Buffer): Buffer {
  const head = Buffer.from([0xff, marker, 0, 0]);
  head.writeUInt16BE(content.length + 2, 2);
  return Buffer.concat([head, content]);
}
