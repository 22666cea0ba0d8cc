import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { entryFiles, type Given } from './small-collection.ts';

/** Writes a collection that is given as texts to a folder, with a picture for each of its photographs. */
export async function writeCollection(
  folder: string,
  given: Given,
  photograph: (at: number) => Promise<Uint8Array>,
): Promise<void> {
  const images = Object.keys(given).filter((name) => name.endsWith('.jpg'));
  const files = [
    ...entryFiles(given),
    ...(await Promise.all(images.map(async (path, at) => ({ path, text: await photograph(at) })))),
  ];
  for (const { path, text } of files) {
    await mkdir(dirname(join(folder, path)), { recursive: true });
    await writeFile(join(folder, path), text);
  }
}
