import { globSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { NAMED_SOURCES } from '#render/sources.ts';

const SRC = resolve(import.meta.dirname, '../../src');

test('the sources are sorted by title, and each anchor is its own', () => {
  const titles = NAMED_SOURCES.map(({ title }) => title.replace('“', '').toLowerCase());
  expect(titles).toEqual(titles.toSorted());
  expect(new Set(NAMED_SOURCES.map(({ slug }) => slug)).size).toBe(NAMED_SOURCES.length);
});

test('no text of the program names a source by a key that its reader can’t look up', () => {
  const keyed = globSync('**/*.{ts,astro}', { cwd: SRC }).filter((file) =>
    /\[S-[A-Z]+\]|'S-[A-Z]+/.test(readFileSync(`${SRC}/${file}`, 'utf8')),
  );
  expect(keyed).toEqual([]);
});
