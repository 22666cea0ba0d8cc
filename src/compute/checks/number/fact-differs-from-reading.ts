import type { Fact } from '#model/fact.ts';
import type { Reading } from '#model/reel.ts';
import { listInWords } from '../../figure/in-words.ts';
import { isAsRead, mayBeBoth } from '../as-read.ts';
import { crossCheck, type Doubt } from '../check.ts';
import { factRead, type ReadFact, readingsByFact } from '../read-facts.ts';

/** A fact that isn't what its own reading says. What has one meaning on every label is compared: numbers letter by
 * letter, times, dates, speeds and sides by figure, kinds, tracks, curves and noise reduction by the trade's words; of
 * several readings one that agrees and is as sure is enough. */
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
      if (first === undefined) return [];
      const doubt = doubtAbout(key, valuesOf(fact), first, more);
      return [
        surer.every((reading) => mayBeBoth(fact, reading.written.value)) ? { ...doubt, severity: 'note' } : doubt,
      ];
    }),
});

/** A reading of which nobody said how sure it is counts as likely. */
const sureness = ({ sure }: Reading): number => ['guess', 'likely', 'certain'].indexOf(sure?.value ?? 'likely');

function doubtAbout(key: string, values: readonly Fact<unknown>[], first: Reading, more: readonly Reading[]): Doubt {
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

const valuesOf = (fact: ReadFact): readonly Fact<unknown>[] => ('values' in fact ? fact.values : [fact.value]);
