import type { Known } from '#model/fact.ts';
import type { Reading } from '#model/reel.ts';
import { listInWords } from '../../figure/in-words.ts';
import { readingAllows } from '../../identifiers/reading-allows.ts';
import { orderOf } from '../../identifiers/sides.ts';
import { speedIsRead } from '../../tape/reading-of-speed.ts';
import { timeIsRead } from '../../tape/reading-of-time.ts';
import { crossCheck, type Doubt } from '../check.ts';
import { factRead, type ReadFact, readingsByFact } from '../read-facts.ts';

/** A fact that isn't what its own reading says. Numbers, times, speeds and sides are compared, letter by letter or figure
 * by figure; of several readings one that agrees and is as sure is enough. */
export const factDiffersFromReading = crossCheck({
  code: 'number/fact-differs-from-reading',
  title: 'A fact isn’t what its reading says',
  severity: 'warning',
  scope: 'reel',
  reads: ['reel', 'readings'],
  judge: ({ reel, readings }) =>
    [...readingsByFact(readings)].flatMap(([key, ofKey]): readonly Doubt[] => {
      const fact = factRead(reel, key);
      if (fact === undefined) return [];
      const differing = ofKey.filter((reading) => !isAsRead(fact, reading.written.value));
      const surestAgreeing = Math.max(-1, ...ofKey.filter((reading) => !differing.includes(reading)).map(sureness));
      const surer = differing.filter((reading) => sureness(reading) > surestAgreeing);
      const [first, ...more] = surer;
      return first === undefined ? [] : [doubtAbout(key, valuesOf(fact), first, more)];
    }),
});

/** A reading of which nobody said how sure it is counts as likely. */
const sureness = ({ sure }: Reading): number => ['guess', 'likely', 'certain'].indexOf(sure?.value ?? 'likely');

function doubtAbout(key: string, values: readonly Known<unknown>[], first: Reading, more: readonly Reading[]): Doubt {
  const written = listInWords(values.map((value) => value.written));
  const [value] = values;
  return {
    place: value?.place ?? first.place,
    message: `What the entry gives as ${key} isn’t what its reading says.`,
    found: written,
    expected: first.written.written,
    action:
      'Look at the photograph again and mend whichever of the two is wrong: the reading is letter by letter, `?` for what can’t be read, `{1|7}` for one of two. If the fact comes from elsewhere, add that reading.',
    related: [first, ...more].map((reading) => ({
      message: `read as ${reading.written.written}${reading.photo === undefined ? '' : ` in ${reading.photo.written}`}`,
      place: reading.written.place,
    })),
  };
}

const valuesOf = (fact: ReadFact): readonly Known<unknown>[] => ('values' in fact ? fact.values : [fact.value]);

function isAsRead(fact: ReadFact, read: string): boolean {
  switch (fact.is) {
    case 'number':
      return fact.values.some((number) => readingAllows(read, number.value));
    case 'duration':
      return timeIsRead(read, fact.value.value);
    case 'speed':
      return speedIsRead(read, fact.value.value);
    case 'side':
      return sideIsRead(
        read,
        fact.values.map((side) => side.value),
      );
  }
}

/** A side stands on a label by itself, as a figure or a letter; a text without one allows any. */
function sideIsRead(read: string, sides: readonly string[]): boolean {
  const named = read.split(/[^\p{L}\p{N}]+/u).flatMap((word) => orderOf(word) ?? []);
  return named.length === 0 || sides.some((side) => named.includes(orderOf(side) ?? 0));
}
