import { cp, mkdir, mkdtemp, readdir, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { buildCatalogue } from '#catalogue';
import { day } from '#model/dates.ts';
import type { CollectionFiles } from '#read/collection.ts';
import { validateAll } from '#validate/entries.ts';
import { makePage } from '../../src/desk/page-files.ts';
import { type DeskServing, serveDesk } from '../../src/desk/serve-desk.ts';

const PHOTOGRAPHS = resolve(import.meta.dirname, '../../collection/reels/caderno-side-1');

/** Two reels that agree but for one number, and the photographs of a third. */
export const SIDE_1 = `---
# from the parcel of March
title: Low Water, side 1
status:   held
kind: copy master
set: low-water
side: "1"
numbers: { matrix: [HLX 2207-A] }
length: "18:52"   # as stated
---
As it came.
`;
const SIDE_2 = SIDE_1.replace('side 1', 'side 2').replace('"1"', '"2"').replace('HLX 2207-A', 'HLX 2207-B');

export interface GivenDesk {
  readonly folder: string;
  readonly root: string;
  readonly serving: DeskServing;
  textOf(path: string): Promise<string>;
}

/** A desk over a small collection of its own, whose folder has a secret beside it. */
export async function givenDesk(options: { lan?: boolean; now?: () => number } = {}): Promise<GivenDesk> {
  const folder = await mkdtemp(join(tmpdir(), 'desk-'));
  const root = join(folder, 'tapes');
  await mkdir(join(root, 'reels'), { recursive: true });
  await writeFile(join(folder, 'secret.txt'), 'SECRET');
  await writeFile(join(root, 'reels', 'low-water-1.md'), SIDE_1);
  await writeFile(join(root, 'reels', 'low-water-2.md'), SIDE_2);
  const check = async (files: CollectionFiles) => {
    const { entries, problems } = validateAll(files);
    const all = [...files.problems, ...problems];
    const nothing = { photographs: new Map(), climate: new Map(), today: day('2026-03-20') };
    return buildCatalogue({ entries, problems: all, ...nothing });
  };
  const serving = await serveDesk({ root, check, page: await makePage(), port: 0, ...options });
  return { folder, root, serving, textOf: (path) => readFile(join(root, path), 'utf8') };
}

/** Copies of two label photographs under names as a camera gives them. */
export async function twoPhotographs(folder: string): Promise<string[]> {
  const names = ['White box.JPG', 'IMG 0002.jpg'];
  const from = ['box-front.jpg', 'spine.jpg'];
  const paths = names.map((name) => join(folder, name));
  for (const [at, path] of paths.entries()) await cp(join(PHOTOGRAPHS, from[at] ?? ''), path);
  return paths;
}

/** What is kept of an entry as it was before, the oldest first. */
export async function keptTexts({ root, textOf }: GivenDesk, entry: string): Promise<string[]> {
  const names = await readdir(join(root, '.before', entry)).catch(() => []);
  return await Promise.all(names.sort().map((name) => textOf(`.before/${entry}/${name}`)));
}
