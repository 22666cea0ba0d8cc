import { basename, join } from 'node:path';
import { build } from 'esbuild';

/** The page's files by name, made when the desk starts and kept in memory. */
export type PageFiles = ReadonlyMap<string, { readonly type: string; readonly bytes: Uint8Array | string }>;

const TYPES: Readonly<Record<string, string>> = {
  js: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8',
  woff2: 'font/woff2',
};

const HTML = `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1"><title>The desk</title><link rel="stylesheet" href="/desk.css"><script type="module" src="/desk.js"></script></head>
<body><a class="skip" href="#main">To the sheet</a><div class="leader" aria-hidden="true"></div><div class="sheet" id="desk"><noscript>The desk needs JavaScript: it is a page of forms that your own computer serves to itself.</noscript></div></body></html>`;

/** Bundles the page's scripts and styles; nothing is written to disk. */
export async function makePage(): Promise<PageFiles> {
  const made = await build({
    entryPoints: [join(import.meta.dirname, 'page', 'desk.ts'), join(import.meta.dirname, 'page', 'desk.css')],
    bundle: true,
    format: 'esm',
    target: 'es2022',
    write: false,
    outdir: '/made',
    loader: { '.woff2': 'file', '.woff': 'empty' },
    assetNames: '[name]',
    logLevel: 'silent',
  });
  const files = new Map<string, { type: string; bytes: Uint8Array | string }>();
  for (const { path, contents } of made.outputFiles) {
    const type = TYPES[path.slice(path.lastIndexOf('.') + 1)];
    if (type !== undefined) files.set(basename(path), { type, bytes: contents });
  }
  files.set('index.html', { type: 'text/html; charset=utf-8', bytes: HTML });
  return files;
}
