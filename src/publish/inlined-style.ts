import { readFile } from 'node:fs/promises';
import { join } from 'node:path';

/** All style of some pages in one text, with the Latin typefaces in it as data; for other scripts the reader's own
 * machine has to serve. Nothing in it leads to a file. */
export async function inlinedStyle(pages: readonly string[], folder: string, base: string): Promise<string> {
  const links = new Set(
    pages.flatMap((page) =>
      [...page.matchAll(/<link\b[^>]*rel="stylesheet"[^>]*href="([^"]+)"/g)].map((match) => match[1] ?? ''),
    ),
  );
  const parts: string[] = [];
  for (const link of links) parts.push(await readFile(join(folder, link.slice(base.length)), 'utf8'));
  const faces: Promise<string>[] = [];
  const rules = parts.join('\n').replace(/@font-face\s*\{[^}]*\}/g, (face) => {
    if (/latin-(?!ext)[^")]*\.woff2/.test(face)) faces.push(withData(face, folder, base));
    return '';
  });
  const style = [...(await Promise.all(faces)), rules].join('\n');
  if (/url\((?!['"]?data:)/.test(style)) throw new Error('fault: a dossier’s style leads to a file');
  return style.replaceAll('</', '<\\/');
}

async function withData(face: string, folder: string, base: string): Promise<string> {
  const file = /url\(['"]?([^'")]+\.woff2)['"]?\)/.exec(face)?.[1] ?? '';
  const data = await readFile(join(folder, file.slice(base.length)));
  return face.replace(/src:[^;}]*/, `src:url(data:font/woff2;base64,${data.toString('base64')})format("woff2")`);
}
