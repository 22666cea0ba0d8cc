/** Writes a log of so many minutes, seeded: `logOfMinutes(path, 525_600)`. */

import { once } from 'node:events';
import { createWriteStream } from 'node:fs';
import { chance } from './chance.ts';

const ROWS_A_WRITE = 10_000;

/** A year's round, a day's round and weather; a reading a minute from 1 January 2025. */
export async function logOfMinutes(path: string, minutes: number): Promise<void> {
  const next = chance(4471);
  const out = createWriteStream(path);
  out.write('time,temperature_C,humidity_percent\n');
  for (let from = 0; from < minutes; from += ROWS_A_WRITE) {
    const rows = Array.from({ length: Math.min(ROWS_A_WRITE, minutes - from) }, (_, at) => row(from + at, next));
    if (!out.write(rows.join(''))) await once(out, 'drain');
  }
  out.end();
  await once(out, 'finish');
}

const START = Date.UTC(2025, 0, 1);

function row(minute: number, next: () => number): string {
  const year = Math.cos((minute / 525_600) * 2 * Math.PI);
  const day = Math.cos((minute / 1440) * 2 * Math.PI);
  const temperature = 17 - 6 * year - 2 * day + next() * 1.5;
  const humidity = 50 + 8 * year + 4 * day + next() * 5;
  const time = new Date(START + minute * 60_000).toISOString().slice(0, 19).replace('T', ' ');
  return `${time},${temperature.toFixed(2)},${humidity.toFixed(1)}\n`;
}
