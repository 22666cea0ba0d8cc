import type { Edition, EditionSide, RunOut } from '#model/edition.ts';
import { MADE_AS } from '#model/words.ts';
import { type Complete, listOf, mapOf } from '../branch.ts';
import { parsePartialDate } from '../date.ts';
import { fact, known, many } from '../leaf.ts';
import { parseDuration } from '../scalars/duration.ts';
import { parseId } from '../scalars/id.ts';
import { parseRpm } from '../scalars/rpm.ts';
import { parseText } from '../scalars/text.ts';
import { wordOf } from '../scalars/word.ts';
import { baseFacts, baseShape, type Facts } from './base.ts';

const side = mapOf(
  {
    side: known(parseText, 'side: "1"'),
    length: known(parseDuration).optional(),
    matrix: fact(parseText).optional(),
    reel: known(parseId).optional(),
  },
  ({ side: name, length, matrix, reel }, place): Complete<EditionSide> => ({
    place,
    side: name,
    durationS: length,
    matrix,
    reel,
  }),
);

const runOut = mapOf(
  {
    side: known(parseText).optional(),
    written: known(parseText, 'written: HLX 2207-A2'),
    cut: known(parseText).optional(),
    copy: known(parseText).optional(),
    note: known(parseText).optional(),
  },
  ({ side: name, written, cut, copy, note }, place): Complete<RunOut> => ({
    place,
    side: name,
    written,
    cut,
    copy,
    note,
  }),
);

/** An editions/ entry. */
export const edition = mapOf(
  {
    ...baseShape,
    artist: fact(parseText).optional(),
    label: fact(parseText).optional(),
    catalogue: many(parseText).optional(),
    'made-as': fact(wordOf(MADE_AS, 'something that an edition is made as')).optional(),
    territory: fact(parseText).optional(),
    issued: fact(parsePartialDate).optional(),
    sides: listOf(side).optional(),
    speed: fact(parseRpm).optional(),
    'reissue-of': many(parseId).optional(),
    'run-outs': listOf(runOut).optional(),
  },
  (fields): Complete<Facts<Edition>> => ({
    ...baseFacts(fields),
    artist: fields.artist,
    label: fields.label,
    catalogue: fields.catalogue,
    madeAs: fields['made-as'],
    territory: fields.territory,
    issued: fields.issued,
    sides: fields.sides,
    speed: fields.speed,
    reissueOf: fields['reissue-of'],
    runOuts: fields['run-outs'],
  }),
);
