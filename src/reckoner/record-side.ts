import { positionAtSpeed } from '#compute/equalisation/other-speed.ts';
import { constantsInWords } from '#compute/equalisation/time-constants.ts';
import { durationWithError } from '#compute/figure/assumed-error.ts';
import { workOut } from '#compute/figure/work-out.ts';
import { WIDEST_BAND_MM } from '#compute/record-side/disc-dimensions.ts';
import { workedPitch } from '#compute/record-side/groove-pitch.ts';
import { HALF_SPEED_SOURCE, halfSpeedCut } from '#compute/record-side/half-speed.ts';
import { SIDE_LIMITS, sideAgainstLimit } from '#compute/record-side/side-limits.ts';
import { clock } from '#compute/tape/clock.ts';
import {
  asInchesPerSecond,
  type Microseconds,
  type RevolutionsPerMinute,
  type Seconds,
  seconds,
} from '#model/units.ts';
import { parseDuration } from '#validate/scalars/duration.ts';
import { parseEqualisation } from '#validate/scalars/equalisation.ts';
import { parseRpm } from '#validate/scalars/rpm.ts';
import { parseSize } from '#validate/scalars/size.ts';
import { parseSpeed } from '#validate/scalars/speed.ts';
import { type Asked, stated, statedMeasure } from './asked.ts';
import type { Answer, Calculation } from './calculation.ts';
import { namedCurve, YEAR_KEY } from './curve.ts';

const RPM = { name: 'rpm', form: '33.333' };
const DURATION = { name: 'duration', form: '18:52' };

export const groovePitch: Calculation = {
  name: 'groove-pitch',
  does: 'lines per inch and grooves of a side',
  keys: [DURATION, { name: 'cut-width', form: '76 mm' }, RPM],
  answer: (asked) => {
    const duration = asked.one('duration', parseDuration);
    const width = asked.one('cut-width', parseSize);
    const rpm = asked.one('rpm', parseRpm);
    if (duration === undefined || width === undefined || rpm === undefined) return undefined;
    if (duration.value === 0) return refuseNothing(asked);
    const worked = workedPitch(stated('duration', duration), statedMeasure('cut-width', width), stated('rpm', rpm));
    const [lines, turns] = [worked.linesPerInch, worked.grooves];
    return {
      value: { 'lines-per-inch': lines.value, grooves: turns.value },
      unit: { 'lines-per-inch': 'lines per inch', grooves: 'grooves' },
      low: { 'lines-per-inch': lines.low, grooves: turns.low },
      high: { 'lines-per-inch': lines.high, grooves: turns.high },
      inputs: lines.inputs,
      formula: lines.formula,
      source: lines.source,
      also: { pitch_mm: worked.pitch.value },
      mind: [
        'An average: a lathe that varies its pitch has more room in quiet passages.',
        ...plausible(duration.value, rpm.value),
        ...(width.value.value > WIDEST_BAND_MM
          ? [
              `The widest band of a 12 in side is ${WIDEST_BAND_MM.toFixed(1)} to 88.8 mm, by source (“Note on Record Specifications”).`,
            ]
          : []),
      ],
    };
  },
};

function refuseNothing(asked: Asked): undefined {
  return asked.refuse('duration', {
    code: 'entry/bad-value',
    message: 'A side of no length has no grooves.',
    found: '0',
    expected: '18:52, or 18 min 52 s',
    action: 'Give the length of the side.',
  });
}

/** Where the side stands on the chart for a 12 in record; at half speed the side itself lasts half as long. */
function plausible(lasts: Seconds, rpm: RevolutionsPerMinute): readonly string[] {
  const half = Math.abs(rpm - 50 / 3) < 0.1;
  if (!half && Math.abs(rpm - 100 / 3) > 0.1) return [];
  const chart = SIDE_LIMITS.find((limit) => limit.sizeIn === 12 && limit.rpm === '33⅓');
  if (chart === undefined) return [];
  const { fitsAtDb } = sideAgainstLimit(half ? seconds(lasts / 2) : lasts, chart);
  const told =
    fitsAtDb === undefined
      ? 'longer than its last row (28 min at −6 dB): unusual, not impossible'
      : `possible at ${fitsAtDb === 0 ? 'full level' : `${fitsAtDb} dB`.replace('-', '−')}`;
  return [`For 12 in at 33⅓ rpm: ${told}. Source: ${chart.source}.`];
}

