import type { Given } from '#model/given.ts';
import type { Reel } from '#model/reel.ts';
import type { Stock } from '#model/stock.ts';
import { type MillimetresPerSecond, metres, type Seconds } from '#model/units.ts';
import type { Worked } from '#model/worked.ts';
import { durationWithError } from '../figure/assumed-error.ts';
import { givenOf, measured } from '../figure/given-of.ts';
import { type MeasuredPack, mayRunBothWays, packOfReel, thicknessGiven, workedPack } from '../tape/pack-of-reel.ts';
import { lengthPlayed, playingTime } from '../tape/playing-time.ts';
import { reelHolds } from '../tape/reel-holds.ts';
import { workedLengthPlayed, workedPackDiameter } from '../tape/worked-tape.ts';

/** Length of the tape from its stated time and from its wound pack, and what each says of the other. A tape recorded in
 * both directions runs once for two sides, so that its stated time says nothing of its length by itself. */
export function workOutTape(reel: Reel, stock: Stock | undefined): readonly Worked[] {
  const duration = reel.durationS?.is === 'known' ? givenOf('length', reel.durationS) : undefined;
  const speed = reel.format.speed?.is === 'known' ? givenOf('speed', reel.format.speed) : undefined;
  const fromTime = !mayRunBothWays(reel) && duration !== undefined && speed !== undefined;
  const pack = packOfReel(reel, stock);
  const ofPack = pack === undefined ? undefined : { pack, figure: workedPack(pack) };
  return [
    ...(fromTime ? [workedLengthPlayed(duration, speed), ...expectedDiameter(reel, stock, duration, speed)] : []),
    ...(ofPack === undefined ? [] : fromPack(ofPack, speed)),
    ...(fromTime && ofPack !== undefined ? [leftOver(ofPack, duration, speed)] : []),
    ...capacity(reel, stock),
  ];
}

/** How wide the pack ought to be, for a rule to be held against. */
function expectedDiameter(
  reel: Reel,
  stock: Stock | undefined,
  duration: Given<Seconds>,
  speed: Given<MillimetresPerSecond>,
): readonly Worked[] {
  const hub = reel.pack.hubDiameter;
  if (hub?.is !== 'known' || stock?.thickness?.is !== 'known') return [];
  const length = workedLengthPlayed(duration, speed);
  const whole = workedPackDiameter(
    {
      name: 'tape-length',
      value: metres(length.value),
      plusMinus: ((length.high ?? 0) - (length.low ?? 0)) * 500,
      written: `${length.value.toFixed(1)} m`,
      basis: 'worked',
    },
    measured('hub-diameter', hub),
    thicknessGiven(stock.thickness),
  );
  return [whole];
}

interface PackWithFigure {
  readonly pack: MeasuredPack;
  readonly figure: Worked;
}

/** What a rule across the pack gives: how much tape, and how long it plays. */
function fromPack({ pack, figure }: PackWithFigure, speed: Given<MillimetresPerSecond> | undefined): readonly Worked[] {
  if (speed === undefined) return [figure];
  const time: Worked = {
    ...figure,
    name: 'playing-time',
    unit: 's',
    value: playingTime(pack.band.valueMm, speed.value),
    low: playingTime(pack.band.lowMm, speed.value),
    high: playingTime(pack.band.highMm, speed.value),
    inputs: [...figure.inputs, asInput(speed)],
    formula: 't = π(D² − d²) / (4·t·v)',
  };
  return [figure, time];
}

/** How much of the pack the stated time leaves unexplained; below 0 it is too short. */
function leftOver(
  { pack, figure }: PackWithFigure,
  duration: Given<Seconds>,
  speed: Given<MillimetresPerSecond>,
): Worked {
  const stated = durationWithError(duration);
  const errorMm = (stated.plusMinus ?? 0) * speed.value;
  const neededMm = lengthPlayed(duration.value, speed.value);
  return {
    name: 'tape-left-over',
    unit: 'm',
    value: (pack.band.valueMm - neededMm) / 1000,
    low: (pack.band.lowMm - neededMm - errorMm) / 1000,
    high: (pack.band.highMm - neededMm + errorMm) / 1000,
    basis: 'worked',
    inputs: [...figure.inputs, asInput(duration), asInput(speed), ...errorOf(stated)],
    formula: 'π(D² − d²) / (4·t) − v·t',
    source: 'geometry of a wound strip, less the length that the stated time takes',
  };
}

const asInput = ({ name, written, basis, place }: Given) =>
  place === undefined ? { name, written, basis } : { name, written, basis, place };

const errorOf = ({ name, errorAssumed }: Given): Worked['inputs'] =>
  errorAssumed === undefined ? [] : [{ name: `error of ${name}`, written: errorAssumed, basis: 'assumed' }];

/** The most that its reel can hold. Where the thickness isn't recorded, of the thinnest tape made. */
function capacity(reel: Reel, stock: Stock | undefined): readonly Worked[] {
  const holds = reelHolds(reel, stock);
  if (holds === undefined) return [];
  const thickness: Worked['inputs'][number] = holds.thicknessKnown
    ? thicknessInput(stock)
    : { name: 'thickness', written: `${holds.thicknessUm} µm, the thinnest tape made`, basis: 'assumed' };
  return [
    {
      name: 'reel-capacity',
      unit: 'm',
      value: holds.surelyMm / 1000,
      low: holds.surelyMm / 1000,
      high: holds.atMostMm / 1000,
      basis: holds.thicknessKnown ? 'worked' : 'assumed',
      inputs: [
        { name: 'reel-size', written: holds.size.written, basis: 'stated', place: holds.size.place },
        thickness,
        {
          name: 'hub and margin',
          written: 'the largest usual hub and 8 mm under the flange, to the smallest and none',
          basis: 'assumed',
        },
      ],
      formula: 'L = π(D² − d²) / (4·t)',
      source: 'geometry of a wound strip; hubs and margin from memory and common practice, no source',
    },
  ];
}

function thicknessInput(stock: Stock | undefined): Worked['inputs'][number] {
  const thickness = stock?.thickness?.is === 'known' ? stock.thickness : undefined;
  return {
    name: 'thickness',
    written: thickness?.written ?? '',
    basis: 'stated',
    ...(thickness && { place: thickness.place }),
  };
}
