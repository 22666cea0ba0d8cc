import { parseNumber } from '#compute/identifiers/parse-number.ts';
import type { PartialDate } from '#model/dates.ts';
import { parsePartialDate } from '#validate/date.ts';
import { parseText } from '#validate/scalars/text.ts';
import type { Calculation } from './calculation.ts';

export const numberOf: Calculation = {
  name: 'number',
  does: 'a catalogue, matrix or run-out number taken apart',
  keys: [{ name: 'text', form: '12345-3' }],
  answer: (asked) => {
    const text = asked.one('text', parseText);
    if (text === undefined) return undefined;
    return {
      value: parseNumber(text.value),
      unit: null,
      inputs: [{ name: 'text', written: text.written, basis: 'stated' }],
      formula: 'number, side letter, cut number, and the rest as written',
      source: 'form of disc numbers as etched and printed: common practice, no source',
      mind: ['No house’s system holds for another’s: a dash may start a cut number or belong to the number itself.'],
    };
  },
};

export const dateOf: Calculation = {
  name: 'date',
  does: 'the days that a partial date can mean',
  keys: [{ name: 'text', form: '1974~' }],
  answer: (asked) => {
    const text = asked.one('text', parsePartialDate);
    if (text === undefined) return undefined;
    return {
      value: inKeys(text.value),
      unit: null,
      inputs: [{ name: 'text', written: text.written, basis: 'stated' }],
      formula: 'first and last day as written; ~ and ? widen nothing',
      source: 'ISO 8601-2:2019, extended date/time format (EDTF)',
      mind: [],
    };
  },
};

const inKeys = (date: PartialDate) => ({
  earliest: date.earliest,
  latest: date.latest,
  uncertain: date.uncertain,
  approximate: date.approximate,
  'open-start': date.openStart,
  'open-end': date.openEnd,
  'unknown-start': date.unknownStart,
  'unknown-end': date.unknownEnd,
  season: date.season === null ? null : (SEASONS.get(date.season) ?? null),
});

/** Source: ISO 8601-2:2019, sub-year groupings. */
const SEASONS: ReadonlyMap<number, string> = new Map(
  [
    ...['spring', 'summer', 'autumn', 'winter'],
    ...['spring', 'summer', 'autumn', 'winter'].map((season) => `${season}, northern`),
    ...['spring', 'summer', 'autumn', 'winter'].map((season) => `${season}, southern`),
    ...['first quarter', 'second quarter', 'third quarter', 'fourth quarter'],
    ...['first four months', 'second four months', 'third four months', 'first half', 'second half'],
  ].map((season, index) => [21 + index, season]),
);
