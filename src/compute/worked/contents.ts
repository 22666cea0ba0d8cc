import type { Given } from '#model/given.ts';
import type { Reel, Title } from '#model/reel.ts';
import { type Seconds, seconds } from '#model/units.ts';
import type { Worked } from '#model/worked.ts';
import { workOut } from '../figure/work-out.ts';
import { sumOfContents } from '../tape/contents-sum.ts';

/** Titles, gaps and run-out sound together, where all of their lengths are recorded. The run-out counts when the entry
 * says so, or when only with it the sum is the stated length. */
export function workOutContents(reel: Reel): readonly Worked[] {
  const contents = sumOfContents(reel);
  if (contents?.is !== 'summed') return [];
  const titles = contents.titles.flatMap(givenTitle);
  const gaps = givenGaps(reel, contents.gapsS);
  const runOut = givenRunOut(reel, contents.allowed, contents.titlesS + (contents.gapsS ?? 0));
  const inputs = [...titles, ...gaps, ...runOut];
  return [
    workOut(
      {
        name: 'duration-sum',
        unit: 's',
        formula: runOut.length > 0 ? 'Σ titles + Σ gaps + run-out' : 'Σ titles + Σ gaps',
        source: 'arithmetic; gaps count between titles',
      },
      inputs,
      (...values: number[]) => values.reduce((total, value) => total + value, 0),
    ),
  ];
}

const givenTitle = ({ title, durationS }: Title): readonly Given<Seconds>[] =>
  durationS === undefined
    ? []
    : [
        {
          name: title.written,
          value: durationS.value,
          written: durationS.written,
          basis: 'stated',
          place: durationS.place,
        },
      ];

/** All gaps together, as the entry writes them; none of it when nothing is said of gaps. */
function givenGaps({ gaps, contents }: Reel, gapsS: Seconds | undefined): readonly Given<Seconds>[] {
  if (gaps === undefined || gapsS === undefined) return [];
  const own = contents?.is === 'known' ? contents.value.flatMap(({ gapAfterS }) => gapAfterS ?? []) : [];
  const written = own.length > 0 ? `${gaps.written}: ${own.map((gap) => gap.written).join(', ')}` : gaps.written;
  return [{ name: 'gaps', value: gapsS, written, basis: 'stated', place: gaps.place }];
}

function givenRunOut(
  { runOutSound, durationS }: Reel,
  allowed: readonly Seconds[],
  withoutS: number,
): readonly Given<Seconds>[] {
  const runOut = runOutSound?.is === 'known' ? runOutSound.value : undefined;
  const length = runOut?.durationS;
  if (length === undefined || runOut?.counted?.value === false) return [];
  const withS = withoutS + length.value;
  const agrees = durationS?.is === 'known' && Math.abs(durationS.value - withS) < Math.abs(durationS.value - withoutS);
  const isCounted = runOut?.counted?.value === true || (allowed.length > 1 && agrees);
  return isCounted
    ? [
        {
          name: 'run-out-sound',
          value: seconds(length.value),
          written: length.written,
          basis: 'stated',
          place: length.place,
        },
      ]
    : [];
}
