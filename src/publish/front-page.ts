import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Day } from '#model/dates.ts';
import { escaped } from '#render/markup.ts';
import { dayWords } from '#render/words/date.ts';
import { bundledScript } from './bundled-script.ts';
import { asText } from './sealed.ts';

const FOLDER = join(import.meta.dirname, 'sealed-front');

export interface Front {
  readonly sealed: Uint8Array;
  readonly made: Day;
  /** One line of the owner's, outside the seal. */
  readonly free: string | undefined;
  readonly opensBy: 'link' | 'passphrase';
  /** Of the style of the page inside. */
  readonly styleHash: string;
}

const sha256 = (bytes: Uint8Array | string, as: 'hex' | 'base64') => createHash('sha256').update(bytes).digest(as);

/** The closed file: a page that says that it is sealed, when it was made and how it is opened, and nothing of what is
 * inside; the sealed page in the age command's own text form; and the one script that opens it. */
export async function frontPage({ sealed, made, free, opensBy, styleHash }: Front): Promise<string> {
  const script = await bundledScript(join(FOLDER, 'open.ts'));
  const style = await readFile(join(FOLDER, 'front.css'), 'utf8');
  const policy = [
    "default-src 'none'",
    `script-src 'sha256-${sha256(script, 'base64')}'`,
    `style-src 'sha256-${sha256(style, 'base64')}' 'sha256-${styleHash}'`,
    'img-src data: blob:',
    'font-src data:',
    "form-action 'none'",
    "base-uri 'none'",
  ].join('; ');
  const ask =
    opensBy === 'link'
      ? 'The key at the end of the link that came to you'
      : 'The words that came to you some other way';
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width,initial-scale=1"><meta name="robots" content="noindex"><meta name="referrer" content="no-referrer"><meta name="color-scheme" content="light dark">
<title>Sealed dossier</title><style>${style}</style></head>
<body><main id="main"><section class="lock" aria-labelledby="name">
<div><h1 id="name">Sealed dossier</h1><p class="soft">Made ${dayWords(made)}</p>${free === undefined ? '' : `<p class="free" dir="auto"><bdi>${escaped(free)}</bdi></p>`}</div>
<div>
<form id="lock"><label for="words">${ask}</label><div class="row"><input id="words" type="password" autocomplete="off" spellcheck="false" aria-describedby="about"><button type="submit">Open</button></div></form>
<p id="about" class="soft">It is opened on this computer, and nothing leaves it.</p>
<div role="status" aria-live="polite">
<p data-state="start">This page needs JavaScript to open the seal. It can also be opened without it: see below.</p>
<p data-state="closed" hidden></p>
<p data-state="working" hidden>Opening. On a telephone this takes a few seconds.</p>
<p class="bad" data-state="wrong" hidden><b>Not opened.</b> These words don’t open it. Nothing was sent, and nothing is counted: try again. Spaces and capitals matter.</p>
<p class="bad" data-state="no-key" hidden><b>Not opened.</b> The key of this link isn’t this file’s. See that the whole link was copied, to its last letter.</p>
<p class="bad" data-state="damaged" hidden><b>The file is damaged.</b> It isn’t as it was when it was sealed; a copy may have broken off on its way. No words will open it. Ask for it once more.</p>
<p class="bad" data-state="not-sealed" hidden><b>Not a sealed file.</b> What was chosen isn’t in the age format, or has broken off.</p>
</div>
<div data-state="past" hidden><p class="bad"><b>Past its date.</b> It was meant to be read until <span id="last-day"></span>. What it says may have changed: ask the owner before you rely on it.</p><p class="soft">A date is a request. A file can’t forget, and can’t stop you.</p><button id="show-anyway" type="button">Show it all the same</button></div>
</div>
<details><summary>To open it without this page, or open another file</summary>
<p>It is sealed in the age format (age-encryption.org/v1). With the age program, on any computer:</p>
<pre>sed -n '/BEGIN&#32;AGE/,/END&#32;AGE/p' dossier.html | age -d &gt; open.html</pre>
<p class="soft">With a key in place of words: write it to a file, and use <code>age -d -i key.txt</code>.</p>
<label for="file">A sealed file (.age or .html) to open with this page</label><input id="file" type="file"><p id="chosen" class="soft"></p></details>
</section></main>
<script type="application/octet-stream" id="p" data-sha256="${sha256(sealed, 'hex')}">
${asText(sealed).trim()}
</script>
<script>${script}</script>
</body></html>
`;
}
