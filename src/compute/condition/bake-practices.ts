import { type Celsius, celsius } from '#model/units.ts';

/** How somebody bakes, as it was written down. A practice, not a fact: they stand side by side and are never merged. */
export interface BakePractice {
  readonly name: string;
  readonly tape: string;
  readonly lowC: Celsius | undefined;
  readonly highC: Celsius | undefined;
  readonly lowHours: number | undefined;
  /** Missing where the source gives only a least time. */
  readonly highHours: number | undefined;
  /** What the source says of the time after it. */
  readonly afterwards: string | undefined;
  /** The same in hours after the heat, where the source says within what time to copy or play. */
  readonly playWithin: readonly [low: number, high: number] | undefined;
  /** Hours of cooling before it is played, where the source gives them. */
  readonly coolHours: number | undefined;
  readonly remark: string | undefined;
  readonly rests: 'published' | 'reported' | 'common practice, no source';
  readonly source: string;
}

const WEEK_HOURS = 7 * 24;

type Range = readonly [low: number | undefined, high: number | undefined];

const practice = (
  name: string,
  tape: string,
  [lowC, highC]: Range,
  [lowHours, highHours]: Range,
  rests: BakePractice['rests'],
  source: string,
  {
    afterwards,
    playWithin,
    coolHours,
    remark,
  }: { afterwards?: string; playWithin?: readonly [number, number]; coolHours?: number; remark?: string } = {},
): BakePractice => ({
  name,
  tape,
  lowC: lowC === undefined ? undefined : celsius(lowC),
  highC: highC === undefined ? undefined : celsius(highC),
  lowHours,
  highHours,
  afterwards,
  playWithin,
  coolHours,
  remark,
  rests,
  source,
});

const STUDY = 'UNESCO RAMP study r9704e (recovery of magnetic tape), at second hand';

/** Published first, then reported, then common practice; within each, in the order in which they were met. */
export const BAKE_PRACTICES: readonly BakePractice[] = [
  practice(
    'IASA-TC 04',
    'quarter inch',
    [50, 50],
    [8, 12],
    'published',
    'IASA-TC 04 section 5.4.3.2 to 9, as quoted on the ARSC list, June 2005',
    {
      remark: 'a chamber at a stable temperature approaching 50 °C, near 0 % humidity; no domestic oven',
    },
  ),
  practice('a maker’s advice in a UNESCO study', 'quarter inch', [45, 55], [6, 8], 'published', STUDY, {
    afterwards: 'copy within one to two weeks',
    playWithin: [WEEK_HOURS, 2 * WEEK_HOURS],
    remark: 'convection oven or environmental chamber; flanges left on',
  }),
  practice('the same, wide tape', '2 in video and multitrack', [45, 55], [undefined, 36], 'published', STUDY, {
    afterwards: 'copy within one to two weeks',
    playWithin: [WEEK_HOURS, 2 * WEEK_HOURS],
  }),
  practice(
    'a maker’s patented treatment',
    'not said',
    [54, 54],
    [8, undefined],
    'reported',
    'preservation literature, reporting a tape maker’s patent',
    {
      afterwards: 'about a month',
      playWithin: [30 * 24, 30 * 24],
      remark: 'never above 60 °C',
    },
  ),
  practice(
    'a national library, tape before 1975',
    'quarter inch',
    [54, 54],
    [8, 8],
    'reported',
    'ARSC list, 16 June 2006, quoting the library',
    {
      remark: '130 °F',
    },
  ),
  practice(
    'a national library, tape of 1975 and later',
    'quarter inch',
    [54, 54],
    [5, 5],
    'reported',
    'ARSC list, 16 June 2006',
    {
      remark: '130 °F',
    },
  ),
  practice(
    'a former maker’s chemist',
    'not said',
    [undefined, undefined],
    [12, 12],
    'reported',
    'ARSC list, 16 June 2006, quoting him',
    {
      afterwards: '12 h cooling before play',
      coolHours: 12,
    },
  ),
  practice(
    'an engineer’s articles',
    'quarter inch',
    [54, 60],
    [1, 4],
    'reported',
    'restoration articles of 1998, 2011 and 2022',
    {
      remark: '130 to 140 °F; by 2022 the times had grown, up to 3 days at 55 °C for 2 in',
    },
  ),
  practice(
    'the trade',
    'quarter inch',
    [50, 50],
    [36, 36],
    'common practice, no source',
    'common practice, no source',
    {
      afterwards: 'play within about 7 to 10 h',
      playWithin: [7, 10],
      remark: 'about 7 bakes in a tape’s life',
    },
  ),
];

/** The hottest that any of them goes. Source: an engineer's articles and a maker's "never above", both above. */
export const HOTTEST_C = celsius(60);

/** Bakes after which common practice stops. */
export const USUAL_BAKES = 7;
export const USUAL_BAKES_SOURCE =
  'about 7: common practice, no source; 20 and more are reported, with no documented limit (UNESCO RAMP study r9704e), and repeats over three years stayed playable (AV Media Matters list, December 1999)';

/** What baking costs is contested. */
export const BAKE_COSTS: readonly { readonly says: string; readonly source: string }[] = [
  {
    says: 'about 1 dB at high frequencies, at 120 °F',
    source: 'a national library’s tests, AV Media Matters list, December 1999; reported',
  },
  { says: 'destroys the tape', source: 'a vendor of another method, 2008; reported' },
  {
    says: 'residues melt at 130 °F (54.4 °C): the lowest that works, one laboratory’s view',
    source: 'a national library’s laboratory, reported April 2020',
  },
];

/** Whether a bake of this heat and length is inside what a practice allows; a missing bound allows anything. */
export function insidePractice(
  { lowC, highC, lowHours, highHours }: BakePractice,
  temperatureC: Celsius,
  hours: number,
): boolean {
  const heat = (lowC ?? -Infinity) <= temperatureC && temperatureC <= (highC ?? Infinity);
  return heat && (lowHours ?? 0) <= hours && hours <= (highHours ?? Infinity);
}
