import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { distance } from 'fastest-levenshtein';
import { makeNumberIndex } from '#compute/identifiers/number-index.ts';
import { openNumberIndex } from '#compute/identifiers/open-index.ts';
import { plainForm } from '#compute/identifiers/plain.ts';
import type { NumberOf, NumberUse } from '#model/numbered.ts';
import { serve } from '#publish/serve.ts';
import { falselyMatched, missed, QUALITIES, type Quality } from '../compute/identifiers/find-quality.ts';
import { denseNumbers, sparseNumbers } from '../compute/identifiers/invented-houses.ts';
import { openBrowser } from '../site/browser.ts';
import { chance } from './chance.ts';
import type { FindTimes } from './find-in-page.ts';
import { type BenchRow, round } from './row.ts';

const QUESTIONS = 400;
/** What the search must keep to: bytes of the index, until the first answer, and one answer. */
const MOST_MB = 2.5;
const READY_S = 0.3;
const ANSWER_S = 0.016;

/** Finding by number in a real browser: against the limits, and beside a linear scan by edit distance and a general
 * fuzzy search on the same questions. Where a limit is measured, `floor` is the limit and the goal is 1.
 *
 * @param folder  for the index and the page; emptied. */
export async function benchFind(folder: string, numbers: number): Promise<readonly BenchRow[]> {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  const written = denseNumbers(20_713, numbers);
  const json = JSON.stringify(makeNumberIndex(numbered(written)));
  await writeFile(join(folder, 'numbers.json'), json);
  await writeFile(join(folder, 'index.html'), '<!doctype html><title>find</title><script src="find.js"></script>');
  await build({
    entryPoints: [join(import.meta.dirname, 'find-in-page.ts')],
    outfile: join(folder, 'find.js'),
    bundle: true,
    minify: true,
    format: 'iife',
    logLevel: 'warning',
  });
  const { times, peak } = await inBrowser(folder, questionsOf(written));
  const few = times.linear.length;
  const row = (work: string, seconds: number, floor: number): BenchRow => ({
    work,
    size: numbers,
    seconds: round(seconds, 4),
    floor: round(floor, 4),
    ratio: round(seconds / floor, 3),
    goal: 1,
    peak_MiB: peak,
  });
  return [
    row('find, index gzipped (MB)', gzipSync(json).length / 1e6, MOST_MB),
    row('find, ready', times.readyMs / 1000, READY_S),
    row('find, p95 of a question', ninetyFifth(times.ours) / 1000, ANSWER_S),
    row(`find, beside a linear scan (${few} questions)`, mean(times.oursOfFew) / 1000, mean(times.linear) / 1000),
    row(`find, beside a fuzzy search (${few} questions)`, mean(times.oursOfFew) / 1000, mean(times.fuzzy) / 1000),
    ...qualityRows(),
  ];
}

const SPARSE = 2_000;

/** How well numbers are found: `ratio` is the share that was missed, `goal` the share that may be; the floor of each is
 * to miss none. Dense series are reported apart: several of their numbers are a character away from any question. */
function qualityRows(): readonly BenchRow[] {
  const sparse = sparseNumbers(20_713, SPARSE, 4);
  const dense = denseNumbers(20_713, SPARSE);
  const ofSet = (name: string, numbers: readonly string[], allowed: (quality: Quality) => number) => {
    const index = openNumberIndex(makeNumberIndex(numbered(numbers)));
    return QUALITIES.map((quality) =>
      shareRow(`find, missed in ${name}, ${quality.name}`, allowed(quality), () => missed(index, numbers, quality)),
    );
  };
  const index = openNumberIndex(makeNumberIndex(numbered(sparse)));
  const strangers = sparseNumbers(99, SPARSE, 3).filter((text) =>
    sparse.every((one) => distance(plainForm(one), plainForm(text)) > 2),
  );
  return [
    ...ofSet('a sparse set', sparse, ({ allowed }) => allowed),
    shareRow('find, a number nobody has shown as a match', 0.01, () => falselyMatched(index, strangers)),
    ...ofSet('dense series', dense, () => 1),
  ];
}

function shareRow(work: string, allowed: number, run: () => readonly string[]): BenchRow {
  const start = performance.now();
  const share = run().length / SPARSE;
  const seconds = round((performance.now() - start) / 1000, 2);
  return { work, size: SPARSE, seconds, floor: 0, ratio: round(share, 4), goal: allowed, peak_MiB: 0 };
}

/** Ten numbers a reel, as reels have them. */
function numbered(written: readonly string[]): readonly NumberOf[] {
  const uses: readonly NumberUse[] = ['matrix', 'catalogue', 'job', 'matrix', 'other'];
  return written.map((number, at) => {
    const reel = Math.floor(at / 10);
    const thing = {
      of: 'reel' as const,
      id: `set-${reel >> 1}-side-${1 + (reel % 2)}`,
      title: `Set ${reel >> 1}, side ${1 + (reel % 2)}`,
      state: 'held' as const,
    };
    return {
      thing,
      as: uses[at % uses.length] ?? 'other',
      number,
      from: at % 3 === 0 ? 'box front' : '',
      sure: at % 3 === 0 ? 'certain' : '',
    };
  });
}

/** As people ask: as written, respelt, half-read, misread, in part, within an etching, and numbers that nobody has. */
function questionsOf(written: readonly string[]): readonly string[] {
  const next = chance(7);
  const changed = (text: string, to: string) => {
    const at = Math.floor(next() * text.length);
    return text.slice(0, at) + to + text.slice(at + 1);
  };
  const figure = () => String(Math.floor(next() * 10));
  const ways: readonly ((text: string) => string)[] = [
    (text) => text,
    (text) => text.toLowerCase().replaceAll(/\W/g, '.'),
    (text) => changed(text, '?'),
    (text) => changed(text, figure()),
    (text) => changed(changed(text, figure()), figure()),
    (text) => text.slice(0, 3),
    (text) => `${text.slice(0, 3)}*${text.slice(-2)}`,
    (text) => `${text}-2 ‖ QQ`,
    (text) => [...text].reverse().join(''),
  ];
  return Array.from({ length: QUESTIONS }, (_, at) => {
    const text = written[Math.floor(next() * written.length)] ?? '';
    return (ways[at % ways.length] ?? String)(text);
  });
}

async function inBrowser(folder: string, questions: readonly string[]): Promise<{ times: FindTimes; peak: number }> {
  const serving = await serve({ root: folder, port: 0 });
  const browser = await openBrowser();
  try {
    const page = await browser.newPage();
    await page.goto(serving.address);
    const times = await page.evaluate((asked) => window.findTimes(asked), questions);
    const session = await page.context().newCDPSession(page);
    await session.send('Performance.enable');
    const { metrics } = await session.send('Performance.getMetrics');
    const heap = metrics.find(({ name }) => name === 'JSHeapTotalSize')?.value ?? 0;
    return { times, peak: Math.round(heap / 2 ** 20) };
  } finally {
    await browser.close();
    await serving.close();
  }
}

const mean = (times: readonly number[]) => times.reduce((sum, time) => sum + time, 0) / times.length;
const ninetyFifth = (times: readonly number[]) => times.toSorted((a, b) => a - b)[Math.floor(times.length * 0.95)] ?? 0;
