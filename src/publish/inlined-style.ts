import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** All style of some pages in one text, with the typefaces in it as data: of each face the parts that hold a letter of
 * these pages. Letters that no part has are drawn with the reader's own typefaces: each family's list ends in a general
 * one. Nothing in it leads to a file. */
export async function inlinedStyle(pages: readonly string[], folder: string, base: string): Promise<string> {
  const links = new Set(
    pages.flatMap((page) =>
      [...page.matchAll(/<link\b[^>]*rel="stylesheet"[^>]*href="([^"]+)"/g)].map((match) => match[1] ?? ''),
    ),
  );
  const parts: string[] = [];
  for (const link of links) parts.push(await readFile(join(folder, link.slice(base.length)), 'utf8'));
  const letters = new Set(pages.flatMap((page) => [...page].map((letter) => letter.codePointAt(0) ?? 0)));
  const faces: Promise<string>[] = [];
  const rules = parts.join('\n').replace(/@font-face\s*\{[^}]*\}/g, (face) => {
    if (face.includes('.woff2') && holdsAny(face, letters)) faces.push(withData(face, folder, base));
    return '';
  });
  const style = [...(await Promise.all(faces)), rules].join('\n');
  if (/url\((?!['"]?(?:data:|#))/.test(style)) throw new Error('fault: a dossier’s style leads to a file');
  return style.replaceAll('</', '<\\/');
}

/** Whether a part of a typeface is for any of these letters; one that doesn't say is for all. */
function holdsAny(face: string, letters: ReadonlySet<number>): boolean {
  const ranges = /unicode-range:([^;}]+)/i.exec(face)?.[1];
  if (ranges === undefined) return true;
  return ranges.split(',').some((range) => {
    const [, from = '', to = from] = /U\+([0-9A-F?]+)(?:-([0-9A-F]+))?/i.exec(range) ?? [];
    const first = Number.parseInt(from.replaceAll('?', '0'), 16);
    const last = Number.parseInt(to.replaceAll('?', 'F'), 16);
    return [...letters].some((letter) => letter >= first && letter <= last);
  });
}

async function withData(face: string, folder: string, base: string): Promise<string> {
  const file = /url\(['"]?([^'")]+\.woff2)['"]?\)/.exec(face)?.[1] ?? '';
  const data = await readFile(join(folder, file.slice(base.length)));
  return face.replace(/src:[^;}]*/, `src:url(data:font/woff2;base64,${data.toString('base64')})format("woff2")`);
}
