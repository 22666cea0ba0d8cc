import type { CurveDifference, CurveMeaning, WrongCurves } from '#model/curve-sheet.ts';
import type { TimeConstants } from '#model/equalisation.ts';
import { valueOf } from '#model/fact.ts';
import type { Reel } from '#model/reel.ts';
import type { MillimetresPerSecond } from '#model/units.ts';
import { curveOf, yearsOf } from './curve-of.ts';
import { differenceOf, meaningsAt } from './speed-curves.ts';
import { constantsInWords, sameConstants } from './time-constants.ts';

/** What a tape would sound like on each other curve that machines have at its speed. Undefined while its speed or its
 * equalisation isn't recorded, where no standard has that name at that speed, or no other curve is known there.
 *
 * Source: IEC 60094-1 (flux as two time constants); the curves of standards.ts.
 */
export function wrongCurves({ format, recorded }: Reel): WrongCurves | undefined {
  const { equalisation, speed } = format;
  if (equalisation?.is !== 'known' || speed?.is !== 'known') return undefined;
  const answer = curveOf(equalisation.value, speed.value, yearsOf(valueOf(recorded)?.on?.value));
  if (answer.is === 'not-at-speed') return undefined;
  const isOpen = answer.is === 'ambiguous';
  const differences = isOpen
    ? between(distinct(answer.meanings), speed.value)
    : againstOthers(answer.curve, speed.value);
  if (differences.length === 0) return undefined;
  return {
    speed: speed.value,
    written: equalisation.written,
    place: equalisation.place,
    isOpen,
    differences,
    formula:
      'Δ(f) = N(f; recorded) − N(f; replayed), less the same at 1 kHz; N(f) = 10·log[1 + 1/(2πf·t1)²] − 10·log[1 + (2πf·t2)²]',
    source: `IEC 60094-1, tape flux as two time constants; ${sourcesOf(differences).join('; ')}`,
  };
}

/** The time constants of a name's several meanings, each once. */
const distinct = (meanings: readonly TimeConstants[]) =>
  meanings.filter((one, at) => meanings.findIndex((other) => sameConstants(one, other)) === at);

const between = (meanings: readonly TimeConstants[], speed: MillimetresPerSecond) =>
  meanings.flatMap((recorded) =>
    meanings
      .filter((other) => other !== recorded)
      .map((replayed) => differenceOf(asMeaning(recorded, speed), asMeaning(replayed, speed), speed)),
  );

/** Worked out once a speed and curve: thousands of reels share a few. */
const worked = new Map<string, readonly CurveDifference[]>();

function againstOthers(recorded: TimeConstants, speed: MillimetresPerSecond): readonly CurveDifference[] {
  const key = `${speed} ${recorded.lowUs} ${recorded.highUs}`;
  const known = worked.get(key);
  if (known !== undefined) return known;
  const own = asMeaning(recorded, speed);
  const differences = meaningsAt(speed)
    .filter((other) => !sameConstants(other, recorded))
    .map((replayed) => differenceOf(own, replayed, speed));
  worked.set(key, differences);
  return differences;
}

/** The curve with its names at that speed; time constants written out may have none. */
const asMeaning = ({ lowUs, highUs }: TimeConstants, speed: MillimetresPerSecond): CurveMeaning =>
  meaningsAt(speed).find((one) => sameConstants(one, { lowUs, highUs })) ?? {
    lowUs,
    highUs,
    inWords: constantsInWords({ lowUs, highUs }),
    names: [],
  };

const sourcesOf = (differences: readonly CurveDifference[]) => [
  ...new Set(
    differences.flatMap(({ recorded, replayed }) =>
      [...recorded.names.slice(0, 1), ...replayed.names.slice(0, 1)].map(({ source }) => source),
    ),
  ),
];
