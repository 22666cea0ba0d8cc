import { spawn } from 'node:child_process';
import { readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { generateCollection } from './generate.ts';
import { type BenchRow, round } from './row.ts';

const START = join(import.meta.dirname, '..', '..', 'src', 'start.mjs');
const EDITS = 5;

/** From the moment that an entry is saved until its page, asked for as the browser asks, is the new one; and until a
 * search finds the new word. The collection is being served; the middle one of several edits counts.
 *
 * @param mostS  seconds that it may take. */
export async function benchEdit(folder: string, reels: number, mostS: number): Promise<readonly BenchRow[]> {
  const collection = join(folder, `edited-${reels}`);
  await rm(collection, { recursive: true, force: true });
  const ids = await generateCollection(collection, reels);
  const out = join(folder, `edited-site-${reels}`);
  const port = 4900 + Math.floor(process.pid % 100);
  const options = ['--collection', collection, '--out', out, '--cache', join(folder, 'cache'), '--port', String(port)];
  const child = spawn(process.execPath, [START, 'start', ...options], { stdio: ['ignore', 'ignore', 'pipe'] });
  const closed = new Promise((resolve) => child.once('close', resolve));
  let said = '';
  child.stderr.on('data', (chunk: Buffer) => {
    said += chunk.toString();
  });
  try {
    while (!said.includes('Ctrl-C')) {
      if (child.exitCode !== null) throw new Error(`start ended:\n${said}`);
      await pause(100);
    }
    const seen: number[] = [];
    const found: number[] = [];
    for (let edit = 0; edit < EDITS; edit += 1) {
      const id = ids[Math.floor((ids.length * edit) / EDITS)] ?? '';
      const word = `Quandrel${edit}`;
      const file = join(collection, 'reels', `${id}.md`);
      const text = await readFile(file, 'utf8');
      const started = performance.now();
      await writeFile(file, text.replace(/^title: .*$/m, `title: ${word}, side 1`));
      await until(`http://127.0.0.1:${port}/reels/${id}/`, word);
      seen.push(performance.now() - started);
      await until(`http://127.0.0.1:${port}/catalogue.json`, word);
      await until(`http://127.0.0.1:${port}/pagefind/pagefind-entry.json`, '');
      found.push(performance.now() - started);
    }
    const row = (work: string, times: readonly number[], most: number): BenchRow => {
      const seconds = middle(times) / 1000;
      const ratio = round(seconds / most);
      return { work, size: reels, seconds: round(seconds), floor: most, ratio, goal: 1, peak_MiB: 0 };
    };
    return [row('an edit, until its page is new', seen, mostS), row('an edit, until search knows it', found, 5)];
  } finally {
    child.kill('SIGINT');
    await closed;
  }
}

async function until(address: string, word: string): Promise<void> {
  for (;;) {
    const text = await (await fetch(address)).text();
    if (text.includes(word)) return;
    await pause(10);
  }
}

const middle = (times: readonly number[]) => [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? 0;
