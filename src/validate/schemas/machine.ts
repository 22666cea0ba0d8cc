import type { Machine, MachineCurve } from '#model/machine.ts';
import { CARRIERS, MACHINE_STATES, TRACK_FORMATS } from '#model/words.ts';
import { type Complete, listOf, mapOf } from '../branch.ts';
import { fact, known, many } from '../leaf.ts';
import { parseEqualisation } from '../scalars/equalisation.ts';
import { parsePersonRef } from '../scalars/person-ref.ts';
import { parseSize } from '../scalars/size.ts';
import { parseSpeed } from '../scalars/speed.ts';
import { parseText } from '../scalars/text.ts';
import { wordOf } from '../scalars/word.ts';
import { baseFacts, baseShape, type Facts } from './base.ts';

const curve = mapOf(
  { speed: known(parseSpeed).optional(), curve: known(parseEqualisation).optional() },
  ({ speed, curve: name }, place): Complete<MachineCurve> => ({ place, speed, curve: name }),
  'curve',
);

/** A machines/ entry. */
export const machine = mapOf(
  {
    ...baseShape,
    speeds: many(parseSpeed).optional(),
    equalisations: listOf(curve).optional(),
    tracks: many(wordOf(TRACK_FORMATS, 'a track format')).optional(),
    'largest-reel': fact(parseSize).optional(),
    takes: many(wordOf(CARRIERS, 'something that tape is wound on')).optional(),
    width: many(parseSize).optional(),
    'noise-reduction': many(parseText).optional(),
    state: fact(wordOf(MACHINE_STATES, 'a state of a machine')).optional(),
    'belongs-to': fact(parsePersonRef).optional(),
  },
  (fields): Complete<Facts<Machine>> => ({
    ...baseFacts(fields),
    speeds: fields.speeds,
    equalisations: fields.equalisations,
    tracks: fields.tracks,
    largestReel: fields['largest-reel'],
    takes: fields.takes,
    widths: fields.width,
    noiseReduction: fields['noise-reduction'],
    state: fields.state,
    belongsTo: fields['belongs-to'],
  }),
);
