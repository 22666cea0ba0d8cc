import type { Person } from '#model/person-entry.ts';
import { type Complete, mapOf } from '../branch.ts';
import { parsePartialDate } from '../date.ts';
import { fact, many } from '../leaf.ts';
import { parseText } from '../scalars/text.ts';
import { baseFacts, baseShape, type Facts } from './base.ts';

/** A people/ entry. */
export const person = mapOf(
  {
    ...baseShape,
    initials: many(parseText).optional(),
    did: many(parseText).optional(),
    active: fact(parsePartialDate).optional(),
  },
  (fields): Complete<Facts<Person>> => ({
    ...baseFacts(fields),
    initials: fields.initials,
    did: fields.did,
    active: fields.active,
  }),
);
