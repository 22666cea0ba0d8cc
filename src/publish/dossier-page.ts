import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Dossier } from '#model/dossier.ts';
import type { PublishedPhotograph } from '#model/published-photograph.ts';
import { escaped } from '#render/markup.ts';
import { dayWords } from '#render/words/date.ts';
import type { CloserLook } from './images.ts';
import { inlinedStyle } from './inlined-style.ts';

/** Where a dossier's pages think that they stand, so that what leads to a file or a page can be told from all else. */
export const DOSSIER_BASE = '/-/';

const sha256Base64 = (text: string): string => createHash('sha256').update(text).digest('base64');

/** One page that holds all of a dossier: style, typefaces, pictures. Nothing in it leads to a file or another host.
 *
 * @param folder  where its pages and pictures were made.
 * @param closer  a larger picture of a photograph, by its path in the dossier.
 * @throws {Error} a program fault, when a page still leads to a file. */
export async function dossierPage(
  dossier: Dossier,
  folder: string,
  photographs: ReadonlyMap<string, PublishedPhotograph>,
  closer: (path: string) => Promise<CloserLook>,
): Promise<{ readonly page: string; readonly styleHash: string }> {
  const front = await readFile(join(folder, 'index.html'), 'utf8');
  const plan = await readFile(join(folder, 'plan', 'index.html'), 'utf8');
  const sheets = await Promise.all(
    dossier.reels.map(async (id) => ({ id, html: await readFile(join(folder, 'reels', id, 'index.html'), 'utf8') })),
  );
  const style = await inlinedStyle([front, plan, ...sheets.map((sheet) => sheet.html)], folder, DOSSIER_BASE);
  const pictures = new Pictures(folder, photographs, closer);
  const parts = [await pictures.into(mainOf(front))];
  if (dossier.plan !== undefined) parts.push(sheetOf('plan', 'Playing plan', anchored(mainOf(plan), 'plan'), dossier));
  for (const { id, html } of sheets) {
    const own = await pictures.into(anchored(mainOf(html), id));
    const title = dossier.reduced.reels.find((sheet) => sheet.reel.id === id)?.reel.title.value ?? id;
    parts.push(sheetOf(id, title, own, dossier));
  }
  const body = withoutPages(parts.join('\n'), new Set(dossier.reels));
  const left = /\s(?:src|srcset|href|data-[a-z-]+)="\/-\/[^"]*"/.exec(body)?.[0];
  if (left !== undefined) throw new Error(`fault: a dossier’s page still leads to a file: ${left}`);
  const sprite = /<svg class="sprite"[\s\S]*?<\/defs><\/svg>/.exec(front)?.[0] ?? '';
  const lang = /<html lang="([^"]*)"/.exec(front)?.[1] ?? 'en';
  const styleHash = sha256Base64(style);
  const policy = `default-src 'none'; style-src 'sha256-${styleHash}'; img-src data:; font-src data:; form-action 'none'; base-uri 'none'`;
  const page = `<!doctype html>
<html lang="${lang}"><head><meta charset="utf-8"><meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width,initial-scale=1"><meta name="referrer" content="no-referrer"><meta name="color-scheme" content="light dark">
${dossier.lastDay === undefined ? '' : `<meta name="last-day" content="${dossier.lastDay}">`}
<title>${escaped(dossier.title)}</title><style>${style}</style></head>
<body>${sprite}<a class="skip" href="#main">To the sheet</a><div class="leader" aria-hidden="true"></div><div class="sheet"><main id="main">
${body}
</main><footer class="foot"><span>Private. For the person named at its head.</span><span>Owning a tape is not owning the rights in what is on it.</span></footer></div><div class="leader tail" aria-hidden="true"></div></body></html>
`;
  return { page, styleHash };
}

/** One part of it that begins a sheet of paper of its own; each further sheet says again what it belongs to. */
const sheetOf = (id: string, title: string, content: string, dossier: Dossier): string =>
  `<article class="reelsheet" id="${id}"><p class="paper-head" aria-hidden="true"><span>${escaped(`${title} · ${dossier.title}`)}<span>made ${dayWords(dossier.made)}</span></span></p>${content}</article>`;

function mainOf(html: string): string {
  const main = /<main id="main"[^>]*>([\s\S]*)<\/main>/.exec(html)?.[1];
  if (main === undefined) throw new Error('fault: a dossier’s page has no main part');
  return main.replace(/<script\b[\s\S]*?<\/script>/g, '');
}

