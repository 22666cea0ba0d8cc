import { appendFile, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { splitFiles } from '#read/collection.ts';
import { validateAll } from '#validate/entries.ts';
import { readPlaceLogs } from '../../src/commands/place-logs.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'tailout-test-logs-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const HEADER = 'time,temperature_C,humidity_percent\n';
const row = (hour: number, temperature: number) =>
  `2026-01-01T${String(hour).padStart(2, '0')}:00:00Z,${temperature},45\n`;

test('a log is read again when it changed, and only then', async () => {
  const text = '---\ntitle: Attic\nclimate: [attic.csv]\n---\n';
  const { entries } = validateAll(splitFiles([{ path: 'places/attic.md', text }]));
  await mkdir(join(folder, 'places'));
  const log = join(folder, 'places', 'attic.csv');
  await writeFile(log, `${HEADER}${row(0, 18)}${row(1, 19)}${row(2, 20)}`);
  const read = async () => (await readPlaceLogs(folder, entries.places, ['places/attic.csv'])).climate.get('attic');

  const first = await read();
  expect(first).toBeDefined();
  // It was written a moment ago, and may be once more with the same time.
  expect(await read()).not.toBe(first);
  await pause(2100);
  const settled = await read();
  expect(settled).toEqual(first);
  expect(await read()).toBe(settled);

  await appendFile(log, row(3, 30));
  const after = await read();
  expect(after).not.toEqual(settled);
  await rm(log);
  expect(await read()).toBeUndefined();
});
