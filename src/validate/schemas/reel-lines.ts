import type { Cut, LogLine, Reading, Recorded, Splice, Title } from '#model/reel.ts';
import { KINDS, SURENESSES } from '#model/words.ts';
import { type Complete, mapOf } from '../branch.ts';
import { parsePartialDate } from '../date.ts';
import { fact, known } from '../leaf.ts';
import { parseDuration } from '../scalars/duration.ts';
import { parseEqualisation } from '../scalars/equalisation.ts';
import { parseFileName } from '../scalars/file-name.ts';
import { parseId } from '../scalars/id.ts';
import { parsePersonRef } from '../scalars/person-ref.ts';
import { parseRegion } from '../scalars/region.ts';
import { parseSpeed } from '../scalars/speed.ts';
import { parseText } from '../scalars/text.ts';
import { wordOf } from '../scalars/word.ts';
import { parseYesNo } from '../scalars/yes-no.ts';

/** A line of `contents`. */
export const title = mapOf(
  {
    title: known(parseText, 'title: Low Water'),
    length: known(parseDuration).optional(),
    'gap-after': fact(parseDuration).optional(),
    side: known(parseText).optional(),
    by: known(parseText).optional(),
    note: known(parseText).optional(),
  },
  ({ title: name, length, 'gap-after': gapAfterS, side, by, note }, place): Complete<Title> => ({
    place,
    title: name,
    durationS: length,
    gapAfterS,
    side,
    by,
    note,
  }),
  'title',
);

/** `recorded`: when, by whom, where, for whom. */
export const recorded = mapOf(
  {
    on: known(parsePartialDate).optional(),
    by: known(parsePersonRef).optional(),
    at: known(parseText).optional(),
    for: known(parsePersonRef).optional(),
  },
  ({ on, by, at, for: client }): Complete<Recorded> => ({ on, by, at, for: client }),
);

/** A line of `copy-log`. */
export const logLine = mapOf(
  {
    on: known(parsePartialDate).optional(),
    for: known(parsePersonRef).optional(),
    by: known(parsePersonRef).optional(),
    speed: known(parseSpeed).optional(),
    equalisation: known(parseEqualisation).optional(),
    kind: known(wordOf(KINDS, 'a kind of tape')).optional(),
    number: known(parseText).optional(),
    reel: known(parseId).optional(),
    note: known(parseText).optional(),
  },
  ({ on, for: client, by, speed, equalisation, kind, number, reel, note }, place): Complete<LogLine> => ({
    place,
    on,
    for: client,
    by,
    speed,
    equalisation,
    kind,
    number,
    reel,
    note,
  }),
);

/** A line of `splices`. */
export const splice = mapOf(
  { at: known(parseDuration).optional(), note: known(parseText).optional() },
  ({ at, note }, place): Complete<Splice> => ({ place, at, note }),
);

/** A line of `cuts`. */
export const cut = mapOf(
  {
    number: known(parseText).optional(),
    matrix: known(parseText).optional(),
    side: known(parseText).optional(),
    on: known(parsePartialDate).optional(),
    by: known(parsePersonRef).optional(),
    'half-speed': known(parseYesNo).optional(),
    used: known(parseYesNo).optional(),
    edition: known(parseId).optional(),
    note: known(parseText).optional(),
  },
  ({ number, matrix, side, on, by, 'half-speed': halfSpeed, used, edition, note }, place): Complete<Cut> => ({
    place,
    number,
    matrix,
    side,
    on,
    by,
    halfSpeed,
    used,
    edition,
    note,
  }),
);

/** A line of `readings`. */
export const reading = mapOf(
  {
    of: known(parseText, 'of: numbers.matrix'),
    photo: known(parseFileName).optional(),
    region: known(parseRegion).optional(),
    written: known(parseText, 'written: "HLX 2207-A"'),
    sure: known(wordOf(SURENESSES, 'a degree of sureness')).optional(),
    by: known(parsePersonRef).optional(),
    note: known(parseText).optional(),
  },
  ({ of, photo, region, written, sure, by, note }, place): Complete<Reading> => ({
    place,
    of,
    photo,
    region,
    written,
    sure,
    by,
    note,
  }),
);
