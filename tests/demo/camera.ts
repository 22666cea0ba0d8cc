import sharp from 'sharp';
import { seededNoise } from './noise.ts';
import type { Shot } from './shot.ts';

/** Stands in every original's metadata, and must stand in nothing that is published. */
export const CANARY = 'canary quilha 7f3a: back stair, 4 Travessa das Amarras';

const TURN_BACK: Record<number, number> = { 1: 0, 3: 180, 6: 270, 8: 90 };

function grain(width: number, height: number, seed: number): Buffer {
  const noise = seededNoise(seed);
  const pixels = Buffer.alloc(width * height * 3);
  // One run of noise, laid again and again from other places: 12 million draws would take a minute.
  const run = Array.from({ length: 65_521 }, () => Math.round(128 + 7.5 * noise.normal()));
  let at = 0;
  for (let i = 0; i < width * height; i += 1) {
    if (i % 4099 === 0) at = Math.floor(noise.unit() * run.length);
    const value = run[(at + i) % run.length] ?? 128;
    pixels[i * 3] = value;
    pixels[i * 3 + 1] = value;
    pixels[i * 3 + 2] = Math.min(255, value + 2);
  }
  return pixels;
}

/** A record of the old newspaper metadata: dataset 2:120, the caption. Source: IPTC-NAA Information Interchange Model 4. */
function iptcSegment(caption: string): Buffer {
  const text = Buffer.from(caption, 'utf8');
  const record = Buffer.concat([Buffer.from([0x1c, 2, 120, text.length >> 8, text.length & 255]), text]);
  const padded = record.length % 2 === 0 ? record : Buffer.concat([record, Buffer.from([0])]);
  const size = Buffer.alloc(4);
  size.writeUInt32BE(record.length);
  const block = Buffer.concat([
    Buffer.from('Photoshop 3.0\0', 'latin1'),
    Buffer.from('8BIM', 'latin1'),
    Buffer.from([0x04, 0x04, 0, 0]),
    size,
    padded,
  ]);
  const head = Buffer.from([0xff, 0xed, 0, 0]);
  head.writeUInt16BE(block.length + 2, 2);
  return Buffer.concat([head, block]);
}

const xmp = (shot: Shot) =>
  `<?xpacket begin="" id="W5M0MpCehiHzreSzNTczkc9d"?><x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description xmlns:dc="http://purl.org/dc/elements/1.1/" rdf:about=""><dc:description><rdf:Alt><rdf:li xml:lang="x-default">${CANARY}</rdf:li></rdf:Alt></dc:description><dc:source>${shot.file}</dc:source></rdf:Description></rdf:RDF></x:xmpmeta><?xpacket end="w"?>`;

/** From the drawing to what a telephone would have written: grain, softness, and everything it tells on you. */
export async function develop(drawn: Buffer, shot: Shot, seed: number): Promise<Buffer> {
  const { width = 0, height = 0 } = await sharp(drawn).metadata();
  const exposed = await sharp(drawn)
    .removeAlpha()
    .blur(0.55)
    .composite([{ input: grain(width, height, seed), raw: { width, height, channels: 3 }, blend: 'hard-light' }])
    .png({ compressionLevel: 1 })
    .toBuffer();
  const orientation = shot.camera?.orientation ?? 1;
  const stamp = shot.taken.replaceAll('-', ':').replace('T', ' ');
  let picture = sharp(exposed)
    .rotate(TURN_BACK[orientation] ?? 0)
    .modulate({ saturation: 0.94 })
    .jpeg({ quality: 74, mozjpeg: true })
    .withExif({
      IFD0: { Make: 'Lumeira', Model: 'LM-4 Pocket', Software: 'LM-4 2.11', DateTime: stamp, ImageDescription: CANARY },
      IFD2: {
        DateTimeOriginal: stamp,
        DateTimeDigitized: stamp,
        ExposureTime: '1/60',
        FNumber: '18/10',
        FocalLength: '43/10',
        ISOSpeedRatings: '200',
        BodySerialNumber: 'LM4-0093317',
      },
      // Open sea, some 600 km from any shore.
      IFD3: {
        GPSLatitudeRef: 'N',
        GPSLatitude: '36/1 14/1 2710/100',
        GPSLongitudeRef: 'W',
        GPSLongitude: '20/1 41/1 802/100',
        GPSAltitude: '4/1',
      },
    });
  // The tag alone: the pixels are turned above.
  picture = picture.withMetadata({ orientation });
  if (shot.camera?.profile === 'p3') picture = picture.withIccProfile('p3');
  if (shot.camera?.captioned === true) picture = picture.withXmp(xmp(shot));
  const jpeg = await picture.toBuffer();
  if (shot.camera?.captioned !== true) return jpeg;
  return Buffer.concat([jpeg.subarray(0, 2), iptcSegment(CANARY), jpeg.subarray(2)]);
}
