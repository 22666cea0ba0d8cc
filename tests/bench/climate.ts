import { mkdir, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { logOfMinutes } from './climate-log.ts';
import { measure } from './measure.ts';
import { type BenchRow, round } from './row.ts';

const MOST_CHART_BYTES = 40_000;
/** Each is run so often, in turn, and the best counts: other programs' work comes and goes. */
const RUNS = 3;

interface Told {
  readonly seconds: number;
  readonly readings: number;
  readonly peak_MiB: number;
  readonly chart_bytes?: number;
  readonly cpuSeconds: number;
}

/** A year at a reading a minute: streamed, reduced and drawn, beside a bare streaming CSV reader on the same file; the
 * size of the chart; and the memory that a log of four times the rows takes, beside that of one.
 *
 * @param folder  for the logs; emptied. */
export async function benchClimate(folder: string, rows: number): Promise<readonly BenchRow[]> {
  await rm(folder, { recursive: true, force: true });
  await mkdir(folder, { recursive: true });
  const [log, longer] = [join(folder, 'log.csv'), join(folder, 'longer.csv')];
  await logOfMinutes(log, rows);
  await logOfMinutes(longer, 4 * rows);
  const ours: Told[] = [];
  const floors: Told[] = [];
  for (let run = 0; run < RUNS; run += 1) {
    floors.push(await told('floor/csv-stream.ts', log, rows));
    ours.push(await told('climate-drawn.ts', log, rows));
  }
  const [our, floor] = [best(ours), best(floors)];
  const long = await told('climate-drawn.ts', longer, 4 * rows);
  const least = Math.min(...ours.map(({ peak_MiB }) => peak_MiB));
  const row = (work: string, one: number, other: number, goal: number, places: number): BenchRow => ({
    work,
    size: rows,
    seconds: round(one, places),
    floor: round(other, places),
    ratio: round(one / other, 3),
    goal,
    peak_MiB: Math.round(our.peak_MiB),
  });
  return [
    {
      ...row('climate, a log streamed, reduced and drawn', our.seconds, floor.seconds, 1.5, 2),
      cpu_ratio: round(our.cpuSeconds / floor.cpuSeconds),
    },
    // Where a limit is measured, `floor` is the limit.
    row('climate, its chart (kB)', (our.chart_bytes ?? Infinity) / 1000, MOST_CHART_BYTES / 1000, 1, 1),
    row('climate, memory at four times the rows (MiB)', long.peak_MiB, least, 1.25, 0),
  ];
}

async function told(script: string, log: string, rows: number): Promise<Told> {
  const path = join(import.meta.dirname, script);
  const { out, err, exit, cpuSeconds } = await measure(process.execPath, [path, log], import.meta.dirname);
  if (exit !== 0) throw new Error(`${script} failed:\n${err}`);
  const answer = JSON.parse(out) as Omit<Told, 'cpuSeconds'>;
  if (answer.readings !== rows) throw new Error(`${script} met ${answer.readings} readings, not ${rows}`);
  return { ...answer, cpuSeconds };
}

const best = (runs: readonly Told[]): Told => runs.reduce((a, b) => (b.seconds < a.seconds ? b : a));
