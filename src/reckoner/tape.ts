import { clock } from '#compute/tape/clock.ts';
import { workedDurationSum } from '#compute/tape/duration-sum.ts';
import { workedNoise } from '#compute/tape/noise-after-copies.ts';
import { workedPrintThrough, worstWavelength } from '#compute/tape/print-through.ts';
import { readingsOfMil } from '#compute/tape/thickness-names.ts';
import {
  workedLengthPlayed,
  workedPackDiameter,
  workedPackLength,
  workedPlayingTime,
} from '#compute/tape/worked-tape.ts';
import { type Decibels, decibels, seconds } from '#model/units.ts';
import { parseDuration } from '#validate/scalars/duration.ts';
import { type Parsed, parsed } from '#validate/scalars/parsed.ts';
import { parseCount, refuseQuantity, splitQuantity } from '#validate/scalars/quantity.ts';
import { parseSize } from '#validate/scalars/size.ts';
import { parseSpeed } from '#validate/scalars/speed.ts';
import { parseTapeLength } from '#validate/scalars/tape-length.ts';
import { parseThickness } from '#validate/scalars/thickness.ts';
import { type Asked, stated, statedMeasure } from './asked.ts';
import { type Answer, answerOf, type Calculation } from './calculation.ts';

const LENGTH = { name: 'length', form: '2500 ft' };
const SPEED = { name: 'speed', form: '15 in/s' };
const HUB = { name: 'hub-diameter', form: '100 mm' };
const THICKNESS = { name: 'thickness', form: '52 µm ± 1 µm' };

export const playingTime: Calculation = {
  name: 'playing-time',
  does: 'how long a length of tape plays',
  keys: [LENGTH, SPEED],
  answer: (asked) => {
    const length = asked.one('length', parseTapeLength);
    const speed = asked.one('speed', parseSpeed);
    if (length === undefined || speed === undefined) return undefined;
    const worked = workedPlayingTime(stated('length', length), stated('speed', speed));
    return answerOf(worked, ['Lengths on boxes are nominal.'], { clock: clock(worked.value) });
  },
};

export const tapeLength: Calculation = {
  name: 'tape-length',
  does: 'how much tape a wound pack holds, or a duration takes',
  keys: [
    { name: 'outside-diameter', form: '260 mm ± 1 mm', optional: true },
    { ...HUB, optional: true },
    { ...THICKNESS, optional: true },
    { name: 'duration', form: '18:52', optional: true },
    { ...SPEED, optional: true },
  ],
  answer: (asked) => {
    if (asked.has('duration') && !asked.has('outside-diameter')) return lengthPlayed(asked);
    if (asked.has('outside-diameter') && !asked.has('duration')) return packLength(asked);
    return asked.refuse(asked.has('duration') ? 'duration' : 'outside-diameter', {
      code: 'entry/missing',
      message: 'A length follows from a wound pack, or from a duration and a speed.',
      found: asked.has('duration') ? 'both' : 'neither',
      expected: '--outside-diameter, --hub-diameter and --thickness, or --duration and --speed',
      action: 'Give one set of keys.',
    });
  },
};

function lengthPlayed(asked: Asked): Answer | undefined {
  const duration = asked.one('duration', parseDuration);
  const speed = need(asked, 'speed', '15 in/s') ? asked.one('speed', parseSpeed) : undefined;
  if (duration === undefined || speed === undefined) return undefined;
  return answerOf(workedLengthPlayed(stated('duration', duration), stated('speed', speed)));
}

function packLength(asked: Asked): Answer | undefined {
  const outside = asked.one('outside-diameter', parseSize);
  const hub = need(asked, 'hub-diameter', HUB.form) ? asked.one('hub-diameter', parseSize) : undefined;
  const thickness = need(asked, 'thickness', THICKNESS.form) ? asked.one('thickness', parseThickness) : undefined;
  if (outside === undefined || hub === undefined || thickness === undefined) return undefined;
  if (outside.value.value <= hub.value.value) {
    return asked.refuse('outside-diameter', {
      code: 'entry/bad-value',
      message: 'The pack is no wider than its hub, so it holds no tape.',
      found: `${outside.written} over ${hub.written}`,
      expected: 'an outside diameter over the hub’s',
      action: 'Look whether the two are swapped, or one is a radius: both are diameters.',
    });
  }
  const worked = workedPackLength(
    statedMeasure('outside-diameter', outside),
    statedMeasure('hub-diameter', hub),
    statedMeasure('thickness', thickness),
  );
  return answerOf(worked, [
    'Measure across the wound tape in two directions, not the flange. Both sizes are diameters: 1 mm of radius is twice as much tape.',
    ...aboutMil(thickness.written),
  ]);
}