/** Ids and what leads to them, made different for each reel: all of them stand in one page. */
const anchored = (html: string, id: string): string =>
  html.replace(/<[a-z][^>]*>/g, (tag) =>
    tag
      .replace(/(\s(?:id|aria-labelledby|aria-describedby)=")/g, `$1${id}-`)
      .replace(/(\shref="#)(?!mk-)/g, `$1${id}-`),
  );

/** What leads to another reel's sheet leads to its place in the page; what leads to any other page leads nowhere. */
const withoutPages = (html: string, reels: ReadonlySet<string>): string =>
  html.replace(/\shref="\/-\/([^"]*)"/g, (_, path: string) => {
    if (path === 'plan/') return ' href="#plan"';
    const [, id = '', anchor] = /^reels\/([^/]+)\/(?:#(.+))?$/.exec(path) ?? [];
    if (!reels.has(id)) return '';
    return anchor === undefined ? ` href="#${id}"` : ` href="#${id}-${anchor}"`;
  });

class Pictures {
  readonly #folder: string;
  readonly #byFile: ReadonlyMap<string, readonly [path: string, PublishedPhotograph]>;
  readonly #closer: (path: string) => Promise<CloserLook>;

  constructor(
    folder: string,
    photographs: ReadonlyMap<string, PublishedPhotograph>,
    closer: (path: string) => Promise<CloserLook>,
  ) {
    this.#folder = folder;
    this.#closer = closer;
    this.#byFile = new Map(
      [...photographs].flatMap(([path, photograph]) =>
        photograph.sizes.flatMap((size) => [size.jpeg, size.webp].map((file) => [file, [path, photograph]] as const)),
      ),
    );
  }

  /** Pictures as data in place of files, in the one size that the page shows; and a closer look at each photograph. */
  async into(html: string): Promise<string> {
    const bare = html
      .replace(/\sdata-(?:zoom|width|height|tiles|tile-px|scales)="[^"]*"/g, '')
      .replace(
        /<picture>\s*<source\b[^>]*?srcset="([^" ]+)[^"]*"[^>]*>\s*/g,
        (_, webp: string) => `<picture data-webp="${webp}">`,
      );
    const shown = await eachMatch(
      bare,
      /<picture data-webp="([^"]*)">\s*(<img\b[^>]*>)\s*<\/picture>/g,
      async ([, webp = '', img = '']) => {
        const small = img.includes('sizes="12rem"');
        const data = await this.#data(this.#sizeFor(webp, small));
        return img
          .replace(/\s(?:srcset|sizes|loading|decoding)="[^"]*"/g, '')
          .replace(/\ssrc="[^"]*"/, ` src="${data}"`);
      },
    );
    return await eachMatch(
      shown,
      /<a\b[^>]*class="larger"[^>]*href="([^"]+)"[^>]*>[\s\S]*?<\/a>/g,
      async ([, file = '']) => {
        const [path, photograph] = this.#byFile.get(file.slice(DOSSIER_BASE.length)) ?? [];
        if (path === undefined || photograph?.zoom === undefined) return '';
        const { picture, widthPx: width, heightPx: height } = await this.#closer(path);
        const data = `data:image/webp;base64,${Buffer.from(picture).toString('base64')}`;
        return `<details class="closer"><summary>Look closer</summary><div tabindex="0" role="group" aria-label="The photograph, larger"><img src="${data}" width="${width}" height="${height}" alt="The same photograph, larger"></div></details>`;
      },
    );
  }

  /** The size that a page shows: small in a list; where there is a closer look, a middle one; else the largest. */
  #sizeFor(webp: string, small: boolean): string {
    const file = webp.slice(DOSSIER_BASE.length);
    const photograph = this.#byFile.get(file)?.[1];
    if (photograph === undefined) return file;
    const { sizes, zoom } = photograph;
    return (small ? sizes[0] : zoom === undefined ? sizes.at(-1) : sizes[Math.min(1, sizes.length - 1)])?.webp ?? file;
  }

  async #data(file: string): Promise<string> {
    return `data:image/webp;base64,${(await readFile(join(this.#folder, file))).toString('base64')}`;
  }
}

/** Replaces each match by what is made of it, one after another. */
async function eachMatch(
  text: string,
  pattern: RegExp,
  make: (match: RegExpExecArray) => Promise<string>,
): Promise<string> {
  const parts: string[] = [];
  let done = 0;
  for (const match of text.matchAll(pattern)) {
    parts.push(text.slice(done, match.index), await make(match));
    done = match.index + match[0].length;
  }
  return [...parts, text.slice(done)].join('');
}