export const halfSpeed: Calculation = {
  name: 'half-speed',
  does: 'what changes when a side is cut at half speed',
  keys: [
    { name: 'speed', form: '30 in/s' },
    RPM,
    DURATION,
    { name: 'equalisation', form: 'AES', optional: true },
    YEAR_KEY,
  ],
  answer: (asked) => {
    const speed = asked.one('speed', parseSpeed);
    const rpm = asked.one('rpm', parseRpm);
    const duration = asked.one('duration', parseDuration);
    if (speed === undefined || rpm === undefined || duration === undefined) return undefined;
    const cut = halfSpeedCut(speed.value, rpm.value, duration.value);
    const answer: Answer = {
      value: {
        'tape-speed': asInchesPerSecond(cut.tapeSpeedMmPerS),
        'lathe-speed': cut.latheRpm,
        'cutting-time': cut.cuttingTimeS,
        'record-time-constants': cut.recordTimeConstantsUs,
      },
      unit: { 'tape-speed': 'in/s', 'lathe-speed': 'rpm', 'cutting-time': 's', 'record-time-constants': 'µs' },
      inputs: workOut(
        { name: 'half-speed', unit: 's', formula: '', source: '' },
        [stated('speed', speed), stated('rpm', rpm), durationWithError(stated('duration', duration))],
        (_speed, _rpm, lasts) => 2 * lasts,
      ).inputs,
      formula: 'speeds × ½; time × 2; t′ = 2·t',
      source: HALF_SPEED_SOURCE,
      also: { clock: clock(cut.cuttingTimeS) },
      mind: [
        'A noise-reduction decoder made for full speed is wrong at half speed (from memory). The grooves are the same.',
      ],
    };
    return asked.has('equalisation') ? withTapeCurve(asked, answer, speed, cut.tapeSpeedMmPerS) : answer;
  },
};

function withTapeCurve(
  asked: Asked,
  answer: Answer,
  speed: { readonly value: Parameters<typeof namedCurve>[3]; readonly written: string },
  halvedMmPerS: Parameters<typeof namedCurve>[3],
): Answer | undefined {
  const equalisation = asked.one('equalisation', parseEqualisation);
  if (equalisation === undefined) return undefined;
  const named = namedCurve(asked, 'equalisation', equalisation.written, speed.value, equalisation.value);
  if (named === undefined) return undefined;
  const { wanted, exact, sameTreble } = positionAtSpeed(named.curve, speed.value, halvedMmPerS);
  const names = [...new Set(exact.map((curve) => curve.name))];
  const near = sameTreble.map((curve) => `${constantsInWords(curve)} (${curve.called})`);
  const halved = `${asInchesPerSecond(halvedMmPerS)} in/s`;
  return {
    ...answer,
    value: { ...Object(answer.value), 'tape-time-constants': [inWords(wanted.lowUs), inWords(wanted.highUs)] },
    unit: { ...Object(answer.unit), 'tape-time-constants': 'µs' },
    inputs: [...answer.inputs, ...named.inputs],
    source: named.source === undefined ? answer.source : `${answer.source}; ${named.source}`,
    also: { ...answer.also, 'standard-positions': names.map((name) => `${halved} ${name}`) },
    mind: [
      names.length > 0
        ? `The tape at ${halved} wants ${constantsInWords(wanted)}, which is ${names.join(', ')} at that speed.`
        : `The tape at ${halved} wants ${constantsInWords(wanted)}: no standard defines that position.`,
      ...(names.length === 0 && near.length > 0 ? [`Near, with another bass: ${near.join('; ')}.`] : []),
      ...named.mind,
      ...answer.mind,
    ],
  };
}

/** JSON has no infinity; labels and entries write `inf`. */
const inWords = (time: Microseconds): number | 'inf' => (time === Infinity ? 'inf' : time);
