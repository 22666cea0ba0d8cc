import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { join, posix } from 'node:path';
import { logProblems } from '#compute/climate/log-problems.ts';
import { summariseLog } from '#compute/climate/summarise-log.ts';
import type { ClimateSummary, LogFault, TakeReading } from '#model/climate.ts';
import type { Diagnostic } from '#model/diagnostic.ts';
import { itemsOf } from '#model/fact.ts';
import type { ClimateLogRef, StoragePlace } from '#model/storage-place.ts';
import { readClimateLog } from '#read/climate-log.ts';

/** A year at a reading a second is 1 GB and no logger's; a year a minute is 25 MB. */
const LARGEST_BYTES = 200_000_000;

export interface PlaceLogs {
  /** What the logs of each place come to together, by places/ id. */
  readonly climate: ReadonlyMap<string, ClimateSummary>;
  readonly problems: readonly Diagnostic[];
}

/** Reads the climate logs that places name, each once and as a stream.
 *
 * @param logs  the logs that lie in the collection: a name that leads anywhere else isn't opened. */
export async function readPlaceLogs(
  collection: string,
  places: readonly StoragePlace[],
  logs: readonly string[],
): Promise<PlaceLogs> {
  const inside = new Set(logs);
  const climate = new Map<string, ClimateSummary>();
  const problems: Diagnostic[] = [];
  for (const place of places) {
    const state = await stateOf(collection, place, inside);
    const known = READ.get(place);
    const read =
      state !== undefined && known?.state === state ? known.read : await readPlace(collection, place, inside);
    if (state !== undefined) READ.set(place, { state, read });
    problems.push(...read.problems);
    if (read.sums !== undefined) climate.set(place.id, read.sums);
  }
  return { climate, problems };
}

interface PlaceRead {
  readonly sums: ClimateSummary | undefined;
  readonly problems: readonly Diagnostic[];
}

/** What was read for a place as long as its entry lives: an edit elsewhere needn't wait for a year of readings. */
const READ = new WeakMap<StoragePlace, { readonly state: string; readonly read: PlaceRead }>();

async function readPlace(collection: string, place: StoragePlace, inside: ReadonlySet<string>): Promise<PlaceRead> {
  const whole = summariseLog();
  const faults: LogFault[] = [];
  const problems: Diagnostic[] = [];
  for (const named of itemsOf(place.climate)) {
    const path = pathOf(place, named);
    const answer = inside.has(path) ? await readOne(collection, path, named, whole.take) : refused(missing(named));
    problems.push(...answer.problems);
    faults.push(...answer.faults);
  }
  const sums = whole.finish();
  return { sums: sums && { ...sums, faults }, problems };
}

const pathOf = (place: StoragePlace, named: ClimateLogRef) => posix.join(posix.dirname(place.file), named.file.value);

/** A file system may keep times to two seconds only (FAT): a log that changed so shortly ago may change once more with
 * the same time. */
const COARSE_MS = 2000;

/** By what the logs of a place are told to be as they were; undefined while one has only just changed. */
async function stateOf(
  collection: string,
  place: StoragePlace,
  inside: ReadonlySet<string>,
): Promise<string | undefined> {
  const states = [collection];
  for (const named of itemsOf(place.climate)) {
    const path = pathOf(place, named);
    const about = inside.has(path) ? await stat(join(collection, path)).catch(() => undefined) : undefined;
    if (about !== undefined && Date.now() - Math.max(about.mtimeMs, about.ctimeMs) <= COARSE_MS) return undefined;
    states.push(about === undefined ? '-' : [about.size, about.mtimeMs, about.ctimeMs, about.ino, about.dev].join(' '));
  }
  return states.join('\n');
}

interface Answer {
  readonly faults: readonly LogFault[];
  readonly problems: readonly Diagnostic[];
}

const refused = (problem: Diagnostic): Answer => ({ faults: [], problems: [problem] });

/** Each log is summed up by itself too, so that its damage is told with its own lines. */
async function readOne(collection: string, path: string, named: ClimateLogRef, take: TakeReading): Promise<Answer> {
  const file = join(collection, path);
  const size = await stat(file).then(
    (found) => found.size,
    () => undefined,
  );
  if (size === undefined) return refused(missing(named));
  if (size > LARGEST_BYTES) return refused(tooLarge(named, size));
  const own = summariseLog();
  const columns =
    named.columns === undefined ? undefined : new Map([...named.columns].map(([ours, theirs]) => [ours, theirs.value]));
  const unread = await readClimateLog(createReadStream(file), { columns, zone: named.zone?.value }, (...reading) => {
    own.take(...reading);
    take(...reading);
  });
  own.finish();
  const faults = [...unread, ...own.faults()];
  return { faults, problems: logProblems(faults, path) };
}

const problemWith = (
  named: ClimateLogRef,
  code: string,
  told: Pick<Diagnostic, 'message' | 'action' | 'found' | 'expected'>,
): Diagnostic => ({ code, severity: 'error', place: named.file.place, related: [], ...told });

const missing = (named: ClimateLogRef) =>
  problemWith(named, 'climate/missing', {
    message: 'The climate log that this place names isn’t beside its entry.',
    found: named.file.written,
    expected: 'the name of a .csv file in the entry’s own folder',
    action: 'Put the log into the folder of this entry, or correct the name; upper and lower case count.',
  });

const tooLarge = (named: ClimateLogRef, size: number) =>
  problemWith(named, 'climate/too-large', {
    message: 'The climate log is too large to be read.',
    found: `${named.file.written}, ${Math.round(size / 1e6)} MB`,
    expected: `at most ${LARGEST_BYTES / 1e6} MB`,
    action: 'Let the logger write fewer readings, or cut the log into a file a year and name each.',
  });
