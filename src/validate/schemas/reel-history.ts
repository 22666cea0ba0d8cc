import type { Custody, Handling, Inspection, PlaceKept, TransferFile, Valuation } from '#model/reel.ts';
import { SIGNS, STORED, TREATMENTS } from '#model/words.ts';
import { type Complete, listOf, mapOf } from '../branch.ts';
import { parsePartialDate } from '../date.ts';
import { known, many } from '../leaf.ts';
import { parseWholeNumber } from '../scalars/count.ts';
import { parseDuration } from '../scalars/duration.ts';
import { parseId } from '../scalars/id.ts';
import { parseLocalTime } from '../scalars/local-time.ts';
import { parseMoney } from '../scalars/money.ts';
import { parsePersonRef } from '../scalars/person-ref.ts';
import { parseSha256 } from '../scalars/sha256.ts';
import { parseTemperature } from '../scalars/temperature.ts';
import { parseText } from '../scalars/text.ts';
import { wordOf } from '../scalars/word.ts';
import { parseYesNo } from '../scalars/yes-no.ts';

/** A line of `condition`. */
export const inspection = mapOf(
  {
    on: known(parsePartialDate).optional(),
    by: known(parsePersonRef).optional(),
    found: many(wordOf(SIGNS, 'a sign that is looked for')).optional(),
    note: known(parseText).optional(),
  },
  ({ on, by, found, note }, place): Complete<Inspection> => ({ place, on, by, found, note }),
);

const transferFile = mapOf(
  { name: known(parseText, 'name: almanac-1.wav'), sha256: known(parseSha256).optional() },
  ({ name, sha256 }, place): Complete<TransferFile> => ({ place, name, sha256 }),
  'name',
);

/** A line of `handling`. */
export const handling = mapOf(
  {
    what: known(wordOf(TREATMENTS, 'something that is done to a tape'), 'what: clean'),
    on: known(parsePartialDate).optional(),
    by: known(parsePersonRef).optional(),
    temperature: known(parseTemperature).optional(),
    duration: known(parseDuration).optional(),
    started: known(parseLocalTime).optional(),
    ended: known(parseLocalTime).optional(),
    machine: known(parseId).optional(),
    settings: known(parseText).optional(),
    passes: known(parseWholeNumber).optional(),
    files: listOf(transferFile).optional(),
    planned: known(parseYesNo).optional(),
    note: known(parseText).optional(),
  },
  (
    { what, on, by, temperature, duration, started, ended, machine, settings, passes, files, planned, note },
    place,
  ): Complete<Handling> => ({
    place,
    what,
    on,
    by,
    temperatureC: temperature,
    durationS: duration,
    started,
    ended,
    machine,
    settings,
    passes,
    files,
    planned,
    note,
  }),
);

/** `place`: where it is kept. */
export const placeKept = mapOf(
  {
    at: known(parseId).optional(),
    shelf: known(parseText).optional(),
    stored: known(wordOf(STORED, 'a way of storing a tape')).optional(),
  },
  ({ at, shelf, stored }): Complete<PlaceKept> => ({ at, shelf, stored }),
  'at',
);

/** A line of `custody`. */
export const custody = mapOf(
  {
    holder: known(parsePersonRef, 'holder: owner'),
    from: known(parsePartialDate).optional(),
    until: known(parsePartialDate).optional(),
    how: known(parseText).optional(),
    price: known(parseMoney).optional(),
    evidence: known(parseText).optional(),
    note: known(parseText).optional(),
  },
  ({ holder, from, until, how, price, evidence, note }, place): Complete<Custody> => ({
    place,
    holder,
    from,
    until,
    how,
    price,
    evidence,
    note,
  }),
);

/** A line of `valuations`. */
export const valuation = mapOf(
  {
    on: known(parsePartialDate).optional(),
    by: known(parsePersonRef).optional(),
    amount: known(parseMoney).optional(),
    basis: known(parseText).optional(),
  },
  ({ on, by, amount, basis }, place): Complete<Valuation> => ({ place, on, by, amount, basis }),
);
