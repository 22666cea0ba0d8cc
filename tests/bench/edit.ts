import { spawn } from 'node:child_process';
import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { openBrowser } from '../site/browser.ts';
import { generateCollection } from './generate.ts';
import { type BenchRow, round } from './row.ts';

const START = join(import.meta.dirname, '..', '..', 'src', 'start.mjs');
const EDITS = 5;
const LONGEST_MS = 120_000;

interface Index {
  search(word: string): Promise<{
    results: readonly { data(): Promise<{ url: string; meta: { title?: string } }> }[];
  }>;
}

/** Whether the site's own search leads from a word to a page whose title has it, with nothing remembered of an older
 * index. That something is found says nothing: of a word that it doesn't know the index looks for the beginning.
 * A search under which the site is replaced can fail for want of an older index's files: nothing is found yet. */
const FINDS = async ({ word, path, at }: { word: string; path: string; at: number }): Promise<boolean> => {
  try {
    const index: Index = await import(`/pagefind/pagefind.js?${at}`);
    const { results } = await index.search(word);
    const first = await results[0]?.data();
    return first?.url === path && first.meta.title?.startsWith(word) === true;
  } catch {
    return false;
  }
};

/** From the moment that an entry is saved until its page, open in a browser, shows the new title; and until a text search
 * in the browser finds the new word. The collection is being served; the middle one of several edits counts, and the
 * slowest is told too.
 *
 * @param mostS  seconds that it may take. */
export async function benchEdit(folder: string, reels: number, mostS: number): Promise<readonly BenchRow[]> {
  const collection = join(folder, `edited-${reels}`);
  await rm(collection, { recursive: true, force: true });
  const ids = await generateCollection(collection, reels);
  const out = join(folder, `edited-site-${reels}`);
  const options = ['--collection', collection, '--out', out, '--cache', join(folder, 'cache')];
  const child = spawn(process.execPath, [START, 'start', ...options], { stdio: ['ignore', 'ignore', 'pipe'] });
  const closed = new Promise((resolve) => child.once('close', resolve));
  let said = '';
  child.stderr.on('data', (chunk: Buffer) => {
    said += chunk.toString();
  });
  const browser = await openBrowser();
  try {
    while (!said.includes('Ctrl-C')) {
      if (child.exitCode !== null) throw new Error(`start ended:\n${said}`);
      await pause(100);
    }
    const address = /http:\S+/.exec(said)?.[0] ?? '';
    const page = await browser.newPage();
    const seen: number[] = [];
    const found: number[] = [];
    for (let edit = 0; edit < EDITS; edit += 1) {
      const id = ids[Math.floor((ids.length * edit) / EDITS)] ?? '';
      const word = `Quandrel${edit}`;
      const file = join(collection, 'reels', `${id}.md`);
      const text = await readFile(file, 'utf8');
      await page.goto(`${address}reels/${id}/`, { timeout: LONGEST_MS, waitUntil: 'domcontentloaded' });
      const started = performance.now();
      await writeFile(file, text.replace(/^title: .*$/m, `title: ${word}, side 1`));
      await page.waitForFunction((title) => document.querySelector('h1')?.textContent?.includes(title) === true, word, {
        polling: 10,
        timeout: LONGEST_MS,
      });
      seen.push(performance.now() - started);
      while (!(await page.evaluate(FINDS, { word, path: `/reels/${id}/`, at: performance.now() }))) {
        if (performance.now() - started > LONGEST_MS) throw new Error(`${word} is never found:\n${said}`);
        await pause(50);
      }
      found.push(performance.now() - started);
    }
    const row = (work: string, ms: number, most: number): BenchRow => {
      const ratio = round(ms / 1000 / most);
      return { work, size: reels, seconds: round(ms / 1000), floor: most, ratio, goal: 1, peak_MiB: 0 };
    };
    return [
      row('an edit, until its page is new', middle(seen), mostS),
      row('an edit, the slowest of five', Math.max(...seen), mostS),
      row('an edit, until text search finds it', middle(found), 5),
    ];
  } finally {
    await browser.close();
    child.kill('SIGINT');
    await closed;
  }
}

const middle = (times: readonly number[]) => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;
