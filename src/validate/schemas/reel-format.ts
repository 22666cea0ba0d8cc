import type { Pack, ReelFormat, ReelNumbers, RunOutSound } from '#model/reel.ts';
import { CARRIERS, DIRECTIONS, RUN_OUT_FORMS, TRACK_FORMATS, WINDS } from '#model/words.ts';
import { type Complete, mapOf } from '../branch.ts';
import { fact, known, many } from '../leaf.ts';
import { parseDuration } from '../scalars/duration.ts';
import { parseEqualisation } from '../scalars/equalisation.ts';
import { parseFrequency } from '../scalars/frequency.ts';
import { parseLevel } from '../scalars/level.ts';
import { parseSize } from '../scalars/size.ts';
import { parseSpeed } from '../scalars/speed.ts';
import { parseText } from '../scalars/text.ts';
import { wordOf } from '../scalars/word.ts';
import { parseYesNo } from '../scalars/yes-no.ts';

/** `format`: how the tape was recorded. */
export const format = mapOf(
  {
    width: fact(parseSize).optional(),
    tracks: fact(wordOf(TRACK_FORMATS, 'a track format')).optional(),
    speed: fact(parseSpeed).optional(),
    equalisation: fact(parseEqualisation).optional(),
    direction: fact(wordOf(DIRECTIONS, 'a direction')).optional(),
    'noise-reduction': fact(parseText).optional(),
    level: fact(parseLevel).optional(),
    tones: many(parseFrequency).optional(),
  },
  ({
    width,
    tracks,
    speed,
    equalisation,
    direction,
    'noise-reduction': noiseReduction,
    level,
    tones,
  }): Complete<ReelFormat> => ({
    width,
    tracks,
    speed,
    equalisation,
    direction,
    noiseReduction,
    level,
    tones,
  }),
);

/** `pack`: the tape as it is wound. */
export const pack = mapOf(
  {
    'wound-on': fact(wordOf(CARRIERS, 'something that tape is wound on')).optional(),
    'reel-size': fact(parseSize).optional(),
    'outside-diameter': fact(parseSize).optional(),
    'hub-diameter': fact(parseSize).optional(),
    wind: fact(wordOf(WINDS, 'a wind')).optional(),
  },
  (fields): Complete<Pack> => ({
    woundOn: fields['wound-on'],
    reelSize: fields['reel-size'],
    outsideDiameter: fields['outside-diameter'],
    hubDiameter: fields['hub-diameter'],
    wind: fields.wind,
  }),
);

/** `numbers`, each as the label has it. */
export const numbers = mapOf(
  {
    catalogue: many(parseText).optional(),
    matrix: many(parseText).optional(),
    job: many(parseText).optional(),
    other: many(parseText).optional(),
  },
  ({ catalogue, matrix, job, other }): Complete<ReelNumbers> => ({ catalogue, matrix, job, other }),
);

/** `run-out-sound`: what is heard after the last title. */
export const runOutSound = mapOf(
  {
    holds: known(parseText).optional(),
    length: known(parseDuration).optional(),
    form: known(wordOf(RUN_OUT_FORMS, 'a form of run-out')).optional(),
    counted: known(parseYesNo).optional(),
  },
  ({ holds, length, form, counted }): Complete<RunOutSound> => ({ holds, durationS: length, form, counted }),
  'holds',
);
