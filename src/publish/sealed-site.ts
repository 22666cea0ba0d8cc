import { randomBytes } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join, relative, sep } from 'node:path';
import { bundledScript } from './bundled-script.ts';
import { contentType } from './content-type.ts';
import { asText, freshKey, seal } from './sealed.ts';
import type { FileList, Ring } from './sealed-front/ring.ts';

const FOLDER = join(import.meta.dirname, 'sealed-front');

/** Writes a finished site as sealed files under names of chance, with the one page that opens them and its worker. A
 * new key each time; the words open the key. How many files there are, and how large, stays to be seen.
 *
 * @param base  where it will stand on its host, with both slashes. */
export async function sealSiteFiles(from: string, into: string, base: string, words: string): Promise<number> {
  const key = await freshKey();
  const files = (await readdir(from, { recursive: true, withFileTypes: true }))
    .filter((file) => file.isFile())
    .map((file) => join(file.parentPath, file.name))
    .sort();
  const list: Record<string, FileList[string]> = {};
  for (const file of files) {
    const path = relative(from, file).split(sep).join('/');
    list[path] = [await sealInto(into, await readFile(file), key), contentType(path)];
  }
  const ring: Ring = { key, list: await sealInto(into, JSON.stringify(list satisfies FileList), key) };
  const page = openingPage(asText(await seal(JSON.stringify(ring), { words })), base);
  const keeper = await bundledScript(join(FOLDER, 'site-keeper.ts'));
  const worker = await bundledScript(join(FOLDER, 'site-worker.ts'), { KEEPER_SCRIPT: JSON.stringify(keeper) });
  await writeFile(join(into, 'worker.js'), worker);
  await writeFile(join(into, 'open.js'), await bundledScript(join(FOLDER, 'site-open.ts')));
  await writeFile(join(into, 'open.css'), await readFile(join(FOLDER, 'front.css')));
  await writeFile(join(into, 'index.html'), page);
  // Many hosts show this one for an address that they have no file for, a page's own after it was opened before.
  await writeFile(join(into, '404.html'), page);
  return files.length;
}

async function sealInto(into: string, content: Uint8Array | string, key: string): Promise<string> {
  const name = randomBytes(16).toString('hex');
  await writeFile(join(into, name), await seal(content, { key }));
  return name;
}

/** Its script and its style are files of their own, so that it opens on a host whose own policy allows no others. */
function openingPage(ring: string, base: string): string {
  const policy =
    "default-src 'none'; script-src 'self'; style-src 'self'; worker-src 'self'; connect-src 'self'; form-action 'none'; base-uri 'none'";
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width,initial-scale=1"><meta name="robots" content="noindex"><meta name="referrer" content="no-referrer"><meta name="color-scheme" content="light dark">
<title>Sealed</title><link rel="stylesheet" href="${base}open.css"></head>
<body><main id="main"><section class="lock" aria-labelledby="name">
<div><h1 id="name">Sealed</h1><p class="soft">These pages can be read by whoever has the words.</p></div>
<div><form id="lock"><label for="words">The words</label><div class="row"><input id="words" type="password" autocomplete="off" spellcheck="false"><button type="submit">Open</button></div></form>
<div role="status" aria-live="polite">
<p data-state="start">This page needs JavaScript.</p><p data-state="closed" hidden></p>
<p data-state="working" hidden>Opening. On a telephone this takes a few seconds.</p>
<p class="bad" data-state="wrong" hidden><b>Not opened.</b> These words don’t open it. Nothing was sent, and nothing is counted: try again. Spaces and capitals matter.</p>
<p class="bad" data-state="damaged" hidden><b>Not whole.</b> A sealed file is missing on the host, or isn’t as it was. Ask the owner to put all of them there once more.</p>
<p class="bad" data-state="no-worker" hidden><b>Not here.</b> This browser opens sealed pages only from an address that begins with https.</p>
</div></div></section></main>
<script type="application/octet-stream" id="p" data-base="${base}">
${ring.trim()}
</script>
<script src="${base}open.js"></script>
</body></html>
`;
}
