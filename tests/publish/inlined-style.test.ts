import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { inlinedStyle } from '#publish/inlined-style.ts';

let folder: string;
const LATIN = 'U+??,U+131,U+2000-206F';
const face = (name: string, range: string) =>
  `@font-face{font-family:Face;src:url(/-/${name}.woff2)format("woff2"),url(/-/${name}.woff)format("woff");unicode-range:${range}}`;
const page = (words: string) => `<link rel="stylesheet" href="/-/a.css"><p>${words}</p>`;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'style-'));
  await writeFile(
    join(folder, 'a.css'),
    `${face('latin', LATIN)}${face('latin-ext', 'U+100-2BA')}${face('cyrillic', 'U+0400-045F')}p{color:red;fill:url(#id)}`,
  );
  for (const name of ['latin', 'latin-ext', 'cyrillic']) await writeFile(join(folder, `${name}.woff2`), name);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const facesFor = async (words: string) => {
  const style = await inlinedStyle([page(words)], folder, '/-/');
  return [...style.matchAll(/base64,([^)]+)\)/g)].map((match) => Buffer.from(match[1] ?? '', 'base64').toString());
};

describe('the style of a dossier', () => {
  test('carries of each typeface the parts whose letters stand in its pages', async () => {
    expect(await facesFor('Low Water')).toEqual(['latin']);
    expect(await facesFor('Żabia woda')).toEqual(['latin', 'latin-ext']);
    expect(await facesFor('Вода')).toEqual(['latin', 'cyrillic']);
  });

  test('leads to no file, and may name a part of its own page', async () => {
    const style = await inlinedStyle([page('Low Water')], folder, '/-/');
    expect(style).toContain('p{color:red;fill:url(#id)}');
    expect(style.replaceAll(/url\((?:data:|#)/g, '')).not.toContain('url(');
  });

  test('is refused when it leads to a file', async () => {
    await writeFile(join(folder, 'b.css'), 'p{background:url(/-/paper.png)}');
    await expect(inlinedStyle(['<link rel="stylesheet" href="/-/b.css">'], folder, '/-/')).rejects.toThrow('leads to');
  });
});
