import type { PartialDate } from '#model/dates.ts';
import type { Equalisation } from '#model/equalisation.ts';
import { type Fact, itemsOf, type Known, valueOf } from '#model/fact.ts';
import type { Reading, Reel } from '#model/reel.ts';
import type { MillimetresPerSecond, Seconds } from '#model/units.ts';
import type { Kind, TrackFormat } from '#model/words.ts';

/** A fact that a reading can be held against, by what kind of thing it is. */
export type ReadFact =
  | { readonly is: 'number'; readonly values: readonly Known<string>[] }
  | { readonly is: 'duration'; readonly value: Known<Seconds> }
  | { readonly is: 'speed'; readonly value: Known<MillimetresPerSecond> }
  | { readonly is: 'side'; readonly values: readonly Known<string>[] }
  | { readonly is: 'date'; readonly value: Known<PartialDate> }
  | { readonly is: 'kind'; readonly value: Known<Kind> }
  | { readonly is: 'tracks'; readonly value: Known<TrackFormat> }
  | {
      readonly is: 'equalisation';
      readonly value: Known<Equalisation>;
      readonly speed: MillimetresPerSecond | undefined;
    }
  | { readonly is: 'noise reduction'; readonly value: Fact<string> };

const NUMBER_KEY = /^numbers\.(catalogue|matrix|job|other)(?:\[(\d+)\])?$/;
const TITLE_LENGTH = /^contents\[(\d+)\]\.length$/;
const LINE = /^(copy-log|cuts)\[(\d+)\]\.(on|number|matrix|speed|kind)$/;

/** The fact that a reading is of; undefined when it isn't recorded, or is of a kind that isn't compared. */
export function factRead(reel: Reel, key: string): ReadFact | undefined {
  const number = NUMBER_KEY.exec(key);
  if (number !== null) return numbersRead(reel, number[1] ?? '', number[2]);
  const title = TITLE_LENGTH.exec(key)?.[1];
  if (title !== undefined) return durationRead(itemsOf(reel.contents)[Number(title)]?.durationS);
  const line = LINE.exec(key);
  if (line !== null) return lineRead(reel, line[1] === 'cuts', Number(line[2]), line[3] ?? '');
  const { format } = reel;
  switch (key) {
    case 'recorded.on':
      return dateRead(valueOf(reel.recorded)?.on);
    case 'kind':
      return reel.kind?.is === 'known' ? { is: 'kind', value: reel.kind } : undefined;
    case 'format.tracks':
      return format.tracks?.is === 'known' ? { is: 'tracks', value: format.tracks } : undefined;
    case 'format.equalisation':
      return format.equalisation?.is === 'known'
        ? { is: 'equalisation', value: format.equalisation, speed: valueOf(format.speed) }
        : undefined;
    case 'format.noise-reduction':
      return format.noiseReduction && { is: 'noise reduction', value: format.noiseReduction };
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

const dateRead = (value: Known<PartialDate> | undefined): ReadFact | undefined => value && { is: 'date', value };

/** A fact of a line in the copy log, or of a cut. */
function lineRead(reel: Reel, ofCut: boolean, at: number, key: string): ReadFact | undefined {
  const cut = ofCut ? itemsOf(reel.cuts)[at] : undefined;
  const line = ofCut ? undefined : itemsOf(reel.copyLog)[at];
  switch (key) {
    case 'on':
      return dateRead((cut ?? line)?.on);
    case 'matrix':
      return cut?.matrix && { is: 'number', values: [cut.matrix] };
    case 'number':
      return line?.number && { is: 'number', values: [line.number] };
    case 'speed':
      return line?.speed && { is: 'speed', value: line.speed };
    case 'kind':
      return line?.kind && { is: 'kind', value: line.kind };
    default:
      return undefined;
  }
}

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
