import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { logProblems } from '#compute/climate/log-problems.ts';
import { STORAGE_YEARS_MIND } from '#compute/climate/storage-years.ts';
import { OVER_LOG_FORMULA, OVER_LOG_SOURCE } from '#compute/climate/storage-years-over-log.ts';
import { summariseLog } from '#compute/climate/summarise-log.ts';
import type { ClimateSummary, LogColumns } from '#model/climate.ts';
import { COLUMN_KEYS } from '#read/climate-columns.ts';
import { readClimateLog } from '#read/climate-log.ts';
import { offsetMs } from '#read/climate-time.ts';
import type { Asked } from '#reckoner/asked.ts';
import type { Answer, Calculation } from '#reckoner/calculation.ts';
import { type Parsed, parsed, refused } from '#validate/scalars/parsed.ts';
import { parseText } from '#validate/scalars/text.ts';

const LARGEST_MB = 200;

export const storageYearsOverLog: Calculation = {
  name: 'storage-years-over-log',
  does: 'the same measure over a climate log, by time',
  keys: [
    { name: 'log', form: 'spare-room.csv' },
    { name: 'columns', form: 'time=t_UTC+2,temperature_C=T,humidity_percent=RH', optional: true },
    { name: 'zone', form: '+02:00', optional: true },
  ],
  answer: async (asked) => {
    const log = asked.one('log', parseText);
    const columns = asked.one('columns', parseColumns);
    const zone = asked.one('zone', parseZone);
    if (log === undefined || (asked.has('columns') && columns === undefined)) return undefined;
    if (asked.has('zone') && zone === undefined) return undefined;
    const path = resolve(asked.around.cwd, log.value);
    if (!(await isReadable(asked, path, log.written))) return undefined;
    const summary = summariseLog();
    const form = { columns: columns?.value, zone: zone?.value };
    const unread = await readClimateLog(createReadStream(path, { highWaterMark: 1 << 18 }), form, summary.take);
    const sums = summary.finish();
    const faults = [...unread, ...summary.faults()];
    if (sums === undefined) return refuseLog(asked, faults, log.written, columns?.value);
    if (!Number.isFinite(sums.storageYears)) return refuseDry(asked, log.written);
    return answerFor(sums, faults, log.written, columns?.written);
  },
};

async function isReadable(asked: Asked, path: string, written: string): Promise<boolean> {
  const found = await stat(path).catch(() => undefined);
  if (found?.isFile() === true && found.size <= LARGEST_MB * 1e6) return true;
  const large = found?.isFile() === true;
  asked.refuse('log', {
    code: 'entry/bad-value',
    message: large ? `The log is over ${LARGEST_MB} MB.` : 'There is no such log.',
    found: written,
    expected: 'a CSV file of times, temperatures and humidities',
    action: large
      ? 'Split it into shorter stretches.'
      : 'Look at its name and folder; the path starts where you stand.',
  });
  return false;
}

type Faults = Awaited<ReturnType<typeof readClimateLog>>;

/** No reading at all could be used: the columns aren't known, or nothing under them is a reading. The faults say which. */
function refuseLog(asked: Asked, faults: Faults, written: string, columns: LogColumns | undefined): undefined {
  for (const { code, message, found, expected, action, line } of faults) {
    const again = action.includes('columns: {') ? `. As a key here: --columns "${mapping(action, columns)}"` : '';
    asked.refuse('log', {
      code,
      message,
      found: `${found} (line ${line} of ${written})`,
      expected,
      action: action + again,
    });
  }
  return undefined;
}

const refuseDry = (asked: Asked, written: string) =>
  asked.refuse('log', {
    code: 'climate/impossible',
    message: 'The air of the whole log is wholly dry, and has no measure.',
    found: `0 % throughout ${written}`,
    expected: 'humidities over 0 %',
    action: 'Look whether the humidity is in another column.',
  });

/** The same mapping as the command line writes it. */
function mapping(action: string, columns: LogColumns | undefined): string {
  const pairs = /\{ (?<pairs>.*) \}/.exec(action)?.groups?.['pairs'] ?? '';
  if (pairs === '') return [...(columns ?? [])].map((pair) => pair.join('=')).join(',');
  return pairs
    .split(', ')
    .map((pair) => pair.replace(': ', '='))
    .join(',');
}

function answerFor(
  sums: Omit<ClimateSummary, 'faults'>,
  faults: Faults,
  log: string,
  columns: string | undefined,
): Answer {
  const day = (ms: number) => new Date(ms).toISOString().slice(0, 10);
  return {
    value: sums.storageYears,
    unit: 'years',
    inputs: [
      { name: 'log', written: log, basis: 'measured' },
      ...(columns === undefined ? [] : [{ name: 'columns', written: columns, basis: 'stated' as const }]),
    ],
    formula: OVER_LOG_FORMULA,
    source: OVER_LOG_SOURCE,
    also: {
      readings: sums.readings,
      from: day(sums.fromMs),
      until: day(sums.untilMs),
      'usual-step_s': sums.usualStepMs / 1000,
      covered_h: sums.coveredHours,
      temperature_C: { low: sums.lowC, mean: sums.meanC, high: sums.highC },
      humidity_percent: { low: sums.lowPercent, mean: sums.meanPercent, high: sums.highPercent },
      'outside-outer-bounds_h': sums.outsideOuter.hours,
      'outside-medium-term_h': sums.outsideMedium.hours,
      problems: logProblems(faults, log),
    },
    mind: [STORAGE_YEARS_MIND, 'Each reading counts for the time to the next one; a gap counts for nothing.'],
  };
}

/** `time=t_UTC+2,temperature_C=T`: a comma parts the pairs only where one of our names follows it, so that a logger's
 * name may hold one. */
function parseColumns(text: string): Parsed<LogColumns> {
  const pairs = text.split(new RegExp(`,\\s*(?=(?:${COLUMN_KEYS.join('|')})=)`)).map((pair) => pair.trim());
  const columns = new Map<string, string>();
  for (const pair of pairs) {
    const equals = pair.indexOf('=');
    const ours = pair.slice(0, Math.max(equals, 0));
    const theirs = pair.slice(equals + 1).trim();
    if (!COLUMN_KEYS.some((key) => key === ours) || theirs === '') {
      return refused(
        `"${pair}" doesn’t say which column is which.`,
        'time=t_UTC+2,temperature_C=T,humidity_percent=RH',
        `Write one of ${COLUMN_KEYS.join(', ')}, an equals sign, and the logger’s own name.`,
      );
    }
    columns.set(ours, theirs);
  }
  return parsed(columns);
}

function parseZone(text: string): Parsed<string> {
  if (!Number.isNaN(offsetMs(text))) return parsed(text);
  return refused(`"${text}" is no offset of a clock.`, '+02:00, or Z', 'Write hours and minutes ahead of UTC.');
}