export const packDiameter: Calculation = {
  name: 'pack-diameter',
  does: 'how wide a pack a length of tape makes',
  keys: [LENGTH, HUB, THICKNESS],
  answer: (asked) => {
    const length = asked.one('length', parseTapeLength);
    const hub = asked.one('hub-diameter', parseSize);
    const thickness = asked.one('thickness', parseThickness);
    if (length === undefined || hub === undefined || thickness === undefined) return undefined;
    const worked = workedPackDiameter(
      stated('length', length),
      statedMeasure('hub-diameter', hub),
      statedMeasure('thickness', thickness),
    );
    return answerOf(worked, ['A loose pack is wider.', ...aboutMil(thickness.written)]);
  },
};

export const durationSum: Calculation = {
  name: 'duration-sum',
  does: 'what a side’s titles come to',
  keys: [
    { name: 'duration', form: '4:10', together: true },
    { name: 'gap', form: '3 s', optional: true },
  ],
  answer: (asked) => {
    const titles = asked.all('duration', parseDuration);
    const gap = asked.has('gap') ? asked.one('gap', parseDuration) : { value: seconds(0), written: '0 s' };
    if (titles === undefined || gap === undefined) return undefined;
    const basis = asked.has('gap') ? 'stated' : 'assumed';
    const worked = workedDurationSum(
      titles.map((title) => stated('duration', title)),
      { ...stated('gap', gap), basis },
    );
    const mind = [
      'Gaps stand between titles, one fewer than titles. A sound in the run-out is no title: add it yourself.',
    ];
    return answerOf(worked, mind, { clock: clock(worked.value) });
  },
};

export const noiseAfterCopies: Calculation = {
  name: 'noise-after-copies',
  does: 'signal to noise after several passes',
  keys: [{ name: 'signal-to-noise', form: '65', together: true }],
  answer: (asked) => {
    const ratios = asked.all('signal-to-noise', parseDecibels);
    if (ratios === undefined) return undefined;
    return answerOf(workedNoise(ratios.map((ratio) => stated('signal-to-noise', ratio))), [
      'The passes are taken as independent. Two equal ones cost 3 dB.',
    ]);
  },
};

export const printThrough: Calculation = {
  name: 'print-through-frequency',
  does: 'where print-through is worst',
  keys: [THICKNESS, SPEED],
  answer: (asked) => {
    const thickness = asked.one('thickness', parseThickness);
    const speed = asked.one('speed', parseSpeed);
    if (thickness === undefined || speed === undefined) return undefined;
    const worked = workedPrintThrough(statedMeasure('thickness', thickness), stated('speed', speed));
    const mind = [
      'No level follows: it depends on the stock, its age and the warmth it has lain in.',
      'Winding a tape tail out puts the stronger echo after the sound; winding it before play weakens both (NAB standard, quoted in a tape maker’s archiving advice).',
      ...aboutMil(thickness.written),
    ];
    return answerOf(worked, mind, { wavelength_mm: worstWavelength(thickness.value.value) });
  },
};

function parseDecibels(text: string): Parsed<Decibels> {
  const split = splitQuantity(text);
  const count = split === undefined ? parseCount(text) : split.unit.toLowerCase() === 'db' ? split.count : undefined;
  if (count !== undefined) return parsed(decibels(count));
  return refuseQuantity(text, { what: 'a ratio in dB', forms: ['65', '65 dB'], units: ['dB', 'dB'] });
}

/** A tape's name in mil is mostly its base film, and the formula needs the whole tape: 36 % apart. */
function aboutMil(written: string): readonly string[] {
  const split = splitQuantity(written);
  if (split === undefined || !/^mils?$/i.test(split.unit)) return [];
  const readings = readingsOfMil(split.count).map((reading) => reading.says);
  if (readings.length === 0) return [];
  return [`${written} was taken as the whole tape. As the name of a tape it means: ${readings.join('; or ')}.`];
}

function need(asked: Asked, key: string, form: string): boolean {
  if (asked.has(key)) return true;
  asked.refuse(key, {
    code: 'entry/missing',
    message: `--${key} is missing.`,
    found: 'nothing',
    expected: `--${key} "${form}"`,
    action: `Add --${key}.`,
  });
  return false;
}
