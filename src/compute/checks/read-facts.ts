import { itemsOf, type Known } from '#model/fact.ts';
import type { Reading, Reel } from '#model/reel.ts';
import type { MillimetresPerSecond, Seconds } from '#model/units.ts';

/** A fact that a reading can be held against, by what kind of thing it is. */
export type ReadFact =
  | { readonly is: 'number'; readonly values: readonly Known<string>[] }
  | { readonly is: 'duration'; readonly value: Known<Seconds> }
  | { readonly is: 'speed'; readonly value: Known<MillimetresPerSecond> }
  | { readonly is: 'side'; readonly values: readonly Known<string>[] };

const NUMBER_KEY = /^numbers\.(catalogue|matrix|job|other)(?:\[(\d+)\])?$/;
const TITLE_LENGTH = /^contents\[(\d+)\]\.length$/;

/** The fact that a reading is of; undefined when it isn't recorded, or is of a kind that isn't compared. */
export function factRead(reel: Reel, key: string): ReadFact | undefined {
  const number = NUMBER_KEY.exec(key);
  if (number !== null) return numbersRead(reel, number[1] ?? '', number[2]);
  const title = TITLE_LENGTH.exec(key)?.[1];
  if (title !== undefined) return durationRead(itemsOf(reel.contents)[Number(title)]?.durationS);
  switch (key) {
    case 'length':
      return durationRead(reel.durationS?.is === 'known' ? reel.durationS : undefined);
    case 'format.speed':
      return reel.format.speed?.is === 'known' ? { is: 'speed', value: reel.format.speed } : undefined;
    case 'side':
      return reel.sides?.is === 'known' ? { is: 'side', values: reel.sides.value } : undefined;
    default:
      return undefined;
  }
}

const ROLES = { catalogue: 'catalogue', matrix: 'matrix', job: 'job', other: 'other' } as const;

function numbersRead(reel: Reel, role: string, index: string | undefined): ReadFact | undefined {
  const key = Object.values(ROLES).find((one) => one === role);
  const all = key === undefined ? [] : itemsOf(reel.numbers[key]);
  const values = index === undefined ? all : all.slice(Number(index), Number(index) + 1);
  return values.length > 0 ? { is: 'number', values } : undefined;
}

const durationRead = (value: Known<Seconds> | undefined): ReadFact | undefined =>
  value === undefined ? undefined : { is: 'duration', value };

/** Readings by the fact that they are of, indexes left out: `numbers.matrix[1]` is one of `numbers.matrix`. */
export function readingsByFact(readings: readonly Reading[]): ReadonlyMap<string, readonly Reading[]> {
  const groups = new Map<string, Reading[]>();
  for (const reading of readings) {
    const key = reading.of.value;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [reading]);
    else group.push(reading);
  }
  return groups;
}
