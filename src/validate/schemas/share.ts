import type { Share } from '#model/share.ts';
import { AUDIENCES, OPENED_BY } from '#model/words.ts';
import { type Complete, mapOf } from '../branch.ts';
import { parsePartialDate } from '../date.ts';
import { fact, known, many, neededMany } from '../leaf.ts';
import { parseId } from '../scalars/id.ts';
import { parseText } from '../scalars/text.ts';
import { wordOf } from '../scalars/word.ts';
import { baseFacts, baseShape, type Facts } from './base.ts';

/** A shares/ entry. */
export const share = mapOf(
  {
    ...baseShape,
    to: fact(parseText).optional(),
    front: fact(parseText).optional(),
    for: known(wordOf(AUDIENCES, 'someone whom a share is made for'), `for: one of ${AUDIENCES.join(', ')}`),
    reels: neededMany(parseId, 'reels: [almanac-side-1]'),
    shows: many(parseText).optional(),
    'shows-private': many(parseText).optional(),
    until: fact(parsePartialDate).optional(),
    'opened-by': fact(wordOf(OPENED_BY, 'a way to open a dossier')).optional(),
  },
  (fields): Complete<Facts<Share>> => ({
    ...baseFacts(fields),
    to: fields.to,
    front: fields.front,
    audience: fields.for,
    reels: fields.reels,
    shows: fields.shows,
    showsPrivate: fields['shows-private'],
    until: fields.until,
    openedBy: fields['opened-by'],
  }),
);
