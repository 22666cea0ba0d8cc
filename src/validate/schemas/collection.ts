import type { CollectionInfo } from '#model/entries.ts';
import { UNIT_SYSTEMS } from '#model/words.ts';
import { type Complete, mapOf } from '../branch.ts';
import { fact, plainMany } from '../leaf.ts';
import { parseFormatVersion } from '../scalars/format-version.ts';
import { parseLanguage } from '../scalars/language.ts';
import { parseCurrency } from '../scalars/money.ts';
import { parseText } from '../scalars/text.ts';
import { wordOf } from '../scalars/word.ts';

/** collection.md */
export const collection = mapOf(
  {
    title: fact(parseText).optional(),
    owner: fact(parseText).optional(),
    currency: fact(parseCurrency).optional(),
    units: fact(wordOf(UNIT_SYSTEMS, 'a system of units')).optional(),
    language: fact(parseLanguage).optional(),
    private: plainMany(parseText).optional(),
    format: fact(parseFormatVersion).optional(),
  },
  (fields): Complete<Omit<CollectionInfo, 'body' | 'bodyLine'>> => ({
    title: fields.title,
    owner: fields.owner,
    currency: fields.currency,
    units: fields.units,
    language: fields.language,
    private: fields.private ?? [],
    format: fields.format,
  }),
);
