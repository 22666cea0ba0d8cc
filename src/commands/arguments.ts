import { resolve } from 'node:path';
import { type ParseArgsOptionsConfig, parseArgs } from 'node:util';
import { type Day, day } from '#model/dates.ts';
import { type Io, UsageError } from './io.ts';

/** The options that every command takes. */
const SHARED = {
  collection: { type: 'string' },
  today: { type: 'string' },
  format: { type: 'string' },
} as const satisfies ParseArgsOptionsConfig;

export interface SharedOptions {
  /** Absolute. */
  readonly collection: string;
  readonly today: Day;
  readonly json: boolean;
}

/** Options and plain words of a command line. Throws UsageError for an option that the command doesn't have. */
export function commandLine<T extends ParseArgsOptionsConfig>(args: readonly string[], io: Io, own: T) {
  const parsed = parse(args, { ...SHARED, ...own });
  const given = parsed.values as Record<string, unknown>;
  const format = given['format'] ?? 'text';
  if (format !== 'json' && format !== 'text') throw new UsageError(`--format takes json or text, not "${format}".`);
  const shared: SharedOptions = {
    collection: resolve(io.cwd, typeof given['collection'] === 'string' ? given['collection'] : 'collection'),
    today: todayOf(given['today'], io.now),
    json: format === 'json',
  };
  return { ...parsed, shared };
}

function parse<T extends ParseArgsOptionsConfig>(args: readonly string[], options: T) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
  } catch (error) {
    const names = Object.keys(options).map((name) => `--${name}`);
    // What follows is about a value that begins with a dash, which none of ours does.
    const [said] = String(error instanceof Error ? error.message : error).split('. To specify a positional argument');
    throw new UsageError(`${said?.replace(/\.$/, '')}. There are: ${names.join(', ')}.`);
  }
}

function todayOf(given: unknown, now: Date): Day {
  if (given === undefined) return dayOf(now);
  if (typeof given === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(given) && isDay(given)) return day(given);
  throw new UsageError(`--today takes a day such as 2026-03-12, not "${String(given)}".`);
}

/** The day by a clock, where it stands. */
export function dayOf(now: Date): Day {
  const two = (count: number) => String(count).padStart(2, '0');
  return day(`${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`);
}

function isDay(text: string): boolean {
  const date = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
}
