import type { Given } from '#model/given.ts';
import type { Reel } from '#model/reel.ts';
import type { Stock } from '#model/stock.ts';
import type { Microseconds } from '#model/units.ts';
import type { Worked } from '#model/worked.ts';
import { curveOf, yearsOf } from '../equalisation/curve-of.ts';
import { isInfinite } from '../equalisation/time-constants.ts';
import { workedTransition } from '../equalisation/transition-frequency.ts';
import { givenOf } from '../figure/given-of.ts';
import { thicknessGiven } from '../tape/pack-of-reel.ts';
import { workedPrintThrough } from '../tape/print-through.ts';

/** Where the replay curve turns, and where print-through is worst. */
export function workOutCurve(reel: Reel, stock: Stock | undefined): readonly Worked[] {
  return [...turnovers(reel), ...printThrough(reel, stock)];
}

/** One figure a finite time constant; none while the name could mean several curves. */
function turnovers(reel: Reel): readonly Worked[] {
  const { equalisation, speed } = reel.format;
  if (equalisation?.is !== 'known' || speed?.is !== 'known') return [];
  const recorded = reel.recorded?.is === 'known' ? reel.recorded.value.on : undefined;
  const answer = curveOf(equalisation.value, speed.value, yearsOf(recorded?.value));
  if (answer.is !== 'resolved') return [];
  const { lowUs, highUs, source } = answer.curve;
  const given = (time: Microseconds): Given<Microseconds> => ({
    name: 'time-constant',
    value: time,
    written: `${equalisation.written} at ${speed.written}: ${time} µs`,
    basis: 'stated',
    place: equalisation.place,
  });
  return [highUs, lowUs]
    .filter((time) => !isInfinite(time))
    .map((time) => workedTransition(given(time)))
    .map((figure) =>
      source === undefined ? figure : { ...figure, source: `${figure.source}; time constants: ${source}` },
    );
}

function printThrough(reel: Reel, stock: Stock | undefined): readonly Worked[] {
  const { speed } = reel.format;
  if (speed?.is !== 'known' || stock?.thickness?.is !== 'known') return [];
  return [workedPrintThrough(thicknessGiven(stock.thickness), givenOf('speed', speed))];
}
