import type { Celsius, Percent } from '#model/units.ts';
import { celsius, percent } from '#model/units.ts';

/** What a source says the air of a tape store should be; a missing end has no bound there. */
export interface StorageBounds {
  readonly name: string;
  readonly lowC: Celsius | undefined;
  readonly highC: Celsius | undefined;
  readonly lowPercent: Percent | undefined;
  readonly highPercent: Percent | undefined;
  /** How far it may vary; a range and its variation are not added. */
  readonly variesC: Celsius | undefined;
  readonly variesPercent: Percent | undefined;
  readonly source: string;
}

const ISO =
  'ISO 18923:2000 (polyester-base magnetic tape, storage practices), as printed in a national archive’s glossary';
const SMPTE = 'SMPTE RP 103-1995 section 2.1';
const MAKER = 'a tape maker’s archiving advice';
type Ends = readonly [low: number | undefined, high: number | undefined, varies?: number];

const bounds = (name: string, c: Ends, rh: Ends, source: string): StorageBounds => ({
  name,
  lowC: optional(c[0], celsius),
  highC: optional(c[1], celsius),
  variesC: optional(c[2], celsius),
  lowPercent: optional(rh[0], percent),
  highPercent: optional(rh[1], percent),
  variesPercent: optional(rh[2], percent),
  source,
});

function optional<Q>(count: number | undefined, unit: (count: number) => Q): Q | undefined {
  return count === undefined ? undefined : unit(count);
}

/** Outside these a tape is at risk. 25 % here and 20 % in the next disagree: between them the page says so. */
export const OUTER_BOUNDS = bounds('outer bounds', [8, 35], [25, 60], 'IASA-TC 05 section 3.3');

export const MEDIUM_TERM = bounds('medium term', [undefined, 23, 2], [20, 50, 10], ISO);

/** Any one of the three rows: the colder, the damper it may be. */
export const EXTENDED_TERM: readonly StorageBounds[] = [
  bounds('extended term, 20 °C', [undefined, 20, 2], [20, 30, 5], ISO),
  bounds('extended term, 15 °C', [undefined, 15, 2], [20, 40, 5], ISO),
  bounds('extended term, 10 °C', [undefined, 10, 2], [20, 50, 5], ISO),
];

/** Further advice, shown beside the two above and never averaged with them. */
export const OTHER_BOUNDS: readonly StorageBounds[] = [
  bounds('over 10 years', [15, 19, 2], [25, 35, 5], `${SMPTE}: 17 ± 2 °C, 30 ± 5 %`),
  bounds('up to 10 years', [15, 23], [40, 55], SMPTE),
  bounds('a maker’s archive', [15, 22], [40, 60], MAKER),
  bounds('a maker’s studio', [15, 26], [45, 70], MAKER),
];

/** How steady the air should be: a range and its variation are not added. Source: IASA-TC 05 section 3.3. */
export const STEADINESS = {
  humidities: [
    bounds('kept steady, middling', [undefined, undefined], [40, 50], 'IASA-TC 05 section 3.3'),
    bounds('kept steady, dry', [undefined, undefined], [25, 35], 'IASA-TC 05 section 3.3'),
  ],
  temperatures: [
    bounds('room, about 20 °C', [20, 20], [undefined, undefined], 'IASA-TC 05 section 3.3'),
    bounds('cool', [8, 12], [undefined, undefined], 'IASA-TC 05 section 3.3'),
  ],
  variations: [
    bounds('narrow', [undefined, undefined, 1], [undefined, undefined, 3], 'IASA-TC 05 section 3.3'),
    bounds('relaxed', [undefined, undefined, 3], [undefined, undefined, 5], 'IASA-TC 05 section 3.3'),
  ],
} as const;

/** The lowest that a tape should be kept at: the lubricant may come out below it. Two sources, two figures. */
export const LOWEST_C: readonly { readonly lowC: Celsius; readonly source: string }[] = [
  { lowC: celsius(8), source: 'ISO 18923:2000 page 5, quoted in Conservation DistList 25:9 (2011)' },
  {
    lowC: celsius(11),
    source: 'Media Storage Quick Reference page 7, quoted in Conservation DistList 25:9 (2011)',
  },
];

export type BoundsAnswer =
  | { readonly is: 'inside' }
  /** Outside, though no further than the bound's own variation: some would let it pass. */
  | { readonly is: 'within variation'; readonly because: string }
  | { readonly is: 'outside'; readonly because: string };

/** A climate against one source's bounds, with the lowest temperature that any tape should lie at. */
export function againstBounds(temperatureC: Celsius, humidityPercent: Percent, limits: StorageBounds): BoundsAnswer {
  const coldest = limits.lowC ?? LOWEST_C[0]?.lowC;
  if (coldest !== undefined && temperatureC < coldest) {
    return { is: 'outside', because: `under ${coldest} °C: the lubricant may come out of the coat` };
  }
  const past = [
    over(temperatureC, limits.highC, limits.variesC, '°C', 1),
    over(humidityPercent, limits.highPercent, limits.variesPercent, '%', 1),
    over(humidityPercent, limits.lowPercent, limits.variesPercent, '%', -1),
  ].filter((answer) => answer !== undefined);
  return past.find((answer) => answer.is === 'outside') ?? past[0] ?? { is: 'inside' };
}

function over(
  value: number,
  limit: number | undefined,
  varies = 0,
  unit: string,
  direction: 1 | -1,
): Exclude<BoundsAnswer, { is: 'inside' }> | undefined {
  if (limit === undefined || direction * (value - limit) <= 0) return undefined;
  const outermost = limit + direction * varies;
  const word = direction === 1 ? 'past' : 'under';
  if (direction * (value - outermost) <= 0) {
    return {
      is: 'within variation',
      because: `${word} ${limit} ${unit}, and inside only with the ±${varies} ${unit} of variation`,
    };
  }
  const even = varies > 0 ? `, even with the ±${varies} ${unit} of variation` : '';
  return { is: 'outside', because: `${word} ${limit} ${unit}${even === '' ? '' : ` (${outermost} ${unit})`}${even}` };
}
