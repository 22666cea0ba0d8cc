import type { Reel } from '#model/reel.ts';
import { KINDS, LEAVINGS, STATUSES } from '#model/words.ts';
import { type Complete, factOf, listOf, mapOf } from '../branch.ts';
import { parsePartialDate } from '../date.ts';
import { fact, known, many } from '../leaf.ts';
import { parseWholeNumber } from '../scalars/count.ts';
import { parseDuration } from '../scalars/duration.ts';
import { parseGaps } from '../scalars/gaps.ts';
import { parseId } from '../scalars/id.ts';
import { parsePersonRef } from '../scalars/person-ref.ts';
import { parseText } from '../scalars/text.ts';
import { wordOf } from '../scalars/word.ts';
import { baseFacts, baseShape, type Facts } from './base.ts';
import { format, numbers, pack, runOutSound } from './reel-format.ts';
import { custody, handling, inspection, placeKept, valuation } from './reel-history.ts';
import { cut, logLine, reading, recorded, splice, title } from './reel-lines.ts';

const lent = mapOf(
  { to: known(parsePersonRef).optional(), until: known(parsePartialDate).optional() },
  ({ to, until }, place): Complete<NonNullable<Reel['lent']>> => ({ place, to, until }),
);

const left = mapOf(
  { how: known(wordOf(LEAVINGS, 'a way in which a tape leaves')).optional(), on: known(parsePartialDate).optional() },
  ({ how, on }, place): Complete<NonNullable<Reel['left']>> => ({ place, how, on }),
);

/** A reels/ entry. */
export const reel = mapOf(
  {
    ...baseShape,
    status: known(wordOf(STATUSES, 'a status'), `status: one of ${STATUSES.join(', ')}`),
    lent: lent.optional(),
    left: left.optional(),
    kind: fact(wordOf(KINDS, 'a kind of tape')).optional(),
    set: fact(parseText).optional(),
    side: many(parseText).optional(),
    edition: many(parseId).optional(),
    numbers: numbers.optional(),
    client: fact(parsePersonRef).optional(),
    length: fact(parseDuration).optional(),
    contents: listOf(title).optional(),
    gaps: fact(parseGaps).optional(),
    'run-out-sound': factOf(runOutSound).optional(),
    format: format.optional(),
    pack: pack.optional(),
    stock: fact(parseId).optional(),
    recorded: factOf(recorded).optional(),
    'copied-from': many(parseId).optional(),
    generation: known(parseWholeNumber).optional(),
    'copy-log': listOf(logLine).optional(),
    splices: listOf(splice).optional(),
    cuts: listOf(cut).optional(),
    readings: listOf(reading).optional(),
    condition: listOf(inspection).optional(),
    handling: listOf(handling).optional(),
    place: factOf(placeKept).optional(),
    custody: listOf(custody).optional(),
    valuations: listOf(valuation).optional(),
    rights: fact(parseText).optional(),
  },
  (fields): Complete<Facts<Reel>> => ({
    ...baseFacts(fields),
    status: fields.status,
    lent: fields.lent,
    left: fields.left,
    kind: fields.kind,
    set: fields.set,
    sides: fields.side,
    editions: fields.edition,
    numbers: fields.numbers ?? {},
    client: fields.client,
    durationS: fields.length,
    contents: fields.contents,
    gaps: fields.gaps,
    runOutSound: fields['run-out-sound'],
    format: fields.format ?? {},
    pack: fields.pack ?? {},
    stock: fields.stock,
    recorded: fields.recorded,
    copiedFrom: fields['copied-from'],
    generation: fields.generation,
    copyLog: fields['copy-log'],
    splices: fields.splices,
    cuts: fields.cuts,
    readings: fields.readings,
    condition: fields.condition,
    handling: fields.handling,
    placeKept: fields.place,
    custody: fields.custody,
    valuations: fields.valuations,
    rights: fields.rights,
  }),
);
