/** The floor for photographs: the same pictures as ours, made by a bare script that knows them already. It decodes each
 * once, writes straight to where they go, and asks, checks and keeps nothing.
 *
 *     node tests/bench/bare-sharp.ts PHOTOGRAPHS OUT LEFT,TOP,WIDTH,HEIGHT … */
import { mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';

const [from = '', out = '', ...crops] = process.argv.slice(2);
sharp.cache(false);
mkdirSync(out, { recursive: true });

async function derive(name: string): Promise<void> {
  const upright = sharp(join(from, name), { failOn: 'error' })
    .autoOrient()
    .flatten({ background: '#ffffff' })
    .toColourspace('srgb');
  const { data, info } = await upright.raw().toBuffer({ resolveWithObject: true });
  const whole = () => sharp(data, { raw: { width: info.width, height: info.height, channels: info.channels } });
  const large = await whole().resize({ width: 1280 }).raw().toBuffer({ resolveWithObject: true });
  const { width, height, channels } = large.info;
  for (const size of [320, 640, 1280]) {
    const small = sharp(large.data, { raw: { width, height, channels } }).resize({ width: size });
    await small
      .clone()
      .webp({ quality: 78 })
      .toFile(join(out, `${name}-${size}.webp`));
    await small
      .clone()
      .jpeg({ quality: 80, mozjpeg: true })
      .toFile(join(out, `${name}-${size}.jpg`));
  }
  await whole()
    .jpeg({ quality: 80 })
    .tile({ size: 1024, layout: 'iiif3' })
    .toFile(join(out, `${name}-tiles`));
  for (const [at, crop] of crops.entries()) {
    const [left = 0, top = 0, w = 1, h = 1] = crop.split(',').map(Number);
    const cut = whole().extract({ left, top, width: w, height: h }).resize({ width: 960, withoutEnlargement: true });
    await cut
      .clone()
      .webp({ quality: 78 })
      .toFile(join(out, `${name}-crop-${at}.webp`));
    await cut
      .clone()
      .jpeg({ quality: 80, mozjpeg: true })
      .toFile(join(out, `${name}-crop-${at}.jpg`));
  }
}

const names = readdirSync(from).sort().values();
const worker = async () => {
  for (const name of names) await derive(name);
};
await Promise.all([worker(), worker()]);
